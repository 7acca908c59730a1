package org.ferryglide.tide.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each folder has one mistake, which is told by file, line and column. */
class BrokenPassageFilesTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "places.csv | Hesk Point,white | Hesk Pint,white | 3 | 1 | did you mean \"Hesk Point\"?",
        "places.csv | Hesk Point,white | ,white | 3 | 1 | must not be empty",
        "places.csv | Hesk Point,white | Marrow Slip,white | 3 | 1 | stands twice",
        "places.csv | beacon,14 | beacon,high | 3 | 3 | must be a number in [-20.0, 1000.0]",
        "places.csv | Orrin Quay,0.4 | Orrin Key,0.4 | 4 | 4 | ports with a tide table",
        "places.csv | 0.4,4.6 | 5.4,4.6 | 4 | 6 | must be at least the lowest",
        "places.csv | 0.4,4.6 | ,4.6 | 4 | 5 | must be a number in [-20.0, 30.0]",
        "places.csv | 200,290 | 200, | 4 | 8 | must be given with the other edge",
        "places.csv | 200,290 | 200,390 | 4 | 8 | must be a number in [0.0, 360.0]",
        "places.csv | any level,, | any level,1, | 2 | 5 | must be empty beside \"any level\"",
        "places.csv | 14,,,, | 14,,1,, | 3 | 5 | the column landing is empty",
        "places.csv | 20 min | 20 minutes | 3 | 9 | must be a stop as in 40 min",
        "places.csv | 20 min | until noon | 3 | 9 | must be a date and time with its offset",
        "places.csv | 20 min | until 2 m or more at Orin Quay | 3 | 9 | did you mean",
        "places.csv | 20 min | until 2.0.1 m or more at Orrin Quay | 3 | 9 | or until 2.5 m or"
            + " more",
        "places.csv | to_see | to_sea | 1 | 2 | did you mean to_see?",
        "legs.csv | 1,track | 3,track | 2 | 1 | must be a number in [1.0, 2.0]",
        "legs.csv | 1,track | 1.5,track | 2 | 1 | must be a whole number",
        "legs.csv | 1,track | 2,track | 3 | 1 | stands twice",
        "legs.csv | track held | track kept | 2 | 2 | must be constant heading, track held",
        "legs.csv | 3.2 | 0 | 2 | 3 | must be above 0",
        "legs.csv | none | no | 3 | 4 | must be none or empty",
        "legs.csv | 015° 0.4 kn | 015° | 3 | 5 | must be slack, a set and rate",
        "legs.csv | 015° 0.4 kn | station Hesk Sund | 3 | 5 | did you mean \"Hesk Sound\"?",
        "legs.csv | geodesic | straight | 3 | 6 | must be geodesic or empty",
        "party.csv | 2.9 kn | 3.9 kn | 2 | 2 | at most the paddling speed of 3.5 kn",
        "party.csv | 8 min | 60 min | 3 | 2 | must be less than 60 min",
        "party.csv | 15 min | 15 | 4 | 2 | must be a time as in 40 min or 1 h 20 min",
        "party.csv | load,loaded | load,heavy | 6 | 2 | must be loaded, ordinary or empty",
        "party.csv | 3 % | 300 % | 7 | 2 | drift must be in [0, 1]",
        "party.csv | Atlantic/Azores | Azores | 9 | 2 | must be a zone",
        "party.csv | 5 NM | 0 NM | 10 | 2 | must be above 0 and at most 60 NM",
        "party.csv | 310° | NW | 11 | 2 | swell from",
        "party.csv | eye height | eye hight | 8 | 1 | did you mean \"eye height\"?",
        "margins.csv | 2 kn,3 kn | 3 kn,2 kn | 2 | 3 | must be below its stop limit",
        "margins.csv | 20°,45° | 20°,95° | 11 | 3 | must be in [0, 90]",
        "margins.csv | reserve,1 | reserves,1 | 6 | 1 | did you mean \"reserve\"?",
        "margins.csv | rate,,30 % | rate,10 %,30 % | 12 | 2 | must be empty, since error of the"
            + " rate",
        "margins.csv | 2 h,30 min | 2 h,-30 min | 8 | 3 | must be a time as in",
        "dangers.csv | 15.4'W,150 | 15.4'W,-150 | 2 | 3 | must be a number in [0.0, 50000.0]",
        "dangers.csv | 46°11.6'N | 56°11.6'N | 3 | 2 | must lie within 60 NM of each other",
        "dangers.csv | 46°11.6'N | 46°11.6' | 4 | 2 | position",
        "dangers.csv | HW-2..HW+1 | HW+2..HW+1 | 3 | 5 | must be hours about high or low water",
        "dangers.csv | HW-2..HW+1 | HW-2..LW+1 | 3 | 5 | must be hours about high or low water",
        "dangers.csv | Orrin Quay | Orrin Key | 3 | 4 | did you mean \"Orrin Quay\"?",
        "dangers.csv | 100,Orrin Quay | 100, | 3 | 4 | must be the port whose waters",
        "dangers.csv | W,100,,,,,, | W,90,,,,,, | 5 | 3 | must be empty or as in the first row",
        "dangers.csv | Fang Rock | two corners | 2 | 2 | must have at least 3 corners",
        "lanes.csv | 400 | 0 | 2 | 3 | must be a number in [1.0, 50000.0]",
        "lanes.csv | Tarn fairway,46°12.7 | Other,46°12.7 | 2 | 2 | at least 2 points",
        "refuges.csv | any level | '' | 2 | 3 | since a refuge is for landing",
        "refuges.csv | Sel Sand | Hesk Point | 2 | 1 | is a way point",
        "wind.csv | 12:00 | 05:00 | 3 | 3 | must be later than in the row before",
        "wind.csv | 06:00+01:00 | 06:00 | 2 | 3 | must be a date and time with its offset",
        "wind.csv | 06:00+01:00,250 | 06:00+01:00, | 2 | 4 | must be a number in [0.0, 360.0]",
        "wind.csv | 46°11.0'N | 96°11.0'N | 2 | 2 | position",
      })
  void oneMistakeIsToldByItsPlace(
      String file, String from, String to, int line, int column, String message)
      throws IOException {
    Map<String, String> files = Folders.whole();
    String text = files.get(file);
    String broken = from.startsWith("Fang") ? withTwoCorners(text) : replaced(text, from, to);
    files.put(file, broken);
    Folders.write(folder, files);
    InputFormatException refusal =
        assertThrows(InputFormatException.class, () -> PassageFolder.read(folder));
    InputProblem problem = refusal.problems().get(0);
    assertEquals(
        folder.resolve(file) + ", line " + line + ", column " + column,
        problem.source() + ", line " + problem.line() + ", column " + problem.column(),
        refusal.getMessage());
    assertTrue(problem.message().contains(message), problem.message());
  }

  private static String replaced(String text, String from, String to) {
    int at = text.indexOf(from);
    assertTrue(at >= 0, text + " has no " + from);
    return text.substring(0, at) + to + text.substring(at + from.length());
  }

  private static String withTwoCorners(String text) {
    int last = text.lastIndexOf("Fang Rock");
    return text.substring(0, last)
        + "Fang Rock,46°10.3'N 026°15.4'W,150,,,,,,\nFang Rock,46°10.4'N 026°15.4'W,,,,,,,\n";
  }

  @Test
  void theMistakesOfAllFilesAreToldAtOnce() throws IOException {
    Map<String, String> files = Folders.whole();
    files.put("waypoints.csv", files.get("waypoints.csv").replace("46°11.8'N", "46°71.8'N"));
    files.put("party.csv", "item,value\nlaunching,soon\n");
    files.put("dangers.csv", "name,position,keep_off_m\nFang Rock,46°10.3'N 026°15.4'W,near\n");
    files.put("wind.csv", "place,position,time,from_deg,speed_kn\n");
    Folders.write(folder, files);
    InputFormatException refusal =
        assertThrows(InputFormatException.class, () -> PassageFolder.read(folder));
    List<String> sources =
        refusal.problems().stream().map(one -> Path.of(one.source()).toFile().getName()).toList();
    assertEquals(List.of("waypoints.csv", "party.csv", "dangers.csv", "wind.csv"), sources);
  }

  @Test
  void aNameIsNotBlamedForAFileThatWasRefused() throws IOException {
    Map<String, String> files = Folders.whole();
    files.put("waypoints.csv", "name,position\nMarrow Slip,46°71.8'N 026°20.0'W\n");
    files.put("tides/orrin-quay.csv", "port,datum\n");
    Folders.write(folder, files);
    InputFormatException refusal =
        assertThrows(InputFormatException.class, () -> PassageFolder.read(folder));
    for (InputProblem problem : refusal.problems()) {
      String name = Path.of(problem.source()).toFile().getName();
      assertTrue(List.of("waypoints.csv", "orrin-quay.csv").contains(name), problem.toString());
    }
  }
}
