package org.ferryglide.tide.stream;

import java.io.IOException;
import java.io.Reader;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.sheet.Sheet;
import org.ferryglide.tide.sheet.StrayOffsets;

/** Reads a station's published current table. */
final class CurrentSheet {
  private static final List<String> OF_THE_STATION = List.of("station", "latitude", "longitude");
  private static final double FASTEST_KNOTS = 25.0;
  private static final OffsetDateTime NO_TIME = Instant.EPOCH.atOffset(ZoneOffset.UTC);

  private CurrentSheet() {}

  static CurrentTable read(String source, Reader reader) throws IOException {
    List<String> required = new ArrayList<>(OF_THE_STATION);
    required.addAll(List.of("time", "kind", "set_deg", "rate_kn"));
    Sheet sheet = Sheet.read(source, reader, required, List.of());
    if (sheet.rows().size() < 2) {
      sheet.problem(
          "must have at least 2 rows beneath the heading line, but had " + sheet.rows().size());
    }
    sheet.refuseIfFaulty();
    Sheet.Row first = sheet.rows().get(0);
    if (!first.has("station")) {
      first.problem("station", "must not be empty");
    }
    OptionalDouble latitude = first.number("latitude", -90.0, 90.0);
    OptionalDouble longitude = first.number("longitude", -180.0, 180.0);
    List<CurrentEvent> events = new ArrayList<>();
    List<Sheet.Row> rows = new ArrayList<>();
    List<OffsetDateTime> times = new ArrayList<>();
    for (Sheet.Row row : sheet.rows()) {
      RepeatedFields.refuseContradiction(first, row, OF_THE_STATION);
      OffsetDateTime time = row.read("time", CurrentSheet::offsetTime, NO_TIME);
      Optional<CurrentEvent> event = event(row, time.toInstant());
      if (event.isPresent()) {
        if (!events.isEmpty()) {
          String fault = CurrentTable.faultBetween(events.get(events.size() - 1), event.get());
          if (!fault.isEmpty()) {
            row.problem("time", fault);
          }
        }
        events.add(event.get());
        rows.add(row);
        times.add(time);
      }
    }
    sheet.refuseIfFaulty();
    StrayOffsets.refuse(rows, times);
    sheet.refuseIfFaulty();
    StrayOffsets.doubt(rows, times);
    return CurrentTable.of(
        first.text("station"),
        Position.ofDegrees(latitude.orElse(0.0), longitude.orElse(0.0)),
        events,
        source,
        rows.stream().map(Sheet.Row::line).collect(Collectors.toList()),
        sheet.doubts());
  }

  private static Optional<CurrentEvent> event(Sheet.Row row, Instant time) {
    switch (row.text("kind")) {
      case "slack" -> {
        for (String heading : List.of("set_deg", "rate_kn")) {
          if (row.has(heading) && !row.text(heading).matches("0+(\\.0*)?")) {
            row.problem(heading, "must be empty for slack, but was \"" + row.text(heading) + "\"");
          }
        }
        return Optional.of(CurrentEvent.slack(time));
      }
      case "flood", "ebb" -> {
        OptionalDouble set = row.number("set_deg", 0.0, 360.0);
        OptionalDouble rate = row.number("rate_kn", 0.0, FASTEST_KNOTS);
        if (!set.isPresent() || !rate.isPresent()) {
          return Optional.empty();
        }
        TrueBearing bearing = TrueBearing.ofDegrees(set.getAsDouble());
        Speed speed = Speed.ofKnots(rate.getAsDouble());
        return Optional.of(
            row.text("kind").equals("flood")
                ? CurrentEvent.flood(time, bearing, speed)
                : CurrentEvent.ebb(time, bearing, speed));
      }
      default -> {
        row.problem("kind", "must be slack, flood or ebb, but was \"" + row.text("kind") + "\"");
        return Optional.empty();
      }
    }
  }

  static Instant instant(String text) {
    return offsetTime(text).toInstant();
  }

  private static OffsetDateTime offsetTime(String text) {
    try {
      OffsetDateTime time = OffsetDateTime.parse(text.replace(' ', 'T'));
      if (time.getYear() < 1 || time.getYear() > 4999) {
        throw new DateTimeException("a year far from any table's");
      }
      return time;
    } catch (DateTimeException e) {
      throw new IllegalArgumentException(
          "must be a date and time with its offset, such as 2026-06-01T09:30Z or"
              + " 2026-06-01T10:30+01:00, but was \""
              + text
              + "\"",
          e);
    }
  }
}
