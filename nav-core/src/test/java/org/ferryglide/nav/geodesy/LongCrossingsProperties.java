package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;

/**
 * Crossings of long lines against brute force: both lines as arcs of 20 km between points, every
 * arc of one tried against every arc of the other by the signs of four triple products. Geodesics
 * are laid off by GeographicLib.
 */
class LongCrossingsProperties {
  private static final double STEP = 20e3;

  /** Arcs stray from their lines by less, so that nearer to an end they do not decide. */
  private static final double NEAR_AN_END = 3e3;

  /** Lines that cross at less may touch, or cross twice, between two points. */
  private static final double LEAST_ANGLE_DEGREES = 3.0;

  @Property(seed = Seeds.SEED, tries = 40 * Seeds.MORE_IN_THE_SOAK)
  void noneIsMissedAndNoneIsInvented(@ForAll long drawn) {
    SplittableRandom random = new SplittableRandom(drawn);
    Line first = line(random);
    Line second = line(random);
    double most = 2000.0 + 17_000.0 * random.nextDouble();
    double span = Math.min(most, Math.min(reach(first), reach(second))) * 1e3;
    double[][] a = points(first, span);
    double[][] b = points(second, span);
    List<double[]> expected = new ArrayList<>();
    for (int i = 0; i + 1 < a.length; i++) {
      for (int j = 0; j + 1 < b.length; j++) {
        if (cross(a[i], a[i + 1], b[j], b[j + 1])) {
          expected.add(new double[] {i, j});
        }
      }
    }
    Crossings found = first.crossings(second, Distance.ofMetres(span));
    int certain = 0;
    for (Crossings.Crossing crossing : found.points()) {
      double turn = Math.abs(crossing.angleDegrees());
      Assume.that(turn > LEAST_ANGLE_DEGREES && turn < 180.0 - LEAST_ANGLE_DEGREES);
      Assume.that(isInside(crossing.alongFirst().metres(), span));
      Assume.that(isInside(crossing.alongSecond().metres(), span));
      certain++;
    }
    for (double[] pair : expected) {
      Assume.that(isInside(-span + STEP * pair[0], span));
      Assume.that(isInside(-span + STEP * pair[1], span));
    }
    Statistics.collect(certain);
    assertEquals(expected.size(), certain);
  }

  private static boolean isInside(double along, double span) {
    return Math.abs(along) < span - NEAR_AN_END;
  }

  /** Half of the rhumb lines run nearly east or west, so that they wind. */
  private static Line line(SplittableRandom random) {
    Position origin =
        Position.ofDegrees(140.0 * random.nextDouble() - 70.0, 360.0 * random.nextDouble() - 180.0);
    double course = 360.0 * random.nextDouble();
    if (random.nextBoolean()) {
      return Line.geodesic(origin, TrueBearing.ofDegrees(course));
    }
    double winding = (random.nextBoolean() ? 90.0 : 270.0) + 30.0 * (random.nextDouble() - 0.5);
    return Line.rhumb(origin, TrueBearing.ofDegrees(random.nextBoolean() ? winding : course));
  }

  /** How far a line can be followed, kilometres: a rhumb line to 88°, a degree having 110.5 km. */
  private static double reach(Line line) {
    return line instanceof RhumbLine
        ? (88.0 - Math.abs(line.origin().latitudeDegrees()))
            * 110.5
            / Math.abs(Math.cos(Math.toRadians(line.initialCourse().degrees())))
        : 19_000.0;
  }

  /** Unit vectors on the sphere of geographic latitude, every 20 km. */
  private static double[][] points(Line line, double span) {
    int count = (int) Math.ceil(2.0 * span / STEP);
    double[][] points = new double[count + 1][];
    double lat = line.origin().latitudeDegrees();
    double lon = line.origin().longitudeDegrees();
    double course = line.initialCourse().degrees();
    double[] point = new double[2];
    for (int i = 0; i <= count; i++) {
      double along = Math.min(span, -span + STEP * i);
      if (line instanceof RhumbLine) {
        RhumbLines.direct(lat, lon, course, along, point, 0);
      } else {
        GeodesicData there = Geodesic.WGS84.Direct(lat, lon, course, along);
        point[0] = there.lat2;
        point[1] = there.lon2;
      }
      double phi = Math.toRadians(point[0]);
      double lambda = Math.toRadians(point[1]);
      points[i] =
          new double[] {
            Math.cos(phi) * Math.cos(lambda), Math.cos(phi) * Math.sin(lambda), Math.sin(phi)
          };
    }
    return points;
  }

  private static boolean cross(double[] a, double[] b, double[] c, double[] d) {
    if (a[0] * c[0] + a[1] * c[1] + a[2] * c[2] < 0.99) {
      return false; // far apart, or on the other side of the earth
    }
    boolean apart = (triple(a, b, c) >= 0.0) != (triple(a, b, d) >= 0.0);
    return apart && (triple(c, d, a) >= 0.0) != (triple(c, d, b) >= 0.0);
  }

  private static double triple(double[] a, double[] b, double[] c) {
    return a[0] * (b[1] * c[2] - b[2] * c[1])
        + a[1] * (b[2] * c[0] - b[0] * c[2])
        + a[2] * (b[0] * c[1] - b[1] * c[0]);
  }
}
