package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.water.Window;
import org.jspecify.annotations.Nullable;

/**
 * How much earlier or later than planned the party may leave and still go by the card: every leg's
 * printed heading holds within 5°, and all checks hold.
 *
 * <pre>{@code
 * LaunchInterval interval = LaunchInterval.of(plan);
 * interval.span().ifPresent(System.out::println);
 * System.out.println("before: " + interval.failsEarlier().text() + "; after: " + interval.failsLater().text());
 * }</pre>
 *
 * <p>A heading is printed by the compass of the passage, else magnetic, else true, and at the
 * nearest mark of the compass: it is that figure which must hold. A leg whose heading changes along
 * the way is looked at in 20 parts, each against the planned heading in the same part.
 */
public final class LaunchInterval implements Serializable {
  private static final long serialVersionUID = 1L;

  /** How far a heading may be from the printed one, degrees. */
  public static final double HEADING_DEGREES = 5.0;

  /** How far from the planned departure the search goes. */
  public static final Duration LONGEST = Duration.ofHours(12);

  private static final Duration STEP = Duration.ofMinutes(5);

  private final Instant departure;
  private final int marks;
  private final @Nullable TimeSpan span;
  private final Note endsBefore;
  private final Note endsAfter;

  private LaunchInterval(
      Instant departure, int marks, @Nullable TimeSpan span, Note endsBefore, Note endsAfter) {
    this.departure = departure;
    this.marks = marks;
    this.span = span;
    this.endsBefore = endsBefore;
    this.endsAfter = endsAfter;
  }

  /**
   * Searches round the departure of a plan, every five minutes and between, edges to the second.
   *
   * @param plan the plan
   * @return the interval; without a span if the plan fails a check itself
   */
  public static LaunchInterval of(TimedPlan plan) {
    return of(plan, 1);
  }

  /**
   * The same for a card whose headings are printed at the nearest mark of a compass.
   *
   * @param plan the plan
   * @param marksEvery degrees from mark to mark, 1, 2, 5 or 10
   * @return the interval; without a span if the plan fails a check itself
   * @throws IllegalArgumentException if {@code marksEvery} is none of them
   * @see DeckCard#withMarksEvery
   */
  public static LaunchInterval of(TimedPlan plan, int marksEvery) {
    int marks = DeckCard.checkedMarks(marksEvery);
    Instant departure = plan.departure();
    PassageBuilder builder = plan.passage().toBuilder();
    for (int leg = 0; leg < plan.legs().size(); leg++) {
      builder.condition(new HeadingHolds(leg, plan.legs().get(leg), marks));
    }
    Passage asked = builder.build();
    if (!plan.holds()) {
      Note why = Failing.worst(plan.verdicts()).note();
      return new LaunchInterval(departure, marks, null, why, why);
    }
    for (Duration reach = Duration.ofHours(1); ; reach = longer(reach)) {
      Instant from = departure.minus(reach);
      Instant until = departure.plus(reach);
      Window window = null;
      for (Window found : WhenToGo.search(asked, from, until, STEP).windows()) {
        window = found.contains(departure) ? found : window;
      }
      if (window == null) {
        Note why = ends(asked, departure, 0);
        return new LaunchInterval(departure, marks, null, why, why);
      }
      boolean whole = window.from().isAfter(from) && window.until().isBefore(until);
      if (whole || reach.equals(LONGEST)) {
        return new LaunchInterval(
            departure,
            marks,
            window.span(),
            window.from().isAfter(from) ? ends(asked, window.from(), -1) : nothing(),
            window.until().isBefore(until) ? ends(asked, window.until(), 1) : nothing());
      }
    }
  }

  private static Duration longer(Duration reach) {
    Duration twice = reach.multipliedBy(2);
    return twice.compareTo(LONGEST) > 0 ? LONGEST : twice;
  }

  private static Note nothing() {
    return Note.information("why.nothing-within", "nothing within " + LONGEST.toHours() + " hours")
        .with("withinHours", (double) LONGEST.toHours());
  }

  /** What fails a second or two outside an edge. */
  private static Note ends(Passage asked, Instant edge, int outward) {
    Optional<Note> why = Optional.empty();
    for (int seconds = 1; seconds <= 2 && !why.isPresent(); seconds++) {
      Instant time = edge.plusSeconds((long) outward * seconds);
      why = Failing.of(WhenToGo.search(asked, time, time, STEP).choices().get(0));
    }
    return why.orElse(Findings.EDGE);
  }

  /**
   * The planned departure.
   *
   * @return when the plan leaves
   */
  public Instant departure() {
    return departure;
  }

  /**
   * How far apart the marks are at which the headings are printed.
   *
   * @return degrees
   */
  public int marksEvery() {
    return marks;
  }

  /**
   * From when until when the party may leave.
   *
   * @return the span, its edges inside it and within a second of where it ends, at most 12 hours
   *     either way; empty if the plan fails a check itself
   */
  public Optional<TimeSpan> span() {
    return Optional.ofNullable(span);
  }

  /**
   * What fails for those who leave earlier.
   *
   * @return what the check or the solver says just outside the span
   */
  public Note failsEarlier() {
    return endsBefore;
  }

  /**
   * What fails for those who leave later.
   *
   * @return what the check or the solver says just outside the span
   */
  public Note failsLater() {
    return endsAfter;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LaunchInterval that
        && departure.equals(that.departure)
        && marks == that.marks
        && Objects.equals(span, that.span)
        && endsBefore.equals(that.endsBefore)
        && endsAfter.equals(that.endsAfter);
  }

  @Override
  public int hashCode() {
    return Objects.hash(departure, marks, span, endsBefore, endsAfter);
  }

  @Override
  public String toString() {
    return span == null
        ? "no launch interval: " + endsAfter.text()
        : span + ", before: " + endsBefore.text() + ", after: " + endsAfter.text();
  }
}
