package org.ferryglide.examples.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.Window;
import org.ferryglide.tide.folder.PassageFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** GeoJSON, iCalendar, comma-separated text and the beginning of a folder. */
class FilesForOthersTest {
  private static final Path EXAMPLE = Path.of("scenarios/ollen-skerries");

  /** RFC 7946, section 3.1.9 has the cut; both parts end on the meridian. */
  @Test
  void aLineIsCutAtTheAntimeridian() {
    Map<String, Object> line =
        PlanGeoJson.line(
            List.of(Position.ofDegrees(10.0, 179.0), Position.ofDegrees(20.0, -179.0)));
    assertEquals("MultiLineString", line.get("type"));
    assertEquals(
        List.of(
            List.of(List.of(179.0, 10.0), List.of(180.0, 15.0)),
            List.of(List.of(-180.0, 15.0), List.of(-179.0, 20.0))),
        line.get("coordinates"));
    assertEquals(
        List.of(
            List.of(List.of(-179.0, 20.0), List.of(-180.0, 15.0)),
            List.of(List.of(180.0, 15.0), List.of(179.0, 10.0))),
        PlanGeoJson.line(List.of(Position.ofDegrees(20.0, -179.0), Position.ofDegrees(10.0, 179.0)))
            .get("coordinates"));
  }

  @Test
  void longitudeStandsFirst() {
    assertEquals(
        List.of(List.of(-26.0, 46.0), List.of(-25.0, 47.0)),
        PlanGeoJson.line(List.of(Position.ofDegrees(46.0, -26.0), Position.ofDegrees(47.0, -25.0)))
            .get("coordinates"));
  }

  @Test
  void thePlanHasWayPointsLegsAndPaths() throws IOException {
    PassageFolder folder = PassageFolder.read(EXAMPLE);
    Map<String, Object> collection =
        PlanGeoJson.of(
            folder.passage(), TimedPlan.of(folder.passage(), folder.start().toInstant()));
    assertEquals("FeatureCollection", collection.get("type"));
    List<?> features = (List<?>) collection.get("features");
    assertEquals(5 + 4 + 4, features.size());
    for (Object feature : features) {
      assertEquals("Feature", ((Map<?, ?>) feature).get("type"));
    }
    assertTrue(JsonText.of(collection).endsWith("}\n"));
  }

  /** RFC 5545: lines end in CR LF and hold at most 75 octets (3.1), UTC times end in Z (3.3.5). */
  @Test
  void theCalendarKeepsToItsRulesAndHasNoAlarms() {
    Window window =
        Window.of(Instant.parse("2026-06-14T08:46:00Z"), Instant.parse("2026-06-14T09:34:00Z"));
    String text =
        CalendarFile.departures(
            "Round; the, isle\nand a long way home in the dark ö", List.of(window));
    for (String line : text.split("\r\n")) {
      assertFalse(line.contains("\n"), line);
      assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
    }
    assertTrue(text.contains("DTSTART:20260614T084600Z\r\n"), text);
    assertTrue(text.contains("DTEND:20260614T093400Z\r\n"), text);
    assertTrue(text.contains("Round\\; the\\, isle\\nand"), text);
    assertFalse(text.contains("VALARM"), text);
    assertEquals(
        text,
        CalendarFile.departures(
            "Round; the, isle\nand a long way home in the dark ö", List.of(window)));
  }

  @Test
  void formulasAreMadeHarmless() {
    assertEquals("'=1+1", SafeCsv.field("=1+1"));
    assertEquals("'@sum", SafeCsv.field("@sum"));
    assertEquals("'-cmd", SafeCsv.field("-cmd"));
    assertEquals("\"'+a,b\"", SafeCsv.field("+a,b"));
    assertEquals("'\tx", SafeCsv.field("\tx"));
    assertEquals("-12.5", SafeCsv.field("-12.5"));
    assertEquals("+3", SafeCsv.field("+3"));
    assertEquals("\"say \"\"a\"\"\"", SafeCsv.field("say \"a\""));
    assertEquals("a,\"b\nc\",", SafeCsv.row(List.of("a", "b\nc", "")));
  }

  @Test
  void aRouteBecomesAFolderWithItsMissingItemsMarked(@TempDir Path temporary) throws IOException {
    Path folder = temporary.resolve("mine");
    GpxContent.Line route = GpxFile.read(Path.of("scenarios/ollen-skerries.gpx")).routes().get(0);
    FolderStart start = FolderStart.of(route);
    start.write(folder);
    assertEquals(List.of("passage.csv", "streams.csv", "tides/port.csv"), start.missing());
    assertThrows(FileAlreadyExistsException.class, () -> start.write(folder));
    String message =
        assertThrows(InputFormatException.class, () -> PassageFolder.read(folder)).getMessage();
    assertTrue(message.contains("passage.csv, line 5, column 2"), message);

    for (String file :
        List.of("passage.csv", "streams.csv", "tides/orrin-quay.csv", "tides/dunlathe.csv")) {
      Files.write(folder.resolve(file), Files.readAllBytes(EXAMPLE.resolve(file)));
    }
    Files.delete(folder.resolve("tides/port.csv"));
    PassageFolder filled = PassageFolder.read(folder);
    PassageFolder example = PassageFolder.read(EXAMPLE);
    for (int at = 0; at < example.wayPoints().size(); at++) {
      assertEquals(example.wayPoints().get(at).name(), filled.wayPoints().get(at).name());
      assertEquals(
          example.wayPoints().get(at).position().latitudeDegrees(),
          filled.wayPoints().get(at).position().latitudeDegrees(),
          0.5e-4 / 60.0 + 1e-8); // minutes to four decimals, after degrees to eight
    }
  }

  @Test
  void pointsWithoutANameOrWithADoubledOneAreNumbered() {
    Position place = Position.ofDegrees(46.0, -26.0);
    FolderStart start =
        FolderStart.of(
            new GpxContent.Line(
                "r",
                List.of(
                    new GpxContent.Point("", place, null),
                    new GpxContent.Point("=Rock", place, null),
                    new GpxContent.Point("=Rock", place, null))));
    assertEquals(
        "name,position\nWay point 1,46°00.0000'N 026°00.0000'W\n'=Rock,46°00.0000'N 026°00.0000'W\n"
            + "'=Rock 3,46°00.0000'N 026°00.0000'W\n",
        start.texts().get("waypoints.csv"));
    assertThrows(
        IllegalArgumentException.class, () -> FolderStart.of(new GpxContent.Line("r", List.of())));
  }
}
