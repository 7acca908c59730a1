package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Duration;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.steer.Craft;

/**
 * The party: how fast its slowest member paddles, how long it rests, launches and lands, and how
 * much slower it might turn out to be.
 *
 * <pre>{@code
 * Party party =
 *     Party.of(Craft.ofSpeed(Speed.ofKnots(3.2)).withRestEachHour(Duration.ofMinutes(8)))
 *         .withLaunching(Duration.ofMinutes(15))
 *         .withLanding(Duration.ofMinutes(10))
 *         .withSlowerSpeed(Speed.ofKnots(2.6));
 * }</pre>
 */
public final class Party implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * Share of the planned speed that the slower party makes unless another speed is stated. Common
   * practice, no source: a tired or weather-bound party loses a fifth.
   */
  public static final double USUAL_SLOWER_SHARE = 0.8;

  /** Height of a seated paddler's eye above the water. Common practice, no source. */
  public static final Distance USUAL_EYE_HEIGHT = Distance.ofMetres(0.9);

  private final Craft craft;
  private final Speed slowerSpeed;
  private final Duration launching;
  private final Duration landing;
  private final Distance eyeHeight;

  private Party(
      Craft craft, Speed slowerSpeed, Duration launching, Duration landing, Distance eyeHeight) {
    this.craft = craft;
    this.slowerSpeed = slowerSpeed;
    this.launching = launching;
    this.landing = landing;
    this.eyeHeight = eyeHeight;
  }

  /**
   * A party that launches and lands in no time.
   *
   * @param craft the slowest member: speed, rests, and what the wind does
   * @return the party
   * @throws IllegalArgumentException if the craft has no speed
   */
  public static Party of(Craft craft) {
    Arguments.positive(craft.speed().metresPerSecond(), "speed of a party", "metres a second");
    return new Party(
        craft,
        craft.speed().times(USUAL_SLOWER_SHARE),
        Duration.ZERO,
        Duration.ZERO,
        USUAL_EYE_HEIGHT);
  }

  /**
   * The same party with another guess of how slow it may turn out to be.
   *
   * @param slowerSpeed speed through the water of the slower what-if, above zero and at most the
   *     planned speed
   * @return the changed party
   * @throws IllegalArgumentException if the speed is zero or above the planned speed
   */
  public Party withSlowerSpeed(Speed slowerSpeed) {
    Arguments.positive(slowerSpeed.metresPerSecond(), "slower speed", "metres a second");
    if (slowerSpeed.compareTo(craft.speed()) > 0) {
      throw new IllegalArgumentException(
          "slower speed must be at most the planned "
              + craft.speed().inKnots(2)
              + ", but was "
              + slowerSpeed.inKnots(2));
    }
    return new Party(craft, slowerSpeed, launching, landing, eyeHeight);
  }

  /**
   * The same party with the time it takes to launch.
   *
   * @param launching from the first boat afloat until the whole party is under way, at least zero
   * @return the changed party
   */
  public Party withLaunching(Duration launching) {
    return new Party(craft, slowerSpeed, notNegative(launching), landing, eyeHeight);
  }

  /**
   * The same party with the time it takes to land.
   *
   * @param landing from the first boat at the beach until the last is ashore, at least zero
   * @return the changed party
   */
  public Party withLanding(Duration landing) {
    return new Party(craft, slowerSpeed, launching, notNegative(landing), eyeHeight);
  }

  /**
   * The same party with another height of eye.
   *
   * @param eyeHeight above the water, at least zero
   * @return the changed party
   */
  public Party withEyeHeight(Distance eyeHeight) {
    Arguments.notNegative(eyeHeight.metres(), "height of eye", "metres");
    return new Party(craft, slowerSpeed, launching, landing, eyeHeight);
  }

  /**
   * The same party as it may turn out: at the slower speed.
   *
   * @return a party whose planned and slower speeds are both the slower one
   */
  public Party slower() {
    return new Party(craft.withSpeed(slowerSpeed), slowerSpeed, launching, landing, eyeHeight);
  }

  /**
   * The same party in another craft or at another speed; the share by which it may be slower stays.
   *
   * @param craft the slowest member
   * @return the changed party
   */
  public Party withCraft(Craft craft) {
    double share = slowerSpeed.metresPerSecond() / this.craft.speed().metresPerSecond();
    return new Party(craft, craft.speed().times(share), launching, landing, eyeHeight);
  }

  private static Duration notNegative(Duration length) {
    if (length.isNegative()) {
      throw new IllegalArgumentException(
          "time to launch or land must be at least PT0S, but was " + length);
    }
    return length;
  }

  /**
   * The slowest member.
   *
   * @return speed, rests, and what the wind does
   */
  public Craft craft() {
    return craft;
  }

  /**
   * How slow the party may turn out to be.
   *
   * @return speed through the water of the slower what-if
   */
  public Speed slowerSpeed() {
    return slowerSpeed;
  }

  /**
   * How long it takes to launch.
   *
   * @return from the first boat afloat until the whole party is under way
   */
  public Duration launching() {
    return launching;
  }

  /**
   * How long it takes to land.
   *
   * @return from the first boat at the beach until the last is ashore
   */
  public Duration landing() {
    return landing;
  }

  /**
   * The height of eye.
   *
   * @return above the water
   */
  public Distance eyeHeight() {
    return eyeHeight;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Party that
        && craft.equals(that.craft)
        && slowerSpeed.equals(that.slowerSpeed)
        && launching.equals(that.launching)
        && landing.equals(that.landing)
        && eyeHeight.equals(that.eyeHeight);
  }

  @Override
  public int hashCode() {
    return Objects.hash(craft, slowerSpeed, launching, landing, eyeHeight);
  }

  @Override
  public String toString() {
    return "party of " + craft + ", " + slowerSpeed.inKnots(2) + " if slower";
  }
}
