package org.ferryglide.examples.teach;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.GridBearing;
import org.ferryglide.nav.bearing.GridConvergence;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.sight.ClearingBearing;
import org.ferryglide.nav.teach.BearingProblems;
import org.ferryglide.nav.teach.FixingProblems;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.Quantity;
import org.ferryglide.nav.teach.SteeringProblems;
import org.ferryglide.tide.stream.StreamHour;
import org.ferryglide.tide.teach.StreamProblems;
import org.ferryglide.tide.teach.TideProblems;
import org.ferryglide.tide.teach.TideProblems.Water;
import org.jspecify.annotations.Nullable;

/** Draws one question of a kind. Figures are such as the sheet can print without rounding. */
final class Questions {
  /** Kinds of question, easy ones first. */
  static final int KINDS = 20;

  private static final int SECOND_GRADE = 8;
  private static final int THIRD_GRADE = 15;
  private static final double MINUTES_IN_DAY = 1440.0;

  private final PracticeArea area;
  private final SplittableRandom random;

  Questions(PracticeArea area, SplittableRandom random) {
    this.area = area;
    this.random = random;
  }

  /** A question, or null where the figures drawn make none. */
  @Nullable Exercise draw(int kind, int number) {
    try {
      int grade = kind < SECOND_GRADE ? 1 : kind < THIRD_GRADE ? 2 : 3;
      return switch (kind) {
        case 0 -> laidOff(number, grade);
        case 1 -> exercise(number, grade, byCard());
        case 2 -> exercise(number, grade, depth());
        case 3 -> exercise(number, grade, small());
        case 4 -> exercise(number, grade, daylight());
        case 5 -> exercise(number, grade, aim());
        case 6 -> exercise(number, grade, vertical());
        case 7 -> exercise(number, grade, back());
        case 8 -> exercise(number, grade, fromCompass());
        case 9 -> exercise(number, grade, oldRose());
        case 10 -> exercise(number, grade, fromMap());
        case 11 -> exercise(number, grade, bow());
        case 12 -> exercise(number, grade, height());
        case 13 -> exercise(number, grade, secondary());
        case 14 -> exercise(number, grade, clear());
        case 15 -> exercise(number, grade, stream());
        case 16 -> exercise(number, grade, heading());
        case 17 -> exercise(number, grade, time());
        case 18 -> exercise(number, grade, estimated());
        case 19 -> exercise(number, grade, hours());
        default -> throw new IllegalArgumentException("no question of kind " + kind);
      };
    } catch (IllegalArgumentException e) {
      return null; // the figures drawn contradict each other: a stream too strong, lines that do
      // not cut
    }
  }

  private static Exercise exercise(int number, int grade, Problem problem) {
    return new Exercise(
        number,
        grade,
        problem.title() + ". " + problem.question() + ". Wanted: " + problem.asked() + ".",
        problem);
  }

  /** The course is not printed: it is to be laid off on the sheet. */
  private Exercise laidOff(int number, int grade) {
    PracticeMark from = mark();
    PracticeMark to = mark();
    if (from.equals(to)) {
      throw new IllegalArgumentException("a leg needs two marks");
    }
    RhumbLeg leg = RhumbLeg.between(from.position(), to.position());
    Problem problem = BearingProblems.trueToMagnetic(leg.course(), now());
    return new Exercise(
        number,
        grade,
        "Lay off the leg from "
            + from.name()
            + " to "
            + to.name()
            + " on the sheet. Variation "
            + Quantity.EAST_WEST.text(now().degreesEast())
            + ". What is the magnetic course?",
        problem);
  }

  private Variation now() {
    double east = area.rose().variationInYear(area.year()).degreesEast();
    return Variation.ofDegreesEast(Math.rint(east * 4.0) / 4.0);
  }

  private Problem byCard() {
    return BearingProblems.trueToCompass(bearing(), now(), area.card());
  }

  private Problem depth() {
    double charted = random.nextBoolean() ? tenths(0.5, 3.0) : -tenths(0.5, 3.0);
    return TideProblems.depthOver(tenths(1.0, 6.0), charted);
  }

  private Problem small() {
    return FixingProblems.oneInSixty(miles(4.0, 12.0), random.nextInt(3, 13));
  }

  private Problem daylight() {
    return FixingProblems.daylightLeft(
        random.nextInt(600, 780), random.nextInt(75, 250), random.nextInt(1080, 1290));
  }

  private Problem aim() {
    return FixingProblems.aimOff(bearing(), bearing(), random.nextInt(6, 16));
  }

  private Problem vertical() {
    return FixingProblems.verticalAngle(mark().heightMetres(), random.nextInt(25, 90));
  }

  private Problem back() {
    TrueBearing track = bearing();
    double off = random.nextInt(8, 25) * (random.nextBoolean() ? 1 : -1);
    return BearingProblems.backBearing(track, track.turnedBy(off), now());
  }

  private Problem fromCompass() {
    CompassBearing taken = CompassBearing.ofDegrees(random.nextInt(360));
    double east = random.nextInt(3, 8) * (random.nextBoolean() ? 1 : -1);
    return BearingProblems.compassToTrue(taken, Deviation.ofDegreesEast(east), now());
  }

  private Problem oldRose() {
    return BearingProblems.roseCarriedForward(bearing(), area.rose(), area.year());
  }

  private Problem fromMap() {
    double east = random.nextInt(3, 9) * 0.5 * (random.nextBoolean() ? 1 : -1);
    return BearingProblems.gridToMagnetic(
        GridBearing.ofDegrees(random.nextInt(360), "practice grid"),
        GridConvergence.ofDegreesEast(east, "practice grid"),
        now());
  }

  private Problem bow() {
    int first = random.nextInt(20, 50);
    return FixingProblems.bowBearings(miles(0.8, 3.0), first, first + random.nextInt(20, 60));
  }

  private Problem height() {
    int i = random.nextInt(area.waters().size() - 1);
    Water before = area.waters().get(i);
    Water after = area.waters().get(i + 1);
    double gap = after.clockMinutes() - before.clockMinutes();
    double at = Math.rint(before.clockMinutes() + gap * random.nextDouble(0.1, 0.9));
    return switch (random.nextInt(3)) {
      case 0 -> TideProblems.byTwelfths(before, after, at);
      case 1 -> TideProblems.byCosine(before, after, at);
      default -> TideProblems.byCurve(area.curve(), before, after, at);
    };
  }

  private Problem secondary() {
    Water water = area.waters().get(random.nextInt(area.waters().size()));
    return TideProblems.secondaryPortTime(water.clockMinutes(), area.differences(), 60.0);
  }

  private Problem clear() {
    return FixingProblems.clearingBearing(
        bearing(),
        miles(1.5, 4.0),
        miles(0.3, 0.9),
        random.nextBoolean()
            ? ClearingBearing.Danger.TO_PORT
            : ClearingBearing.Danger.TO_STARBOARD);
  }

  private Problem stream() {
    List<Water> waters = area.waters();
    int high = waters.get(0).metres() > waters.get(1).metres() ? 0 : 1;
    double neaps = area.ranges().neapMetres();
    double range = tenths(neaps - 0.3, area.ranges().springMetres() + 0.3);
    double at = waters.get(high).clockMinutes() + 60.0 * random.nextInt(-5, 6);
    if (at < 0.0 || at >= MINUTES_IN_DAY) {
      throw new IllegalArgumentException("the time must be of the same day as the high water");
    }
    return StreamProblems.rate(
        area.stream(),
        area.ranges(),
        waters.get(high).clockMinutes(),
        range,
        PracticeArea.tidy(range + tenths(0.9, 1.8)),
        at);
  }

  private Problem heading() {
    return SteeringProblems.courseToSteer(bearing(), knots(2.8, 4.2), flow(), now());
  }

  private Problem time() {
    return SteeringProblems.timeInStream(bearing(), miles(2.0, 6.0), knots(2.8, 4.2), flow());
  }

  private Problem estimated() {
    double leeway = random.nextInt(4, 10) * (random.nextBoolean() ? 1 : -1);
    return SteeringProblems.estimatedPosition(
        bearing(), leeway, knots(2.8, 4.2), 5.0 * random.nextInt(8, 23), flow());
  }

  private Problem hours() {
    List<Velocity> hours = new ArrayList<>();
    int first = random.nextInt(area.stream().size() - 3);
    for (int i = first; i < first + 3; i++) {
      StreamHour row = area.stream().get(i);
      hours.add(Velocity.ofSetAndRate(row.set(), row.springRate()));
    }
    return SteeringProblems.hourlyVectors(bearing(), knots(2.8, 4.2), hours, now());
  }

  private Velocity flow() {
    return Velocity.ofSetAndRate(bearing(), Speed.ofKnots(tenths(0.6, 2.2)));
  }

  private TrueBearing bearing() {
    return TrueBearing.ofDegrees(random.nextInt(360));
  }

  private PracticeMark mark() {
    return area.marks().get(random.nextInt(area.marks().size()));
  }

  private Distance miles(double from, double to) {
    return Distance.ofNauticalMiles(tenths(from, to));
  }

  private Speed knots(double from, double to) {
    return Speed.ofKnots(tenths(from, to));
  }

  private double tenths(double from, double to) {
    return PracticeArea.tidy(random.nextDouble(from, to));
  }
}
