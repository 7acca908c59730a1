package org.ferryglide.nav.measure;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;

/**
 * The motion of water or air over the ground, as components east and north.
 *
 * <p>A stream is named by its set, where it goes; a wind by where it comes from. Both are held as
 * the direction in which the water or air moves, so that they add as vectors.
 *
 * <pre>{@code
 * Velocity stream = Velocity.ofSetAndRate(TrueBearing.ofDegrees(90), Speed.ofKnots(2));
 * stream.alongMetresPerSecond(TrueBearing.ofDegrees(45)); // 0.73: it helps a northeasterly course
 * }</pre>
 *
 * @param eastMetresPerSecond the east component, metres a second, finite
 * @param northMetresPerSecond the north component, metres a second, finite
 */
public record Velocity(double eastMetresPerSecond, double northMetresPerSecond)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /** No motion. */
  public static final Velocity STILL = new Velocity(0.0, 0.0);

  /**
   * Takes the components; {@link #ofSetAndRate} and {@link #ofWind} read better.
   *
   * @param eastMetresPerSecond the east component, metres a second; -0.0 becomes 0.0
   * @param northMetresPerSecond the north component, metres a second; -0.0 becomes 0.0
   * @throws IllegalArgumentException if a component is NaN or infinite
   */
  public Velocity {
    eastMetresPerSecond = Arguments.finite(eastMetresPerSecond, "east part", "metres a second");
    northMetresPerSecond = Arguments.finite(northMetresPerSecond, "north part", "metres a second");
  }

  /**
   * Makes a velocity from its components.
   *
   * @param eastMetresPerSecond the east component, metres a second, finite
   * @param northMetresPerSecond the north component, metres a second, finite
   * @return the velocity
   * @throws IllegalArgumentException if a component is NaN or infinite
   */
  public static Velocity ofEastAndNorth(double eastMetresPerSecond, double northMetresPerSecond) {
    return new Velocity(eastMetresPerSecond, northMetresPerSecond);
  }

  /**
   * Makes a stream.
   *
   * @param set where the stream goes
   * @param rate how fast
   * @return the velocity of the water
   */
  public static Velocity ofSetAndRate(TrueBearing set, Speed rate) {
    double radians = Math.toRadians(set.degrees());
    return new Velocity(
        rate.metresPerSecond() * Math.sin(radians), rate.metresPerSecond() * Math.cos(radians));
  }

  /**
   * Makes a wind.
   *
   * @param from where the wind comes from
   * @param speed how fast
   * @return the velocity of the air, which goes the opposite way
   */
  public static Velocity ofWind(TrueBearing from, Speed speed) {
    return ofSetAndRate(from.reciprocal(), speed);
  }

  /**
   * Where it goes.
   *
   * @return the set; true north if there is no motion
   */
  public TrueBearing set() {
    return TrueBearing.ofDegrees(
        Math.toDegrees(Math.atan2(eastMetresPerSecond, northMetresPerSecond)));
  }

  /**
   * Where it comes from, as a wind is named.
   *
   * @return the reciprocal of the set; true south if there is no motion
   */
  public TrueBearing from() {
    return set().reciprocal();
  }

  /**
   * How fast it goes.
   *
   * @return the rate of a stream, the speed of a wind
   */
  public Speed rate() {
    return new Speed(Math.hypot(eastMetresPerSecond, northMetresPerSecond));
  }

  /**
   * This motion and another together.
   *
   * @param other the motion to add
   * @return the sum
   * @throws IllegalArgumentException if a component overflows
   */
  public Velocity plus(Velocity other) {
    return new Velocity(
        eastMetresPerSecond + other.eastMetresPerSecond,
        northMetresPerSecond + other.northMetresPerSecond);
  }

  /**
   * This motion as seen from another: the wind over the water is the wind less the stream.
   *
   * @param other the motion to take off
   * @return the difference
   * @throws IllegalArgumentException if a component overflows
   */
  public Velocity minus(Velocity other) {
    return new Velocity(
        eastMetresPerSecond - other.eastMetresPerSecond,
        northMetresPerSecond - other.northMetresPerSecond);
  }

  /**
   * This motion multiplied by a factor.
   *
   * @param factor how many times, finite; a negative factor turns it round
   * @return the product
   * @throws IllegalArgumentException if a component is NaN or infinite
   */
  public Velocity times(double factor) {
    return new Velocity(eastMetresPerSecond * factor, northMetresPerSecond * factor);
  }

  /**
   * The component of this motion along a direction.
   *
   * @param direction the direction that counts as forward
   * @return metres a second, negative against the direction
   */
  public double alongMetresPerSecond(TrueBearing direction) {
    double radians = Math.toRadians(direction.degrees());
    return eastMetresPerSecond * Math.sin(radians) + northMetresPerSecond * Math.cos(radians);
  }

  /**
   * The component of this motion across a direction.
   *
   * @param direction the direction that counts as forward
   * @return metres a second, positive to the right
   */
  public double acrossMetresPerSecond(TrueBearing direction) {
    double radians = Math.toRadians(direction.degrees());
    return eastMetresPerSecond * Math.cos(radians) - northMetresPerSecond * Math.sin(radians);
  }

  /**
   * Set and rate as a stream atlas prints them.
   *
   * @return for example {@code 090° 2.0 kn}
   */
  public String setAndRate() {
    return set().threeDigits() + " " + rate().inKnots(1);
  }

  /**
   * Set and rate where a thousandth of each says it without loss, else the parts: {@code 090° 2.0
   * kn}, {@code 1.0 m/s east, -0.5 m/s north}.
   */
  @Override
  public String toString() {
    return MeasureText.velocity(this);
  }

  /**
   * Reads a set from true north with a rate, {@code 090° 2.0 kn} or {@code 090°T 2.0 kn}, and what
   * {@link #toString} writes.
   *
   * @param text set and rate, or both components with their units
   * @return the velocity
   * @throws org.ferryglide.nav.note.TextFormatException if the text is anything else
   */
  public static Velocity parse(String text) {
    return MeasureText.parseVelocity(text);
  }
}
