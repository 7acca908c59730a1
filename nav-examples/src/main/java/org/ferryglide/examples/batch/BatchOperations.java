package org.ferryglide.examples.batch;

import java.util.List;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.grid.GridPrecision;
import org.ferryglide.nav.grid.MapGrid;

/**
 * The operations that a batch knows, by name.
 *
 * <table>
 *   <caption>What each reads and adds</caption>
 *   <tr><th>operation</th><th>columns read</th><th>columns added</th></tr>
 *   <tr><td>rhumb-inverse</td><td>lat1,lon1,lat2,lon2</td><td>course_deg,distance_m</td></tr>
 *   <tr><td>rhumb-direct</td><td>lat1,lon1,course_deg,distance_m</td><td>lat2,lon2</td></tr>
 *   <tr><td>geodesic-inverse</td><td>lat1,lon1,lat2,lon2</td>
 *     <td>initial_deg,final_deg,distance_m</td></tr>
 *   <tr><td>geodesic-direct</td><td>lat1,lon1,initial_deg,distance_m</td>
 *     <td>lat2,lon2,final_deg</td></tr>
 *   <tr><td>leg-errors</td><td>lat1,lon1,lat2,lon2</td>
 *     <td>excess_m (rhumb line less geodesic), separation_m (searched, and so slower, beyond 400 km
 *     or 80° of latitude), bearing_difference_deg (from the geodesic's initial course to the rhumb line's,
 *     clockwise positive)</td></tr>
 *   <tr><td>cross-track</td><td>latA,lonA,latB,lonB,latP,lonP</td>
 *     <td>cross_track_m (right of A to B positive), along_track_m (from A), closest_lat,
 *     closest_lon, on the endless line through A and B</td></tr>
 *   <tr><td>variation</td><td>date,lat,lon,height_m</td>
 *     <td>variation_deg,uncertainty_deg (one standard deviation), dip_deg, horizontal_nt, total_nt,
 *     zone (of compass use)</td></tr>
 *   <tr><td>utm</td><td>lat,lon</td>
 *     <td>easting_m,northing_m,convergence_deg,scale,zone; in reverse from
 *     easting_m,northing_m,zone to lat,lon</td></tr>
 *   <tr><td>british-grid, irish-grid, itm</td><td>lat,lon</td>
 *     <td>easting_m,northing_m,convergence_deg,scale; in reverse from easting_m,northing_m to
 *     lat,lon</td></tr>
 *   <tr><td>mgrs</td><td>lat,lon</td>
 *     <td>reference; in reverse from reference to lat,lon (the middle of the square),
 *     square_m</td></tr>
 *   <tr><td>course-to-steer</td>
 *     <td>track_deg,distance_nm,speed_kn (along the water track),set_deg,rate_kn,leeway_deg (to
 *     starboard positive)</td>
 *     <td>heading_deg,ground_speed_kn,hours,outcome: OK, FASTER_OF_TWO (the stream outruns the
 *     boat), NO_RESERVE (more than four fifths of the speed goes against the stream across), or why
 *     there is none: CROSS_STREAM, ADVERSE_STREAM, NO_PROGRESS</td></tr>
 *   <tr><td>tide-height</td><td>time</td><td>height_m</td></tr>
 *   <tr><td>fix</td><td>id,mark_lat,mark_lon,bearing_deg (true),sigma_deg</td>
 *     <td>a row for each id: id,lat,lon,semi_major_m,semi_minor_m,axis_deg,outcome</td></tr>
 * </table>
 *
 * <pre>{@code
 * BatchOperations.names().forEach(System.out::println);
 * }</pre>
 */
public final class BatchOperations {
  /** The names of all operations on one line, for a help text. */
  public static final String HELP =
      "rhumb-inverse, rhumb-direct, geodesic-inverse, geodesic-direct, leg-errors, cross-track,"
          + " variation, utm, british-grid, irish-grid, itm, mgrs, course-to-steer, tide-height,"
          + " fix";

  private static final List<String> NAMES = List.of(HELP.split(", "));

  private BatchOperations() {}

  /**
   * The names of all operations.
   *
   * @return the names, unmodifiable
   */
  public static List<String> names() {
    return NAMES;
  }

  /** What an operation has no use for is refused: passed over in silence it would mislead. */
  private static void refuseUnused(String name, BatchOptions options) {
    refuse(
        options.isReverse(),
        "the reverse",
        name,
        "utm",
        "british-grid",
        "irish-grid",
        "itm",
        "mgrs");
    refuse(
        !options.ellipsoid().equals(Ellipsoid.WGS84),
        "another ellipsoid",
        name,
        "rhumb-inverse",
        "rhumb-direct",
        "geodesic-inverse",
        "geodesic-direct",
        "leg-errors",
        "cross-track");
    refuse(options.isAlongGeodesic(), "a geodesic line", name, "cross-track");
    refuse(options.precision() != GridPrecision.METRE, "a precision", name, "mgrs");
    refuse(options.chance() != BatchOptions.standard().chance(), "a chance", name, "fix");
    refuse(options.tide().isPresent(), "harmonic constants", name, "tide-height");
  }

  private static void refuse(boolean asked, String what, String name, String... users) {
    if (asked && NAMES.contains(name) && !List.of(users).contains(name)) {
      throw new IllegalArgumentException(
          what + " is for " + String.join(", ", users) + ", but was asked of " + name);
    }
  }

  static Operation find(String name, BatchOptions options) {
    refuseUnused(name, options);
    boolean reverse = options.isReverse();
    return switch (name) {
      case "rhumb-inverse" -> LegOperations.rhumbInverse(options.ellipsoid());
      case "rhumb-direct" -> LegOperations.rhumbDirect(options.ellipsoid());
      case "geodesic-inverse" -> LegOperations.geodesicInverse(options.ellipsoid());
      case "geodesic-direct" -> LegOperations.geodesicDirect(options.ellipsoid());
      case "leg-errors" -> LegOperations.legErrors(options.ellipsoid());
      case "cross-track" ->
          LegOperations.crossTrack(options.ellipsoid(), options.isAlongGeodesic());
      case "variation" -> VariationOperation.operation();
      case "utm" -> reverse ? GridOperations.utmReverse() : GridOperations.utm();
      case "british-grid" -> grid(name, MapGrid.britishNationalGrid(), reverse);
      case "irish-grid" -> grid(name, MapGrid.irishGrid(), reverse);
      case "itm" -> grid(name, MapGrid.irishTransverseMercator(), reverse);
      case "mgrs" ->
          reverse ? GridOperations.mgrsReverse() : GridOperations.mgrs(options.precision());
      case "course-to-steer" -> SteerOperation.operation();
      case "tide-height" ->
          TideOperation.operation(
              options
                  .tide()
                  .orElseThrow(
                      () -> new IllegalArgumentException("tide-height needs a file of constants")));
      case "fix" -> FixWork.operation();
      default ->
          throw new IllegalArgumentException(
              "operation must be one of "
                  + String.join(", ", NAMES)
                  + ", but was \""
                  + name
                  + "\"");
    };
  }

  private static Operation grid(String name, MapGrid grid, boolean reverse) {
    return reverse ? GridOperations.reverseOf(name, grid) : GridOperations.of(name, grid);
  }
}
