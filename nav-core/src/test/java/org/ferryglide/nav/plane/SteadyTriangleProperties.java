package org.ferryglide.nav.plane;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.testing.Seeds;

class SteadyTriangleProperties {
  /** A few roundings of speeds of some metres a second. */
  private static final double ROUNDINGS = 1e-13;

  /** The same in degrees, where the arc sine is steep near a right angle. */
  private static final double STEEP_DEGREES = 1e-5;

  private final double[] out = new double[4];

  @Property(seed = Seeds.SEED)
  void theVectorsRebuiltGiveTheTrack(
      @ForAll("courses") double course,
      @ForAll("speeds") double speed,
      @ForAll("parts") double east,
      @ForAll("parts") double north) {
    Assume.that(SteadyTriangle.solve(course, speed, east, north, out, 0) == SteadyTriangle.SOLVED);
    double track = Math.toRadians(course);
    double water = Math.toRadians(out[0]);
    double overEast = speed * Math.sin(water) + east;
    double overNorth = speed * Math.cos(water) + north;
    double across = overEast * Math.cos(track) - overNorth * Math.sin(track);
    double along = overEast * Math.sin(track) + overNorth * Math.cos(track);
    assertEquals(0.0, across, ROUNDINGS);
    assertEquals(out[1], along, 1e-7 * speed); // the angle is known less well than the speed
    assertTrue(out[1] > 0.0);
  }

  @Property(seed = Seeds.SEED)
  void notPossibleMeansThatNoHeadingHoldsTheTrack(
      @ForAll("courses") double course,
      @ForAll("speeds") double speed,
      @ForAll("parts") double east,
      @ForAll("parts") double north) {
    boolean solved = SteadyTriangle.solve(course, speed, east, north, out, 0) == 0;
    double track = Math.toRadians(course);
    double best = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < 3600; i++) {
      double water = track + Math.toRadians(i / 10.0);
      double across =
          (speed * Math.sin(water) + east) * Math.cos(track)
              - (speed * Math.cos(water) + north) * Math.sin(track);
      double along =
          (speed * Math.sin(water) + east) * Math.sin(track)
              + (speed * Math.cos(water) + north) * Math.cos(track);
      if (Math.abs(across) <= speed * Math.toRadians(0.05)) {
        best = Math.max(best, along);
      }
    }
    // the search's margin: a twentieth of a degree either way, and near the limit its square root
    double margin = 0.05 * speed;
    if (best > margin) {
      assertTrue(solved || Math.abs(stemmed(course, speed, east, north)) < margin);
    }
    if (best < -margin) {
      assertTrue(!solved);
    }
  }

  private static double stemmed(double course, double speed, double east, double north) {
    double track = Math.toRadians(course);
    return Math.abs(east * Math.cos(track) - north * Math.sin(track)) - speed;
  }

  @Property(seed = Seeds.SEED)
  void mirrorImagesSteerMirroredHeadings(
      @ForAll("courses") double course,
      @ForAll("speeds") double speed,
      @ForAll("parts") double east,
      @ForAll("parts") double north) {
    int finding = SteadyTriangle.solve(course, speed, east, north, out, 0);
    double track = Math.toRadians(course);
    double spare = speed - Math.abs(east * Math.cos(track) - north * Math.sin(track));
    Assume.that(finding == SteadyTriangle.SOLVED && out[1] > 0.01 && spare > 1e-9);
    assertEquals(finding, SteadyTriangle.solve(-course, speed, -east, north, out, 2));
    assertEquals(0.0, Angles.turn(out[0], -out[2]), STEEP_DEGREES);
    assertEquals(out[1], out[3], 1e-6);
    assertEquals(finding, SteadyTriangle.solve(180.0 - course, speed, east, -north, out, 2));
    assertEquals(0.0, Angles.turn(out[0], 180.0 - out[2]), STEEP_DEGREES);
    assertEquals(out[1], out[3], 1e-6);
  }

  @Property(seed = Seeds.SEED)
  void allSpeedsTwiceAsFastKeepTheHeading(
      @ForAll("courses") double course,
      @ForAll("speeds") double speed,
      @ForAll("parts") double east,
      @ForAll("parts") double north) {
    int finding = SteadyTriangle.solve(course, speed, east, north, out, 0);
    assertEquals(finding, SteadyTriangle.solve(course, 2 * speed, 2 * east, 2 * north, out, 2));
    assertEquals(out[0], out[2]);
    assertEquals(2 * out[1], out[3]);
  }

  @Property(seed = Seeds.SEED)
  void theSpeedMadeGoodIsThatOfFiftyDigits(
      @ForAll("speeds") double speed,
      @ForAll("parts") double along,
      @ForAll("parts") double across) {
    Assume.that(SteadyTriangle.finding(along, across, speed) == SteadyTriangle.SOLVED);
    MathContext fifty = new MathContext(50);
    BigDecimal v = new BigDecimal(speed);
    BigDecimal c = new BigDecimal(across);
    double exact =
        v.multiply(v).subtract(c.multiply(c)).sqrt(fifty).add(new BigDecimal(along)).doubleValue();
    Assume.that(exact > 0.01 * speed); // where the two do not all but balance
    assertEquals(exact, SteadyTriangle.speedMadeGood(along, across, speed), 1e-12 * exact);
  }

  @Property(seed = Seeds.SEED)
  void theSlowerHeadingHoldsTheTrackToo(
      @ForAll("courses") double course,
      @ForAll("speeds") double speed,
      @ForAll("parts") double east,
      @ForAll("parts") double north) {
    boolean two = SteadyTriangle.slower(course, speed, east, north, out, 2);
    boolean one = SteadyTriangle.solve(course, speed, east, north, out, 0) == 0;
    if (!two) {
      assertTrue(Double.isNaN(out[2]) && Double.isNaN(out[3]));
      return;
    }
    assertTrue(one);
    assertTrue(out[3] <= out[1]);
    double track = Math.toRadians(course);
    double water = Math.toRadians(out[2]);
    double overEast = speed * Math.sin(water) + east;
    double overNorth = speed * Math.cos(water) + north;
    assertEquals(0.0, overEast * Math.cos(track) - overNorth * Math.sin(track), ROUNDINGS);
  }

  @Example
  void notANumberGoesThrough() {
    for (int i = 0; i < 4; i++) {
      double[] in = {90.0, 1.8, 0.3, 0.3};
      in[i] = Double.NaN;
      assertEquals(
          SteadyTriangle.UNDEFINED, SteadyTriangle.solve(in[0], in[1], in[2], in[3], out, 0));
      assertTrue(Double.isNaN(out[0]) && Double.isNaN(out[1]));
    }
  }

  @Example
  void manyAtOnceAreTheSameAsOneByOne() {
    double[] course = {0, 90, 180, 270, Double.NaN};
    double[] speed = {1.5, 1.5, 0.1, 1.5, 1.5};
    double[] east = {0.5, -0.5, 1.0, 0.2, 0};
    double[] north = {0.1, 0.7, 0.0, -0.9, 0};
    double[] tracks = {9, 9, 9, 9, 9};
    double[] madeGood = new double[5];
    SteadyTriangle.solve(course, speed, east, north, 1, 5, tracks, madeGood);
    for (int i = 1; i < 5; i++) {
      SteadyTriangle.solve(course[i], speed[i], east[i], north[i], out, 0);
      assertEquals(out[0], tracks[i]);
      assertEquals(out[1], madeGood[i]);
    }
    assertArrayEquals(new double[] {9.0}, new double[] {tracks[0]});
    assertTrue(Double.isNaN(tracks[2]) && Double.isNaN(tracks[4]));
  }

  @Provide
  Arbitrary<Double> courses() {
    return Arbitraries.oneOf(
        Arbitraries.of(0.0, 90.0, 180.0, 270.0, Math.nextDown(360.0)),
        Arbitraries.doubles().between(0.0, 360.0).ofScale(9));
  }

  @Provide
  Arbitrary<Double> speeds() {
    return Arbitraries.doubles().between(0.1, 4.0).ofScale(9);
  }

  @Provide
  Arbitrary<Double> parts() {
    return Arbitraries.oneOf(
        Arbitraries.of(0.0, -0.0), Arbitraries.doubles().between(-4.0, 4.0).ofScale(9));
  }
}
