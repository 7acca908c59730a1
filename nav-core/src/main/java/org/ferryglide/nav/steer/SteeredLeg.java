package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;

/**
 * A leg that can be steered: the headings with their times, the path over the ground, and what it
 * costs.
 *
 * <pre>{@code
 * SteeredLeg steered = solver.solve(leg, departure).orElseThrow();
 * steered.courseToSteer().threeDigits(); // 070°
 * steered.speedMadeGood().inKnots(2); // 3.29 kn
 * steered.greatestCrossTrack(); // check dangers along the ground track, not the line
 * }</pre>
 */
public final class SteeredLeg implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Leg leg;
  private final Strategy strategy;
  private final GroundTrack track;
  private final double crossStreamShare;
  private final double reserve;
  private final double streamShare;
  private final double effortMetres;
  private final List<Note> notes;

  SteeredLeg(
      Leg leg,
      Strategy strategy,
      GroundTrack track,
      PathDemand demand,
      double effortMetres,
      List<Note> notes) {
    this.leg = leg;
    this.strategy = strategy;
    this.track = track;
    this.crossStreamShare = demand.crossShare();
    this.reserve = demand.spare();
    this.streamShare = demand.streamShare();
    this.effortMetres = effortMetres;
    this.notes = notes;
  }

  /**
   * The leg.
   *
   * @return the leg that is steered
   */
  public Leg leg() {
    return leg;
  }

  /**
   * How it is steered.
   *
   * @return the strategy
   */
  public Strategy strategy() {
    return strategy;
  }

  /**
   * When it starts.
   *
   * @return the departure
   */
  public Instant departure() {
    return track.start();
  }

  /**
   * When the end of the leg is reached.
   *
   * @return the arrival
   */
  public Instant arrival() {
    return track.end();
  }

  /**
   * When the end of the leg is reached, for kernels.
   *
   * @return seconds since 1970-01-01T00:00:00Z
   */
  public double arrivalSeconds() {
    return track.endSeconds();
  }

  /**
   * How long it takes.
   *
   * @return arrival less departure
   */
  public Duration duration() {
    return Duration.between(departure(), arrival());
  }

  /**
   * The heading to set out on, true. With a constant heading it serves the whole leg.
   *
   * @return the first of {@link #headings}
   */
  public TrueBearing courseToSteer() {
    return TrueBearing.ofDegrees(track.headingOf(0));
  }

  /**
   * The headings with the times to take them up, and where the craft then is. Where the heading
   * changes all the time, as with the track held, these are its values where the stream's table has
   * a row and at least every ten minutes. A quickest path steered in these steps, each heading held
   * until the next, ended up to 225 m off in streams that vary from place to place.
   *
   * @return the headings in order of time, at least one; unmodifiable
   */
  public List<TrackPoint> headings() {
    List<TrackPoint> headings = new ArrayList<>();
    double last = Double.NaN;
    int points = Math.max(1, track.segments());
    for (int i = 0; i < points; i++) {
      double heading = track.headingOf(i);
      if (heading != last) {
        headings.add(track.point(i));
      }
      last = heading;
    }
    return Collections.unmodifiableList(headings);
  }

  /**
   * The path over the ground, on which dangers are to be checked.
   *
   * @return the ground track
   */
  public GroundTrack groundTrack() {
    return track;
  }

  /**
   * The speed made good along the leg: its length over the time it takes.
   *
   * @return the mean speed; zero for a leg without length
   */
  public Speed speedMadeGood() {
    double seconds = track.endSeconds() - track.startSeconds();
    return seconds > 0.0 ? Speed.ofMetresPerSecond(leg.length().metres() / seconds) : Speed.ZERO;
  }

  /**
   * The greatest cross-track distance of the ground track from the leg.
   *
   * @return to the right of the leg positive; zero if the track is held
   */
  public Distance greatestCrossTrack() {
    return track.greatestCrossTrack(leg);
  }

  /**
   * The greatest share of the speed through the water that is spent, at any moment, against what
   * sets across the path over the ground: the sine of the angle between the water track and the
   * path. With the track held that is the sine of the ferry angle. Where the craft holds its place
   * and waits, all that sets it counts as across. It is measured along the whole path, in the same
   * way for every strategy.
   *
   * @return in [0, 1]
   */
  public double crossStreamShare() {
    return crossStreamShare;
  }

  /**
   * The least reserve left at any moment: how much slower the craft could be there and then and
   * still keep to its path and not be carried back along it. Measured along the whole path, in the
   * same way for every strategy.
   *
   * @return the speed to spare
   */
  public Speed reserve() {
    return Speed.ofMetresPerSecond(Math.max(0.0, reserve));
  }

  /**
   * The fastest stream met on the path, as a share of the speed through the water there and then.
   *
   * @return at least 0; above 1 the stream outruns the craft; 0 for a craft that only drifts
   */
  public double greatestStreamShare() {
    return streamShare;
  }

  /**
   * The effort: how far the same paddling would carry the craft over still water in calm air.
   *
   * @return the paddling speed times the time paddled, rests left out
   */
  public Distance effort() {
    return Distance.ofMetres(effortMetres);
  }

  /**
   * What the reader should know: how the stream came about, and how little reserve there is.
   *
   * @return the notes, each once; unmodifiable
   */
  public List<Note> notes() {
    return notes;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SteeredLeg that
        && leg.equals(that.leg)
        && strategy.equals(that.strategy)
        && track.equals(that.track)
        && notes.equals(that.notes);
  }

  @Override
  public int hashCode() {
    return 31 * leg.hashCode() + track.hashCode();
  }

  @Override
  public String toString() {
    return strategy.words()
        + ", "
        + courseToSteer()
        + ", "
        + departure()
        + " to "
        + arrival()
        + ", "
        + leg;
  }
}
