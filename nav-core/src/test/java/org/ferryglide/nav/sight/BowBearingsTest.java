package org.ferryglide.nav.sight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferryglide.nav.measure.Distance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class BowBearingsTest {
  private static final Distance RUN = Distance.ofMetres(1000);

  /**
   * Special angles, all geometry: 22.5 and 45 0.7071, the 7/8 rule 0.8660, four-point 1, 26.5 and
   * 45 0.9943.
   */
  @ParameterizedTest
  @CsvSource({
    "22.5,45,0.7071",
    "45,90,1.0",
    "30,60,0.8660",
    "26.5,45,0.9943",
    "26.5650512,45,1.0",
  })
  void distancesAbeamAreThoseOfTheRules(double first, double second, double share) {
    assertEquals(share, BowBearings.abeam(RUN, first, second).metres() / 1000, 0.00005);
  }

  /** Sources stand in the file. */
  @ParameterizedTest
  @CsvFileSource(resources = "bow-bearing-examinations.csv")
  void examinationsOfBowBearingsAreAnswered(
      String id,
      double miles,
      double first,
      double second,
      String at,
      double answer,
      double tolerance) {
    Distance run = Distance.ofNauticalMiles(miles);
    Distance found =
        at.equals("abeam")
            ? BowBearings.abeam(run, first, second)
            : BowBearings.atSecond(run, first, second);
    assertEquals(answer, found.nauticalMiles(), tolerance, id);
  }

  @Test
  void doublingTheAngleMakesTheRunTheDistance() {
    for (double angle = 1; angle < 90; angle++) {
      assertEquals(1000, BowBearings.atSecond(RUN, angle, 2 * angle).metres(), 1e-9);
    }
    assertEquals(1000, BowBearings.atSecond(RUN, 40, 80).metres(), 1e-9);
  }

  /** Geometry: 30 NM east of abeam, the light is 53.13° south of west, 50 NM off and 40 abeam. */
  @Test
  void aRightTriangleOfThreeFourFive() {
    Distance run = Distance.ofNauticalMiles(30);
    double second = 90 + 36.8698976458; // on the bow, the mark having been abeam at the first
    assertEquals(50, BowBearings.atSecond(run, 90, second).nauticalMiles(), 1e-6);
    assertEquals(40, BowBearings.abeam(run, 90, second).nauticalMiles(), 1e-6);
  }

  @Test
  void pairsMakeTheRunTheDistanceAbeam() {
    assertEquals(9, BowBearings.pairsForRunAbeam().size());
    assertEquals(new BowBearings.AnglePair(45, 90), BowBearings.pairsForRunAbeam().get(8));
    double last = 0;
    for (BowBearings.AnglePair pair : BowBearings.pairsForRunAbeam()) {
      assertTrue(pair.firstDegrees() > last);
      last = pair.firstDegrees();
    }
    for (BowBearings.AnglePair pair : BowBearings.pairsForRunAbeam()) {
      assertEquals(
          1000, BowBearings.abeam(RUN, pair.firstDegrees(), pair.secondDegrees()).metres(), 1e-9);
    }
    assertEquals(90, BowBearings.secondDegreesForRunAbeam(45), 1e-12);
    assertEquals(45, BowBearings.secondDegreesForRunAbeam(26.5650511771), 1e-6);
  }

  @Test
  void anglesThatDoNotGrowAreRefused() {
    assertEquals(
        "angles on the bow must increase within (0, 180) degrees, but were 60.0 and 30.0",
        assertThrows(IllegalArgumentException.class, () -> BowBearings.atSecond(RUN, 60, 30))
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> new BowBearings.AnglePair(60, 30));
    assertThrows(IllegalArgumentException.class, () -> BowBearings.secondDegreesForRunAbeam(46));
    assertThrows(IllegalArgumentException.class, () -> BowBearings.atSecond(RUN, Double.NaN, 30));
  }

  /** Source: exact tangents; the rule is 4.5, 4.9, 5.5, 8.4 and 13.4 % low. */
  @Test
  void oneInSixtyFallsShortAsStated() {
    double[][] table = {
      {1, 1.047, 4.5}, {6, 6.31, 4.9}, {10, 10.58, 5.5}, {20, 21.84, 8.4}, {30, 34.64, 13.4}
    };
    Distance sixty = Distance.ofNauticalMiles(60);
    for (double[] row : table) {
      assertEquals(row[1], OneInSixty.exactOffset(sixty, row[0]).nauticalMiles(), 0.005);
      assertEquals(row[0], OneInSixty.offset(sixty, row[0]).nauticalMiles(), 1e-12);
      assertEquals(row[2], 100 * OneInSixty.shortfall(row[0]), 0.05);
    }
    assertEquals(
        5, OneInSixty.degrees(Distance.ofNauticalMiles(0.5), Distance.ofNauticalMiles(6)), 1e-12);
    assertEquals(0.0, OneInSixty.shortfall(0));
    assertThrows(IllegalArgumentException.class, () -> OneInSixty.exactOffset(sixty, 90));
  }
}
