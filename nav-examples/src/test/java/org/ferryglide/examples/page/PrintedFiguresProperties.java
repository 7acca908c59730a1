package org.ferryglide.examples.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.passage.DeckCard;
import org.ferryglide.nav.passage.Landing;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageBuilder;
import org.ferryglide.nav.passage.PlannedHour;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.Stop;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Every figure printed of random plans against the plan's exact one: on the side that is worse for
 * its own check, and by less than a step of its last digit. Nothing of the program's rounding is
 * used.
 */
class PrintedFiguresProperties {
  private static final double METRES_PER_MILE = 1852.0;
  private static final double TENTH = 0.1;

  /** A figure that is whole but for its arithmetic may be printed as it is. */
  private static final double ROUNDING = 1e-8;

  private static TimedPlan plan(Random random) {
    int legs = 1 + random.nextInt(3);
    double latitude = -60.0 + 120.0 * random.nextDouble();
    double longitude = -170.0 + 340.0 * random.nextDouble();
    PassageBuilder builder =
        Passage.builder("Random", ZoneOffset.UTC, PageScenes.party(2.5 + 2.0 * random.nextDouble()))
            .from(WayPoint.of("Place 0", Position.ofDegrees(latitude, longitude)));
    for (int leg = 1; leg <= legs; leg++) {
      double direction = 2.0 * Math.PI * random.nextDouble();
      double degrees = (1500.0 + 6000.0 * random.nextDouble()) / 111_000.0;
      latitude += degrees * Math.cos(direction);
      longitude += degrees * Math.sin(direction) / Math.cos(Math.toRadians(latitude));
      WayPoint place =
          WayPoint.of("Place " + leg, Position.ofDegrees(latitude, longitude))
              .withLanding(
                  Landing.between(
                      "Bar", Distance.ofMetres(0.3 + random.nextDouble()), Distance.ofMetres(3.2)));
      builder.to(
          random.nextInt(4) == 0 && leg < legs
              ? place.withStop(Stop.ashore(Duration.ofSeconds(900 + random.nextInt(900))))
              : place);
    }
    return TimedPlan.of(
            builder.stream(PageScenes.turning(1.5 * random.nextDouble()))
                .variation(CompassRose.parse("4°10'W 2024 (9'E)"))
                .level("Bar", PageScenes.level())
                .visibility(Distance.ofMetres(400.0 + 3000.0 * random.nextDouble()))
                .build(),
            PageScenes.NOON.plusMillis(random.nextInt(3_600_000)))
        .orElseThrow();
  }

  private static void up(String printed, double exact) {
    double over = Double.parseDouble(printed) - exact;
    assertTrue(over > -ROUNDING && over < TENTH + ROUNDING, printed + " of " + exact);
    assertEquals(1, printed.length() - printed.indexOf('.') - 1, printed);
  }

  private static void down(String printed, double exact) {
    up(printed.startsWith("-") ? printed.substring(1) : "-" + printed, -exact);
  }

  /** Seconds from a printed clock to a time, both within some hours of the plan. */
  private static double late(String clock, Instant exact) {
    long day = clock.endsWith("+1") ? 86_400L : 0L;
    Instant printed =
        Instant.parse("2026-06-14T00:00:00Z")
            .plusSeconds(LocalTime.parse(clock.substring(0, 5)).toSecondOfDay() + day);
    return Duration.between(exact, printed).toMillis() / 1000.0;
  }

  private static void isLate(String clock, Instant exact) {
    double late = late(clock, exact);
    assertTrue(late >= 0.0 && late < 60.0, clock + " of " + exact);
  }

  private static void isEarly(String clock, Instant exact) {
    double late = late(clock, exact);
    assertTrue(late <= 0.0 && late > -60.0, clock + " of " + exact);
  }

  private static List<String> found(String pattern, String text) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    assertTrue(matcher.find(), pattern + "\n" + text);
    List<String> groups = new ArrayList<>();
    for (int i = 1; i <= matcher.groupCount(); i++) {
      groups.add(matcher.group(i));
    }
    return groups;
  }

  /** All sides as one, without the heads of those after the first, each entry on one line. */
  private static String whole(List<String> sides) {
    StringBuilder all = new StringBuilder();
    for (String side : sides) {
      int head = side.indexOf("\nHW ") + 1;
      all.append(all.length() == 0 ? side : side.substring(side.indexOf('\n', head) + 1));
    }
    return all.toString().replaceAll("\\n  ", " ");
  }

  private static final String CLOCK = "([0-9]{2}:[0-9]{2}(?:\\+1)?)";

  @Property(seed = Seeds.SEED, tries = 60 * Seeds.MORE_IN_THE_SOAK)
  void theFiguresOfTheCardLieOnTheirWorseSide(@ForAll Random random) {
    TimedPlan plan = plan(random);
    double high = 3.0 + random.nextDouble();
    Instant water = PageScenes.NOON.plusMillis(random.nextInt(7_200_000));
    DeckCard card =
        DeckCard.of(plan)
            .withHighWater("Bar", water, Distance.ofMetres(high), OptionalDouble.empty());
    String further = whole(card.further());
    isEarly(found("first boat afloat " + CLOCK, further).get(0), plan.launch());
    isLate(found("last ashore " + CLOCK, further).get(0), plan.landed());
    List<String> tide = found("HW " + CLOCK + ", ([0-9.]+) m", further);
    isEarly(tide.get(0), water);
    down(tide.get(1), high);
    Instant before = plan.departure();
    for (int i = 0; i < plan.legs().size(); i++) {
      PlannedLeg leg = plan.legs().get(i);
      String side = card.afloat().get(i);
      String leave = found(" " + CLOCK + " to ", side).get(0);
      List<String> line = found("([0-9]+) min +ETA " + CLOCK, side);
      isLate(leave, leg.departure());
      isLate(line.get(1), leg.arrival());
      assertEquals(
          (late(line.get(1), before) - late(leave, before)) / 60.0,
          Double.parseDouble(line.get(0)),
          ROUNDING,
          side);
      String all = further.substring(further.indexOf(leg.leg().number() + " Place "));
      List<String> times = found("ETA " + CLOCK + " likely, " + CLOCK + " to " + CLOCK, all);
      assertEquals(line.get(1), times.get(0));
      isEarly(times.get(1), leg.earliest());
      isLate(times.get(2), leg.latest());
      offTheLine(leg, all, "at most ([0-9.]+) NM to", "on the line throughout");
      double strongest = 0.0;
      for (PlannedHour hour : leg.hours()) {
        strongest = Math.max(strongest, hour.stream().orElseThrow().rate().knots());
      }
      if (!side.contains("stream slack")) {
        String rate = found("stream to [0-9]{3}° ([0-9.]+) kn", side).get(0);
        // the strongest of all minutes, so at least that of the middles of the hours
        assertTrue(Double.parseDouble(rate) >= strongest - ROUNDING, rate + " " + strongest);
      }
      Landing landing = leg.leg().to().landing().orElseThrow();
      List<String> levels =
          found(
              leg.leg().to().name() + ": works ([0-9.]+) to ([0-9.]+) m Bar, then (-?[0-9.]+) m",
              further);
      up(levels.get(0), landing.lowest().orElseThrow().metres());
      down(levels.get(1), landing.highest().orElseThrow().metres());
      double then = PageScenes.level().heightAt(leg.arrival()).orElseThrow().metres();
      boolean nearTheLowest =
          then - landing.lowest().orElseThrow().metres()
              <= landing.highest().orElseThrow().metres() - then;
      if (nearTheLowest) {
        down(levels.get(2), then); // too little water is the danger
      } else {
        up(levels.get(2), then); // the beach covers
      }
    }
  }

  /** A track held to a millimetre has words in place of a figure. */
  private static void offTheLine(PlannedLeg leg, String text, String figure, String words) {
    double metres = Math.abs(leg.greatestCrossTrack().metres());
    if (metres < 1e-3) {
      assertTrue(text.contains(words), text);
    } else {
      up(found(figure, text).get(0), metres / METRES_PER_MILE);
    }
  }

  @Property(seed = Seeds.SEED, tries = 6 * Seeds.MORE_IN_THE_SOAK)
  void theFiguresOfThePageLieOnTheirWorseSide(@ForAll Random random) throws Exception {
    TimedPlan plan = plan(random);
    WorkedPassage worked = WorkedPassage.of(plan.passage(), plan.departure());
    var page = PassagePageTest.parsed(PassagePage.of(worked).html());
    NodeList sections = page.getElementsByTagName("section");
    int legs = 0;
    for (int i = 0; i < sections.getLength(); i++) {
      Element section = (Element) sections.item(i);
      if (section.getAttribute("class").equals("leg")) {
        leg(plan.legs().get(legs++), section);
      }
    }
    assertEquals(plan.legs().size(), legs);
    String all = page.getDocumentElement().getTextContent();
    isEarly(found("first boat afloat" + CLOCK, all).get(0), plan.launch());
    isLate(found("under way" + CLOCK, all).get(0), plan.departure());
    isLate(found("last ashore" + CLOCK, all).get(0), plan.landed());
    up(found("length of all legs([0-9.]+) NM", all).get(0), plan.length().nauticalMiles());
  }

  private static void leg(PlannedLeg leg, Element section) {
    String text = section.getTextContent();
    List<String> times =
        found("ETA" + CLOCK + " likely, " + CLOCK + " to " + CLOCK + " 95 times", text);
    isLate(times.get(0), leg.arrival());
    isEarly(times.get(1), leg.earliest());
    isLate(times.get(2), leg.latest());
    List<String> made = found("distance([0-9.]+) NM in ([0-9]+) min, ([0-9.]+) kn made good", text);
    assertEquals(
        leg.leg().leg().length().nauticalMiles(),
        Double.parseDouble(made.get(0)),
        0.5 * TENTH + ROUNDING);
    down(made.get(2), leg.speedMadeGood().knots());
    offTheLine(leg, text, "at most ([0-9.]+) NM to the", "at no time");
    double then = PageScenes.level().heightAt(leg.arrival()).orElseThrow().metres();
    down(found("tide thenBar (-?[0-9.]+) m", text).get(0), then);
    NodeList rows = section.getElementsByTagName("tr");
    for (int hour = 0; hour < leg.hours().size(); hour++) {
      NodeList cells = ((Element) rows.item(hour + 1)).getElementsByTagName("td");
      PlannedHour planned = leg.hours().get(hour);
      String stream = cells.item(2).getTextContent();
      double knots = planned.stream().orElseThrow().rate().knots();
      if (!stream.equals("slack")) {
        up(found("to [0-9]{3}° ([0-9.]+) kn", stream).get(0), knots);
      } else {
        assertTrue(knots < 0.05, stream + knots);
      }
      down(
          found("([0-9.]+) kn", cells.item(3).getTextContent()).get(0),
          planned.speedMadeGood().knots());
    }
  }
}
