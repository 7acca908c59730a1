package org.ferryglide.examples.batch;

import java.util.List;
import org.ferryglide.nav.grid.GridPoint;
import org.ferryglide.nav.grid.GridPrecision;
import org.ferryglide.nav.grid.GridSquare;
import org.ferryglide.nav.grid.Hemisphere;
import org.ferryglide.nav.grid.MapGrid;
import org.ferryglide.nav.grid.Mgrs;
import org.ferryglide.nav.grid.UtmZone;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/** Operations of map grids, from a position to the map and back. */
final class GridOperations {
  private static final List<String> PLACE = List.of("lat", "lon");
  private static final List<Added> PLACE_ADDED =
      List.of(Added.latitude("lat"), Added.longitude("lon"));
  private static final Added EASTING = Added.number("easting_m", 4);
  private static final Added NORTHING = Added.number("northing_m", 4);
  private static final Added CONVERGENCE = Added.number("convergence_deg", 9);
  private static final Added SCALE = Added.number("scale", 12);

  private GridOperations() {}

  static Operation utm() {
    return Operation.ofRows(
        "utm",
        PLACE,
        List.of(EASTING, NORTHING, CONVERGENCE, SCALE, Added.word("zone")),
        () -> {
          double[] out = new double[MapGrid.WIDTH];
          return (row, figures) -> {
            double lat = row.latitude(0);
            double lon = row.longitude(1);
            int number = UtmZone.number(lat, lon);
            if (number == 0) {
              throw row.refused(0, "must be in [-80, 84) degrees to lie in a zone");
            }
            UtmZone zone = UtmZone.of(number, lat < 0.0 ? Hemisphere.SOUTH : Hemisphere.NORTH);
            MapGrid.utm(zone).forward(lat, lon, out, 0);
            addPoint(out, figures);
            figures.add(zone.toString());
          };
        });
  }

  static Operation utmReverse() {
    return Operation.ofRows(
        "utm",
        List.of("easting_m", "northing_m", "zone"),
        PLACE_ADDED,
        () ->
            (row, figures) ->
                addPlace(
                    MapGrid.utm(UtmZone.parse(row.word(2))).at(distance(row, 0), distance(row, 1)),
                    figures));
  }

  static Operation of(String name, MapGrid grid) {
    return Operation.ofRows(
        name,
        PLACE,
        List.of(EASTING, NORTHING, CONVERGENCE, SCALE),
        () -> {
          double[] out = new double[MapGrid.WIDTH];
          return (row, figures) -> {
            Position place = Position.ofDegrees(row.latitude(0), row.longitude(1));
            if (!grid.datum().covers(place)) {
              throw new RefusedRow(
                  0,
                  "the place must lie where maps of the "
                      + grid.name()
                      + " are used, but was "
                      + place);
            }
            grid.forward(place.latitudeDegrees(), place.longitudeDegrees(), out, 0);
            addPoint(out, figures);
          };
        });
  }

  static Operation reverseOf(String name, MapGrid grid) {
    return Operation.ofRows(
        name,
        List.of("easting_m", "northing_m"),
        PLACE_ADDED,
        () -> (row, figures) -> addPlace(grid.at(distance(row, 0), distance(row, 1)), figures));
  }

  static Operation mgrs(GridPrecision precision) {
    return Operation.ofRows(
        "mgrs",
        PLACE,
        List.of(Added.word("reference")),
        () ->
            (row, figures) ->
                figures.add(
                    Mgrs.reference(
                        Position.ofDegrees(row.latitude(0), row.longitude(1)), precision)));
  }

  static Operation mgrsReverse() {
    return Operation.ofRows(
        "mgrs",
        List.of("reference"),
        List.of(Added.latitude("lat"), Added.longitude("lon"), Added.number("square_m", 0)),
        () ->
            (row, figures) -> {
              GridSquare square = Mgrs.parse(row.word(0));
              addPlace(square.centre(), figures);
              figures.add(square.precision().sideMetres());
            });
  }

  private static Distance distance(Row row, int slot) {
    return Distance.ofMetres(row.number(slot, -2e7, 2e7, "metres"));
  }

  private static void addPoint(double[] out, Figures figures) {
    figures.add(out[MapGrid.EASTING]);
    figures.add(out[MapGrid.NORTHING]);
    figures.add(out[MapGrid.CONVERGENCE]);
    figures.add(out[MapGrid.SCALE]);
  }

  private static void addPlace(GridPoint point, Figures figures) {
    figures.add(point.position().latitudeDegrees());
    figures.add(point.position().longitudeDegrees());
  }
}
