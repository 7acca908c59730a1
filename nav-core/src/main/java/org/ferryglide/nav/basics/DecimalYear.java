package org.ferryglide.nav.basics;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;

/**
 * Dates as magnetic models count them: the year and the fraction of it that has passed, in UTC.
 *
 * <pre>{@code
 * DecimalYear.of(LocalDate.of(2025, 7, 2)); // 2025.4986…
 * }</pre>
 */
public final class DecimalYear {
  private static final double NANOS_PER_DAY = 86_400e9;

  private DecimalYear() {}

  /**
   * The decimal year at the start of a date.
   *
   * @param date the date; its midnight in UTC is meant
   * @return years, 2025.0 at the start of 1 January 2025; leap years are 366 days long
   */
  public static double of(LocalDate date) {
    return date.getYear() + (date.getDayOfYear() - 1.0) / date.lengthOfYear();
  }

  /**
   * The decimal year of an instant.
   *
   * @param instant the instant
   * @return years, fractions of a day included
   * @throws java.time.DateTimeException if the instant lies beyond the years ±999 999 999
   */
  public static double of(Instant instant) {
    LocalDateTime utc = LocalDateTime.ofInstant(instant, ZoneOffset.UTC);
    LocalDate date = utc.toLocalDate();
    double days = date.getDayOfYear() - 1.0 + utc.toLocalTime().toNanoOfDay() / NANOS_PER_DAY;
    return date.getYear() + days / date.lengthOfYear();
  }
}
