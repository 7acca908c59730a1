package org.ferryglide.nav.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.testing.Seeds;

class MeasureProperties {
  /** Sine, cosine, arc tangent and two changes of unit: a few units in the last place. */
  private static final double FEW_ROUNDINGS = 1e-13;

  @Property(seed = Seeds.SEED)
  void setAndRateComeBackFromTheParts(
      @ForAll @DoubleRange(min = 0, max = 359.999) @Scale(9) double set,
      @ForAll @DoubleRange(min = 0.01, max = 20) @Scale(6) double knots) {
    Velocity velocity = Velocity.ofSetAndRate(TrueBearing.ofDegrees(set), Speed.ofKnots(knots));
    assertEquals(knots, velocity.rate().knots(), knots * FEW_ROUNDINGS);
    assertEquals(0.0, Angles.turn(set, velocity.set().degrees()), 360 * FEW_ROUNDINGS);
  }

  @Property(seed = Seeds.SEED)
  void alongAndAcrossRebuildTheRate(
      @ForAll @DoubleRange(min = -5, max = 5) @Scale(9) double east,
      @ForAll @DoubleRange(min = -5, max = 5) @Scale(9) double north,
      @ForAll @DoubleRange(min = 0, max = 359.999) @Scale(9) double direction) {
    Velocity velocity = Velocity.ofEastAndNorth(east, north);
    TrueBearing bearing = TrueBearing.ofDegrees(direction);
    assertEquals(
        velocity.rate().metresPerSecond(),
        Math.hypot(velocity.alongMetresPerSecond(bearing), velocity.acrossMetresPerSecond(bearing)),
        10 * FEW_ROUNDINGS);
  }

  @Property(seed = Seeds.SEED)
  void textIsReadBackWithoutLoss(
      @ForAll @DoubleRange(min = -1e6, max = 1e6) @Scale(9) double metres) {
    Distance distance = Distance.ofMetres(metres);
    assertEquals(distance, Distance.parse(distance.toString()));
    Speed speed = Speed.ofMetresPerSecond(Math.abs(metres));
    assertEquals(speed, Speed.parse(speed.toString()));
  }
}
