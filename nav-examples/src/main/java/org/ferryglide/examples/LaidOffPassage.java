package org.ferryglide.examples;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.passage.LegOptions;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageBuilder;
import org.ferryglide.nav.passage.PassageLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.Route;
import org.ferryglide.nav.steer.SteeringLimits;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.tide.folder.PassageFolder;

/**
 * A passage laid off leg by leg, with the party, legs and stops of its checks; each leg is started
 * when the one before it arrives, or after the stop there.
 *
 * @param folder what it is laid off from
 * @param solver how its legs are steered: in the stream of the nearest station, within its reach
 * @param legs the legs in order
 * @param plan with all checks, for the planned start
 */
record LaidOffPassage(
    PassageFolder folder,
    CourseToSteer solver,
    List<LaidOffLeg> legs,
    Outcome<TimedPlan, NotPossible> plan) {

  static LaidOffPassage of(PassageFolder folder) {
    Passage passage = folder.passage();
    double share = folder.limits().crossStreamShare();
    CourseToSteer calm =
        CourseToSteer.with(passage.party().craft(), passage.stream())
            .withLimits(
                SteeringLimits.of(Math.min(share, SteeringLimits.USUAL.warnAbove()), share));
    CourseToSteer solver = passage.wind().map(calm::withWind).orElse(calm);
    List<LaidOffLeg> legs = new ArrayList<>();
    Optional<Instant> departure = Optional.of(folder.start().toInstant());
    for (PassageLeg leg : passage.legs()) {
      LaidOffLeg laidOff =
          LaidOffLeg.of(folder, leg, solver(passage, solver, leg.options()), departure);
      legs.add(laidOff);
      departure = laidOff.arrival().flatMap(arrival -> afterStop(passage, leg.number(), arrival));
    }
    return new LaidOffPassage(
        folder, solver, List.copyOf(legs), TimedPlan.of(passage, folder.start().toInstant()));
  }

  /** As one leg is paddled, where it differs from the rest. */
  private static CourseToSteer solver(Passage passage, CourseToSteer usual, LegOptions options) {
    Craft craft = usual.craft();
    craft = options.speed().map(craft::withSpeed).orElse(craft);
    craft = options.isWithoutRests() ? craft.withRestEachHour(Duration.ZERO) : craft;
    CourseToSteer own =
        CourseToSteer.with(craft, options.stream().orElse(passage.stream()))
            .withStrategy(options.strategy())
            .withLimits(usual.limits());
    return passage.wind().map(own::withWind).orElse(own);
  }

  /**
   * When the party goes on after arriving at a way point: the plan of a passage that begins, stops
   * and ends there.
   */
  private static Optional<Instant> afterStop(Passage passage, int number, Instant arrival) {
    WayPoint there = passage.wayPoints().get(number);
    if (there.stop().isEmpty()) {
      return Optional.of(arrival);
    }
    WayPoint passed = WayPoint.of(there.name(), there.position());
    PassageBuilder stay =
        Passage.builder("stop", passage.zone(), passage.party()).from(passed).to(there).to(passed);
    boolean goesOn = number < passage.legs().size();
    Optional<StreamField> own =
        goesOn ? passage.legs().get(number).options().stream() : Optional.empty();
    stay.stream(own.orElse(passage.stream()));
    passage.levels().forEach(stay::level);
    return TimedPlan.of(stay.build(), arrival).solved().map(plan -> plan.legs().get(1).departure());
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
