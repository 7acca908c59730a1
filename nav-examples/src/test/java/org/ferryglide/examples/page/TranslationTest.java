package org.ferryglide.examples.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ferryglide.nav.passage.Danger;
import org.ferryglide.nav.passage.DeckCard;
import org.ferryglide.nav.passage.Lane;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.tide.folder.PassageFolder;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * A trial translation: every letter of every label is put into another alphabet. Whatever is still
 * in the Roman one, but for names that the user gave, was not in the file of labels.
 */
class TranslationTest {
  private static final Path SCENARIO = Path.of("scenarios", "ollen-skerries");
  private static final Pattern ROMAN = Pattern.compile("[A-Za-z]{2,}");
  private static final Set<String> OF_THE_STANDARDS = Set.of("UTC");

  private static Labels translation = Labels.english();
  private static final Map<String, WorkedPassage> SCENES = new HashMap<>(PageScenes.all());

  @BeforeAll
  static void translate() throws Exception {
    Properties other = new Properties();
    Labels.english()
        .words()
        .templates()
        .forEach((key, words) -> other.setProperty(key, otherLetters(words)));
    StringWriter file = new StringWriter();
    other.store(file, "a trial");
    translation = Labels.read(new StringReader(file.toString()));
    SCENES.put("folder", WorkedPassage.of(PassageFolder.read(SCENARIO)));
    SCENES.put("doubtful", WorkedPassage.of(doubtful()));
    SCENES.put("way home", SCENES.get("a-stop").withWayHome());
  }

  /** With a water too high, a neap rate above its spring rate, a rose and a place misread. */
  private static PassageFolder doubtful() throws Exception {
    PassageFolder folder = PassageFolder.read(SCENARIO);
    for (String[] slip :
        new String[][] {
          {"tides/dunlathe.csv", ",4.4,high", ",9.4,high"},
          {"streams.csv", ",-3,005,2.1,1.0", ",-3,005,2.1,2.4"},
          {"passage.csv", "8°50'W", "8°50'E"},
          {"waypoints.csv", "026°20.0'W", "026°17.62'W"},
          {"waypoints.csv", "46°10.0'N", "46°11.81'N"}
        }) {
      String text = folder.texts().get(slip[0]);
      folder = folder.withFile(slip[0], text.replace(slip[1], slip[2]));
    }
    return folder;
  }

  /** Each letter outside braces is moved into the Cyrillic block. */
  private static String otherLetters(String words) {
    StringBuilder out = new StringBuilder();
    boolean name = false;
    for (int i = 0; i < words.length(); i++) {
      char letter = words.charAt(i);
      name = letter == '{' || (name && letter != '}');
      boolean roman = (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z');
      out.append(roman && !name ? (char) (letter - 'A' + '\u0410') : letter);
    }
    return out.toString();
  }

  private static List<String> given(WorkedPassage worked) {
    Passage passage = worked.passage();
    List<String> names = new ArrayList<>(List.of(passage.name()));
    List<WayPoint> places = new ArrayList<>(passage.wayPoints());
    places.addAll(passage.refuges());
    places.forEach(place -> names.addAll(List.of(place.name(), place.toSee())));
    passage.dangers().orElse(List.of()).stream().map(Danger::name).forEach(names::add);
    passage.lanes().orElse(List.of()).stream().map(Lane::name).forEach(names::add);
    passage.levels().forEach((port, level) -> names.addAll(List.of(port, level.datum())));
    for (String item : List.of("party", "craft", "carried", "call", "remarks")) {
      worked.shore().words(item).ifPresent(names::add);
    }
    worked.plan().match(TimedPlan::notes, why -> passage.notes()).stream()
        .flatMap(note -> Stream.of("station", "file", "heading").map(note.data()::get))
        .filter(Objects::nonNull)
        .forEach(names::add);
    worked.highWater().ifPresent(water -> names.add(water.port()));
    names.removeIf(String::isEmpty);
    names.sort(Comparator.comparingInt(String::length).reversed());
    return names;
  }

  private static Set<String> roman(WorkedPassage worked, String text) {
    String left = text.replaceAll("\\s+", " "); // a card wraps names
    for (String name : given(worked)) {
      left = left.replace(name, "·");
      for (int kept = name.length() - 1; kept > 1; kept--) { // and cuts them where it must
        left = left.replace(name.substring(0, kept) + "…", "·");
      }
    }
    Set<String> found = new TreeSet<>();
    Matcher matcher = ROMAN.matcher(left);
    while (matcher.find()) {
      if (!OF_THE_STANDARDS.contains(matcher.group())) {
        int from = Math.max(0, matcher.start() - 40);
        found.add(left.substring(from, Math.min(left.length(), matcher.end() + 40)).strip());
      }
    }
    return found;
  }

  /** What is read or spoken of a page: its texts and the names of its regions. */
  private static String content(String html) throws Exception {
    StringBuilder text = new StringBuilder();
    read(PassagePageTest.parsed(html).getDocumentElement(), text);
    return text.toString();
  }

  private static void read(Element element, StringBuilder text) {
    text.append(element.getAttribute("aria-label")).append('\n');
    for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child && !child.getTagName().equals("style")) {
        read(child, text);
      } else if (node.getNodeType() == Node.TEXT_NODE) {
        text.append(node.getTextContent()).append('\n');
      }
    }
  }

  /** Sides as one text: a name may end on the next side, behind the head that all of them have. */
  private static String continued(List<String> sides) {
    List<List<String>> lines = sides.stream().map(side -> side.lines().toList()).toList();
    int head = 0;
    while (lines.size() > 1 && allBeginAlike(lines, head)) {
      head++;
    }
    List<String> all = new ArrayList<>(lines.get(0));
    for (List<String> side : lines.subList(1, lines.size())) {
      all.addAll(side.subList(head, side.size()));
    }
    return String.join("\n", all);
  }

  private static boolean allBeginAlike(List<List<String>> sides, int line) {
    return sides.stream()
        .allMatch(side -> line < side.size() && side.get(line).equals(sides.get(0).get(line)));
  }

  @Test
  void nothingOfThePageTheSheetAndTheNoteStaysEnglish() throws Exception {
    for (Map.Entry<String, WorkedPassage> scene : SCENES.entrySet()) {
      WorkedPassage worked = scene.getValue().withLabels(translation);
      String name = scene.getKey();
      assertEquals(Set.of(), roman(worked, content(PassagePage.of(worked).html())), name);
      assertEquals(Set.of(), roman(worked, ShoreNote.of(worked).text()), name);
      assertEquals(Set.of(), roman(worked, content(ShoreNote.of(worked).html())), name);
      if (worked.card().isPresent()) {
        DeckCard card = worked.card().orElseThrow();
        assertEquals(Set.of(), roman(worked, continued(card.further())), name);
        assertEquals(Set.of(), roman(worked, String.join("\n", card.afloat())), name);
        assertEquals(Set.of(), roman(worked, String.join("\n", card.summary())), name);
        String sheet = CardSheet.of(worked).orElseThrow().html();
        String around = sheet.replaceAll("(?s)<pre.*?</pre>", "");
        assertEquals(Set.of(), roman(worked, content(around)), name);
      }
    }
  }

  @Test
  void theDoubtsOfAFolderStandOnItsPage() throws Exception {
    String page = content(PassagePage.of(SCENES.get("doubtful")).html());
    assertTrue(page.contains("m is far from the other waters of its kind beside it."), page);
    assertTrue(page.contains("the neap rate of 2.4 kn is above the spring rate of 2.1 kn."), page);
    assertTrue(page.contains("rose and model differ by"), page);
    String sheet = PlottingSheet.of(SCENES.get("doubtful"), Labels.english()).file();
    assertTrue(sheet.contains("Marrow Slip to Hesk Point, is only"), "at the leg it concerns");
  }

  @Test
  void theCardKeepsItsFiguresAndItsSize() {
    SCENES.forEach(
        (name, worked) ->
            worked
                .card()
                .ifPresent(
                    card -> {
                      DeckCard other = card.withWords(translation.words());
                      for (int i = 0; i < card.afloat().size(); i++) {
                        assertEquals(figures(card.afloat().get(i)), figures(other.afloat().get(i)));
                      }
                      assertTrue(
                          other.further().stream()
                              .flatMap(String::lines)
                              .allMatch(line -> line.codePointCount(0, line.length()) <= 40));
                    }));
  }

  private static String figures(String side) {
    return side.replaceAll("[^0-9:.°\n]", "");
  }

  @Test
  void aTranslationMayLeaveKeysOut() throws Exception {
    Labels some = Labels.read(new StringReader("card.void = nur heute\nblank = ____"));
    WorkedPassage worked = SCENES.get("one-leg").withLabels(some);
    assertTrue(worked.card().orElseThrow().toString().contains("nur heute"));
    assertFalse(PassagePage.of(worked).html().contains("______________"));
  }
}
