package org.ferryglide.nav.geodesy;

import java.io.Serializable;
import org.ferryglide.nav.bearing.TrueBearing;
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
 * comparison.equivalentSteeringErrorDegrees(); // the compass error that would hide it
 * }</pre>
 *
 * <p>On a sphere, or another figure of the earth, the same question shows what difference that
 * figure makes:
 *
 * <pre>{@code
 * Ellipsoid sphere = Ellipsoid.sphere(GreatCircle.MEAN_RADIUS.metres());
 * Distance off = LegComparison.between(sphere, landing, island).rhumbLength()
 *     .minus(comparison.rhumbLength()); // up to 0.5 % of the length
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

  private final Ellipsoid ellipsoid;
  private final Position start;
  private final Position end;
  private final TrueBearing rhumbCourse;
  private final Distance rhumbLength;
  private final TrueBearing initialCourse;
  private final TrueBearing finalCourse;
  private final Distance geodesicLength;

  /** Where the lines are widest, found when first asked for; volatile for several threads. */
  private transient volatile @Nullable WidestPlace widest;

  private LegComparison(Ellipsoid ellipsoid, Position start, Position end) {
    this.ellipsoid = ellipsoid;
    this.start = start;
    this.end = end;
    double[] row = new double[LegComparisons.WIDTH];
    LegComparisons.compare(
        ellipsoid,
        start.latitudeDegrees(),
        start.longitudeDegrees(),
        end.latitudeDegrees(),
        end.longitudeDegrees(),
        row,
        0);
    boolean alike = row[LegComparisons.GEODESIC_LENGTH] == 0.0; // then courses mean nothing
    rhumbCourse = new TrueBearing(row[LegComparisons.RHUMB_COURSE]);
    rhumbLength = Distance.ofMetres(row[LegComparisons.RHUMB_LENGTH]);
    initialCourse = new TrueBearing(alike ? 0.0 : row[LegComparisons.INITIAL_COURSE]);
    finalCourse = new TrueBearing(alike ? 0.0 : row[LegComparisons.FINAL_COURSE]);
    geodesicLength = Distance.ofMetres(row[LegComparisons.GEODESIC_LENGTH]);
  }

  private WidestPlace widest() {
    WidestPlace found = widest;
    if (found == null) {
      double[] row = new double[LegComparisons.WIDTH_WITH_SEPARATION];
      row[LegComparisons.RHUMB_COURSE] = rhumbCourse.degrees();
      row[LegComparisons.RHUMB_LENGTH] = rhumbLength.metres();
      row[LegComparisons.INITIAL_COURSE] = initialCourse.degrees();
      row[LegComparisons.FINAL_COURSE] = finalCourse.degrees();
      row[LegComparisons.GEODESIC_LENGTH] = geodesicLength.metres();
      found = WidestPlace.of(ellipsoid, start, end, row);
      widest = found;
    }
    return found;
  }

  /**
   * Compares the two lines between two points of WGS84.
   *
   * @param start where both begin
   * @param end where both end
   * @return the comparison
   */
  public static LegComparison between(Position start, Position end) {
    return between(Ellipsoid.WGS84, start, end);
  }

  /**
   * Compares the two lines between two points.
   *
   * @param ellipsoid the figure of the earth
   * @param start where both begin
   * @param end where both end
   * @return the comparison
   */
  public static LegComparison between(Ellipsoid ellipsoid, Position start, Position end) {
    return new LegComparison(ellipsoid, start, end);
  }

  /**
   * The figure of the earth that both lines lie on.
   *
   * @return the ellipsoid
   */
  public Ellipsoid ellipsoid() {
    return ellipsoid;
  }

  /**
   * Where both lines begin.
   *
   * @return the start
   */
  public Position start() {
    return start;
  }

  /**
   * Where both lines end.
   *
   * @return the end
   */
  public Position end() {
    return end;
  }

  /**
   * The one course of the rhumb line.
   *
   * @return the course; true north between two equal points
   */
  public TrueBearing rhumbCourse() {
    return rhumbCourse;
  }

  /**
   * How long the rhumb line is.
   *
   * @return the length, at least 0
   */
  public Distance rhumbLength() {
    return rhumbLength;
  }

  /**
   * The course of the geodesic at the start.
   *
   * @return the course; true north between two equal points
   */
  public TrueBearing initialCourse() {
    return initialCourse;
  }

  /**
   * The course of the geodesic at the end.
   *
   * @return the course; true north between two equal points
   */
  public TrueBearing finalCourse() {
    return finalCourse;
  }

  /**
   * How long the geodesic is.
   *
   * @return the length, at least 0
   */
  public Distance geodesicLength() {
    return geodesicLength;
  }

  /**
   * How much longer the rhumb line is.
   *
   * @return rhumb less geodesic length; good to 30 nanometres, so that a leg of a few kilometres
   *     may show a rounding of either sign
   */
  public Distance lengthExcess() {
    return rhumbLength.minus(geodesicLength);
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
  public Position greatestSeparationAt() {
    double[] point = new double[2];
    WidestPlace.rhumbPoint(ellipsoid, start, end, rhumbCourse, widest().alongMetres(), point);
    return new Position(point[0], point[1]);
  }

  /**
   * How far along the rhumb line they are farthest apart.
   *
   * @return distance from the start
   */
  public Distance greatestSeparationAlong() {
    return Distance.ofMetres(widest().alongMetres());
  }

  /**
   * The turn from the geodesic's initial course to the rhumb line's.
   *
   * @return degrees, clockwise positive: positive eastbound in the northern hemisphere
   */
  public double initialCourseDifferenceDegrees() {
    return initialCourse.turnDegreesTo(rhumbCourse);
  }

  /**
   * The half-convergency of chart work, half the difference of longitude times the sine of the
   * middle latitude: the rule for {@link #initialCourseDifferenceDegrees}.
   *
   * @return degrees, of the same sign; right to 0.0012° on legs up to 20 NM (to 75° of latitude)
   */
  public double halfConvergencyDegrees() {
    double dlon = Degrees.longitudeDifference(start.longitudeDegrees(), end.longitudeDegrees());
    return 0.5 * dlon * Degrees.sine(0.5 * (start.latitudeDegrees() + end.latitudeDegrees()));
  }

  /**
   * The compass error that would hide the difference: steered from the start, it puts a boat as far
   * off the line, where the two are farthest apart, as they are from each other.
   *
   * @return degrees, at least 0
   */
  public double equivalentSteeringErrorDegrees() {
    double along = widest().alongMetres();
    return along == 0.0 ? 0.0 : Degrees.fromRadians(Math.atan2(widest().separationMetres(), along));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LegComparison that
        && ellipsoid.equals(that.ellipsoid)
        && start.equals(that.start)
        && end.equals(that.end);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * ellipsoid.hashCode() + start.hashCode()) + end.hashCode();
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
