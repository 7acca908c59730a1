package org.ferryglide.nav.quickest;

/**
 * The water reached by a time: what {@link Contours} draws a line round. The line crosses each side
 * of a square at a place that a timed track reaches by then, so that it never lies beyond a wall or
 * in a closed area. Not thread-safe.
 */
final class ReachedArea implements Contours.Area {
  private final SearchGrid grid;
  private final StraightTimes times;
  private final Obstacles land;
  private final double level;
  private final boolean[] within;

  ReachedArea(SearchGrid grid, StraightTimes times, Obstacles land, double level) {
    this.grid = grid;
    this.times = times;
    this.land = land;
    this.level = level;
    boolean[] reached = new boolean[grid.nodes()];
    for (int node = 0; node < reached.length; node++) {
      reached[node] = times.at(node) <= level;
    }
    within = reached.clone();
    if (land.isEmpty()) {
      return;
    }
    for (int node = 0; node < reached.length; node++) {
      if (reached[node]) {
        int above = node % grid.rows == grid.rows - 1 ? node : node + 1;
        int ahead = node + grid.rows < reached.length ? node + grid.rows : node;
        leaveOutBehindWall(reached, node, above);
        leaveOutBehindWall(reached, node, ahead);
      }
    }
  }

  /** Of two nodes on either side of a wall up to which the craft has not got, the later is out. */
  private void leaveOutBehindWall(boolean[] reached, int node, int other) {
    if (!reached[other]
        || !land.blocks(
            grid.latitude(node),
            grid.longitude(node),
            grid.latitude(other),
            grid.longitude(other))) {
      return;
    }
    double from = share(node, other) + 2.0 * StraightTimes.FINE_SHARE;
    double until = 1.0 - share(other, node) - 2.0 * StraightTimes.FINE_SHARE;
    if (from < until && !(isLand(node, other, from) && isLand(node, other, until))) {
      within[times.at(node) > times.at(other) ? node : other] = false;
    }
  }

  private boolean isLand(int node, int other, double share) {
    double along = grid.along(node) + share * (grid.along(other) - grid.along(node));
    double right = grid.right(node) + share * (grid.right(other) - grid.right(node));
    return land.contains(grid.plane.latitude(along, right), grid.plane.longitude(along, right));
  }

  @Override
  public boolean isWithin(int node) {
    return within[node];
  }

  @Override
  public double share(int within, int beyond) {
    return times.share(within, beyond, level);
  }

  @Override
  public double bend(
      int within, double[] from, double[] towards, double[] lineFrom, double[] lineTo) {
    if (!crossesLand(lineFrom, lineTo)) {
      return Double.NaN;
    }
    double share =
        times.share(
            within,
            along(from),
            right(from),
            times.at(within),
            along(towards),
            right(towards),
            Double.POSITIVE_INFINITY,
            level);
    double[] bend = {
      from[0] + share * (towards[0] - from[0]), from[1] + share * (towards[1] - from[1])
    };
    return crossesLand(lineFrom, bend) || crossesLand(bend, lineTo) ? 0.0 : share;
  }

  private boolean crossesLand(double[] from, double[] to) {
    return !land.isEmpty()
        && land.blocks(latitude(from), longitude(from), latitude(to), longitude(to));
  }

  private double along(double[] place) {
    return grid.along(0) + place[0] * grid.spacing;
  }

  private double right(double[] place) {
    return grid.right(0) + place[1] * grid.spacing;
  }

  private double latitude(double[] place) {
    return grid.plane.latitude(along(place), right(place));
  }

  private double longitude(double[] place) {
    return grid.plane.longitude(along(place), right(place));
  }
}
