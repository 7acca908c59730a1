package org.ferryglide.nav.passage;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.water.WindAgainstStream;

/**
 * Keeps a quickest path out of what the party has named: dangers with the distance to keep, streams
 * and wind against stream beyond the limits at which a plan stops.
 *
 * <p>A danger that a level, a stream or a wind at its own place closes is kept off only where that
 * is known beforehand, so not here: its check decides. So it does about one that holds an end of
 * the leg.
 */
final class KeptOut {
  /** Corners of half a circle round a corner of an outline. */
  private static final int HALF_CIRCLE = 8;

  /** Corners of a circle stand so much farther off that its sides keep the distance. */
  private static final double OUTSIDE = 1.0 / Math.cos(Math.PI / (2.0 * HALF_CIRCLE));

  private KeptOut() {}

  /** The strategy for a leg; another strategy than the quickest path stays as it is. */
  static Strategy of(Strategy strategy, Passage passage, Position start, Position end) {
    if (!strategy.isQuickest()) {
      return strategy;
    }
    Strategy kept = withinLimits(strategy, passage.limits());
    List<List<Position>> land = new ArrayList<>();
    for (Danger danger : passage.dangers().orElse(List.of())) {
      DangerCheck check = new DangerCheck(passage, danger);
      if (isAt(check, start) || isAt(check, end)) {
        continue;
      }
      List<List<Position>> areas = areas(danger);
      if (danger.closings().isEmpty()) {
        land.addAll(areas);
        continue;
      }
      for (Closing closing : danger.closings()) {
        if (closing instanceof Closing.During during) {
          for (TimeSpan span : during.spans()) {
            for (List<Position> area : areas) {
              kept = kept.withClosure(area, span);
            }
          }
        }
      }
    }
    return land.isEmpty() ? kept : kept.withObstacles(land);
  }

  private static boolean isAt(DangerCheck check, Position place) {
    // corners stand a little outside the distance to keep
    double beyond = (OUTSIDE - 1.0) * check.danger().keepOff().metres() + 1.0;
    return check.clearance(place.latitudeDegrees(), place.longitudeDegrees()) < beyond;
  }

  private static Strategy withinLimits(Strategy strategy, PassageLimits limits) {
    double factor = 1.0 + limits.rateError();
    Strategy kept = strategy;
    if (limits.has(PassageLimits.STREAM)) {
      kept =
          kept.withGreatestStream(
              Speed.ofMetresPerSecond(limits.stop(PassageLimits.STREAM) / factor));
    }
    if (limits.has(PassageLimits.WIND_AGAINST_STREAM)) {
      kept =
          kept.withoutWindAgainstStream(
              new WindAgainstStream(
                  Speed.ofMetresPerSecond(limits.stop(PassageLimits.WIND_AGAINST_STREAM)),
                  Speed.ofMetresPerSecond(limits.leastStream() / factor),
                  WaterChecks.AGAINST_DEGREES));
    }
    return kept;
  }

  /** The outline, and a round-ended strip about each of its sides. */
  private static List<List<Position>> areas(Danger danger) {
    List<Position> corners = danger.outline();
    List<List<Position>> areas = new ArrayList<>();
    if (corners.size() > 2) {
      areas.add(corners);
    }
    double metres = danger.keepOff().metres();
    if (metres > 0.0) {
      for (int i = 0; i < corners.size(); i++) {
        Position next = corners.get((i + 1) % corners.size());
        areas.add(strip(corners.get(i), next, OUTSIDE * metres));
      }
    }
    return areas;
  }

  private static List<Position> strip(Position from, Position to, double metres) {
    double latitude = 0.5 * (from.latitudeDegrees() + to.latitudeDegrees());
    double north = PlaneMetres.north(latitude);
    double east = PlaneMetres.east(latitude);
    double along =
        Math.atan2(
            (to.latitudeDegrees() - from.latitudeDegrees()) * north,
            PlaneMetres.turned(to.longitudeDegrees() - from.longitudeDegrees()) * east);
    List<Position> strip = new ArrayList<>();
    for (int half = 0; half < 2; half++) {
      Position middle = half == 0 ? to : from;
      for (int i = 0; i <= HALF_CIRCLE; i++) {
        double angle = along + Math.PI * (half - 0.5 + (double) i / HALF_CIRCLE);
        if (half == 1 && from.equals(to) && (i == 0 || i == HALF_CIRCLE)) {
          continue; // the same place as of the other half
        }
        strip.add(
            Position.ofDegrees(
                middle.latitudeDegrees() + metres * Math.sin(angle) / north,
                PlaneMetres.turned(middle.longitudeDegrees() + metres * Math.cos(angle) / east)));
      }
    }
    return strip;
  }
}
