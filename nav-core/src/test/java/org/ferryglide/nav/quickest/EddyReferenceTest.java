package org.ferryglide.nav.quickest;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.ferryglide.testing.Rows;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;

/**
 * The quickest paths among random smooth eddies against {@link ManyStarts}. Its times stand in
 * {@code eddy_references.csv}, since they take seconds each; {@link #main} makes the table again.
 */
class EddyReferenceTest {
  /** How much slower than the reference an answer may be. */
  private static final double SLOWER = 1e-3;

  /** The same in wind, where the answer is a polygon too, in the cases of the table. */
  private static final double SLOWER_IN_WIND = 3e-4;

  /** The same where the eddies stand still and the air is calm: what the table's digits settle. */
  private static final double SLOWER_AT_REST = 1e-5;

  /** What the reference's finest polygons still lose to the curve, as a share of the time. */
  private static final double LEFT_TO_GAIN = 2e-4;

  private static final double LEG = 10.0;
  private static final int STARTS = 10;
  private static final int WINDY_STARTS = 3; // each takes long
  private static final int SIDES = 320;

  enum Kind {
    ONE_STRONG(1, 1, 0.95, 1.5, 0.0),
    FEW(1, 4, 0.5, 1.5, 0.0),
    SEVERAL(5, 8, 0.5, 1.5, 0.0),
    MANY(8, 15, 0.3, 1.5, 0.0),
    FEW_TURNING(1, 4, 0.5, 1.5, 0.6),
    MANY_TURNING(5, 15, 0.3, 1.5, 0.6),
    WINDY(1, 7, 0.3, 1.2, 0.0),
    WINDY_TURNING(1, 7, 0.3, 1.2, 0.6);

    private final int fewest;
    private final int most;
    private final double weakest;
    private final double strongest;
    private final double tide;

    Kind(int fewest, int most, double weakest, double strongest, double tide) {
      this.fewest = fewest;
      this.most = most;
      this.weakest = weakest;
      this.strongest = strongest;
      this.tide = tide;
    }

    Eddies eddies(int seed) {
      return Eddies.random(random(seed), fewest, most, weakest, strongest, tide);
    }

    /** Seeds that follow each other would begin with nearly the same numbers. */
    private static Random random(int seed) {
      return new Random(0x9E3779B97F4A7C15L * (seed + 1L));
    }

    double slower() {
      return isWindy() ? SLOWER_IN_WIND : tide != 0.0 ? SLOWER : SLOWER_AT_REST;
    }

    boolean isWindy() {
      return this == WINDY || this == WINDY_TURNING;
    }

    /** In a wind of 2 to 5 craft speeds from anywhere: force 2 to 5 for a paddler. */
    WindyCraft craft(int seed) {
      Random random = random(-1 - seed);
      double angle = 2.0 * Math.PI * random.nextDouble();
      double speed = 2.0 + 3.0 * random.nextDouble();
      return new WindyCraft(eddies(seed), speed * Math.sin(angle), speed * Math.cos(angle));
    }

    ManyStarts reference(int seed) {
      return new ManyStarts(
          eddies(seed), isWindy() ? craft(seed)::madeGood : ManyStarts::calm, LEG);
    }

    double quickest(ManyStarts reference, int seed) {
      return reference.quickest(new Random(seed), isWindy() ? WINDY_STARTS : STARTS, SIDES);
    }

    List<FoundWay> ways(int seed) {
      return new QuickestSearch(
              isWindy() ? craft(seed) : new CalmCraft(eddies(seed).field(), 1.0),
              Waters.open(),
              new double[] {0.0, 0.0},
              new double[] {0.0, PlanePatch.longitude(LEG)},
              0.0,
              86400.0)
          .ways(1);
    }
  }

  /** In units of the patch; NaN if there is no way. */
  private static double time(List<FoundWay> ways) {
    return ways.isEmpty() ? Double.NaN : ways.get(0).seconds() / PlanePatch.UNIT_METRES;
  }

  @Test
  void noAnswerIsATenthOfAPercentSlowerThanTheReference() {
    List<String> slow = new ArrayList<>();
    for (String[] row : Rows.of(EddyReferenceTest.class, "eddy_references.csv")) {
      Kind kind = Kind.valueOf(row[0]);
      int seed = Integer.parseInt(row[1]);
      double reference = Double.parseDouble(row[2]);
      double time = time(kind.ways(seed));
      if (!(time < (1.0 + kind.slower()) * reference)) {
        slow.add(kind + " " + seed + ": " + time + " against " + reference);
      }
    }
    assertTrue(slow.isEmpty(), slow.toString());
  }

  @Test
  void theReferenceHasLittleLeftToGain() {
    for (String[] row : Rows.of(EddyReferenceTest.class, "eddy_references.csv")) {
      double left = Math.abs(Double.parseDouble(row[2]) / Double.parseDouble(row[3]) - 1.0);
      assertTrue(left < LEFT_TO_GAIN, row[0] + " " + row[1] + ": " + left);
    }
  }

  /** The same in cases that are drawn; eight thorough soaks make a thousand of each kind. */
  @Property(seed = Seeds.SEED, tries = Seeds.MORE_IN_THE_SOAK > 1 ? 1000 : 2)
  void norInCasesDrawn(@ForAll Kind kind, @ForAll @IntRange(min = 20, max = 999_999) int seed) {
    double reference = kind.quickest(kind.reference(seed), seed);
    double time = time(kind.ways(seed));
    assertTrue(time < (1.0 + SLOWER) * reference, () -> time + " against " + reference);
  }

  /**
   * Compares a range of cases with the reference and prints what was found, {@code KIND FROM
   * UNTIL}; with a fourth argument it prints rows of the table instead.
   */
  public static void main(String[] arguments) {
    Kind kind = Kind.valueOf(arguments[0]);
    int from = Integer.parseInt(arguments[1]);
    int until = Integer.parseInt(arguments[2]);
    double worst = Double.NEGATIVE_INFINITY;
    int slower = 0;
    int quicker = 0;
    for (int i = from; i < until; i++) {
      ManyStarts reference = kind.reference(i);
      double expected = kind.quickest(reference, i);
      if (arguments.length > 3) {
        System.out.println(kind + "," + i + "," + expected + "," + reference.polygon());
        continue;
      }
      double time = time(kind.ways(i));
      double share = time / expected - 1.0;
      if (!(share < SLOWER)) {
        slower++;
        System.out.println(kind + " " + i + ": " + time + " against " + expected);
      }
      quicker += share < -SLOWER ? 1 : 0;
      worst = Math.max(worst, Double.isNaN(share) ? Double.POSITIVE_INFINITY : share);
    }
    if (arguments.length > 3) {
      return;
    }
    System.out.printf(
        Locale.ROOT,
        "%s %d to %d: at worst %.4f %% slower, %d more than 0.1 %%; %d quicker by more%n",
        kind,
        from,
        until,
        100.0 * worst,
        slower,
        quicker);
  }
}
