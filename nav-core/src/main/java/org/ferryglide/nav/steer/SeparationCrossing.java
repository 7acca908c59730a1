package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Edge;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;

/**
 * Crossing a traffic separation scheme with the heading, not the track, at right angles to the
 * traffic.
 *
 * <p>The International Regulations for Preventing Collisions at Sea, rule 10(c), ask for a heading
 * as nearly as practicable at right angles to the general direction of traffic flow: that shows the
 * bow's aspect plainly and takes the least time, whatever the stream does to the track meanwhile.
 * So the craft is carried along the lane, and this says how far. Small craft are hard to see from a
 * ship and on its radar: cross only where it is allowed, and preferably not at all.
 *
 * <pre>{@code
 * SeparationCrossing crossing =
 *     SeparationCrossing.solve(
 *             solver, entry, TrueBearing.ofDegrees(62), Distance.ofNauticalMiles(4), course, time)
 *         .orElseThrow();
 * crossing.heading(); // 152° or 332°, whichever is nearer the course
 * crossing.carriedAlong(); // along the traffic, against it if negative
 * }</pre>
 */
public final class SeparationCrossing implements Serializable {
  private static final long serialVersionUID = 1L;

  private final GroundTrack track;
  private final TrueBearing heading;
  private final Distance width;
  private final Distance carriedAlong;

  private SeparationCrossing(
      GroundTrack track, TrueBearing heading, Distance width, Distance carriedAlong) {
    this.track = track;
    this.heading = heading;
    this.width = width;
    this.carriedAlong = carriedAlong;
  }

  /**
   * Follows the craft across.
   *
   * @param solver the craft, stream, wind and longest duration; its strategy does not matter here
   * @param entry where the scheme is entered
   * @param trafficFlow the general direction of traffic in the lane; of two opposite lanes, either
   * @param width how wide the scheme is, across the traffic, above 0
   * @param course the course of the passage, which decides to which side one crosses
   * @param time when the scheme is entered
   * @return the crossing, or why the craft does not get across on that heading
   * @throws IllegalArgumentException if the width is not above 0, or the time not in the years 1 to
   *     4999
   */
  public static Outcome<SeparationCrossing, NotPossible> solve(
      CourseToSteer solver,
      Position entry,
      TrueBearing trafficFlow,
      Distance width,
      TrueBearing course,
      Instant time) {
    double metres = Arguments.positive(width.metres(), "width of the scheme", "metres");
    boolean toRight = trafficFlow.turnDegreesTo(course) >= 0.0;
    TrueBearing heading = trafficFlow.turnedBy(toRight ? 90.0 : -90.0);
    Motion motion = new Motion(solver.craft(), solver.stream(), solver.wind());
    LegFrame lane = new LegFrame(RhumbLeg.from(entry, trafficFlow, Distance.ofMetres(1.0)));
    double wanted = toRight ? metres : -metres;
    Across across = new Across(motion, lane, wanted);
    double start = EpochSeconds.of(time);
    LegSolver.refuseFarYears(start);
    double limit = start + Seconds.of(solver.longestDuration());
    boolean known =
        across.follow(
            heading.degrees(), start, entry.latitudeDegrees(), entry.longitudeDegrees(), limit);
    if (!known || !across.isOver()) {
      return notAcross(across, known);
    }
    across.settle(start, entry);
    return Outcome.ofSolved(
        new SeparationCrossing(
            across.track(),
            heading,
            width,
            Distance.ofMetres(lane.along(across.state0(), across.state1()))));
  }

  private static Outcome<SeparationCrossing, NotPossible> notAcross(Across across, boolean known) {
    NotPossible why =
        NotPossible.because(known ? Reason.BEYOND_HORIZON : Reason.NO_DATA)
            .at(
                Earth.position(across.state0(), across.state1()),
                EpochSeconds.toInstant(across.time()));
    return Outcome.ofUnsolved(why);
  }

  /** A path that ends when it has crossed. */
  private static final class Across extends HeadingPath {
    private final LegFrame lane;
    private final double wanted;

    Across(Motion motion, LegFrame lane, double wanted) {
      super(motion);
      this.lane = lane;
      this.wanted = wanted;
    }

    private double left() {
      return (wanted - lane.crossTrackMetres(state0, state1)) * Math.signum(wanted);
    }

    boolean isOver() {
      return left() <= 0.0;
    }

    @Override
    boolean stepped(
        double fromTime, double from0, double from1, double fromRate0, double fromRate1) {
      super.stepped(fromTime, from0, from1, fromRate0, fromRate1);
      return isOver();
    }

    /** Ends the path where it gets across, to the millisecond. */
    void settle(double start, Position entry) {
      double heading = recorder.heading();
      double over =
          Edge.of(
              until -> {
                follow(heading, start, entry.latitudeDegrees(), entry.longitudeDegrees(), until);
                return isOver();
              },
              time,
              recorder.lastTime(),
              1e-3);
      follow(heading, start, entry.latitudeDegrees(), entry.longitudeDegrees(), over);
    }
  }

  /**
   * The heading, at right angles to the traffic.
   *
   * @return the heading, true
   */
  public TrueBearing heading() {
    return heading;
  }

  /**
   * The path over the ground, which is not at right angles to the traffic.
   *
   * @return the ground track from entry to exit
   */
  public GroundTrack groundTrack() {
    return track;
  }

  /**
   * Where the scheme is left.
   *
   * @return the exit
   */
  public Position exit() {
    return track.at(track.end());
  }

  /**
   * How long the crossing takes.
   *
   * @return exit less entry
   */
  public Duration duration() {
    return Duration.between(track.start(), track.end());
  }

  /**
   * How far the craft is carried along the lane.
   *
   * @return the distance, positive with the traffic flow, negative against it
   */
  public Distance carriedAlong() {
    return carriedAlong;
  }

  /**
   * The speed made good across the lane.
   *
   * @return the width over the time
   */
  public Speed speedAcross() {
    double seconds = track.endSeconds() - track.startSeconds();
    return Speed.ofMetresPerSecond(width.metres() / seconds);
  }

  @Override
  public String toString() {
    return "crossing on " + heading + " in " + duration() + ", carried " + carriedAlong;
  }
}
