package org.ferryglide.nav.grid;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.GridBearing;
import org.ferryglide.nav.bearing.GridConvergence;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.Variation;

/**
 * The angle from grid north to magnetic north at a place and date: the one figure that the user of
 * a land map and a compass applies.
 *
 * <pre>{@code
 * GridMagneticAngle angle =
 *     GridMagneticAngle.of(Variation.ofDegreesEast(-1.4), grid.convergence(landing));
 * angle.toMagnetic(GridBearing.ofDegrees(91, grid.name()));
 * angle.instruction(); // "grid to magnetic: take off 0.5°"
 * }</pre>
 *
 * @param degreesEast variation less convergence, degrees, positive when magnetic north lies east of
 *     grid north, in [-180, 180]
 * @param grid name of the grid, not empty, without square brackets
 */
public record GridMagneticAngle(double degreesEast, String grid) implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * Takes the angle itself; {@link #of} works it out.
   *
   * @param degreesEast degrees, in [-180, 180]; -0.0 becomes 0.0
   * @param grid name of the grid
   * @throws IllegalArgumentException if {@code degreesEast} is NaN or outside [-180, 180], or the
   *     name is empty or has square brackets
   */
  public GridMagneticAngle {
    degreesEast =
        Arguments.within(degreesEast, -180.0, 180.0, "grid magnetic angle", "degrees east");
    GridConvergence.ofDegreesEast(0.0, grid); // refuses names that bearings cannot carry
  }

  /**
   * The angle at a place and date.
   *
   * @param variation variation at the place and date
   * @param convergence convergence of the grid at the place
   * @return variation less convergence
   */
  public static GridMagneticAngle of(Variation variation, GridConvergence convergence) {
    double angle = Math.IEEEremainder(variation.degreesEast() - convergence.degreesEast(), 360.0);
    return new GridMagneticAngle(angle, convergence.grid());
  }

  /**
   * From a bearing measured on the map to the one to set on the compass.
   *
   * @param onMap a bearing of the same grid
   * @return grid bearing less this angle: westerly angles are added
   * @throws IllegalArgumentException if the bearing is of another grid
   */
  public MagneticBearing toMagnetic(GridBearing onMap) {
    if (!onMap.grid().equals(grid)) {
      throw new IllegalArgumentException(
          "both must be of the same grid, but were of \""
              + grid
              + "\" and \""
              + onMap.grid()
              + "\"");
    }
    return MagneticBearing.ofDegrees(onMap.degrees() - degreesEast);
  }

  /**
   * From a bearing taken with the compass to the one to draw on the map.
   *
   * @param taken a bearing from magnetic north, deviation already applied
   * @return magnetic bearing plus this angle
   */
  public GridBearing toGrid(MagneticBearing taken) {
    return GridBearing.ofDegrees(taken.degrees() + degreesEast, grid);
  }

  /**
   * What to do with a bearing from the map, in words.
   *
   * @return for example {@code grid to magnetic: add 3.5°}, rounded to a tenth of a degree
   */
  public String instruction() {
    long tenths = Math.round(Math.abs(degreesEast) * 10.0);
    if (tenths == 0) {
      return "grid to magnetic: nothing to add";
    }
    return "grid to magnetic: "
        + (degreesEast < 0.0 ? "add " : "take off ")
        + tenths / 10
        + "."
        + tenths % 10
        + "°";
  }

  /** The angle, its letter and the grid, without loss: {@code 3.5°W[UTM 30N]}. */
  @Override
  public String toString() {
    return GridConvergence.ofDegreesEast(degreesEast, grid).toString();
  }

  /**
   * Reads what {@link #toString} writes.
   *
   * @param text the angle with E or W, then the grid in square brackets
   * @return the angle
   * @throws org.ferryglide.nav.note.TextFormatException if the text is anything else
   */
  public static GridMagneticAngle parse(String text) {
    GridConvergence same = GridConvergence.parse(text);
    return new GridMagneticAngle(same.degreesEast(), same.grid());
  }
}
