package org.ferryglide.nav.passage;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.water.StreamField;
import org.jspecify.annotations.Nullable;

/** Cuts a steered leg at the hours of the party's clock. */
final class Hours {
  private static final double HOUR = 3600.0;

  private final Candidate candidate;
  private final int number;
  private final SteeredLeg leg;
  private final StreamField stream;
  private final Passage passage;
  private final ReserveCheck reserve;
  private final double[] place = new double[3];
  private final double[] flow = new double[2];

  private Hours(Candidate candidate, int number, ReserveCheck reserve) {
    this.candidate = candidate;
    this.number = number;
    this.leg = candidate.route.legs().get(number);
    this.stream = candidate.streamOf(number);
    this.passage = candidate.passage;
    this.reserve = reserve;
  }

  static List<PlannedHour> of(Candidate candidate, int legOfRoute, ReserveCheck reserve) {
    return new Hours(candidate, legOfRoute, reserve).all();
  }

  /** Each hour begins where the one before ends. */
  private List<PlannedHour> all() {
    List<PlannedHour> hours = new ArrayList<>(2);
    double end = EpochSeconds.of(leg.arrival());
    double from = EpochSeconds.of(leg.departure());
    Instant start = leg.departure();
    Position begin = at(from);
    while (from < end) {
      double heading = place[2];
      double until = Math.min(end, nextHour(from, start, passage.zone()));
      Velocity flows = stream(0.5 * (from + until));
      Position there = at(until);
      Instant stop = EpochSeconds.toInstant(until);
      hours.add(
          new PlannedHour(
              TimeSpan.of(start, stop),
              begin,
              TrueBearing.ofDegrees(heading),
              flows,
              Speed.ofMetresPerSecond(metres(begin, there) / (until - from)),
              leg.leg(),
              there,
              levels(from),
              reserve.least(candidate, number, from, until)));
      from = until;
      start = stop;
      begin = there;
    }
    return Collections.unmodifiableList(hours);
  }

  private Position at(double time) {
    leg.groundTrack().at(time, place, 0);
    return Position.ofDegrees(place[0], Candidate.longitude(place[1]));
  }

  private @Nullable Velocity stream(double time) {
    leg.groundTrack().at(time, place, 0);
    return stream.sample(place[0], place[1], time, flow, 0)
        ? Velocity.ofEastAndNorth(flow[0], flow[1])
        : null;
  }

  /** What an hour covers, by the middle latitude: within some parts in a million. */
  private static double metres(Position from, Position to) {
    double middle = 0.5 * (from.latitudeDegrees() + to.latitudeDegrees());
    double east = PlaneMetres.turned(to.longitudeDegrees() - from.longitudeDegrees());
    return PlaneMetres.length(
        east * PlaneMetres.east(middle),
        (to.latitudeDegrees() - from.latitudeDegrees()) * PlaneMetres.north(middle));
  }

  /** Some zones lie half an hour beside the others. */
  private static double nextHour(double from, Instant instant, ZoneId zone) {
    ZoneOffset offset =
        zone instanceof ZoneOffset fixed ? fixed : zone.getRules().getOffset(instant);
    double shift = offset.getTotalSeconds();
    return (Math.floor((from + shift) / HOUR) + 1.0) * HOUR - shift;
  }

  private Map<String, Distance> levels(double time) {
    if (passage.levels().isEmpty()) {
      return Collections.emptyMap();
    }
    Map<String, Distance> heights = new LinkedHashMap<>();
    passage
        .levels()
        .forEach(
            (port, level) -> {
              double height = level.heightMetres(time);
              if (Double.isFinite(height)) {
                heights.put(port, Distance.ofMetres(height));
              }
            });
    return Collections.unmodifiableMap(heights);
  }
}
