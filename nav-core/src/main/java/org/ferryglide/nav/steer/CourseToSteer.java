package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;

/**
 * Finds the course to steer for a leg through streams and winds that change with time and place.
 *
 * <p>A solver is a craft, a stream, a wind and a few options, none of which change once set; the
 * {@code with} methods give changed copies. It follows the craft over the WGS84 ellipsoid, along
 * the path it really takes, and stops its steps where a table jumps.
 *
 * <pre>{@code
 * CourseToSteer solver =
 *     CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3.5)), stream)
 *         .withStrategy(Strategy.trackHeld())
 *         .withLongestDuration(Duration.ofHours(8));
 * Outcome<SteeredLeg, NotPossible> outcome = solver.solve(leg, departure);
 * }</pre>
 *
 * <p>Accuracy: the end of the leg is hit within 0.1 m in the stream as given, measured against an
 * independent integration in steps of one second, and of a fiftieth of a second where the stream
 * jumps from place to place, over legs of up to 14 NM. Of several headings that lead to the end the
 * one that arrives first is found: always where the stream is the same everywhere and the wind does
 * not affect the craft, elsewhere among headings tried every five degrees, which missed it in 2 of
 * 300 legs among eddies faster than the craft. Special cases:
 *
 * <ul>
 *   <li>A leg without length is solved at once, in no time, heading as its course says.
 *   <li>A craft without speed is solved only if the stream carries it over the end of the leg,
 *       within 0.1 m; its heading is then the course.
 *   <li>A stream straight ahead or astern leaves the heading on the course.
 *   <li>A stream that outruns the craft is used when it sets near enough along the course; of the
 *       headings that then hold the course the fastest is taken.
 *   <li>A craft on a constant heading may pass far off the end of the leg and be brought back to it
 *       when the stream turns. That is an answer, with a note; of several such arrivals the first
 *       is taken.
 *   <li>Where the stream jumps from place to place, as between the areas of two tables, there may
 *       be places to which no constant heading leads: {@link Reason#BEYOND_HORIZON} without a
 *       figure. A path that would run along such a jump is followed only roughly.
 *   <li>With the track held, the leg is not possible from the first moment at which the track
 *       cannot be held or no way is made: a craft is not taken to wait for the stream to turn.
 * </ul>
 */
public final class CourseToSteer implements Serializable {
  private static final long serialVersionUID = 1L;

  /** How long a leg may take by default. */
  public static final Duration USUAL_LONGEST_DURATION = Duration.ofDays(1);

  private final Craft craft;
  private final StreamField stream;
  private final WindField wind;
  private final Strategy strategy;
  private final SteeringLimits limits;
  private final Duration longestDuration;

  private CourseToSteer(
      Craft craft,
      StreamField stream,
      WindField wind,
      Strategy strategy,
      SteeringLimits limits,
      Duration longestDuration) {
    this.craft = craft;
    this.stream = stream;
    this.wind = wind;
    this.strategy = strategy;
    this.limits = limits;
    this.longestDuration = longestDuration;
  }

  /**
   * A solver for a craft in a stream: no wind, a constant heading, the usual limits, 24 hours at
   * most.
   *
   * @param craft the craft
   * @param stream the stream
   * @return the solver; the {@code with} methods give changed copies
   */
  public static CourseToSteer with(Craft craft, StreamField stream) {
    return new CourseToSteer(
        Objects.requireNonNull(craft, "craft"),
        Objects.requireNonNull(stream, "stream"),
        WindField.calm(),
        Strategy.constantHeading(),
        SteeringLimits.USUAL,
        USUAL_LONGEST_DURATION);
  }

  /**
   * The same solver for another craft.
   *
   * @param craft the craft
   * @return the changed solver
   */
  public CourseToSteer withCraft(Craft craft) {
    return new CourseToSteer(
        Objects.requireNonNull(craft, "craft"), stream, wind, strategy, limits, longestDuration);
  }

  /**
   * The same solver in a wind. It matters only to a craft with a {@link WindResponse}.
   *
   * @param wind the wind over the ground; the stream is taken off it where the craft is
   * @return the changed solver
   */
  public CourseToSteer withWind(WindField wind) {
    return new CourseToSteer(
        craft, stream, Objects.requireNonNull(wind, "wind"), strategy, limits, longestDuration);
  }

  /**
   * The same solver with another strategy.
   *
   * @param strategy how legs are steered
   * @return the changed solver
   */
  public CourseToSteer withStrategy(Strategy strategy) {
    return new CourseToSteer(
        craft, stream, wind, Objects.requireNonNull(strategy, "strategy"), limits, longestDuration);
  }

  /**
   * The same solver with other limits.
   *
   * @param limits how much cross-stream warns and how much refuses
   * @return the changed solver
   */
  public CourseToSteer withLimits(SteeringLimits limits) {
    return new CourseToSteer(
        craft, stream, wind, strategy, Objects.requireNonNull(limits, "limits"), longestDuration);
  }

  /**
   * The same solver with another longest duration for a leg.
   *
   * @param longestDuration the longest a leg may take, above zero, at most 366 days
   * @return the changed solver
   * @throws IllegalArgumentException if the duration is not above zero or longer than 366 days
   */
  public CourseToSteer withLongestDuration(Duration longestDuration) {
    if (longestDuration.isNegative()
        || longestDuration.isZero()
        || longestDuration.compareTo(Duration.ofDays(366)) > 0) {
      throw new IllegalArgumentException(
          "longest duration must be above PT0S and at most 366 days, but was " + longestDuration);
    }
    return new CourseToSteer(craft, stream, wind, strategy, limits, longestDuration);
  }

  /**
   * The craft.
   *
   * @return the craft
   */
  public Craft craft() {
    return craft;
  }

  /**
   * The stream.
   *
   * @return the stream
   */
  public StreamField stream() {
    return stream;
  }

  /**
   * The wind.
   *
   * @return the wind over the ground; calm by default
   */
  public WindField wind() {
    return wind;
  }

  /**
   * How legs are steered.
   *
   * @return the strategy; a constant heading by default
   */
  public Strategy strategy() {
    return strategy;
  }

  /**
   * How much cross-stream warns and how much refuses.
   *
   * @return the limits
   */
  public SteeringLimits limits() {
    return limits;
  }

  @Override
  public String toString() {
    return strategy.words()
        + ", "
        + craft
        + ", at most "
        + longestDuration
        + " a leg, warning above "
        + limits.warnAbove()
        + " and refusing above "
        + limits.refuseAbove()
        + " of the speed spent across";
  }

  /**
   * The longest a leg may take.
   *
   * @return 24 hours by default
   */
  public Duration longestDuration() {
    return longestDuration;
  }

  /**
   * The course to steer for a leg, for a departure.
   *
   * @param leg the leg, within 89 degrees of the equator
   * @param departure when it starts
   * @return the steered leg, or why it is not possible
   * @throws IllegalArgumentException if the leg does not lie on WGS84 or an end of it beyond 89
   *     degrees of latitude, or the departure not in the years 1 to 4999
   */
  public Outcome<SteeredLeg, NotPossible> solve(Leg leg, Instant departure) {
    LegSolver solver = new LegSolver(this);
    return solver.solve(leg, EpochSeconds.of(departure), true);
  }

  /**
   * The courses to steer for a route without stops, for a departure.
   *
   * @param route the legs, within 89 degrees of the equator
   * @param departure when it starts
   * @return the steered route, or why it is not possible and in which leg
   * @throws IllegalArgumentException if an end of a leg lies beyond 89 degrees of latitude, or the
   *     departure not in the years 1 to 4999
   */
  public Outcome<SteeredRoute, NotPossible> solve(Route route, Instant departure) {
    return new LegSolver(this).solve(route, EpochSeconds.of(departure), true);
  }

  /**
   * The quickest path and other ways to the end that take up to 2 % longer: on the other side of an
   * island or an eddy, say. Ways that keep within a fiftieth of the leg of a quicker one are left
   * out.
   *
   * @param leg the leg
   * @param departure when it starts
   * @param most how many are wanted at most, at least 1
   * @return the ways that the limits allow, the quickest first; empty if there is none, or if the
   *     strategy is not the quickest path
   * @throws IllegalArgumentException if {@code most} is below 1, an end of the leg lies in an
   *     obstacle, or the departure is not within the years 1 to 4999
   */
  public List<SteeredLeg> quickestWays(Leg leg, Instant departure, int most) {
    if (most < 1) {
      throw new IllegalArgumentException("most ways must be at least 1, but was " + most);
    }
    double seconds = EpochSeconds.of(departure);
    LegSolver.refuseFarYears(seconds);
    return Collections.unmodifiableList(new LegSolver(this).quickestWays(leg, seconds, most));
  }

  /**
   * The line that the craft reaches by a time: how far it gets.
   *
   * <p>The line is that of ways in straight tracks over a grid, all of which can be made: its
   * corners are reached by then, and between them it is straight. It is late by 0.04 % of the time
   * at most in a uniform stream up to 6 hours within 75 degrees of the equator, and by 1 % up to 24
   * hours within 85 (against circles and geodesics); by 4.5 % at most, and mostly by less than 0.5
   * %, where a stream of up to 0.9 craft speeds differs from place to place; and by more where
   * streams outrun the craft, beyond which it may miss places (measured at some 180 random places a
   * kind against the quickest path). Among islands it was early at none of 14 400 places and late
   * by more than 1 % at one in a hundred, by 14 % at most. What is narrower than a square of the
   * grid may be missed: 1.6 % of the way that still water carries, or more in hard streams. Rests,
   * wind and what the strategy keeps the quickest path out of are allowed for.
   *
   * @param start where it starts
   * @param departure when it starts
   * @param by when the line is reached, after the departure
   * @return closed polygons, the first corner not repeated; the water that is reached lies between
   *     them; unmodifiable, and empty if the craft gets nowhere: the start lies in an area closed
   *     at the departure, say
   * @throws IllegalArgumentException if the craft has no speed, the time is not after the
   *     departure, the start lies inside an obstacle or beyond 89 degrees of latitude, a time is
   *     not in the years 1 to 4999, or the craft might get beyond a pole or half round the earth
   *     (the area searched goes 1.6 times as far as still water carries, or further in streams)
   */
  public List<List<Position>> isochrone(Position start, Instant departure, Instant by) {
    return isochrones(start, departure, List.of(by)).values().iterator().next();
  }

  /**
   * The lines of several times from one search, for a picture; see {@link #isochrone}. Earlier
   * lines are drawn on the grid of the latest, and so more coarsely than alone.
   *
   * @param start where it starts
   * @param departure when it starts
   * @param times when the lines are reached, at least one, each after the departure
   * @return the lines by time, in the order of the times; unmodifiable
   * @throws IllegalArgumentException if there is no time, one is not after the departure, or for
   *     what {@link #isochrone} refuses
   */
  public Map<Instant, List<List<Position>>> isochrones(
      Position start, Instant departure, List<Instant> times) {
    refuseUnless(times, time -> time.isAfter(departure), "after the departure");
    Duration longest = Duration.between(departure, Collections.max(times));
    return lines(Isochrones.from(this, start, departure, longest), times);
  }

  /**
   * The line from within which a place can still be made: turning back and escape in one picture.
   * It is late rather than early as {@link #isochrone} says; and since it knows of no waits, by as
   * long as the craft might wait for a closed area to open.
   *
   * @param goal the place to be made
   * @param arrival when it must be made at the latest
   * @param leaving when the craft leaves for it, before the arrival
   * @return closed polygons as {@link #isochrone} gives them; unmodifiable, and empty if the goal
   *     cannot be made from anywhere: it lies in an area closed at the arrival, say
   * @throws IllegalArgumentException if the craft has no speed, the arrival is not after the
   *     leaving, the goal lies inside an obstacle or beyond 89 degrees of latitude, a time is not
   *     in the years 1 to 4999, or the craft might get beyond a pole or half round the earth (the
   *     area searched goes 1.6 times as far as still water carries, or further in streams)
   */
  public List<List<Position>> reachBack(Position goal, Instant arrival, Instant leaving) {
    return reachesBack(goal, arrival, List.of(leaving)).values().iterator().next();
  }

  /**
   * The lines from within which a place can still be made, leaving at several times, from one
   * search; see {@link #reachBack} and {@link #isochrones}.
   *
   * @param goal the place to be made
   * @param arrival when it must be made at the latest
   * @param times when the craft leaves, at least one, each before the arrival
   * @return the lines by time, in the order of the times; unmodifiable
   * @throws IllegalArgumentException if there is no time, one is not before the arrival, or for
   *     what {@link #reachBack} refuses
   */
  public Map<Instant, List<List<Position>>> reachesBack(
      Position goal, Instant arrival, List<Instant> times) {
    refuseUnless(times, time -> time.isBefore(arrival), "before the arrival");
    Duration longest = Duration.between(Collections.min(times), arrival);
    return lines(Isochrones.backFrom(this, goal, arrival, longest), times);
  }

  private static void refuseUnless(
      List<Instant> times, Predicate<Instant> isAllowed, String allowed) {
    if (times.isEmpty()) {
      throw new IllegalArgumentException(
          "there must be a time " + allowed + ", but there was none");
    }
    for (Instant time : times) {
      if (!isAllowed.test(time)) {
        throw new IllegalArgumentException("times must be " + allowed + ", but one was " + time);
      }
    }
  }

  private static Map<Instant, List<List<Position>>> lines(Isochrones all, List<Instant> times) {
    Map<Instant, List<List<Position>>> lines = new LinkedHashMap<>();
    for (Instant time : times) {
      lines.put(time, all.lineAt(time));
    }
    return Collections.unmodifiableMap(lines);
  }

  /**
   * A path as a paddler can steer it: a constant heading for each stretch of time, from where the
   * path is at the start of the stretch to where it is at the end. The craft is on the path at each
   * change and at the end; how much later it gets there than by the path itself is the time lost by
   * steering in steps. Where the path waits the steps do too: the next leg starts when the wait is
   * over.
   *
   * <p>Each step of a quickest path is looked at every second for what the path keeps out of: land,
   * closed areas and waters beyond the limits of its strategy. A step that would enter them is cut
   * shorter, down to a second.
   *
   * <pre>{@code
   * SteeredRoute steps = solver.inSteps(quickest, Duration.ofMinutes(15)).orElseThrow();
   * Duration lost = Duration.between(quickest.arrival(), steps.arrival());
   * }</pre>
   *
   * @param path what is to be followed
   * @param each how long each heading is held at most, at least a second
   * @return the steps, a leg each; or why one of them cannot be steered, {@link Reason#NO_ROOM} if
   *     it leaves the path's waters however short it is
   * @throws IllegalArgumentException if a step is shorter than a second
   */
  public Outcome<SteeredRoute, NotPossible> inSteps(SteeredLeg path, Duration each) {
    if (each.compareTo(Duration.ofSeconds(1)) < 0) {
      throw new IllegalArgumentException("a step must be at least PT1S, but was " + each);
    }
    if (path.departure().equals(path.arrival())) {
      return solve(Route.ofLegs(path.leg()), path.departure());
    }
    return new SteeredSteps(this, path, each).steered();
  }
}
