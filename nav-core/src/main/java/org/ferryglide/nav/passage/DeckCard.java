package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.nav.note.Words;
import org.jspecify.annotations.Nullable;

/**
 * What a paddler carries on deck: a plan as plain text, in sides small enough to be read one at a
 * time.
 *
 * <pre>{@code
 * DeckCard card =
 *     DeckCard.of(plan)
 *         .withHighWater("Orrin Quay", highWater, Distance.ofMetres(5.3), OptionalDouble.of(0.85))
 *         .withNotLaterThan(2, lastTurn);
 * card.afloat().forEach(System.out::println); // a side for each leg, at most 24 by 10
 * System.out.println(card); // every side
 * }</pre>
 *
 * <p>A side read afloat holds one three-figure direction without a label, the heading to steer by
 * the magnetic compass; every other direction has its label. Each figure is rounded to the side on
 * which its own check is worse: arrivals late, earliest arrivals early, rates and cross-track
 * distances up, heights toward the nearer level at which a landing stops working. Minutes are the
 * differences of printed times. What is not known is a blank to be filled in, never a zero, and
 * what was not checked stands in the top line. No card says go.
 *
 * <p>Official charts, tables, forecasts and the advice of the coastguard come first.
 */
public final class DeckCard implements Serializable {
  private static final long serialVersionUID = 1L;

  /** The last time of a leg that is not to be begun at all: a known answer, never a blank. */
  static final Instant NEVER = Instant.EPOCH;

  private final TimedPlan plan;
  private final int marks;
  private final Words words;
  private final Units units;
  private final @Nullable HighWater highWater;
  private final @Nullable Interval launchInterval;

  @SuppressWarnings("serial") // a TreeMap
  private final Map<Integer, Instant> notLaterThan;

  @SuppressWarnings("serial") // an ArrayList within
  private final List<Section> further;

  /** The high water that a card is good for. */
  record HighWater(String port, Instant time, double heightMetres, double share)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    OptionalDouble springFraction() {
      return Double.isNaN(share) ? OptionalDouble.empty() : OptionalDouble.of(share);
    }
  }

  /** The times between which the first boat may be launched. */
  private sealed interface Interval extends Serializable {
    String words(DeckCard card);
  }

  private record Chosen(String words) implements Interval {
    private static final long serialVersionUID = 1L;

    @Override
    public String words(DeckCard card) {
      return words;
    }
  }

  private record Searched(LaunchInterval interval) implements Interval {
    private static final long serialVersionUID = 1L;

    @Override
    public String words(DeckCard card) {
      return CardSections.words(card.text(), card.plan, interval);
    }
  }

  /** Something more for the further sides, put into words with the card. */
  sealed interface Section extends Serializable {
    String title(DeckCard card);

    List<String> lines(DeckCard card);
  }

  @SuppressWarnings("serial") // an ArrayList within
  private record Own(String title, List<String> lines) implements Section {
    private static final long serialVersionUID = 1L;

    @Override
    public String title(DeckCard card) {
      return title;
    }

    @Override
    public List<String> lines(DeckCard card) {
      return lines;
    }
  }

  private record Home(WayHome wayHome) implements Section {
    private static final long serialVersionUID = 1L;

    @Override
    public String title(DeckCard card) {
      return card.text().say("way-home");
    }

    @Override
    public List<String> lines(DeckCard card) {
      return new CardSections(card).wayHome(wayHome);
    }
  }

  private record From(Instant time) implements Section {
    private static final long serialVersionUID = 1L;

    @Override
    public String title(DeckCard card) {
      return card.text().say("landings-from", "time", card.text().late(time));
    }

    @Override
    public List<String> lines(DeckCard card) {
      return new CardSections(card).landings(time);
    }
  }

  private DeckCard(
      TimedPlan plan,
      int marks,
      Words words,
      Units units,
      @Nullable HighWater highWater,
      @Nullable Interval launchInterval,
      Map<Integer, Instant> notLaterThan,
      List<Section> further) {
    this.plan = plan;
    this.marks = marks;
    this.words = words;
    this.units = units;
    this.highWater = highWater;
    this.launchInterval = launchInterval;
    this.notLaterThan = notLaterThan;
    this.further = further;
  }

  /**
   * The card of a plan, with blanks for what a plan does not know.
   *
   * @param plan the plan
   * @return the card
   */
  public static DeckCard of(TimedPlan plan) {
    return new DeckCard(
        Objects.requireNonNull(plan, "plan"),
        1,
        CardText.ENGLISH,
        Units.NAUTICAL,
        null,
        null,
        Collections.emptyMap(),
        Collections.emptyList());
  }

  /**
   * The same card for a compass with marks so far apart; headings are printed at the nearest.
   *
   * @param degrees from mark to mark, 1, 2, 5 or 10
   * @return the changed card
   * @throws IllegalArgumentException if {@code degrees} is none of them, or the card has a launch
   *     interval that was searched for other marks
   */
  public DeckCard withMarksEvery(int degrees) {
    return new DeckCard(
            plan,
            checkedMarks(degrees),
            words,
            units,
            highWater,
            launchInterval,
            notLaterThan,
            further)
        .withOneSetOfMarks();
  }

  static int checkedMarks(int degrees) {
    if (degrees != 1 && degrees != 2 && degrees != 5 && degrees != 10) {
      throw new IllegalArgumentException(
          "marks of a compass must be 1, 2, 5 or 10 degrees apart, but were " + degrees);
    }
    return degrees;
  }

  /** An interval holds for the headings it was searched for, at their marks. */
  private DeckCard withOneSetOfMarks() {
    if (launchInterval instanceof Searched searched && searched.interval().marksEvery() != marks) {
      throw new IllegalArgumentException(
          "a launch interval must be searched for the card's own marks, every "
              + marks
              + " degrees, but was for marks every "
              + searched.interval().marksEvery());
    }
    return this;
  }

  /**
   * The words that cards and findings are printed in, to start a translation from.
   *
   * @return templates by key
   */
  public static Words english() {
    return CardText.ENGLISH;
  }

  /**
   * The same card in the words of another language. Lines too long for their side are cut, and
   * shown to be.
   *
   * @param translation the words of {@link #english} by the same keys; those left out stay English
   * @return the changed card
   */
  public DeckCard withWords(Words translation) {
    return new DeckCard(
        plan,
        marks,
        CardText.ENGLISH.with(translation),
        units,
        highWater,
        launchInterval,
        notLaterThan,
        further);
  }

  /**
   * The same card in other units; a position for radio stays in nautical miles.
   *
   * @param printed the units, {@link Units#NAUTICAL} unless chosen
   * @return the changed card
   */
  public DeckCard withUnits(Units printed) {
    return new DeckCard(
        plan,
        marks,
        words,
        Objects.requireNonNull(printed, "units"),
        highWater,
        launchInterval,
        notLaterThan,
        further);
  }

  /**
   * The same card with the high water it is good for.
   *
   * @param port where
   * @param time when; printed to the minute before
   * @param height its height above the datum of the table; printed rounded down
   * @param springFraction where its range lies from mean neaps (0) to mean springs (1); empty if
   *     not known
   * @return the changed card
   * @throws IllegalArgumentException if the name is empty or the share is NaN or infinite
   */
  public DeckCard withHighWater(
      String port, Instant time, Distance height, OptionalDouble springFraction) {
    HighWater water =
        new HighWater(
            Names.checked(port, "name of a port"),
            Objects.requireNonNull(time, "time"),
            height.metres(),
            springFraction.isPresent()
                ? Arguments.finite(springFraction.getAsDouble(), "share of springs", "parts")
                : Double.NaN);
    return new DeckCard(plan, marks, words, units, water, launchInterval, notLaterThan, further);
  }

  /**
   * The same card with the times between which the first boat may be launched.
   *
   * @param interval the interval and what ends it, as it is to be printed
   * @return the changed card
   * @throws IllegalArgumentException if the words are empty or hold control characters
   */
  public DeckCard withLaunchInterval(String interval) {
    return with(new Chosen(Names.checked(interval, "launch interval")));
  }

  /**
   * The same card with the last time to set out on a leg.
   *
   * @param leg number of the leg, the first is 1
   * @param time the last time; printed to the minute before
   * @return the changed card
   * @throws IllegalArgumentException if the plan has no such leg
   */
  public DeckCard withNotLaterThan(int leg, Instant time) {
    Arguments.within(leg, 1, plan.passage().legs().size(), "number of a leg", "legs");
    Map<Integer, Instant> more = new TreeMap<>(notLaterThan);
    more.put(leg, CardText.earlier(time));
    return new DeckCard(plan, marks, words, units, highWater, launchInterval, more, further);
  }

  /**
   * The same card with the times between which the first boat may be launched, and what ends them.
   *
   * @param interval the interval of the departure, searched for this plan and the card's marks
   * @return the changed card
   * @throws IllegalArgumentException if it was searched for other marks
   */
  public DeckCard withLaunchInterval(LaunchInterval interval) {
    return with(new Searched(Objects.requireNonNull(interval, "interval"))).withOneSetOfMarks();
  }

  private DeckCard with(Interval interval) {
    return new DeckCard(plan, marks, words, units, highWater, interval, notLaterThan, further);
  }

  /**
   * The same card with the last time to go on from every way point, and a further side with the
   * spans in which home can be made from it: headings solved for the first and the last of each,
   * and what bars the way between.
   *
   * @param wayHome the times, searched for this plan
   * @return the changed card
   */
  public DeckCard withWayHome(WayHome wayHome) {
    DeckCard card = this;
    int first = plan.passage().legs().size() - plan.legs().size();
    for (int i = 0; i < wayHome.turns().size(); i++) {
      card =
          card.withNotLaterThan(first + i + 1, wayHome.turns().get(i).notLaterThan().orElse(NEVER));
    }
    return card.with(new Home(wayHome));
  }

  /**
   * The same card with the landings in reach at a time, ahead, back and beside the way, each with
   * the heading solved for that time.
   *
   * @param time when, for example an hour of the plan
   * @return the changed card
   */
  public DeckCard withLandingsFrom(Instant time) {
    return with(new From(Objects.requireNonNull(time, "time")));
  }

  /**
   * The same card with something more on its further sides, such as the way home.
   *
   * @param title what it is
   * @param lines the words; long ones are continued
   * @return the changed card
   * @throws IllegalArgumentException if the title is empty or a line holds control characters
   */
  public DeckCard withFurther(String title, List<String> lines) {
    lines.forEach(line -> Names.checkedOrEmpty(line, "line of a card"));
    return with(new Own(Names.checked(title, "title"), new ArrayList<>(lines)));
  }

  private DeckCard with(Section section) {
    List<Section> more = new ArrayList<>(further);
    more.add(section);
    return new DeckCard(plan, marks, words, units, highWater, launchInterval, notLaterThan, more);
  }

  /**
   * The sides that are read afloat.
   *
   * @return one for each leg, at most 24 columns and 10 lines, each ended by a line feed;
   *     unmodifiable
   */
  public List<String> afloat() {
    return Collections.unmodifiableList(new AfloatSides(this).legs());
  }

  /**
   * All legs on one side, a line each: heading, ETA, by when it is to be begun; continued on
   * another side where there are more than five.
   *
   * @return sides of at most 24 columns and 10 lines; unmodifiable
   */
  public List<String> summary() {
    return Collections.unmodifiableList(new AfloatSides(this).summary());
  }

  /**
   * What is read ashore or in a rest: times, hours, tidal hours as spans of clock time, landings
   * with heights, what was added, the checks.
   *
   * @return sides of at most 40 columns and 30 lines; unmodifiable
   */
  public List<String> further() {
    return new FurtherSides(this).sides();
  }

  TimedPlan plan() {
    return plan;
  }

  int marks() {
    return marks;
  }

  Optional<HighWater> highWater() {
    return Optional.ofNullable(highWater);
  }

  CardText text() {
    return new CardText(plan, words, units);
  }

  Optional<String> launchInterval() {
    return Optional.ofNullable(launchInterval).map(interval -> interval.words(this));
  }

  Optional<Instant> notLaterThan(int leg) {
    return Optional.ofNullable(notLaterThan.get(leg));
  }

  List<Section> sections() {
    return further;
  }

  /** Every side, separated by lines of dashes. */
  @Override
  public String toString() {
    List<String> sides = new ArrayList<>(summary());
    sides.addAll(afloat());
    sides.addAll(further());
    return String.join("------------------------\n", sides);
  }
}
