package org.ferryglide.examples.command;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.ferryglide.nav.magnetic.VariationReading;
import org.ferryglide.nav.magnetic.VariationSource;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.position.Position;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** The variation of a place and date by the World Magnetic Model of that date. */
@Command(
    name = "variation",
    description = "Magnetic variation at a place on a date, by the World Magnetic Model.",
    footer = {"", "Example:", "  ferryglide variation \"46-11.8N 26-17.6W\" 2026-06-14"})
final class VariationVerb extends Verb {
  @Parameters(index = "0", paramLabel = "PLACE", description = "Position.")
  private Position place = Position.ofDegrees(0.0, 0.0);

  @Parameters(index = "1", paramLabel = "DATE", description = "Date, as 2026-06-14.")
  private LocalDate date = LocalDate.EPOCH;

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
    return new Answer()
        .row("place", place.text(AngleForm.DEGREES_MINUTES, 2))
        .row("variation", reading.toString())
        .row("so", degrees < 0.0 ? "true + west = magnetic" : "true - east = magnetic")
        .value("known", true)
        .value("variationDegreesEast", degrees)
        .value("standardErrorDegrees", reading.standardErrorDegrees())
        .value("source", reading.source())
        .notes(reading.notes());
  }
}
