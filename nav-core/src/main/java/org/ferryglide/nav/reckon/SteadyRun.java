package org.ferryglide.nav.reckon;

import java.io.Serializable;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.water.StreamField;

/**
 * A time during which water track, speed and stream stay the same: what errors are counted over.
 *
 * <pre>{@code
 * SteadyRun crossing =
 *     new SteadyRun(
 *         Duration.ofMinutes(90),
 *         TrueBearing.ofDegrees(72),
 *         Speed.ofKnots(3.2),
 *         Velocity.ofSetAndRate(TrueBearing.ofDegrees(160), Speed.ofKnots(1.1)));
 * }</pre>
 *
 * @param duration how long, at least 0
 * @param waterTrack where the craft goes through the water, leeway included
 * @param speed how fast through the water
 * @param stream where the water goes
 */
public record SteadyRun(Duration duration, TrueBearing waterTrack, Speed speed, Velocity stream)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts.
   *
   * @param duration how long
   * @param waterTrack where the craft goes through the water
   * @param speed how fast through the water
   * @param stream where the water goes
   * @throws IllegalArgumentException if {@code duration} is negative
   */
  public SteadyRun {
    Objects.requireNonNull(waterTrack, "waterTrack");
    Objects.requireNonNull(speed, "speed");
    Objects.requireNonNull(stream, "stream");
    if (duration.isNegative()) {
      throw new IllegalArgumentException("duration must not be negative, but was " + duration);
    }
  }

  /**
   * A steered leg as runs, for an error budget, a simulation, or a landfall: {@code
   * ErrorBudget.of(SteadyRun.along(steered, solver.stream()), ErrorModel.usual())}.
   *
   * <p>The leg is cut at the segments of its ground track and at least every five minutes, every
   * ten seconds where so long runs miss a narrow race that the leg met. In each the stream is that
   * of the middle of the run and what the craft does beside it, paddled or down the wind, is its
   * motion through the water. The runs lead to the end of the leg within a hundred-thousandth of
   * its length, measured on legs of up to 6 NM.
   *
   * @param leg the steered leg
   * @param stream the stream that it was steered in
   * @return runs in order of time, none for a leg without length; unmodifiable
   * @throws IllegalArgumentException if the stream has no data somewhere on the way, or is clearly
   *     another than the leg was steered in, so that the craft would have to be faster or slower;
   *     so may be its own where a race less than a hundred metres wide to either side escaped the
   *     steps of the leg (2 in 1000 random legs with such races)
   */
  public static List<SteadyRun> along(SteeredLeg leg, StreamField stream) {
    return Collections.unmodifiableList(SteeredRuns.of(leg, stream));
  }

  /**
   * A steered route as runs. A stop ashore takes no part: the craft does not drift there. Where the
   * place is known exactly after a stop, count the errors from that leg on only. The legs of a plan
   * may have streams of their own: its {@code runs} take them, and begin anew after a stop.
   *
   * @param route the steered route
   * @param stream the stream that all its legs were steered in
   * @return runs in order of time; unmodifiable
   * @throws IllegalArgumentException if the stream has no data somewhere on the way, or is clearly
   *     another than a leg was steered in
   */
  public static List<SteadyRun> along(SteeredRoute route, StreamField stream) {
    List<SteadyRun> runs = new ArrayList<>();
    for (SteeredLeg leg : route.legs()) {
      runs.addAll(SteeredRuns.of(leg, stream));
    }
    return Collections.unmodifiableList(runs);
  }

  /**
   * How fast and where the craft goes through the water.
   *
   * @return the velocity through the water
   */
  public Velocity throughWater() {
    return Velocity.ofSetAndRate(waterTrack, speed);
  }

  /**
   * How fast and where the craft goes over the ground.
   *
   * @return velocity through the water plus stream
   */
  public Velocity overGround() {
    return throughWater().plus(stream);
  }

  /** Whether another run only goes on with this one. */
  boolean continuesAs(SteadyRun next) {
    return waterTrack.equals(next.waterTrack)
        && speed.equals(next.speed)
        && stream.equals(next.stream);
  }

  /** Whether runs end with others, whose first may begin within one of these. */
  static boolean endsAlike(List<SteadyRun> whole, List<SteadyRun> part) {
    int skipped = whole.size() - part.size();
    if (skipped < 0 || part.isEmpty()) {
      return false;
    }
    SteadyRun first = part.get(0);
    SteadyRun from = whole.get(skipped);
    return whole.subList(skipped + 1, whole.size()).equals(part.subList(1, part.size()))
        && from.continuesAs(first)
        && from.duration().compareTo(first.duration()) >= 0;
  }

  /**
   * The same run, longer or shorter.
   *
   * @param other how long, at least 0
   * @return a run with everything else the same
   * @throws IllegalArgumentException if {@code other} is negative
   */
  public SteadyRun lasting(Duration other) {
    return new SteadyRun(other, waterTrack, speed, stream);
  }

  double seconds() {
    return Seconds.of(duration);
  }
}
