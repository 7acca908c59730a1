package org.ferryglide.nav.quickest;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;

/**
 * Where a plain fine front finds a way among one to six random islands, in eddies that outrun the
 * craft and mostly turn with the tide, the search has an answer too, and no slower one.
 */
class IslandAnswersTest {
  private static final int CASES = 8 * Seeds.MORE_IN_THE_SOAK;
  private static final double LEG = 10.0;
  private static final double SPACING = 0.125;

  /** The front keeps so far off the islands, since the search passes corners at a few metres. */
  private static final double BERTH = 0.02;

  /** How much slower than the front's own way an answer may be. */
  private static final double SLOWER = 1e-3;

  /** Islands as corners x and y in turn, none about the start or the goal. */
  private static List<double[]> islands(Random random, double berth) {
    List<double[]> islands = new ArrayList<>();
    int count = 1 + random.nextInt(6);
    for (int k = 0; k < count; k++) {
      double x = 2.2 + 5.6 * random.nextDouble();
      double y = -1.5 + 3.0 * random.nextDouble();
      int corners = 4 + random.nextInt(12);
      double[] island = new double[2 * corners];
      for (int c = 0; c < corners; c++) {
        double size = 0.4 + 1.2 * random.nextDouble() + berth;
        double angle = 2.0 * Math.PI * c / corners;
        island[2 * c] = x + size * Math.cos(angle);
        island[2 * c + 1] = y + size * Math.sin(angle);
      }
      islands.add(island);
    }
    return islands;
  }

  private static boolean crosses(double[] island, double x0, double y0, double x1, double y1) {
    for (int i = 0; i < island.length; i += 2) {
      int next = (i + 2) % island.length;
      double ax = island[i];
      double ay = island[i + 1];
      double bx = island[next];
      double by = island[next + 1];
      if (side(x0, y0, x1, y1, ax, ay) * side(x0, y0, x1, y1, bx, by) <= 0.0
          && side(ax, ay, bx, by, x0, y0) * side(ax, ay, bx, by, x1, y1) <= 0.0) {
        return true;
      }
    }
    return false;
  }

  private static double side(double x0, double y0, double x1, double y1, double x, double y) {
    return (x1 - x0) * (y - y0) - (y1 - y0) * (x - x0);
  }

  private static Eddies eddies(int seed) {
    return Eddies.random(random(seed), 2, 9, 0.8, 1.5, seed % 3 == 0 ? 0.0 : 0.6);
  }

  private static Random random(int seed) {
    return new Random(0x9E3779B97F4A7C15L * (seed + 1L));
  }

  /** How long the best of a few ways of the front takes; infinite if none can be made. */
  private static double front(int seed) {
    List<double[]> islands = islands(random(-1 - seed), BERTH);
    GridStarts grid =
        new GridStarts(
            eddies(seed),
            ManyStarts::calm,
            LEG,
            SPACING,
            (x0, y0, x1, y1) -> islands.stream().anyMatch(i -> crosses(i, x0, y0, x1, y1)));
    ManyStarts times = new ManyStarts(eddies(seed), ManyStarts::calm, LEG);
    double least = Double.POSITIVE_INFINITY;
    for (double[] way : grid.ways(3)) {
      least = Math.min(least, times.strictTime(way));
    }
    return least;
  }

  /** How long the answer takes; infinite if there is none. */
  private static double answer(int seed) {
    List<List<Position>> land = new ArrayList<>();
    for (double[] island : islands(random(-1 - seed), 0.0)) {
      List<Position> corners = new ArrayList<>();
      for (int i = 0; i < island.length; i += 2) {
        corners.add(PlanePatch.at(island[i], island[i + 1]));
      }
      land.add(corners);
    }
    List<FoundWay> ways =
        new QuickestSearch(
                new CalmCraft(eddies(seed).field(), 1.0),
                new Waters(Obstacles.of(land), List.of()),
                new double[] {0.0, 0.0},
                new double[] {0.0, PlanePatch.longitude(LEG)},
                0.0,
                86400.0)
            .ways(1);
    return ways.isEmpty()
        ? Double.POSITIVE_INFINITY
        : ways.get(0).seconds() / PlanePatch.UNIT_METRES;
  }

  @Property(seed = Seeds.SEED, tries = CASES)
  void whereAPlainFrontFindsAWayThereIsAnAnswerAndNoSlowerOne(
      @ForAll @IntRange(max = 999_999) int seed) {
    double front = front(seed);
    Assume.that(front < Double.POSITIVE_INFINITY);
    double answer = answer(seed);
    assertTrue(answer < (1.0 + SLOWER) * front, () -> answer + " against " + front);
  }

  /** Prints the cases of a range that have no answer or a slower one, {@code FROM UNTIL}. */
  public static void main(String[] arguments) {
    int from = Integer.parseInt(arguments[0]);
    int until = Integer.parseInt(arguments[1]);
    int found = 0;
    double worst = Double.NEGATIVE_INFINITY;
    for (int seed = from; seed < until; seed++) {
      double front = front(seed);
      if (front < Double.POSITIVE_INFINITY) {
        found++;
        double answer = answer(seed);
        worst = Math.max(worst, answer / front - 1.0);
        if (!(answer < (1.0 + SLOWER) * front)) {
          System.out.println("case " + seed + ": " + answer + " against " + front);
        }
      }
    }
    System.out.printf(
        Locale.ROOT,
        "%d ways in cases %d to %d; at worst %.4f %% slower%n",
        found,
        from,
        until,
        100.0 * worst);
  }
}
