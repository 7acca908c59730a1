package org.ferryglide.nav.geodesy;

import java.io.Serializable;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicMask;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;

/**
 * A geodesic carried on round an ellipsoid, prepared for many points along it.
 *
 * <p>Points up to about 500 km from the origin are worked as {@link Geodesics#direct} works them,
 * to the same bits; the preparation is made when the first point beyond is asked for.
 */
final class GeodesicLine implements Line, Serializable {

  private static final long serialVersionUID = 1L;

  private static final int WANTED =
      GeodesicMask.LATITUDE | GeodesicMask.LONGITUDE | GeodesicMask.AZIMUTH;

  private final Ellipsoid ellipsoid;
  private final Position origin;
  private final TrueBearing initialCourse;
  private final transient double sine;
  private final transient double cosine;
  private final transient double sinCourse;
  private final transient double cosCourse;

  /** For far points, made when first wanted; volatile, since several threads may want it. */
  private transient volatile net.sf.geographiclib.@Nullable GeodesicLine prepared;

  private GeodesicLine(Ellipsoid ellipsoid, Position origin, TrueBearing initialCourse) {
    this.ellipsoid = ellipsoid;
    this.origin = origin;
    this.initialCourse = initialCourse;
    double phi = Degrees.toRadians(origin.latitudeDegrees());
    sine = Math.sin(phi);
    cosine = Math.cos(phi);
    sinCourse = Degrees.sine(initialCourse.degrees());
    cosCourse = Degrees.cosine(initialCourse.degrees());
  }

  /**
   * The geodesic that leaves a point on a course.
   *
   * @param ellipsoid the figure of the earth
   * @param origin a point of the line
   * @param initialCourse the true course there
   * @return the line
   */
  static GeodesicLine from(Ellipsoid ellipsoid, Position origin, TrueBearing initialCourse) {
    return new GeodesicLine(ellipsoid, origin, initialCourse);
  }

  @Override
  public Ellipsoid ellipsoid() {
    return ellipsoid;
  }

  @Override
  public Position origin() {
    return origin;
  }

  @Override
  public TrueBearing initialCourse() {
    return initialCourse;
  }

  double initialSine() {
    return sinCourse;
  }

  double initialCosine() {
    return cosCourse;
  }

  @Override
  public Distance farthestAhead() {
    return SEARCH_SPAN;
  }

  @Override
  public Distance farthestAstern() {
    return SEARCH_SPAN.times(-1.0);
  }

  @Override
  public void pointAt(double metres, double[] out, int offset) {
    if (ShortGeodesics.point(
        ellipsoid,
        origin.latitudeDegrees(),
        origin.longitudeDegrees(),
        initialCourse.degrees(),
        sine,
        cosine,
        sinCourse,
        cosCourse,
        metres,
        out,
        offset)) {
      return;
    }
    GeodesicData there = prepared().Position(metres, WANTED);
    out[offset] = there.lat2 + 0.0;
    out[offset + 1] = Degrees.longitude(there.lon2);
    out[offset + 2] = Degrees.reduced(there.azi2);
  }

  private net.sf.geographiclib.GeodesicLine prepared() {
    net.sf.geographiclib.GeodesicLine line = prepared;
    if (line == null) {
      line =
          ellipsoid.geodesic.Line(
              origin.latitudeDegrees(),
              origin.longitudeDegrees(),
              initialCourse.degrees(),
              WANTED | GeodesicMask.DISTANCE_IN);
      prepared = line;
    }
    return line;
  }

  @Override
  public Position pointAt(Distance along) {
    double[] point = new double[3];
    pointAt(along.metres(), point, 0);
    return new Position(point[0], point[1]);
  }

  @Override
  public TrueBearing courseAt(Distance along) {
    double[] point = new double[3];
    pointAt(along.metres(), point, 0);
    return new TrueBearing(point[2]);
  }

  private Object readResolve() {
    return new GeodesicLine(ellipsoid, origin, initialCourse);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof GeodesicLine that
        && ellipsoid.equals(that.ellipsoid)
        && origin.equals(that.origin)
        && initialCourse.equals(that.initialCourse);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * ellipsoid.hashCode() + origin.hashCode()) + initialCourse.hashCode();
  }

  /** Origin and course, and the ellipsoid if it is not WGS84; without loss. */
  @Override
  public String toString() {
    return "geodesic through " + origin + ", " + initialCourse + LegParts.named(ellipsoid);
  }
}
