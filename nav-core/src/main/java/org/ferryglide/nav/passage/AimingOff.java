package org.ferryglide.nav.passage;

import java.util.Objects;
import org.ferryglide.nav.landfall.AimOff;
import org.ferryglide.nav.landfall.Side;

/** Lays a leg of a passage off to one side of its mark. */
final class AimingOff {
  /** A course aimed off in a stream costs up to three points: nine in ten are left for certain. */
  private static final double CONFIDENCE = 0.95;

  private AimingOff() {}

  static Passage of(Passage passage, PlannedLeg planned, Side side) {
    Objects.requireNonNull(side, "side");
    PassageLeg leg = planned.leg();
    AimOff aim =
        AimOff.to(
            leg.leg(),
            planned.spread().standardDeviationAcross(leg.leg().finalCourse()),
            CONFIDENCE,
            side);
    WayPoint mark = leg.to();
    WayPoint off =
        WayPoint.of(name(passage, "off " + mark.name()), aim.aimingPoint())
            .withToSee(mark.toSee())
            .aimedOffFor(mark);
    PassageBuilder builder =
        passage.around(passage.name(), passage.party()).from(passage.wayPoints().get(0));
    for (PassageLeg each : passage.legs()) {
      if (each.number() == leg.number()) {
        builder.to(off, each.options());
      }
      builder.to(each.to(), each.options());
    }
    passage.conditions().forEach(builder::condition);
    return builder.build();
  }

  private static String name(Passage passage, String wished) {
    String name = wished;
    for (int i = 2; isTaken(passage, name); i++) {
      name = wished + " " + i;
    }
    return name;
  }

  private static boolean isTaken(Passage passage, String name) {
    return passage.wayPoints().stream().anyMatch(place -> place.name().equals(name));
  }
}
