package org.ferryglide.nav.geodesy;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicMask;

/**
 * Geodesics on WGS84, on plain doubles: the shortest lines.
 *
 * <p>The work is done by GeographicLib-Java, to 15 nanometres; its results are objects, so that
 * unlike the other kernels of this package these calls allocate.
 *
 * <pre>{@code
 * double[] coursesAndMetres = new double[3];
 * Geodesics.inverse(50.105, -5.535, 50.2, -5.43, coursesAndMetres, 0);
 * }</pre>
 *
 * <p>Angles are degrees, lengths metres; NaN in gives NaN out, and so does a latitude outside [-90,
 * 90].
 *
 * @see <a href="https://doi.org/10.1007/s00190-012-0578-z">Karney (2013), Algorithms for geodesics,
 *     J. Geodesy 87, 43-55</a>
 */
public final class Geodesics {
  private Geodesics() {}

  /**
   * Courses and length of the shortest line between two points.
   *
   * <p>Between points nearly opposite on the earth several lines may be shortest; the one returned
   * is then GeographicLib's choice. Points alike give courses that agree, and length 0.
   *
   * @param lat1 latitude of the start, degrees, in [-90, 90]
   * @param lon1 longitude of the start, degrees
   * @param lat2 latitude of the end, degrees, in [-90, 90]
   * @param lon2 longitude of the end, degrees
   * @param out receives the course at the start and at the end, degrees in [0, 360), and the
   *     length, metres
   * @param offset where in {@code out} to write
   */
  public static void inverse(
      double lat1, double lon1, double lat2, double lon2, double[] out, int offset) {
    GeodesicData line =
        Geodesic.WGS84.Inverse(
            lat1, lon1, lat2, lon2, GeodesicMask.DISTANCE | GeodesicMask.AZIMUTH);
    out[offset] = Degrees.reduced(line.azi1);
    out[offset + 1] = Degrees.reduced(line.azi2);
    out[offset + 2] = line.s12;
  }

  /**
   * The end of the geodesic that leaves a point on a course.
   *
   * @param lat latitude of the start, degrees, in [-90, 90]
   * @param lon longitude of the start, degrees
   * @param courseDegrees true course at the start, degrees
   * @param metres length, metres; negative runs backward
   * @param out receives latitude in [-90, 90], longitude in [-180, 180) and the course there in [0,
   *     360), degrees
   * @param offset where in {@code out} to write
   */
  public static void direct(
      double lat, double lon, double courseDegrees, double metres, double[] out, int offset) {
    GeodesicData end =
        Geodesic.WGS84.Direct(
            lat,
            lon,
            courseDegrees,
            metres,
            GeodesicMask.LATITUDE | GeodesicMask.LONGITUDE | GeodesicMask.AZIMUTH);
    boolean finite = Math.abs(lon) <= Double.MAX_VALUE; // or there is no meridian to start from
    out[offset] = finite ? end.lat2 + 0.0 : Double.NaN;
    out[offset + 1] = Degrees.longitude(end.lon2);
    out[offset + 2] = finite ? Degrees.reduced(end.azi2) : Double.NaN;
  }
}
