package org.ferryglide.nav.grid;

import java.io.Serializable;
import java.util.List;
import org.ferryglide.nav.bearing.BearingWorking;
import org.ferryglide.nav.bearing.GridBearing;
import org.ferryglide.nav.bearing.GridConvergence;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Working;
import org.ferryglide.nav.position.Position;

/**
 * Bearings at one place of a land map, from any of the three norths to any other in one call.
 *
 * <pre>{@code
 * Variation variation = model.at(LocalDate.of(2026, 7, 1)).variation(landing);
 * MapBearings here = MapBearings.at(landing, MapGrid.utm(UtmZone.containing(landing)), variation);
 * MagneticBearing set = here.toMagnetic(GridBearing.ofDegrees(91, here.grid().name()));
 * GridBearing draw = here.toGrid(MagneticBearing.ofDegrees(270)); // a bearing taken, to the map
 * here.instruction(); // grid to magnetic: …
 * }</pre>
 *
 * <p>Convergence is that of the place, so that no marginal diagram is needed; variation is the
 * caller's, for the place and date. Deviation of the compass on its heading comes after.
 */
public final class MapBearings implements Serializable {
  private static final long serialVersionUID = 1L;

  private final GridPoint point;
  private final Variation variation;

  private MapBearings(GridPoint point, Variation variation) {
    this.point = point;
    this.variation = variation;
  }

  /**
   * Prepares the conversions at a place.
   *
   * @param place where
   * @param grid the grid of the map
   * @param variation variation at the place, at the date of use
   * @return the conversions
   * @throws IllegalArgumentException if the place is too far away for the grid
   */
  public static MapBearings at(Position place, MapGrid grid, Variation variation) {
    return new MapBearings(grid.at(place), variation);
  }

  /**
   * The grid of the map.
   *
   * @return the grid
   */
  public MapGrid grid() {
    return point.grid();
  }

  /**
   * The place on the map.
   *
   * @return its figures, convergence and scale
   */
  public GridPoint point() {
    return point;
  }

  /**
   * Convergence at the place.
   *
   * @return the angle between true and grid north
   */
  public GridConvergence convergence() {
    return point.convergence();
  }

  /**
   * Variation at the place, as given.
   *
   * @return the angle between true and magnetic north
   */
  public Variation variation() {
    return variation;
  }

  /**
   * The grid magnetic angle, from grid north to magnetic north: the one figure that the user of a
   * land map and a compass applies.
   *
   * @return variation less convergence, degrees, positive when magnetic north lies east of grid
   *     north, in [-180, 180]
   */
  public double gridMagneticDegreesEast() {
    return Math.IEEEremainder(variation.degreesEast() - convergence().degreesEast(), 360.0) + 0.0;
  }

  /**
   * What to do with a bearing from the map, in words.
   *
   * @return for example {@code grid to magnetic: add 3.5°}, rounded to a tenth of a degree
   */
  public String instruction() {
    double degreesEast = gridMagneticDegreesEast();
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

  /**
   * From the map to the chart.
   *
   * @param onMap a bearing of this grid
   * @return the same direction from true north
   * @throws IllegalArgumentException if the bearing is of another grid
   */
  public TrueBearing toTrue(GridBearing onMap) {
    return convergence().toTrue(onMap);
  }

  /**
   * From the compass to the chart.
   *
   * @param taken a bearing from magnetic north
   * @return the same direction from true north
   */
  public TrueBearing toTrue(MagneticBearing taken) {
    return variation.toTrue(taken);
  }

  /**
   * From the map to the compass: the bearing to set.
   *
   * @param onMap a bearing of this grid
   * @return the same direction from magnetic north
   * @throws IllegalArgumentException if the bearing is of another grid
   */
  public MagneticBearing toMagnetic(GridBearing onMap) {
    return toMagnetic(toTrue(onMap));
  }

  /**
   * From the chart to the compass.
   *
   * @param onChart a bearing from true north
   * @return the same direction from magnetic north
   */
  public MagneticBearing toMagnetic(TrueBearing onChart) {
    return variation.toMagnetic(onChart);
  }

  /**
   * From the chart to the map.
   *
   * @param onChart a bearing from true north
   * @return the same direction from grid north
   */
  public GridBearing toGrid(TrueBearing onChart) {
    return convergence().toGrid(onChart);
  }

  /**
   * From the compass to the map: the bearing to draw.
   *
   * @param taken a bearing from magnetic north
   * @return the same direction from grid north
   */
  public GridBearing toGrid(MagneticBearing taken) {
    return toGrid(toTrue(taken));
  }

  /**
   * The steps from the map to the compass, written out.
   *
   * @param onMap a bearing of this grid
   * @param writer how finely the angles are written
   * @return grid bearing, convergence, true bearing, variation, magnetic bearing
   * @throws IllegalArgumentException if the bearing is of another grid
   */
  public Working workingToMagnetic(GridBearing onMap, BearingWorking writer) {
    return writer.gridToMagnetic(onMap, convergence(), variation);
  }

  /**
   * The steps from the compass to the map, written out.
   *
   * @param taken a bearing from magnetic north
   * @param writer how finely the angles are written
   * @return magnetic bearing, variation, true bearing, convergence, grid bearing
   */
  public Working workingToGrid(MagneticBearing taken, BearingWorking writer) {
    return writer.magneticToGrid(taken, variation, convergence());
  }

  /**
   * What a reader of these bearings should know.
   *
   * @return the notes of the point
   */
  public List<Note> notes() {
    return point.notes();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof MapBearings that
        && point.equals(that.point)
        && variation.equals(that.variation);
  }

  @Override
  public int hashCode() {
    return 31 * point.hashCode() + variation.hashCode();
  }

  /** Place, convergence and variation. */
  @Override
  public String toString() {
    return point + ", convergence " + convergence() + ", variation " + variation;
  }
}
