package org.ferryglide.nav.geodesy;

/**
 * Ends of many lines, most of them short: block by block in loops of {@link Lanes} where many rows
 * of a block are short, else row by row. Holds its workspace, and so belongs to one thread.
 */
abstract class EndRows {
  final Ellipsoid ellipsoid;
  private final double longestMetres;
  private final double greatestLatitude;

  /** What {@link #work} finds of each row: how far its end lies north and east, degrees. */
  final double[] north = Lanes.lane();

  final double[] east = Lanes.lane();

  /** Sines and cosines of the courses. */
  final double[] sinCourse = Lanes.lane();

  final double[] cosCourse = Lanes.lane();

  private final double[] quarter = Lanes.lane();
  private final double[] a = Lanes.lane();
  private final double[] b = Lanes.lane();

  /**
   * Makes the workspace.
   *
   * @param longestMetres longest line whose series hold; below 0 if none does on this ellipsoid
   * @param greatestLatitude nearer to a pole they do not, degrees
   */
  EndRows(Ellipsoid ellipsoid, double longestMetres, double greatestLatitude) {
    this.ellipsoid = ellipsoid;
    this.longestMetres = longestMetres;
    this.greatestLatitude = greatestLatitude;
  }

  /** Works a block of rows; {@link #sinCourse} and {@link #cosCourse} are set. */
  abstract void work(double[] lat, double[] metres, int first, int n);

  /** Writes what lies beyond latitude and longitude. */
  abstract void writeMore(int i, double courseDegrees, double[] out, int at);

  /** Works one row, of whatever length. */
  abstract void single(
      double lat, double lon, double courseDegrees, double metres, double[] out, int at);

  /**
   * Works the rows and writes what is found of each.
   *
   * @param width how many numbers lie from the first of a row to that of the next
   */
  final void direct(
      double[] lat,
      double[] lon,
      double[] courseDegrees,
      double[] metres,
      int from,
      int until,
      double[] out,
      int offset,
      int width) {
    for (int first = from; first < until; first += Lanes.ROWS) {
      int n = Math.min(Lanes.ROWS, until - first);
      int shortRows = 0;
      for (int row = first; row < first + n; row++) {
        shortRows += isShort(lat[row], lon[row], courseDegrees[row], metres[row]) ? 1 : 0;
      }
      boolean manyShort = Lanes.isWorthIt(shortRows, n);
      if (manyShort) {
        courses(courseDegrees, first, n);
        work(lat, metres, first, n);
      }
      for (int i = 0; i < n; i++) {
        int row = first + i;
        int at = offset + width * (row - from);
        if (manyShort && isShort(lat[row], lon[row], courseDegrees[row], metres[row])) {
          out[at] = lat[row] + north[i] + 0.0;
          out[at + 1] = Degrees.longitude(lon[row] + east[i]);
          writeMore(i, courseDegrees[row], out, at);
        } else {
          single(lat[row], lon[row], courseDegrees[row], metres[row], out, at);
        }
      }
    }
  }

  private boolean isShort(double lat, double lon, double courseDegrees, double metres) {
    return Math.abs(metres) <= longestMetres
        && Math.abs(lat) <= greatestLatitude
        && Math.abs(courseDegrees) <= 360.0
        && Math.abs(lon) <= 360.0;
  }

  /** From a quarter of each course, doubled twice. */
  private void courses(double[] courseDegrees, int first, int n) {
    for (int i = 0; i < n; i++) {
      quarter[i] = courseDegrees[first + i] * (0.25 * Lanes.HALF_DEGREE);
    }
    Lanes.sinesAndCosines(quarter, n, a, b, sinCourse, cosCourse);
    for (int i = 0; i < n; i++) {
      a[i] = 2.0 * sinCourse[i] * cosCourse[i];
    }
    for (int i = 0; i < n; i++) {
      b[i] = 1.0 - 2.0 * sinCourse[i] * sinCourse[i];
    }
    for (int i = 0; i < n; i++) {
      sinCourse[i] = 2.0 * a[i] * b[i];
    }
    for (int i = 0; i < n; i++) {
      cosCourse[i] = 1.0 - 2.0 * a[i] * a[i];
    }
  }
}
