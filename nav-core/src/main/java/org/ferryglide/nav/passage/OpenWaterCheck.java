package org.ferryglide.nav.passage;

import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.timing.Verdict;

/** Whether a party that no longer paddles has land down wind, from every hour of the way. */
final class OpenWaterCheck extends PassageCheck {
  /** Land further off is no help to a party that drifts. Common practice, no source. */
  static final double HELPFUL_NAUTICAL_MILES = 10.0;

  private static final Note OPEN =
      Note.information("why.open-water", "open water for " + (int) HELPFUL_NAUTICAL_MILES + " NM")
          .with("openNauticalMiles", HELPFUL_NAUTICAL_MILES);

  private final List<Outline> shores;

  OpenWaterCheck(Passage passage, List<List<Position>> lines) {
    super(Findings.OPEN_LAND_DOWN_WIND, passage);
    shores = ShoreCheck.outlines(lines);
  }

  @Override
  Verdict check(Candidate candidate) {
    int open = -1;
    for (int look : DriftCheck.asked(candidate)) {
      double speed = candidate.windSpeed(look);
      if (Double.isNaN(speed)) {
        return at(Verdict.notChecked(about(), Findings.NO_WIND), candidate, look);
      }
      if (open < 0 && speed > 0.0 && !isLandDownWind(candidate, look)) {
        open = look;
      }
    }
    if (open < 0) {
      return Verdict.within(about(), Findings.ALL_THE_WAY);
    }
    return at(Verdict.warned(about(), OPEN), candidate, open);
  }

  private boolean isLandDownWind(Candidate candidate, int look) {
    Position here =
        Position.ofDegrees(
            candidate.latitude[look], Candidate.longitude(candidate.longitude[look]));
    double to = Math.toDegrees(Math.atan2(candidate.windEast[look], candidate.windNorth[look]));
    Position there =
        RhumbLeg.from(
                here, TrueBearing.ofDegrees(to), Distance.ofNauticalMiles(HELPFUL_NAUTICAL_MILES))
            .end();
    for (Outline shore : shores) {
      double crossed =
          shore.crossed(
              here.latitudeDegrees(),
              here.longitudeDegrees(),
              there.latitudeDegrees(),
              there.longitudeDegrees(),
              at -> true);
      if (!Double.isNaN(crossed)) {
        return true;
      }
    }
    return false;
  }
}
