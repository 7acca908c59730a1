package org.ferryglide.examples.page;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.passage.PlannedHour;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.water.StreamField;

/**
 * A leg as vectors on paper: what the stream carried hour by hour, and what was paddled through the
 * water. Both are taken from the ground track that was solved, so that they close on its end.
 *
 * @param hours one for each hour of the leg
 */
record LegVectors(List<Hour> hours) {
  private static final double STEP_SECONDS = 30.0;

  /** WGS84, NIMA TR8350.2. */
  private static final double EQUATOR_METRES = 6378137.0;

  private static final double SQUARED_ECCENTRICITY = 6.69437999014e-3;

  /** Metres to the east and north within one hour; the stream is NaN where it is not known. */
  record Hour(
      PlannedHour hour,
      double streamEast,
      double streamNorth,
      double groundEast,
      double groundNorth) {
    double waterEast() {
      return groundEast - streamEast;
    }

    double waterNorth() {
      return groundNorth - streamNorth;
    }
  }

  LegVectors {
    hours = List.copyOf(hours);
  }

  static LegVectors of(TimedPlan plan, PlannedLeg leg) {
    StreamField stream = leg.leg().options().stream().orElse(plan.passage().stream());
    List<Hour> hours = new ArrayList<>();
    for (PlannedHour hour : leg.hours()) {
      double from =
          Math.max(seconds(hour.span().from()), leg.steered().groundTrack().startSeconds());
      double until =
          Math.min(seconds(hour.span().until()), leg.steered().groundTrack().endSeconds());
      hours.add(hour(leg, stream, hour, from, until));
    }
    return new LegVectors(hours);
  }

  private static Hour hour(
      PlannedLeg leg, StreamField stream, PlannedHour hour, double from, double until) {
    double[] sums = new double[4];
    double[] here = new double[3];
    double[] there = new double[3];
    double[] flow = new double[2];
    int steps = Math.max(1, (int) Math.ceil((until - from) / STEP_SECONDS));
    double step = (until - from) / steps;
    leg.steered().groundTrack().at(from, here, 0);
    for (int i = 1; i <= steps; i++) {
      leg.steered().groundTrack().at(from + i * step, there, 0);
      double latitude = 0.5 * (here[0] + there[0]);
      double turned = Math.IEEEremainder(there[1] - here[1], 360.0);
      double middle = Math.IEEEremainder(here[1] + 0.5 * turned, 360.0);
      boolean known = stream.sample(latitude, middle, from + (i - 0.5) * step, flow, 0);
      sums[0] += known ? flow[0] * step : Double.NaN;
      sums[1] += known ? flow[1] * step : Double.NaN;
      sums[2] += turned * perDegreeEast(latitude);
      sums[3] += (there[0] - here[0]) * perDegreeNorth(latitude);
      System.arraycopy(there, 0, here, 0, 3);
    }
    return new Hour(hour, sums[0], sums[1], sums[2], sums[3]);
  }

  private static double perDegreeEast(double latitude) {
    double sine = Math.sin(Math.toRadians(latitude));
    return Math.toRadians(EQUATOR_METRES)
        * Math.cos(Math.toRadians(latitude))
        / Math.sqrt(1.0 - SQUARED_ECCENTRICITY * sine * sine);
  }

  private static double perDegreeNorth(double latitude) {
    double sine = Math.sin(Math.toRadians(latitude));
    double root = 1.0 - SQUARED_ECCENTRICITY * sine * sine;
    return Math.toRadians(EQUATOR_METRES) * (1.0 - SQUARED_ECCENTRICITY) / (root * Math.sqrt(root));
  }

  private static double seconds(Instant time) {
    return time.getEpochSecond() + time.getNano() * 1e-9;
  }

  boolean isKnown() {
    return hours.stream().noneMatch(hour -> Double.isNaN(hour.streamEast()));
  }

  /** The corners of the construction, metres east and north of the start, each with its part. */
  List<double[]> streamChain() {
    List<double[]> chain = new ArrayList<>();
    double[] at = {0.0, 0.0};
    chain.add(at);
    for (Hour hour : hours) {
      at = new double[] {at[0] + hour.streamEast(), at[1] + hour.streamNorth()};
      chain.add(at);
    }
    return chain;
  }

  /** From the end of the streams to the end of the leg. */
  List<double[]> waterChain() {
    List<double[]> streams = streamChain();
    List<double[]> chain = new ArrayList<>();
    double[] at = streams.get(streams.size() - 1);
    chain.add(at);
    for (Hour hour : hours) {
      at = new double[] {at[0] + hour.waterEast(), at[1] + hour.waterNorth()};
      chain.add(at);
    }
    return chain;
  }
}
