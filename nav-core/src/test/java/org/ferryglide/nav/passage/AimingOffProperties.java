package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.landfall.Offset;
import org.ferryglide.nav.landfall.Side;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.water.WaterLevel;
import org.ferryglide.testing.Seeds;

/**
 * A mark that is missed is told to the right side and turn, by a geometry of its own: places drawn
 * from the plan's spread, carried on along the course until the mark is abeam, with the place of
 * the mark worked out on a plane.
 */
class AimingOffProperties {
  private static final int DRAWS = 4000;

  /** Three standard deviations of a share of 0.9 counted among {@code n}. */
  private static double chance(int n) {
    return 3.0 * Math.sqrt(0.9 * 0.1 / n);
  }

  private static Passage passage(Random random) {
    double latitude = -60.0 + 120.0 * random.nextDouble();
    double longitude = -180.0 + 360.0 * random.nextDouble();
    Position slip = Position.ofDegrees(latitude, Math.min(179.999, longitude));
    double course = 2.0 * Math.PI * random.nextDouble();
    double metres = 2000.0 + 12_000.0 * random.nextDouble();
    double north = latitude + metres * Math.cos(course) / 111_000.0;
    double east =
        longitude + metres * Math.sin(course) / (111_000.0 * Math.cos(Math.toRadians(latitude)));
    return Passage.builder("One leg", ZoneOffset.UTC, Scenes.party(3.0 + random.nextDouble()))
        .from(WayPoint.of("Slip", slip))
        .to(
            WayPoint.of("Mark", Position.ofDegrees(north, Candidate.longitude(east)))
                .withMark(Distance.ofMetres(4.0 + 10.0 * random.nextDouble())))
        .stream(Scenes.turning(1.2 * random.nextDouble()))
        .visibility(Distance.ofMetres(50.0 + 500.0 * random.nextDouble()))
        .build();
  }

  @Property(seed = Seeds.SEED, tries = 40 * Seeds.MORE_IN_THE_SOAK)
  void aMissIsToldToTheRightSideAndTurn(@ForAll Random random) {
    Passage straight = passage(random);
    Side side = random.nextBoolean() ? Side.LEFT : Side.RIGHT;
    Side other = side == Side.LEFT ? Side.RIGHT : Side.LEFT;
    TimedPlan plan = TimedPlan.of(straight, Scenes.NOON).orElseThrow();
    Sighting aimedStraight = plan.legs().get(0).sighting().orElseThrow();
    assertEquals(Offset.NONE, aimedStraight.aimedOff());
    assertFalse(aimedStraight.sideIfMissed().isPresent());
    assertFalse(aimedStraight.turnIfMissed().isPresent());

    TimedPlan off = TimedPlan.of(plan.aimingOff(1, side), Scenes.NOON).orElseThrow();
    PlannedLeg leg = off.legs().get(0);
    Sighting sighting = leg.sighting().orElseThrow();
    assertEquals(other, sighting.sideIfMissed().orElseThrow());
    TrueBearing turn = sighting.turnIfMissed().orElseThrow();

    Position aim = leg.leg().to().position();
    Position mark = straight.wayPoints().get(1).position();
    double course = Math.toRadians(leg.leg().leg().finalCourse().degrees());
    double east = Math.sin(course);
    double north = Math.cos(course);
    Covariance spread = leg.spread();
    double a = Math.sqrt(spread.eastVariance());
    double b = spread.eastNorthCovariance() / a;
    double c = Math.sqrt(Math.max(0.0, spread.northVariance() - b * b));
    double perDegree = 111_132.0; // metres; a part in a hundred does not matter to a side
    double markNorth = (mark.latitudeDegrees() - aim.latitudeDegrees()) * perDegree;
    double markEast =
        Math.IEEEremainder(mark.longitudeDegrees() - aim.longitudeDegrees(), 360.0)
            * perDegree
            * Math.cos(Math.toRadians(mark.latitudeDegrees()));
    double reach = sighting.reach().metres();
    int missed = 0;
    int asTold = 0;
    for (int i = 0; i < DRAWS; i++) {
      double first = random.nextGaussian();
      double x = a * first;
      double y = b * first + c * random.nextGaussian();
      double toGo = (markEast - x) * east + (markNorth - y) * north;
      double abeamEast = markEast - (x + toGo * east);
      double abeamNorth = markNorth - (y + toGo * north);
      if (Math.hypot(abeamEast, abeamNorth) > reach) {
        missed++;
        double bearing = Math.toDegrees(Math.atan2(abeamEast, abeamNorth));
        asTold += Math.abs(Math.IEEEremainder(bearing - turn.degrees(), 360.0)) < 1.0 ? 1 : 0;
      }
    }
    if (missed > 50) {
      assertTrue(
          asTold >= (Sighting.SURE_SIDE - chance(missed)) * missed, asTold + " of " + missed);
    }
    // the chances told are those of the draws, within three standard deviations of a count
    double told = sighting.missedTo(Side.LEFT) + sighting.missedTo(Side.RIGHT);
    assertEquals(told, missed / (double) DRAWS, 3.5 * Math.sqrt(0.25 / DRAWS));
    assertEquals(1.0, told + sighting.chance(), 1e-9);
  }

  @Example
  void theWayGoesOnToTheMarkAndTheRestIsAsItWas() {
    TimedPlan plan = TimedPlan.of(seen(), Scenes.NOON).orElseThrow();
    Passage off = plan.aimingOff(1, Side.LEFT);
    assertEquals(3, off.legs().size());
    assertEquals("off Skerry", off.wayPoints().get(1).name());
    assertEquals(Scenes.SKERRY, off.wayPoints().get(2).position());
    assertEquals(Scenes.COVE, off.wayPoints().get(3).position());
    assertEquals(seen().wayPoints().get(1), off.wayPoints().get(1).aimedOffFor().orElseThrow());
    assertEquals(plan.passage().limits(), off.limits());
    TimedPlan again = TimedPlan.of(off, Scenes.NOON).orElseThrow();
    assertEquals("off Skerry 2", again.aimingOff(2, Side.LEFT).wayPoints().get(2).name());
    assertTrue(again.arrival().isAfter(plan.arrival()));
    Sighting sighting = again.legs().get(0).sighting().orElseThrow();
    assertEquals(Side.LEFT, sighting.aimedOff().side());
    double sigma =
        plan.legs()
            .get(0)
            .spread()
            .standardDeviationAcross(plan.legs().get(0).leg().leg().finalCourse())
            .metres();
    // 1.645 standard deviations on the straight course, seen from the turned one within a few in a
    // hundred
    assertEquals(1.645 * sigma, sighting.aimedOff().distance().metres(), 0.05 * sigma);
  }

  /** The mark's own port and height count, not those of the place aimed at. */
  @Example
  void aMarkThatCoversIsNotPromisedFromThePlaceAimedAt() {
    WaterLevel level = Scenes.level();
    WayPoint mark =
        WayPoint.of("Skerry", Scenes.SKERRY)
            .withMark(Distance.ofMetres(2.0))
            .withLanding(Landing.between("Bar", Distance.ofMetres(0.0), Distance.ofMetres(9.0)));
    WayPoint aimed = WayPoint.of("off Skerry", Scenes.COVE).aimedOffFor(mark);
    Passage passage =
        Passage.builder("Covers", ZoneOffset.UTC, Scenes.party(3.5))
            .from(WayPoint.of("Slip", Scenes.SLIP))
            .to(aimed)
            .to(mark)
            .stream(Scenes.turning(0.2))
            .level("Bar", level)
            .visibility(Distance.ofNauticalMiles(1.0))
            .build();
    Sighting covered =
        TimedPlan.of(passage, Scenes.NOON.minus(Duration.ofHours(1)))
            .orElseThrow()
            .legs()
            .get(0)
            .sighting()
            .orElseThrow();
    assertEquals("the mark is covered then", covered.whyUnsure().orElseThrow());
    assertFalse(covered.turnIfMissed().isPresent());
  }

  private static Sighting sighting(WayPoint skerry, boolean levels) {
    PassageBuilder builder =
        Passage.builder("A mark", ZoneOffset.UTC, Scenes.party(3.5))
            .from(WayPoint.of("Slip", Scenes.SLIP))
            .to(skerry)
            .stream(Scenes.turning(0.2))
            .visibility(Distance.ofNauticalMiles(3.0));
    if (levels) {
      builder.level("Bar", Scenes.level());
    }
    TimedPlan plan =
        TimedPlan.of(builder.build(), Scenes.NOON.minus(Duration.ofHours(3))).orElseThrow();
    return plan.legs().get(0).sighting().orElseThrow();
  }

  /** A metre of rock is under water when it stands at three, landing or not. */
  @Example
  void aMarkIsNotPromisedWhereItMayBeCoveredFromTheEarliestToTheLatestArrival() {
    WayPoint skerry = WayPoint.of("Skerry", Scenes.SKERRY);
    Distance low = Distance.ofMetres(1.0);
    for (WayPoint covered : List.of(skerry.withMark(low), skerry.withMark(low, "Bar"))) {
      assertEquals("the mark is covered then", sighting(covered, true).whyUnsure().orElseThrow());
    }
    assertFalse(sighting(skerry.withMark(low), false).whyUnsure().isPresent());
    assertEquals("Bar", skerry.withMark(low, "Bar").markPort().orElseThrow());
    TimedPlan plan =
        TimedPlan.of(Scenes.passage(3.5, 0.2).build(), Scenes.NOON.minus(Duration.ofHours(3)))
            .orElseThrow();
    // it rises until noon: clear of the water at the likely arrival, under it at the latest
    double likely = Scenes.level().heightMetres(plan.legs().get(0).arrival().getEpochSecond());
    double latest = Scenes.level().heightMetres(plan.legs().get(0).latest().getEpochSecond());
    WayPoint between = skerry.withMark(Distance.ofMetres(0.5 * (likely + latest)), "Bar");
    assertEquals("the mark may be covered then", sighting(between, true).whyUnsure().orElseThrow());
    WayPoint above = skerry.withMark(Distance.ofMetres(latest + 0.1), "Bar");
    assertFalse(sighting(above, true).whyUnsure().isPresent());
  }

  private static Passage seen() {
    return Scenes.passage(3.5, 0.8).visibility(Distance.ofNauticalMiles(0.3)).build();
  }
}
