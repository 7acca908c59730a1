package org.ferryglide.nav.timing;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.EpochSeconds;
import org.ferryglide.nav.water.StreamField;

/**
 * When the stream at a place runs least between two runs: slack water.
 *
 * <p>It is found from the stream itself, not from high or low water, with which it seldom agrees. A
 * rotary stream never stands still, so the rate that is left is told.
 *
 * <pre>{@code
 * for (SlackWater slack : SlackWater.between(stream, narrows, dawn, dusk)) {
 *   System.out.println(slack.time() + ", still " + slack.stream().rate().inKnots(1));
 * }
 * }</pre>
 *
 * @param time when the rate is least; the middle, where it is least for a while
 * @param stream the stream then
 */
record SlackWater(Instant time, Velocity stream) implements Serializable {
  private static final long serialVersionUID = 1L;

  /** How often the stream is looked at, seconds. */
  private static final double STEP_SECONDS = 300.0;

  private static final double REFINED_SECONDS = 0.5;

  /** Rates closer than this are one rate, (m/s) squared. */
  private static final double SAME = 1e-12;

  /**
   * Every slack water at a place in a time.
   *
   * @param stream the stream
   * @param place where
   * @param from start of the time
   * @param until end of the time
   * @return the times of least rate in order, to the second; unmodifiable. Times without data, and
   *     least rates at the very ends of the time or of the data, are left out; two slacks within
   *     ten minutes may be taken for one
   * @throws IllegalArgumentException if {@code until} is before {@code from}, or more than 366 days
   *     after it
   */
  public static List<SlackWater> between(
      StreamField stream, Position place, Instant from, Instant until) {
    double first = EpochSeconds.of(from);
    double last = EpochSeconds.of(until);
    if (!(last >= first && last - first <= 366 * 86400.0)) {
      throw new IllegalArgumentException(
          "the end must be at most 366 days after the start, and not before it, but they were "
              + from
              + " and "
              + until);
    }
    double[] flow = new double[2];
    List<SlackWater> found = new ArrayList<>();
    double before = Double.NaN;
    double fall = Double.NaN; // when the rate last fell to what it is now
    for (double time = first; time <= last; time += STEP_SECONDS) {
      double now = square(stream, place, time, flow);
      if (now < before - SAME) {
        fall = time;
      } else if (now > before + SAME && !Double.isNaN(fall)) {
        found.add(least(stream, place, fall, time, flow));
        fall = Double.NaN;
      } else if (Double.isNaN(now)) {
        fall = Double.NaN;
      }
      before = now;
    }
    return Collections.unmodifiableList(found);
  }

  private static double square(StreamField stream, Position place, double time, double[] flow) {
    return stream.sample(place.latitudeDegrees(), place.longitudeDegrees(), time, flow, 0)
        ? flow[0] * flow[0] + flow[1] * flow[1]
        : Double.NaN;
  }

  /** The least rate about a time at which it fell and a time at which it rose. */
  private static SlackWater least(
      StreamField stream, Position place, double fell, double rose, double[] flow) {
    double time;
    if (rose - fell > 1.5 * STEP_SECONDS) { // the same for a while, as in a table of steps
      double rate = square(stream, place, fell, flow);
      double start =
          Edge.of(
              t -> square(stream, place, t, flow) <= rate + SAME, fell, fell - STEP_SECONDS, 0.5);
      double end =
          Edge.of(
              t -> square(stream, place, t, flow) <= rate + SAME,
              rose - STEP_SECONDS,
              rose,
              REFINED_SECONDS);
      time = 0.5 * (start + end);
    } else {
      time =
          new BrentOptimizer(1e-12, REFINED_SECONDS)
              .optimize(
                  new MaxEval(200),
                  GoalType.MINIMIZE,
                  new UnivariateObjectiveFunction(t -> square(stream, place, t, flow)),
                  new SearchInterval(fell - STEP_SECONDS, rose, fell))
              .getPoint();
    }
    square(stream, place, time, flow);
    return new SlackWater(EpochSeconds.toInstant(time), Velocity.ofEastAndNorth(flow[0], flow[1]));
  }
}
