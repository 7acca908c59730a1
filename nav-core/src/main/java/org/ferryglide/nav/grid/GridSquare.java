package org.ferryglide.nav.grid;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.note.Note;

/**
 * The square of a map that a grid reference names: a reference is never a point.
 *
 * <pre>{@code
 * GridSquare square = LetteredGrid.BRITISH.parse("SW 473 287");
 * square.southWestCorner().easting().metres(); // 147300
 * square.centre().position(); // the best guess at the place, within 71 m
 * }</pre>
 */
public final class GridSquare implements Serializable {
  private static final long serialVersionUID = 1L;

  private final MapGrid grid;
  private final double westMetres;
  private final double southMetres;
  private final GridPrecision precision;

  /** Notes beyond those of the grid; an array because it is always serializable. */
  private final Note[] notes;

  GridSquare(
      MapGrid grid, double westMetres, double southMetres, GridPrecision precision, Note... notes) {
    this.grid = grid;
    this.westMetres = westMetres;
    this.southMetres = southMetres;
    this.precision = precision;
    this.notes = notes;
  }

  /**
   * The grid the square belongs to.
   *
   * @return the grid
   */
  public MapGrid grid() {
    return grid;
  }

  /**
   * How fine the reference is.
   *
   * @return the side of the square
   */
  public GridPrecision precision() {
    return precision;
  }

  /**
   * The corner that the figures of the reference give.
   *
   * @return the south-west corner
   */
  public GridPoint southWestCorner() {
    return grid.atMetres(westMetres, southMetres);
  }

  /**
   * The middle of the square.
   *
   * @return the centre
   */
  public GridPoint centre() {
    double half = precision.sideMetres() / 2.0;
    return grid.atMetres(westMetres + half, southMetres + half);
  }

  /**
   * Whether a point lies in the square; its western and southern edges belong to it, and so does
   * what lies less than a ten millionth of a metre beyond them, which is the rounding of a
   * position.
   *
   * @param point a point of the same grid
   * @return whether it does
   * @throws IllegalArgumentException if the point is of another grid
   */
  public boolean contains(GridPoint point) {
    if (!point.grid().equals(grid)) {
      throw new IllegalArgumentException(
          "point must be of " + grid + ", but was of " + point.grid());
    }
    double east = point.easting().metres() - westMetres;
    double north = point.northing().metres() - southMetres;
    return east >= -Figures.ROUNDING_METRES
        && north >= -Figures.ROUNDING_METRES
        && east < precision.sideMetres()
        && north < precision.sideMetres();
  }

  /**
   * What a reader of the reference should know.
   *
   * @return the notes of its centre, and {@code mgrs.beyond-zone} if the whole square lies beyond
   *     the zone or band that the reference names; unmodifiable
   */
  public List<Note> notes() {
    List<Note> all = new ArrayList<>(centre().notes());
    all.addAll(List.of(notes));
    return List.copyOf(all);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof GridSquare that
        && grid.equals(that.grid)
        && westMetres == that.westMetres
        && southMetres == that.southMetres
        && precision == that.precision;
  }

  @Override
  public int hashCode() {
    return Objects.hash(grid, westMetres, southMetres, precision);
  }

  /** Side, corner and grid. */
  @Override
  public String toString() {
    return precision.sideMetres()
        + " m square from E "
        + (long) westMetres
        + " N "
        + (long) southMetres
        + " ["
        + grid.name()
        + "]";
  }
}
