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

  /** Whether a straight step over a stretch of time touches an area that is closed then. */
  boolean isClosed(
      double latitude,
      double longitude,
      double toLatitude,
      double toLongitude,
      double from,
      double until) {
    for (int i = 0; i < closures.size(); i++) {
      Closure closure = closures.get(i);
      if (closure.from() < until
          && closure.until() > from
          && (closure.area().blocks(latitude, longitude, toLatitude, toLongitude)
              || closure.area().contains(latitude, longitude))) {
        return true;
      }
    }
    return false;
  }
}
