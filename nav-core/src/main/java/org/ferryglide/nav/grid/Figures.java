package org.ferryglide.nav.grid;

import org.ferryglide.nav.note.TextFormatException;

/**
 * The figures of a grid reference: easting, then northing, within a square of 100 km.
 *
 * @param precision how many there are
 * @param eastMetres metres east of the square's western edge, a multiple of the precision's side
 * @param northMetres metres north of the square's southern edge
 */
record Figures(GridPrecision precision, int eastMetres, int northMetres) {

  /**
   * What rounding of a position in degrees may take from a coordinate, metres, with ten times to
   * spare: 3.2e-9 by the longitude's last place, 5e-9 by the projection. A coordinate closer than
   * this below a whole unit counts as that unit, so that the corner of a square lies in it.
   */
  static final double ROUNDING_METRES = 1e-7;

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** Index of the first character that is no space. */
  static int skipSpaces(String text, int from) {
    int place = from;
    while (place < text.length() && (text.charAt(place) == ' ' || text.charAt(place) == '\u00a0')) {
      place++;
    }
    return place;
  }

  /** Whole metres, truncated as the standards say. */
  static int wholeMetres(double metres) {
    return (int) Math.floor(metres + ROUNDING_METRES);
  }

  /** Appends the figures of a point, truncated; {@code between} parts easting from northing. */
  static void append(
      int eastMetres, int northMetres, GridPrecision precision, String between, StringBuilder out) {
    if (precision.digits() > 0) {
      appendOne(eastMetres, precision, out);
      out.append(between);
      appendOne(northMetres, precision, out);
    }
  }

  private static void appendOne(int metres, GridPrecision precision, StringBuilder out) {
    int within = Math.floorMod(metres, 100_000);
    for (int unit = 10_000; unit >= precision.sideMetres(); unit /= 10) {
      out.append((char) ('0' + within / unit % 10));
    }
  }

  /**
   * Reads the rest of a reference.
   *
   * @param text the whole reference
   * @param from index after the letters
   * @throws TextFormatException if the figures are not 0, 2, 4, 6, 8 or 10 digits, together or in
   *     two groups of equal length
   */
  static Figures read(String text, int from) {
    StringBuilder digits = new StringBuilder();
    int firstGroup = 0;
    boolean inGroup = false;
    int groups = 0;
    for (int i = from; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == ' ' || c == '\u00a0') {
        inGroup = false;
      } else if (isDigit(c)) {
        if (!inGroup) {
          groups++;
          inGroup = true;
        }
        if (groups == 1) {
          firstGroup++;
        }
        if (groups > 2) {
          throw new TextFormatException("figures come in one group or in two", text, i);
        }
        if (digits.length() == 10) {
          throw new TextFormatException("at most ten figures may follow the letters", text, i);
        }
        digits.append(c);
      } else {
        throw new TextFormatException("only figures may follow the letters", text, i);
      }
    }
    if (digits.length() % 2 != 0 || (groups == 2 && firstGroup != digits.length() / 2)) {
      throw new TextFormatException(
          "easting and northing must have the same number of figures", text, text.length());
    }
    GridPrecision precision = GridPrecision.ofDigits(digits.length() / 2);
    return new Figures(
        precision, value(digits, 0, precision), value(digits, precision.digits(), precision));
  }

  private static int value(StringBuilder digits, int from, GridPrecision precision) {
    int value = 0;
    for (int i = from; i < from + precision.digits(); i++) {
      value = 10 * value + (digits.charAt(i) - '0');
    }
    return value * precision.sideMetres();
  }
}
