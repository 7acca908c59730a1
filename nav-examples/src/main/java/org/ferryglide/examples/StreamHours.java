package org.ferryglide.examples;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.stream.HourlyStream;
import org.ferryglide.tide.stream.StreamHour;

/** The hours of a stream table by the clock, each counted from the water it belongs to. */
final class StreamHours {
  private StreamHours() {}

  static boolean aboutHigh(HourlyStream stream) {
    return stream.table().standardPort().about() == TideEvent.Kind.HIGH;
  }

  /** The table's hours within three hours of a stretch of time. */
  static NavigableMap<Instant, String> about(
      HourlyStream stream, Instant from, Instant to, Page page) {
    List<TideEvent> waters =
        aboutHigh(stream) ? stream.tides().highWaters() : stream.tides().lowWaters();
    String key = aboutHigh(stream) ? "text.high-water-hour" : "text.low-water-hour";
    NavigableMap<Instant, String> hours = new TreeMap<>();
    for (int i = 0; i < waters.size(); i++) {
      for (StreamHour row : stream.table().hours()) {
        Instant time = waters.get(i).time().plus(Duration.ofHours(row.hour()));
        boolean near =
            !time.isBefore(from.minus(Duration.ofHours(3)))
                && !time.isAfter(to.plus(Duration.ofHours(3)));
        if (near
            && !isNearer(waters, i - 1, time, waters.get(i))
            && !isNearer(waters, i + 1, time, waters.get(i))) {
          hours.put(time, page.say(key, "hour", row.hour() == 0 ? "  " : row.label("")));
        }
      }
    }
    return hours;
  }

  private static boolean isNearer(
      List<TideEvent> waters, int other, Instant time, TideEvent water) {
    return other >= 0
        && other < waters.size()
        && Duration.between(waters.get(other).time(), time)
                .abs()
                .compareTo(Duration.between(water.time(), time).abs())
            < 0;
  }
}
