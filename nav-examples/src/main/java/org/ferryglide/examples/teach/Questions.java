package org.ferryglide.examples.teach;

import java.util.List;
import java.util.function.Supplier;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.GridBearing;
import org.ferryglide.nav.bearing.GridConvergence;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.sight.ClearingBearing;
import org.ferryglide.nav.teach.BearingProblems;
import org.ferryglide.nav.teach.ChartProblems;
import org.ferryglide.nav.teach.DistanceOffProblems;
import org.ferryglide.nav.teach.FixingProblems;
import org.ferryglide.nav.teach.LandfallProblems;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.Quantity;
import org.jspecify.annotations.Nullable;

/** Draws one question of a kind. */
final class Questions {
  private static final String GRID = "practice grid";

  private final Draws draws;
  private final List<Kind> kinds;

  Questions(Draws draws) {
    this.draws = draws;
    WaterQuestions water = new WaterQuestions(draws);
    this.kinds =
        List.of(
            new Kind(1, this::byCard),
            new Kind(1, water::depth),
            new Kind(1, this::small),
            new Kind(1, this::daylight),
            new Kind(1, this::aim),
            new Kind(1, this::vertical),
            new Kind(1, this::rising),
            new Kind(1, this::back),
            new Kind(1, water::leeway),
            new Kind(2, this::fromCompass),
            new Kind(2, this::oldRose),
            new Kind(2, this::fromMap),
            new Kind(2, this::measured),
            new Kind(2, this::bow),
            new Kind(2, water::twelfths),
            new Kind(2, water::cosine),
            new Kind(2, water::curve),
            new Kind(2, water::secondaryTime),
            new Kind(2, water::secondaryHeight),
            new Kind(2, this::clear),
            new Kind(3, water::nearestHour),
            new Kind(3, water::betweenHours),
            new Kind(3, water::heading),
            new Kind(3, water::time),
            new Kind(3, this::twoBearings),
            new Kind(3, this::runningFix),
            new Kind(3, water::estimated),
            new Kind(3, water::hours));
  }

  /** What is drawn, and how hard it is. */
  private record Kind(int grade, Supplier<Problem> problem) {}

  /** How many kinds there are, easy ones first; the first one is a leg to lay off. */
  int kinds() {
    return kinds.size() + 1;
  }

  /** A question, or null where the figures drawn make none. */
  @Nullable Exercise draw(int kind, int number) {
    try {
      return kind == 0 ? laidOff(number) : asked(kinds.get(kind - 1), number);
    } catch (IllegalArgumentException e) {
      return null; // the figures drawn contradict each other, as a stream too strong
    }
  }

  private static Exercise asked(Kind kind, int number) {
    Problem problem = kind.problem.get();
    return new Exercise(
        number,
        kind.grade,
        problem.title() + ". " + problem.question() + ". Wanted: " + problem.asked() + ".",
        problem);
  }

  /** The course is not printed: it is to be laid off on the sheet. */
  private Exercise laidOff(int number) {
    PracticeMark from = draws.mark();
    PracticeMark to = draws.mark();
    if (from.equals(to)) {
      throw new IllegalArgumentException("a leg needs two marks");
    }
    RhumbLeg leg = RhumbLeg.between(from.position(), to.position());
    return new Exercise(
        number,
        1,
        "Lay off the leg from "
            + from.name()
            + " to "
            + to.name()
            + " on the sheet. Variation "
            + Quantity.EAST_WEST.text(draws.now().degreesEast())
            + ". What is the magnetic course?",
        BearingProblems.trueToMagnetic(leg.course(), draws.now()));
  }

  private Problem byCard() {
    return BearingProblems.trueToCompass(draws.bearing(), draws.now(), draws.area().card());
  }

  private Problem small() {
    return DistanceOffProblems.oneInSixty(draws.miles(4.0, 12.0), draws.whole(3, 13));
  }

  private Problem daylight() {
    return LandfallProblems.daylightLeft(
        draws.whole(600, 780), draws.whole(75, 250), draws.whole(1080, 1290));
  }

  private Problem aim() {
    return LandfallProblems.aimOff(draws.bearing(), draws.bearing(), draws.whole(6, 16));
  }

  private Problem vertical() {
    return DistanceOffProblems.verticalAngle(
        Distance.ofMetres(draws.mark().heightMetres()),
        Distance.ofMetres(draws.tenths(4.5, 6.0)),
        Distance.ofMetres(draws.tenths(0.5, 3.5)),
        draws.whole(25, 90));
  }

  private Problem rising() {
    return DistanceOffProblems.risingLight(
        Distance.ofMetres(draws.tenths(8.0, 45.0)), Distance.ofMetres(draws.tenths(0.7, 1.1)));
  }

  private Problem back() {
    TrueBearing track = draws.bearing();
    return BearingProblems.backBearing(track, track.turnedBy(draws.eitherSide(8, 25)), draws.now());
  }

  private Problem fromCompass() {
    return BearingProblems.compassToTrue(
        CompassBearing.ofDegrees(draws.whole(0, 360)),
        Deviation.ofDegreesEast(draws.eitherSide(3, 8)),
        draws.now());
  }

  private Problem oldRose() {
    PracticeArea area = draws.area();
    return ChartProblems.roseCarriedForward(draws.bearing(), area.rose(), area.year());
  }

  private Problem fromMap() {
    return BearingProblems.gridToMagnetic(
        GridBearing.ofDegrees(draws.whole(0, 360), GRID),
        GridConvergence.ofDegreesEast(draws.eitherSide(3, 9) * 0.5, GRID),
        draws.now());
  }

  private Problem measured() {
    return ChartProblems.measuredLeg(
        draws.tenths(4.0, 15.0) * (draws.coin() ? 1.0 : -1.0),
        draws.tenths(6.0, 25.0) * (draws.coin() ? 1.0 : -1.0),
        draws.whole(48, 60),
        draws.whole(61, 66));
  }

  private Problem bow() {
    int first = draws.whole(20, 50);
    return DistanceOffProblems.bowBearings(
        draws.miles(0.8, 3.0), first, first + draws.whole(20, 60));
  }

  private Problem clear() {
    return LandfallProblems.clearingBearing(
        draws.bearing(),
        draws.miles(1.5, 4.0),
        draws.miles(0.3, 0.9),
        draws.coin() ? ClearingBearing.Danger.TO_PORT : ClearingBearing.Danger.TO_STARBOARD);
  }

  /** Figures from the middle between two tens: read backwards from its ten, one is far off. */
  private Problem twoBearings() {
    return FixingProblems.twoBearings(
        TrueBearing.ofDegrees(middling()),
        draws.miles(1.8, 4.0),
        MagneticBearing.ofDegrees(middling()),
        MagneticBearing.ofDegrees(middling()),
        draws.now());
  }

  private double middling() {
    return 10.0 * draws.whole(0, 36) + draws.whole(4, 7);
  }

  private Problem runningFix() {
    TrueBearing track = draws.bearing();
    int first = draws.eitherSide(25, 50);
    double second = first + Math.copySign(draws.whole(30, 70), first);
    return FixingProblems.runningFix(
        track.turnedBy(first),
        track.turnedBy(second),
        track,
        draws.miles(1.0, 3.0),
        draws.bearing(),
        draws.miles(0.3, 1.2));
  }
}
