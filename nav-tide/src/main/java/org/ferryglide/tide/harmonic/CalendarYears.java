package org.ferryglide.tide.harmonic;

/** Calendar years, UTC, in seconds since 1970, without allocation. */
final class CalendarYears {
  private static final double DAY_SECONDS = 86400.0;
  private static final double YEAR_SECONDS = 365.2425 * DAY_SECONDS;
  private static final int FIRST_YEAR = 1970;

  private CalendarYears() {}

  /** Start of a Gregorian year, seconds since 1970. */
  static double startSeconds(int year) {
    int before = year - 1;
    long days =
        365L * (year - FIRST_YEAR)
            + (Math.floorDiv(before, 4) - Math.floorDiv(before, 100) + Math.floorDiv(before, 400))
            - 477; // leap days before 1970
    return days * DAY_SECONDS;
  }

  /** The Gregorian year that a time is in. */
  static int yearOf(double seconds) {
    int year = FIRST_YEAR + (int) Math.floor(seconds / YEAR_SECONDS);
    if (seconds < startSeconds(year)) {
      return year - 1;
    }
    return seconds >= startSeconds(year + 1) ? year + 1 : year;
  }
}
