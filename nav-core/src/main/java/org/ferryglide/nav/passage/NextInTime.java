package org.ferryglide.nav.passage;

import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.Window;
import org.jspecify.annotations.Nullable;

/**
 * Whether a party of any speed from the slower to the planned one may go on at the next way point:
 * whether no barred span lies between the times at which the two leave it.
 */
final class NextInTime extends PassageCheck {
  /** The search at the next way point begins on the first second after the planned time. */
  private static final double SEARCHED_SECONDS = 1.0;

  private final Found<Window> next;

  NextInTime(Passage part, Found<Window> next) {
    super(Findings.at("check.going-on", "going on at ", part.wayPoints().get(1).name()), part);
    this.next = next;
  }

  @Override
  Verdict check(Candidate candidate) {
    return candidate
        .slower()
        .match(
            slower ->
                between(
                    EpochSeconds.of(candidate.route.leavingAt(1)),
                    EpochSeconds.of(slower.leavingAt(1))),
            why -> Verdict.notChecked(about(), why.note()));
  }

  /** What is barred is told with one margin, however late it is. */
  @Override
  @Nullable Verdict worseThan(Candidate candidate, double margin) {
    return margin <= -1.0 ? null : check(candidate);
  }

  private Verdict between(double planned, double slower) {
    double best = Double.NEGATIVE_INFINITY;
    for (Window window : next) {
      double before = planned - EpochSeconds.of(window.from());
      boolean asSearched = window.from().equals(next.asked().from()) && before > -SEARCHED_SECONDS;
      double after = EpochSeconds.of(window.until()) - slower;
      best = Math.max(best, asSearched ? after : Math.min(before, after));
    }
    if (best >= 0.0) {
      return Verdict.of(about(), best / 60.0, "minutes to spare", 5.0, 0.0)
          .at(EpochSeconds.toInstant(slower));
    }
    boolean seen =
        next.seen().stream()
            .anyMatch(
                span ->
                    EpochSeconds.of(span.from()) - SEARCHED_SECONDS <= planned
                        && slower <= EpochSeconds.of(span.until()));
    Verdict verdict =
        seen
            ? Verdict.stopped(
                about(),
                Note.information(
                    "why.barred-between",
                    "barred for the planned or the slower party, or in between"))
            : Verdict.notChecked(
                about(),
                Note.information("why.no-going-on", "nothing is known of going on there and then"));
    return verdict.at(EpochSeconds.toInstant(slower));
  }
}
