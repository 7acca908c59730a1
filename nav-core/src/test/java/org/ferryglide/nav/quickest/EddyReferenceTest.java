package org.ferryglide.nav.quickest;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
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

  private static final int KINDS = 10;

  private static double slower(EddyKind kind) {
    return kind.isWindy() ? SLOWER_IN_WIND : kind.isTurning() ? SLOWER : SLOWER_AT_REST;
  }

  @Test
  void noAnswerIsATenthOfAPercentSlowerThanTheReference() {
    List<String> slow = Collections.synchronizedList(new ArrayList<>());
    List<String> dishonest = Collections.synchronizedList(new ArrayList<>());
    // all processors at once: some cases take seconds
    Rows.of(EddyReferenceTest.class, "eddy_references.csv").parallelStream()
        .forEach(row -> judge(row, slow, dishonest));
    assertTrue(slow.isEmpty(), slow.toString());
    assertTrue(dishonest.isEmpty(), dishonest.toString());
  }

  private static void judge(String[] row, List<String> slow, List<String> dishonest) {
    EddyKind kind = EddyKind.valueOf(row[0]);
    int seed = Integer.parseInt(row[1]);
    double reference = Double.parseDouble(row[2]);
    List<FoundWay> ways = kind.ways(seed);
    double time = EddyKind.time(ways);
    if (!(time < (1.0 + slower(kind)) * reference)) {
      slow.add(kind + " " + seed + ": " + time + " against " + reference);
    }
    double doubt = ways.isEmpty() ? 0.0 : ways.get(0).errorSeconds() / ways.get(0).seconds();
    if (!(time < (1.0 + doubt + SLOWER_AT_REST) * reference)) {
      dishonest.add(kind + " " + seed + ": " + (time / reference - 1.0) + ", doubt " + doubt);
    }
  }

  @Test
  void theReferenceHasLittleLeftToGain() {
    for (String[] row : Rows.of(EddyReferenceTest.class, "eddy_references.csv")) {
      double left = Math.abs(Double.parseDouble(row[2]) / Double.parseDouble(row[3]) - 1.0);
      assertTrue(left < LEFT_TO_GAIN, row[0] + " " + row[1] + ": " + left);
    }
  }

  /** The same in cases that are drawn: a thousand of each kind in a thorough soak. */
  @Property(seed = Seeds.SEED, tries = Seeds.MORE_IN_THE_SOAK > 1 ? 1000 * KINDS : KINDS)
  void norInCasesDrawn(@ForAll EddyKind kind, @ForAll @IntRange(min = 20, max = 999_999) int seed) {
    double loss = kind.loss(seed, kind.answer(seed));
    assertTrue(loss < SLOWER, () -> "slower by a share of " + loss);
  }

  /**
   * Compares a range of cases with the reference and prints what was found, {@code KIND FROM
   * UNTIL}; with a fourth argument it prints rows of the table instead.
   */
  public static void main(String[] arguments) {
    EddyKind kind = EddyKind.valueOf(arguments[0]);
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
      double time = kind.answer(i);
      double share = time / expected - 1.0;
      if (!(share < SLOWER)) {
        slower++;
        System.out.println(kind + " " + i + ": " + time + " against " + expected);
      }
      quicker += share < -SLOWER ? 1 : 0;
      worst = Math.max(worst, share);
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
