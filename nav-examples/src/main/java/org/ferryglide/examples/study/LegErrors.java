package org.ferryglide.examples.study;

import org.ferryglide.nav.chart.ChartScale;
import org.ferryglide.nav.chart.StraightEdge;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.LegComparisons;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.grid.MapGrid;
import org.ferryglide.nav.grid.MapLine;
import org.ferryglide.nav.grid.UtmZone;
import org.ferryglide.nav.magnetic.MagneticModel;
import org.ferryglide.nav.magnetic.MagneticSnapshot;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/** The errors of one leg, of every {@link ErrorKind}, in metres. Belongs to one thread. */
final class LegErrors {
  /** Mean radius of the earth: Moritz (2000), Geodetic Reference System 1980, R1, metres. */
  static final double MEAN_RADIUS_METRES = 6371008.7714;

  /** A sphere of that radius. */
  static final Ellipsoid SPHERE = Ellipsoid.sphere(MEAN_RADIUS_METRES);

  private static final double METRES_A_MINUTE = 1852.0;
  private static final StraightEdge EDGE = new StraightEdge(400.0, 0.5);
  private static final double CHART = 75_000.0;
  private static final double COMPASS_DEGREES = 1.0;
  private static final double STEERING_DEGREES = 5.0;

  private final MagneticSnapshot printed = MagneticModel.wmm2015v2().atDecimalYear(2016.0);
  private final MagneticSnapshot now = MagneticModel.wmm2025().atDecimalYear(2026.0);
  private final double[] lines = new double[LegComparisons.WIDTH_WITH_SEPARATION];
  private final double[] other = new double[RhumbLines.WIDTH];
  private double sphereMetres;
  private final double[] field = new double[MagneticSnapshot.ELEMENTS];

  /**
   * Works a leg.
   *
   * @param leg a leg as {@link DrawnLegs} writes it
   * @param withMap whether the line on a map is wanted, which takes longer than all the rest; NaN
   *     if not
   * @param out receives an error for each kind
   */
  void work(double[] leg, boolean withMap, double[] out) {
    double lat1 = leg[DrawnLegs.LATITUDE_1];
    double lon1 = leg[DrawnLegs.LONGITUDE_1];
    double lat2 = leg[DrawnLegs.LATITUDE_2];
    double lon2 = leg[DrawnLegs.LONGITUDE_2];
    LegComparisons.compareWithSeparation(Ellipsoid.WGS84, lat1, lon1, lat2, lon2, lines, 0);
    double course = lines[LegComparisons.RHUMB_COURSE];
    double metres = lines[LegComparisons.RHUMB_LENGTH];
    out[ErrorKind.GEODESIC.index()] = lines[LegComparisons.SEPARATION];

    RhumbLines.inverse(SPHERE, lat1, lon1, lat2, lon2, other, 0);
    sphereMetres = other[RhumbLines.LENGTH];
    out[ErrorKind.SPHERE.index()] =
        apart(course, metres, other[RhumbLines.COURSE], other[RhumbLines.LENGTH]);

    double north = 60.0 * METRES_A_MINUTE * (lat2 - lat1);
    double middle = Math.toRadians(0.5 * (lat1 + lat2));
    double east =
        60.0 * METRES_A_MINUTE * Math.IEEEremainder(lon2 - lon1, 360.0) * Math.cos(middle);
    out[ErrorKind.PLANE.index()] =
        apart(course, metres, Math.toDegrees(Math.atan2(east, north)), Math.hypot(east, north));

    out[ErrorKind.MAP_LINE.index()] = withMap ? mapLine(lat1, lon1, lat2, lon2) : Double.NaN;

    double paper = ChartScale.mercator(CHART, lat1).millimetres(Distance.ofMetres(metres), lat1);
    out[ErrorKind.STRAIGHT_EDGE.index()] = off(metres, EDGE.bearingErrorDegrees(paper));
    out[ErrorKind.OLD_ROSE.index()] =
        off(metres, Math.IEEEremainder(variation(now, leg) - variation(printed, leg), 360.0));
    out[ErrorKind.COMPASS.index()] = off(metres, COMPASS_DEGREES);
    out[ErrorKind.STEERING.index()] = off(metres, STEERING_DEGREES);
  }

  /** Rhumb line less geodesic of the leg worked last, metres. */
  double excess() {
    return lines[LegComparisons.EXCESS];
  }

  /** Course of the rhumb line of the leg worked last, degrees. */
  double course() {
    return lines[LegComparisons.RHUMB_COURSE];
  }

  /** Length of the rhumb line of the leg worked last, metres. */
  double metres() {
    return lines[LegComparisons.RHUMB_LENGTH];
  }

  private static double mapLine(double lat1, double lon1, double lat2, double lon2) {
    Position start = Position.ofDegrees(lat1, lon1);
    MapLine line =
        MapLine.between(
            start, Position.ofDegrees(lat2, lon2), MapGrid.utm(UtmZone.containing(start)));
    return Math.abs(line.greatestSeparationOfRhumb().distance().metres()); // right positive
  }

  /** By what share the length of the leg worked last is off on a sphere. */
  double sphereShare() {
    return Math.abs(sphereMetres / lines[LegComparisons.RHUMB_LENGTH] - 1.0);
  }

  private double variation(MagneticSnapshot snapshot, double[] leg) {
    snapshot.elements(leg[DrawnLegs.LATITUDE_1], leg[DrawnLegs.LONGITUDE_1], 0.0, field, 0);
    return field[MagneticSnapshot.DECLINATION];
  }

  /** Where the end comes to lie when a course is off by an angle. */
  private static double off(double metres, double degrees) {
    return 2.0 * metres * Math.abs(Math.sin(0.5 * Math.toRadians(degrees)));
  }

  /** How far apart two runs end that begin at one place, by the law of cosines. */
  private static double apart(double course, double metres, double otherCourse, double other) {
    double half = Math.sin(0.5 * Math.toRadians(otherCourse - course));
    return Math.sqrt((other - metres) * (other - metres) + 4.0 * metres * other * half * half);
  }
}
