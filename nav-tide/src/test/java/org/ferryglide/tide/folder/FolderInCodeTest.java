package org.ferryglide.tide.folder;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.Paths;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.passage.Party;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorSource;
import org.ferryglide.nav.reckon.Spread;
import org.ferryglide.nav.sky.SunThreshold;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.steer.WindResponse;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.HourlyStream;
import org.ferryglide.tide.stream.StreamTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Folders made of values and of texts, and what they write. */
class FolderInCodeTest {
  private static final String AREA =
      "name,position\n"
          + "Quill,46°11.9'N 026°14.5'W\nQuill,46°12.3'N 026°14.5'W\n"
          + "Quill,46°12.3'N 026°13.9'W\nQuill,46°11.9'N 026°13.9'W\n";

  @TempDir Path root;

  private static PassageFolder inCode(String name) throws IOException {
    Map<String, String> files = Folders.sound();
    TideTable tide = TideTable.read("tides", new StringReader(files.get("tides/orrin-quay.csv")));
    List<StreamTable> streams =
        StreamTable.readAll("streams", new StringReader(files.get("streams.csv")));
    return PassageFolder.of(
        name,
        OffsetDateTime.parse("2026-06-14T11:40+01:00"),
        Speed.ofKnots(3.5),
        CompassRose.parse("8°50'W 2019 (8'E)"),
        PassageFolder.of(files).wayPoints(),
        List.of(tide),
        streams);
  }

  @Test
  void aFolderOfValuesIsTheFolderOfTheSameFiles() throws IOException {
    PassageFolder read = PassageFolder.of(Folders.sound());
    PassageFolder made = inCode("Out and over");
    assertEquals(read.name(), made.name());
    assertEquals(read.start(), made.start());
    assertEquals(read.speed(), made.speed());
    assertEquals(read.rose(), made.rose());
    assertEquals(read.wayPoints(), made.wayPoints());
    assertEquals(read.tides(), made.tides());
    assertEquals(read.landingTide(), made.landingTide());
    assertEquals(tables(read), tables(made));
    Instant start = made.start().toInstant();
    assertEquals(TimedPlan.of(read.passage(), start), TimedPlan.of(made.passage(), start));
    assertTrue(TimedPlan.of(made.passage(), start).isSolved());
  }

  private static List<StreamTable> tables(PassageFolder folder) {
    return folder.streams().stream().map(HourlyStream::table).collect(Collectors.toList());
  }

  @Test
  void anotherStartKeepsTheHalfMinutesOfARose() throws IOException {
    Map<String, String> files = Folders.sound();
    files.compute(
        "passage.csv", (name, text) -> text.replace("8°50'W 2019 (8'E)", "8°50.5'W 2019 (7.5'E)"));
    PassageFolder read = PassageFolder.of(files);
    PassageFolder later = read.withStart(read.start().plusHours(1));
    assertEquals(read.rose(), PassageFolder.of(later.texts()).rose());
  }

  @Test
  void whatIsMadeIsWrittenAndReadBackWithoutLoss() throws IOException {
    PassageFolder made =
        inCode("Out, \"over\" and back").withFile("party.csv", "item,value\nlaunching,9 min\n");
    Path target = root.resolve("made");
    made.write(target);
    PassageFolder back = PassageFolder.read(target);
    assertEquals(made, back);
    assertEquals(made.texts(), back.texts());
    assertEquals("Out, \"over\" and back", back.name());
    assertEquals(9, back.passage().party().launching().toMinutes());
  }

  /** The shipped example, and every file that a folder may hold. */
  @Test
  void whatWasReadIsWrittenByteForByte() throws IOException {
    Path whole = root.resolve("whole");
    Folders.write(whole, Folders.whole());
    Path example = Paths.get("..", "nav-examples", "scenarios", "ollen-skerries");
    for (Path folder : List.of(whole, example)) {
      Path target = Files.createTempDirectory(root, "written");
      PassageFolder.read(folder).write(target);
      List<Path> files = files(folder);
      assertEquals(files, files(target));
      for (Path file : files) {
        assertArrayEquals(
            Files.readAllBytes(folder.resolve(file)), Files.readAllBytes(target.resolve(file)));
      }
    }
  }

  private static List<Path> files(Path folder) throws IOException {
    List<Path> files = new ArrayList<>();
    try (Stream<Path> all = Files.walk(folder)) {
      all.filter(Files::isRegularFile).map(folder::relativize).sorted().forEach(files::add);
    }
    return files;
  }

  @Test
  void textsInMemoryAreReadAsTheFilesAre() throws IOException {
    Path whole = root.resolve("texts");
    Folders.write(whole, Folders.whole());
    assertEquals(PassageFolder.read(whole), PassageFolder.of(Folders.whole()));
    Map<String, String> broken = Folders.whole();
    broken.remove("waypoints.csv");
    broken.put("party.csv", "item,value\nlaunching,soon\n");
    InputFormatException refused =
        assertThrows(InputFormatException.class, () -> PassageFolder.of(broken));
    assertTrue(refused.getMessage().contains("waypoints.csv: the file is missing"));
    assertTrue(refused.getMessage().contains("party.csv"));
    assertThrows(
        IllegalArgumentException.class,
        () -> PassageFolder.of(Folders.sound()).withFile("partly.csv", "item,value\n"));
  }

  /** Texts may come from anywhere: what they are called must not lead out of their folder. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "tides/../../out.csv",
        "tides/..\\..\\out.csv",
        "tides//out.csv",
        "tides/a\u0000.csv",
        "tides/a\n.csv",
        "tides/in/out.csv"
      })
  void noTextIsWrittenOutsideItsFolder(String name) throws IOException {
    Map<String, String> texts = Folders.sound();
    String tide = Objects.requireNonNull(texts.get("tides/orrin-quay.csv"));
    texts.put(name, tide.replace("Orrin Quay", "Skarra"));
    PassageFolder folder = PassageFolder.of(texts);
    assertEquals(Folders.sound().keySet(), folder.texts().keySet());
    Path target = root.resolve("within").resolve("folder");
    folder.write(target);
    assertEquals(folder, PassageFolder.read(target));
    assertEquals(List.of(target), onlyFileIn(target));
    Map<String, String> alone = Folders.sound();
    alone.put(name, Objects.requireNonNull(alone.remove("tides/orrin-quay.csv")));
    assertTrue(
        assertThrows(InputFormatException.class, () -> PassageFolder.of(alone))
            .getMessage()
            .contains("the folder of tide tables is missing"));
  }

  private static List<Path> onlyFileIn(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder.resolveSibling("."))) {
      return all.map(Path::normalize).collect(Collectors.toList());
    }
  }

  @Test
  void halfACharacterIsRefused() {
    Map<String, String> texts = Folders.sound();
    texts.put(
        "waypoints.csv",
        Objects.requireNonNull(texts.get("waypoints.csv")).replace("Hesk", "\ud83d\udef6 H\ud83d"));
    assertEquals(
        "waypoints.csv, line 3, column 1: must not hold half a character, but has U+D83D",
        assertThrows(InputFormatException.class, () -> PassageFolder.of(texts)).getMessage());
  }

  @Test
  void aStartThatNoFileTellsIsRefused() {
    PassageFolder folder = PassageFolder.of(Folders.sound());
    assertEquals(
        "the year must be in [1900, 2100], but was 1826-06-14T11:40+01:00",
        assertThrows(
                IllegalArgumentException.class,
                () -> folder.withStart(folder.start().minusYears(200)))
            .getMessage());
  }

  @Test
  void legsTakeHeadingsAtTimesAndTheQuickestWayRound() {
    Map<String, String> files = Folders.sound();
    files.put("obstacles.csv", AREA);
    files.put(
        "legs.csv",
        "leg,strategy\n"
            + "1,new headings at 2026-06-14T12:10+01:00 and 2026-06-14T12:30+01:00\n"
            + "2,quickest round Quill\n");
    Passage passage = PassageFolder.of(files).passage();
    assertEquals(
        Strategy.newHeadingsAt(
            List.of(Instant.parse("2026-06-14T11:10:00Z"), Instant.parse("2026-06-14T11:30:00Z"))),
        passage.legs().get(0).options().strategy());
    assertEquals(
        Strategy.quickestAround(
            List.of(
                List.of(
                    Position.parse("46°11.9'N 026°14.5'W"),
                    Position.parse("46°12.3'N 026°14.5'W"),
                    Position.parse("46°12.3'N 026°13.9'W"),
                    Position.parse("46°11.9'N 026°13.9'W")))),
        passage.legs().get(1).options().strategy());
    files.put("legs.csv", "leg,strategy\n1,quickest round Quil\n");
    InputFormatException refused =
        assertThrows(InputFormatException.class, () -> PassageFolder.of(files));
    assertTrue(refused.getMessage().contains("Quill"), refused.getMessage());
    files.put("legs.csv", "leg,strategy\n1,new headings at noon\n");
    assertThrows(InputFormatException.class, () -> PassageFolder.of(files));
  }

  @Test
  void aPlaceIsAimedOffForAnother() {
    Map<String, String> files = Folders.sound();
    files.put(
        "places.csv",
        "place,to_see,mark_height_m,aim_off_for\n"
            + "Hesk Point,,,Quill Island\nQuill Island,cairn,38,\n");
    List<WayPoint> places = PassageFolder.of(files).passage().wayPoints();
    assertEquals(places.get(2), places.get(1).aimedOffFor().orElseThrow());
    assertEquals(38.0, places.get(2).markHeight().orElseThrow().metres());
    files.put("places.csv", "place,aim_off_for\nHesk Point,Hesk Point\n");
    assertThrows(InputFormatException.class, () -> PassageFolder.of(files));
    files.put("places.csv", "place,aim_off_for\nHesk Point,Nowhere\n");
    assertThrows(InputFormatException.class, () -> PassageFolder.of(files));
  }

  @Test
  void aCardOfTheCompassThatCannotBeIsRefused() {
    Map<String, String> files = Folders.sound();
    files.put("deviation.csv", "compass_heading,deviation\n000,2°E\n090,3°W\n180,2°W\n");
    InputFormatException few =
        assertThrows(InputFormatException.class, () -> PassageFolder.of(files));
    assertTrue(few.getMessage().contains("at least 4 headings"), few.getMessage());
    files.put("deviation.csv", "compass_heading,deviation\n000,2\n");
    assertThrows(InputFormatException.class, () -> PassageFolder.of(files));
  }

  @Test
  void errorsOfReckoningAndTheLongestLegAreRead() {
    Map<String, String> files = Folders.sound();
    Passage usual = PassageFolder.of(files).passage();
    assertEquals(ErrorModel.usual(), usual.errors());
    assertEquals(CourseToSteer.USUAL_LONGEST_DURATION, usual.longestDuration());
    files.put(
        "errors.csv",
        "source,constant,independent\n"
            + "speed,5 %,2.5 %\n"
            + "compass reading,1.5°,0°\n"
            + "current not in the tables,0.1 m/s,0 m/s\n"
            + "plotted position,50 m,0 m\n"
            + "drawn anew every,30 min,\n");
    files.put("limits.csv", "item,value\nlongest leg,6 h 30 min\n");
    Passage passage = PassageFolder.of(files).passage();
    ErrorModel told =
        ErrorModel.usual()
            .with(ErrorSource.SPEED, Spread.of(0.05, 0.025))
            .with(ErrorSource.COMPASS, Spread.constant(1.5))
            .with(ErrorSource.OTHER_CURRENT, Spread.constant(0.1))
            .with(ErrorSource.PLOTTED_POSITION, Spread.constant(50.0))
            .withInterval(Duration.ofMinutes(30));
    assertEquals(told, passage.errors());
    assertEquals(Duration.ofMinutes(390), passage.longestDuration());
    files.put("errors.csv", ErrorSheet.text(told));
    assertEquals(told, PassageFolder.of(files).passage().errors());
  }

  @Test
  void errorsThatCannotBeMeantAreRefused() {
    Map<String, String> files = Folders.sound();
    files.put(
        "errors.csv",
        "source,constant,independent\n"
            + "spead,5 %,2 %\n"
            + "speed,5,2 %\n"
            + "leeway,200°,2°\n"
            + "drawn anew every,soon,\n");
    String told =
        assertThrows(InputFormatException.class, () -> PassageFolder.of(files)).getMessage();
    for (String part :
        List.of("did you mean \"speed\"", "as in 2 %", "constant error of leeway", "40 min")) {
      assertTrue(told.contains(part), told);
    }
  }

  /** What stands in the passage of a folder is what was put in, and a plan of it is the same. */
  @Test
  void aPartyLimitsAndErrorsPutInComeBackFromTheDisk() throws IOException {
    Party party =
        Party.of(
                Craft.ofSpeed(Speed.ofKnots(3.3))
                    .withRestEachHour(Duration.ofMinutes(7))
                    .withWindResponse(
                        WindResponse.commonPractice(WindResponse.Trim.LOADED).withDrift(0.03)))
            .withSlowerSpeed(Speed.ofKnots(2.9))
            .withLaunching(Duration.ofMinutes(75))
            .withLanding(Duration.ofMinutes(10))
            .withEyeHeight(Distance.ofMetres(0.85));
    FolderLimits limits =
        FolderLimits.USUAL
            .withLight(SunThreshold.CIVIL_TWILIGHT)
            .withLatestArrival(OffsetDateTime.parse("2026-06-14T21:00+01:00"))
            .withStrongestStream(Speed.ofKnots(2.7))
            .withCrossStreamShare(0.725)
            .withReach(Distance.ofNauticalMiles(5.5))
            .withLongestLeg(Duration.ofHours(9));
    ErrorModel errors = ErrorModel.usual().with(ErrorSource.SPEED, Spread.of(0.123456789, 0.1));
    PassageFolder made = inCode("put in").withParty(party).withLimits(limits).withErrors(errors);
    made.write(root.resolve("put-in"));
    PassageFolder back = PassageFolder.read(root.resolve("put-in"));
    assertEquals(made, back);
    assertEquals(limits, back.limits());
    Passage passage = back.passage();
    assertEquals(party, passage.party());
    assertEquals(errors, passage.errors());
    Passage inCode =
        inCode("put in").passage().toBuilder()
            .party(party)
            .errors(errors)
            .longestDuration(limits.longestLeg())
            .build();
    Instant start = made.start().toInstant();
    assertEquals(
        TimedPlan.of(inCode, start).orElseThrow().route(),
        TimedPlan.of(passage, start).orElseThrow().route());
  }

  @Test
  void whatAFolderCannotTellIsRefused() throws IOException {
    PassageFolder folder = inCode("refused");
    Party seconds = Party.of(Craft.ofSpeed(Speed.ofKnots(3))).withLaunching(Duration.ofSeconds(90));
    assertThrows(IllegalArgumentException.class, () -> folder.withParty(seconds));
    Party own =
        Party.of(
            Craft.ofSpeed(Speed.ofKnots(3))
                .withWindResponse(
                    WindResponse.commonPractice(WindResponse.Trim.EMPTY).withLeewayTimes(1.5)));
    assertThrows(IllegalArgumentException.class, () -> folder.withParty(own));
  }

  @Test
  void everyShareInThousandthsReadsBackEqual() throws IOException {
    PassageFolder folder = inCode("shares");
    for (int thousandths = 1; thousandths <= 1000; thousandths++) {
      FolderLimits limits = FolderLimits.USUAL.withCrossStreamShare(thousandths / 1000.0);
      assertEquals(limits, folder.withLimits(limits).limits());
    }
  }
}
