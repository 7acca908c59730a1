package org.ferryglide.nav.passage;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.Arrivals;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.timing.Verdict;

/**
 * How long the slower party needs to the nearest landing that it can use, ahead, astern or beside
 * the way, with a heading solved for it; looked at every ten minutes. The straight line there may
 * cross land and dangers, of which this check knows nothing; {@link LandingInReach} holds each way
 * there against all checks, at a price that a search of departures cannot pay.
 */
final class ReachCheck extends PassageCheck {
  private static final double LOOK_SECONDS = 600.0;

  /** A party this near is there. */
  private static final double THERE_METRES = 10.0;

  private final Passage slow;
  private final List<LandingCheck> landings = new ArrayList<>();

  ReachCheck(Passage passage) {
    super(Note.information("check.reach", "time to a usable landing"), passage);
    slow = passage.slower();
    List<WayPoint> places = new ArrayList<>(slow.wayPoints());
    places.addAll(slow.refuges());
    for (WayPoint place : places) {
      place.landing().ifPresent(l -> landings.add(LandingCheck.beside(slow, place, l)));
    }
  }

  @Override
  Verdict check(Candidate candidate) {
    if (landings.isEmpty()) {
      return Verdict.notChecked(about(), Findings.NO_LANDING);
    }
    Arrivals arrivals = Arrivals.of(PassageSolver.solver(slow, LegOptions.usual()));
    int drawnLeg = -1;
    double warning = passage().limits().warning(PassageLimits.TIME_TO_LANDING);
    double worst = -1.0;
    int when = -1;
    int unknown = -1;
    double since = Double.NaN;
    double longest = 0.0;
    double asked = Double.NEGATIVE_INFINITY;
    for (int look = 0; look < candidate.size; look++) {
      if (candidate.time[look] - asked < LOOK_SECONDS && look + 1 < candidate.size) {
        continue;
      }
      asked = candidate.time[look];
      if (candidate.isDraw() && candidate.leg[look] != drawnLeg) {
        drawnLeg = candidate.leg[look];
        arrivals = drawn(candidate.passage, drawnLeg);
      }
      double seconds = nearest(candidate, look, arrivals);
      unknown = Double.isNaN(seconds) ? look : unknown;
      if (seconds > worst) {
        worst = seconds;
        when = look;
      }
      if (seconds > warning) {
        since = Double.isNaN(since) ? asked : since;
        longest = Math.max(longest, asked - since);
      } else {
        since = Double.NaN;
      }
    }
    if (unknown >= 0 && !(worst > passage().limits().stop(PassageLimits.TIME_TO_LANDING))) {
      return at(Verdict.notChecked(about(), Findings.NO_LANDING_KNOWN), candidate, unknown);
    }
    if (Double.isInfinite(worst)) {
      return at(
          Verdict.stopped(
              about(), Note.information("why.none-in-reach", "none can be reached from there")),
          candidate,
          when);
    }
    long beyond = Math.round(longest / 60.0);
    Note about =
        longest > 0.0
            ? Note.information(
                    "check.reach-beyond", name() + ", beyond the warning for " + beyond + " min")
                .with("beyondMinutes", (double) beyond)
            : about();
    return at(
        Verdict.of(
            about,
            worst / 60.0,
            "minutes for the slower party",
            warning / 60.0,
            passage().limits().stop(PassageLimits.TIME_TO_LANDING) / 60.0),
        candidate,
        when);
  }

  /** For a draw: its party, as fast as on a leg, in its water and wind. */
  private static Arrivals drawn(Passage world, int leg) {
    LegOptions options = LegOptions.usual();
    Speed speed = world.legs().get(leg).options().speed().orElse(null);
    return Arrivals.of(
        PassageSolver.solver(world, speed == null ? options : options.withSpeed(speed)));
  }

  /** Seconds to the nearest usable landing; infinite if there is none, NaN if that is not known. */
  private double nearest(Candidate candidate, int look, Arrivals arrivals) {
    Position here =
        Position.ofDegrees(
            candidate.latitude[look], Candidate.longitude(candidate.longitude[look]));
    double time = candidate.time[look];
    double best = Double.POSITIVE_INFINITY;
    boolean unknown = false;
    for (LandingCheck landing : landings) {
      RhumbLeg leg = RhumbLeg.between(here, landing.place().position());
      double arrival = time;
      if (leg.length().metres() > THERE_METRES) {
        arrival = arrivals.at(leg, time);
        if (Double.isNaN(arrival)) { // only then its reason is worth working out
          unknown |=
              arrivals.steered(leg, time).why().map(NotPossible::isForWantOfData).orElse(false);
        }
      }
      if (arrival - time < best) {
        double ashore = arrival + Seconds.of(slow.party().landing());
        Verdict usable =
            candidate.isDraw()
                ? landing.usable(candidate.passage, arrival, ashore)
                : landing.usable(arrival, ashore);
        unknown |= usable.answer() == Verdict.Answer.NOT_CHECKED;
        best = usable.holds() ? arrival - time : best;
      }
    }
    return Double.isInfinite(best) && unknown ? Double.NaN : best;
  }
}
