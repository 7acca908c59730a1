package org.ferryglide.nav.magnetic;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;

/**
 * How far the variation moves in a year, as charts print it in brackets beside the variation.
 *
 * <pre>{@code
 * AnnualChange.ofMinutesEast(8).toString(); // 8'E
 * }</pre>
 *
 * @param minutesEast movement of magnetic north in a year, minutes of arc, east positive
 */
public record AnnualChange(double minutesEast) implements Serializable {

  private static final long serialVersionUID = 1L;

  /** A variation that stands still: "annual change nil". */
  public static final AnnualChange NIL = new AnnualChange(0.0);

  /** A full turn each year; no printed change comes near it. */
  static final double MOST_MINUTES = 21_600.0;

  /**
   * Takes the change in minutes of arc.
   *
   * @param minutesEast minutes of arc a year, east positive, in [-21600, 21600]; -0.0 becomes 0.0
   * @throws IllegalArgumentException if {@code minutesEast} is NaN or out of range
   */
  public AnnualChange {
    minutesEast =
        Arguments.within(
            minutesEast, -MOST_MINUTES, MOST_MINUTES, "annual change", "minutes of arc");
  }

  /**
   * Makes a change that moves magnetic north to the east.
   *
   * @param minutesEast minutes of arc a year, east positive
   * @return the change
   * @throws IllegalArgumentException if {@code minutesEast} is NaN or out of range
   */
  public static AnnualChange ofMinutesEast(double minutesEast) {
    return new AnnualChange(minutesEast);
  }

  /**
   * Makes a change that moves magnetic north to the west.
   *
   * @param minutesWest minutes of arc a year, west positive
   * @return the change
   * @throws IllegalArgumentException if {@code minutesWest} is NaN or out of range
   */
  public static AnnualChange ofMinutesWest(double minutesWest) {
    return new AnnualChange(0.0 - minutesWest);
  }

  /**
   * The same change in degrees.
   *
   * @return degrees a year, east positive
   */
  public double degreesEast() {
    return minutesEast / 60.0;
  }

  /**
   * The change as a chart prints it.
   *
   * @return for example {@code 8'E}, to the nearest minute, or {@code nil}
   */
  public String printed() {
    long minutes = Math.round(Math.abs(minutesEast));
    return minutes == 0 ? "nil" : minutes + "'" + (minutesEast > 0 ? "E" : "W");
  }

  /** Minutes and letter, without loss: {@code 8'E}, {@code 7.5'W}, or {@code nil}. */
  @Override
  public String toString() {
    if (minutesEast == 0.0) {
      return "nil";
    }
    return Arguments.plain(Math.abs(minutesEast)) + "'" + (minutesEast > 0 ? "E" : "W");
  }
}
