package org.ferryglide.nav.quickest;

import java.util.List;

/**
 * Where a path may go: not across land, and not into an area while it is closed.
 *
 * <pre>{@code
 * Waters waters = new Waters(Obstacles.of(islands), List.of());
 * }</pre>
 *
 * @param land what may never be crossed
 * @param closures areas closed for a time
 */
public record Waters(Obstacles land, List<Closure> closures) {
  /**
   * The craft may be so far ahead or astern of where an even speed over a step would put it, as a
   * share of the step: at most 0.026 in 18 000 tracks among eddies of some 500 m. What breaks in
   * time begins a step of its own.
   */
  private static final double UNEVEN_SHARE = 0.05;

  /**
   * An area that may not be entered from a time until a time.
   *
   * <pre>{@code
   * Closure range = new Closure(Obstacles.of(List.of(area)), opens, closes);
   * }</pre>
   *
   * @param area the area
   * @param from when it closes, seconds since 1970-01-01T00:00:00Z
   * @param until when it opens again, seconds since 1970-01-01T00:00:00Z
   */
  public record Closure(Obstacles area, double from, double until) {}

  /**
   * Takes the parts.
   *
   * @param land what may never be crossed
   * @param closures areas closed for a time
   */
  public Waters {
    closures = List.copyOf(closures);
  }

  /**
   * Open water everywhere.
   *
   * @return waters with nothing in them
   */
  public static Waters open() {
    return new Waters(Obstacles.none(), List.of());
  }

  /**
   * Whether there is nothing to keep out of.
   *
   * @return true if a path may go anywhere at any time
   */
  public boolean isOpen() {
    return land.isEmpty() && closures.isEmpty();
  }

  /**
   * Whether a straight step over a stretch of time touches an area that is closed then; a step of
   * no length asks for a craft that holds its place.
   *
   * @param latitude from where, degrees
   * @param longitude from where, degrees
   * @param toLatitude to where, degrees
   * @param toLongitude to where, degrees
   * @param from start of the stretch, seconds since 1970-01-01T00:00:00Z
   * @param until end of the stretch, seconds since 1970-01-01T00:00:00Z
   * @return true if it does
   */
  public boolean isClosed(
      double latitude,
      double longitude,
      double toLatitude,
      double toLongitude,
      double from,
      double until) {
    for (int i = 0; i < closures.size(); i++) {
      Closure closure = closures.get(i);
      if (closure.from() < until && closure.until() > from) {
        double slack = UNEVEN_SHARE * (until - from);
        double whole = Math.max(1e-9, until - from);
        double enters = Math.max(0.0, (closure.from() - slack - from) / whole);
        double leaves = Math.min(1.0, (closure.until() + slack - from) / whole);
        if (touches(
            closure.area(),
            latitude + enters * (toLatitude - latitude),
            longitude + enters * (toLongitude - longitude),
            latitude + leaves * (toLatitude - latitude),
            longitude + leaves * (toLongitude - longitude))) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean touches(
      Obstacles area, double latitude, double longitude, double toLatitude, double toLongitude) {
    return area.contains(latitude, longitude)
        || area.blocks(latitude, longitude, toLatitude, toLongitude);
  }

  /** When the last area about a place that is ever closed opens again; infinitely early if none. */
  double lastClosed(double latitude, double longitude) {
    double last = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < closures.size(); i++) {
      Closure closure = closures.get(i);
      if (closure.until() > last && closure.area().contains(latitude, longitude)) {
        last = closure.until();
      }
    }
    return last;
  }
}
