package org.ferryglide.nav.fix;

/**
 * Depths of a chart as a function of place.
 *
 * <pre>{@code
 * ChartedDepth slope = (lat, lon) -> 5.0 + 2000.0 * (56.3 - lat); // deeper to the south
 * }</pre>
 */
@FunctionalInterface
public interface ChartedDepth {

  /**
   * The depth at a place.
   *
   * @param latitudeDegrees latitude, degrees
   * @param longitudeDegrees longitude, degrees
   * @return depth below chart datum, metres, drying heights negative; NaN where there are no data
   */
  double metresAt(double latitudeDegrees, double longitudeDegrees);
}
