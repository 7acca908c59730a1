package org.ferryglide.nav.bearing;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;

/**
 * The angle from true north to magnetic north at a place and date: the only way between true and
 * magnetic bearings.
 *
 * <pre>{@code
 * Variation variation = Variation.parse("4°15'W");
 * variation.toMagnetic(TrueBearing.ofDegrees(45)); // 49.25°M: west, magnetic is best (larger)
 * }</pre>
 *
 * @param degreesEast the angle from true north to magnetic north, degrees, east positive, in [-180,
 *     180]
 */
public record Variation(double degreesEast) implements Serializable {

  private static final long serialVersionUID = 1L;

  /** No variation at all. */
  public static final Variation ZERO = new Variation(0.0);

  /**
   * Takes the angle from true north to magnetic north; {@link #ofDegreesEast} and {@link
   * #ofDegreesWest} read better.
   *
   * @param degreesEast degrees, east positive, in [-180, 180]; -0.0 becomes 0.0
   * @throws IllegalArgumentException if {@code degreesEast} is NaN or outside [-180, 180]
   */
  public Variation {
    degreesEast = Arguments.within(degreesEast, -180.0, 180.0, "variation", "degrees east");
  }

  /**
   * Makes a variation from degrees east.
   *
   * @param degreesEast degrees, east positive, in [-180, 180]
   * @return the variation
   * @throws IllegalArgumentException if {@code degreesEast} is NaN or outside [-180, 180]
   */
  public static Variation ofDegreesEast(double degreesEast) {
    return new Variation(degreesEast);
  }

  /**
   * Makes a variation from degrees west.
   *
   * @param degreesWest degrees, west positive, in [-180, 180]
   * @return the variation
   * @throws IllegalArgumentException if {@code degreesWest} is NaN or outside [-180, 180]
   */
  public static Variation ofDegreesWest(double degreesWest) {
    return new Variation(
        -Arguments.within(degreesWest, -180.0, 180.0, "variation", "degrees west"));
  }

  /**
   * Reads {@code 4°15'W}, {@code 4.25°W}, {@code 3 45 E}, {@code W 4°15'}, {@code 15'W}, and what
   * {@link #toString} writes.
   *
   * @param text degrees, degrees and minutes, or minutes with their mark, then or before them E or
   *     W; the letter may be left out for zero
   * @return the variation
   * @throws org.ferryglide.nav.note.TextFormatException if the text is anything else
   */
  public static Variation parse(String text) {
    return new Variation(NorthAngleText.parse(text, "variation"));
  }

  /**
   * From magnetic north to true north: adds easterly variation.
   *
   * @param magnetic a bearing from magnetic north
   * @return the same direction from true north
   */
  public TrueBearing toTrue(MagneticBearing magnetic) {
    return TrueBearing.ofDegrees(magnetic.degrees() + degreesEast);
  }

  /**
   * From true north to magnetic north: takes easterly variation off.
   *
   * @param trueBearing a bearing from true north
   * @return the same direction from magnetic north
   */
  public MagneticBearing toMagnetic(TrueBearing trueBearing) {
    return MagneticBearing.ofDegrees(trueBearing.degrees() - degreesEast);
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
