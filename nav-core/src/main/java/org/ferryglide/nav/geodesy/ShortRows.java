package org.ferryglide.nav.geodesy;

/**
 * Solutions of many lines between two points, most of them short: block by block in loops of {@link
 * Lanes} where many rows of a block are short, else row by row. Holds its workspace, and so belongs
 * to one thread.
 */
abstract class ShortRows {
  final Ellipsoid ellipsoid;

  /** Differences of latitude and longitude, radians. */
  final double[] delta = Lanes.lane();

  final double[] lambda = Lanes.lane();

  /** What {@link #work} finds of each row: its first course, degrees, and its length. */
  final double[] course = Lanes.lane();

  final double[] metres = Lanes.lane();

  ShortRows(Ellipsoid ellipsoid) {
    this.ellipsoid = ellipsoid;
  }

  /** Works a block of rows; {@link #delta} and {@link #lambda} are set. */
  abstract void work(double[] lat1, double[] lat2, int first, int n);

  /** Whether the series of {@link #work} did for a short row of the block. */
  abstract boolean isSettled(int i);

  /** Writes what {@link #work} found of a row. */
  abstract void write(int i, double[] out, int at);

  /** Solves one row, of whatever length. */
  abstract void single(
      double lat1, double lon1, double lat2, double lon2, double[] out, int offset);

  /** Whether the series hold on this ellipsoid. */
  boolean isRoundEnough() {
    return true;
  }

  /**
   * Solves the rows, and writes what is found of each.
   *
   * @param width how many numbers lie from the first of a row to that of the next
   */
  final void inverse(
      double[] lat1,
      double[] lon1,
      double[] lat2,
      double[] lon2,
      int from,
      int until,
      double[] out,
      int offset,
      int width) {
    for (int first = from; first < until; first += Lanes.ROWS) {
      int n = Math.min(Lanes.ROWS, until - first);
      boolean manyShort = isRoundEnough() && Lanes.areManyShort(lat1, lon1, lat2, lon2, first, n);
      if (manyShort) {
        Lanes.differences(lat1, lat2, first, n, delta);
        Lanes.differences(lon1, lon2, first, n, lambda);
        work(lat1, lat2, first, n);
      }
      for (int i = 0; i < n; i++) {
        int row = first + i;
        int at = offset + width * (row - from);
        if (manyShort
            && Lanes.isShort(lat1[row], lon1[row], lat2[row], lon2[row])
            && isSettled(i)
            && course[i] <= 360.0) {
          write(i, out, at);
        } else {
          single(lat1[row], lon1[row], lat2[row], lon2[row], out, at);
        }
      }
    }
  }
}
