package org.ferryglide.nav.measure;

import java.io.Serializable;
import java.time.Duration;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Seconds;

/**
 * A length over the earth or the water, a height or a depth, held in metres.
 *
 * <p>A distance is negative only where the method that returns it says so: to tell one side from
 * the other, or for a height below the level it is measured from.
 *
 * <pre>{@code
 * Distance leg = Distance.ofNauticalMiles(5.2);
 * leg.kilometres(); // 9.6304
 * leg.inNauticalMiles(1); // 5.2 NM
 * }</pre>
 *
 * @param metres the length, metres, finite; negative only where a side or a level is meant
 */
public record Distance(double metres) implements Comparable<Distance>, Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Metres in an international nautical mile, exactly.
   *
   * @see <a href="https://www.bipm.org/en/publications/si-brochure">SI Brochure, 8th edition, table
   *     8 (First International Extraordinary Hydrographic Conference, Monaco, 1929)</a>
   */
  public static final double METRES_PER_NAUTICAL_MILE = 1852.0;

  /** Metres in a cable, a tenth of a nautical mile. */
  public static final double METRES_PER_CABLE = 185.2;

  /** Metres in a statute mile, exactly: 5280 feet of 0.3048 m (international yard, 1959). */
  public static final double METRES_PER_STATUTE_MILE = 1609.344;

  /** Metres in an international foot, exactly (1959). */
  public static final double METRES_PER_FOOT = 0.3048;

  /** Metres in a fathom of six feet, exactly. */
  public static final double METRES_PER_FATHOM = 1.8288;

  /** Zero distance. */
  public static final Distance ZERO = new Distance(0.0);

  /**
   * Takes metres; {@link #ofMetres} reads better.
   *
   * @param metres the length, metres; -0.0 becomes 0.0
   * @throws IllegalArgumentException if {@code metres} is NaN or infinite
   */
  public Distance {
    metres = Arguments.finite(metres, "distance", "metres");
  }

  /**
   * Makes a distance from metres.
   *
   * @param metres the length, metres, finite
   * @return the distance
   * @throws IllegalArgumentException if {@code metres} is NaN or infinite
   */
  public static Distance ofMetres(double metres) {
    return new Distance(metres);
  }

  /**
   * Makes a distance from kilometres.
   *
   * @param kilometres the length, kilometres, finite
   * @return the distance
   * @throws IllegalArgumentException if the value is NaN, infinite or overflows
   */
  public static Distance ofKilometres(double kilometres) {
    return new Distance(kilometres * 1000.0);
  }

  /**
   * Makes a distance from nautical miles of 1852 m.
   *
   * @param nauticalMiles the length, nautical miles, finite
   * @return the distance
   * @throws IllegalArgumentException if the value is NaN, infinite or overflows
   */
  public static Distance ofNauticalMiles(double nauticalMiles) {
    return new Distance(nauticalMiles * METRES_PER_NAUTICAL_MILE);
  }

  /**
   * Makes a distance from cables of 185.2 m.
   *
   * @param cables the length, cables, finite
   * @return the distance
   * @throws IllegalArgumentException if the value is NaN, infinite or overflows
   */
  public static Distance ofCables(double cables) {
    return new Distance(cables * METRES_PER_CABLE);
  }

  /**
   * Makes a distance from statute (land) miles of 1609.344 m.
   *
   * @param statuteMiles the length, statute miles, finite
   * @return the distance
   * @throws IllegalArgumentException if the value is NaN, infinite or overflows
   */
  public static Distance ofStatuteMiles(double statuteMiles) {
    return new Distance(statuteMiles * METRES_PER_STATUTE_MILE);
  }

  /**
   * Reads a number with its unit: {@code 5.2 NM}, {@code 9.63 km}, {@code 250 m}, {@code 3 cables},
   * {@code 6 statute miles}, {@code 30 ft}, {@code 5 fathoms}, and what {@link #toString} writes.
   *
   * @param text a decimal number, then the unit
   * @return the distance
   * @throws org.ferryglide.nav.note.TextFormatException if the text is anything else, a bare "mile"
   *     included
   */
  public static Distance parse(String text) {
    return new Distance(MeasureText.parseDistance(text));
  }

  /**
   * The length in kilometres.
   *
   * @return kilometres
   */
  public double kilometres() {
    return metres / 1000.0;
  }

  /**
   * The length in nautical miles of 1852 m.
   *
   * @return nautical miles
   */
  public double nauticalMiles() {
    return metres / METRES_PER_NAUTICAL_MILE;
  }

  /**
   * The length in cables of 185.2 m.
   *
   * @return cables
   */
  public double cables() {
    return metres / METRES_PER_CABLE;
  }

  /**
   * The length in statute miles of 1609.344 m.
   *
   * @return statute miles
   */
  public double statuteMiles() {
    return metres / METRES_PER_STATUTE_MILE;
  }

  /**
   * This distance and another, end to end.
   *
   * @param other the distance to add
   * @return the sum
   * @throws IllegalArgumentException if the sum overflows
   */
  public Distance plus(Distance other) {
    return new Distance(metres + other.metres);
  }

  /**
   * This distance less another.
   *
   * @param other the distance to take off
   * @return the difference, negative if {@code other} is longer
   * @throws IllegalArgumentException if the difference overflows
   */
  public Distance minus(Distance other) {
    return new Distance(metres - other.metres);
  }

  /**
   * This distance multiplied by a factor.
   *
   * @param factor how many times, finite
   * @return the product
   * @throws IllegalArgumentException if the product is NaN or infinite
   */
  public Distance times(double factor) {
    return new Distance(metres * factor);
  }

  /**
   * How long this distance takes at a speed.
   *
   * @param speed the speed, not zero
   * @return distance over speed, to the nearest nanosecond
   * @throws IllegalArgumentException if {@code speed} is zero, or so small that the time cannot be
   *     counted
   */
  public Duration dividedBy(Speed speed) {
    return MeasureText.duration(metres / speed.metresPerSecond(), this, speed);
  }

  /**
   * The speed that covers this distance in a time.
   *
   * @param time how long, above zero
   * @return distance over time
   * @throws IllegalArgumentException if {@code time} is not above zero, or this distance is
   *     negative
   */
  public Speed dividedBy(Duration time) {
    return Speed.ofMetresPerSecond(
        metres / Arguments.positive(Seconds.of(time), "time", "seconds"));
  }

  /**
   * How many times another distance goes into this one.
   *
   * @param other the other distance, not zero
   * @return the ratio
   * @throws IllegalArgumentException if {@code other} is zero
   */
  public double dividedBy(Distance other) {
    return Arguments.finite(metres / other.metres, "ratio of " + this + " to " + other, "times");
  }

  /**
   * The same length without its sign.
   *
   * @return this distance, or its opposite if it is negative
   */
  public Distance magnitude() {
    return metres < 0.0 ? new Distance(-metres) : this;
  }

  @Override
  public int compareTo(Distance other) {
    return Double.compare(metres, other.metres);
  }

  /**
   * Nautical miles with their unit, for people.
   *
   * @param decimals digits after the decimal point, in [0, 9]
   * @return for example {@code 5.2 NM}, rounded half up
   * @throws IllegalArgumentException if {@code decimals} is outside [0, 9]
   */
  public String inNauticalMiles(int decimals) {
    return MeasureText.rounded(nauticalMiles(), decimals) + " NM";
  }

  /**
   * Kilometres with their unit, for people.
   *
   * @param decimals digits after the decimal point, in [0, 9]
   * @return for example {@code 9.6 km}, rounded half up
   * @throws IllegalArgumentException if {@code decimals} is outside [0, 9]
   */
  public String inKilometres(int decimals) {
    return MeasureText.rounded(kilometres(), decimals) + " km";
  }

  /**
   * Metres without loss, or nautical miles where metres would be long: {@code 9630.4 m}, {@code 0.7
   * NM}.
   */
  @Override
  public String toString() {
    return MeasureText.distance(metres);
  }
}
