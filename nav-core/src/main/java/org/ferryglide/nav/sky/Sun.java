package org.ferryglide.nav.sky;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.position.Position;
import org.shredzone.commons.suncalc.SunPosition;

/**
 * Where the sun stands: its true bearing, to check a compass by, and its altitude.
 *
 * <pre>{@code
 * TrueBearing sun = Sun.azimuth(Instant.parse("2026-06-21T19:40:00Z"), place);
 * Deviation deviation =
 *     HeadingDeviation.whileHeading(heading).markShown(shown, sun, variation).deviation();
 * }</pre>
 *
 * <p>Never look at the sun: sight its shadow across the compass, and while the sun is low, when an
 * error in the time matters least. Dates from 1900 to 2100.
 */
public final class Sun {
  private Sun() {}

  /**
   * The direction of the sun.
   *
   * @param instant when, in the years 1900 to 2100
   * @param place where
   * @return azimuth of the sun's centre
   * @throws IllegalArgumentException if {@code instant} is outside the years 1900 to 2100
   */
  public static TrueBearing azimuth(Instant instant, Position place) {
    return TrueBearing.ofDegrees(at(instant, place).getAzimuth());
  }

  /**
   * The height of the sun, without refraction.
   *
   * @param instant when, in the years 1900 to 2100
   * @param place where
   * @return altitude of the sun's centre above the horizon, degrees, in [-90, 90]
   * @throws IllegalArgumentException if {@code instant} is outside the years 1900 to 2100
   */
  public static double altitudeDegrees(Instant instant, Position place) {
    return at(instant, place).getTrueAltitude();
  }

  private static SunPosition at(Instant instant, Position place) {
    Moon.refuseOutside(instant);
    return SunPosition.compute()
        .at(place.latitudeDegrees(), place.longitudeDegrees())
        .on(instant.atZone(ZoneOffset.UTC))
        .execute();
  }

  /** A day whose sun the series still know. */
  static LocalDate known(LocalDate date) {
    if (date.getYear() < 1900 || date.getYear() > 2100) {
      throw new IllegalArgumentException("date must be in the years 1900 to 2100, but was " + date);
    }
    return date;
  }
}
