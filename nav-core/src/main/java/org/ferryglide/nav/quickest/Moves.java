package org.ferryglide.nav.quickest;

/**
 * The moves of a front from a node to others near it, in as many directions as there are fractions
 * of whole numbers up to the reach. A move and its reverse stand at opposite ends of the list.
 */
final class Moves {
  /** How many squares a move goes at most, either way. */
  final int reach;

  final int count;

  /** Squares along the line and across it. */
  final int[] columns;

  final int[] rows;
  final double[] metres;

  /** Direction over the ground, from north. */
  final double[] sine;

  final double[] cosine;

  Moves(SearchGrid grid, int reach) {
    this.reach = reach;
    int most = (2 * reach + 1) * (2 * reach + 1);
    columns = new int[most];
    rows = new int[most];
    metres = new double[most];
    sine = new double[most];
    cosine = new double[most];
    int n = 0;
    for (int c = -reach; c <= reach; c++) {
      for (int r = -reach; r <= reach; r++) {
        if (divisor(Math.abs(c), Math.abs(r)) == 1) {
          double squares = Math.hypot(c, r);
          columns[n] = c;
          rows[n] = r;
          metres[n] = squares * grid.spacing;
          sine[n] = (c * grid.plane.sine + r * grid.plane.cosine) / squares;
          cosine[n] = (c * grid.plane.cosine - r * grid.plane.sine) / squares;
          n++;
        }
      }
    }
    count = n;
  }

  private static int divisor(int a, int b) {
    return b == 0 ? a : divisor(b, a % b);
  }

  int reverse(int move) {
    return count - 1 - move;
  }
}
