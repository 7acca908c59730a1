package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/**
 * A route that can be steered, leg after leg.
 *
 * <pre>{@code
 * SteeredRoute steered = solver.solve(route, departure).orElseThrow();
 * for (SteeredLeg leg : steered.legs()) {
 *   System.out.println(leg.courseToSteer().threeDigits() + " until " + leg.arrival());
 * }
 * }</pre>
 */
public final class SteeredRoute implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Route route;
  private final List<SteeredLeg> legs;

  SteeredRoute(Route route, List<SteeredLeg> legs) {
    this.route = route;
    this.legs = Collections.unmodifiableList(legs);
  }

  /**
   * Joins legs that were steered one by one, perhaps with stops ashore between them and by
   * different solvers.
   *
   * @param legs the steered legs in order, at least one
   * @return the route they make
   * @throws IllegalArgumentException if there is no leg, a leg does not start where the one before
   *     it ends, or sets out before that one has arrived
   */
  public static SteeredRoute of(List<SteeredLeg> legs) {
    List<Leg> lines = new ArrayList<>();
    for (int i = 0; i < legs.size(); i++) {
      SteeredLeg leg = legs.get(i);
      lines.add(leg.leg());
      if (i > 0 && leg.departure().isBefore(legs.get(i - 1).arrival())) {
        throw new IllegalArgumentException(
            "leg "
                + (i + 1)
                + " must not start before leg "
                + i
                + " arrives, at "
                + legs.get(i - 1).arrival()
                + ", but starts at "
                + leg.departure());
      }
    }
    return new SteeredRoute(Route.of(lines), new ArrayList<>(legs));
  }

  /**
   * The route.
   *
   * @return the route that is steered
   */
  public Route route() {
    return route;
  }

  /**
   * The legs, steered.
   *
   * @return one for each leg of the route, in order; unmodifiable
   */
  public List<SteeredLeg> legs() {
    return legs;
  }

  private SteeredLeg last() {
    return legs.get(legs.size() - 1);
  }

  /**
   * When it starts.
   *
   * @return the departure
   */
  public Instant departure() {
    return legs.get(0).departure();
  }

  /**
   * When the end is reached.
   *
   * @return the arrival
   */
  public Instant arrival() {
    return last().arrival();
  }

  /**
   * When it starts, for kernels.
   *
   * @return seconds since 1970-01-01T00:00:00Z
   */
  public double departureSeconds() {
    return legs.get(0).groundTrack().startSeconds();
  }

  /**
   * When the end is reached, for kernels.
   *
   * @return seconds since 1970-01-01T00:00:00Z
   */
  public double arrivalSeconds() {
    return last().arrivalSeconds();
  }

  /**
   * When a way point is reached.
   *
   * @param wayPoint number of the way point: 0 for the start, the number of legs for the end
   * @return the time; for the start, that of the departure
   * @throws IndexOutOfBoundsException if there is no such way point
   */
  public Instant timeAt(int wayPoint) {
    return wayPoint == 0 ? departure() : legs.get(wayPoint - 1).arrival();
  }

  /**
   * When a way point is left again, which is later than {@link #timeAt} where a stop is made.
   *
   * @param wayPoint number of the way point: 0 for the start, the number of legs for the end
   * @return the time; for the end, that of the arrival
   * @throws IndexOutOfBoundsException if there is no such way point
   */
  public Instant leavingAt(int wayPoint) {
    return wayPoint == legs.size() ? arrival() : legs.get(wayPoint).departure();
  }

  /**
   * How long it takes, stops included.
   *
   * @return arrival less departure
   */
  public Duration duration() {
    return Duration.between(departure(), arrival());
  }

  /**
   * The speed made good along the route.
   *
   * @return its length over the time it takes; zero for a route without length
   */
  public Speed speedMadeGood() {
    double seconds = arrivalSeconds() - departureSeconds();
    return seconds > 0.0 ? Speed.ofMetresPerSecond(route.length().metres() / seconds) : Speed.ZERO;
  }

  /**
   * The effort: how far the same paddling would carry the craft over still water in calm air.
   *
   * @return the sum over the legs
   */
  public Distance effort() {
    Distance sum = Distance.ZERO;
    for (SteeredLeg leg : legs) {
      sum = sum.plus(leg.effort());
    }
    return sum;
  }

  /**
   * The least reserve left on any leg.
   *
   * @return the speed to spare; see {@link SteeredLeg#reserve}
   */
  public Speed reserve() {
    Speed least = legs.get(0).reserve();
    for (SteeredLeg leg : legs) {
      if (leg.reserve().compareTo(least) < 0) {
        least = leg.reserve();
      }
    }
    return least;
  }

  /**
   * The greatest share of the speed through the water that any leg spends against what sets across.
   *
   * @return in [0, 1]; see {@link SteeredLeg#crossStreamShare}
   */
  public double crossStreamShare() {
    double most = 0.0;
    for (SteeredLeg leg : legs) {
      most = Math.max(most, leg.crossStreamShare());
    }
    return most;
  }

  /**
   * Where the craft is at a time.
   *
   * @param instant when
   * @return the position
   * @throws IllegalArgumentException if the time is before the departure or after the arrival
   */
  public Position at(Instant instant) {
    for (int i = 0; i < legs.size(); i++) {
      SteeredLeg leg = legs.get(i);
      if (!instant.isAfter(leg.arrival())) {
        return instant.isBefore(leg.departure()) && i > 0
            ? leg.leg().start() // ashore
            : leg.groundTrack().at(instant);
      }
    }
    return last().groundTrack().at(instant);
  }

  /**
   * The notes of all legs.
   *
   * @return each note once; unmodifiable
   */
  public List<Note> notes() {
    Set<Note> notes = new LinkedHashSet<>();
    for (SteeredLeg leg : legs) {
      notes.addAll(leg.notes());
    }
    return Collections.unmodifiableList(new ArrayList<>(notes));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SteeredRoute that && route.equals(that.route) && legs.equals(that.legs);
  }

  @Override
  public int hashCode() {
    return 31 * route.hashCode() + legs.hashCode();
  }

  @Override
  public String toString() {
    return "steered " + route + ", " + departure() + " to " + arrival();
  }
}
