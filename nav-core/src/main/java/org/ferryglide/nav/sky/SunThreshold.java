package org.ferryglide.nav.sky;

/**
 * The altitudes of the sun's centre that divide day from night.
 *
 * <pre>{@code
 * SunThreshold.CIVIL_TWILIGHT.altitudeDegrees(); // -6.0
 * }</pre>
 *
 * @see <a href="https://aa.usno.navy.mil/faq/RST_defs">US Naval Observatory, Rise, Set, and
 *     Twilight Definitions</a>
 */
public enum SunThreshold {
  /** Upper limb on the sea horizon: 34' of refraction and 16' of semidiameter below it. */
  SUNRISE_AND_SUNSET(-50.0 / 60.0),
  /** Shapes ashore and the sea horizon can be made out in clear weather until the sun is here. */
  CIVIL_TWILIGHT(-6.0),
  /** Beyond this the sea horizon cannot be seen: night. */
  NAUTICAL_TWILIGHT(-12.0);

  private final double altitudeDegrees;

  SunThreshold(double altitudeDegrees) {
    this.altitudeDegrees = altitudeDegrees;
  }

  /**
   * Where the sun's centre stands, without refraction.
   *
   * @return altitude, degrees, negative below the horizon
   */
  public double altitudeDegrees() {
    return altitudeDegrees;
  }
}
