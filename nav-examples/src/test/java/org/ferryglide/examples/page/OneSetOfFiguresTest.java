package org.ferryglide.examples.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.ferryglide.examples.files.JsonText;
import org.ferryglide.examples.files.PlanJson;
import org.ferryglide.tide.folder.PassageFolder;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What the JSON of a plan says is what its page and its card print, figure by figure: the JSON is
 * read back and rounded here, each figure to its worse side, with none of the program's rounding.
 */
class OneSetOfFiguresTest {
  @TestFactory
  Stream<DynamicTest> jsonPageAndCardHaveOneSetOfFigures() throws Exception {
    Map<String, WorkedPassage> scenes = new LinkedHashMap<>(PageScenes.all());
    scenes.put("folder", WorkedPassage.of(PassageFolder.read(Path.of("scenarios/ollen-skerries"))));
    scenes.keySet().removeIf(name -> scenes.get(name).plan().solved().isEmpty());
    assertTrue(scenes.size() > 8, "scenes: " + scenes.keySet());
    return scenes.entrySet().stream()
        .map(
            scene ->
                DynamicTest.dynamicTest(
                    scene.getKey(), () -> new Compared(scene.getValue()).compare()));
  }

  /** One plan, three ways. */
  private static final class Compared {
    private static final double WHOLE = 1e-9;

    private final WorkedPassage worked;
    private final JsonNode json;
    private final ZoneId zone;
    private final LocalDate day;

    private Compared(WorkedPassage worked) {
      this.worked = worked;
      this.zone = worked.passage().zone();
      this.day = worked.departure().atZone(zone).toLocalDate();
      this.json =
          JsonMapper.shared()
              .readTree(
                  JsonText.of(
                      PlanJson.of(worked.passage().name(), worked.departure(), worked.plan())));
    }

    private void compare() throws Exception {
      Document page = PassagePageTest.parsed(PassagePage.of(worked).html());
      List<Element> sections = sections(page);
      List<String> sides = worked.card().orElseThrow().afloat();
      String all = page.getDocumentElement().getTextContent();
      assertTrue(
          all.contains("length of all legs" + up(number("lengthNauticalMiles")) + " NM"), all);
      assertTrue(all.contains("first boat afloat" + early(json.get("launch"))), all);
      assertTrue(all.contains("under way" + late(json.get("departure"))), all);
      assertTrue(all.contains("last ashore" + late(json.get("landed"))), all);
      assertEquals(json.get("legs").size(), sections.size());
      assertEquals(json.get("legs").size(), sides.size());
      for (int i = 0; i < sections.size(); i++) {
        page(json.get("legs").get(i), sections.get(i));
        card(json.get("legs").get(i), sides.get(i));
      }
      checks(page);
    }

    private void page(JsonNode leg, Element section) {
      Map<String, String> rows = rows(section);
      String heading = by(leg, "headingTrueDegrees");
      assertEquals(heading + degrees(leg, "headingTrueDegrees") + " true", rows.get("steer"));
      String course = by(leg, "courseTrueDegrees");
      assertEquals(course + degrees(leg, "courseTrueDegrees") + " true", rows.get("course"));
      assertEquals(
          near(leg.get("lengthNauticalMiles").asDouble())
              + " NM in "
              + minutes(leg)
              + " min, "
              + down(leg.get("speedMadeGoodKnots").asDouble())
              + " kn made good",
          rows.get("distance"));
      assertTrue(rows.get("ETA").startsWith(late(leg.get("arrival")) + " likely"), rows.get("ETA"));
      double off = leg.get("greatestCrossTrackMetres").asDouble();
      assertEquals(
          Math.abs(off) < 0.001
              ? "at no time"
              : "at most "
                  + up(Math.abs(off) / 1852.0)
                  + " NM to the "
                  + (off < 0 ? "left" : "right"),
          rows.get("off the line"));
      NodeList hours = section.getElementsByTagName("tr");
      for (int i = 0; i < leg.get("hours").size() && hours.getLength() > 0; i++) {
        JsonNode hour = leg.get("hours").get(i);
        List<String> cells = cells((Element) hours.item(i + 1));
        assertEquals(late(hour.get("from")) + " – " + late(hour.get("until")), cells.get(0));
        assertEquals(
            minutesOf(hour.get("latitudeDegrees").asDouble(), 2, "N", "S")
                + " "
                + minutesOf(hour.get("longitudeDegrees").asDouble(), 3, "E", "W"),
            cells.get(1));
        assertEquals(magnetic(leg, hour.get("headingTrueDegrees").asDouble()), cells.get(2));
        double rate = hour.get("streamRateKnots").asDouble();
        assertEquals(
            rate < 0.05
                ? "slack"
                : "to "
                    + magnetic(leg, hour.get("streamSetTrueDegrees").asDouble())
                    + " "
                    + up(rate)
                    + " kn",
            cells.get(3));
        assertEquals(down(hour.get("speedMadeGoodKnots").asDouble()) + " kn", cells.get(4));
      }
    }

    private void card(JsonNode leg, String side) {
      String line = side.lines().filter(it -> it.contains("ETA")).findFirst().orElseThrow();
      String magnetic =
          isMagnetic(leg) ? three(leg.get("headingMagneticDegrees").asDouble()) : "___°";
      String before = line.replaceAll(" +ETA.*", "").replaceAll(" +", " ");
      assertEquals(magnetic + " " + minutes(leg) + " min", before, side);
      if (!isMagnetic(leg)) {
        assertTrue(side.contains("true " + degrees(leg, "headingTrueDegrees")), side);
      }
      assertTrue(line.endsWith("ETA " + late(leg.get("arrival"))), side);
      String number = leg.get("number").asInt() + "/" + json.get("legs").size() + " ";
      assertTrue(side.contains(number + late(leg.get("departure")) + " "), side);
    }

    /** Each check of the JSON is one of the page, with the same answer. */
    private void checks(Document page) {
      List<String> told = new ArrayList<>();
      NodeList tables = page.getElementsByTagName("table");
      NodeList found = ((Element) tables.item(tables.getLength() - 1)).getElementsByTagName("tr");
      for (int i = 1; i < found.getLength(); i++) {
        List<String> cells = cells((Element) found.item(i));
        told.add(cells.get(0) + " " + cells.get(3));
      }
      List<String> expected = new ArrayList<>();
      for (JsonNode check : json.get("checks")) {
        String answer =
            switch (check.get("answer").asString()) {
              case "WITHIN" -> "within";
              case "WARNED" -> "WARNING";
              case "STOPPED" -> "STOP";
              default -> "NOT CHECKED";
            };
        expected.add(answer + " " + (check.get("when").isNull() ? "" : early(check.get("when"))));
      }
      assertEquals(expected, told);
    }

    private static List<Element> sections(Document page) {
      List<Element> legs = new ArrayList<>();
      NodeList sections = page.getElementsByTagName("section");
      for (int i = 0; i < sections.getLength(); i++) {
        Element section = (Element) sections.item(i);
        if (section.getAttribute("class").equals("leg")) {
          legs.add(section);
        }
      }
      return legs;
    }

    private static Map<String, String> rows(Element section) {
      Map<String, String> rows = new LinkedHashMap<>();
      NodeList names = section.getElementsByTagName("dt");
      NodeList words = section.getElementsByTagName("dd");
      for (int i = 0; i < names.getLength(); i++) {
        rows.put(names.item(i).getTextContent(), words.item(i).getTextContent());
      }
      return rows;
    }

    private static List<String> cells(Element row) {
      List<String> cells = new ArrayList<>();
      for (var cell = row.getFirstChild(); cell != null; cell = cell.getNextSibling()) {
        if (cell instanceof Element) {
          cells.add(cell.getTextContent());
        }
      }
      return cells;
    }

    private double number(String name) {
      return json.get(name).asDouble();
    }

    private String by(JsonNode leg, String trueName) {
      return isMagnetic(leg) ? magnetic(leg, leg.get(trueName).asDouble()) + " magnetic, " : "";
    }

    private static String degrees(JsonNode leg, String name) {
      return three(leg.get(name).asDouble());
    }

    private static String magnetic(JsonNode leg, double degrees) {
      return isMagnetic(leg)
          ? three(degrees - leg.get("variationDegreesEast").asDouble())
          : three(degrees) + "T";
    }

    private static boolean isMagnetic(JsonNode leg) {
      return !leg.get("variationDegreesEast").isNull();
    }

    private static String three(double degrees) {
      long whole = Math.floorMod(Math.round(degrees), 360);
      return (whole < 10 ? "00" : whole < 100 ? "0" : "") + whole + "°";
    }

    /** Between the printed times. */
    private long minutes(JsonNode leg) {
      Instant from = whole(Instant.parse(leg.get("departure").asString()));
      return Duration.between(from, whole(Instant.parse(leg.get("arrival").asString())))
          .toMinutes();
    }

    private static Instant whole(Instant time) {
      return time.plus(1, ChronoUnit.MINUTES).minusNanos(1).truncatedTo(ChronoUnit.MINUTES);
    }

    private String late(JsonNode time) {
      return clock(whole(Instant.parse(time.asString())));
    }

    private String early(JsonNode time) {
      return clock(Instant.parse(time.asString()).truncatedTo(ChronoUnit.MINUTES));
    }

    private String clock(Instant minute) {
      ZonedDateTime local = minute.atZone(zone);
      long days = local.toLocalDate().toEpochDay() - day.toEpochDay();
      return local.toLocalTime() + (days == 0 ? "" : days > 0 ? "+" + days : "" + days);
    }

    private static String up(double value) {
      return tenths((long) Math.ceil(value * 10.0 - WHOLE));
    }

    private static String down(double value) {
      return tenths((long) Math.floor(value * 10.0 + WHOLE));
    }

    private static String near(double value) {
      return tenths(Math.round(value * 10.0));
    }

    private static String tenths(long tenths) {
      return tenths / 10 + "." + tenths % 10;
    }

    private static String minutesOf(double degrees, int figures, String up, String down) {
      long tenths = Math.round(Math.abs(degrees) * 600.0);
      StringBuilder whole = new StringBuilder(Long.toString(tenths / 600));
      while (whole.length() < figures) {
        whole.insert(0, '0');
      }
      String minutes = tenths % 600 / 10 + "." + tenths % 10 + "'";
      whole.append('°').append(minutes.length() < 5 ? "0" : "").append(minutes);
      return whole + (degrees < 0 ? down : up);
    }
  }
}
