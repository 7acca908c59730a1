package org.ferryglide.nav.timing;

import java.io.Serializable;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;

/**
 * What a {@link Condition} says of a passage: one of four answers, with the figure it rests on.
 *
 * <p>Figures of different units are compared by their margins alone: 1 is at the limit that warns,
 * 0 at the limit that stops, below 0 beyond it. What was not checked has neither figure nor margin,
 * and never counts as holding.
 *
 * <pre>{@code
 * Verdict bar = depthOverTheBar.check(passage);
 * if (!bar.holds()) {
 *   System.out.println(bar.message()); // depth at the bar: 0.4 metres, beyond the limit of 0.5
 * }
 * }</pre>
 */
public final class Verdict implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * The four answers, the better first.
   *
   * <pre>{@code
   * boolean unknown = verdict.answer() == Verdict.Answer.NOT_CHECKED;
   * }</pre>
   */
  public enum Answer {
    /** Within both limits. */
    WITHIN,
    /** Beyond the limit that warns, not beyond the one that stops. */
    WARNED,
    /** Beyond the limit that stops. */
    STOPPED,
    /** Not checked, since data are missing: it may hold or not. */
    NOT_CHECKED
  }

  private final Answer answer;
  private final double figure;
  private final String unit;
  private final double margin;

  /** What was checked. */
  private final Note about;

  /** What was found, where it has no figure. */
  private final @Nullable Note why;

  private final double warn;
  private final double stop;
  private final @Nullable Instant when;
  private final @Nullable Position where;

  private Verdict(
      Answer answer,
      double figure,
      String unit,
      double margin,
      Note about,
      @Nullable Note why,
      double warn,
      double stop,
      @Nullable Instant when,
      @Nullable Position where) {
    this.answer = answer;
    this.figure = figure;
    this.unit = unit;
    this.margin = margin;
    this.about = about;
    this.why = why;
    this.warn = warn;
    this.stop = stop;
    this.when = when;
    this.where = where;
  }

  /**
   * A figure held against its limits. The limit that stops may lie below the one that warns, as for
   * a depth, or above it, as for a stream.
   *
   * @param name what is asked for, in a few words
   * @param figure the figure
   * @param unit unit of figure and limits, in the plural
   * @param warn the limit that warns
   * @param stop the limit that stops, another than {@code warn}
   * @return within, warned or stopped; a figure exactly on a limit is not beyond it
   * @throws IllegalArgumentException if a number is NaN or infinite, or the limits are equal
   */
  public static Verdict of(String name, double figure, String unit, double warn, double stop) {
    return of(Condition.own(name), figure, unit, warn, stop);
  }

  /**
   * A figure held against its limits, under a code that a translation knows.
   *
   * @param about what is asked for, in a few words
   * @param figure the figure
   * @param unit unit of figure and limits, in the plural
   * @param warn the limit that warns
   * @param stop the limit that stops, another than {@code warn}
   * @return within, warned or stopped; a figure exactly on a limit is not beyond it
   * @throws IllegalArgumentException if a number is NaN or infinite, or the limits are equal
   */
  public static Verdict of(Note about, double figure, String unit, double warn, double stop) {
    if (!(Math.abs(figure) <= Double.MAX_VALUE)) { // NaN too
      throw new IllegalArgumentException(
          about.text() + " must be a finite figure, but was " + figure);
    }
    Limits.refuseBad(about.text(), unit, warn, stop);
    double margin = (figure - stop) / (warn - stop);
    Answer answer = margin >= 1.0 ? Answer.WITHIN : margin >= 0.0 ? Answer.WARNED : Answer.STOPPED;
    return new Verdict(answer, figure, unit, margin, about, null, warn, stop, null, null);
  }

  /**
   * A finding without a figure that holds.
   *
   * @param name what was checked, in a few words
   * @param why what was found
   * @return the verdict, its margin 1
   */
  public static Verdict within(String name, String why) {
    return within(Condition.own(name), ownWords(why));
  }

  /**
   * The same, under codes that a translation knows.
   *
   * @param about what was checked, in a few words
   * @param why what was found
   * @return the verdict of {@link #within(String, String)}
   */
  public static Verdict within(Note about, Note why) {
    return withoutFigure(Answer.WITHIN, 1.0, about, why);
  }

  /**
   * A finding without a figure that warns.
   *
   * @param name what was checked, in a few words
   * @param why what was found
   * @return the verdict, its margin 0.5: half way from the limit that stops to the one that warns
   */
  public static Verdict warned(String name, String why) {
    return warned(Condition.own(name), ownWords(why));
  }

  /**
   * The same, under codes that a translation knows.
   *
   * @param about what was checked, in a few words
   * @param why what was found
   * @return the verdict of {@link #warned(String, String)}
   */
  public static Verdict warned(Note about, Note why) {
    return withoutFigure(Answer.WARNED, 0.5, about, why);
  }

  /**
   * A finding without a figure that stops: {@code landing at the spit: lies open to the swell}.
   *
   * @param name what was checked, in a few words
   * @param why what was found
   * @return the verdict, its margin -1
   */
  public static Verdict stopped(String name, String why) {
    return stopped(Condition.own(name), ownWords(why));
  }

  /**
   * The same, under codes that a translation knows.
   *
   * @param about what was checked, in a few words
   * @param why what was found
   * @return the verdict of {@link #stopped(String, String)}
   */
  public static Verdict stopped(Note about, Note why) {
    return withoutFigure(Answer.STOPPED, -1.0, about, why);
  }

  /**
   * Not checked.
   *
   * @param name what was to be checked, in a few words
   * @param why what is missing, in a few words: {@code no stream is known there and then}
   * @return the verdict
   */
  public static Verdict notChecked(String name, String why) {
    return notChecked(Condition.own(name), ownWords(why));
  }

  /**
   * The same, under codes that a translation knows.
   *
   * @param about what was to be checked, in a few words
   * @param why what is missing, in a few words
   * @return the verdict of {@link #notChecked(String, String)}
   */
  public static Verdict notChecked(Note about, Note why) {
    return withoutFigure(Answer.NOT_CHECKED, Double.NaN, about, why);
  }

  /** Words of the caller's own, which no translation knows. */
  private static Note ownWords(String why) {
    String text = Objects.requireNonNull(why, "why");
    return Note.information("why.own", text.isEmpty() ? "-" : text).with("words", text);
  }

  private static Verdict withoutFigure(Answer answer, double margin, Note about, Note why) {
    return new Verdict(
        answer,
        Double.NaN,
        "",
        margin,
        Objects.requireNonNull(about, "about"),
        Objects.requireNonNull(why, "why"),
        Double.NaN,
        Double.NaN,
        null,
        null);
  }

  /**
   * The same verdict with the moment that decides it.
   *
   * @param time when
   * @return the verdict with its time
   */
  public Verdict at(Instant time) {
    return new Verdict(
        answer,
        figure,
        unit,
        margin,
        about,
        why,
        warn,
        stop,
        Objects.requireNonNull(time, "time"),
        where);
  }

  /**
   * The same verdict with the place that decides it.
   *
   * @param place where
   * @return the verdict with its place
   */
  public Verdict at(Position place) {
    return new Verdict(
        answer,
        figure,
        unit,
        margin,
        about,
        why,
        warn,
        stop,
        when,
        Objects.requireNonNull(place, "place"));
  }

  /**
   * Which of the four.
   *
   * @return the answer
   */
  public Answer answer() {
    return answer;
  }

  /**
   * Whether the condition holds, with or without a warning.
   *
   * @return true if it is within both limits or only beyond the one that warns; false if it was not
   *     checked
   */
  public boolean holds() {
    return answer == Answer.WITHIN || answer == Answer.WARNED;
  }

  /**
   * The figure held against the limits.
   *
   * @return in {@link #unit}; empty if it was not checked or has none
   */
  public OptionalDouble figure() {
    return Double.isNaN(figure) ? OptionalDouble.empty() : OptionalDouble.of(figure);
  }

  /**
   * The unit of the figure.
   *
   * @return in the plural, for example {@code metres}; empty if there is no figure
   */
  public String unit() {
    return unit;
  }

  /**
   * How far the figure lies inside its limits, as a share of the step from the limit that stops to
   * the one that warns.
   *
   * @return 1 at the limit that warns, 0 at the one that stops, negative beyond it; empty if it was
   *     not checked
   */
  public OptionalDouble margin() {
    return Double.isNaN(margin) ? OptionalDouble.empty() : OptionalDouble.of(margin);
  }

  /** The margin; NaN if it was not checked. */
  double marginOrNaN() {
    return margin;
  }

  /**
   * When the figure is the worst.
   *
   * @return the time; empty if it has none
   */
  public Optional<Instant> when() {
    return Optional.ofNullable(when);
  }

  /**
   * Where the figure is the worst.
   *
   * @return the place; empty if it has none
   */
  public Optional<Position> where() {
    return Optional.ofNullable(where);
  }

  /**
   * What was checked and found, without time and place.
   *
   * @return a few words without a full stop
   */
  public String reason() {
    if (why != null) {
      boolean open = answer == Answer.NOT_CHECKED;
      return about.text() + ": " + (open ? "not checked, " : "") + why.text();
    }
    // put into words only when asked: a search makes thousands of verdicts that nobody reads
    String told = about.text() + ": " + Limits.rounded(figure) + " " + unit;
    return switch (answer) {
      case WARNED -> told + ", beyond " + Limits.rounded(warn) + ", where it warns";
      case STOPPED -> told + ", beyond the limit of " + Limits.rounded(stop);
      default -> told;
    };
  }

  /**
   * What was checked, in a few words under the check's own code.
   *
   * @return for example {@code check.stream}; {@code condition.own} for a name of the caller's own
   */
  public Note about() {
    return about;
  }

  /**
   * What was checked and found as a note, so that it can be translated and a program need not parse
   * its text: its parts {@code about} and {@code why} with their own codes, or {@code figure},
   * {@code warn} and {@code stop} as numbers and {@code unit}; {@code whenTime} and {@code where}
   * stand beside them.
   *
   * @return {@code finding.within}, {@code finding.warned} or {@code finding.stopped} for a figure;
   *     {@code finding.found} or {@code finding.not-checked} without one; its text is {@link
   *     #reason}
   */
  public Note note() {
    Severity severity =
        answer == Answer.WITHIN
            ? Severity.INFORMATION
            : answer == Answer.STOPPED ? Severity.WARNING : Severity.CAUTION;
    Note note =
        new Note(code(), severity, reason(), Collections.emptyMap(), Collections.emptyMap())
            .with("about", about);
    note = when == null ? note : note.with("whenTime", when.toString());
    note = where == null ? note : note.with("where", where.text(AngleForm.DEGREES_MINUTES, 1));
    if (why != null) {
      return note.with("why", why);
    }
    return note.with("figure", figure).with("unit", unit).with("warn", warn).with("stop", stop);
  }

  private String code() {
    if (why != null) {
      return answer == Answer.NOT_CHECKED ? "finding.not-checked" : "finding.found";
    }
    return answer == Answer.WITHIN
        ? "finding.within"
        : answer == Answer.WARNED ? "finding.warned" : "finding.stopped";
  }

  /**
   * The verdict as plain English; its time is UTC, cut to the second.
   *
   * @return one line without a full stop
   */
  public String message() {
    return reason()
        + (when == null ? "" : ", at " + when.truncatedTo(ChronoUnit.SECONDS))
        + (where == null ? "" : ", near " + where.text(AngleForm.DEGREES_MINUTES, 1));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Verdict that
        && answer == that.answer
        && Double.doubleToLongBits(figure) == Double.doubleToLongBits(that.figure)
        && Double.doubleToLongBits(margin) == Double.doubleToLongBits(that.margin)
        && unit.equals(that.unit)
        && about.equals(that.about)
        && Objects.equals(why, that.why)
        && Double.doubleToLongBits(warn) == Double.doubleToLongBits(that.warn)
        && Double.doubleToLongBits(stop) == Double.doubleToLongBits(that.stop)
        && Objects.equals(when, that.when)
        && Objects.equals(where, that.where);
  }

  @Override
  public int hashCode() {
    return Objects.hash(answer, figure, about, when, where);
  }

  @Override
  public String toString() {
    return message();
  }
}
