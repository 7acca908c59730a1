package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

  @Test
  void aSheetWithoutAnswersIsRefused() throws Exception {
    Path empty = Files.writeString(place.resolve("empty.csv"), "# nothing yet\n");
    Ran ran = Ran.of("mark", empty.toString());
    assertEquals(Status.REFUSED.code(), ran.status(), ran.out());
    assertTrue(ran.err().contains("holds no answer"), ran.err());
  }
}
