package org.ferryglide.nav.basics;

/**
 * The checks of what is put into a value type, so that one kind of mistake has one kind of message.
 *
 * <pre>{@code
 * this.heightMetres = Arguments.finite(heightMetres, "height", "metres");
 * // height must be a finite number of metres, but was NaN
 * }</pre>
 *
 * <p>Each check returns its argument with -0.0 turned into 0.0, so that equal values are equal
 * objects.
 */
public final class Arguments {
  private Arguments() {}

  /**
   * Refuses NaN and infinities.
   *
   * @param value the number given
   * @param name what it is, as the message should name it
   * @param unit its unit in the plural
   * @return {@code value}, with -0.0 as 0.0
   * @throws IllegalArgumentException if {@code value} is NaN or infinite
   */
  public static double finite(double value, String name, String unit) {
    if (!(Math.abs(value) <= Double.MAX_VALUE)) { // written so that NaN fails
      throw new IllegalArgumentException(
          name + " must be a finite number of " + unit + ", but was " + value);
    }
    return value + 0.0;
  }

  /**
   * Refuses what lies outside a closed range, NaN included.
   *
   * @param value the number given
   * @param least smallest value allowed
   * @param greatest largest value allowed
   * @param name what it is, as the message should name it
   * @param unit its unit in the plural
   * @return {@code value}, with -0.0 as 0.0
   * @throws IllegalArgumentException if {@code value} is NaN or outside [least, greatest]
   */
  public static double within(
      double value, double least, double greatest, String name, String unit) {
    if (!(value >= least && value <= greatest)) { // written so that NaN fails
      throw new IllegalArgumentException(
          name
              + " must be in ["
              + plain(least)
              + ", "
              + plain(greatest)
              + "] "
              + unit
              + ", but was "
              + value);
    }
    return value + 0.0;
  }

  /**
   * Refuses whole numbers outside a closed range.
   *
   * @param value the number given
   * @param least smallest value allowed
   * @param greatest largest value allowed
   * @param name what it is, as the message should name it
   * @param unit its unit in the plural
   * @return {@code value}
   * @throws IllegalArgumentException if {@code value} is outside [least, greatest]
   */
  public static int within(int value, int least, int greatest, String name, String unit) {
    if (value < least || value > greatest) {
      throw new IllegalArgumentException(
          name + " must be in [" + least + ", " + greatest + "] " + unit + ", but was " + value);
    }
    return value;
  }

  /**
   * Refuses negative numbers, NaN and infinity.
   *
   * @param value the number given
   * @param name what it is, as the message should name it
   * @param unit its unit in the plural
   * @return {@code value}, with -0.0 as 0.0
   * @throws IllegalArgumentException if {@code value} is NaN, infinite or negative
   */
  public static double notNegative(double value, String name, String unit) {
    if (!(value >= 0.0 && value <= Double.MAX_VALUE)) { // written so that NaN fails
      throw new IllegalArgumentException(
          name + " must be a finite number of " + unit + ", at least 0, but was " + value);
    }
    return value + 0.0;
  }

  /**
   * Refuses zero, negative numbers, NaN and infinity.
   *
   * @param value the number given
   * @param name what it is, as the message should name it
   * @param unit its unit in the plural
   * @return {@code value}
   * @throws IllegalArgumentException if {@code value} is NaN, infinite, zero or negative
   */
  public static double positive(double value, String name, String unit) {
    if (!(value > 0.0 && value <= Double.MAX_VALUE)) { // written so that NaN fails
      throw new IllegalArgumentException(
          name + " must be a finite number of " + unit + " above 0, but was " + value);
    }
    return value;
  }

  /**
   * A number as messages print it.
   *
   * @param number any number
   * @return whole numbers below 1e9 without a decimal point, others as {@link Double#toString}
   */
  public static String plain(double number) {
    return number == Math.rint(number) && Math.abs(number) < 1e9
        ? Long.toString((long) number)
        : Double.toString(number);
  }
}
