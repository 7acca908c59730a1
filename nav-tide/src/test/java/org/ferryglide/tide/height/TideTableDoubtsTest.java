package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.Note;
import org.junit.jupiter.api.Test;

/** Tables that cannot be right are refused, tables that look wrong are doubted by row. */
class TideTableDoubtsTest {
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-06-01T03:20+01:00");

  /** A plain semi-diurnal tide, a water each 6 h 12 min 36 s, as rows of a sheet in +01:00. */
  private static List<String> rows(int waters) {
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < waters; i++) {
      OffsetDateTime time = START.plusSeconds(i * 22_356L);
      rows.add(row(time, i % 2 == 0 ? 0.8 : 4.4));
    }
    return rows;
  }

  private static String row(OffsetDateTime time, double height) {
    return time.toLocalDateTime() + time.getOffset().getId() + "," + height;
  }

  private static OffsetDateTime time(int water) {
    return START.plusSeconds(water * 22_356L);
  }

  private static TideTable read(List<String> rows) throws IOException {
    return TideTableReader.forPort("Skarra", "chart datum")
        .read("skarra.csv", new StringReader("time,height_m\n" + String.join("\n", rows)));
  }

  private static String refusal(List<String> rows) {
    return assertThrows(InputFormatException.class, () -> read(rows)).getMessage() + "";
  }

  private static List<String> doubts(List<String> rows) throws IOException {
    return read(rows).notes().stream().map(Note::code).toList();
  }

  @Test
  void aPlainTableIsNotDoubted() throws IOException {
    assertEquals(List.of(), read(rows(60)).notes());
  }

  @Test
  void anOffsetThatLeavesAndReturnsIsRefusedByItsRow() {
    List<String> rows = rows(20);
    rows.set(9, rows.get(9).replace("+01:00", "Z"));
    assertEquals(
        "skarra.csv, line 11, column 1: time: its offset from UTC must be that of the rows around"
            + " it, +01:00, since no clock is changed and changed again within 20 days, but was Z",
        refusal(rows));
    List<String> three = rows(20);
    for (int i = 4; i < 7; i++) {
      three.set(
          i, row(time(i).withOffsetSameInstant(ZoneOffset.ofHours(2)), i % 2 == 0 ? 0.8 : 4.4));
    }
    assertEquals(3, refusal(three).split("\n").length, "even where the instants are right");
  }

  @Test
  void summerTimeMayComeAndGo() throws IOException {
    List<String> rows = rows(600); // five months
    for (int i = 0; i < rows.size(); i++) {
      if (i < 150 || i >= 400) {
        rows.set(i, row(time(i).withOffsetSameInstant(ZoneOffset.UTC), i % 2 == 0 ? 0.8 : 4.4));
      }
    }
    assertEquals(List.of(), doubts(rows));
  }

  @Test
  void anOffsetThatChangesNearTheEndIsDoubtedOnce() throws IOException {
    List<String> last = rows(20);
    last.set(19, row(time(19).withOffsetSameInstant(ZoneOffset.UTC), 4.4));
    assertEquals(List.of("tide.doubt.offset"), doubts(last));
    assertTrue(
        read(last)
            .notes()
            .get(0)
            .text()
            .startsWith(
                "skarra.csv, line 21, time: the offset from UTC changes here from +01:00 to Z,"));
    List<String> first = rows(20);
    first.set(0, row(time(0).withOffsetSameInstant(ZoneOffset.UTC), 0.8));
    assertEquals(List.of("tide.doubt.offset"), doubts(first));
  }

  @Test
  void aHeightFarFromItsNeighboursIsDoubtedByItsRow() throws IOException {
    for (double height : new double[] {14.7, 27.0, 7.4}) {
      List<String> rows = rows(20);
      rows.set(9, row(time(9), height));
      List<Note> notes = read(rows).notes();
      assertEquals(1, notes.size());
      assertEquals("tide.doubt.height", notes.get(0).code());
      assertEquals("11", notes.get(0).data().get("line"));
      assertEquals(
          "skarra.csv, line 11, height_m: "
              + height
              + " m is far from the other waters of its kind beside it. Compare the official"
              + " table.",
          notes.get(0).text());
    }
  }

  @Test
  void aTimeFarFromItsNeighboursIsDoubtedByItsRow() throws IOException {
    List<String> rows = rows(20);
    rows.set(9, row(time(9).plusHours(1), 4.4));
    List<Note> notes = read(rows).notes();
    assertEquals(1, notes.size());
    assertEquals("tide.doubt.time", notes.get(0).code());
    assertEquals("11", notes.get(0).data().get("line"));
  }

  @Test
  void aRangeBeyondAnyKnownIsDoubted() throws IOException {
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      rows.add(row(time(i), i % 2 == 0 ? -1.0 : 16.0));
    }
    assertEquals(List.of("tide.doubt.range", "tide.doubt.range", "tide.doubt.range"), doubts(rows));
  }

  @Test
  void doubtsTravelWithEverythingComputedFromTheTable() throws IOException {
    List<String> rows = rows(20);
    rows.set(9, row(time(9), 14.7));
    TideTable table = read(rows);
    Note doubt = table.notes().get(0);
    Instant noon = time(9).toInstant().plusSeconds(3600);
    TideCurve curve = TableCurve.cosine(table);
    assertTrue(curve.notesAt(noon).contains(doubt));
    assertTrue(
        curve
            .windowsAtLeast(Distance.ofMetres(3.0), table.start(), table.end())
            .notes()
            .contains(doubt));
    TideTable secondary = SecondaryPort.of("Lunna Pool", "chart datum", "Skarra").tableFrom(table);
    assertTrue(secondary.notes().contains(doubt));
  }

  @Test
  void aRowOfTheWrongFormDoesNotBringFalseProblemsWithIt() {
    String text =
        """
        port,datum,time,height_m
        Skarra,chart datum,2026-06-01T03:20Z,4,2
        ,,2026-06-01T09:30Z,0.5
        ,,2026-06-01T15:30Z,4.5
        """;
    String message =
        assertThrows(
                InputFormatException.class,
                () -> TideTable.read("skarra.csv", new StringReader(text)))
            .getMessage();
    assertEquals(
        "skarra.csv, line 2, column 5: a row must have 4 fields like the heading line, but had 5; a"
            + " field with a comma in it must stand between quotation marks, and a decimal has a"
            + " point",
        message);
  }

  @Test
  void highAndLowExchangedAreToldOnce() {
    StringBuilder text = new StringBuilder("time,height_m,kind\n");
    for (int i = 0; i < 8; i++) {
      text.append(rows(8).get(i)).append(i % 2 == 0 ? ",HW\n" : ",LW\n");
    }
    assertEquals(
        "skarra.csv, line 2, column 3: kind: high and low water seem to be exchanged throughout: of"
            + " 7 waters that follow one of the other kind, 7 go the wrong way",
        assertThrows(
                InputFormatException.class,
                () ->
                    TideTableReader.forPort("Skarra", "chart datum")
                        .read("skarra.csv", new StringReader(text.toString())))
            .getMessage());
  }

  @Test
  void timesInMessagesAreByTheFilesOwnClock() {
    List<String> rows = rows(4);
    rows.set(2, row(time(0), 0.8));
    assertTrue(
        refusal(rows)
            .contains(
                "must be later than the water before, at 2026-06-01T09:32:36+01:00, but was"
                    + " 2026-06-01T03:20:00+01:00"));
  }
}
