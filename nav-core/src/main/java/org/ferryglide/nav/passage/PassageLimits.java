package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Duration;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.sky.SunThreshold;
import org.ferryglide.nav.steer.SteeringLimits;
import org.jspecify.annotations.Nullable;

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
   * differ from the tabled ones by 20 to 30 per cent.
   */
  public static final double USUAL_RATE_ERROR = 0.25;

  private static final double KNOT = Speed.ofKnots(1.0).metresPerSecond();

  static final int STREAM = 0;
  static final int WIND = 2;
  static final int WIND_AGAINST_STREAM = 4;
  static final int RESERVE = 6;
  static final int DAYLIGHT = 8;
  static final int TIME_AFLOAT = 10;
  static final int TIME_TO_LANDING = 12;
  static final int LANE_ANGLE = 14;
  static final int ONSHORE_WIND = 16;
  private static final int LEAST_STREAM = 18;
  private static final int RATE_ERROR = 19;
  static final int CROSS_STREAM_SHARE = 20;
  private static final int WIDTH = 22;

  private final double[] values;
  private final @Nullable SunThreshold light;

  private PassageLimits(double[] values, @Nullable SunThreshold light) {
    this.values = values;
    this.light = light;
  }

  /**
   * No limits but sunset at the landing, with a warning an hour before.
   *
   * @return the limits; each {@code with} method gives a copy with one more
   */
  public static PassageLimits none() {
    double[] values = new double[WIDTH];
    Arrays.fill(values, Double.NaN);
    values[DAYLIGHT] = Seconds.of(USUAL_DAYLIGHT_LEFT);
    values[DAYLIGHT + 1] = 0.0;
    values[LEAST_STREAM] = 0.0;
    values[RATE_ERROR] = USUAL_RATE_ERROR;
    values[CROSS_STREAM_SHARE] = SteeringLimits.USUAL.warnAbove();
    values[CROSS_STREAM_SHARE + 1] = SteeringLimits.USUAL.refuseAbove();
    return new PassageLimits(values, SunThreshold.SUNRISE_AND_SUNSET);
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
    return new PassageLimits(copy, light);
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
   * What counts as daylight.
   *
   * @param threshold where the sun must be above; civil twilight is a reserve for what goes wrong,
   *     which a party may choose to spend
   * @return the changed limits
   */
  public PassageLimits withLight(SunThreshold threshold) {
    return new PassageLimits(values, Objects.requireNonNull(threshold, "threshold"));
  }

  /**
   * By day or night: daylight is not looked at, and is named among what was not checked.
   *
   * @return the changed limits
   */
  public PassageLimits withAnyLight() {
    return new PassageLimits(values, null);
  }

  /**
   * The greatest share of the speed through the water that goes against what sets across the path.
   *
   * @param warning share above which a warning is given, above 0; 0.5 by default
   * @param stop share above which the plan is stopped, above the warning and at most 1; 0.8 by
   *     default
   * @return the changed limits
   * @throws IllegalArgumentException if the limits are the wrong way round, equal, or out of range
   */
  public PassageLimits withCrossStreamShare(double warning, double stop) {
    Arguments.within(warning, Double.MIN_VALUE, 1.0, "share that warns", "(no unit)");
    Arguments.within(stop, Double.MIN_VALUE, 1.0, "share that stops", "(no unit)");
    return with(
        CROSS_STREAM_SHARE,
        "share of the speed",
        new double[] {warning, stop},
        true,
        warning + " and stop at " + stop);
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
    return withTimes(TIME_AFLOAT, "time afloat", warning, stop, true);
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
    return withTimes(TIME_TO_LANDING, "time to a landing", warning, stop, true);
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
   * By how much the real stream may exceed its table; streams are compared with their limits at
   * this upper end.
   *
   * @param share of the tabled rate, in [0, 1]
   * @return the changed limits
   * @throws IllegalArgumentException if the share is NaN or out of range
   */
  public PassageLimits withRateError(double share) {
    double[] copy = values.clone();
    copy[RATE_ERROR] = Arguments.within(share, 0.0, 1.0, "error of the rate", "parts");
    return new PassageLimits(copy, light);
  }

  /**
   * What the party has chosen, in numbers, for a program that keeps it.
   *
   * <pre>{@code
   * limits.figures().get("stream"); // [0.77, 1.29]: metres a second, 1.5 and 2.5 kn
   * }</pre>
   *
   * @return by what is limited, where a warning begins and where the plan is stopped, metres a
   *     second, seconds, degrees or parts of 1; {@code least stream that counts} and {@code error
   *     of the rate} have one number; what has no limit is left out; unmodifiable
   */
  public Map<String, List<Double>> figures() {
    Map<String, List<Double>> figures = new LinkedHashMap<>();
    String[] pairs = {
      "stream",
      "wind",
      "wind against stream",
      "reserve",
      "daylight left",
      "time afloat",
      "time to landing",
      "lane angle",
      "onshore wind"
    };
    for (int i = 0; i < pairs.length; i++) {
      if (has(2 * i)) {
        figures.put(pairs[i], List.of(warning(2 * i), stop(2 * i)));
      }
    }
    figures.put("least stream that counts", List.of(leastStream()));
    figures.put("error of the rate", List.of(rateError()));
    figures.put(
        "cross-stream share", List.of(warning(CROSS_STREAM_SHARE), stop(CROSS_STREAM_SHARE)));
    return Collections.unmodifiableMap(figures);
  }

  /** Whether the party has chosen a limit. */
  boolean has(int slot) {
    return !Double.isNaN(values[slot]);
  }

  /** Where a warning begins, in metres a second, seconds, degrees or parts. */
  double warning(int slot) {
    return values[slot];
  }

  /** Where the plan is stopped. */
  double stop(int slot) {
    return values[slot + 1];
  }

  /**
   * What counts as daylight.
   *
   * @return where the sun must be above; empty by day or night
   */
  public Optional<SunThreshold> light() {
    return Optional.ofNullable(light);
  }

  double leastStream() {
    return values[LEAST_STREAM];
  }

  /** The same without this limit: on the way to a landing it is not asked again. */
  PassageLimits withoutTimeToLanding() {
    double[] copy = values.clone();
    copy[TIME_TO_LANDING] = Double.NaN;
    copy[TIME_TO_LANDING + 1] = Double.NaN;
    return new PassageLimits(copy, light);
  }

  double rateError() {
    return values[RATE_ERROR];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PassageLimits that
        && Arrays.equals(values, that.values)
        && light == that.light;
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(values) + Objects.hashCode(light);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("limits of the party");
    tell(text, "stream", STREAM, KNOT, "kn");
    tell(text, "wind", WIND, KNOT, "kn");
    tell(text, "wind against stream", WIND_AGAINST_STREAM, KNOT, "kn");
    tell(text, "reserve", RESERVE, KNOT, "kn");
    tell(text, "daylight left", DAYLIGHT, 60.0, "min");
    text.append(
        light == null
            ? ", by day or night"
            : light == SunThreshold.SUNRISE_AND_SUNSET ? "" : ", by " + light);
    tell(text, "time afloat", TIME_AFLOAT, 60.0, "min");
    tell(text, "time to a landing", TIME_TO_LANDING, 60.0, "min");
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
