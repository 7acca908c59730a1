package org.ferryglide.nav.steer;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Why;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;

/**
 * Why a leg cannot be steered: which condition fails, where, when, and by how much.
 *
 * <pre>{@code
 * NotPossible why = outcome.why().get();
 * why.message(); // the stream across the track is too strong to hold against, by 0.5 kn
 * }</pre>
 *
 * <p>What would make it possible is a question of its own, because answering it costs further
 * solutions: see {@link CourseToSteer}.
 */
public final class NotPossible implements Why {
  private static final long serialVersionUID = 1L;

  private final Reason reason;
  private final @Nullable Position where;
  private final @Nullable Instant when;
  private final @Nullable Speed shortBy;
  private final int legNumber;

  private NotPossible(
      Reason reason,
      @Nullable Position where,
      @Nullable Instant when,
      @Nullable Speed shortBy,
      int legNumber) {
    this.reason = reason;
    this.legNumber = legNumber;
    this.where = where;
    this.when = when;
    this.shortBy = shortBy;
  }

  /**
   * Not possible for a reason, without figures.
   *
   * @param reason which condition fails
   * @return the finding; the {@code with} methods add figures
   */
  public static NotPossible because(Reason reason) {
    return new NotPossible(Objects.requireNonNull(reason, "reason"), null, null, null, 0);
  }

  /**
   * The same finding at a place and time.
   *
   * @param position where the condition fails
   * @param instant when
   * @return the finding with its place and time
   */
  public NotPossible at(Position position, Instant instant) {
    return new NotPossible(reason, position, instant, shortBy, legNumber);
  }

  /**
   * The same finding with the speed that is lacking.
   *
   * @param speed how much faster the craft would have to be there and then
   * @return the finding with the figure
   */
  public NotPossible by(Speed speed) {
    return new NotPossible(reason, where, when, speed, legNumber);
  }

  /**
   * The same finding in a leg of a route.
   *
   * @param legNumber number of the leg, 1 for the first
   * @return the finding with the leg
   * @throws IllegalArgumentException if the number is less than 1
   */
  public NotPossible inLeg(int legNumber) {
    if (legNumber < 1) {
      throw new IllegalArgumentException("leg number must be at least 1, but was " + legNumber);
    }
    return new NotPossible(reason, where, when, shortBy, legNumber);
  }

  /**
   * Which condition fails.
   *
   * @return the reason
   */
  public Reason reason() {
    return reason;
  }

  /**
   * Whether it is the data that are missing, so that it may well be possible.
   *
   * @return true for {@link Reason#NO_DATA}, which is never the sea's own answer
   */
  public boolean isForWantOfData() {
    return reason == Reason.NO_DATA;
  }

  /**
   * Where the condition fails.
   *
   * @return the place; empty if it has none
   */
  public Optional<Position> where() {
    return Optional.ofNullable(where);
  }

  /**
   * When the condition fails.
   *
   * @return the time; empty if it has none
   */
  public Optional<Instant> when() {
    return Optional.ofNullable(when);
  }

  /**
   * By how much: how much faster the craft would have to be through the water there and then. A
   * departure or a speed for the whole leg is another question, see {@link CourseToSteer}.
   *
   * @return the speed lacking; empty if speed is not what is lacking
   */
  public Optional<Speed> shortBy() {
    return Optional.ofNullable(shortBy);
  }

  /**
   * In which leg of a route.
   *
   * @return number of the leg, 1 for the first; empty if no route was asked about
   */
  public OptionalInt legNumber() {
    return legNumber == 0 ? OptionalInt.empty() : OptionalInt.of(legNumber);
  }

  /**
   * The finding as plain English; its time is UTC, cut to the second. To tell it by another clock,
   * take {@link #when}.
   *
   * @return one line without a full stop
   */
  @Override
  public String message() {
    StringBuilder line = new StringBuilder(reason.text());
    if (shortBy != null) {
      line.append(", by ").append(shortBy.inKnots(2));
    }
    if (when != null) {
      line.append(", at ").append(when.truncatedTo(ChronoUnit.SECONDS));
    }
    if (where != null) {
      line.append(", near ").append(where.text(AngleForm.DEGREES_MINUTES, 1));
    }
    if (legNumber != 0) {
      line.append(", in leg ").append(legNumber);
    }
    return line.toString();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof NotPossible that
        && reason == that.reason
        && legNumber == that.legNumber
        && Objects.equals(where, that.where)
        && Objects.equals(when, that.when)
        && Objects.equals(shortBy, that.shortBy);
  }

  @Override
  public int hashCode() {
    return Objects.hash(reason, where, when, shortBy, legNumber);
  }

  @Override
  public String toString() {
    return "not possible: " + message();
  }
}
