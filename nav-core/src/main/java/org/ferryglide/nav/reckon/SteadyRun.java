package org.ferryglide.nav.reckon;

import java.io.Serializable;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.plane.Seconds;

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
