package org.ferryglide.nav.quickest;

import java.util.Arrays;

/**
 * The greatest speeds over the ground in all directions of a front's moves at once: the motions
 * over the ground on headings all round form a polygon, and each move's direction is cut with it.
 *
 * <p>Directions are measured by the share of the way round a square that they point at, which grows
 * with the angle and costs no arc tangent.
 */
final class Polar {
  /** Directions are looked up by so many parts of the way round. */
  private static final int PARTS = 256;

  private final CourseSpeed speeds;
  private final Moves moves;

  /** The moves by the way round, and how far round each points, in [0, 4). */
  private final int[] order;

  private final double[] round;

  /** The first of them at or beyond each part of the way round. */
  private final int[] firstOf = new int[PARTS + 1];

  private final double[] motions = new double[2 * (CourseSpeed.POLAR_HEADINGS + 1)];

  Polar(CourseSpeed speeds, Moves moves) {
    this.speeds = speeds;
    this.moves = moves;
    int n = moves.count;
    double[] sorted = new double[n];
    for (int m = 0; m < n; m++) {
      sorted[m] = round(moves.sine[m], moves.cosine[m]);
    }
    round = sorted.clone();
    Arrays.sort(round);
    order = new int[n];
    for (int m = 0; m < n; m++) {
      order[Arrays.binarySearch(round, sorted[m])] = m;
    }
    int next = 0;
    for (int part = 0; part <= PARTS; part++) {
      while (next < n && round[next] < 4.0 * part / PARTS) {
        next++;
      }
      firstOf[part] = next;
    }
  }

  /** How far round a square a direction points, in [0, 4). */
  private static double round(double east, double north) {
    double size = Math.abs(east) + Math.abs(north);
    double share = size == 0.0 ? 0.0 : east / size;
    double all = north >= 0.0 ? 1.0 + share : 3.0 - share;
    return all >= 4.0 ? all - 4.0 : all;
  }

  /**
   * Fills in the speed made good on each move, metres a second; 0 where there is none.
   *
   * @param flow as {@link CraftMotion#flow} gave it
   */
  void fill(double[] flow, float[] out) {
    speeds.motions(flow, motions);
    Arrays.fill(out, 0.0f);
    double east0 = motions[0];
    double north0 = motions[1];
    double round0 = round(east0, north0);
    for (int i = 2; i < motions.length; i += 2) {
      double east1 = motions[i];
      double north1 = motions[i + 1];
      double round1 = round(east1, north1);
      double turn = round1 - round0;
      turn = turn > 2.0 ? turn - 4.0 : turn < -2.0 ? turn + 4.0 : turn;
      if (turn >= 0.0) {
        cut(round0, turn, east0, north0, east1, north1, out);
      } else {
        cut(round1, -turn, east0, north0, east1, north1, out);
      }
      east0 = east1;
      north0 = north1;
      round0 = round1;
    }
  }

  /** Cuts one side of the polygon with the moves that point at it. */
  private void cut(
      double from,
      double turn,
      double east0,
      double north0,
      double east1,
      double north1,
      float[] out) {
    int n = order.length;
    int i = firstOf[(int) (from * (PARTS / 4))];
    while (i < n && round[i] < from) {
      i++;
    }
    for (int k = 0; k < n; k++, i++) {
      boolean past = i >= n;
      int at = past ? i - n : i;
      if ((past ? round[at] + 4.0 : round[at]) > from + turn) {
        return;
      }
      int m = order[at];
      double side0 = east0 * moves.cosine[m] - north0 * moves.sine[m];
      double side1 = east1 * moves.cosine[m] - north1 * moves.sine[m];
      double part = side0 == side1 ? 0.0 : side0 / (side0 - side1);
      double east = east0 + part * (east1 - east0);
      double north = north0 + part * (north1 - north0);
      float speed = (float) (east * moves.sine[m] + north * moves.cosine[m]);
      out[m] = Math.max(out[m], speed);
    }
  }
}
