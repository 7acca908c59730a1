package org.ferryglide.nav.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import org.ferryglide.nav.note.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpeedTest {
  /** Two roundings of numbers below 32. */
  private static final double TWO_ROUNDINGS = 2 * Math.ulp(16.0);

  /** Source: SI Brochure, 8th edition, table 8: 1 knot = (1852/3600) m/s. */
  @Test
  void aKnotIsANauticalMileAnHour() {
    assertEquals(1852.0 / 3600.0, Speed.ofKnots(1).metresPerSecond());
    assertEquals(1.852, Speed.ofKnots(1).kilometresPerHour(), TWO_ROUNDINGS);
  }

  @Test
  void paceIsMinutesForANauticalMile() {
    assertEquals(15.0, Speed.ofKnots(4).paceMinutesPerNauticalMile(), TWO_ROUNDINGS);
    assertEquals(4.0, Speed.ofPaceMinutesPerNauticalMile(15).knots(), TWO_ROUNDINGS);
    assertEquals(Double.POSITIVE_INFINITY, Speed.ZERO.paceMinutesPerNauticalMile());
    assertThrows(IllegalArgumentException.class, () -> Speed.ofPaceMinutesPerNauticalMile(0.0));
  }

  /** Tenths of a knot are what tables print; the digits must come back. */
  @Test
  void everyPrintedTenthOfAKnotIsPrintedAgain() {
    for (int tenths = 0; tenths <= 120; tenths++) {
      String printed = tenths / 10 + "." + tenths % 10 + " kn";
      assertEquals(printed, Speed.parse(printed).inKnots(1));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "3.5 kn, 3.5",
    "3.5 knots, 3.5",
    "1 knot, 1",
    "1.852 km/h, 1",
    "2 m/s, 3.887688984881210",
    "3.5 kt, 3.5",
    "3.5 kts, 3.5",
    "3.5 KT, 3.5",
    "'  3.5\u00a0kn ', 3.5",
    "4 mph, 3.475904967602592"
  })
  void aNumberWithItsUnitIsRead(String text, double knots) {
    assertEquals(knots, Speed.parse(text).knots(), TWO_ROUNDINGS);
  }

  @ParameterizedTest
  @ValueSource(strings = {"3.5", "3.5 mps", "kn", "-1 kn", "1e999 kn", ""})
  void textWithoutNumberOrUnitIsRefused(String text) {
    assertThrows(TextFormatException.class, () -> Speed.parse(text));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
  void aSpeedIsAMagnitude(double knots) {
    assertEquals(
        "speed must be a finite number of knots, at least 0, but was " + knots,
        assertThrows(IllegalArgumentException.class, () -> Speed.ofKnots(knots)).getMessage());
  }

  @Test
  void aSpeedPrintsAsShortAsItWasGiven() {
    for (int tenths = 0; tenths <= 400; tenths++) {
      assertEquals(tenths / 10.0 + " kn", Speed.ofKnots(tenths / 10.0).toString());
    }
    assertEquals("3.5 kn", Speed.ofKnots(3.5).toString());
    assertEquals("1.8 m/s", Speed.ofMetresPerSecond(1.8).toString());
  }

  @Test
  void speedsAddAndMultiply() {
    Speed speed = Speed.ofMetresPerSecond(2.0);
    assertEquals(Speed.ofMetresPerSecond(3.5), speed.plus(Speed.ofMetresPerSecond(1.5)));
    assertEquals(Speed.ofMetresPerSecond(0.5), speed.minus(Speed.ofMetresPerSecond(1.5)));
    assertEquals(Distance.ofMetres(3.0), speed.times(Duration.ofMillis(1500)));
    assertEquals(Duration.ofMillis(1500), Distance.ofMetres(3.0).dividedBy(speed));
    assertEquals(Duration.ofMillis(-1500), Distance.ofMetres(-3.0).dividedBy(speed));
    assertEquals(speed, Distance.ofMetres(3.0).dividedBy(Duration.ofMillis(1500)));
    assertEquals(1.5, Distance.ofMetres(3.0).dividedBy(Distance.ofMetres(2.0)));
    assertEquals(Duration.ofHours(2), Distance.ofNauticalMiles(7).dividedBy(Speed.ofKnots(3.5)));
    assertEquals(
        "speed to take off must be at most 2.0 m/s, but was 3.0 m/s",
        assertThrows(
                IllegalArgumentException.class, () -> speed.minus(Speed.ofMetresPerSecond(3.0)))
            .getMessage());
    assertEquals(
        "speed must be high enough for the time over 3.0 m to be a Duration, but was 0.0 kn",
        assertThrows(
                IllegalArgumentException.class, () -> Distance.ofMetres(3.0).dividedBy(Speed.ZERO))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> Distance.ofMetres(3.0).dividedBy(Duration.ZERO));
    assertThrows(IllegalArgumentException.class, () -> Distance.ZERO.dividedBy(Distance.ZERO));
  }
}
