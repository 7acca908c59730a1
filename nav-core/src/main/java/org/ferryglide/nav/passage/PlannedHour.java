package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;

/**
 * Part of a leg that lies in one hour of the clock: where it begins and what happens in it.
 *
 * <pre>{@code
 * for (PlannedHour hour : leg.hours()) {
 *   System.out.println(hour.span().from() + " " + hour.heading().threeDigits());
 * }
 * }</pre>
 */
public final class PlannedHour implements Serializable {
  private static final long serialVersionUID = 1L;

  private final TimeSpan span;
  private final Position position;
  private final TrueBearing heading;
  private final @Nullable Velocity stream;
  private final Speed speedMadeGood;
  private final Leg leg;
  private final Position end;
  private final Map<String, Distance> levels;
  private final double reserveMetresPerSecond;

  PlannedHour(
      TimeSpan span,
      Position position,
      TrueBearing heading,
      @Nullable Velocity stream,
      Speed speedMadeGood,
      Leg leg,
      Position end,
      Map<String, Distance> levels,
      double reserveMetresPerSecond) {
    this.levels = levels;
    this.reserveMetresPerSecond = reserveMetresPerSecond;
    this.span = span;
    this.position = position;
    this.heading = heading;
    this.stream = stream;
    this.speedMadeGood = speedMadeGood;
    this.leg = leg;
    this.end = end;
  }

  /**
   * The time it covers.
   *
   * @return at most an hour, within one hour of the party's clock
   */
  public TimeSpan span() {
    return span;
  }

  /**
   * Where the party is as it begins.
   *
   * @return the position
   */
  public Position position() {
    return position;
  }

  /**
   * The heading as it begins.
   *
   * @return true heading
   */
  public TrueBearing heading() {
    return heading;
  }

  /**
   * The stream in the middle of it, where the party is then.
   *
   * @return the stream; empty if it is not known
   */
  public Optional<Velocity> stream() {
    return Optional.ofNullable(stream);
  }

  /**
   * The speed over the ground.
   *
   * @return distance over the ground between its ends over the time it takes
   */
  public Speed speedMadeGood() {
    return speedMadeGood;
  }

  /**
   * How much slower the party could be in this hour and still keep to its path and not be carried
   * back along it, at the worst moment and with the stream at the upper end of its error.
   *
   * @return the speed to spare, zero where there is none; empty if stream or wind are not known
   */
  public Optional<Speed> reserve() {
    return Double.isFinite(reserveMetresPerSecond)
        ? Optional.of(Speed.ofMetresPerSecond(Math.max(0.0, reserveMetresPerSecond)))
        : Optional.empty();
  }

  /**
   * The cross-track distance as it ends.
   *
   * @return to the right of the leg positive
   */
  public Distance crossTrack() {
    return leg.length().metres() > 0.0 ? leg.closestTo(end).crossTrack() : Distance.ZERO;
  }

  /**
   * The heights of the water as it begins.
   *
   * @return heights above each level's datum, by the ports of the passage; a height that is not
   *     known is left out; unmodifiable
   */
  public Map<String, Distance> levels() {
    return levels;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PlannedHour that
        && span.equals(that.span)
        && position.equals(that.position)
        && heading.equals(that.heading)
        && Objects.equals(stream, that.stream);
  }

  @Override
  public int hashCode() {
    return Objects.hash(span, position, heading, stream);
  }

  @Override
  public String toString() {
    return span + ", " + heading.threeDigits();
  }
}
