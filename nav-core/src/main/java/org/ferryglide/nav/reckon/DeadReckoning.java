package org.ferryglide.nav.reckon;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.water.StreamField;

/**
 * Where a log of headings, speeds and times leads: the dead-reckoned position by log and compass,
 * and the estimated position with leeway and stream.
 *
 * <p>Each entry is reckoned along a rhumb line on the ellipsoid; the stream is taken at the craft's
 * own place and time by the midpoint of steps of at most a minute that stop at the break points of
 * the field, so that a stream steady or changing evenly with time is exact, and one that changes
 * with place is right to a few parts in a million of the run.
 *
 * <pre>{@code
 * DeadReckoning reckoning = DeadReckoning.of(slip, log, noon, streamField);
 * reckoning.deadReckoning(); // by log and compass
 * reckoning.estimated(); // with leeway and stream, if the stream was known all the way
 * reckoning.estimatedPosition(EstimatedPosition.exactly(slip), ErrorModel.usual());
 * List<ReckonedPoint> plot = reckoning.trackEvery(Duration.ofMinutes(15));
 * }</pre>
 */
public final class DeadReckoning implements Serializable {

  private static final long serialVersionUID = 1L;

  private final Instant start;
  private final Instant end;
  private final List<ReckonedPoint> corners;
  private final List<ReckonedPoint> steps;
  private final List<SteadyRun> runs;

  private DeadReckoning(
      Instant start,
      Instant end,
      List<ReckonedPoint> corners,
      List<ReckonedPoint> steps,
      List<SteadyRun> runs) {
    this.start = start;
    this.end = end;
    this.corners = List.copyOf(corners);
    this.steps = List.copyOf(steps);
    this.runs = List.copyOf(runs);
  }

  /**
   * Reckons from a log.
   *
   * @param position where the first entry begins
   * @param log the entries in order of time, at least one
   * @param end when the last entry ends, not before it begins
   * @param stream the stream; {@link StreamField#slack} for still water
   * @return the reckoning
   * @throws IllegalArgumentException if the log is empty or out of order, or ends before its last
   *     entry
   */
  public static DeadReckoning of(
      Position position, List<LogEntry> log, Instant end, StreamField stream) {
    List<LogEntry> entries = List.copyOf(log);
    if (entries.isEmpty()) {
      throw new IllegalArgumentException("a log needs at least one entry");
    }
    ReckoningWalk walk = new ReckoningWalk(position, entries.get(0).time(), stream);
    List<ReckonedPoint> corners = new ArrayList<>();
    corners.add(walk.point());
    for (int i = 0; i < entries.size(); i++) {
      Instant until = i + 1 < entries.size() ? entries.get(i + 1).time() : end;
      if (until.isBefore(entries.get(i).time())) {
        throw new IllegalArgumentException(
            "log must be in order of time, but "
                + entries.get(i).time()
                + " was followed by "
                + until);
      }
      walk.sail(entries.get(i), until);
      corners.add(walk.point());
    }
    return new DeadReckoning(entries.get(0).time(), end, corners, walk.steps(), walk.runs());
  }

  /**
   * Reckons along a leg as it was steered: every five minutes the water track and the speed through
   * the water that it asks for, leeway and drift down the wind in them. The estimated position ends
   * at the end of the leg within a ten-thousandth of its length, measured on legs of up to 6 NM;
   * the dead-reckoned one, where log and compass alone would have it.
   *
   * @param leg the steered leg, longer than nothing
   * @param stream the stream that it was steered in
   * @return the reckoning
   * @throws IllegalArgumentException if the leg has no length, or as {@link SteadyRun#along}
   *     refuses
   */
  public static DeadReckoning along(SteeredLeg leg, StreamField stream) {
    List<LogEntry> log = new ArrayList<>();
    Duration gone = Duration.ZERO;
    for (SteadyRun run : SteadyRun.along(leg, stream)) {
      log.add(LogEntry.of(leg.departure().plus(gone), run.waterTrack(), run.speed()));
      gone = gone.plus(run.duration());
    }
    return of(leg.leg().start(), log, leg.arrival(), stream);
  }

  /**
   * The positions at the start, at each later entry and at the end.
   *
   * @return points in order of time; unmodifiable
   */
  public List<ReckonedPoint> track() {
    return corners;
  }

  /**
   * Positions at even times, as one would plot them.
   *
   * @param every the time between two points, above 0
   * @return points from the start on, the end included; unmodifiable
   * @throws IllegalArgumentException if {@code every} is not above 0
   */
  public List<ReckonedPoint> trackEvery(Duration every) {
    if (every.isNegative() || every.isZero()) {
      throw new IllegalArgumentException("time between points must be above 0, but was " + every);
    }
    List<ReckonedPoint> points = new ArrayList<>();
    for (Instant time = start; time.isBefore(end); time = time.plus(every)) {
      points.add(at(time));
    }
    points.add(corners.get(corners.size() - 1));
    return List.copyOf(points);
  }

  /**
   * The positions at any time of the log.
   *
   * @param time when, from the first entry to the end
   * @return the point; between two steps of the reckoning (a minute) it is on the straight line
   * @throws IllegalArgumentException if {@code time} is outside the log
   */
  public ReckonedPoint at(Instant time) {
    requireInside(time);
    int low = 0;
    int high = steps.size() - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (steps.get(middle).time().isAfter(time)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return ReckoningWalk.between(steps.get(low), steps.get(Math.max(low, high)), time);
  }

  private void requireInside(Instant time) {
    if (time.isBefore(start) || time.isAfter(end)) {
      throw new IllegalArgumentException(
          "time must be from " + start + " to " + end + ", but was " + time);
    }
  }

  /**
   * Where the headings and speeds alone lead at the end.
   *
   * @return the dead-reckoned position
   */
  public Position deadReckoning() {
    return corners.get(corners.size() - 1).deadReckoning();
  }

  /**
   * Where they lead with leeway and stream at the end.
   *
   * @return the estimated position; empty if the stream was not known somewhere on the way
   */
  public Optional<Position> estimated() {
    return corners.get(corners.size() - 1).estimated();
  }

  /**
   * The estimated position at the end with its uncertainty.
   *
   * @param from how well the start was known, independently of this log's errors (for one that was
   *     itself reckoned by the same compass see {@link ErrorBudget#andThen}); its position is not
   *     used
   * @param errors the errors of log, compass and stream
   * @return position and covariance; empty if the stream was not known somewhere on the way
   */
  public Optional<EstimatedPosition> estimatedPosition(EstimatedPosition from, ErrorModel errors) {
    Objects.requireNonNull(from, "from");
    return estimated()
        .map(
            position ->
                new EstimatedPosition(
                    position,
                    ErrorBudget.of(runs, errors).startingFrom(from.covariance()).covariance()));
  }

  /**
   * The run cut where water track, speed or stream change, for counting errors.
   *
   * @return runs in order of time, ending where the stream was not known; unmodifiable
   */
  public List<SteadyRun> runs() {
    return runs;
  }

  /**
   * What is left of the runs after a time, for carrying something forward from it.
   *
   * @param time when, from the first entry to the end
   * @return runs in order of time, ending where the stream was not known; unmodifiable
   * @throws IllegalArgumentException if {@code time} is outside the log
   */
  public List<SteadyRun> runsAfter(Instant time) {
    requireInside(time);
    return List.copyOf(ReckoningWalk.after(runs, start, time));
  }

  /**
   * What the reader should know: {@code reckoning.no-stream} with the time from which the stream
   * was not known.
   *
   * @return notes; unmodifiable
   */
  public List<Note> notes() {
    for (ReckonedPoint point : steps) {
      if (!point.estimated().isPresent()) {
        return List.of(
            Note.caution(
                    "reckoning.no-stream",
                    "The stream is not known on part of the way; from there on only log and compass"
                        + " are reckoned.")
                .with("from", point.time().toString()));
      }
    }
    return List.of();
  }

  /** The last point, for people. */
  @Override
  public String toString() {
    return corners.get(corners.size() - 1).toString();
  }
}
