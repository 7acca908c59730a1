package org.ferryglide.tide.stream;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.height.TideEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StreamTableTest {
  private static final String HEADINGS =
      "station,latitude,longitude,port,neap_range_m,spring_range_m,hour,set_deg,spring_rate_kn,neap_rate_kn\n";

  private static List<StreamTable> read(String text) throws IOException {
    return StreamTable.readAll("streams.csv", new StringReader(text));
  }

  private static String refusal(String text) {
    return String.valueOf(assertThrows(InputFormatException.class, () -> read(text)).getMessage());
  }

  /** A faultless station, one row an hour. */
  private static String station(String name) {
    StringBuilder rows = new StringBuilder();
    for (int hour = -6; hour <= 6; hour++) {
      rows.append(name)
          .append(hour == -6 ? ",50.11,-5.52,Port Ennor,2.0,5.0," : ",,,,,,")
          .append(hour)
          .append(hour == 0 ? ",,0,0\n" : ",61,2.4,1.1\n");
    }
    return rows.toString();
  }

  @Test
  void aSheetHoldsManyStations() throws IOException {
    List<StreamTable> tables = read(HEADINGS + station("Skarra") + station("Brannoc"));
    assertEquals(2, tables.size());
    StreamTable table = tables.get(1);
    assertEquals("Brannoc", table.station());
    assertEquals(Position.ofDegrees(50.11, -5.52), table.position());
    assertEquals(
        StandardPort.aboutHighWater("Port Ennor", new MeanRanges(ofMetres(5.0), ofMetres(2.0))),
        table.standardPort());
    assertEquals(13, table.hours().size());
    assertTrue(table.isComplete());
    assertEquals(StreamSamples.row(-6, 61, 2.4, 1.1), table.hours().get(0));
  }

  @Test
  void aRowOfSlackWaterNeedsNoSet() throws IOException {
    assertEquals(StreamHour.slack(0), read(HEADINGS + station("Skarra")).get(0).hours().get(6));
  }

  @Test
  void hoursMayCountFromLowWater() throws IOException {
    String sheet = HEADINGS.replace("\n", ",about\n") + station("Skarra").replace("\n", ",LW\n");
    StandardPort port = read(sheet).get(0).standardPort();
    assertEquals(TideEvent.Kind.LOW, port.about());
    assertEquals("LW", port.mark());
  }

  @Test
  void aMissingRowIsNamed() {
    String sheet = HEADINGS + station("Skarra").replace("Skarra,,,,,,3,61,2.4,1.1\n", "");
    assertEquals(
        "streams.csv, line 2, column 7: hour: station Skarra has no row for hour 3",
        refusal(sheet));
  }

  @Test
  void aDoubledRowIsRefused() {
    String sheet = HEADINGS + station("Skarra") + "Skarra,,,,,,3,61,2.4,1.1\n";
    assertEquals(
        "streams.csv, line 15, column 7: hour: 3 occurs twice for station Skarra", refusal(sheet));
  }

  @Test
  void everyFaultIsListedByLineAndColumn() {
    String sheet =
        HEADINGS
            + station("Skarra")
                .replace(",-5,61,2.4,1.1", ",-5,361,2.4,x")
                .replace(",2,61,", ",2,,")
                .replace(",50.11,", ",95,");
    assertEquals(
        "streams.csv, line 2, column 2: latitude: must be a number in [-90.0, 90.0], but was"
            + " \"95\"\n"
            + "streams.csv, line 3, column 8: set_deg: must be a number in [0.0, 360.0], but was"
            + " \"361\"\n"
            + "streams.csv, line 3, column 10: neap_rate_kn: must be a number in [0.0, 25.0], but"
            + " was \"x\"\n"
            + "streams.csv, line 10, column 8: set_deg: must be a number in [0.0, 360.0], but was"
            + " \"\"",
        refusal(sheet));
  }

  @Test
  void aStationThatContradictsItselfIsRefused() {
    String sheet = HEADINGS + station("Skarra").replace("Skarra,,,,,,4,", "Skarra,,,Brannoc,,,4,");
    assertEquals(
        "streams.csv, line 12, column 4: port: must be empty or \"Port Ennor\" as in line 2 for the"
            + " same station, but was \"Brannoc\"",
        refusal(sheet));
  }

  @Test
  void springRangeMustExceedNeapRange() {
    assertEquals(
        "streams.csv, line 2, column 6: spring_range_m: must be above the neap range of 6.0, but"
            + " was 5.0",
        refusal(HEADINGS + station("Skarra").replace(",2.0,5.0,", ",6.0,5.0,")));
  }

  @Test
  void hoursAreWhole() {
    assertTrue(
        refusal(HEADINGS + station("Skarra").replace(",,4,61", ",,4.5,61"))
            .contains("line 12, column 7: hour: must be a whole number, but was \"4.5\""));
  }

  @Test
  void anEmptySheetIsRefused() {
    assertEquals(
        "streams.csv: must have at least one row beneath the heading line", refusal(HEADINGS));
  }

  @Test
  void unknownAboutIsRefused() {
    String sheet = HEADINGS.replace("\n", ",about\n") + station("Skarra").replace("\n", ",hw\n");
    assertEquals(
        "streams.csv, line 2, column 11: about: must be HW or LW, but was \"hw\"", refusal(sheet));
  }

  @Test
  void exchangedRateColumnsAreRefused() {
    assertEquals(
        "streams.csv, line 2, column 10: neap_rate_kn: is above the spring rate in most rows of"
            + " station Skarra; the two columns seem to be exchanged",
        refusal(HEADINGS + station("Skarra").replace(",2.4,1.1", ",1.1,2.4")));
  }

  private static List<String> doubts(String sheet) throws IOException {
    List<String> doubts = new ArrayList<>();
    for (Note note : read(sheet).get(0).notes()) {
      doubts.add(note.code() + " " + note.data().getOrDefault("line", "-"));
    }
    return doubts;
  }

  /** The sets of a channel: flood before high water, ebb after it. */
  private static String channel() {
    return station("Skarra").replaceAll(",(-[1-6]),61,", ",$1,241,");
  }

  /** The rate that is far is told, be it that of springs or of neaps, and the row as printed. */
  @Test
  void theRateThatIsFarIsTold() throws IOException {
    String sheet = HEADINGS + channel().replace(",-3,241,2.4,1.1", ",-3,241,2.4,15");
    Note note =
        read(sheet).get(0).notes().stream()
            .filter(told -> told.code().equals("stream.doubt.rate"))
            .findFirst()
            .orElseThrow();
    assertTrue(note.text().contains("hour -3: the rate of 15.0 kn is far above"), note.text());
    sheet = HEADINGS + channel().replaceFirst(",0,([0-9]*),[0-9.]*,", ",0,61,20,");
    assertTrue(
        read(sheet).get(0).notes().stream().anyMatch(told -> told.text().contains("hour HW: ")));
  }

  @Test
  void whatLooksWrongIsDoubtedByRow() throws IOException {
    assertEquals(List.of(), doubts(HEADINGS + channel()));
    assertEquals(
        List.of("stream.doubt.neap-above-spring 5"),
        doubts(HEADINGS + channel().replace(",-3,241,2.4,1.1", ",-3,241,1.1,2.4")));
    assertEquals(
        List.of("stream.doubt.rate 5", "stream.doubt.fastest 5"),
        doubts(HEADINGS + channel().replace(",-3,241,2.4,1.1", ",-3,241,24,1.1")));
    assertEquals(
        List.of("stream.doubt.set 5"),
        doubts(HEADINGS + channel().replace(",-3,241,2.4,1.1", ",-3,61,2.4,1.1")));
    assertEquals(List.of("stream.doubt.never-turns 2"), doubts(HEADINGS + station("Skarra")));
  }

  @Test
  void aDoubtNamesTheFileTheRowAndTheSourceOfItsThreshold() throws IOException {
    Note note =
        read(HEADINGS + channel().replace(",-3,241,2.4,1.1", ",-3,241,1.1,2.4"))
            .get(0)
            .notes()
            .get(0);
    assertEquals(
        "streams.csv, line 5, Skarra, hour -3: the neap rate of 2.4 kn is above the spring rate of"
            + " 1.1 kn. Compare the official table.",
        note.text());
    assertEquals("common practice, no source", note.data().get("source"));
  }

  @Test
  void doubtsTravelWithTheStream() {
    StreamTable table =
        StreamTable.of(
            "R",
            StreamSamples.SKARRA,
            StreamSamples.ENNOR,
            List.of(
                StreamSamples.row(0, 61, 1, 2),
                StreamSamples.row(1, 61, 3, 2),
                StreamSamples.row(2, 241, 3, 2)));
    assertTrue(
        table.boundTo(StreamSamples.tides(5.0)).explain(StreamSamples.FIRST_HIGH).notes().stream()
            .anyMatch(note -> note.code().equals("stream.doubt.neap-above-spring")));
  }

  @Test
  void aMisspeltStationIsOneProblem() {
    assertEquals(
        "streams.csv, line 5, column 1: station: \"Skara\" has 1 of the 13 rows of a table; did you"
            + " mean \"Skarra\"?",
        refusal(HEADINGS + channel().replace("Skarra,,,,,,-3", "Skara,,,,,,-3")));
  }

  @Test
  void rateOfARowAtARange() {
    StreamTable table = StreamSamples.table();
    assertEquals(3.0, table.at(3, ofMetres(5.0)).rate().knots(), 1e-12);
    assertEquals(1.5, table.at(3, ofMetres(2.0)).rate().knots(), 1e-12);
    assertEquals(243.0, table.at(3, ofMetres(2.0)).set().degrees(), 1e-9);
    assertEquals(
        "stream table Skarra Sound has no row for hour 7",
        assertThrows(IllegalArgumentException.class, () -> table.at(7, ofMetres(3.0)))
            .getMessage());
  }

  @Test
  void badPartsAreRefusedByName() {
    StreamHour row = StreamHour.slack(0);
    assertEquals(
        "stream table A must not have hour 0 twice",
        assertThrows(
                IllegalArgumentException.class,
                () ->
                    StreamTable.of(
                        "A", StreamSamples.SKARRA, StreamSamples.ENNOR, List.of(row, row)))
            .getMessage());
    assertEquals(
        "stream table A must have at least one row",
        assertThrows(
                IllegalArgumentException.class,
                () -> StreamTable.of("A", StreamSamples.SKARRA, StreamSamples.ENNOR, List.of()))
            .getMessage());
    assertEquals(
        "hour must be in [-7, 7] hours, but was 8",
        assertThrows(IllegalArgumentException.class, () -> StreamHour.slack(8)).getMessage());
    assertEquals(
        "spring range must be above the neap range of 3.0 metres, but was 3.0",
        assertThrows(
                IllegalArgumentException.class,
                () ->
                    StandardPort.aboutHighWater("A", new MeanRanges(ofMetres(3.0), ofMetres(3.0))))
            .getMessage());
  }

  @Test
  void tablesOfTheSamePartsAreEqual() {
    assertEquals(StreamSamples.table(), StreamSamples.table());
    assertEquals(StreamSamples.table().hashCode(), StreamSamples.table().hashCode());
    assertNotEquals(
        StreamSamples.table(),
        StreamSamples.table("other", StreamSamples.SKARRA, StreamSamples.ENNOR));
    assertFalse(
        StreamTable.of("A", StreamSamples.SKARRA, StreamSamples.ENNOR, List.of(StreamHour.slack(0)))
            .isComplete());
  }

  @Test
  void tablesAreReadBackAsTheyWereWritten() throws IOException {
    List<StreamTable> tables =
        List.of(
            StreamSamples.table(),
            StreamSamples.table(
                "The \"Gut\", west",
                Position.ofDegrees(-50.123456789, 179.9),
                new StandardPort(
                    "Ennor, Port",
                    TideEvent.Kind.LOW,
                    new MeanRanges(ofMetres(4.9), ofMetres(2.1)))));
    StringBuilder sheet = new StringBuilder();
    StreamTable.writeAll(tables, sheet);
    assertEquals(tables, read(sheet.toString()));
    assertEquals(tables.get(0), StreamTable.named(tables, "Skarra Sound"));
    assertEquals(
        "there is no stream table \"Hesk\"; there are [Skarra Sound, The \"Gut\", west]",
        assertThrows(IllegalArgumentException.class, () -> StreamTable.named(tables, "Hesk"))
            .getMessage());
    StreamTable oneRow =
        StreamTable.of(
            "A", StreamSamples.SKARRA, StreamSamples.ENNOR, List.of(StreamHour.slack(0)));
    assertThrows(
        IllegalArgumentException.class,
        () -> StreamTable.writeAll(List.of(oneRow), new StringBuilder()));
  }

  @Test
  void tablesAreReadFromAFile(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("streams.csv");
    Files.writeString(file, HEADINGS + channel());
    assertEquals(read(HEADINGS + channel()), StreamTable.readAll(file));
  }

  @Test
  void labelsAreThoseOfThePencilledChart() {
    assertEquals("HW", StreamHour.slack(0).label("HW"));
    assertEquals("+2", StreamHour.slack(2).label("HW"));
    assertEquals("-3", StreamHour.slack(-3).label("HW"));
  }
}
