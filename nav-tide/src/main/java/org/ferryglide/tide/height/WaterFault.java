package org.ferryglide.tide.height;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Optional;

/** What is wrong with a water of a table, and which heading of a sheet that concerns. */
record WaterFault(String heading, String text) {

  /** What is wrong with one water after another, if anything is; times by a clock's offset. */
  static Optional<WaterFault> between(
      TideEvent before, TideEvent after, Duration longest, ZoneOffset clock) {
    if (!after.time().isAfter(before.time())) {
      return Optional.of(
          new WaterFault(
              "time",
              "must be later than the water before, at "
                  + text(before.time(), clock)
                  + ", but was "
                  + text(after.time(), clock)));
    }
    if (after.kind() == before.kind()) {
      return Optional.of(
          new WaterFault(
              "kind",
              "high and low waters must alternate, but two "
                  + (after.isHigh() ? "high" : "low")
                  + " waters follow each other"));
    }
    TideEvent high = after.isHigh() ? after : before;
    TideEvent low = after.isHigh() ? before : after;
    if (high.height().metres() < low.height().metres()) {
      return Optional.of(
          new WaterFault(
              "height_m",
              "a high water must not be lower than the low water beside it, but was "
                  + high.height().metres()
                  + " m beside "
                  + low.height().metres()
                  + " m"));
    }
    if (Duration.between(before.time(), after.time()).compareTo(longest) > 0) {
      return Optional.of(
          new WaterFault(
              "time",
              "a water seems to be missing: waters must be at most "
                  + longest.toHours()
                  + " hours apart, but the water before was at "
                  + text(before.time(), clock)));
    }
    return Optional.empty();
  }

  static String text(Instant time, ZoneOffset clock) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time.atOffset(clock));
  }
}
