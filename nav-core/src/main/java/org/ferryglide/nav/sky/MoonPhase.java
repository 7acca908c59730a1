package org.ferryglide.nav.sky;

/**
 * The four phases of the moon that have an instant.
 *
 * <pre>{@code
 * Instant springsComeAfter = Moon.next(MoonPhase.FULL, launch);
 * }</pre>
 */
public enum MoonPhase {
  /** Moon and sun in the same direction; springs follow. */
  NEW(0),
  /** Half the disc lit, waxing; neaps follow. */
  FIRST_QUARTER(1),
  /** Moon opposite the sun; springs follow. */
  FULL(2),
  /** Half the disc lit, waning; neaps follow. */
  LAST_QUARTER(3);

  private final int quarter;

  MoonPhase(int quarter) {
    this.quarter = quarter;
  }

  /** Quarters of a lunation since the last new moon. */
  int quarter() {
    return quarter;
  }

  /** The phase after any number of quarters of lunations, counted from a new moon. */
  static MoonPhase afterQuarters(int quarters) {
    return switch (Math.floorMod(quarters, 4)) {
      case 0 -> NEW;
      case 1 -> FIRST_QUARTER;
      case 2 -> FULL;
      default -> LAST_QUARTER;
    };
  }
}
