package org.ferryglide.nav.steer;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.water.EpochSeconds;

/**
 * Follows a craft that takes a new heading at given times: back on the line at each of them, and at
 * the end of the leg in the last stretch.
 */
final class NewHeadings {
  /** How close to the line each stretch ends, metres. */
  private static final double ON_LINE_METRES = 1e-3;

  private static final int CORRECTIONS = 60;

  double greatestCrossShare;
  double leastSpare = Double.POSITIVE_INFINITY;

  /** Why the end is not reached, where, when, and the speed lacking (NaN if that is not it). */
  Reason reason = Reason.BEYOND_HORIZON;

  double failureTime;
  double failureLatitude;
  double failureLongitude;
  double shortBy = Double.NaN;

  private final Motion motion;
  private final OneHeading oneHeading;
  private final LegFrame frame;
  private final HeadingPath path;
  private final TrackRecorder recorder = new TrackRecorder();

  NewHeadings(Motion motion, OneHeading oneHeading, LegFrame frame) {
    this.motion = motion;
    this.oneHeading = oneHeading;
    this.frame = frame;
    path = new HeadingPath(motion);
  }

  boolean follow(Strategy strategy, double departure, double limit) {
    double time = departure;
    double latitude = frame.startLatitude;
    double longitude = frame.startLongitude;
    double along = 0.0;
    while (true) {
      double next = Math.min(limit, nextChange(strategy, departure, time));
      if (finish(time, latitude, longitude, along, next, next == limit)) {
        return true;
      }
      if (next == limit) {
        copyFailure();
        return false;
      }
      double nextAlong = backOnLine(time, latitude, longitude, along, next);
      if (Double.isNaN(nextAlong)) {
        return false;
      }
      recorder.append(path.recorder);
      time = next;
      latitude = path.state0;
      longitude = path.state1;
      along = nextAlong;
    }
  }

  /** One heading from here to the end of the leg, if it gets there before the next change. */
  private boolean finish(
      double time, double latitude, double longitude, double along, double next, boolean last) {
    oneHeading.thorough = last;
    boolean solved =
        oneHeading.solve(time, latitude, longitude, frame.endLatitude, frame.endLongitude, next);
    oneHeading.thorough = true;
    if (!solved) {
      return false;
    }
    recorder.append(oneHeading.path.recorder);
    weigh(oneHeading.path, (frame.length - along) / (oneHeading.arrival - time));
    return true;
  }

  /** The track, once the end is reached. */
  GroundTrack track() {
    return recorder.finish(
        oneHeading.arrival,
        oneHeading.path.state0,
        oneHeading.path.state1,
        oneHeading.headingDegrees);
  }

  /** One heading until the next change, at which the craft is on the line; how far along it is. */
  private double backOnLine(
      double time, double latitude, double longitude, double along, double next) {
    frame.pointAt(along);
    double course = frame.pointCourse;
    path.weighAgainst(course);
    double part = 0.0; // sine of the angle off the course
    double reach = motion.calmWaterSpeed() * (next - time);
    for (int i = 0; i < CORRECTIONS; i++) {
      double heading = course + Math.toDegrees(Math.asin(part));
      if (!path.follow(heading, time, latitude, longitude, next)) {
        return fail(Reason.NO_DATA, path.time, path.state0, path.state1, Double.NaN);
      }
      double off = frame.offLine(path.state0, path.state1);
      if (Math.abs(off) < ON_LINE_METRES) {
        double nextAlong = frame.along(path.state0, path.state1);
        double madeGood = (nextAlong - along) / (next - time);
        if (madeGood <= 0.0) {
          return fail(Reason.ADVERSE_STREAM, time, latitude, longitude, -madeGood);
        }
        weigh(path, madeGood);
        return nextAlong;
      }
      double wanted = part - off / reach;
      if (!(Math.abs(wanted) <= 1.0)) {
        double lacking = (Math.abs(wanted) - 1.0) * motion.calmWaterSpeed();
        return fail(Reason.CROSS_STREAM, time, latitude, longitude, lacking);
      }
      part = wanted;
    }
    return fail(Reason.CROSS_STREAM, time, latitude, longitude, Double.NaN);
  }

  private void weigh(HeadingPath followed, double madeGood) {
    double share = followed.greatestCrossShare;
    greatestCrossShare = Math.max(greatestCrossShare, share);
    leastSpare = Math.min(leastSpare, LegSolver.spare(followed.leastWaterSpeed, share, madeGood));
  }

  private double fail(Reason why, double time, double latitude, double longitude, double lacking) {
    reason = why;
    failureTime = time;
    failureLatitude = latitude;
    failureLongitude = longitude;
    shortBy = lacking;
    return Double.NaN;
  }

  private void copyFailure() {
    fail(
        oneHeading.reason,
        oneHeading.failureTime,
        oneHeading.failureLatitude,
        oneHeading.failureLongitude,
        oneHeading.shortBy);
  }

  private static double nextChange(Strategy strategy, double departure, double now) {
    if (strategy instanceof Strategy.HeadingEvery every) {
      double interval = seconds(every.interval());
      double next = departure + interval * (Math.floor((now - departure) / interval + 1e-9) + 1.0);
      return next > now ? next : next + interval;
    }
    List<Instant> times = ((Strategy.HeadingsAt) strategy).times();
    for (Instant time : times) {
      double seconds = EpochSeconds.of(time);
      if (seconds > now) {
        return seconds;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private static double seconds(Duration duration) {
    return duration.toMillis() / 1000.0;
  }
}
