package org.ferryglide.nav.teach;

import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.HandRounding;
import org.ferryglide.nav.note.Figure;

/**
 * What a figure of a problem measures, how finely somebody writes it down by hand, and how far a
 * careful answer may lie from the exact one.
 *
 * <p>Tolerances are those of the tools a paddler has: two degrees for a bearing laid off with a
 * plotter or a small compass, one and a half tenths of a mile, two tenths of a knot, fifteen
 * centimetres of tide, five minutes of clock (common practice, no source).
 *
 * <pre>{@code
 * Quantity.MAGNETIC_BEARING.text(49.4); // 049°M
 * Quantity.CLOCK.text(765.0); // 12:45
 * Quantity.TRUE_BEARING.difference(1.0, 359.0); // 2.0
 * }</pre>
 */
public enum Quantity {
  /** A direction from true north, degrees in [0, 360). */
  TRUE_BEARING("degrees", 1.0, 2.0, 180.0),
  /** A direction from magnetic north, degrees in [0, 360). */
  MAGNETIC_BEARING("degrees", 1.0, 2.0, 180.0),
  /** A direction from the north of a grid, degrees in [0, 360). */
  GRID_BEARING("degrees", 1.0, 2.0, 180.0),
  /** A direction by one compass, degrees in [0, 360). */
  COMPASS_BEARING("degrees", 1.0, 2.0, 180.0),
  /** Variation, deviation or convergence, degrees, east positive, written in quarters. */
  EAST_WEST("degrees east", 0.25, 0.3, 20.0),
  /** An angle without a side, degrees. */
  ANGLE("degrees", 1.0, 2.0, 45.0),
  /** A time of day, minutes since midnight; may pass midnight either way. */
  CLOCK(Figure.MINUTES_OF_THE_DAY, 1.0, 5.0, 360.0),
  /** A length of time, minutes. */
  MINUTES("minutes", 1.0, 4.0, 120.0),
  /** A distance, nautical miles. */
  NAUTICAL_MILES("nautical miles", 0.05, 0.15, 2.0),
  /** A difference of latitude or longitude, minutes of arc. */
  LATITUDE_MINUTES("minutes of arc", 0.1, 0.2, 5.0),
  /** A speed, knots. */
  KNOTS("knots", 0.1, 0.2, 3.0),
  /** A height or depth, metres; below zero it is under the datum. */
  METRES("metres", 0.1, 0.15, 4.0),
  /** An angle measured with a sextant, minutes of arc. */
  ARC_MINUTES("minutes of arc", 1.0, 1.5, 60.0),
  /** A number of things, such as years or twelfths. */
  COUNT("", 0.5, 0.4, 12.0),
  /** A share of one, for example of the way from neaps to springs. */
  SHARE("of one", 0.01, 0.08, 1.0);

  private final String unit;
  private final double step;
  private final double tolerance;
  private final double span;

  Quantity(String unit, double step, double tolerance, double span) {
    this.unit = unit;
    this.step = step;
    this.tolerance = tolerance;
    this.span = span;
  }

  /**
   * The unit its figures are in.
   *
   * @return the unit in plain English
   */
  public String unit() {
    return unit;
  }

  /**
   * The unit of {@link #tolerance()} and of {@link #difference}.
   *
   * @return the unit in plain English; of two times of day the difference is in minutes
   */
  public String unitOfDifference() {
    return this == CLOCK ? MINUTES.unit : unit;
  }

  /**
   * How far a careful answer by hand may lie from the exact one.
   *
   * @return tolerance in {@link #unit()}, above 0
   */
  public double tolerance() {
    return tolerance;
  }

  /**
   * How finely it is written by hand.
   *
   * @return a few words, for example {@code to the whole degree}
   */
  public String writtenTo() {
    return switch (this) {
      case TRUE_BEARING, MAGNETIC_BEARING, GRID_BEARING, COMPASS_BEARING, ANGLE ->
          "bearings and angles to the whole degree";
      case EAST_WEST -> "angles east or west to a quarter of a degree";
      case CLOCK, MINUTES -> "times to the minute";
      case NAUTICAL_MILES -> "miles to a twentieth";
      case LATITUDE_MINUTES -> "minutes of latitude and longitude to a tenth";
      case KNOTS -> "knots to a tenth";
      case METRES -> "metres to a tenth";
      case ARC_MINUTES -> "minutes of arc whole";
      case COUNT -> "counts to a half";
      case SHARE -> "shares to a hundredth";
    };
  }

  /**
   * Whether this is a direction, for which 359 and 1 are two apart.
   *
   * @return true for the four bearings
   */
  public boolean isBearing() {
    return span == 180.0;
  }

  /**
   * The value as it would be written by hand.
   *
   * @param value value in {@link #unit()}; NaN gives NaN
   * @return the nearest value that is written
   */
  public double rounded(double value) {
    double parts = value / step;
    double nearest = Math.copySign(Math.floor(Math.abs(parts) + 0.5), parts) * step;
    double tidy = Math.rint(nearest * 1e6) / 1e6 + 0.0;
    return isBearing() ? Angles.reduced(tidy) : tidy;
  }

  /**
   * How far one value lies from another, the short way round for bearings.
   *
   * @param value value in {@link #unit()}
   * @param from value it is compared with
   * @return difference, positive where {@code value} is the greater or lies clockwise
   */
  public double difference(double value, double from) {
    return isBearing() ? Angles.turn(from, value) : value - from;
  }

  /**
   * The value in writing, with the letter or unit of the trade.
   *
   * @param value value in {@link #unit()}
   * @return for example {@code 049°M}, {@code 4°15'W}, {@code 12:45}, {@code 1 h 05 min}, {@code
   *     3.4 NM}, {@code 2.1 kn}, {@code 3.2 m}
   * @throws IllegalArgumentException if {@code value} is NaN or infinite
   */
  public String text(double value) {
    Arguments.finite(value, "value", unit);
    return switch (this) {
      case TRUE_BEARING -> bearing(value, 'T');
      case MAGNETIC_BEARING -> bearing(value, 'M');
      case GRID_BEARING -> bearing(value, 'G');
      case COMPASS_BEARING -> bearing(value, 'C');
      case EAST_WEST -> HandRounding.MINUTE.eastWest(value);
      case ANGLE -> Math.round(value) + "°";
      case CLOCK -> clock(value);
      case MINUTES -> minutes(value);
      case NAUTICAL_MILES -> decimals(value, 2) + " NM";
      case KNOTS -> decimals(value, 1) + " kn";
      case METRES -> decimals(value, 1) + " m";
      case ARC_MINUTES -> Math.round(value) + "'";
      case LATITUDE_MINUTES -> decimals(value, 1) + "'";
      case COUNT -> count(value);
      case SHARE -> decimals(value, 2);
    };
  }

  /** Half the width of the band over which arbitrary wrong answers are taken to lie. */
  double halfSpan(double right) {
    return switch (this) {
      case NAUTICAL_MILES, LATITUDE_MINUTES, KNOTS, MINUTES -> Math.max(span, Math.abs(right));
      default -> span;
    };
  }

  private static String bearing(double value, char letter) {
    return HandRounding.WHOLE_DEGREE.bearing(Angles.reduced(value), letter);
  }

  private static String clock(double value) {
    long minute = Math.floorMod(Math.round(value), 1440L);
    return two(minute / 60) + ":" + two(minute % 60);
  }

  private static String minutes(double value) {
    long all = Math.round(Math.abs(value));
    String sign = value < 0 && all > 0 ? "-" : "";
    return sign + (all < 60 ? all + " min" : all / 60 + " h " + two(all % 60) + " min");
  }

  private static String count(double value) {
    return value == Math.rint(value) ? Long.toString(Math.round(value)) : decimals(value, 1);
  }

  private static String two(long number) {
    return (number < 10 ? "0" : "") + number;
  }

  private static String decimals(double value, int places) {
    double scale = places == 1 ? 10.0 : 100.0;
    long parts = Math.round(Math.abs(value) * scale);
    String rest = places == 1 ? "" + parts % 10 : two(parts % 100);
    return (value < 0 && parts > 0 ? "-" : "") + parts / (long) scale + "." + rest;
  }
}
