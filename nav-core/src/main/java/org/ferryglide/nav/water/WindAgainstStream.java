package org.ferryglide.nav.water;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;

/**
 * The wind and stream from which wind against stream matters to the caller: waves grow steep and
 * break where they run against the water.
 *
 * <p>Wind is named by where it comes from and a stream by where it sets: wind from 045 on a stream
 * that sets 045 is against it.
 *
 * <pre>{@code
 * WindAgainstStream rough = new WindAgainstStream(Speed.ofKnots(10), Speed.ofKnots(1.5), 45);
 * rough.isMetBy(wind, stream);
 * WindAgainstStream.overWater(wind, stream).rate(); // 12 kn against 4 kn: 16 kn
 * }</pre>
 *
 * @param leastWind wind over the ground from which on it counts
 * @param leastStream rate from which on the stream counts
 * @param withinDegrees how far the wind may be from straight against, degrees, in [0, 90]
 */
public record WindAgainstStream(Speed leastWind, Speed leastStream, double withinDegrees)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes the thresholds; which are right depends on boat and paddler.
   *
   * @param leastWind wind over the ground from which on it counts
   * @param leastStream rate from which on the stream counts
   * @param withinDegrees how far from straight against
   * @throws IllegalArgumentException if {@code withinDegrees} is NaN or outside [0, 90]
   */
  public WindAgainstStream {
    withinDegrees =
        Arguments.within(withinDegrees, 0.0, 90.0, "angle from straight against", "degrees");
  }

  /**
   * Whether a wind and a stream meet the thresholds.
   *
   * @param wind where the air goes over the ground; see {@link Velocity#ofWind}
   * @param stream where the water goes
   * @return true if the wind is against the stream and both are strong enough
   */
  public boolean isMetBy(Velocity wind, Velocity stream) {
    return isMetBy(
        wind.eastMetresPerSecond(),
        wind.northMetresPerSecond(),
        stream.eastMetresPerSecond(),
        stream.northMetresPerSecond());
  }

  /**
   * The same on plain doubles, without allocation.
   *
   * @param windEastMetresPerSecond east component of the wind, positive where the air goes east,
   *     metres a second
   * @param windNorthMetresPerSecond north component of the wind
   * @param streamEastMetresPerSecond east component of the stream, metres a second
   * @param streamNorthMetresPerSecond north component of the stream
   * @return true if the thresholds are met; false if an argument is NaN, or there is no wind or no
   *     stream
   */
  public boolean isMetBy(
      double windEastMetresPerSecond,
      double windNorthMetresPerSecond,
      double streamEastMetresPerSecond,
      double streamNorthMetresPerSecond) {
    double wind =
        Math.sqrt(
            windEastMetresPerSecond * windEastMetresPerSecond
                + windNorthMetresPerSecond * windNorthMetresPerSecond);
    double rate =
        Math.sqrt(
            streamEastMetresPerSecond * streamEastMetresPerSecond
                + streamNorthMetresPerSecond * streamNorthMetresPerSecond);
    double together =
        windEastMetresPerSecond * streamEastMetresPerSecond
            + windNorthMetresPerSecond * streamNorthMetresPerSecond;
    return wind > 0.0
        && rate > 0.0
        && wind >= leastWind.metresPerSecond()
        && rate >= leastStream.metresPerSecond()
        // rounding must not shut out a wind straight against a stream when 0 degrees are allowed
        && together <= -Math.cos(Math.toRadians(withinDegrees)) * wind * rate * (1.0 - 1e-12);
  }

  /**
   * The wind as the water feels it: 12 kn of wind against 4 kn of stream is 16 kn, with it 8 kn.
   *
   * @param wind where the air goes over the ground
   * @param stream where the water goes
   * @return where the air goes over the water
   */
  public static Velocity overWater(Velocity wind, Velocity stream) {
    return wind.minus(stream);
  }
}
