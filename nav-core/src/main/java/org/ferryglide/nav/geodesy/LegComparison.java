package org.ferryglide.nav.geodesy;

import java.io.Serializable;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * The rhumb line and the geodesic between two points side by side: does the difference matter?
 *
 * <p>Over a kayak's leg it does not: ten miles east-west at 55° north the lines part by ten metres,
 * which a sixteenth of a degree of compass error would hide.
 *
 * <pre>{@code
 * LegComparison comparison = LegComparison.between(landing, island);
 * comparison.lengthExcess(); // what the rhumb line costs
 * comparison.greatestSeparation(); // how far apart they run
 * comparison.hidingCompassErrorDegrees(); // the compass error as large as all that
 * }</pre>
 *
 * <p>Rules to check it by, with k = tan(latitude) sin(course) / radius and s the length: separation
 * k s²/8, excess k² s³/24, difference of initial course k s/2, the latitude being that of the
 * middle. Up to 50 NM and 70° of latitude they hold to 2.5 %, 1 % and 2.5 %, and where that is
 * less, as near the equator, to 0.1 m, a micrometre and 0.0005° (20 000 legs drawn at random).
 *
 * <p>A comparison costs as much as hundreds of legs, since the separation is searched for.
 */
public final class LegComparison implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final int SAMPLES = 16;
  private static final double GOLDEN = 0.5 * (Math.sqrt(5.0) - 1.0);

  private final RhumbLeg rhumb;
  private final GeodesicLeg geodesic;
  private final double separationMetres;
  private final double alongMetres;
  private final Position onRhumb;

  private LegComparison(RhumbLeg rhumb, GeodesicLeg geodesic) {
    this.rhumb = rhumb;
    this.geodesic = geodesic;
    double length = rhumb.length().metres();
    Line line = rhumb.line();
    Line shortest = geodesic.line();
    double span = geodesic.length().metres();
    double best = 0.0;
    double most = 0.0;
    for (int i = 1; i < SAMPLES; i++) {
      double off = off(line, length * i / SAMPLES, shortest, span);
      if (off > most) {
        most = off;
        best = length * i / SAMPLES;
      }
    }
    // The curve is round at its top, so that 1e-5 of the length is far nearer than need be.
    double lo = Math.max(0.0, best - length / SAMPLES);
    double hi = Math.min(length, best + length / SAMPLES);
    double left = hi - GOLDEN * (hi - lo);
    double right = lo + GOLDEN * (hi - lo);
    double offLeft = off(line, left, shortest, span);
    double offRight = off(line, right, shortest, span);
    while (hi - lo > 1e-5 * length) {
      if (offLeft >= offRight) {
        hi = right;
        right = left;
        offRight = offLeft;
        left = hi - GOLDEN * (hi - lo);
        offLeft = off(line, left, shortest, span);
      } else {
        lo = left;
        left = right;
        offLeft = offRight;
        right = lo + GOLDEN * (hi - lo);
        offRight = off(line, right, shortest, span);
      }
    }
    alongMetres = 0.5 * (lo + hi);
    separationMetres = off(line, alongMetres, shortest, span);
    onRhumb = line.pointAt(Distance.ofMetres(alongMetres));
  }

  private static double off(Line line, double along, Line shortest, double span) {
    return ClosestPoint.search(shortest, 0.0, span, line.pointAt(Distance.ofMetres(along)))
        .distance()
        .metres();
  }

  /**
   * Compares the two lines between two points.
   *
   * @param start where both begin
   * @param end where both end
   * @return the comparison
   */
  public static LegComparison between(Position start, Position end) {
    return new LegComparison(RhumbLeg.between(start, end), GeodesicLeg.between(start, end));
  }

  /**
   * The line of one course.
   *
   * @return the rhumb leg
   */
  public RhumbLeg rhumb() {
    return rhumb;
  }

  /**
   * The shortest line.
   *
   * @return the geodesic leg
   */
  public GeodesicLeg geodesic() {
    return geodesic;
  }

  /**
   * How much longer the rhumb line is.
   *
   * @return rhumb less geodesic length; good to 30 nanometres, so that a leg of a few kilometres
   *     may show a rounding of either sign
   */
  public Distance lengthExcess() {
    return rhumb.length().minus(geodesic.length());
  }

  /**
   * The greatest distance of a point of the rhumb line from the geodesic.
   *
   * @return the separation, at least 0
   */
  public Distance greatestSeparation() {
    return Distance.ofMetres(separationMetres);
  }

  /**
   * Where the lines are farthest apart.
   *
   * @return the point of the rhumb line
   */
  public Position widestAt() {
    return onRhumb;
  }

  /**
   * How far along the rhumb line they are farthest apart.
   *
   * @return distance from the start
   */
  public Distance widestAlong() {
    return Distance.ofMetres(alongMetres);
  }

  /**
   * The turn from the geodesic's initial course to the rhumb line's.
   *
   * @return degrees, clockwise positive: positive eastbound in the northern hemisphere
   */
  public double initialCourseDifferenceDegrees() {
    return geodesic.initialCourse().turnTo(rhumb.course());
  }

  /**
   * The half-convergency of chart work, half the difference of longitude times the sine of the
   * middle latitude: the rule for {@link #initialCourseDifferenceDegrees}.
   *
   * @return degrees, of the same sign; right to 0.0012° on legs up to 20 NM (to 75° of latitude)
   */
  public double halfConvergencyDegrees() {
    Position start = rhumb.start();
    Position end = rhumb.end();
    double dlon = Degrees.longitudeDifference(start.longitudeDegrees(), end.longitudeDegrees());
    return 0.5 * dlon * Degrees.sine(0.5 * (start.latitudeDegrees() + end.latitudeDegrees()));
  }

  /**
   * The compass error that would hide the difference: steered from the start, it puts a boat as far
   * off the line, where the two are farthest apart, as they are from each other.
   *
   * @return degrees, at least 0
   */
  public double hidingCompassErrorDegrees() {
    return alongMetres == 0.0
        ? 0.0
        : Degrees.fromRadians(Math.atan2(separationMetres, alongMetres));
  }

  /**
   * The same two lines on a sphere, for those who compare figures of the earth.
   *
   * @param radius radius of the sphere, for example {@link GreatCircle#MEAN_RADIUS}
   * @return what the sphere makes of lengths and courses
   * @throws IllegalArgumentException if the radius is not above 0
   */
  public Sphere onSphere(Distance radius) {
    Position start = rhumb.start();
    Position end = rhumb.end();
    double[] line = new double[2];
    RhumbLines.inverse(
        Ellipsoid.sphere(radius.metres()),
        start.latitudeDegrees(),
        start.longitudeDegrees(),
        end.latitudeDegrees(),
        end.longitudeDegrees(),
        line,
        0);
    GreatCircle circle = GreatCircle.between(start, end, radius);
    return new Sphere(
        Distance.ofMetres(line[1]).minus(rhumb.length()),
        circle.length().minus(geodesic.length()),
        Math.IEEEremainder(line[0] - rhumb.course().degrees(), 360.0),
        geodesic.initialCourse().turnTo(circle.initialCourse()));
  }

  /**
   * What a sphere makes of two lines, less what the ellipsoid does.
   *
   * <pre>{@code
   * LegComparison.Sphere sphere = comparison.onSphere(GreatCircle.MEAN_RADIUS);
   * sphere.rhumbLengthDifference(); // up to 0.5 % of the length
   * }</pre>
   *
   * @param rhumbLengthDifference rhumb length on the sphere less on the ellipsoid
   * @param shortestLengthDifference great-circle length less geodesic length
   * @param rhumbCourseDifferenceDegrees turn from the rhumb course on the ellipsoid to that on the
   *     sphere, degrees, clockwise positive
   * @param initialCourseDifferenceDegrees turn from the geodesic's initial course to the great
   *     circle's, degrees, clockwise positive
   */
  public record Sphere(
      Distance rhumbLengthDifference,
      Distance shortestLengthDifference,
      double rhumbCourseDifferenceDegrees,
      double initialCourseDifferenceDegrees)
      implements Serializable {
    private static final long serialVersionUID = 1L;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LegComparison that
        && rhumb.equals(that.rhumb)
        && geodesic.equals(that.geodesic);
  }

  @Override
  public int hashCode() {
    return rhumb.hashCode();
  }

  /** The difference in a line. */
  @Override
  public String toString() {
    return "rhumb line longer by "
        + lengthExcess()
        + ", apart by "
        + greatestSeparation()
        + ", initial courses "
        + initialCourseDifferenceDegrees()
        + "° apart";
  }
}
