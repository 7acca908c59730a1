package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Duration;
import java.util.Objects;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.Spread;

/**
 * How wrong the figures of a plan may be: the errors of reckoning, and those of the time at which
 * the stream turns, of the wind, and of the departure.
 *
 * <pre>{@code
 * PlanErrors mine =
 *     PlanErrors.of(passage.errors())
 *         .withTurnOfStream(Duration.ofMinutes(20))
 *         .withDeparture(Duration.ofMinutes(10));
 * }</pre>
 *
 * <p>All figures are standard deviations. Those of {@link #usual} are common practice among sea
 * kayakers and have no source; each is meant to be replaced by one's own.
 */
public final class PlanErrors implements Serializable {
  private static final long serialVersionUID = 1L;

  private final ErrorModel reckoning;
  private final Duration turnOfStream;
  private final Duration departure;
  private final Spread windSpeed;
  private final Spread windDirection;

  private PlanErrors(
      ErrorModel reckoning,
      Duration turnOfStream,
      Duration departure,
      Spread windSpeed,
      Spread windDirection) {
    this.reckoning = reckoning;
    this.turnOfStream = turnOfStream;
    this.departure = departure;
    this.windSpeed = windSpeed;
    this.windDirection = windDirection;
  }

  /**
   * The errors of reckoning alone: streams turn as tabled, wind and departure are as planned.
   *
   * @param reckoning errors of heading, speed, set and rate, constant and independent parts
   * @return the errors; each {@code with} method gives a copy with one thing changed
   */
  public static PlanErrors of(ErrorModel reckoning) {
    return new PlanErrors(
        Objects.requireNonNull(reckoning, "reckoning"),
        Duration.ZERO,
        Duration.ZERO,
        Spread.NONE,
        Spread.NONE);
  }

  /**
   * What a paddler with printed tables and a forecast may expect; common practice, no source: the
   * usual errors of reckoning, 20 minutes of the turn of the stream, 10 minutes of the departure,
   * of the wind 25 % and 15 % of its speed and 20° and 10° of its direction, constant and
   * independent.
   *
   * @return the errors
   */
  public static PlanErrors usual() {
    return of(ErrorModel.usual())
        .withTurnOfStream(Duration.ofMinutes(20))
        .withDeparture(Duration.ofMinutes(10))
        .withWindSpeed(Spread.of(0.25, 0.15))
        .withWindDirection(Spread.of(20.0, 10.0));
  }

  /**
   * The same errors with another error of the time of turn.
   *
   * @param deviation by how much everything in the stream's tables may come early or late, at least
   *     zero, the same all day
   * @return the changed errors
   * @throws IllegalArgumentException if it is negative
   */
  public PlanErrors withTurnOfStream(Duration deviation) {
    return new PlanErrors(
        reckoning, notNegative(deviation, "turn"), departure, windSpeed, windDirection);
  }

  /**
   * The same errors with another error of the departure.
   *
   * @param deviation by how much the party may be early or late, at least zero
   * @return the changed errors
   * @throws IllegalArgumentException if it is negative
   */
  public PlanErrors withDeparture(Duration deviation) {
    return new PlanErrors(
        reckoning, turnOfStream, notNegative(deviation, "departure"), windSpeed, windDirection);
  }

  /**
   * The same errors with another error of the wind's speed.
   *
   * @param share as a share of the forecast speed
   * @return the changed errors
   */
  public PlanErrors withWindSpeed(Spread share) {
    return new PlanErrors(
        reckoning, turnOfStream, departure, Objects.requireNonNull(share, "share"), windDirection);
  }

  /**
   * The same errors with another error of the wind's direction.
   *
   * @param degrees in degrees
   * @return the changed errors
   */
  public PlanErrors withWindDirection(Spread degrees) {
    return new PlanErrors(
        reckoning, turnOfStream, departure, windSpeed, Objects.requireNonNull(degrees, "degrees"));
  }

  private static Duration notNegative(Duration deviation, String name) {
    if (deviation.isNegative()) {
      throw new IllegalArgumentException(
          "error of the " + name + " must be at least PT0S, but was " + deviation);
    }
    return deviation;
  }

  /**
   * The errors of reckoning.
   *
   * @return errors of heading, speed, set and rate
   */
  public ErrorModel reckoning() {
    return reckoning;
  }

  /**
   * The error of the time at which the stream turns.
   *
   * @return one standard deviation
   */
  public Duration turnOfStream() {
    return turnOfStream;
  }

  /**
   * The error of the departure.
   *
   * @return one standard deviation
   */
  public Duration departure() {
    return departure;
  }

  /**
   * The error of the speed of the wind.
   *
   * @return as a share of it
   */
  public Spread windSpeed() {
    return windSpeed;
  }

  /**
   * The error of the direction of the wind.
   *
   * @return in degrees
   */
  public Spread windDirection() {
    return windDirection;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PlanErrors that
        && reckoning.equals(that.reckoning)
        && turnOfStream.equals(that.turnOfStream)
        && departure.equals(that.departure)
        && windSpeed.equals(that.windSpeed)
        && windDirection.equals(that.windDirection);
  }

  @Override
  public int hashCode() {
    return Objects.hash(reckoning, turnOfStream, departure, windSpeed, windDirection);
  }

  @Override
  public String toString() {
    return reckoning
        + ", turn of the stream "
        + turnOfStream
        + ", departure "
        + departure
        + ", wind "
        + windSpeed
        + " and "
        + windDirection;
  }
}
