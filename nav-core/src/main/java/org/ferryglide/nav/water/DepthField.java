package org.ferryglide.nav.water;

import java.io.Serializable;

/**
 * Depths of a chart as a function of place.
 *
 * <p>Implementations are immutable and safe to share between threads.
 *
 * <pre>{@code
 * DepthField slope = (lat, lon) -> 5.0 + 2000.0 * (56.3 - lat); // deeper to the south
 * }</pre>
 */
@FunctionalInterface
public interface DepthField extends Serializable {

  /**
   * The depth at a place, without allocation.
   *
   * @param latitudeDegrees latitude, degrees, in [-90, 90]
   * @param longitudeDegrees longitude, degrees, in [-180, 180]
   * @return depth below {@link #datum}, metres, drying heights negative; NaN where there are no
   *     data
   */
  double metresAt(double latitudeDegrees, double longitudeDegrees);

  /**
   * The level that depths are measured from; heights of the tide are added only if theirs is the
   * same.
   *
   * @return the datum's name, by default {@code chart datum}
   */
  default String datum() {
    return "chart datum";
  }

  /**
   * The source of the depths: a chart, a survey, a sketch.
   *
   * @return the name, by default {@code a depth without a name}
   */
  default String source() {
    return "a depth without a name";
  }
}
