package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.timing.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * One landing as seen from the party at some moment of a plan: the heading to it, solved anew for
 * that moment, when the party would be there, and whether it can be used then.
 *
 * <pre>{@code
 * for (PlannedHour hour : leg.hours()) {
 *   LandingInReach.from(plan, hour.span().from()).forEach(System.out::println); // nearest first
 * }
 * System.out.println(LandingInReach.check(plan).message()); // the longest stretch with none
 * }</pre>
 *
 * <p>All landings of the passage are looked at: way points ahead and behind that have one, and its
 * refuges. The way is a straight leg on a constant heading, put through all checks of the passage:
 * dangers, daylight and levels, for the planned party and the slower one. Land is no danger unless
 * it was given as one.
 */
public final class LandingInReach implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Nearer than this there is no heading to a place; chosen here. */
  private static final double HERE_METRES = 50.0;

  private final WayPoint place;
  private final Instant from;
  private final @Nullable TrueBearing heading;
  private final @Nullable Instant arrival;
  private final @Nullable Instant slowerArrival;
  private final @Nullable Verdict against;

  LandingInReach(
      WayPoint place,
      Instant from,
      @Nullable TrueBearing heading,
      @Nullable Instant arrival,
      @Nullable Instant slowerArrival,
      @Nullable Verdict against) {
    this.place = place;
    this.from = from;
    this.heading = heading;
    this.arrival = arrival;
    this.slowerArrival = slowerArrival;
    this.against = against;
  }

  /**
   * All landings of a passage from where the party is at a time.
   *
   * @param plan the plan
   * @param time when; before the departure and after the arrival, the party is at its ends
   * @return those that can be used first, by the time the slower party takes; then the others
   */
  public static List<LandingInReach> from(TimedPlan plan, Instant time) {
    return LandingSearch.of(plan.passage()).from(plan, time);
  }

  /**
   * The longest time from the party to a usable landing, for the slower party, looked at every five
   * minutes of the plan; named with the longest stretch that has none within the time that warns.
   *
   * @param plan the plan
   * @return the verdict by {@link PassageLimits#withTimeToLanding}; stopped where no landing is
   *     usable; not checked if no limit was chosen or no landing given, or if one that might be
   *     usable could not be checked where no other is
   */
  public static Verdict check(TimedPlan plan) {
    return LandingSearch.of(plan.passage()).check(plan);
  }

  /**
   * Where.
   *
   * @return a way point with a landing
   */
  public WayPoint place() {
    return place;
  }

  /**
   * Whether a place is so near to it that no heading is worth giving.
   *
   * @param here where the party is
   * @return true if it lies nearer than 50 m, a distance chosen here
   */
  public boolean isAt(Position here) {
    return GeodesicLeg.between(here, place.position()).length().metres() < HERE_METRES;
  }

  /**
   * The heading to it.
   *
   * @return true heading of the planned party; empty if it cannot be reached
   */
  public Optional<TrueBearing> heading() {
    return Optional.ofNullable(heading);
  }

  /**
   * When the planned party is there.
   *
   * @return the arrival; empty if it cannot be reached
   */
  public Optional<Instant> arrival() {
    return Optional.ofNullable(arrival);
  }

  /**
   * When the slower party is there.
   *
   * @return the arrival; empty if it cannot be reached at the slower speed
   */
  public Optional<Instant> slowerArrival() {
    return Optional.ofNullable(slowerArrival);
  }

  /**
   * How long the slower party takes.
   *
   * @return the time; empty if it cannot be reached at the slower speed
   */
  public Optional<Duration> slowerTime() {
    return slowerArrival().map(there -> Duration.between(from, there));
  }

  /**
   * Whether both parties reach it and may land, everything checked.
   *
   * @return false if something rules it out; {@link #ruledOutBy} says what
   */
  public boolean isUsable() {
    return against == null;
  }

  /**
   * What rules it out.
   *
   * @return the worst of what stops or could not be checked; empty if nothing does
   */
  public Optional<Verdict> ruledOutBy() {
    return Optional.ofNullable(against);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LandingInReach that
        && place.equals(that.place)
        && from.equals(that.from)
        && Objects.equals(heading, that.heading)
        && Objects.equals(arrival, that.arrival)
        && Objects.equals(slowerArrival, that.slowerArrival)
        && Objects.equals(against, that.against);
  }

  @Override
  public int hashCode() {
    return Objects.hash(place, from, arrival, slowerArrival);
  }

  @Override
  public String toString() {
    return against == null && heading != null
        ? place.name() + ", " + heading.threeDigits() + ", there at " + arrival
        : place.name() + ", not usable: " + against;
  }
}
