package org.ferryglide.examples.page;

import java.util.ArrayList;
import java.util.List;

/** Words on as many lines of a picture as they need. */
final class Wrapped {
  private Wrapped() {}

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
