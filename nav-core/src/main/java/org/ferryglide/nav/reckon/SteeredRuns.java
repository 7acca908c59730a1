package org.ferryglide.nav.reckon;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.steer.GroundTrack;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.water.StreamField;

/** Cuts a steered leg into steady runs: what is not stream was paddled, or driven by the wind. */
final class SteeredRuns {
  /**
   * No run is longer: streams of tables and headings along a held track change little meanwhile.
   */
  private static final double LONGEST_SECONDS = 300.0;

  /** Races narrower than a kayak crosses in this are no streams of any table. */
  private static final double NARROW_SECONDS = 10.0;

  /** Two points of Gauss, as parts of the run off its middle: exact for cubics in time. */
  private static final double GAUSS = 0.5 / Math.sqrt(3.0);

  /** A run is the mean of what the leg saw at its worst moment, so that it is rarely above it. */
  private static final double MOST_OF_ITS_OWN = 1.05;

  /** A race narrower than a run is long may be smoothed away by half. */
  private static final double LEAST_OF_ITS_OWN = 0.5;

  /** Of the speed: streams are tabled to a tenth of a knot, for craft of some knots. */
  private static final double TABLED = 0.03;

  /** Below this a craft waits, and no share of its speed tells anything, metres a second. */
  private static final double LEAST_SPEED = 0.05;

  private final GroundTrack track;
  private final StreamField stream;
  private final double[] from = new double[3];
  private final double[] until = new double[3];
  private final double[] at = new double[3];
  private final double[] flow = new double[2];
  private final List<SteadyRun> runs = new ArrayList<>();

  private SteeredRuns(GroundTrack track, StreamField stream) {
    this.track = track;
    this.stream = stream;
  }

  static List<SteadyRun> of(SteeredLeg leg, StreamField stream) {
    List<SteadyRun> runs = cut(leg, stream, LONGEST_SECONDS);
    if (!runs.isEmpty() && isOfAnotherStream(leg, greatestShare(runs))) {
      // the two points of a long run may both lie in a narrow race, or both beside it
      runs = cut(leg, stream, NARROW_SECONDS);
      double met = greatestShare(runs);
      if (isOfAnotherStream(leg, met)) {
        throw new IllegalArgumentException(
            "stream must be the one that the leg was steered in, at most "
                + Math.round(100.0 * leg.greatestStreamShare())
                + " % of the speed through the water, but was up to "
                + Math.round(100.0 * met)
                + " %");
      }
    }
    return runs;
  }

  private static List<SteadyRun> cut(SteeredLeg leg, StreamField stream, double longestSeconds) {
    SteeredRuns cut = new SteeredRuns(leg.groundTrack(), stream);
    double[] segments = leg.groundTrack().segmentTimes();
    for (int i = 1; i < segments.length; i++) {
      double seconds = segments[i] - segments[i - 1];
      int parts = (int) Math.ceil(seconds / longestSeconds);
      for (int part = 0; part < parts; part++) {
        double begin = segments[i - 1] + seconds * part / parts;
        cut.add(begin, segments[i - 1] + seconds * (part + 1) / parts);
      }
    }
    return cut.runs;
  }

  /**
   * Beside the stream that the leg was steered in, its craft paddles as the leg has it; beside
   * another it would paddle as no craft was asked to.
   */
  private static boolean isOfAnotherStream(SteeredLeg leg, double met) {
    double own = leg.greatestStreamShare();
    return own > 0.0
        && (met > MOST_OF_ITS_OWN * own + TABLED || met < LEAST_OF_ITS_OWN * own - TABLED);
  }

  private static double greatestShare(List<SteadyRun> runs) {
    double met = 0.0;
    for (SteadyRun run : runs) {
      double speed = run.speed().metresPerSecond();
      met =
          speed > LEAST_SPEED ? Math.max(met, run.stream().rate().metresPerSecond() / speed) : met;
    }
    return met;
  }

  private void add(double begin, double end) {
    track.at(begin, from, 0);
    track.at(end, until, 0);
    double seconds = end - begin;
    double latitude = 0.5 * (from[GroundTrack.LATITUDE] + until[GroundTrack.LATITUDE]);
    double turned =
        Math.IEEEremainder(until[GroundTrack.LONGITUDE] - from[GroundTrack.LONGITUDE], 360.0);
    double groundEast =
        Math.toRadians(turned) * Ellipsoid.WGS84.parallelRadiusMetres(latitude) / seconds;
    double groundNorth =
        Math.toRadians(until[GroundTrack.LATITUDE] - from[GroundTrack.LATITUDE])
            * Ellipsoid.WGS84.meridianRadiusMetres(latitude)
            / seconds;
    double streamEast = 0.0;
    double streamNorth = 0.0;
    for (double off : new double[] {-GAUSS, GAUSS}) {
      sample(begin + (0.5 + off) * seconds);
      streamEast += 0.5 * flow[StreamField.EAST];
      streamNorth += 0.5 * flow[StreamField.NORTH];
    }
    double east = groundEast - streamEast;
    double north = groundNorth - streamNorth;
    runs.add(
        new SteadyRun(
            Seconds.toDuration(seconds),
            TrueBearing.ofDegrees(Math.toDegrees(Math.atan2(east, north))),
            Speed.ofMetresPerSecond(Math.hypot(east, north)),
            Velocity.ofEastAndNorth(streamEast, streamNorth)));
  }

  private void sample(double time) {
    track.at(time, at, 0);
    if (!stream.sample(at[GroundTrack.LATITUDE], at[GroundTrack.LONGITUDE], time, flow, 0)) {
      throw new IllegalArgumentException(
          "stream must be known all along the steered leg, but has no data at latitude "
              + at[GroundTrack.LATITUDE]
              + ", longitude "
              + at[GroundTrack.LONGITUDE]
              + ", "
              + time
              + " s since 1970");
    }
  }
}
