package org.ferryglide.nav.timing;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.steer.SteeredRoute;

/** The whole passage within one of several spans of time. */
final class DuringSpans implements Condition {
  private static final double SECONDS_PER_MINUTE = 60.0;

  private final String name;
  private final List<TimeSpan> spans;
  private final List<TimeSpan> unseen;
  private final double warnMinutes;

  /** With the times for which it is not known whether a span covers them. */
  DuringSpans(String name, List<TimeSpan> spans, List<TimeSpan> unseen, Duration warnBelow) {
    this.name = Objects.requireNonNull(name, "name");
    this.spans = List.copyOf(spans);
    this.unseen = List.copyOf(unseen);
    this.warnMinutes =
        Arguments.positive(
            Seconds.of(warnBelow) / SECONDS_PER_MINUTE, "time to spare that warns", "minutes");
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public Verdict check(SteeredRoute passage) {
    Instant start = passage.departure();
    Instant end = passage.arrival();
    double best = Double.NEGATIVE_INFINITY;
    boolean early = true;
    for (TimeSpan span : spans) {
      double before = Seconds.of(Duration.between(span.from(), start)) / SECONDS_PER_MINUTE;
      double after = Seconds.of(Duration.between(end, span.until())) / SECONDS_PER_MINUTE;
      if (Math.min(before, after) > best) {
        best = Math.min(before, after);
        early = before < after;
      }
    }
    if (best < 0.0 && isUnseen(TimeSpan.of(start, end))) {
      return Verdict.notChecked(
          about(), Note.information("why.gaps", "there are no data for some of the time"));
    }
    if (best == Double.NEGATIVE_INFINITY) { // nothing is within no spans
      best = -Seconds.of(Duration.between(start, end)) / SECONDS_PER_MINUTE - warnMinutes;
    }
    Verdict verdict = Verdict.of(about(), best, "minutes to spare", warnMinutes, 0.0);
    return early
        ? verdict.at(start).at(passage.route().start())
        : verdict.at(end).at(passage.route().end());
  }

  private boolean isUnseen(TimeSpan time) {
    for (TimeSpan span : unseen) {
      if (span.overlap(time).isPresent()) {
        return true;
      }
    }
    return false;
  }

  @Override
  public String toString() {
    return name;
  }
}
