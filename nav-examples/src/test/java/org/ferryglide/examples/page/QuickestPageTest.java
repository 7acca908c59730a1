package org.ferryglide.examples.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.nav.passage.Danger;
import org.ferryglide.nav.passage.LegOptions;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageLimits;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.steer.TrackPoint;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class QuickestPageTest {
  private static final Duration EACH = Duration.ofMinutes(15);

  /** In a uniform stream: measured are 0.7 s out and 1.4 s back, 0.04 % of the time. */
  private static final double SECONDS = 3.0;

  private static final Danger RACE =
      Danger.area(
          "Race",
          List.of(
              Position.parse("46°10.4'N 026°18.2'W"),
              Position.parse("46°12.6'N 026°17.6'W"),
              Position.parse("46°10.8'N 026°16.8'W")),
          Distance.ofMetres(50));

  private static final QuickestLeg ONE = of(PageScenes.oneLeg());

  private static QuickestLeg of(Passage passage) {
    return QuickestLeg.of(passage, PageScenes.NOON, 1, EACH, 2).orElseThrow();
  }

  private static String page(QuickestLeg leg, Instant latest) {
    return QuickestPage.of(leg, latest, Units.NAUTICAL, Labels.english()).html();
  }

  @Test
  void thePageIsWellFormedAndSaysFirstThatItIsNoDefault() throws Exception {
    QuickestLeg leg = ONE;
    Document page = PassagePageTest.parsed(page(leg, leg.planned()));
    Element first = (Element) page.getElementsByTagName("p").item(0);
    assertTrue(first.getTextContent().startsWith("Never a default: "), first.getTextContent());
    Element picture = (Element) page.getElementsByTagName("svg").item(0);
    assertEquals("img", picture.getAttribute("role"));
    Element told = (Element) picture.getElementsByTagName("desc").item(0);
    assertTrue(told.getTextContent().contains("Not a chart"), told.getTextContent());
    assertTrue(told.getTextContent().contains("Lines reached at "), told.getTextContent());
    assertTrue(told.getTextContent().contains("can still be made by "), told.getTextContent());
    Element last = (Element) page.getElementsByTagName("footer").item(0);
    assertTrue(last.getTextContent().contains("advice of the coastguard come first"));
  }

  @Test
  void theLinesPassTheEndsWhenTheWayDoes() {
    QuickestLeg leg = ONE;
    SteeredLeg best = leg.ways().get(0).path();
    CourseToSteer solver =
        CourseToSteer.with(leg.plan().passage().party().craft(), leg.plan().passage().stream());
    for (QuickestLeg.Line line : leg.forward(best.arrival())) {
      for (Position corner : corners(line)) {
        SteeredLeg there =
            solver
                .solve(RhumbLeg.between(best.leg().start(), corner), leg.leg().departure())
                .orElseThrow();
        assertEquals(0.0, seconds(line.time(), there.arrival()), SECONDS);
      }
    }
    Instant latest = best.arrival().plusSeconds(600);
    for (QuickestLeg.Line line : leg.back(best.leg().end(), latest)) {
      for (Position corner : corners(line)) {
        SteeredLeg home =
            solver.solve(RhumbLeg.between(corner, best.leg().end()), line.time()).orElseThrow();
        assertEquals(0.0, seconds(latest, home.arrival()), SECONDS);
      }
    }
  }

  /** Every fifth. */
  private static List<Position> corners(QuickestLeg.Line line) {
    List<Position> corners = new ArrayList<>();
    line.outlines().forEach(outline -> corners.addAll(outline));
    assertFalse(corners.isEmpty(), line.time().toString());
    return IntStream.range(0, corners.size() / 5 + 1)
        .mapToObj(i -> corners.get(Math.min(5 * i, corners.size() - 1)))
        .toList();
  }

  private static double seconds(Instant from, Instant until) {
    return Duration.between(from, until).toMillis() / 1e3;
  }

  @Test
  void theWaysKeepOutOfTheDangersOfThePassage() {
    Passage passage = PageScenes.oneLeg().toBuilder().dangers(List.of(RACE)).build();
    QuickestLeg leg = of(passage);
    for (QuickestLeg.Way way : leg.ways()) {
      for (TrackPoint point : way.path().groundTrack().pointsEvery(1.0)) {
        double off = metresOffRace(point.position());
        assertTrue(off >= 50.0, point + " is " + off + " m off");
      }
    }
    assertTrue(leg.ways().get(0).greatestStreamAt().isPresent());
    String html = page(leg, leg.planned());
    assertTrue(html.contains("greatest stream 1.4 kn"), html);
    assertTrue(html.contains(">Race<"), html);
    assertTrue(html.contains("Steering in these steps costs "), html);
  }

  /** In a plane whose scales are those of the race: 1852 m a minute, to 0.3 % on a sphere. */
  private static double metresOffRace(Position place) {
    double nearest = isInRace(place) ? 0.0 : Double.POSITIVE_INFINITY;
    List<Position> corners = RACE.outline();
    double shrink = Math.cos(Math.toRadians(corners.get(0).latitudeDegrees()));
    for (int i = 0; i < 3; i++) {
      Position from = corners.get(i);
      Position to = corners.get((i + 1) % 3);
      double alongEast = (to.longitudeDegrees() - from.longitudeDegrees()) * shrink;
      double alongNorth = to.latitudeDegrees() - from.latitudeDegrees();
      double east = (place.longitudeDegrees() - from.longitudeDegrees()) * shrink;
      double north = place.latitudeDegrees() - from.latitudeDegrees();
      double square = alongEast * alongEast + alongNorth * alongNorth;
      double share = Math.max(0.0, Math.min(1.0, (east * alongEast + north * alongNorth) / square));
      double off = Math.hypot(east - share * alongEast, north - share * alongNorth);
      nearest = Math.min(nearest, off * 60.0 * 1852.0);
    }
    return nearest;
  }

  /** Which side of each edge it lies on, in the plane of latitude and longitude. */
  private static boolean isInRace(Position place) {
    boolean right = true;
    boolean left = true;
    List<Position> corners = RACE.outline();
    for (int i = 0; i < 3; i++) {
      Position a = corners.get(i);
      Position b = corners.get((i + 1) % 3);
      double turn =
          (b.longitudeDegrees() - a.longitudeDegrees())
                  * (place.latitudeDegrees() - a.latitudeDegrees())
              - (b.latitudeDegrees() - a.latitudeDegrees())
                  * (place.longitudeDegrees() - a.longitudeDegrees());
      right &= turn <= 0.0;
      left &= turn >= 0.0;
    }
    return right || left;
  }

  /** What the folder's {@code quickest round} goes round is gone round here too. */
  @Test
  void theWaysGoRoundTheObstaclesOfTheLeg() {
    LegOptions round =
        LegOptions.usual().withStrategy(Strategy.quickestAround(List.of(RACE.outline())));
    Passage open = PageScenes.oneLeg();
    assertTrue(cuts(ONE.ways().get(0)), "it lies on the way");
    for (QuickestLeg.Way way : of(open.withLegOptions(1, round)).ways()) {
      assertFalse(cuts(way), way.path().arrival().toString());
    }
  }

  private static boolean cuts(QuickestLeg.Way way) {
    return way.path().groundTrack().pointsEvery(1.0).stream()
        .anyMatch(point -> isInRace(point.position()));
  }

  /** The plan that is held against the checks goes the first way, and the legs behind it follow. */
  @Test
  void thePlanGoesTheFirstWay() {
    QuickestLeg leg = of(PageScenes.aStop());
    assertEquals(leg.ways().get(0).path().arrival(), leg.leg().arrival());
    assertEquals(2, leg.plan().legs().size());
    assertTrue(leg.plan().legs().get(0).steered().strategy().isQuickest());
    assertFalse(leg.plan().legs().get(1).steered().strategy().isQuickest());
  }

  @Test
  void linesAreThoseOfTheRoundTimesOfTheClockUpToTheBegunMinuteAsked() throws Exception {
    QuickestLeg leg = ONE;
    Instant asked = PageScenes.NOON.plusSeconds(2 * 3600 + 59); // 15:00:59 by the party's clock
    assertEquals(
        List.of("13:15", "13:30", "13:45", "14:00"),
        found(page(leg, asked), "Lines reached at ([0-9:, ]+)"));
    assertEquals(
        List.of("14:40", "14:20", "14:00", "13:40", "13:20", "13:00"),
        found(page(leg, asked), "Skerry can still be made by 15:00, leaving at ([0-9:, ]+)"));
  }

  /** Where to turn: the water reached by a time from which the start is still made. */
  @Test
  void linesBackToTheStartHaveTheTimesOfThoseOut() throws Exception {
    QuickestLeg leg = ONE;
    String html =
        QuickestPage.of(leg, PageScenes.NOON.plusSeconds(3600), Units.NAUTICAL, Labels.english())
            .backTo(leg.leg().leg().from())
            .html();
    assertEquals(
        List.of("13:10", "13:20", "13:30", "13:40", "13:50", "14:00"),
        found(html, "Lines reached at ([0-9:, ]+)"));
    assertEquals(
        List.of("13:50", "13:40", "13:30", "13:20", "13:10", "13:00"),
        found(html, "Slip can still be made by 14:00, leaving at ([0-9:, ]+)"));
  }

  private static List<String> found(String html, String pattern) throws Exception {
    Document page = PassagePageTest.parsed(html);
    String told = page.getElementsByTagName("desc").item(0).getTextContent();
    Matcher times = Pattern.compile(pattern).matcher(told);
    assertTrue(times.find(), told);
    return List.of(times.group(1).split(", ", -1));
  }

  /** What no way is kept out of is told: here a limit that no way of the passage keeps. */
  @Test
  void whatDoesNotHoldByTheFirstWayStandsAtTheTop() throws Exception {
    Passage passage =
        PageScenes.oneLeg().toBuilder()
            .limits(
                PassageLimits.none()
                    .withTimeAfloat(Duration.ofMinutes(5), Duration.ofMinutes(20))
                    .withDaylight(Duration.ofHours(1), Duration.ofMinutes(30)))
            .build();
    Document page = PassagePageTest.parsed(page(of(passage), PageScenes.NOON.plusSeconds(7200)));
    String top = page.getElementsByTagName("header").item(0).getTextContent();
    assertTrue(top.contains("not checked: "), top);
    assertTrue(top.contains("dangers"), top);
    assertTrue(top.contains("STOP time afloat"), top);
    assertFalse(top.contains("nothing"), top);
  }

  /** A rock outside the frame is drawn where the distance to keep from it reaches in. */
  @Test
  void aDangerIsDrawnWhereItsDistanceToKeepReachesTheFrame() {
    Position rock = Position.parse("46°05.0'N 026°17.0'W");
    for (int metres : new int[] {10, 3000}) {
      Passage passage =
          PageScenes.oneLeg().toBuilder()
              .dangers(List.of(Danger.point("Near", rock, Distance.ofMetres(metres))))
              .build();
      QuickestLeg leg = of(passage);
      assertEquals(metres == 3000, page(leg, leg.planned()).contains(">Near<"), metres + " m");
    }
  }

  @Test
  void aNameOutsideTheFrameIsNotDrawn() {
    Danger far = Danger.point("Far", Position.parse("47°N 26°W"), Distance.ofMetres(100));
    Passage passage = PageScenes.oneLeg().toBuilder().dangers(List.of(far)).build();
    QuickestLeg leg = of(passage);
    assertFalse(page(leg, leg.planned()).contains(">Far<"));
  }

  @Test
  void aLegThatThePassageHasNotIsRefused() {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () -> QuickestLeg.of(PageScenes.oneLeg(), PageScenes.NOON, 2, EACH, 1));
    assertEquals("leg must be in [1, 1], but was 2", refused.getMessage());
  }
}
