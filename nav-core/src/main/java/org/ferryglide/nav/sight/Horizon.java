package org.ferryglide.nav.sight;

import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;

/**
 * How far the sea horizon is, and how far off a top is first seen above it.
 *
 * <pre>{@code
 * Distance eye = Distance.ofMetres(0.9); // seated in a kayak
 * Horizon.distance(eye, Refraction.ONE_SEVENTH); // 1.97 NM
 * Horizon.geographicRange(Distance.ofMetres(20), eye, Refraction.ONE_SEVENTH); // 11.3 NM
 * Horizon.dipMinutes(eye, Refraction.ONE_SEVENTH); // 1.7'
 * }</pre>
 *
 * <p>Heights are above the water now; see {@link DistanceOff#heightAboveWater} for charted ones. A
 * mean earth of 6371 km is used; the refraction is the caller's.
 */
public final class Horizon {
  private Horizon() {}

  /**
   * The distance of the sea horizon.
   *
   * @param eyeHeight height of the eye above the water, at least 0
   * @param refraction the bending of the ray; {@link Refraction#BOWDITCH_HORIZON} gives the figures
   *     of that book's table
   * @return the distance along the water
   * @throws IllegalArgumentException if the height is negative
   */
  public static Distance distance(Distance eyeHeight, Refraction refraction) {
    double height = Arguments.notNegative(eyeHeight.metres(), "height of the eye", "metres");
    return Distance.ofMetres(Math.sqrt(2.0 * refraction.effectiveRadiusMetres() * height));
  }

  /**
   * The distance at which a top, or a light at night, comes over the horizon.
   *
   * @param height height of the top or light above the water now, at least 0
   * @param eyeHeight height of the eye above the water, at least 0
   * @param refraction the bending of the ray
   * @return the geographic range: both distances of the horizon together
   * @throws IllegalArgumentException if a height is negative
   */
  public static Distance geographicRange(
      Distance height, Distance eyeHeight, Refraction refraction) {
    return distance(height, refraction).plus(distance(eyeHeight, refraction));
  }

  /**
   * The angle between the level and the sea horizon.
   *
   * @param eyeHeight height of the eye above the water, at least 0
   * @param refraction the bending of the ray
   * @return the dip, minutes of arc, downward positive
   * @throws IllegalArgumentException if the height is negative
   */
  public static double dipMinutes(Distance eyeHeight, Refraction refraction) {
    double height = Arguments.notNegative(eyeHeight.metres(), "height of the eye", "metres");
    double radians = Math.sqrt(2.0 * height / refraction.effectiveRadiusMetres());
    return Math.toDegrees(radians) * 60.0;
  }
}
