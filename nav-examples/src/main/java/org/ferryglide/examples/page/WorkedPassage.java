package org.ferryglide.examples.page;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.passage.DeckCard;
import org.ferryglide.nav.passage.LandingInReach;
import org.ferryglide.nav.passage.LaunchInterval;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.Variant;
import org.ferryglide.nav.passage.WayHome;
import org.ferryglide.nav.passage.WhenToGo;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.tide.folder.PassageFolder;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.StandardPort;
import org.jspecify.annotations.Nullable;

/**
 * A passage with everything that page, card sheet and shore note print of it, worked out once.
 *
 * <pre>{@code
 * WorkedPassage worked = WorkedPassage.of(PassageFolder.read(folder)).withWayHome();
 * }</pre>
 */
public final class WorkedPassage {
  private static final Duration STEP = Duration.ofMinutes(10);

  /** Edges are refined to the second; a span shorter than this may be missed. */
  static final Duration LOOK_HOME = Duration.ofMinutes(15);

  private final Passage passage;
  private final Instant departure;
  private final Outcome<TimedPlan, NotPossible> plan;
  private final WhenToGo day;
  private final List<Variant> variants;
  private final @Nullable LaunchInterval launchInterval;
  private final @Nullable WayHome wayHome;
  private final @Nullable HighWater highWater;
  private final ShoreDetails shore;
  private final Labels labels;
  private final Units units;

  /** The high water that a card counts from. */
  record HighWater(String port, Instant time, double heightMetres, double springFraction) {
    OptionalDouble share() {
      return Double.isNaN(springFraction)
          ? OptionalDouble.empty()
          : OptionalDouble.of(springFraction);
    }
  }

  private WorkedPassage(
      Passage passage,
      Instant departure,
      Outcome<TimedPlan, NotPossible> plan,
      WhenToGo day,
      List<Variant> variants,
      @Nullable LaunchInterval launchInterval,
      @Nullable WayHome wayHome,
      @Nullable HighWater highWater,
      ShoreDetails shore,
      Labels labels,
      Units units) {
    this.passage = passage;
    this.departure = departure;
    this.plan = plan;
    this.day = day;
    this.variants = variants;
    this.launchInterval = launchInterval;
    this.wayHome = wayHome;
    this.highWater = highWater;
    this.shore = shore;
    this.labels = labels;
    this.units = units;
  }

  /**
   * The passage of a folder, for its planned start, with the high water that its stream tables
   * count from and what its {@code shore.csv} tells those ashore.
   *
   * @param folder the folder
   * @return what page, sheet and note print, without the way home
   * @throws org.ferryglide.nav.note.InputFormatException if {@code shore.csv} is malformed
   */
  public static WorkedPassage of(PassageFolder folder) {
    Instant start = folder.start().toInstant();
    WorkedPassage bare = of(folder.passage(), start);
    Instant middle =
        bare.plan.match(
            one -> start.plus(Duration.between(start, one.arrival()).dividedBy(2)), why -> start);
    TideTable tides = folder.streams().get(0).tides();
    TideEvent water = tides.highWaterNearest(middle);
    StandardPort port = folder.streams().get(0).table().standardPort();
    double share = port.meanRanges().springFraction(tides.range(water));
    HighWater high = new HighWater(tides.port(), water.time(), water.height().metres(), share);
    return new WorkedPassage(
        bare.passage,
        start,
        bare.plan,
        bare.day,
        bare.variants,
        bare.launchInterval,
        null,
        high,
        ShoreDetails.of(folder),
        bare.labels,
        bare.units);
  }

  /**
   * A passage built in code.
   *
   * @param passage the passage
   * @param departure when the whole party is to be under way
   * @return what page, sheet and note print, with blanks for high water, way home and shore
   */
  public static WorkedPassage of(Passage passage, Instant departure) {
    ZoneId zone = passage.zone().getRules().getOffset(departure);
    LocalDate date = departure.atZone(zone).toLocalDate();
    Outcome<TimedPlan, NotPossible> plan = TimedPlan.of(passage, departure);
    return new WorkedPassage(
        passage,
        departure,
        plan,
        WhenToGo.search(
            passage,
            date.atStartOfDay(zone).toInstant(),
            date.plusDays(1).atStartOfDay(zone).toInstant(),
            STEP),
        Variant.sideBySide(passage, departure),
        plan.solved().map(LaunchInterval::of).orElse(null),
        null,
        null,
        ShoreDetails.NONE,
        Labels.english(),
        Units.NAUTICAL);
  }

  /**
   * The same with the way home from every way point, looked at every 15 minutes until sunset, edges
   * to the second. It takes the longest of all to work out: seconds for a passage of four legs.
   *
   * @return the changed work; this one if the passage is not possible
   */
  public WorkedPassage withWayHome() {
    return plan.<WorkedPassage>match(
        one ->
            new WorkedPassage(
                passage,
                departure,
                plan,
                day,
                variants,
                launchInterval,
                WayHome.of(one, lastLook(one), LOOK_HOME),
                highWater,
                shore,
                labels,
                units),
        why -> this);
  }

  /** Sunset at the landing, or half a day on where the sun does not set. */
  private static Instant lastLook(TimedPlan plan) {
    double left = plan.daylightLeftSeconds(plan.departure());
    double seconds = left > 0.0 && left < 86_400.0 ? left : 43_200.0;
    Instant until = plan.departure().plusSeconds((long) seconds);
    return until.isBefore(plan.landed()) ? plan.landed() : until;
  }

  /**
   * The same with other details for those ashore.
   *
   * @param details the details
   * @return the changed work
   */
  public WorkedPassage withShore(ShoreDetails details) {
    return with(details, labels, units);
  }

  /**
   * The same in other words.
   *
   * @param translation the words
   * @return the changed work
   */
  public WorkedPassage withLabels(Labels translation) {
    return with(shore, translation, units);
  }

  /**
   * The same in other units.
   *
   * @param printed the units, {@link Units#NAUTICAL} unless chosen
   * @return the changed work
   */
  public WorkedPassage withUnits(Units printed) {
    return with(shore, labels, printed);
  }

  private WorkedPassage with(ShoreDetails details, Labels translation, Units printed) {
    return new WorkedPassage(
        passage,
        departure,
        plan,
        day,
        variants,
        launchInterval,
        wayHome,
        highWater,
        details,
        translation,
        printed);
  }

  /**
   * The passage.
   *
   * @return what was worked out
   */
  public Passage passage() {
    return passage;
  }

  /**
   * The planned departure.
   *
   * @return when the whole party is to be under way
   */
  public Instant departure() {
    return departure;
  }

  /**
   * The plan for that departure.
   *
   * @return the plan, or why it is not possible
   */
  public Outcome<TimedPlan, NotPossible> plan() {
    return plan;
  }

  /**
   * The deck card of the plan, all its sides filled.
   *
   * @return the card; empty if the passage is not possible
   */
  public Optional<DeckCard> card() {
    return plan.solved().map(this::card);
  }

  private DeckCard card(TimedPlan one) {
    DeckCard card = DeckCard.of(one).withWords(labels.words()).withUnits(units);
    if (highWater != null) {
      card =
          card.withHighWater(
              highWater.port(),
              highWater.time(),
              Distance.ofMetres(highWater.heightMetres()),
              highWater.share());
    }
    if (launchInterval != null) {
      card = card.withLaunchInterval(launchInterval);
    }
    for (Instant time : hours(one)) {
      boolean full = time.getEpochSecond() % 3600 == 0;
      card = full || time.equals(one.departure()) ? card.withLandingsFrom(time) : card;
    }
    return wayHome == null ? card : card.withWayHome(wayHome);
  }

  WhenToGo day() {
    return day;
  }

  List<Variant> variants() {
    return variants;
  }

  Optional<LaunchInterval> launchInterval() {
    return Optional.ofNullable(launchInterval);
  }

  Optional<WayHome> wayHome() {
    return Optional.ofNullable(wayHome);
  }

  Optional<HighWater> highWater() {
    return Optional.ofNullable(highWater);
  }

  ShoreDetails shore() {
    return shore;
  }

  /** The landings in reach, at the departure and at every hour of the plan after it. */
  Map<Instant, List<LandingInReach>> landings() {
    Map<Instant, List<LandingInReach>> landings = new LinkedHashMap<>();
    plan.solved()
        .ifPresent(one -> hours(one).forEach(t -> landings.put(t, LandingInReach.from(one, t))));
    return Collections.unmodifiableMap(landings);
  }

  /** The departure, every full hour of the clock under way, and the arrival. */
  static List<Instant> hours(TimedPlan plan) {
    List<Instant> hours = new ArrayList<>();
    plan.legs()
        .forEach(
            leg ->
                leg.hours().stream()
                    .map(hour -> hour.span().from())
                    .filter(time -> hours.isEmpty() || time.isAfter(hours.get(hours.size() - 1)))
                    .forEach(hours::add));
    hours.add(plan.arrival());
    return hours;
  }

  /**
   * The words it is printed in.
   *
   * @return the labels
   */
  public Labels labels() {
    return labels;
  }

  /** By the clock of the departure throughout: one changed on the way shows an hour twice. */
  Printed printed() {
    return printed(passage.zone().getRules().getOffset(departure));
  }

  /** Whether the clocks ashore are changed while the party is out. */
  boolean isClockChanged() {
    ZoneRules clock = passage.zone().getRules();
    Instant landed = plan.solved().map(TimedPlan::landed).orElse(departure);
    return !clock.getOffset(departure).equals(clock.getOffset(landed));
  }

  /** By another clock. */
  Printed printed(ZoneId clock) {
    return new Printed(clock, departure.atZone(clock).toLocalDate(), labels, units);
  }
}
