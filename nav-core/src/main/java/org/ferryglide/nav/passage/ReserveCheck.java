package org.ferryglide.nav.passage;

import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;

/**
 * How much slower the party could be at each moment and still keep to its path and not be carried
 * back along it, with the stream at the upper end of its error.
 */
final class ReserveCheck extends WorstAlong {
  /** Below this the path has no direction, metres a second. */
  private static final double NO_WAY = 1e-6;

  private final double factor;
  private final double driftFraction;

  ReserveCheck(Passage passage) {
    super(
        Note.information("check.reserve", "reserve of speed"),
        passage,
        "knots",
        WaterChecks.knots(passage.limits().warning(PassageLimits.RESERVE)),
        WaterChecks.knots(passage.limits().stop(PassageLimits.RESERVE)),
        Findings.NO_WIND_OR_STREAM);
    factor = 1.0 + passage.limits().rateError();
    driftFraction =
        passage.wind().isPresent() ? passage.party().craft().windResponse().driftFraction() : 0.0;
  }

  /**
   * The least reserve of a leg from one time until another, metres a second; NaN if stream or wind
   * are not known somewhere, or the leg has no length.
   */
  double least(Candidate candidate, int leg, double from, double until) {
    double least = Double.POSITIVE_INFINITY;
    for (int look = candidate.lastLookOf(leg); look >= 0 && candidate.leg[look] == leg; look--) {
      double next = look == candidate.lastLookOf(leg) ? until : candidate.time[look + 1];
      if (candidate.time[look] < until && next > from) { // the interval that begins at the look
        double knots = figure(candidate, look);
        if (Double.isNaN(knots)) {
          return Double.NaN;
        }
        least = Math.min(least, Math.abs(knots) < Double.POSITIVE_INFINITY ? knots : least);
      }
    }
    return least < Double.POSITIVE_INFINITY
        ? Speed.ofKnots(1.0).metresPerSecond() * least
        : Double.NaN;
  }

  @Override
  double figure(Candidate candidate, int look) {
    return candidate.reserves(this)[look];
  }

  /** The figure, for {@link Candidate#reserves}. */
  double worked(Candidate candidate, int look) {
    boolean last = look + 1 == candidate.size || candidate.leg[look] != candidate.leg[look + 1];
    int from = last ? look - 1 : look;
    int to = from + 1;
    if (!(candidate.seconds[to] > 0.0)) {
      return leftOut(); // a leg without length
    }
    double east = candidate.groundEast[to];
    double north = candidate.groundNorth[to];
    double way = PlaneMetres.length(east, north);
    if (way < NO_WAY) {
      return leftOut();
    }
    double streamEast = 0.5 * (candidate.streamEast[from] + candidate.streamEast[to]);
    double streamNorth = 0.5 * (candidate.streamNorth[from] + candidate.streamNorth[to]);
    double downWindEast = downWind(candidate.windEast, from, to);
    double downWindNorth = downWind(candidate.windNorth, from, to);
    double paddled =
        candidate.overMeanSpeed(
                candidate.leg[from], 0.5 * (candidate.time[from] + candidate.time[to]))
            * PlaneMetres.length(
                east - streamEast - downWindEast, north - streamNorth - downWindNorth);
    double setEast = factor * streamEast + downWindEast;
    double setNorth = factor * streamNorth + downWindNorth;
    double along = (setEast * east + setNorth * north) / way;
    double across = (setEast * north - setNorth * east) / way;
    double least = along >= 0.0 ? Math.abs(across) : PlaneMetres.length(along, across);
    return WaterChecks.knots(paddled - least);
  }

  private double downWind(double[] wind, int from, int to) {
    return driftFraction == 0.0 ? 0.0 : driftFraction * 0.5 * (wind[from] + wind[to]);
  }
}
