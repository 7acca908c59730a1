package org.ferryglide.nav.magnetic;

/** The seven elements of a field and their changes, from the components along the three axes. */
final class Elements {
  private Elements() {}

  /** Reads north, east, down and writes horizontal, total, dip and declination behind them. */
  static void fromComponents(double[] row, int offset) {
    double north = row[offset];
    double east = row[offset + 1];
    double down = row[offset + 2];
    double horizontal = Math.sqrt(north * north + east * east);
    row[offset + 3] = horizontal;
    row[offset + 4] = Math.sqrt(horizontal * horizontal + down * down);
    row[offset + 5] = Math.toDegrees(Math.atan2(down, horizontal));
    row[offset + 6] = Math.toDegrees(Math.atan2(east, north));
  }

  /** Reads the elements and the changes of the components, writes the changes of the others. */
  static void changes(double[] row, int elements, int changes) {
    double north = row[elements];
    double east = row[elements + 1];
    double down = row[elements + 2];
    double horizontal = row[elements + 3];
    double total = row[elements + 4];
    double northChange = row[changes];
    double eastChange = row[changes + 1];
    double downChange = row[changes + 2];
    double horizontalChange = (north * northChange + east * eastChange) / horizontal;
    row[changes + 3] = horizontalChange;
    row[changes + 4] = (north * northChange + east * eastChange + down * downChange) / total;
    row[changes + 5] =
        Math.toDegrees((horizontal * downChange - down * horizontalChange) / (total * total));
    row[changes + 6] =
        Math.toDegrees((north * eastChange - east * northChange) / (horizontal * horizontal));
  }
}
