package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Arrays of short lines, worked several rows at once, against the single calls. */
class ShortRowsTest {
  /**
   * Both ways differ by the rounding of a few operations; a tenth of what is promised of either.
   */
  private static final double METRES = 1e-9;

  /** Places between the steps of a separation are rounded to degrees: some 2 nanometres each. */
  private static final double SEPARATION = 5e-9;

  private static final Ellipsoid[] FIGURES = {
    Ellipsoid.WGS84,
    Ellipsoid.sphere(6371008.8),
    Ellipsoid.ofFlattening(6.4e6, 1.0 / 150),
    Ellipsoid.ofFlattening(6.4e6, -1.0 / 150)
  };

  /** {@code main N SEED}: the greatest differences over N rows on each ellipsoid. */
  public static void main(String[] arguments) {
    for (Ellipsoid figure : FIGURES) {
      double[] worst = worst(figure, Integer.parseInt(arguments[0]), Long.parseLong(arguments[1]));
      double[] ends =
          worstEnds(figure, Integer.parseInt(arguments[0]), Long.parseLong(arguments[1]));
      System.out.printf(
          "%s: rhumb %.3f nm, geodesic %.3f nm, ends %.3f and %.3f nm, separation %.3f nm%n",
          figure,
          1e9 * worst[0],
          1e9 * worst[1],
          1e9 * ends[0],
          1e9
              * worstRhumbEnds(
                  figure, Integer.parseInt(arguments[0]), Long.parseLong(arguments[1])),
          1e9
              * worstSeparation(
                  figure, Integer.parseInt(arguments[0]), Long.parseLong(arguments[1])));
    }
  }

  private static double[][] draw(int rows, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[][] in = new double[4][rows];
    double[] end = new double[3];
    for (int i = 0; i < rows; i++) {
      double polar = i % 3 == 0 ? 84 : 70;
      in[0][i] = polar * (2 * random.nextDouble() - 1);
      in[1][i] = 360 * random.nextDouble() - 180;
      double longest = i % 11 == 0 ? 1.0 : i % 13 == 0 ? 300e3 : 45e3;
      int quarters = random.nextInt(20);
      double course =
          quarters < 4
              ? 90 * quarters + (random.nextBoolean() ? 0 : 1e-6 * (random.nextDouble() - 0.5))
              : 360 * random.nextDouble();
      Geodesics.direct(in[0][i], in[1][i], course, longest * random.nextDouble(), end, 0);
      in[2][i] = quarters == 1 || quarters == 3 ? in[0][i] : end[0];
      in[3][i] = quarters == 0 || quarters == 2 ? in[1][i] : end[1];
      if (i % 101 == 0) { // points alike
        in[2][i] = in[0][i];
        in[3][i] = in[1][i];
      } else if (i % 103 == 0) {
        in[3][i] = Double.NaN;
      } else if (i % 107 == 0) { // any two points of the earth
        in[2][i] = 180 * random.nextDouble() - 90;
        in[3][i] = 360 * random.nextDouble() - 180;
      }
    }
    return in;
  }

  /** The greatest difference of a length, or of a course times a length: rhumb and geodesic. */
  private static double[] worst(Ellipsoid figure, int rows, long seed) {
    double[][] in = draw(rows, seed);
    double[] rhumb = new double[2 * rows];
    double[] geodesic = new double[3 * rows];
    RhumbLines.inverse(figure, in[0], in[1], in[2], in[3], 0, rows, rhumb, 0);
    Geodesics.inverse(figure, in[0], in[1], in[2], in[3], 0, rows, geodesic, 0);
    double[] single = new double[3];
    double[] worst = new double[2];
    for (int i = 0; i < rows; i++) {
      RhumbLines.inverse(figure, in[0][i], in[1][i], in[2][i], in[3][i], single, 0);
      worst[0] = Math.max(worst[0], off(single[1], rhumb[2 * i + 1], 0, 0));
      worst[0] = Math.max(worst[0], off(single[0], rhumb[2 * i], single[1], 1));
      Geodesics.inverse(figure, in[0][i], in[1][i], in[2][i], in[3][i], single, 0);
      worst[1] = Math.max(worst[1], off(single[2], geodesic[3 * i + 2], 0, 0));
      worst[1] = Math.max(worst[1], off(single[0], geodesic[3 * i], single[2], 1));
      worst[1] = Math.max(worst[1], off(single[1], geodesic[3 * i + 1], single[2], 1));
    }
    return worst;
  }

  /**
   * The greatest distance between two ends beyond what the rounding of their degrees makes, and of
   * a course times a length.
   */
  private static double[] worstEnds(Ellipsoid figure, int rows, long seed) {
    double[][] in = drawCourses(rows, seed);
    double[] ends = new double[3 * rows];
    Geodesics.direct(figure, in[0], in[1], in[2], in[3], 0, rows, ends, 0);
    double[] single = new double[3];
    double[] worst = new double[2];
    for (int i = 0; i < rows; i++) {
      Geodesics.direct(figure, in[0][i], in[1][i], in[2][i], in[3][i], single, 0);
      double metres = figure.semiMajorAxisMetres() * Math.PI / 180.0;
      double north = apart(single[0], ends[3 * i]) * metres;
      double east = apart(single[1], ends[3 * i + 1]) * metres;
      east *= Double.isNaN(single[0]) ? 1.0 : Math.cos(Math.toRadians(single[0]));
      worst[0] = Math.max(worst[0], Math.max(north, east));
      worst[1] = Math.max(worst[1], off(single[2], ends[3 * i + 2], Math.abs(in[3][i]), 1));
    }
    return worst;
  }

  /** The same of rhumb lines, of up to 48 km. */
  private static double worstRhumbEnds(Ellipsoid figure, int rows, long seed) {
    double[][] in = drawCourses(rows, seed);
    for (int i = 0; i < rows; i++) {
      in[3][i] *= 48.0 / 22.0;
    }
    double[] ends = new double[2 * rows];
    RhumbLines.direct(figure, in[0], in[1], in[2], in[3], 0, rows, ends, 0);
    double[] single = new double[2];
    double worst = 0.0;
    for (int i = 0; i < rows; i++) {
      RhumbLines.direct(figure, in[0][i], in[1][i], in[2][i], in[3][i], single, 0);
      double metres = figure.semiMajorAxisMetres() * Math.PI / 180.0;
      double north = apart(single[0], ends[2 * i]) * metres;
      double east = apart(single[1], ends[2 * i + 1]) * metres;
      east *= Double.isNaN(single[0]) ? 1.0 : Math.cos(Math.toRadians(single[0]));
      worst = Math.max(worst, Math.max(north, east));
    }
    return worst;
  }

  /** How far two angles lie apart beyond the rounding of each to a double, degrees. */
  private static double apart(double expected, double found) {
    if (Double.isNaN(expected) || Double.isNaN(found)) {
      return Double.isNaN(expected) && Double.isNaN(found) ? 0.0 : Double.POSITIVE_INFINITY;
    }
    double apart = Math.abs(Math.IEEEremainder(expected - found, 360.0));
    return Math.max(0.0, apart - 2.0 * Math.ulp(expected));
  }

  private static double[][] drawCourses(int rows, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[][] in = new double[4][rows];
    for (int i = 0; i < rows; i++) {
      double polar = i % 3 == 0 ? 84 : 70;
      in[0][i] = polar * (2 * random.nextDouble() - 1);
      in[1][i] = i % 17 == 0 ? 180.0 - 1e-9 * random.nextDouble() : 360 * random.nextDouble() - 180;
      in[2][i] = i % 5 == 0 ? 90.0 * (random.nextInt(9) - 4) : 720 * random.nextDouble() - 360;
      double longest = i % 11 == 0 ? 1.0 : i % 13 == 0 ? 300e3 : 22e3;
      in[3][i] = longest * (i % 7 == 0 ? -random.nextDouble() : random.nextDouble());
      if (i % 101 == 0) {
        in[3][i] = 0.0;
      } else if (i % 103 == 0) {
        in[random.nextInt(4)][i] = Double.NaN;
      } else if (i % 107 == 0) {
        in[0][i] = 180 * random.nextDouble() - 90;
        in[2][i] = 1e4 * random.nextDouble();
      }
    }
    return in;
  }

  /** The greatest difference of a separation. */
  private static double worstSeparation(Ellipsoid figure, int rows, long seed) {
    double[][] in = draw(rows, seed);
    double[] many = new double[LegComparisons.WIDTH_WITH_SEPARATION * rows];
    LegComparisons.compareWithSeparation(figure, in[0], in[1], in[2], in[3], 0, rows, many, 0);
    double[] single = new double[LegComparisons.WIDTH_WITH_SEPARATION];
    double worst = 0.0;
    for (int i = 0; i < rows; i++) {
      LegComparisons.compareWithSeparation(
          figure, in[0][i], in[1][i], in[2][i], in[3][i], single, 0);
      int at = LegComparisons.WIDTH_WITH_SEPARATION * i + LegComparisons.SEPARATION;
      worst = Math.max(worst, off(single[LegComparisons.SEPARATION], many[at], 0, 0));
    }
    return worst;
  }

  private static double off(double expected, double found, double metres, int courses) {
    if (Double.isNaN(expected) || Double.isNaN(found)) {
      return Double.isNaN(expected) && Double.isNaN(found) ? 0.0 : Double.POSITIVE_INFINITY;
    }
    if (courses == 0) {
      return Math.abs(expected - found);
    }
    boolean inRange = found >= 0.0 && found < 360.0;
    return inRange
        ? metres * Math.toRadians(Math.abs(Math.IEEEremainder(expected - found, 360.0)))
        : Double.POSITIVE_INFINITY;
  }

  @Test
  void shortRowsAgreeWithSingleCalls() {
    for (Ellipsoid figure : FIGURES) {
      double[] worst = worst(figure, 20_000, 11);
      assertEquals(0.0, worst[0], METRES, "rhumb lines on " + figure);
      assertEquals(0.0, worst[1], METRES, "geodesics on " + figure);
    }
  }

  /**
   * An end is good to 15 nanometres, and a course to that over the length; where rows are worked
   * together, both differ from single calls by the rounding of a few operations.
   */
  @Test
  void endsOfShortRowsAgreeWithSingleCalls() {
    for (Ellipsoid figure : FIGURES) {
      double[] worst = worstEnds(figure, 20_000, 11);
      assertEquals(0.0, worst[0], METRES, "ends on " + figure);
      assertEquals(0.0, worst[1], METRES, "courses on " + figure);
      assertEquals(0.0, worstRhumbEnds(figure, 20_000, 11), METRES, "rhumb lines on " + figure);
    }
  }

  @Test
  void separationsOfShortRowsAgreeWithSingleCalls() {
    for (Ellipsoid figure : FIGURES) {
      assertEquals(0.0, worstSeparation(figure, 20_000, 11), SEPARATION, "on " + figure);
    }
  }

  @Test
  void endsInParallelHaveTheSameBits() {
    int rows = 40_000;
    double[][] in = drawCourses(rows, 12);
    double[] ends = new double[3 * rows];
    double[] parallel = new double[3 * rows];
    Geodesics.direct(Ellipsoid.WGS84, in[0], in[1], in[2], in[3], 5, rows, ends, 3);
    Geodesics.directInParallel(Ellipsoid.WGS84, in[0], in[1], in[2], in[3], 5, rows, parallel, 3);
    assertArrayEquals(ends, parallel);
    RhumbLines.direct(Ellipsoid.WGS84, in[0], in[1], in[2], in[3], 5, rows, ends, 3);
    RhumbLines.directInParallel(Ellipsoid.WGS84, in[0], in[1], in[2], in[3], 5, rows, parallel, 3);
    assertArrayEquals(ends, parallel);
  }

  @Test
  void comparisonsOfShortRowsAreThoseOfTheTwoArraysAndInParallelTheSameBits() {
    int rows = 40_000;
    double[][] in = draw(rows, 12);
    Ellipsoid earth = Ellipsoid.WGS84;
    int width = LegComparisons.WIDTH;
    double[] compared = new double[width * rows + 3];
    LegComparisons.compare(earth, in[0], in[1], in[2], in[3], 5, rows, compared, 3);
    double[] rhumb = new double[2 * rows];
    double[] geodesic = new double[3 * rows];
    RhumbLines.inverseInParallel(earth, in[0], in[1], in[2], in[3], 5, rows, rhumb, 0);
    Geodesics.inverseInParallel(earth, in[0], in[1], in[2], in[3], 5, rows, geodesic, 0);
    for (int i = 0; i < rows - 5; i++) {
      int at = 3 + width * i;
      assertEquals(rhumb[2 * i], compared[at + LegComparisons.RHUMB_COURSE]);
      assertEquals(rhumb[2 * i + 1], compared[at + LegComparisons.RHUMB_LENGTH]);
      assertEquals(geodesic[3 * i], compared[at + LegComparisons.INITIAL_COURSE]);
      assertEquals(geodesic[3 * i + 1], compared[at + LegComparisons.FINAL_COURSE]);
      assertEquals(geodesic[3 * i + 2], compared[at + LegComparisons.GEODESIC_LENGTH]);
      assertEquals(rhumb[2 * i + 1] - geodesic[3 * i + 2], compared[at + LegComparisons.EXCESS]);
    }
    double[] parallel = new double[width * rows + 3];
    LegComparisons.compareInParallel(earth, in[0], in[1], in[2], in[3], 5, rows, parallel, 3);
    assertArrayEquals(compared, parallel);
  }
}
