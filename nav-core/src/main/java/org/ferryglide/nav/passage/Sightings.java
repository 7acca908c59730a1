package org.ferryglide.nav.passage;

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
import org.jspecify.annotations.Nullable;

/** Works out sightings: from a seated eye, by the mark's height above the water then. */
final class Sightings {
  private Sightings() {}

  static @Nullable Sighting of(Passage passage, int leg, SteeredLeg steered, Covariance spread) {
    WayPoint to = passage.wayPoints().get(leg + 1);
    WayPoint mark = to.aimedOffFor().orElse(to);
    Distance charted = mark.markHeight().orElse(null);
    Distance visibility = passage.visibility().orElse(null);
    if (charted == null || visibility == null) {
      return null;
    }
    double water = 0.0;
    TrueBearing course = steered.leg().finalCourse();
    Offset aimedOff = aimedOff(to, mark, course);
    String port = mark.landing().flatMap(Landing::port).orElse(null);
    if (port != null) {
      water = passage.level(port).heightMetres(EpochSeconds.of(steered.arrival()));
    }
    double height = charted.metres() - water;
    if (!(height > 0.0)) {
      String why =
          Double.isNaN(height)
              ? "the height of the water is not known then"
              : "the mark is covered then";
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

  /** How far the place aimed at lies to one side of the mark, seen along the course. */
  private static Offset aimedOff(WayPoint to, WayPoint mark, TrueBearing course) {
    if (to.position().equals(mark.position())) {
      return Offset.NONE;
    }
    RhumbLeg fromMark = RhumbLeg.between(mark.position(), to.position());
    double right =
        fromMark.length().metres() * Math.sin(Math.toRadians(course.turnTo(fromMark.course())));
    return Offset.of(right > 0.0 ? Side.RIGHT : Side.LEFT, Distance.ofMetres(Math.abs(right)));
  }
}
