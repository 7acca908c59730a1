package org.ferryglide.examples.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Words;
import org.ferryglide.tide.folder.PassageFolder;
import org.junit.jupiter.api.Test;

/** What page, card and shore note can be told has its words by code, doubts about rows among it. */
class NoteWordsTest {
  private static final Path SCENARIO = Path.of("scenarios", "ollen-skerries");
  private static final Words ENGLISH = Labels.english().words();

  /** A template whose figure the note does not have is left for the note's own English. */
  private static final Words MARKED = marked();

  private static final BiFunction<Note, String, String> PRINTING =
      Units.NAUTICAL.printing(ENGLISH, time -> time.toString());

  private static Words marked() {
    Map<String, String> templates = new LinkedHashMap<>();
    ENGLISH
        .templates()
        .forEach((key, words) -> templates.put(key, key.startsWith("note.") ? "»" + words : words));
    return Words.of(templates);
  }

  private static List<Note> notes(String file, String from, String to) throws Exception {
    String text = Files.readString(SCENARIO.resolve(file));
    assertTrue(text.contains(from), from);
    return PassageFolder.read(SCENARIO).withFile(file, text.replace(from, to)).notes();
  }

  /** Everything doubted of the folder with one slip in it. */
  private static Map<String, List<Note>> doubtful() throws Exception {
    Map<String, List<Note>> all = new LinkedHashMap<>();
    all.put("height", notes("tides/dunlathe.csv", ",4.4,high", ",9.4,high"));
    all.put("range", notes("tides/dunlathe.csv", "12T04:09+01:00,4.2", "12T04:09+01:00,24.2"));
    all.put("time", notes("tides/orrin-quay.csv", "12T09:19", "12T11:19"));
    all.put("rate", notes("streams.csv", ",-3,005,2.1,1.0", ",-3,005,21,1.0"));
    all.put("neap", notes("streams.csv", ",-3,005,2.1,1.0", ",-3,005,2.1,2.4"));
    all.put("set", notes("streams.csv", ",-3,005,2.1,1.0", ",-3,185,2.1,1.0"));
    all.put("neap range", notes("streams.csv", "Orrin Quay,2.4,5.0", "Orrin Quay,0.1,5.0"));
    all.put("longitude", notes("waypoints.csv", "026°13.0'W", "026°13.0'E"));
    all.put("latitude", notes("waypoints.csv", "46°12.1'N", "46°12.1'S"));
    all.put("degree", notes("waypoints.csv", "46°12.1'N", "47°12.1'N"));
    all.put("far", notes("waypoints.csv", "46°12.1'N", "46°27.1'N"));
    all.put("short", notes("waypoints.csv", "46°12.1'N 026°13.0'W", "46°11.801'N 026°17.601'W"));
    all.put("station", notes("streams.csv", "46.235,-26.17", "46.235,26.17"));
    all.put("reach", notes("limits.csv", "6.0 NM", "3.0 NM"));
    return all;
  }

  @Test
  void doubtsAreToldInTheWordsOfTheFileWithTheirFigures() throws Exception {
    Set<String> seen = new TreeSet<>();
    for (Map.Entry<String, List<Note>> slip : doubtful().entrySet()) {
      assertTrue(!slip.getValue().isEmpty(), slip.getKey() + ": nothing is doubted");
      for (Note note : slip.getValue()) {
        String translated = MARKED.say(note, PRINTING);
        assertTrue(translated.startsWith("»"), note.code() + ": " + translated);
        // parts are translated as well, and in English nothing is lost on the way
        assertEquals(note.text(), translated.replace("»", ""), note.code());
        seen.add(note.code());
        for (String part : List.of("what", "place", "check", "turned", "advice")) {
          String code = note.data().get(part + "Code");
          if (code != null) {
            assertTrue(ENGLISH.templates().containsKey("note." + code), code);
            seen.add(code);
          }
        }
      }
    }
    for (String code :
        List.of(
            "tide.doubt.height",
            "tide.doubt.time",
            "stream.doubt.rate",
            "stream.doubt.fastest",
            "stream.doubt.neap-above-spring",
            "stream.doubt.set",
            "stream.doubt.neap-range",
            "leg.too-long",
            "leg.short",
            "station.unused")) {
      assertTrue(seen.contains(code), code + " is not in " + seen);
    }
  }

  /** Of these nothing comes to a page: swings, fixes, grids, analyses, refusals. */
  private static final List<String> NOT_PRINTED =
      List.of(
          "analysis.",
          "fix.",
          "grid.",
          "mgrs.",
          "helm.",
          "reckoning.",
          "replan.",
          "search.",
          "sounding.",
          "swing.",
          "tide.doubt.offset-returns",
          "stream.no-data");

  @Test
  void everyCodeInTheSourcesHasItsWords() throws Exception {
    Pattern made =
        Pattern.compile("(?:Note\\s*\\.\\s*\\w+|new Judgement)\\(\\s*\"([a-z.-]+[a-z])\"");
    List<String> missing = new ArrayList<>();
    for (String module : List.of("nav-core", "nav-tide")) {
      try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "main", "java"))) {
        for (Path file : files.filter(it -> it.toString().endsWith(".java")).toList()) {
          Matcher matcher =
              made.matcher(Files.readString(file).replaceAll("(?m)^ *(\\*|//).*$", ""));
          while (matcher.find()) {
            String code = matcher.group(1);
            boolean printed = NOT_PRINTED.stream().noneMatch(code::startsWith);
            if (printed && !ENGLISH.templates().containsKey("note." + code)) {
              missing.add(code + " of " + file.getFileName());
            }
          }
        }
      }
    }
    assertEquals(List.of(), missing);
  }
}
