package org.ferryglide.nav.geodesy;

import java.io.Serializable;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;

/**
 * A stretch that follows a shore: a distance and a time, but no one course, and so not a {@link
 * Leg}.
 *
 * <p>Half of a kayak's passage is this. The points are picked off the chart along the way the boat
 * will go, outside rocks and surf; between them the stretch runs straight on the chart. Each bay
 * cut across makes it shorter than what is paddled, so pick points closely.
 *
 * <pre>{@code
 * CoastStretch shore = CoastStretch.along(landing, point, reefEnd, beach);
 * shore.length().inNauticalMiles(1);
 * Duration paddling = shore.timeAt(Speed.ofKnots(3));
 * }</pre>
 */
public final class CoastStretch implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Ends held as doubles and rhumb lines to 13.5 nanometres leave a leg this uncertain, metres: a
   * whole number of seconds and so little more is that number.
   */
  private static final double ROUNDING_METRES = 2e-8;

  private final List<RhumbLeg> legs;
  private final double lengthMetres;

  private CoastStretch(List<RhumbLeg> legs) {
    this.legs = Collections.unmodifiableList(new ArrayList<>(legs));
    double sum = 0.0;
    for (RhumbLeg leg : legs) {
      sum += leg.length().metres();
    }
    lengthMetres = sum;
  }

  /**
   * The stretch along some points.
   *
   * @param points the points in order, at least two
   * @return the stretch
   * @throws IllegalArgumentException if there are fewer than two points
   */
  public static CoastStretch along(List<Position> points) {
    return along(Ellipsoid.WGS84, points);
  }

  /**
   * The stretch along some points on another ellipsoid, such as that of an old survey.
   *
   * @param ellipsoid the ellipsoid the points are given on
   * @param points the points in order, at least two
   * @return the stretch
   * @throws IllegalArgumentException if there are fewer than two points
   */
  public static CoastStretch along(Ellipsoid ellipsoid, List<Position> points) {
    if (points.size() < 2) {
      throw new IllegalArgumentException(
          "a coast stretch needs at least two points, but was given " + points.size());
    }
    List<RhumbLeg> legs = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      legs.add(RhumbLeg.between(ellipsoid, points.get(i - 1), points.get(i)));
    }
    return new CoastStretch(legs);
  }

  /**
   * The stretch along some points.
   *
   * @param points the points in order, at least two
   * @return the stretch
   * @throws IllegalArgumentException if there are fewer than two points
   */
  public static CoastStretch along(Position... points) {
    return along(List.of(points));
  }

  /**
   * Where the stretch begins.
   *
   * @return the first point
   */
  public Position start() {
    return legs.get(0).start();
  }

  /**
   * Where the stretch ends.
   *
   * @return the last point
   */
  public Position end() {
    return legs.get(legs.size() - 1).end();
  }

  /**
   * The short straight legs the stretch is made of.
   *
   * @return an unmodifiable list, in order
   */
  public List<RhumbLeg> legs() {
    return legs;
  }

  /**
   * How far it is along the shore.
   *
   * @return the sum of the legs
   */
  public Distance length() {
    return Distance.ofMetres(lengthMetres);
  }

  /**
   * The straight way from start to end, for comparison; it may cross land.
   *
   * @return the rhumb leg from start to end
   */
  public RhumbLeg direct() {
    return RhumbLeg.between(start(), end());
  }

  /**
   * How long the stretch takes.
   *
   * @param overGround speed over the ground, above 0
   * @return the time, rounded up to the next second, since late is the safe side
   * @throws IllegalArgumentException if the speed is 0, or so small that the time overflows
   */
  public Duration timeAt(Speed overGround) {
    double speed = Arguments.positive(overGround.metresPerSecond(), "speed", "metres a second");
    double seconds = Math.ceil(Math.max(0.0, lengthMetres - ROUNDING_METRES * legs.size()) / speed);
    if (!(seconds <= 1e15)) {
      throw new IllegalArgumentException(
          "speed must be enough to arrive within 30 million years, but was " + overGround);
    }
    return Duration.ofSeconds((long) seconds);
  }

  /**
   * The point some way along the shore.
   *
   * @param fromStart distance from the start, within [0, length]
   * @return the point
   * @throws IllegalArgumentException if the distance is outside the stretch
   */
  public Position pointAt(Distance fromStart) {
    double left =
        Arguments.within(fromStart.metres(), 0.0, lengthMetres, "distance along", "metres");
    for (RhumbLeg leg : legs) {
      if (left < leg.length().metres()) {
        return leg.pointAt(Distance.ofMetres(left));
      }
      left -= leg.length().metres();
    }
    return end();
  }

  /**
   * The same stretch the other way.
   *
   * @return the stretch from end to start
   */
  public CoastStretch reverse() {
    List<RhumbLeg> back = new ArrayList<>();
    for (int i = legs.size() - 1; i >= 0; i--) {
      back.add(legs.get(i).reverse());
    }
    return new CoastStretch(back);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CoastStretch that && legs.equals(that.legs);
  }

  @Override
  public int hashCode() {
    return legs.hashCode();
  }

  /** Ends, number of legs and length. */
  @Override
  public String toString() {
    return "coast stretch from "
        + start()
        + " to "
        + end()
        + " in "
        + legs.size()
        + " legs, "
        + length();
  }
}
