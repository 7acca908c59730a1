package org.ferryglide.tide.folder;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.passage.PassageLimits;
import org.ferryglide.tide.sheet.Sheet;

/** Reads and writes {@code margins.csv}: for each thing looked at, a warning and a stop limit. */
final class MarginSheet {
  private static final List<String> SPEEDS =
      List.of("stream", "wind", "wind against stream", "reserve", "onshore wind");
  private static final List<String> TIMES =
      List.of("daylight left", "time afloat", "time to landing");
  private static final String LANE_ANGLE = "lane angle";
  private static final String LEAST_STREAM = "least stream that counts";
  private static final String RATE_ERROR = "error of the rate";

  private final Map<String, Sheet.Row> rows = new LinkedHashMap<>();
  private PassageLimits limits;

  private MarginSheet(PassageLimits begin) {
    this.limits = begin;
  }

  /**
   * Reads the file.
   *
   * @param begin limits that hold unless the file has others
   */
  static PassageLimits read(FolderText file, PassageLimits begin) throws IOException {
    Sheet sheet =
        Sheet.read(file.source(), file.reader(), List.of("item", "warning", "stop"), List.of());
    List<String> items = new ArrayList<>(SPEEDS);
    items.addAll(TIMES);
    items.addAll(List.of(LANE_ANGLE, LEAST_STREAM, RATE_ERROR));
    MarginSheet margins = new MarginSheet(begin);
    for (Sheet.Row row : sheet.rows()) {
      String item = row.text("item");
      if (!items.contains(item)) {
        row.problem(
            "item",
            "must be one of "
                + items
                + ", but was \""
                + item
                + "\""
                + NearName.question(item, items));
      } else if (margins.rows.put(item, row) != null) {
        row.problem("item", item + " stands twice");
      }
    }
    margins.readAll();
    sheet.refuseIfFaulty();
    return margins.limits;
  }

  /** The file that reads as these limits; what stands in {@code limits.csv} is left out. */
  static String text(PassageLimits limits) {
    StringBuilder rows = new StringBuilder("item,warning,stop\n");
    limits
        .figures()
        .forEach(
            (item, figures) -> {
              if (SPEEDS.contains(item)) {
                add(rows, item, speed(figures.get(0)), speed(figures.get(1)));
              } else if (TIMES.contains(item)) {
                add(rows, item, time(figures.get(0)), time(figures.get(1)));
              } else if (item.equals(LANE_ANGLE)) {
                add(rows, item, Numbers.of(figures.get(0)), Numbers.of(figures.get(1)));
              } else if (item.equals(LEAST_STREAM)) {
                add(rows, item, "", speed(figures.get(0)));
              } else if (item.equals(RATE_ERROR)) {
                add(rows, item, "", ErrorSheet.perCent(figures.get(0)));
              }
            });
    return rows.toString();
  }

  private static void add(StringBuilder rows, String item, String warning, String stop) {
    rows.append(item).append(',').append(warning).append(',').append(stop).append('\n');
  }

  private static String speed(double metresPerSecond) {
    return Speed.ofMetresPerSecond(metresPerSecond).toString();
  }

  private static String time(double seconds) {
    return ErrorSheet.minutes(Duration.ofMillis(Math.round(1000.0 * seconds)));
  }

  private void readAll() {
    Speed least = single(LEAST_STREAM, Speed::parse).orElse(Speed.ofKnots(0.0));
    pair("stream", Speed::parse, (warning, stop) -> limits.withStream(warning, stop));
    pair("wind", Speed::parse, (warning, stop) -> limits.withWind(warning, stop));
    pair(
        "wind against stream",
        Speed::parse,
        (warning, stop) -> limits.withWindAgainstStream(warning, stop, least));
    pair("reserve", Speed::parse, (warning, stop) -> limits.withReserve(warning, stop));
    pair("onshore wind", Speed::parse, (warning, stop) -> limits.withOnshoreWind(warning, stop));
    this.<Duration>pair(
        "daylight left", Words::duration, (warning, stop) -> limits.withDaylight(warning, stop));
    this.<Duration>pair(
        "time afloat", Words::duration, (warning, stop) -> limits.withTimeAfloat(warning, stop));
    this.<Duration>pair(
        "time to landing",
        Words::duration,
        (warning, stop) -> limits.withTimeToLanding(warning, stop));
    pair(LANE_ANGLE, Words::degrees, (warning, stop) -> limits.withLaneAngle(warning, stop));
    single(RATE_ERROR, text -> limits.withRateError(Words.share(text)))
        .ifPresent(changed -> limits = changed);
  }

  /** An item with both a warning and a stop limit. */
  private <T> void pair(
      String item, Function<String, T> parser, BiFunction<T, T, PassageLimits> change) {
    Sheet.Row row = rows.get(item);
    if (row == null) {
      return;
    }
    Optional<T> warning =
        row.read("warning", text -> Optional.of(parser.apply(text)), Optional.empty());
    Optional<T> stop = row.read("stop", text -> Optional.of(parser.apply(text)), Optional.empty());
    if (warning.isPresent() && stop.isPresent()) {
      limits = row.read("stop", text -> change.apply(warning.get(), stop.get()), limits);
    }
  }

  /** An item with one value, which stands under stop. */
  private <T> Optional<T> single(String item, Function<String, T> parser) {
    Sheet.Row row = rows.get(item);
    if (row == null) {
      return Optional.empty();
    }
    if (row.has("warning")) {
      row.problem("warning", "must be empty, since " + item + " has one value, under stop");
    }
    return row.read("stop", text -> Optional.of(parser.apply(text)), Optional.empty());
  }
}
