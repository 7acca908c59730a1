package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.Explanation;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class CourseToSteerTest {
  private static final double PROMISED_METRES = 0.1;

  /** What a tenth of a metre takes at two metres a second. */
  private static final double TENTH_OF_A_METRE_SECONDS = 0.05;

  private static final Instant NOON = Instant.parse("2026-06-01T12:00:00Z");
  private static final double NOON_SECONDS = EpochSeconds.of(NOON);
  private static final Position START = Position.ofDegrees(50.0, -4.0);
  private static final double[] EAST = {0.2, 1.0, 1.8, 1.5, 0.4, -0.8, -1.6, -1.2, -0.3, 0.5};
  private static final double[] NORTH = {-0.5, -0.9, -1.1, -0.6, 0.1, 0.7, 1.2, 0.9, 0.2, -0.4};

  @Test
  void theEndIsHitWithOneHeadingInHourlySteps() {
    StreamField stream = HourlyStream.steps(NOON_SECONDS - 3600, EAST, NORTH);
    SteeredLeg steered = solve(leg(20, 12), 3.2, stream, Strategy.constantHeading());
    assertEquals(1, steered.headings().size());
    assertHit(steered, 3.2, stream);
  }

  @Test
  void theEndIsHitWithOneHeadingInAStreamInterpolated() {
    StreamField stream = HourlyStream.lines(NOON_SECONDS - 3600, EAST, NORTH);
    SteeredLeg steered = solve(leg(200, 10), 3.2, stream, Strategy.constantHeading());
    assertHit(steered, 3.2, stream);
    assertTrue(steered.greatestCrossTrack().magnitude().metres() > 100.0);
  }

  @Test
  void theTrackIsHeldInAStreamInterpolated() {
    StreamField stream = HourlyStream.lines(NOON_SECONDS - 3600, EAST, NORTH);
    RhumbLeg leg = leg(200, 10);
    SteeredLeg held = solve(leg, 3.2, stream, Strategy.trackHeld());
    SteeredLeg one = solve(leg, 3.2, stream, Strategy.constantHeading());
    assertTrue(one.duration().compareTo(held.duration()) <= 0);
    assertEquals(0.0, held.greatestCrossTrack().metres(), 0.01);
    assertEquals(
        0.0,
        solve(leg, 3.2, StreamField.slack(), Strategy.trackHeld()).greatestCrossTrack().metres(),
        0.001);
    assertEquals(
        EpochSeconds.of(slowTrack(leg, 3.2, stream)),
        EpochSeconds.of(held.arrival()),
        TENTH_OF_A_METRE_SECONDS);
  }

  /** The track held in steps of one second, each a triangle of its own. */
  private static Instant slowTrack(RhumbLeg leg, double knots, StreamField stream) {
    double course = Math.toRadians(leg.course().degrees());
    double along = 0.0;
    double time = NOON_SECONDS;
    double speed = Speed.ofKnots(knots).metresPerSecond();
    double[] flow = new double[2];
    while (true) {
      stream.sample(50, -4, time + 0.5, flow, 0);
      double a = flow[0] * Math.sin(course) + flow[1] * Math.cos(course);
      double c = flow[0] * Math.cos(course) - flow[1] * Math.sin(course);
      double rate = a + Math.sqrt(speed * speed - c * c);
      if (along + rate >= leg.length().metres()) {
        return EpochSeconds.toInstant(time + (leg.length().metres() - along) / rate);
      }
      along += rate;
      time += 1.0;
    }
  }

  @Test
  void aGeodesicTrackIsHeldAlongItsOwnLine() {
    StreamField stream = HourlyStream.lines(NOON_SECONDS - 3600, EAST, NORTH);
    Leg leg = GeodesicLeg.between(START, Position.ofDegrees(50.02, -3.75));
    SteeredLeg held = solve(leg, 3.2, stream, Strategy.trackHeld());
    for (TrackPoint point : held.groundTrack().pointsEvery(300)) {
      Leg here = GeodesicLeg.between(START, point.position());
      if (here.length().metres() > 100.0) { // on the geodesic the first course is the same
        assertEquals(
            0.0, leg.initialCourse().turnDegreesTo(here.initialCourse()), 0.001, point.toString());
      }
    }
    assertEquals(0.0, held.greatestCrossTrack().metres(), 0.01);
  }

  @Test
  void aStreamThatOnlyFlowsPastAPlaceIsMetThere() {
    // 4 kn across in the middle third of the way alone, from 1230 to 1330
    StreamField race = race(NOON_SECONDS + 1800, NOON_SECONDS + 5400, 4.0);
    RhumbLeg leg = leg(0, 3);
    CourseToSteer solver =
        CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3)), race)
            .withStrategy(Strategy.trackHeld())
            .withLimits(SteeringLimits.NONE);
    NotPossible why = solver.solve(leg, NOON).why().orElseThrow();
    assertEquals(Reason.CROSS_STREAM, why.reason());
    assertEquals(NOON.plusSeconds(1800), why.when().orElseThrow());
  }

  /** A strong stream across the middle of a leg to the north, while it lasts, in knots. */
  private static StreamField race(double from, double until, double knots) {
    return new StreamField() {
      @Override
      public boolean sample(double lat, double lon, double time, double[] out, int offset) {
        double milesOut = (lat - 50.0) * 60.0;
        boolean on = milesOut > 1.0 && milesOut < 2.0 && time >= from && time < until;
        out[offset] = on ? knots * Speed.METRES_PER_SECOND_PER_KNOT : 0.0;
        out[offset + 1] = 0.0;
        return true;
      }

      @Override
      public double nextBreakAfter(double time) {
        return time < from ? from : time < until ? until : Double.POSITIVE_INFINITY;
      }
    };
  }

  @Test
  void aLateStrongStreamStopsTheFasterPaddlerAndMissesTheSlower() {
    // the race across the middle third runs from 1221 to 1223: at 3 kn the paddler is in it by
    // then,
    // at 2.6 kn still short of it
    StreamField race = race(NOON_SECONDS + 1260, NOON_SECONDS + 1380, 4.0);
    RhumbLeg leg = leg(0, 3);
    CourseToSteer fast =
        CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3)), race)
            .withStrategy(Strategy.trackHeld());
    assertEquals(Reason.CROSS_STREAM, fast.solve(leg, NOON).why().orElseThrow().reason());
    assertTrue(fast.withCraft(Craft.ofSpeed(Speed.ofKnots(2.6))).solve(leg, NOON).isSolved());
  }

  @Test
  void theBowKeptOnTheTargetCostsWhatTheClosedFormSays() {
    // T = D (v - a) / (v^2 - u^2), a the stream toward the target: 1.077 h and 0.555 h, plane
    StreamField across =
        StreamField.steady(Velocity.ofSetAndRate(TrueBearing.ofDegrees(90), Speed.ofKnots(3)));
    // on the equator, where the meridians do not turn east under the craft
    RhumbLeg leg =
        RhumbLeg.from(
            Position.ofDegrees(0, 0), TrueBearing.ofDegrees(0), Distance.ofNauticalMiles(1));
    double chased = hours(solve(leg, 3.5, across, Strategy.bowOnTarget()));
    double ferried = hours(solve(leg, 3.5, across, Strategy.trackHeld()));
    assertEquals(3.5 / (3.5 * 3.5 - 9.0), chased, 1e-6);
    assertEquals(1.0 / Math.sqrt(3.5 * 3.5 - 9.0), ferried, 1e-6);
  }

  @Test
  void theBowKeptOnTheTargetNeverGetsThereInAStreamTooStrong() {
    StreamField across =
        StreamField.steady(Velocity.ofSetAndRate(TrueBearing.ofDegrees(90), Speed.ofKnots(3)));
    NotPossible why =
        CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(2.9)), across)
            .withStrategy(Strategy.bowOnTarget())
            .withLimits(SteeringLimits.NONE)
            .solve(leg(0, 1), NOON)
            .why()
            .orElseThrow();
    assertEquals(Reason.ADVERSE_STREAM, why.reason());
  }

  /**
   * At 0.01 m/s of the craft's speed to spare the last five centimetres alone take five seconds.
   */
  @Test
  void theBowKeptOnTheTargetIsTimedToTheEnd() {
    double v = 1.80;
    double u = 1.79;
    StreamField across = StreamField.steady(Velocity.ofEastAndNorth(u, 0.0));
    RhumbLeg leg =
        RhumbLeg.from(Position.ofDegrees(0, 0), TrueBearing.ofDegrees(0), Distance.ofMetres(200));
    SteeredLeg chased =
        CourseToSteer.with(Craft.ofSpeed(Speed.ofMetresPerSecond(v)), across)
            .withStrategy(Strategy.bowOnTarget())
            .withLimits(SteeringLimits.NONE)
            .solve(leg, NOON)
            .orElseThrow();
    double expected = 200 * v / (v * v - u * u); // the pursuit of a point in a uniform stream
    assertEquals(expected, chased.duration().toMillis() / 1000.0, 1.0);
  }

  @Test
  void farYearsAndAbsurdSpeedsAreRefusedBeforeAnythingIsFollowed() {
    StreamField stream = HourlyStream.lines(NOON_SECONDS - 3600, EAST, NORTH);
    CourseToSteer solver = CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3)), stream);
    for (Instant far : List.of(Instant.MIN, Instant.MAX, Instant.parse("5000-01-01T00:00:00Z"))) {
      for (Strategy strategy :
          List.of(
              Strategy.constantHeading(),
              Strategy.trackHeld(),
              Strategy.newHeadingEvery(Duration.ofHours(1)),
              Strategy.bowOnTarget(),
              Strategy.quickest())) {
        String message =
            String.valueOf(
                assertThrows(
                        IllegalArgumentException.class,
                        () -> solver.withStrategy(strategy).solve(leg(0, 3), far))
                    .getMessage());
        assertTrue(
            message.startsWith("departure must lie in the years 1 to 4999, but was "), message);
      }
    }
    assertEquals(
        "speed of a craft must be in [0, 100] knots, but was 5.0E45",
        assertThrows(IllegalArgumentException.class, () -> Craft.ofSpeed(Speed.ofKnots(5e45)))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> solver.craft().withSpeed(Speed.ofKnots(101)));
  }

  /**
   * A figure for one heading is one for the whole way, at the place where the craft comes closest.
   */
  @Test
  void oneHeadingThatIsCarriedOffTellsHowCloseItComes() {
    // slack for an hour and a half, then 4 kn against the craft for good
    double[] north = {0, 0, -4, -4, -4, -4, -4, -4, -4, -4, -4, -4, -4, -4, -4, -4, -4, -4};
    StreamField stream = HourlyStream.steps(NOON_SECONDS, new double[north.length], north);
    NotPossible why =
        CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3)), stream)
            .withLongestDuration(Duration.ofHours(12))
            .solve(leg(0, 5), NOON)
            .why()
            .orElseThrow();
    assertEquals(Reason.ADVERSE_STREAM, why.reason());
    // 4.5 NM in an hour and a half; 5 NM would take 10/3 kn
    assertEquals(10.0 / 3.0 - 3.0, why.shortBy().orElseThrow().knots(), 0.01);
    assertTrue(why.isShortAllTheWay());
    assertEquals(NOON_SECONDS + 5400, EpochSeconds.of(why.when().orElseThrow()), 60.0);
    assertEquals(
        0.5,
        RhumbLeg.between(why.where().orElseThrow(), leg(0, 5).end()).length().nauticalMiles(),
        0.02);
    assertTrue(why.message().contains(" kn all the way, at "), why.message());
  }

  @Test
  void newHeadingsBringTheCraftBackOntoTheLine() {
    StreamField stream = HourlyStream.lines(NOON_SECONDS - 3600, EAST, NORTH);
    RhumbLeg leg = leg(200, 10);
    SteeredLeg steered = solve(leg, 3.2, stream, Strategy.newHeadingEvery(Duration.ofHours(1)));
    assertHit(steered, 3.2, stream);
    assertEquals(4, steered.headings().size());
    LegFrame frame = new LegFrame(leg);
    for (TrackPoint change : steered.headings()) {
      Position there = steered.groundTrack().at(change.time());
      assertEquals(
          0.0,
          frame.crossTrackMetres(there.latitudeDegrees(), there.longitudeDegrees()),
          PROMISED_METRES);
    }
    List<Instant> times = List.of(NOON.minusSeconds(60), NOON.plusSeconds(5000));
    SteeredLeg given = solve(leg, 3.2, stream, Strategy.newHeadingsAt(times));
    assertEquals(2, given.headings().size());
    assertEquals(times.get(1), given.headings().get(1).time());
    assertHit(given, 3.2, stream);
  }

  @Test
  void zeroSpeedArrivesOnlyWhereTheStreamCarries() {
    StreamField north = StreamField.steady(Velocity.ofEastAndNorth(0.0, 1.0));
    Leg leg = leg(0, 1);
    for (Strategy strategy : new Strategy[] {Strategy.constantHeading(), Strategy.trackHeld()}) {
      SteeredLeg drifted = solve(leg, 0, north, strategy);
      assertEquals(1852.0, drifted.duration().toMillis() / 1000.0, 0.1, strategy.words());
    }
    CourseToSteer still = CourseToSteer.with(Craft.ofSpeed(Speed.ZERO), StreamField.slack());
    assertEquals(Reason.NO_PROGRESS, still.solve(leg, NOON).why().orElseThrow().reason());
    CourseToSteer across =
        CourseToSteer.with(
            Craft.ofSpeed(Speed.ZERO), StreamField.steady(Velocity.ofEastAndNorth(1.0, 1.0)));
    assertEquals(Reason.CROSS_STREAM, across.solve(leg, NOON).why().orElseThrow().reason());
  }

  @Test
  void theStreamAheadOrAsternLeavesTheHeadingOnTheCourse() {
    for (double north : new double[] {1.0, -1.0}) {
      StreamField stream = StreamField.steady(Velocity.ofEastAndNorth(0.0, north));
      for (Strategy strategy : new Strategy[] {Strategy.constantHeading(), Strategy.trackHeld()}) {
        SteeredLeg steered = solve(leg(0, 3), 3, stream, strategy);
        assertEquals(0.0, TrueBearing.ofDegrees(0).turnDegreesTo(steered.courseToSteer()), 1e-6);
      }
    }
  }

  @Test
  void theReasonsNameTheirFigures() {
    Leg leg = leg(0, 5);
    Craft slow = Craft.ofSpeed(Speed.ofKnots(2));
    NotPossible cross =
        why(
            slow,
            StreamField.steady(Velocity.ofSetAndRate(TrueBearing.ofDegrees(90), Speed.ofKnots(3))),
            leg);
    assertEquals(Reason.CROSS_STREAM, cross.reason());
    assertEquals(1.0, cross.shortBy().orElseThrow().knots(), 0.1);
    NotPossible adverse =
        why(
            slow,
            StreamField.steady(Velocity.ofSetAndRate(TrueBearing.ofDegrees(180), Speed.ofKnots(3))),
            leg);
    assertEquals(Reason.ADVERSE_STREAM, adverse.reason());
    NotPossible far = why(slow, StreamField.slack(), leg(0, 60));
    assertEquals(Reason.BEYOND_HORIZON, far.reason());
    assertEquals(0.5, far.shortBy().orElseThrow().knots(), 0.001);
    NotPossible unknown =
        why(slow, HourlyStream.lines(NOON_SECONDS, new double[3], new double[3]), leg(0, 10));
    assertEquals(Reason.NO_DATA, unknown.reason());
    assertEquals(NOON_SECONDS + 7200, EpochSeconds.of(unknown.when().orElseThrow()), 1.0);
    assertTrue(unknown.shortBy().isEmpty());
    assertTrue(
        unknown.message().startsWith("the stream or wind is not known there and then, at 2026"),
        unknown.message());
  }

  private static NotPossible why(Craft craft, StreamField stream, Leg leg) {
    return CourseToSteer.with(craft, stream).solve(leg, NOON).why().orElseThrow();
  }

  @Test
  void aCrossStreamAboveHalfWarnsAndAboveFourFifthsIsRefused() {
    // sines of the ferry angle: 1.8 / 3.5 = 0.51 and 2.9 / 3.5 = 0.83
    Leg leg = leg(0, 2);
    Craft craft = Craft.ofSpeed(Speed.ofKnots(3.5));
    for (Strategy strategy : new Strategy[] {Strategy.constantHeading(), Strategy.trackHeld()}) {
      SteeredLeg warned = cross(craft, 1.8).withStrategy(strategy).solve(leg, NOON).orElseThrow();
      assertEquals(1.8 / 3.5, warned.crossStreamShare(), 1e-4);
      assertEquals(3.5 - 1.8, warned.reserve().knots(), 1e-3);
      assertEquals("steer.little-reserve", warned.notes().get(0).code());
      assertEquals(
          "The stream across takes 51 % of the craft's speed; little is left if it runs harder than"
              + " foreseen.",
          warned.notes().get(0).text());
      NotPossible refused =
          cross(craft, 2.9).withStrategy(strategy).solve(leg, NOON).why().orElseThrow();
      assertEquals(Reason.NO_RESERVE, refused.reason());
      assertEquals(2.9 / 0.8 - 3.5, refused.shortBy().orElseThrow().knots(), 1e-3);
      assertTrue(
          cross(craft, 2.9)
              .withStrategy(strategy)
              .withLimits(SteeringLimits.of(0.5, 0.9))
              .solve(leg, NOON)
              .isSolved());
      assertTrue(
          cross(craft, 1.7)
              .withStrategy(strategy)
              .solve(leg, NOON)
              .orElseThrow()
              .notes()
              .isEmpty());
    }
  }

  private static CourseToSteer cross(Craft craft, double knots) {
    return CourseToSteer.with(
        craft,
        StreamField.steady(Velocity.ofSetAndRate(TrueBearing.ofDegrees(90), Speed.ofKnots(knots))));
  }

  @Test
  void theNotesOfTheStreamTravelWithTheAnswer() {
    StreamField noted =
        new StreamField() {
          @Override
          public boolean sample(double lat, double lon, double time, double[] out, int offset) {
            out[offset] = 0.1;
            out[offset + 1] = 0.0;
            return true;
          }

          @Override
          public Explanation explain(Position position, Instant instant) {
            return new Explanation(
                List.of(), List.of(Note.information("stream.interpolated", "Between two hours.")));
          }
        };
    SteeredLeg steered = solve(leg(0, 5), 3, noted, Strategy.constantHeading());
    assertEquals(1, steered.notes().size());
    assertEquals("stream.interpolated", steered.notes().get(0).code());
  }

  @Test
  void aPathThatPassesTheEndAndIsBroughtBackSaysSo() {
    // 3.4 kn along the leg for an hour, then 3 kn back, across it a little: too fast to stop at 2
    // kn
    double[] east = {3.4, 3.4, -3.0, -3.0, -3.0, -3.0, -3.0, -3.0, -3.0};
    double[] north = {2.3, 2.3, -2.2, -2.2, -2.2, -2.2, -2.2, -2.2, -2.2};
    StreamField stream = HourlyStream.steps(NOON_SECONDS, east, north);
    SteeredLeg steered = solve(leg(90, 2), 2, stream, Strategy.constantHeading());
    assertHit(steered, 2, stream);
    assertEquals("steer.passes-end", steered.notes().get(steered.notes().size() - 1).code());
  }

  @Test
  void aWindStrongerThanTheTableSaysSo() {
    SteeredLeg steered =
        CourseToSteer.with(
                Craft.ofSpeed(Speed.ofKnots(3.5))
                    .withWindResponse(WindResponse.commonPractice(WindResponse.Trim.LOADED)),
                StreamField.slack())
            .withWind(
                WindField.steady(Velocity.ofWind(TrueBearing.ofDegrees(180), Speed.ofKnots(25))))
            .solve(leg(0, 2), NOON)
            .orElseThrow();
    assertEquals("steer.wind-beyond-table", steered.notes().get(0).code());
    assertTrue(steered.notes().get(0).text().startsWith("A wind of 25 kn over the water"));
  }

  @Test
  void strategiesTellTheirIntervalAndTimes() {
    Duration hour = Duration.ofHours(1);
    List<Instant> times = List.of(NOON, NOON.plus(hour));
    assertEquals(Optional.of(hour), Strategy.newHeadingEvery(hour).interval());
    assertEquals(times, Strategy.newHeadingsAt(times).times());
    for (Strategy without :
        List.of(Strategy.newHeadingsAt(times), Strategy.trackHeld(), Strategy.quickest())) {
      assertEquals(Optional.empty(), without.interval());
    }
    for (Strategy without :
        List.of(Strategy.newHeadingEvery(hour), Strategy.trackHeld(), Strategy.quickest())) {
      assertEquals(List.of(), without.times());
    }
  }

  @Test
  void badOptionsAreRefusedByName() {
    CourseToSteer solver = CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3)), StreamField.slack());
    assertEquals(
        "longest duration must be above PT0S and at most 366 days, but was PT0S",
        refusal(() -> solver.withLongestDuration(Duration.ZERO)));
    assertEquals(
        "limits must satisfy 0 <= warn above <= refuse above <= 1, but were 0.9 and 0.8",
        refusal(() -> SteeringLimits.of(0.9, 0.8)));
    assertEquals(
        "interval between headings must be at least PT1S, but was PT0S",
        refusal(() -> Strategy.newHeadingEvery(Duration.ZERO)));
    assertEquals(
        "times of new headings must ascend, but 2026-06-01T12:00:00Z follows 2026-06-01T12:00:00Z",
        refusal(() -> Strategy.newHeadingsAt(List.of(NOON, NOON))));
    Ellipsoid airy = Ellipsoid.AIRY_1830;
    RhumbLeg onAiry =
        RhumbLeg.between(airy, Position.ofDegrees(50, -5), Position.ofDegrees(50, -4));
    assertEquals(
        "a leg to steer must lie on WGS84, where positions are, but lies on " + airy,
        refusal(() -> solver.solve(onAiry, NOON)));
    assertEquals(
        "a leg to steer must lie within 89 degrees of the equator, but an end is at latitude 89.5",
        refusal(
            () ->
                solver.solve(
                    RhumbLeg.between(Position.ofDegrees(88, 0), Position.ofDegrees(89.5, 0)),
                    NOON)));
    assertEquals(
        "time must be in [2026-06-01T12:00:00Z, 2026-06-01T12:20:00Z], but was"
            + " 2026-06-01T11:59:59Z",
        refusal(
            () ->
                solver
                    .solve(leg(90, 1), NOON)
                    .orElseThrow()
                    .groundTrack()
                    .at(NOON.minusSeconds(1))));
  }

  private static String refusal(Executable bad) {
    return String.valueOf(assertThrows(IllegalArgumentException.class, bad).getMessage());
  }

  private static double hours(SteeredLeg steered) {
    return steered.duration().toMillis() / 3.6e6;
  }

  @Test
  void aLegWithoutLengthIsSolvedAtOnce() {
    Leg leg = RhumbLeg.between(START, START);
    for (Strategy strategy : new Strategy[] {Strategy.constantHeading(), Strategy.trackHeld()}) {
      SteeredLeg steered = solve(leg, 3, StreamField.slack(), strategy);
      assertEquals(Duration.ZERO, steered.duration());
      assertEquals(Speed.ZERO, steered.speedMadeGood());
      assertEquals("steer.no-length", steered.notes().get(0).code());
    }
  }

  private static SteeredLeg solve(Leg leg, double knots, StreamField stream, Strategy strategy) {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(knots)), stream)
        .withStrategy(strategy)
        .withLimits(SteeringLimits.NONE)
        .solve(leg, NOON)
        .orElseThrow();
  }

  private static RhumbLeg leg(double course, double nauticalMiles) {
    return RhumbLeg.from(
        START, TrueBearing.ofDegrees(course), Distance.ofNauticalMiles(nauticalMiles));
  }

  private static void assertHit(SteeredLeg steered, double knots, StreamField stream) {
    SlowFollower slow =
        new SlowFollower(
            steered.leg().start().latitudeDegrees(),
            steered.leg().start().longitudeDegrees(),
            EpochSeconds.of(steered.departure()));
    double speed = Speed.ofKnots(knots).metresPerSecond();
    for (int i = 0; i < steered.headings().size(); i++) {
      double until =
          i + 1 < steered.headings().size()
              ? EpochSeconds.of(steered.headings().get(i + 1).time())
              : EpochSeconds.of(steered.arrival());
      slow.follow(steered.headings().get(i).heading().degrees(), speed, stream, until);
    }
    assertEquals(
        0.0,
        slow.metresFrom(
            steered.leg().end().latitudeDegrees(), steered.leg().end().longitudeDegrees()),
        PROMISED_METRES);
  }

  @Test
  void aCraftWithoutSpeedIsCarriedWhereverItsBowPoints() {
    Leg leg =
        RhumbLeg.from(
            Position.ofDegrees(46, -26), TrueBearing.ofDegrees(90), Distance.ofNauticalMiles(5));
    CourseToSteer adrift =
        CourseToSteer.with(
                Craft.ofSpeed(Speed.ZERO),
                StreamField.steady(
                    Velocity.ofSetAndRate(TrueBearing.ofDegrees(90), Speed.ofKnots(2))))
            .withStrategy(Strategy.bowOnTarget());
    SteeredLeg carried = adrift.solve(leg, Instant.parse("2026-06-14T10:00:00Z")).orElseThrow();
    assertEquals(2.5 * 3600.0, carried.duration().toMillis() / 1000.0, 0.1);
  }
}
