package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.stream.Stream;
import org.ferryglide.tide.folder.PassageFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder begun from nothing, filled in as its own comments show. */
class BeginVerbTest {
  @TempDir private Path place;

  /** Makes rows of the example rows in the comments. */
  private static void uncomment(Path file) throws Exception {
    List<String> rows =
        Files.readAllLines(file).stream()
            .map(line -> line.matches("# (Some |,).*") ? line.substring(2) : line)
            .toList();
    // the header stands last in a begun file, rows go below it
    Stream<String> heads = rows.stream().filter(line -> line.startsWith("#"));
    Stream<String> head = rows.stream().filter(line -> line.matches("[a-z].*"));
    Stream<String> body = rows.stream().filter(line -> line.matches("(Some |,).*"));
    Files.write(file, Stream.of(heads, head, body).flatMap(it -> it).toList());
  }

  @Test
  void theExampleRowsOfABegunFolderAreRead() throws Exception {
    Path folder = place.resolve("begun");
    Ran begun = Ran.of("begin", folder.toString());
    assertEquals(0, begun.status(), begun.err());
    for (String file : List.of("waypoints.csv", "streams.csv", "tides/port.csv")) {
      uncomment(folder.resolve(file));
    }
    StringBuilder hours = new StringBuilder(); // the comment says that they go on to hour 6
    for (int hour = -4; hour <= 6; hour++) {
      hours.append("Some Sound,,,,,,").append(hour).append(",008,1.1,0.5\n");
    }
    Files.writeString(folder.resolve("streams.csv"), hours, StandardOpenOption.APPEND);
    String items =
        Files.readString(folder.resolve("passage.csv"))
            .replace("name,", "name,Some passage")
            .replace("start,\n", "start,2026-06-14T11:40+01:00\n")
            .replace("paddling speed,\n", "paddling speed,3.5 kn\n")
            .replace("printed rose,\n", "printed rose,\"8°50'W 2019 (8'E)\"\n")
            .replace("landing port,\n", "landing port,Some Harbour\n");
    Files.writeString(folder.resolve("passage.csv"), items);
    PassageFolder read = PassageFolder.read(folder);
    assertEquals(2, read.wayPoints().size());
    assertEquals("Some Sound", read.streams().get(0).table().station());
    assertEquals("Some Harbour", read.landingTide().port());
  }

  @Test
  void checkTellsThatTheStartLiesOutsideOfTheTides() {
    Ran ran =
        Ran.of("check", "scenarios/ollen-skerries", "--depart", "2026-06-30T11:40+01:00", "--json");
    assertEquals(Status.DATA_MISSING.code(), ran.status(), ran.err());
    assertTrue(ran.out().contains("check.without-data"), ran.out());
    assertTrue(ran.out().contains("Orrin Quay from 2026-06-12 03:07 to "), ran.out());
  }

  private Path copied() throws Exception {
    Path from = Path.of("scenarios/ollen-skerries");
    Path copy = place.resolve("copy");
    try (Stream<Path> all = Files.walk(from)) {
      for (Path one : all.toList()) {
        Files.copy(one, copy.resolve(from.relativize(one).toString()));
      }
    }
    return copy;
  }

  private static void change(Path file, String old, String anew) throws Exception {
    String text = Files.readString(file);
    assertTrue(text.contains(old), text);
    Files.writeString(file, text.replace(old, anew));
  }

  @Test
  void checkTellsThatTheStartIsNotPossible() throws Exception {
    Path folder = copied();
    change(folder.resolve("passage.csv"), "paddling speed,3.5 kn", "paddling speed,0.9 kn");
    change(folder.resolve("party.csv"), "slower speed,3.0 kn", "slower speed,0.8 kn");
    Ran ran = Ran.of("check", folder.toString(), "--depart", "2026-06-14T11:10+01:00");
    assertEquals(Status.NOT_POSSIBLE.code(), ran.status(), ran.out() + ran.err());
    assertTrue(
        ran.out().contains("Not possible for the start planned, 2026-06-14 11:10: "), ran.out());
    Ran json = Ran.of("check", folder.toString(), "--depart", "2026-06-14T11:10+01:00", "--json");
    assertEquals(Status.NOT_POSSIBLE.code(), json.status(), json.err());
    assertTrue(json.out().contains("check.not-possible"), json.out());
    AnswerSchemas.keeps("check", json.out());
  }

  @Test
  void checkTellsOfNoTidesWhereTheyCoverTheStart() throws Exception {
    Path folder = copied();
    change(folder.resolve("limits.csv"), "reach of stations,6.0 NM", "reach of stations,1.0 NM");
    Ran ran = Ran.of("check", folder.toString());
    assertEquals(Status.DATA_MISSING.code(), ran.status(), ran.out() + ran.err());
    assertTrue(ran.out().contains("No answer for the start planned"), ran.out());
    assertFalse(ran.out().contains("Tides are given of"), ran.out());
  }

  @Test
  void aSheetWithoutAnswersIsRefused() throws Exception {
    Path empty = Files.writeString(place.resolve("empty.csv"), "# nothing yet\n");
    Ran ran = Ran.of("mark", empty.toString());
    assertEquals(Status.REFUSED.code(), ran.status(), ran.out());
    assertTrue(ran.err().contains("holds no answer"), ran.err());
  }
}
