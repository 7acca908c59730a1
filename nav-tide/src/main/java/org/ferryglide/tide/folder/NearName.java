package org.ferryglide.tide.folder;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the name that somebody may have meant. */
final class NearName {
  /** Nobody means a longer one. */
  private static final int LONGEST = 80;

  private NearName() {}

  /** The nearest of some names, if a slip of the pen could have made it the given one. */
  static Optional<String> of(String given, Collection<String> names) {
    if (given.length() > LONGEST) {
      return Optional.empty();
    }
    String plain = given.toLowerCase(Locale.ROOT);
    String nearest = "";
    int least = 1 + Math.max(1, Math.min(3, given.length() / 3));
    for (String name : names) {
      String other = name.toLowerCase(Locale.ROOT);
      boolean part = plain.length() >= 4 && (other.contains(plain) || plain.contains(other));
      int changes = part && !other.isEmpty() ? 1 : changes(plain, other);
      if (changes < least) {
        least = changes;
        nearest = name;
      }
    }
    return nearest.isEmpty() ? Optional.empty() : Optional.of(nearest);
  }

  /** The end of a message: a question, or nothing. */
  static String question(String given, Collection<String> names) {
    return of(given, names).map(name -> "; did you mean \"" + name + "\"?").orElse("");
  }

  /**
   * Letters to change, put in or take out.
   *
   * @see <a href="https://doi.org/10.1145/321796.321811">Wagner and Fischer (1974)</a>
   */
  private static int changes(String one, String other) {
    int[] above = new int[other.length() + 1];
    for (int j = 0; j < above.length; j++) {
      above[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      int[] row = new int[above.length];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int change = above[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(change, 1 + Math.min(above[j], row[j - 1]));
      }
      above = row;
    }
    return above[other.length()];
  }
}
