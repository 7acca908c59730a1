package org.ferryglide.nav.geodesy;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;

/**
 * The shortest line between two points on an ellipsoid, WGS84 unless another is given; its course
 * changes along it.
 *
 * <p>Lengths are good to 15 nanometres, and courses to as much sideways at the far end; {@link
 * Geodesics} says how that was measured.
 *
 * <p>Sights follow it: the bearing of a light is the initial course of the geodesic to it.
 *
 * <pre>{@code
 * GeodesicLeg sight = GeodesicLeg.between(boat, light);
 * TrueBearing bearing = sight.initialCourse();
 * TrueBearing fromTheLight = sight.finalCourse().reciprocal();
 * }</pre>
 */
public final class GeodesicLeg implements Leg, Serializable {

  private static final long serialVersionUID = 1L;

  private final Ellipsoid ellipsoid;
  private final Position start;
  private final Position end;
  private final TrueBearing initialCourse;
  private final TrueBearing finalCourse;
  private final Distance length;

  /** Prepared when first wanted. */
  private transient volatile @Nullable Line line;

  private GeodesicLeg(
      Ellipsoid ellipsoid,
      Position start,
      Position end,
      TrueBearing initialCourse,
      TrueBearing finalCourse,
      Distance length) {
    this.ellipsoid = ellipsoid;
    this.start = start;
    this.end = end;
    this.initialCourse = initialCourse;
    this.finalCourse = finalCourse;
    this.length = length;
  }

  /**
   * The shortest leg from one point to another.
   *
   * @param start where it begins
   * @param end where it ends
   * @return the leg; between points nearly opposite on the earth one of the shortest
   */
  public static GeodesicLeg between(Position start, Position end) {
    return between(Ellipsoid.WGS84, start, end);
  }

  /**
   * The shortest leg from one point to another on an ellipsoid.
   *
   * <pre>{@code
   * GeodesicLeg.between(Ellipsoid.AIRY_1830, hill, tower).length();
   * }</pre>
   *
   * @param ellipsoid the figure of the earth
   * @param start where it begins
   * @param end where it ends
   * @return the leg; between points nearly opposite on the earth one of the shortest
   */
  public static GeodesicLeg between(Ellipsoid ellipsoid, Position start, Position end) {
    double[] answer = new double[Geodesics.WIDTH];
    Geodesics.inverse(
        ellipsoid,
        start.latitudeDegrees(),
        start.longitudeDegrees(),
        end.latitudeDegrees(),
        end.longitudeDegrees(),
        answer,
        0);
    if (answer[Geodesics.LENGTH] == 0.0) {
      return new GeodesicLeg(
          ellipsoid, start, end, TrueBearing.ofDegrees(0), TrueBearing.ofDegrees(0), Distance.ZERO);
    }
    return new GeodesicLeg(
        ellipsoid,
        start,
        end,
        new TrueBearing(answer[Geodesics.INITIAL_COURSE]),
        new TrueBearing(answer[Geodesics.FINAL_COURSE]),
        Distance.ofMetres(answer[Geodesics.LENGTH]));
  }

  /**
   * The leg that leaves a point on a course and goes straight on.
   *
   * @param start where it begins
   * @param course the true course at the start
   * @param length how long it is, at least 0; beyond half the earth it is no longer the shortest
   * @return the leg
   * @throws IllegalArgumentException if the length is negative
   */
  public static GeodesicLeg from(Position start, TrueBearing course, Distance length) {
    return from(Ellipsoid.WGS84, start, course, length);
  }

  /**
   * The leg that leaves a point on a course and goes straight on over an ellipsoid.
   *
   * @param ellipsoid the figure of the earth
   * @param start where it begins
   * @param course the true course at the start
   * @param length how long it is, at least 0; beyond half the earth it is no longer the shortest
   * @return the leg
   * @throws IllegalArgumentException if the length is negative
   */
  public static GeodesicLeg from(
      Ellipsoid ellipsoid, Position start, TrueBearing course, Distance length) {
    Arguments.notNegative(length.metres(), "length of a leg", "metres");
    double[] end = new double[3];
    GeodesicLine.from(ellipsoid, start, course).pointAt(length.metres(), end, 0);
    return new GeodesicLeg(
        ellipsoid, start, new Position(end[0], end[1]), course, new TrueBearing(end[2]), length);
  }

  @Override
  public Ellipsoid ellipsoid() {
    return ellipsoid;
  }

  @Override
  public Position start() {
    return start;
  }

  @Override
  public Position end() {
    return end;
  }

  @Override
  public Distance length() {
    return length;
  }

  @Override
  public TrueBearing initialCourse() {
    return initialCourse;
  }

  @Override
  public TrueBearing finalCourse() {
    return finalCourse;
  }

  @Override
  public Position pointAt(Distance fromStart) {
    if (fromStart.metres() == 0.0) { // an end is itself, not a rounding of it
      return start;
    }
    return fromStart.equals(length) ? end : line().pointAt(fromStart);
  }

  @Override
  public TrueBearing courseAt(Distance fromStart) {
    return fromStart.equals(length) ? finalCourse : line().courseAt(fromStart);
  }

  @Override
  public Line line() {
    Line known = line;
    if (known == null) { // several threads may prepare it at once, to the same end
      known = GeodesicLine.from(ellipsoid, start, initialCourse);
      line = known;
    }
    return known;
  }

  @Override
  public List<GeodesicLeg> split(int parts) {
    List<Position> ends = LegParts.ends(this, parts);
    Distance part = length.times(1.0 / parts);
    Line line = line();
    TrueBearing course = initialCourse;
    List<GeodesicLeg> legs = new ArrayList<>(parts);
    for (int i = 1; i <= parts; i++) {
      TrueBearing next =
          i == parts ? finalCourse : line.courseAt(Distance.ofMetres(length.metres() * i / parts));
      legs.add(new GeodesicLeg(ellipsoid, ends.get(i - 1), ends.get(i), course, next, part));
      course = next;
    }
    return Collections.unmodifiableList(legs);
  }

  @Override
  public GeodesicLeg reverse() {
    if (length.metres() == 0.0) {
      return new GeodesicLeg(ellipsoid, end, start, initialCourse, finalCourse, length);
    }
    return new GeodesicLeg(
        ellipsoid, end, start, finalCourse.reciprocal(), initialCourse.reciprocal(), length);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof GeodesicLeg that
        && ellipsoid.equals(that.ellipsoid)
        && start.equals(that.start)
        && end.equals(that.end)
        && initialCourse.equals(that.initialCourse)
        && finalCourse.equals(that.finalCourse)
        && length.equals(that.length);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * start.hashCode() + end.hashCode()) + length.hashCode();
  }

  /** Ends, courses and length, and the ellipsoid if it is not WGS84; without loss. */
  @Override
  public String toString() {
    return "geodesic from "
        + start
        + " to "
        + end
        + ", "
        + initialCourse
        + " becoming "
        + finalCourse
        + ", "
        + length
        + LegParts.named(ellipsoid);
  }
}
