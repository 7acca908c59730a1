package org.ferryglide.nav.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.note.TextFormatException;
import org.junit.jupiter.api.Test;

class VelocityTest {
  /** A few roundings of knots below 32 through sine and cosine. */
  private static final double ROUNDING_KNOTS = 1e-13;

  private static final TrueBearing NORTHEAST = TrueBearing.ofDegrees(45);

  /** Common practice, no source: a wind is named by where it comes from, a set by where it goes. */
  @Test
  void windFromTheNortheastOnAStreamSettingNortheastIsAgainstIt() {
    Velocity wind = Velocity.ofWind(NORTHEAST, Speed.ofKnots(12));
    Velocity stream = Velocity.ofSetAndRate(NORTHEAST, Speed.ofKnots(4));
    assertEquals(16.0, wind.minus(stream).rate().knots(), ROUNDING_KNOTS);
    Velocity turned = Velocity.ofSetAndRate(NORTHEAST.reciprocal(), Speed.ofKnots(4));
    assertEquals(8.0, wind.minus(turned).rate().knots(), ROUNDING_KNOTS);
    assertEquals(45.0, wind.from().degrees(), ROUNDING_KNOTS);
    assertEquals(225.0, wind.set().degrees(), ROUNDING_KNOTS);
  }

  @Test
  void thePartAcrossIsPositiveToTheRight() {
    Velocity east = Velocity.ofSetAndRate(TrueBearing.ofDegrees(90), Speed.ofMetresPerSecond(1));
    assertEquals(1.0, east.acrossMetresPerSecond(TrueBearing.ofDegrees(0)), ROUNDING_KNOTS);
    assertEquals(-1.0, east.acrossMetresPerSecond(TrueBearing.ofDegrees(180)), ROUNDING_KNOTS);
    assertEquals(1.0, east.alongMetresPerSecond(TrueBearing.ofDegrees(90)), ROUNDING_KNOTS);
    assertEquals(
        Math.sqrt(0.5), east.alongMetresPerSecond(TrueBearing.ofDegrees(45)), ROUNDING_KNOTS);
  }

  @Test
  void noMotionSetsNorth() {
    assertEquals(TrueBearing.ofDegrees(0), Velocity.STILL.set());
    assertEquals(Speed.ZERO, Velocity.STILL.rate());
    assertEquals(Velocity.STILL, Velocity.ofEastAndNorth(-0.0, -0.0));
  }

  @Test
  void anAtlasPrintsSetAndRate() {
    assertEquals(
        "090° 2.0 kn",
        Velocity.ofSetAndRate(TrueBearing.ofDegrees(90), Speed.ofKnots(2)).setAndRate());
  }

  @Test
  void textIsReadBackWithoutLoss() {
    Velocity velocity = Velocity.ofEastAndNorth(1.0 / 3, -1e-9);
    assertEquals(velocity, Velocity.parse(velocity.toString()));
    for (String wrong :
        new String[] {"", "1 m/s", "1 m/s east, x m/s north", "NaN m/s east, 1 m/s north"}) {
      assertThrows(TextFormatException.class, () -> Velocity.parse(wrong), wrong);
    }
  }

  @Test
  void partsMustBeFinite() {
    assertThrows(IllegalArgumentException.class, () -> Velocity.ofEastAndNorth(Double.NaN, 0));
    assertThrows(
        IllegalArgumentException.class, () -> Velocity.STILL.times(Double.POSITIVE_INFINITY));
  }

  @Test
  void aVelocityIsReadAsItIsPrinted() {
    Velocity stream = Velocity.ofSetAndRate(TrueBearing.ofDegrees(90), Speed.ofKnots(2));
    assertEquals("090° 2.0 kn", stream.toString());
    assertEquals(stream, Velocity.parse("090° 2.0 kn"));
    assertEquals(stream, Velocity.parse("090°T 2.0 kn"));
    assertEquals(stream, Velocity.parse(stream.setAndRate()));
    assertEquals(
        "007.5° 0.3 kn",
        Velocity.ofSetAndRate(TrueBearing.ofDegrees(7.5), Speed.ofKnots(0.3)).toString());
    assertEquals(
        4, assertThrows(TextFormatException.class, () -> Velocity.parse("090° kn")).index() - 1);
    assertThrows(TextFormatException.class, () -> Velocity.parse("090°M 2.0 kn"));
  }
}
