package org.ferryglide.nav.quickest;

/** What bars moves between the nodes of a grid: land, and areas while they are closed. */
final class Barriers {
  /** An area is entered so long after it opens, seconds: beyond the rounding of times. */
  private static final double OPENED_SECONDS = 1e-3;

  private final SearchGrid grid;
  private final Waters waters;

  /** Whether land is within a move of each node; empty in open water. */
  private final boolean[] nearLand;

  /** When each node lies in a closed area for the last time, seconds since 1970. */
  private final double[] closedUntil;

  Barriers(SearchGrid grid, Waters waters, int reach) {
    this.grid = grid;
    this.waters = waters;
    nearLand = waters.isOpen() ? new boolean[0] : NearLand.of(grid, waters.land(), reach);
    closedUntil = new double[hasClosures() ? grid.nodes() : 0];
    for (int node = 0; node < closedUntil.length; node++) {
      closedUntil[node] = waters.lastClosed(grid.latitude(node), grid.longitude(node));
    }
  }

  /** Whether a move crosses land. */
  boolean isLand(int node, int other) {
    return (nearLand[node] || nearLand[other])
        && waters
            .land()
            .blocks(
                grid.latitude(node),
                grid.longitude(node),
                grid.latitude(other),
                grid.longitude(other));
  }

  /**
   * Whether a move touches an area that is closed then.
   *
   * @param from when it begins, seconds since 1970-01-01T00:00:00Z
   * @param until when it ends
   */
  boolean isClosed(int node, int other, double from, double until) {
    return !waters.closures().isEmpty()
        && waters.isClosed(
            grid.latitude(node),
            grid.longitude(node),
            grid.latitude(other),
            grid.longitude(other),
            from,
            until);
  }

  boolean hasClosures() {
    return !waters.closures().isEmpty();
  }

  /** When a node lies in a closed area for the last time; only where there are closures. */
  double lastClosed(int node) {
    return closedUntil[node];
  }

  /** When some area has just opened, after a time; infinite if none does. */
  double opensAfter(double time) {
    double first = Double.POSITIVE_INFINITY;
    for (Waters.Closure closure : waters.closures()) {
      double opens = closure.until() + OPENED_SECONDS;
      if (opens > time && opens < first) {
        first = opens;
      }
    }
    return first;
  }
}
