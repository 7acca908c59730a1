package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Speed;
import org.jspecify.annotations.Nullable;

/**
 * What the wind does to a craft: leeway, drift, and paddling speed lost or gained.
 *
 * <p>All three use the wind over the moving water, which is the wind over the ground less the
 * stream. Leeway is the angle from the heading to the water track, away from the wind: a wind on
 * the starboard side pushes to port, and leeway to port is negative. Drift is a motion straight
 * down the wind, a fraction of its speed, that goes on while the party rests.
 *
 * <pre>{@code
 * Craft kayak =
 *     Craft.ofSpeed(Speed.ofKnots(3.5))
 *         .withWindResponse(WindResponse.commonPractice(WindResponse.Trim.LOADED));
 * }</pre>
 */
public final class WindResponse implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double[] ANGLES = {0, 90, 180};

  /** Calm and the middles of Beaufort 3, 4 and 5, knots. */
  private static final double[] WINDS = {0, 8.5, 13.5, 19};

  /** The wind changes nothing. */
  private static final WindResponse NONE = new WindResponse(null, null, 0.0);

  private final @Nullable WindTable leewayDegrees;
  private final @Nullable WindTable speedChangeKnots;
  private final double driftFraction;

  private WindResponse(
      @Nullable WindTable leewayDegrees,
      @Nullable WindTable speedChangeKnots,
      double driftFraction) {
    this.leewayDegrees = leewayDegrees;
    this.speedChangeKnots = speedChangeKnots;
    this.driftFraction = driftFraction;
  }

  /**
   * How a kayak lies in the water, which decides how much leeway it makes.
   *
   * <pre>{@code
   * WindResponse day = WindResponse.commonPractice(WindResponse.Trim.ORDINARY);
   * }</pre>
   */
  public enum Trim {
    /** Deep with a camp's load, skeg or rudder down: the least leeway. */
    LOADED(2, 5, 10),
    /** A day's load, skeg as it suits: between the two. */
    ORDINARY(3.5, 7.5, 12.5),
    /** Empty, skeg up or none: the most leeway. */
    EMPTY(5, 10, 15);

    private final double force3;
    private final double force4;
    private final double force5;

    Trim(double force3, double force4, double force5) {
      this.force3 = force3;
      this.force4 = force4;
      this.force5 = force5;
    }

    private double[] abeam() {
      return new double[] {0, force3, force4, force5};
    }
  }

  /**
   * A craft that the wind does not affect.
   *
   * @return no leeway, no drift, no change of speed
   */
  public static WindResponse none() {
    return NONE;
  }

  /**
   * What paddlers commonly allow for a sea kayak. Common practice, no source: measure your own
   * craft when it matters.
   *
   * <p>Leeway with the wind abeam is 2 to 5 degrees at force 3, 5 to 10 at force 4, 10 to 15 at
   * force 5, by trim; none with the wind ahead or astern, and linear between. A head wind costs
   * half a knot at force 3, one at force 4, one and three quarters at force 5; a tail wind gives
   * 0.2, 0.4 and 0.6 knots, less than the head wind takes.
   *
   * @param trim how the craft lies in the water
   * @return the response; beyond force 5, where many would have stopped, it is extrapolated
   *     linearly
   */
  public static WindResponse commonPractice(Trim trim) {
    double[] nothing = {0, 0, 0, 0};
    return new WindResponse(
        WindTable.of(ANGLES, WINDS, new double[][] {nothing, trim.abeam(), nothing}),
        WindTable.of(
            ANGLES, WINDS, new double[][] {{0, -0.5, -1.0, -1.75}, nothing, {0, 0.2, 0.4, 0.6}}),
        0.0);
  }

  /**
   * The same response with leeway from a table by wind, the same for either side.
   *
   * <pre>{@code
   * response.withLeeway(
   *     new double[] {0, 90, 180},
   *     new double[] {0, 10, 20}, // knots
   *     new double[][] {{0, 0, 0}, {0, 4, 12}, {0, 0, 0}});
   * }</pre>
   *
   * @param offBowDegrees angles between wind and bow, degrees, ascending from 0 (a head wind) to
   *     180
   * @param windKnots wind speeds over the water, knots, ascending from 0; beyond the strongest the
   *     last interval is extrapolated, because a gale that changes nothing more would be a worse
   *     guess
   * @param leewayDegrees one row for each angle with one value for each wind, degrees away from the
   *     wind; interpolated linearly both ways
   * @return the changed response
   * @throws IllegalArgumentException if the angles do not run from 0 to 180, the winds do not start
   *     at 0, either does not ascend, there are fewer than two of either, or a row has the wrong
   *     length or a value that is not finite
   */
  public WindResponse withLeeway(
      double[] offBowDegrees, double[] windKnots, double[][] leewayDegrees) {
    return withLeeway(WindTable.of(offBowDegrees, windKnots, leewayDegrees));
  }

  WindResponse withLeeway(WindTable leewayDegrees) {
    return new WindResponse(
        Objects.requireNonNull(leewayDegrees, "leewayDegrees"), speedChangeKnots, driftFraction);
  }

  /**
   * The same response with all leeway multiplied, as skeg and load ask for.
   *
   * @param factor what to multiply by, at least 0: below 1 for a skeg or a heavy load
   * @return the changed response
   * @throws IllegalArgumentException if {@code factor} is NaN, infinite or negative
   */
  public WindResponse withLeewayTimes(double factor) {
    Arguments.notNegative(factor, "leeway factor", "times");
    return new WindResponse(
        leewayDegrees == null ? null : leewayDegrees.times(factor),
        speedChangeKnots,
        driftFraction);
  }

  /**
   * The same response with paddling speed changed by a table by wind.
   *
   * @param offBowDegrees angles between wind and bow, degrees, ascending from 0 (a head wind) to
   *     180
   * @param windKnots wind speeds over the water, knots, ascending from 0; beyond the strongest the
   *     last interval is extrapolated, because a gale that changes nothing more would be a worse
   *     guess
   * @param speedChangeKnots one row for each angle with one value for each wind, knots gained,
   *     negative for lost; interpolated linearly both ways
   * @return the changed response; a wind that takes more than the craft has leaves it with none
   * @throws IllegalArgumentException if the angles do not run from 0 to 180, the winds do not start
   *     at 0, either does not ascend, there are fewer than two of either, or a row has the wrong
   *     length or a value that is not finite
   */
  public WindResponse withSpeedChange(
      double[] offBowDegrees, double[] windKnots, double[][] speedChangeKnots) {
    return withSpeedChange(WindTable.of(offBowDegrees, windKnots, speedChangeKnots));
  }

  WindResponse withSpeedChange(WindTable speedChangeKnots) {
    return new WindResponse(
        leewayDegrees, Objects.requireNonNull(speedChangeKnots, "speedChangeKnots"), driftFraction);
  }

  /**
   * The same response with a drift down the wind.
   *
   * @param fractionOfWind drift as a share of the wind's speed over the water, in [0, 1]
   * @return the changed response
   * @throws IllegalArgumentException if the fraction is NaN or outside [0, 1]
   */
  public WindResponse withDrift(double fractionOfWind) {
    return new WindResponse(
        leewayDegrees,
        speedChangeKnots,
        Arguments.within(fractionOfWind, 0.0, 1.0, "drift", "parts of the wind's speed"));
  }

  /**
   * Whether the wind changes nothing.
   *
   * @return true if there is no leeway, no drift and no change of speed
   */
  public boolean isNone() {
    return leewayDegrees == null && speedChangeKnots == null && driftFraction == 0.0;
  }

  /**
   * The leeway.
   *
   * @param offBowDegrees where the wind comes from, degrees from the bow in [-180, 180], starboard
   *     positive
   * @param windMetresPerSecond wind over the water, metres a second, at least 0
   * @return angle from heading to water track, degrees, to starboard positive: negative for a wind
   *     on the starboard side
   */
  public double leewayDegrees(double offBowDegrees, double windMetresPerSecond) {
    if (leewayDegrees == null) {
      return 0.0;
    }
    double away = leewayDegrees.at(Math.abs(offBowDegrees), windMetresPerSecond);
    return offBowDegrees > 0.0 ? -away : away;
  }

  /**
   * The change of paddling speed.
   *
   * @param offBowDegrees where the wind comes from, degrees from the bow in [-180, 180]
   * @param windMetresPerSecond wind over the water, metres a second, at least 0
   * @return metres a second gained, negative for lost
   */
  public double speedChangeMetresPerSecond(double offBowDegrees, double windMetresPerSecond) {
    return speedChangeKnots == null
        ? 0.0
        : speedChangeKnots.at(Math.abs(offBowDegrees), windMetresPerSecond)
            * Speed.METRES_PER_SECOND_PER_KNOT;
  }

  /**
   * The drift down the wind.
   *
   * @return share of the wind's speed over the water, in [0, 1]
   */
  public double driftFraction() {
    return driftFraction;
  }

  /**
   * Whether the tables were made for a wind as strong as this.
   *
   * @param windMetresPerSecond wind over the water, metres a second
   * @return false if a table is continued beyond its strongest wind
   */
  public boolean reaches(double windMetresPerSecond) {
    return (leewayDegrees == null || leewayDegrees.reaches(windMetresPerSecond))
        && (speedChangeKnots == null || speedChangeKnots.reaches(windMetresPerSecond));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof WindResponse that
        && Objects.equals(leewayDegrees, that.leewayDegrees)
        && Objects.equals(speedChangeKnots, that.speedChangeKnots)
        && driftFraction == that.driftFraction;
  }

  @Override
  public int hashCode() {
    return Objects.hash(leewayDegrees, speedChangeKnots, driftFraction);
  }

  @Override
  public String toString() {
    return isNone()
        ? "unmoved by wind"
        : "leeway "
            + (leewayDegrees == null ? "none" : "by table")
            + ", speed change "
            + (speedChangeKnots == null ? "none" : "by table")
            + ", drift "
            + driftFraction
            + " of the wind";
  }
}
