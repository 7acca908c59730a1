package org.ferryglide.nav.fix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.plane.LocalPlane;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class CockedHatTest {
  private static final Position HERE = Position.ofDegrees(56.3, -6.2);

  private static List<PositionLine> bearings(
      double[] azimuths, double sigma, double shared, Random random) {
    List<PositionLine> lines = new ArrayList<>();
    for (double azimuth : azimuths) {
      Position mark =
          GeodesicLeg.from(HERE, TrueBearing.ofDegrees(azimuth), Distance.ofNauticalMiles(3)).end();
      lines.add(
          BearingLine.of(
              "m",
              mark,
              TrueBearing.ofDegrees(azimuth + shared + sigma * random.nextGaussian()),
              2.0));
    }
    return lines;
  }

  /** Whether the true position lies in the triangle of the three corners. */
  private static boolean holds(CockedHat hat) {
    double[][] c = new double[3][];
    for (int i = 0; i < 3; i++) {
      c[i] = LocalPlane.toPlane(HERE, hat.corners().get(i));
    }
    int turns = 0;
    for (int i = 0; i < 3; i++) {
      double[] a = c[i];
      double[] b = c[(i + 1) % 3];
      turns += a[0] * b[1] - a[1] * b[0] > 0 ? 1 : -1;
    }
    return Math.abs(turns) == 3;
  }

  /**
   * Source: Daniels (1951); Stuart (2019); Bárány, Steiger and Toledo (2021): one quarter, if every
   * two lines meet properly and errors are independent.
   */
  @Test
  void aTriangleHoldsTheTruthOnceInFour() {
    int tries = 4000;
    double threeSigma = 3 * Math.sqrt(0.25 * 0.75 / tries);
    for (double[] azimuths : new double[][] {{10, 130, 250}, {10, 70, 130}, {10, 95, 220}}) {
      Random random = new Random(20);
      int inside = 0;
      for (int i = 0; i < tries; i++) {
        Fix fix = FixSolver.standard().solve(bearings(azimuths, 2.0, 0.0, random)).orElseThrow();
        CockedHat hat = fix.cockedHat().orElseThrow();
        assertEquals(0.25, hat.chanceInside());
        inside += holds(hat) ? 1 : 0;
      }
      assertEquals(0.25, inside / (double) tries, threeSigma);
    }
  }

  /** Geometry of a pure shared error: inside when marks surround, outside when they do not. */
  @Test
  void aSharedErrorAloneKeepsTheTruthInsideOnlyIfTheMarksSurroundIt() {
    Random none = new Random(1);
    Fix around =
        FixSolver.standard().solve(bearings(new double[] {10, 130, 250}, 0, 5, none)).orElseThrow();
    assertTrue(holds(around.cockedHat().orElseThrow()));
    assertTrue(around.notes().stream().noneMatch(n -> n.code().equals("fix.half-circle")));
    Fix half =
        FixSolver.standard().solve(bearings(new double[] {10, 70, 130}, 0, 5, none)).orElseThrow();
    assertTrue(!holds(half.cockedHat().orElseThrow()));
    assertEquals("fix.half-circle", half.notes().get(half.notes().size() - 1).code());
    assertEquals(5.0, half.cockedHat().orElseThrow().sharedErrorDegrees().orElseThrow(), 0.1);
    assertEquals(5.0, around.cockedHat().orElseThrow().sharedErrorDegrees().orElseThrow(), 0.1);
  }

  @Test
  void moreLinesHoldItMoreOften() {
    double[] azimuths = {0, 72, 144, 216, 288};
    Fix fix = FixSolver.standard().solve(bearings(azimuths, 2, 0, new Random(3))).orElseThrow();
    CockedHat hat = fix.cockedHat().orElseThrow();
    assertEquals(1 - 5 / 16.0, hat.chanceInside());
    assertEquals(10, hat.corners().size());
    assertTrue(hat.longestSide().metres() > 0);
    assertTrue(hat.toString().startsWith("cocked hat of "));
  }

  @Test
  void aMarkInLineWithTwoOthersLeavesTheSharedErrorOpen() {
    List<PositionLine> lines =
        new ArrayList<>(bearings(new double[] {10, 130}, 0, 0, new Random(1)));
    lines.add(
        StraightLine.through("line", HERE, Position.ofDegrees(56.4, -6.1), Distance.ofMetres(10)));
    CockedHat hat = FixSolver.standard().solve(lines).orElseThrow().cockedHat().orElseThrow();
    assertTrue(hat.sharedErrorDegrees().isEmpty());
  }

  /** Corners are where the great circles of the bearings cross, not their tangents at the fix. */
  @Test
  void cornersLieOnBothLines() {
    Random random = new Random(6);
    for (int i = 0; i < 200; i++) {
      List<PositionLine> lines = bearings(new double[] {10, 95, 230}, 4.0, 0.0, random);
      CockedHat hat = FixSolver.standard().solve(lines).orElseThrow().cockedHat().orElseThrow();
      assertTrue(hat.isClosed());
      int k = 0;
      for (int a = 0; a < 3; a++) {
        for (int b = a + 1; b < 3; b++) {
          Position corner = hat.corners().get(k++);
          for (int line : new int[] {a, b}) {
            BearingLine bearing = (BearingLine) lines.get(line);
            TrueBearing there = GeodesicLeg.between(corner, bearing.mark()).initialCourse();
            assertEquals(0.0, there.turnDegreesTo(bearing.bearing()), 1e-5);
          }
        }
      }
    }
  }

  /** Lines that cross far off make a long hat, and lines that do not cross none. */
  @Test
  void aLongHatIsNotShortened() {
    List<PositionLine> lines = bearings(new double[] {10, 12, 100}, 0.0, 0.0, new Random(1));
    lines.set(1, ((BearingLine) lines.get(1)).turnedBy(1));
    lines.set(2, ((BearingLine) lines.get(2)).turnedBy(1));
    CockedHat hat = FixSolver.standard().solve(lines).orElseThrow().cockedHat().orElseThrow();
    assertTrue(hat.isClosed());
    assertEquals(3, hat.corners().size());
    assertTrue(hat.longestSide().metres() > 1500, hat.toString());
    List<PositionLine> open = bearings(new double[] {10, 100, 180}, 0.0, 0.0, new Random(1));
    open.set(2, ((BearingLine) open.get(2)).turnedBy(10)); // parallel to the first, the other way
    CockedHat none = FixSolver.standard().solve(open).orElseThrow().cockedHat().orElseThrow();
    assertFalse(none.isClosed());
    assertEquals("open cocked hat: not all of its lines cross", none.toString());
  }

  /** Independent: with no noise and one shared error put in, the same comes out. */
  @Test
  void theSharedErrorIsTheOnePutIn() {
    for (double shared : new double[] {-4, -0.5, 2, 6}) {
      Fix fix =
          FixSolver.standard()
              .solve(bearings(new double[] {10, 95, 220, 300}, 0.0, shared, new Random(1)))
              .orElseThrow();
      assertEquals(shared, fix.cockedHat().orElseThrow().sharedErrorDegrees().orElseThrow(), 0.1);
    }
  }
}
