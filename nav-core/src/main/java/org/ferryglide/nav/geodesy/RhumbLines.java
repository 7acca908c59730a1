package org.ferryglide.nav.geodesy;

import org.ferryglide.nav.basics.ParallelRows;

/**
 * Rhumb lines on an ellipsoid, on plain doubles: lines of one true course.
 *
 * <p>A rhumb line is straight on a Mercator chart, and its length is the meridian distance it makes
 * good divided by the cosine of its course. The plain formulas lose digits on nearly east-west
 * lines, where both differences vanish. Here each difference is worked from the difference of
 * latitude by an exact identity, so that nothing cancels: with h half the difference of latitude,
 *
 * <ul>
 *   <li>the spherical part of the difference of isometric latitude is asinh(tan h (1/cos φ₁ + 1/cos
 *       φ₂)),
 *   <li>the part from the flattening is e atanh(e q), q = (sin φ₂ - sin φ₁) / (1 - e² sin φ₁ sin
 *       φ₂),
 *   <li>the terms of the meridian series are 2 sin k(φ₂ - φ₁) cos k(φ₂ + φ₁).
 * </ul>
 *
 * <pre>{@code
 * double[] courseAndMetres = new double[2];
 * RhumbLines.inverse(50.105, -5.535, 50.2, -5.43, courseAndMetres, 0);
 * double[] latAndLon = new double[2];
 * RhumbLines.direct(
 *     50.105, -5.535, courseAndMetres[RhumbLines.COURSE], courseAndMetres[RhumbLines.LENGTH], latAndLon, 0);
 * }</pre>
 *
 * <p>Angles are degrees, lengths metres. NaN in gives NaN out; so does a latitude outside [-90,
 * 90]. Nothing is allocated, but for the sharing out of the parallel forms.
 *
 * <p>Accuracy on WGS84, apart from the half unit in the last place to which each double is rounded:
 * at most 15 nanometres in the length, in course times length and in the place of the end, measured
 * against 80-digit arithmetic over legs from 10 m to half round the earth, nearly and exactly
 * east-west, along meridians, over the date line and the equator, and near poles (13.5 at the worst
 * of 11 000 legs drawn at random). The series are as good for flattenings up to 1/200 of either
 * sign; at 1/100 the end of a long line may lie 0.3 micrometres off, at 1/50, the greatest
 * accepted, 9.4.
 *
 * @see <a href="https://doi.org/10.3133/pp1395">Snyder (1987), USGS PP 1395, eqs. 3-1, 7-7 for the
 *     isometric latitude</a>
 * @see <a href="https://arxiv.org/abs/2212.05818">Karney (2023), On auxiliary latitudes, for the
 *     series in the third flattening</a>
 */
public final class RhumbLines {
  /** Where {@link #inverse} writes the course, degrees in [0, 360). */
  public static final int COURSE = 0;

  /** Where {@link #inverse} writes the length, metres. */
  public static final int LENGTH = 1;

  /** Where {@link #direct} writes the latitude, degrees. */
  public static final int LATITUDE = 0;

  /** Where {@link #direct} writes the longitude, degrees in [-180, 180). */
  public static final int LONGITUDE = 1;

  /** How many numbers each row of an array form takes. */
  public static final int WIDTH = 2;

  /** Below this the ratio of two differences of latitude would lose its digits to underflow. */
  private static final double LEAST_DIFFERENCE_DEGREES = 1e-290;

  private RhumbLines() {}

  /**
   * Course and length of the rhumb line between two points on WGS84.
   *
   * @param lat1 latitude of the start, degrees, in [-90, 90]
   * @param lon1 longitude of the start, degrees
   * @param lat2 latitude of the end, degrees, in [-90, 90]
   * @param lon2 longitude of the end, degrees
   * @param out receives the course, degrees in [0, 360), and the length, metres
   * @param offset where in {@code out} to write
   * @see #inverse(Ellipsoid, double, double, double, double, double[], int)
   */
  public static void inverse(
      double lat1, double lon1, double lat2, double lon2, double[] out, int offset) {
    inverse(Ellipsoid.WGS84, lat1, lon1, lat2, lon2, out, offset);
  }

  /**
   * Course and length of the rhumb line between two points.
   *
   * <p>Special cases: points 180° of longitude apart have two equally long rhumb lines, and the one
   * to the east is returned; a line to or from a pole runs along a meridian, course 0 or 180,
   * whatever the longitude of the pole; equal points give course 0 and length 0, as do two points
   * at the same pole.
   *
   * @param ellipsoid the figure of the earth
   * @param lat1 latitude of the start, degrees, in [-90, 90]
   * @param lon1 longitude of the start, degrees
   * @param lat2 latitude of the end, degrees, in [-90, 90]
   * @param lon2 longitude of the end, degrees
   * @param out receives the course, degrees in [0, 360), and the length, metres
   * @param offset where in {@code out} to write
   */
  public static void inverse(
      Ellipsoid ellipsoid,
      double lat1,
      double lon1,
      double lat2,
      double lon2,
      double[] out,
      int offset) {
    if (!(Math.abs(lat1) <= 90.0 && Math.abs(lat2) <= 90.0)) {
      out[offset] = Double.NaN;
      out[offset + 1] = Double.NaN;
      return;
    }
    double dlon = Degrees.toRadians(Degrees.longitudeDifference(lon1, lon2));
    double dlat = lat2 - lat1;
    double delta = Degrees.toRadians(dlat);
    if (Math.abs(delta) <= RhumbMath.SHORT
        && Math.abs(dlat) >= LEAST_DIFFERENCE_DEGREES
        && Math.abs(lat1) <= RhumbMath.GREATEST_SHORT_LATITUDE
        && Math.abs(lat2) <= RhumbMath.GREATEST_SHORT_LATITUDE) {
      double phi = Degrees.toRadians(lat1);
      double sine = Math.sin(phi);
      double cosine = Math.cos(phi);
      double sinHalf = Arcs.sine(0.5 * delta);
      double versine = 2.0 * sinHalf * sinHalf;
      double sinDelta = 2.0 * sinHalf * Math.sqrt(1.0 - sinHalf * sinHalf);
      double dsin = cosine * sinDelta - sine * versine;
      double other = cosine - (sine * sinDelta + cosine * versine); // cos φ₂
      finish(
          ellipsoid,
          dlon,
          delta,
          sinDelta,
          dsin,
          sine * (sine + dsin),
          cosine * other,
          out,
          offset);
      return;
    }
    double lesser1 = RhumbMath.lesserPart(lat1);
    double sin1 = RhumbMath.sine(lat1, lesser1);
    double cos1 = RhumbMath.cosine(lat1, lesser1);
    if (Math.abs(dlat) < LEAST_DIFFERENCE_DEGREES) { // along a parallel
      double metres = Math.abs(dlon) * RhumbMath.parallelRadius(ellipsoid, sin1, cos1);
      out[offset] = metres == 0.0 ? 0.0 : dlon > 0.0 ? 90.0 : dlon < 0.0 ? 270.0 : Double.NaN;
      out[offset + 1] = metres;
      return;
    }
    double lesser2 = RhumbMath.lesserPart(lat2);
    double sin2 = RhumbMath.sine(lat2, lesser2);
    double cos2 = RhumbMath.cosine(lat2, lesser2);
    double sinDelta;
    double dsin; // sin2 - sin1
    if (Math.abs(dlat) <= 90.0) {
      double sinHalf = Math.sin(0.5 * delta);
      double cosHalf = Math.sqrt((1.0 - sinHalf) * (1.0 + sinHalf));
      sinDelta = 2.0 * sinHalf * cosHalf;
      dsin = sinHalf / cosHalf * (cos1 + cos2);
    } else { // nothing cancels between points so far apart
      sinDelta = sin2 * cos1 - sin1 * cos2;
      dsin = sin2 - sin1;
    }
    finish(ellipsoid, dlon, delta, sinDelta, dsin, sin1 * sin2, cos1 * cos2, out, offset);
  }

  /** Course and length from the differences. */
  private static void finish(
      Ellipsoid ellipsoid,
      double dlon,
      double delta,
      double sinDelta,
      double dsin,
      double sines,
      double cosines,
      double[] out,
      int offset) {
    double dpsi = RhumbMath.isometric(ellipsoid, dsin, sines, cosines);
    double dmu = RhumbMath.rectifying(ellipsoid, delta, sinDelta, cosines + sines, cosines - sines);
    double north = ellipsoid.rectifyingRadius * dmu;
    double east = dlon * (north / dpsi);
    out[offset] = Arcs.courseDegrees(dlon, dpsi);
    out[offset + 1] = east == 0.0 ? Math.abs(north) : Math.sqrt(north * north + east * east);
  }

  /**
   * The end of a rhumb line from a point on WGS84.
   *
   * @param lat latitude of the start, degrees, in [-90, 90]
   * @param lon longitude of the start, degrees
   * @param courseDegrees true course, degrees
   * @param metres length, metres; negative runs backward
   * @param out receives latitude in [-90, 90] and longitude in [-180, 180), degrees
   * @param offset where in {@code out} to write
   * @see #direct(Ellipsoid, double, double, double, double, double[], int)
   */
  public static void direct(
      double lat, double lon, double courseDegrees, double metres, double[] out, int offset) {
    direct(Ellipsoid.WGS84, lat, lon, courseDegrees, metres, out, offset);
  }

  /**
   * The end of a rhumb line from a point.
   *
   * <p>Special cases: a line that would run past a pole has no end, and both results are NaN; up to
   * 20 nanometres past, which is rounding, counts as the pole. At a pole the longitude is that of
   * the start for course 0 or 180, and NaN for another course, which circles the pole without end.
   *
   * @param ellipsoid the figure of the earth
   * @param lat latitude of the start, degrees, in [-90, 90]
   * @param lon longitude of the start, degrees
   * @param courseDegrees true course, degrees
   * @param metres length, metres; negative runs backward
   * @param out receives latitude in [-90, 90] and longitude in [-180, 180), degrees
   * @param offset where in {@code out} to write
   */
  public static void direct(
      Ellipsoid ellipsoid,
      double lat,
      double lon,
      double courseDegrees,
      double metres,
      double[] out,
      int offset) {
    if (!(Math.abs(lat) <= 90.0 && Math.abs(lon) <= Double.MAX_VALUE)) {
      out[offset] = Double.NaN;
      out[offset + 1] = Double.NaN;
      return;
    }
    double lesser = RhumbMath.lesserPart(lat);
    double sine = RhumbMath.sine(lat, lesser);
    double cosine = RhumbMath.cosine(lat, lesser);
    RhumbMath.point(
        ellipsoid,
        lat,
        lon,
        sine,
        cosine,
        RhumbMath.rectifying(ellipsoid, Degrees.toRadians(lat), sine, cosine),
        Degrees.sine(courseDegrees),
        Degrees.cosine(courseDegrees),
        metres,
        out,
        offset);
  }

  /**
   * Courses and lengths of many rhumb lines.
   *
   * <p>Row i reads {@code lat1[i]} to {@code lon2[i]} and writes course and length {@link #WIDTH}
   * (i - from) after the offset; NaN in a row gives NaN out for that row.
   *
   * <p>Short lines, of up to half a degree of latitude and 48 km and clear of the poles, are worked
   * several at once, at a fraction of the cost of single calls, wherever a block of 32 to 512 rows
   * holds two in five of them or more. They agree with single calls within 0.3 nanometres (measured
   * over 800 000 rows on four ellipsoids); the parallel form gives the same bits.
   *
   * @param ellipsoid the figure of the earth
   * @param lat1 latitudes of the starts, degrees
   * @param lon1 longitudes of the starts, degrees
   * @param lat2 latitudes of the ends, degrees
   * @param lon2 longitudes of the ends, degrees
   * @param from first row
   * @param until row after the last
   * @param out receives course and length of each row in turn, degrees and metres
   * @param offset where in {@code out} to write the first row
   * @throws IndexOutOfBoundsException if an array is too short for the rows
   */
  public static void inverse(
      Ellipsoid ellipsoid,
      double[] lat1,
      double[] lon1,
      double[] lat2,
      double[] lon2,
      int from,
      int until,
      double[] out,
      int offset) {
    new RhumbRows(ellipsoid).inverse(lat1, lon1, lat2, lon2, from, until, out, offset, WIDTH);
  }

  /**
   * Ends of many rhumb lines.
   *
   * <p>Row i reads {@code lat[i]} to {@code metres[i]} and writes latitude and longitude {@link
   * #WIDTH} (i - from) after the offset; NaN in a row gives NaN out for that row.
   *
   * <p>Short lines, of up to 48 km and clear of the poles, are worked several at once, at a
   * fraction of the cost of single calls, wherever a block of 32 to 512 rows holds two in five of
   * them or more. They agree with single calls within 0.1 nanometres and the rounding of the
   * degrees (measured over 800 000 rows on four ellipsoids); the parallel form gives the same bits.
   *
   * @param ellipsoid the figure of the earth
   * @param lat latitudes of the starts, degrees
   * @param lon longitudes of the starts, degrees
   * @param courseDegrees true courses, degrees
   * @param metres lengths, metres
   * @param from first row
   * @param until row after the last
   * @param out receives latitude and longitude of each row in turn, degrees
   * @param offset where in {@code out} to write the first row
   * @throws IndexOutOfBoundsException if an array is too short for the rows
   */
  public static void direct(
      Ellipsoid ellipsoid,
      double[] lat,
      double[] lon,
      double[] courseDegrees,
      double[] metres,
      int from,
      int until,
      double[] out,
      int offset) {
    new RhumbEndRows(ellipsoid)
        .direct(lat, lon, courseDegrees, metres, from, until, out, offset, WIDTH);
  }

  /**
   * The array form of the inverse, shared out over the processors; worth it from some ten thousand
   * rows.
   *
   * @param ellipsoid the figure of the earth
   * @param lat1 latitudes of the starts, degrees
   * @param lon1 longitudes of the starts, degrees
   * @param lat2 latitudes of the ends, degrees
   * @param lon2 longitudes of the ends, degrees
   * @param from first row
   * @param until row after the last
   * @param out receives course and length of each row in turn, degrees and metres
   * @param offset where in {@code out} to write the first row
   * @throws IndexOutOfBoundsException if an array is too short for the rows
   */
  public static void inverseInParallel(
      Ellipsoid ellipsoid,
      double[] lat1,
      double[] lon1,
      double[] lat2,
      double[] lon2,
      int from,
      int until,
      double[] out,
      int offset) {
    ParallelRows.share(
        from,
        until,
        Lanes.ROWS_SHARED,
        offset,
        WIDTH,
        (a, b, at) -> inverse(ellipsoid, lat1, lon1, lat2, lon2, a, b, out, at));
  }

  /**
   * The array form of the direct problem, shared out over the processors; worth it from some ten
   * thousand rows.
   *
   * @param ellipsoid the figure of the earth
   * @param lat latitudes of the starts, degrees
   * @param lon longitudes of the starts, degrees
   * @param courseDegrees true courses, degrees
   * @param metres lengths, metres
   * @param from first row
   * @param until row after the last
   * @param out receives latitude and longitude of each row in turn, degrees
   * @param offset where in {@code out} to write the first row
   * @throws IndexOutOfBoundsException if an array is too short for the rows
   */
  public static void directInParallel(
      Ellipsoid ellipsoid,
      double[] lat,
      double[] lon,
      double[] courseDegrees,
      double[] metres,
      int from,
      int until,
      double[] out,
      int offset) {
    ParallelRows.share(
        from,
        until,
        Lanes.ROWS_SHARED,
        offset,
        WIDTH,
        (a, b, at) -> direct(ellipsoid, lat, lon, courseDegrees, metres, a, b, out, at));
  }
}
