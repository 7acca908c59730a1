package org.ferryglide.nav.passage;

/** Indices in the order of their keys, for the few that a passage has. */
final class Sorted {
  private Sorted() {}

  /** Fills in the indices of some keys, the least first; of equal keys the earlier. */
  static void ascending(double[] keys, int[] order) {
    for (int i = 0; i < keys.length; i++) {
      int at = i;
      for (; at > 0 && keys[order[at - 1]] > keys[i]; at--) {
        order[at] = order[at - 1];
      }
      order[at] = i;
    }
  }
}
