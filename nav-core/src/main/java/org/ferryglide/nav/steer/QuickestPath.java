package org.ferryglide.nav.steer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ferryglide.nav.geodesy.GreatCircle;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.CraftMotion;
import org.ferryglide.nav.quickest.FoundWay;
import org.ferryglide.nav.quickest.Obstacles;
import org.ferryglide.nav.quickest.QuickestSearch;
import org.ferryglide.nav.quickest.Waters;
import org.jspecify.annotations.Nullable;

/**
 * The quickest path of all for a leg, as a track: what {@link QuickestSearch} finds, in the terms
 * of this package. Not thread-safe.
 */
final class QuickestPath implements Follower {
  /** Ways asked for beyond those wanted, to stand by if one cannot be held after all. */
  private static final int SPARE_WAYS = 1;

  /**
   * The end of a segment is looked at from just before, so that a jump there belongs to the next.
   */
  private static final double BEFORE_BREAK_SECONDS = 1e-3;

  /** One heading held is the answer only if it is quicker by more than this, seconds. */
  private static final double QUICKER_SECONDS = 0.5;

  /** A constant heading takes longer by this share at most where it is not searched further. */
  private static final double LONGER_SHARE = 5e-7;

  /** The search takes streams for so much harder where limits bar them. */
  private static final double KEPT_CLEAR = 1.003;

  /** One heading is looked at so often for gaps in the data, seconds. */
  private static final double CLOSE_SECONDS = 5.0;

  /** A drift is looked at this often for obstacles, seconds. */
  private static final double LOOK_SECONDS = 60.0;

  private static final Note NOT_FOUND =
      Note.caution(
          "steer.quickest-constant-heading",
          "The search for the quickest path failed; this is a constant heading, which is not the"
              + " quickest where the stream varies from place to place.");

  private final CraftMotion motion;
  private final Motion steered;
  private final Waters waters;
  private final boolean open;
  private final ConstantHeading constantHeading;
  private final TrackRecorder recorder = new TrackRecorder();
  private final double[] flow = new double[CraftMotion.FLOW];
  private final double[] water = new double[2];

  QuickestPath(Motion motion, SeaRoom room) {
    this.motion = new SearchedMotion(motion, room, room.hasLimits());
    this.steered = motion;
    this.waters = room.waters();
    this.open = room.isOpen();
    this.constantHeading = new ConstantHeading(motion);
  }

  @Override
  public void refuseEnds(LegFrame frame) {
    Obstacles land = waters.land();
    land.refuseInside(
        Position.ofDegrees(frame.startLatitude, frame.startLongitude), "start of the leg");
    land.refuseInside(Earth.position(frame.endLatitude, frame.endLongitude), "end of the leg");
  }

  @Override
  public Followed follow(LegFrame frame, double departure, double limit) {
    if (motion.calmSpeed() == 0.0) {
      return driftClear(constantHeading.follow(frame, departure, limit));
    }
    Followed held = open ? constantHeading.follow(frame, departure, limit) : null;
    boolean placeMatters = !motion.isUniform() || !motion.isWindless();
    if (held != null && held.isReached() && !placeMatters && isShort(frame)) {
      return held; // nothing is quicker by what counts
    }
    boolean heldIsRough = constantHeading.isRough();
    Followed found = search(frame, departure, limit);
    if (held != null) {
      boolean quicker = held.isReached() && held.arrival() < found.arrival() - QUICKER_SECONDS;
      // pressed along a jump of the stream it gains metres that no craft can
      boolean rough = found.isReached() && heldIsRough;
      if (found.isReached() && (!quicker || rough)) {
        return found;
      }
      GroundTrack heldTrack = held.track();
      boolean known = heldTrack == null || isKnownAllAlong(heldTrack);
      return !known ? found : quicker ? held.with(NOT_FOUND) : held;
    }
    if (found.isReached()) {
      return found;
    }
    Followed anywhere = constantHeading.follow(frame, departure, limit);
    return anywhere.isReached() ? found : anywhere; // the stream forbids it even in open water
  }

  /** Whether a rhumb line takes hardly longer than a geodesic: by (L tan latitude / R)²/24. */
  private static boolean isShort(LegFrame frame) {
    double latitude = Math.max(Math.abs(frame.startLatitude), Math.abs(frame.endLatitude));
    double turn =
        frame.length * Math.tan(Math.toRadians(latitude)) / GreatCircle.MEAN_RADIUS.metres();
    return turn * turn < 24.0 * LONGER_SHARE;
  }

  /** Whether stream and wind are known all along a track, however narrow a gap in them is. */
  private boolean isKnownAllAlong(GroundTrack track) {
    double[] place = new double[2];
    for (double time = track.startSeconds(); time < track.endSeconds(); time += CLOSE_SECONDS) {
      track.place(time, place);
      if (!motion.isAllowed(place[0], place[1], time)) {
        return false;
      }
    }
    return true;
  }

  CraftMotion searched() {
    return motion;
  }

  Waters waters() {
    return waters;
  }

  private Followed search(LegFrame frame, double departure, double limit) {
    List<Followed> ways =
        held(quickestSearch(frame, departure, limit).ways(1 + SPARE_WAYS), 1, departure, limit);
    return ways.isEmpty() ? notFound(frame, departure, limit) : ways.get(0);
  }

  private Followed notFound(LegFrame frame, double departure, double limit) {
    if (open) {
      return Followed.failed(
          Reason.BEYOND_HORIZON, limit, frame.endLatitude, frame.endLongitude, Double.NaN);
    }
    double latitude = frame.startLatitude;
    double longitude = frame.startLongitude;
    boolean begins =
        motion.isAllowed(latitude, longitude, departure)
            && !waters.isClosed(latitude, longitude, latitude, longitude, departure, departure);
    return begins
        ? Followed.failed(NotPossible.because(Reason.NO_ROOM))
        : Followed.failed(Reason.NO_ROOM, departure, latitude, longitude, Double.NaN);
  }

  private QuickestSearch quickestSearch(LegFrame frame, double departure, double limit) {
    return new QuickestSearch(
        motion,
        waters,
        new double[] {frame.startLatitude, frame.startLongitude},
        new double[] {frame.endLatitude, frame.endLongitude},
        departure,
        limit - departure);
  }

  @Override
  public List<Followed> ways(LegFrame frame, double departure, double limit, int most) {
    List<FoundWay> found = quickestSearch(frame, departure, limit).alternatives(most + SPARE_WAYS);
    return held(found, most, departure, limit);
  }

  /** As many of the ways as are wanted; those that cannot be held are left out. */
  private List<Followed> held(List<FoundWay> found, int most, double departure, double limit) {
    List<Followed> held = new ArrayList<>();
    for (FoundWay way : found) {
      GroundTrack track =
          way.isSmooth() ? curve(way.rows(), departure) : tracks(way, departure, limit);
      if (track != null && track.endSeconds() <= limit && held.size() < most) {
        held.add(Followed.reached(track).with(error(way)));
      }
    }
    return held;
  }

  /** How far the last two refinements of the path are apart, as the answer's own doubt. */
  private static Note error(FoundWay way) {
    double seconds = way.errorSeconds();
    String text = seconds < 1.0 ? "less than a second" : Math.round(seconds) + " s";
    return Note.information(
            "steer.quickest-error",
            "Two successive refinements of the path differ in time by " + text + ".")
        .with("errorSeconds", seconds);
  }

  /** The tracks of a way held one after another; null if one cannot be held after all. */
  private @Nullable GroundTrack tracks(FoundWay way, double departure, double limit) {
    recorder.clear();
    double[][] rows = way.rows();
    double time = departure;
    double heading = 0.0;
    for (int i = 0; i + 1 < rows.length; i++) {
      double latitude = rows[i][FoundWay.LATITUDE];
      double longitude = rows[i][FoundWay.LONGITUDE];
      double nextLatitude = rows[i + 1][FoundWay.LATITUDE];
      double nextLongitude = rows[i + 1][FoundWay.LONGITUDE];
      if (nextLatitude == latitude && nextLongitude == longitude) {
        double until = departure + rows[i + 1][FoundWay.TIME];
        if (until > time) { // the craft holds its place
          recorder.add(time, latitude, longitude, 0.0, 0.0, 0.0, 0.0, upstream(rows[i], time));
          time = until;
        }
        continue;
      }
      Leg leg =
          RhumbLeg.between(
              Earth.position(latitude, longitude), Earth.position(nextLatitude, nextLongitude));
      GroundTrack track =
          new HeldTrack.TrackHolder(steered).follow(new LegFrame(leg), time, limit).track();
      if (track == null) {
        return null;
      }
      recorder.append(track, longitude - Earth.longitude(longitude));
      time = track.endSeconds();
      heading = track.headingOf(track.segments());
    }
    double[] end = rows[rows.length - 1];
    return recorder.finish(time, end[FoundWay.LATITUDE], end[FoundWay.LONGITUDE], heading);
  }

  private double upstream(double[] row, double time) {
    return motion.flow(row[FoundWay.LATITUDE], row[FoundWay.LONGITUDE], time, flow)
        ? Math.toDegrees(Math.atan2(-flow[0], -flow[1]))
        : 0.0;
  }

  /**
   * A craft without speed goes where the stream takes it: perhaps aground, or where none may be.
   */
  private Followed driftClear(Followed drift) {
    GroundTrack track = drift.track();
    if (track == null || open) {
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
      if (waters.land().blocks(before[0], before[1], here[0], here[1])) {
        return Followed.failed(Reason.NO_PROGRESS, time, before[0], before[1], Double.NaN);
      }
      double earlier = from + duration * (i - 1) / looks;
      if (waters.isClosed(before[0], before[1], here[0], here[1], earlier, time)
          || !motion.isAllowed(here[0], here[1], time)) {
        return Followed.failed(Reason.NO_ROOM, time, here[0], here[1], Double.NaN);
      }
      before[0] = here[0];
      before[1] = here[1];
    }
    return drift;
  }

  /** The segments of a curve, with the rates at both ends of each. */
  private GroundTrack curve(double[][] path, double departure) {
    recorder.clear();
    double[] from = new double[2];
    double[] to = new double[2];
    for (int i = 0; i + 1 < path.length; i++) {
      double[] row = path[i];
      double[] next = path[i + 1];
      rates(row, departure + row[FoundWay.TIME], from);
      rates(next, departure + next[FoundWay.TIME] - BEFORE_BREAK_SECONDS, to);
      recorder.add(
          departure + row[FoundWay.TIME],
          row[FoundWay.LATITUDE],
          row[FoundWay.LONGITUDE],
          from[0],
          from[1],
          to[0],
          to[1],
          Math.toDegrees(row[FoundWay.HEADING]));
    }
    double[] end = path[path.length - 1];
    return recorder.finish(
        departure + end[FoundWay.TIME],
        end[FoundWay.LATITUDE],
        end[FoundWay.LONGITUDE],
        Math.toDegrees(end[FoundWay.HEADING]));
  }

  /** Rates in degrees a second where the stream is known, else as through still water. */
  private void rates(double[] row, double time, double[] out) {
    double latitude = row[FoundWay.LATITUDE];
    if (!motion.flow(latitude, row[FoundWay.LONGITUDE], time, flow)) {
      Arrays.fill(flow, 0.0);
    }
    motion.throughWater(row[FoundWay.HEADING], flow, water);
    double sine = Earth.sine(latitude);
    out[0] = (flow[1] + water[1]) / Earth.metresPerLatitudeDegree(sine);
    out[1] = (flow[0] + water[0]) / Earth.metresPerLongitudeDegree(sine);
  }

  /** The craft, the stream and the wind as the search asks for them. */
  private record SearchedMotion(Motion motion, SeaRoom room, boolean limited)
      implements CraftMotion {
    @Override
    public boolean flow(double latitude, double longitude, double time, double[] flow) {
      if (!motion.sample(latitude, longitude, time)) {
        return false;
      }
      if (limited && !room.allows(motion, latitude, longitude, time, KEPT_CLEAR, flow)) {
        return false; // waters beyond the limits are as good as unknown
      }
      flow[0] = motion.streamEast();
      flow[1] = motion.streamNorth();
      flow[2] = motion.windEast();
      flow[3] = motion.windNorth();
      return true;
    }

    @Override
    public boolean isAllowed(double latitude, double longitude, double time) {
      return motion.sample(latitude, longitude, time)
          && (!limited || room.allows(motion, latitude, longitude, time, 1.0, new double[2]));
    }

    @Override
    public void throughWater(double heading, double[] flow, double[] eastNorth) {
      motion.feelWind(flow[2], flow[3]);
      motion.head(Math.sin(heading), Math.cos(heading));
      eastNorth[0] = motion.waterEast();
      eastNorth[1] = motion.waterNorth();
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
