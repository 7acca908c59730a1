package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.water.AdjustedStream;

/**
 * The rest of a plan, worked out anew from a fix under way.
 *
 * <pre>{@code
 * Replan now = Replan.from(plan, fix.position(), fix.covariance(), time);
 * now.slower().orElseThrow().arrival(); // if the party is slower than planned
 * now.otherStream().orElseThrow().arrival(); // if the stream is not as tabled
 * now.latestArrival(); // the later, with the error of the fix
 * now.notLaterThan(); // the earlier turn, for each way point to come
 * }</pre>
 *
 * <p>What lies between reckoning and fix is stream, speed, steering and wind together, and one fix
 * cannot tell them apart. So all of it is put down to one cause at a time and carried forward as
 * that cause would act: a party slower by a share is slower all the way; a stream stronger, weaker,
 * earlier or later than its table turns when that stream turns. The difference is never carried
 * forward as one constant drift. What is found is weighed by least squares against the errors of
 * the fix and of the plan, with 10 m at least for the fix.
 *
 * <p>The party is taken to have steered the printed headings from the last stop ashore on. Where it
 * has held a line by transits the fix tells only of its speed and of the stream along the line. A
 * party that is ahead of its plan is not counted on to stay so. The program's own conditions are
 * not checked for the rest.
 */
public final class Replan implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Standard deviations to either side that hold 95 in a hundred. */
  private static final double SIGMAS_95 = 1.96;

  /** A squared distance that two normal errors exceed once in twenty times: -2 ln 0.05. */
  private static final double SQUARED_95 = -2.0 * Math.log(0.05);

  /** No party is taken to be slower than this share of its planned speed. */
  private static final double LEAST_FACTOR = 0.1;

  private final TimedPlan plan;
  private final Instant time;
  private final Position fix;
  private final Position reckoned;
  private final double squaredDistance;
  private final double east;
  private final double north;
  private final int leg;
  private final double speedFactor;
  private final double speedDeviation;
  private final double streamFactor;
  private final double streamLate;
  private final double[] streamVariances;
  private final Outcome<TimedPlan, NotPossible> asPlanned;
  private final Outcome<TimedPlan, NotPossible> slower;
  private final Outcome<TimedPlan, NotPossible> otherStream;

  private Replan(TimedPlan plan, Position fix, Covariance covariance, Instant time, int leg) {
    this.plan = plan;
    this.fix = fix;
    this.time = time;
    this.leg = leg;
    double seconds = EpochSeconds.of(time);
    Candidate planned = new Candidate(plan.passage(), plan.route());
    reckoned = plan.route().legs().get(leg).groundTrack().at(time);
    double latitude = 0.5 * (fix.latitudeDegrees() + reckoned.latitudeDegrees());
    double turned = Math.IEEEremainder(fix.longitudeDegrees() - reckoned.longitudeDegrees(), 360.0);
    east = turned * PlaneMetres.east(latitude);
    north = (fix.latitudeDegrees() - reckoned.latitudeDegrees()) * PlaneMetres.north(latitude);
    int look = FixFit.lookBefore(planned, seconds);
    squaredDistance =
        planned
            .errors()
            .covariance(look)
            .plus(covariance)
            .plus(Covariance.ofCircle(Distance.ofMetres(1.0)))
            .squaredStatisticalDistance(east, north);
    FixFit fit = new FixFit(planned, seconds, east, north, covariance);
    double[] speed = fit.speed();
    speedFactor = speed[0];
    speedDeviation = speed[1];
    double[] stream = fit.stream(Seconds.of(PlanErrors.usual().turnOfStream()));
    streamFactor = stream[0];
    streamLate = stream[1];
    streamVariances = new double[] {stream[2], stream[3], stream[4]};
    asPlanned = rest(plan.passage());
    slower = rest(atSpeed(Math.min(1.0, speedFactor)));
    otherStream = rest(inStream(streamFactor, streamLate));
  }

  /**
   * Works the rest of a plan out anew.
   *
   * @param plan the plan as it was
   * @param fix where the party is
   * @param covariance how uncertain that is
   * @param time when; while the plan is under way, not ashore
   * @return the rest, as planned and in both variants
   * @throws IllegalArgumentException if the plan is not under way at the time
   */
  public static Replan from(TimedPlan plan, Position fix, Covariance covariance, Instant time) {
    List<SteeredLeg> legs = plan.route().legs();
    for (int i = 0; i < legs.size(); i++) {
      if (!time.isBefore(legs.get(i).departure()) && time.isBefore(legs.get(i).arrival())) {
        return new Replan(plan, fix, covariance, time, i);
      }
    }
    throw new IllegalArgumentException(
        "time of a fix must be while the plan is under way, from "
            + plan.departure()
            + " to "
            + plan.arrival()
            + " and not ashore, but was "
            + time);
  }

  private Passage atSpeed(double factor) {
    return PartPassages.withSpeedTimes(plan.passage(), Math.max(LEAST_FACTOR, factor));
  }

  private Passage inStream(double factor, double lateSeconds) {
    Duration late = Seconds.toDuration(lateSeconds);
    return PartPassages.withStreams(
        plan.passage(), stream -> AdjustedStream.of(stream, Math.max(0.0, factor), late));
  }

  private Outcome<TimedPlan, NotPossible> rest(Passage passage) {
    Passage rest = PartPassages.onwardFrom(passage, leg, fix);
    if (passage.limits().has(PassageLimits.TIME_AFLOAT)) {
      int ashore = leg;
      while (!PartPassages.isAshore(passage, ashore)) {
        ashore--;
      }
      double afloatSince = EpochSeconds.of(plan.route().leavingAt(ashore));
      rest = rest.toBuilder().condition(AfterWayOut.timeAfloat(rest, afloatSince)).build();
    }
    return TimedPlan.of(rest, time);
  }

  /**
   * Where the plan has the party at the time of the fix.
   *
   * @return the reckoned position
   */
  public Position reckoned() {
    return reckoned;
  }

  /**
   * How far the fix lies from there.
   *
   * @return the distance
   */
  public Distance difference() {
    return Distance.ofMetres(Math.hypot(east, north));
  }

  /**
   * Whether the difference is no more than the errors of plan and fix explain 95 times in a
   * hundred, so that little can be learned from it.
   *
   * @return true if it is
   */
  public boolean isWithinError() {
    return squaredDistance <= SQUARED_95;
  }

  /**
   * The party's speed if all of the difference were its speed.
   *
   * @return a factor of the planned speed; above 1 for a party that is ahead, which is not counted
   *     on
   */
  public double speedFactor() {
    return speedFactor;
  }

  /**
   * The stream's rate if all of the difference were the stream.
   *
   * @return a factor of the tabled rate
   */
  public double streamFactor() {
    return streamFactor;
  }

  /**
   * How late the stream is if all of the difference were the stream.
   *
   * @return positive for later than tabled, negative for earlier
   */
  public Duration streamLate() {
    return Duration.ofMillis(Math.round(1000.0 * streamLate));
  }

  /**
   * The rest of the passage from the fix with speed and stream as planned.
   *
   * @return the plan, or why it is not possible
   */
  public Outcome<TimedPlan, NotPossible> asPlanned() {
    return asPlanned;
  }

  /**
   * The rest of the passage if the party is slower than planned.
   *
   * @return the plan, or why it is not possible
   */
  public Outcome<TimedPlan, NotPossible> slower() {
    return slower;
  }

  /**
   * The rest of the passage if the stream is stronger, weaker, earlier or later than tabled.
   *
   * @return the plan, or why it is not possible
   */
  public Outcome<TimedPlan, NotPossible> otherStream() {
    return otherStream;
  }

  /**
   * The latest arrival of all: as planned, slower, in the other stream, and in either with the
   * error that the fix leaves, 1.96 standard deviations to the worse.
   *
   * @return the time; empty if one of them is not possible
   */
  public Optional<Instant> latestArrival() {
    List<Outcome<TimedPlan, NotPossible>> all = new ArrayList<>();
    all.add(asPlanned);
    all.add(slower);
    all.add(otherStream);
    all.add(rest(atSpeed(Math.min(1.0, speedFactor - SIGMAS_95 * speedDeviation))));
    for (double[] end : streamEnds()) {
      all.add(rest(inStream(end[0], end[1])));
    }
    Instant latest = time;
    for (Outcome<TimedPlan, NotPossible> one : all) {
      TimedPlan rest = one.solved().orElse(null);
      if (rest == null) {
        return Optional.empty();
      }
      latest = rest.arrival().isAfter(latest) ? rest.arrival() : latest;
    }
    return Optional.of(latest);
  }

  /** Rate and lateness at both ends of both axes of what the fix leaves open. */
  private List<double[]> streamEnds() {
    double rate = Math.sqrt(streamVariances[0]);
    double late = Math.sqrt(streamVariances[1]);
    double together = streamVariances[2] / (rate * late);
    double major = SIGMAS_95 * Math.sqrt(0.5 * (1.0 + Math.abs(together)));
    double minor = SIGMAS_95 * Math.sqrt(0.5 * (1.0 - Math.abs(together)));
    double sign = together < 0.0 ? -1.0 : 1.0;
    List<double[]> ends = new ArrayList<>();
    for (double side : new double[] {-1.0, 1.0}) {
      ends.add(
          new double[] {
            streamFactor + side * major * rate, streamLate + side * sign * major * late
          });
      ends.add(
          new double[] {
            streamFactor + side * minor * rate, streamLate - side * sign * minor * late
          });
    }
    return ends;
  }

  /**
   * The earlier turn: until when the party may go on from each way point to come, by {@link
   * WayHome} in both variants and as planned. It takes as long as three searches of those times.
   *
   * @return by name of the way point the earliest of the three; those without an entry are not to
   *     be left at all in one of them; unmodifiable
   */
  public Map<String, Instant> notLaterThan() {
    List<Passage> worlds =
        List.of(
            plan.passage(),
            atSpeed(Math.min(1.0, speedFactor)),
            inStream(streamFactor, streamLate));
    Map<String, Instant> earliest = new LinkedHashMap<>();
    for (int wayPoint = leg + 1; wayPoint < plan.passage().legs().size(); wayPoint++) {
      earliest.put(plan.passage().wayPoints().get(wayPoint).name(), Instant.MAX);
    }
    for (Passage world : worlds) {
      // a world that explains the fix passes by it when it leaves as the party left
      TimedPlan whole = TimedPlan.of(world, plan.departure()).solved().orElse(null);
      if (whole == null || earliest.isEmpty()) {
        return Collections.emptyMap();
      }
      for (TurnTimes turn : WayHome.of(whole).turns()) {
        earliest.computeIfPresent(
            turn.wayPoint().name(),
            (name, until) ->
                turn.notLaterThan()
                    .map(other -> other.isBefore(until) ? other : until)
                    .orElse(null));
      }
    }
    return Collections.unmodifiableMap(earliest);
  }

  /**
   * What a reader should know.
   *
   * @return {@code replan.within-error} if little can be learned from the fix, {@code
   *     replan.beyond-error} if it lies farther off than the errors of the plan explain, {@code
   *     replan.ahead} if the party is ahead; unmodifiable
   */
  public List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    if (isWithinError()) {
      notes.add(
          Note.information(
                  "replan.within-error",
                  "The fix lies no farther from the reckoning than the errors of both allow.")
              .with("metres", Math.hypot(east, north)));
    } else {
      notes.add(
          Note.caution(
                  "replan.beyond-error",
                  "The fix lies farther from the reckoning than the errors of both allow 95 times"
                      + " in a hundred: something is not as planned.")
              .with("metres", Math.hypot(east, north)));
    }
    if (speedFactor > 1.0) {
      notes.add(
          Note.information(
                  "replan.ahead",
                  "The party may be faster than planned; that is not counted on to last.")
              .with("factor", speedFactor));
    }
    return Collections.unmodifiableList(notes);
  }

  @Override
  public String toString() {
    return "from a fix at " + time + ", " + difference() + " from the reckoning";
  }
}
