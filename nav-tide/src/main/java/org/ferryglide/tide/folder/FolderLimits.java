package org.ferryglide.tide.folder;

import java.io.IOException;
import java.io.Serializable;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.sky.SunThreshold;
import org.ferryglide.nav.steer.CourseToSteer;
import org.jspecify.annotations.Nullable;

/**
 * What a party asks of a passage, beyond that it is possible.
 *
 * <p>In {@code limits.csv} each limit is an item; those left out keep their usual value:
 *
 * <ul>
 *   <li>{@code light}: {@code daylight} (sunrise to sunset, the usual), {@code civil twilight} or
 *       {@code any};
 *   <li>{@code latest arrival}: a date and time with its offset;
 *   <li>{@code strongest stream}: a speed, for the strongest stream to be met anywhere;
 *   <li>{@code largest cross-stream share}: per cent of the paddling speed that may be spent
 *       against what sets the craft sideways, {@code 80 %} by default;
 *   <li>{@code reach of stations}: how far from its station a stream table holds, {@code 6 NM} by
 *       default;
 *   <li>{@code longest leg}: how long a leg may take before it counts as not possible, {@code 24 h}
 *       by default.
 * </ul>
 *
 * <pre>{@code
 * FolderLimits limits = FolderLimits.USUAL.withStrongestStream(Speed.ofKnots(3));
 * limits.light(); // sunrise and sunset
 * }</pre>
 */
public final class FolderLimits implements Serializable {
  private static final long serialVersionUID = 1L;

  /** How far from its station a stream table is taken to hold: common practice, no source. */
  public static final Distance USUAL_REACH = Distance.ofNauticalMiles(6.0);

  /** Four fifths of the paddling speed, so that a fifth is in reserve: common practice. */
  public static final double USUAL_CROSS_STREAM_SHARE = 0.8;

  /** Between sunrise and sunset, four fifths of the speed, the usual reach; no other limit. */
  public static final FolderLimits USUAL =
      new FolderLimits(
          SunThreshold.SUNRISE_AND_SUNSET,
          null,
          null,
          USUAL_CROSS_STREAM_SHARE,
          USUAL_REACH,
          CourseToSteer.USUAL_LONGEST_DURATION);

  private static final Duration MOST_FOR_A_LEG = Duration.ofDays(60);

  private static final List<String> ITEMS =
      List.of(
          "light",
          "latest arrival",
          "strongest stream",
          "largest cross-stream share",
          "reach of stations",
          "longest leg");

  private final @Nullable SunThreshold light;
  private final @Nullable OffsetDateTime latestArrival;
  private final @Nullable Speed strongestStream;
  private final double crossStreamShare;
  private final Distance reach;
  private final Duration longestLeg;

  private FolderLimits(
      @Nullable SunThreshold light,
      @Nullable OffsetDateTime latestArrival,
      @Nullable Speed strongestStream,
      double crossStreamShare,
      Distance reach,
      Duration longestLeg) {
    this.longestLeg = longestLeg;
    this.light = light;
    this.latestArrival = latestArrival;
    this.strongestStream = strongestStream;
    this.crossStreamShare = crossStreamShare;
    this.reach = reach;
  }

  static FolderLimits read(FolderText file) throws IOException {
    ItemSheet items = ItemSheet.read(file, List.of(), ITEMS);
    FolderLimits limits = items.read("light", USUAL::withLightNamed, USUAL);
    if (items.has("latest arrival")) {
      OffsetDateTime latest =
          items.read("latest arrival", PassageSheet::dateAndTime, OffsetDateTime.MIN);
      limits = limits.withLatestArrival(latest);
    }
    if (items.has("strongest stream")) {
      limits = items.read("strongest stream", limits::withStrongestStreamNamed, limits);
    }
    limits =
        limits.withCrossStreamShare(
            items.read(
                "largest cross-stream share", FolderLimits::share, USUAL_CROSS_STREAM_SHARE));
    limits = items.read("reach of stations", limits::withReachNamed, limits);
    limits = items.read("longest leg", limits::withLongestLegNamed, limits);
    items.refuseIfFaulty();
    return limits;
  }

  /** The file that reads as these do. */
  String text() {
    StringBuilder rows = new StringBuilder("item,value\n");
    rows.append("light,")
        .append(
            light == null
                ? "any"
                : light == SunThreshold.CIVIL_TWILIGHT ? "civil twilight" : "daylight")
        .append('\n');
    if (latestArrival != null) {
      rows.append("latest arrival,").append(latestArrival).append('\n');
    }
    if (strongestStream != null) {
      rows.append("strongest stream,").append(strongestStream).append('\n');
    }
    return rows.append("largest cross-stream share,")
        .append(ErrorSheet.perCent(crossStreamShare))
        .append("\nreach of stations,")
        .append(reach)
        .append("\nlongest leg,")
        .append(ErrorSheet.minutes(longestLeg))
        .append('\n')
        .toString();
  }

  private FolderLimits withLightNamed(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "daylight" -> withLight(SunThreshold.SUNRISE_AND_SUNSET);
      case "civil twilight" -> withLight(SunThreshold.CIVIL_TWILIGHT);
      case "any" -> withAnyLight();
      default ->
          throw new IllegalArgumentException(
              "must be daylight, civil twilight or any, but was \"" + text + "\"");
    };
  }

  private FolderLimits withStrongestStreamNamed(String text) {
    return withStrongestStream(Speed.parse(text));
  }

  private FolderLimits withReachNamed(String text) {
    return withReach(Distance.parse(text));
  }

  private FolderLimits withLongestLegNamed(String text) {
    return withLongestLeg(Words.duration(text));
  }

  private static double share(String text) {
    return checkedShare(Words.share(text));
  }

  private static double checkedShare(double share) {
    if (!(share > 0.0 && share <= 1.0)) { // written so that NaN fails
      throw new IllegalArgumentException(
          "cross-stream share must be above 0 and at most 1, that is 100 %, but was " + share);
    }
    return share;
  }

  /**
   * The same limits with another light.
   *
   * @param threshold where the sun must be above, all the way
   * @return the changed limits
   */
  public FolderLimits withLight(SunThreshold threshold) {
    return new FolderLimits(
        Objects.requireNonNull(threshold, "threshold"),
        latestArrival,
        strongestStream,
        crossStreamShare,
        reach,
        longestLeg);
  }

  /**
   * The same limits for a party that paddles by night as well.
   *
   * @return the changed limits
   */
  public FolderLimits withAnyLight() {
    return new FolderLimits(
        null, latestArrival, strongestStream, crossStreamShare, reach, longestLeg);
  }

  /**
   * The same limits with a latest arrival.
   *
   * @param latest when the party must have landed
   * @return the changed limits
   */
  public FolderLimits withLatestArrival(OffsetDateTime latest) {
    return new FolderLimits(
        light,
        Objects.requireNonNull(latest, "latest"),
        strongestStream,
        crossStreamShare,
        reach,
        longestLeg);
  }

  /**
   * The same limits with a strongest stream.
   *
   * @param most the strongest stream to be met anywhere on the passage, above 0
   * @return the changed limits
   * @throws IllegalArgumentException if {@code most} is not above 0
   */
  public FolderLimits withStrongestStream(Speed most) {
    if (!(most.knots() > 0.0)) {
      throw new IllegalArgumentException(
          "strongest stream must be above 0, but was " + most.inKnots(1));
    }
    return new FolderLimits(light, latestArrival, most, crossStreamShare, reach, longestLeg);
  }

  /**
   * The same limits with another share of the speed for the stream across.
   *
   * @param share largest share of the paddling speed, above 0 and at most 1
   * @return the changed limits
   * @throws IllegalArgumentException if {@code share} is NaN or outside that range
   */
  public FolderLimits withCrossStreamShare(double share) {
    return new FolderLimits(
        light, latestArrival, strongestStream, checkedShare(share), reach, longestLeg);
  }

  /**
   * The same limits with another reach.
   *
   * @param distance how far from its station a stream table holds, above 0
   * @return the changed limits
   * @throws IllegalArgumentException if {@code distance} is not above 0
   */
  public FolderLimits withReach(Distance distance) {
    if (!(distance.metres() > 0.0)) {
      throw new IllegalArgumentException(
          "reach of stations must be above 0, but was " + distance.inNauticalMiles(1));
    }
    return new FolderLimits(
        light, latestArrival, strongestStream, crossStreamShare, distance, longestLeg);
  }

  /**
   * The same limits with another longest time for a leg.
   *
   * @param longest how long a leg may take before it counts as not possible, above 0 and at most 60
   *     days
   * @return the changed limits
   * @throws IllegalArgumentException if {@code longest} is outside that range
   */
  public FolderLimits withLongestLeg(Duration longest) {
    if (longest.isZero() || longest.isNegative() || longest.compareTo(MOST_FOR_A_LEG) > 0) {
      throw new IllegalArgumentException(
          "longest leg must be above 0 and at most 60 days, but was " + longest);
    }
    return new FolderLimits(
        light, latestArrival, strongestStream, crossStreamShare, reach, longest);
  }

  /**
   * Where the sun must be above, all the way.
   *
   * @return the threshold; empty if the party paddles by night as well
   */
  public Optional<SunThreshold> light() {
    return Optional.ofNullable(light);
  }

  /**
   * When the party must have landed.
   *
   * @return the time; empty if it does not matter
   */
  public Optional<OffsetDateTime> latestArrival() {
    return Optional.ofNullable(latestArrival);
  }

  /**
   * The strongest stream that may be met anywhere on the passage.
   *
   * @return the rate; empty if only the steering sets a limit
   */
  public Optional<Speed> strongestStream() {
    return Optional.ofNullable(strongestStream);
  }

  /**
   * The largest share of the paddling speed that may be spent against what sets sideways.
   *
   * @return the share, above 0 and at most 1
   */
  public double crossStreamShare() {
    return crossStreamShare;
  }

  /**
   * How far from its station a stream table is taken to hold.
   *
   * @return the distance, above 0
   */
  public Distance reach() {
    return reach;
  }

  /**
   * How long a leg may take before it counts as not possible.
   *
   * @return the time, above 0
   */
  public Duration longestLeg() {
    return longestLeg;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FolderLimits that
        && light == that.light
        && Objects.equals(latestArrival, that.latestArrival)
        && Objects.equals(strongestStream, that.strongestStream)
        && crossStreamShare == that.crossStreamShare
        && reach.equals(that.reach)
        && longestLeg.equals(that.longestLeg);
  }

  @Override
  public int hashCode() {
    return Objects.hash(light, latestArrival, strongestStream, crossStreamShare, reach, longestLeg);
  }

  /** The limits in words. */
  @Override
  public String toString() {
    return (light == null ? "any light" : light.toString())
        + (latestArrival == null ? "" : ", landed by " + latestArrival)
        + (strongestStream == null ? "" : ", stream at most " + strongestStream.inKnots(1))
        + ", at most "
        + Math.round(crossStreamShare * 100.0)
        + " % of the speed across, stations reach "
        + reach.inNauticalMiles(1)
        + (longestLeg.equals(CourseToSteer.USUAL_LONGEST_DURATION)
            ? ""
            : ", a leg at most " + longestLeg.toMinutes() + " min");
  }
}
