package org.ferryglide.nav.steer;

import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.plane.SteadyTriangle;

/** Why no heading leads to a target, from what a {@link DriftWalk} found. */
final class NoHeading {
  /** A walk that came nearest so shortly before the limit was coming nearer still, seconds. */
  private static final double AT_THE_LIMIT = 1.0;

  private NoHeading() {}

  /**
   * The mean stream up to the moment at which the least extra speed would have met the target, and
   * where the craft is closest then.
   */
  static Followed because(DriftWalk walk, Stretch stretch, double waterSpeed, double limit) {
    if (!walk.known() && !walk.isMet()) {
      double paddled = waterSpeed * (walk.end() - stretch.startTime());
      return at(stretch, Math.min(1.0, paddled / stretch.length()), Reason.NO_DATA, walk.end());
    }
    if (walk.isMet() || !(walk.shortBy() < Double.MAX_VALUE)) {
      // in the plane it would be reached, but no one heading leads there past the field's jumps
      return at(stretch, 1.0, Reason.BEYOND_HORIZON, limit);
    }
    Reason reason = reason(walk, stretch, waterSpeed, limit);
    double lacking = walk.shortBy() * (walk.shortTime() - stretch.startTime());
    double radians = Math.toRadians(walk.headingDegrees());
    NotPossible why =
        NotPossible.because(reason)
            .at(
                Earth.position(
                    stretch.latitudeNorthOfTarget(-lacking * Math.cos(radians)),
                    stretch.longitudeEastOfTarget(-lacking * Math.sin(radians))),
                EpochSeconds.toInstant(walk.shortTime()));
    return Followed.failed(
        reason == Reason.NO_PROGRESS
            ? why
            : why.byAllTheWay(Speed.ofMetresPerSecond(walk.shortBy())));
  }

  private static Reason reason(DriftWalk walk, Stretch stretch, double waterSpeed, double limit) {
    double duration = walk.shortTime() - stretch.startTime();
    double east = walk.driftEast() / duration;
    double north = walk.driftNorth() / duration;
    double radians = Math.toRadians(stretch.courseDegrees());
    double along = east * Math.sin(radians) + north * Math.cos(radians);
    double across = east * Math.cos(radians) - north * Math.sin(radians);
    // a longer time helps only if the craft is still getting closer as the time runs out
    boolean gainsYet = walk.shortTime() >= limit - AT_THE_LIMIT;
    return Reasons.of(
        SteadyTriangle.finding(along, across, waterSpeed),
        gainsYet ? Reason.BEYOND_HORIZON : Reason.ADVERSE_STREAM);
  }

  private static Followed at(Stretch stretch, double part, Reason reason, double time) {
    return Followed.failed(
        reason,
        time,
        stretch.startLatitude() + part * (stretch.targetLatitude() - stretch.startLatitude()),
        stretch.startLongitude() + part * (stretch.targetLongitude() - stretch.startLongitude()),
        Double.NaN);
  }
}
