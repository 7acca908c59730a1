package org.ferryglide.nav.teach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.statistics.Statistics;
import net.jqwik.api.statistics.StatisticsReport;
import org.ferryglide.nav.bearing.GridBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.fix.BearingLine;
import org.ferryglide.nav.fix.FixSolver;
import org.ferryglide.nav.fix.TransferredLine;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.grid.MapBearings;
import org.ferryglide.nav.grid.MapGrid;
import org.ferryglide.nav.landfall.AimOff;
import org.ferryglide.nav.landfall.Side;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.DeadReckoning;
import org.ferryglide.nav.reckon.LogEntry;
import org.ferryglide.nav.reckon.SteadyRun;
import org.ferryglide.nav.sight.ClearingBearing;
import org.ferryglide.nav.sky.SunDay;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.CurrentTriangle;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.steer.WindResponse;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;

/** What is worked by hand is what the library answers. */
class AnswerProblemsTest {
  private static final double ROUNDING = 1e-7;

  /** Paper is flat and a leg is not, parts are means of an hour: 0.21° at worst of 1500 legs. */
  private static final double FLAT_DEGREES = 0.3;

  /** A clearing bearing is given in whole degrees, rounded away from the danger. */
  private static final double SAFE_WHOLE_DEGREE = 1.0;

  /** Of the legs drawn, so many in a hundred at least are worked by hand and not refused. */
  private static final double MOST_PERCENT = 90.0;

  private static final Variation VARIATION = Variation.ofDegreesWest(4.5);
  private static final Position START = Position.ofDegrees(46.2, -26.3);
  private static final Instant NOON = Instant.parse("2026-06-14T12:00:00Z");

  private static void sameDirection(double expected, double actual, double tolerance) {
    double off = TrueBearing.ofDegrees(expected).turnDegreesTo(TrueBearing.ofDegrees(actual));
    assertEquals(0.0, off, tolerance, () -> expected + " and " + actual);
  }

  @Property(seed = Seeds.SEED, tries = 300)
  void aTriangleIsWorkedToItsOwnAnswer(
      @ForAll @DoubleRange(min = 0, max = 359.9) double course,
      @ForAll @DoubleRange(min = 0, max = 359.9) double set,
      @ForAll @DoubleRange(min = 0, max = 2.4) double rate) {
    Speed speed = Speed.ofKnots(3.2);
    CurrentTriangle triangle =
        CurrentTriangle.solve(
                TrueBearing.ofDegrees(course),
                Craft.ofSpeed(speed),
                Velocity.ofSetAndRate(TrueBearing.ofDegrees(set), Speed.ofKnots(rate)))
            .orElseThrow();
    Problem problem = AnswerProblems.of(triangle, speed, VARIATION);
    sameDirection(
        triangle.courseToSteer().toMagnetic(VARIATION).degrees(), problem.answer(), ROUNDING);
    assertEquals(rate, problem.exact("Rate"), ROUNDING);
  }

  @Property(seed = Seeds.SEED, tries = 60)
  @StatisticsReport(onFailureOnly = true)
  void aLegThroughAStreamThatChangesIsWorkedToItsOwnHeading(
      @ForAll @DoubleRange(min = 0, max = 359.9) double course,
      @ForAll @DoubleRange(min = 2, max = 12) double miles,
      @ForAll @DoubleRange(min = 0, max = 1.6) double knots,
      @ForAll @DoubleRange(min = 0, max = 12) double windKnots) {
    StreamField stream = turning(knots);
    RhumbLeg leg =
        RhumbLeg.from(START, TrueBearing.ofDegrees(course), Distance.ofNauticalMiles(miles));
    Craft craft =
        Craft.ofSpeed(Speed.ofKnots(3.4))
            .withWindResponse(WindResponse.commonPractice(WindResponse.Trim.ORDINARY));
    WindField wind =
        WindField.steady(
            Velocity.ofWind(TrueBearing.ofDegrees(course + 70), Speed.ofKnots(windKnots)));
    SteeredLeg answer =
        CourseToSteer.with(craft, stream)
            .withWind(wind)
            .withStrategy(Strategy.constantHeading())
            .solve(leg, NOON)
            .orElseThrow();
    Problem problem;
    try {
      problem = AnswerProblems.of(answer, stream, VARIATION);
    } catch (IllegalArgumentException bends) {
      assertTrue(bends.getMessage().contains("bends"), bends::getMessage);
      mostAreWorked(false);
      return;
    }
    mostAreWorked(true);
    sameDirection(
        answer.courseToSteer().toMagnetic(VARIATION).degrees(), problem.answer(), FLAT_DEGREES);
    assertEquals(leg.length().nauticalMiles(), problem.exact("Distance made good"), 0.01 * miles);
  }

  /** Refusals must not empty the property. */
  private static void mostAreWorked(boolean worked) {
    Statistics.label("worked")
        .collect(worked)
        .coverage(coverage -> coverage.check(true).percentage(share -> share >= MOST_PERCENT));
  }

  /** A stream that turns round once in about six hours, the same over the whole area. */
  private static StreamField turning(double knots) {
    return new StreamField() {
      private static final long serialVersionUID = 1L;

      @Override
      public boolean sample(double lat, double lon, double t, double[] out, int at) {
        double angle = Math.PI * (t - NOON.getEpochSecond()) / 22_000.0;
        out[at] = Speed.ofKnots(knots).metresPerSecond() * Math.cos(angle);
        out[at + 1] = 0.4 * Speed.ofKnots(knots).metresPerSecond() * Math.sin(angle);
        return true;
      }
    };
  }

  @Test
  void anEstimatedPositionOfSeveralRunsIsWhereTheLogLeads() {
    StreamField stream =
        StreamField.steady(Velocity.ofSetAndRate(TrueBearing.ofDegrees(110), Speed.ofKnots(1.2)));
    DeadReckoning reckoning =
        DeadReckoning.of(
            START,
            List.of(
                LogEntry.of(NOON, TrueBearing.ofDegrees(40), Speed.ofKnots(3.4)).withLeeway(5),
                LogEntry.of(
                    NOON.plus(Duration.ofMinutes(50)),
                    TrueBearing.ofDegrees(85),
                    Speed.ofKnots(3.0))),
            NOON.plus(Duration.ofMinutes(95)),
            stream);
    Problem problem = AnswerProblems.of(reckoning.runs());
    RhumbLeg made = RhumbLeg.between(START, reckoning.estimated().orElseThrow());
    sameDirection(made.course().degrees(), problem.answer(), FLAT_DEGREES);
    assertEquals(made.length().nauticalMiles(), problem.exact("Distance made good"), 0.02);
    assertThrows(IllegalArgumentException.class, () -> AnswerProblems.of(List.of()));
  }

  @Test
  void aFixByTwoBearingsIsWhereTheSolverPutsIt() {
    Position tower = Position.ofDegrees(46.25, -26.31);
    Position skerry = Position.ofDegrees(46.24, -26.25);
    BearingLine one = bearingOf("tower", tower);
    BearingLine two = bearingOf("skerry", skerry);
    Position fix = FixSolver.standard().solve(List.of(one, two)).orElseThrow().position();
    Problem problem = AnswerProblems.of(one, two, VARIATION);
    assertEquals(GeodesicLeg.between(fix, tower).length().nauticalMiles(), problem.answer(), 0.01);
  }

  @Test
  void aRunningFixIsWhereTheSolverPutsIt() {
    Position mark = Position.ofDegrees(46.23, -26.26);
    SteadyRun run =
        new SteadyRun(
            Duration.ofMinutes(25),
            TrueBearing.ofDegrees(10),
            Speed.ofKnots(3.3),
            Velocity.ofSetAndRate(TrueBearing.ofDegrees(80), Speed.ofKnots(1.1)));
    double miles = run.overGround().rate().knots() * 25.0 / 60.0;
    RhumbLeg made = RhumbLeg.from(START, run.overGround().set(), Distance.ofNauticalMiles(miles));
    BearingLine first = bearing("first", START, mark);
    BearingLine second = bearing("second", made.end(), mark);
    TransferredLine carried =
        TransferredLine.of(first, made.course(), made.length(), Covariance.ZERO);
    Position fix = FixSolver.standard().solve(List.of(carried, second)).orElseThrow().position();
    assertEquals(
        GeodesicLeg.between(fix, mark).length().nauticalMiles(),
        AnswerProblems.of(first, second, run).answer(),
        0.01);
  }

  private static BearingLine bearing(String name, Position from, Position mark) {
    return BearingLine.of(name, mark, GeodesicLeg.between(from, mark).initialCourse(), 3.0);
  }

  private static BearingLine bearingOf(String name, Position mark) {
    TrueBearing bearing = GeodesicLeg.between(START, mark).initialCourse();
    return BearingLine.ofMagnetic(name, mark, bearing.toMagnetic(VARIATION), VARIATION, 3.0);
  }

  @Test
  void clearingBearingsAndCoursesAimedOffAreTheLibrarysOwn() {
    Position mark = Position.ofDegrees(46.25, -26.31);
    Distance clearance = Distance.ofNauticalMiles(0.5);
    for (ClearingBearing.Danger danger : ClearingBearing.Danger.values()) {
      ClearingBearing clearing = ClearingBearing.of(mark, START, clearance, danger).orElseThrow();
      sameDirection(
          clearing.bearing().degrees(),
          AnswerProblems.of(clearing, mark, START, clearance).answer(),
          SAFE_WHOLE_DEGREE);
    }
    RhumbLeg leg = RhumbLeg.from(START, TrueBearing.ofDegrees(20), Distance.ofNauticalMiles(4));
    for (Side side : Side.values()) {
      AimOff aim = AimOff.to(leg, Distance.ofNauticalMiles(0.3), 0.95, side);
      sameDirection(aim.course().degrees(), AnswerProblems.of(aim).answer(), ROUNDING);
    }
  }

  @Test
  void daylightAndLandMapsToo() {
    SunDay day = SunDay.of(LocalDate.of(2026, 6, 14), ZoneId.of("UTC-02:00"), START);
    Instant arrival = NOON.plus(Duration.ofHours(5));
    Instant sunset = day.daylight().set().orElseThrow();
    assertEquals(
        Duration.between(arrival, sunset).toMinutes(),
        AnswerProblems.of(day, NOON, arrival).answer(),
        ROUNDING);
    MapBearings norths = MapBearings.at(START, MapGrid.universal(START), VARIATION);
    GridBearing onMap = new GridBearing(312, norths.convergence().grid());
    sameDirection(
        norths.toMagnetic(onMap).degrees(), AnswerProblems.of(norths, onMap).answer(), ROUNDING);
  }

  @Test
  void aTriangleSaysByHowMuchRoundingByHandMovedIt() {
    CurrentTriangle triangle =
        CurrentTriangle.solve(
                TrueBearing.ofDegrees(75),
                Craft.ofSpeed(Speed.ofKnots(3.3)),
                Velocity.ofSetAndRate(TrueBearing.ofDegrees(31), Speed.ofKnots(1.27)))
            .orElseThrow();
    String text = AnswerProblems.of(triangle, Speed.ofKnots(3.3), VARIATION).working().toString();
    assertTrue(text.contains("Rounding") && text.contains("moves"), text);
  }
}
