package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.PlanePatch;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.testing.Seeds;

class QuickestPathProperties {
  private static final Instant DEPARTURE = Instant.parse("2026-06-14T10:00:00Z");

  /** Times are rounded to milliseconds; paths of the same field in another form settle alike. */
  private static final double SETTLED_SHARE = 2e-5;

  private static CourseToSteer solver(StreamField stream, double speed) {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofMetresPerSecond(speed)), stream)
        .withStrategy(Strategy.quickest())
        .withLimits(SteeringLimits.NONE);
  }

  private static SteeredLeg leg(StreamField stream, double speed, Position from, Position to) {
    return solver(stream, speed).solve(GeodesicLeg.between(from, to), DEPARTURE).orElseThrow();
  }

  private static double seconds(StreamField stream, double speed, Position from, Position to) {
    SteeredLeg leg = leg(stream, speed, from, to);
    return leg.arrivalSeconds() - leg.groundTrack().startSeconds();
  }

  private static StreamField shear(double strength, double slant) {
    return PlanePatch.stream(
        (x, y) -> strength * Math.sin(y + slant), (x, y) -> strength * Math.cos(x - slant));
  }

  /** There and back is the same in a stream turned round. */
  @Property(seed = Seeds.SEED, tries = 5)
  void reversal(
      @ForAll @DoubleRange(min = 0, max = 1.2) double strength,
      @ForAll @DoubleRange(min = 0, max = 6) double slant) {
    Position a = PlanePatch.at(0, 0);
    Position b = PlanePatch.at(4, 1);
    double there = seconds(shear(strength, slant), 1.5, a, b);
    double back =
        seconds(
            PlanePatch.stream(
                (x, y) -> -strength * Math.sin(y + slant),
                (x, y) -> -strength * Math.cos(x - slant)),
            1.5,
            b,
            a);
    assertEquals(there, back, SETTLED_SHARE * there);
  }

  @Property(seed = Seeds.SEED, tries = 5)
  void mirror(
      @ForAll @DoubleRange(min = 0, max = 1.2) double strength,
      @ForAll @DoubleRange(min = 0, max = 6) double slant) {
    double one = seconds(shear(strength, slant), 1.5, PlanePatch.at(0, 0), PlanePatch.at(4, 1));
    double other =
        seconds(
            PlanePatch.stream(
                (x, y) -> strength * Math.sin(-y + slant),
                (x, y) -> -strength * Math.cos(x - slant)),
            1.5,
            PlanePatch.at(0, 0),
            PlanePatch.at(4, -1));
    assertEquals(one, other, SETTLED_SHARE * one);
  }

  /** Twice the speeds, half the time. */
  @Property(seed = Seeds.SEED, tries = 5)
  void scaling(
      @ForAll @DoubleRange(min = 0, max = 1.2) double strength,
      @ForAll @DoubleRange(min = 0, max = 6) double slant) {
    Position a = PlanePatch.at(0, 0);
    Position b = PlanePatch.at(4, 1);
    double slow = seconds(shear(strength, slant), 1.5, a, b);
    double fast = seconds(shear(2.0 * strength, slant), 3.0, a, b);
    assertEquals(slow, 2.0 * fast, SETTLED_SHARE * slow);
  }

  /** No way by a third place is quicker. */
  @Property(seed = Seeds.SEED, tries = 5)
  void triangle(
      @ForAll @DoubleRange(min = 0, max = 1.2) double strength,
      @ForAll @DoubleRange(min = -1, max = 5) double x,
      @ForAll @DoubleRange(min = -2, max = 3) double y) {
    StreamField stream = shear(strength, 0.7);
    Position a = PlanePatch.at(0, 0);
    Position b = PlanePatch.at(4, 1);
    Position by = PlanePatch.at(x, y + 0.013);
    double straight = seconds(stream, 1.5, a, b);
    assertTrue(
        straight
            <= seconds(stream, 1.5, a, by)
                + seconds(stream, 1.5, by, b)
                + SETTLED_SHARE * straight);
  }

  /** The path put back as a route with the track held takes the same time to the second. */
  @Property(seed = Seeds.SEED, tries = 6)
  void thePathAsTracksHeldTakesAsLong(
      @ForAll @DoubleRange(min = 0, max = 1.2) double strength,
      @ForAll @DoubleRange(min = 0, max = 6) double slant) {
    StreamField stream =
        (latitude, longitude, time, out, offset) -> {
          shear(strength * Math.cos(time / 7000.0), slant)
              .sample(latitude, longitude, time, out, offset);
          return true;
        };
    SteeredLeg path = leg(stream, 1.5, PlanePatch.at(0, 0), PlanePatch.at(5, 1));
    List<Position> places = new ArrayList<>();
    for (TrackPoint point : path.groundTrack().points()) {
      if (places.isEmpty() || !places.get(places.size() - 1).equals(point.position())) {
        places.add(point.position());
      }
    }
    SteeredRoute held =
        solver(stream, 1.5)
            .withStrategy(Strategy.trackHeld())
            .solve(Route.ofRhumbLegs(places.toArray(new Position[0])), DEPARTURE)
            .orElseThrow();
    assertEquals(path.arrivalSeconds(), held.legs().get(places.size() - 2).arrivalSeconds(), 1.0);
  }

  /** Steps of a quarter of an hour end on the end, and lose little. */
  @Property(seed = Seeds.SEED, tries = 6)
  void stepsEndWhereThePathEnds(
      @ForAll @DoubleRange(min = 0, max = 1.0) double strength,
      @ForAll @DoubleRange(min = 0, max = 6) double slant) {
    StreamField stream = shear(strength, slant);
    SteeredLeg path = leg(stream, 1.5, PlanePatch.at(0, 0), PlanePatch.at(5, 1));
    SteeredRoute steps = solver(stream, 1.5).inSteps(path, Duration.ofMinutes(15)).orElseThrow();
    double lost =
        steps.legs().get(steps.legs().size() - 1).arrivalSeconds() - path.arrivalSeconds();
    assertEquals(path.leg().end(), steps.legs().get(steps.legs().size() - 1).leg().end());
    final double share = 0.02; // eddies 3 km wide, a step of 1.3 km
    assertTrue(lost > -0.01 && lost < share * path.duration().getSeconds(), lost + " s lost");
  }

  /** A jet against the craft can be passed on either side. */
  @Property(seed = Seeds.SEED, tries = 3)
  void bothSidesOfAJetAreOffered(@ForAll @DoubleRange(min = 0.8, max = 1.4) double strength) {
    CourseToSteer solver =
        solver(
            PlanePatch.stream(
                (x, y) -> -strength * Math.exp(-2 * ((x - 3) * (x - 3) + y * y)), (x, y) -> 0.0),
            1.5);
    List<SteeredLeg> ways =
        solver.quickestWays(
            GeodesicLeg.between(PlanePatch.at(0, 0), PlanePatch.at(6, 0)), DEPARTURE, 3);
    assertTrue(ways.size() >= 2, ways.toString());
    assertTrue(!ways.get(1).arrival().isBefore(ways.get(0).arrival()));
    assertTrue(
        solver
            .withStrategy(Strategy.constantHeading())
            .quickestWays(ways.get(0).leg(), DEPARTURE, 3)
            .isEmpty());
  }
}
