package org.ferryglide.nav.passage;

import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.timing.Verdict;

/**
 * The longest time in the boat between two stops ashore, for the slower party: from the first boat
 * afloat until the last is ashore.
 */
final class TimeAfloatCheck extends PassageCheck {
  TimeAfloatCheck(Passage passage) {
    super("time afloat without a stop", passage);
  }

  @Override
  Verdict check(Candidate candidate) {
    return candidate
        .slower()
        .match(
            this::longest,
            why ->
                Verdict.notChecked(
                    name(), "the slower party does not get there: " + why.message()));
  }

  private Verdict longest(SteeredRoute route) {
    double longest = -1.0;
    double began = EpochSeconds.of(route.departure());
    SteeredLeg end = route.legs().get(0);
    for (int i = 0; i < route.legs().size(); i++) {
      SteeredLeg leg = route.legs().get(i);
      boolean stop = i > 0 && passage().wayPoints().get(i).stop().isPresent();
      began = stop ? EpochSeconds.of(leg.departure()) : began;
      double afloat = EpochSeconds.of(leg.arrival()) - began;
      if (afloat > longest) {
        longest = afloat;
        end = leg;
      }
    }
    Party party = passage().party();
    double most = longest + Seconds.of(party.launching()) + Seconds.of(party.landing());
    PassageLimits limits = passage().limits();
    return Verdict.of(
            name(),
            most / 60.0,
            "minutes for the slower party",
            limits.timeAfloatWarning() / 60.0,
            limits.timeAfloatStop() / 60.0)
        .at(end.arrival())
        .at(end.leg().end());
  }
}
