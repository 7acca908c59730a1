package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.landfall.AimOff;
import org.ferryglide.nav.landfall.Side;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.SteadyRun;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.StreamField;

/**
 * A passage worked out for one departure: when the party is where, what it steers, and how far
 * everything is from the limits it has chosen. It never says go.
 *
 * <pre>{@code
 * TimedPlan plan = TimedPlan.of(passage, departure).orElseThrow();
 * plan.legs().forEach(System.out::println);
 * plan.verdicts().forEach(verdict -> System.out.println(verdict.message())); // the worst first
 * }</pre>
 */
public final class TimedPlan implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Passage passage;
  private final SteeredRoute route;
  private final List<PlannedLeg> legs;
  private final List<Verdict> verdicts;
  private final List<Note> notChecked;

  private TimedPlan(
      Passage passage,
      SteeredRoute route,
      List<PlannedLeg> legs,
      List<Verdict> verdicts,
      List<Note> notChecked) {
    this.passage = passage;
    this.route = route;
    this.legs = legs;
    this.verdicts = verdicts;
    this.notChecked = notChecked;
  }

  /**
   * Works out a passage for one departure.
   *
   * @param passage the passage
   * @param departure when the whole party is under way
   * @return the plan, or which leg is not possible and why
   */
  public static Outcome<TimedPlan, NotPossible> of(Passage passage, Instant departure) {
    Checks checks = passage.checks();
    return checks.room().withNotes().leaving(departure).map(route -> of(passage, route, checks));
  }

  private static TimedPlan of(Passage passage, SteeredRoute route, Checks checks) {
    Candidate candidate = new Candidate(passage, route, checks.room());
    List<Verdict> verdicts = new ArrayList<>(checks.check(candidate));
    verdicts.sort(
        (a, b) ->
            Double.compare(
                a.margin().orElse(Double.NEGATIVE_INFINITY),
                b.margin().orElse(Double.NEGATIVE_INFINITY)));
    List<PlannedLeg> legs = PlannedLegs.of(candidate);
    candidate.giveBack();
    return new TimedPlan(
        passage, route, legs, Collections.unmodifiableList(verdicts), checks.notChecked());
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
   * The route as it is steered, stops included.
   *
   * @return the route, ready for reckoning
   */
  public SteeredRoute route() {
    return route;
  }

  /**
   * The legs.
   *
   * @return one for each leg of the passage; unmodifiable
   */
  public List<PlannedLeg> legs() {
    return legs;
  }

  /**
   * When the first boat is launched.
   *
   * @return the departure less the time to launch
   */
  public Instant launch() {
    return departure().minus(passage.party().launching());
  }

  /**
   * When the whole party is under way.
   *
   * @return the departure
   */
  public Instant departure() {
    return route.departure();
  }

  /**
   * The likely time at which the landing is reached.
   *
   * @return the arrival
   */
  public Instant arrival() {
    return route.arrival();
  }

  /**
   * The likely time at which the last of the party is ashore.
   *
   * @return the arrival and the time to land
   */
  public Instant landed() {
    return arrival().plus(passage.party().landing());
  }

  /**
   * How far it is.
   *
   * @return the length of all legs as laid off
   */
  public Distance length() {
    return route.route().length();
  }

  /**
   * All verdicts, the worst first: what could not be checked, then by margin.
   *
   * @return one for each thing looked at; unmodifiable
   */
  public List<Verdict> verdicts() {
    return verdicts;
  }

  /**
   * The worst of them.
   *
   * @return the first of {@link #verdicts}; empty if nothing was looked at
   */
  public Optional<Verdict> worst() {
    return verdicts.isEmpty() ? Optional.empty() : Optional.of(verdicts.get(0));
  }

  /**
   * Whether everything that was to be looked at was looked at and lies within its stop limit. It is
   * not permission to go.
   *
   * @return false too if a check could not be made
   */
  public boolean holds() {
    return verdicts.stream().allMatch(Verdict::holds);
  }

  /**
   * What was not checked since the passage does not give it, for the line at the top of everything
   * printed.
   *
   * @return for example {@code dangers}; unmodifiable
   */
  public List<Note> notChecked() {
    return notChecked;
  }

  /**
   * How long the sun is still up when the landing is reached.
   *
   * @return seconds to sunset at the landing; negative in the dark: seconds to sunrise; at most two
   *     days
   */
  public double daylightLeftSeconds() {
    return daylightLeftSeconds(arrival());
  }

  /**
   * How long the sun is still up at the landing at another time, for example in an hour of the
   * plan.
   *
   * @param time when
   * @return as {@link #daylightLeftSeconds()}; NaN outside the years 1901 to 2099
   */
  public double daylightLeftSeconds(Instant time) {
    WayPoint end = passage.wayPoints().get(passage.wayPoints().size() - 1);
    return passage.daylights().at(end.position()).leftAt(EpochSeconds.of(time));
  }

  /**
   * The passage with a leg aimed off to one side of its mark, and from there on to the mark: far
   * enough that by this plan's own errors it is nearly certain (19 chances in 20 on the straight
   * course; the new one differs and may cost some points, see {@link AimOff}) which way to turn if
   * the mark is missed.
   *
   * <pre>{@code
   * Passage off = plan.aimingOff(2, Side.RIGHT);
   * TimedPlan.of(off, departure).orElseThrow().legs().get(1).sighting().get().sideIfMissed();
   * }</pre>
   *
   * @param leg number of the leg, the first is 1
   * @param side on which side of the mark to aim; the turn is to the other
   * @return a passage with one leg more
   * @throws IllegalArgumentException if the plan has no such leg
   */
  public Passage aimingOff(int leg, Side side) {
    Arguments.within(leg, 1, legs.size(), "number of a leg", "legs");
    return AimingOff.of(passage, legs.get(leg - 1), side);
  }

  /**
   * The way to the end of a leg as steady runs, each leg in its own stream, for an error budget, a
   * simulation or a landfall: {@code ErrorBudget.of(plan.runs(2), passage.errors())}. They begin
   * where the party was last ashore and knew its place.
   *
   * @param leg number of the leg, the first is 1
   * @return runs in order of time; unmodifiable
   * @throws IllegalArgumentException if the plan has no such leg
   */
  public List<SteadyRun> runs(int leg) {
    Arguments.within(leg, 1, legs.size(), "number of a leg", "legs");
    int first = leg;
    while (!PartPassages.isAshore(passage, first - 1)) {
      first--;
    }
    List<SteadyRun> runs = new ArrayList<>();
    for (PlannedLeg each : legs.subList(first - 1, leg)) {
      StreamField stream = each.leg().options().stream().orElse(passage.stream());
      runs.addAll(SteadyRun.along(each.steered(), stream));
    }
    return Collections.unmodifiableList(runs);
  }

  /**
   * Where the party would lie without paddling: from every hour after the departure and from the
   * strongest stream of each leg. It drifts with the stream, and before the wind by the craft's
   * response to it. A rescue takes about ten minutes, a bad one thirty (common practice, no
   * source).
   *
   * @return by the time at which it stops paddling: the place then, and after 10, 20 and 30
   *     minutes; fewer where stream or wind are not known; in order of time, unmodifiable
   */
  public Map<Instant, List<Position>> drifts() {
    return Drifts.of(new Candidate(passage, route));
  }

  /**
   * Where the party is at a time, as it is spoken over the radio: a true bearing from the nearest
   * mark to the party, and the distance.
   *
   * @param time when; before the departure and after the arrival, the party is at its ends
   * @return {@code radio.from} or {@code radio.at}, its text for example {@code two two five
   *     degrees true from Tarn Skerry, one decimal five miles}; the bearing to the nearest degree,
   *     the distance to the nearest tenth of a nautical mile. The mark is a way point or refuge
   *     with something to see, or any of them if none has
   */
  public Note radioPosition(Instant time) {
    Instant within = time.isBefore(departure()) ? departure() : time;
    return RadioPosition.from(passage, route.at(within.isAfter(arrival()) ? arrival() : within));
  }

  /**
   * What a reader should know: of the passage, and of every leg.
   *
   * @return each note once, the worst first; unmodifiable
   */
  public List<Note> notes() {
    Set<Note> notes = new LinkedHashSet<>(passage.notes());
    notes.addAll(route.notes());
    List<Note> sorted = new ArrayList<>(notes);
    sorted.sort((a, b) -> b.severity().compareTo(a.severity()));
    return Collections.unmodifiableList(sorted);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TimedPlan that
        && route.equals(that.route)
        && verdicts.equals(that.verdicts);
  }

  @Override
  public int hashCode() {
    return 31 * route.hashCode() + verdicts.hashCode();
  }

  @Override
  public String toString() {
    return passage.name() + ", " + departure() + " to " + arrival();
  }
}
