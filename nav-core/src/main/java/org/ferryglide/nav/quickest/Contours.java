package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The lines round part of the nodes of a square grid, by marching over its squares. The rim is
 * outside whatever the nodes there say.
 */
final class Contours {
  /** What is within the lines. */
  interface Area {
    /** Whether a node, whose number is its column times the rows and its row, lies within. */
    boolean isWithin(int node);

    /** How far the line crosses the side between two nodes, from 0 at the one within to 1. */
    double share(int within, int beyond);

    /**
     * How far a line that must bend within a square may go from one place towards another, from 0
     * to 1; NaN if it may run straight. Places are columns and rows.
     */
    double bend(int within, double[] from, double[] towards, double[] lineFrom, double[] lineTo);
  }

  private final int columns;
  private final int rows;
  private final Area area;

  /** From each crossed side of a square, the side by which the line leaves the square. */
  private final int[] next;

  /** Where the line crosses each side, once it was asked for. */
  private final Map<Integer, double[]> crossings = new HashMap<>();

  /** Where the line bends between a side and the next. */
  private final Map<Integer, double[]> bends = new HashMap<>();

  Contours(int columns, int rows, Area area) {
    this.columns = columns;
    this.rows = rows;
    this.area = area;
    next = new int[2 * columns * rows];
    Arrays.fill(next, -1);
  }

  private boolean isWithin(int column, int row) {
    return column > 0
        && row > 0
        && column < columns - 1
        && row < rows - 1
        && area.isWithin(column * rows + row);
  }

  /** The side from a node to the next column, or to the next row. */
  private int side(int column, int row, boolean toRow) {
    return 2 * (column * rows + row) + (toRow ? 1 : 0);
  }

  /**
   * The rings: columns and rows in turn of their corners, of which no two running are the same and
   * the first is not repeated; those of less than three corners are left out.
   */
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
      double[] ring = ring(sides);
      if (ring.length >= 6) {
        rings.add(ring);
      }
    }
    return rings;
  }

  private double[] ring(List<Integer> sides) {
    double[] ring = new double[4 * sides.size()];
    int corners = 0;
    for (int side : sides) {
      corners = added(ring, corners, crossing(side));
      double[] bend = bends.get(side);
      if (bend != null) {
        corners = added(ring, corners, bend);
      }
    }
    while (corners > 1 && isSame(ring, 0, corners - 1)) {
      corners--;
    }
    return Arrays.copyOf(ring, 2 * corners);
  }

  private static int added(double[] ring, int corners, double[] corner) {
    System.arraycopy(corner, 0, ring, 2 * corners, 2);
    return corners > 0 && isSame(ring, corners - 1, corners) ? corners : corners + 1;
  }

  private static boolean isSame(double[] ring, int corner, int other) {
    return ring[2 * corner] == ring[2 * other] && ring[2 * corner + 1] == ring[2 * other + 1];
  }

  /** Links the crossed sides of a square, what is within on the left. */
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
            bend(new double[][] {{c, r}, {c + 1, r}, {c + 1, r + 1}, {c, r + 1}}, i, k, sides);
            break;
          }
        }
      }
    }
  }

  /**
   * Bends the line from a side backward round its square to another, if it must: on the way from
   * the middle of the corners within to the middle of those beyond.
   */
  private void bend(double[][] corners, int side, int count, int[] sides) {
    double[] near = corners[side];
    double[] before = corners[(side + 3) % 4];
    double[] after = corners[(side + 1) % 4];
    double[] across = corners[(side + 2) % 4];
    double[] from = count == 1 ? near : count == 2 ? middle(near, before) : before;
    double[] towards = count == 1 ? across : count == 2 ? middle(after, across) : after;
    double[] base = count == 3 ? from : near;
    int column = (int) base[0];
    int row = (int) base[1];
    double share =
        area.bend(
            column * rows + row,
            from,
            towards,
            crossing(sides[side]),
            crossing(sides[(side + 4 - count) % 4]));
    if (!Double.isNaN(share)) {
      bends.put(
          sides[side],
          new double[] {
            from[0] + share * (towards[0] - from[0]), from[1] + share * (towards[1] - from[1])
          });
    }
  }

  private static double[] middle(double[] one, double[] two) {
    return new double[] {0.5 * (one[0] + two[0]), 0.5 * (one[1] + two[1])};
  }

  private double[] crossing(int side) {
    double[] known = crossings.get(side);
    if (known != null) {
      return known;
    }
    int node = side / 2;
    int column = node / rows;
    int row = node % rows;
    boolean toRow = side % 2 == 1;
    int other = toRow ? node + 1 : node + rows;
    double share = isWithin(column, row) ? area.share(node, other) : 1.0 - area.share(other, node);
    double[] crossing = {column + (toRow ? 0.0 : share), row + (toRow ? share : 0.0)};
    crossings.put(side, crossing);
    return crossing;
  }
}
