package org.ferryglide.examples.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.passage.DeckCard;
import org.junit.jupiter.api.Test;

class LabelsTest {
  @Test
  void figuresStandInTheWordsByTheirNames() throws Exception {
    Labels labels = Labels.read(new StringReader("off = {side}: {miles} NM, {side}"));
    assertEquals("left: 0.1 NM, left", labels.say("off", "miles", "0.1", "side", "left"));
    assertThrows(IllegalArgumentException.class, () -> labels.say("off", "miles", "0.1"));
    assertThrows(IllegalArgumentException.class, () -> labels.say("on"));
  }

  @Test
  void namesFromRightToLeftKeepToThemselves() {
    String name = "\u05e1\u05dc\u05e2 \u05d0";
    String said = Labels.withNamesIsolated(name + " steer 219°, there 12:36; " + name);
    String alone = "\u2068" + name + "\u2069";
    assertEquals(alone + " steer 219°, there 12:36; " + alone, said);
    assertEquals("Skerry steer 219°", Labels.withNamesIsolated("Skerry steer 219°"));
  }

  @Test
  void bracesInAFigureStayAsTheyAre() throws Exception {
    Labels labels = Labels.read(new StringReader("name = to {name}"));
    assertEquals("to {name} {x", labels.say("name", "name", "{name} {x"));
  }

  @Test
  void aNoteIsWordedByItsCodeWithItsOwnFiguresInTheUnitsChosen() throws Exception {
    Note note = Note.caution("tide.test", "The range is 6.4 m.").with("rangeMetres", 6.4);
    Labels other = Labels.read(new StringReader("note.tide.test = Range {rangeMetres}"));
    LocalDate day = LocalDate.of(2026, 6, 14);
    Printed printed = new Printed(ZoneOffset.UTC, day, other, Units.NAUTICAL);
    assertEquals("Range 6.4 m", printed.say(note));
    // 6.4 m of 0.3048 m to the foot
    assertEquals(
        "Range 21.0 ft", new Printed(ZoneOffset.UTC, day, other, Units.parse("ft")).say(note));
    assertEquals(
        "The range is 6.4 m.",
        new Printed(ZoneOffset.UTC, day, Labels.english(), Units.NAUTICAL).say(note));
  }

  /** What stands in the file and nowhere in the program would mislead a translator. */
  @Test
  void everyKeyOfTheFileIsUsed() throws Exception {
    StringBuilder sources = new StringBuilder();
    try (Stream<Path> files =
        Files.walk(Path.of("src", "main", "java", "org", "ferryglide", "examples"))) {
      for (Path file : files.filter(it -> it.toString().endsWith(".java")).toList()) {
        sources.append(Files.readString(file));
      }
    }
    List<String> made =
        List.of(
            "shore.",
            "sheet.",
            "note.",
            "text.point.",
            "text.after-",
            "text.before-"); // put together with an item's name
    Set<String> keys = new HashSet<>(Labels.english().words().templates().keySet());
    keys.removeAll(DeckCard.english().templates().keySet());
    for (String key : keys) {
      assertTrue(
          sources.indexOf("\"" + key + "\"") >= 0 || made.stream().anyMatch(key::startsWith), key);
    }
  }

  /** Put together in the program from a family's name and a member's. */
  private static final List<String> FAMILIES =
      List.of(
          "figure.",
          "month.",
          "point.",
          "card.short.open.",
          "note.check.",
          "note.not-possible.lacking",
          "note.reason.",
          "note.what-if.",
          "note.stop.level-",
          "note.doubt.station");

  @Test
  void everyWordOfCardAndNotesIsSaidSomewhere() throws Exception {
    StringBuilder sources = new StringBuilder();
    for (String module : List.of("nav-core", "nav-tide")) {
      try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "main", "java"))) {
        for (Path file : files.filter(it -> it.toString().endsWith(".java")).toList()) {
          sources.append(Files.readString(file));
        }
      }
    }
    Set<String> keys = new HashSet<>(DeckCard.english().templates().keySet());
    Labels.english().words().templates().keySet().stream()
        .filter(key -> key.startsWith("note."))
        .forEach(keys::add);
    for (String key : keys) {
      String own = key.replaceFirst("^(note|card|unit)\\.", "");
      assertTrue(
          FAMILIES.stream().anyMatch(key::startsWith)
              || Stream.of(key, own, own.replace('-', ' '))
                  .anyMatch(it -> sources.indexOf("\"" + it + "\"") >= 0),
          key);
    }
  }
}
