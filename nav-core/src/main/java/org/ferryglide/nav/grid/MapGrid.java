package org.ferryglide.nav.grid;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.ParallelRows;
import org.ferryglide.nav.bearing.GridConvergence;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reading.AngleReader;

/**
 * The square grid printed on a land map: a datum, a projection and a false origin.
 *
 * <p>The grids in common use have methods of their own here, zones of UTM are in {@link UtmZone};
 * any other grid on the transverse Mercator projection is made from the parameters printed in the
 * map's margin:
 *
 * <pre>{@code
 * MapGrid grid =
 *     MapGrid.transverseMercator(
 *         "Island grid",
 *         Datum.WGS84,
 *         49.0,
 *         -2.0,
 *         0.9996,
 *         Distance.ofMetres(400000),
 *         Distance.ofMetres(-100000));
 * GridPoint point = grid.at(Position.ofDegrees(50.105, -5.535));
 * point.easting().metres();
 * Position back = grid.at(Distance.ofMetres(147100), Distance.ofMetres(27350)).position();
 * Position same = grid.parse("147100 27350").position();
 * }</pre>
 *
 * <p>Accuracy: that of the projections, 5 nanometres; with a datum shift 10 nanometres there and
 * back, while the shift itself is as good as its datum says. Maps have no height: the shift is that
 * of a point at height 0 on WGS84, which for a point 100 m higher is wrong by less than 3 mm in
 * Britain.
 *
 * <p>Two grids are equal if name, datum and parameters are. Immutable.
 */
public final class MapGrid implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Where {@code forward} writes the easting, metres. */
  public static final int EASTING = 0;

  /** Where {@code forward} writes the northing, metres. */
  public static final int NORTHING = 1;

  /** Where {@code reverse} writes the latitude, degrees. */
  public static final int LATITUDE = 0;

  /** Where {@code reverse} writes the longitude, degrees in [-180, 180). */
  public static final int LONGITUDE = 1;

  /**
   * Where both write the convergence, degrees, positive when grid north lies east of true north.
   */
  public static final int CONVERGENCE = 2;

  /** Where both write the scale, metres on the map for a metre on the ground. */
  public static final int SCALE = 3;

  /** How many numbers each row of an array form takes. */
  public static final int WIDTH = 4;

  private final String name;
  private final Datum datum;
  private final Plane plane;

  MapGrid(String name, Datum datum, Plane plane) {
    this.name = name;
    this.datum = datum;
    this.plane = plane;
  }

  /**
   * The universal grid of a place: its UTM zone, or UPS from 84° N and beyond 80° S.
   *
   * @param position where
   * @return the grid whose letters {@link Mgrs} uses there
   */
  public static MapGrid universal(Position position) {
    return StandardGrids.universal(position);
  }

  /**
   * The grid of a zone of the universal transverse Mercator grid. Places outside the zone may be
   * asked for too, which is what a map across the edge of a zone needs.
   *
   * @param zone the zone, for example {@code UtmZone.parse("30N")}
   * @return the grid, named for example {@code UTM 30N}
   */
  public static MapGrid utm(UtmZone zone) {
    return zone.grid();
  }

  /**
   * The grid of British land maps, EPSG 27700; positions are shifted by seven parameters, good to
   * about 5 m. Grid letters are in {@link LetteredGrid#BRITISH}.
   *
   * @return the grid
   */
  public static MapGrid britishNationalGrid() {
    return StandardGrids.BRITISH_NATIONAL_GRID;
  }

  /**
   * The grid of older Irish land maps, EPSG 29903; positions are shifted by seven parameters, good
   * to about 5 m. Grid letters are in {@link LetteredGrid#IRISH}.
   *
   * @return the grid
   */
  public static MapGrid irishGrid() {
    return StandardGrids.IRISH_GRID;
  }

  /**
   * The grid of newer Irish land maps, EPSG 2157.
   *
   * @return the grid
   */
  public static MapGrid irishTransverseMercator() {
    return StandardGrids.IRISH_TRANSVERSE_MERCATOR;
  }

  /**
   * The universal polar stereographic grid of the north, for latitudes from 84° N; EPSG 32661 with
   * easting first.
   *
   * @return the grid
   */
  public static MapGrid universalPolarNorth() {
    return StandardGrids.UPS_NORTH;
  }

  /**
   * The universal polar stereographic grid of the south, for latitudes beyond 80° S; EPSG 32761
   * with easting first.
   *
   * @return the grid
   */
  public static MapGrid universalPolarSouth() {
    return StandardGrids.UPS_SOUTH;
  }

  /**
   * Makes a grid on the transverse Mercator projection, which some map margins call Gauss-Krüger.
   *
   * @param name what bearings of this grid will carry, not empty, without square brackets
   * @param datum what its latitudes and longitudes are measured on
   * @param originLatitudeDegrees latitude of the true origin, degrees, on the grid's datum, in
   *     [-90, 90]
   * @param centralMeridianDegrees longitude of the true origin, degrees, on the grid's datum, in
   *     [-180, 180]
   * @param centralScale scale along the central meridian, above 0
   * @param falseEasting easting given to the true origin
   * @param falseNorthing northing given to the true origin
   * @return the grid
   * @throws IllegalArgumentException if the name does not fit or a number is NaN or out of range
   */
  public static MapGrid transverseMercator(
      String name,
      Datum datum,
      double originLatitudeDegrees,
      double centralMeridianDegrees,
      double centralScale,
      Distance falseEasting,
      Distance falseNorthing) {
    return central(
        name,
        datum,
        TransverseMercator.of(datum.ellipsoid(), centralScale),
        originLatitudeDegrees,
        centralMeridianDegrees,
        falseEasting,
        falseNorthing);
  }

  /**
   * Makes a grid on Lambert's conformal conic projection with two parallels of true scale.
   *
   * @param name what bearings of this grid will carry, not empty, without square brackets
   * @param datum what its latitudes and longitudes are measured on
   * @param firstParallelDegrees latitude of one parallel, degrees, in [-89, 89]
   * @param secondParallelDegrees latitude of the other, degrees, in [-89, 89]
   * @param originLatitudeDegrees latitude of the origin, degrees, on the grid's datum, in [-90, 90]
   * @param centralMeridianDegrees longitude of the origin, degrees, on the grid's datum, in [-180,
   *     180]
   * @param falseEasting easting given to the origin
   * @param falseNorthing northing given to the origin
   * @return the grid
   * @throws IllegalArgumentException if the name does not fit, a number is NaN or out of range, or
   *     the mean of the parallels lies within 1° of the equator
   */
  public static MapGrid lambertConic(
      String name,
      Datum datum,
      double firstParallelDegrees,
      double secondParallelDegrees,
      double originLatitudeDegrees,
      double centralMeridianDegrees,
      Distance falseEasting,
      Distance falseNorthing) {
    return central(
        name,
        datum,
        LambertConic.of(datum.ellipsoid(), firstParallelDegrees, secondParallelDegrees).cone(),
        originLatitudeDegrees,
        centralMeridianDegrees,
        falseEasting,
        falseNorthing);
  }

  /**
   * Makes a grid on the polar stereographic projection, as maps of the polar seas use.
   *
   * @param name what bearings of this grid will carry, not empty, without square brackets
   * @param datum what its latitudes and longitudes are measured on
   * @param pole whether it is about the north or the south pole
   * @param centralMeridianDegrees longitude along which grid north is true north, degrees, in
   *     [-180, 180]: it runs down the map from a north pole, up from a south pole
   * @param poleScale scale at the pole, above 0
   * @param falseEasting easting given to the pole
   * @param falseNorthing northing given to the pole
   * @return the grid
   * @throws IllegalArgumentException if the name does not fit or a number is NaN or out of range
   */
  public static MapGrid polarStereographic(
      String name,
      Datum datum,
      Hemisphere pole,
      double centralMeridianDegrees,
      double poleScale,
      Distance falseEasting,
      Distance falseNorthing) {
    boolean north = pole == Hemisphere.NORTH;
    PolarStereographic projection =
        north
            ? PolarStereographic.north(datum.ellipsoid(), poleScale)
            : PolarStereographic.south(datum.ellipsoid(), poleScale);
    return central(
        name,
        datum,
        projection.cone(),
        north ? 90.0 : -90.0,
        centralMeridianDegrees,
        falseEasting,
        falseNorthing);
  }

  /** Shared by the zones of UTM, which have one projection. */
  static MapGrid central(
      String name,
      Datum datum,
      Projector projection,
      double originLatitudeDegrees,
      double centralMeridianDegrees,
      Distance falseEasting,
      Distance falseNorthing) {
    GridConvergence.ofDegreesEast(0.0, name); // refuses names that bearings cannot carry
    return new MapGrid(
        name,
        datum,
        new Plane(
            datum,
            projection,
            Arguments.within(originLatitudeDegrees, -90.0, 90.0, "latitude of origin", "degrees"),
            Arguments.within(centralMeridianDegrees, -180.0, 180.0, "central meridian", "degrees"),
            falseEasting.metres(),
            falseNorthing.metres()));
  }

  /**
   * What bearings of this grid carry.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * What its latitudes and longitudes are measured on.
   *
   * @return the datum
   */
  public Datum datum() {
    return datum;
  }

  /**
   * The point of the map at a position.
   *
   * @param position where, on WGS84
   * @return the point
   * @throws IllegalArgumentException if the position lies more than 3900 km from the central
   *     meridian (on a cone, from its parallels; on a polar grid, from the pole), where the
   *     projection is no longer exact
   */
  public GridPoint at(Position position) {
    double[] out = new double[WIDTH];
    plane.forward(position.latitudeDegrees(), position.longitudeDegrees(), out, 0);
    if (isFarAway(out[EASTING], out[NORTHING])) {
      throw farAway(position.toString());
    }
    return new GridPoint(this, out[EASTING], out[NORTHING], position, out[CONVERGENCE], out[SCALE]);
  }

  /**
   * The point of the map with these figures.
   *
   * @param easting how far east of the false origin, on the map
   * @param northing how far north of the false origin, on the map
   * @return the point
   * @throws IllegalArgumentException if the point lies more than 3900 km from the central meridian
   *     (on a cone, from its parallels; on a polar grid, from the pole)
   */
  public GridPoint at(Distance easting, Distance northing) {
    return atMetres(easting.metres(), northing.metres());
  }

  /** The same in metres. */
  GridPoint atMetres(double easting, double northing) {
    if (isFarAway(easting, northing)) {
      throw farAway("easting " + easting + ", northing " + northing);
    }
    double[] out = new double[WIDTH];
    plane.reverse(easting, northing, out, 0);
    double latitude = Math.max(-90.0, Math.min(90.0, out[LATITUDE])); // rounding at the pole
    Position position = Position.ofDegrees(latitude, out[LONGITUDE]);
    return new GridPoint(this, easting, northing, position, out[CONVERGENCE], out[SCALE]);
  }

  private boolean isFarAway(double easting, double northing) {
    double metres = plane.metresFromCentre(easting, northing);
    return !(metres <= Plane.GREATEST_METRES_FROM_CENTRE); // written so that NaN is far away
  }

  private IllegalArgumentException farAway(String what) {
    return new IllegalArgumentException(
        "a point of "
            + name
            + " must lie within 3900 km of "
            + plane.centre()
            + ", but was "
            + what);
  }

  /**
   * Reads easting and northing: {@code 651409.903 313177.27}, {@code E 651409.903 N 313177.27}, and
   * what {@link GridPoint#toString} writes.
   *
   * @param text easting, then northing, metres, each with or without its letter; then optionally
   *     the name of this grid in square brackets
   * @return the point
   * @throws org.ferryglide.nav.note.TextFormatException if the text is anything else
   * @throws IllegalArgumentException if the point is too far away for this grid
   */
  public GridPoint parse(String text) {
    String tail = "[" + name + "]";
    boolean named = text.trim().endsWith(tail);
    AngleReader reader = new AngleReader(named ? text.substring(0, text.lastIndexOf(tail)) : text);
    reader.skip("Ee");
    double easting = signed(reader, "easting in metres must come first");
    reader.skip("Ee,");
    reader.skip("Nn");
    double northing = signed(reader, "northing in metres must follow");
    reader.skip("Nn");
    reader.expectEnd("nothing but this grid's name in square brackets may follow the northing");
    return atMetres(easting, northing);
  }

  private static double signed(AngleReader reader, String reason) {
    return reader.sign() < 0 ? -reader.number(reason) : reader.number(reason);
  }

  /**
   * Which way grid north lies at a position.
   *
   * @param position where, on WGS84
   * @return the convergence, which carries this grid's name
   * @throws IllegalArgumentException if the position is too far away for this grid
   */
  public GridConvergence convergence(Position position) {
    return at(position).convergence();
  }

  /**
   * From a WGS84 position to the map, on plain doubles.
   *
   * @param latitudeDegrees latitude, degrees, in [-90, 90]; NaN and beyond give NaN
   * @param longitudeDegrees longitude, degrees, any turn of the circle
   * @param out receives easting and northing, metres, convergence, degrees, positive when grid
   *     north lies east of true north, and scale, metres on the map for a metre on the ground
   * @param offset index in {@code out} of the easting
   */
  public void forward(double latitudeDegrees, double longitudeDegrees, double[] out, int offset) {
    plane.forward(latitudeDegrees, longitudeDegrees, out, offset);
  }

  /**
   * From the map to a WGS84 position, on plain doubles.
   *
   * @param eastingMetres easting, metres; NaN gives NaN
   * @param northingMetres northing, metres
   * @param out receives latitude, degrees, longitude, degrees in [-180, 180), convergence, degrees,
   *     and scale
   * @param offset index in {@code out} of the latitude
   */
  public void reverse(double eastingMetres, double northingMetres, double[] out, int offset) {
    plane.reverse(eastingMetres, northingMetres, out, offset);
  }

  /**
   * {@link #forward(double, double, double[], int)} for many positions.
   *
   * @param latitudesDegrees latitudes, degrees; NaN in a row gives NaN out for that row
   * @param longitudesDegrees longitudes, degrees
   * @param from first row
   * @param until row after the last
   * @param out receives easting, northing, convergence and scale of row i from {@link #WIDTH} (i -
   *     from) after the offset
   * @param offset index in {@code out} of the first easting
   * @throws IndexOutOfBoundsException if an array is too short
   */
  public void forward(
      double[] latitudesDegrees,
      double[] longitudesDegrees,
      int from,
      int until,
      double[] out,
      int offset) {
    for (int i = from; i < until; i++) {
      plane.forward(latitudesDegrees[i], longitudesDegrees[i], out, offset + WIDTH * (i - from));
    }
  }

  /**
   * The array form of forward, shared out over the processors; worth it from some ten thousand
   * rows.
   *
   * @param latitudesDegrees latitudes, degrees; NaN in a row gives NaN out for that row
   * @param longitudesDegrees longitudes, degrees
   * @param from first row
   * @param until row after the last
   * @param out receives easting, northing, convergence and scale of row i from {@link #WIDTH} (i -
   *     from) after the offset
   * @param offset index in {@code out} of the first easting
   * @throws IndexOutOfBoundsException if an array is too short
   */
  public void forwardInParallel(
      double[] latitudesDegrees,
      double[] longitudesDegrees,
      int from,
      int until,
      double[] out,
      int offset) {
    ParallelRows.share(
        from,
        until,
        offset,
        WIDTH,
        (a, b, at) -> forward(latitudesDegrees, longitudesDegrees, a, b, out, at));
  }

  /**
   * {@link #reverse(double, double, double[], int)} for many points of the map.
   *
   * @param eastingsMetres eastings, metres; NaN in a row gives NaN out for that row
   * @param northingsMetres northings, metres
   * @param from first row
   * @param until row after the last
   * @param out receives latitude, longitude, convergence and scale of row i from {@link #WIDTH} (i
   *     - from) after the offset
   * @param offset index in {@code out} of the first latitude
   * @throws IndexOutOfBoundsException if an array is too short
   */
  public void reverse(
      double[] eastingsMetres,
      double[] northingsMetres,
      int from,
      int until,
      double[] out,
      int offset) {
    for (int i = from; i < until; i++) {
      plane.reverse(eastingsMetres[i], northingsMetres[i], out, offset + WIDTH * (i - from));
    }
  }

  /**
   * The array form of reverse, shared out over the processors; worth it from some ten thousand
   * rows.
   *
   * @param eastingsMetres eastings, metres; NaN in a row gives NaN out for that row
   * @param northingsMetres northings, metres
   * @param from first row
   * @param until row after the last
   * @param out receives latitude, longitude, convergence and scale of row i from {@link #WIDTH} (i
   *     - from) after the offset
   * @param offset index in {@code out} of the first latitude
   * @throws IndexOutOfBoundsException if an array is too short
   */
  public void reverseInParallel(
      double[] eastingsMetres,
      double[] northingsMetres,
      int from,
      int until,
      double[] out,
      int offset) {
    ParallelRows.share(
        from,
        until,
        offset,
        WIDTH,
        (a, b, at) -> reverse(eastingsMetres, northingsMetres, a, b, out, at));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof MapGrid that
        && name.equals(that.name)
        && datum.equals(that.datum)
        && plane.equals(that.plane);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, plane);
  }

  /** The name. */
  @Override
  public String toString() {
    return name;
  }
}
