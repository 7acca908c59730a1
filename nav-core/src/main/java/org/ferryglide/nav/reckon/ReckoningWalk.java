package org.ferryglide.nav.reckon;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.jspecify.annotations.Nullable;

/** Walks along a log step by step. */
final class ReckoningWalk {

  /** Steps are no longer than this, so that a stream that changes with place is followed. */
  private static final double LONGEST_STEP_SECONDS = 60.0;

  private static final double LEAST_STEP_SECONDS = 1e-3;

  private final StreamField stream;
  private final List<ReckonedPoint> steps = new ArrayList<>();
  private final List<SteadyRun> runs = new ArrayList<>();
  private final double[] flow = new double[2];
  private final double[] place = new double[2];

  private Instant time;
  private double loggedLat;
  private double loggedLon;
  private double lat;
  private double lon;
  private boolean known = true;

  ReckoningWalk(Position start, Instant time, StreamField stream) {
    this.time = time;
    this.stream = stream;
    loggedLat = start.latitudeDegrees();
    loggedLon = start.longitudeDegrees();
    lat = loggedLat;
    lon = loggedLon;
    steps.add(point());
  }

  List<ReckonedPoint> steps() {
    return steps;
  }

  List<SteadyRun> runs() {
    return runs;
  }

  ReckonedPoint point() {
    Position logged = Position.ofDegrees(loggedLat, loggedLon);
    return new ReckonedPoint(time, logged, known ? Position.ofDegrees(lat, lon) : null);
  }

  /** Sails one entry from the latest time on. */
  void sail(LogEntry entry, Instant until) {
    Velocity water = Velocity.ofSetAndRate(entry.waterTrack(), entry.speed());
    while (time.isBefore(until)) {
      double seconds = Seconds.of(Duration.between(time, until));
      double now = EpochSeconds.of(time);
      double toBreak = stream.nextBreakAfter(now) - now;
      double step = Math.min(seconds, LONGEST_STEP_SECONDS);
      if (toBreak > 1e-3) {
        step = Math.min(step, toBreak);
      }
      Instant next =
          step >= seconds
              ? until
              : time.plus(Seconds.toDuration(Math.max(LEAST_STEP_SECONDS, step)));
      if (next.isAfter(until)) {
        next = until;
      }
      step(entry, water, now, next);
    }
  }

  private void step(LogEntry entry, Velocity water, double now, Instant next) {
    Duration duration = Duration.between(time, next);
    double step = Seconds.of(duration);
    RhumbLines.direct(
        loggedLat,
        loggedLon,
        entry.heading().degrees(),
        entry.speed().metresPerSecond() * step,
        place,
        0);
    loggedLat = place[0];
    loggedLon = place[1];
    known = known && flowAtMidpoint(water, now, step);
    if (known) {
      move(water.eastMetresPerSecond() + flow[0], water.northMetresPerSecond() + flow[1], step);
      lat = place[0];
      lon = place[1];
      addRun(
          new SteadyRun(
              duration,
              entry.waterTrack(),
              entry.speed(),
              Velocity.ofEastAndNorth(flow[0], flow[1])));
    }
    time = next;
    steps.add(point());
  }

  /** The stream halfway through the step, at the place the craft has come to by then. */
  private boolean flowAtMidpoint(Velocity water, double now, double step) {
    double half = 0.5 * step;
    if (!stream.sample(lat, lon, now, flow, 0)) {
      return false;
    }
    move(water.eastMetresPerSecond() + flow[0], water.northMetresPerSecond() + flow[1], half);
    return stream.sample(place[0], place[1], now + half, flow, 0);
  }

  private void move(double east, double north, double seconds) {
    RhumbLines.direct(
        lat,
        lon,
        Math.toDegrees(Math.atan2(east, north)),
        Math.hypot(east, north) * seconds,
        place,
        0);
  }

  private void addRun(SteadyRun run) {
    int last = runs.size() - 1;
    if (last >= 0 && runs.get(last).continuesAs(run)) {
      runs.set(last, run.lasting(runs.get(last).duration().plus(run.duration())));
    } else {
      runs.add(run);
    }
  }

  /** The point at a time between two steps, on the rhumb line between them. */
  static ReckonedPoint between(ReckonedPoint a, ReckonedPoint b, Instant time) {
    double whole = Seconds.of(Duration.between(a.time(), b.time()));
    if (whole <= 0.0 || time.equals(b.time())) {
      return b;
    }
    if (time.equals(a.time())) {
      return a;
    }
    double share = Seconds.of(Duration.between(a.time(), time)) / whole;
    @Nullable Position estimated =
        a.estimated().isPresent() && b.estimated().isPresent()
            ? along(a.estimated().get(), b.estimated().get(), share)
            : null;
    return new ReckonedPoint(time, along(a.deadReckoning(), b.deadReckoning(), share), estimated);
  }

  private static Position along(Position from, Position to, double share) {
    double[] out = new double[2];
    double lat = from.latitudeDegrees();
    double lon = from.longitudeDegrees();
    RhumbLines.inverse(lat, lon, to.latitudeDegrees(), to.longitudeDegrees(), out, 0);
    RhumbLines.direct(lat, lon, out[0], out[1] * share, out, 0);
    return Position.ofDegrees(out[0], out[1]);
  }

  /** What is left of runs after a time. */
  static List<SteadyRun> after(List<SteadyRun> runs, Instant start, Instant time) {
    List<SteadyRun> rest = new ArrayList<>();
    Instant end = start;
    for (SteadyRun run : runs) {
      end = end.plus(run.duration());
      Duration left = Duration.between(time, end);
      if (!left.isNegative() && !left.isZero()) {
        rest.add(left.compareTo(run.duration()) < 0 ? run.lasting(left) : run);
      }
    }
    return rest;
  }
}
