package org.ferryglide.nav.bearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.testing.Seeds;

class BearingProperties {
  /** One unit in the last place of an angle in [256, 512): the rounding of one sum. */
  private static final double ONE_ROUNDING_DEGREES = Math.ulp(256.0);

  private static final double TWO_ROUNDINGS_DEGREES = 2 * ONE_ROUNDING_DEGREES;

  private static void assertSameDirection(double expected, double actual, double tolerance) {
    assertEquals(0.0, Angles.turn(expected, actual), tolerance);
  }

  @Property(seed = Seeds.SEED)
  void reciprocalOfReciprocalIsTheBearingItself(@ForAll("bearings") double degrees) {
    TrueBearing bearing = TrueBearing.ofDegrees(degrees);
    assertSameDirection(degrees, bearing.reciprocal().reciprocal().degrees(), ONE_ROUNDING_DEGREES);
  }

  @Property(seed = Seeds.SEED)
  void theReciprocalIsHalfACircleAway(@ForAll("bearings") double degrees) {
    TrueBearing bearing = TrueBearing.ofDegrees(degrees);
    assertEquals(
        180.0, Math.abs(bearing.turnDegreesTo(bearing.reciprocal())), ONE_ROUNDING_DEGREES);
  }

  @Property(seed = Seeds.SEED)
  void trueToMagneticAndBackIsTheBearingItself(
      @ForAll("bearings") double degrees, @ForAll("eastings") double east) {
    Variation variation = Variation.ofDegreesEast(east);
    assertSameDirection(
        degrees,
        TrueBearing.ofDegrees(degrees).toMagnetic(variation).toTrue(variation).degrees(),
        TWO_ROUNDINGS_DEGREES);
  }

  @Property(seed = Seeds.SEED)
  void trueToGridAndBackIsTheBearingItself(
      @ForAll("bearings") double degrees, @ForAll("eastings") double east) {
    GridConvergence convergence = GridConvergence.ofDegreesEast(east, "any grid");
    assertSameDirection(
        degrees,
        TrueBearing.ofDegrees(degrees).toGrid(convergence).toTrue(convergence).degrees(),
        TWO_ROUNDINGS_DEGREES);
  }

  @Property(seed = Seeds.SEED)
  void magneticToCompassAndBackIsTheBearingItself(
      @ForAll("bearings") double degrees, @ForAll("eastings") double east) {
    Deviation deviation = Deviation.ofDegreesEast(east);
    assertSameDirection(
        degrees,
        MagneticBearing.ofDegrees(degrees).toCompass(deviation).toMagnetic(deviation).degrees(),
        TWO_ROUNDINGS_DEGREES);
  }

  @Property(seed = Seeds.SEED)
  void westernVariationMakesMagneticLarger(
      @ForAll("bearings") double degrees, @ForAll("eastings") double east) {
    TrueBearing bearing = TrueBearing.ofDegrees(degrees);
    double turn = Angles.turn(degrees, bearing.toMagnetic(Variation.ofDegreesEast(east)).degrees());
    assertSameDirection(-east, turn, TWO_ROUNDINGS_DEGREES);
  }

  @Property(seed = Seeds.SEED)
  void aTurnAndTheTurnBackCancel(@ForAll("bearings") double from, @ForAll("bearings") double to) {
    double there = Angles.turn(from, to);
    double back = Angles.turn(to, from);
    assertTrue(there > -180.0 && there <= 180.0);
    assertEquals(0.0, Angles.shortWay(there + back), ONE_ROUNDING_DEGREES);
    assertSameDirection(
        to, TrueBearing.ofDegrees(from).turnedBy(there).degrees(), TWO_ROUNDINGS_DEGREES);
  }

  @Property(seed = Seeds.SEED)
  void textIsReadBackWithoutLoss(
      @ForAll("bearings") double degrees, @ForAll("eastings") double east) {
    assertEquals(
        TrueBearing.ofDegrees(degrees),
        TrueBearing.parse(TrueBearing.ofDegrees(degrees).toString()));
    assertEquals(
        CompassBearing.ofDegrees(degrees),
        CompassBearing.parse(CompassBearing.ofDegrees(degrees).toString()));
    assertEquals(
        Variation.ofDegreesEast(east), Variation.parse(Variation.ofDegreesEast(east).toString()));
    assertEquals(
        Deviation.ofDegreesEast(east), Deviation.parse(Deviation.ofDegreesEast(east).toString()));
  }

  @Property(seed = Seeds.SEED)
  void theNearestPointIsNoFurtherThanHalfItsSpacing(@ForAll("bearings") double degrees) {
    for (int points : new int[] {4, 8, 16, 32}) {
      double off =
          Angles.turn(degrees, TrueBearing.ofDegrees(degrees).nearestPoint(points).degrees());
      assertTrue(Math.abs(off) <= 180.0 / points + ONE_ROUNDING_DEGREES);
    }
  }

  @Provide
  Arbitrary<Double> bearings() {
    return Arbitraries.oneOf(
        Arbitraries.of(0.0, Math.nextDown(180.0), 180.0, Math.nextDown(360.0), 1e-7),
        Arbitraries.doubles().between(0.0, 359.999).ofScale(12));
  }

  @Provide
  Arbitrary<Double> eastings() {
    return Arbitraries.oneOf(
        Arbitraries.of(0.0, -180.0, 180.0, 1e-7, -1e-7),
        Arbitraries.doubles().between(-180.0, 180.0).ofScale(12));
  }
}
