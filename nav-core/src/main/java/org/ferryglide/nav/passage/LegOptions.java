package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.water.StreamField;
import org.jspecify.annotations.Nullable;

/**
 * How one leg of a passage is paddled, where it differs from the rest.
 *
 * <pre>{@code
 * LegOptions inshore =
 *     LegOptions.usual()
 *         .withStrategy(Strategy.trackHeld())
 *         .withStream(StreamField.steady(myOwnEddy));
 * LegOptions race = LegOptions.usual().withSpeed(Speed.ofKnots(4)).withoutRests();
 * }</pre>
 */
public final class LegOptions implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final LegOptions USUAL =
      new LegOptions(Strategy.constantHeading(), null, false, null, false);

  private final Strategy strategy;
  private final @Nullable Speed speed;
  private final boolean withoutRests;
  private final @Nullable StreamField stream;
  private final boolean geodesic;

  private LegOptions(
      Strategy strategy,
      @Nullable Speed speed,
      boolean withoutRests,
      @Nullable StreamField stream,
      boolean geodesic) {
    this.strategy = strategy;
    this.speed = speed;
    this.withoutRests = withoutRests;
    this.stream = stream;
    this.geodesic = geodesic;
  }

  /**
   * A constant heading along a rhumb line, at the party's speed and with its rests, in the
   * passage's stream.
   *
   * @return the options; each {@code with} method gives a copy with one thing changed
   */
  public static LegOptions usual() {
    return USUAL;
  }

  /**
   * The same options with another strategy.
   *
   * @param strategy how the leg is steered
   * @return the changed options
   */
  public LegOptions withStrategy(Strategy strategy) {
    return new LegOptions(
        Objects.requireNonNull(strategy, "strategy"), speed, withoutRests, stream, geodesic);
  }

  /**
   * The same options with a speed of the leg's own.
   *
   * @param speed speed through still water in calm air, above zero
   * @return the changed options
   */
  public LegOptions withSpeed(Speed speed) {
    Arguments.positive(speed.metresPerSecond(), "speed of a leg", "metres a second");
    return new LegOptions(strategy, speed, withoutRests, stream, geodesic);
  }

  /**
   * The same options without rests, for example across a lane or past a race.
   *
   * @return the changed options
   */
  public LegOptions withoutRests() {
    return new LegOptions(strategy, speed, true, stream, geodesic);
  }

  /**
   * The same options with the user's own stream in place of the passage's, for example close
   * inshore.
   *
   * @param stream the stream along this leg
   * @return the changed options
   */
  public LegOptions withStream(StreamField stream) {
    return new LegOptions(
        strategy, speed, withoutRests, Objects.requireNonNull(stream, "stream"), geodesic);
  }

  /**
   * The same options along the shortest line in place of the line of constant course.
   *
   * @return the changed options
   */
  public LegOptions alongGeodesic() {
    return new LegOptions(strategy, speed, withoutRests, stream, true);
  }

  /**
   * How the leg is steered.
   *
   * @return the strategy
   */
  public Strategy strategy() {
    return strategy;
  }

  /**
   * The leg's own speed.
   *
   * @return speed through still water; empty if it is the party's
   */
  public Optional<Speed> speed() {
    return Optional.ofNullable(speed);
  }

  /**
   * Whether the party paddles this leg without rests.
   *
   * @return true if it does
   */
  public boolean isWithoutRests() {
    return withoutRests;
  }

  /**
   * The leg's own stream.
   *
   * @return the stream; empty if it is the passage's
   */
  public Optional<StreamField> stream() {
    return Optional.ofNullable(stream);
  }

  /**
   * Whether the leg follows the shortest line.
   *
   * @return false for a line of constant course
   */
  public boolean isGeodesic() {
    return geodesic;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LegOptions that
        && strategy.equals(that.strategy)
        && Objects.equals(speed, that.speed)
        && withoutRests == that.withoutRests
        && Objects.equals(stream, that.stream)
        && geodesic == that.geodesic;
  }

  @Override
  public int hashCode() {
    return Objects.hash(strategy, speed, withoutRests, stream, geodesic);
  }

  @Override
  public String toString() {
    return strategy
        + (speed == null ? "" : " at " + speed.inKnots(2))
        + (withoutRests ? " without rests" : "")
        + (stream == null ? "" : " in a stream of its own")
        + (geodesic ? " along the geodesic" : "");
  }
}
