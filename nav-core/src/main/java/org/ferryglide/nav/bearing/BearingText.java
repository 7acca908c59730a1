package org.ferryglide.nav.bearing;

import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.note.TextFormatException;
import org.ferryglide.nav.reading.AngleReader;

/** Checks and reading shared by the four bearings and the three angles between them. */
final class BearingText {
  private BearingText() {}

  static double inCircle(double degrees) {
    if (!(degrees >= 0.0 && degrees < 360.0)) { // written so that NaN fails
      throw new IllegalArgumentException("bearing must be in [0, 360) degrees, but was " + degrees);
    }
    return degrees + 0.0;
  }

  static double reducedFinite(double degrees) {
    return Angles.reduced(Arguments.finite(degrees, "bearing", "degrees"));
  }

  static String gridName(String grid) {
    if (grid.isEmpty() || grid.indexOf('[') >= 0 || grid.indexOf(']') >= 0) {
      throw new IllegalArgumentException(
          "name of a grid must not be empty and must have no square brackets, but was \""
              + grid
              + "\"");
    }
    return grid;
  }

  /** Where the square bracket opens that holds a grid's name at the end of a text. */
  static int gridBracket(String text, String reason) {
    int open = text.indexOf('[');
    if (open < 0 || !text.endsWith("]") || open + 2 >= text.length()) {
      throw new TextFormatException(reason, text, open < 0 ? text.length() : open);
    }
    for (int i = open + 1; i < text.length() - 1; i++) {
      if (text.charAt(i) == '[' || text.charAt(i) == ']') {
        throw new TextFormatException("the name of a grid must have no square brackets", text, i);
      }
    }
    return open;
  }

  static void sameGrid(String one, String other) {
    if (!one.equals(other)) {
      throw new IllegalArgumentException(
          "both must be of the same grid, but were of \"" + one + "\" and \"" + other + "\"");
    }
  }

  /** Degrees in [0, 360], minutes with their mark or none, then optionally the north's letter. */
  static double parse(String text, char letter) {
    AngleReader reader = new AngleReader(text);
    int start = reader.index();
    double degrees = reader.number("a bearing starts with its degrees, as in 045°" + letter);
    if (reader.skipDegreeMark() && reader.atDigit()) {
      if (degrees != Math.rint(degrees)) {
        throw reader.refuse("no minutes may follow degrees that have decimals");
      }
      degrees += reader.below60("minutes") / 60.0;
      // an m for minutes, which positions may have, would be taken for the letter of magnetic north
      if (!reader.skip("'′’")) {
        throw reader.refuse("minutes of a bearing need their mark, as in 049°15'" + letter);
      }
    }
    if (!(degrees <= 360.0)) {
      throw new TextFormatException("bearing must be in [0, 360] degrees", text, start);
    }
    if (!reader.atEnd()) {
      reader.expect(letter, "only the degree mark and the letter " + letter + " may follow");
    }
    reader.expectEnd("nothing may follow the letter " + letter);
    return degrees;
  }
}
