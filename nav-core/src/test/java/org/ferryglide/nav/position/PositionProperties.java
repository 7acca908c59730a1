package org.ferryglide.nav.position;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.ferryglide.testing.Seeds;

class PositionProperties {
  @Property(seed = Seeds.SEED)
  void losslessTextComesBack(@ForAll("positions") Position position) {
    assertEquals(position, Position.parse(position.toString()));
  }

  @Property(seed = Seeds.SEED)
  void whatIsPrintedIsReadAndPrintedTheSame(
      @ForAll("positions") Position position,
      @ForAll AngleForm form,
      @ForAll @IntRange(max = 9) int decimals) {
    String printed = position.text(form, decimals);
    assertEquals(printed, Position.parse(printed).text(form, decimals));
    String standard = position.iso6709(form, decimals);
    assertEquals(standard, Position.parse(standard).iso6709(form, decimals));
    assertEquals(Position.parseIso6709(standard), Position.parse(standard));
    assertFalse(printed.matches(".*[^0-9.]60(\\.0*)?['\"].*"), printed);
  }

  @Property(seed = Seeds.SEED)
  void thePrintedPositionIsWithinHalfItsLastDigit(
      @ForAll("positions") Position position, @ForAll @IntRange(max = 6) int decimals) {
    Position read = Position.parse(position.text(AngleForm.DEGREES_MINUTES, decimals));
    double half = 0.5 * Math.pow(10, -decimals) / 60.0 + 1e-13; // and the rounding of the reading
    assertEquals(position.latitudeDegrees(), read.latitudeDegrees(), half);
    double off = Math.IEEEremainder(position.longitudeDegrees() - read.longitudeDegrees(), 360);
    assertEquals(0.0, off, half);
  }

  @Provide
  Arbitrary<Position> positions() {
    Arbitrary<Double> latitudes =
        Arbitraries.oneOf(
            Arbitraries.of(-90.0, 90.0, 0.0, 1e-9, -1e-9, Math.nextUp(-90.0)),
            Arbitraries.doubles().between(-90.0, 90.0).ofScale(12));
    Arbitrary<Double> longitudes =
        Arbitraries.oneOf(
            Arbitraries.of(-180.0, Math.nextDown(180.0), 0.0, 1e-9, -1e-9),
            Arbitraries.doubles().between(-180.0, 179.999).ofScale(12));
    return Combinators.combine(latitudes, longitudes).as(Position::ofDegrees);
  }
}
