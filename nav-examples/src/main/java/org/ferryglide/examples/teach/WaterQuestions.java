package org.ferryglide.examples.teach;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.ReckoningProblems;
import org.ferryglide.nav.teach.SteeringProblems;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.stream.StreamHour;
import org.ferryglide.tide.teach.SecondaryPortProblems;
import org.ferryglide.tide.teach.StreamProblems;
import org.ferryglide.tide.teach.TideProblems;
import org.ferryglide.tide.teach.TideProblems.Water;

/** Draws questions of tide, stream and wind. */
final class WaterQuestions {
  private static final double MINUTES_IN_DAY = 1440.0;
  private static final double MINUTES_IN_HOUR = 60.0;

  private final Draws draws;

  WaterQuestions(Draws draws) {
    this.draws = draws;
  }

  private PracticeArea area() {
    return draws.area();
  }

  Problem depth() {
    double charted = draws.tenths(0.5, 3.0) * (draws.coin() ? 1.0 : -1.0);
    return TideProblems.depthOver(
        Distance.ofMetres(draws.tenths(1.0, 6.0)),
        Distance.ofMetres(charted),
        Distance.ofMetres(draws.tenths(2.4, 3.4)));
  }

  Problem twelfths() {
    Water before = before();
    Water after = after(before);
    return TideProblems.byTwelfths(before, after, time(before, after));
  }

  Problem cosine() {
    Water before = before();
    Water after = after(before);
    return TideProblems.byCosine(before, after, time(before, after));
  }

  Problem curve() {
    Water before = before();
    Water after = after(before);
    return TideProblems.byCurve(area().curve(), before, after, time(before, after));
  }

  private Water before() {
    return area().waters().get(draws.whole(0, area().waters().size() - 1));
  }

  private Water after(Water before) {
    return area().waters().get(area().waters().indexOf(before) + 1);
  }

  private double time(Water before, Water after) {
    double gap = after.clockMinutes() - before.clockMinutes();
    return Math.rint(before.clockMinutes() + gap * draws.between(0.1, 0.9));
  }

  Problem secondaryTime() {
    Water water = area().waters().get(draws.whole(0, area().waters().size()));
    return SecondaryPortProblems.time(water.clockMinutes(), area().differences(), MINUTES_IN_HOUR);
  }

  Problem secondaryHeight() {
    double springs = draws.tenths(5.0, 6.2);
    double neaps = PracticeArea.tidy(springs - draws.tenths(1.2, 2.0));
    double atNeaps = draws.tenths(0.3, 0.9) * (draws.coin() ? 1.0 : -1.0);
    return SecondaryPortProblems.height(
        Distance.ofMetres(draws.tenths(neaps, springs)),
        Distance.ofMetres(springs),
        Distance.ofMetres(PracticeArea.tidy(atNeaps * 2.0)),
        Distance.ofMetres(neaps),
        Distance.ofMetres(atNeaps));
  }

  Problem nearestHour() {
    return StreamProblems.rate(
        area().stream(), area().ranges(), day(), sameDay(MINUTES_IN_HOUR * draws.whole(-5, 6)));
  }

  Problem betweenHours() {
    double after = MINUTES_IN_HOUR * draws.whole(-5, 5) + 5.0 * draws.whole(3, 10);
    return StreamProblems.betweenHours(area().stream(), area().ranges(), day(), sameDay(after));
  }

  private Water high() {
    List<Water> waters = area().waters();
    return waters.get(waters.get(0).height().metres() > waters.get(1).height().metres() ? 0 : 1);
  }

  private StreamProblems.Day day() {
    MeanRanges ranges = area().ranges();
    double range = draws.tenths(ranges.neap().metres() - 0.3, ranges.spring().metres() + 0.3);
    return new StreamProblems.Day(
        high().clockMinutes(),
        Distance.ofMetres(PracticeArea.tidy(range + draws.tenths(0.9, 1.8))),
        Distance.ofMetres(range),
        high().clockMinutes() + 5.0 * draws.eitherSide(8, 24));
  }

  private double sameDay(double minutesAfterHigh) {
    double at = high().clockMinutes() + minutesAfterHigh;
    if (at < 0.0 || at >= MINUTES_IN_DAY) {
      throw new IllegalArgumentException("the time must be of the same day as the high water");
    }
    return at;
  }

  Problem heading() {
    return SteeringProblems.courseToSteer(
        draws.bearing(), draws.knots(2.8, 4.2), draws.flow(), draws.now());
  }

  Problem time() {
    return SteeringProblems.timeInStream(
        draws.bearing(), draws.miles(2.0, 6.0), draws.knots(2.8, 4.2), draws.flow());
  }

  Problem leeway() {
    return SteeringProblems.leeway(
        draws.bearing(), draws.bearing(), draws.whole(4, 13), draws.now());
  }

  Problem estimated() {
    return ReckoningProblems.estimatedPosition(
        draws.bearing(),
        draws.eitherSide(4, 10),
        draws.knots(2.8, 4.2),
        5.0 * draws.whole(8, 23),
        draws.flow());
  }

  Problem hours() {
    List<Velocity> hours = new ArrayList<>();
    int first = draws.whole(0, area().stream().size() - 3);
    for (int i = first; i < first + 3; i++) {
      StreamHour row = area().stream().get(i);
      hours.add(Velocity.ofSetAndRate(row.set(), row.springRate()));
    }
    return ReckoningProblems.hourlyVectors(
        draws.bearing(), draws.knots(2.8, 4.2), hours, draws.now());
  }
}
