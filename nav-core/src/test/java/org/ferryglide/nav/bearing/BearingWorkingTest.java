package org.ferryglide.nav.bearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.ferryglide.nav.note.Figure;
import org.ferryglide.nav.note.Working;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BearingWorkingTest {
  private static final BearingWorking WHOLE = BearingWorking.inWholeDegrees();

  @Test
  void trueToCompassReadsAsALearnerWouldWriteIt() {
    assertEquals(
        """
        True to compass
          True bearing      045°T
          Variation         4°W
          Magnetic bearing  049°M  variation is west: add it to true
          Deviation         3°E
          Compass bearing   046°C  deviation is east: take it from magnetic\
        """,
        WHOLE
            .trueToCompass(
                TrueBearing.ofDegrees(45), Variation.ofDegreesWest(4), Deviation.ofDegreesEast(3))
            .toString());
  }

  @Test
  void compassToTrueIsTheSameBackwards() {
    assertEquals(
        """
        Compass to true
          Compass bearing   046°C
          Deviation         3°E
          Magnetic bearing  049°M  deviation is east: add it to compass
          Variation         4°W
          True bearing      045°T  variation is west: take it from magnetic\
        """,
        WHOLE
            .compassToTrue(
                CompassBearing.ofDegrees(46),
                Deviation.ofDegreesEast(3),
                Variation.ofDegreesWest(4))
            .toString());
  }

  @Test
  void gridToMagneticGoesThroughTrue() {
    GridConvergence convergence = GridConvergence.ofDegreesEast(-2, "UTM 30N");
    assertEquals(
        """
        Grid UTM 30N to magnetic
          Grid bearing      091°G
          Convergence       2°W
          True bearing      089°T  convergence is west: take it from grid
          Variation         4°W
          Magnetic bearing  093°M  variation is west: add it to true\
        """,
        WHOLE
            .gridToMagnetic(
                GridBearing.ofDegrees(91, "UTM 30N"), convergence, Variation.ofDegreesWest(4))
            .toString());
    assertEquals(
        """
        Magnetic to grid UTM 30N
          Magnetic bearing  093°M
          Variation         4°W
          True bearing      089°T  variation is west: take it from magnetic
          Convergence       2°W
          Grid bearing      091°G  convergence is west: add it to true\
        """,
        WHOLE
            .magneticToGrid(MagneticBearing.ofDegrees(93), Variation.ofDegreesWest(4), convergence)
            .toString());
    assertThrows(
        IllegalArgumentException.class,
        () ->
            WHOLE.gridToMagnetic(
                GridBearing.ofDegrees(91, "UTM 31N"), convergence, Variation.ZERO));
  }

  @Test
  void writtenLinesAddUpAndTheExactResultStandsBelow() {
    Working working =
        WHOLE.trueToMagnetic(TrueBearing.ofDegrees(44.6), Variation.ofDegreesWest(4.6));
    assertEquals(
        """
        True to magnetic
          True bearing      045°T
          Variation         5°W
          Magnetic bearing  050°M  variation is west: add it to true
          without rounding on the way: 49.2 degrees\
        """,
        working.toString());
    assertEquals(44.6 + 4.6, working.result().exact());
    assertEquals(50.0, working.result().byHand());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "TENTH_OF_DEGREE; 049.3°M; 4.3°W",
        "MINUTE; 049°15'M; 4°15'W",
        "WHOLE_DEGREE; 049°M; 4°W"
      })
  void anglesAreWrittenAsFinelyAsAskedFor(HandRounding rounding, String bearing, String variation) {
    Working working =
        WHOLE
            .withRounding(rounding)
            .trueToMagnetic(TrueBearing.ofDegrees(45), Variation.ofDegreesWest(4.25));
    assertEquals(variation, working.steps().get(1).result().text());
    assertEquals(bearing, working.result().text());
  }

  @Test
  void crossingNorthStaysInTheCircle() {
    Figure result =
        WHOLE.trueToMagnetic(TrueBearing.ofDegrees(358), Variation.ofDegreesWest(4)).result();
    assertEquals("002°M", result.text());
    assertEquals("000°T", first(WHOLE.trueToMagnetic(TrueBearing.ofDegrees(359.6), zero())));
    assertEquals(
        "358°T",
        WHOLE
            .magneticToTrue(MagneticBearing.ofDegrees(2), Variation.ofDegreesWest(4))
            .result()
            .text());
  }

  private static Variation zero() {
    return Variation.ZERO;
  }

  private static String first(Working working) {
    return working.steps().get(0).result().text();
  }

  @Test
  void noVariationIsSaidAndHasNoLetter() {
    Working working = WHOLE.trueToMagnetic(TrueBearing.ofDegrees(45), zero());
    assertEquals("0°", working.steps().get(1).result().text());
    assertEquals("no variation: the same as true", working.steps().get(2).rule());
  }

  @Test
  void gridConversionsNameTheirGrid() {
    GridConvergence convergence = GridConvergence.ofDegreesEast(1.2, "UTM 30N");
    Working working = WHOLE.trueToGrid(TrueBearing.ofDegrees(91), convergence);
    assertEquals("True to grid UTM 30N", working.title());
    assertEquals("090°G", working.result().text());
    assertEquals(91.0 - 1.2, working.result().exact());
    assertEquals(
        "convergence is east: add it to grid",
        WHOLE.gridToTrue(GridBearing.ofDegrees(90, "UTM 30N"), convergence).steps().get(2).rule());
    assertThrows(
        IllegalArgumentException.class,
        () -> WHOLE.gridToTrue(GridBearing.ofDegrees(90, "UTM 31N"), convergence));
  }
}
