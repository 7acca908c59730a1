package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

/** Proof and Newton's method against the search that divides the stretch until all is settled. */
class NearestPointTest {
  /** Two distances of 15 nanometres each, and feet known to what is promised. */
  private static final double DISTANCE_METRES = 50e-9;

  /** Two feet of a micrometre each, where the position is near enough for a sharp foot. */
  private static final double ALONG_METRES = 2e-6;

  /** One question: a stretch of a line, and a position. */
  private record Question(Line line, double from, double to, double lat, double lon) {}

  /**
   * {@code main N SEED}: the greatest differences from the search over N questions of each kind.
   */
  public static void main(String[] arguments) {
    int questions = Integer.parseInt(arguments[0]);
    for (Kind kind : Kind.values()) {
      SplittableRandom random = new SplittableRandom(Long.parseLong(arguments[1]));
      double worst = 0.0;
      double place = 0.0;
      int elsewhere = 0;
      for (int i = 0; i < questions; i++) {
        double[] difference = difference(kind.draw(random));
        worst = Math.max(worst, difference[0]);
        if (difference[1] < 1.0) {
          place = Math.max(place, difference[1]);
        } else {
          elsewhere++;
        }
      }
      System.out.printf(
          "%s: distance %.1f nm, foot %.1e m, another foot as near %d%n",
          kind, 1e9 * worst, place, elsewhere);
    }
  }

  private enum Kind {
    KAYAK_LEG(20e3, 30e3, 85),
    LONG_LEG(400e3, 600e3, 80),
    OCEAN_LEG(8000e3, 9000e3, 80),
    LINE(0, 60e3, 80),
    LINE_AND_ANYWHERE(0, 19e6, 75),
    POLAR_LEG(20e3, 30e3, 89.99);

    private final double longest;
    private final double farthest;
    private final double greatestLatitude;

    Kind(double longest, double farthest, double greatestLatitude) {
      this.longest = longest;
      this.farthest = farthest;
      this.greatestLatitude = greatestLatitude;
    }

    private Question draw(SplittableRandom random) {
      Position origin =
          Position.ofDegrees(
              greatestLatitude * (2.0 * random.nextDouble() - 1.0),
              360.0 * random.nextDouble() - 180.0);
      int quarters = random.nextInt(16);
      double drawn = 360.0 * random.nextDouble();
      // one in four along a meridian or a parallel, or very nearly
      double course = quarters < 4 ? 90.0 * quarters + (random.nextBoolean() ? 0.0 : 1e-7) : drawn;
      TrueBearing bearing = TrueBearing.ofDegrees(course);
      Line line =
          random.nextBoolean() ? Line.rhumb(origin, bearing) : Line.geodesic(origin, bearing);
      double[] end = new double[3];
      double far = farthest * random.nextDouble() * random.nextDouble();
      Geodesics.direct(
          origin.latitudeDegrees(),
          origin.longitudeDegrees(),
          360.0 * random.nextDouble(),
          far,
          end,
          0);
      if (longest == 0.0) {
        return new Question(
            line, line.farthestAstern().metres(), line.farthestAhead().metres(), end[0], end[1]);
      }
      double length = longest * random.nextDouble();
      return new Question(
          line, 0.0, Math.min(length, line.farthestAhead().metres()), end[0], end[1]);
    }
  }

  /** Found less searched: distance, and place along. */
  private static double[] difference(Question q) {
    NearestPoint found = NearestPoint.search(q.line, q.from, q.to, q.lat, q.lon);
    double searched =
        NearestPointSearch.search(q.line, Ellipsoid.WGS84, q.from, q.to, q.lat, q.lon);
    double[] point = new double[3];
    q.line.pointAt(searched, point, 0);
    double least = Places.metres(Position.ofDegrees(q.lat, q.lon), point[0], point[1]);
    double there =
        Places.metres(Position.ofDegrees(q.lat, q.lon), found.latitude(), found.longitude());
    // A nearer point than the search's is no fault; that what is told is true is asked as well.
    return new double[] {
      Math.max(there - least, Math.abs(there - found.metres())), Math.abs(found.along() - searched)
    };
  }

  @Test
  void legsAgreeWithTheSearch() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 3000; i++) {
      double[] difference = difference(Kind.KAYAK_LEG.draw(random));
      assertEquals(0.0, difference[0], DISTANCE_METRES, "question " + i);
      assertEquals(0.0, difference[1], ALONG_METRES, "question " + i);
    }
  }

  @Test
  void longLegsPolarLegsAndLinesAgreeInTheDistance() {
    for (Kind kind : Kind.values()) {
      SplittableRandom random = new SplittableRandom(6);
      int tries = kind == Kind.LINE_AND_ANYWHERE || kind == Kind.OCEAN_LEG ? 40 : 150;
      for (int i = 0; i < tries; i++) {
        double[] difference = difference(kind.draw(random));
        assertTrue(difference[0] <= DISTANCE_METRES, kind + " " + i + ": " + difference[0]);
      }
    }
  }
}
