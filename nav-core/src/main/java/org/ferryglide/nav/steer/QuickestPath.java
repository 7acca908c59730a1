package org.ferryglide.nav.steer;

import java.util.Arrays;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.CraftMotion;
import org.ferryglide.nav.quickest.Obstacles;
import org.ferryglide.nav.quickest.QuickestSearch;

/**
 * The quickest path of all for a leg, as a track: what {@link QuickestSearch} finds, told in the
 * terms of this room. Works in radians; not thread-safe.
 */
final class QuickestPath implements Follower {
  private static final double DEGREE = Math.toRadians(1.0);

  /** The end of a piece is looked at from just before, so that a jump there belongs to the next. */
  private static final double BEFORE_BREAK_SECONDS = 1e-3;

  /** One heading held is the answer only if it is quicker by more than this, seconds. */
  private static final double QUICKER_SECONDS = 0.5;

  /** A drift is looked at this often for obstacles, seconds. */
  private static final double LOOK_SECONDS = 60.0;

  private static final Note NOT_FOUND =
      Note.caution(
          "steer.quickest-one-heading",
          "The search for the quickest path failed; this is one heading held, which is not the"
              + " quickest where the stream varies from place to place.");

  private final CraftMotion motion;
  private final Obstacles obstacles;
  private final OneHeading oneHeading;
  private final TrackRecorder recorder = new TrackRecorder();
  private final double[] flow = new double[CraftMotion.FLOW];
  private final double[] water = new double[2];

  QuickestPath(Motion motion, Obstacles obstacles) {
    this.motion = new SearchedMotion(motion);
    this.obstacles = obstacles;
    this.oneHeading = new OneHeading(motion);
  }

  @Override
  public Followed follow(LegFrame frame, double departure, double limit) {
    obstacles.refuseInside(Position.ofDegrees(frame.startLatitude, frame.startLongitude), "start");
    obstacles.refuseInside(
        Position.ofDegrees(frame.endLatitude, Earth.longitude(frame.endLongitude)), "end");
    if (!motion.isWindless()) {
      return Followed.failed(
          Reason.WIND_NOT_ALLOWED_FOR,
          departure,
          frame.startLatitude,
          frame.startLongitude,
          Double.NaN);
    }
    if (motion.calmSpeed() == 0.0) {
      return driftClearOfObstacles(oneHeading.follow(frame, departure, limit));
    }
    Followed found = search(frame, departure, limit);
    if (obstacles.isEmpty()) {
      Followed held = oneHeading.follow(frame, departure, limit);
      boolean quicker = held.isReached() && held.arrival() < found.arrival() - QUICKER_SECONDS;
      return quicker ? held.with(NOT_FOUND) : found.isReached() ? found : held;
    }
    if (found.isReached()) {
      return found;
    }
    Followed held = oneHeading.follow(frame, departure, limit);
    return held.isReached() ? found : held; // the stream forbids it even without obstacles
  }

  private Followed search(LegFrame frame, double departure, double limit) {
    double[] start = {frame.startLatitude * DEGREE, frame.startLongitude * DEGREE};
    double[] goal = {frame.endLatitude * DEGREE, frame.endLongitude * DEGREE};
    double[][] rows =
        QuickestSearch.path(motion, obstacles, start, goal, departure, limit - departure);
    return rows == null
        ? Followed.failed(
            Reason.BEYOND_HORIZON, limit, frame.endLatitude, frame.endLongitude, Double.NaN)
        : Followed.reached(track(rows, departure));
  }

  /** A craft without speed goes where the stream takes it, and so perhaps aground. */
  private Followed driftClearOfObstacles(Followed drift) {
    GroundTrack track = drift.track();
    if (track == null || obstacles.isEmpty()) {
      return drift;
    }
    double from = track.startSeconds();
    double duration = track.endSeconds() - from;
    int looks = (int) Math.ceil(duration / LOOK_SECONDS);
    double[] before = new double[2];
    double[] here = new double[2];
    track.place(from, before);
    for (int i = 1; i <= looks; i++) {
      double time = from + duration * i / looks;
      track.place(time, here);
      if (obstacles.blocks(
          before[0] * DEGREE, before[1] * DEGREE, here[0] * DEGREE, here[1] * DEGREE)) {
        return Followed.failed(Reason.NO_PROGRESS, time, before[0], before[1], Double.NaN);
      }
      before[0] = here[0];
      before[1] = here[1];
    }
    return drift;
  }

  /** The pieces of the path, with the rates at both ends of each. */
  private GroundTrack track(double[][] path, double departure) {
    recorder.clear();
    double[] from = new double[2];
    double[] to = new double[2];
    for (int i = 0; i + 1 < path.length; i++) {
      double[] row = path[i];
      double[] next = path[i + 1];
      if (!(next[QuickestSearch.TIME] > row[QuickestSearch.TIME])) {
        continue; // the joint of two pieces stands twice
      }
      rates(row, departure + row[QuickestSearch.TIME], from);
      rates(next, departure + next[QuickestSearch.TIME] - BEFORE_BREAK_SECONDS, to);
      recorder.add(
          departure + row[QuickestSearch.TIME],
          row[QuickestSearch.LATITUDE] / DEGREE,
          row[QuickestSearch.LONGITUDE] / DEGREE,
          from[0],
          from[1],
          to[0],
          to[1],
          heading(row));
    }
    double[] end = path[path.length - 1];
    return recorder.finish(
        departure + end[QuickestSearch.TIME],
        end[QuickestSearch.LATITUDE] / DEGREE,
        end[QuickestSearch.LONGITUDE] / DEGREE,
        heading(end));
  }

  private static double heading(double[] row) {
    return row[QuickestSearch.HEADING] / DEGREE;
  }

  /** Rates in degrees a second where the stream is known, else as through still water. */
  private void rates(double[] row, double time, double[] out) {
    double latitude = row[QuickestSearch.LATITUDE] / DEGREE;
    if (!motion.flow(latitude, row[QuickestSearch.LONGITUDE] / DEGREE, time, flow)) {
      Arrays.fill(flow, 0.0);
    }
    motion.throughWater(row[QuickestSearch.HEADING], flow, water);
    double sine = Math.sin(row[QuickestSearch.LATITUDE]);
    out[0] = (flow[1] + water[1]) / Earth.metresPerLatitudeDegree(sine);
    out[1] = (flow[0] + water[0]) / Earth.metresPerLongitudeDegree(sine);
  }

  /** The craft, the stream and the wind as the search asks for them. */
  private record SearchedMotion(Motion motion) implements CraftMotion {
    @Override
    public boolean flow(double latitude, double longitude, double time, double[] flow) {
      if (!motion.sample(latitude, longitude, time)) {
        return false;
      }
      flow[0] = motion.streamEast;
      flow[1] = motion.streamNorth;
      flow[2] = motion.windEast;
      flow[3] = motion.windNorth;
      return true;
    }

    @Override
    public void throughWater(double heading, double[] flow, double[] eastNorth) {
      motion.windEast = flow[2];
      motion.windNorth = flow[3];
      motion.head(Math.sin(heading), Math.cos(heading));
      eastNorth[0] = motion.waterEast;
      eastNorth[1] = motion.waterNorth;
    }

    @Override
    public double calmSpeed() {
      return motion.calmWaterSpeed();
    }

    @Override
    public boolean isWindless() {
      return !motion.windy;
    }

    @Override
    public boolean isUniform() {
      return motion.uniform;
    }

    @Override
    public double nextBreakAfter(double epochSeconds) {
      return motion.nextBreakAfter(epochSeconds);
    }
  }
}
