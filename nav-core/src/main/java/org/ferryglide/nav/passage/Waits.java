package org.ferryglide.nav.passage;

import java.util.function.DoubleUnaryOperator;
import org.ferryglide.nav.basics.Edge;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WaterLevel;

/** When a stop ends. */
final class Waits {
  /** Levels and streams of tables move little in a minute. */
  private static final double STEP_SECONDS = 60.0;

  private Waits() {}

  /**
   * When the party is under way again, seconds; NaN if a level or stream is not known, positive
   * infinity if the wait has no end within the longest duration.
   */
  static double end(Passage passage, Stop stop, Position place, StreamField stream, double from) {
    double until = from + Seconds.of(passage.longestDuration());
    if (stop instanceof Stops.Ashore ashore) {
      return within(from + Seconds.of(ashore.length()), until);
    }
    if (stop instanceof Stops.UntilTime untilTime) {
      return within(Math.max(from, EpochSeconds.of(untilTime.time())), until);
    }
    if (stop instanceof Stops.UntilLevel untilLevel) {
      WaterLevel level = passage.level(untilLevel.port());
      double sign = untilLevel.atLeast() ? 1.0 : -1.0;
      return firstAtLeastZero(
          time -> sign * (level.heightMetres(time) - untilLevel.metres()), from, until);
    }
    double most = ((Stops.UntilStream) stop).rate().metresPerSecond();
    double[] eastNorth = new double[2];
    return firstAtLeastZero(
        time ->
            stream.sample(place.latitudeDegrees(), place.longitudeDegrees(), time, eastNorth, 0)
                ? most - Math.hypot(eastNorth[0], eastNorth[1])
                : Double.NaN,
        from,
        until);
  }

  private static double within(double end, double until) {
    return end <= until ? end : Double.POSITIVE_INFINITY;
  }

  /** The first time at which a margin is at least zero, to a second and not before it. */
  static double firstAtLeastZero(DoubleUnaryOperator margin, double from, double until) {
    double low = from;
    double value = margin.applyAsDouble(from);
    if (value >= 0.0) {
      return from;
    }
    double before = Double.NEGATIVE_INFINITY;
    while (low < until) {
      if (Double.isNaN(value)) {
        return Double.NaN;
      }
      double high = Math.min(until, low + STEP_SECONDS);
      double next = margin.applyAsDouble(high);
      if (value > before && value > next) { // a slack shorter than a step may lie at the top
        double top = top(margin, Math.max(from, low - STEP_SECONDS), high);
        if (margin.applyAsDouble(top) >= 0.0) {
          return edge(margin, Math.max(from, low - STEP_SECONDS), top);
        }
      }
      if (next >= 0.0) {
        return edge(margin, low, high);
      }
      before = value;
      value = next;
      low = high;
    }
    return Double.isNaN(value) ? Double.NaN : Double.POSITIVE_INFINITY;
  }

  /** Where a margin that is negative at {@code low} has become zero, to half a second. */
  private static double edge(DoubleUnaryOperator margin, double low, double high) {
    return Edge.of(time -> margin.applyAsDouble(time) >= 0.0, high, low, 0.5);
  }

  /** Where a margin with one top between two times has it, by thirds, to a tenth of a second. */
  private static double top(DoubleUnaryOperator margin, double from, double until) {
    double low = from;
    double high = until;
    while (high - low > 0.1) {
      double third = (high - low) / 3.0;
      if (margin.applyAsDouble(low + third) < margin.applyAsDouble(high - third)) {
        low += third;
      } else {
        high -= third;
      }
    }
    return 0.5 * (low + high);
  }
}
