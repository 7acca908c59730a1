package org.ferryglide.nav.bearing;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;

/**
 * The angle from magnetic north to where one compass in one boat points on one heading: the only
 * way between magnetic and compass bearings.
 *
 * <pre>{@code
 * Deviation nearTheStove = Deviation.ofDegreesEast(3);
 * nearTheStove.toMagnetic(CompassBearing.ofDegrees(67)); // 70.0°M
 * }</pre>
 *
 * @param degreesEast the angle from magnetic north to where a compass points, degrees, east
 *     positive, in [-180, 180]
 */
public record Deviation(double degreesEast) implements Serializable {

  private static final long serialVersionUID = 1L;

  /** No deviation at all. */
  public static final Deviation ZERO = new Deviation(0.0);

  /**
   * Takes the angle from magnetic north to where a compass points; {@link #ofDegreesEast} and
   * {@link #ofDegreesWest} read better.
   *
   * @param degreesEast degrees, east positive, in [-180, 180]; -0.0 becomes 0.0
   * @throws IllegalArgumentException if {@code degreesEast} is NaN or outside [-180, 180]
   */
  public Deviation {
    degreesEast = Arguments.within(degreesEast, -180.0, 180.0, "deviation", "degrees east");
  }

  /**
   * Makes a deviation from degrees east.
   *
   * @param degreesEast degrees, east positive, in [-180, 180]
   * @return the deviation
   * @throws IllegalArgumentException if {@code degreesEast} is NaN or outside [-180, 180]
   */
  public static Deviation ofDegreesEast(double degreesEast) {
    return new Deviation(degreesEast);
  }

  /**
   * Makes a deviation from degrees west.
   *
   * @param degreesWest degrees, west positive, in [-180, 180]
   * @return the deviation
   * @throws IllegalArgumentException if {@code degreesWest} is NaN or outside [-180, 180]
   */
  public static Deviation ofDegreesWest(double degreesWest) {
    return new Deviation(
        -Arguments.within(degreesWest, -180.0, 180.0, "deviation", "degrees west"));
  }

  /**
   * Reads {@code 4°15'W}, {@code 4.25°W}, {@code 3 45 E}, {@code W 4°15'}, {@code 15'W}, and what
   * {@link #toString} writes.
   *
   * @param text degrees, degrees and minutes, or minutes with their mark, then or before them E or
   *     W; the letter may be left out for zero
   * @return the deviation
   * @throws org.ferryglide.nav.note.TextFormatException if the text is anything else
   */
  public static Deviation parse(String text) {
    return new Deviation(NorthAngleText.parse(text, "deviation"));
  }

  /**
   * From compass north to magnetic north: adds easterly deviation.
   *
   * @param compass a bearing by this compass
   * @return the same direction from magnetic north
   */
  public MagneticBearing toMagnetic(CompassBearing compass) {
    return MagneticBearing.ofDegrees(compass.degrees() + degreesEast);
  }

  /**
   * From magnetic north to compass north: takes easterly deviation off.
   *
   * @param magnetic a bearing from magnetic north
   * @return the same direction as this compass shows it
   */
  public CompassBearing toCompass(MagneticBearing magnetic) {
    return CompassBearing.ofDegrees(magnetic.degrees() - degreesEast);
  }

  /**
   * Degrees and minutes with the letter, as charts print it.
   *
   * @return for example {@code 4°15'W}, rounded to the nearest minute; zero has no letter
   */
  public String degreesAndMinutes() {
    return NorthAngleText.degreesAndMinutes(degreesEast);
  }

  /**
   * Degrees with the letter, or degrees and minutes where they are shorter, without loss: {@code
   * 4.25°W}, {@code 4°10'W}.
   */
  @Override
  public String toString() {
    return NorthAngleText.text(degreesEast);
  }
}
