package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * Lines of equal value on a square grid, closed round the lower side, by marching over its squares.
 * The rim counts as above every value. A side to a node whose value is infinite is crossed at its
 * other end: of what lies beyond nothing is known.
 */
final class Contours {
  private final int columns;
  private final int rows;
  private final IntToDoubleFunction values;
  private final double level;

  /** From each crossed side of a square, the side by which the line leaves the square. */
  private final int[] next;

  /** Takes a value for each node, whose number is its column times the rows and its row. */
  Contours(int columns, int rows, IntToDoubleFunction values, double level) {
    this.columns = columns;
    this.rows = rows;
    this.values = values;
    this.level = level;
    next = new int[2 * columns * rows];
    Arrays.fill(next, -1);
  }

  private double value(int node) {
    int column = node / rows;
    int row = node % rows;
    boolean inner = column > 0 && row > 0 && column < columns - 1 && row < rows - 1;
    return inner ? values.applyAsDouble(node) : Double.POSITIVE_INFINITY;
  }

  private boolean isWithin(int column, int row) {
    return value(column * rows + row) <= level;
  }

  /** The side from a node to the next column, or to the next row. */
  private int side(int column, int row, boolean toRow) {
    return 2 * (column * rows + row) + (toRow ? 1 : 0);
  }

  /** The rings: columns and rows in turn of their corners, the first not repeated. */
  List<double[]> rings() {
    for (int c = 0; c + 1 < columns; c++) {
      for (int r = 0; r + 1 < rows; r++) {
        march(c, r);
      }
    }
    List<double[]> rings = new ArrayList<>();
    for (int start = 0; start < next.length; start++) {
      if (next[start] < 0) {
        continue;
      }
      List<Integer> sides = new ArrayList<>();
      int side = start;
      while (side >= 0 && next[side] >= 0) {
        sides.add(side);
        int following = next[side];
        next[side] = -1;
        side = following;
      }
      double[] ring = new double[2 * sides.size()];
      for (int i = 0; i < sides.size(); i++) {
        crossing(sides.get(i), ring, 2 * i);
      }
      rings.add(ring);
    }
    return rings;
  }

  /** Links the crossed sides of a square, the lower values on the left. */
  private void march(int c, int r) {
    // the corners in turn, and the side from each to the following one
    boolean[] within = {
      isWithin(c, r), isWithin(c + 1, r), isWithin(c + 1, r + 1), isWithin(c, r + 1)
    };
    int[] sides = {
      side(c, r, false), side(c + 1, r, true), side(c, r + 1, false), side(c, r, true)
    };
    for (int i = 0; i < 4; i++) {
      if (within[i] && !within[(i + 1) % 4]) { // the line comes in here, and leaves where it is
        for (int k = 1; k < 4; k++) { // low again going backward round the square
          int j = (i + 4 - k) % 4;
          if (!within[j] && within[(j + 1) % 4]) {
            next[sides[i]] = sides[j];
            break;
          }
        }
      }
    }
  }

  private void crossing(int side, double[] ring, int at) {
    int node = side / 2;
    int column = node / rows;
    int row = node % rows;
    boolean toRow = side % 2 == 1;
    double from = value(node);
    double to = value(toRow ? node + 1 : node + rows);
    double share = Double.isInfinite(from) ? 1.0 : (level - from) / (to - from);
    ring[at] = column + (toRow ? 0.0 : share);
    ring[at + 1] = row + (toRow ? share : 0.0);
  }
}
