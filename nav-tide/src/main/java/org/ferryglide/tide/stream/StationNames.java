package org.ferryglide.tide.stream;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Names of stations in a sheet that seem to be meant for another. */
final class StationNames {
  /** Names that differ by at most so many letters may be one; common practice, no source. */
  private static final int MOST_LETTERS = 2;

  private StationNames() {}

  /**
   * The station that a name seems to be meant for.
   *
   * @param name a name in the sheet
   * @param rows how many rows each name has
   * @return a name of more rows within two letters of it, if {@code name} has not all the rows of a
   *     table; empty if there is none
   */
  static Optional<String> meant(String name, Map<String, Integer> rows) {
    int own = rows.getOrDefault(name, 0);
    if (own >= StreamTable.COMPLETE_ROWS) {
      return Optional.empty();
    }
    return rows.entrySet().stream()
        .filter(
            other -> other.getValue() > own && own + other.getValue() <= StreamTable.COMPLETE_ROWS)
        .map(Map.Entry::getKey)
        .filter(other -> distance(name, other) <= MOST_LETTERS)
        .findFirst();
  }

  /** Names for which others are misspelt; what is missing from them is no fault of their own. */
  static Set<String> misspelt(Map<String, Integer> rows) {
    Set<String> names = new LinkedHashSet<>();
    for (String name : rows.keySet()) {
      meant(name, rows).ifPresent(names::add);
    }
    return names;
  }

  /** Letters to change, add or leave out to get from one to the other (Levenshtein 1966). */
  private static int distance(String one, String other) {
    if (Math.abs(one.length() - other.length()) > MOST_LETTERS) {
      return MOST_LETTERS + 1;
    }
    int[] above = new int[other.length() + 1];
    for (int j = 0; j < above.length; j++) {
      above[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      int[] row = new int[above.length];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(above[j - 1] + change, 1 + Math.min(above[j], row[j - 1]));
      }
      above = row;
    }
    return above[other.length()];
  }
}
