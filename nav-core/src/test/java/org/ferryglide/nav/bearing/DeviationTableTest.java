package org.ferryglide.nav.bearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ferryglide.nav.basics.Angles;
import org.junit.jupiter.api.Test;

class DeviationTableTest {
  /** Values of a spline at its own knots: one rounding of sums of a few degrees. */
  private static final double KNOT_DEGREES = 1e-12;

  private static HeadingDeviation entry(double heading, double deviationEast) {
    return new HeadingDeviation(
        CompassBearing.ofDegrees(heading), Deviation.ofDegreesEast(deviationEast));
  }

  private static DeviationTable eightHeadings() {
    return DeviationTable.through(
        List.of(
            entry(0, 2.0),
            entry(45, 0.5),
            entry(90, -3.0),
            entry(135, -4.0),
            entry(180, -2.0),
            entry(225, 1.0),
            entry(270, 3.0),
            entry(315, 3.5)));
  }

  @Test
  void theCurvePassesThroughEveryLineOfTheTable() {
    DeviationTable table = eightHeadings();
    assertEquals(2.0, table.deviationDegreesEast(0.0), KNOT_DEGREES);
    assertEquals(-4.0, table.deviationDegreesEast(135.0), KNOT_DEGREES);
    assertEquals(3.5, table.deviationDegreesEast(315.0), KNOT_DEGREES);
    assertEquals(2.0, table.deviationDegreesEast(-360.0), KNOT_DEGREES);
    assertTrue(Double.isNaN(table.deviationDegreesEast(Double.NaN)));
    assertTrue(Double.isNaN(table.compassHeadingDegrees(Double.NaN)));
  }

  @Test
  void theOrderOfTheLinesDoesNotMatter() {
    List<HeadingDeviation> lines =
        Arrays.asList(entry(270, 3.0), entry(0, 2.0), entry(180, -2.0), entry(90, -3.0));
    List<HeadingDeviation> others =
        Arrays.asList(entry(0, 2.0), entry(90, -3.0), entry(180, -2.0), entry(270, 3.0));
    assertEquals(
        DeviationTable.through(lines).deviationDegreesEast(33.0),
        DeviationTable.through(others).deviationDegreesEast(33.0));
  }

  @Test
  void aConstantDeviationIsConstantBetweenTheLines() {
    List<HeadingDeviation> lines = new ArrayList<>();
    for (int heading = 10; heading < 360; heading += 50) {
      lines.add(entry(heading, -2.5));
    }
    DeviationTable table = DeviationTable.through(lines);
    for (double heading = 0.0; heading < 360.0; heading += 7.3) {
      assertEquals(-2.5, table.deviationDegreesEast(heading), KNOT_DEGREES);
    }
    assertEquals(0.0, table.steepestFall(), KNOT_DEGREES);
    assertEquals(52.5, table.compassHeadingDegrees(50.0), KNOT_DEGREES);
  }

  /** A sine sampled every 15°: the cubic spline errs by (5/384) h⁴ max|f''''| or so. */
  @Test
  void aSmoothCurveIsFollowedToAHundredthOfADegree() {
    List<HeadingDeviation> lines = new ArrayList<>();
    DeviationCoefficients truth = new DeviationCoefficients(0.5, -4.0, 3.0, 1.0, -0.5);
    for (int heading = 0; heading < 360; heading += 15) {
      lines.add(entry(heading, truth.degreesEast(heading)));
    }
    DeviationTable table = DeviationTable.through(lines);
    double step = Math.toRadians(15.0);
    double bound = 5.0 / 384.0 * Math.pow(step, 4) * (Math.hypot(4, 3) + 16 * Math.hypot(1, 0.5));
    assertTrue(bound < 0.005);
    for (double heading = 0.0; heading < 360.0; heading += 0.5) {
      assertEquals(truth.degreesEast(heading), table.deviationDegreesEast(heading), bound);
    }
  }

  @Test
  void aBearingTakesTheDeviationOfTheHeading() {
    DeviationTable table = eightHeadings();
    assertEquals(
        MagneticBearing.ofDegrees(197.0),
        table.deviationOn(CompassBearing.ofDegrees(90)).toMagnetic(CompassBearing.ofDegrees(200)));
  }

  @Test
  void magneticHeadingsOfACardBecomeCompassHeadings() {
    HeadingDeviation line =
        HeadingDeviation.onMagneticHeading(
            MagneticBearing.ofDegrees(2), Deviation.ofDegreesEast(5));
    assertEquals(CompassBearing.ofDegrees(357), line.heading());
    assertEquals(HeadingDeviation.parse("045", "1°30'W"), entry(45, -1.5));
  }

  private static String refusal(List<HeadingDeviation> lines) {
    return String.valueOf(
        assertThrows(IllegalArgumentException.class, () -> DeviationTable.through(lines))
            .getMessage());
  }

  @Test
  void tablesThatCannotBeTrustedAreRefused() {
    assertEquals(
        "a deviation table needs at least 4 headings, but had 3",
        refusal(List.of(entry(0, 0), entry(90, 0), entry(180, 0))));
    assertEquals(
        "heading 90.0°C must not occur twice in a deviation table",
        refusal(List.of(entry(0, 0), entry(90, 0), entry(90, 1), entry(180, 0), entry(270, 0))));
    assertEquals(
        "headings of a deviation table must leave no gap over 110 degrees, but after 180.0°C it"
            + " was 120.0",
        refusal(List.of(entry(0, 0), entry(90, 0), entry(180, 0), entry(300, 0))));
    assertEquals(
        "headings of a deviation table must leave no gap over 110 degrees, but after 250.0°C it"
            + " was 120.0",
        refusal(List.of(entry(10, 0), entry(90, 0), entry(180, 0), entry(250, 0))));
  }

  @Test
  void aDeviationThatFallsFasterThanTheHeadingTurnsIsRefused() {
    assertEquals(
        "deviation must fall by less than 0.999 degrees per degree of heading, or one magnetic"
            + " heading would have several compass headings, but near 180° by compass it falls by"
            + " 1.05",
        String.valueOf(
            assertThrows(
                    IllegalArgumentException.class,
                    () -> DeviationTable.of(new DeviationCoefficients(0, 60, 0, 0, 0)))
                .getMessage()));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            DeviationTable.through(
                List.of(
                    entry(0, 0),
                    entry(40, 30),
                    entry(70, -30),
                    entry(150, 0),
                    entry(240, 0),
                    entry(300, 0))));
    // 55° either way falls by 0.96 a degree: allowed, and still solved
    DeviationTable steep = DeviationTable.of(new DeviationCoefficients(0, 55, 0, 0, 0));
    assertEquals(0.964, steep.steepestFall(), 0.005);
    for (double magnetic = 0.0; magnetic < 360.0; magnetic += 0.37) {
      double compass = steep.compassHeadingDegrees(magnetic);
      assertEquals(0.0, Angles.turn(magnetic, compass + steep.deviationDegreesEast(compass)), 1e-9);
    }
  }

  @Test
  void theCardIsReadyForTheDeck() {
    assertEquals(
        """
        Deck compass, stove aft
        To steer                     Reading the compass
        Magnetic  Deviat.  Compass   Compass   Deviat.  Magnetic
        000°M     2°E      358°C     000°C     2°E      002°M
        090°M     3°W      093°C     090°C     3°W      087°M
        180°M     2°W      182°C     180°C     2°W      178°M
        270°M     3°E      267°C     270°C     3°E      273°M
        Good only for this compass with everything stowed as it was that day.\
        """,
        DeviationCard.of(eightHeadings()).withTitle("Deck compass, stove aft").withStep(90).text());
    assertTrue(
        DeviationCard.of(eightHeadings())
            .withRounding(HandRounding.TENTH_OF_DEGREE)
            .text()
            .contains("135.0°C   4.0°W    131.0°M"));
  }

  @Test
  void theTableSaysWhatItIs() {
    assertEquals(
        "DeviationTable[000° 2.0°E, 045° 0.5°E, 090° 3.0°W, 135° 4.0°W, 180° 2.0°W, 225° 1.0°E,"
            + " 270° 3.0°E, 315° 3.5°E]",
        eightHeadings().toString());
  }

  @Test
  void theWorkingLooksTheDeviationUp() {
    DeviationTable table = eightHeadings();
    assertEquals(
        """
        Compass to true
          Compass bearing   090°C
          Deviation         3°W    table, for that heading
          Magnetic bearing  087°M  deviation is west: take it from compass
          Variation         4°W
          True bearing      083°T  variation is west: take it from magnetic\
        """,
        BearingWorking.inWholeDegrees()
            .compassToTrue(CompassBearing.ofDegrees(90), table, Variation.ofDegreesWest(4))
            .toString());
    assertEquals(
        90.0,
        BearingWorking.inWholeDegrees()
            .trueToCompass(TrueBearing.ofDegrees(83), Variation.ofDegreesWest(4), table)
            .result()
            .exact(),
        1e-9);
  }

  /** Once refused unless all four deviations were equal. */
  @Test
  void fourCardinalMagneticHeadingsMakeATable() {
    List<HeadingDeviation> lines = new ArrayList<>();
    double[] deviations = {6.0, -8.0, -4.0, 9.0};
    for (int i = 0; i < 4; i++) {
      lines.add(
          HeadingDeviation.onMagneticHeading(
              MagneticBearing.ofDegrees(90 * i), Deviation.ofDegreesEast(deviations[i])));
    }
    DeviationTable table = DeviationTable.through(lines);
    for (int i = 0; i < 4; i++) {
      assertEquals(
          deviations[i], table.deviationOn(MagneticBearing.ofDegrees(90 * i)).degreesEast(), 1e-9);
    }
  }
}
