package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicLong;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Beaufort;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class WindTest {
  private static final Instant NOON = Instant.parse("2026-06-01T12:00:00Z");
  private static final TrueBearing NORTH = TrueBearing.ofDegrees(0);
  private static final TrueBearing EAST = TrueBearing.ofDegrees(90);
  private static final WindResponse ORDINARY =
      WindResponse.commonPractice(WindResponse.Trim.ORDINARY);

  private static Craft kayak(WindResponse response) {
    return Craft.ofSpeed(Speed.ofKnots(3.5)).withWindResponse(response);
  }

  private static Velocity wind(double from, double knots) {
    return Velocity.ofWind(TrueBearing.ofDegrees(from), Speed.ofKnots(knots));
  }

  private static CurrentTriangle solve(TrueBearing course, Velocity stream, Velocity wind) {
    return CurrentTriangle.solveInWind(course, kayak(ORDINARY), stream, wind).orElseThrow();
  }

  @Example
  void windOnStarboardPushesToPortSoTheBowPointsToStarboard() {
    CurrentTriangle triangle = solve(NORTH, Velocity.STILL, wind(90, 13.5));
    // 7.5 degrees abeam at force 4, less by a ninetieth for each degree that the bow is turned up:
    // h = 7.5 (90 - h) / 90
    assertEquals(7.5 / (1.0 + 7.5 / 90.0), triangle.ferryAngleDegrees(), 1e-6);
    assertEquals(0.0, NORTH.turnDegreesTo(triangle.waterTrack()), 1e-9);
    assertTrue(triangle.ferryAngleDegrees() > 0.0);
    assertEquals(
        -triangle.ferryAngleDegrees(),
        solve(NORTH, Velocity.STILL, wind(270, 13.5)).ferryAngleDegrees(),
        1e-9);
  }

  @Example
  void headWindTakesMoreThanTailWindGives() {
    double ahead = solve(NORTH, Velocity.STILL, wind(0, 13.5)).speedMadeGood().knots();
    double astern = solve(NORTH, Velocity.STILL, wind(180, 13.5)).speedMadeGood().knots();
    assertEquals(3.5 - 1.0, ahead, 1e-9);
    assertEquals(3.5 + 0.4, astern, 1e-9);
  }

  @Example
  void theWindOverTheMovingWaterCounts() {
    // a calm over the ground is a head wind for a craft that the stream carries along: 2 kn of it
    Velocity north = Velocity.ofSetAndRate(NORTH, Speed.ofKnots(2));
    assertEquals(
        3.5 + 2.0 - 0.5 * 2.0 / 8.5,
        solve(NORTH, north, Velocity.STILL).speedMadeGood().knots(),
        1e-9);
    // and a wind that goes with the stream at its own rate is none
    assertEquals(5.5, solve(NORTH, north, wind(180, 2)).speedMadeGood().knots(), 1e-9);
  }

  @Example
  void driftGoesStraightDownTheWindAndGoesOnWhileTheyRest() {
    Craft craft =
        kayak(WindResponse.none().withDrift(0.03)).withRestEachHour(Duration.ofMinutes(15));
    CurrentTriangle triangle =
        CurrentTriangle.solveInWind(NORTH, craft, Velocity.STILL, wind(270, 20)).orElseThrow();
    // 0.6 kn to the east against 3.5 * 0.75 = 2.625 kn
    assertEquals(-Math.toDegrees(Math.asin(0.6 / 2.625)), triangle.ferryAngleDegrees(), 1e-9);
    assertEquals(Math.sqrt(2.625 * 2.625 - 0.36), triangle.speedMadeGood().knots(), 1e-9);
  }

  @Example
  void aWindThatStopsTheCraftMakesNoProgress() {
    Craft craft = Craft.ofSpeed(Speed.ofKnots(1)).withWindResponse(ORDINARY);
    NotPossible why =
        CurrentTriangle.solveInWind(NORTH, craft, Velocity.STILL, wind(0, 19)).why().orElseThrow();
    assertEquals(Reason.NO_PROGRESS, why.reason());
  }

  @Example
  void aCraftThatOnlyDriftsGainsNothingFromATailWind() {
    Craft adrift = Craft.ofSpeed(Speed.ZERO).withWindResponse(ORDINARY);
    assertEquals(
        Reason.NO_PROGRESS,
        CurrentTriangle.solveInWind(NORTH, adrift, Velocity.STILL, wind(180, 19))
            .why()
            .orElseThrow()
            .reason());
  }

  /** A stream across and a wind astern, so that a sign slip would turn the water track about. */
  @Example
  void theWaterTrackLiesUpStreamOfTheCourse() {
    Velocity eastgoing = Velocity.ofSetAndRate(EAST, Speed.ofKnots(1.5));
    CurrentTriangle triangle =
        CurrentTriangle.solveInWind(
                NORTH, kayak(WindResponse.none().withDrift(0.0)), eastgoing, wind(180, 10))
            .orElseThrow();
    assertEquals(
        -Math.toDegrees(Math.asin(1.5 / 3.5)), NORTH.turnDegreesTo(triangle.waterTrack()), 1e-9);
  }

  @Example
  void forecastsInBeaufortAreWinds() {
    Velocity forecast = Velocity.ofWind(EAST, Beaufort.parse("4 or 5").highest().orElseThrow());
    assertEquals(21.0, forecast.rate().knots(), 1e-9);
    assertFalse(ORDINARY.reaches(forecast.rate().metresPerSecond()));
    assertTrue(ORDINARY.reaches(Speed.ofKnots(19).metresPerSecond()));
  }

  @Property(seed = Seeds.SEED, tries = 300)
  void theVectorsRebuiltGiveTheTrack(
      @ForAll("directions") double course,
      @ForAll("directions") double set,
      @ForAll("directions") double from,
      @ForAll("rates") double rate,
      @ForAll("winds") double windKnots) {
    Velocity stream = Velocity.ofSetAndRate(TrueBearing.ofDegrees(set), Speed.ofKnots(rate));
    Velocity wind = wind(from, windKnots);
    TrueBearing track = TrueBearing.ofDegrees(course);
    Outcome<CurrentTriangle, NotPossible> outcome =
        CurrentTriangle.solveInWind(track, kayak(ORDINARY.withDrift(0.01)), stream, wind);
    Assume.that(outcome.isSolved());
    CurrentTriangle triangle = outcome.orElseThrow();
    Velocity over = wind.minus(stream);
    double offBow = triangle.courseToSteer().turnDegreesTo(over.from());
    double speed = over.rate().metresPerSecond();
    double paddled =
        Speed.ofKnots(3.5).metresPerSecond() + ORDINARY.speedChangeMetresPerSecond(offBow, speed);
    TrueBearing water = triangle.courseToSteer().turnedBy(ORDINARY.leewayDegrees(offBow, speed));
    Velocity ground =
        Velocity.ofSetAndRate(water, Speed.ofMetresPerSecond(paddled))
            .plus(over.times(0.01))
            .plus(stream);
    assertEquals(0.0, water.turnDegreesTo(triangle.waterTrack()), 1e-5);
    assertEquals(0.0, ground.acrossMetresPerSecond(track), 1e-6);
    assertEquals(
        triangle.speedMadeGood().metresPerSecond(), ground.alongMetresPerSecond(track), 1e-6);
  }

  @Property(seed = Seeds.SEED, tries = 60)
  void theEndIsHitInWindByEitherStrategy(
      @ForAll("directions") double course,
      @ForAll("directions") double from,
      @ForAll("winds") double windKnots) {
    Position start = Position.ofDegrees(55, -6);
    RhumbLeg leg = RhumbLeg.from(start, TrueBearing.ofDegrees(course), Distance.ofNauticalMiles(4));
    Velocity stream = Velocity.ofSetAndRate(EAST, Speed.ofKnots(1));
    CourseToSteer solver =
        CourseToSteer.with(kayak(ORDINARY), StreamField.steady(stream))
            .withWind(WindField.steady(wind(from, windKnots)))
            .withLimits(SteeringLimits.NONE);
    SteeredLeg one = solver.solve(leg, NOON).orElseThrow();
    SteeredLeg held = solver.withStrategy(Strategy.trackHeld()).solve(leg, NOON).orElseThrow();
    // all is steady, so that both do the same
    assertEquals(EpochSeconds.of(held.arrival()), EpochSeconds.of(one.arrival()), 2.0, "arrival");
    assertEquals(
        0.0, held.courseToSteer().turnDegreesTo(one.courseToSteer()), 0.1, "course to steer");
    Position end = one.groundTrack().at(one.arrival());
    assertEquals(leg.end().latitudeDegrees(), end.latitudeDegrees(), 1e-6);
    assertEquals(leg.end().longitudeDegrees(), end.longitudeDegrees(), 1e-6);
  }

  @Provide
  Arbitrary<Double> directions() {
    return Arbitraries.doubles().between(0.0, 359.9).ofScale(6);
  }

  @Provide
  Arbitrary<Double> rates() {
    return Arbitraries.doubles().between(0.0, 4.0).ofScale(6);
  }

  @Provide
  Arbitrary<Double> winds() {
    return Arbitraries.doubles().between(0.0, 19.0).ofScale(6);
  }

  @Example
  void tablesAreReadInStraightLinesBothWays() {
    WindTable table =
        WindTable.of(
            new double[] {0, 90, 180},
            new double[] {0, 10, 20},
            new double[][] {{0, 0, 0}, {0, 4, 12}, {0, 0, 2}});
    double knot = Speed.METRES_PER_SECOND_PER_KNOT;
    assertEquals(4.0, table.at(90, 10 * knot), 1e-12);
    assertEquals(4.0, table.at(45, 15 * knot), 1e-12);
    assertEquals(7.0, table.at(135, 20 * knot), 1e-12);
    assertEquals(20.0, table.at(90, 30 * knot), 1e-12); // continued beyond the table
    assertEquals(8.0, table.times(2).at(90, 10 * knot), 1e-12);
    assertTrue(Double.isNaN(table.at(Double.NaN, 1)));
    WindResponse response = WindResponse.none().withLeeway(table).withLeewayTimes(0.5);
    assertEquals(-2.0, response.leewayDegrees(90, 10 * knot), 1e-12);
    assertEquals(2.0, response.leewayDegrees(-90, 10 * knot), 1e-12);
  }

  @Example
  void badTablesAreRefusedByName() {
    double[] angles = {0, 180};
    double[] winds = {0, 10};
    double[][] values = {{0, 0}, {0, 0}};
    assertEquals(
        "angles off the bow must run from 0 to 180 degrees, but were [0.0, 90.0]",
        refusal(() -> WindTable.of(new double[] {0, 90}, winds, values)));
    assertEquals(
        "wind speeds must start at 0 knots, but were [5.0, 10.0]",
        refusal(() -> WindTable.of(angles, new double[] {5, 10}, values)));
    assertEquals(
        "wind speeds must be finite and ascend, but were [0.0, 0.0]",
        refusal(() -> WindTable.of(angles, new double[] {0, 0}, values)));
    assertEquals(
        "there must be at least two angles off the bow, but there were 1",
        refusal(() -> WindTable.of(new double[] {0}, winds, values)));
    assertEquals(
        "there must be one row for each of the 2 angles, but there were 1",
        refusal(() -> WindTable.of(angles, winds, new double[][] {{0, 0}})));
    assertEquals(
        "row 1 must have 2 values, but had 1",
        refusal(() -> WindTable.of(angles, winds, new double[][] {{0, 0}, {0}})));
    assertEquals(
        "value of a wind table must be a finite number of units, but was NaN",
        refusal(() -> WindTable.of(angles, winds, new double[][] {{0, 0}, {0, Double.NaN}})));
    assertEquals(
        "drift must be in [0, 1] parts of the wind's speed, but was 1.5",
        refusal(() -> WindResponse.none().withDrift(1.5)));
  }

  @Example
  void aCraftRestsLessThanTheHour() {
    assertEquals(
        "rest each hour must be at least PT0S and less than PT1H, but was PT1H",
        refusal(() -> kayak(ORDINARY).withRestEachHour(Duration.ofHours(1))));
    Craft craft = kayak(ORDINARY).withRestEachHour(Duration.ofMinutes(10));
    assertEquals(3.5 * 50 / 60, craft.meanSpeed().knots(), 1e-12);
    assertEquals(craft, kayak(ORDINARY).withRestEachHour(Duration.ofMinutes(10)));
    assertFalse(craft.equals(craft.withSpeed(Speed.ofKnots(3))));
  }

  private static String refusal(Executable bad) {
    return String.valueOf(assertThrows(IllegalArgumentException.class, bad).getMessage());
  }

  /** Five degrees either way however near the bow: no heading has its water track in the wind. */
  @Test
  void aLeewayThatJumpsAtTheBowHoldsNoCourseDeadToWindward() {
    assertTrue(
        CurrentTriangle.solveInWind(
                TrueBearing.ofDegrees(0),
                blownFiveDegreesOffTheBow(),
                Velocity.STILL,
                Velocity.ofWind(TrueBearing.ofDegrees(2), Speed.ofKnots(20)))
            .why()
            .isPresent());
  }

  private static Craft blownFiveDegreesOffTheBow() {
    double[][] five = {{0, 5}, {0, 5}};
    return Craft.ofSpeed(Speed.ofKnots(3.5))
        .withWindResponse(
            WindResponse.none()
                .withLeeway(WindTable.of(new double[] {0, 180}, new double[] {0, 20}, five)));
  }

  /** What is lacking is never more than the stream that it is lacking against. */
  @Test
  void aLeewayThatJumpsAtTheBowNeverLacksMoreThanTheStream() {
    for (double from = 0; from < 360; from += 15) {
      for (double set = 0; set < 360; set += 15) {
        Velocity stream = Velocity.ofSetAndRate(TrueBearing.ofDegrees(set), Speed.ofKnots(3));
        CurrentTriangle.solveInWind(NORTH, blownFiveDegreesOffTheBow(), stream, wind(from, 20))
            .why()
            .flatMap(NotPossible::shortBy)
            .ifPresent(
                lacking ->
                    assertTrue(lacking.knots() > 0.0 && lacking.knots() < 3.0, lacking::toString));
      }
    }
  }

  /**
   * A craft that never arrives is followed to the horizon and no longer. Along the jump its steps
   * are a third of a minute long once they have grown, seven looks at the stream each and two along
   * it; growing takes a thousand steps, and a horizon sixty times as far no more than the minutes
   * in it.
   */
  @Test
  void aPursuitThatNeverArrivesAlongAJumpTakesSomeSecondsForItsSteps() {
    for (double hours : new double[] {2, 24, 1440}) {
      AtomicLong looks = new AtomicLong();
      StreamField against =
          (latitude, longitude, seconds, out, offset) -> {
            looks.incrementAndGet();
            out[offset] = 0.0;
            out[offset + 1] = -Speed.ofKnots(3).metresPerSecond();
            return true;
          };
      NotPossible why =
          CourseToSteer.with(blownFiveDegreesOffTheBow(), against)
              .withWind(WindField.steady(wind(2, 20)))
              .withStrategy(Strategy.bowOnTarget())
              .withLongestDuration(Duration.ofMinutes((long) (60 * hours)))
              .solve(
                  RhumbLeg.from(Position.ofDegrees(55, -6), NORTH, Distance.ofNauticalMiles(20)),
                  NOON)
              .why()
              .orElseThrow();
      why.shortBy().ifPresent(lacking -> assertTrue(lacking.knots() < 3.0, why::message));
      assertTrue(looks.get() < 27 * 60 * hours + 10_000, looks + " looks in " + hours + " h");
    }
  }
}
