package org.ferryglide.nav.sight;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;

/**
 * How much the air bends a line of sight along the sea, as a share of the earth's curvature.
 *
 * <p>Every rule for the distance of the horizon has a refraction hidden in its factor, and the
 * rules differ: 2.08 √m is not 1.17 √ft. Here it is stated.
 *
 * <pre>{@code
 * Horizon.distance(Distance.ofMetres(0.9), Refraction.ONE_SEVENTH); // 1.97 NM
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

  /** The radius of an earth over which rays would be straight, metres. */
  double effectiveRadiusMetres() {
    return EARTH_RADIUS_METRES / (1.0 - coefficient);
  }
}
