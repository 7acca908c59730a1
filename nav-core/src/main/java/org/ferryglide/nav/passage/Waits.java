package org.ferryglide.nav.passage;

import java.util.function.DoubleUnaryOperator;
import org.ferryglide.nav.plane.Seconds;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.EpochSeconds;
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
      return from + Seconds.of(ashore.length());
    }
    if (stop instanceof Stops.UntilTime untilTime) {
      return Math.max(from, EpochSeconds.of(untilTime.time()));
    }
    if (stop instanceof Stops.UntilLevel untilLevel) {
      WaterLevel level = passage.level(untilLevel.port());
      if (level == null) {
        return Double.NaN;
      }
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

  /** The first time at which a margin is at least zero, to a second and not before it. */
  static double firstAtLeastZero(DoubleUnaryOperator margin, double from, double until) {
    double low = from;
    double value = margin.applyAsDouble(from);
    if (value >= 0.0) {
      return from;
    }
    while (low < until) {
      if (Double.isNaN(value)) {
        return Double.NaN;
      }
      double high = Math.min(until, low + STEP_SECONDS);
      value = margin.applyAsDouble(high);
      if (value >= 0.0) {
        while (high - low > 0.5) {
          double middle = 0.5 * (low + high);
          if (margin.applyAsDouble(middle) >= 0.0) {
            high = middle;
          } else {
            low = middle;
          }
        }
        return high;
      }
      low = high;
    }
    return Double.isNaN(value) ? Double.NaN : Double.POSITIVE_INFINITY;
  }
}
