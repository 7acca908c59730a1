package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.time.Duration;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.measure.Speed;

/**
 * A paddled craft and its party, as far as steering needs to know them: speed through the water,
 * rests, and what the wind does.
 *
 * <p>Plan a group on its slowest member. Common practice, no source: a steady group makes 2.5 to 3
 * knots on flat water, a touring paddler 3 to 3.5, a fit one 4; a party rests 5 to 10 minutes an
 * hour.
 *
 * <pre>{@code
 * Craft kayak =
 *     Craft.ofSpeed(Speed.ofKnots(3.5))
 *         .withRestEachHour(Duration.ofMinutes(10))
 *         .withWindResponse(WindResponse.commonPractice(WindResponse.Trim.LOADED));
 * kayak.meanSpeed(); // 2.92 kn
 * }</pre>
 */
public final class Craft implements Serializable {
  private static final long serialVersionUID = 1L;

  /** No craft that is steered by this library is faster, knots. */
  private static final double FASTEST_KNOTS = 100.0;

  private final Speed speed;
  private final Duration restEachHour;
  private final WindResponse windResponse;

  private Craft(Speed speed, Duration restEachHour, WindResponse windResponse) {
    this.speed = speed;
    this.restEachHour = restEachHour;
    this.windResponse = windResponse;
  }

  /**
   * A craft that is paddled without rest and that the wind does not affect.
   *
   * @param speed speed through still water in calm air, at most 100 knots; zero for a craft that
   *     only drifts
   * @return the craft; the {@code with} methods add rests and wind
   * @throws IllegalArgumentException if the speed is above 100 knots
   */
  public static Craft ofSpeed(Speed speed) {
    return new Craft(checked(speed), Duration.ZERO, WindResponse.none());
  }

  private static Speed checked(Speed speed) {
    Arguments.within(speed.knots(), 0.0, FASTEST_KNOTS, "speed of a craft", "knots");
    return speed;
  }

  /**
   * The same craft at another speed.
   *
   * @param speed speed through still water in calm air, at most 100 knots
   * @return the changed craft
   * @throws IllegalArgumentException if the speed is above 100 knots
   */
  public Craft withSpeed(Speed speed) {
    return new Craft(checked(speed), restEachHour, windResponse);
  }

  /**
   * The same craft resting for part of each hour. While the party rests the craft goes with the
   * water, so what counts for a course is the mean speed over the hour; the rests are thought of as
   * spread evenly.
   *
   * @param restEachHour rest in each hour, at least 0, less than an hour
   * @return the changed craft
   * @throws IllegalArgumentException if the rest is negative or an hour or more
   */
  public Craft withRestEachHour(Duration restEachHour) {
    if (restEachHour.isNegative() || restEachHour.compareTo(Duration.ofHours(1)) >= 0) {
      throw new IllegalArgumentException(
          "rest each hour must be at least PT0S and less than PT1H, but was " + restEachHour);
    }
    return new Craft(speed, restEachHour, windResponse);
  }

  /**
   * The same craft in wind.
   *
   * @param windResponse what the wind does to it
   * @return the changed craft
   */
  public Craft withWindResponse(WindResponse windResponse) {
    return new Craft(speed, restEachHour, Objects.requireNonNull(windResponse, "windResponse"));
  }

  /**
   * The speed while paddling.
   *
   * @return speed through still water in calm air
   */
  public Speed speed() {
    return speed;
  }

  /**
   * The rest taken in each hour.
   *
   * @return at least 0, less than an hour
   */
  public Duration restEachHour() {
    return restEachHour;
  }

  /**
   * What the wind does.
   *
   * @return the response
   */
  public WindResponse windResponse() {
    return windResponse;
  }

  /**
   * The share of the time that is paddled.
   *
   * @return in (0, 1]; 1 without rests
   */
  public double paddlingShare() {
    return 1.0 - Seconds.of(restEachHour) / 3600.0;
  }

  /**
   * The speed through the water that courses are worked with.
   *
   * @return the paddling speed times the share of the time that is paddled
   */
  public Speed meanSpeed() {
    return speed.times(paddlingShare());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Craft that
        && speed.equals(that.speed)
        && restEachHour.equals(that.restEachHour)
        && windResponse.equals(that.windResponse);
  }

  @Override
  public int hashCode() {
    return Objects.hash(speed, restEachHour, windResponse);
  }

  @Override
  public String toString() {
    return "craft of " + speed + ", rest each hour " + restEachHour + ", " + windResponse;
  }
}
