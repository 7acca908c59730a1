package org.ferryglide.examples;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.Route;
import org.ferryglide.nav.steer.SteeringLimits;
import org.ferryglide.tide.folder.PassageFolder;
import org.ferryglide.tide.stream.StationField;

/**
 * A passage laid off leg by leg, each started when the one before it arrives.
 *
 * @param folder what it is laid off from
 * @param solver how its legs are steered: in the stream of the nearest station, within its reach
 * @param legs the legs in order
 */
record LaidOffPassage(PassageFolder folder, CourseToSteer solver, List<LaidOffLeg> legs) {

  static LaidOffPassage of(PassageFolder folder) {
    double share = folder.limits().crossStreamShare();
    CourseToSteer solver =
        CourseToSteer.with(
                Craft.ofSpeed(folder.speed()),
                StationField.nearest(folder.stations(), folder.limits().reach()))
            .withLimits(
                SteeringLimits.of(Math.min(share, SteeringLimits.USUAL.warnAbove()), share));
    List<LaidOffLeg> legs = new ArrayList<>();
    Optional<Instant> departure = Optional.of(folder.start().toInstant());
    for (int number = 1; number < folder.wayPoints().size(); number++) {
      LaidOffLeg leg = LaidOffLeg.of(folder, number, solver, departure);
      legs.add(leg);
      departure = leg.arrival();
    }
    return new LaidOffPassage(folder, solver, List.copyOf(legs));
  }

  Route route() {
    return Route.ofRhumbLegs(
        folder.wayPoints().stream().map(PassageFolder.WayPoint::position).toArray(Position[]::new));
  }

  /** When the last way point is reached; empty if a leg is not possible or not known. */
  Optional<Instant> arrival() {
    return legs.get(legs.size() - 1).arrival();
  }

  Distance length() {
    return legs.stream().map(leg -> leg.leg().length()).reduce(Distance.ZERO, Distance::plus);
  }

  boolean isWithoutData() {
    return legs.stream().anyMatch(LaidOffLeg::isWithoutData);
  }

  boolean isNotPossible() {
    return legs.stream().anyMatch(LaidOffLeg::isNotPossible);
  }
}
