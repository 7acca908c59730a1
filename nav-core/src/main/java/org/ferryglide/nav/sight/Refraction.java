package org.ferryglide.nav.sight;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;

/**
 * How much the air bends a line of sight along the sea, as a share of the earth's curvature.
 *
 * <p>Every rule for the distance of the horizon has a refraction hidden in its factor, and the
 * rules differ: 2.08 √m is not 1.17 √ft. Here it is stated.
 *
 * <pre>{@code
 * Refraction.ONE_SEVENTH.horizon(Distance.ofMetres(0.9)); // 1.97 NM
 * Refraction warmOverColdWater = Refraction.ofCoefficient(0.25);
 * }</pre>
 *
 * @param coefficient the earth's radius over that of the ray, in [-1, 0.9]; real air varies from
 *     below 0 to well above 0.2, most over cold water on calm warm days
 */
public record Refraction(double coefficient) implements Serializable {

  private static final long serialVersionUID = 1L;

  /** Straight rays. */
  public static final Refraction NONE = new Refraction(0.0);

  /** One seventh: behind the rules 2.08 √m and 2.08 (√h + √e). */
  public static final Refraction ONE_SEVENTH = new Refraction(1.0 / 7.0);

  /**
   * Behind the American Practical Navigator's distances of the horizon, 1.17 √ft: a coefficient of
   * 0.1728.
   *
   * @see "Bowditch, American Practical Navigator, NGA Pub. 9 (2024), table 12"
   */
  public static final Refraction BOWDITCH_HORIZON =
      new Refraction(1.0 - 2.0 * 6371000.0 * 0.3048 / (1.17 * 1852.0 * (1.17 * 1852.0)));

  /**
   * The factor 0.8321 behind the same book's table for a top beyond the horizon; with it the
   * horizon would be at 1.1665 √ft.
   *
   * @see "Bowditch, American Practical Navigator, NGA Pub. 9 (2024), explanation of table 15"
   */
  public static final Refraction BOWDITCH_BEYOND_HORIZON = new Refraction(1.0 - 0.8321);

  /** Mean radius of the earth with which the rules were made, metres. */
  static final double EARTH_RADIUS_METRES = 6371000.0;

  private static final double LEAST = -1.0;
  private static final double GREATEST = 0.9;

  /**
   * Takes the coefficient.
   *
   * @param coefficient the earth's radius over that of the ray
   * @throws IllegalArgumentException if it is NaN or outside [-1, 0.9]
   */
  public Refraction {
    coefficient =
        Arguments.within(coefficient, LEAST, GREATEST, "coefficient of refraction", "(no unit)");
  }

  /**
   * Any refraction.
   *
   * @param coefficient the earth's radius over that of the ray, in [-1, 0.9]
   * @return the refraction
   * @throws IllegalArgumentException if it is NaN or outside [-1, 0.9]
   */
  public static Refraction ofCoefficient(double coefficient) {
    return new Refraction(coefficient);
  }

  /**
   * The distance of the sea horizon.
   *
   * @param eyeHeight height of the eye above the water, at least 0
   * @return the distance along the water
   * @throws IllegalArgumentException if the height is negative
   */
  public Distance horizon(Distance eyeHeight) {
    double height = Arguments.notNegative(eyeHeight.metres(), "height of the eye", "metres");
    return Distance.ofMetres(Math.sqrt(2.0 * effectiveRadiusMetres() * height));
  }

  /**
   * The distance at which a top, or a light at night, comes over the horizon.
   *
   * @param height height of the top or light above the water now, at least 0
   * @param eyeHeight height of the eye above the water, at least 0
   * @return the geographic range: both distances of the horizon together
   * @throws IllegalArgumentException if a height is negative
   */
  public Distance geographicRange(Distance height, Distance eyeHeight) {
    return horizon(height).plus(horizon(eyeHeight));
  }

  /**
   * The angle between the level and the sea horizon.
   *
   * @param eyeHeight height of the eye above the water, at least 0
   * @return the dip, minutes of arc, downward positive
   * @throws IllegalArgumentException if the height is negative
   */
  public double dipMinutes(Distance eyeHeight) {
    double height = Arguments.notNegative(eyeHeight.metres(), "height of the eye", "metres");
    double radians = Math.sqrt(2.0 * height / effectiveRadiusMetres());
    return Math.toDegrees(radians) * 60.0;
  }

  /** The radius of an earth over which rays would be straight, metres. */
  double effectiveRadiusMetres() {
    return EARTH_RADIUS_METRES / (1.0 - coefficient);
  }
}
