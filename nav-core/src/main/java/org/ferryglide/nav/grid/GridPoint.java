package org.ferryglide.nav.grid;

import java.io.Serializable;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.bearing.GridConvergence;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/**
 * A point of a map: its figures on the grid, its position, which way grid north lies there, and how
 * much the map stretches.
 *
 * <pre>{@code
 * GridPoint point = MapGrid.britishNationalGrid().at(Position.ofDegrees(50.105, -5.535));
 * point.easting().metres();
 * point.convergence().toTrue(GridBearing.ofDegrees(91, point.grid().name()));
 * point.notes(); // shifted by seven parameters only: good to about 5 m
 * }</pre>
 *
 * <p>Made by {@link MapGrid#at(Position)} and {@link MapGrid#at(Distance, Distance)}. Two points
 * are equal if grid and figures are.
 */
public final class GridPoint implements Serializable {
  private static final long serialVersionUID = 1L;

  /** From here on the stretch is worth a word: 2 m a kilometre. */
  private static final double STRETCH_WORTH_A_NOTE = 0.002;

  private final MapGrid grid;
  private final double eastingMetres;
  private final double northingMetres;
  private final Position position;
  private final double convergenceDegrees;
  private final double scale;

  GridPoint(
      MapGrid grid,
      double eastingMetres,
      double northingMetres,
      Position position,
      double convergenceDegrees,
      double scale) {
    this.grid = grid;
    this.eastingMetres = eastingMetres + 0.0;
    this.northingMetres = northingMetres + 0.0;
    this.position = position;
    this.convergenceDegrees = convergenceDegrees;
    this.scale = scale;
  }

  /**
   * The grid the figures belong to.
   *
   * @return the grid
   */
  public MapGrid grid() {
    return grid;
  }

  /**
   * How far east of the false origin.
   *
   * @return the distance on the map
   */
  public Distance easting() {
    return Distance.ofMetres(eastingMetres);
  }

  /**
   * How far north of the false origin.
   *
   * @return the distance on the map
   */
  public Distance northing() {
    return Distance.ofMetres(northingMetres);
  }

  /**
   * The same point in latitude and longitude.
   *
   * @return the position on WGS84
   */
  public Position position() {
    return position;
  }

  /**
   * Which way grid north lies here.
   *
   * @return the angle from true to grid north at this point
   */
  public GridConvergence convergence() {
    return GridConvergence.ofDegreesEast(Angles.shortWay(convergenceDegrees), grid.name());
  }

  /**
   * How much the map stretches here, the same in every direction.
   *
   * @return metres on the map for a metre on the ellipsoid of the grid's datum
   */
  public double scale() {
    return scale;
  }

  /**
   * What a reader of these figures should know.
   *
   * @return the notes of the grid's datum; {@code grid.beyond-datum} first where that datum is not
   *     used; {@code grid.stretched} where lengths on the map are more than 0.2 % from those on the
   *     ground; unmodifiable
   */
  public List<Note> notes() {
    List<Note> notes = new ArrayList<>(grid.datum().notesAt(position));
    if (Math.abs(scale - 1.0) > STRETCH_WORTH_A_NOTE) {
      double percent = Math.rint(Math.abs(scale - 1.0) * 1000.0) / 10.0;
      notes.add(
          Note.information(
                  "grid.stretched",
                  "Lengths on this grid are "
                      + percent
                      + (scale > 1.0 ? " % longer" : " % shorter")
                      + " than on the ground here.")
              .with("scale", scale));
    }
    return List.copyOf(notes);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof GridPoint that
        && grid.equals(that.grid)
        && eastingMetres == that.eastingMetres
        && northingMetres == that.northingMetres;
  }

  @Override
  public int hashCode() {
    return Objects.hash(grid, eastingMetres, northingMetres);
  }

  /** The figures, without loss, and the grid: {@code E 651409.903 N 313177.27 [Island grid]}. */
  @Override
  public String toString() {
    return "E " + plain(eastingMetres) + " N " + plain(northingMetres) + " [" + grid.name() + "]";
  }

  /** Every digit but no exponent, which a northing of ten million metres would have. */
  private static String plain(double metres) {
    return new BigDecimal(Double.toString(metres)).toPlainString();
  }
}
