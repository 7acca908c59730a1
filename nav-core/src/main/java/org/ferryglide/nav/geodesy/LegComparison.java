package org.ferryglide.nav.geodesy;

import java.io.Serializable;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;

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
 * <p>The separation is worked when first asked for: of legs up to 400 km that stay below 80° of
 * latitude as {@link LegComparisons} does, of others by a search that costs as much as hundreds of
 * legs.
 */
public final class LegComparison implements Serializable {

  private static final long serialVersionUID = 1L;

  private final RhumbLeg rhumb;
  private final GeodesicLeg geodesic;

  /** Where the lines are widest, found when first asked for; volatile for several threads. */
  private transient volatile @Nullable WidestPlace widest;

  private LegComparison(RhumbLeg rhumb, GeodesicLeg geodesic) {
    this.rhumb = rhumb;
    this.geodesic = geodesic;
  }

  private WidestPlace widest() {
    WidestPlace found = widest;
    if (found == null) {
      found = WidestPlace.of(rhumb, geodesic);
      widest = found;
    }
    return found;
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
    return Distance.ofMetres(widest().separationMetres());
  }

  /**
   * Where the lines are farthest apart.
   *
   * @return the point of the rhumb line
   */
  public Position widestAt() {
    return rhumb.pointAt(widestAlong());
  }

  /**
   * How far along the rhumb line they are farthest apart.
   *
   * @return distance from the start
   */
  public Distance widestAlong() {
    return Distance.ofMetres(widest().alongMetres());
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
    double along = widest().alongMetres();
    return along == 0.0 ? 0.0 : Degrees.fromRadians(Math.atan2(widest().separationMetres(), along));
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
