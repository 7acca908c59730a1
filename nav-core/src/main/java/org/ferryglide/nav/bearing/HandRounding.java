package org.ferryglide.nav.bearing;

import org.ferryglide.nav.basics.Arguments;

/**
 * How finely somebody working by hand writes angles down.
 *
 * <pre>{@code
 * HandRounding.WHOLE_DEGREE.bearing(49.25, 'M'); // 049°M
 * HandRounding.MINUTE.eastWest(-4.25); // 4°15'W
 * }</pre>
 */
public enum HandRounding {
  /** Whole degrees: what a deck compass shows and a paddler holds. */
  WHOLE_DEGREE(1.0),
  /** Tenths of a degree. */
  TENTH_OF_DEGREE(10.0),
  /** Minutes of arc: what a chart's rose prints. */
  MINUTE(60.0);

  private final double partsInDegree;

  HandRounding(double partsInDegree) {
    this.partsInDegree = partsInDegree;
  }

  /**
   * An angle as it would be written, halves away from zero.
   *
   * @param degrees degrees, any finite value; NaN gives NaN
   * @return the nearest value that can be written, degrees
   */
  public double round(double degrees) {
    double parts = Math.floor(Math.abs(degrees) * partsInDegree + 0.5);
    return Math.copySign(parts / partsInDegree, degrees) + 0.0;
  }

  /**
   * A bearing with three digits for its degrees.
   *
   * @param degrees degrees, in [0, 360]; 360 is written as 000
   * @param letter the letter of its north
   * @return for example {@code 049°M}, {@code 049.3°M} or {@code 049°15'M}
   * @throws IllegalArgumentException if {@code degrees} is NaN or out of range
   */
  public String bearing(double degrees, char letter) {
    Arguments.within(degrees, 0.0, 360.0, "bearing", "degrees");
    long parts = parts(degrees) % Math.round(360.0 * partsInDegree);
    long whole = parts / (long) partsInDegree;
    return (whole < 10 ? "00" : whole < 100 ? "0" : "") + angle(parts) + letter;
  }

  /**
   * An angle with the letter of its side.
   *
   * @param degreesEast degrees, east positive
   * @return for example {@code 4°W}, {@code 4.3°W} or {@code 4°15'W}; zero has no letter
   * @throws IllegalArgumentException if {@code degreesEast} is NaN or infinite
   */
  public String eastWest(double degreesEast) {
    Arguments.finite(degreesEast, "angle", "degrees");
    long parts = parts(Math.abs(degreesEast));
    return angle(parts) + (parts == 0 ? "" : degreesEast > 0 ? "E" : "W");
  }

  private long parts(double degrees) {
    return (long) Math.floor(degrees * partsInDegree + 0.5);
  }

  private String angle(long parts) {
    long inDegree = (long) partsInDegree;
    long whole = parts / inDegree;
    long rest = parts % inDegree;
    return switch (this) {
      case WHOLE_DEGREE -> whole + "°";
      case TENTH_OF_DEGREE -> whole + "." + rest + "°";
      case MINUTE -> whole + "°" + (rest < 10 ? "0" : "") + rest + "'";
    };
  }
}
