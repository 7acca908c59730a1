package org.ferryglide.examples.page;

import static org.ferryglide.nav.timing.Verdict.Answer.NOT_CHECKED;
import static org.ferryglide.nav.timing.Verdict.Answer.STOPPED;
import static org.ferryglide.nav.timing.Verdict.Answer.WARNED;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.nav.passage.DeckCard;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageLimits;
import org.ferryglide.nav.timing.Verdict;
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
  private static Labels translation = Labels.english();
  private static final Map<String, WorkedPassage> SCENES = new HashMap<>(PageScenes.all());

  private static Set<String> roman(WorkedPassage worked, String text) {
    return TrialTranslation.roman(TrialTranslation.given(worked), text);
  }

  @BeforeAll
  static void translate() throws Exception {
    translation = TrialTranslation.labels();
    SCENES.put("folder", WorkedPassage.of(PassageFolder.read(SCENARIO)));
    SCENES.put("doubtful", WorkedPassage.of(TrialTranslation.doubtful()));
    SCENES.put("way home", SCENES.get("a-stop").withWayHome());
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
  void nothingOfTheQuickestPageStaysEnglish() throws Exception {
    // a stop, a warning, and a check that cannot be made: nobody can land where none is known
    PassageLimits limits =
        PassageLimits.none()
            .withTimeAfloat(Duration.ofMinutes(5), Duration.ofMinutes(20))
            .withStream(Speed.ofKnots(0.5), Speed.ofKnots(2.5))
            .withTimeToLanding(Duration.ofHours(1), Duration.ofHours(2));
    Passage limited = PageScenes.oneLeg().toBuilder().limits(limits).build();
    Set<Verdict.Answer> answers = EnumSet.noneOf(Verdict.Answer.class);
    for (Passage passage : List.of(PageScenes.oneLeg(), limited)) {
      QuickestLeg leg =
          QuickestLeg.of(passage, PageScenes.NOON, 1, Duration.ofMinutes(20), 2).orElseThrow();
      leg.plan().verdicts().forEach(verdict -> answers.add(verdict.answer()));
      String html = QuickestPage.of(leg, leg.planned(), Units.NAUTICAL, translation).html();
      List<String> given = TrialTranslation.given(passage, leg.plan().notes(), List.of());
      assertEquals(Set.of(), TrialTranslation.roman(given, content(html)));
    }
    assertTrue(answers.containsAll(EnumSet.of(STOPPED, WARNED, NOT_CHECKED)), answers.toString());
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
