package org.ferryglide.nav.passage;

import java.util.List;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.timing.Verdict;

/** The heading across a lane against a right angle, with the minutes spent inside. */
final class LaneCheck extends PassageCheck {
  private final Outline middle;
  private final double halfWidth;
  private final double[] directions;
  private final Lane lane;

  LaneCheck(Passage passage, Lane lane) {
    super("crossing " + lane.name(), passage);
    this.lane = lane;
    this.middle = Outline.line(lane.middle(), lane.name());
    this.halfWidth = 0.5 * lane.width().metres();
    List<Position> points = lane.middle();
    directions = new double[points.size() - 1];
    for (int i = 0; i < directions.length; i++) {
      directions[i] = middle.directionOf(i);
    }
  }

  @Override
  Verdict check(Candidate candidate) {
    double worst = -1.0;
    int when = -1;
    for (int look = 0; look < candidate.size; look++) {
      if (isInside(candidate.latitude[look], candidate.longitude[look])) {
        double off =
            offRightAngle(
                candidate.heading[look],
                directions[
                    middle.nearestPiece(candidate.latitude[look], candidate.longitude[look])]);
        if (off > worst) {
          worst = off;
          when = look;
        }
      }
    }
    if (when < 0) {
      return Verdict.within(name(), "not entered");
    }
    PassageLimits limits = passage().limits();
    if (!limits.hasLaneAngle()) {
      return at(
          Verdict.notChecked(name(), "the party has chosen no limit for the angle"),
          candidate,
          when);
    }
    String name = name() + ", " + minutesInside(candidate) + " min inside for the slower party";
    return at(
        Verdict.of(
            name,
            worst,
            "degrees off a right angle",
            limits.laneAngleWarning(),
            limits.laneAngleStop()),
        candidate,
        when);
  }

  private boolean isInside(double latitude, double longitude) {
    return middle.distance(latitude, longitude) <= halfWidth;
  }

  /** How far a heading is from lying square across a direction, in [0, 90] degrees. */
  static double offRightAngle(double headingDegrees, double directionDegrees) {
    double between = Math.abs(Math.IEEEremainder(headingDegrees - directionDegrees, 180.0));
    return 90.0 - between;
  }

  /** Minutes inside the lane; for the slower party where it gets there at all. */
  String minutesInside(Candidate candidate) {
    Candidate slow =
        candidate
            .slower()
            .<Candidate>match(route -> new Candidate(passage(), route), why -> candidate);
    double seconds = 0.0;
    for (int look = 1; look < slow.size; look++) {
      if (slow.leg[look] == slow.leg[look - 1]
          && isInside(slow.latitude[look], slow.longitude[look])) {
        seconds += slow.time[look] - slow.time[look - 1];
      }
    }
    return Long.toString((long) Math.ceil(seconds / 60.0));
  }

  Lane lane() {
    return lane;
  }
}
