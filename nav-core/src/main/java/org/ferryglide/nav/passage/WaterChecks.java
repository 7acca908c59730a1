package org.ferryglide.nav.passage;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;

/** Stream, wind and wind against stream, where the party is. */
final class WaterChecks {
  private static final double METRES_A_SECOND_TO_KNOTS = 1.0 / Speed.ofKnots(1.0).metresPerSecond();

  /** A wind from within this of where the stream goes is against it. */
  static final double AGAINST_DEGREES = 60.0;

  /** The same as a cosine, less than rounding: a wind just on the limit is against it. */
  private static final double AGAINST = Math.cos(Math.toRadians(AGAINST_DEGREES)) * (1.0 - 1e-12);

  private WaterChecks() {}

  static List<PassageCheck> of(Passage passage) {
    PassageLimits limits = passage.limits();
    List<PassageCheck> checks = new ArrayList<>();
    if (limits.has(PassageLimits.STREAM)) {
      checks.add(stream(passage, limits));
    }
    if (limits.has(PassageLimits.WIND)) {
      checks.add(wind(passage, limits));
    }
    if (limits.has(PassageLimits.WIND_AGAINST_STREAM)) {
      checks.add(windAgainstStream(passage, limits));
    }
    return checks;
  }

  static double knots(double metresPerSecond) {
    return metresPerSecond * METRES_A_SECOND_TO_KNOTS;
  }

  /** The tabled rate is held against the limits at the upper end of its error. */
  private static PassageCheck stream(Passage passage, PassageLimits limits) {
    double factor = METRES_A_SECOND_TO_KNOTS * (1.0 + limits.rateError());
    return new WorstAlong(
        Note.information("check.stream", "stream"),
        passage,
        "knots",
        knots(limits.warning(PassageLimits.STREAM)),
        knots(limits.stop(PassageLimits.STREAM)),
        Findings.NO_STREAM) {
      @Override
      double figure(Candidate candidate, int look) {
        return candidate.streamRate(look) * factor;
      }
    };
  }

  private static PassageCheck wind(Passage passage, PassageLimits limits) {
    return new WorstAlong(
        Note.information("check.wind", "wind"),
        passage,
        "knots",
        knots(limits.warning(PassageLimits.WIND)),
        knots(limits.stop(PassageLimits.WIND)),
        Findings.NO_WIND) {
      @Override
      double figure(Candidate candidate, int look) {
        return knots(candidate.windSpeed(look));
      }
    };
  }

  private static PassageCheck windAgainstStream(Passage passage, PassageLimits limits) {
    double factor = 1.0 + limits.rateError();
    double least = limits.leastStream();
    return new WorstAlong(
        Note.information("check.wind-against-stream", "wind against stream"),
        passage,
        "knots",
        knots(limits.warning(PassageLimits.WIND_AGAINST_STREAM)),
        knots(limits.stop(PassageLimits.WIND_AGAINST_STREAM)),
        Findings.NO_WIND_OR_STREAM) {
      @Override
      double figure(Candidate candidate, int look) {
        double rate = candidate.streamRate(look);
        double wind = candidate.windSpeed(look);
        if (rate * factor < least || rate == 0.0 || wind == 0.0) {
          return leftOut();
        }
        if (Double.isNaN(rate)) {
          return Double.NaN;
        }
        // both vectors say where they go: opposed, their product is negative
        double along =
            candidate.streamEast[look] * candidate.windEast[look]
                + candidate.streamNorth[look] * candidate.windNorth[look];
        return along > -AGAINST * rate * wind ? leftOut() : knots(wind);
      }
    };
  }
}
