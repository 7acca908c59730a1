package org.ferryglide.tide.teach;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalTime;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.Quantity;
import org.ferryglide.tide.height.ClockDifferences;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.stream.StreamHour;
import org.ferryglide.tide.teach.TideProblems.Water;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Published worked examples, line by line to their printed intermediate figures; each source stands
 * beside its example. Tolerances are half a printed digit unless said. Heights printed in feet are
 * worked in feet: the rules do not care.
 */
class PublishedTideProblemsTest {
  private static final double HALF_TENTH = 0.05;

  /**
   * Canadian Tide and Current Tables, table 5, worked form for Montague Harbour, 1 October 2003:
   * low water 03:27 2.2 ft, high water 11:41 11.4 ft, wanted 07:00. Printed: duration 8 h 14,
   * interval 3 h 33, range 9.2, correction 3.6, height 5.8; its table takes the duration to ten
   * minutes. Quoted at
   * http://www.sailnet.com/forums/general-discussion-sailing-related/73072-tidal-charts-tidal-graphs.html
   */
  @Test
  void heightByTheCosine() {
    Problem problem =
        TideProblems.byCosine(new Water(207, ofMetres(2.2)), new Water(701, ofMetres(11.4)), 420.0);
    assertEquals(9.2, problem.exact("Rise"), HALF_TENTH);
    assertEquals(213.0 / 494.0, problem.exact("Share of the interval"), 0.5 / 494.0);
    assertEquals(3.6, problem.exact("Rise") * problem.exact("Share of the range"), HALF_TENTH);
    assertEquals(5.8, problem.answer(), HALF_TENTH);
  }

  /**
   * Class notes, https://batswings.com/AP_HW_Ch_7.html, on an example of the US tables of 2004:
   * Boston 10.0 ft at 11:11, 0.5 ft at 17:10; Rainsford Island 0 and 2 minutes later, 0.95 times as
   * high: 9.5 ft at 11:11, 0.475 ft at 17:12; half way, 5.0 ft.
   */
  @Test
  void heightByTwelfths() {
    Problem problem =
        TideProblems.byTwelfths(
            new Water(671, ofMetres(9.5)), new Water(1032, ofMetres(0.475)), 671 + 361 / 2.0);
    assertEquals(6.0, problem.exact("Twelfths gone"), HALF_TENTH);
    assertEquals(5.0, problem.answer(), HALF_TENTH);
  }

  /**
   * https://nauticalive.com/corrections-for-secondary-port-2/: Barfleur, +51 at 15:00 and +44 at
   * 21:00, high water 18:46, prints +47 and 19:33.
   * http://corvidia.net/midshipman/secondary-port-tester: a training port, +35 at 00:00 and +23 at
   * 06:00, prints +29 for 03:00.
   */
  @ParameterizedTest
  @CsvSource({"15, 51, 21, 44, 1126, 47, 19:33", "0, 35, 6, 23, 180, 29, 03:29"})
  void timeAtASecondaryPort(
      int first, double atFirst, int second, double atSecond, double clock, double by, String at) {
    ClockDifferences differences =
        ClockDifferences.of(LocalTime.of(first, 0), atFirst).and(LocalTime.of(second, 0), atSecond);
    Problem problem = SecondaryPortProblems.time(clock, differences, 0.0);
    assertEquals(by, problem.exact("Difference"), 0.5);
    assertEquals(at, Quantity.CLOCK.text(problem.answer()));
  }

  /**
   * The same training port, heights: springs 4.2 +1.1, neaps 3.4 +0.8; high water 4.2 gives 5.3.
   */
  @Test
  void heightAtASecondaryPort() {
    Problem problem =
        SecondaryPortProblems.height(
            ofMetres(4.2), ofMetres(4.2), ofMetres(1.1), ofMetres(3.4), ofMetres(0.8));
    assertEquals(1.1, problem.exact("Difference"), HALF_TENTH);
    assertEquals(5.3, problem.answer(), HALF_TENTH);
  }

  /**
   * https://www.tomcunliffe.com/paying-the-rates/: 1.0 kn at neaps, 2.1 at springs, a range of 4.8
   * m, prints 1.6 kn; its table's mean ranges, Dover's of 3.2 and 6.0 m, are not in its text.
   */
  @Test
  void rateByTheRange() {
    List<StreamHour> rows =
        List.of(
            new StreamHour(0, TrueBearing.ofDegrees(90), Speed.ofKnots(2.1), Speed.ofKnots(1.0)),
            new StreamHour(1, TrueBearing.ofDegrees(90), Speed.ofKnots(2.1), Speed.ofKnots(1.0)));
    Problem problem =
        StreamProblems.rate(
            rows,
            new MeanRanges(ofMetres(6.0), ofMetres(3.2)),
            new StreamProblems.Day(600, ofMetres(6.0), ofMetres(4.8), 640),
            600);
    assertEquals(1.6 / 2.8, problem.exact("Neaps to springs"), 0.005);
    assertEquals(1.6, problem.answer(), HALF_TENTH);
  }
}
