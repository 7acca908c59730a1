package org.ferryglide.nav.quickest;

import java.util.function.DoubleBinaryOperator;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;

/**
 * A patch of sea at the equator so small that the earth's curvature does not matter, for textbook
 * problems in the plane: one unit of length is 1 km, one of speed 1 m/s, one of time 1000 s.
 */
public final class PlanePatch {
  public static final double UNIT_METRES = 1000.0;

  private static final double METRES_PER_LATITUDE_DEGREE =
      Math.toRadians(6378137.0 * (1.0 - Ellipsoid.WGS84.eccentricitySquared()));
  private static final double METRES_PER_LONGITUDE_DEGREE = Math.toRadians(6378137.0);

  private PlanePatch() {}

  public static double latitude(double y) {
    return y * UNIT_METRES / METRES_PER_LATITUDE_DEGREE;
  }

  public static double longitude(double x) {
    return x * UNIT_METRES / METRES_PER_LONGITUDE_DEGREE;
  }

  /** The place across in units of a longitude. */
  public static double x(double longitude) {
    return longitude * METRES_PER_LONGITUDE_DEGREE / UNIT_METRES;
  }

  /** The place up in units of a latitude. */
  public static double y(double latitude) {
    return latitude * METRES_PER_LATITUDE_DEGREE / UNIT_METRES;
  }

  public static Position at(double x, double y) {
    return Position.ofDegrees(latitude(y), longitude(x));
  }

  /** A stream whose parts are functions of place in the plane. */
  public static StreamField stream(DoubleBinaryOperator east, DoubleBinaryOperator north) {
    return (latitude, longitude, seconds, out, offset) -> {
      double x = longitude * METRES_PER_LONGITUDE_DEGREE / UNIT_METRES;
      double y = latitude * METRES_PER_LATITUDE_DEGREE / UNIT_METRES;
      out[offset] = east.applyAsDouble(x, y);
      out[offset + 1] = north.applyAsDouble(x, y);
      return true;
    };
  }
}
