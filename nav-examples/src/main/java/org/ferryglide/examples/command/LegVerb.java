package org.ferryglide.examples.command;

import java.time.LocalDate;
import java.util.Optional;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.magnetic.VariationReading;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.teach.BearingProblems;
import org.ferryglide.nav.teach.Problem;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Course and distance from one place to another. */
@Command(
    name = "leg",
    description = "Course and distance of a leg.",
    footer = {
      "",
      "Example:",
      "  ferryglide leg \"46-10.0N 26-20.0W\" \"46-11.8N 26-17.6W\" --date 2026-06-14 --working"
    })
final class LegVerb extends Verb {
  @Parameters(index = "0", paramLabel = "FROM", description = "Position of the start.")
  private Position from = Position.ofDegrees(0.0, 0.0);

  @Parameters(index = "1", paramLabel = "TO", description = "Position of the end.")
  private Position to = Position.ofDegrees(0.0, 0.0);

  @Option(
      names = "--geodesic",
      description = "The shortest way, in place of the constant course of a rhumb line.")
  private boolean geodesic;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "Also the magnetic course, with the variation of that date, as 2026-06-14.")
  private @Nullable LocalDate date;

  @Option(
      names = "--speed",
      paramLabel = "SPEED",
      description = "Also the time in still water; knots where no unit is given.")
  private @Nullable Speed speed;

  @Mixin private WorkingOption working = new WorkingOption();

  @Override
  protected Answer answer() {
    Leg leg =
        InputRefused.given(
            () -> geodesic ? GeodesicLeg.between(from, to) : RhumbLeg.between(from, to));
    Answer answer =
        new Answer()
            .row("from", from.text(AngleForm.DEGREES_MINUTES, 2))
            .row("to", to.text(AngleForm.DEGREES_MINUTES, 2))
            .row("distance", distance(leg.length()))
            .row("course", leg.initialCourse().threeDigits() + " true");
    if (geodesic) {
      answer.row("at the end", leg.finalCourse().threeDigits() + " true");
    }
    answer
        .value("line", geodesic ? "geodesic" : "rhumb")
        .value("distanceMetres", leg.length().metres())
        .value("distanceNauticalMiles", leg.length().nauticalMiles())
        .value("initialCourseTrueDegrees", leg.initialCourse().degrees())
        .value("finalCourseTrueDegrees", leg.finalCourse().degrees());
    if (speed != null) {
      time(answer, leg.length(), speed);
    }
    if (date != null) {
      magnetic(answer, leg, date);
    }
    working.adding(answer, it -> workings(it, leg));
    return answer;
  }

  private void workings(Answer answer, Leg leg) {
    Optional<Problem> measured =
        leg instanceof RhumbLeg rhumb ? ByHand.measured(rhumb) : Optional.empty();
    measured.ifPresent(it -> answer.working(it.working()));
    if (date != null) {
      Variation variation = Magnetic.variation(leg.midpoint(), date).variation();
      answer.working(BearingProblems.trueToMagnetic(leg.initialCourse(), variation).working());
    } else if (!measured.isPresent()) {
      answer.row("working", "none by hand: no leg of a rhumb line on one chart, no --date");
    }
  }

  private static String distance(Distance length) {
    return length.inNauticalMiles(2) + ", " + length.inKilometres(2);
  }

  private static void time(Answer answer, Distance length, Speed speed) {
    long minutes = (InputRefused.given(() -> length.dividedBy(speed)).getSeconds() + 59) / 60;
    answer
        .row(
            "time",
            minutes / 60 + " h " + minutes % 60 + " min at " + speed.inKnots(1) + ", still water")
        .value("stillWaterMinutes", minutes);
  }

  private static void magnetic(Answer answer, Leg leg, LocalDate date) {
    VariationReading reading = Magnetic.variation(leg.midpoint(), date);
    Magnetic.row(answer, leg.initialCourse(), reading, "initialCourseMagneticDegrees");
    answer
        .value("variationStandardErrorDegrees", reading.standardErrorDegrees())
        .notes(reading.notes());
  }
}
