package org.ferryglide.nav.passage;

import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.timing.Verdict;

/**
 * The longest time in the boat between two stops ashore, for the slower party: from the first boat
 * afloat until the last is ashore.
 */
final class TimeAfloatCheck extends PassageCheck {
  TimeAfloatCheck(Passage passage) {
    super(Note.information("check.time-afloat", "time afloat without a stop"), passage);
  }

  @Override
  Verdict check(Candidate candidate) {
    double[] times = candidate.slowerTimes();
    return times.length > 0 ? longest(times) : DaylightCheck.notThere(about(), candidate);
  }

  private Verdict longest(double[] times) {
    double longest = -1.0;
    double began = times[0];
    int end = 0;
    for (int i = 0; 2 * i < times.length; i++) {
      boolean stop = i > 0 && passage().wayPoints().get(i).stop().isPresent();
      began = stop ? times[2 * i] : began;
      double afloat = times[2 * i + 1] - began;
      if (afloat > longest) {
        longest = afloat;
        end = i;
      }
    }
    Party party = passage().party();
    double most = longest + Seconds.of(party.launching()) + Seconds.of(party.landing());
    PassageLimits limits = passage().limits();
    return Verdict.of(
            about(),
            most / 60.0,
            "minutes for the slower party",
            limits.warning(PassageLimits.TIME_AFLOAT) / 60.0,
            limits.stop(PassageLimits.TIME_AFLOAT) / 60.0)
        .at(EpochSeconds.toInstant(times[2 * end + 1]))
        .at(passage().wayPoints().get(end + 1).position());
  }
}
