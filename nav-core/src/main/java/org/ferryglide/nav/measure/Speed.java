package org.ferryglide.nav.measure;

import java.io.Serializable;
import java.time.Duration;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Seconds;

/**
 * How fast, whichever way, held in metres a second; never negative.
 *
 * <pre>{@code
 * Speed paddling = Speed.ofKnots(3.5);
 * paddling.kilometresPerHour(); // 6.482
 * paddling.paceMinutesPerNauticalMile(); // 17.14
 * }</pre>
 *
 * @param metresPerSecond the speed, metres a second, finite, at least 0
 */
public record Speed(double metresPerSecond) implements Comparable<Speed>, Serializable {

  private static final long serialVersionUID = 1L;

  /** Metres a second in one knot: 1852 m in 3600 s. */
  public static final double METRES_PER_SECOND_PER_KNOT = 1852.0 / 3600.0;

  /** No speed. */
  public static final Speed ZERO = new Speed(0.0);

  /**
   * Takes metres a second; {@link #ofMetresPerSecond} reads better.
   *
   * @param metresPerSecond the speed, metres a second; -0.0 becomes 0.0
   * @throws IllegalArgumentException if the value is NaN, infinite or negative
   */
  public Speed {
    metresPerSecond = Arguments.notNegative(metresPerSecond, "speed", "metres a second");
  }

  /**
   * Makes a speed from metres a second.
   *
   * @param metresPerSecond the speed, metres a second, finite, at least 0
   * @return the speed
   * @throws IllegalArgumentException if the value is NaN, infinite or negative
   */
  public static Speed ofMetresPerSecond(double metresPerSecond) {
    return new Speed(metresPerSecond);
  }

  /**
   * Makes a speed from knots.
   *
   * @param knots the speed, nautical miles an hour, finite, at least 0
   * @return the speed
   * @throws IllegalArgumentException if the value is NaN, infinite or negative
   */
  public static Speed ofKnots(double knots) {
    return new Speed(Arguments.notNegative(knots, "speed", "knots") * METRES_PER_SECOND_PER_KNOT);
  }

  /**
   * Makes a speed from kilometres an hour.
   *
   * @param kilometresPerHour the speed, kilometres an hour, finite, at least 0
   * @return the speed
   * @throws IllegalArgumentException if the value is NaN, infinite or negative
   */
  public static Speed ofKilometresPerHour(double kilometresPerHour) {
    return new Speed(Arguments.notNegative(kilometresPerHour, "speed", "kilometres an hour") / 3.6);
  }

  /**
   * Makes a speed from a pace, as paddlers speak of it.
   *
   * @param minutes minutes for one nautical mile, finite, above 0
   * @return the speed
   * @throws IllegalArgumentException if the value is NaN, infinite, zero or negative
   */
  public static Speed ofPaceMinutesPerNauticalMile(double minutes) {
    return new Speed(
        Distance.METRES_PER_NAUTICAL_MILE
            / (Arguments.positive(minutes, "pace", "minutes for a nautical mile") * 60.0));
  }

  /**
   * Reads a number with its unit: {@code 3.5 kn}, {@code 3.5 kt}, {@code 3.5 knots}, {@code 6.5
   * km/h}, {@code 1.8 m/s}, {@code 4 mph} (statute miles), and what {@link #toString} writes.
   *
   * @param text a decimal number, then the unit
   * @return the speed
   * @throws org.ferryglide.nav.note.TextFormatException if the text is anything else
   */
  public static Speed parse(String text) {
    return new Speed(MeasureText.parseSpeed(text));
  }

  /**
   * The speed in knots.
   *
   * @return nautical miles an hour
   */
  public double knots() {
    return metresPerSecond / METRES_PER_SECOND_PER_KNOT;
  }

  /**
   * The speed in kilometres an hour.
   *
   * @return kilometres an hour
   */
  public double kilometresPerHour() {
    return metresPerSecond * 3.6;
  }

  /**
   * The time one nautical mile takes.
   *
   * @return minutes for a nautical mile; infinite for no speed
   */
  public double paceMinutesPerNauticalMile() {
    return Distance.METRES_PER_NAUTICAL_MILE / metresPerSecond / 60.0;
  }

  /**
   * This speed multiplied by a factor.
   *
   * @param factor how many times, finite, at least 0
   * @return the product
   * @throws IllegalArgumentException if the product is NaN, infinite or negative
   */
  public Speed times(double factor) {
    return new Speed(metresPerSecond * factor);
  }

  /**
   * This speed and another along the same line.
   *
   * @param other the speed to add
   * @return the sum
   * @throws IllegalArgumentException if the sum overflows
   */
  public Speed plus(Speed other) {
    return new Speed(metresPerSecond + other.metresPerSecond);
  }

  /**
   * This speed less another along the same line.
   *
   * @param other the speed to take off, no greater than this one
   * @return the difference
   * @throws IllegalArgumentException if {@code other} is greater: a speed is never negative; a
   *     {@link Velocity} has a direction
   */
  public Speed minus(Speed other) {
    if (other.metresPerSecond > metresPerSecond) {
      throw new IllegalArgumentException(
          "speed to take off must be at most " + this + ", but was " + other);
    }
    return new Speed(metresPerSecond - other.metresPerSecond);
  }

  /**
   * The distance covered at this speed in a time.
   *
   * @param time how long; negative gives a negative distance
   * @return speed times time
   * @throws IllegalArgumentException if the product overflows
   */
  public Distance times(Duration time) {
    return Distance.ofMetres(metresPerSecond * Seconds.of(time));
  }

  @Override
  public int compareTo(Speed other) {
    return Double.compare(metresPerSecond, other.metresPerSecond);
  }

  /**
   * Knots with their unit, for people.
   *
   * @param decimals digits after the decimal point, in [0, 9]
   * @return for example {@code 3.5 kn}, rounded half up
   * @throws IllegalArgumentException if {@code decimals} is outside [0, 9]
   */
  public String inKnots(int decimals) {
    return MeasureText.rounded(knots(), decimals) + " kn";
  }

  /**
   * Knots without loss, or metres a second or kilometres an hour where they are shorter: {@code 3.5
   * kn}, {@code 1.8 m/s}.
   */
  @Override
  public String toString() {
    return MeasureText.speed(metresPerSecond);
  }
}
