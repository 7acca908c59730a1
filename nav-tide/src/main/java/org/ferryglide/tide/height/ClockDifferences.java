package org.ferryglide.tide.height;

import java.io.Serializable;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.ferryglide.nav.basics.Arguments;

/**
 * Time differences of a secondary port, printed for a few clock times of the standard port's high
 * or low water and interpolated round the clock between them.
 *
 * <p>The clock goes round in twelve hours: the tide that comes at noon at springs comes at midnight
 * too, which is why the differences are printed for 0000 and 1200 together.
 *
 * <pre>{@code
 * ClockDifferences highWaters =
 *     ClockDifferences.of(LocalTime.of(0, 0), 35).and(LocalTime.of(6, 0), 23);
 * highWaters.minutesAt(LocalTime.of(3, 0)); // 29: half way from 0000 to 0600
 * highWaters.minutesAt(LocalTime.of(9, 0)); // 29: half way from 0600 to 1200
 * }</pre>
 */
public final class ClockDifferences implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double HALF_DAY_SECONDS = 43_200.0;
  private static final long HALF_DAY_NANOS = 43_200_000_000_000L;
  private static final double LARGEST_MINUTES = 720.0;

  /** Clock times in [0, 43200) seconds, increasing. */
  private final double[] seconds;

  /** Differences at those times, minutes. */
  private final double[] minutes;

  private ClockDifferences(Map<Double, Double> differences) {
    this.seconds = differences.keySet().stream().mapToDouble(Double::doubleValue).toArray();
    this.minutes = differences.values().stream().mapToDouble(Double::doubleValue).toArray();
  }

  /**
   * The same difference at any time of the day.
   *
   * @param minutes time to add to the standard port's water, minutes, in [-720, 720]
   * @return the difference
   * @throws IllegalArgumentException if {@code minutes} is NaN or outside [-720, 720]
   */
  public static ClockDifferences always(double minutes) {
    return of(LocalTime.MIDNIGHT, minutes);
  }

  /**
   * The difference at one printed clock time, for {@link #and} to add to.
   *
   * @param clockTime clock time of the standard port's water, the same twelve hours later
   * @param minutes time to add to the standard port's water, minutes, in [-720, 720]
   * @return the difference
   * @throws IllegalArgumentException if {@code minutes} is NaN or outside [-720, 720]
   */
  public static ClockDifferences of(LocalTime clockTime, double minutes) {
    return new ClockDifferences(Map.of(halfDay(clockTime), checked(minutes)));
  }

  /**
   * These differences and that at one more printed clock time.
   *
   * @param clockTime clock time of the standard port's water, the same twelve hours later
   * @param differenceMinutes time to add to the standard port's water, minutes, in [-720, 720]
   * @return the differences
   * @throws IllegalArgumentException if {@code differenceMinutes} is NaN or outside [-720, 720], or
   *     there is a different one for that clock time or twelve hours from it; the same may be given
   *     again, as tables print it for 0000 and 1200
   */
  public ClockDifferences and(LocalTime clockTime, double differenceMinutes) {
    Map<Double, Double> all = new TreeMap<>();
    for (int i = 0; i < seconds.length; i++) {
      all.put(seconds[i], minutes[i]);
    }
    Double known = all.put(halfDay(clockTime), checked(differenceMinutes));
    if (known != null && known != differenceMinutes) {
      throw new IllegalArgumentException(
          "there must be one difference for a clock time and that twelve hours from it, but for "
              + clockTime
              + " there were "
              + known
              + " and "
              + differenceMinutes
              + " minutes");
    }
    return new ClockDifferences(all);
  }

  private static double checked(double minutes) {
    return Arguments.within(
        minutes, -LARGEST_MINUTES, LARGEST_MINUTES, "time difference", "minutes");
  }

  private static double halfDay(LocalTime clockTime) {
    return clockTime.toNanoOfDay()
        % HALF_DAY_NANOS
        * 1e-9; // whole numbers, so that noon is midnight
  }

  /**
   * The difference for a water of the standard port.
   *
   * @param clockTime clock time of the standard port's water
   * @return minutes to add to it, interpolated linearly between the printed times before and after
   */
  public double minutesAt(LocalTime clockTime) {
    double at = halfDay(clockTime);
    int last = seconds.length - 1;
    int after = 0;
    while (after <= last && seconds[after] <= at) {
      after++;
    }
    int before = after == 0 ? last : after - 1;
    double start = after == 0 ? seconds[last] - HALF_DAY_SECONDS : seconds[before];
    double end = after > last ? seconds[0] + HALF_DAY_SECONDS : seconds[after];
    double next = minutes[after > last ? 0 : after];
    return minutes[before] + (next - minutes[before]) * (at - start) / (end - start);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ClockDifferences that
        && Arrays.equals(seconds, that.seconds)
        && Arrays.equals(minutes, that.minutes);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Arrays.hashCode(seconds), Arrays.hashCode(minutes));
  }

  /** The differences, and the times they were printed for. */
  @Override
  public String toString() {
    return "minutes "
        + Arrays.toString(minutes)
        + " at seconds of the half day "
        + Arrays.toString(seconds);
  }
}
