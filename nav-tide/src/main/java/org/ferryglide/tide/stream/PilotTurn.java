package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.time.Duration;
import java.util.Optional;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.TextFormatException;

/**
 * A pilot book's remark on a turn of the stream: "the south-going stream begins 4 h 30 min before
 * high water; spring rate 2.5 knots".
 *
 * <pre>{@code
 * PilotTurn.begins("-0430", TrueBearing.ofDegrees(180), Speed.ofKnots(2.5));
 * PilotTurn.begins("+0145", TrueBearing.ofDegrees(0), Speed.ofKnots(3)).withNeapRate(Speed.ofKnots(1.4));
 * }</pre>
 *
 * <p>The rate is the greatest of the stream that begins with the turn.
 */
public final class PilotTurn implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final int FURTHEST_MINUTES = 13 * 60;

  private final int minutesAfter;
  private final TrueBearing set;
  private final Speed springRate;

  /** Metres a second; NaN if none is printed. */
  private final double neapRate;

  private PilotTurn(int minutesAfter, TrueBearing set, Speed springRate, double neapRate) {
    this.minutesAfter = minutesAfter;
    this.set = set;
    this.springRate = springRate;
    this.neapRate = neapRate;
  }

  /**
   * A stream that begins at a time about the port's high (or low) water.
   *
   * @param afterWater hours and minutes after the water as pilots print them, negative before it:
   *     {@code -0430}, {@code +0145}, {@code 0000}, also {@code -4:30}; a true minus sign is read
   *     too
   * @param set where the stream goes
   * @param springRate its greatest rate at mean springs; zero for slack water
   * @return a turn without a printed neap rate
   * @throws TextFormatException if {@code afterWater} is anything else or beyond 13 hours
   */
  public static PilotTurn begins(String afterWater, TrueBearing set, Speed springRate) {
    return new PilotTurn(minutes(afterWater), set, springRate, Double.NaN);
  }

  /**
   * The same turn with a printed neap rate.
   *
   * @param rate the greatest rate of this stream at mean neaps
   * @return a changed copy
   */
  public PilotTurn withNeapRate(Speed rate) {
    return new PilotTurn(minutesAfter, set, springRate, rate.metresPerSecond());
  }

  private static int minutes(String text) {
    int at = 0;
    int sign = 1;
    if (!text.isEmpty() && "+-\u2212".indexOf(text.charAt(0)) >= 0) {
      sign = text.charAt(0) == '+' ? 1 : -1;
      at = 1;
    }
    String rest = text.substring(at);
    if (!rest.matches("[0-9]{1,2}:?[0-9]{2}")) {
      throw new TextFormatException(
          "hours and minutes about the water must stand here, as in -0430", text, at);
    }
    String digits = rest.replace(":", "");
    int minute = Integer.parseInt(digits.substring(digits.length() - 2));
    int total = 60 * Integer.parseInt(digits.substring(0, digits.length() - 2)) + minute;
    if (minute > 59 || total > FURTHEST_MINUTES) {
      throw new TextFormatException(
          "minutes must be below 60 and the time within 13 hours of the water", text, at);
    }
    return sign * total;
  }

  /**
   * When the stream begins.
   *
   * @return time after the port's high (or low) water, negative before it
   */
  public Duration afterWater() {
    return Duration.ofMinutes(minutesAfter);
  }

  /**
   * Where the stream goes.
   *
   * @return the set
   */
  public TrueBearing set() {
    return set;
  }

  /**
   * The greatest rate at mean springs.
   *
   * @return the rate
   */
  public Speed springRate() {
    return springRate;
  }

  /**
   * The greatest rate at mean neaps.
   *
   * @return the rate; empty if none is printed
   */
  public Optional<Speed> neapRate() {
    return Double.isNaN(neapRate)
        ? Optional.empty()
        : Optional.of(Speed.ofMetresPerSecond(neapRate));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PilotTurn that
        && minutesAfter == that.minutesAfter
        && set.equals(that.set)
        && springRate.equals(that.springRate)
        && Double.compare(neapRate, that.neapRate) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * minutesAfter + set.hashCode();
  }

  /** When it begins, where it goes and how fast. */
  @Override
  public String toString() {
    return "begins " + afterWater() + " after the water, " + set + ", " + springRate;
  }
}
