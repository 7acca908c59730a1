package org.ferryglide.tide.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PassageFolderTest {
  @TempDir Path folder;

  private final Map<String, String> files = Folders.sound();

  private PassageFolder read() throws IOException {
    Folders.write(folder, files);
    return PassageFolder.read(folder);
  }

  private String text(String file) {
    return Objects.requireNonNull(files.get(file), file);
  }

  private void edit(String file, String from, String to) {
    String text = text(file);
    assertTrue(text.contains(from), file + " has no " + from);
    files.put(file, text.replace(from, to));
  }

  /** The problems without the folder's own name. */
  private List<String> problems() throws IOException {
    Folders.write(folder, files);
    InputFormatException refusal =
        assertThrows(InputFormatException.class, () -> PassageFolder.read(folder));
    List<String> lines = new ArrayList<>();
    for (InputProblem problem : refusal.problems()) {
      lines.add(problem.toString().replace(folder.toString() + "/", ""));
    }
    return lines;
  }

  private static List<String> texts(PassageFolder read) {
    List<String> texts = new ArrayList<>();
    read.notes().forEach(note -> texts.add(note.text()));
    return texts;
  }

  @Test
  void aSoundFolderIsReadWithoutDoubts() throws IOException {
    PassageFolder read = read();
    assertEquals(List.of(), read.notes());
    assertEquals("Out and over", read.name());
    assertEquals(3, read.wayPoints().size());
    assertEquals("Orrin Quay", read.landingTide().port());
    assertEquals("Hesk Sound", read.stations().get(0).name());
    assertEquals(FolderLimits.USUAL, read.limits());
    assertEquals(
        "Out and over, 2026-06-14T11:40+01:00, 3 way points, 1 tide tables, 1 stream tables",
        read.toString());
  }

  @Test
  void limitsStandInAFileOfTheirOwn() throws IOException {
    files.put(
        "limits.csv",
        """
        item,value
        light,civil twilight
        strongest stream,2 kn
        reach of stations,4 NM
        largest cross-stream share,60 %
        latest arrival,2026-06-14T18:00+01:00
        """);
    FolderLimits limits = read().limits();
    assertEquals(Distance.ofNauticalMiles(4), limits.reach());
    assertEquals(0.6, limits.crossStreamShare());
    assertEquals("2026-06-14T18:00+01:00", limits.latestArrival().get().toString());
    assertEquals(2.0, limits.strongestStream().get().knots(), 1e-12);
  }

  @Test
  void badLimitsAreRefusedByLineAndColumn() throws IOException {
    files.put("limits.csv", "item,value\nlight,moon\nstrongest stream,0 kn\nreach,4 NM\n");
    assertEquals(
        List.of(
            "limits.csv, line 2, column 2: light: must be daylight, civil twilight or any, but was"
                + " \"moon\"",
            "limits.csv, line 3, column 2: strongest stream: strongest stream must be above 0, but"
                + " was 0.0 kn",
            "limits.csv, line 4, column 1: item: must be one of [largest cross-stream share, latest"
                + " arrival, light, longest leg, reach of stations, strongest stream], but was"
                + " \"reach\"; did you mean \"reach of stations\"?"),
        problems());
  }

  @Test
  void theFaultsOfEveryFileAreToldAtOnceCausesFirst() throws IOException {
    edit("passage.csv", "3.5 kn", "3.5");
    edit("passage.csv", "landing port,Orrin Quay", "landing port,Orin Quay");
    edit("waypoints.csv", "46°11.8'N", "46°61.8'N");
    edit("streams.csv", "46.198,-26.255,Orrin Quay", "46.198,-26.255,Orrin Key");
    edit("tides/orrin-quay.csv", "5.2,high", "five,high");
    files.put("limits.csv", "item,value\nlight,moon\n");
    List<String> problems = problems();
    assertEquals(6, problems.size(), problems.toString());
    assertTrue(problems.get(0).startsWith("passage.csv, line 4, column 2: "), problems.toString());
    assertTrue(problems.get(1).startsWith("waypoints.csv, line 3, column 2: "));
    assertTrue(problems.get(2).startsWith("limits.csv, line 2, column 2: "));
    assertTrue(problems.get(3).startsWith("tides/orrin-quay.csv, line 2, column 4: "));
    assertEquals(
        "streams.csv, line 2, column 4: port: must be one of the ports with a tide table, [Orrin"
            + " Quay], but was Orrin Key; did you mean \"Orrin Quay\"?",
        problems.get(4));
    assertTrue(
        problems.get(5).startsWith("passage.csv, line 6, column 2: landing port: must be one of"));
    assertTrue(problems.get(5).endsWith("did you mean \"Orrin Quay\"?"));
  }

  @Test
  void whatFollowsFromAMissingFileIsNotTold() throws IOException {
    files.remove("tides/orrin-quay.csv");
    files.put("tides/readme.txt", "not a table");
    files.remove("waypoints.csv");
    List<String> problems = problems();
    assertEquals(2, problems.size(), problems.toString());
    assertEquals("waypoints.csv: the file is missing", problems.get(0));
    assertEquals(
        "tides: there is no tide table in it: no file whose name ends in .csv", problems.get(1));
  }

  @Test
  void capitalsInFileNamesAreRead() throws IOException {
    files.put("tides/ORRIN.CSV", files.remove("tides/orrin-quay.csv"));
    files.put("WayPoints.CSV", files.remove("waypoints.csv"));
    assertEquals(3, read().wayPoints().size());
  }

  @Test
  void emptyAndDoubledNamesAreRefused() throws IOException {
    edit("waypoints.csv", "Hesk Point", "");
    edit("waypoints.csv", "Quill Island", "Marrow slip");
    edit("passage.csv", "Out and over", "");
    assertEquals(
        List.of(
            "passage.csv, line 2, column 2: name: must not be empty",
            "waypoints.csv, line 3, column 1: name: must not be empty",
            "waypoints.csv, line 4, column 1: name: Marrow slip is the name of two places: every"
                + " place needs a name of its own"),
        problems());
  }

  @Test
  void aRoundTripMayComeBackToAPlaceByItsName() throws IOException {
    files.put("waypoints.csv", text("waypoints.csv") + "Marrow Slip,46°10.0'N 026°20.0'W\n");
    assertEquals(4, read().wayPoints().size());
  }

  @Test
  void controlCharactersAreRefusedWhereTheyStandAndNeverRepeated() throws IOException {
    edit("waypoints.csv", "Hesk", "\u001b[2JHesk");
    edit("passage.csv", "Out and", "Out\u202eand");
    List<String> problems = problems();
    assertEquals(
        List.of(
            "passage.csv, line 2, column 2: must not hold control or hidden characters, but has"
                + " U+202E",
            "waypoints.csv, line 3, column 1: must not hold control or hidden characters, but has"
                + " U+001B"),
        problems);
  }

  @Test
  void aHugeFileAndAFolderInItsPlaceAreNamed() throws IOException {
    files.put("passage.csv", "item,value\nname," + "x".repeat(5_000_000));
    Files.createDirectories(folder.resolve("waypoints.csv"));
    files.remove("waypoints.csv");
    assertEquals(
        List.of(
            "passage.csv: must hold at most 4000000 bytes, but has 5000016",
            "waypoints.csv: must be a file, but is a folder or a device"),
        problems());
  }

  @Test
  void anotherEncodingIsRefusedByLineAndColumn() throws IOException {
    Folders.write(folder, files);
    Files.write(
        folder.resolve("passage.csv"), text("passage.csv").getBytes(StandardCharsets.ISO_8859_1));
    InputFormatException refusal =
        assertThrows(InputFormatException.class, () -> PassageFolder.read(folder));
    assertEquals(5, refusal.problems().get(0).line());
    assertEquals(2, refusal.problems().get(0).column());
  }

  @Test
  void twoTablesOfAPortAreRefusedByLineAndColumn() throws IOException {
    files.put("tides/second.csv", "# again\n" + text("tides/orrin-quay.csv"));
    assertEquals(
        List.of(
            "tides/second.csv, line 3, column 1: port: there is another tide table of Orrin Quay"),
        problems());
  }

  @Test
  void aMissingFolderIsNamed() {
    assertThrows(NoSuchFileException.class, () -> PassageFolder.read(folder.resolve("nowhere")));
  }

  /** By the great-circle formula on a sphere, 46°12' N 17.6' and 13.0' W against E: 2180 NM. */
  @Test
  void aLostSignNamesTheWayPointThatLooksWrong() throws IOException {
    edit("waypoints.csv", "46°12.1'N 026°13.0'W", "46°12.1'N 026°13.0'E");
    List<Note> notes = read().notes();
    assertEquals(Severity.WARNING, notes.get(0).severity());
    assertEquals("3", notes.get(0).data().get("wayPoint"));
    assertTrue(
        notes
            .get(0)
            .text()
            .endsWith(
                "Way point Quill Island, 46°12.1'N 026°13.0'E, looks wrong: it would fit with W for"
                    + " E in its longitude."),
        notes.toString());
    assertEquals(1, notes.size(), "what follows from it is not told");
  }

  @Test
  void aTurnedLatitudeIsToldOnceForEachOfItsLegs() throws IOException {
    edit("waypoints.csv", "46°11.8'N", "46°11.8'S");
    List<String> texts = texts(read());
    assertEquals(2, texts.size(), texts.toString());
    for (String text : texts) {
      assertTrue(text.contains("Way point Hesk Point, 46°11.8'S"), text);
      assertTrue(
          text.endsWith("it would fit with S for N in its latitude.")
              || text.endsWith("it would fit with N for S in its latitude."),
          text);
    }
  }

  @Test
  void aSlipOfHalfADegreeIsDoubtedBesideTheOtherLegs() throws IOException {
    edit("waypoints.csv", "46°12.1'N", "46°42.1'N");
    List<String> texts = texts(read());
    assertTrue(texts.get(0).contains("check the position of Quill Island"), texts.toString());
  }

  @Test
  void aStationNoLegComesNearIsDoubtedByName() throws IOException {
    edit("streams.csv", "46.198,-26.255", "46.198,26.255");
    List<String> texts = texts(read());
    assertTrue(texts.get(0).startsWith("Station Hesk Sound lies 2"), texts.toString());
    assertTrue(
        texts.get(0).endsWith("it would fit with W for E in its longitude."), texts.toString());
    assertTrue(texts.get(1).contains("the stream there is not known"), texts.toString());
  }

  @Test
  void aLegFartherThanHalfTheReachIsDoubtedByName() throws IOException {
    files.put("limits.csv", "item,value\nreach of stations,5.0 NM\n");
    List<Note> notes = read().notes();
    assertEquals(1, notes.size(), notes.toString());
    assertEquals("1", notes.get(0).data().get("leg"));
    assertTrue(notes.get(0).text().contains("Hesk Sound, lies 2.6 NM away"), notes.toString());
    assertFalse(notes.get(0).severity() == Severity.WARNING);
  }
}
