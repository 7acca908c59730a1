package org.ferryglide.nav.position;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;

/**
 * A point on the WGS84 ellipsoid.
 *
 * <pre>{@code
 * Position headland = Position.ofDegrees(50.105, -5.535);
 * headland.latitudeDegrees(); // 50.105
 * }</pre>
 *
 * @param latitudeDegrees geographic latitude, degrees, north positive, in [-90, 90]
 * @param longitudeDegrees longitude, degrees, east positive, in [-180, 180)
 */
public record Position(double latitudeDegrees, double longitudeDegrees) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes latitude and longitude, in that order.
   *
   * @param latitudeDegrees latitude, degrees, north positive, in [-90, 90]; -0.0 becomes 0.0
   * @param longitudeDegrees longitude, degrees, east positive, in [-180, 180]; 180 becomes -180,
   *     -0.0 becomes 0.0
   * @throws IllegalArgumentException if a part is NaN or out of range
   */
  public Position {
    latitudeDegrees = Arguments.within(latitudeDegrees, -90.0, 90.0, "latitude", "degrees");
    longitudeDegrees = Arguments.within(longitudeDegrees, -180.0, 180.0, "longitude", "degrees");
    if (longitudeDegrees == 180.0) {
      longitudeDegrees = -180.0;
    }
  }

  /**
   * Makes a position from decimal degrees.
   *
   * @param latitudeDegrees latitude, degrees, north positive, in [-90, 90]
   * @param longitudeDegrees longitude, degrees, east positive, in [-180, 180]
   * @return the position
   * @throws IllegalArgumentException if a part is NaN or out of range
   */
  public static Position ofDegrees(double latitudeDegrees, double longitudeDegrees) {
    return new Position(latitudeDegrees, longitudeDegrees);
  }

  /**
   * Reads a position in any of the forms that charts, pilots and receivers use.
   *
   * <p>Degrees, degrees and minutes, or degrees, minutes and seconds; hemisphere letters before or
   * after each part, or signs with north and east positive; typographic or plain marks, the letters
   * d, m and s, or none; the parts separated by a comma, a semicolon or spaces. Four, five, six or
   * seven digits before a letter are degrees and minutes, or degrees, minutes and seconds, run
   * together as receivers send them. Letters decide which part is which; without letters latitude
   * comes first, and the parts need a comma, a semicolon or a sign between them. A part with
   * neither letter nor sign beside one with a letter is refused: west would be taken for east. A
   * hyphen directly between digits separates degrees from minutes; where it could also be a minus
   * sign, the text is refused. ISO 6709 is read too, see {@link #parseIso6709}. The decimal mark is
   * a point.
   *
   * <pre>{@code
   * Position.parse("50°06.3'N 005°32.1'W");
   * Position.parse("N50 06 18 W5 32 06");
   * Position.parse("50.105, -5.535");
   * Position.parse("5006.3,N,00532.1,W");
   * Position.parse("+50.105-005.535/");
   * }</pre>
   *
   * @param text the position
   * @return the position
   * @throws org.ferryglide.nav.note.TextFormatException if the text is anything else, or a part is
   *     out of range, or minutes or seconds reach 60
   */
  public static Position parse(String text) {
    return PositionText.parse(text);
  }

  /**
   * Reads the standard form of ISO 6709: {@code +50.105-005.535/}, or with minutes {@code
   * +5006.3-00532.1/}, or with seconds {@code +500618-0053206/}.
   *
   * @param text sign and two, four or six digits of latitude, sign and three, five or seven digits
   *     of longitude, each with an optional fraction, then optionally a solidus
   * @return the position
   * @throws org.ferryglide.nav.note.TextFormatException if the text is anything else; a height or a
   *     reference system after the longitude is refused because it would be lost
   * @see <a href="https://www.iso.org/standard/75147.html">ISO 6709:2022, annex H</a>
   */
  public static Position parseIso6709(String text) {
    return Iso6709.parse(text);
  }

  /**
   * The position for people.
   *
   * @param form degrees, degrees and minutes (what charts use), or degrees, minutes and seconds
   * @param decimals digits after the decimal point of the last part, in [0, 9]
   * @return for example {@code 50°06.3'N 005°32.1'W}; rounded to the nearest, never 60 minutes or
   *     seconds; {@link #parse} reads it back to a position that prints the same
   * @throws IllegalArgumentException if {@code decimals} is outside [0, 9]
   */
  public String text(AngleForm form, int decimals) {
    return PositionText.text(this, form, decimals);
  }

  /**
   * The position as ISO 6709 writes it.
   *
   * @param form degrees, degrees and minutes, or degrees, minutes and seconds
   * @param decimals digits after the decimal point of the last part, in [0, 9]
   * @return for example {@code +50.105-005.535/}
   * @throws IllegalArgumentException if {@code decimals} is outside [0, 9]
   */
  public String iso6709(AngleForm form, int decimals) {
    return Iso6709.text(this, form, decimals);
  }

  /**
   * Decimal degrees with hemisphere letters, or minutes or seconds where they are shorter, without
   * loss: {@code 50.105°N 5.535°W}, {@code 50°06.1'N 005°32.2'W}.
   */
  @Override
  public String toString() {
    return PositionText.withoutLoss(this);
  }
}
