package org.ferryglide.nav.position;

import java.io.Serializable;
import org.ferryglide.nav.note.Arguments;

/**
 * A point on the WGS84 ellipsoid.
 *
 * <pre>{@code
 * Position headland = Position.ofDegrees(50.105, -5.535);
 * headland.latitudeDegrees(); // 50.105
 * }</pre>
 *
 * @param latitudeDegrees geographic latitude, degrees, north positive, in [-90, 90]
 * @param longitudeDegrees longitude, degrees, east positive, in [-180, 180)
 */
public record Position(double latitudeDegrees, double longitudeDegrees) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes latitude and longitude, in that order.
   *
   * @param latitudeDegrees latitude, degrees, north positive, in [-90, 90]; -0.0 becomes 0.0
   * @param longitudeDegrees longitude, degrees, east positive, in [-180, 180]; 180 becomes -180,
   *     -0.0 becomes 0.0
   * @throws IllegalArgumentException if a part is NaN or out of range
   */
  public Position {
    latitudeDegrees = Arguments.within(latitudeDegrees, -90.0, 90.0, "latitude", "degrees");
    longitudeDegrees = Arguments.within(longitudeDegrees, -180.0, 180.0, "longitude", "degrees");
    if (longitudeDegrees == 180.0) {
      longitudeDegrees = -180.0;
    }
  }

  /**
   * Makes a position from decimal degrees.
   *
   * @param latitudeDegrees latitude, degrees, north positive, in [-90, 90]
   * @param longitudeDegrees longitude, degrees, east positive, in [-180, 180]
   * @return the position
   * @throws IllegalArgumentException if a part is NaN or out of range
   */
  public static Position ofDegrees(double latitudeDegrees, double longitudeDegrees) {
    return new Position(latitudeDegrees, longitudeDegrees);
  }
}
