package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.reckon.Covariance;

/**
 * A plan paddled many times over with its errors drawn at random: when the way points are reached,
 * how often each check holds, and where the party lies.
 *
 * <pre>{@code
 * PlanSpread spread = PlanSpread.of(plan, PlanErrors.usual(), 2000, 42L);
 * spread.arrival(1, 0.95); // by then 95 in a hundred are at the first way point
 * spread.chances().forEach((check, chance) -> System.out.println(check + " " + chance));
 * spread.covariance(1).ellipse(0.95).semiMajorAxis();
 * }</pre>
 *
 * <p>Each draw makes another day: departure, speed of the party, stream (set, rate, time of its
 * turn by the table's own course) and wind. Two things are asked of it.
 *
 * <ul>
 *   <li>When: the party is taken to find every way point, turning as that day's water asks for, as
 *       one does by eye or by transits; the passage is solved anew. A quickest leg is not: the
 *       party keeps to the way it planned over the ground, in chords with the track held, since
 *       nothing tells it of a better one; where that way waits, or the program has conditions of
 *       its own, it is searched again in that day's water. {@link #arrival} and the checks go by
 *       these times. A leg is paddled at the mean of its hours' speeds; errors of the heading cost
 *       no time here.
 *   <li>Where: the party is taken to steer the printed headings for the printed times and to see
 *       nothing. {@link #covariance} says how far off it then lies, counted from the last stop
 *       ashore; in the checks it lies as far to the side of its track as that.
 * </ul>
 *
 * <p>The draws replace the slower what-if, the upper end of the stream's rate and the width of the
 * track: each check is made for the party and the water as they were drawn. A day on which the
 * passage is not possible counts as one on which no check holds.
 *
 * <p>With the errors of reckoning alone the covariance is that of the plan's own budget within a
 * tenth, and the spread of arrivals that of {@link PlannedLeg#latest} within a fifth (both measured
 * on legs of about an hour with the usual errors). The chances agree with those of plain draws in
 * vectors, half a minute a step, within 0.02 and what so many draws leave to chance, for every kind
 * of check that has one (measured on random passages with limits near what they meet). The same
 * seed gives the same answer, on one core and on many. Errors that no model holds, such as a
 * capsize, are not in it.
 */
public final class PlanSpread implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final int FEWEST_DRAWS = 2;

  /** All are kept, some ten numbers a leg each. */
  private static final int MOST_DRAWS = 1_000_000;

  private final double[][] arrivals;
  private final double[][] east;
  private final double[][] north;
  private final double[][] holds;
  private final String[] names;

  private PlanSpread(PlanDraws draws) {
    arrivals = draws.arrivals;
    east = draws.east;
    north = draws.north;
    holds = draws.holds;
    names = draws.names().toArray(new String[0]);
  }

  /**
   * Paddles a plan many times over, on one core.
   *
   * @param plan the plan
   * @param errors how wrong its figures may be
   * @param draws how many times, in [2, 1 000 000]
   * @param seed any number; the same gives the same answer
   * @return what came of it
   * @throws IllegalArgumentException if {@code draws} is outside [2, 1 000 000]
   */
  public static PlanSpread of(TimedPlan plan, PlanErrors errors, int draws, long seed) {
    return of(plan, errors, draws, seed, false);
  }

  /**
   * Paddles a plan many times over, on all cores.
   *
   * @param plan the plan
   * @param errors how wrong its figures may be
   * @param draws how many times, in [2, 1 000 000]
   * @param seed any number; the same gives the same answer
   * @return what {@link #of} finds
   * @throws IllegalArgumentException if {@code draws} is outside [2, 1 000 000]
   */
  public static PlanSpread inParallel(TimedPlan plan, PlanErrors errors, int draws, long seed) {
    return of(plan, errors, draws, seed, true);
  }

  private static PlanSpread of(
      TimedPlan plan, PlanErrors errors, int draws, long seed, boolean parallel) {
    Arguments.within(draws, FEWEST_DRAWS, MOST_DRAWS, "draws", "passages");
    PlanDraws all = new PlanDraws(plan, errors, draws, seed);
    all.run(parallel);
    return new PlanSpread(all);
  }

  /**
   * How often the plan was paddled.
   *
   * @return the number of draws
   */
  public int draws() {
    return arrivals.length;
  }

  /**
   * How often the passage was possible at all.
   *
   * @return a share of the draws, in [0, 1]
   */
  public double chancePossible() {
    return sorted(arrivals[0].length - 1).length / (double) draws();
  }

  /** The arrivals at a way point of those that reach it, in order. */
  private double[] sorted(int wayPoint) {
    return Arrays.stream(arrivals)
        .mapToDouble(draw -> draw[wayPoint])
        .filter(time -> !Double.isNaN(time))
        .sorted()
        .toArray();
  }

  /**
   * By when a share of the parties has reached a way point.
   *
   * @param wayPoint number of the way point: 0 for the start, where it is the departure
   * @param share share of all draws, in (0, 1]; those that never get there count as latest
   * @return the time; empty if fewer than that share ever get there
   * @throws IllegalArgumentException if the share is NaN or outside (0, 1]
   * @throws IndexOutOfBoundsException if there is no such way point
   */
  public Optional<Instant> arrival(int wayPoint, double share) {
    if (!(share > 0.0 && share <= 1.0)) {
      throw new IllegalArgumentException("share must be in (0, 1], but was " + share);
    }
    double[] times = sorted(wayPoint);
    int needed = (int) Math.ceil(share * draws() - 1e-9);
    return needed > times.length
        ? Optional.empty()
        : Optional.of(EpochSeconds.toInstant(times[Math.max(0, needed - 1)]));
  }

  /**
   * The standard deviation of the arrivals at a way point.
   *
   * @param wayPoint number of the way point: 0 for the start, where it is that of the departure
   * @return of the parties that get there; zero if fewer than two do
   * @throws IndexOutOfBoundsException if there is no such way point
   */
  public Duration arrivalSpread(int wayPoint) {
    double[] times = sorted(wayPoint);
    if (times.length < 2) {
      return Duration.ZERO;
    }
    double mean = Arrays.stream(times).map(time -> time - times[0]).average().orElse(0.0);
    double sum = 0.0;
    for (double time : times) {
      sum += (time - times[0] - mean) * (time - times[0] - mean);
    }
    return Duration.ofMillis(Math.round(1000.0 * Math.sqrt(sum / (times.length - 1.0))));
  }

  /**
   * How far off a way point the party lies that has steered the printed headings for the printed
   * times.
   *
   * @param wayPoint number of the way point: 0 for the start
   * @return the covariance about the mean of all draws whose stream and wind were known all the way
   * @throws IllegalStateException if fewer than two were
   * @throws IndexOutOfBoundsException if there is no such way point
   */
  public Covariance covariance(int wayPoint) {
    int count = 0;
    double meanEast = 0.0;
    double meanNorth = 0.0;
    for (int i = 0; i < draws(); i++) {
      if (!Double.isNaN(east[i][wayPoint])) {
        count++;
        meanEast += east[i][wayPoint];
        meanNorth += north[i][wayPoint];
      }
    }
    if (count < 2) {
      throw new IllegalStateException("stream and wind were known all the way in no two draws");
    }
    meanEast /= count;
    meanNorth /= count;
    double ee = 0.0;
    double nn = 0.0;
    double en = 0.0;
    for (int i = 0; i < draws(); i++) {
      if (!Double.isNaN(east[i][wayPoint])) {
        double e = east[i][wayPoint] - meanEast;
        double n = north[i][wayPoint] - meanNorth;
        ee += e * e;
        nn += n * n;
        en += e * n;
      }
    }
    return new Covariance(ee / (count - 1.0), nn / (count - 1.0), en / (count - 1.0));
  }

  /**
   * How often each check holds, with or without a warning. A check that could not be made does not
   * hold; {@link #unknown} tells how often.
   *
   * @return by name of the check, in the order of the passage's checks, a share of all draws in [0,
   *     1]; of checks of one name the least; unmodifiable
   */
  public Map<String, Double> chances() {
    Map<String, Double> chances = new LinkedHashMap<>();
    for (int i = 0; i < names.length; i++) {
      int check = i;
      double share = share(draw -> draw[check] == 1.0);
      chances.merge(names[i], share, Math::min);
    }
    return Collections.unmodifiableMap(chances);
  }

  /**
   * How often a check could not be made, on days on which the passage was possible.
   *
   * @return by name, those only that could not always be made, a share of all draws; unmodifiable
   */
  public Map<String, Double> unknown() {
    Map<String, Double> unknown = new LinkedHashMap<>();
    for (int i = 0; i < names.length; i++) {
      int check = i;
      double share = share(draw -> Double.isNaN(draw[check]));
      if (share > 0.0) {
        unknown.merge(names[i], share, Math::max);
      }
    }
    return Collections.unmodifiableMap(unknown);
  }

  /**
   * How often all checks hold together.
   *
   * @return a share of all draws, in [0, 1]; it is not permission to go
   */
  public double chanceAllHold() {
    int count = 0;
    for (int i = 0; i < draws(); i++) {
      boolean all = !Double.isNaN(arrivals[i][arrivals[i].length - 1]);
      for (double one : holds[i]) {
        all &= one == 1.0;
      }
      count += all ? 1 : 0;
    }
    return count / (double) draws();
  }

  private double share(Predicate<double[]> asked) {
    return Arrays.stream(holds).filter(asked).count() / (double) draws();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PlanSpread that
        && Arrays.deepEquals(arrivals, that.arrivals)
        && Arrays.deepEquals(east, that.east)
        && Arrays.deepEquals(north, that.north)
        && Arrays.deepEquals(holds, that.holds)
        && Arrays.equals(names, that.names);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.deepHashCode(arrivals) + Arrays.deepHashCode(east);
  }

  @Override
  public String toString() {
    return draws() + " passages, all checks hold in " + chanceAllHold();
  }
}
