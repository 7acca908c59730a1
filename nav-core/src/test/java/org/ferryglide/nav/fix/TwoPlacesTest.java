package org.ferryglide.nav.fix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

/** Lines that meet twice, and lines that hardly meet. */
class TwoPlacesTest {
  private static final Position HERE = Position.ofDegrees(56.3, -5.6);
  private static final double ONE_METRE = 1.0;

  private static double metres(Position a, Position b) {
    return GeodesicLeg.between(a, b).length().metres();
  }

  private static Position off(Position from, double bearing, double miles) {
    return GeodesicLeg.from(from, TrueBearing.ofDegrees(bearing), Distance.ofNauticalMiles(miles))
        .end();
  }

  private static DistanceCircle circle(Position mark, double metres, double sigma) {
    return DistanceCircle.of("circle", mark, Distance.ofMetres(metres), Distance.ofMetres(sigma));
  }

  private static NoFix.Reason reason(List<? extends PositionLine> lines) {
    return FixSolver.standard().solve(lines).why().orElseThrow().reason();
  }

  /** A bearing and the distance of another mark: two places, seven miles apart, as good. */
  @Test
  void aBearingAndTheDistanceOfAnotherMarkAskWhichPlace() {
    List<PositionLine> lines =
        List.of(
            BearingLine.of("point", Position.ofDegrees(56.35, -5.37), TrueBearing.ofDegrees(40), 3),
            circle(Position.ofDegrees(56.26, -5.56), 4 * 1852, 150));
    NoFix why = FixSolver.standard().solve(lines).why().orElseThrow();
    assertEquals(NoFix.Reason.NO_ROUGH_POSITION, why.reason());
    assertTrue(why.message().startsWith("these lines meet in two places, "), why.message());
    List<Fix> both = FixSolver.standard().places(lines);
    assertEquals(2, both.size());
    Position north = Position.ofDegrees(56.2930, -5.4562);
    Position south = Position.ofDegrees(56.1975, -5.6008);
    for (Position place : List.of(north, south)) {
      Fix fix = FixSolver.standard().withNear(off(place, 20, 1)).solve(lines).orElseThrow();
      assertEquals(0.0, metres(place, fix.position()), 10.0); // the places are to 0.0001 degree
      assertTrue(both.stream().anyMatch(f -> metres(f.position(), fix.position()) < ONE_METRE));
      assertEquals(List.of("fix.two-places"), fix.notes().stream().map(Note::code).toList());
    }
  }

  /** From wherever on the line through both marks the search begins, it finds the place. */
  @Test
  void roughPositionsOnTheLineThroughTheMarksFindThePlaceToo() {
    Position a = off(HERE, 45, 2);
    Position b = off(HERE, 135, 2);
    List<PositionLine> circles =
        List.of(circle(a, metres(HERE, a), 50), circle(b, metres(HERE, b), 50));
    Position axis = off(a, 180, 1.414);
    for (int i = -50; i <= 50; i++) {
      Position rough = off(axis, i < 0 ? 0 : 180, 0.1 * Math.abs(i));
      Outcome<Fix, NoFix> fix = FixSolver.standard().withNear(rough).solve(circles);
      assertTrue(fix.isSolved(), fix + " from " + rough);
      Position beside = off(rough, 270, 0.05);
      Fix west = FixSolver.standard().withNear(beside).solve(circles).orElseThrow();
      assertEquals(0.0, metres(HERE, west.position()), ONE_METRE);
    }
  }

  /** Three lines agree best in one place, wherever the search begins. */
  @Test
  void theRoughPositionHasNoWeight() {
    Random random = new Random(5);
    for (int i = 0; i < 100; i++) {
      double first = 360 * random.nextDouble();
      Position a = off(HERE, first, 1 + 2 * random.nextDouble());
      Position b = off(HERE, first + 60 + 60 * random.nextDouble(), 1 + 2 * random.nextDouble());
      Position c = off(HERE, first + 200, 3);
      List<PositionLine> lines =
          List.of(
              circle(a, metres(HERE, a) + 40 * random.nextGaussian(), 50),
              circle(b, metres(HERE, b) + 40 * random.nextGaussian(), 50),
              BearingLine.of(
                  "c",
                  c,
                  GeodesicLeg.between(HERE, c).initialCourse().turnedBy(random.nextGaussian()),
                  2));
      Fix best = FixSolver.standard().solve(lines).orElseThrow();
      for (int k = 0; k < 5; k++) {
        Position rough = off(HERE, 360 * random.nextDouble(), 10 * random.nextDouble());
        Fix fix = FixSolver.standard().withNear(rough).solve(lines).orElseThrow();
        assertEquals(0.0, metres(best.position(), fix.position()), 0.01);
      }
    }
  }

  @Test
  void straightLinesThatCrossBeyondAPoleAreAnAnswer() {
    Position a = Position.ofDegrees(56.216, -5.725);
    List<BearingLine> first =
        List.of(
            BearingLine.of("a", a, TrueBearing.ofDegrees(93), 3),
            BearingLine.of("b", a, TrueBearing.ofDegrees(280.3), 3),
            BearingLine.of("c", Position.ofDegrees(56.251, -5.578), TrueBearing.ofDegrees(9.8), 3));
    List<BearingLine> second =
        List.of(
            BearingLine.of("a", Position.ofDegrees(56.06, -5.95), TrueBearing.ofDegrees(119), 3),
            BearingLine.of("b", Position.ofDegrees(56.15, -5.72), TrueBearing.ofDegrees(129), 3),
            BearingLine.of("c", Position.ofDegrees(56.08, -5.85), TrueBearing.ofDegrees(235), 3));
    for (List<BearingLine> lines : List.of(first, second)) {
      assertNotNull(FixSolver.standard().solve(lines).solved().flatMap(Fix::cockedHat));
      BlunderSearch.standard().look(FixSolver.standard(), lines);
    }
    Random random = new Random(8);
    for (int i = 0; i < 2000; i++) { // the second to the nearest degree of many that were as bad
      Position b = off(a, 360 * random.nextDouble(), 1);
      List<BearingLine> nearlyParallel =
          List.of(
              BearingLine.of("a", a, TrueBearing.ofDegrees(90 + random.nextGaussian()), 3),
              BearingLine.of("b", b, TrueBearing.ofDegrees(90 + random.nextGaussian()), 3),
              BearingLine.of("c", HERE, TrueBearing.ofDegrees(360 * random.nextDouble()), 3));
      BlunderSearch.standard().look(FixSolver.standard(), nearlyParallel);
    }
  }

  @Test
  void honestNoiseOnTheLineOfTheMarksIsNoReversedBearing() {
    Position near = off(HERE, 90, 2);
    Position far = off(HERE, 90, 5);
    List<BearingLine> turnedApart =
        List.of(
            BearingLine.of("near", near, TrueBearing.ofDegrees(92), 3),
            BearingLine.of("far", far, TrueBearing.ofDegrees(88), 3),
            BearingLine.of("beside", off(far, 0, 0.05), TrueBearing.ofDegrees(91), 3));
    for (List<BearingLine> lines :
        List.of(turnedApart.subList(0, 2), turnedApart.subList(1, 3), turnedApart)) {
      NoFix.Reason reason = reason(lines);
      assertTrue(
          reason == NoFix.Reason.UNBOUNDED || reason == NoFix.Reason.PARALLEL, reason.toString());
    }
  }

  @Test
  void theSameMarkTwiceIsToldSo() {
    Position mark = off(HERE, 90, 2);
    List<BearingLine> lines =
        List.of(
            BearingLine.of("mark", mark, TrueBearing.ofDegrees(92), 3),
            BearingLine.of("mark", mark, TrueBearing.ofDegrees(88), 3));
    assertEquals(NoFix.Reason.PARALLEL, reason(lines));
    assertEquals(
        "bearings of one mark alone cross nowhere but at the mark itself",
        FixSolver.standard().solve(lines).why().orElseThrow().message());
  }

  @Test
  void circlesThatJustFailToTouchNeverCross() {
    Position other = off(HERE, 90, 3);
    assertEquals(
        NoFix.Reason.PARALLEL,
        reason(List.of(circle(HERE, 1852, 100), circle(other, 2 * 1852 - 100, 100))));
    assertEquals(
        NoFix.Reason.PARALLEL, reason(List.of(circle(HERE, 1852, 100), circle(other, 1852, 100))));
  }

  /** Lines that would have the observer stand on a mark, where its bearing is anything. */
  @Test
  void aSolutionOnAMarkIsNoFix() {
    List<BearingLine> lines =
        List.of(
            bearing(56.16970912614914, -5.736571457016162, 126.35023693266974),
            bearing(56.17956555346353, -5.760789810303346, 140.84706344331212),
            bearing(56.1658062282478, -5.739903236450767, 136.20629882557557));
    assertEquals(NoFix.Reason.UNBOUNDED, reason(lines));
    assertEquals(List.of(), FixSolver.standard().places(lines));
  }

  private static BearingLine bearing(double lat, double lon, double degrees) {
    return BearingLine.of("m", Position.ofDegrees(lat, lon), TrueBearing.ofDegrees(degrees), 5);
  }

  @Test
  void aTransitSeenFromBehindIsNoted() {
    Position rear = off(HERE, 30, 1);
    Position front = off(HERE, 30, 2); // called the front one, but further off
    Position mark = off(HERE, 120, 2);
    Fix fix =
        FixSolver.standard()
            .solve(
                List.of(
                    TransitLine.of("leading marks", front, rear),
                    BearingLine.of("m", mark, GeodesicLeg.between(HERE, mark).initialCourse(), 2)))
            .orElseThrow();
    assertEquals(List.of("fix.transit-behind"), fix.notes().stream().map(Note::code).toList());
  }
}
