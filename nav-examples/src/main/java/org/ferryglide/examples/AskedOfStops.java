package org.ferryglide.examples;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.passage.LegOptions;
import org.ferryglide.nav.passage.Party;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageBuilder;
import org.ferryglide.nav.passage.PassageLeg;
import org.ferryglide.nav.passage.PassageLimits;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.passage.WhenToGo;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.tide.folder.PassageFolder;

/**
 * A passage with stops, or legs paddled in ways of their own, held against what the party asks of
 * it and nothing else.
 */
final class AskedOfStops {
  private final Passage passage;

  private AskedOfStops(Passage passage) {
    this.passage = passage;
  }

  /** Empty if every leg is paddled alike and nothing waits. */
  static Optional<AskedOfStops> of(PassageFolder folder, List<Condition> conditions) {
    Passage whole = folder.passage();
    boolean alike = true;
    PassageBuilder builder =
        Passage.builder(whole.name(), whole.zone(), whole.party())
            .from(bare(whole.wayPoints().get(0)));
    for (PassageLeg leg : whole.legs()) {
      alike &= leg.options().equals(LegOptions.usual()) && leg.to().stop().isEmpty();
      builder.to(bare(leg.to()), held(leg.options()));
    }
    if (alike) {
      return Optional.empty();
    }
    builder.stream(whole.stream());
    whole.wind().ifPresent(builder::wind);
    whole.levels().forEach(builder::level);
    conditions.forEach(builder::condition);
    return Optional.of(new AskedOfStops(builder.limits(limits(folder)).build()));
  }

  /** What is asked of the landings and of all else is for the plan's own checks. */
  private static WayPoint bare(WayPoint place) {
    WayPoint bare = WayPoint.of(place.name(), place.position());
    return place.stop().map(bare::withStop).orElse(bare);
  }

  /** With the track held where no way was chosen, for speed. */
  private static LegOptions held(LegOptions options) {
    return options.strategy().equals(Strategy.constantHeading())
        ? options.withStrategy(Strategy.trackHeld())
        : options;
  }

  private static PassageLimits limits(PassageFolder folder) {
    double share = folder.limits().crossStreamShare();
    PassageLimits limits =
        PassageLimits.none().withAnyLight().withCrossStreamShare(0.8 * share, share);
    return folder
        .limits()
        .strongestStream()
        .map(most -> limits.withStream(most.times(0.8), most).withRateError(0.0))
        .orElse(limits);
  }

  /** The plan that leaves then; empty if it is not possible. */
  Optional<TimedPlan> leaving(Instant departure) {
    return TimedPlan.of(passage, departure).solved();
  }

  /** The limits that a plan does not keep. */
  static List<Verdict> broken(TimedPlan plan) {
    return plan.verdicts().stream().filter(verdict -> !verdict.holds()).toList();
  }

  /** Departures from one time until another. */
  WhenToGo departures(Instant from, Instant until, Duration step) {
    return WhenToGo.search(passage, from, until, step);
  }

  /** The same with the party at another speed; legs with speeds of their own keep them. */
  AskedOfStops atSpeed(Speed speed) {
    Party party = passage.party();
    return new AskedOfStops(
        passage.toBuilder().party(party.withCraft(party.craft().withSpeed(speed))).build());
  }
}
