package org.ferryglide.nav.passage;

import java.util.List;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.timing.Verdict;

/** All checks once more for the party as slow as it may turn out; the worst of them counts. */
final class SlowerToo extends PassageCheck {
  private final Passage slow;
  private final Checks checks;

  SlowerToo(Passage passage) {
    super(Note.information("check.slower", "slower party"), passage);
    slow = passage.slower();
    checks = Checks.of(slow);
  }

  @Override
  Verdict check(Candidate candidate) {
    return candidate
        .slower()
        .match(
            route -> Failing.worst(checks.check(Candidate.ofTheSlowest(slow, route))),
            why ->
                why.isForWantOfData()
                    ? Verdict.notChecked(about(), why.note())
                    : Verdict.stopped(about(), why.note()));
  }

  /** The landing at the end, at every time from the planned party's arrival to the slower one's. */
  static void addLandingThroughout(Passage passage, List<PassageCheck> checks) {
    int last = passage.wayPoints().size() - 1;
    passage
        .wayPoints()
        .get(last)
        .landing()
        .ifPresent(landing -> checks.add(new Throughout(passage, last, landing)));
  }

  private static final class Throughout extends PassageCheck {
    private final LandingCheck landing;

    Throughout(Passage passage, int last, Landing landing) {
      super(
          Note.information("check.landing-until", "landing until the slower party is there"),
          passage);
      this.landing = new LandingCheck(passage, last, landing);
    }

    @Override
    Verdict check(Candidate candidate) {
      double from = candidate.route.arrivalSeconds();
      double ashore = Seconds.of(passage().party().landing());
      return candidate
          .slower()
          .match(
              route -> landing.usable(from, Math.max(from, route.arrivalSeconds()) + ashore),
              why -> Verdict.notChecked(about(), why.note()));
    }
  }
}
