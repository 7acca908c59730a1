package org.ferryglide.nav.passage;

import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.EpochSeconds;

/**
 * Daylight from the launch until the slower party has landed. The sun counts, not twilight: civil
 * twilight is a reserve for what goes wrong.
 */
final class DaylightCheck extends PassageCheck {
  private final Daylights atStart;
  private final Daylights atEnd;

  DaylightCheck(Passage passage) {
    super("daylight", passage);
    atStart = new Daylights(passage.wayPoints().get(0).position(), passage.zone());
    atEnd =
        new Daylights(
            passage.wayPoints().get(passage.wayPoints().size() - 1).position(), passage.zone());
  }

  @Override
  Verdict check(Candidate candidate) {
    Outcome<SteeredRoute, NotPossible> slower = candidate.slower();
    return slower.match(
        route -> held(candidate, route),
        why -> Verdict.notChecked(name(), "the slower party does not get there: " + why.message()));
  }

  private Verdict held(Candidate candidate, SteeredRoute slower) {
    Party party = passage().party();
    double launch =
        EpochSeconds.of(candidate.route.departure()) - party.launching().toMillis() / 1000.0;
    double landed = EpochSeconds.of(slower.arrival()) + party.landing().toMillis() / 1000.0;
    double left = atEnd.leftAt(launch) - (landed - launch);
    double atLaunch = atStart.leftAt(launch);
    PassageLimits limits = passage().limits();
    boolean dark = atLaunch < 0.0;
    return Verdict.of(
            dark ? "sunrise before the launch" : "daylight left when the slower party has landed",
            (dark ? Math.min(atLaunch, left) : left) / 60.0,
            "minutes",
            limits.daylightWarning() / 60.0,
            limits.daylightStop() / 60.0)
        .at(dark ? EpochSeconds.toInstant(launch) : EpochSeconds.toInstant(landed))
        .at(
            dark
                ? passage().wayPoints().get(0).position()
                : passage().wayPoints().get(passage().wayPoints().size() - 1).position());
  }
}
