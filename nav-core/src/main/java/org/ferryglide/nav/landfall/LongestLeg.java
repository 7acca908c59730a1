package org.ferryglide.nav.landfall;

import java.io.Serializable;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Edge;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.ErrorBudget;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.SteadyRun;

/**
 * The longest leg after which the target is still found with a given chance in a given visibility:
 * how far apart landmarks may be in fog.
 *
 * <pre>{@code
 * LongestLeg leg =
 *     LongestLeg.of(run, ErrorModel.usual(), launch.covariance(), Distance.ofMetres(400), 0.9).get();
 * leg.distance(); // 1.2 NM over the ground
 * leg.duration(); // 21 minutes
 * }</pre>
 *
 * @param duration how long one may go on
 * @param distance how far that is over the ground
 * @param chance the chance of passing within sight of the target at its end
 * @param limited false if even {@link #HORIZON} keeps the chance above the limit
 */
public record LongestLeg(Duration duration, Distance distance, double chance, boolean limited)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /** No leg is longer than this. */
  public static final Duration HORIZON = Duration.ofHours(24);

  private static final long HORIZON_SECONDS = 24L * 3600L;

  /** Ends this close tell the last whole second that is long enough. */
  private static final double CLOSE_ENOUGH_SECONDS = 0.5;

  /**
   * Takes all parts; {@link #of} computes them.
   *
   * @param duration how long one may go on
   * @param distance how far that is over the ground
   * @param chance the chance of passing within sight at its end
   * @param limited false if even the horizon keeps the chance above the limit
   * @throws IllegalArgumentException if a length is negative or the chance outside [0, 1]
   */
  public LongestLeg {
    Arguments.notNegative(Seconds.of(duration), "duration", "seconds");
    Arguments.notNegative(distance.metres(), "distance", "metres");
    Arguments.within(chance, 0.0, 1.0, "chance", "(no unit)");
  }

  /**
   * How far apart landmarks may be.
   *
   * @param run how the leg would be paddled; its duration does not matter
   * @param errors the errors of log, compass and stream
   * @param start how well the start is known
   * @param sight how far off the target is seen, half its width included, at least 0
   * @param leastChance the chance that must be kept of passing within sight, in (0, 1)
   * @return the longest leg, its duration rounded down to a whole second; empty if the start is not
   *     known well enough for any leg
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Optional<LongestLeg> of(
      SteadyRun run, ErrorModel errors, Covariance start, Distance sight, double leastChance) {
    Arguments.notNegative(sight.metres(), "sight", "metres");
    if (!(leastChance > 0.0 && leastChance < 1.0)) { // written so that NaN fails
      throw new IllegalArgumentException("least chance must be in (0, 1), but was " + leastChance);
    }
    if (chance(run, errors, start, sight, 0) < leastChance) {
      return Optional.empty();
    }
    double atHorizon = chance(run, errors, start, sight, HORIZON_SECONDS);
    if (atHorizon >= leastChance) {
      return Optional.of(leg(run, HORIZON_SECONDS, atHorizon, false));
    }
    // the uncertainty across grows with time, so the chance falls
    double last =
        Edge.of(
            seconds -> chance(run, errors, start, sight, (long) seconds) >= leastChance,
            0.0,
            HORIZON_SECONDS,
            CLOSE_ENOUGH_SECONDS);
    long seconds = (long) last;
    return Optional.of(leg(run, seconds, chance(run, errors, start, sight, seconds), true));
  }

  private static LongestLeg leg(SteadyRun run, long seconds, double chance, boolean limited) {
    Speed over = run.overGround().rate();
    return new LongestLeg(
        Duration.ofSeconds(seconds),
        Distance.ofMetres(over.metresPerSecond() * seconds),
        chance,
        limited);
  }

  private static double chance(
      SteadyRun run, ErrorModel errors, Covariance start, Distance sight, long seconds) {
    TrueBearing track = run.overGround().set();
    Covariance at =
        ErrorBudget.of(List.of(run.lasting(Duration.ofSeconds(seconds))), errors)
            .startingFrom(start)
            .covariance();
    return TargetChance.of(at, track, sight).whenPassing();
  }
}
