package org.ferryglide.nav.geodesy;

import java.io.Serializable;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Edge;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;

/**
 * When and how near two vessels pass if both hold track and speed, from now on.
 *
 * <p>A paddler is rarely seen by a ship; the figures tell how long there is to act.
 *
 * <pre>{@code
 * ClosestApproach approach =
 *     ClosestApproach.between(kayak, ferry, Duration.ofHours(1));
 * approach.distance().inNauticalMiles(2);
 * approach.warning(Distance.ofNauticalMiles(1)); // time left once she comes in sight at a mile
 * }</pre>
 *
 * <p>Both move on rhumb lines over WGS84, unless another ellipsoid is given; the distance between
 * them is the geodesic. The time is good to a microsecond, or to a micrometre over the speed at
 * which they close if that is more.
 */
public final class ClosestApproach implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final Duration LONGEST_HORIZON = Duration.ofHours(24);

  /** A time that no plan reaches, 30 million years, well within what a Duration holds. */
  private static final double LONGEST_SECONDS = 1e15;

  private final Ellipsoid ellipsoid;
  private final MovingVessel own;
  private final MovingVessel other;
  private final double seconds;
  private final double metres;
  private final Position ownPosition;
  private final Position otherPosition;
  private final TrueBearing bearing;

  private ClosestApproach(
      Ellipsoid ellipsoid, MovingVessel own, MovingVessel other, double horizonSeconds) {
    this.ellipsoid = ellipsoid;
    this.own = own;
    this.other = other;
    Pair pair = new Pair(ellipsoid, own, other);
    seconds = LeastDistance.search(pair, 0.0, pair.withinReach(horizonSeconds));
    metres = pair.distance(seconds);
    ownPosition = new Position(pair.pointA[0], pair.pointA[1]);
    otherPosition = new Position(pair.pointB[0], pair.pointB[1]);
    bearing = new TrueBearing(metres == 0.0 ? 0.0 : pair.sight[0]);
  }

  /**
   * The closest approach of two vessels.
   *
   * @param own the one whose point of view is taken
   * @param other the other one, perhaps a {@link MovingVessel#mark}
   * @param horizon how far ahead to look, above zero and at most 24 hours
   * @return the approach, at the latest at the horizon
   * @throws IllegalArgumentException if the horizon is out of range
   */
  public static ClosestApproach between(MovingVessel own, MovingVessel other, Duration horizon) {
    return between(Ellipsoid.WGS84, own, other, horizon);
  }

  /**
   * The closest approach of two vessels on another ellipsoid than WGS84.
   *
   * @param ellipsoid the ellipsoid on which both move
   * @param own the one whose point of view is taken
   * @param other the other one, perhaps a {@link MovingVessel#mark}
   * @param horizon how far ahead to look, above zero and at most 24 hours
   * @return the approach, at the latest at the horizon
   * @throws IllegalArgumentException if the horizon is out of range
   */
  public static ClosestApproach between(
      Ellipsoid ellipsoid, MovingVessel own, MovingVessel other, Duration horizon) {
    if (horizon.isNegative() || horizon.isZero() || horizon.compareTo(LONGEST_HORIZON) > 0) {
      throw new IllegalArgumentException(
          "horizon must be above 0 and at most 24 hours, but was " + horizon);
    }
    return new ClosestApproach(ellipsoid, own, other, Seconds.of(horizon));
  }

  /**
   * The closest approach of a boat on a leg to a mark.
   *
   * @param leg the leg the boat goes along
   * @param speed speed over the ground, above 0
   * @param mark the fixed mark
   * @return time from the start and distance of the closest point of the leg
   * @throws IllegalArgumentException if the speed is not above 0, or so small that the time
   *     overflows
   */
  public static Passing passing(Leg leg, Speed speed, Position mark) {
    double rate = Arguments.positive(speed.metresPerSecond(), "speed", "metres a second");
    ClosestPoint closest = leg.closestTo(mark);
    double seconds = closest.alongTrack().metres() / rate;
    if (!(seconds <= LONGEST_SECONDS)) {
      throw new IllegalArgumentException(
          "speed must be enough to pass the mark within 30 million years, but was " + speed);
    }
    return new Passing(closest, Seconds.toDuration(seconds));
  }

  /**
   * How a boat on a leg passes a mark.
   *
   * <pre>{@code
   * ClosestApproach.Passing passing = ClosestApproach.passing(leg, Speed.ofKnots(3), buoy);
   * passing.time(); // from the start of the leg
   * }</pre>
   *
   * @param closest the closest point of the leg, with distance and side
   * @param time the time from the start of the leg
   */
  public record Passing(ClosestPoint closest, Duration time) implements Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * Takes both parts; {@link ClosestApproach#passing} finds them.
     *
     * @param closest the closest point of the leg
     * @param time the time from the start of the leg, not negative
     * @throws IllegalArgumentException if the time is negative
     */
    public Passing {
      Objects.requireNonNull(closest, "closest");
      if (time.isNegative()) {
        throw new IllegalArgumentException(
            "time from the start of the leg must not be negative, but was " + time);
      }
    }
  }

  /**
   * When they are closest.
   *
   * @return time from now; zero if they are opening already
   */
  public Duration time() {
    return Seconds.toDuration(seconds);
  }

  /**
   * How near they come.
   *
   * @return the distance at that time
   */
  public Distance distance() {
    return Distance.ofMetres(metres);
  }

  /**
   * Whether they are closest now and will only draw apart.
   *
   * @return whether the time is zero
   */
  public boolean isOpening() {
    return seconds == 0.0;
  }

  /**
   * Where the own vessel is then.
   *
   * @return its position at the closest approach
   */
  public Position ownPosition() {
    return ownPosition;
  }

  /**
   * Where the other vessel is then.
   *
   * @return its position at the closest approach
   */
  public Position otherPosition() {
    return otherPosition;
  }

  /**
   * The bearing of the other vessel from the own one then.
   *
   * @return the true bearing; true north if they meet
   */
  public TrueBearing bearing() {
    return bearing;
  }

  /**
   * How far apart they are at a time.
   *
   * @param time from now
   * @return the distance
   * @throws IllegalArgumentException if either would run past a pole before then
   */
  public Distance distanceAfter(Duration time) {
    return sightAfter(time).length();
  }

  /**
   * The bearing of the other vessel from the own one at a time; a steady bearing while the distance
   * falls means collision.
   *
   * @param time from now
   * @return the true bearing
   * @throws IllegalArgumentException if either would run past a pole before then
   */
  public TrueBearing bearingAfter(Duration time) {
    return sightAfter(time).initialCourse();
  }

  private GeodesicLeg sightAfter(Duration time) {
    return GeodesicLeg.between(
        ellipsoid, own.positionAfter(ellipsoid, time), other.positionAfter(ellipsoid, time));
  }

  /**
   * The time left to act: from when the other vessel comes in sight to the closest approach.
   *
   * @param visibility how far one can see, at least 0
   * @return the time, counted from now if she is in sight already; empty if she never comes in
   *     sight
   * @throws IllegalArgumentException if the visibility is negative
   */
  public Optional<Duration> warning(Distance visibility) {
    double sight = Arguments.notNegative(visibility.metres(), "visibility", "metres");
    if (metres > sight) {
      return Optional.empty();
    }
    Pair pair = new Pair(ellipsoid, own, other);
    if (pair.distance(0.0) <= sight) {
      return Optional.of(Seconds.toDuration(seconds));
    }
    double inside = Edge.of(time -> pair.distance(time) <= sight, seconds, 0.0, 1e-6);
    return Optional.of(Seconds.toDuration(seconds - inside));
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof ClosestApproach that
        && ellipsoid.equals(that.ellipsoid)
        && own.equals(that.own)
        && other.equals(that.other)
        && seconds == that.seconds;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * own.hashCode() + other.hashCode()) + Double.hashCode(seconds);
  }

  /** Distance and time. */
  @Override
  public String toString() {
    return "closest approach " + distance() + " after " + time();
  }

  /** The distance of two vessels as a function of time, seconds from now. */
  private static final class Pair implements LeastDistance.Function {
    private static final double STEPS = 64;

    private final Ellipsoid ellipsoid;
    private final RhumbLine trackA;
    private final RhumbLine trackB;
    private final double speedA;
    private final double speedB;
    private final double[] pointA = new double[3];
    private final double[] pointB = new double[3];
    private final double[] vectorA = new double[3];
    private final double[] vectorB = new double[3];
    private final double[] sight = new double[3];
    private double step;

    Pair(Ellipsoid ellipsoid, MovingVessel a, MovingVessel b) {
      this.ellipsoid = ellipsoid;
      trackA = RhumbLine.from(ellipsoid, a.position(), a.track());
      trackB = RhumbLine.from(ellipsoid, b.position(), b.track());
      speedA = a.speed().metresPerSecond();
      speedB = b.speed().metresPerSecond();
    }

    /** The horizon, or the time at which one of them reaches a pole. */
    double withinReach(double horizonSeconds) {
      double most = horizonSeconds;
      if (speedA > 0.0) {
        most = Math.min(most, trackA.farthestAhead().metres() / speedA);
      }
      if (speedB > 0.0) {
        most = Math.min(most, trackB.farthestAhead().metres() / speedB);
      }
      step = Math.max(most / STEPS, 1e-3);
      return most;
    }

    private void place(double time) {
      trackA.pointAt(speedA * time, pointA, 0);
      trackB.pointAt(speedB * time, pointB, 0);
    }

    @Override
    public double chord(double time) {
      place(time);
      Cartesian.vector(ellipsoid, pointA[0], pointA[1], vectorA);
      Cartesian.vector(ellipsoid, pointB[0], pointB[1], vectorB);
      return Cartesian.distance(vectorA, vectorB);
    }

    @Override
    public double step(double time) {
      return step;
    }

    @Override
    public double estimate(double time) {
      double apart = distance(time);
      // Velocities along and across the line of sight, the other's less the own.
      double turnA = pointA[2] - sight[0];
      double turnB = pointB[2] - sight[1];
      double along = speedB * Degrees.cosine(turnB) - speedA * Degrees.cosine(turnA);
      double across = speedB * Degrees.sine(turnB) - speedA * Degrees.sine(turnA);
      double square = along * along + across * across;
      return square == 0.0 ? 0.0 : -apart * along / square;
    }

    @Override
    public double distance(double time) {
      place(time);
      Geodesics.inverse(ellipsoid, pointA[0], pointA[1], pointB[0], pointB[1], sight, 0);
      return sight[2];
    }
  }
}
