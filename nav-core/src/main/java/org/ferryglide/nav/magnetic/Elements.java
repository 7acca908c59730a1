package org.ferryglide.nav.magnetic;

/** The seven elements of a field and their changes, from the components along the three axes. */
final class Elements {
  private Elements() {}

  /** Reads north, east, down and writes horizontal, total, dip and declination behind them. */
  static void fromComponents(double[] row, int offset) {
    double north = row[offset + MagneticSnapshot.NORTH];
    double east = row[offset + MagneticSnapshot.EAST];
    double down = row[offset + MagneticSnapshot.DOWN];
    double horizontal = Math.sqrt(north * north + east * east);
    row[offset + MagneticSnapshot.HORIZONTAL] = horizontal;
    row[offset + MagneticSnapshot.TOTAL] = Math.sqrt(horizontal * horizontal + down * down);
    row[offset + MagneticSnapshot.DIP] = Math.toDegrees(Math.atan2(down, horizontal));
    row[offset + MagneticSnapshot.DECLINATION] = Math.toDegrees(Math.atan2(east, north));
  }

  /** Reads the elements and the changes of the components, writes the changes of the others. */
  static void changes(double[] row, int elements, int changes) {
    double north = row[elements + MagneticSnapshot.NORTH];
    double east = row[elements + MagneticSnapshot.EAST];
    double down = row[elements + MagneticSnapshot.DOWN];
    double horizontal = row[elements + MagneticSnapshot.HORIZONTAL];
    double total = row[elements + MagneticSnapshot.TOTAL];
    double northChange = row[changes + MagneticSnapshot.NORTH];
    double eastChange = row[changes + MagneticSnapshot.EAST];
    double downChange = row[changes + MagneticSnapshot.DOWN];
    double horizontalChange = (north * northChange + east * eastChange) / horizontal;
    row[changes + MagneticSnapshot.HORIZONTAL] = horizontalChange;
    row[changes + MagneticSnapshot.TOTAL] =
        (north * northChange + east * eastChange + down * downChange) / total;
    row[changes + MagneticSnapshot.DIP] =
        Math.toDegrees((horizontal * downChange - down * horizontalChange) / (total * total));
    row[changes + MagneticSnapshot.DECLINATION] =
        Math.toDegrees((north * eastChange - east * northChange) / (horizontal * horizontal));
  }
}
