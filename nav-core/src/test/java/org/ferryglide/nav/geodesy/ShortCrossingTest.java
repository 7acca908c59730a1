package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

/** What the chart decides against the thorough search, which knows no chart. */
class ShortCrossingTest {
  /** Two places of 20 nanometres each, over the sine of the angle between the legs. */
  private static final double ALONG_METRES = 40e-9;

  /** What one of two legs drawn at random looks like. */
  private record Pair(Leg first, Leg second) {}

  private static final class Tally {
    private int crossings;
    private int undecided;
    private int wrong;
    private double worst;
  }

  /** {@code main N SEED}: what of N pairs of each length is decided, and how it compares. */
  public static void main(String[] arguments) {
    int pairs = Integer.parseInt(arguments[0]);
    for (double longest : new double[] {1e3, 20e3, 100e3, 500e3}) {
      for (double polar : new double[] {3, 84}) {
        SplittableRandom random = new SplittableRandom(Long.parseLong(arguments[1]));
        Tally tally = new Tally();
        for (int i = 0; i < pairs; i++) {
          compare(draw(random, longest, polar), tally);
        }
        System.out.printf(
            "to %.0f m, to %.0f deg: %d cross, %d undecided, %d wrong, place times sine %.1f nm%n",
            longest, polar, tally.crossings, tally.undecided, tally.wrong, 1e9 * tally.worst);
      }
    }
  }

  /** One pair in six within a degree of parallel, half of those within a minute. */
  private static Pair draw(SplittableRandom random, double longest, double polar) {
    double lat = polar * (2.0 * random.nextDouble() - 1.0);
    Position start = Position.ofDegrees(lat, 360.0 * random.nextDouble() - 180.0);
    double length = longest * (0.1 + 0.9 * random.nextDouble());
    double course = 360.0 * random.nextDouble();
    Leg first = leg(random.nextBoolean(), start, course, length);
    double other = 360.0 * random.nextDouble();
    int kind = random.nextInt(12);
    if (kind < 2) {
      double off = (kind == 0 ? 1.0 : 1.0 / 60.0) * (2.0 * random.nextDouble() - 1.0);
      other = course + off + (random.nextBoolean() ? 180.0 : 0.0);
    }
    double second = longest * (0.1 + 0.9 * random.nextDouble());
    Position near = first.pointAt(Distance.ofMetres(length * random.nextDouble()));
    double away = kind == 2 ? 0.0 : second * random.nextDouble() * random.nextDouble();
    Position middle =
        GeodesicLeg.from(
                near, TrueBearing.ofDegrees(360.0 * random.nextDouble()), Distance.ofMetres(away))
            .end();
    Position from =
        kind == 2
            ? near // an end on the other leg
            : GeodesicLeg.from(
                    middle,
                    TrueBearing.ofDegrees(other + 180.0),
                    Distance.ofMetres(second * random.nextDouble()))
                .end();
    return new Pair(first, leg(random.nextBoolean(), from, other, second));
  }

  private static Leg leg(boolean rhumb, Position start, double course, double metres) {
    TrueBearing bearing = TrueBearing.ofDegrees(course);
    Distance length = Distance.ofMetres(metres);
    return rhumb ? RhumbLeg.from(start, bearing, length) : GeodesicLeg.from(start, bearing, length);
  }

  private static void compare(Pair pair, Tally tally) {
    Crossings decided = ShortCrossing.of(pair.first, pair.second);
    if (decided == null) {
      tally.undecided++;
      return;
    }
    Crossings searched = search(pair);
    if (decided.points().size() != searched.points().size()
        || decided.runTogether() != searched.runTogether()) {
      tally.wrong++;
    } else if (!decided.points().isEmpty()) {
      tally.crossings++;
      Crossings.Crossing one = decided.points().get(0);
      Crossings.Crossing other = searched.points().get(0);
      double sine = Math.abs(Math.sin(Math.toRadians(other.angleDegrees())));
      double off =
          Math.max(
              Math.abs(one.alongFirst().metres() - other.alongFirst().metres()),
              Math.abs(one.alongSecond().metres() - other.alongSecond().metres()));
      tally.worst = Math.max(tally.worst, sine * off);
      assertEquals(0.0, one.angleDegrees() - other.angleDegrees(), 1e-7);
    }
  }

  private static Crossings search(Pair pair) {
    return CrossingSearch.search(
        pair.first.line(),
        0.0,
        pair.first.length().metres(),
        pair.second.line(),
        0.0,
        pair.second.length().metres());
  }

  @Test
  void whatTheChartDecidesTheSearchFindsToo() {
    for (double longest : new double[] {20e3, 500e3}) {
      SplittableRandom random = new SplittableRandom(8);
      Tally tally = new Tally();
      for (int i = 0; i < 1500; i++) {
        compare(draw(random, longest, i % 5 == 0 ? 3 : 84), tally);
      }
      assertEquals(0, tally.wrong);
      assertTrue(tally.worst <= ALONG_METRES, "" + tally.worst);
      assertTrue(tally.crossings > 300, "" + tally.crossings);
      assertTrue(tally.undecided < 75, "" + tally.undecided); // one in twenty
    }
  }

  @Test
  void legsThatRunTogetherOrTouchAreLeftToTheSearch() {
    Position start = Position.ofDegrees(55, 179.99);
    Leg leg = leg(true, start, 60, 5000);
    assertEquals(null, ShortCrossing.of(leg, leg.reverse()));
    assertTrue(leg.crossings(leg.reverse()).runTogether());
    Leg from = leg(false, leg.end(), 150, 5000);
    Crossings touch = ShortCrossing.of(leg, from);
    assertNotNull(touch);
    assertEquals(1, touch.points().size());
    assertEquals(leg.length(), touch.points().get(0).alongFirst());
    assertEquals(0.0, touch.points().get(0).alongSecond().metres(), 1e-7);
  }

  /** A rhumb line and the geodesic between its ends meet at both, and nowhere else. */
  @Test
  void aRhumbLineAndItsGeodesicMeetTwice() {
    Position start = Position.ofDegrees(60, 10);
    Position end = Position.ofDegrees(60, 10.3);
    RhumbLeg rhumb = RhumbLeg.between(start, end);
    GeodesicLeg geodesic = GeodesicLeg.between(start, end);
    assertEquals(2, rhumb.crossings(geodesic).points().size());
    assertEquals(2, geodesic.crossings(rhumb).points().size());
  }
}
