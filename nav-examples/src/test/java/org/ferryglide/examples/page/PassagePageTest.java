package org.ferryglide.examples.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.text.Bidi;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.ferryglide.examples.files.PlanJson;
import org.ferryglide.examples.svg.Raster;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.timing.Verdict;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class PassagePageTest {
  private static final int MOST_BYTES = 300_000;

  private static Map<String, WorkedPassage> scenes = Map.of();
  private static final Map<String, String> PAGES = new HashMap<>();

  @BeforeAll
  static void workOut() {
    scenes = PageScenes.all();
    scenes.forEach((name, worked) -> PAGES.put(name, PassagePage.of(worked).html()));
  }

  static Document parsed(String html) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(html.replace("<!DOCTYPE html>\n", ""))));
  }

  private static List<Element> all(Document document, String name) {
    NodeList found = document.getElementsByTagName(name);
    List<Element> list = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      list.add((Element) found.item(i));
    }
    return list;
  }

  @Test
  void whereNothingWarnsNoCheckIsPutForwardAsTheWorst() {
    String page = PAGES.get("seventy-north");
    assertTrue(page.contains("all checks hold"), page);
    int told = page.split("tables and places: nothing looked wrong", -1).length - 1;
    assertEquals(1, told, "once, among the checks");
  }

  /** By the Unicode bidirectional algorithm, as whoever shows the page orders it. */
  @Test
  void aNameFromRightToLeftLeavesTheFiguresBehindItInTheirOrder() {
    String page = PAGES.get("strange-names");
    int at = page.indexOf("; 46°12.0'N 026°15.0'W");
    String line = page.substring(page.lastIndexOf('>', at) + 1, page.indexOf('<', at));
    Bidi order = new Bidi(line, Bidi.DIRECTION_LEFT_TO_RIGHT);
    for (int i = line.indexOf(';'); i < line.length(); i++) {
      assertEquals(0, order.getLevelAt(i) % 2, line + " at " + i);
    }
  }

  @Test
  void aLandingWhereThePartyIsHasNoHeading() {
    String page = PAGES.get("a-stop");
    assertTrue(page.contains("<td>here</td>"), page);
  }

  @Test
  void everyPageIsWellFormedSmallAndNeedsNothingBesideIt() throws Exception {
    for (Map.Entry<String, WorkedPassage> scene : scenes.entrySet()) {
      String html = PAGES.get(scene.getKey());
      Document page = parsed(html);
      int bytes = html.getBytes(StandardCharsets.UTF_8).length;
      assertTrue(bytes <= MOST_BYTES, scene.getKey() + " has " + bytes + " bytes");
      for (String name : List.of("script", "link", "img", "iframe", "object", "use", "image")) {
        assertEquals(0, all(page, name).size(), scene.getKey() + ": " + name);
      }
      String outside = html.replace("http://www.w3.org/2000/svg", "");
      assertFalse(outside.contains("http"), scene.getKey());
      assertFalse(outside.contains("@import"), scene.getKey());
      assertFalse(outside.replaceAll("url\\(#[a-z0-9-]+\\)", "").contains("url("), scene.getKey());
      Set<String> ids = new HashSet<>();
      all(page, "*").stream()
          .map(element -> element.getAttribute("id"))
          .filter(id -> !id.isEmpty())
          .forEach(id -> assertTrue(ids.add(id), scene.getKey() + ": twice " + id));
    }
  }

  @Test
  void everyPictureHasATitleAndADescription() throws Exception {
    for (Map.Entry<String, WorkedPassage> scene : scenes.entrySet()) {
      List<Element> pictures = all(parsed(PAGES.get(scene.getKey())), "svg");
      assertTrue(pictures.size() >= 4, scene.getKey());
      for (Element picture : pictures) {
        assertEquals("img", picture.getAttribute("role"));
        Element title = (Element) picture.getElementsByTagName("title").item(0);
        Element desc = (Element) picture.getElementsByTagName("desc").item(0);
        assertEquals(
            title.getAttribute("id") + " " + desc.getAttribute("id"),
            picture.getAttribute("aria-labelledby"));
        assertTrue(title.getTextContent().length() > 5, scene.getKey());
        assertTrue(desc.getTextContent().length() > 15, scene.getKey());
      }
    }
  }

  @Test
  void whatWasNotCheckedStandsFirst() throws Exception {
    for (Map.Entry<String, WorkedPassage> scene : scenes.entrySet()) {
      WorkedPassage worked = scene.getValue();
      for (String html : List.of(PAGES.get(scene.getKey()), ShoreNote.of(worked).html())) {
        Element first = all(parsed(html), "p").get(0);
        assertEquals("open", first.getAttribute("class"));
        for (Note open : worked.day().notChecked()) {
          assertTrue(
              first.getTextContent().contains(worked.printed().say(open)),
              scene.getKey() + ": " + open);
        }
        for (Verdict verdict :
            worked.plan().match(TimedPlan::verdicts, why -> List.<Verdict>of())) {
          if (verdict.answer() == Verdict.Answer.NOT_CHECKED) {
            assertTrue(
                first.getTextContent().contains(worked.printed().say(verdict.note())),
                scene.getKey());
          }
        }
      }
    }
  }

  @Test
  void headingsGoDownOneByOne() throws Exception {
    for (String html : PAGES.values()) {
      int before = 0;
      for (Element element : all(parsed(html), "*")) {
        if (element.getTagName().matches("h[1-6]")) {
          int level = element.getTagName().charAt(1) - '0';
          assertTrue(level <= before + 1, element.getTextContent());
          before = level;
        }
      }
    }
  }

  /**
   * The figures of the plan, rounded here by themselves: an arrival late, a minute a difference.
   */
  @Test
  void theFiguresOfThePageAndTheCardAreThoseOfThePlan() throws Exception {
    for (Map.Entry<String, WorkedPassage> scene : scenes.entrySet()) {
      TimedPlan plan = scene.getValue().plan().solved().orElse(null);
      if (plan == null) {
        continue;
      }
      Document page = parsed(PAGES.get(scene.getKey()));
      List<String> sides = scene.getValue().card().orElseThrow().afloat();
      List<?> json =
          (List<?>)
              PlanJson.of(plan.passage().name(), plan.departure(), scene.getValue().plan())
                  .get("legs");
      Element table = all(page, "table").get(0);
      NodeList rows = table.getElementsByTagName("tr");
      assertEquals(plan.legs().size() + 1, rows.getLength());
      for (int i = 0; i < plan.legs().size(); i++) {
        PlannedLeg leg = plan.legs().get(i);
        NodeList cells = ((Element) rows.item(i + 1)).getElementsByTagName("td");
        String steer = steer(leg);
        String eta = clock(leg.arrival(), plan);
        String minutes =
            Long.toString(
                Duration.between(ceiling(leg.departure()), ceiling(leg.arrival())).toMinutes());
        Map<?, ?> values = (Map<?, ?>) json.get(i);
        assertEquals(eta, clock(Instant.parse((String) values.get("arrival")), plan));
        Object magnetic = values.get("headingMagneticDegrees");
        Object shown = magnetic == null ? values.get("headingTrueDegrees") : magnetic;
        assertEquals(steer.substring(0, 3), threeFigures((Double) shown), scene.getKey());
        assertEquals(leg.leg().to().name(), cells.item(0).getTextContent());
        assertEquals(steer, cells.item(1).getTextContent(), scene.getKey());
        assertEquals(minutes, cells.item(2).getTextContent(), scene.getKey());
        assertEquals(eta, cells.item(3).getTextContent(), scene.getKey());
        Matcher card =
            Pattern.compile("([0-9_]{3}°) +([0-9]+) min +ETA ([0-9:+]+)").matcher(sides.get(i));
        assertTrue(card.find(), sides.get(i));
        assertEquals(steer.endsWith("T") ? "___°" : steer, card.group(1), scene.getKey());
        assertEquals(minutes, card.group(2), scene.getKey());
        assertEquals(eta, card.group(3), scene.getKey());
      }
    }
  }

  private static String steer(PlannedLeg leg) {
    double magnetic =
        leg.variation()
            .map(reading -> leg.heading().degrees() - reading.variation().degreesEast())
            .orElse(Double.NaN);
    double shown = Double.isNaN(magnetic) ? leg.heading().degrees() : magnetic;
    return threeFigures(shown) + "°" + (Double.isNaN(magnetic) ? "T" : "");
  }

  private static String threeFigures(double degrees) {
    return Long.toString(Math.floorMod(Math.round(degrees), 360L) + 1000L).substring(1);
  }

  private static Instant ceiling(Instant time) {
    Instant minute = time.truncatedTo(ChronoUnit.MINUTES);
    return minute.isBefore(time) ? minute.plusSeconds(60) : minute;
  }

  private static String clock(Instant time, TimedPlan plan) {
    ZoneId zone = plan.passage().zone();
    java.time.ZonedDateTime local = ceiling(time).atZone(zone);
    long days =
        ChronoUnit.DAYS.between(plan.departure().atZone(zone).toLocalDate(), local.toLocalDate());
    return local.toLocalTime().toString().substring(0, 5) + (days == 0 ? "" : "+" + days);
  }

  @Test
  void aPassageThatIsNotPossibleSaysWhyAndStillShowsItsSheet() throws Exception {
    String html = PAGES.get("not-possible");
    assertTrue(html.contains("Not possible as planned"), html);
    String text = parsed(html).getDocumentElement().getTextContent();
    // 6 kn abeam of a party at 3.5 kn: more than 2.5 kn are lacking, told up to a tenth
    String why = "the stream across the track is too strong to hold against, by 2.6 kn";
    assertTrue(text.contains(why), text);
    assertTrue(html.contains("Not a chart: only what the folder names is shown"), html);
    assertEquals(List.of(), CardSheet.of(scenes.get("not-possible")).stream().toList());
  }

  @Test
  void aDayWithoutADepartureLeftSaysSoAndNamesTheLeastBad() {
    String html = PAGES.get("none-left");
    assertTrue(html.contains("There is no departure of the day at which no check stops"), html);
    assertTrue(html.contains("least bad: under way"), html);
    assertTrue(html.contains("<strong>STOP</strong>"), html);
  }

  @Test
  void whatIsNotKnownIsABlank() {
    String html = PAGES.get("one-leg");
    assertTrue(html.contains("__:__"), html); // not-later-than was not worked out
    assertTrue(html.contains("<dt>high water</dt><dd>______________</dd>"), html);
  }

  @Test
  void everyPictureStandsAloneAsSvgAndPng() throws Exception {
    for (Svg picture : PassagePage.of(scenes.get("a-stop")).pictures()) {
      parsed(picture.file().substring(picture.file().indexOf('\n') + 1));
      byte[] png = Raster.png(picture, 1.0);
      assertEquals("PNG", new String(png, 1, 3, StandardCharsets.US_ASCII), picture.name());
    }
  }

  /** What would lie on top of each other stands in the lists alone. */
  @Test
  void aSheetOfManyLegsHasTheirNumbersAndNoNamesBetween() {
    WorkedPassage crowded = scenes.get("forty-legs");
    String sheet = PlottingSheet.of(crowded, Labels.english()).file();
    assertTrue(sheet.contains(">Point 0<") && sheet.contains(">Point 40<"), sheet);
    assertTrue(sheet.contains(">39<"), "the number of a leg");
    assertFalse(sheet.contains(">Point 20<"), sheet);
    assertTrue(sheet.contains("So many legs: their numbers alone"), sheet);
    String few = PlottingSheet.of(scenes.get("twelve-legs"), Labels.english()).file();
    assertTrue(few.contains(">Skerry 7<"), few);
  }

  @Test
  void withoutAPlanNoBarAndNoHatchIsSpokenOf() {
    assertFalse(PAGES.get("not-possible").contains("launch to landed"));
    assertTrue(PAGES.get("one-leg").contains("Black bar: launch to landed"));
  }

  @Test
  void cardSheetsAreWellFormedAndHoldEverySide() throws Exception {
    for (Map.Entry<String, WorkedPassage> scene : scenes.entrySet()) {
      CardSheet sheet = CardSheet.of(scene.getValue()).orElse(null);
      if (sheet != null) {
        Document page = parsed(sheet.html());
        var card = scene.getValue().card().orElseThrow();
        List<String> sides = new ArrayList<>(card.summary());
        sides.addAll(card.afloat());
        sides.addAll(card.further());
        List<Element> printed = all(page, "pre");
        assertEquals(sides.size(), printed.size(), scene.getKey());
        for (int i = 0; i < sides.size(); i++) {
          // names from right to left stand between invisible isolates there
          String said = printed.get(i).getTextContent().replaceAll("[\u2068\u2069]", "");
          assertEquals(sides.get(i), said, scene.getKey());
        }
      }
    }
  }
}
