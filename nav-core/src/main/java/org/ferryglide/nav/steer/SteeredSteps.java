package org.ferryglide.nav.steer;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.Waters;
import org.jspecify.annotations.Nullable;

/**
 * Follows a path by constant headings from place to place of it. Where the path waits, a stop is
 * made; a step that would leave the waters to which the path keeps is cut shorter. Not thread-safe.
 */
final class SteeredSteps {
  /** Each step is looked at this often for land, closed areas and limits, seconds. */
  private static final double LOOK_SECONDS = 1.0;

  /** Steps are cut no shorter than this, seconds. */
  private static final double SHORTEST_SECONDS = 1.0;

  private final GroundTrack path;
  private final Position end;
  private final LegSolver solver;
  private final Motion motion;
  private final SeaRoom room;
  private final Waters waters;
  private final double each;
  private final List<SteeredLeg> legs = new ArrayList<>();
  private final double[] place = new double[2];
  private final double[] before = new double[2];
  private final double[] wind = new double[2];

  /** How far in time the steps have come, seconds since 1970. */
  private double clock;

  private @Nullable NotPossible failure;

  SteeredSteps(CourseToSteer options, SteeredLeg path, Duration each) {
    this.path = path.groundTrack();
    end = path.leg().end();
    solver = new LegSolver(options.withStrategy(Strategy.constantHeading()));
    motion = new Motion(options.craft(), options.stream(), options.wind());
    room = path.strategy().room();
    waters = room.waters();
    this.each = Seconds.of(each);
    clock = this.path.startSeconds();
  }

  /** The steps, or why one of them cannot be steered. */
  Outcome<SteeredRoute, NotPossible> steered() {
    double from = path.startSeconds();
    for (int segment = 0; segment <= path.segments(); segment++) {
      boolean last = segment == path.segments();
      if (!last && !path.isWait(segment)) {
        continue;
      }
      double until = last ? path.endSeconds() : path.timeOf(segment);
      if (!follows(from, until) || (!last && !waits(path.timeOf(segment + 1)))) {
        NotPossible why = failure;
        return Outcome.ofUnsolved((why == null ? noRoom(clock) : why).inLeg(legs.size() + 1));
      }
      from = last ? until : path.timeOf(segment + 1);
    }
    return Outcome.ofSolved(SteeredRoute.of(legs));
  }

  /** Steps along a stretch of the path without waits. */
  private boolean follows(double from, double until) {
    for (int i = 0; from + i * each < until; i++) {
      if (!step(from + i * each, Math.min(until, from + (i + 1) * each))) {
        return false;
      }
    }
    return true;
  }

  /** One step between the places of two times of the path, or several shorter ones. */
  private boolean step(double from, double until) {
    Position start = path.positionAt(from);
    Position goal = until >= path.endSeconds() ? end : path.positionAt(until);
    if (start.equals(goal)) {
      return true;
    }
    if (isSteered(start, goal, clock)) {
      return true;
    }
    // a craft that is early, and so before an area opens, lets the path catch up
    if (from > clock && isHeld(start, clock, from) && isSteered(start, goal, from)) {
      return true;
    }
    if (until - from < 2.0 * SHORTEST_SECONDS) {
      return false;
    }
    double middle = middle(from, until);
    return step(from, middle) && step(middle, until);
  }

  /** Where a step is cut: where the path turns, if it does; else half way. */
  private double middle(double from, double until) {
    double half = 0.5 * (from + until);
    double best = Double.NaN;
    for (int i = path.segmentAt(from); i <= path.segments(); i++) {
      double time = path.timeOf(i);
      if (time > until - SHORTEST_SECONDS) {
        break;
      }
      if (time >= from + SHORTEST_SECONDS
          && !(Math.abs(time - half) >= Math.abs(best - half))) { // NaN is no time
        best = time;
      }
    }
    return Double.isNaN(best) ? half : best;
  }

  private boolean isSteered(Position start, Position goal, double departure) {
    Outcome<SteeredLeg, NotPossible> outcome =
        solver.solve(RhumbLeg.between(start, goal), departure, true);
    failure = outcome.why().orElse(null);
    if (failure != null) {
      return false;
    }
    SteeredLeg leg = outcome.orElseThrow();
    if (!isClear(leg.groundTrack())) {
      return false;
    }
    legs.add(leg);
    clock = leg.arrivalSeconds();
    return true;
  }

  private boolean isClear(GroundTrack track) {
    if (room.isOpen()) {
      return true;
    }
    double start = track.startSeconds();
    double duration = track.endSeconds() - start;
    int looks = (int) Math.max(1, Math.ceil(duration / LOOK_SECONDS));
    track.place(start, before);
    for (int i = 1; i <= looks; i++) {
      double earlier = start + duration * (i - 1) / looks;
      double time = start + duration * i / looks;
      track.place(time, place);
      if (waters.land().blocks(before[0], before[1], place[0], place[1])
          || waters.isClosed(before[0], before[1], place[0], place[1], earlier, time)
          || !isAllowed(time)) {
        failure = noRoom(time);
        return false;
      }
      before[0] = place[0];
      before[1] = place[1];
    }
    return true;
  }

  /** Whether stream and wind at the place looked at are within the limits of the path. */
  private boolean isAllowed(double time) {
    return !room.hasLimits()
        || (motion.sample(place[0], place[1], time)
            && room.allows(motion, place[0], place[1], time, 1.0, wind));
  }

  /** Waits where the path waits until a time; false if the craft may not stay there. */
  private boolean waits(double until) {
    if (until <= clock) {
      return true;
    }
    Position here = legs.isEmpty() ? path.positionAt(clock) : legs.get(legs.size() - 1).leg().end();
    if (!isHeld(here, clock, until)) {
      return false;
    }
    clock = until;
    return true;
  }

  private boolean isHeld(Position here, double from, double until) {
    place[0] = here.latitudeDegrees();
    place[1] = here.longitudeDegrees();
    failure = noRoom(from);
    if (waters.isClosed(place[0], place[1], place[0], place[1], from, until)) {
      return false;
    }
    for (double time = from; time < until; time += LOOK_SECONDS) {
      if (!isAllowed(time)) {
        return false;
      }
    }
    return true;
  }

  private NotPossible noRoom(double time) {
    return NotPossible.because(Reason.NO_ROOM)
        .at(Earth.position(place[0], place[1]), EpochSeconds.toInstant(time));
  }
}
