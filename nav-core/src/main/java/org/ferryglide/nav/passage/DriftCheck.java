package org.ferryglide.nav.passage;

import java.util.BitSet;
import java.util.List;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.StreamField;

/**
 * Where the party would lie after some minutes without paddling, from every hour, from the moment
 * of the strongest stream of each leg and from where each leg is nearest to each danger, and after
 * how many of them it would be within the distance to keep from a danger.
 */
final class DriftCheck extends PassageCheck {
  /** A rescue takes about ten minutes, a bad one thirty. Common practice, no source. */
  static final double STOP_MINUTES = 10.0;

  static final double WARNING_MINUTES = 30.0;

  /** Off the way the flow may be this many times the strongest on it. No source: generous. */
  private static final double FLOW_MARGIN = 2.0;

  private static final double STEP_SECONDS = 60.0;

  private static final int FAR_MINUTES = 10;
  private static final int DRAW_MINUTES = 2;

  private final List<DangerCheck> dangers;

  DriftCheck(Passage passage, List<DangerCheck> dangers) {
    super(Note.information("check.drift", "drift without paddling"), passage);
    this.dangers = dangers;
  }

  @Override
  Verdict check(Candidate candidate) {
    double least = Double.POSITIVE_INFINITY;
    int from = -1;
    String onto = "";
    int unknown = -1;
    BitSet asked = nearest(candidate);
    for (int look = 0; look < candidate.size; look++) {
      if (!isAsked(candidate, look) && !asked.get(look)) {
        continue;
      }
      Met met = drift(candidate, look);
      if (met.minutes < least) {
        least = met.minutes;
        from = look;
        onto = met.onto;
      } else if (Double.isNaN(met.minutes)) {
        unknown = look;
      }
    }
    if (unknown >= 0 && !(least < STOP_MINUTES)) {
      return at(
          Verdict.notChecked(
              about(),
              Note.information(
                  "why.no-drift", "stream, wind or danger are not known there and then")),
          candidate,
          unknown);
    }
    if (from < 0) {
      return Verdict.within(
          about(),
          Note.information(
                  "why.no-danger", "no danger within " + (int) WARNING_MINUTES + " minutes")
              .with("withinMinutes", WARNING_MINUTES));
    }
    return at(
        Verdict.of(
            Note.information("check.drift-onto", name() + " onto " + onto).with("danger", onto),
            least,
            "minutes",
            WARNING_MINUTES,
            STOP_MINUTES),
        candidate,
        from);
  }

  /** Every hour from the departure, and the strongest stream of each leg. */
  static boolean isAsked(Candidate candidate, int look) {
    double since = candidate.time[look] - candidate.time[0];
    boolean onTheHour =
        look == 0
            || Math.floor(since / 3600.0)
                > Math.floor((candidate.time[look - 1] - candidate.time[0]) / 3600.0);
    return onTheHour || look == candidate.strongest(candidate.leg[look]);
  }

  /** For every leg and danger the look that is nearest to it, if one might drift as far. */
  private BitSet nearest(Candidate candidate) {
    BitSet nearest = new BitSet(candidate.size);
    for (DangerCheck danger : dangers) {
      int best = 0;
      double least = Double.POSITIVE_INFINITY;
      for (int look = 0; look < candidate.size; look++) {
        double clear = danger.clearance(candidate.latitude[look], candidate.longitude[look]);
        if (clear < least) {
          least = clear;
          best = look;
        }
        if (look + 1 == candidate.size || candidate.leg[look + 1] != candidate.leg[look]) {
          if (!isBeyondReach(candidate, best, least)) {
            nearest.set(best);
          }
          least = Double.POSITIVE_INFINITY;
        }
      }
    }
    return nearest;
  }

  /** Whether so many metres are too far to drift; false where the flow at a look is not known. */
  private boolean isBeyondReach(Candidate candidate, int look, double metres) {
    double fraction = passage().party().craft().windResponse().driftFraction();
    double wind = fraction == 0.0 ? 0.0 : fraction * candidate.windSpeed(look);
    double flow = candidate.streamRate(candidate.strongest(candidate.leg[look]));
    return metres > FLOW_MARGIN * (flow + wind) * WARNING_MINUTES * STEP_SECONDS;
  }

  private record Met(double minutes, String onto) {}

  private Met drift(Candidate candidate, int look) {
    PlaneMetres metres = candidate.room().metres();
    double[] place = {candidate.latitude[look], candidate.longitude[look]};
    double beforeLatitude = place[0];
    double beforeLongitude = place[1];
    double goneLatitude = 0.0;
    double goneLongitude = 0.0;
    double[] clear = candidate.room().clearances(dangers.size());
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < clear.length; i++) {
      clear[i] = dangers.get(i).clearance(place[0], place[1]);
      least = Math.min(least, clear[i]);
    }
    // where nothing is in reach, only that the flow is known is still to be seen
    int minutes =
        isBeyondReach(candidate, look, least) ? FAR_MINUTES : candidate.isDraw() ? DRAW_MINUTES : 1;
    for (int minute = 0; minute <= WARNING_MINUTES; minute += minutes) {
      double time = candidate.time[look] + minute * STEP_SECONDS;
      for (int i = 0; i < clear.length; i++) {
        DangerCheck danger = dangers.get(i);
        if (!danger.isFarther(clear[i], goneLatitude, goneLongitude)
            && danger.clearance(beforeLatitude, beforeLongitude, place[0], place[1]) < 0.0) {
          double closed = danger.closed(candidate.passage, time);
          if (closed != 0.0) {
            return new Met(closed > 0.0 ? minute : Double.NaN, danger.danger().name());
          }
        }
      }
      beforeLatitude = place[0];
      beforeLongitude = place[1];
      double seconds = minutes * STEP_SECONDS;
      if (minute < WARNING_MINUTES && !step(candidate, look, time, seconds, place, metres)) {
        return new Met(Double.NaN, "");
      }
      goneLatitude += Math.abs(place[0] - beforeLatitude);
      goneLongitude += Math.abs(place[1] - beforeLongitude);
    }
    return new Met(Double.POSITIVE_INFINITY, "");
  }

  private boolean step(
      Candidate candidate,
      int look,
      double time,
      double seconds,
      double[] place,
      PlaneMetres metres) {
    StreamField stream = candidate.streamOf(candidate.leg[look]);
    return drift(candidate.passage, stream, time, seconds, place, metres, candidate.room().flow());
  }

  /** Moves a place with stream and wind for a while, by the flow at the middle of the step. */
  static boolean drift(
      Passage passage,
      StreamField stream,
      double time,
      double seconds,
      double[] place,
      PlaneMetres metres,
      double[] flow) {
    if (!flow(passage, stream, place[0], place[1], time, flow)) {
      return false;
    }
    double half = 0.5 * seconds;
    metres.moveTo(place[0]);
    double latitude = place[0] + flow[1] * half / metres.north();
    double longitude = place[1] + flow[0] * half / metres.east();
    if (!flow(passage, stream, latitude, longitude, time + half, flow)) {
      return false;
    }
    place[1] += flow[0] * seconds / metres.east();
    place[0] += flow[1] * seconds / metres.north();
    return true;
  }

  private static boolean flow(
      Passage passage,
      StreamField stream,
      double latitude,
      double longitude,
      double time,
      double[] flow) {
    if (!stream.sample(latitude, longitude, time, flow, 0)) {
      return false;
    }
    Craft craft = passage.party().craft();
    double fraction = craft.windResponse().driftFraction();
    if (fraction == 0.0 || !passage.wind().isPresent()) {
      return true;
    }
    double east = flow[0];
    double north = flow[1];
    if (!passage.wind().get().sample(latitude, longitude, time, flow, 0)) {
      return false;
    }
    flow[0] = east + fraction * (flow[0] - east);
    flow[1] = north + fraction * (flow[1] - north);
    return true;
  }
}
