package org.ferryglide.examples.command;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import org.ferryglide.examples.Findings;
import org.ferryglide.examples.page.Labels;
import org.ferryglide.nav.measure.TimeSpan;

/** Times as the command prints them. */
final class Times {
  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

  private Times() {}

  /** To the nearest minute, with the date. */
  static String minute(Instant time, ZoneId zone) {
    return MINUTE.format(time.plusSeconds(30).truncatedTo(ChronoUnit.MINUTES).atZone(zone));
  }

  /** The begun minute, with the date: for what begins or is left. */
  static String early(Instant time, ZoneId zone) {
    return MINUTE.format(time.truncatedTo(ChronoUnit.MINUTES).atZone(zone));
  }

  /** The minute that has ended, with the date: for arrivals, as card and page have them. */
  static String late(Instant time, ZoneId zone) {
    return MINUTE.format(ended(time).atZone(zone));
  }

  /** The whole minute that is not earlier. */
  static Instant ended(Instant time) {
    return time.plusNanos(59_999_999_999L).truncatedTo(ChronoUnit.MINUTES);
  }

  /** A span from inside: begun minutes up, ended minutes down. */
  static String inside(TimeSpan span, ZoneId zone) {
    Instant from = ended(span.from());
    return from.isBefore(span.until().truncatedTo(ChronoUnit.MINUTES))
        ? early(from, zone) + " to " + early(span.until(), zone)
        : "less than a minute about " + minute(span.from(), zone);
  }

  static String hoursAndMinutes(Duration duration) {
    long minutes = (duration.getSeconds() + 59) / 60;
    return minutes / 60 + " h " + minutes % 60 + " min";
  }

  /** Findings by the clock of a zone. */
  static Findings findings(ZoneId zone) {
    return findings(zone, Labels.english());
  }

  /** The same in the words of a translation. */
  static Findings findings(ZoneId zone, Labels labels) {
    return Findings.by(time -> minute(time, zone), labels);
  }

  /** The end of a search that starts at a time and lasts some days. */
  static Instant after(OffsetDateTime from, int days) {
    return from.plusDays(days).toInstant();
  }
}
