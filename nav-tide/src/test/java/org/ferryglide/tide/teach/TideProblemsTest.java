package org.ferryglide.tide.teach;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.tide.height.ClockDifferences;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.stream.StreamHour;
import org.ferryglide.tide.teach.TideProblems.Water;
import org.junit.jupiter.api.Test;

class TideProblemsTest {
  private static final double ROUNDING = 1e-9;
  private static final Water LOW = new Water(360.0, ofMetres(1.0));
  private static final Water HIGH = new Water(720.0, ofMetres(7.0));

  @Test
  void twelfthsGoOneThreeSixNineElevenTwelve() {
    double[] metres = {1.0, 1.5, 2.5, 4.0, 5.5, 6.5, 7.0}; // common practice, no source
    for (int hour = 0; hour <= 6; hour++) {
      double at = 360.0 + 60.0 * hour;
      assertEquals(metres[hour], TideProblems.byTwelfths(LOW, HIGH, at).answer(), ROUNDING);
    }
  }

  @Test
  void theCosineAgreesWithTwelfthsAtBothWatersAndTheMiddle() {
    for (double at : new double[] {360.0, 540.0, 720.0}) {
      assertEquals(
          TideProblems.byTwelfths(LOW, HIGH, at).answer(),
          TideProblems.byCosine(LOW, HIGH, at).answer(),
          ROUNDING);
    }
    // an hour after low water: 1 + 6 (1 - cos 30°) / 2
    assertEquals(1.4019237886, TideProblems.byCosine(LOW, HIGH, 420.0).answer(), ROUNDING);
  }

  @Test
  void aSecondaryPortTakesItsDifferenceByTheStandardPortsOwnClock() {
    ClockDifferences differences =
        ClockDifferences.of(LocalTime.of(0, 0), -10).and(LocalTime.of(6, 0), -40);
    Problem problem = SecondaryPortProblems.time(180.0, differences, 60.0);
    assertEquals(180.0 - 25.0 + 60.0, problem.answer(), ROUNDING);
    assertEquals(-25.0, problem.exact("Difference"), ROUNDING);
  }

  @Test
  void aBankThatDriesTakesFromTheTideASoundingAddsToIt() {
    assertEquals(
        1.6,
        TideProblems.depthOver(ofMetres(3.4), ofMetres(-1.8), ofMetres(2.6)).answer(),
        ROUNDING);
    assertEquals(
        5.2,
        TideProblems.depthOver(ofMetres(3.4), ofMetres(1.8), ofMetres(2.6)).answer(),
        ROUNDING);
    assertEquals(
        "drying height added",
        TideProblems.depthOver(ofMetres(3.4), ofMetres(-1.8), ofMetres(2.6))
            .mark(5.2)
            .explanations()
            .get(0)
            .slips()
            .get(0)
            .text());
  }

  @Test
  void theRateLiesBetweenNeapsAndSpringsByTheRange() {
    List<StreamHour> rows = new ArrayList<>();
    for (int hour = -2; hour <= 2; hour++) {
      rows.add(
          new StreamHour(
              hour,
              TrueBearing.ofDegrees(60),
              Speed.ofKnots(2.0 + hour / 2.0),
              Speed.ofKnots(1.0 + hour / 4.0)));
    }
    MeanRanges ranges = new MeanRanges(ofMetres(5.0), ofMetres(2.0));
    Problem problem =
        StreamProblems.rate(
            rows,
            ranges,
            new StreamProblems.Day(700.0, ofMetres(5.5), ofMetres(3.5), 790.0),
            765.0);
    assertEquals(1.0, problem.exact("Table hour"), ROUNDING);
    assertEquals(0.5, problem.exact("Neaps to springs"), ROUNDING);
    assertEquals((2.5 + 1.25) / 2.0, problem.answer(), ROUNDING);
    assertEquals(
        "before and after high water swapped",
        problem.mark((1.5 + 0.75) / 2.0).explanations().get(0).slips().get(0).text());
  }

  @Test
  void refusesTimesOutsideTheWatersAndHoursOutsideTheTable() {
    assertThrows(IllegalArgumentException.class, () -> TideProblems.byTwelfths(LOW, HIGH, 359.0));
    assertThrows(IllegalArgumentException.class, () -> TideProblems.byCosine(HIGH, LOW, 540.0));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            StreamProblems.rate(
                List.of(StreamHour.slack(0), StreamHour.slack(1)),
                new MeanRanges(ofMetres(5), ofMetres(2)),
                new StreamProblems.Day(700, ofMetres(5), ofMetres(3), 720),
                900));
    assertThrows(IllegalArgumentException.class, () -> new Water(Double.NaN, ofMetres(1.0)));
  }
}
