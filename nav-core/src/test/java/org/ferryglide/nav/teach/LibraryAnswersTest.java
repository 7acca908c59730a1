package org.ferryglide.nav.teach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.DeviationTable;
import org.ferryglide.nav.bearing.HeadingDeviation;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.fix.BearingLine;
import org.ferryglide.nav.fix.Fix;
import org.ferryglide.nav.fix.FixSolver;
import org.ferryglide.nav.fix.TransferredLine;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.landfall.AimOff;
import org.ferryglide.nav.landfall.Side;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Step;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.DeadReckoning;
import org.ferryglide.nav.reckon.LogEntry;
import org.ferryglide.nav.sight.BackBearing;
import org.ferryglide.nav.sight.ClearingBearing;
import org.ferryglide.nav.sight.OneInSixty;
import org.ferryglide.nav.sight.Refraction;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.CurrentTriangle;
import org.ferryglide.nav.steer.HourlyStream;
import org.ferryglide.nav.steer.WindResponse;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.testing.Seeds;

/**
 * The problems' exact answers beside those of the rooms that answer the same question, over random
 * figures; norths, triangle and bow bearings stand in {@link ProblemTest}. Places lie at the
 * equator, where the plane of the problems and the ellipsoid of the rooms are one but for the
 * flattening of 1/150 between a mile north and a mile east, which distances in miles of 1852 m do
 * not see.
 */
class LibraryAnswersTest {
  private static final double ROUNDING = 1e-9;

  /** A leg of ten miles is a plane to within the square of its angle at the earth's centre. */
  private static final double CURVED_EARTH_MILES = 1e-3;

  private static final double CURVED_EARTH_DEGREES = 0.02;
  private static final Instant START = Instant.parse("2026-06-14T06:00:00Z");
  private static final Position PLACE = Position.ofDegrees(0.0, -25.0);

  private static Position from(Position start, double degrees, double miles) {
    Distance length = Distance.ofNauticalMiles(Math.abs(miles));
    return GeodesicLeg.from(start, TrueBearing.ofDegrees(degrees), length).end();
  }

  private static void bearing(double expected, Problem problem, double tolerance) {
    Quantity quantity = problem.quantity(problem.asked());
    assertEquals(
        0.0, quantity.difference(problem.answer(), expected), tolerance, problem::toString);
    tellsItsRounding(problem);
  }

  private static void number(double expected, Problem problem, double tolerance) {
    assertEquals(expected, problem.answer(), tolerance, problem::toString);
    tellsItsRounding(problem);
  }

  /**
   * The last line carries the exact answer, and the one before it by how much rounding moved it.
   */
  private static void tellsItsRounding(Problem problem) {
    List<Step> steps = problem.working().steps();
    Step last = steps.get(steps.size() - 1);
    Step rounding = steps.get(steps.size() - 2);
    assertEquals("In the head", steps.get(0).name());
    assertEquals("Check", last.name());
    assertEquals("Rounding", rounding.name());
    assertEquals(problem.answer(), last.result().exact(), ROUNDING);
    Quantity quantity = problem.quantity(problem.asked());
    double moved = quantity.difference(last.result().byHand(), problem.answer());
    String told =
        rounding.result().text().replace("moves nothing", "moves 0").replaceAll("[^0-9.]", "");
    assertEquals(Math.abs(moved), Double.parseDouble(told), 0.005 + ROUNDING, problem::toString);
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void deviationFromACard(
      @ForAll @IntRange(max = 359) int course, @ForAll @IntRange(min = -20, max = 20) int east) {
    DeviationTable card =
        DeviationTable.through(
            List.of(entry(0, 3), entry(60, -2), entry(120, -5), entry(200, 1), entry(280, 4)));
    TrueBearing leg = TrueBearing.ofDegrees(course);
    Variation variation = Variation.ofDegreesEast(east);
    bearing(
        card.deviationOn(leg.toMagnetic(variation)).toCompass(leg.toMagnetic(variation)).degrees(),
        BearingProblems.trueToCompass(leg, variation, card),
        ROUNDING);
  }

  private static HeadingDeviation entry(int compass, double east) {
    return new HeadingDeviation(CompassBearing.ofDegrees(compass), Deviation.ofDegreesEast(east));
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void backBearing(@ForAll @IntRange(max = 359) int track, @ForAll @IntRange(max = 359) int bow) {
    TrueBearing over = TrueBearing.ofDegrees(track);
    Position mark = from(PLACE, track + 180.0, 2.0);
    Variation variation = Variation.ofDegreesWest(7);
    RhumbLeg leg = RhumbLeg.from(mark, over, Distance.ofNauticalMiles(5));
    bearing(
        BackBearing.of(leg, mark)
            .expectedAt(Distance.ofNauticalMiles(3))
            .toMagnetic(variation)
            .degrees(),
        BearingProblems.backBearing(over, TrueBearing.ofDegrees(bow), variation),
        CURVED_EARTH_DEGREES);
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void leeway(
      @ForAll @IntRange(max = 359) int course,
      @ForAll @IntRange(min = 50, max = 130) int off,
      @ForAll @IntRange(min = 2, max = 20) int leeway,
      @ForAll boolean right) {
    TrueBearing track = TrueBearing.ofDegrees(course);
    TrueBearing windFrom = track.turnedBy(right ? off : -off);
    WindResponse response =
        WindResponse.none()
            .withLeeway(
                new double[] {0, 180},
                new double[] {0, 1, 60},
                new double[][] {{0, leeway, leeway}, {0, leeway, leeway}});
    CurrentTriangle solved =
        CurrentTriangle.solveInWind(
                track,
                Craft.ofSpeed(Speed.ofKnots(3.5)).withWindResponse(response),
                Velocity.STILL,
                Velocity.ofSetAndRate(windFrom.reciprocal(), Speed.ofKnots(12)))
            .orElseThrow();
    Variation variation = Variation.ofDegreesWest(4);
    bearing(
        solved.courseToSteer().toMagnetic(variation).degrees(),
        SteeringProblems.leeway(track, windFrom, leeway, variation),
        1e-4);
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void estimatedPosition(
      @ForAll @IntRange(max = 359) int heading,
      @ForAll @IntRange(min = -20, max = 20) int leeway,
      @ForAll @IntRange(max = 359) int set,
      @ForAll @DoubleRange(min = 0.2, max = 2.5) double rate,
      @ForAll @IntRange(min = 20, max = 150) int minutes) {
    TrueBearing bow = TrueBearing.ofDegrees(heading);
    Speed speed = Speed.ofKnots(3.4);
    Velocity stream = Velocity.ofSetAndRate(TrueBearing.ofDegrees(set), Speed.ofKnots(rate));
    Position reached =
        DeadReckoning.of(
                PLACE,
                List.of(LogEntry.of(START, bow, speed).withLeeway(leeway)),
                START.plus(Duration.ofMinutes(minutes)),
                StreamField.steady(stream))
            .estimated()
            .orElseThrow();
    Problem problem = ReckoningProblems.estimatedPosition(bow, leeway, speed, minutes, stream);
    RhumbLeg made = RhumbLeg.between(PLACE, reached);
    Assume.that(made.length().nauticalMiles() > 0.3);
    assertEquals(
        made.length().nauticalMiles(), problem.exact("Distance made good"), CURVED_EARTH_MILES);
    bearing(made.course().degrees(), problem, CURVED_EARTH_DEGREES);
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void hourlyVectorsEndOnTheTrack(
      @ForAll @IntRange(max = 359) int course,
      @ForAll @IntRange(max = 359) int first,
      @ForAll @IntRange(max = 359) int second,
      @ForAll @DoubleRange(min = 0.2, max = 1.8) double rate) {
    Velocity one = Velocity.ofSetAndRate(TrueBearing.ofDegrees(first), Speed.ofKnots(rate));
    Velocity two = Velocity.ofSetAndRate(TrueBearing.ofDegrees(second), Speed.ofKnots(1.1));
    TrueBearing leg = TrueBearing.ofDegrees(course);
    Speed speed = Speed.ofKnots(3.5);
    Problem problem =
        ReckoningProblems.hourlyVectors(
            leg, speed, List.of(one, two), Variation.ofDegreesEast(0.0));
    Position reached =
        DeadReckoning.of(
                PLACE,
                List.of(LogEntry.of(START, TrueBearing.ofDegrees(problem.answer()), speed)),
                START.plus(Duration.ofHours(2)),
                hours(one, two))
            .estimated()
            .orElseThrow();
    RhumbLeg made = RhumbLeg.between(PLACE, reached);
    assertEquals(
        made.length().nauticalMiles(), problem.exact("Distance made good"), CURVED_EARTH_MILES);
    assertEquals(0.0, leg.turnDegreesTo(made.course()), CURVED_EARTH_DEGREES, problem::toString);
    tellsItsRounding(problem);
  }

  /** The first stream for an hour from the start, then the second: steps about half past. */
  private static StreamField hours(Velocity one, Velocity two) {
    double knot = Speed.METRES_PER_SECOND_PER_KNOT;
    return HourlyStream.steps(
        START.getEpochSecond() + 1800.0,
        new double[] {one.eastMetresPerSecond() / knot, two.eastMetresPerSecond() / knot},
        new double[] {one.northMetresPerSecond() / knot, two.northMetresPerSecond() / knot});
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void fixByTwoBearings(
      @ForAll @IntRange(max = 359) int first,
      @ForAll @IntRange(min = 30, max = 150) int cut,
      @ForAll boolean right,
      @ForAll @DoubleRange(min = 0.5, max = 4) double off,
      @ForAll @DoubleRange(min = 0.5, max = 4) double offSecond) {
    double second = first + (right ? cut : -cut);
    Position one = from(PLACE, first, off);
    Position two = from(PLACE, second, offSecond);
    Variation variation = Variation.ofDegreesWest(6);
    Fix fix =
        FixSolver.standard()
            .solve(
                List.of(
                    BearingLine.of("one", one, TrueBearing.ofDegrees(first), 2.0),
                    BearingLine.of("two", two, TrueBearing.ofDegrees(second), 2.0)))
            .orElseThrow();
    GeodesicLeg between = GeodesicLeg.between(one, two);
    Problem problem =
        FixingProblems.twoBearings(
            between.initialCourse(),
            between.length(),
            TrueBearing.ofDegrees(first).toMagnetic(variation),
            TrueBearing.ofDegrees(second).toMagnetic(variation),
            variation);
    number(
        GeodesicLeg.between(fix.position(), one).length().nauticalMiles(),
        problem,
        CURVED_EARTH_MILES);
    assertEquals(offSecond, problem.exact("Off the second mark"), CURVED_EARTH_MILES);
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void runningFix(
      @ForAll @IntRange(max = 359) int track,
      @ForAll @IntRange(min = 20, max = 60) int first,
      @ForAll @IntRange(max = 359) int set,
      @ForAll @DoubleRange(min = 0.1, max = 0.8) double drift) {
    double run = 2.0;
    Position mark = from(PLACE, track + first, 3.0);
    Position now = from(from(PLACE, track, run), set, drift);
    GeodesicLeg second = GeodesicLeg.between(now, mark);
    double cut =
        Math.abs(TrueBearing.ofDegrees(track + first).turnDegreesTo(second.initialCourse()));
    Assume.that(cut > 20.0 && cut < 160.0);
    Fix fix =
        FixSolver.standard()
            .solve(
                List.of(
                    TransferredLine.between(
                        BearingLine.of("then", mark, TrueBearing.ofDegrees(track + first), 2.0),
                        PLACE,
                        now,
                        Covariance.ZERO),
                    BearingLine.of("now", mark, second.initialCourse(), 2.0)))
            .orElseThrow();
    number(
        GeodesicLeg.between(fix.position(), mark).length().nauticalMiles(),
        FixingProblems.runningFix(
            TrueBearing.ofDegrees(track + first),
            second.initialCourse(),
            TrueBearing.ofDegrees(track),
            Distance.ofNauticalMiles(run),
            TrueBearing.ofDegrees(set),
            Distance.ofNauticalMiles(drift)),
        3.0 * CURVED_EARTH_MILES); // a cut of twenty degrees triples it
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void distancesOffByHorizonAndByOneInSixty(
      @ForAll @DoubleRange(min = 3, max = 60) double height,
      @ForAll @DoubleRange(min = 0.5, max = 3) double eye,
      @ForAll @DoubleRange(min = 1, max = 20) double degrees) {
    number(
        Refraction.ONE_SEVENTH
            .geographicRange(Distance.ofMetres(height), Distance.ofMetres(eye))
            .nauticalMiles(),
        DistanceOffProblems.risingLight(Distance.ofMetres(height), Distance.ofMetres(eye)),
        ROUNDING);
    Distance paddled = Distance.ofNauticalMiles(height / 6.0);
    number(
        OneInSixty.offset(paddled, degrees).nauticalMiles(),
        DistanceOffProblems.oneInSixty(paddled, degrees),
        ROUNDING);
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void aimingOff(
      @ForAll @IntRange(max = 359) int course,
      @ForAll boolean setsRight,
      @ForAll @DoubleRange(min = 0.1, max = 0.6) double sigma) {
    GeodesicLeg leg =
        GeodesicLeg.from(PLACE, TrueBearing.ofDegrees(course), Distance.ofNauticalMiles(6));
    AimOff aim =
        AimOff.to(leg, Distance.ofNauticalMiles(sigma), 0.95, setsRight ? Side.LEFT : Side.RIGHT);
    bearing(
        aim.course().degrees(),
        LandfallProblems.aimOff(
            TrueBearing.ofDegrees(course),
            TrueBearing.ofDegrees(course + (setsRight ? 70.0 : -70.0)),
            Math.abs(aim.turnDegrees())),
        CURVED_EARTH_DEGREES);
  }

  /** The room rounds to the whole degree on the safe side: within one degree and never beyond. */
  @Property(seed = Seeds.SEED, tries = 200)
  void clearingBearing(
      @ForAll @IntRange(max = 359) int toDanger,
      @ForAll @DoubleRange(min = 1, max = 4) double miles,
      @ForAll @DoubleRange(min = 0.1, max = 0.8) double keep,
      @ForAll ClearingBearing.Danger danger) {
    double limit =
        ClearingBearing.of(
                PLACE, from(PLACE, toDanger, miles), Distance.ofNauticalMiles(keep), danger)
            .orElseThrow()
            .bearing()
            .degrees();
    Problem problem =
        LandfallProblems.clearingBearing(
            TrueBearing.ofDegrees(toDanger),
            Distance.ofNauticalMiles(miles),
            Distance.ofNauticalMiles(keep),
            danger);
    double rounded = Quantity.TRUE_BEARING.difference(limit, problem.answer());
    double safe = danger == ClearingBearing.Danger.TO_PORT ? -rounded : rounded;
    assertTrue(safe > -CURVED_EARTH_DEGREES && safe < 1.0 + CURVED_EARTH_DEGREES, () -> "" + safe);
    tellsItsRounding(problem);
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void measuredLeg(
      @ForAll @DoubleRange(min = -30, max = 30) double north,
      @ForAll @DoubleRange(min = -40, max = 40) double east,
      @ForAll @DoubleRange(min = 0, max = 65) double latitude) {
    Assume.that(Math.hypot(north, east) > 1.0);
    Position start = Position.ofDegrees(latitude - north / 120.0, -25.0);
    Position end = Position.ofDegrees(latitude + north / 120.0, -25.0 + east / 60.0);
    Ellipsoid sphere = Ellipsoid.sphere(1852.0 * 60.0 * 180.0 / Math.PI);
    double miles = RhumbLeg.between(sphere, start, end).length().nauticalMiles();
    Problem problem = ChartProblems.measuredLeg(north, east, latitude, 66.0);
    number(miles, problem, 0.001 * miles);
    assertEquals(
        RhumbLeg.between(start, end).length().nauticalMiles(), problem.answer(), 0.006 * miles);
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void daylightLeft(
      @ForAll @IntRange(min = 300, max = 700) int departure,
      @ForAll @IntRange(min = 10, max = 300) int minutes) {
    LocalTime sunset = LocalTime.of(21, 10);
    LocalTime landing = LocalTime.MIDNIGHT.plusMinutes(departure + (long) minutes);
    number(
        Duration.between(landing, sunset).toMinutes(),
        LandfallProblems.daylightLeft(departure, minutes, sunset.toSecondOfDay() / 60.0),
        ROUNDING);
  }
}
