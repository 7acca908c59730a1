package org.ferryglide.tide.folder;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;

/**
 * Hours about each high or low water of a port: {@code HW-2..HW+1}.
 *
 * @param kind the water from which they are counted
 * @param from minutes after that water at which they begin, negative before it
 * @param until minutes after that water at which they end
 */
record TidalHours(TideEvent.Kind kind, int from, int until) {
  private static final Pattern HOURS =
      Pattern.compile(
          "([HL]W)([+-][0-9]{1,2}(?:\\.[0-9]{1,2})?)?\\.\\.\\1([+-][0-9]{1,2}(?:\\.[0-9]{1,2})?)?");

  /** More than half a lunar day either way belongs to another water. */
  private static final double MOST_HOURS = 13.0;

  /** Longer than anything is planned ahead. */
  private static final Duration FOR_EVER = Duration.ofDays(36525);

  /** One or several spans parted by {@code and}. */
  static List<TidalHours> parse(String text) {
    List<TidalHours> all = new ArrayList<>();
    for (String part : text.split(" and ", -1)) {
      Matcher matcher = HOURS.matcher(part.trim());
      double from = matcher.matches() ? hours(matcher.group(2)) : Double.NaN;
      double until = matcher.matches() ? hours(matcher.group(3)) : Double.NaN;
      if (!(from < until && Math.abs(from) <= MOST_HOURS && Math.abs(until) <= MOST_HOURS)) {
        throw new IllegalArgumentException(
            "must be hours about high or low water, as in HW-2..HW+1 or HW..HW+1.5, but was \""
                + text
                + "\"");
      }
      all.add(
          new TidalHours(
              matcher.group(1).equals("HW") ? TideEvent.Kind.HIGH : TideEvent.Kind.LOW,
              (int) Math.floor(from * 60.0),
              (int) Math.ceil(until * 60.0)));
    }
    return all;
  }

  private static double hours(String text) {
    return text == null ? 0.0 : Double.parseDouble(text);
  }

  /**
   * The spans of clock time. Before the first and after the last water of the table it is not known
   * when the next hours begin: all that time counts as within them.
   */
  List<TimeSpan> spans(TideTable table) {
    List<TimeSpan> spans = new ArrayList<>();
    Instant known = table.start().plus(Duration.ofMinutes(Math.max(0, until)));
    spans.add(TimeSpan.of(table.start().minus(FOR_EVER), known));
    for (TideEvent water : table.events()) {
      if (water.kind() == kind) {
        spans.add(
            TimeSpan.of(
                water.time().plus(Duration.ofMinutes(from)),
                water.time().plus(Duration.ofMinutes(until))));
      }
    }
    Instant unknown = table.end().plus(Duration.ofMinutes(Math.min(0, from)));
    spans.add(TimeSpan.of(unknown, table.end().plus(FOR_EVER)));
    return spans;
  }
}
