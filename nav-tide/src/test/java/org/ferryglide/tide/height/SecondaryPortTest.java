package org.ferryglide.tide.height;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.note.Note;
import org.ferryglide.tide.sheet.Sheet;
import org.junit.jupiter.api.Test;

class SecondaryPortTest {
  private static final double METRES_PER_FOOT = 0.3048;

  /** A training port on its standard port; common practice, no source. */
  private static final SecondaryPort LITTLEPORT =
      SecondaryPort.of("Littleport", "chart datum", "Mainhaven")
          .withHighWaterTimes(
              ClockDifferences.of(LocalTime.of(0, 0), 35).and(LocalTime.of(6, 0), 23))
          .withLowWaterTimes(
              ClockDifferences.of(LocalTime.of(5, 0), 47).and(LocalTime.of(11, 0), 4))
          .withHighWaterHeights(
              HeightCorrection.betweenLevels(
                  ofMetres(4.2), ofMetres(1.1), ofMetres(3.4), ofMetres(0.8)))
          .withLowWaterHeights(
              HeightCorrection.betweenLevels(
                  ofMetres(0.4), ofMetres(0.1), ofMetres(1.1), ofMetres(0.2)));

  private static Instant at(String time) {
    return Instant.parse(time);
  }

  @Test
  void trainingPageHighWaterOfTheMorning() {
    // standard port 0638 UT 4.2 m; the differences give +24 minutes and +1.1 m
    TideEvent water =
        LITTLEPORT.waterFrom(TideEvent.high(at("2026-06-01T06:38:00Z"), ofMetres(4.2)));
    assertEquals(at("2026-06-01T07:02:16Z"), water.time());
    assertEquals(5.3, water.height().metres(), 1e-9);
    assertTrue(water.isHigh());
  }

  @Test
  void clockTimesAreThoseOfTheStandardPortsOwnZone() {
    SecondaryPort port = LITTLEPORT.withStandardZone(ZoneOffset.ofHours(3));
    // 03:00 UTC is 06:00 there, for which +23 is printed
    assertEquals(
        at("2026-06-01T03:23:00Z"),
        port.waterFrom(TideEvent.high(at("2026-06-01T03:00:00Z"), ofMetres(4.2))).time());
  }

  @Test
  void officialFormWithRatiosAtBostonAndRainsford() {
    // Public class notes on the United States tables: Boston, 19 April 2004 (times as printed), low
    // 0456 -0.1 ft, high 1111 10.0, low 1710 0.5, high 2322 10.4; Rainsford Island high 0h00 x0.95,
    // low +0h02 x0.95. At 1400 "nearly 3 h after high water", 50 % of the range: 5.0 ft.
    TideTable boston =
        TideTable.of(
            "Boston",
            "MLLW",
            List.of(
                TideEvent.low(at("2004-04-19T04:56:00Z"), ofMetres(-0.1 * METRES_PER_FOOT)),
                TideEvent.high(at("2004-04-19T11:11:00Z"), ofMetres(10.0 * METRES_PER_FOOT)),
                TideEvent.low(at("2004-04-19T17:10:00Z"), ofMetres(0.5 * METRES_PER_FOOT)),
                TideEvent.high(at("2004-04-19T23:22:00Z"), ofMetres(10.4 * METRES_PER_FOOT))));
    TideTable rainsford =
        SecondaryPort.of("Rainsford Island", "MLLW", "Boston")
            .withLowWaterTimes(ClockDifferences.always(2))
            .withHighWaterHeights(HeightCorrection.ratio(0.95))
            .withLowWaterHeights(HeightCorrection.ratio(0.95))
            .tableFrom(boston);
    TideEvent high = rainsford.events().get(1);
    TideEvent low = rainsford.events().get(2);
    assertEquals(at("2004-04-19T11:11:00Z"), high.time());
    assertEquals(9.5, high.height().metres() / METRES_PER_FOOT, 0.05); // half a printed tenth
    assertEquals(at("2004-04-19T17:12:00Z"), low.time());
    assertEquals(0.475, low.height().metres() / METRES_PER_FOOT, 1e-9);
    // half of the interval after high water, where the notes take the tide
    double half =
        TableCurve.twelfths(rainsford).heightAt(at("2004-04-19T14:11:30Z")).get().metres()
            / METRES_PER_FOOT;
    assertEquals(5.0, half, 0.05);
    assertEquals(4.9875, half, 1e-6);
    // at 1400 itself the cosine gives 5.44 ft: what "nearly three hours" costs
    double cosine =
        TableCurve.cosine(rainsford).heightAt(at("2004-04-19T14:00:00Z")).get().metres();
    assertEquals(5.438350, cosine / METRES_PER_FOOT, 5e-7);
  }

  @Test
  void theSeasonIsTakenOffTheStandardPortAndPutOnAtThisOne() {
    SecondaryPort port =
        LITTLEPORT.withSeasonalChange(
            new double[] {0, 0, 0, 0, 0, 0.2, 0.2, 0, 0, 0, 0, 0},
            new double[] {0, 0, 0, 0, 0, -0.1, -0.1, 0, 0, 0, 0, 0});
    // 4.4 m in June is a mean-level 4.2 m: 5.3 m here, less a decimetre
    TideEvent water = port.waterFrom(TideEvent.high(at("2026-06-10T06:00:00Z"), ofMetres(4.4)));
    assertEquals(5.2, water.height().metres(), 1e-9);
  }

  @Test
  void theTableSaysHowItWasMade() {
    TideTable standard =
        Tables.ofHours("Mainhaven", 0.5, 0.6, 6.6, 4.3, 12.9, 0.3, 19.0, 4.1)
            .withNotes(List.of(Note.information("x", "Kept.")));
    TideTable table = LITTLEPORT.tableFrom(standard);
    assertEquals("Littleport", table.port());
    assertEquals(4, table.events().size());
    assertEquals(
        List.of("x", "tide.secondary", "tide.secondary.beyond"),
        table.notes().stream().map(Note::code).toList());
    assertEquals("Mainhaven", table.notes().get(1).data().get("standardPort"));
    // 4.3 m above springs and 0.3 m below them
    assertEquals("2", table.notes().get(2).data().get("waters"));
    assertTrue(
        TableCurve.cosine(table).notesAt(Tables.atHour(9)).stream()
            .anyMatch(note -> note.code().equals("tide.secondary")));
  }

  @Test
  void anotherPortsTableIsRefused() {
    TideTable other = Tables.ofHours("Skarra", 0, 0.6, 6, 4.3);
    assertEquals(
        "table must be that of the standard port, \"Mainhaven\", but was that of \"Skarra\"",
        assertThrows(IllegalArgumentException.class, () -> LITTLEPORT.tableFrom(other))
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> SecondaryPort.of("", "x", "y"));
  }

  @Test
  void withoutDifferencesTheTidesAreThoseOfTheStandardPort() {
    TideTable standard = Tables.ofHours("Mainhaven", 0.5, 0.6, 6.6, 4.3, 12.9, 0.3);
    SecondaryPort same = SecondaryPort.of("Outer Pier", "chart datum", "Mainhaven");
    assertEquals(standard.events(), same.tableFrom(standard).events());
    assertEquals("Outer Pier on Mainhaven", same.toString());
    assertEquals("Outer Pier", same.name());
    assertEquals("Mainhaven", same.standardPort());
  }

  @Test
  void everyOfficialSubordinateStationCanBeStatedAndKeepsItsWatersInOrder() throws IOException {
    TideTable reference = Tables.ofHours("Reference", 0, 0.1, 6.2, 1.6, 12.4, 0.2, 18.6, 1.5);
    int stations = 0;
    try (Reader reader =
        new InputStreamReader(
            Objects.requireNonNull(
                SecondaryPortTest.class.getResourceAsStream("subordinate_stations.csv")),
            StandardCharsets.UTF_8)) {
      Sheet sheet =
          Sheet.read(
              "subordinate_stations.csv",
              reader,
              List.of(
                  "station",
                  "reference",
                  "high_minutes",
                  "low_minutes",
                  "high_height",
                  "low_height",
                  "height_kind"),
              List.of());
      for (Sheet.Row row : sheet.rows()) {
        TideTable table =
            SecondaryPort.of(row.text("station"), "MLLW", "Reference")
                .withHighWaterTimes(ClockDifferences.always(number(row, "high_minutes")))
                .withLowWaterTimes(ClockDifferences.always(number(row, "low_minutes")))
                .withHighWaterHeights(height(row, "high_height"))
                .withLowWaterHeights(height(row, "low_height"))
                .tableFrom(reference);
        assertEquals(4, table.events().size());
        stations++;
      }
      sheet.refuseIfFaulty();
    }
    assertEquals(374, stations);
  }

  private static double number(Sheet.Row row, String heading) {
    return row.number(heading, -720.0, 720.0).getAsDouble();
  }

  private static HeightCorrection height(Sheet.Row row, String heading) {
    return row.text("height_kind").equals("ratio")
        ? HeightCorrection.ratio(number(row, heading))
        : HeightCorrection.difference(ofMetres(number(row, heading)));
  }
}
