package org.ferryglide.nav.quickest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ferryglide.testing.Seeds;

/** The greatest speed along a course against looks at every heading. */
class CourseSpeedProperties {
  private static final int LOOKS = 7200;

  /** What the motion through the water is good to between the table's winds and headings. */
  private static final double GOOD_TO = 2e-4;

  /** Nearer than this to a course that cannot be held, its speed depends on the table's digits. */
  private static final double HARDLY_HELD = 0.02;

  @Property(seed = Seeds.SEED, tries = 2000)
  void ofAllHeadingsTheQuickestCounts(
      @ForAll @DoubleRange(min = -2.0, max = 2.0) double east,
      @ForAll @DoubleRange(min = -2.0, max = 2.0) double north,
      @ForAll @DoubleRange(min = 0.0, max = 5.0) double wind,
      @ForAll @DoubleRange(min = 0.0, max = 360.0) double toDegrees,
      @ForAll @DoubleRange(min = 0.0, max = 360.0) double courseDegrees) {
    double to = Math.toRadians(toDegrees);
    WindyCraft craft =
        new WindyCraft(Eddies.one(50.0, 50.0, 1.0, 0.0), wind * Math.sin(to), wind * Math.cos(to));
    double[] flow = {east, north, craft.windEast() - east, craft.windNorth() - north};
    agrees(craft, flow, courseDegrees);
  }

  /** What is allowed for in practice bends at winds of half a knot. */
  @Property(seed = Seeds.SEED, tries = 2000)
  void alsoByTablesThatBend(
      @ForAll @DoubleRange(min = -1.2, max = 1.2) double east,
      @ForAll @DoubleRange(min = -1.2, max = 1.2) double north,
      @ForAll @DoubleRange(min = 0.0, max = 10.0) double wind,
      @ForAll @DoubleRange(min = 0.0, max = 360.0) double toDegrees,
      @ForAll @DoubleRange(min = 0.0, max = 360.0) double courseDegrees) {
    double to = Math.toRadians(toDegrees);
    double[] flow = {east, north, wind * Math.sin(to), wind * Math.cos(to)};
    agrees(new BentCraft(), flow, courseDegrees);
  }

  private static void agrees(CraftMotion craft, double[] flow, double courseDegrees) {
    double east = flow[0];
    double north = flow[1];
    double course = Math.toRadians(courseDegrees);
    double sine = Math.sin(course);
    double cosine = Math.cos(course);
    double[] water = new double[2];
    double expected = Double.NaN;
    double asideBefore = Double.NaN;
    double alongBefore = Double.NaN;
    double mostRight = Double.NEGATIVE_INFINITY;
    double mostLeft = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= LOOKS; i++) {
      craft.throughWater(2.0 * Math.PI * i / LOOKS, flow, water);
      double aside = (water[0] + east) * cosine - (water[1] + north) * sine;
      double along = (water[0] + east) * sine + (water[1] + north) * cosine;
      if (i > 0 && aside <= 0.0 != asideBefore <= 0.0) {
        double part = asideBefore / (asideBefore - aside);
        double made = alongBefore + part * (along - alongBefore);
        expected = made <= expected ? expected : made;
      }
      asideBefore = aside;
      alongBefore = along;
      mostRight = Math.max(mostRight, aside);
      mostLeft = Math.min(mostLeft, aside);
    }
    double found =
        new CourseSpeed(craft).madeGood(flow[0], flow[1], flow[2], flow[3], sine, cosine);
    double room = Math.min(mostRight, -mostLeft);
    if (room > HARDLY_HELD) {
      // what is missed across counts along by the tangent of a bow nearly square to the course
      assertEquals(expected, found, GOOD_TO * (1.0 + 1.0 / Math.sqrt(2.0 * room)));
    } else if (room < -HARDLY_HELD) {
      assertTrue(Double.isNaN(found));
    }
  }
}
