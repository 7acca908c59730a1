package org.ferryglide.nav.teach;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.bearing.GridBearing;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.fix.BearingLine;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.grid.MapBearings;
import org.ferryglide.nav.landfall.AimOff;
import org.ferryglide.nav.landfall.Side;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.SteadyRun;
import org.ferryglide.nav.sight.ClearingBearing;
import org.ferryglide.nav.sky.SunDay;
import org.ferryglide.nav.steer.CurrentTriangle;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.water.StreamField;

/**
 * The library's own answers as problems, so that each shows its working and marks a learner's.
 *
 * <p>An answer does not carry its working. Hand the answer, with what it was asked, to {@code of}:
 * the problem's answer is the library's own, and {@link Problem#working()} says by how much
 * rounding by hand moves it.
 *
 * <pre>{@code
 * CurrentTriangle triangle =
 *     CurrentTriangle.solve(course, Craft.ofSpeed(speed), stream).orElseThrow();
 * System.out.println(AnswerProblems.of(triangle, speed, variation).working());
 * }</pre>
 *
 * <p>On paper the earth is flat: where an answer was found on the ellipsoid, the problem's differs
 * by what its method says, far below what can be drawn. Bearings have their own, {@link
 * org.ferryglide.nav.bearing.BearingWorking}.
 */
public final class AnswerProblems {
  private static final double STRAIGHT_DEGREES = 0.5;

  private AnswerProblems() {}

  /**
   * A current triangle without wind.
   *
   * @param triangle the answer
   * @param speed paddling speed it was solved for, above 0
   * @param variation variation at the place and date
   * @return the problem; its answer is the magnetic heading, {@code Water track} among its figures
   *     is {@link CurrentTriangle#waterTrack()}
   * @throws IllegalArgumentException if no stream leads from this speed to the answer
   */
  public static Problem of(CurrentTriangle triangle, Speed speed, Variation variation) {
    Velocity ground = Velocity.ofSetAndRate(triangle.course(), triangle.speedMadeGood());
    Velocity water = Velocity.ofSetAndRate(triangle.waterTrack(), speed);
    return SteeringProblems.courseToSteer(triangle.course(), speed, ground.minus(water), variation);
  }

  /**
   * A leg on a constant heading through a stream that changes: the stream of each part laid off one
   * after another, the paddling of the whole time swung from their end, leeway and variation
   * applied.
   *
   * @param leg the answer
   * @param stream the stream it was solved in
   * @param variation variation at the place and date
   * @return the problem; its answer is the magnetic heading, within half a degree of {@link
   *     SteeredLeg#courseToSteer()} made magnetic for legs up to 12 nautical miles
   * @throws IllegalArgumentException if the leg has several headings, or its way through the water
   *     bends with the wind
   */
  public static Problem of(SteeredLeg leg, StreamField stream, Variation variation) {
    if (leg.headings().size() > 1) {
      throw new IllegalArgumentException(
          "a leg must have one heading to be worked as one triangle, has " + leg.headings().size());
    }
    List<SteadyRun> runs = SteadyRun.along(leg, stream);
    TrueBearing first = runs.get(0).waterTrack();
    for (SteadyRun run : runs) {
      if (Math.abs(first.turnDegreesTo(run.waterTrack())) > STRAIGHT_DEGREES) {
        throw new IllegalArgumentException(
            "the way through the water bends from " + first + " to " + run.waterTrack());
      }
    }
    double leeway = leg.courseToSteer().turnDegreesTo(first);
    return PartProblems.heading(
        courseOf(leg), PartProblems.hourly(runs), leeway, variation.degreesEast());
  }

  private static double courseOf(SteeredLeg leg) {
    return RhumbLeg.between(leg.leg().start(), leg.leg().end()).course().degrees();
  }

  /**
   * An estimated position from the start, after several runs.
   *
   * @param runs the runs in their order, as {@link org.ferryglide.nav.reckon.DeadReckoning#runs()}
   *     has them, at least one
   * @return the problem; its answer is the track from the start, and {@code Distance made good}
   *     among its figures is how far
   * @throws IllegalArgumentException if there is no run
   */
  public static Problem of(List<SteadyRun> runs) {
    return PartProblems.estimated(PartProblems.hourly(runs));
  }

  /**
   * A fix by the bearings of two marks.
   *
   * @param first one bearing
   * @param second another
   * @param variation variation at the place and date
   * @return the problem; its answer is the distance off the first mark
   * @throws IllegalArgumentException if the bearings do not cut on the side of the party
   */
  public static Problem of(BearingLine first, BearingLine second, Variation variation) {
    GeodesicLeg apart = GeodesicLeg.between(first.mark(), second.mark());
    MagneticBearing one = first.bearing().toMagnetic(variation);
    MagneticBearing two = second.bearing().toMagnetic(variation);
    return FixingProblems.twoBearings(apart.initialCourse(), apart.length(), one, two, variation);
  }

  /**
   * A running fix: two bearings of one mark and the run between them.
   *
   * @param first the first bearing
   * @param second the second bearing of the same mark
   * @param between water track, speed and stream between them
   * @return the problem; its answer is the distance off the mark at the second bearing
   * @throws IllegalArgumentException if the bearings do not cut ahead of the party
   */
  public static Problem of(BearingLine first, BearingLine second, SteadyRun between) {
    double hours = Seconds.of(between.duration()) / 3600.0;
    return FixingProblems.runningFix(
        first.bearing(),
        second.bearing(),
        between.waterTrack(),
        Distance.ofNauticalMiles(between.speed().knots() * hours),
        between.stream().set(),
        Distance.ofNauticalMiles(between.stream().rate().knots() * hours));
  }

  /**
   * A clearing bearing.
   *
   * @param clearing the answer
   * @param mark the mark it is taken of
   * @param danger middle of the danger
   * @param clearance distance to keep from it, above 0
   * @return the problem; its answer is the true bearing, from which {@link
   *     ClearingBearing#bearing()} is the next whole degree on the safe side
   * @throws IllegalArgumentException if {@code clearance} is not below the distance of the danger
   */
  public static Problem of(
      ClearingBearing clearing, Position mark, Position danger, Distance clearance) {
    GeodesicLeg leg = GeodesicLeg.between(mark, danger);
    return LandfallProblems.clearingBearing(
        leg.initialCourse(), leg.length(), clearance, clearing.danger());
  }

  /**
   * A course aimed off.
   *
   * @param aim the answer
   * @return the problem, with the stream straight across towards the mark; its answer is the true
   *     course
   * @throws IllegalArgumentException if the turn is not from half a degree to 30°
   */
  public static Problem of(AimOff aim) {
    TrueBearing straight = aim.course().turnedBy(-aim.turnDegrees());
    double towards = aim.side() == Side.LEFT ? 90.0 : -90.0;
    return LandfallProblems.aimOff(
        straight, straight.turnedBy(towards), Math.abs(aim.turnDegrees()));
  }

  /**
   * The daylight left on landing.
   *
   * @param day the sun of the day at the landing, with a sunset
   * @param departure when the party leaves
   * @param arrival when it lands, after {@code departure}
   * @return the problem; its answer is the daylight left in minutes
   * @throws IllegalArgumentException if the sun does not set that day or the times are out of order
   */
  public static Problem of(SunDay day, Instant departure, Instant arrival) {
    Instant sunset =
        day.daylight()
            .set()
            .orElseThrow(
                () -> new IllegalArgumentException("the sun does not set on " + day.date()));
    ZonedDateTime midnight = day.date().atStartOfDay(day.zone());
    return LandfallProblems.daylightLeft(
        minutes(midnight, departure),
        Seconds.of(Duration.between(departure, arrival)) / 60.0,
        minutes(midnight, sunset));
  }

  private static double minutes(ZonedDateTime midnight, Instant time) {
    ZoneId zone = midnight.getZone();
    return Seconds.of(Duration.between(midnight, time.atZone(zone))) / 60.0;
  }

  /**
   * A bearing off a land map, for the compass.
   *
   * @param norths the norths at the place
   * @param onMap bearing laid off on the map
   * @return the problem; its answer is {@link MapBearings#toMagnetic(GridBearing)}
   */
  public static Problem of(MapBearings norths, GridBearing onMap) {
    return BearingProblems.gridToMagnetic(onMap, norths.convergence(), norths.variation());
  }
}
