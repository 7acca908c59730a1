package org.ferryglide.nav.sight;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferryglide.nav.measure.Distance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Horizon, vertical angles and lights. */
class DistanceOffTest {
  private static final double METRES_PER_FOOT = 0.3048;
  private static final double HALF_A_PRINTED_TENTH = 0.05;

  private static Distance feet(double feet) {
    return ofMetres(feet * METRES_PER_FOOT);
  }

  /** Source: Bowditch 2024, table 12, D = 1.17 √ft; 640 ft is misprinted 29.5 there for 29.6. */
  @Test
  void horizonAgreesWithThePrintedTable() {
    double[][] table = {
      {1, 1.2},
      {50, 8.3},
      {80, 10.5},
      {90, 11.1},
      {100, 11.7},
      {150, 14.3},
      {820, 33.5},
      {640, 29.6}
    };
    for (double[] row : table) {
      assertEquals(
          row[1],
          Refraction.BOWDITCH_HORIZON.horizon(feet(row[0])).nauticalMiles(),
          HALF_A_PRINTED_TENTH);
    }
  }

  /** Source: constants of the rules, from their published forms with an earth of 6371 km. */
  @Test
  void eachRuleHasItsOwnRefraction() {
    Distance metre = ofMetres(1);
    assertEquals(1.927, Refraction.NONE.horizon(metre).nauticalMiles(), 0.0005);
    assertEquals(2.08, Refraction.ONE_SEVENTH.horizon(metre).nauticalMiles(), 0.005);
    assertEquals(2.12, Refraction.ofCoefficient(0.173).horizon(metre).nauticalMiles(), 0.005);
    assertEquals(1.17, Refraction.BOWDITCH_HORIZON.horizon(feet(1)).nauticalMiles(), 1e-12);
    assertEquals(0.1729, Refraction.BOWDITCH_HORIZON.coefficient(), 0.0001);
    assertEquals(
        1.1665, Refraction.BOWDITCH_BEYOND_HORIZON.horizon(feet(1)).nauticalMiles(), 0.0005);
  }

  /** Sources stand in the file. */
  @ParameterizedTest
  @CsvFileSource(resources = "light-examinations.csv")
  void examinationsOfLightsAreAnswered(
      String id,
      String kind,
      Double nominal,
      Double visibility,
      Double height,
      Double eye,
      double answer,
      double tolerance) {
    double found =
        switch (kind) {
          case "luminous" -> luminous(Distance.ofNauticalMiles(nominal), visibility);
          case "horizon" -> Refraction.BOWDITCH_HORIZON.horizon(feet(eye)).nauticalMiles();
          default ->
              Refraction.BOWDITCH_HORIZON.geographicRange(feet(height), feet(eye)).nauticalMiles();
        };
    assertEquals(answer, found, tolerance, id);
  }

  /** The rule 2.08 (√h + √e), a refraction of a seventh. */
  @Test
  void geographicRangeIsTheSumOfBothHorizons() {
    Distance seated = ofMetres(0.9);
    assertEquals(1.83, Refraction.NONE.horizon(seated).nauticalMiles(), 0.005);
    assertEquals(
        11.3,
        Refraction.ONE_SEVENTH.geographicRange(ofMetres(20), seated).nauticalMiles(),
        HALF_A_PRINTED_TENTH);
  }

  /** Source: dip 0.97' √ft, 1.76' √m; Bowditch 2024, table 8 and its explanation. */
  @Test
  void dipIsThatOfTheAlmanac() {
    assertEquals(1.76, Refraction.BOWDITCH_BEYOND_HORIZON.dipMinutes(ofMetres(1)), 0.005);
  }

  /** The rules 1.856 h(m)/angle' and 0.566 h(ft)/angle' in nautical miles: common practice. */
  @Test
  void verticalAngleToTheWaterlineAgreesWithTheRule() {
    assertEquals(
        1.856 * 40 / 24, DistanceOff.byVerticalAngle(ofMetres(40), 0.4).nauticalMiles(), 0.001);
    assertEquals(
        0.566 * 100 / 30, DistanceOff.byVerticalAngle(feet(100), 0.5).nauticalMiles(), 0.001);
  }

  /**
   * Source: the formula of Bowditch, table 15: D = √((tan A / 0.0002419)² + (H - h) / 0.7349) - tan
   * A / 0.0002419, angle less dip, feet and nautical miles; the table prints 8.9 for 1° and 1000
   * ft.
   */
  @Test
  void aTopBeyondTheHorizonAgreesWithThePrintedTable() {
    for (double angle = 0.1; angle < 3; angle += 0.1) {
      for (double above : new double[] {50, 200, 1000}) {
        double t = Math.tan(Math.toRadians(angle)) / 0.0002419;
        double printed = Math.sqrt(t * t + above / 0.7349) - t;
        double constantsRounded = 3e-4 * printed; // both are printed to four figures
        assertEquals(
            printed,
            DistanceOff.beyondHorizon(
                    feet(above), Distance.ZERO, angle, Refraction.BOWDITCH_BEYOND_HORIZON)
                .nauticalMiles(),
            constantsRounded);
      }
    }
    assertEquals(
        8.9,
        DistanceOff.beyondHorizon(
                feet(1000), Distance.ZERO, 1.0, Refraction.BOWDITCH_BEYOND_HORIZON)
            .nauticalMiles(),
        HALF_A_PRINTED_TENTH);
  }

  @Test
  void noAngleAboveTheHorizonIsTheGeographicRange() {
    Distance eye = ofMetres(0.9);
    Distance top = ofMetres(60);
    assertEquals(
        Refraction.ONE_SEVENTH.geographicRange(top, eye).metres(),
        DistanceOff.beyondHorizon(top, eye, 0.0, Refraction.ONE_SEVENTH).metres(),
        0.01);
  }

  @Test
  void theUncertaintyIsTheSlope() {
    Distance height = ofMetres(40);
    Distance at = DistanceOff.byVerticalAngle(height, 0.4);
    double minute = 1 / 60.0;
    double slope =
        (DistanceOff.byVerticalAngle(height, 0.4 - minute / 100).metres()
                - DistanceOff.byVerticalAngle(height, 0.4 + minute / 100).metres())
            * 50;
    assertEquals(
        slope, DistanceOff.uncertainty(at, height, 1.0, Distance.ZERO).metres(), 0.001 * slope);
    assertEquals(
        at.metres() / 40, DistanceOff.uncertainty(at, height, 0.0, ofMetres(1)).metres(), 1e-9);
    assertEquals(
        Math.hypot(slope, at.metres() / 40),
        DistanceOff.uncertainty(at, height, 1.0, ofMetres(1)).metres(),
        0.001 * slope);
    // Near a cliff the angle's slope is not that of a small angle: 30 m below a top of 40 m.
    Distance close = DistanceOff.byVerticalAngle(height, 53.130102);
    assertEquals(30.0, close.metres(), 1e-5);
    assertEquals(
        62.5 * Math.toRadians(1 / 60.0),
        DistanceOff.uncertainty(close, height, 1.0, Distance.ZERO).metres(),
        1e-5);
  }

  /**
   * Source: Allard's law as in IALA R0202; 20 miles become 5.7 NM in 2 NM and 1.8 in half a mile.
   */
  @Test
  void luminousRangeFollowsAllardsLaw() {
    Distance nominal = Distance.ofNauticalMiles(20);
    assertEquals(5.7, luminous(nominal, 2), HALF_A_PRINTED_TENTH);
    assertEquals(1.8, luminous(nominal, 0.5), HALF_A_PRINTED_TENTH);
    assertEquals(20.0, luminous(nominal, 10), 1e-9);
    for (double nominalMiles : new double[] {0.01, 0.1, 1, 5, 15, 30, 400, 1000}) {
      for (double visibility : new double[] {0.01, 0.2, 1, 7, 10, 27, 200}) {
        double d = luminous(Distance.ofNauticalMiles(nominalMiles), visibility);
        double illuminance = Math.log(0.05) * d / visibility - 2 * Math.log(d);
        double threshold = Math.log(0.05) * nominalMiles / 10 - 2 * Math.log(nominalMiles);
        assertEquals(1, illuminance / threshold, 1e-9);
      }
    }
  }

  private static double luminous(Distance nominal, double visibility) {
    return LightRange.luminousRange(nominal, Distance.ofNauticalMiles(visibility)).nauticalMiles();
  }

  @Test
  void theShorterRangeGoverns() {
    Distance eye = ofMetres(0.9);
    Distance tower = ofMetres(20);
    LightRange clear =
        LightRange.of(
            Distance.ofNauticalMiles(18),
            Distance.ofNauticalMiles(10),
            tower,
            eye,
            Refraction.ONE_SEVENTH);
    assertEquals(clear.geographic(), clear.range());
    LightRange haze =
        LightRange.of(
            Distance.ofNauticalMiles(18),
            Distance.ofNauticalMiles(2),
            tower,
            eye,
            Refraction.ONE_SEVENTH);
    assertEquals(haze.luminous(), haze.range());
    assertTrue(haze.range().metres() < clear.range().metres());
  }

  @Test
  void aFallenTideRaisesTheMark() {
    assertEquals(
        40.0,
        DistanceOff.heightAboveWater(ofMetres(37), ofMetres(5.2), ofMetres(2.2)).metres(),
        1e-12);
    assertEquals(
        36.9,
        DistanceOff.heightAboveWater(ofMetres(37), ofMetres(5.2), ofMetres(5.3)).metres(),
        1e-12);
  }

  @Test
  void badValuesAreRefusedByName() {
    assertEquals(
        "vertical angle must be in (0, 90) degrees, but was 0.0",
        assertThrows(
                IllegalArgumentException.class, () -> DistanceOff.byVerticalAngle(ofMetres(40), 0))
            .getMessage());
    assertEquals(
        "height of the eye must be a finite number of metres, at least 0, but was -1.0",
        assertThrows(IllegalArgumentException.class, () -> Refraction.NONE.horizon(ofMetres(-1)))
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> Refraction.ofCoefficient(Double.NaN));
  }
}
