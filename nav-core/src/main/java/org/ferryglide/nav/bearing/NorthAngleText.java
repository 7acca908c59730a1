package org.ferryglide.nav.bearing;

import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.note.TextFormatException;
import org.ferryglide.nav.reading.AngleReader;

/** How variation, deviation and convergence are written and read. */
final class NorthAngleText {
  /** Degrees of a text no longer than this need no minutes. */
  private static final int SHORT = 8;

  private NorthAngleText() {}

  static double parse(String text, String name) {
    AngleReader reader = new AngleReader(text);
    int letterBefore = reader.hemisphere('E', 'W');
    int start = reader.index();
    double degrees;
    if (reader.atLoneMinutes()) {
      degrees = reader.below60("minutes") / 60.0;
      reader.skip("'′’");
    } else {
      degrees = reader.angle(name);
    }
    if (!(degrees <= 180.0)) {
      throw new TextFormatException(name + " must be in [0, 180] degrees", text, start);
    }
    int sign = letterBefore != 0 ? letterBefore : reader.hemisphere('E', 'W');
    if (sign == 0 && degrees != 0.0) {
      throw reader.refuse(name + " ends with E or W");
    }
    reader.expectEnd("nothing may follow the letter E or W");
    return sign < 0 ? -degrees : degrees;
  }

  /** Degrees without loss, or degrees and minutes where they say the same in a shorter text. */
  static String text(double degreesEast) {
    double size = Math.abs(degreesEast);
    String degrees = size + "°";
    if (degrees.length() > SHORT) {
      long whole = (long) size;
      double minutes = Math.rint((size - whole) * 600.0) / 10.0;
      if (minutes < 60.0 && whole + minutes / 60.0 == size) { // as AngleReader adds them
        degrees = whole + "°" + (minutes < 10.0 ? "0" : "") + Arguments.plain(minutes) + "'";
      }
    }
    return degrees + letter(degreesEast);
  }

  static String degreesAndMinutes(double degreesEast) {
    long minutes = Math.round(Math.abs(degreesEast) * 60.0);
    return minutes / 60
        + "°"
        + (minutes % 60 < 10 ? "0" : "")
        + minutes % 60
        + "'"
        + letter(minutes == 0 ? 0.0 : degreesEast);
  }

  private static String letter(double degreesEast) {
    return degreesEast > 0 ? "E" : degreesEast < 0 ? "W" : "";
  }
}
