package org.ferryglide.examples.page;

import java.util.ArrayList;
import java.util.List;

/** Words on as many lines of a picture as they need. */
final class Wrapped {
  private static final int LONGEST_NAME = 32;

  private Wrapped() {}

  /** A name that would run over the picture is cut, and shown to be. */
  static String name(String words) {
    return words.codePointCount(0, words.length()) <= LONGEST_NAME
        ? words
        : words.substring(0, words.offsetByCodePoints(0, LONGEST_NAME - 1)) + "…";
  }

  static List<String> lines(String words, double wide, double size) {
    int most = Math.max(8, (int) (wide / Ink.width("0", size)));
    List<String> lines = new ArrayList<>();
    String rest = words;
    while (rest.length() > most) {
      int space = rest.lastIndexOf(' ', most);
      int cut = space > 0 ? space : most;
      lines.add(rest.substring(0, cut));
      rest = rest.substring(cut).trim();
    }
    lines.add(rest);
    return lines;
  }
}
