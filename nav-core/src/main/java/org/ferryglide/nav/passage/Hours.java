package org.ferryglide.nav.passage;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.water.StreamField;

/** Cuts a steered leg at the hours of the party's clock. */
final class Hours {
  private static final double HOUR = 3600.0;

  private Hours() {}

  static List<PlannedHour> of(SteeredLeg leg, StreamField stream, Passage passage) {
    List<PlannedHour> hours = new ArrayList<>();
    double from = EpochSeconds.of(leg.departure());
    double end = EpochSeconds.of(leg.arrival());
    while (from < end) {
      double until = Math.min(end, nextHour(from, passage.zone()));
      hours.add(hour(leg, stream, passage, from, until));
      from = until;
    }
    return Collections.unmodifiableList(hours);
  }

  /** Some zones lie half an hour beside the others. */
  private static double nextHour(double from, ZoneId zone) {
    double shift = zone.getRules().getOffset(EpochSeconds.toInstant(from)).getTotalSeconds();
    return (Math.floor((from + shift) / HOUR) + 1.0) * HOUR - shift;
  }

  private static Map<String, Double> levels(Passage passage, double time) {
    Map<String, Double> heights = new LinkedHashMap<>();
    passage
        .levels()
        .forEach(
            (port, level) -> {
              double height = level.heightMetres(time);
              if (!Double.isNaN(height)) {
                heights.put(port, height);
              }
            });
    return Collections.unmodifiableMap(heights);
  }

  private static PlannedHour hour(
      SteeredLeg leg, StreamField stream, Passage passage, double from, double until) {
    double[] place = new double[3];
    leg.groundTrack().at(from, place, 0);
    Position begin = Position.ofDegrees(place[0], Candidate.longitude(place[1]));
    double heading = place[2];
    leg.groundTrack().at(until, place, 0);
    Position end = Position.ofDegrees(place[0], Candidate.longitude(place[1]));
    leg.groundTrack().at(0.5 * (from + until), place, 0);
    double[] flow = new double[2];
    boolean known = stream.sample(place[0], place[1], 0.5 * (from + until), flow, 0);
    Instant start = EpochSeconds.toInstant(from);
    Instant stop = EpochSeconds.toInstant(until);
    double metres = begin.equals(end) ? 0.0 : RhumbLeg.between(begin, end).length().metres();
    return new PlannedHour(
        TimeSpan.of(start, stop),
        begin,
        TrueBearing.ofDegrees(heading),
        known ? Velocity.ofEastAndNorth(flow[0], flow[1]) : null,
        Speed.ofMetresPerSecond(metres / (until - from)),
        leg.leg(),
        end,
        levels(passage, from));
  }
}
