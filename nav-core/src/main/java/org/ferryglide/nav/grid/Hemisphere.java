package org.ferryglide.nav.grid;

/**
 * A half of the earth, north or south of the equator.
 *
 * <pre>{@code
 * UtmZone zone = UtmZone.of(29, Hemisphere.NORTH);
 * }</pre>
 */
public enum Hemisphere {
  /** From the equator to the north pole; the equator belongs to it. */
  NORTH,
  /** South of the equator. */
  SOUTH;

  static Hemisphere ofLatitude(double degrees) {
    return degrees >= 0.0 ? NORTH : SOUTH;
  }
}
