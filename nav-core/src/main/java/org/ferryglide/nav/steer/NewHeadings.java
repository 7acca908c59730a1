package org.ferryglide.nav.steer;

import org.jspecify.annotations.Nullable;

/**
 * Follows a craft that takes a new heading at given times: back on the line at each of them, and at
 * the end of the leg in the last stretch.
 */
final class NewHeadings implements Follower {
  /** How close to the line each stretch ends, metres. */
  private static final double ON_LINE_METRES = 1e-3;

  private static final int CORRECTIONS = 60;

  private final Motion motion;
  private final Changes changes;
  private final ConstantHeading constantHeading;
  private final HeadingPath path;
  private final TrackRecorder recorder = new TrackRecorder();

  private NewHeadings(Motion motion, Changes changes) {
    this.motion = motion;
    this.changes = changes;
    constantHeading = new ConstantHeading(motion);
    path = new HeadingPath(motion);
  }

  /** When the heading is changed. */
  private interface Changes {
    /** The first change after now, seconds since 1970; infinite if there is none. */
    double next(double departure, double now);
  }

  /** New headings at even intervals from the departure, seconds. */
  static NewHeadings every(Motion motion, double interval) {
    return new NewHeadings(
        motion,
        (departure, now) -> {
          double passed = Math.floor((now - departure) / interval + 1e-9);
          double next = departure + interval * (passed + 1.0);
          return next > now ? next : next + interval;
        });
  }

  /** New headings at given times, seconds since 1970, in order. */
  static NewHeadings at(Motion motion, double... times) {
    return new NewHeadings(
        motion,
        (departure, now) -> {
          for (double time : times) {
            if (time > now) {
              return time;
            }
          }
          return Double.POSITIVE_INFINITY;
        });
  }

  @Override
  public boolean holdsHeadings() {
    return true;
  }

  @Override
  public Followed follow(LegFrame frame, double departure, double limit) {
    recorder.clear();
    double time = departure;
    double latitude = frame.startLatitude;
    double longitude = frame.startLongitude;
    double along = 0.0;
    while (true) {
      double next = Math.min(limit, changes.next(departure, time));
      boolean last = next == limit;
      Followed toEnd =
          constantHeading.reach(
              time, latitude, longitude, frame.endLatitude, frame.endLongitude, next, last);
      if (toEnd.track() != null) {
        recorder.append(toEnd.track());
        return Followed.reached(recorder.finishAt(toEnd.track()));
      }
      if (last) {
        return toEnd;
      }
      Followed barred = backOnLine(frame, time, latitude, longitude, along, next);
      if (barred != null) {
        return barred;
      }
      recorder.append(path.recorder);
      time = next;
      latitude = path.state0();
      longitude = path.state1();
      along = frame.along(latitude, longitude);
    }
  }

  @Override
  public double arrival(LegFrame frame, double departure, double limit) {
    double time = departure;
    double latitude = frame.startLatitude;
    double longitude = frame.startLongitude;
    double along = 0.0;
    while (true) {
      double next = Math.min(limit, changes.next(departure, time));
      boolean last = next == limit;
      double arrival =
          constantHeading.arrival(
              time, latitude, longitude, frame.endLatitude, frame.endLongitude, next, last);
      if (last || !Double.isNaN(arrival)) {
        return arrival;
      }
      if (backOnLine(frame, time, latitude, longitude, along, next) != null) {
        return Double.NaN;
      }
      time = next;
      latitude = path.state0();
      longitude = path.state1();
      along = frame.along(latitude, longitude);
    }
  }

  /** One heading until the next change, at which the craft is on the line; null if it is. */
  private @Nullable Followed backOnLine(
      LegFrame frame, double time, double latitude, double longitude, double along, double next) {
    frame.pointAt(along);
    double course = frame.pointCourse();
    double part = 0.0; // sine of the angle off the course
    double reach = motion.calmWaterSpeed() * (next - time);
    for (int i = 0; i < CORRECTIONS; i++) {
      double heading = course + Math.toDegrees(Math.asin(part));
      if (!path.follow(heading, time, latitude, longitude, next)) {
        return Followed.failed(
            Reason.NO_DATA, path.time(), path.state0(), path.state1(), Double.NaN);
      }
      double off = frame.crossTrackMetres(path.state0(), path.state1());
      if (Math.abs(off) < ON_LINE_METRES) {
        double madeGood = (frame.along(path.state0(), path.state1()) - along) / (next - time);
        return madeGood > 0.0
            ? null
            : Followed.failed(Reason.ADVERSE_STREAM, time, latitude, longitude, -madeGood);
      }
      double wanted = part - off / reach;
      if (!(Math.abs(wanted) <= 1.0)) {
        double lacking = (Math.abs(wanted) - 1.0) * motion.calmWaterSpeed();
        return Followed.failed(Reason.CROSS_STREAM, time, latitude, longitude, lacking);
      }
      part = wanted;
    }
    return Followed.failed(Reason.CROSS_STREAM, time, latitude, longitude, Double.NaN);
  }
}
