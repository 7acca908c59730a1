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
 * A leg of one true course on an ellipsoid, WGS84 unless another is given: straight on a Mercator
 * chart.
 *
 * <pre>{@code
 * RhumbLeg leg = RhumbLeg.between(landing, island);
 * TrueBearing course = leg.course();
 * RhumbLeg out = RhumbLeg.from(landing, TrueBearing.ofDegrees(75), Distance.ofNauticalMiles(5));
 * }</pre>
 *
 * <p>Between points 180° of longitude apart the leg goes east. A leg to or from a pole runs along
 * the meridian of its other end.
 */
public final class RhumbLeg implements Leg, Serializable {

  private static final long serialVersionUID = 1L;

  private final Ellipsoid ellipsoid;
  private final Position start;
  private final Position end;
  private final TrueBearing course;
  private final Distance length;

  /** Prepared when first wanted. */
  private transient volatile @Nullable Line line;

  private RhumbLeg(
      Ellipsoid ellipsoid, Position start, Position end, TrueBearing course, Distance length) {
    this.ellipsoid = ellipsoid;
    this.start = start;
    this.end = end;
    this.course = course;
    this.length = length;
  }

  /**
   * The rhumb leg from one point to another.
   *
   * @param start where it begins
   * @param end where it ends
   * @return the leg; a pole at one end is held with the longitude of the other end, since the leg
   *     runs along that meridian, and from pole to pole along the meridian of the start
   */
  public static RhumbLeg between(Position start, Position end) {
    return between(Ellipsoid.WGS84, start, end);
  }

  /**
   * The rhumb leg from one point to another on an ellipsoid.
   *
   * <pre>{@code
   * RhumbLeg.between(Ellipsoid.sphere(6371008.8), landing, island).length();
   * }</pre>
   *
   * @param ellipsoid the figure of the earth
   * @param start where it begins
   * @param end where it ends
   * @return the leg; at a pole as {@link #between(Position, Position)} says
   */
  public static RhumbLeg between(Ellipsoid ellipsoid, Position start, Position end) {
    double[] answer = new double[RhumbLines.WIDTH];
    RhumbLines.inverse(
        ellipsoid,
        start.latitudeDegrees(),
        start.longitudeDegrees(),
        end.latitudeDegrees(),
        end.longitudeDegrees(),
        answer,
        0);
    Position from = isPole(start) && !isPole(end) ? onMeridianOf(end, start) : start;
    Position to = isPole(end) ? onMeridianOf(from, end) : end;
    return new RhumbLeg(
        ellipsoid,
        from,
        to,
        new TrueBearing(answer[RhumbLines.COURSE]),
        Distance.ofMetres(answer[RhumbLines.LENGTH]));
  }

  private static boolean isPole(Position position) {
    return Math.abs(position.latitudeDegrees()) == 90.0;
  }

  private static Position onMeridianOf(Position other, Position pole) {
    return new Position(pole.latitudeDegrees(), other.longitudeDegrees());
  }

  /**
   * The rhumb leg from a point on a course.
   *
   * @param start where it begins
   * @param course the true course
   * @param length how long it is, at least 0
   * @return the leg
   * @throws IllegalArgumentException if the length is negative, or the line ends at a pole before
   *     that length, or it starts at a pole on a course other than 0 or 180
   */
  public static RhumbLeg from(Position start, TrueBearing course, Distance length) {
    return from(Ellipsoid.WGS84, start, course, length);
  }

  /**
   * The rhumb leg from a point on a course over an ellipsoid.
   *
   * @param ellipsoid the figure of the earth
   * @param start where it begins
   * @param course the true course
   * @param length how long it is, at least 0
   * @return the leg
   * @throws IllegalArgumentException as {@link #from(Position, TrueBearing, Distance)}
   */
  public static RhumbLeg from(
      Ellipsoid ellipsoid, Position start, TrueBearing course, Distance length) {
    Arguments.notNegative(length.metres(), "length of a leg", "metres");
    Position end = RhumbLine.from(ellipsoid, start, course).pointAt(length);
    return new RhumbLeg(ellipsoid, start, end, course, length);
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

  /**
   * The one true course of the leg.
   *
   * @return the course; true north on a leg between two equal points
   */
  public TrueBearing course() {
    return course;
  }

  @Override
  public TrueBearing initialCourse() {
    return course;
  }

  @Override
  public TrueBearing finalCourse() {
    return course;
  }

  @Override
  public Position pointAt(Distance fromStart) {
    return fromStart.equals(length) ? end : line().pointAt(fromStart);
  }

  @Override
  public TrueBearing courseAt(Distance fromStart) {
    boolean within = fromStart.metres() >= 0.0 && fromStart.compareTo(length) <= 0;
    return within ? course : line().courseAt(fromStart);
  }

  @Override
  public Line line() {
    Line known = line;
    if (known == null) { // several threads may prepare it at once, to the same end
      known = RhumbLine.from(ellipsoid, start, course);
      line = known;
    }
    return known;
  }

  /** The course of each part is that of the leg. */
  @Override
  public List<RhumbLeg> split(int parts) {
    List<Position> ends = LegParts.ends(this, parts);
    Distance part = length.times(1.0 / parts);
    List<RhumbLeg> legs = new ArrayList<>(parts);
    for (int i = 0; i < parts; i++) {
      legs.add(new RhumbLeg(ellipsoid, ends.get(i), ends.get(i + 1), course, part));
    }
    return Collections.unmodifiableList(legs);
  }

  @Override
  public RhumbLeg reverse() {
    TrueBearing back = length.metres() == 0.0 ? course : course.reciprocal();
    return new RhumbLeg(ellipsoid, end, start, back, length);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RhumbLeg that
        && ellipsoid.equals(that.ellipsoid)
        && start.equals(that.start)
        && end.equals(that.end)
        && course.equals(that.course)
        && length.equals(that.length);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * start.hashCode() + end.hashCode()) + length.hashCode();
  }

  /** Ends, course and length, and the ellipsoid if it is not WGS84; without loss. */
  @Override
  public String toString() {
    return "rhumb line from "
        + start
        + " to "
        + end
        + ", "
        + course
        + ", "
        + length
        + LegParts.named(ellipsoid);
  }
}
