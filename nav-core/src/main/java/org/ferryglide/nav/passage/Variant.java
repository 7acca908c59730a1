package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.Reason;
import org.ferryglide.nav.water.AdjustedStream;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;

/**
 * One what-if of a passage: what becomes of the plan if one thing turns out otherwise.
 *
 * <pre>{@code
 * for (Variant variant : Variant.sideBySide(passage, departure)) {
 *   String line =
 *       variant.outcome().match(plan -> plan.arrival() + ", " + plan.worst(), NotPossible::message);
 *   System.out.println(variant.name() + ": " + line);
 * }
 * }</pre>
 *
 * <p>The program's own conditions are checked as they are: one that holds a stream of its own does
 * not see it changed.
 */
public final class Variant implements Serializable {
  private static final long serialVersionUID = 1L;

  /** The name of the first variant, with nothing changed. */
  public static final String AS_PLANNED = "as planned";

  /**
   * How many times as strong the wind of the variant with more wind is. Common practice, no source:
   * about a force of the Beaufort scale more.
   */
  public static final double MORE_WIND = 1.5;

  private static final double QUARTER = 0.25;

  private final Note about;
  private final Instant departure;
  private final Outcome<TimedPlan, NotPossible> outcome;

  private Variant(Note about, Instant departure, Outcome<TimedPlan, NotPossible> outcome) {
    this.about = about;
    this.departure = departure;
    this.outcome = outcome;
  }

  /**
   * The usual what-ifs of a departure: the slower party; 30 minutes early, 30 and 60 late; the
   * stream 30 and 60 minutes early and late, a quarter stronger and weaker, and none at all, as in
   * an eddy inshore; half as much wind again; half the visibility.
   *
   * <p>The variant without a stream leaves it unknown where it was unknown. A stream made stronger
   * or weaker is compared with the limits as it is, without the error of the rate on top. Where no
   * wind or no visibility was given, that variant says so by its name and is not possible for want
   * of data.
   *
   * @param passage the passage
   * @param departure the planned departure
   * @return the variants, {@link #AS_PLANNED} first; unmodifiable
   */
  public static List<Variant> sideBySide(Passage passage, Instant departure) {
    List<Variant> all = new ArrayList<>();
    all.add(of(about("as-planned", AS_PLANNED), passage, departure));
    all.add(of(about("slower", "slower party"), passage.slower(), departure));
    for (int late : new int[] {-30, 30, 60}) {
      all.add(of(late("", late), passage, departure.plus(Duration.ofMinutes(late))));
    }
    for (int late : new int[] {-60, -30, 30, 60}) {
      all.add(
          of(late("stream", late), withStream(passage, 1.0, Duration.ofMinutes(late)), departure));
    }
    all.add(
        of(
            about("stream-stronger", "stream a quarter stronger"),
            ofRate(passage, 1.0 + QUARTER),
            departure));
    all.add(
        of(
            about("stream-weaker", "stream a quarter weaker"),
            ofRate(passage, 1.0 - QUARTER),
            departure));
    all.add(of(about("no-stream", "no stream"), ofRate(passage, 0.0), departure));
    all.add(moreWind(passage, departure));
    all.add(lessVisibility(passage, departure));
    return Collections.unmodifiableList(all);
  }

  private static Note about(String code, String words) {
    return Note.information("what-if." + code, words);
  }

  private static Note late(String what, int minutes) {
    String side = minutes < 0 ? "early" : "late";
    String words = (what.isEmpty() ? "" : what + " ") + Math.abs(minutes) + " minutes " + side;
    return about((what.isEmpty() ? "" : what + "-") + side, words)
        .with("offMinutes", Math.abs(minutes));
  }

  private static Variant of(Note about, Passage passage, Instant departure) {
    return new Variant(about, departure, TimedPlan.of(passage, departure));
  }

  private static Passage ofRate(Passage passage, double factor) {
    Passage adjusted = withStream(passage, factor, Duration.ZERO);
    return adjusted.toBuilder().limits(adjusted.limits().withRateError(0.0)).build();
  }

  private static Passage withStream(Passage passage, double factor, Duration late) {
    UnaryOperator<StreamField> change = stream -> AdjustedStream.of(stream, factor, late);
    return PartPassages.withStreams(passage, change);
  }

  private static Variant moreWind(Passage passage, Instant departure) {
    Note about = about("more-wind", "half as much wind again");
    WindField wind = passage.wind().orElse(null);
    return wind == null
        ? unknown(about("wind-not-given", "more wind, none was given"), passage, departure)
        : of(about, passage.toBuilder().wind(new StrongerWind(wind, MORE_WIND)).build(), departure);
  }

  private static Variant lessVisibility(Passage passage, Instant departure) {
    Note about = about("less-visibility", "half the visibility");
    return passage
        .visibility()
        .map(far -> of(about, passage.toBuilder().visibility(far.times(0.5)).build(), departure))
        .orElseGet(
            () ->
                unknown(
                    about("visibility-not-given", "less visibility, none was given"),
                    passage,
                    departure));
  }

  private static Variant unknown(Note about, Passage passage, Instant departure) {
    NotPossible why =
        NotPossible.because(Reason.NO_DATA).at(passage.wayPoints().get(0).position(), departure);
    return new Variant(about, departure, Outcome.ofUnsolved(why));
  }

  /**
   * What is changed.
   *
   * @return a few words
   */
  public String name() {
    return about.text();
  }

  /**
   * What is changed, under a code that a translation knows.
   *
   * @return words whose text is {@link #name}
   */
  public Note about() {
    return about;
  }

  /**
   * When this variant leaves.
   *
   * @return the departure
   */
  public Instant departure() {
    return departure;
  }

  /**
   * The outcome of the plan.
   *
   * @return the plan with its checks, or which leg is not possible and why
   */
  public Outcome<TimedPlan, NotPossible> outcome() {
    return outcome;
  }

  /**
   * Whether everything was checked and lies within its stop limits.
   *
   * @return false too if the variant is not possible, or a check could not be made
   */
  public boolean holds() {
    return outcome.<Boolean>match(TimedPlan::holds, why -> false);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Variant that
        && about.equals(that.about)
        && departure.equals(that.departure)
        && outcome.equals(that.outcome);
  }

  @Override
  public int hashCode() {
    return Objects.hash(about, departure, outcome);
  }

  @Override
  public String toString() {
    return name() + ": " + outcome.<String>match(TimedPlan::toString, NotPossible::message);
  }
}
