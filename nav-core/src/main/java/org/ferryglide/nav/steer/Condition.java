package org.ferryglide.nav.steer;

import java.time.Instant;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Arguments;
import org.ferryglide.nav.water.EpochSeconds;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WaterLevel;

/**
 * Something a passage must satisfy, as a margin that is at least zero when it does.
 *
 * <p>A margin rather than a yes or no, so that the reader sees how close it is.
 *
 * <pre>{@code
 * Condition daylight = Condition.during("daylight", List.of(TimeSpan.of(sunrise, sunset)));
 * Condition bar = Condition.depthAtLeast("the bar", 2, level, 0.4, 1.0);
 * double metresToSpare = bar.margin(steered);
 * }</pre>
 */
public interface Condition {

  /**
   * What is asked for, in a few words.
   *
   * @return the name, for example {@code daylight}
   */
  String name();

  /**
   * The unit of the margin.
   *
   * @return the unit in the plural, for example {@code seconds}
   */
  String unit();

  /**
   * By how much a passage satisfies the condition.
   *
   * @param passage the passage
   * @return the margin, in {@link #unit}; negative if it fails; NaN if it is not known, which
   *     counts as failing
   */
  double margin(SteeredRoute passage);

  /**
   * Whether a passage satisfies the condition.
   *
   * @param passage the passage
   * @return true if the margin is at least zero
   */
  default boolean isMet(SteeredRoute passage) {
    return margin(passage) >= 0.0;
  }

  /**
   * A condition of the caller's own.
   *
   * @param name what is asked for, in a few words
   * @param unit unit of the margin, in the plural
   * @param margin the margin of a passage, at least zero if it satisfies the condition
   * @return the condition
   */
  static Condition of(String name, String unit, ToDoubleFunction<SteeredRoute> margin) {
    return new NamedCondition(name, unit, margin);
  }

  /**
   * Arriving by a time.
   *
   * @param latest the latest arrival
   * @return a condition with its margin in seconds
   */
  static Condition arriveBy(Instant latest) {
    double seconds = EpochSeconds.of(latest);
    return of("arriving by " + latest, "seconds", passage -> seconds - passage.arrivalSeconds());
  }

  /**
   * The whole passage within one of several spans, as with daylight or a forecast.
   *
   * @param name what the spans are
   * @param spans the spans
   * @return a condition with its margin in seconds: how much earlier or later it could be
   */
  static Condition during(String name, List<TimeSpan> spans) {
    List<TimeSpan> copy = List.copyOf(spans);
    return of(
        name,
        "seconds",
        passage -> {
          double best = Double.NEGATIVE_INFINITY;
          for (TimeSpan span : copy) {
            double early = passage.departureSeconds() - EpochSeconds.of(span.from());
            double late = EpochSeconds.of(span.until()) - passage.arrivalSeconds();
            best = Math.max(best, Math.min(early, late));
          }
          return best;
        });
  }

  /**
   * Enough water at a waypoint when it is passed.
   *
   * @param place what the waypoint is called
   * @param waypoint number of the waypoint: 0 for the start, the number of legs for the end
   * @param level the height of the water there, above the datum that the depth is charted from
   * @param chartedDepthMetres depth below that datum, metres; negative for what dries
   * @param leastMetres least depth of water wanted, metres, at least 0
   * @return a condition with its margin in metres; NaN outside the tide's table
   * @throws IllegalArgumentException if a depth is NaN or infinite, or a number negative
   */
  static Condition depthAtLeast(
      String place, int waypoint, WaterLevel level, double chartedDepthMetres, double leastMetres) {
    double charted = Arguments.finite(chartedDepthMetres, "charted depth", "metres");
    double least = Arguments.notNegative(leastMetres, "least depth", "metres");
    if (waypoint < 0) {
      throw new IllegalArgumentException("waypoint must be at least 0, but was " + waypoint);
    }
    return of(
        "depth at " + place,
        "metres",
        passage -> level.heightMetres(EpochSeconds.of(passage.timeAt(waypoint))) + charted - least);
  }

  /**
   * No stream faster than a limit anywhere along the path, looked at every five minutes.
   *
   * @param stream the stream
   * @param most the limit
   * @return a condition with its margin in metres a second; NaN where the stream is not known
   */
  static Condition streamAtMost(StreamField stream, Speed most) {
    return of(
        "stream at most " + most.inKnots(1),
        "metres a second",
        passage -> {
          double fastest = 0.0;
          for (SteeredLeg leg : passage.legs()) {
            for (TrackPoint point : leg.groundTrack().pointsEvery(300.0)) {
              Velocity here = stream.at(point.position(), point.time()).orElse(null);
              if (here == null) {
                return Double.NaN;
              }
              fastest = Math.max(fastest, here.rate().metresPerSecond());
            }
          }
          return most.metresPerSecond() - fastest;
        });
  }

  /**
   * At least so much reserve on every leg.
   *
   * @param least the speed to spare
   * @return a condition with its margin in metres a second
   */
  static Condition reserveAtLeast(Speed least) {
    return of(
        "reserve of " + least.inKnots(1),
        "metres a second",
        passage -> passage.reserve().metresPerSecond() - least.metresPerSecond());
  }
}
