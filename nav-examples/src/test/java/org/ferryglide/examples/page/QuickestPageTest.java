package org.ferryglide.examples.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.nav.passage.Danger;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.TrackPoint;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class QuickestPageTest {
  private static final Duration EACH = Duration.ofMinutes(15);

  /** Lines are late by 0.04 % of the time in a uniform stream; half a minute is ample. */
  private static final double SECONDS = 30.0;

  private static final Danger RACE =
      Danger.area(
          "Race",
          List.of(
              Position.parse("46°10.4'N 026°18.2'W"),
              Position.parse("46°12.6'N 026°17.6'W"),
              Position.parse("46°10.8'N 026°16.8'W")),
          Distance.ofMetres(50));

  private static QuickestLeg of(Passage passage) {
    return QuickestLeg.of(passage, PageScenes.NOON, 1, EACH, 2).orElseThrow();
  }

  private static String page(QuickestLeg leg, Instant latest) {
    return QuickestPage.of(leg, latest, Units.NAUTICAL, Labels.english()).html();
  }

  @Test
  void thePageIsWellFormedAndSaysFirstThatItIsNoDefault() throws Exception {
    QuickestLeg leg = of(PageScenes.oneLeg());
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
    QuickestLeg leg = of(PageScenes.oneLeg());
    SteeredLeg best = leg.ways().get(0).path();
    CourseToSteer solver =
        CourseToSteer.with(leg.passage().party().craft(), leg.passage().stream());
    for (QuickestLeg.Line line : leg.forward()) {
      assertFalse(line.outlines().isEmpty(), line.time().toString());
      Position corner = line.outlines().get(0).get(0);
      SteeredLeg there =
          solver
              .solve(RhumbLeg.between(best.leg().start(), corner), leg.leg().departure())
              .orElseThrow();
      assertEquals(0.0, seconds(line.time(), there.arrival()), SECONDS);
    }
    Instant latest = best.arrival().plusSeconds(600);
    for (QuickestLeg.Line line : leg.back(latest)) {
      Position corner = line.outlines().get(0).get(0);
      SteeredLeg home =
          solver.solve(RhumbLeg.between(corner, best.leg().end()), line.time()).orElseThrow();
      assertEquals(0.0, seconds(latest, home.arrival()), SECONDS);
    }
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
        assertFalse(isInRace(point.position()), point.toString());
      }
    }
    assertTrue(leg.ways().get(0).greatestStreamAt().isPresent());
    String html = page(leg, leg.planned());
    assertTrue(html.contains("greatest stream 1.4 kn"), html);
    assertTrue(html.contains(">Race<"), html);
    assertTrue(html.contains("Steering in these steps costs "), html);
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
