package org.ferryglide.nav.water;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;

/**
 * What a search over time found, and what part of that time it could see.
 *
 * <p>An empty list alone does not distinguish "it never happens" from "there are no data". This
 * answer does: {@link #isNever} is true only if the whole time was seen and nothing was found in
 * it.
 *
 * <pre>{@code
 * Found<Window> slack = here.slackWindows(Speed.ofKnots(0.5), from, until);
 * if (slack.isEmpty()) {
 *   System.out.println(slack.isNever() ? "no slack water" : "not known: " + slack.unseen());
 * }
 * }</pre>
 *
 * @param items what was found, in order of time
 * @param asked the time that was to be searched
 * @param seen the parts of it for which there were data and which were searched, in order, apart
 *     from each other
 * @param notes what a reader of the items should know; {@code search.not-seen} if not all was seen
 * @param stopped why the search ended where it did
 * @param <T> what was searched for
 */
public record Found<T extends Serializable>(
    List<T> items, TimeSpan asked, List<TimeSpan> seen, List<Note> notes, Stopped stopped)
    implements Iterable<T>, Serializable {

  private static final long serialVersionUID = 1L;

  /** Why a search over time ended. */
  public enum Stopped {
    /** The whole time asked was searched, as far as there were data. */
    AT_END,
    /** As many were found as were asked for; what comes later was not searched. */
    ENOUGH,
    /** The data end before the time asked does. */
    NO_DATA
  }

  /**
   * Takes all parts; {@link #of} works out the last two.
   *
   * @param items what was found, in order of time; copied
   * @param asked the time that was to be searched
   * @param seen the parts of it that were searched with data, in order; copied
   * @param notes what a reader should know; copied
   * @param stopped why the search ended
   * @throws IllegalArgumentException if the spans seen are not in order, overlap, or leave the time
   *     asked
   */
  public Found {
    items = List.copyOf(items);
    Objects.requireNonNull(asked, "asked");
    seen = List.copyOf(seen);
    notes = List.copyOf(notes);
    Objects.requireNonNull(stopped, "stopped");
    Instant last = asked.from();
    for (TimeSpan span : seen) {
      if (span.from().isBefore(last) || span.until().isAfter(asked.until())) {
        throw new IllegalArgumentException(
            "spans seen must follow each other within " + asked + ", but were " + seen);
      }
      last = span.until();
    }
  }

  /**
   * The answer of a search to the end of the time asked. If not all of that time was seen, a
   * caution {@code search.not-seen} is put before the notes given.
   *
   * @param items what was found, in order of time
   * @param asked the time that was to be searched
   * @param seen the parts of it that were searched with data, in order
   * @param notes what else a reader should know
   * @param <T> what was searched for
   * @return the answer, {@link Stopped#AT_END} or {@link Stopped#NO_DATA}
   * @throws IllegalArgumentException as the constructor does
   */
  public static <T extends Serializable> Found<T> of(
      List<T> items, TimeSpan asked, List<TimeSpan> seen, List<Note> notes) {
    boolean toTheEnd =
        !seen.isEmpty() && !seen.get(seen.size() - 1).until().isBefore(asked.until());
    Found<T> found =
        new Found<>(items, asked, seen, notes, toTheEnd ? Stopped.AT_END : Stopped.NO_DATA);
    if (found.isWhole()) {
      return found;
    }
    List<Note> more = new ArrayList<>(List.of(found.notSeen()));
    more.addAll(notes);
    return new Found<>(items, asked, seen, more, found.stopped);
  }

  private Note notSeen() {
    List<TimeSpan> unseen = unseen();
    String text =
        seen.isEmpty()
            ? "There are no data for any of the time asked, from "
                + asked.from()
                + " until "
                + asked.until()
                + "."
            : "There are no data for part of the time asked"
                + (unseen.size() > 1 ? ", in " + unseen.size() + " spans, the first" : ":")
                + " from "
                + unseen.get(0).from()
                + " until "
                + unseen.get(0).until()
                + ".";
    return Note.caution("search.not-seen", text)
        .with("from", unseen.get(0).from().toString())
        .with("until", unseen.get(0).until().toString());
  }

  /**
   * Whether nothing was found; see {@link #isNever} for whether that means anything.
   *
   * @return true if there are no items
   */
  public boolean isEmpty() {
    return items.isEmpty();
  }

  /**
   * Whether all of the time asked was searched with data.
   *
   * @return true if no part of it is {@link #unseen}
   */
  public boolean isWhole() {
    return !seen.isEmpty() && unseen().isEmpty();
  }

  /**
   * Whether it is certain that there is none in the time asked.
   *
   * @return true if nothing was found and all of the time was seen
   */
  public boolean isNever() {
    return items.isEmpty() && isWhole();
  }

  /**
   * The parts of the time asked that were not seen, for want of data or because the search had
   * found enough.
   *
   * @return the spans in order; unmodifiable
   */
  public List<TimeSpan> unseen() {
    List<TimeSpan> unseen = new ArrayList<>();
    Instant last = asked.from();
    for (TimeSpan span : seen) {
      if (last.isBefore(span.from())) {
        unseen.add(TimeSpan.of(last, span.from()));
      }
      last = span.until();
    }
    if (last.isBefore(asked.until()) || seen.isEmpty()) {
      unseen.add(TimeSpan.of(last, asked.until()));
    }
    return List.copyOf(unseen);
  }

  /**
   * The first of the items.
   *
   * @return the earliest; empty if there is none
   */
  public Optional<T> first() {
    return items.isEmpty() ? Optional.empty() : Optional.of(items.get(0));
  }

  /**
   * The next few: the first {@code count} items, for which nothing after the last of them need have
   * been seen.
   *
   * @param count how many at most, at least 0
   * @return the same answer with at most so many items; its notes are kept
   * @throws IllegalArgumentException if {@code count} is negative
   */
  public Found<T> first(int count) {
    if (count < 0) {
      throw new IllegalArgumentException("count must not be negative, but was " + count);
    }
    return count >= items.size()
        ? this
        : new Found<>(items.subList(0, count), asked, seen, notes, Stopped.ENOUGH);
  }

  /**
   * The same answer with each item turned into something else.
   *
   * @param change what becomes of each item
   * @param <U> what it becomes
   * @return an answer with changed items, all else the same
   */
  public <U extends Serializable> Found<U> map(Function<? super T, ? extends U> change) {
    List<U> changed = new ArrayList<>();
    items.forEach(item -> changed.add(change.apply(item)));
    return new Found<>(changed, asked, seen, notes, stopped);
  }

  /**
   * The items that pass a test.
   *
   * @param wanted which to keep
   * @return an answer with fewer items, all else the same
   */
  public Found<T> filter(Predicate<? super T> wanted) {
    List<T> kept = new ArrayList<>();
    for (T item : items) {
      if (wanted.test(item)) {
        kept.add(item);
      }
    }
    return new Found<>(kept, asked, seen, notes, stopped);
  }

  /**
   * How much of the time asked was seen.
   *
   * @return sum of the lengths of {@link #seen}
   */
  public Duration seenInAll() {
    return seen.stream().map(TimeSpan::duration).reduce(Duration.ZERO, Duration::plus);
  }

  /** The items in order of time. */
  @Override
  public Iterator<T> iterator() {
    return items.iterator();
  }

  /** The items, and what was not seen. */
  @Override
  public String toString() {
    return items + (isWhole() ? "" : ", not seen " + unseen());
  }
}
