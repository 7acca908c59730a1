package org.ferryglide.nav.passage;

import java.util.Arrays;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Top;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.StreamField;
import org.jspecify.annotations.Nullable;

/**
 * Where the party would lie after some minutes without paddling, from every hour, from the moment
 * of the strongest stream of each leg and from where each leg is nearest to each danger, and after
 * how many of them it would be within the distance to keep from a danger.
 */
final class DriftCheck extends PassageCheck {
  /** A rescue takes about ten minutes, a bad one thirty. Common practice, no source. */
  static final double STOP_MINUTES = 10.0;

  static final double WARNING_MINUTES = 30.0;

  private static final double LEAST_MARGIN =
      (0.0 - STOP_MINUTES) / (WARNING_MINUTES - STOP_MINUTES);

  /** Off the way the flow may be this many times the strongest on it. No source: generous. */
  private static final double FLOW_MARGIN = 2.0;

  private static final double STEP_SECONDS = 60.0;

  /** No degree of latitude, nor of longitude, is longer. */
  private static final double LONGEST_DEGREE_METRES = 111_700.0;

  /** How finely the nearest place between two looks is found, as a part of the way between them. */
  private static final double NEAREST_PART = 0.02;

  /** Steps of a drift that comes near no danger, of which only is asked whether it is known. */
  private static final int FAR_MINUTES = 10;

  /** Steps of a draw's drift; what they cost is told with the looks of draws in Candidate. */
  private static final int DRAW_MINUTES = 2;

  private static final Note NONE_WITHIN =
      Note.information("why.no-danger", "no danger within " + (int) WARNING_MINUTES + " minutes")
          .with("withinMinutes", WARNING_MINUTES);

  private final List<DangerCheck> dangers;
  private final Note[] onto;

  DriftCheck(Passage passage, List<DangerCheck> dangers) {
    super(Note.information("check.drift", "drift without paddling"), passage);
    this.dangers = dangers;
    onto = new Note[dangers.size()];
    for (int i = 0; i < onto.length; i++) {
      String name = dangers.get(i).danger().name();
      onto[i] = Note.information("check.drift-onto", name() + " onto " + name).with("danger", name);
    }
  }

  @Override
  Verdict check(Candidate candidate) {
    Worst worst = new Worst(candidate);
    for (int look : asked(candidate)) {
      worst.takeFrom(look, 0.0);
    }
    for (int leg = 0; leg < candidate.route.legs().size(); leg++) {
      int first = candidate.firstLookOf(leg);
      int last = candidate.lastLookOf(leg);
      double reach = reach(candidate, leg, windiest(candidate, first, last));
      for (DangerCheck danger : dangers) {
        takeFromNearest(danger, first, last, reach, worst);
      }
    }
    return verdict(worst);
  }

  /** Nothing is worse than to lie on a danger at once. */
  @Override
  @Nullable Verdict worseThan(Candidate candidate, double margin) {
    return margin <= LEAST_MARGIN ? null : check(candidate);
  }

  private Verdict verdict(Worst worst) {
    if (worst.isUnknown && !(worst.least < STOP_MINUTES)) {
      return Verdict.notChecked(about(), Findings.NO_DRIFT)
          .at(EpochSeconds.toInstant(worst.unknown[0]))
          .at(place(worst.unknown));
    }
    if (worst.least == Double.POSITIVE_INFINITY) {
      return Verdict.within(about(), NONE_WITHIN);
    }
    return Verdict.of(onto[worst.nearest], worst.least, "minutes", WARNING_MINUTES, STOP_MINUTES)
        .at(EpochSeconds.toInstant(worst.from[0]))
        .at(place(worst.from));
  }

  private static Position place(double[] at) {
    return Position.ofDegrees(at[1], Candidate.longitude(at[2]));
  }

  /** What the drifts of one candidate come to. */
  private final class Worst {
    final Candidate candidate;

    /** Fewest minutes to a danger, which it is, and time and place where that drift begins. */
    double least = Double.POSITIVE_INFINITY;

    int nearest;
    final double[] from = new double[3];

    /** Whether a drift leads where something is not known, and the same of the last of them. */
    boolean isUnknown;

    final double[] unknown = new double[3];

    /** Of the drift that was followed last. */
    int met;

    final double[] place = new double[2];

    Worst(Candidate candidate) {
      this.candidate = candidate;
    }

    /** Follows a drift from part of the way from a look to the next. */
    void takeFrom(int look, double part) {
      double time = placeAt(candidate, look, part, place);
      double latitude = place[0];
      double longitude = place[1];
      double minutes = drift(this, look, time);
      if (minutes < least) {
        least = minutes;
        nearest = met;
        set(from, time, latitude, longitude);
      } else if (Double.isNaN(minutes)) {
        isUnknown = true;
        set(unknown, time, latitude, longitude);
      }
    }

    private void set(double[] at, double time, double latitude, double longitude) {
      at[0] = time;
      at[1] = latitude;
      at[2] = longitude;
    }
  }

  /** Puts in the place part of the way from a look to the next; returns the time. */
  private static double placeAt(Candidate candidate, int look, double part, double[] place) {
    place[0] = candidate.latitude[look];
    place[1] = candidate.longitude[look];
    if (part == 0.0) {
      return candidate.time[look];
    }
    place[0] += part * (candidate.latitude[look + 1] - place[0]);
    place[1] += part * PlaneMetres.turned(candidate.longitude[look + 1] - place[1]);
    return candidate.time[look] + part * (candidate.time[look + 1] - candidate.time[look]);
  }

  /** The looks at every hour from the departure, and at the strongest stream of each leg. */
  static int[] asked(Candidate candidate) {
    int[] asked = new int[candidate.size];
    int count = 0;
    double next = 0.0;
    for (int look = 0; look < candidate.size; look++) {
      double hours = (candidate.time[look] - candidate.time[0]) / 3600.0;
      if (hours >= next || look == candidate.strongest(candidate.leg[look])) {
        asked[count++] = look;
      }
      next = hours >= next ? Math.floor(hours) + 1.0 : next;
    }
    return Arrays.copyOf(asked, count);
  }

  /** From where a leg is nearest to a danger, if one might drift as far. */
  private void takeFromNearest(DangerCheck danger, int first, int last, double reach, Worst worst) {
    Candidate candidate = worst.candidate;
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    int look = first;
    while (look <= last) { // looks are left out that are too far away to drift there from
      double clear = danger.clearance(candidate.latitude[look], candidate.longitude[look]);
      if (clear < least) {
        least = clear;
        best = look;
      }
      look = danger.nextWithin(candidate, look, last, clear - reach);
    }
    if (best < 0 || isBeyondReach(candidate, best, least)) {
      return;
    }
    double middle = // one nearest place between the looks beside it
        Top.of(
            at -> -clearance(danger, worst, at),
            Math.max(first, best - 1),
            Math.min(last, best + 1),
            NEAREST_PART);
    boolean between = clearance(danger, worst, middle) < least;
    worst.takeFrom(between ? (int) middle : best, between ? middle - (int) middle : 0.0);
  }

  private static double clearance(DangerCheck danger, Worst worst, double at) {
    int look = (int) at;
    placeAt(worst.candidate, look, at - look, worst.place);
    return danger.clearance(worst.place[0], worst.place[1]);
  }

  /** The strongest wind of some looks; 0 where it does not matter, NaN where one is not known. */
  private double windiest(Candidate candidate, int first, int last) {
    double most = 0.0;
    if (passage().party().craft().windResponse().driftFraction() != 0.0) {
      for (int look = first; look <= last; look++) {
        most = Math.max(most, candidate.windSpeed(look)); // NaN stays
      }
    }
    return most;
  }

  /** Whether so many metres are too far to drift; false where the flow at a look is not known. */
  private boolean isBeyondReach(Candidate candidate, int look, double metres) {
    return metres > reach(candidate, candidate.leg[look], candidate.windSpeed(look));
  }

  /** How far one might drift from a leg in a wind, metres. */
  private double reach(Candidate candidate, int leg, double windSpeed) {
    double fraction = passage().party().craft().windResponse().driftFraction();
    double wind = fraction == 0.0 ? 0.0 : fraction * windSpeed;
    double flow = candidate.streamRate(candidate.strongest(leg));
    return FLOW_MARGIN * (flow + wind) * WARNING_MINUTES * STEP_SECONDS;
  }

  /**
   * Follows a drift from the place of what it adds to.
   *
   * @return after how many minutes it comes upon a danger, infinite if on none; NaN if that is not
   *     known
   */
  private double drift(Worst worst, int look, double from) {
    Candidate candidate = worst.candidate;
    PlaneMetres metres = candidate.room().metres();
    double[] place = worst.place;
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
      double time = from + minute * STEP_SECONDS;
      double before = Math.max(from, time - minutes * STEP_SECONDS);
      // until it has gone as far as the nearest danger lies off, none need be asked for
      double gone = LONGEST_DEGREE_METRES * PlaneMetres.length(goneLatitude, goneLongitude);
      for (int i = 0; i < clear.length && !(gone < least); i++) {
        DangerCheck danger = dangers.get(i);
        if (!danger.isFarther(clear[i], goneLatitude, goneLongitude)
            && danger.clearance(beforeLatitude, beforeLongitude, place[0], place[1]) < 0.0) {
          double closed = danger.closed(candidate.passage, before, time);
          if (closed != 0.0) {
            worst.met = i;
            return closed > 0.0 ? minute : Double.NaN;
          }
        }
      }
      beforeLatitude = place[0];
      beforeLongitude = place[1];
      double seconds = minutes * STEP_SECONDS;
      if (minute < WARNING_MINUTES && !step(candidate, look, time, seconds, place, metres)) {
        return Double.NaN;
      }
      goneLatitude += Math.abs(place[0] - beforeLatitude);
      goneLongitude += Math.abs(place[1] - beforeLongitude);
    }
    return Double.POSITIVE_INFINITY;
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
