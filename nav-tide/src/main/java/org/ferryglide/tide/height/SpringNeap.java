package org.ferryglide.tide.height;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.sky.Moon;
import org.ferryglide.nav.sky.MoonPhase;
import org.ferryglide.nav.water.Found;

/**
 * A time of springs, when the range of the tide is largest, or of neaps, when it is smallest.
 *
 * <pre>{@code
 * for (SpringNeap turn : SpringNeap.fromMoon(Duration.ofHours(36), from, until)) {
 *   System.out.println(turn.kind() + " about " + turn.time() + ", give or take " + turn.within());
 * }
 * }</pre>
 *
 * <p>Springs come after new and full moon, neaps after the quarters, by the age of the tide: two
 * days on average in United Kingdom waters and from none to four in general (public answers of the
 * United Kingdom Hydrographic Office). The moon's distance shifts the largest range by days: of the
 * springs and neaps of the harmonic tides of 2024 to 2027 at Boston, Eastport and New York, with
 * the age from their constants, 19 of 20 fell within 2.9, 2.6 and 2.3 days of the date from the
 * moon; up a river within 5 or 6. Where the diurnal tide is large, the terms springs and neaps
 * mislead.
 *
 * @param kind springs or neaps
 * @param time when, as far as is known
 * @param within how far off the largest or smallest range may be, 19 times of 20
 */
public record SpringNeap(Kind kind, Instant time, Duration within) implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final Duration USUAL_AGE = Duration.ofDays(2);

  /** How far off a date is when the age of the tide is known. */
  private static final Duration WITHIN_OF_KNOWN_AGE = Duration.ofDays(3);

  /** The same when it is not: three days, and two for the age, as independent errors. */
  private static final Duration WITHIN_OF_USUAL_AGE = Duration.ofHours(87);

  /** A range is largest or smallest if it is so for this long before and after. */
  private static final Duration QUARTER = Duration.ofDays(5);

  /**
   * Which way the range turns.
   *
   * <pre>{@code
   * boolean springs = turn.kind() == SpringNeap.Kind.SPRINGS;
   * }</pre>
   */
  public enum Kind {
    /** The range is largest. */
    SPRINGS,
    /** The range is smallest. */
    NEAPS
  }

  /**
   * Takes all parts.
   *
   * @param kind springs or neaps
   * @param time when, as far as is known
   * @param within how far off that may be, not negative
   * @throws IllegalArgumentException if {@code within} is negative
   */
  public SpringNeap {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(time, "time");
    if (within.isNegative()) {
      throw new IllegalArgumentException("within must not be negative, but was " + within);
    }
  }

  /**
   * Springs and neaps from the moon alone, for an unknown age of the tide: two days after the
   * moon's phase, give or take three and a half.
   *
   * @param from start of the search, in the years 1900 to 2100
   * @param until end of the search, in the years 1900 to 2100
   * @return springs and neaps in order of time, from {@code from} until before {@code until}
   * @throws IllegalArgumentException if {@code until} is before {@code from}, or the search, or the
   *     moon's phases before it, are outside those years
   */
  public static Found<SpringNeap> fromMoon(Instant from, Instant until) {
    return fromMoon(USUAL_AGE, WITHIN_OF_USUAL_AGE, from, until);
  }

  /**
   * Springs and neaps from the moon and a port's age of the tide: give or take three days.
   *
   * @param ageOfTide how long after new and full moon springs fall at the port, negative where they
   *     come before; within 10 days
   * @param from start of the search, in the years 1900 to 2100
   * @param until end of the search, in the years 1900 to 2100
   * @return springs and neaps in order of time, from {@code from} until before {@code until}
   * @throws IllegalArgumentException if {@code ageOfTide} is beyond 10 days, {@code until} is
   *     before {@code from}, or the search, or the moon's phases before it, are outside those years
   */
  public static Found<SpringNeap> fromMoon(Duration ageOfTide, Instant from, Instant until) {
    if (ageOfTide.abs().compareTo(Duration.ofDays(10)) > 0) {
      throw new IllegalArgumentException(
          "age of the tide must be within 10 days, but was " + ageOfTide);
    }
    return fromMoon(ageOfTide, WITHIN_OF_KNOWN_AGE, from, until);
  }

  private static Found<SpringNeap> fromMoon(
      Duration age, Duration within, Instant from, Instant until) {
    TimeSpan asked = TimeSpan.of(from, until);
    List<SpringNeap> found = new ArrayList<>();
    for (Map.Entry<Instant, MoonPhase> phase :
        Moon.phasesBetween(from.minus(age), until.minus(age)).entrySet()) {
      boolean springs = phase.getValue() == MoonPhase.NEW || phase.getValue() == MoonPhase.FULL;
      found.add(
          new SpringNeap(springs ? Kind.SPRINGS : Kind.NEAPS, phase.getKey().plus(age), within));
    }
    return Found.of(found, asked, List.of(asked), List.of());
  }

  /**
   * Springs and neaps of a tide table: the high waters between which the range is largest or
   * smallest for five days before and after.
   *
   * <p>The ranges of two high waters in turn are averaged, so that the difference between a day's
   * two tides does not count.
   *
   * @param table the waters
   * @return springs and neaps in order of time, and what part of the table's time could be seen:
   *     all but five days and about a tide at either end
   */
  public static Found<SpringNeap> of(TideTable table) {
    List<TideEvent> highs = table.highWaters();
    List<Instant> times = new ArrayList<>();
    List<Double> ranges = new ArrayList<>();
    for (int i = 0; i + 1 < highs.size(); i++) {
      TideEvent first = highs.get(i);
      TideEvent second = highs.get(i + 1);
      if (!table.isRangeOneSided(first) && !table.isRangeOneSided(second)) {
        Duration apart = Duration.between(first.time(), second.time());
        times.add(first.time().plus(apart.dividedBy(2)));
        ranges.add(0.5 * (table.range(first).metres() + table.range(second).metres()));
      }
    }
    List<SpringNeap> found = new ArrayList<>();
    for (int i = 0; i < times.size(); i++) {
      Instant earliest = times.get(i).minus(QUARTER);
      Instant latest = times.get(i).plus(QUARTER);
      if (earliest.isBefore(times.get(0)) || latest.isAfter(times.get(times.size() - 1))) {
        continue;
      }
      if (isBeyondAll(times, ranges, i, 1.0)) {
        found.add(new SpringNeap(Kind.SPRINGS, times.get(i), Duration.ofHours(12)));
      } else if (isBeyondAll(times, ranges, i, -1.0)) {
        found.add(new SpringNeap(Kind.NEAPS, times.get(i), Duration.ofHours(12)));
      }
    }
    TimeSpan asked = TimeSpan.of(table.start(), table.end());
    return Found.of(found, asked, seen(times), List.of());
  }

  /** What lies far enough from the ends of the ranges to be told a turn. */
  private static List<TimeSpan> seen(List<Instant> times) {
    if (times.isEmpty()) {
      return List.of();
    }
    Instant first = times.get(0).plus(QUARTER);
    Instant last = times.get(times.size() - 1).minus(QUARTER);
    return last.isBefore(first) ? List.of() : List.of(TimeSpan.of(first, last));
  }

  /** Whether a range, times a sign, is above all those near it, the first of equals counting. */
  private static boolean isBeyondAll(
      List<Instant> times, List<Double> ranges, int index, double sign) {
    for (int i = 0; i < ranges.size(); i++) {
      Duration apart = Duration.between(times.get(i), times.get(index)).abs();
      double excess = sign * (ranges.get(index) - ranges.get(i));
      if (i != index
          && apart.compareTo(QUARTER) <= 0
          && (i < index ? excess <= 0.0 : excess < 0.0)) {
        return false;
      }
    }
    return true;
  }
}
