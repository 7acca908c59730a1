package org.ferryglide.nav.passage;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;

/** Parts of a passage as passages of their own: going on from a way point, and the way home. */
final class PartPassages {
  private PartPassages() {}

  /**
   * What is left of a passage from a way point on, without the program's own conditions: they know
   * the whole passage only.
   */
  static Passage onward(Passage passage, int wayPoint) {
    List<WayPoint> places = passage.wayPoints();
    WayPoint first = places.get(wayPoint);
    PassageBuilder builder =
        passage
            .around(passage.name() + ", from " + first.name(), passage.party())
            .from(isAshore(passage, wayPoint) ? withLanding(passed(first), first) : passed(first));
    for (int leg = wayPoint; leg < passage.legs().size(); leg++) {
      builder.to(places.get(leg + 1), passage.legs().get(leg).options());
    }
    return builder.build();
  }

  /**
   * The way home from a way point after the start: the legs passed, the other way round and without
   * stops, each with the options it was paddled out with.
   */
  static Passage home(Passage passage, int wayPoint) {
    List<WayPoint> places = passage.wayPoints();
    WayPoint from = places.get(wayPoint);
    boolean ashore = isAshore(passage, wayPoint);
    Party party = ashore ? passage.party() : passage.party().withLaunching(Duration.ZERO);
    PassageBuilder builder =
        passage
            .around(passage.name() + ", home from " + from.name(), party)
            .from(ashore ? withLanding(passed(from), from) : passed(from));
    for (int leg = wayPoint - 1; leg >= 0; leg--) {
      WayPoint next = places.get(leg);
      builder.to(
          leg == 0 ? withLanding(passed(next), next) : passed(next),
          passage.legs().get(leg).options());
    }
    return builder.build();
  }

  /** Straight to a landing, from anywhere on the water. */
  static Passage escape(Passage passage, Position from, WayPoint landing) {
    Party party = passage.party().withLaunching(Duration.ZERO);
    Passage bare =
        passage
            .around(passage.name() + ", to " + landing.name(), party)
            .from(WayPoint.of("on the water", from))
            .to(withLanding(passed(landing), landing))
            .limits(passage.limits().withoutTimeToLanding())
            .build();
    return withSlower(bare);
  }

  /** The same part, held against all checks for the slower party too. */
  static Passage withSlower(Passage part) {
    List<PassageCheck> checks = new ArrayList<>();
    checks.add(new SlowerToo(part));
    SlowerToo.addLandingThroughout(part, checks);
    PassageBuilder builder = part.toBuilder();
    checks.forEach(builder::condition);
    return builder.build();
  }

  /** What is left of a passage from a place on a leg on, without the program's own conditions. */
  static Passage onwardFrom(Passage passage, int leg, Position place) {
    PassageBuilder builder =
        passage
            .around(passage.name() + ", from a fix", passage.party())
            .from(WayPoint.of("fix", place));
    for (int i = leg; i < passage.legs().size(); i++) {
      builder.to(passage.wayPoints().get(i + 1), passage.legs().get(i).options());
    }
    return builder.build();
  }

  /** The same passage with the party at another speed. */
  static Passage withSpeedTimes(Passage passage, double factor) {
    Party party = passage.party();
    Party changed = party.withCraft(party.craft().withSpeed(party.craft().speed().times(factor)));
    PassageBuilder builder =
        passage.around(passage.name(), changed).from(passage.wayPoints().get(0));
    for (PassageLeg leg : passage.legs()) {
      LegOptions options = leg.options();
      builder.to(
          leg.to(),
          options.speed().map(own -> options.withSpeed(own.times(factor))).orElse(options));
    }
    passage.conditions().forEach(builder::condition);
    return builder.build();
  }

  /** The same passage in other water. */
  static Passage withStreams(Passage passage, UnaryOperator<StreamField> change) {
    PassageBuilder builder =
        passage.around(passage.name(), passage.party()).from(passage.wayPoints().get(0)).stream(
            change.apply(passage.stream()));
    for (PassageLeg leg : passage.legs()) {
      LegOptions options = leg.options();
      builder.to(leg.to(), options.stream().map(change).map(options::withStream).orElse(options));
    }
    passage.conditions().forEach(builder::condition);
    return builder.build();
  }

  /** Whether the party launches at a way point. */
  static boolean isAshore(Passage passage, int wayPoint) {
    return wayPoint == 0 || passage.wayPoints().get(wayPoint).stop().isPresent();
  }

  /** The place without its stop and landing. */
  private static WayPoint passed(WayPoint place) {
    return WayPoint.of(place.name(), place.position()).withToSee(place.toSee()).withMarkOf(place);
  }

  private static WayPoint withLanding(WayPoint bare, WayPoint place) {
    return place.landing().map(bare::withLanding).orElse(bare);
  }
}
