package org.ferryglide.nav.sight;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Geodesics;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * Keeping the line by the mark astern: what it should bear, and what to do when it does not.
 *
 * <pre>{@code
 * BackBearing line = BackBearing.of(leg, slip);
 * line.expectedAt(Distance.ofNauticalMiles(1.5)); // 249.8°T
 * BackBearing.Correction c = line.correction(Distance.ofNauticalMiles(1.5), observed, ahead);
 * c.crossTrack(); // 160 m to the right
 * c.turnDegrees(); // -3.1: to port of the leg's course, to be back on it in the distance ahead
 * }</pre>
 */
public final class BackBearing implements Serializable {

  private static final long serialVersionUID = 1L;

  private final Leg leg;
  private final Position mark;

  private BackBearing(Leg leg, Position mark) {
    this.leg = leg;
    this.mark = mark;
  }

  /**
   * A leg and a mark astern of it.
   *
   * @param leg the leg to keep to
   * @param mark the mark looked back at, usually at or behind the start of the leg
   * @return the line to keep
   */
  public static BackBearing of(Leg leg, Position mark) {
    return new BackBearing(
        Objects.requireNonNull(leg, "leg"), Objects.requireNonNull(mark, "mark"));
  }

  /**
   * What the mark bears from a point of the leg.
   *
   * @param fromStart distance along the leg
   * @return the true bearing of the mark while one is on the line
   */
  public TrueBearing expectedAt(Distance fromStart) {
    return TrueBearing.ofDegrees(sight(leg.pointAt(fromStart))[Geodesics.INITIAL_COURSE]);
  }

  /**
   * What to do when the mark bears otherwise.
   *
   * <p>A mark astern that bears more than expected, further clockwise, puts one to the right of the
   * line.
   *
   * @param fromStart distance along the leg, as reckoned
   * @param observed what the mark bears
   * @param backWithin distance along the leg within which to be back on the line, above 0
   * @return how far off the line, and the turn that leads back
   * @throws IllegalArgumentException if {@code backWithin} is not above 0, or if the observed
   *     bearing is so far out that nobody near the line could see it, such as one read at the wrong
   *     end
   */
  public Correction correction(Distance fromStart, TrueBearing observed, Distance backWithin) {
    Arguments.positive(backWithin.metres(), "distance ahead", "metres");
    Position onLine = leg.pointAt(fromStart);
    double[] sight = sight(onLine);
    double expected = sight[Geodesics.INITIAL_COURSE];
    double difference = Angles.turn(expected, observed.degrees());
    double course = leg.courseAt(fromStart).degrees();
    // Square to the leg through the reckoned point, to the line on which the mark bears as
    // observed.
    double metres = sight[Geodesics.LENGTH];
    double astern = Math.toRadians(Angles.turn(course + 180.0, expected));
    double turn = Math.toRadians(difference);
    if (metres > 0.0 && !(Math.cos(astern) * Math.cos(astern + turn) > 0.0)) {
      throw new IllegalArgumentException(
          "observed bearing must be less than a right angle from the "
              + TrueBearing.ofDegrees(expected)
              + " expected, but was "
              + observed
              + "; was it read at the wrong end?");
    }
    double off = metres * Math.sin(turn) / Math.cos(astern + turn);
    double back = -Math.toDegrees(Math.atan2(off, backWithin.metres()));
    return new Correction(Distance.ofMetres(off), back, TrueBearing.ofDegrees(course + back));
  }

  private double[] sight(Position from) {
    double[] sight = new double[Geodesics.WIDTH];
    Geodesics.inverse(
        leg.ellipsoid(),
        from.latitudeDegrees(),
        from.longitudeDegrees(),
        mark.latitudeDegrees(),
        mark.longitudeDegrees(),
        sight,
        0);
    return sight;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof BackBearing that && leg.equals(that.leg) && mark.equals(that.mark);
  }

  @Override
  public int hashCode() {
    return Objects.hash(leg, mark);
  }

  /** The mark and the leg, for people. */
  @Override
  public String toString() {
    return "back bearing of " + mark + " along " + leg;
  }

  /**
   * How far off the line one is, and the way back to it.
   *
   * <pre>{@code
   * String side = correction.crossTrack().metres() > 0 ? "right" : "left";
   * }</pre>
   *
   * @param crossTrack distance from the line, to its right positive
   * @param turnDegrees turn from the leg's course to the track that leads back, degrees, to
   *     starboard positive
   * @param track the track over the ground that leads back
   */
  public record Correction(Distance crossTrack, double turnDegrees, TrueBearing track)
      implements Serializable {

    private static final long serialVersionUID = 1L;

    /**
     * Takes all parts; {@link BackBearing#correction} computes them.
     *
     * @param crossTrack distance from the line, to its right positive
     * @param turnDegrees turn from the leg's course, to starboard positive
     * @param track the track over the ground that leads back
     * @throws IllegalArgumentException if the turn is NaN or outside [-180, 180]
     */
    public Correction {
      Objects.requireNonNull(crossTrack, "crossTrack");
      Arguments.within(turnDegrees, -180.0, 180.0, "turn", "degrees");
      Objects.requireNonNull(track, "track");
    }
  }
}
