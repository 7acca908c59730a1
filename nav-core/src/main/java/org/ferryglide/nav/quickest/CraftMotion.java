package org.ferryglide.nav.quickest;

/**
 * All that the search for a quickest path knows of the craft, the stream and the wind.
 *
 * <p>An implementation may keep a workspace and then belongs to one thread. Nothing here allocates.
 *
 * <pre>{@code
 * double[] flow = new double[CraftMotion.FLOW];
 * double[] water = new double[2];
 * if (motion.flow(50.1, -5.5, time, flow)) {
 *   motion.throughWater(heading, flow, water);
 *   double eastOverGround = flow[0] + water[0];
 * }
 * }</pre>
 */
public interface CraftMotion {
  /** Numbers that {@link #flow} gives. */
  int FLOW = 4;

  /**
   * The stream and the wind at a place and time.
   *
   * @param latitudeDegrees latitude, degrees
   * @param longitudeDegrees longitude, degrees, of any turn
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @param flow receives the stream's parts to the east and north, then those of the wind over the
   *     moving water, all metres a second, positive to where they go; the wind is zero where it
   *     does not matter to the craft
   * @return false if stream or wind is not known there and then
   */
  boolean flow(double latitudeDegrees, double longitudeDegrees, double epochSeconds, double[] flow);

  /**
   * Whether a path found may lead through a place at a time; {@link #flow} may keep a little clear
   * of what bars it, so that a path relaxed along the edge of it stays outside.
   *
   * @param latitudeDegrees latitude, degrees
   * @param longitudeDegrees longitude, degrees, of any turn
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @return true where stream and wind are known and within all limits
   */
  default boolean isAllowed(double latitudeDegrees, double longitudeDegrees, double epochSeconds) {
    return flow(latitudeDegrees, longitudeDegrees, epochSeconds, new double[FLOW]);
  }

  /**
   * The motion through the water with the bow on a heading: paddling with rests taken off, leeway,
   * and drift down the wind.
   *
   * @param headingRadians where the bow points, radians from true north
   * @param flow as {@link #flow} gave it
   * @param eastNorth receives the parts to the east and north, metres a second
   */
  void throughWater(double headingRadians, double[] flow, double[] eastNorth);

  /**
   * The speed through the water in calm air.
   *
   * @return metres a second, rests taken off, above 0
   */
  double calmSpeed();

  /**
   * Whether the wind changes nothing, so that the speed through the water is {@link #calmSpeed} on
   * every heading and the water track is the heading.
   *
   * @return true if so
   */
  boolean isWindless();

  /**
   * Whether stream and wind are the same at every place where they are known.
   *
   * @return false where that is not known
   */
  boolean isUniform();

  /**
   * The next time at which stream or wind is not smooth in time.
   *
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @return the first such time strictly later, seconds; positive infinity if there is none
   */
  double nextBreakAfter(double epochSeconds);
}
