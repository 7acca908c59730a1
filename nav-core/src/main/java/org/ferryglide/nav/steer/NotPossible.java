package org.ferryglide.nav.steer;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
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
 * solutions: see {@code PassageTiming} in the package {@code timing}.
 */
public final class NotPossible implements Why {
  private static final long serialVersionUID = 1L;

  /** A figure this little above a printed one is that figure. */
  private static final double ROUNDING = 1e-6;

  private final Reason reason;
  private final @Nullable Position where;
  private final @Nullable Instant when;
  private final @Nullable Speed shortBy;
  private final boolean allTheWay;
  private final double share;
  private final double shareAllowed;
  private final int legNumber;

  private NotPossible(
      Reason reason,
      @Nullable Position where,
      @Nullable Instant when,
      @Nullable Speed shortBy,
      boolean allTheWay,
      double share,
      double shareAllowed,
      int legNumber) {
    this.reason = reason;
    this.where = where;
    this.when = when;
    this.shortBy = shortBy;
    this.allTheWay = allTheWay;
    this.share = share;
    this.shareAllowed = shareAllowed;
    this.legNumber = legNumber;
  }

  /**
   * Not possible for a reason, without figures.
   *
   * @param reason which condition fails
   * @return the finding; the other methods add figures
   */
  public static NotPossible because(Reason reason) {
    return new NotPossible(
        Objects.requireNonNull(reason, "reason"),
        null,
        null,
        null,
        false,
        Double.NaN,
        Double.NaN,
        0);
  }

  /**
   * The same finding at a place and time.
   *
   * @param position where the condition fails
   * @param instant when
   * @return the finding with its place and time
   */
  public NotPossible at(Position position, Instant instant) {
    return new NotPossible(
        reason, position, instant, shortBy, allTheWay, share, shareAllowed, legNumber);
  }

  /**
   * The same finding with the speed that is lacking there and then.
   *
   * @param speed how much faster the craft would have to be there and then
   * @return the finding with the figure
   */
  public NotPossible by(Speed speed) {
    return new NotPossible(reason, where, when, speed, false, share, shareAllowed, legNumber);
  }

  /**
   * The same finding with the speed that is lacking from the start.
   *
   * @param speed how much faster the craft would have to be all the way
   * @return the finding with the figure
   */
  public NotPossible byAllTheWay(Speed speed) {
    return new NotPossible(reason, where, when, speed, true, share, shareAllowed, legNumber);
  }

  /** The same finding with the share of speed that is spent across, and that the limits allow. */
  NotPossible withShare(double share, double shareAllowed) {
    return new NotPossible(reason, where, when, shortBy, allTheWay, share, shareAllowed, legNumber);
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
    return new NotPossible(reason, where, when, shortBy, allTheWay, share, shareAllowed, legNumber);
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
   * Whether data are missing, so that it may be possible all the same.
   *
   * @return true for {@link Reason#NO_DATA}
   */
  public boolean isDataMissing() {
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
   * By how much: how much faster the craft would have to be through the water. With a constant
   * heading that is the speed lacking all the way from the departure, with every other strategy the
   * speed lacking there and then; see {@link #isShortAllTheWay}. Another departure, or the least
   * speed for a whole route, is a question of its own in the package {@code timing}.
   *
   * @return the speed lacking; empty if speed is not what is lacking
   */
  public Optional<Speed> shortBy() {
    return Optional.ofNullable(shortBy);
  }

  /**
   * Whether the speed that is lacking is lacking all the way from the departure.
   *
   * @return false if it is lacking there and then, or speed is not what is lacking
   */
  public boolean isShortAllTheWay() {
    return allTheWay;
  }

  /**
   * The share of the craft's speed that the path would spend against what sets across it.
   *
   * @return above the limit, for {@link Reason#NO_RESERVE}; else empty
   */
  public OptionalDouble crossStreamShare() {
    return Double.isNaN(share) ? OptionalDouble.empty() : OptionalDouble.of(share);
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
   * The finding as plain English. Its time is UTC, cut to the second; {@link #when} has the instant
   * for another zone. Speeds lacking are rounded up to a hundredth of a knot.
   *
   * @return one line without a full stop
   */
  @Override
  public String message() {
    return reason.text()
        + needed()
        + lacking()
        + (when == null ? "" : ", at " + when.truncatedTo(ChronoUnit.SECONDS))
        + (where == null ? "" : ", near " + where.text(AngleForm.DEGREES_MINUTES, 1))
        + (legNumber == 0 ? "" : ", in leg " + legNumber);
  }

  private String needed() {
    return Double.isNaN(share)
        ? ""
        : ": it would take "
            + (long) sharePercent()
            + " % of the craft's speed against what sets across, and the limits allow "
            + percent(shareAllowed);
  }

  private double sharePercent() {
    return Math.ceil(share * 100.0 - ROUNDING);
  }

  private String lacking() {
    return isSpeedLacking()
        ? ", by " + Speed.ofKnots(shortByKnots()).inKnots(2) + (allTheWay ? " all the way" : "")
        : "";
  }

  private boolean isSpeedLacking() {
    return shortBy != null && shortBy.metresPerSecond() > 0.0;
  }

  /** Rounded up to a hundredth. */
  private double shortByKnots() {
    double knots = shortBy == null ? 0.0 : shortBy.knots();
    return Math.max(1.0, Math.ceil(knots * 100.0 - ROUNDING)) / 100.0;
  }

  /**
   * The finding as a note, so that it can be translated and a program need not parse its text. Its
   * parts have codes of their own: {@code reason}, and where they are known {@code needed}, {@code
   * lacking} and {@code leg}; time and place stand beside them only.
   *
   * @return {@code not-possible}, its text the {@link #message}
   */
  public Note note() {
    Note note =
        new Note(
                "not-possible",
                isDataMissing() ? Severity.CAUTION : Severity.WARNING,
                message(),
                Collections.emptyMap(),
                Collections.emptyMap())
            .with("reason", reason.note())
            .with("needed", "")
            .with("lacking", "")
            .with("leg", "");
    if (!Double.isNaN(share)) {
      Note needed =
          Note.information("not-possible.needed", needed())
              .with("sharePercent", sharePercent())
              .with("allowedPercent", percent(shareAllowed));
      note = note.with("needed", needed);
    }
    if (isSpeedLacking()) {
      String code = "not-possible.lacking" + (allTheWay ? "-all-the-way" : "");
      note =
          note.with(
              "lacking", Note.information(code, lacking()).with("lackingKnots", shortByKnots()));
    }
    if (legNumber != 0) {
      Note leg = Note.information("not-possible.leg", ", in leg " + legNumber);
      note = note.with("leg", leg.with("legNumber", legNumber));
    }
    note = when == null ? note : note.with("whenTime", when.toString());
    return where == null ? note : note.with("where", where.text(AngleForm.DEGREES_MINUTES, 1));
  }

  private static String percent(double share) {
    double tenths = Math.floor(share * 1000.0 + ROUNDING) / 10.0;
    return Arguments.plain(tenths) + " %";
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof NotPossible that
        && reason == that.reason
        && legNumber == that.legNumber
        && allTheWay == that.allTheWay
        && Double.compare(share, that.share) == 0
        && Double.compare(shareAllowed, that.shareAllowed) == 0
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
