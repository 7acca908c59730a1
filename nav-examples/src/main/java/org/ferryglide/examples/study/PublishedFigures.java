package org.ferryglide.examples.study;

import java.util.List;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.LegComparisons;
import org.ferryglide.nav.measure.Distance;

/** What others have printed of rhumb lines and geodesics, beside the same worked here. */
final class PublishedFigures {
  private static final String MANUAL = "GeographicLib, manual pages of RhumbSolve and GeodSolve";
  private static final String BENNETT =
      "Bennett (1996), appendix, with metres added by Apache SIS, GeodesicsOnEllipsoidTest";
  private static final String COAST_GUARD = "US Coast Guard deck examination, navigation problems";
  private static final double MILE = Distance.METRES_PER_NAUTICAL_MILE;

  private PublishedFigures() {}

  /**
   * One figure.
   *
   * @param what what was worked
   * @param unit its unit
   * @param published as printed
   * @param tolerance half a printed digit, or what the source's own method allows
   * @param here as worked here
   * @param source who printed it
   */
  record Figure(
      String what, String unit, double published, double tolerance, double here, String source) {
    boolean isMet() {
      return Math.abs(here - published) <= tolerance;
    }
  }

  static List<Figure> all() {
    double[] far = leg(dms(40, 38, 23), -dms(73, 46, 44), dms(1, 21, 33), dms(103, 59, 22));
    double[] first = leg(dm(10, 18.4), dm(37, 41.7), dm(53, 29.5), dm(113, 17.1));
    double[] third = leg(-dm(52, 47.8), -dm(97, 31.6), -dm(53, 10.8), -dm(41, 34.6));
    double[] fourth = leg(dm(48, 45.0), -dm(61, 31.1), dm(48, 45.0), dm(5, 13.2));
    return List.of(
        new Figure(
            "40°38'23\"N 73°46'44\"W to 1°21'33\"N 103°59'22\"E, course of the rhumb line",
            "degrees",
            dms(103, 34, 58.2),
            0.05 / 3600.0,
            far[LegComparisons.RHUMB_COURSE],
            MANUAL),
        new Figure(
            "the same, rhumb line",
            "metres",
            18523563.0,
            0.5,
            far[LegComparisons.RHUMB_LENGTH],
            MANUAL),
        new Figure(
            "the same, geodesic",
            "metres",
            15347628.0,
            0.5,
            far[LegComparisons.GEODESIC_LENGTH],
            MANUAL),
        new Figure(
            "the same, how much shorter the geodesic is",
            "kilometres",
            3176.0,
            0.5,
            far[LegComparisons.EXCESS] / 1000.0,
            MANUAL),
        metres("example 1, 10°18.4'N 37°41.7'E to 53°29.5'N 113°17.1'E", 8348285.202, first),
        miles("example 1", 4507.7, first),
        metres("example 3, 52°47.8'S 97°31.6'W to 53°10.8'S 41°34.6'W", 3757550.656, third),
        miles("example 3", 2028.9, third),
        metres("example 4, 48°45.0'N 61°31.1'W to 48°45.0'N 5°13.2'E", 4907757.375, fourth),
        miles("example 4", 2649.9, fourth),
        greatCircle(
            "24°25.3'N 83°02.6'W to 35°57.2'N 5°45.7'W",
            3966.5,
            0.05,
            dm(24, 25.3),
            -dm(83, 2.6),
            dm(35, 57.2),
            -dm(5, 45.7)),
        greatCircle(
            "25°50.0'N 77°00.0'W to 35°56.0'N 6°15.0'W",
            3616.0,
            0.5,
            dm(25, 50.0),
            -77.0,
            dm(35, 56.0),
            -dm(6, 15.0)),
        greatCircle(
            "8°50.0'N 80°21.0'W to 12°36.0'N 128°16.0'E",
            8664.0,
            0.5,
            dm(8, 50.0),
            -dm(80, 21.0),
            dm(12, 36.0),
            dm(128, 16.0)));
  }

  private static double dm(double degrees, double minutes) {
    return degrees + minutes / 60.0;
  }

  private static double dms(double degrees, double minutes, double seconds) {
    return degrees + minutes / 60.0 + seconds / 3600.0;
  }

  private static double[] leg(double lat1, double lon1, double lat2, double lon2) {
    double[] out = new double[LegComparisons.WIDTH];
    LegComparisons.compare(Ellipsoid.WGS84, lat1, lon1, lat2, lon2, out, 0);
    return out;
  }

  private static Figure metres(String what, double published, double[] leg) {
    return new Figure(
        what + ", rhumb line",
        "metres",
        published,
        5e-4,
        leg[LegComparisons.RHUMB_LENGTH],
        BENNETT);
  }

  /** On the ellipsoid of the book, which differs little from WGS84; by its tables to 0.1 M. */
  private static Figure miles(String what, double published, double[] leg) {
    return new Figure(
        what + ", rhumb line",
        "nautical miles",
        published,
        0.1,
        leg[LegComparisons.RHUMB_LENGTH] / MILE,
        BENNETT);
  }

  /** On the sphere of the examination, where a minute of arc is a mile. */
  private static Figure greatCircle(
      String what,
      double published,
      double tolerance,
      double lat1,
      double lon1,
      double lat2,
      double lon2) {
    double[] out = new double[LegComparisons.WIDTH];
    LegComparisons.compare(LegErrors.SPHERE, lat1, lon1, lat2, lon2, out, 0);
    double minutes =
        60.0 * Math.toDegrees(out[LegComparisons.GEODESIC_LENGTH] / LegErrors.MEAN_RADIUS_METRES);
    return new Figure(
        what + ", great circle", "nautical miles", published, tolerance, minutes, COAST_GUARD);
  }
}
