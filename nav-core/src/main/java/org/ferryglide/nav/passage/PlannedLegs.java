package org.ferryglide.nav.passage;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ferryglide.nav.magnetic.VariationReading;
import org.ferryglide.nav.magnetic.VariationSource;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.steer.SteeredLeg;
import org.jspecify.annotations.Nullable;

/** Puts the legs of a timed plan together. */
final class PlannedLegs {
  private PlannedLegs() {}

  static List<PlannedLeg> of(Candidate candidate) {
    double[] arrivals = candidate.errors().arrivals();
    ReserveCheck reserve = new ReserveCheck(candidate.passage);
    List<PlannedLeg> legs = new ArrayList<>();
    int first = candidate.passage.legs().size() - candidate.route.legs().size();
    for (int i = 0; i < candidate.route.legs().size(); i++) {
      SteeredLeg steered = candidate.route.legs().get(i);
      Covariance spread = candidate.errors().covariance(candidate.lastLookOf(i));
      legs.add(
          new PlannedLeg(
              candidate.passage.legs().get(first + i),
              steered,
              Hours.of(candidate, i, reserve),
              spread,
              arrivals[i],
              variation(candidate.passage, steered),
              candidate.passage.deviation().orElse(null),
              Sightings.of(candidate.passage, first + i, steered, spread, arrivals[i])));
    }
    return Collections.unmodifiableList(legs);
  }

  private static @Nullable VariationReading variation(Passage passage, SteeredLeg steered) {
    VariationSource source = passage.variation().orElse(null);
    if (source == null) {
      return null;
    }
    LocalDate date = steered.departure().atZone(ZoneOffset.UTC).toLocalDate();
    try {
      return source.at(steered.leg().start(), date);
    } catch (DateTimeException e) { // the check of the variation says so
      return null;
    }
  }
}
