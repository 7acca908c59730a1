package org.ferryglide.tide.stream;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.Explanation;
import org.ferryglide.nav.water.StreamField;

/**
 * The stream at one place as a function of time: a station, a pilot's remark, a rule of thumb.
 *
 * <p>Asked as a field it answers the same wherever it is asked, so use it as one only near its
 * place; {@link StationField} gives curves a place and a reach.
 *
 * <pre>{@code
 * Optional<Velocity> atNine = curve.at(Instant.parse("2026-06-01T09:00:00Z"));
 * }</pre>
 */
public interface StreamCurve extends StreamField {

  /**
   * The stream at a time, without allocation.
   *
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @param eastNorth receives the east and north components, metres a second; untouched if there
   *     are no data
   * @param offset index of the east component; the north one follows it
   * @return false if there are no data for that time, or it is NaN
   */
  boolean sample(double epochSeconds, double[] eastNorth, int offset);

  /**
   * The stream at many times, without allocation.
   *
   * @param epochSeconds times in any order, seconds since 1970-01-01T00:00:00Z
   * @param from index of the first time
   * @param until index after the last time
   * @param eastNorth receives the east and north components at each time in turn, metres a second,
   *     NaN where there are no data
   * @param offset index of the first east component
   * @throws IndexOutOfBoundsException if {@code from} and {@code until} are not a range of {@code
   *     epochSeconds}, or {@code eastNorth} has no room for them
   */
  default void sampleAll(
      double[] epochSeconds, int from, int until, double[] eastNorth, int offset) {
    Objects.checkFromToIndex(from, until, epochSeconds.length);
    Objects.checkFromIndexSize(offset, 2 * (until - from), eastNorth.length);
    for (int i = from; i < until; i++) {
      int at = offset + 2 * (i - from);
      if (!sample(epochSeconds[i], eastNorth, at)) {
        eastNorth[at + EAST] = Double.NaN;
        eastNorth[at + NORTH] = Double.NaN;
      }
    }
  }

  /**
   * The stream at even steps of time, without allocation. Curves that can do this faster than one
   * by one override it; times are {@code startSeconds + i * stepSeconds}.
   *
   * @param startSeconds time of the first, seconds since 1970-01-01T00:00:00Z
   * @param stepSeconds time from one to the next, seconds
   * @param count how many
   * @param eastNorth receives the east and north components of each in turn, metres a second, NaN
   *     where there are no data
   * @param offset index of the first east component
   * @throws IndexOutOfBoundsException if {@code eastNorth} has no room for them
   */
  default void sampleEvenly(
      double startSeconds, double stepSeconds, int count, double[] eastNorth, int offset) {
    Objects.checkFromIndexSize(offset, 2 * count, eastNorth.length);
    for (int i = 0; i < count; i++) {
      int at = offset + 2 * i;
      if (!sample(startSeconds + i * stepSeconds, eastNorth, at)) {
        eastNorth[at] = Double.NaN;
        eastNorth[at + 1] = Double.NaN;
      }
    }
  }

  /** The same wherever it is asked; NaN for a place that is NaN. */
  @Override
  default void sampleEvenly(
      double latitudeDegrees,
      double longitudeDegrees,
      double startSeconds,
      double stepSeconds,
      int count,
      double[] eastNorth,
      int offset) {
    // no time is NaN only by itself: a place that is NaN makes it so
    boolean nowhere = Double.isNaN(latitudeDegrees + longitudeDegrees);
    double start = nowhere ? Double.NaN : startSeconds;
    sampleEvenly(start, stepSeconds, count, eastNorth, offset);
  }

  /**
   * The stream at a time.
   *
   * @param instant when
   * @return where the water goes; empty if there are no data for that time
   */
  default Optional<Velocity> at(Instant instant) {
    double[] eastNorth = new double[2];
    return sample(EpochSeconds.of(instant), eastNorth, 0)
        ? Optional.of(Velocity.ofEastAndNorth(eastNorth[0], eastNorth[1]))
        : Optional.empty();
  }

  /**
   * How the answer at a time comes about.
   *
   * @param instant when
   * @return source and notes; without sources where there are no data
   */
  Explanation explain(Instant instant);

  @Override
  default boolean sample(
      double latitudeDegrees,
      double longitudeDegrees,
      double epochSeconds,
      double[] eastNorth,
      int offset) {
    return !Double.isNaN(latitudeDegrees + longitudeDegrees)
        && sample(epochSeconds, eastNorth, offset);
  }

  /**
   * How the answer comes about; if the curve has a position and {@code position} is farther from it
   * than half of {@link StationField#USUAL_REACH}, with the caution {@code
   * stream.far-from-station}.
   */
  @Override
  default Explanation explain(Position position, Instant instant) {
    Explanation here = explain(instant);
    double metres =
        position().map(own -> RhumbLeg.between(own, position).length().metres()).orElse(0.0);
    if (!(metres > 0.5 * StationField.USUAL_REACH.metres())) {
      return here;
    }
    List<Note> notes = new ArrayList<>(here.notes());
    notes.add(StreamFlags.farFromStation(source(), metres));
    return new Explanation(here.sources(), notes);
  }

  @Override
  default boolean isUniform() {
    return true;
  }

  /**
   * A rule of thumb about two slacks and the maximum between them; its notes say that it is one.
   *
   * @param shape the rule
   * @param slackBefore when the stream begins
   * @param strongest when it is strongest; halfway unless something better is known
   * @param slackAfter when it ends
   * @param set where it goes
   * @param maximum its greatest rate
   * @return the curve; no data before {@code slackBefore} and after {@code slackAfter}
   * @throws IllegalArgumentException if the times are not in order
   */
  static StreamCurve ofRule(
      FlowShape shape,
      Instant slackBefore,
      Instant strongest,
      Instant slackAfter,
      TrueBearing set,
      Speed maximum) {
    return CurrentCurve.ofRule(shape, slackBefore, strongest, slackAfter, set, maximum);
  }
}
