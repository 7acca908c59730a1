package org.ferryglide.tide.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PlausibilityTest {
  private static final double HOUR = 3600.0;

  /** Waters every 6.21 h, half the mean lunar period of 12.42 h. */
  private static double[] semidiurnal(int waters) {
    double[] seconds = new double[waters];
    for (int i = 0; i < waters; i++) {
      seconds[i] = i * 6.21 * HOUR;
    }
    return seconds;
  }

  @Test
  void aHeightIsFarByAQuarterOfTheRangeBeyondItsKind() {
    double[] heights = {0.7, 4.2, 0.9, 4.4, 0.8, 4.6, 0.7, 4.5, 0.8, 4.3};
    for (int i = 0; i < heights.length; i++) {
      assertFalse(Plausibility.heightIsFar(heights, i));
    }
    heights[5] = 5.4; // 0.9 m above 4.5; a quarter of 3.8 m is 0.95 m
    assertFalse(Plausibility.heightIsFar(heights, 5));
    heights[5] = 5.5;
    assertTrue(Plausibility.heightIsFar(heights, 5));
    heights[5] = 14.7;
    assertTrue(Plausibility.heightIsFar(heights, 5));
    assertFalse(Plausibility.heightIsFar(heights, 3), "its neighbours are not to blame");
    heights[5] = 4.6;
    heights[4] = -0.3;
    assertTrue(Plausibility.heightIsFar(heights, 4));
    heights[4] = Double.NaN;
    assertFalse(Plausibility.heightIsFar(heights, 4));
  }

  @Test
  void aMaximumIsFarFromTheLargestOfItsKindNearIt() {
    double[] mixed = {3.0, 0.8, 3.1, 0.7, 3.2, 0.8, 3.0, 0.9, 2.9, 0.8};
    for (int i = 0; i < mixed.length; i++) {
      assertFalse(Plausibility.maximumIsFar(mixed, i), "a strong one beside weak ones");
    }
    mixed[4] = 7.7; // 2.5 times 3.1 is 7.75
    assertFalse(Plausibility.maximumIsFar(mixed, 4));
    mixed[4] = 7.8;
    assertTrue(Plausibility.maximumIsFar(mixed, 4));
    assertFalse(Plausibility.maximumIsFar(new double[] {0.5, 8.0, 0.5}, 1), "too few");
    assertFalse(Plausibility.maximumIsFar(new double[] {0.5, 1.9, 0.5, 0.5}, 1), "under 1.5 kn");
    assertTrue(Plausibility.maximumIsFar(new double[] {0.5, 2.1, 0.5, 0.5}, 1));
  }

  @Test
  void fewWatersSayLittleAboutAHeight() {
    assertFalse(Plausibility.heightIsFar(new double[] {0.7, 4.2, 0.9, 14.4, 0.8, 4.3}, 3));
    assertTrue(Plausibility.heightIsFar(new double[] {0.7, 4.2, 0.9, 14.4, 0.8, 4.3, 0.7, 4.2}, 3));
  }

  @Test
  void aHeightIsNotDoubtedForThreeDecimetres() {
    double[] flat = {0.0, 0.2, 0.0, 0.2, 0.0, 0.49, 0.0, 0.2, 0.0, 0.2};
    assertFalse(Plausibility.heightIsFar(flat, 5));
    flat[5] = 0.51;
    assertTrue(Plausibility.heightIsFar(flat, 5));
  }

  @Test
  void aTimeIsFarByThreeQuartersOfAnHour() {
    for (int index : new int[] {0, 3, 4, 10, 16, 19}) {
      double[] seconds = semidiurnal(20);
      assertFalse(Plausibility.timeIsFar(seconds, index));
      seconds[index] += 0.74 * HOUR;
      assertFalse(Plausibility.timeIsFar(seconds, index), "water " + index);
      seconds[index] += 0.02 * HOUR;
      assertTrue(Plausibility.timeIsFar(seconds, index), "water " + index);
      seconds[index] -= 2 * 0.76 * HOUR;
      assertTrue(Plausibility.timeIsFar(seconds, index), "water " + index);
    }
  }

  @Test
  void anHourOffNamesTheRowAloneAwayFromTheEnds() {
    double[] seconds = semidiurnal(40);
    seconds[20] += HOUR;
    for (int i = 0; i < seconds.length; i++) {
      assertEquals(i == 20, Plausibility.timeIsFar(seconds, i), "water " + i);
    }
  }

  @Test
  void timesOfOtherTidesAreNotDoubted() {
    double[] mixed = semidiurnal(20);
    mixed[8] += 2 * HOUR; // an interval of 8.2 h, and one of 4.2 h
    mixed[10] += HOUR;
    assertFalse(Plausibility.timeIsFar(mixed, 10));
    assertFalse(Plausibility.timeIsFar(semidiurnal(8), 3), "too few");
  }

  @Test
  void anUnequalRangeIsItsLargerSide() {
    assertEquals(3.4, Plausibility.rangeMetres(3.5, 3.3), 1e-12);
    assertEquals(1.5, Plausibility.rangeMetres(1.0, 2.0), 1e-12, "half is not less than half");
    assertEquals(2.0, Plausibility.rangeMetres(0.99, 2.0), 1e-12);
    assertEquals(2.0, Plausibility.rangeMetres(2.0, 0.99), 1e-12);
  }

  @Test
  void aRateIsFarAboveBothBesideIt() {
    assertTrue(Plausibility.rateIsFar(new double[] {1.7, 21.0, 1.9}, 1));
    assertFalse(Plausibility.rateIsFar(new double[] {1.7, 2.1, 1.9}, 1));
    assertFalse(Plausibility.rateIsFar(new double[] {0.2, 1.6, 0.1}, 1), "less than 1.5 kn above");
    assertFalse(Plausibility.rateIsFar(new double[] {0.2, 3.0, 3.4, 1.0}, 1), "a fast rise");
    assertTrue(Plausibility.rateIsFar(new double[] {9.0, 0.9, 0.5}, 0));
    assertTrue(Plausibility.rateIsFar(new double[] {0.5, 0.9, 9.0}, 2));
    assertFalse(Plausibility.rateIsFar(new double[] {9.0}, 0));
  }

  @Test
  void aSetTurnedForAnHourIsSeenAcrossNorth() {
    double[] knots = {1.0, 1.2, 1.1};
    assertTrue(Plausibility.setIsTurnedForAnHour(new double[] {350.0, 175.0, 10.0}, knots, 1));
    assertFalse(Plausibility.setIsTurnedForAnHour(new double[] {350.0, 5.0, 10.0}, knots, 1));
    assertFalse(Plausibility.setIsTurnedForAnHour(new double[] {0.0, 180.0, 180.0}, knots, 1));
    double[] slack = {1.0, 0.2, 1.1};
    assertFalse(Plausibility.setIsTurnedForAnHour(new double[] {350.0, 175.0, 10.0}, slack, 1));
    assertFalse(Plausibility.setIsTurnedForAnHour(new double[] {175.0, 10.0, 10.0}, knots, 0));
  }

  @Test
  void anEbbThatSetsAsTheFloodNeverTurns() {
    double[] knots = {0.5, 2.0, 2.5, 0.3, 2.0, 2.5};
    assertTrue(Plausibility.neverTurns(new double[] {40.0, 45.0, 50.0, 200.0, 45.0, 40.0}, knots));
    assertFalse(
        Plausibility.neverTurns(new double[] {40.0, 45.0, 50.0, 200.0, 225.0, 220.0}, knots));
    assertFalse(Plausibility.neverTurns(new double[2], new double[2]), "no stream at all");
  }

  @Test
  void swappedRatesAreCountedAmongThoseThatDiffer() {
    double[] spring = {1.0, 2.0, 0.0, 3.0};
    double[] neap = {0.5, 1.0, 0.0, 3.5};
    assertEquals(1.0 / 3.0, Plausibility.shareOfNeapAboveSpring(spring, neap), 1e-12);
    assertEquals(2.0 / 3.0, Plausibility.shareOfNeapAboveSpring(neap, spring), 1e-12);
    assertEquals(0.0, Plausibility.shareOfNeapAboveSpring(new double[2], new double[2]));
  }
}
