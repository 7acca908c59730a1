package org.ferryglide.tide.height;

import java.io.Serializable;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import org.ferryglide.nav.basics.Arguments;

/**
 * How far the mean level of the sea at a port stands above its yearly mean, through the year.
 *
 * <p>Taken off the standard port's heights before a secondary port's differences are looked up, and
 * put on at the secondary port.
 */
final class SeasonalChange implements Serializable {
  private static final long serialVersionUID = 1L;

  /** No change through the year. */
  public static final SeasonalChange NONE = new SeasonalChange(new double[12]);

  private final double[] firstOfMonth;

  private SeasonalChange(double[] firstOfMonth) {
    this.firstOfMonth = firstOfMonth;
  }

  /**
   * Takes the change on the first day of every month, from January to December; straight lines join
   * them.
   *
   * @param metres twelve changes, metres, each in [-5, 5]
   * @return the change through the year
   * @throws IllegalArgumentException if there are not twelve, or one is NaN or outside [-5, 5]
   */
  public static SeasonalChange ofMonths(double... metres) {
    if (metres.length != 12) {
      throw new IllegalArgumentException(
          "seasonal changes must be 12, one a month, but were " + metres.length);
    }
    double[] copy = metres.clone();
    for (double change : copy) {
      Arguments.within(change, -5.0, 5.0, "seasonal change", "metres");
    }
    return new SeasonalChange(copy);
  }

  /**
   * The change at a time.
   *
   * @param instant when; the months are taken in UTC
   * @return metres above the yearly mean level
   */
  public double metresAt(Instant instant) {
    LocalDate day = instant.atOffset(ZoneOffset.UTC).toLocalDate();
    LocalDate first = day.withDayOfMonth(1);
    double seconds =
        ChronoUnit.SECONDS.between(first.atStartOfDay(ZoneOffset.UTC).toInstant(), instant);
    double share = seconds / (86_400.0 * day.lengthOfMonth());
    double before = firstOfMonth[day.getMonthValue() - 1];
    double after = firstOfMonth[day.getMonthValue() % 12];
    return before + share * (after - before);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SeasonalChange that && Arrays.equals(firstOfMonth, that.firstOfMonth);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(firstOfMonth);
  }
}
