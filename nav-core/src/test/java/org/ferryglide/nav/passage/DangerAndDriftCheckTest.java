package org.ferryglide.nav.passage;

import static org.ferryglide.nav.timing.Verdict.Answer.NOT_CHECKED;
import static org.ferryglide.nav.timing.Verdict.Answer.STOPPED;
import static org.ferryglide.nav.timing.Verdict.Answer.WARNED;
import static org.ferryglide.nav.timing.Verdict.Answer.WITHIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.WaterLevel;
import org.junit.jupiter.api.Test;

/** Dangers with every kind of closing, and drift onto them: within, beyond, and not checked. */
class DangerAndDriftCheckTest {
  /**
   * Metres of a degree of longitude at 46.05° on WGS84, by the series of the American Practical
   * Navigator.
   */
  private static final double METRES_EAST =
      111_412.84 * Math.cos(Math.toRadians(46.05))
          - 93.5 * Math.cos(Math.toRadians(3 * 46.05))
          + 0.118 * Math.cos(Math.toRadians(5 * 46.05));

  private static final String LAND_DOWN_WIND = "land down wind";

  /** Plane of the danger against the ellipsoid over some hundred metres. */
  private static final double METRES = 0.5;

  private static final Danger NEAR =
      Danger.point("Fang Rock", Position.ofDegrees(46.05, -26.0), Distance.ofMetres(200));

  /** North along 26°W past the rock, half way at about 12:48. */
  private static PassageBuilder past(Danger danger) {
    return past(danger, 0.0);
  }

  private static PassageBuilder past(Danger danger, double metresEast) {
    double longitude = -26.0 + metresEast / METRES_EAST;
    return Passage.builder("past", ZoneOffset.UTC, Scenes.party(4))
        .from(WayPoint.of("South", Position.ofDegrees(46.0, longitude)))
        .to(WayPoint.of("North", Position.ofDegrees(46.1, longitude)))
        .stream(Told.stream(0, 0))
        .errors(ErrorModel.none())
        .dangers(List.of(danger));
  }

  @Test
  void theDistanceToKeepIsMeasuredFromTheWay() {
    double[] off = {310, 290, 190};
    Verdict.Answer[] answers = {WITHIN, WARNED, STOPPED};
    for (int i = 0; i < off.length; i++) {
      Verdict verdict = Told.of(past(NEAR, off[i]), Scenes.NOON, "Fang Rock");
      assertEquals(answers[i], verdict.answer());
      assertEquals(off[i] - 200.0, verdict.figure().orElseThrow(), METRES);
    }
  }

  @Test
  void theErrorOfThePlaceNarrowsTheClearance() {
    Verdict sure = Told.of(past(NEAR, 800), Scenes.NOON, "Fang Rock");
    PassageBuilder unsure = past(NEAR, 800).errors(ErrorModel.usual());
    Verdict wide = Told.of(unsure, Scenes.NOON, "Fang Rock");
    assertTrue(wide.figure().orElseThrow() < sure.figure().orElseThrow() - 50.0);
  }

  @Test
  void everyKindOfClosingOpensAndClosesAndMayBeUnknown() {
    Instant pass = Scenes.NOON.plus(Duration.ofMinutes(45));
    TimeSpan then = TimeSpan.of(pass.minusSeconds(900), pass.plusSeconds(900));
    TimeSpan later = TimeSpan.of(pass.plusSeconds(7200), pass.plusSeconds(9000));
    UnaryOperator<PassageBuilder> same = p -> p;
    UnaryOperator<PassageBuilder> rate = p -> p.stream(Told.stream(0, 0.9));
    UnaryOperator<PassageBuilder> blow = p -> p.wind(Told.wind(90, 12));
    UnaryOperator<PassageBuilder> level = p -> p.level("Bar", Scenes.level()); // 4 m at noon
    UnaryOperator<PassageBuilder> dry = p -> p.level("Bar", unknown());
    List<Object[]> cases = new ArrayList<>();
    cases.add(new Object[] {NEAR.closedDuring(List.of(then)), same, STOPPED});
    cases.add(new Object[] {NEAR.closedDuring(List.of(later)), same, WITHIN});
    cases.add(new Object[] {NEAR.closedDuring(List.of(later, then)), same, STOPPED});
    cases.add(new Object[] {NEAR.closedAboveStream(Speed.ofKnots(1.1)), rate, STOPPED}); // 1.125
    cases.add(new Object[] {NEAR.closedAboveStream(Speed.ofKnots(1.2)), rate, WITHIN});
    cases.add(new Object[] {NEAR.closedAboveWind(Speed.ofKnots(11)), blow, STOPPED});
    cases.add(new Object[] {NEAR.closedAboveWind(Speed.ofKnots(13)), blow, WITHIN});
    cases.add(new Object[] {NEAR.closedAboveWind(Speed.ofKnots(13)), same, NOT_CHECKED});
    cases.add(new Object[] {NEAR.closedAboveLevel("Bar", Distance.ofMetres(3.0)), level, STOPPED});
    cases.add(new Object[] {NEAR.closedAboveLevel("Bar", Distance.ofMetres(4.1)), level, WITHIN});
    cases.add(new Object[] {NEAR.closedBelowLevel("Bar", Distance.ofMetres(4.1)), level, STOPPED});
    cases.add(new Object[] {NEAR.closedBelowLevel("Bar", Distance.ofMetres(3.0)), level, WITHIN});
    cases.add(
        new Object[] {NEAR.closedBelowLevel("Bar", Distance.ofMetres(3.0)), dry, NOT_CHECKED});
    // closed by one of two: it is closed, known or not what the other says
    cases.add(
        new Object[] {
          NEAR.closedAboveWind(Speed.ofKnots(9)).closedDuring(List.of(then)), same, STOPPED
        });
    cases.add(
        new Object[] {
          NEAR.closedAboveWind(Speed.ofKnots(9)).closedDuring(List.of(later)), same, NOT_CHECKED
        });
    for (int i = 0; i < cases.size(); i++) {
      @SuppressWarnings("unchecked")
      UnaryOperator<PassageBuilder> change = (UnaryOperator<PassageBuilder>) cases.get(i)[1];
      Danger danger = (Danger) cases.get(i)[0];
      Verdict verdict = Told.of(change.apply(past(danger)), Scenes.NOON, "Fang Rock");
      assertEquals(cases.get(i)[2], verdict.answer(), "case " + i + ": " + verdict);
    }
  }

  private static WaterLevel unknown() {
    return new WaterLevel() {
      private static final long serialVersionUID = 1L;

      @Override
      public double heightMetres(double seconds) {
        return Double.NaN;
      }

      @Override
      public String datum() {
        return "chart datum";
      }
    };
  }

  @Test
  void aClosingShorterThanAMinuteIsMetAtItsEnds() {
    // the party is at the rock 5558 m after noon at 4 kn: 2701 s; closed from just before the look
    Instant look = Scenes.NOON.plusSeconds(2700);
    Danger danger =
        NEAR.closedDuring(List.of(TimeSpan.of(look.minusSeconds(5), look.plusSeconds(5))));
    assertEquals(STOPPED, Told.of(past(danger), Scenes.NOON, "Fang Rock").answer());
  }

  @Test
  void aClosingBetweenTwoLooksIsMet() {
    Instant between = Scenes.NOON.plusSeconds(2730);
    Danger danger =
        NEAR.closedDuring(List.of(TimeSpan.of(between.minusSeconds(5), between.plusSeconds(5))));
    assertEquals(STOPPED, Told.of(past(danger), Scenes.NOON, "Fang Rock").answer());
  }

  @Test
  void anOutlineAcrossTheAntimeridianIsOneOutline() {
    List<Position> square =
        List.of(
            Position.ofDegrees(10.0, 179.99),
            Position.ofDegrees(10.0, -179.99),
            Position.ofDegrees(10.02, -179.99),
            Position.ofDegrees(10.02, 179.99));
    Danger race = Danger.area("Race", square, Distance.ofMetres(100));
    double[][] ways = {{10.01, 179.9, -179.9}, {9.99, 179.9, -179.9}, {9.95, 179.9, -179.9}};
    // through it; 0.01° south of it, 1106 m; 0.05° south of it
    double[] figures = {-100.0, 1105.9 - 100.0, 5529.4 - 100.0};
    for (int i = 0; i < ways.length; i++) {
      PassageBuilder passage =
          Passage.builder("across", ZoneOffset.UTC, Scenes.party(4))
              .from(WayPoint.of("West", Position.ofDegrees(ways[i][0], ways[i][1])))
              .to(WayPoint.of("East", Position.ofDegrees(ways[i][0], ways[i][2])))
              .stream(Told.stream(0, 0))
              .errors(ErrorModel.none())
              .dangers(List.of(race));
      Verdict verdict = Told.of(passage, Scenes.NOON, "Race");
      assertEquals(figures[i], verdict.figure().orElseThrow(), 1.0);
    }
  }

  @Test
  void anOutlineWithoutExtentIsAPoint() {
    Position rock = Position.ofDegrees(46.05, -26.0);
    Danger flat = Danger.area("Flat", List.of(rock, rock, rock), Distance.ofMetres(200));
    Verdict verdict = Told.of(past(flat, 290), Scenes.NOON, "Flat");
    assertEquals(90.0, verdict.figure().orElseThrow(), METRES);
  }

  @Test
  void manyCornersGiveTheAnswerOfTheirCircle() {
    List<Position> circle = new ArrayList<>();
    for (int i = 0; i < 10_000; i++) {
      double angle = 2.0 * Math.PI * i / 10_000;
      circle.add(
          Position.ofDegrees(
              46.05 + 300.0 * Math.cos(angle) / 111_145.0,
              -26.0 + 300.0 * Math.sin(angle) / METRES_EAST));
    }
    Danger round = Danger.area("Round", circle, Distance.ofMetres(100));
    Verdict verdict = Told.of(past(round, 460), Scenes.NOON, "Round");
    assertEquals(60.0, verdict.figure().orElseThrow(), METRES);
  }

  /** The rock lies east; a stream across the leg carries the party there at 1.5 m/s or less. */
  private static PassageBuilder drifting(double metresWest, double metresPerSecond) {
    return past(NEAR, -metresWest).stream(Told.stream(90, metresPerSecond / Told.KNOT))
        .limits(PassageLimits.none().withRateError(0.0));
  }

  @Test
  void driftOntoADangerIsToldInMinutesFromWhereTheWayIsNearest() {
    // 200 m are to be kept; at 1 m/s 400 m take 7 minutes, 1000 m 17, 2300 m 39
    double[] off = {600, 1200, 2500};
    Verdict.Answer[] answers = {STOPPED, WARNED, WITHIN};
    double[] minutes = {7, 17, Double.NaN};
    for (int i = 0; i < off.length; i++) {
      Verdict verdict = Told.of(drifting(off[i], 1.0), Scenes.NOON, "drift without paddling");
      assertEquals(answers[i], verdict.answer(), () -> verdict.toString());
      assertEquals(minutes[i], verdict.figure().orElse(Double.NaN), 0.5);
    }
  }

  @Test
  void driftPastASmallDangerBetweenTwoMinutesIsMet() {
    Danger small = Danger.point("Pin", Position.ofDegrees(46.05, -26.0), Distance.ofMetres(25));
    PassageBuilder passage =
        past(small, -560).stream(Told.stream(90, 1.9 / Told.KNOT))
            .limits(PassageLimits.none().withRateError(0.0));
    // 114 m a minute: at the ends of minutes it is never within 25 m
    Verdict verdict = Told.of(passage, Scenes.NOON, "drift without paddling");
    assertEquals(STOPPED, verdict.answer(), verdict::toString);
    assertEquals(5.0, verdict.figure().orElseThrow(), 0.5);
  }

  @Test
  void driftIntoUnknownWaterIsNotChecked() {
    // at 3 kn the leg takes 7203 s; a drift that begins after two hours lasts until 9000 s
    double known = Scenes.NOON.getEpochSecond() + 7500.0;
    PassageBuilder passage =
        past(NEAR, 5000).stream(Told.unknownFrom(known)).party(Scenes.party(3));
    assertEquals(NOT_CHECKED, Told.of(passage, Scenes.NOON, "drift without paddling").answer());
  }

  @Test
  void driftsTellThePlacesAfterTenTwentyAndThirtyMinutes() {
    TimedPlan plan = TimedPlan.of(drifting(9000, 1.0).build(), Scenes.NOON).orElseThrow();
    List<List<Position>> drifts = new ArrayList<>(plan.drifts().values());
    assertEquals(2, drifts.size()); // the start, which has the strongest stream, and one o'clock
    for (List<Position> drift : drifts) {
      assertEquals(4, drift.size());
      for (int i = 0; i < 3; i++) {
        double east =
            (drift.get(i + 1).longitudeDegrees() - drift.get(0).longitudeDegrees()) * METRES_EAST;
        assertEquals(600.0 * (i + 1), east, 2.0);
        assertEquals(drift.get(0).latitudeDegrees(), drift.get(i + 1).latitudeDegrees(), 1e-9);
      }
    }
    double known = Scenes.NOON.getEpochSecond() + 7200.0 + 1500.0;
    PassageBuilder ends = past(NEAR).stream(Told.unknownFrom(known)).party(Scenes.party(3));
    List<List<Position>> cut =
        new ArrayList<>(TimedPlan.of(ends.build(), Scenes.NOON).orElseThrow().drifts().values());
    assertEquals(3, cut.get(cut.size() - 1).size());
  }

  @Test
  void landDownWindIsLookedForWhereAShoreIsGiven() {
    PassageBuilder bare = past(NEAR, 5000).wind(Told.wind(270, 10));
    assertTrue(
        TimedPlan.of(bare.build(), Scenes.NOON)
            .orElseThrow()
            .notChecked()
            .contains(Findings.OPEN_LAND_DOWN_WIND));
    assertEquals(LAND_DOWN_WIND, Findings.OPEN_LAND_DOWN_WIND.text());
    List<Position> east =
        List.of(Position.ofDegrees(45.9, -25.85), Position.ofDegrees(46.2, -25.85));
    PassageBuilder lee = bare.shores(List.of(east));
    assertEquals(WITHIN, Told.of(lee, Scenes.NOON, LAND_DOWN_WIND).answer());
    PassageBuilder off = lee.wind(Told.wind(90, 10));
    assertEquals(WARNED, Told.of(off, Scenes.NOON, LAND_DOWN_WIND).answer());
    PassageBuilder unknown = past(NEAR, 5000).shores(List.of(east));
    assertEquals(NOT_CHECKED, Told.of(unknown, Scenes.NOON, LAND_DOWN_WIND).answer());
  }
}
