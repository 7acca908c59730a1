package org.ferryglide.nav.quickest;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ferryglide.testing.Rows;
import org.junit.jupiter.api.Test;

/**
 * The quickest paths among random smooth eddies against {@link ManyStarts}. Its times stand in
 * {@code eddy_references.csv}, since they take seconds each; {@link #main} makes the table again.
 */
class EddyReferenceTest {
  /** How much slower than the reference an answer may be. */
  private static final double SLOWER = 1e-3;

  /**
   * What is left to gain from ever more sides, as a share of the time: of all rows, and of most.
   */
  private static final double MOST_LEFT_TO_GAIN = 5e-4;

  private static final double USUALLY_LEFT_TO_GAIN = 2e-4;

  private static final double LEG = 10.0;
  private static final int STARTS = 30;
  private static final int SIDES = 160;

  private enum Kind {
    ONE_STRONG(1, 1, 0.95, 1.5, 0.0),
    FEW(1, 4, 0.5, 1.5, 0.0),
    SEVERAL(5, 8, 0.5, 1.5, 0.0),
    MANY(8, 15, 0.3, 1.2, 0.0),
    TURNING(1, 4, 0.5, 1.5, 0.6);

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
      return Eddies.random(new Random(1000 + seed), fewest, most, weakest, strongest, tide);
    }
  }

  private static List<FoundWay> ways(Eddies eddies) {
    return QuickestSearchTest.ways(
        eddies.field(), 1.0, PlanePatch.at(0, 0), PlanePatch.at(LEG, 0), Waters.open());
  }

  @Test
  void noAnswerIsATenthOfAPercentSlowerThanTheReference() {
    List<String> slow = new ArrayList<>();
    for (String[] row : Rows.of(EddyReferenceTest.class, "eddy_references.csv")) {
      Kind kind = Kind.valueOf(row[0]);
      int seed = Integer.parseInt(row[1]);
      double reference = reference(row);
      List<FoundWay> ways = ways(kind.eddies(seed));
      double time = ways.isEmpty() ? Double.NaN : ways.get(0).seconds() / PlanePatch.UNIT_METRES;
      if (!(time < (1.0 + SLOWER) * reference)) {
        slow.add(kind + " " + seed + ": " + time + " against " + reference);
      }
    }
    assertTrue(slow.isEmpty(), slow.toString());
  }

  /** Halving the sides quarters what a polygon loses to the curve: the limit of ever more sides. */
  private static double reference(String[] row) {
    double coarse = Double.parseDouble(row[2]);
    double fine = Double.parseDouble(row[3]);
    return fine - (coarse - fine) / 3.0;
  }

  @Test
  void theReferenceHasLittleLeftToGain() {
    int rows = 0;
    int usual = 0;
    for (String[] row : Rows.of(EddyReferenceTest.class, "eddy_references.csv")) {
      double left = Math.abs(reference(row) / Double.parseDouble(row[3]) - 1.0);
      assertTrue(left < MOST_LEFT_TO_GAIN, row[0] + " " + row[1] + ": " + left);
      rows++;
      usual += left < USUALLY_LEFT_TO_GAIN ? 1 : 0;
    }
    assertTrue(usual >= 0.9 * rows, usual + " of " + rows);
  }

  /** Prints rows of the table for a kind: {@code KIND FROM UNTIL}. */
  public static void main(String[] arguments) {
    Kind kind = Kind.valueOf(arguments[0]);
    for (int i = Integer.parseInt(arguments[1]); i < Integer.parseInt(arguments[2]); i++) {
      ManyStarts reference = new ManyStarts(kind.eddies(i), LEG);
      double fine = reference.quickest(new Random(i), STARTS, SIDES);
      System.out.println(kind + "," + i + "," + reference.halfAsFine() + "," + fine);
      if (arguments.length > 3) {
        List<FoundWay> ways = ways(kind.eddies(i));
        double time = ways.isEmpty() ? Double.NaN : ways.get(0).seconds() / 1000.0;
        System.out.println("  found " + time + ", " + 100.0 * (time / fine - 1.0) + " %");
      }
    }
  }
}
