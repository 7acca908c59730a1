package org.ferryglide.nav.bearing;

import java.io.Serializable;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.note.TextFormatException;

/**
 * A direction measured clockwise from the north of a named map grid.
 *
 * <pre>{@code
 * GridBearing onMap = GridBearing.ofDegrees(91, "UTM 30N");
 * TrueBearing onChart = onMap.toTrue(GridConvergence.ofDegreesEast(0.8, "UTM 30N")); // 091.8°
 * }</pre>
 *
 * @param degrees angle from grid north, degrees, in [0, 360)
 * @param grid name of the grid, not empty, without square brackets; only a convergence of the same
 *     grid turns it into a true bearing
 */
public record GridBearing(double degrees, String grid) implements Bearing, Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes a bearing that is already in range; {@link #ofDegrees} accepts any angle.
   *
   * @param degrees angle from grid north, degrees, in [0, 360); -0.0 becomes 0.0
   * @param grid name of the grid
   * @throws IllegalArgumentException if {@code degrees} is NaN or outside [0, 360), or the name is
   *     empty or has square brackets
   */
  public GridBearing {
    degrees = BearingText.inCircle(degrees);
    grid = BearingText.gridName(grid);
  }

  /**
   * Makes a bearing from any finite angle.
   *
   * @param degrees angle from grid north, degrees, any finite value
   * @param grid name of the grid
   * @return the bearing reduced to [0, 360)
   * @throws IllegalArgumentException if {@code degrees} is NaN or infinite, or the name is empty or
   *     has square brackets
   */
  public static GridBearing ofDegrees(double degrees, String grid) {
    return new GridBearing(BearingText.reducedFinite(degrees), grid);
  }

  /**
   * Reads what {@link #toString} writes: {@code 45.0°G[UTM 30N]}.
   *
   * @param text degrees in [0, 360], the degree mark, the letter G and the grid in square brackets
   * @return the bearing; 360 is read as 0
   * @throws TextFormatException if the text is anything else
   */
  public static GridBearing parse(String text) {
    int open =
        BearingText.gridBracket(
            text, "a grid bearing names its grid in square brackets, as in 45.0°G[UTM 30N]");
    return ofDegrees(
        BearingText.parse(text.substring(0, open), 'G'),
        text.substring(open + 1, text.length() - 1));
  }

  /**
   * This direction from true north.
   *
   * @param convergence the convergence of this bearing's grid at the place
   * @return grid bearing plus convergence
   * @throws IllegalArgumentException if {@code convergence} is of another grid
   */
  public TrueBearing toTrue(GridConvergence convergence) {
    return convergence.toTrue(this);
  }

  @Override
  public GridBearing reciprocal() {
    return ofDegrees(degrees + 180.0, grid);
  }

  /**
   * The bearing after a turn.
   *
   * @param turnDegrees the turn, degrees, clockwise positive, any finite value
   * @return the bearing reduced to [0, 360), of the same grid
   * @throws IllegalArgumentException if {@code turnDegrees} is NaN or infinite
   */
  public GridBearing turnedBy(double turnDegrees) {
    return ofDegrees(degrees + turnDegrees, grid);
  }

  /**
   * The turn the short way round to another bearing of the same grid.
   *
   * @param other the bearing after the turn
   * @return the turn in (-180, 180], degrees, clockwise (to starboard) positive
   * @throws IllegalArgumentException if {@code other} is of another grid
   */
  public double turnDegreesTo(GridBearing other) {
    BearingText.sameGrid(grid, other.grid);
    return Angles.turn(degrees, other.degrees);
  }

  /** The angle, its letter and its grid, without loss: {@code 45.0°G[UTM 30N]}. */
  @Override
  public String toString() {
    return degrees + "°G[" + grid + "]";
  }
}
