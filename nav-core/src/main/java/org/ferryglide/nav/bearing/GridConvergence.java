package org.ferryglide.nav.bearing;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;

/**
 * The angle from true north to the north of a map grid at a place: the only way between grid and
 * true bearings.
 *
 * <pre>{@code
 * GridConvergence convergence = GridConvergence.ofDegreesEast(0.8, "UTM 30N");
 * convergence.toTrue(GridBearing.ofDegrees(91, "UTM 30N")); // 91.8°T
 * }</pre>
 *
 * @param degreesEast the angle, degrees, positive when grid north lies east of true north, in
 *     [-180, 180]
 * @param grid name of the grid, not empty, without square brackets
 */
public record GridConvergence(double degreesEast, String grid) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes the angle and the grid's name; {@link #ofDegreesEast} reads better.
   *
   * @param degreesEast degrees, in [-180, 180]; -0.0 becomes 0.0
   * @param grid name of the grid
   * @throws IllegalArgumentException if {@code degreesEast} is NaN or outside [-180, 180], or the
   *     name is empty or has square brackets
   */
  public GridConvergence {
    degreesEast = Arguments.within(degreesEast, -180.0, 180.0, "convergence", "degrees east");
    grid = BearingText.gridName(grid);
  }

  /**
   * Makes the convergence of a grid at a place.
   *
   * @param degreesEast degrees, positive when grid north lies east of true north, in [-180, 180]
   * @param grid name of the grid
   * @return the convergence
   * @throws IllegalArgumentException if {@code degreesEast} is NaN or outside [-180, 180], or the
   *     name is empty or has square brackets
   */
  public static GridConvergence ofDegreesEast(double degreesEast, String grid) {
    return new GridConvergence(degreesEast, grid);
  }

  /**
   * From grid north to true north: adds the convergence.
   *
   * @param gridBearing a bearing of the same grid
   * @return the same direction from true north
   * @throws IllegalArgumentException if the bearing is of another grid
   */
  public TrueBearing toTrue(GridBearing gridBearing) {
    BearingText.sameGrid(grid, gridBearing.grid());
    return TrueBearing.ofDegrees(gridBearing.degrees() + degreesEast);
  }

  /**
   * From true north to grid north: takes the convergence off.
   *
   * @param trueBearing a bearing from true north
   * @return the same direction from this grid's north
   */
  public GridBearing toGrid(TrueBearing trueBearing) {
    return GridBearing.ofDegrees(trueBearing.degrees() - degreesEast, grid);
  }

  /**
   * The angle in degrees, or in degrees and minutes where they are shorter, its letter and the
   * grid, without loss: {@code 0.8°E[UTM 30N]}.
   */
  @Override
  public String toString() {
    return NorthAngleText.text(degreesEast) + "[" + grid + "]";
  }

  /**
   * Reads what {@link #toString} writes.
   *
   * @param text the angle with E or W, then the grid in square brackets
   * @return the convergence
   * @throws org.ferryglide.nav.note.TextFormatException if the text is anything else
   */
  public static GridConvergence parse(String text) {
    int open =
        BearingText.gridBracket(
            text, "a convergence names its grid in square brackets, as in 0.8°E[UTM 30N]");
    return new GridConvergence(
        NorthAngleText.parse(text.substring(0, open), "convergence"),
        text.substring(open + 1, text.length() - 1));
  }
}
