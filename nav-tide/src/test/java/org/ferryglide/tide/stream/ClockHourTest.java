package org.ferryglide.tide.stream;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Collectors;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
import org.junit.jupiter.api.Test;

class ClockHourTest {
  private static final TideTable TIDES =
      TideTable.of(
          "Port Ennor",
          "chart datum",
          List.of(
              TideEvent.low(Instant.parse("2026-05-31T17:05:00Z"), ofMetres(0.5)),
              TideEvent.high(Instant.parse("2026-05-31T23:17:00Z"), ofMetres(5.5)),
              TideEvent.low(Instant.parse("2026-06-01T05:30:00Z"), ofMetres(0.5)),
              TideEvent.high(Instant.parse("2026-06-01T11:42:00Z"), ofMetres(5.5)),
              TideEvent.low(Instant.parse("2026-06-01T17:55:00Z"), ofMetres(0.5)),
              TideEvent.high(Instant.parse("2026-06-02T00:07:00Z"), ofMetres(5.5)),
              TideEvent.low(Instant.parse("2026-06-02T06:20:00Z"), ofMetres(0.5))));

  private static final HourlyStream STREAM = StreamSamples.table().boundTo(TIDES);
  private static final LocalDate DAY = LocalDate.parse("2026-06-01");

  @Test
  void highWaterAt1142HoldsFrom1112() {
    // the half-hour rule as it is taught: common practice, no source
    List<ClockHour> hours = STREAM.clockHours(DAY, ZoneOffset.UTC);
    List<String> pencilled =
        hours.stream().map(hour -> hour.pencilled(ZoneOffset.UTC)).collect(Collectors.toList());
    assertTrue(pencilled.contains("HW 1112-1212 070° 0.2 kn"), pencilled.toString());
    assertTrue(pencilled.contains("+1 1212-1312 240° 1.0 kn"));
    assertTrue(pencilled.contains("-3 0812-0912 060° 2.8 kn"));
  }

  @Test
  void theHoursOfADayFollowWithoutAGap() {
    List<ClockHour> hours = STREAM.clockHours(DAY, ZoneOffset.UTC);
    assertEquals("+1", hours.get(0).label());
    assertEquals(Instant.parse("2026-05-31T23:47:00Z"), hours.get(0).from());
    for (int i = 1; i < hours.size(); i++) {
      assertEquals(hours.get(i - 1).to(), hours.get(i).from());
    }
    assertEquals("HW", hours.get(hours.size() - 1).label());
    assertTrue(hours.get(hours.size() - 1).to().isAfter(Instant.parse("2026-06-02T00:00:00Z")));
  }

  @Test
  void rowsOfTwoTidesMeetHalfway() {
    List<ClockHour> hours = STREAM.clockHours(DAY, ZoneOffset.UTC);
    for (int i = 1; i < hours.size(); i++) {
      if (hours.get(i).label().equals("-6")) {
        assertEquals("+6", hours.get(i - 1).label());
      }
    }
    assertTrue(
        hours.stream().anyMatch(h -> h.from().equals(Instant.parse("2026-06-01T05:29:30Z"))));
  }

  @Test
  void theDayAndTheClockAreThoseOfTheZone() {
    ZoneId summer = ZoneId.of("+01:00");
    List<ClockHour> hours = STREAM.clockHours(DAY, summer);
    assertTrue(
        hours.stream().anyMatch(h -> h.pencilled(summer).equals("HW 1212-1312 070° 0.2 kn")));
    assertEquals("HW", hours.get(0).label());
  }

  @Test
  void aDayWithoutTidesHasNoHours() {
    assertTrue(STREAM.clockHours(DAY.plusDays(30), ZoneOffset.UTC).isEmpty());
  }
}
