package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class LegComparisonsTest {
  /** Two solutions of 15 nanometres each against two more, and what linear curvature leaves out. */
  private static final double SEPARATION_METRES = 30e-9;

  private static final double SEPARATION_SHARE = 1e-9;

  /** {@code main N SEED}: the greatest differences from the search over N legs of each kind. */
  public static void main(String[] arguments) {
    int legs = Integer.parseInt(arguments[0]);
    for (double[] kind :
        new double[][] {{1e3, 2e4, 80}, {2e4, 1e5, 80}, {1e5, 4e5, 75}, {1e4, 4e5, 2}}) {
      SplittableRandom random = new SplittableRandom(Long.parseLong(arguments[1]));
      double worst = 0.0;
      double worstShare = 0.0;
      double place = 0.0;
      for (int i = 0; i < legs; i++) {
        double[] difference = difference(random, kind[0], kind[1], kind[2]);
        worst = Math.max(worst, difference[0]);
        worstShare = Math.max(worstShare, (difference[0] - 20e-9) / difference[1]);
        place = Math.max(place, difference[2]);
      }
      System.out.printf(
          "%.0f-%.0f m to %.0f deg: %.1f nm; beyond 20 nm %.1e of itself; place %.1e of length%n",
          kind[0], kind[1], kind[2], 1e9 * worst, worstShare, place);
    }
  }

  /** Kernel less search: separation, the separation itself, place as a share of the length. */
  private static double[] difference(
      SplittableRandom random, double least, double most, double greatestLatitude) {
    double metres = least * Math.pow(most / least, random.nextDouble());
    double lat =
        (greatestLatitude - Math.min(4.0, 0.5 * greatestLatitude))
            * (2.0 * random.nextDouble() - 1.0);
    Position start = Position.ofDegrees(lat, 179.0);
    RhumbLeg rhumb =
        RhumbLeg.from(
            start, TrueBearing.ofDegrees(360 * random.nextDouble()), Distance.ofMetres(metres));
    RhumbLeg leg = RhumbLeg.between(start, rhumb.end());
    WidestPlace searched = WidestPlace.search(Ellipsoid.WGS84, start, leg.end());
    double[] out = new double[9];
    LegComparisons.compareWithSeparation(
        Ellipsoid.WGS84,
        lat,
        179.0,
        leg.end().latitudeDegrees(),
        leg.end().longitudeDegrees(),
        out,
        0);
    return new double[] {
      Math.abs(out[LegComparisons.SEPARATION] - searched.separationMetres()),
      searched.separationMetres(),
      Math.abs(out[LegComparisons.SEPARATION_ALONG] - searched.alongMetres()) / metres
    };
  }

  @Test
  void separationAgreesWithTheSearch() {
    SplittableRandom random = new SplittableRandom(17);
    for (int i = 0; i < 400; i++) {
      double[] difference = difference(random, 1e3, 4e5, i % 4 == 0 ? 4.0 : 78.0);
      assertEquals(
          0.0, difference[0], SEPARATION_METRES + SEPARATION_SHARE * difference[1], "leg " + i);
    }
  }

  @Test
  void lengthsCoursesAndDifferencesAreThoseOfTheTwoLines() {
    for (Ellipsoid figure :
        new Ellipsoid[] {
          Ellipsoid.WGS84, Ellipsoid.sphere(6371008.8), Ellipsoid.ofFlattening(6.4e6, -1.0 / 150)
        }) {
      double[] out = new double[9];
      LegComparisons.compareWithSeparation(figure, 55, 179, 55.5, -179, out, 0);
      double[] rhumb = new double[2];
      RhumbLines.inverse(figure, 55, 179, 55.5, -179, rhumb, 0);
      double[] geodesic = new double[3];
      Geodesics.inverse(figure, 55, 179, 55.5, -179, geodesic, 0);
      assertEquals(rhumb[0], out[LegComparisons.RHUMB_COURSE]);
      assertEquals(rhumb[1], out[LegComparisons.RHUMB_LENGTH]);
      assertEquals(geodesic[0], out[LegComparisons.INITIAL_COURSE]);
      assertEquals(geodesic[1], out[LegComparisons.FINAL_COURSE]);
      assertEquals(geodesic[2], out[LegComparisons.GEODESIC_LENGTH]);
      assertEquals(rhumb[1] - geodesic[2], out[LegComparisons.EXCESS]);
      assertEquals(rhumb[0] - geodesic[0], out[LegComparisons.INITIAL_COURSE_DIFFERENCE]);
    }
  }

  /**
   * Along a parallel of a sphere of radius R the separation has a closed form: a great circle whose
   * vertex is at latitude atan(tan φ / cos(dλ/2)), less φ, times R.
   */
  @Test
  void onASphereTheSeparationHasItsClosedForm() {
    double radius = 6371008.8;
    double[] out = new double[9];
    for (double lat : new double[] {-60, 1, 35, 70}) {
      for (double dlon : new double[] {0.01, 0.3, 3.0}) {
        LegComparisons.compareWithSeparation(
            Ellipsoid.sphere(radius), lat, 10, lat, 10 + dlon, out, 0);
        double phi = Math.toRadians(Math.abs(lat));
        double half = Math.toRadians(0.5 * dlon);
        double sinHalf2 = Math.sin(0.5 * half) * Math.sin(0.5 * half);
        // tan(vertex - φ), with 1 - cos(dλ/2) written as 2 sin²(dλ/4)
        double gap =
            Math.atan(
                Math.tan(phi) * 2.0 * sinHalf2 / (Math.cos(half) + Math.tan(phi) * Math.tan(phi)));
        double exact = radius * gap;
        assertEquals(
            exact, out[LegComparisons.SEPARATION], SEPARATION_METRES + SEPARATION_SHARE * exact);
        assertEquals(
            0.5 * out[LegComparisons.RHUMB_LENGTH],
            out[LegComparisons.SEPARATION_ALONG],
            1e-3 * out[LegComparisons.RHUMB_LENGTH]);
      }
    }
  }

  @Test
  void linesThatAreOneDoNotPart() {
    double[] out = new double[9];
    double[][] legs = {{50, 5, 51, 5}, {51, 5, 50, 5}, {0, 1, 0, 2}, {50, 5, 50, 5}};
    for (double[] leg : legs) {
      LegComparisons.compareWithSeparation(Ellipsoid.WGS84, leg[0], leg[1], leg[2], leg[3], out, 0);
      assertEquals(0.0, out[LegComparisons.SEPARATION]);
      assertEquals(0.0, out[LegComparisons.SEPARATION_ALONG]);
      assertEquals(0.0, out[LegComparisons.INITIAL_COURSE_DIFFERENCE]);
    }
  }

  /** The separation by its rule, k s²/8; below a nanometre all is rounding. */
  @Test
  void almostAlongAMeridianThePlaceStaysOnTheLeg() {
    double[] out = new double[9];
    for (double off : new double[] {1e-13, 1e-10, 1e-7}) {
      LegComparisons.compareWithSeparation(Ellipsoid.WGS84, 50, 5, 50.1, 5 + off, out, 0);
      double length = out[LegComparisons.RHUMB_LENGTH];
      double course = Math.toRadians(out[LegComparisons.RHUMB_COURSE]);
      double bend = Math.tan(Math.toRadians(50.05)) * Math.sin(course) / 6.39e6;
      double rule = bend * length * length / 8.0;
      assertEquals(rule, out[LegComparisons.SEPARATION], 2e-9 + 0.01 * rule);
      double along = out[LegComparisons.SEPARATION_ALONG];
      assertTrue(along > 0.0 && along < out[LegComparisons.RHUMB_LENGTH], "" + along);
    }
  }

  @Test
  void farLegsAndNanHaveNoSeparation() {
    double[] out = new double[9];
    double[][] legs = {{50, 5, 55, 5}, {81, 5, 80.9, 6}, {Double.NaN, 5, 50, 5}};
    for (double[] leg : legs) {
      LegComparisons.compareWithSeparation(Ellipsoid.WGS84, leg[0], leg[1], leg[2], leg[3], out, 0);
      assertTrue(Double.isNaN(out[LegComparisons.SEPARATION]));
      assertTrue(Double.isNaN(out[LegComparisons.SEPARATION_ALONG]));
    }
    assertTrue(Double.isNaN(out[LegComparisons.EXCESS]));
  }

  @Test
  void arraysGiveTheSameBitsAsSingleCallsInParallelToo() {
    int rows = 9_000;
    double[][] in = new double[4][rows];
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < rows; i++) {
      in[0][i] = 70 * random.nextDouble();
      in[1][i] = 180 - random.nextDouble();
      in[2][i] = in[0][i] + random.nextDouble();
      in[3][i] = random.nextDouble() - 180;
    }
    in[1][17] = Double.NaN;
    int from = 5;
    int until = rows - 3;
    Ellipsoid earth = Ellipsoid.AIRY_1830;
    double[][] out = new double[3][9 * rows];
    for (int i = from; i < until; i++) {
      int row = 2 + 9 * (i - from);
      LegComparisons.compareWithSeparation(
          earth, in[0][i], in[1][i], in[2][i], in[3][i], out[0], row);
    }
    LegComparisons.compareWithSeparation(earth, in[0], in[1], in[2], in[3], from, until, out[1], 2);
    LegComparisons.compareWithSeparationInParallel(
        earth, in[0], in[1], in[2], in[3], from, until, out[2], 2);
    assertArrayEquals(out[0], out[1]);
    assertArrayEquals(out[0], out[2]);
    for (int i = from; i < until; i++) {
      int row = 2 + 7 * (i - from);
      LegComparisons.compare(earth, in[0][i], in[1][i], in[2][i], in[3][i], out[0], row);
    }
    LegComparisons.compare(earth, in[0], in[1], in[2], in[3], from, until, out[1], 2);
    LegComparisons.compareInParallel(earth, in[0], in[1], in[2], in[3], from, until, out[2], 2);
    assertArrayEquals(out[0], out[1]);
    assertArrayEquals(out[0], out[2]);
  }
}
