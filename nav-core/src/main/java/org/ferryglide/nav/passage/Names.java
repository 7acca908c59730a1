package org.ferryglide.nav.passage;

/** Names and short notes that will be printed: nothing that a terminal would obey. */
final class Names {
  private Names() {}

  static String checked(String text, String what) {
    if (checkedOrEmpty(text, what).trim().isEmpty()) {
      throw new IllegalArgumentException(what + " must not be empty, but was \"" + text + "\"");
    }
    return text;
  }

  static String checkedOrEmpty(String text, String what) {
    for (int i = 0; i < text.length(); i++) {
      if (isControl(text.charAt(i))) {
        throw new IllegalArgumentException(
            what + " must hold no control characters, but has one at character " + (i + 1));
      }
    }
    return text;
  }

  /** Control characters, other ends of a line, and what turns the direction of writing. */
  private static boolean isControl(char c) {
    return Character.isISOControl(c)
        || (c >= '\u2028' && c <= '\u202e')
        || (c >= '\u2066' && c <= '\u2069');
  }
}
