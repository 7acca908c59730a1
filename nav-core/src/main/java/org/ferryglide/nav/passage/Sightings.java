package org.ferryglide.nav.passage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.landfall.Offset;
import org.ferryglide.nav.landfall.Side;
import org.ferryglide.nav.landfall.TargetChance;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.sight.Refraction;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.water.WaterLevel;
import org.jspecify.annotations.Nullable;

/** Works out sightings: from a seated eye, by the mark's height above the water then. */
final class Sightings {
  private Sightings() {}

  /** Between looks at a level: at its top, where it may lie between them, it moves millimetres. */
  private static final double STEP_SECONDS = 300.0;

  static @Nullable Sighting of(
      Passage passage, int leg, SteeredLeg steered, Covariance spread, double spreadSeconds) {
    WayPoint to = passage.wayPoints().get(leg + 1);
    WayPoint mark = to.aimedOffFor().orElse(to);
    Distance charted = mark.markHeight().orElse(null);
    Distance visibility = passage.visibility().orElse(null);
    if (charted == null || visibility == null) {
      return null;
    }
    TrueBearing course = steered.leg().finalCourse();
    Offset aimedOff = aimedOff(to, mark, course);
    List<WaterLevel> waters = waters(passage, mark);
    double arrival = EpochSeconds.of(steered.arrival());
    double height = charted.metres() - highest(waters, arrival, 0.0);
    String covered = "the mark is covered then";
    if (height > 0.0) {
      height = charted.metres() - highest(waters, arrival, PlannedLeg.SPREADS * spreadSeconds);
      covered = "the mark may be covered then";
    }
    if (!(height > 0.0)) {
      String why = Double.isNaN(height) ? "the height of the water is not known then" : covered;
      return new Sighting(0.0, Distance.ZERO, 0.0, 0.0, why, course, aimedOff);
    }
    Distance range =
        Refraction.ONE_SEVENTH.geographicRange(
            Distance.ofMetres(height), passage.party().eyeHeight());
    Distance reach = range.compareTo(visibility) < 0 ? range : visibility;
    TargetChance chance = TargetChance.of(spread, course, reach).withOffset(aimedOff);
    return new Sighting(
        chance.whenPassing(),
        reach,
        chance.missedTo(Side.LEFT),
        chance.missedTo(Side.RIGHT),
        null,
        course,
        aimedOff);
  }

  /** The water of the mark; of all ports where nobody told which. */
  private static List<WaterLevel> waters(Passage passage, WayPoint mark) {
    return mark.markPort()
        .map(port -> Collections.singletonList(passage.level(port)))
        .orElseGet(() -> new ArrayList<>(passage.levels().values()));
  }

  /** The highest water from some seconds before a time until as many after it; NaN if not known. */
  private static double highest(List<WaterLevel> waters, double time, double seconds) {
    if (waters.isEmpty()) {
      return 0.0;
    }
    double highest = Double.NEGATIVE_INFINITY;
    int steps = (int) Math.min(1000.0, Math.ceil(2.0 * seconds / STEP_SECONDS));
    for (WaterLevel level : waters) {
      for (int i = 0; i <= steps; i++) {
        double share = steps == 0 ? 0.5 : i / (double) steps;
        double height = level.heightMetres(time + (2.0 * share - 1.0) * seconds);
        highest = Math.max(highest, Double.isInfinite(height) ? Double.NaN : height);
      }
    }
    return highest;
  }

  /** How far the place aimed at lies to one side of the mark, seen along the course. */
  private static Offset aimedOff(WayPoint to, WayPoint mark, TrueBearing course) {
    if (to.position().equals(mark.position())) {
      return Offset.NONE;
    }
    RhumbLeg fromMark = RhumbLeg.between(mark.position(), to.position());
    double right =
        fromMark.length().metres()
            * Math.sin(Math.toRadians(course.turnDegreesTo(fromMark.course())));
    return Offset.of(right > 0.0 ? Side.RIGHT : Side.LEFT, Distance.ofMetres(Math.abs(right)));
  }
}
