package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.tide.height.TideEvent.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TideTableReaderTest {
  private static final TideTableReader SKARRA = TideTableReader.forPort("Skarra", "chart datum");
  private static final TideTableReader IN_UTC = SKARRA.withZone(ZoneOffset.UTC);

  private static TideTable read(TideTableReader reader, String text) throws IOException {
    return reader.read("tides.csv", new StringReader(text));
  }

  private static String refusal(TideTableReader reader, String text) {
    return assertThrows(InputFormatException.class, () -> read(reader, text)).getMessage() + "";
  }

  private static List<String> times(TideTable table) {
    return table.events().stream().map(event -> event.time().toString()).toList();
  }

  @Test
  void aCompleteSheetStatesPortDatumAndZoneInItsFirstRow() throws IOException {
    TideTable table =
        TideTable.read(
            "tides.csv",
            new StringReader(
                """
                # Skarra harbour office
                port,datum,zone,time,height_m,kind
                Skarra,chart datum,+01:00,2026-06-01T04:20,0.7,low
                ,,,2026-06-01T10:30,4.2,high
                Skarra,chart datum,+01:00,2026-06-01T16:45,0.9,low
                """));
    assertEquals("Skarra", table.port());
    assertEquals("chart datum", table.datum());
    assertEquals(
        List.of("2026-06-01T03:20:00Z", "2026-06-01T09:30:00Z", "2026-06-01T15:45:00Z"),
        times(table));
    assertEquals(
        List.of(Kind.LOW, Kind.HIGH, Kind.LOW),
        table.events().stream().map(TideEvent::kind).toList());
  }

  @Test
  void kindsAreToldFromTheHeightsBesideThem() throws IOException {
    TideTable table =
        read(
            IN_UTC,
            """
            time,height_m
            2026-06-01T03:20,0.7
            2026-06-01T09:30,4.2
            2026-06-01T15:45,0.9
            """);
    assertEquals(
        List.of(Kind.LOW, Kind.HIGH, Kind.LOW),
        table.events().stream().map(TideEvent::kind).toList());
  }

  @ParameterizedTest
  @CsvSource({"high, low", "High, Low", "HIGH, LOW", "HW, LW", "H, L"})
  void kindsAreReadAsTablesPrintThem(String high, String low) throws IOException {
    TideTable table =
        read(
            IN_UTC,
            "time,height_m,kind\n2026-06-01T03:20,0.5,"
                + low
                + "\n2026-06-01T09:30,0.5,"
                + high
                + "\n");
    assertEquals(Kind.LOW, table.events().get(0).kind());
    assertEquals(Kind.HIGH, table.events().get(1).kind());
  }

  @Test
  void equalHeightsWithoutAKindAreRefused() {
    assertEquals(
        """
        tides.csv, line 2, column 2: height_m: must be above or below both waters beside it, or \
        the kind must be stated, but was 0.5 between 0.5 and 0.5
        tides.csv, line 3, column 2: height_m: must be above or below both waters beside it, or \
        the kind must be stated, but was 0.5 between 0.5 and 0.5\
        """,
        refusal(IN_UTC, "time,height_m\n2026-06-01T03:20,0.5\n2026-06-01T09:30,0.5\n"));
  }

  @Test
  void aRegionTakesClockTimesWithItsDaylightSaving() throws IOException {
    // clocks in Portugal go forward on 29 March 2026 at 01:00 (IANA time zone database)
    TideTable table =
        read(
            SKARRA.withZone(ZoneId.of("Europe/Lisbon")),
            """
            time,height_m
            2026-03-28T22:00,0.7
            2026-03-29T05:10,4.2
            2026-03-29T11:30,0.9
            """);
    assertEquals(
        List.of("2026-03-28T22:00:00Z", "2026-03-29T04:10:00Z", "2026-03-29T10:30:00Z"),
        times(table));
  }

  @Test
  void aTimeThatTheClocksSkipOrRepeatNeedsItsOffset() throws IOException {
    TideTableReader lisbon = SKARRA.withZone(ZoneId.of("Europe/Lisbon"));
    assertEquals(
        "tides.csv, line 2, column 1: time: is skipped by the clocks of Europe/Lisbon, so it must"
            + " state its offset, but was \"2026-03-29T01:30\"",
        refusal(lisbon, "time,height_m\n2026-03-29T01:30,0.7\n2026-03-29T08:10,4.2\n"));
    assertEquals(
        "tides.csv, line 2, column 1: time: happens twice by the clocks of Europe/Lisbon, so it"
            + " must state its offset, but was \"2026-10-25T01:30\"",
        refusal(lisbon, "time,height_m\n2026-10-25T01:30,0.7\n2026-10-25T07:10,4.2\n"));
    TideTable table =
        read(lisbon, "time,height_m\n2026-10-25T01:30+01:00,0.7\n2026-10-25T07:10,4.2\n");
    assertEquals(List.of("2026-10-25T00:30:00Z", "2026-10-25T07:10:00Z"), times(table));
  }

  @Test
  void aTimeNeedsAnOffsetOrAZone() {
    assertEquals(
        """
        tides.csv, line 2, column 1: time: must state its offset, such as Z or +01:00, or the \
        sheet its zone, but was "2026-06-01T03:20"
        tides.csv, line 3, column 1: time: must state its offset, such as Z or +01:00, or the \
        sheet its zone, but was "2026-06-01 09:30\"\
        """,
        refusal(SKARRA, "time,height_m\n2026-06-01T03:20,0.7\n2026-06-01 09:30,4.2\n"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-06-01",
        "01/06/2026 03:20",
        "2026-06-01T3:20",
        "2026-06-01T03.20",
        "2026-06-01T03:20 UTC",
        "2026-06-01T03:20+1",
        "0320",
        ""
      })
  void otherFormsOfTimeAreRefused(String time) {
    assertEquals(
        "tides.csv, line 2, column 1: time: must be a date and time such as 2026-06-01T09:30Z,"
            + " 2026-06-01T10:30+01:00 or 2026-06-01T09:30, but was \""
            + time
            + "\"",
        refusal(IN_UTC, "time,height_m\n" + time + ",0.7\n2026-06-01T09:30,4.2\n"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-02-29T03:20",
        "2026-06-01T24:00",
        "2026-13-01T03:20Z",
        "2026-06-01T03:20+25:00"
      })
  void timesThatDoNotExistAreRefused(String time) {
    assertEquals(
        "tides.csv, line 2, column 1: time: must be a date and time that exist, but was \""
            + time
            + "\"",
        refusal(IN_UTC, "time,height_m\n" + time + ",0.7\n2026-06-01T09:30,4.2\n"));
  }

  @Test
  void secondsAndTheirFractionsAreKept() throws IOException {
    TideTable table =
        read(IN_UTC, "time,height_m\n2026-06-01T03:20:15.5,0.7\n2026-06-01T09:30:59Z,4.2\n");
    assertEquals(List.of("2026-06-01T03:20:15.500Z", "2026-06-01T09:30:59Z"), times(table));
  }

  @Test
  void aWestwardOffsetIsNotTakenForADate() throws IOException {
    TideTable table =
        read(SKARRA, "time,height_m\n2026-06-01T03:20-08:00,0.7\n2026-06-01 09:30-08:00,4.2\n");
    assertEquals(Instant.parse("2026-06-01T11:20:00Z"), table.start());
  }

  @Test
  void anUnknownZoneIsRefusedWithEverythingElse() {
    assertEquals(
        """
        tides.csv, line 2, column 3: zone: must be Z, an offset such as +01:00 or a region of the \
        IANA time zone database, but was "Atlantis"
        tides.csv, line 3, column 2: height_m: must be a number in [-20.0, 30.0], but was "4,2"; a \
        decimal has a point\
        """,
        refusal(
            SKARRA,
            """
            time,height_m,zone
            2026-06-01T03:20,0.7,Atlantis
            2026-06-01T09:30,"4,2",
            """));
  }

  @Test
  void whatTheReaderStatesTheSheetMustNotContradict() {
    assertEquals(
        """
        tides.csv, line 2, column 3: port: must be "Skarra" throughout, but was "Lunna"
        tides.csv, line 2, column 4: zone: must be "Z" throughout, but was "+01:00\"\
        """,
        refusal(
            IN_UTC,
            """
            time,height_m,port,zone
            2026-06-01T03:20,0.7,Lunna,+01:00
            2026-06-01T09:30,4.2,,
            """));
  }

  @Test
  void portAndDatumMustBeStatedBySomebody() {
    assertEquals(
        """
        tides.csv, line 2: port: must be stated in the first row or by the reader
        tides.csv, line 2: datum: must be stated in the first row or by the reader\
        """,
        refusal(
            TideTableReader.ofCompleteSheets(),
            "time,height_m\n2026-06-01T03:20Z,0.7\n2026-06-01T09:30Z,4.2\n"));
    assertEquals(
        "port and datum of a tide table must not be empty",
        assertThrows(IllegalArgumentException.class, () -> TideTableReader.forPort("Skarra", " "))
            .getMessage());
  }

  @Test
  void disorderIsRefusedByItsLine() {
    assertEquals(
        """
        tides.csv, line 3, column 1: time: must be later than the water before, at \
        2026-06-01T03:20:00Z, but was 2026-06-01T02:30:00Z
        tides.csv, line 5, column 3: kind: high and low waters must alternate, but two low waters \
        follow each other\
        """,
        refusal(
            IN_UTC,
            """
            time,height_m,kind
            2026-06-01T03:20,0.7,low
            2026-06-01T02:30,4.2,high
            2026-06-01T15:45,0.9,low
            2026-06-01T21:50,0.9,low
            """));
  }

  /** What can be told of a sheet is told at once, not one kind of fault after another. */
  @Test
  void disorderIsToldBesideFieldsThatCannotBeRead() {
    assertEquals(
        """
        tides.csv, line 3, column 1: time: must be later than the water before, at \
        2026-06-01T03:20:00Z, but was 2026-06-01T02:30:00Z
        tides.csv, line 5, column 2: height_m: must be a number in [-20.0, 30.0], but was "0,9"; a decimal \
        has a point
        tides.csv, line 7, column 3: kind: high and low waters must alternate, but two high waters \
        follow each other\
        """,
        refusal(
            IN_UTC,
            """
            time,height_m,kind
            2026-06-01T03:20,0.7,low
            2026-06-01T02:30,4.2,high
            2026-06-01T15:45,0.9,low
            2026-06-01T21:50,"0,9",high
            2026-06-02T04:00,4.1,high
            2026-06-02T10:00,4.0,high
            """));
  }

  /** A fault in every row of which there is one cause stays one. */
  @Test
  void exchangedKindsAreToldOnceBesideFieldsThatCannotBeRead() {
    String refusal =
        refusal(
            IN_UTC,
            """
            time,height_m,kind
            2026-06-01T03:20,0.7,high
            2026-06-01T09:30,4.2,low
            2026-06-01T15:45,0.9,high
            2026-06-01T21:50,4.1,low
            2026-06-02T04:00,0.8,high
            2026-06-02T10:00,4.0,flood
            """);
    assertEquals(2, refusal.lines().count(), refusal);
    assertTrue(refusal.contains("exchanged throughout"), refusal);
  }

  @Test
  void aHighWaterBelowItsLowWaterIsRefused() {
    assertEquals(
        "tides.csv, line 3, column 2: height_m: a high water must not be lower than the low water"
            + " beside it, but was 0.7 m beside 4.2 m",
        refusal(
            IN_UTC, "time,height_m,kind\n2026-06-01T03:20,4.2,low\n2026-06-01T09:30,0.7,high\n"));
  }

  @Test
  void aPairLeftOutOfASemidiurnalTableIsAGap() {
    assertEquals(
        "tides.csv, line 5, column 1: time: a water seems to be missing: waters must be at most 18"
            + " hours apart, but the water before was at 2026-06-01T15:45:00Z",
        refusal(
            IN_UTC,
            """
            time,height_m
            2026-06-01T03:20,0.7
            2026-06-01T09:30,4.2
            2026-06-01T15:45,0.9
            2026-06-02T10:20,4.1
            2026-06-02T16:30,1.0
            """));
    assertEquals(
        "tides.csv, line 5, column 1: time: a water seems to be missing: the time since the water"
            + " before, at 2026-06-01T15:45:00Z, is more than two and a half times the intervals"
            + " beside it",
        refusal(
            IN_UTC,
            """
            time,height_m
            2026-06-01T03:20,0.7
            2026-06-01T09:30,4.2
            2026-06-01T15:45,0.9
            2026-06-02T09:40,4.1
            2026-06-02T15:50,1.0
            """));
  }

  @Test
  void aLongIntervalOfAMixedTideIsNoGap() throws IOException {
    TideTable table =
        read(
            IN_UTC,
            """
            time,height_m
            2026-06-01T00:00,0.1
            2026-06-01T08:10,0.5
            2026-06-02T00:55,0.0
            2026-06-02T09:00,0.6
            """);
    assertEquals(4, table.events().size());
  }

  @Test
  void theLongestIntervalIsTheReadersChoice() throws IOException {
    String slow = "time,height_m\n2026-06-01T00:00,0.1\n2026-06-01T20:00,0.5\n";
    assertEquals(2, read(IN_UTC.withLongestInterval(Duration.ofHours(24)), slow).events().size());
    refusal(IN_UTC, slow);
    assertEquals(
        "longest interval must be above 0 and at most 25 hours, but was PT26H",
        assertThrows(
                IllegalArgumentException.class,
                () -> IN_UTC.withLongestInterval(Duration.ofHours(26)))
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> IN_UTC.withLongestInterval(Duration.ZERO));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "2026-06-01T03:20,0.7\n"})
  void fewerThanTwoWatersAreRefused(String rows) {
    assertEquals(
        "tides.csv: a tide table must have at least 2 waters, but had " + rows.lines().count(),
        refusal(IN_UTC, "time,height_m\n" + rows));
  }

  @Test
  void anUnknownKindIsRefused() {
    assertEquals(
        "tides.csv, line 3, column 3: kind: must be high, low, HW, LW, H, L or nothing, but was"
            + " \"ebb\"",
        refusal(IN_UTC, "time,height_m,kind\n2026-06-01T03:20,0.7,\n2026-06-01T09:30,4.2,ebb\n"));
  }
}
