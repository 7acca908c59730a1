package org.ferryglide.nav.grid;

import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * The grids of the British Isles and of the polar regions, and the choice of the universal grid for
 * any place on earth.
 *
 * <pre>{@code
 * GridPoint point = StandardGrids.BRITISH_NATIONAL_GRID.at(Position.ofDegrees(50.105, -5.535));
 * MapGrid anywhere = StandardGrids.universal(Position.ofDegrees(86.0, 14.0)); // UPS north
 * }</pre>
 *
 * <p>The zones of the universal transverse Mercator grid are in {@link UtmZone}.
 */
final class StandardGrids {
  private StandardGrids() {}

  /**
   * The grid of British land maps: true origin 49° N 2° W on OSGB36, scale 0.9996012717, false
   * origin 400 km west and 100 km north of it; EPSG 27700. Positions are shifted by seven
   * parameters, good to about 5 m. Grid letters are in {@link LetteredGrid#BRITISH}.
   *
   * @see <a
   *     href="https://docs.os.uk/more-than-maps/deep-dive/a-guide-to-coordinate-systems-in-great-britain">Ordnance
   *     Survey, A guide to coordinate systems in Great Britain</a>
   */
  public static final MapGrid BRITISH_NATIONAL_GRID =
      MapGrid.transverseMercator(
          "British National Grid",
          Datum.OSGB36,
          49.0,
          -2.0,
          0.9996012717,
          metres(400000.0),
          metres(-100000.0));

  /**
   * The grid of older Irish land maps: true origin 53.5° N 8° W on TM75, scale 1.000035, false
   * origin 200 km west and 250 km south of it; EPSG 29903. Positions are shifted by seven
   * parameters, good to about 5 m. Grid letters are in {@link LetteredGrid#IRISH}.
   */
  public static final MapGrid IRISH_GRID =
      MapGrid.transverseMercator(
          "Irish Grid", Datum.TM75, 53.5, -8.0, 1.000035, metres(200000.0), metres(250000.0));

  /**
   * The grid of newer Irish land maps: true origin 53.5° N 8° W on ETRS89, scale 0.99982, false
   * origin 600 km west and 750 km south of it; EPSG 2157.
   */
  public static final MapGrid IRISH_TRANSVERSE_MERCATOR =
      MapGrid.transverseMercator(
          "Irish Transverse Mercator",
          Datum.ETRS89,
          53.5,
          -8.0,
          0.99982,
          metres(600000.0),
          metres(750000.0));

  /**
   * The universal polar stereographic grid of the north: pole at 2000 km east and north, scale
   * 0.994; for latitudes from 84° N; EPSG 32661 with easting first.
   */
  public static final MapGrid UPS_NORTH =
      MapGrid.polarStereographic(
          "UPS north", Datum.WGS84, Hemisphere.NORTH, 0.0, 0.994, metres(2e6), metres(2e6));

  /**
   * The universal polar stereographic grid of the south: pole at 2000 km east and north, scale
   * 0.994; for latitudes beyond 80° S; EPSG 32761 with easting first.
   */
  public static final MapGrid UPS_SOUTH =
      MapGrid.polarStereographic(
          "UPS south", Datum.WGS84, Hemisphere.SOUTH, 0.0, 0.994, metres(2e6), metres(2e6));

  private static Distance metres(double metres) {
    return Distance.ofMetres(metres);
  }

  /**
   * The universal grid of a place: its UTM zone, or UPS from 84° N and beyond 80° S.
   *
   * @param position where
   * @return the grid whose letters {@link Mgrs} uses there
   */
  public static MapGrid universal(Position position) {
    double latitude = position.latitudeDegrees();
    if (latitude >= UtmZone.NORTH_LIMIT_DEGREES) {
      return UPS_NORTH;
    }
    return latitude < UtmZone.SOUTH_LIMIT_DEGREES
        ? UPS_SOUTH
        : MapGrid.utm(UtmZone.containing(position));
  }
}
