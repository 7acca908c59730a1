package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.util.Arrays;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Speed;

/**
 * Something the wind does to a craft, by where it comes from relative to the bow and by how strong
 * it is over the water.
 *
 * <p>Rows are angles off the bow, 0 for a head wind to 180 for one from astern, the same for either
 * side; columns are wind speeds. Between them the table is read in straight lines both ways. Beyond
 * its strongest wind the last stretch is continued, because a gale that changes nothing would be
 * the worse guess; {@link #reaches} tells.
 *
 * <pre>{@code
 * WindTable leewayDegrees =
 *     WindTable.of(
 *         new double[] {0, 90, 180},
 *         new double[] {0, 10, 20}, // knots
 *         new double[][] {{0, 0, 0}, {0, 4, 12}, {0, 0, 0}});
 * }</pre>
 */
final class WindTable implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] offBow;
  private final double[] wind;
  private final double[] values;

  private WindTable(double[] offBow, double[] wind, double[] values) {
    this.offBow = offBow;
    this.wind = wind;
    this.values = values;
  }

  /**
   * Makes a table.
   *
   * @param offBowDegrees angles off the bow, degrees, ascending from 0 to 180
   * @param windKnots wind speeds over the water, knots, ascending from 0
   * @param values one row for each angle with one value for each wind, finite
   * @return the table
   * @throws IllegalArgumentException if the angles do not run from 0 to 180, the winds do not start
   *     at 0, either does not ascend, there are fewer than two of either, or a row has the wrong
   *     length or a value that is not finite
   */
  static WindTable of(double[] offBowDegrees, double[] windKnots, double[][] values) {
    checkAscending(offBowDegrees, "angles off the bow");
    checkAscending(windKnots, "wind speeds");
    if (offBowDegrees[0] != 0.0 || offBowDegrees[offBowDegrees.length - 1] != 180.0) {
      throw new IllegalArgumentException(
          "angles off the bow must run from 0 to 180 degrees, but were "
              + Arrays.toString(offBowDegrees));
    }
    if (windKnots[0] != 0.0) {
      throw new IllegalArgumentException(
          "wind speeds must start at 0 knots, but were " + Arrays.toString(windKnots));
    }
    if (values.length != offBowDegrees.length) {
      throw new IllegalArgumentException(
          "there must be one row for each of the "
              + offBowDegrees.length
              + " angles, but there were "
              + values.length);
    }
    int columns = windKnots.length;
    double[] flat = new double[offBowDegrees.length * columns];
    for (int row = 0; row < values.length; row++) {
      if (values[row].length != columns) {
        throw new IllegalArgumentException(
            "row " + row + " must have " + columns + " values, but had " + values[row].length);
      }
      for (int column = 0; column < columns; column++) {
        flat[row * columns + column] =
            Arguments.finite(values[row][column], "value of a wind table", "units");
      }
    }
    double[] wind = new double[columns];
    for (int i = 0; i < columns; i++) {
      wind[i] = windKnots[i] * Speed.METRES_PER_SECOND_PER_KNOT;
    }
    return new WindTable(offBowDegrees.clone(), wind, flat);
  }

  private static void checkAscending(double[] numbers, String name) {
    if (numbers.length < 2) {
      throw new IllegalArgumentException(
          "there must be at least two " + name + ", but there were " + numbers.length);
    }
    for (int i = 0; i < numbers.length; i++) {
      if (!(Math.abs(numbers[i]) <= Double.MAX_VALUE)
          || (i > 0 && !(numbers[i] > numbers[i - 1]))) {
        throw new IllegalArgumentException(
            name + " must be finite and ascend, but were " + Arrays.toString(numbers));
      }
    }
  }

  /**
   * The same table with every value multiplied.
   *
   * @param factor what to multiply by, finite
   * @return the scaled table
   * @throws IllegalArgumentException if {@code factor} is NaN or infinite
   */
  public WindTable times(double factor) {
    Arguments.finite(factor, "factor", "units");
    double[] scaled = values.clone();
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] *= factor;
    }
    return new WindTable(offBow, wind, scaled);
  }

  /**
   * The value for a wind.
   *
   * @param offBowDegrees angle between the bow and where the wind comes from, degrees, in [0, 180];
   *     NaN gives NaN
   * @param windMetresPerSecond wind speed over the water, metres a second, at least 0; NaN gives
   *     NaN
   * @return the value, in the table's own unit
   */
  public double at(double offBowDegrees, double windMetresPerSecond) {
    int row = stretch(offBow, offBowDegrees);
    int column = stretch(wind, windMetresPerSecond);
    double down = (offBowDegrees - offBow[row]) / (offBow[row + 1] - offBow[row]);
    double across = (windMetresPerSecond - wind[column]) / (wind[column + 1] - wind[column]);
    int at = row * wind.length + column;
    double above = values[at] + across * (values[at + 1] - values[at]);
    int next = at + wind.length;
    double below = values[next] + across * (values[next + 1] - values[next]);
    return above + down * (below - above);
  }

  /**
   * Whether the table was made for a wind as strong as this.
   *
   * @param windMetresPerSecond wind speed over the water, metres a second
   * @return false if {@link #at} continues the table beyond its strongest wind
   */
  public boolean reaches(double windMetresPerSecond) {
    return windMetresPerSecond <= wind[wind.length - 1];
  }

  private static int stretch(double[] ascending, double value) {
    int i = 0;
    while (i < ascending.length - 2 && value > ascending[i + 1]) {
      i++;
    }
    return i;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof WindTable that
        && Arrays.equals(offBow, that.offBow)
        && Arrays.equals(wind, that.wind)
        && Arrays.equals(values, that.values);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Arrays.hashCode(offBow) + Arrays.hashCode(wind)) + Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    return "wind table of "
        + offBow.length
        + " angles off the bow and "
        + wind.length
        + " wind speeds";
  }
}
