package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.sky.SunThreshold;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.Window;

/**
 * When to turn back: for every way point of a plan the time after which the party does not go on,
 * and the spans in which home can still be made from it.
 *
 * <pre>{@code
 * WayHome wayHome = WayHome.of(plan);
 * for (TurnTimes times : wayHome.turns()) {
 *   System.out.println(times); // Hesk Skerry not later than 11:42, home in [09:50/12:15, 15:31/17:02]
 * }
 * }</pre>
 *
 * <p>The way home is the legs paddled so far, in reverse and without their stops, each solved anew
 * with the streams that it meets; it is put through all checks of the passage, that of landing at
 * the start among them. Both going on and turning back are asked for the planned party and for the
 * one as slow as it may turn out, and the worse answer counts. Going on also asks that no barred
 * span lies at the next way point between the times of the two, so that a party of any speed
 * between them that keeps the times at each way point can keep them at the next.
 *
 * <p>The program's own conditions are checked for the whole passage when going on, not for the way
 * home, of which they know nothing: {@link #notChecked} names them. The times hold for tables and
 * winds as they were given; they leave nothing over for what goes wrong.
 */
public final class WayHome implements Serializable {
  private static final long serialVersionUID = 1L;

  /** How often times are tried, edges being refined to the second. */
  public static final Duration USUAL_STEP = Duration.ofMinutes(5);

  private static final double LONGEST_SECONDS = 24.0 * 3600.0;

  private final List<TurnTimes> turns;
  private final List<Note> notChecked;

  private WayHome(List<TurnTimes> turns, List<Note> notChecked) {
    this.turns = turns;
    this.notChecked = notChecked;
  }

  /**
   * Searches the times of a plan every five minutes, from the planned time at each way point (home
   * from a stop: from when a party that has landed can be under way again) until the light asked
   * for has gone at the start and at the end, at most a day after the departure.
   *
   * @param plan the plan
   * @return the times
   */
  public static WayHome of(TimedPlan plan) {
    Passage passage = plan.passage();
    double departure = EpochSeconds.of(plan.departure());
    SunThreshold light = passage.limits().light().orElse(null);
    double left = 0.0;
    for (int end : new int[] {0, passage.wayPoints().size() - 1}) {
      left =
          Math.max(
              left,
              light == null
                  ? 0.0
                  : passage
                      .daylights()
                      .at(passage.wayPoints().get(end).position(), light)
                      .leftAt(departure));
    }
    double reach = left > 0.0 ? Math.min(left, LONGEST_SECONDS) : LONGEST_SECONDS;
    return of(plan, EpochSeconds.toInstant(departure + reach), USUAL_STEP);
  }

  /**
   * Searches the times of a plan.
   *
   * @param plan the plan
   * @param until the last time looked at; a way point planned later is looked at then only
   * @param step time between looks, at least a second
   * @return the times
   * @throws IllegalArgumentException if {@code until} is before the departure or the step too short
   */
  public static WayHome of(TimedPlan plan, Instant until, Duration step) {
    TurnSearch search = search(plan, until, step);
    List<Note> open = new ArrayList<>(plan.notChecked());
    for (Condition own : plan.passage().conditions()) {
      open.add(
          Note.information("open.on-the-way-home", own.name() + " on the way home")
              .with("about", own.about()));
    }
    return new WayHome(
        Collections.unmodifiableList(search.turns()), Collections.unmodifiableList(open));
  }

  private static TurnSearch search(TimedPlan plan, Instant until, Duration step) {
    if (until.isBefore(plan.departure())) {
      throw new IllegalArgumentException(
          "the last time must not be before the departure at "
              + plan.departure()
              + ", but was "
              + until);
    }
    return new TurnSearch(plan, until, step);
  }

  /**
   * The turns alone, without the ways home and without the reasons: when the party may go on.
   *
   * <pre>{@code
   * WayHome.goingOn(plan, sunset, WayHome.USUAL_STEP).get(1).first(); // on from the first stop
   * }</pre>
   *
   * @param plan the plan
   * @param until the last time looked at; a way point planned later is looked at then only
   * @param step time between looks, at least a second
   * @return the {@link TurnTimes#goingOn} of each way point but the last, in order; unmodifiable
   * @throws IllegalArgumentException if {@code until} is before the departure or the step too short
   */
  public static List<Found<Window>> goingOn(TimedPlan plan, Instant until, Duration step) {
    return Collections.unmodifiableList(search(plan, until, step).goingOn());
  }

  /**
   * The ways home from one way point alone.
   *
   * <pre>{@code
   * WayHome.from(plan, 2, sunset, WayHome.USUAL_STEP).items(); // when home can be made from it
   * }</pre>
   *
   * @param plan the plan
   * @param wayPoint number of the way point: 0 for the start, which is home; not the last
   * @param until the last time looked at; a way point planned later is looked at then only
   * @param step time between looks, at least a second
   * @return its {@link TurnTimes#home}
   * @throws IllegalArgumentException if there is no such way point to turn at, {@code until} is
   *     before the departure or the step too short
   */
  public static Found<Window> from(TimedPlan plan, int wayPoint, Instant until, Duration step) {
    Arguments.within(wayPoint, 0, plan.legs().size() - 1, "number of a way point", "way points");
    return search(plan, until, step).home(wayPoint);
  }

  /**
   * The times of the way points.
   *
   * @return one for each way point but the last, in order; unmodifiable
   */
  public List<TurnTimes> turns() {
    return turns;
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

  @Override
  public boolean equals(Object other) {
    return other instanceof WayHome that
        && turns.equals(that.turns)
        && notChecked.equals(that.notChecked);
  }

  @Override
  public int hashCode() {
    return turns.hashCode();
  }

  @Override
  public String toString() {
    return turns.toString();
  }
}
