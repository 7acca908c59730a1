package org.ferryglide.nav.fix;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
}
