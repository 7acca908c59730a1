package org.ferryglide.nav.passage;

import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;

/** When a {@link Candidate} is looked at. */
final class LookTimes {
  /** Between looks where nothing is known of a stream or wind but what it answers. */
  private static final double STEP_SECONDS = 60.0;

  /**
   * Between looks where stream and wind tell their break points. At the first of them in each step,
   * or where the heading changes first, there is a look, so that hardly a jump lies between: in two
   * minutes a path at 4 knots in a stream that turns in an hour bends off its chord by decimetres.
   */
  private static final double SMOOTH_STEP_SECONDS = 120.0;

  /** No look is added nearer than this to another; of several changes in a step the first is. */
  private static final double APART_SECONDS = 1.0;

  private static final double HOUR = 3600.0;

  private LookTimes() {}

  /** From look to look along a route, seconds. */
  static double step(Passage passage, SteeredRoute route) {
    double departure = route.departureSeconds();
    WindField wind = passage.wind().orElse(null);
    boolean isTold = wind == null || isTold(wind.nextBreakAfter(departure));
    for (int i = passage.legs().size() - route.legs().size(); i < passage.legs().size(); i++) {
      StreamField own = passage.legs().get(i).options().stream().orElse(null);
      isTold &= own == null || isTold(own.nextBreakAfter(departure));
    }
    return isTold && isTold(passage.stream().nextBreakAfter(departure))
        ? SMOOTH_STEP_SECONDS
        : STEP_SECONDS;
  }

  private static boolean isTold(double nextBreak) {
    return nextBreak < Double.POSITIVE_INFINITY;
  }

  /**
   * The times of a leg's looks: every step, and in between where something breaks: the path, the
   * hour since the departure, or a wind that breaks no path.
   *
   * @param at where the first stands
   * @return where the next leg's stand
   */
  static int add(
      Passage passage,
      SteeredRoute route,
      int legOfRoute,
      double stepSeconds,
      WorkRoom room,
      int at) {
    SteeredLeg steered = route.legs().get(legOfRoute);
    double departure = route.departureSeconds();
    double from = EpochSeconds.of(steered.departure());
    double until = EpochSeconds.of(steered.arrival());
    double[] segments = steered.groundTrack().segmentTimes();
    WindField wind = passage.wind().orElse(null);
    int steps = Math.max(1, (int) Math.ceil((until - from) / stepSeconds));
    double[] times = room.times(at + 1 + 2 * steps);
    int end = at;
    int segment = 1;
    double hour = Double.NEGATIVE_INFINITY;
    for (int step = 1; step <= steps; step++) {
      double last = step == 1 ? from : from + (step - 1) * stepSeconds;
      double next = step == steps ? until : from + step * stepSeconds;
      double apart = last + APART_SECONDS;
      times[end++] = last;
      while (segment < segments.length && segments[segment] < apart) {
        segment++;
      }
      if (hour < apart) {
        hour = departure + HOUR * Math.ceil((apart - departure) / HOUR);
      }
      double windChange = wind == null ? hour : wind.nextBreakAfter(apart);
      double change = segment < segments.length ? segments[segment] : until;
      change = Math.min(change, windChange < hour ? windChange : hour); // NaN too
      if (change < next - APART_SECONDS) {
        times[end++] = change;
      }
    }
    times[end] = until;
    return end + 1;
  }
}
