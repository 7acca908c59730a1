package org.ferryglide.nav.geodesy;

import java.io.Serializable;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Arguments;
import org.ferryglide.nav.position.Position;

/**
 * A leg of one true course on the WGS84 ellipsoid: straight on a Mercator chart.
 *
 * <pre>{@code
 * RhumbLeg leg = RhumbLeg.between(landing, island);
 * TrueBearing course = leg.course();
 * RhumbLeg out = RhumbLeg.from(landing, TrueBearing.ofDegrees(75), Distance.ofNauticalMiles(5));
 * }</pre>
 *
 * <p>Between points 180° of longitude apart the leg goes east. A leg to or from a pole runs along a
 * meridian.
 */
public final class RhumbLeg implements Leg, Serializable {

  private static final long serialVersionUID = 1L;

  private final Position start;
  private final Position end;
  private final TrueBearing course;
  private final Distance length;

  private RhumbLeg(Position start, Position end, TrueBearing course, Distance length) {
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
   * @return the leg
   */
  public static RhumbLeg between(Position start, Position end) {
    double[] answer = new double[2];
    RhumbLines.inverse(
        start.latitudeDegrees(),
        start.longitudeDegrees(),
        end.latitudeDegrees(),
        end.longitudeDegrees(),
        answer,
        0);
    return new RhumbLeg(start, end, new TrueBearing(answer[0]), Distance.ofMetres(answer[1]));
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
    Arguments.notNegative(length.metres(), "length of a leg", "metres");
    return new RhumbLeg(start, RhumbLine.from(start, course).pointAt(length), course, length);
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
   * @return the course; true north if the leg has no length
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
    return course;
  }

  @Override
  public RhumbLine line() {
    return RhumbLine.from(start, course);
  }

  @Override
  public RhumbLeg reverse() {
    TrueBearing back = length.metres() == 0.0 ? course : course.reciprocal();
    return new RhumbLeg(end, start, back, length);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RhumbLeg that
        && start.equals(that.start)
        && end.equals(that.end)
        && course.equals(that.course)
        && length.equals(that.length);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * start.hashCode() + end.hashCode()) + length.hashCode();
  }

  /** Ends, course and length, without loss. */
  @Override
  public String toString() {
    return "rhumb line from " + start + " to " + end + ", " + course + ", " + length;
  }
}
