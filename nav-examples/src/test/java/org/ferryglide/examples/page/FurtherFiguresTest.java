package org.ferryglide.examples.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
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
import java.util.Optional;
import java.util.stream.Stream;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.passage.Landing;
import org.ferryglide.nav.passage.LandingInReach;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageBuilder;
import org.ferryglide.nav.passage.PlannedHour;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.TurnTimes;
import org.ferryglide.nav.passage.Variant;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.Window;
import org.ferryglide.tide.folder.PassageFolder;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * The card's further sides and the page's what-ifs and landings print the plan's own figures, each
 * rounded here to its worse side. Words of checks, what-ifs and positions for radio are the
 * program's own: of those, place and order are compared.
 */
class FurtherFiguresTest {
  private static final List<String> TITLES =
      List.of(
          "LEGS",
          "TIDAL HOURS",
          "POSITION FOR RADIO",
          "DRIFT in",
          "LANDINGS",
          "WAY HOME",
          "CHECKS, the worst first");

  @TestFactory
  Stream<DynamicTest> furtherSidesAndPageHaveTheFiguresOfThePlan() throws Exception {
    Map<String, WorkedPassage> scenes = new LinkedHashMap<>(PageScenes.all());
    scenes.put(
        "folder",
        WorkedPassage.of(PassageFolder.read(Path.of("scenarios/ollen-skerries"))).withWayHome());
    scenes.put("a-stop, way home", scenes.get("a-stop").withWayHome());
    scenes.put("one-leg, way home", scenes.get("one-leg").withWayHome());
    scenes.put("clocks changed on the way", clocks("2026-10-24T22:10:00Z"));
    scenes.put("clocks changed before", clocks("2026-10-25T09:00:00Z"));
    scenes.keySet().removeIf(name -> scenes.get(name).plan().solved().isEmpty());
    assertTrue(scenes.size() > 10, "scenes: " + scenes.keySet());
    return scenes.entrySet().stream()
        .map(
            scene ->
                DynamicTest.dynamicTest(
                    scene.getKey(), () -> new Compared(scene.getValue()).compare()));
  }

  /** Four hours in a zone whose clocks are put back at 01:00 UTC of 25 October. */
  private static WorkedPassage clocks(String departure) {
    Passage passage =
        Passage.builder("Past the change", ZoneId.of("Europe/London"), PageScenes.party(2.0))
            .from(WayPoint.of("Slip", Position.parse("46°10.0'N 026°20.0'W")))
            .to(WayPoint.of("Cove", Position.parse("46°15.0'N 026°13.0'W")))
            .stream(PageScenes.turning(0.3))
            .build();
    return WorkedPassage.of(passage, Instant.parse(departure));
  }

  @Test
  void aClockThatIsChangedIsToldAndTheTimesStayWithTheDeparture() throws Exception {
    WorkedPassage night = clocks("2026-10-24T22:10:00Z");
    String words = "The clocks are changed on the way: these times stay UTC+01:00.";
    assertTrue(PassagePage.of(night).html().contains(words));
    String card = night.card().orElseThrow().toString().replaceAll("\\s+", " ");
    assertTrue(card.contains(words), card);
    String shore = ShoreNote.of(night).text();
    assertTrue(shore.contains("23:10 24 Oct 2026") && shore.contains("25 Oct 2026, UTC"), shore);
    WorkedPassage day = clocks("2026-10-25T09:00:00Z");
    assertTrue(
        day.card().orElseThrow().toString().contains("first boat afloat 08:45, clock UTC\n"));
    assertTrue(PassagePage.of(day).html().contains("all times by the clock UTC;"));
  }

  /** One plan, its card and its page. */
  private static final class Compared {
    private final WorkedPassage worked;
    private final TimedPlan plan;
    private final Passage passage;
    private final ZoneId zone;
    private final LocalDate day;

    private Compared(WorkedPassage worked) {
      this.worked = worked;
      this.plan = worked.plan().solved().orElseThrow();
      this.passage = plan.passage();
      this.zone = passage.zone().getRules().getOffset(plan.departure());
      this.day = plan.departure().atZone(zone).toLocalDate();
    }

    private void compare() throws Exception {
      Map<String, String> sections = sections(worked.card().orElseThrow().further());
      String top = sections.get("");
      assertTrue(top.contains(bare("first boat afloat " + early(plan.launch()) + ",")), top);
      assertTrue(top.contains(bare("under way " + late(plan.departure()))), top);
      assertTrue(top.contains(bare("last ashore " + late(plan.landed()))), top);
      List<String> afloat = worked.card().orElseThrow().afloat();
      for (int i = 0; i < plan.legs().size(); i++) {
        String eta = "ETA " + late(plan.legs().get(i).arrival());
        assertTrue(afloat.get(i).lines().anyMatch(line -> line.endsWith(eta)), afloat.get(i));
      }
      told(sections, "LEGS", legs());
      told(sections, "TIDAL HOURS", tidalHours());
      told(sections, "POSITION FOR RADIO", radio());
      told(sections, "DRIFT in", drift());
      told(sections, "LANDINGS", landings());
      told(sections, "WAY HOME", wayHome());
      told(sections, "CHECKS, the worst first", checks());
      Document page = PassagePageTest.parsed(PassagePage.of(worked).html());
      assertEquals(landingsOfPage(), rows(page, "Landings ahead, back"));
      assertEquals(whatIfs(), rows(page, "One thing otherwise at a time"));
    }

    private static void told(Map<String, String> sections, String title, List<String> lines) {
      StringBuilder all = new StringBuilder();
      lines.forEach(line -> all.append(bare(line)));
      assertEquals(all.toString(), sections.getOrDefault(title, ""), title);
    }

    /** What stands under each title, without blanks, which wrapping moves. */
    private static Map<String, String> sections(List<String> sides) {
      int head = 0;
      List<List<String>> lines = sides.stream().map(side -> side.lines().toList()).toList();
      while (lines.size() > 1 && isOfAll(lines, head)) {
        head++;
      }
      Map<String, String> sections = new LinkedHashMap<>();
      String title = "";
      for (List<String> side : lines) {
        for (String line : side.subList(lines.size() > 1 ? head : 0, side.size())) {
          String begun = TITLES.stream().filter(it -> isTitle(line, it)).findFirst().orElse("");
          if (begun.isEmpty() && !line.startsWith("Official charts")) {
            sections.merge(title, bare(line), String::concat);
          } else if (begun.isEmpty()) {
            title = "caution";
          } else {
            title = begun;
            boolean isFrom = line.startsWith("LANDINGS from"); // within the section of landings
            String rest = isFrom ? line : line.substring(begun.length());
            sections.merge(title, bare(rest), String::concat);
          }
        }
      }
      return sections;
    }

    private static boolean isTitle(String line, String title) {
      return line.startsWith(title) && (title.length() > 4 || line.equals(title));
    }

    private static boolean isOfAll(List<List<String>> sides, int at) {
      return sides.stream()
          .allMatch(side -> at < side.size() && side.get(at).equals(sides.get(0).get(at)));
    }

    private static String bare(String line) {
      return line.replaceAll("\\s+", "");
    }

    private List<String> legs() {
      List<String> all = new ArrayList<>();
      for (PlannedLeg leg : plan.legs()) {
        WayPoint from = leg.leg().from();
        all.add(leg.leg().number() + " " + from.name() + " to " + leg.leg().to().name());
        from.stop().ifPresent(stop -> all.add(worked.printed().say(stop.about())));
        all.add(
            "ETA "
                + late(leg.arrival())
                + " likely, "
                + early(leg.earliest())
                + " to "
                + late(leg.latest()));
        boolean one = leg.steered().headings().size() <= 1;
        for (PlannedHour hour : leg.hours()) {
          String heading = one ? "" : heading(leg, hour.heading().degrees(), "___°");
          all.add(
              late(hour.span().from())
                  + "-"
                  + late(hour.span().until())
                  + heading
                  + hour.stream()
                      .map(
                          it ->
                              it.rate().knots() < 0.05
                                  ? "stream slack"
                                  : "stream to "
                                      + heading(leg, it.set().degrees(), "")
                                      + " "
                                      + tenths(it.rate().knots(), RoundingMode.CEILING)
                                      + " kn")
                      .orElse("stream to ___° __ kn"));
        }
        double off = leg.greatestCrossTrack().metres();
        all.add(
            Math.abs(off) < 0.001
                ? "on the line throughout"
                : "off the line at most "
                    + tenths(Math.abs(off) / 1852.0, RoundingMode.CEILING)
                    + " NM to the "
                    + (off < 0.0 ? "left" : "right"));
        all.add(
            one
                ? "Constant heading: until the mark is in sight, then hold a transit."
                : "New headings under way, see each hour.");
      }
      return all;
    }

    /** Each hour begins half an hour before its time and ends half an hour after it. */
    private List<String> tidalHours() {
      List<String> all = new ArrayList<>();
      if (worked.highWater().isEmpty()) {
        return all;
      }
      all.add(", " + worked.highWater().get().port());
      Instant water = worked.highWater().get().time().truncatedTo(ChronoUnit.MINUTES);
      for (int hour = -6; hour <= 6; hour++) {
        Instant from = water.plus(Duration.ofMinutes(60L * hour - 30));
        if (from.plusSeconds(3600).isAfter(plan.departure()) && from.isBefore(plan.landed())) {
          String sign = hour == 0 ? "" : hour > 0 ? "+" + hour : "" + hour;
          all.add("HW" + sign + early(from) + "-" + early(from.plusSeconds(3600)));
        }
      }
      return all.size() == 1 ? List.of() : all;
    }

    private List<String> radio() {
      List<String> all = new ArrayList<>();
      for (Instant time : WorkedPassage.hours(plan)) {
        all.add(late(time) + " " + place(plan.route().at(time)));
        all.add(plan.radioPosition(time).text());
      }
      return all;
    }

    private List<String> drift() {
      List<String> all = new ArrayList<>(List.of("10, 20, 30 min without paddling"));
      plan.drifts()
          .forEach(
              (time, places) -> {
                List<String> away = new ArrayList<>();
                for (int i = 1; i <= 3; i++) {
                  away.add(i < places.size() ? away(places.get(0), places.get(i)) : "__");
                }
                all.add(late(time) + " " + String.join(", ", away));
              });
      return all.size() == 1 ? List.of() : all;
    }

    private static String away(Position from, Position to) {
      GeodesicLeg leg = GeodesicLeg.between(from, to);
      return leg.length().metres() < 9.26 // a twentieth of a cable of 185.2 m
          ? "stays"
          : three(leg.initialCourse().degrees())
              + "T "
              + tenths(leg.length().metres() / 1852.0, RoundingMode.CEILING)
              + " NM";
    }

    /** The landings with their levels, then those in reach from each time. */
    private List<String> landings() {
      List<String> all = new ArrayList<>();
      List<Instant> passed = new ArrayList<>(List.of(plan.departure()));
      plan.legs().forEach(leg -> passed.add(leg.arrival()));
      for (int i = 0; i < passage.wayPoints().size(); i++) {
        WayPoint place = passage.wayPoints().get(i);
        Instant when = passed.get(i);
        place.landing().ifPresent(landing -> all.add(works(place, landing, when)));
      }
      for (WayPoint refuge : passage.refuges()) {
        refuge.landing().ifPresent(it -> all.add(refuge.name() + ": " + levels(it) + sector(it)));
      }
      for (Instant time : WorkedPassage.hours(plan)) {
        if (time.getEpochSecond() % 3600 == 0 || time.equals(plan.departure())) {
          List<LandingInReach> reach = LandingInReach.from(plan, time);
          if (!reach.isEmpty()) {
            all.add("LANDINGS from " + late(time));
          }
          reach.forEach(it -> all.add(String.join("", reached(time, it, true))));
        }
      }
      return all;
    }

    private String works(WayPoint place, Landing landing, Instant when) {
      String then = "";
      if (landing.port().isPresent()) {
        double metres =
            passage.levels().get(landing.port().get()).heightAt(when).orElseThrow().metres();
        boolean low =
            metres - landing.lowest().orElseThrow().metres()
                <= landing.highest().orElseThrow().metres() - metres; // the nearer end
        then = ", then " + tenths(metres, low ? RoundingMode.FLOOR : RoundingMode.CEILING) + " m";
      }
      return place.name() + ": " + levels(landing) + then + sector(landing);
    }

    private static String levels(Landing landing) {
      return landing
          .port()
          .map(
              port ->
                  "works "
                      + tenths(landing.lowest().orElseThrow().metres(), RoundingMode.CEILING)
                      + " to "
                      + tenths(landing.highest().orElseThrow().metres(), RoundingMode.FLOOR)
                      + " m "
                      + port)
          .orElse("at any level");
    }

    private static String sector(Landing landing) {
      return landing.openFrom().isEmpty()
          ? ""
          : ", open "
              + three(landing.openFrom().get().degrees())
              + " to "
              + three(landing.openUntil().orElseThrow().degrees())
              + " true";
    }

    /** A landing in reach as the card words it, or as the cells of the page. */
    private List<String> reached(Instant time, LandingInReach one, boolean card) {
      String name = one.place().name();
      PlannedLeg now = plan.legs().get(0);
      for (PlannedLeg leg : plan.legs()) {
        now = leg.departure().isAfter(time) ? now : leg;
      }
      if (!one.isUsable()) {
        String why = one.ruledOutBy().map(it -> worked.printed().about(it.note())).orElse("");
        return card ? List.of(name + ": no, " + why) : List.of(late(time), name, "no", why, "");
      }
      if (one.isAt(plan.route().at(time))) {
        return card ? List.of(name + ": here") : List.of(late(time), name, "here", "", "");
      }
      double degrees = one.heading().orElseThrow().degrees();
      String steer = heading(now, degrees, "");
      String there = one.arrival().map(this::late).orElse("__:__");
      String slower = one.slowerArrival().map(this::late).orElse("__:__");
      return card
          ? List.of(name + " steer " + steer + ", there " + there + ", slower " + slower)
          : List.of(late(time), name, steer, there, slower);
    }

    /** The way home anew, from the outer way point back leg by leg. */
    private List<String> wayHome() {
      List<String> all = new ArrayList<>();
      if (worked.wayHome().isEmpty()) {
        return all;
      }
      List<TurnTimes> turns = worked.wayHome().get().turns();
      for (int i = 0; i < turns.size(); i++) {
        TurnTimes turn = turns.get(i);
        String name = turn.wayPoint().name();
        all.add(
            turn.notLaterThan()
                .map(time -> name + ", on until " + early(time))
                .orElseGet(
                    () ->
                        name
                            + ", NOT ON: "
                            + worked
                                .printed()
                                .about(turn.goingOnBarred().values().iterator().next())));
        if (i > 0) {
          for (Window window : turn.home()) {
            all.add(home(i, ceiling(window.from())));
            all.add(home(i, window.until().truncatedTo(ChronoUnit.MINUTES)));
          }
          turn.homeBarred()
              .forEach(
                  (span, why) ->
                      all.add(
                          "no way home "
                              + early(span.from())
                              + "-"
                              + late(span.until())
                              + ": "
                              + worked.printed().about(why)));
        }
      }
      return all;
    }

    private String home(int from, Instant leaving) {
      WayPoint outer = passage.wayPoints().get(from);
      PassageBuilder back =
          Passage.builder("home", zone, passage.party())
              .from(WayPoint.of(outer.name(), outer.position()));
      for (int i = from - 1; i >= 0; i--) {
        WayPoint next = passage.wayPoints().get(i);
        back.to(WayPoint.of(next.name(), next.position()), passage.legs().get(i).options());
      }
      back.stream(passage.stream());
      passage.wind().ifPresent(back::wind);
      TimedPlan solved = TimedPlan.of(back.build(), leaving).solved().orElseThrow();
      List<String> headings = new ArrayList<>();
      for (int i = 0; i < solved.legs().size(); i++) {
        PlannedLeg out = plan.legs().get(from - 1 - i); // whose variation is that of the place
        headings.add(heading(out, solved.legs().get(i).heading().degrees(), ""));
      }
      return "home, leaving "
          + early(leaving)
          + " steer "
          + String.join(" ", headings)
          + " there "
          + late(solved.arrival());
    }

    private List<String> checks() {
      List<String> all = new ArrayList<>();
      for (Verdict verdict : plan.verdicts()) {
        String word =
            switch (verdict.answer()) {
              case WARNED -> "WARNING ";
              case STOPPED -> "STOP ";
              case NOT_CHECKED -> "NOT CHECKED ";
              case WITHIN -> "";
            };
        all.add(
            word
                + worked.printed().say(verdict)
                + verdict.when().map(time -> ", at " + early(time)).orElse("")
                + verdict.where().map(it -> ", near " + place(it)).orElse(""));
      }
      return all;
    }

    private List<List<String>> landingsOfPage() {
      List<List<String>> all = new ArrayList<>();
      for (Instant time : WorkedPassage.hours(plan)) {
        LandingInReach.from(plan, time).forEach(it -> all.add(reached(time, it, false)));
      }
      return all;
    }

    private List<List<String>> whatIfs() {
      List<List<String>> all = new ArrayList<>();
      for (Variant variant : Variant.sideBySide(passage, plan.departure())) {
        all.add(
            variant
                .outcome()
                .match(
                    it -> List.of(variant.name(), late(it.arrival()), worst(it.worst())),
                    why ->
                        List.of(variant.name(), "not possible", worked.printed().say(why.note()))));
      }
      return all;
    }

    private String worst(Optional<Verdict> worst) {
      return worst
          .map(
              it ->
                  switch (it.answer()) {
                    case WITHIN -> "all checks hold";
                    case WARNED -> "WARNING: " + worked.printed().say(it);
                    case STOPPED -> "STOP: " + worked.printed().say(it);
                    case NOT_CHECKED -> "NOT CHECKED: " + worked.printed().say(it);
                  })
          .orElse("nothing was checked");
    }

    /** The cells of the table whose caption begins so; none where there is no such table. */
    private static List<List<String>> rows(Document page, String caption) {
      List<List<String>> all = new ArrayList<>();
      NodeList tables = page.getElementsByTagName("table");
      for (int i = 0; i < tables.getLength(); i++) {
        Element table = (Element) tables.item(i);
        if (table.getElementsByTagName("caption").item(0).getTextContent().startsWith(caption)) {
          NodeList rows = table.getElementsByTagName("tr");
          for (int row = 1; row < rows.getLength(); row++) {
            List<String> cells = new ArrayList<>();
            for (Node it = rows.item(row).getFirstChild(); it != null; it = it.getNextSibling()) {
              if (it instanceof Element) {
                cells.add(it.getTextContent().replaceAll("[\u2068\u2069]", ""));
              }
            }
            all.add(cells);
          }
        }
      }
      return all;
    }

    private static String heading(PlannedLeg leg, double degrees, String unknown) {
      return leg.variation()
          .map(it -> three(degrees - it.variation().degreesEast()))
          .orElse(unknown.isEmpty() ? three(degrees) + "T" : unknown);
    }

    private static String three(double degrees) {
      return Long.toString(Math.floorMod((long) Math.floor(degrees + 0.5), 360L) + 1000L)
              .substring(1)
          + "°";
    }

    /** A figure that is a tenth but for the noise of its arithmetic is that tenth. */
    private static String tenths(double value, RoundingMode side) {
      BigDecimal clean = BigDecimal.valueOf(value).setScale(9, RoundingMode.HALF_EVEN);
      return clean.setScale(1, side).toPlainString();
    }

    private static String place(Position place) {
      return minutes(place.latitudeDegrees(), 2, "N", "S")
          + " "
          + minutes(place.longitudeDegrees(), 3, "E", "W");
    }

    private static String minutes(double degrees, int figures, String up, String down) {
      long tenths = Math.round(Math.abs(degrees) * 600.0);
      String whole = Long.toString(1000 + tenths / 600).substring(4 - figures);
      String minutes = Long.toString(1000 + tenths % 600).substring(1);
      return whole
          + "°"
          + minutes.substring(0, 2)
          + "."
          + minutes.substring(2)
          + "'"
          + (degrees < 0 ? down : up);
    }

    private static Instant ceiling(Instant time) {
      return time.plus(1, ChronoUnit.MINUTES).minusNanos(1).truncatedTo(ChronoUnit.MINUTES);
    }

    private String late(Instant time) {
      return clock(ceiling(time));
    }

    private String early(Instant time) {
      return clock(time.truncatedTo(ChronoUnit.MINUTES));
    }

    private String clock(Instant minute) {
      ZonedDateTime local = minute.atZone(zone);
      long days = local.toLocalDate().toEpochDay() - day.toEpochDay();
      return local.toLocalTime() + (days == 0 ? "" : days > 0 ? "+" + days : "" + days);
    }
  }
}
