package org.ferryglide.nav.passage;

import java.util.List;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.timing.Verdict;

/** The heading across a lane against a right angle, with the minutes spent inside. */
final class LaneCheck extends PassageCheck {
  /** Between times at which it is asked whether the party is inside. */
  private static final double PART_SECONDS = 5.0;

  private final Outline middle;
  private final double halfWidth;
  private final double[] directions;

  LaneCheck(Passage passage, Lane lane) {
    super(Findings.at("check.lane", "crossing ", lane.name()), passage);
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
      if (isEntered(candidate, look)) {
        double off =
            offRightAngle(
                candidate.heading[look],
                directions[
                    middle.nearestSegment(candidate.latitude[look], candidate.longitude[look])]);
        if (off > worst) {
          worst = off;
          when = look;
        }
      }
    }
    if (when < 0) {
      return Verdict.within(about(), Findings.NOT_ENTERED);
    }
    PassageLimits limits = passage().limits();
    if (!limits.has(PassageLimits.LANE_ANGLE)) {
      return at(Verdict.notChecked(about(), Findings.NO_ANGLE), candidate, when);
    }
    return at(
        Verdict.of(
            inside(candidate),
            worst,
            "degrees off a right angle",
            limits.warning(PassageLimits.LANE_ANGLE),
            limits.stop(PassageLimits.LANE_ANGLE)),
        candidate,
        when);
  }

  /** Whether the lane is met at a look or on the way there from the look before. */
  private boolean isEntered(Candidate candidate, int look) {
    double latitude = candidate.latitude[look];
    double longitude = candidate.longitude[look];
    if (look == 0 || candidate.leg[look] != candidate.leg[look - 1]) {
      return isInside(latitude, longitude);
    }
    return middle.distance(
            candidate.latitude[look - 1], candidate.longitude[look - 1], latitude, longitude)
        <= halfWidth;
  }

  private boolean isInside(double latitude, double longitude) {
    return middle.distance(latitude, longitude) <= halfWidth;
  }

  /** How far a heading is from lying square across a direction, in [0, 90] degrees. */
  static double offRightAngle(double headingDegrees, double directionDegrees) {
    double between = Math.abs(Math.IEEEremainder(headingDegrees - directionDegrees, 180.0));
    return 90.0 - between;
  }

  /** Minutes inside the lane, begun ones counted; for the slower party where it gets there. */
  private Note inside(Candidate candidate) {
    SteeredRoute route = candidate.slower().solved().orElse(null);
    Candidate slow =
        route == null || candidate.isDraw() ? candidate : new Candidate(passage(), route);
    double seconds = 0.0;
    for (int look = 1; look < slow.size; look++) {
      if (slow.leg[look] == slow.leg[look - 1] && isEntered(slow, look)) {
        double span = slow.time[look] - slow.time[look - 1];
        int parts = (int) Math.ceil(span / PART_SECONDS);
        for (int i = 0; i < parts; i++) {
          seconds += isInside(slow, look, (i + 0.5) / parts) ? span / parts : 0.0;
        }
      }
    }
    long minutes = (long) Math.ceil(seconds / 60.0);
    String words =
        minutes + (route == null ? " min inside as planned" : " min inside for the slower party");
    return Note.information(
            route == null ? "check.lane-inside" : "check.lane-inside-slower", name() + ", " + words)
        .with("lane", about())
        .with("insideMinutes", (double) minutes);
  }

  private boolean isInside(Candidate slow, int look, double part) {
    double east = Math.IEEEremainder(slow.longitude[look] - slow.longitude[look - 1], 360.0);
    return isInside(
        slow.latitude[look - 1] + part * (slow.latitude[look] - slow.latitude[look - 1]),
        slow.longitude[look - 1] + part * east);
  }
}
