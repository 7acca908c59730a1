package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * Legs one after another, each starting where the last one ends.
 *
 * <pre>{@code
 * Route route = Route.ofRhumbLegs(landing, island, farBeach);
 * route.length().inNauticalMiles(1); // 9.4 NM
 * Route home = route.reverse();
 * }</pre>
 */
public final class Route implements Serializable {
  private static final long serialVersionUID = 1L;

  private final List<Leg> legs;

  private Route(List<Leg> legs) {
    this.legs = legs;
  }

  /**
   * Makes a route of legs.
   *
   * @param legs the legs in order, at least one
   * @return the route
   * @throws IllegalArgumentException if there is no leg, or a leg does not start where the one
   *     before it ends
   */
  public static Route of(List<? extends Leg> legs) {
    if (legs.isEmpty()) {
      throw new IllegalArgumentException("a route must have at least one leg");
    }
    for (int i = 1; i < legs.size(); i++) {
      Position end = legs.get(i - 1).end();
      if (!legs.get(i).start().equals(end)) {
        throw new IllegalArgumentException(
            "leg "
                + (i + 1)
                + " must start where leg "
                + i
                + " ends, at "
                + end
                + ", but starts at "
                + legs.get(i).start());
      }
    }
    return new Route(Collections.unmodifiableList(new ArrayList<>(legs)));
  }

  /**
   * Makes a route of legs.
   *
   * @param legs the legs in order, at least one
   * @return the route
   * @throws IllegalArgumentException if there is no leg, or a leg does not start where the one
   *     before it ends
   */
  public static Route ofLegs(Leg... legs) {
    return of(Arrays.asList(legs));
  }

  /**
   * Makes a route of rhumb legs from place to place, on WGS84: craft are followed over no other
   * ellipsoid.
   *
   * @param wayPoints the places in order, at least two
   * @return the route
   * @throws IllegalArgumentException if there are fewer than two places
   */
  public static Route ofRhumbLegs(Position... wayPoints) {
    if (wayPoints.length < 2) {
      throw new IllegalArgumentException(
          "a route must have at least two way points, but had " + wayPoints.length);
    }
    List<Leg> legs = new ArrayList<>();
    for (int i = 1; i < wayPoints.length; i++) {
      legs.add(RhumbLeg.between(wayPoints[i - 1], wayPoints[i]));
    }
    return new Route(Collections.unmodifiableList(legs));
  }

  /**
   * The legs.
   *
   * @return the legs in order, at least one; unmodifiable
   */
  public List<Leg> legs() {
    return legs;
  }

  /**
   * Where the route starts.
   *
   * @return the start of the first leg
   */
  public Position start() {
    return legs.get(0).start();
  }

  /**
   * Where the route ends.
   *
   * @return the end of the last leg
   */
  public Position end() {
    return legs.get(legs.size() - 1).end();
  }

  /**
   * How long the route is over the ground.
   *
   * @return the sum of its legs
   */
  public Distance length() {
    Distance sum = Distance.ZERO;
    for (Leg leg : legs) {
      sum = sum.plus(leg.length());
    }
    return sum;
  }

  /**
   * The same route the other way round.
   *
   * @return the way home
   */
  public Route reverse() {
    List<Leg> back = new ArrayList<>();
    for (int i = legs.size() - 1; i >= 0; i--) {
      back.add(legs.get(i).reverse());
    }
    return new Route(Collections.unmodifiableList(back));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Route that && legs.equals(that.legs);
  }

  @Override
  public int hashCode() {
    return legs.hashCode();
  }

  @Override
  public String toString() {
    return "route of " + legs.size() + " legs, " + length();
  }
}
