package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the way is not kept out of is told, as text, as JSON and by the exit status. */
class QuickestVerbTest {
  private static final Path EXAMPLE = Path.of("scenarios/ollen-skerries");

  @TempDir private Path folder;

  @BeforeEach
  void copy() throws IOException {
    try (Stream<Path> files = Files.walk(EXAMPLE)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = folder.resolve(EXAMPLE.relativize(file));
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
  }

  private void change(String file, String from, String to) throws IOException {
    String text = Files.readString(folder.resolve(file));
    assertTrue(text.contains(from), file + " no longer holds " + from);
    Files.writeString(folder.resolve(file), text.replace(from, to));
  }

  private Ran quickest(String... more) {
    return Ran.of(
        Stream.concat(Stream.of("quickest", folder.toString()), Stream.of(more))
            .toArray(String[]::new));
  }

  /** Runs it with the status expected; the answer keeps to its schema. */
  private JsonNode json(int status, String... more) {
    Ran ran = quickest(Stream.concat(Stream.of("--json"), Stream.of(more)).toArray(String[]::new));
    assertEquals(status, ran.status(), ran.err());
    AnswerSchemas.keeps("quickest", ran.out());
    return JsonMapper.builder().build().readTree(ran.out());
  }

  private static List<String> answers(JsonNode json) {
    return json.get("checks").valueStream().map(it -> it.get("answer").asString()).toList();
  }

  /** No way is kept out of what this limit asks for: that it is passed is told. */
  @Test
  void aCheckThatStopsIsToldFirstAndEndsItWithFive() throws IOException {
    change("margins.csv", "time afloat,4 h,6 h", "time afloat,1 h,2 h");
    Ran text = quickest("--leg", "2", "--ways", "1");
    assertEquals(5, text.status(), text.err());
    List<String> lines = text.out().lines().toList();
    assertEquals("not checked: land down wind", lines.get(1));
    assertTrue(
        lines.get(2).startsWith("by way 1     STOP: time afloat without a stop: "), lines.get(2));
    assertTrue(lines.get(3).startsWith("             WARNING: "), lines.get(3));
    assertTrue(text.out().contains("not a permission to go"), text.out());

    JsonNode json = json(5, "--leg", "2", "--ways", "1");
    assertTrue(json.get("possible").asBoolean());
    assertFalse(json.get("holds").asBoolean());
    assertEquals("STOPPED", answers(json).get(0));
    assertEquals("land down wind", json.get("notChecked").get(0).asString());
    assertTrue(json.get("checks").get(0).get("reason").asString().startsWith("time afloat "));
  }

  /** Where nobody can land there is nothing to hold the limit against. */
  @Test
  void aCheckThatCouldNotBeMadeIsNoYes() throws IOException {
    Files.delete(folder.resolve("places.csv"));
    Files.delete(folder.resolve("refuges.csv"));
    Ran text = quickest("--ways", "1");
    assertEquals(5, text.status(), text.err());
    String open = text.out().lines().skip(1).findFirst().orElse("");
    assertTrue(open.startsWith("not checked: "), open);
    assertTrue(open.contains("time to a usable landing"), open);
  }

  @Test
  void aLegThatIsNotPossibleSaysWhy() throws IOException {
    Files.writeString(folder.resolve("legs.csv"), "leg,stream\n1,180° 6.0 kn\n");
    Ran text = quickest();
    assertEquals(3, text.status(), text.err());
    JsonNode json = json(3);
    assertFalse(json.get("possible").asBoolean());
    String why = json.get("why").asString();
    assertTrue(why.startsWith("the stream across the track is too strong"), why);
    assertTrue(text.out().contains("not possible " + why), text.out());
  }

  @Test
  void whatTheTablesDoNotCoverIsMissing() {
    JsonNode json = json(4, "--depart", "2027-06-14T11:40+01:00");
    assertFalse(json.get("possible").asBoolean());
    assertFalse(json.get("why").asString().isEmpty());
  }

  @Test
  void aLegThatThePassageHasNotIsRefused() {
    for (String leg : List.of("0", "5", "-1")) {
      Ran ran = quickest("--leg", leg);
      assertEquals(2, ran.status(), ran.out());
      assertEquals("", ran.out());
      assertTrue(ran.err().startsWith("--leg must be in [1, 4], but was " + leg), ran.err());
    }
  }

  @Test
  void aReachBackNeedsItsTimeAndAPlaceOfTheFolder() {
    String file = folder.resolve("page.html").toString();
    Ran without = quickest("--page", file, "--back-to", "Sel Sand");
    assertEquals(2, without.status());
    assertTrue(without.err().startsWith("--back-to needs --by"), without.err());
    Ran unknown =
        quickest("--page", file, "--by", "2026-06-14T15:00+01:00", "--back-to", "Nowhere");
    assertEquals(2, unknown.status());
    String places =
        "[Marrow Slip, Hesk Point, Quill Island, Tarn Skerry, Dunlathe Landing, Sel Sand, Brae"
            + " Gut]";
    assertTrue(
        unknown.err().startsWith("--back-to must be one of " + places + ", but was Nowhere"),
        unknown.err());
  }

  /** The ways are kept out of it, and so nothing leads there. */
  @Test
  void aReachBackToARefugeInADangerIsRefused() throws IOException {
    change("dangers.csv", "Fang Rock,46°10.3'N 026°15.4'W,150", "Reef,46°11.3'N 026°13.8'W,300");
    Path file = folder.resolve("page.html");
    String page = file.toString();
    String by = "2026-06-14T15:00+01:00";
    Ran ran = quickest("--ways", "1", "--page", page, "--by", by, "--back-to", "Sel Sand");
    assertEquals(2, ran.status(), ran.err());
    assertTrue(ran.err().startsWith("goal must not lie inside an obstacle, but was 46°11.3'N"));
    assertFalse(Files.exists(file));
    Ran late = quickest("--ways", "1", "--page", page, "--by", "2096-06-14T15:00+01:00");
    assertEquals(2, late.status(), late.err());
    assertTrue(late.err().startsWith("--by must be within 48 h after the leg begins, but was 2"));
  }

  /** So is the leg as planned: the way would be earlier if it went straight through. */
  @Test
  void theObstaclesOfTheFolderAreGoneRound() throws IOException {
    Files.writeString(
        folder.resolve("obstacles.csv"),
        """
        name,position
        Ollen,46°13.0'N 026°12.6'W
        Ollen,46°13.8'N 026°12.6'W
        Ollen,46°13.8'N 026°10.4'W
        Ollen,46°13.0'N 026°10.4'W
        """);
    Files.writeString(folder.resolve("legs.csv"), "leg,strategy\n3,quickest round Ollen\n");
    JsonNode round = json(0, "--leg", "3", "--ways", "1");
    String arrival = round.get("ways").get(0).get("arrival").asString();
    assertEquals(round.get("arrivalAsPlanned").asString(), arrival);
    // straight through it is there before 13:47 by the folder's clock
    Instant straight = Instant.parse("2026-06-14T12:47:00Z");
    assertTrue(Instant.parse(arrival).isAfter(straight.plusSeconds(30)), arrival);
  }
}
