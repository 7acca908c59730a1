package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Duration;
import java.util.Arrays;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.measure.Speed;

/**
 * The limits a party has chosen for itself: for each thing looked at, where a warning begins and
 * where the plan is stopped.
 *
 * <p>What has no limit is not looked at, daylight excepted. The library chooses no limit for
 * anybody: what is right depends on the party, the craft, the coast and the day.
 *
 * <pre>{@code
 * PassageLimits ours =
 *     PassageLimits.none()
 *         .withStream(Speed.ofKnots(1.5), Speed.ofKnots(2.5))
 *         .withWindAgainstStream(Speed.ofKnots(8), Speed.ofKnots(14), Speed.ofKnots(0.5))
 *         .withReserve(Speed.ofKnots(1.0), Speed.ofKnots(0.5))
 *         .withDaylight(Duration.ofHours(2), Duration.ofMinutes(30));
 * }</pre>
 */
public final class PassageLimits implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Usual time before sunset at which a warning begins. Common practice, no source. */
  public static final Duration USUAL_DAYLIGHT_LEFT = Duration.ofHours(1);

  /**
   * Usual share by which a tabled rate may be exceeded. Common practice, no source: rates inshore
   * differ from the tabled ones by 20 to 30 in the hundred.
   */
  public static final double USUAL_RATE_ERROR = 0.25;

  private static final double KNOT = Speed.ofKnots(1.0).metresPerSecond();

  private static final int STREAM = 0;
  private static final int WIND = 2;
  private static final int WIND_AGAINST_STREAM = 4;
  private static final int RESERVE = 6;
  private static final int DAYLIGHT = 8;
  private static final int TIME_UNDER_WAY = 10;
  private static final int TIME_BETWEEN_LANDINGS = 12;
  private static final int LANE_ANGLE = 14;
  private static final int ONSHORE_WIND = 16;
  private static final int LEAST_STREAM = 18;
  private static final int RATE_ERROR = 19;
  private static final int WIDTH = 20;

  private final double[] values;

  private PassageLimits(double[] values) {
    this.values = values;
  }

  /**
   * No limits but sunset at the landing, with a warning an hour before.
   *
   * @return the limits; the {@code with} methods add one each
   */
  public static PassageLimits none() {
    double[] values = new double[WIDTH];
    Arrays.fill(values, Double.NaN);
    values[DAYLIGHT] = Seconds.of(USUAL_DAYLIGHT_LEFT);
    values[DAYLIGHT + 1] = 0.0;
    values[LEAST_STREAM] = 0.0;
    values[RATE_ERROR] = USUAL_RATE_ERROR;
    return new PassageLimits(values);
  }

  private PassageLimits withSpeeds(
      int slot, String what, Speed warning, Speed stop, boolean moreIsWorse) {
    return with(
        slot,
        what,
        new double[] {warning.metresPerSecond(), stop.metresPerSecond()},
        moreIsWorse,
        warning.inKnots(2) + " and stop at " + stop.inKnots(2));
  }

  private PassageLimits withTimes(
      int slot, String what, Duration warning, Duration stop, boolean moreIsWorse) {
    Duration lesser = moreIsWorse ? warning : stop;
    if (lesser.isNegative()) {
      throw new IllegalArgumentException(
          "limits of " + what + " must be at least PT0S, but one was " + lesser);
    }
    return with(
        slot,
        what,
        new double[] {Seconds.of(warning), Seconds.of(stop)},
        moreIsWorse,
        warning + " and stop at " + stop);
  }

  private PassageLimits with(
      int slot, String what, double[] limits, boolean moreIsWorse, String told) {
    double warning = limits[0];
    double stop = limits[1];
    if (moreIsWorse ? !(warning < stop) : !(warning > stop)) {
      throw new IllegalArgumentException(
          "warning limit of "
              + what
              + " must be "
              + (moreIsWorse ? "below" : "above")
              + " its stop limit, but warning was to begin at "
              + told);
    }
    double[] copy = values.clone();
    copy[slot] = warning;
    copy[slot + 1] = stop;
    return new PassageLimits(copy);
  }

  /**
   * The greatest stream at the party's place, anywhere along the passage.
   *
   * @param warning rate above which a warning is given
   * @param stop rate above which the plan is stopped, above the warning
   * @return the changed limits
   * @throws IllegalArgumentException if the limits are the wrong way round, equal, or out of range
   */
  public PassageLimits withStream(Speed warning, Speed stop) {
    return withSpeeds(STREAM, "stream", warning, stop, true);
  }

  /**
   * The greatest wind at the party's place, anywhere along the passage.
   *
   * @param warning speed above which a warning is given
   * @param stop speed above which the plan is stopped, above the warning
   * @return the changed limits
   * @throws IllegalArgumentException if the limits are the wrong way round, equal, or out of range
   */
  public PassageLimits withWind(Speed warning, Speed stop) {
    return withSpeeds(WIND, "wind", warning, stop, true);
  }

  /**
   * The greatest wind against the stream, which steepens the sea. Wind is against the stream if it
   * blows from within 60° of where the stream goes.
   *
   * @param warning wind above which a warning is given
   * @param stop wind above which the plan is stopped, above the warning
   * @param leastStream slower streams do not count
   * @return the changed limits
   * @throws IllegalArgumentException if the limits are the wrong way round, equal, or out of range
   */
  public PassageLimits withWindAgainstStream(Speed warning, Speed stop, Speed leastStream) {
    PassageLimits limits =
        withSpeeds(WIND_AGAINST_STREAM, "wind against stream", warning, stop, true);
    limits.values[LEAST_STREAM] = leastStream.metresPerSecond();
    return limits;
  }

  /**
   * The least reserve of speed: how much slower the party could be and still hold the plan.
   *
   * @param warning reserve below which a warning is given
   * @param stop reserve below which the plan is stopped, below the warning
   * @return the changed limits
   * @throws IllegalArgumentException if the limits are the wrong way round, equal, or out of range
   */
  public PassageLimits withReserve(Speed warning, Speed stop) {
    return withSpeeds(RESERVE, "reserve of speed", warning, stop, false);
  }

  /**
   * The daylight left when the slower party has landed.
   *
   * @param warning time before sunset below which a warning is given
   * @param stop time before sunset below which the plan is stopped, below the warning, at least
   *     zero
   * @return the changed limits
   * @throws IllegalArgumentException if the limits are the wrong way round, equal, or out of range
   */
  public PassageLimits withDaylight(Duration warning, Duration stop) {
    return withTimes(DAYLIGHT, "daylight left", warning, stop, false);
  }

  /**
   * The longest time afloat between two stops, from the first boat afloat until the last of the
   * slower party is ashore.
   *
   * @param warning time above which a warning is given
   * @param stop time above which the plan is stopped, above the warning
   * @return the changed limits
   * @throws IllegalArgumentException if the limits are the wrong way round, equal, or out of range
   */
  public PassageLimits withTimeAfloat(Duration warning, Duration stop) {
    return withTimes(TIME_UNDER_WAY, "time afloat", warning, stop, true);
  }

  /**
   * The longest time from which no usable landing can be reached.
   *
   * @param warning time to the nearest usable landing above which a warning is given
   * @param stop time above which the plan is stopped, above the warning
   * @return the changed limits
   * @throws IllegalArgumentException if the limits are the wrong way round, equal, or out of range
   */
  public PassageLimits withTimeToLanding(Duration warning, Duration stop) {
    return withTimes(TIME_BETWEEN_LANDINGS, "time to a landing", warning, stop, true);
  }

  /**
   * How far the heading across a lane may be from a right angle.
   *
   * @param warningDegrees degrees above which a warning is given, in [0, 90]
   * @param stopDegrees degrees above which the plan is stopped, in (warning, 90]
   * @return the changed limits
   * @throws IllegalArgumentException if the limits are the wrong way round, equal, or out of range
   */
  public PassageLimits withLaneAngle(double warningDegrees, double stopDegrees) {
    double warning = Arguments.within(warningDegrees, 0.0, 90.0, "angle", "degrees");
    double stop = Arguments.within(stopDegrees, 0.0, 90.0, "angle", "degrees");
    return with(
        LANE_ANGLE,
        "angle across a lane",
        new double[] {warning, stop},
        true,
        warning + "° and stop at " + stop + "°");
  }

  /**
   * The greatest wind onto a landing, from the sector it lies open to.
   *
   * @param warning speed above which a warning is given
   * @param stop speed above which the plan is stopped, above the warning
   * @return the changed limits
   * @throws IllegalArgumentException if the limits are the wrong way round, equal, or out of range
   */
  public PassageLimits withOnshoreWind(Speed warning, Speed stop) {
    return withSpeeds(ONSHORE_WIND, "onshore wind", warning, stop, true);
  }

  /**
   * By how much the real stream may exceed its table; streams are held against their limits at this
   * upper end.
   *
   * @param share of the tabled rate, in [0, 1]
   * @return the changed limits
   * @throws IllegalArgumentException if the share is NaN or out of range
   */
  public PassageLimits withRateError(double share) {
    double[] copy = values.clone();
    copy[RATE_ERROR] = Arguments.within(share, 0.0, 1.0, "error of the rate", "parts");
    return new PassageLimits(copy);
  }

  boolean hasStream() {
    return !Double.isNaN(values[STREAM]);
  }

  double streamWarning() {
    return values[STREAM];
  }

  double streamStop() {
    return values[STREAM + 1];
  }

  boolean hasWind() {
    return !Double.isNaN(values[WIND]);
  }

  double windWarning() {
    return values[WIND];
  }

  double windStop() {
    return values[WIND + 1];
  }

  boolean hasWindAgainstStream() {
    return !Double.isNaN(values[WIND_AGAINST_STREAM]);
  }

  double windAgainstStreamWarning() {
    return values[WIND_AGAINST_STREAM];
  }

  double windAgainstStreamStop() {
    return values[WIND_AGAINST_STREAM + 1];
  }

  double leastStream() {
    return values[LEAST_STREAM];
  }

  boolean hasReserve() {
    return !Double.isNaN(values[RESERVE]);
  }

  double reserveWarning() {
    return values[RESERVE];
  }

  double reserveStop() {
    return values[RESERVE + 1];
  }

  double daylightWarning() {
    return values[DAYLIGHT];
  }

  double daylightStop() {
    return values[DAYLIGHT + 1];
  }

  boolean hasTimeAfloat() {
    return !Double.isNaN(values[TIME_UNDER_WAY]);
  }

  double timeAfloatWarning() {
    return values[TIME_UNDER_WAY];
  }

  double timeAfloatStop() {
    return values[TIME_UNDER_WAY + 1];
  }

  /** The same without this limit: on the way to a landing it is not asked again. */
  PassageLimits withoutTimeToLanding() {
    double[] copy = values.clone();
    copy[TIME_BETWEEN_LANDINGS] = Double.NaN;
    copy[TIME_BETWEEN_LANDINGS + 1] = Double.NaN;
    return new PassageLimits(copy);
  }

  boolean hasTimeToLanding() {
    return !Double.isNaN(values[TIME_BETWEEN_LANDINGS]);
  }

  double timeToLandingWarning() {
    return values[TIME_BETWEEN_LANDINGS];
  }

  double timeToLandingStop() {
    return values[TIME_BETWEEN_LANDINGS + 1];
  }

  boolean hasLaneAngle() {
    return !Double.isNaN(values[LANE_ANGLE]);
  }

  double laneAngleWarning() {
    return values[LANE_ANGLE];
  }

  double laneAngleStop() {
    return values[LANE_ANGLE + 1];
  }

  boolean hasOnshoreWind() {
    return !Double.isNaN(values[ONSHORE_WIND]);
  }

  double onshoreWindWarning() {
    return values[ONSHORE_WIND];
  }

  double onshoreWindStop() {
    return values[ONSHORE_WIND + 1];
  }

  double rateError() {
    return values[RATE_ERROR];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PassageLimits that && Arrays.equals(values, that.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("limits of the party");
    tell(text, "stream", STREAM, KNOT, "kn");
    tell(text, "wind", WIND, KNOT, "kn");
    tell(text, "wind against stream", WIND_AGAINST_STREAM, KNOT, "kn");
    tell(text, "reserve", RESERVE, KNOT, "kn");
    tell(text, "daylight left", DAYLIGHT, 60.0, "min");
    tell(text, "time afloat", TIME_UNDER_WAY, 60.0, "min");
    tell(text, "time to a landing", TIME_BETWEEN_LANDINGS, 60.0, "min");
    tell(text, "angle across a lane", LANE_ANGLE, 1.0, "°");
    tell(text, "onshore wind", ONSHORE_WIND, KNOT, "kn");
    return text + ", rate exceeded by up to " + Math.round(100.0 * values[RATE_ERROR]) + " %";
  }

  private void tell(StringBuilder text, String what, int slot, double unit, String name) {
    if (!Double.isNaN(values[slot])) {
      text.append(", ").append(what).append(' ');
      text.append(Math.round(100.0 * values[slot] / unit) / 100.0).append(" and ");
      text.append(Math.round(100.0 * values[slot + 1] / unit) / 100.0).append(' ').append(name);
    }
  }
}
