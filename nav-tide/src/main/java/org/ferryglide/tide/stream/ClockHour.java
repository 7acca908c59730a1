package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import org.ferryglide.nav.measure.Velocity;

/**
 * An hour of a stream table in clock time, as a paddler pencils it on the chart: the half hour
 * before and after the hour itself.
 *
 * <pre>{@code
 * for (ClockHour hour : stream.clockHours(LocalDate.parse("2026-06-01"), zone)) {
 *   card.add(hour.pencilled(zone)); // +1 1212-1312 062° 2.4 kn
 * }
 * }</pre>
 *
 * @param label {@code HW}, {@code +1}, {@code -3} ...
 * @param from when the row begins to hold
 * @param to when the next row does
 * @param stream the row's set and its rate for this tide
 */
record ClockHour(String label, Instant from, Instant to, Velocity stream) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * The hour as it is pencilled.
   *
   * @param zone the zone of the clock
   * @return label, clock times rounded to the nearest minute, set and rate
   */
  public String pencilled(ZoneId zone) {
    return label + " " + clock(from, zone) + "-" + clock(to, zone) + " " + stream.setAndRate();
  }

  private static String clock(Instant instant, ZoneId zone) {
    LocalTime time =
        instant.plusSeconds(30).atZone(zone).toLocalTime().truncatedTo(ChronoUnit.MINUTES);
    return time.toString().replace(":", "");
  }
}
