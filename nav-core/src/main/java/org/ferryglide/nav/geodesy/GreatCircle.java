package org.ferryglide.nav.geodesy;

import java.io.Serializable;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * The great circle through two points of a sphere, for teaching and for checking handbooks.
 *
 * <p>It is not a {@link Leg}: legs are laid off on the ellipsoid. Latitudes are taken as if they
 * were those of the sphere, as handbooks do, so that distances differ from the geodesic's by up to
 * 0.5 %.
 *
 * <pre>{@code
 * GreatCircle circle = GreatCircle.between(from, to, GreatCircle.MINUTE_IS_A_MILE);
 * circle.length().inNauticalMiles(1);
 * circle.vertex(); // the point of highest latitude
 * }</pre>
 *
 * <p>Accuracy: a few units in the last place of the arc, at every distance; derived, since no
 * difference of nearly equal numbers enters.
 */
public final class GreatCircle implements Serializable {

  private static final long serialVersionUID = 1L;

  /** Radius of the sphere on which a minute of arc is a nautical mile of 1852 m. */
  public static final Distance MINUTE_IS_A_MILE =
      Distance.ofMetres(Distance.METRES_PER_NAUTICAL_MILE * 60.0 * 180.0 / Math.PI);

  /**
   * Mean radius of the earth, (2a + b)/3 of GRS80, as the International Union of Geodesy and
   * Geophysics gives it.
   */
  public static final Distance MEAN_RADIUS = Distance.ofMetres(6371008.7714);

  private final Position start;
  private final Position end;
  private final double radiusMetres;
  private final double arcDegrees;
  private final double initialCourseDegrees;
  private final double finalCourseDegrees;

  private GreatCircle(
      Position start,
      Position end,
      double radiusMetres,
      double arcDegrees,
      double initialCourseDegrees,
      double finalCourseDegrees) {
    this.start = start;
    this.end = end;
    this.radiusMetres = radiusMetres;
    this.arcDegrees = arcDegrees;
    this.initialCourseDegrees = initialCourseDegrees;
    this.finalCourseDegrees = finalCourseDegrees;
  }

  /**
   * The shorter arc of the great circle through two points.
   *
   * @param start where it begins
   * @param end where it ends
   * @param radius radius of the sphere, above 0
   * @return the arc; between points exactly opposite, which many arcs join, one of them
   * @throws IllegalArgumentException if the radius is not above 0
   */
  public static GreatCircle between(Position start, Position end, Distance radius) {
    Arguments.positive(radius.metres(), "radius of a sphere", "metres");
    double sin1 = Degrees.sine(start.latitudeDegrees());
    double cos1 = Degrees.cosine(start.latitudeDegrees());
    double sin2 = Degrees.sine(end.latitudeDegrees());
    double cos2 = Degrees.cosine(end.latitudeDegrees());
    double dlon = Degrees.longitudeDifference(start.longitudeDegrees(), end.longitudeDegrees());
    double sinLon = Degrees.sine(dlon);
    double versine = 2.0 * square(Degrees.sine(0.5 * dlon)); // 1 - cos dlon
    double sinDiff = Degrees.sine(end.latitudeDegrees() - start.latitudeDegrees());
    double cosDiff = Degrees.cosine(end.latitudeDegrees() - start.latitudeDegrees());
    // cos1 sin2 - sin1 cos2 cos dlon, with the difference of latitude kept whole.
    double north = sinDiff + sin1 * cos2 * versine;
    double east = cos2 * sinLon;
    double arc =
        Math.atan2(Math.sqrt(north * north + east * east), cosDiff - cos1 * cos2 * versine);
    double northAtEnd = sinDiff - sin2 * cos1 * versine;
    double eastAtEnd = cos1 * sinLon;
    return new GreatCircle(
        start,
        end,
        radius.metres(),
        Degrees.fromRadians(arc),
        arc == 0.0 ? 0.0 : Degrees.reduced(Degrees.fromRadians(Math.atan2(east, north))),
        arc == 0.0 ? 0.0 : Degrees.reduced(Degrees.fromRadians(Math.atan2(eastAtEnd, northAtEnd))));
  }

  private static double square(double x) {
    return x * x;
  }

  /**
   * Where the arc begins.
   *
   * @return the start
   */
  public Position start() {
    return start;
  }

  /**
   * Where the arc ends.
   *
   * @return the end
   */
  public Position end() {
    return end;
  }

  /**
   * The angle the arc spans at the centre.
   *
   * @return degrees in [0, 180]
   */
  public double arcDegrees() {
    return arcDegrees;
  }

  /**
   * How long the arc is.
   *
   * @return the length on the stated sphere
   */
  public Distance length() {
    return Distance.ofMetres(Degrees.toRadians(arcDegrees) * radiusMetres);
  }

  /**
   * The true course at the start.
   *
   * @return the course; true north if the arc has no length
   */
  public TrueBearing initialCourse() {
    return new TrueBearing(initialCourseDegrees);
  }

  /**
   * The true course at the end.
   *
   * @return the course on arrival
   */
  public TrueBearing finalCourse() {
    return new TrueBearing(finalCourseDegrees);
  }

  /**
   * The point of the whole circle that lies farthest north.
   *
   * @return the northern vertex; the opposite point is the southern one. On the equator, where
   *     every point is as far north, it is the start
   */
  public Position northernVertex() {
    double sin1 = Degrees.sine(start.latitudeDegrees());
    double cos1 = Degrees.cosine(start.latitudeDegrees());
    double sinCourse = Degrees.sine(initialCourseDegrees);
    double cosCourse = Degrees.cosine(initialCourseDegrees);
    // Clairaut: the cosine of the vertex' latitude is sin(course) cos(latitude) anywhere.
    double cosine = Math.abs(sinCourse) * cos1;
    double sine = Math.sqrt(square(cosCourse) + square(sinCourse * sin1));
    double toVertex = Degrees.fromRadians(Math.atan2(cosCourse * cos1, sin1));
    if (cosCourse == 0.0 && sin1 == 0.0) {
      return start;
    }
    return new Position(
        Degrees.fromRadians(Math.atan2(sine, cosine)), at(toVertex).longitudeDegrees());
  }

  /**
   * The point of highest latitude on the arc itself, if it is not an end.
   *
   * @return the vertex that the arc passes, north or south; empty if the latitude only rises or
   *     falls from start to end
   */
  public Optional<Position> vertex() {
    double sin1 = Degrees.sine(start.latitudeDegrees());
    double cos1 = Degrees.cosine(start.latitudeDegrees());
    double northward =
        Degrees.fromRadians(Math.atan2(Degrees.cosine(initialCourseDegrees) * cos1, sin1));
    double southward = northward > 0.0 ? northward - 180.0 : northward + 180.0;
    Position north = northernVertex();
    if (northward > 0.0 && northward < arcDegrees) {
      return Optional.of(north);
    }
    if (southward > 0.0 && southward < arcDegrees) {
      return Optional.of(
          new Position(
              -north.latitudeDegrees(), Degrees.longitude(north.longitudeDegrees() + 180.0)));
    }
    return Optional.empty();
  }

  /**
   * The point some way along.
   *
   * @param fromStart distance from the start; beyond the end or negative goes on round the circle
   * @return the point
   */
  public Position pointAt(Distance fromStart) {
    return at(Degrees.fromRadians(fromStart.metres() / radiusMetres));
  }

  private Position at(double arc) {
    double sin1 = Degrees.sine(start.latitudeDegrees());
    double cos1 = Degrees.cosine(start.latitudeDegrees());
    double sinCourse = Degrees.sine(initialCourseDegrees);
    double cosCourse = Degrees.cosine(initialCourseDegrees);
    double sinArc = Degrees.sine(arc);
    double cosArc = Degrees.cosine(arc);
    double up = sin1 * cosArc + cos1 * sinArc * cosCourse;
    double out = cos1 * cosArc - sin1 * sinArc * cosCourse;
    double east = sinArc * sinCourse;
    return new Position(
        Degrees.fromRadians(Math.atan2(up, Math.sqrt(out * out + east * east))),
        Degrees.longitude(start.longitudeDegrees() + Degrees.fromRadians(Math.atan2(east, out))));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof GreatCircle that
        && start.equals(that.start)
        && end.equals(that.end)
        && radiusMetres == that.radiusMetres;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * start.hashCode() + end.hashCode()) + Double.hashCode(radiusMetres);
  }

  /** Ends and radius, without loss. */
  @Override
  public String toString() {
    return "great circle from " + start + " to " + end + ", radius " + radiusMetres + " m";
  }
}
