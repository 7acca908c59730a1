package org.ferryglide.nav.geodesy;

import java.io.Serializable;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/** A line of one true course on an ellipsoid, prepared for many points along it. */
final class RhumbLine implements Line, Serializable {

  private static final long serialVersionUID = 1L;

  private final Ellipsoid ellipsoid;
  private final Position origin;
  private final TrueBearing course;
  private final transient double sine;
  private final transient double cosine;
  private final transient double mu;
  private final transient double sinCourse;
  private final transient double cosCourse;

  private RhumbLine(Ellipsoid ellipsoid, Position origin, TrueBearing course) {
    this.ellipsoid = ellipsoid;
    this.origin = origin;
    this.course = course;
    double lat = origin.latitudeDegrees();
    double lesser = RhumbMath.lesserPart(lat);
    sine = RhumbMath.sine(lat, lesser);
    cosine = RhumbMath.cosine(lat, lesser);
    mu = RhumbMath.rectifying(ellipsoid, Degrees.toRadians(lat), sine, cosine);
    sinCourse = Degrees.sine(course.degrees());
    cosCourse = Degrees.cosine(course.degrees());
  }

  /**
   * The rhumb line through a point on a course.
   *
   * @param ellipsoid the figure of the earth
   * @param origin a point of the line
   * @param course its true course
   * @return the line
   * @throws IllegalArgumentException if the point is a pole and the course is not along a meridian
   */
  static RhumbLine from(Ellipsoid ellipsoid, Position origin, TrueBearing course) {
    if (Math.abs(origin.latitudeDegrees()) == 90.0 && course.degrees() % 180.0 != 0.0) {
      throw new IllegalArgumentException(
          "course of a rhumb line at a pole must be 0 or 180 degrees, but was " + course);
    }
    return new RhumbLine(ellipsoid, origin, course);
  }

  @Override
  public Ellipsoid ellipsoid() {
    return ellipsoid;
  }

  @Override
  public Position origin() {
    return origin;
  }

  /**
   * The one true course of the line.
   *
   * @return the course
   */
  public TrueBearing course() {
    return course;
  }

  double sineOfCourse() {
    return sinCourse;
  }

  double cosineOfCourse() {
    return cosCourse;
  }

  @Override
  public TrueBearing initialCourse() {
    return course;
  }

  @Override
  public Distance farthestAhead() {
    return Distance.ofMetres(reach(cosCourse));
  }

  @Override
  public Distance farthestAstern() {
    return Distance.ofMetres(-reach(-cosCourse));
  }

  /**
   * Distance to the pole toward which the cosine of the course points, or the search span. A line
   * that circles the pole stops a micrometre short of it, where its longitude is still defined.
   */
  private double reach(double cosine) {
    double toPole =
        ellipsoid.quarterMeridianMetres()
            - Math.signum(cosine) * ellipsoid.rectifyingRadiusMetres() * mu
            - (sinCourse == 0.0 ? 0.0 : 1e-6);
    return Math.min(SEARCH_SPAN.metres(), Math.max(0.0, toPole) / Math.abs(cosine));
  }

  @Override
  public void pointAt(double metres, double[] out, int offset) {
    RhumbMath.point(
        ellipsoid,
        origin.latitudeDegrees(),
        origin.longitudeDegrees(),
        sine,
        cosine,
        mu,
        sinCourse,
        cosCourse,
        metres,
        out,
        offset);
    out[offset + 2] = Double.isNaN(out[offset]) ? Double.NaN : course.degrees();
  }

  @Override
  public Position pointAt(Distance along) {
    double[] point = new double[3];
    pointAt(along.metres(), point, 0);
    if (Double.isNaN(point[1])) {
      throw new IllegalArgumentException(
          "a rhumb line from "
              + origin
              + " on course "
              + course
              + " ends at the pole before "
              + along);
    }
    return new Position(point[0], point[1]);
  }

  @Override
  public TrueBearing courseAt(Distance along) {
    boolean reached =
        along.compareTo(Distance.ZERO) >= 0
            ? along.compareTo(farthestAhead()) <= 0
            : along.compareTo(farthestAstern()) >= 0;
    if (!reached) {
      pointAt(along); // refuses what lies past a pole
    }
    return course;
  }

  private Object readResolve() {
    return new RhumbLine(ellipsoid, origin, course);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RhumbLine that
        && ellipsoid.equals(that.ellipsoid)
        && origin.equals(that.origin)
        && course.equals(that.course);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * ellipsoid.hashCode() + origin.hashCode()) + course.hashCode();
  }

  /** Origin and course, and the ellipsoid if it is not WGS84; without loss. */
  @Override
  public String toString() {
    return "rhumb line through " + origin + ", " + course + LegParts.named(ellipsoid);
  }
}
