package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * The path a craft takes over the ground, as a function of time.
 *
 * <p>It is what dangers are to be checked against: with a constant heading it is not the line of
 * the leg. Between its {@link #points} it is a cubic in time that keeps the speed over the ground
 * at both ends of each segment; segments end where the stream has its break points and otherwise
 * last ten minutes at most, except in a stream that is the same everywhere, where a segment may
 * last from one break point to the next.
 *
 * <pre>{@code
 * GroundTrack track = steered.groundTrack();
 * Position halfWay = track.at(track.start().plusSeconds(1800));
 * double farthestRight = track.greatestCrossTrack(leg).metres();
 * }</pre>
 */
public final class GroundTrack implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Where {@link #at(double, double[], int)} writes the latitude, degrees, after the offset. */
  public static final int LATITUDE = 0;

  /** Where {@link #at(double, double[], int)} writes the longitude, degrees, after the offset. */
  public static final int LONGITUDE = 1;

  /** Where {@link #at(double, double[], int)} writes the heading, degrees true. */
  public static final int HEADING = 2;

  /** How many figures {@link #at(double, double[], int)} writes. */
  public static final int FIGURES = 3;

  private static final int WIDTH = TrackRecorder.WIDTH;

  /** Motions that differ by no more than this share are one but for rounding. */
  private static final double SAME_MOTION = 1e-6;

  /** Motions that differ by more differ in metres too, not only in degrees at another latitude. */
  private static final double SIMILAR_MOTION = 1e-2;

  private final double[] rows;
  private final int segments;

  /** A track over the first rows of an array that may hold more. */
  GroundTrack(double[] rows, int segments) {
    this.rows = rows;
    this.segments = segments;
  }

  /**
   * When the track starts.
   *
   * @return the departure
   */
  public Instant start() {
    return EpochSeconds.toInstant(rows[0]);
  }

  /**
   * When the track ends.
   *
   * @return the arrival
   */
  public Instant end() {
    return EpochSeconds.toInstant(endSeconds());
  }

  /**
   * When the track starts, for kernels.
   *
   * @return seconds since 1970-01-01T00:00:00Z
   */
  public double startSeconds() {
    return rows[0];
  }

  /**
   * When the track ends, for kernels.
   *
   * @return seconds since 1970-01-01T00:00:00Z
   */
  public double endSeconds() {
    return rows[segments * WIDTH];
  }

  int segments() {
    return segments;
  }

  /** Whether the craft holds its place for the time of a segment. */
  boolean isWait(int segment) {
    return timeOf(segment + 1) > timeOf(segment)
        && latitudeOf(segment) == latitudeOf(segment + 1)
        && longitudeOf(segment) == longitudeOf(segment + 1);
  }

  double timeOf(int point) {
    return rows[point * WIDTH];
  }

  /** Copies the rows of all segments, without the end. */
  void copySegments(double[] target, int offset) {
    System.arraycopy(rows, 0, target, offset, segments() * WIDTH);
  }

  /**
   * Latitude, unwrapped longitude and their rates in degrees a second, part of the way along a
   * segment.
   */
  void motionAt(int segment, double part, double[] out) {
    int at = segment * WIDTH;
    double span = rows[at + WIDTH] - rows[at];
    for (int i = 0; i < 2; i++) {
      double from = rows[at + 1 + i];
      double to = rows[at + WIDTH + 1 + i];
      double fromRate = rows[at + 3 + i];
      double toRate = rows[at + 5 + i];
      out[i] = HermiteCubic.value(part, span, from, to, fromRate, toRate);
      out[2 + i] = HermiteCubic.rate(part, span, from, to, fromRate, toRate);
    }
  }

  /** Latitude and unwrapped longitude alone. */
  void placeAt(int segment, double part, double[] out) {
    out[0] = coordinateAt(segment, part, 1);
    out[1] = coordinateAt(segment, part, 2);
  }

  /** Latitude (1) or unwrapped longitude (2) of a part of a segment. */
  private double coordinateAt(int segment, double part, int which) {
    if (segments() == 0) {
      return rows[which];
    }
    int at = segment * WIDTH;
    return HermiteCubic.value(
        part,
        rows[at + WIDTH] - rows[at],
        rows[at + which],
        rows[at + WIDTH + which],
        rows[at + which + 2],
        rows[at + which + 4]);
  }

  /** Whether a segment begins at the motion with which the one before it ended. */
  boolean goesOnAlike(int segment) {
    if (segment == 0) {
      return false;
    }
    int at = segment * WIDTH;
    double change =
        Math.abs(rows[at + 3] - rows[at - WIDTH + 5])
            + Math.abs(rows[at + 4] - rows[at - WIDTH + 6]);
    return change <= SAME_MOTION * (Math.abs(rows[at + 3]) + Math.abs(rows[at + 4]));
  }

  /** Whether a segment ends with nearly the motion with which it began. */
  boolean hardlyTurns(int segment) {
    int at = segment * WIDTH;
    double change = Math.abs(rows[at + 5] - rows[at + 3]) + Math.abs(rows[at + 6] - rows[at + 4]);
    return change <= SIMILAR_MOTION * (Math.abs(rows[at + 3]) + Math.abs(rows[at + 4]));
  }

  double latitudeOf(int point) {
    return rows[point * WIDTH + 1];
  }

  double longitudeOf(int point) {
    return Earth.longitude(rows[point * WIDTH + 2]);
  }

  double headingOf(int point) {
    return rows[point * WIDTH + 7];
  }

  /**
   * The points at which the segments of the track begin, and its end.
   *
   * @return the points in order of time, at least one; unmodifiable
   */
  public List<TrackPoint> points() {
    List<TrackPoint> points = new ArrayList<>();
    for (int i = 0; i <= segments(); i++) {
      points.add(point(i));
    }
    return Collections.unmodifiableList(points);
  }

  /** The point at which a segment begins; of the number of segments, the end. */
  TrackPoint point(int segment) {
    int at = segment * WIDTH;
    return new TrackPoint(
        EpochSeconds.toInstant(rows[at]),
        Earth.position(rows[at + 1], rows[at + 2]),
        TrueBearing.ofDegrees(rows[at + 7]));
  }

  /**
   * Points at even steps of time, and the end. The position is that of the time; the heading is
   * that at which the segment of the track was begun, which with the track held may be up to ten
   * minutes old: {@link CurrentTriangle} has the one of the moment.
   *
   * @param stepSeconds time between points, seconds, above 0
   * @return the points in order of time; unmodifiable
   * @throws IllegalArgumentException if the step is not above 0, or gives more than a million
   *     points
   */
  public List<TrackPoint> pointsEvery(double stepSeconds) {
    double duration = endSeconds() - startSeconds();
    if (!(stepSeconds > 0.0 && duration / stepSeconds < 1e6)) { // written so that NaN fails
      throw new IllegalArgumentException(
          "step must be above 0 seconds and give fewer than 1000000 points, but was "
              + stepSeconds);
    }
    List<TrackPoint> points = new ArrayList<>();
    for (int i = 0; i * stepSeconds < duration; i++) {
      points.add(pointAt(startSeconds() + i * stepSeconds));
    }
    points.add(pointAt(endSeconds()));
    return Collections.unmodifiableList(points);
  }

  private TrackPoint pointAt(double time) {
    return new TrackPoint(
        EpochSeconds.toInstant(time),
        positionAt(time),
        TrueBearing.ofDegrees(headingOf(segmentAt(time))));
  }

  /**
   * Where the craft is at a time.
   *
   * @param instant when
   * @return the position
   * @throws IllegalArgumentException if the time is before the start or after the end
   */
  public Position at(Instant instant) {
    double time = EpochSeconds.of(instant);
    // an instant holds microseconds, so that the end itself may come back a little late
    if (!(time >= startSeconds() - 1e-6 && time <= endSeconds() + 1e-6)) {
      throw new IllegalArgumentException(
          "time must be in [" + start() + ", " + end() + "], but was " + instant);
    }
    return positionAt(time);
  }

  /**
   * Where the craft is at a time and where its bow points, without allocation.
   *
   * @param epochSeconds when, seconds since 1970-01-01T00:00:00Z; before the start or after the end
   *     the craft is taken to lie there
   * @param out receives latitude and longitude, degrees, the latter in [-180, 180), then the
   *     heading at which the segment of the track was begun, degrees true, which with the track
   *     held may be up to ten minutes old; NaN for a time that is NaN
   * @param offset index of the latitude; the others follow it
   */
  public void at(double epochSeconds, double[] out, int offset) {
    at(segmentAt(epochSeconds), epochSeconds, out, offset);
  }

  /**
   * Places and headings at times in order, faster than one by one.
   *
   * @param epochSeconds times in order, seconds since 1970-01-01T00:00:00Z; those outside the track
   *     count as its start or end
   * @param from index of the first time
   * @param until index after the last
   * @param out receives {@link #FIGURES} for each time, as {@link #at(double, double[], int)}
   * @param offset where they begin in {@code out}
   */
  public void atEach(double[] epochSeconds, int from, int until, double[] out, int offset) {
    int segment = from < until ? segmentAt(epochSeconds[from]) : 0;
    int at = offset;
    for (int i = from; i < until; i++) {
      double time = epochSeconds[i];
      while (segment + 1 < segments() && rows[(segment + 1) * WIDTH] <= time) {
        segment++;
      }
      at(segment, time, out, at);
      at += FIGURES;
    }
  }

  private void at(int segment, double epochSeconds, double[] out, int offset) {
    double part = part(segment, epochSeconds);
    out[offset + LATITUDE] = coordinateAt(segment, part, 1);
    out[offset + LONGITUDE] = Earth.longitude(coordinateAt(segment, part, 2));
    out[offset + HEADING] =
        Double.isNaN(epochSeconds) ? Double.NaN : Angles.reduced(headingOf(segment));
  }

  /**
   * When the segments of the track begin, and its end: between these the track is smooth.
   *
   * @return seconds since 1970-01-01T00:00:00Z, in order, at least one
   */
  public double[] segmentTimes() {
    double[] times = new double[segments() + 1];
    for (int i = 0; i < times.length; i++) {
      times[i] = timeOf(i);
    }
    return times;
  }

  /** Latitude and unwrapped longitude at a time; returns the segment. */
  int place(double time, double[] place) {
    int segment = segmentAt(time);
    double part = part(segment, time);
    place[0] = coordinateAt(segment, part, 1);
    place[1] = coordinateAt(segment, part, 2);
    return segment;
  }

  /** Where the craft is at a time in seconds; before the start or after the end it lies there. */
  Position positionAt(double time) {
    double[] place = new double[2];
    place(time, place);
    return Earth.position(place[0], place[1]);
  }

  /** The segment of a time; the first before the start, the last after the end. */
  int segmentAt(double time) {
    int low = 0;
    int high = segments();
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (rows[middle * WIDTH] <= time) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The part of a segment that is over at a time, in [0, 1]. */
  private double part(int segment, double time) {
    if (segments() == 0) {
      return 0.0;
    }
    int at = segment * WIDTH;
    double span = rows[at + WIDTH] - rows[at];
    // a step that ends on the end of a leg leaves a last segment that takes no time
    return span > 0.0 ? Math.min(1.0, Math.max(0.0, (time - rows[at]) / span)) : 0.0;
  }

  /**
   * The greatest cross-track distance from a leg, the first of several that are equal; to about a
   * metre at 5 NM off.
   *
   * @param leg the leg
   * @return the distance from the line of the leg, to the right of start to end positive
   */
  public Distance greatestCrossTrack(Leg leg) {
    LegFrame frame = new LegFrame(leg);
    double[] place = new double[2];
    place(FarthestOff.time(this, frame), place);
    return Distance.ofMetres(frame.crossTrackMetres(place[0], place[1]));
  }

  /**
   * When the craft is farthest from a leg; {@link #at(Instant)} tells where that is.
   *
   * @param leg the leg
   * @return the time of {@link #greatestCrossTrack}
   */
  public Instant timeOfGreatestCrossTrack(Leg leg) {
    return EpochSeconds.toInstant(FarthestOff.time(this, new LegFrame(leg)));
  }

  @Override
  public boolean equals(Object other) {
    if (!(other instanceof GroundTrack that) || segments != that.segments) {
      return false;
    }
    for (int i = 0; i < (segments + 1) * WIDTH; i++) {
      if (Double.doubleToLongBits(rows[i]) != Double.doubleToLongBits(that.rows[i])) {
        return false;
      }
    }
    return true;
  }

  @Override
  public int hashCode() {
    int hash = 1;
    for (int i = 0; i < (segments + 1) * WIDTH; i++) {
      hash = 31 * hash + Double.hashCode(rows[i]);
    }
    return hash;
  }

  @Override
  public String toString() {
    return "ground track of " + (segments() + 1) + " points from " + start() + " to " + end();
  }
}
