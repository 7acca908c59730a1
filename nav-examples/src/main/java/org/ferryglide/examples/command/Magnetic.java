package org.ferryglide.examples.command;

import java.time.LocalDate;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.magnetic.VariationReading;
import org.ferryglide.nav.magnetic.VariationSource;
import org.ferryglide.nav.position.Position;

/** Directions by the compass, with the variation of a place and date by the built-in models. */
final class Magnetic {
  private Magnetic() {}

  /** The variation; a date that no model knows is refused. */
  static VariationReading variation(Position place, LocalDate date) {
    return InputRefused.given(() -> VariationSource.builtInModels().at(place, date));
  }

  /** Adds a true direction by the compass, under a name of its own for programs. */
  static void row(Answer answer, TrueBearing direction, VariationReading reading, String name) {
    var magnetic = direction.toMagnetic(reading.variation());
    answer
        .row("magnetic", magnetic.threeDigits() + " magnetic, variation " + reading)
        .value(name, magnetic.degrees())
        .value("variationDegreesEast", reading.variation().degreesEast());
  }
}
