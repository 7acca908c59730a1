package org.ferryglide.examples.command;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.magnetic.VariationReading;
import org.ferryglide.nav.magnetic.VariationSource;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.teach.BearingProblems;
import org.ferryglide.nav.teach.ChartProblems;
import org.ferryglide.nav.teach.Problem;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The variation of a place and date by the World Magnetic Model of that date. */
@Command(
    name = "variation",
    description = "Magnetic variation at a place on a date, by the World Magnetic Model.",
    footer = {
      "",
      "Examples:",
      "  ferryglide variation \"46-11.8N 26-17.6W\" 2026-06-14",
      "  ferryglide variation \"46-11.8N 26-17.6W\" 2026-06-14 --course 047 --rose"
          + " \"8°15'W 2014 (2'E)\" --working"
    })
final class VariationVerb extends Verb {
  @Parameters(index = "0", paramLabel = "PLACE", description = "Position.")
  private Position place = Position.ofDegrees(0.0, 0.0);

  @Parameters(index = "1", paramLabel = "DATE", description = "Date, as 2026-06-14.")
  private LocalDate date = LocalDate.EPOCH;

  @Option(
      names = "--course",
      paramLabel = "DEGREES",
      description = "Also this true course by the magnetic compass.")
  private @Nullable TrueBearing course;

  @Option(
      names = "--rose",
      paramLabel = "ROSE",
      description = "For --working: the rose printed on the chart, as \"4°15'W 2012 (8'E)\".")
  private @Nullable String rose;

  @Mixin private WorkingOption working = new WorkingOption();

  @Override
  protected Answer answer() {
    VariationReading reading;
    try {
      reading = VariationSource.builtInModels().at(place, date);
    } catch (DateTimeException e) {
      return new Answer()
          .line("no data: " + e.getMessage())
          .value("known", false)
          .value("message", String.valueOf(e.getMessage()))
          .status(Status.DATA_MISSING);
    }
    double degrees = reading.variation().degreesEast();
    Answer answer =
        new Answer()
            .row("place", place.text(AngleForm.DEGREES_MINUTES, 2))
            .row("variation", reading.toString())
            .row("so", degrees < 0.0 ? "true + west = magnetic" : "true - east = magnetic")
            .value("known", true)
            .value("variationDegreesEast", degrees)
            .value("standardErrorDegrees", reading.standardErrorDegrees())
            .value("source", reading.source());
    if (course != null) {
      double magnetic = course.toMagnetic(reading.variation()).degrees();
      answer
          .row("course", course.toMagnetic(reading.variation()).threeDigits() + " magnetic")
          .value("courseMagneticDegrees", magnetic);
    }
    working.adding(answer, it -> it.working(problem(reading).working()));
    return answer.notes(reading.notes());
  }

  private Problem problem(VariationReading reading) {
    TrueBearing leg = course;
    if (leg == null) {
      throw new InputRefused("--course is needed with --working");
    }
    String printed = rose;
    return printed == null
        ? BearingProblems.trueToMagnetic(leg, reading.variation())
        : InputRefused.given(
            () ->
                ChartProblems.roseCarriedForward(leg, CompassRose.parse(printed), date.getYear()));
  }
}
