package org.ferryglide.nav.passage;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.position.Position;

/** Where the party would lie after some minutes without paddling. */
final class Drifts {
  private static final double STEP_SECONDS = 60.0;
  private static final int TOLD_MINUTES = 10;

  private Drifts() {}

  static Map<Instant, List<Position>> of(Candidate candidate) {
    Map<Instant, List<Position>> drifts = new LinkedHashMap<>();
    for (int look : DriftCheck.asked(candidate)) {
      Instant time = EpochSeconds.toInstant(candidate.time[look]);
      drifts.put(time, Collections.unmodifiableList(places(candidate, look)));
    }
    return Collections.unmodifiableMap(drifts);
  }

  private static List<Position> places(Candidate candidate, int look) {
    double[] place = {candidate.latitude[look], candidate.longitude[look]};
    PlaneMetres metres = candidate.room().metres();
    double[] flow = candidate.room().flow();
    List<Position> places = new ArrayList<>();
    places.add(position(place));
    for (int minute = 1; minute <= DriftCheck.WARNING_MINUTES; minute++) {
      double time = candidate.time[look] + (minute - 1) * STEP_SECONDS;
      if (!DriftCheck.drift(
          candidate.passage,
          candidate.streamOf(candidate.leg[look]),
          time,
          STEP_SECONDS,
          place,
          metres,
          flow)) {
        break;
      }
      if (minute % TOLD_MINUTES == 0) {
        places.add(position(place));
      }
    }
    return places;
  }

  private static Position position(double[] place) {
    return Position.ofDegrees(place[0], Candidate.longitude(place[1]));
  }
}
