package org.ferryglide.nav.passage;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.Verdict;
import org.jspecify.annotations.Nullable;

/** All checks once more for the party as slow as it may turn out; the worst of them counts. */
final class SlowerToo extends PassageCheck {
  private final Passage slow;
  private final List<Condition> conditions;

  SlowerToo(Passage passage) {
    this(passage, passage.slower());
  }

  private SlowerToo(Passage passage, Passage slow) {
    this(passage, slow, slow.checks().conditions());
  }

  private SlowerToo(Passage passage, Passage slow, List<Condition> conditions) {
    super(Note.information("check.slower", "slower party"), passage);
    this.slow = slow;
    this.conditions = conditions;
  }

  /** The costly checks alone, or the others. */
  SlowerToo ofThe(boolean costly) {
    List<Condition> some = new ArrayList<>(conditions);
    some.removeIf(condition -> InTurn.isCostly(condition) != costly);
    return new SlowerToo(passage(), slow, some);
  }

  @Override
  Verdict check(Candidate candidate) {
    Verdict worst = worseThan(candidate, Double.POSITIVE_INFINITY);
    return worst == null ? Verdict.within(about(), Findings.NEVER) : worst;
  }

  @Override
  @Nullable Verdict worseThan(Candidate candidate, double margin) {
    Outcome<SteeredRoute, NotPossible> slower = candidate.slower();
    SteeredRoute route = slower.solved().orElse(null);
    if (route == null) {
      NotPossible why = slower.why().orElseThrow(IllegalStateException::new);
      return why.isDataMissing()
          ? Verdict.notChecked(about(), why.note())
          : Verdict.stopped(about(), why.note());
    }
    return Failing.worst(candidate.slowest(slow, route), conditions, margin);
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
