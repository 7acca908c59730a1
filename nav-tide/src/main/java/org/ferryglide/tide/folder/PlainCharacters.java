package org.ferryglide.tide.folder;

import java.util.Locale;
import org.ferryglide.tide.sheet.Sheet;

/** Characters that text for people may hold: no controls, and nothing that reorders or hides. */
final class PlainCharacters {
  private PlainCharacters() {}

  /** Whether a character would move a terminal's cursor, turn text round or not be seen. */
  static boolean isRefused(char c) {
    return c != '\n' && c != '\r' && !Sheet.isPlain(c);
  }

  /** Where the first surrogate without its other half stands; the text's length if none does. */
  static int firstHalf(String text) {
    int i = 0;
    while (i < text.length()) {
      int point = text.codePointAt(i);
      if (point <= Character.MAX_VALUE && Character.isSurrogate((char) point)) {
        return i;
      }
      i += Character.charCount(point);
    }
    return i;
  }

  /** What a refused character is called in a message: {@code U+001B}. */
  static String name(char c) {
    String hex = Integer.toHexString(c).toUpperCase(Locale.ROOT);
    return "U+" + "0000".substring(hex.length()) + hex;
  }

  /** Text on one line, with a refused character shown by its name. */
  static String visible(String text) {
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (isRefused(c) || c == '\n' || c == '\r' || c == '\t') {
        plain.append('<').append(name(c)).append('>');
      } else {
        plain.append(c);
      }
    }
    return plain.toString();
  }
}
