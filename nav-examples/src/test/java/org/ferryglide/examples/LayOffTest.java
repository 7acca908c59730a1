package org.ferryglide.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.tide.folder.PassageFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The main job as its user meets it: a folder in, a printed passage or a clear refusal out. */
class LayOffTest {
  private static final Path EXAMPLE = Path.of("scenarios", "ollen-skerries");

  @TempDir Path folder;

  @BeforeEach
  void copyTheExample() throws IOException {
    try (Stream<Path> files = Files.walk(EXAMPLE)) {
      for (Path file : (Iterable<Path>) files::iterator) {
        Path target = folder.resolve(EXAMPLE.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(target);
        } else {
          Files.copy(file, target);
        }
      }
    }
  }

  /** What a run left behind. */
  private record Run(int status, String out, String err) {}

  private Run run() {
    return run(folder.toString());
  }

  private static Run run(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status =
        LayOff.run(
            args,
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    return new Run(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void wordsThatCannotBeReadAreRefusedWithTheirFile() throws IOException {
    Path words = folder.resolve("words.properties");
    Files.write(words, new byte[] {'a', '=', (byte) 0xe9, '\n'});
    Run run = run("--card", "--words", words.toString(), folder.toString());
    assertEquals(2, run.status(), run.out());
    assertEquals(words + ": must be text in UTF-8, but is not" + System.lineSeparator(), run.err());
    Files.writeString(words, "a = \\u12\n");
    run = run("--card", "--words", words.toString(), folder.toString());
    assertEquals(2, run.status(), run.out());
    assertTrue(run.err().startsWith(words + ": Malformed"), run.err());
  }

  private void edit(String file, String from, String to) throws IOException {
    Path path = folder.resolve(file);
    String text = Files.readString(path);
    assertTrue(text.contains(from), file + " no longer has " + from);
    Files.writeString(path, text.replace(from, to));
  }

  private void append(String file, String line) throws IOException {
    Files.writeString(folder.resolve(file), Files.readString(folder.resolve(file)) + line + "\n");
  }

  private static List<String> lines(String text, String start) {
    return text.lines().filter(line -> line.startsWith(start)).toList();
  }

  @Test
  void theExampleIsLaidOffLegByLeg() {
    Run run = run();
    assertEquals("", run.err);
    assertEquals(0, run.status);
    assertEquals(4, lines(run.out, "Leg ").size());
    for (String wanted :
        List.of(
            "course",
            "magnetic",
            "back bearing",
            "stream",
            "constant heading",
            "track held",
            "made good",
            "ETA",
            "strays",
            "Landing",
            "Notes",
            "Cautions",
            "Official charts")) {
      assertTrue(run.out.contains(wanted), wanted);
    }
  }

  @Test
  void theChecksOfThePassageArePrinted() {
    String out = run().out;
    assertTrue(out.contains("Checks of the passage, the worst first"), out);
    assertTrue(out.contains("Fang Rock: "), out);
    assertTrue(out.contains("landing at Dunlathe Landing: "), out);
    assertTrue(out.contains("crossing Tarn fairway"), out);
  }

  @Test
  void theDeckCardHasASideForEachLeg() {
    Run run = run("--card", folder.toString());
    assertEquals(0, run.status);
    for (int leg = 1; leg <= 4; leg++) {
      assertEquals(1, lines(run.out, leg + "/4 ").size(), run.out);
    }
    assertTrue(run.out.contains("void on any other day"), run.out);
    assertTrue(run.out.contains("HW 16:53, 5.3 m, Orrin Quay"), run.out);
  }

  @Test
  void noteAndPicturesAreWrittenInTheUnitsAskedFor(@TempDir Path written) throws IOException {
    Run run =
        run(
            "--shore",
            written.resolve("shore.html").toString(),
            "--pictures",
            written.resolve("pictures").toString(),
            "--units",
            "mi,mph,ft",
            folder.toString());
    assertEquals("", run.err);
    assertEquals(0, run.status);
    String note = Files.readString(written.resolve("shore.html"));
    assertTrue(note.startsWith("<!DOCTYPE html>"), note);
    String stream = Files.readString(written.resolve("pictures").resolve("stream.svg"));
    assertTrue(stream.contains("stream in mph"), stream);
    String tide = Files.readString(written.resolve("pictures").resolve("tide-1.svg"));
    assertTrue(tide.contains("ft above"), tide);
    byte[] sheet = Files.readAllBytes(written.resolve("pictures").resolve("plotting-sheet.png"));
    assertEquals('P', sheet[1]);
  }

  @Test
  void anOptionWithoutWhatFollowsItIsRefused() {
    assertEquals("--units must be followed by units" + System.lineSeparator(), run("--units").err);
    assertEquals("--page must be followed by a name" + System.lineSeparator(), run("--page").err);
  }

  @Test
  void theWindowsOfTheDayAreFound() {
    Run run = run("--when", folder.toString());
    assertEquals(0, run.status);
    assertTrue(run.out.contains("window"), run.out);
    assertTrue(run.out.contains("not a permission to go"), run.out);
  }

  /**
   * Plane trigonometry of the printed positions by hand: 1.8' north, 2.4' west to east at 46.2°.
   */
  @Test
  void theFirstCourseIsWhatThePlotterGives() {
    assertTrue(run().out.contains("043° true, northeast; 2.5 NM (4.5 km)"), run().out);
  }

  @Test
  void theBackBearingIsTheCourseTurnedRound() {
    assertTrue(run().out.contains("look back along 223° true"));
  }

  @Test
  void oneMoreWayPointIsOneMoreLeg() throws IOException {
    append("waypoints.csv", "Far Skerry,46°16.0'N 026°06.0'W");
    Run run = run();
    assertEquals(5, lines(run.out, "Leg ").size());
    assertTrue(run.out.contains("Leg 5 of 5: Dunlathe Landing to Far Skerry"));
  }

  @Test
  void aStreamTooStrongIsNotPossibleAndTheRestIsStillLaidOff() throws IOException {
    edit("streams.csv", "-4,006,1.7,0.8", "-4,006,9.7,6.8");
    edit("streams.csv", "-3,005,2.1,1.0", "-3,005,9.1,6.0");
    Run run = run();
    assertEquals(0, run.status);
    assertTrue(run.out.contains("NOT POSSIBLE"), run.out);
    assertEquals(4, lines(run.out, "Leg ").size());
  }

  @Test
  void anotherSpeedIsAnotherTime() throws IOException {
    List<String> before = lines(run().out, "                    4.");
    edit("passage.csv", "3.5 kn", "5.5 kn");
    List<String> after = lines(run().out, "                    6.");
    assertFalse(before.isEmpty());
    assertFalse(after.isEmpty());
    assertTrue(before.get(0).contains("kn made good, 35 min"), before.toString());
    assertTrue(after.get(0).contains("kn made good, 24 min"), after.toString());
  }

  @Test
  void aMissingFileIsNamed() throws IOException {
    Files.delete(folder.resolve("waypoints.csv"));
    Run run = run();
    assertEquals(2, run.status);
    assertEquals(folder.resolve("waypoints.csv") + ": the file is missing\n", run.err);
    assertEquals("", run.out);
  }

  @Test
  void aMissingFolderIsNamed() {
    Run run = run(folder.resolve("nowhere").toString());
    assertEquals(2, run.status);
    assertEquals(folder.resolve("nowhere") + ": there is no such scenario folder\n", run.err);
    assertEquals(2, run("one", "two").status);
  }

  @Test
  void aWrongPositionIsRefusedByLineAndColumn() throws IOException {
    edit("waypoints.csv", "46°11.8'N 026°17.6'W", "46°61.8'N 026°17.6'W");
    Run run = run();
    assertEquals(2, run.status);
    assertEquals(
        folder.resolve("waypoints.csv")
            + ", line 4, column 2: position: minutes must be in [0, 60), but were 61.8: at"
            + " character 4 ('6') of \"46°61.8'N 026°17.6'W\"\n",
        run.err);
  }

  @Test
  void everyProblemOfAFileIsListed() throws IOException {
    edit("passage.csv", "3.5 kn", "3.5");
    edit("passage.csv", "2026-06-14T11:40+01:00", "14 June");
    edit("passage.csv", "landing port,Dunlathe", "landing port,Elsewhere");
    Run run = run();
    assertEquals(2, run.status);
    assertEquals(3, run.err.lines().count(), run.err);
    assertTrue(run.err.contains("passage.csv, line 4, column 2: start: must be a date and time"));
    assertTrue(
        run.err.contains("passage.csv, line 5, column 2: paddling speed: the unit must be kn"));
    assertTrue(
        run.err.contains("passage.csv, line 7, column 2: landing port: must be one of the ports"));
  }

  @Test
  void anUnknownItemAndAMissingOneAreRefused() throws IOException {
    edit("passage.csv", "paddling speed", "speed");
    Run run = run();
    assertTrue(run.err.contains("line 5, column 1: item: must be one of"), run.err);
    assertTrue(run.err.contains("did you mean \"paddling speed\"?"), run.err);
    assertEquals(1, run.err.lines().count(), run.err);
    edit("passage.csv", "speed,", "haste,");
    assertTrue(run().err.contains("passage.csv: item paddling speed is missing"), run().err);
  }

  @Test
  void aStreamTableWithoutItsPortIsRefused() throws IOException {
    Files.delete(folder.resolve("tides/orrin-quay.csv"));
    Run run = run();
    assertEquals(2, run.status);
    assertTrue(run.err.contains("Orrin Quay"), run.err);
  }

  @Test
  void aTideTableOutOfOrderIsRefusedByLine() throws IOException {
    edit("tides/orrin-quay.csv", "2026-06-12T15:31+01:00", "2026-06-11T15:31+01:00");
    Run run = run();
    assertEquals(2, run.status);
    assertTrue(run.err.contains("orrin-quay.csv, line 5"), run.err);
  }

  /**
   * By hand: the line runs 085°, and at 12:45 the stream between HW-5 (11:53, 008° 1.0 kn) and HW-4
   * (12:53, 006° 1.6 kn) sets 006° at 1.5 kn, 79° off the line; its share across is 1.5 sin 79° =
   * 1.47 kn of 3.5 kn, 25° of ferry angle, so 110°. At the start it is 1.2 kn, 20°, so 105°. The
   * variation adds 7°50'.
   */
  @Test
  void aHeldTrackIsSteeredAnewWhileItLastsAndNotAtItsEnd() {
    assertEquals(
        "  track held        steer 105° true, 113° magnetic, then 110° true, 118° magnetic from"
            + " 12:45",
        lines(run().out, "  track held").get(1));
  }

  @Test
  void whyThereIsNoAnswerIsToldByThePassagesOwnClock() throws IOException {
    edit("passage.csv", "2026-06-14", "2026-07-14");
    assertTrue(
        run()
            .out
            .contains(
                "NO DATA: the stream is not known there and then, at 11:40, near"
                    + " 46°10.0'N 026°20.0'W; the tides of Orrin Quay are given from"
                    + " 2026-06-12 03:07 to 2026-06-18 00:54"),
        run().out);
  }

  @Test
  void aDayWithoutTidesIsNeitherGuessedNorCalledImpossible() throws IOException {
    edit("passage.csv", "2026-06-14", "2026-07-14");
    Run run = run();
    assertEquals(3, run.status);
    assertFalse(run.out.contains("NOT POSSIBLE"), run.out);
    assertTrue(run.out.contains("  NO DATA for leg 1"), run.out);
    assertTrue(run.out.contains("no data"), run.out);
  }

  @Test
  void textInAnotherEncodingIsRefusedByFileAndLine() throws IOException {
    Path path = folder.resolve("waypoints.csv");
    Files.writeString(path, Files.readString(path), StandardCharsets.ISO_8859_1);
    Run run = run();
    assertEquals(2, run.status);
    assertEquals(
        path
            + ", line 3, column 2: the text must be in UTF-8, but here it is not; save the file as"
            + " UTF-8\n",
        run.err);
  }

  @Test
  void aPoleAndAYearBeyondReckoningAreRefusedByLineAndColumn() throws IOException {
    edit("waypoints.csv", "46°15.2'N 026°07.9'W", "89°30.0'N 026°07.9'W");
    assertTrue(
        run()
            .err
            .contains(
                "waypoints.csv, line 7, column 2: position: must lie within 89 degrees of the"
                    + " equator, but was 89°30.0'N 026°07.9'W"));
    edit("waypoints.csv", "89°30.0'N", "46°15.2'N");
    edit("passage.csv", "2026-06-14", "2206-06-14");
    assertTrue(
        run()
            .err
            .contains("passage.csv, line 4, column 2: start: the year must be in [1900, 2100]"));
  }

  /** High water at Orrin Quay is at 0434 and 1653: by hand, +6 is 1034 and -6 is 1053. */
  @Test
  void theStreamsHoursAreCountedFromTheWaterTheyBelongTo() throws IOException {
    edit("passage.csv", "T11:40", "T10:00");
    List<String> first =
        run().out.lines().filter(line -> line.contains("  HW")).limit(4).map(String::trim).toList();
    assertTrue(first.get(0).startsWith("09:34  HW+5  "), first.toString());
    assertTrue(first.get(1).startsWith("10:34  HW+6  "), first.toString());
    assertTrue(first.get(2).startsWith("10:53  HW-6  "), first.toString());
  }

  /** Low water at Orrin Quay is at 1044 and the start at 1140: by hand, that hour stands first. */
  @Test
  void tablesAboutLowWaterSayLowWater() throws IOException {
    Path path = folder.resolve("streams.csv");
    Files.writeString(
        path,
        Files.readString(path)
            .replace("neap_rate_kn\n", "neap_rate_kn,about\n")
            .replaceAll("(?m)^((Hesk|Tarn) .*)$", "$1,LW"));
    String out = run().out;
    assertTrue(out.contains("hours about low water at Orrin Quay"), out);
    assertTrue(out.contains("10:44  LW    040"), out);
    assertFalse(out.contains("HW"), out);
  }

  @Test
  void tidesThatFollowTooFastForTheTableAreToldAtTheTopAndBesideTheStream() throws IOException {
    edit(
        "tides/orrin-quay.csv",
        ",,2026-06-14T16:53+01:00,5.3,high",
        """
        ,,2026-06-14T11:44+01:00,5.3,high
        ,,2026-06-14T12:44+01:00,4.3,low
        ,,2026-06-14T13:44+01:00,5.3,high\
        """);
    Run run = run();
    assertEquals(0, run.status);
    String crowded = "aution: Three waters";
    int leg1 = run.out.indexOf("Leg 1 of");
    assertTrue(run.out.contains(crowded) && run.out.indexOf(crowded) < leg1, run.out);
    assertTrue(run.out.indexOf(crowded, leg1) < run.out.indexOf("constant heading", leg1), run.out);
  }

  private static void assertStandsInOrder(String text, String... parts) {
    int at = 0;
    for (String part : parts) {
      int found = text.indexOf(part, at);
      assertTrue(found >= 0, part + " is not where it should be in " + text);
      at = found + part.length();
    }
  }

  @Test
  void aRoseThatDisagreesIsToldOnceAtTheTopAndBesideEveryMagneticCourse() throws IOException {
    edit("passage.csv", "8°50'W", "8°50'E");
    String out = run().out;
    String warning = "WARNING: Rose and model differ";
    assertStandsInOrder(out, "Look at this first", warning, "(legs 1, 2, 3, 4)", "Leg 1 of 4");
    assertStandsInOrder(out, "Leg 1 of 4", "  magnetic", warning, "  back bearing");
    assertStandsInOrder(out, "Leg 4 of 4", "  magnetic", warning, "  back bearing");
    assertEquals(5, out.split(warning, -1).length - 1, "once at the top and once a leg");
  }

  @Test
  void aLegNoPaddlerPaddlesNamesItsWayPointAtTheTopAndBesideItsLength() throws IOException {
    edit("waypoints.csv", "026°13.0'W", "026°13.0'E");
    String out = run().out;
    assertStandsInOrder(out, "Look at this first", "Way point Quill Island", "Leg 1 of 4");
    assertStandsInOrder(out, "Leg 2 of 4", "  course", "NM", "Way point Quill Island");
  }

  @Test
  void aRateTypedTenfoldInAStreamTableIsDoubtedAtTheTopByItsLine() throws IOException {
    edit("streams.csv", ",-3,005,2.1,1.0", ",-3,005,21,1.0");
    String out = run().out;
    assertStandsInOrder(out, "Look at this first", "streams.csv, line 6", "far above", "Leg 1");
    String top = out.substring(0, out.indexOf("Leg 1 of 4"));
    assertEquals(1, top.split("is far above those beside it", -1).length - 1, "once");
    assertTrue(top.contains("faster than nearly all streams known"), top);
    assertStandsInOrder(out, "Leg 2 of 4", "HW-3", "far above", "constant heading");
  }

  @Test
  void aNeapRateAboveItsSpringRateIsDoubtedAtTheTop() throws IOException {
    edit("streams.csv", ",-3,005,2.1,1.0", ",-3,005,2.1,2.6");
    assertStandsInOrder(
        run().out, "Look at this first", "streams.csv, line 6", "above the spring rate", "Leg 1");
  }

  @Test
  void stationsInAnotherOceanGiveNoDataAndNoCourse() throws IOException {
    edit("streams.csv", "46.198,-26.255", "6.198,-26.255");
    edit("streams.csv", "46.235,-26.17", "6.235,-26.17");
    Run run = run();
    assertEquals(3, run.status);
    assertTrue(run.out.contains("WARNING: Station Hesk Sound lies 2"), run.out);
    assertTrue(run.out.contains("no data: no station within 6.0 NM of it"), run.out);
    assertFalse(run.out.contains("steer 0"), run.out);
  }

  @Test
  void aLostSignOfAStationIsDoubtedByName() throws IOException {
    edit("streams.csv", "46.198,-26.255", "46.198,26.255");
    Run run = run();
    assertTrue(
        run.out.contains("Station Hesk Sound lies 2")
            && run.out.contains("it would fit with W for E in its longitude"),
        run.out);
    assertTrue(run.out.contains("The nearest stream station to the middle of leg 1"), run.out);
  }

  @Test
  void afterNotPossibleComesWhenItIsAndAtWhatSpeed() throws IOException {
    edit("streams.csv", "-4,006,1.7,0.8", "-4,006,9.7,6.8");
    edit("streams.csv", "-3,005,2.1,1.0", "-3,005,9.1,6.0");
    Run run = run();
    assertEquals(0, run.status);
    assertStandsInOrder(run.out, "Look at this first", "NOT POSSIBLE as planned: leg 2", "Leg 1");
    assertStandsInOrder(
        run.out,
        "Otherwise",
        "leave at 2026-06-14 ",
        "possible, within every limit asked for",
        "kn would do at the planned start, ",
        "kn above the party's own; at most 80 %");
  }

  @Test
  void aLimitThatThePlanBreaksIsNamedAtTheTop() throws IOException {
    edit("passage.csv", "T11:40", "T21:30");
    Run run = run();
    assertStandsInOrder(
        run.out,
        "Look at this first",
        "NOT WITHIN what is asked for: between sunrise and sunset",
        "Leg 1 of 4",
        "SUN DOWN",
        "Otherwise",
        "leave at 2026-06-15");
  }

  /** The minutes printed are those between the times printed. */
  @Test
  void minutesAreTheDifferencesOfThePrintedTimes() {
    String out = run().out;
    java.util.regex.Matcher eta =
        java.util.regex.Pattern.compile("(\\d+) min, ETA (\\d\\d):(\\d\\d)").matcher(out);
    int before = 11 * 60 + 40;
    int legs = 0;
    while (eta.find()) {
      int time = Integer.parseInt(eta.group(2)) * 60 + Integer.parseInt(eta.group(3));
      assertEquals(time - before, Integer.parseInt(eta.group(1)), eta.group());
      assertTrue(eta.find(), "the track held comes second");
      before = time;
      legs++;
    }
    assertEquals(4, legs);
    int minutes = before - (11 * 60 + 40);
    assertTrue(out.contains(", " + minutes / 60 + " h " + minutes % 60 + " min, from 11:40"), out);
  }

  @Test
  void whatIsNotCheckedStandsAtTheTopAndDaylightBesideTheEta() {
    String out = run().out;
    assertStandsInOrder(
        out,
        "clock times are UTC",
        "not checked: land down wind",
        "never checked: waves",
        "Leg 1 of 4",
        ", sunset ");
    assertStandsInOrder(out, "Landing at", "height", "high water", "17:59, 4.7 m", "range");
  }

  @Test
  void slackIsPrintedAsSlack() throws IOException {
    edit("streams.csv", "-5,008,1.1,0.5", "-5,,0,0");
    assertTrue(run().out.contains("HW-5  slack"), run().out);
  }

  @Test
  void helpHelps() {
    Run run = run("--help");
    assertEquals(0, run.status);
    assertTrue(run.out.contains("waypoints.csv") && run.out.contains("Exit status"), run.out);
  }

  @Test
  void aFolderWithBlanksIsFoundThoughItsArgumentIsParted() throws IOException {
    Path blank = Files.createDirectory(folder.resolve("my own passage"));
    Files.copy(folder.resolve("passage.csv"), blank.resolve("passage.csv"));
    Run run = run((folder + "/my own passage").split(" "));
    assertEquals(2, run.status);
    assertTrue(run.err.contains("my own passage/waypoints.csv: the file is missing"), run.err);
  }

  /** The legs that are printed are those of the checks: rests, stops, own speeds, streams, ways. */
  @Test
  void theLegsAreThoseOfTheChecks() throws IOException {
    append("party.csv", "rest each hour,7 min");
    append("party.csv", "load,loaded");
    edit(
        "places.csv",
        "Quill Island,twin hills with a cairn on the north one,38,Dunlathe,0.4,4.2,200,290,",
        "Quill Island,twin hills with a cairn on the north one,38,Dunlathe,0.4,4.2,200,290,40 min");
    Files.writeString(
        folder.resolve("legs.csv"),
        "leg,strategy,speed_kn,rests,stream,line\n"
            + "1,track held,,,,\n2,,3.9,none,,\n3,bow on target,,,015° 0.3 kn,geodesic\n");
    PassageFolder read = PassageFolder.read(folder);
    TimedPlan plan = TimedPlan.of(read.passage(), read.start().toInstant()).solved().orElseThrow();
    LaidOffPassage passage = LaidOffPassage.of(read);
    for (int i = 0; i < plan.legs().size(); i++) {
      LaidOffLeg leg = passage.legs().get(i);
      assertEquals(plan.legs().get(i).departure(), leg.departure().orElseThrow());
      assertEquals(plan.legs().get(i).arrival(), leg.arrival().orElseThrow());
    }
    String out = run().out;
    assertTrue(
        out.contains(
            "each leg starts when the one before it arrives steered as legs.csv tells, with 7 min"
                + " of rest in each hour, or after the stop there"),
        out);
    assertEquals(1, lines(out, "  as chosen").size());
  }
}
