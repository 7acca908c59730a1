package org.ferryglide.nav.quickest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ContoursTest {
  private static final int SIDE = 9;
  private static final int MIDDLE = 4;

  private interface Plane {
    double at(int column, int row);
  }

  /** What is not above a level, linear along the sides; nothing beyond a finite value. */
  private record Below(Plane plane, double level, boolean bends) implements Contours.Area {
    private double at(int node) {
      return plane.at(node / SIDE, node % SIDE);
    }

    @Override
    public boolean isWithin(int node) {
      return at(node) <= level;
    }

    @Override
    public double share(int within, int beyond) {
      double above = at(beyond) - level; // of a node on the rim perhaps not
      return above > 0.0 ? (level - at(within)) / (at(beyond) - at(within)) : 0.0;
    }

    @Override
    public double bend(
        int within, double[] from, double[] towards, double[] lineFrom, double[] lineTo) {
      return bends ? 0.25 : Double.NaN;
    }
  }

  private static List<double[]> rings(Plane plane, double level) {
    return new Contours(SIDE, SIDE, new Below(plane, level, false)).rings();
  }

  /** Twice the area of a ring, above 0 if it runs round it anticlockwise from columns to rows. */
  private static double twiceArea(double[] ring) {
    double sum = 0.0;
    for (int i = 0; i < ring.length; i += 2) {
      int j = (i + 2) % ring.length;
      sum += ring[i] * ring[j + 1] - ring[j] * ring[i + 1];
    }
    return sum;
  }

  @Test
  void theRingStandsWhereTheLevelIs() {
    Plane city = (c, r) -> Math.abs(c - MIDDLE) + Math.abs(r - MIDDLE);
    List<double[]> rings = rings(city, 2.25);
    assertEquals(1, rings.size());
    for (int i = 0; i < rings.get(0).length; i += 2) {
      double c = rings.get(0)[i] - MIDDLE;
      double r = rings.get(0)[i + 1] - MIDDLE;
      assertEquals(2.25, Math.abs(c) + Math.abs(r), 1e-12);
    }
    assertEquals(2.0 * 2.0 * 2.25 * 2.25, Math.abs(twiceArea(rings.get(0))), 0.5);
  }

  /** Of two columns or rows that nothing reaches, on each side in turn. */
  @Test
  void nothingIsWithinWhereNothingIsKnown() {
    for (int quarter = 0; quarter < 4; quarter++) {
      int q = quarter;
      Plane wall =
          (c, r) -> {
            int beyond = q == 0 ? c : q == 1 ? -c : q == 2 ? r : -r;
            int from = q % 2 == 0 ? MIDDLE : -MIDDLE;
            return beyond > from ? Double.POSITIVE_INFINITY : 1.0;
          };
      for (double[] ring : rings(wall, 2.0)) {
        for (int i = 0; i < ring.length; i += 2) {
          double at = q < 2 ? ring[i] : ring[i + 1];
          assertTrue(q % 2 == 0 ? at <= MIDDLE : at >= MIDDLE, "side " + q + ": " + at);
        }
      }
    }
  }

  @Test
  void theRimIsNeverWithin() {
    List<double[]> rings = rings((c, r) -> 1.0, 2.0);
    assertEquals(1, rings.size());
    assertEquals(2.0 * (SIDE - 3) * (SIDE - 3), Math.abs(twiceArea(rings.get(0))), 1e-12);
  }

  @Test
  void aHoleHasARingOfItsOwnTheOtherWayRound() {
    Plane lagoon = (c, r) -> c == MIDDLE && r == MIDDLE ? Double.POSITIVE_INFINITY : 1.0;
    List<double[]> rings = rings(lagoon, 2.0);
    assertEquals(2, rings.size());
    assertTrue(twiceArea(rings.get(0)) * twiceArea(rings.get(1)) < 0.0);
    assertTrue(rings((c, r) -> 3.0, 2.0).isEmpty());
  }

  /** One that holds a single node alone has no extent. */
  @Test
  void noRingIsLeftOfLessThanThreeCorners() {
    Plane alone = (c, r) -> c == MIDDLE && r == MIDDLE ? 1.0 : Double.POSITIVE_INFINITY;
    assertTrue(rings(alone, 2.0).isEmpty());
    for (double[] ring : rings((c, r) -> Math.hypot(c - MIDDLE, r - MIDDLE), 2.0)) {
      for (int i = 0; i < ring.length; i += 2) {
        int j = (i + 2) % ring.length;
        assertTrue(ring[i] != ring[j] || ring[i + 1] != ring[j + 1], "corner " + i / 2);
      }
    }
  }

  /** On the way from the node within, or the middle of two, or the middle one of three. */
  @Test
  void theLineBendsInItsSquareWhereItMust() {
    Plane corner = (c, r) -> c > MIDDLE || r > MIDDLE ? Double.POSITIVE_INFINITY : 1.0;
    assertTrue(bent(corner, MIDDLE + 0.25, MIDDLE + 0.25), "one within");
    assertTrue(bent(corner, MIDDLE + 0.25, MIDDLE - 0.5), "two within");
    Plane notch = (c, r) -> c > MIDDLE && r > MIDDLE ? Double.POSITIVE_INFINITY : 1.0;
    assertTrue(bent(notch, MIDDLE + 0.25, MIDDLE + 0.25), "three within");
  }

  private static boolean bent(Plane plane, double column, double row) {
    for (double[] ring : new Contours(SIDE, SIDE, new Below(plane, 2.0, true)).rings()) {
      for (int i = 0; i < ring.length; i += 2) {
        if (ring[i] == column && ring[i + 1] == row) {
          return true;
        }
      }
    }
    return false;
  }
}
