package org.ferryglide.nav.water;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
import org.ferryglide.nav.position.Position;

/**
 * The stream at one place, asked about its times: slack waters, slack windows, turns, the strongest
 * of a day, hours that help, hours of wind against stream. Every answer says what part of the time
 * asked it could see, so that "no data" is never taken for "never".
 *
 * <p>The stream is looked at every minute by default; what starts and ends between two looks is not
 * seen. Starts and ends are then found to half a second, which is far closer than any prediction
 * comes true.
 *
 * <pre>{@code
 * LocalStream here = LocalStream.of(stream, position);
 * Found<Window> slack = here.slackWindows(Speed.ofKnots(0.5), from, until);
 * Found<StreamTurn> turns = here.turns(from, until);
 * }</pre>
 */
public final class LocalStream implements Serializable {
  private static final long serialVersionUID = 1L;

  /** A search of more looks than this is refused. */
  private static final int MOST_LOOKS = 20_000_000;

  private final StreamField field;

  private final Position position;
  private final double stepSeconds;

  private LocalStream(StreamField field, Position position, double stepSeconds) {
    this.field = field;
    this.position = position;
    this.stepSeconds = stepSeconds;
  }

  /**
   * Looks at a stream from a place, every minute.
   *
   * @param field the stream
   * @param position the place
   * @return the stream there
   */
  public static LocalStream of(StreamField field, Position position) {
    return new LocalStream(field, position, 60.0);
  }

  /**
   * The same stream looked at more or less often.
   *
   * @param every time between two looks, above zero
   * @return a changed copy
   * @throws IllegalArgumentException if {@code every} is not above zero
   */
  public LocalStream withLooksEvery(Duration every) {
    if (every.isZero() || every.isNegative()) {
      throw new IllegalArgumentException(
          "time between two looks must be above zero, but was " + every);
    }
    return new LocalStream(field, position, Seconds.of(every));
  }

  /**
   * When the rate is at or below a limit.
   *
   * @param limit the rate not to be exceeded
   * @param from start of the search
   * @param until end of the search, after {@code from}
   * @return the windows in order; none if the stream is always faster, as rotary streams can be:
   *     then {@link #slackWaters} says when it is least
   * @throws IllegalArgumentException if the search is empty or has too many looks
   */
  public Found<Window> slackWindows(Speed limit, Instant from, Instant until) {
    double squared = limit.metresPerSecond() * limit.metresPerSecond();
    return windows((t, east, north) -> east * east + north * north <= squared, from, until);
  }

  /**
   * When the stream helps along a track.
   *
   * @param track the direction of travel over the ground
   * @param atLeast how much along the track it must give; with zero, any help counts
   * @param from start of the search
   * @param until end of the search, after {@code from}
   * @return the windows in order
   * @throws IllegalArgumentException if the search is empty or has too many looks
   */
  public Found<Window> helpingWindows(
      TrueBearing track, Speed atLeast, Instant from, Instant until) {
    double sine = Math.sin(Math.toRadians(track.degrees()));
    double cosine = Math.cos(Math.toRadians(track.degrees()));
    double least = atLeast.metresPerSecond();
    return windows(
        (t, east, north) -> {
          double along = east * sine + north * cosine;
          return along > 0.0 && along >= least;
        },
        from,
        until);
  }

  /**
   * When the wind blows against the stream.
   *
   * @param wind the wind
   * @param thresholds from when on it matters
   * @param from start of the search
   * @param until end of the search, after {@code from}
   * @return the windows in order; only times with data of both stream and wind are seen
   * @throws IllegalArgumentException if the search is empty or has too many looks
   */
  public Found<Window> windAgainstStream(
      WindField wind, WindAgainstStream thresholds, Instant from, Instant until) {
    double latitude = position.latitudeDegrees();
    double longitude = position.longitudeDegrees();
    double[] air = new double[2];
    StreamSeries series = series(from, until);
    series.see((t, east, north) -> wind.sample(latitude, longitude, t, air, 0));
    return answer(
        series.windows(
            (t, east, north) ->
                wind.sample(latitude, longitude, t, air, 0)
                    && thresholds.isMetBy(air[0], air[1], east, north)),
        Window::from,
        series);
  }

  /**
   * When the stream turns, and where it goes after.
   *
   * @param from start of the search
   * @param until end of the search, after {@code from}
   * @return the turns in order
   * @throws IllegalArgumentException if the search is empty or has too many looks
   */
  public Found<StreamTurn> turns(Instant from, Instant until) {
    StreamSeries series = series(from, until);
    return answer(new StreamTurns(series).turns(), StreamTurn::time, series);
  }

  /**
   * Slack waters: when the rate is least between two greater ones. A rotary stream never stands
   * still; its least rate is given. Slack water is found from the stream itself, not from high or
   * low water, with which it seldom agrees.
   *
   * @param from start of the search
   * @param until end of the search, after {@code from}
   * @return the moments in order; where the rate is least for a while, its middle. Least rates at
   *     the very ends of the time or of the data are not slack waters
   * @throws IllegalArgumentException if the search is empty or has too many looks
   */
  public Found<StreamMoment> slackWaters(Instant from, Instant until) {
    StreamSeries series = series(from, until);
    return answer(new StreamTurns(series).leastRates(), StreamMoment::time, series);
  }

  /**
   * When the stream is strongest.
   *
   * @param from start of the search
   * @param until end of the search, after {@code from}
   * @return the first moment of the greatest rate that was seen; none if there are no data at all
   * @throws IllegalArgumentException if the search is empty or has too many looks
   */
  public Found<StreamMoment> strongest(Instant from, Instant until) {
    StreamSeries series = series(from, until);
    int strongest = -1;
    for (int i = 0; i < series.count(); i++) {
      if (series.hasData(i)
          && (strongest < 0 || series.rateSquared(i) > series.rateSquared(strongest))) {
        strongest = i;
      }
    }
    List<StreamMoment> moments =
        strongest < 0 ? List.of() : List.of(series.moment(series.extremeNear(strongest, 1.0)));
    return answer(moments, StreamMoment::time, series);
  }

  /**
   * When the stream is strongest on a day.
   *
   * @param day the day
   * @param zone the zone whose midnight begins and ends it
   * @return the first moment of the greatest rate that was seen; none if there are no data at all
   */
  public Found<StreamMoment> strongestOfDay(LocalDate day, ZoneId zone) {
    return strongest(
        day.atStartOfDay(zone).toInstant(), day.plusDays(1).atStartOfDay(zone).toInstant());
  }

  private Found<Window> windows(StreamSeries.Test test, Instant from, Instant until) {
    StreamSeries series = series(from, until);
    return answer(series.windows(test), Window::from, series);
  }

  /** The items with the doubts about the stream at each of them, each kind of doubt once. */
  private <T extends Serializable> Found<T> answer(
      List<T> items, Function<T, Instant> time, StreamSeries series) {
    Map<String, Note> doubts = new LinkedHashMap<>();
    for (T item : items) {
      for (Note note : field.explain(position, time.apply(item)).notes()) {
        if (note.severity() != Severity.INFORMATION) {
          doubts.putIfAbsent(note.code(), note);
        }
      }
    }
    return Found.of(items, series.asked(), series.seen(), List.copyOf(doubts.values()));
  }

  private StreamSeries series(Instant from, Instant until) {
    if (!from.isBefore(until)) {
      throw new IllegalArgumentException(
          "a search must end after it begins at " + from + ", but ended at " + until);
    }
    if ((EpochSeconds.of(until) - EpochSeconds.of(from)) / stepSeconds > MOST_LOOKS) {
      throw new IllegalArgumentException(
          "a search must have at most "
              + MOST_LOOKS
              + " looks, but from "
              + from
              + " to "
              + until
              + " every "
              + stepSeconds
              + " s had more");
    }
    return new StreamSeries(field, position, TimeSpan.of(from, until), stepSeconds);
  }

  /** The stream and the place. */
  @Override
  public String toString() {
    return field.source() + " at " + position;
  }
}
