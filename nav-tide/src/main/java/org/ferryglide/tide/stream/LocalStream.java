package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.EpochSeconds;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;

/**
 * The stream at one place, asked about its times: slack windows, turns, the strongest of a day,
 * hours that help, hours of wind against stream.
 *
 * <p>The stream is looked at every minute unless told otherwise; what begins and ends between two
 * looks is not seen. Begins and ends are then found to half a second, which is far closer than any
 * prediction is true.
 *
 * <pre>{@code
 * LocalStream here = LocalStream.of(stream, position);
 * List<StreamWindow> slack = here.slackWindows(from, to, Speed.ofKnots(0.5));
 * List<StreamTurn> turns = here.turns(from, to);
 * }</pre>
 */
public final class LocalStream implements Serializable {
  private static final long serialVersionUID = 1L;

  /** A search of more looks than this is refused. */
  private static final int MOST_LOOKS = 20_000_000;

  @SuppressWarnings("serial") // the fields of this library are serializable
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
    return new LocalStream(field, position, every.getSeconds() + every.getNano() * 1e-9);
  }

  /**
   * When the rate is at or below a limit.
   *
   * @param from begin of the search
   * @param to end of the search, after {@code from}
   * @param limit the rate not to be exceeded
   * @return the windows in order; none if the stream is always faster, as rotary streams can be:
   *     then {@link #leastRates} says when it is least
   * @throws IllegalArgumentException if the search is empty or has too many looks
   */
  public List<StreamWindow> slackWindows(Instant from, Instant to, Speed limit) {
    double squared = limit.metresPerSecond() * limit.metresPerSecond();
    return series(from, to).windows((t, east, north) -> east * east + north * north <= squared);
  }

  /**
   * When the stream helps along a track.
   *
   * @param from begin of the search
   * @param to end of the search, after {@code from}
   * @param track the direction of travel over the ground
   * @param atLeast how much along the track it must give; with zero, any help counts
   * @return the windows in order
   * @throws IllegalArgumentException if the search is empty or has too many looks
   */
  public List<StreamWindow> helpingWindows(
      Instant from, Instant to, TrueBearing track, Speed atLeast) {
    double sine = Math.sin(Math.toRadians(track.degrees()));
    double cosine = Math.cos(Math.toRadians(track.degrees()));
    double least = atLeast.metresPerSecond();
    return series(from, to)
        .windows(
            (t, east, north) -> {
              double along = east * sine + north * cosine;
              return along > 0.0 && along >= least;
            });
  }

  /**
   * When the wind blows against the stream.
   *
   * @param from begin of the search
   * @param to end of the search, after {@code from}
   * @param wind the wind
   * @param thresholds from when on it matters
   * @return the windows in order; where there is no wind to be had, none
   * @throws IllegalArgumentException if the search is empty or has too many looks
   */
  public List<StreamWindow> windAgainstStream(
      Instant from, Instant to, WindField wind, WindAgainstStream thresholds) {
    double[] air = new double[2];
    return series(from, to)
        .windows(
            (t, east, north) ->
                wind.sample(position.latitudeDegrees(), position.longitudeDegrees(), t, air, 0)
                    && thresholds.isMetBy(air[0], air[1], east, north));
  }

  /**
   * When the stream turns, and where it goes after.
   *
   * @param from begin of the search
   * @param to end of the search, after {@code from}
   * @return the turns in order
   * @throws IllegalArgumentException if the search is empty or has too many looks
   */
  public List<StreamTurn> turns(Instant from, Instant to) {
    return new StreamTurns(series(from, to)).turns();
  }

  /**
   * When the rate is least between two greater ones: slack, or in a rotary stream the least there
   * is.
   *
   * @param from begin of the search
   * @param to end of the search, after {@code from}
   * @return the moments in order
   * @throws IllegalArgumentException if the search is empty or has too many looks
   */
  public List<StreamMoment> leastRates(Instant from, Instant to) {
    return new StreamTurns(series(from, to)).leastRates();
  }

  /**
   * When the stream is strongest.
   *
   * @param from begin of the search
   * @param to end of the search, after {@code from}
   * @return the first moment of the greatest rate; empty if there are no data at all
   * @throws IllegalArgumentException if the search is empty or has too many looks
   */
  public Optional<StreamMoment> strongest(Instant from, Instant to) {
    StreamSeries series = series(from, to);
    int strongest = -1;
    for (int i = 0; i < series.count(); i++) {
      if (series.hasData(i)
          && (strongest < 0 || series.rateSquared(i) > series.rateSquared(strongest))) {
        strongest = i;
      }
    }
    return strongest < 0
        ? Optional.empty()
        : Optional.of(series.moment(series.extremeNear(strongest, 1.0)));
  }

  /**
   * When the stream is strongest on a day.
   *
   * @param day the day
   * @param zone the zone whose midnight begins and ends it
   * @return the first moment of the greatest rate; empty if there are no data at all
   */
  public Optional<StreamMoment> strongestOfDay(LocalDate day, ZoneId zone) {
    return strongest(
        day.atStartOfDay(zone).toInstant(), day.plusDays(1).atStartOfDay(zone).toInstant());
  }

  private StreamSeries series(Instant from, Instant to) {
    if (!from.isBefore(to)) {
      throw new IllegalArgumentException(
          "a search must end after it begins at " + from + ", but ended at " + to);
    }
    double start = EpochSeconds.of(from);
    double end = EpochSeconds.of(to);
    if ((end - start) / stepSeconds > MOST_LOOKS) {
      throw new IllegalArgumentException(
          "a search must have at most "
              + MOST_LOOKS
              + " looks, but from "
              + from
              + " to "
              + to
              + " every "
              + stepSeconds
              + " s had more");
    }
    return new StreamSeries(
        field, position.latitudeDegrees(), position.longitudeDegrees(), start, end, stepSeconds);
  }

  /** The stream and the place. */
  @Override
  public String toString() {
    return field + " at " + position;
  }
}
