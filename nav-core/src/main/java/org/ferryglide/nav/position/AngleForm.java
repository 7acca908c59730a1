package org.ferryglide.nav.position;

/**
 * How an angle of latitude or longitude is split for people.
 *
 * <pre>{@code
 * position.text(AngleForm.DEGREES_MINUTES, 1); // 50°06.3'N 005°32.1'W
 * }</pre>
 */
public enum AngleForm {
  /** Degrees with decimals: {@code 50.105°N}. */
  DEGREES(1),
  /** Degrees and minutes with decimals, what charts use: {@code 50°06.3'N}. */
  DEGREES_MINUTES(60),
  /** Degrees, minutes, and seconds with decimals: {@code 50°06'18"N}. */
  DEGREES_MINUTES_SECONDS(3600);

  private final int unitsInDegree;

  AngleForm(int unitsInDegree) {
    this.unitsInDegree = unitsInDegree;
  }

  /** How many of the last part make a degree. */
  int unitsInDegree() {
    return unitsInDegree;
  }
}
