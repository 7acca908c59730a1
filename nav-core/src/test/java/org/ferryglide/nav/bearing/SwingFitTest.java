package org.ferryglide.nav.bearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.note.Note;
import org.junit.jupiter.api.Test;

class SwingFitTest {
  private static HeadingDeviation sight(double heading, double deviationEast) {
    return new HeadingDeviation(
        CompassBearing.ofDegrees(heading), Deviation.ofDegreesEast(deviationEast));
  }

  private static List<HeadingDeviation> eight(double... deviations) {
    List<HeadingDeviation> sights = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      sights.add(sight(i * 45.0, deviations[i]));
    }
    return sights;
  }

  private static List<String> codes(SwingFit fit) {
    return fit.notes().stream().map(Note::code).toList();
  }

  @Test
  void sightsOfKnownBearingsAndTransitsGiveTheDeviation() {
    HeadingDeviation along =
        HeadingDeviation.headingAlong(
            CompassBearing.ofDegrees(319), TrueBearing.ofDegrees(312), Variation.ofDegreesWest(4));
    assertEquals(Deviation.ofDegreesWest(3), along.deviation());
    assertEquals(CompassBearing.ofDegrees(319), along.heading());
    HeadingDeviation across =
        HeadingDeviation.whileHeading(CompassBearing.ofDegrees(90))
            .markShown(
                CompassBearing.ofDegrees(359),
                TrueBearing.ofDegrees(357),
                Variation.ofDegreesWest(4));
    assertEquals(Deviation.ofDegreesEast(2), across.deviation());
    assertEquals(CompassBearing.ofDegrees(90), across.heading());
  }

  /**
   * The harmonic sums over eight equal steps (A the mean, B a quarter of the sum of deviation times
   * sine, and so on), worked by hand for this test.
   */
  @Test
  void eightEqualStepsGiveTheSumsDoneByHand() {
    SwingFit fit = SwingFit.of(eight(2, 0, -3, -4, -2, 1, 3, 4));
    double half = Math.sqrt(0.5);
    assertEquals(1.0 / 8.0, fit.coefficients().a(), 1e-12);
    assertEquals((half * (0 - 4 - 1 - 4) - 3 - 3) / 4.0, fit.coefficients().b(), 1e-12);
    assertEquals((2 + 2 + half * (0 + 4 - 1 + 4)) / 4.0, fit.coefficients().c(), 1e-12);
    assertEquals((0 - -4 + 1 - 4) / 4.0, fit.coefficients().d(), 1e-12);
    assertEquals((2 - -3 + -2 - 3) / 4.0, fit.coefficients().e(), 1e-12);
    assertEquals(SwingVerdict.GOOD, fit.verdict());
    assertEquals(8, fit.sights().size());
  }

  /**
   * NGA, Handbook of Magnetic Compass Adjustment (2004), article 501: deviations of a typical
   * curve. Its rule of means over cardinal and intercardinal headings gives A 1.0, B 12.0, C 8.0, D
   * 5.0 and E 1.5 (the rule and its results from memory); least squares use the intercardinal
   * headings for B and C as well, which moves them by less than a tenth.
   */
  @Test
  void theHandbooksTypicalCurveHasTheHandbooksCoefficients() {
    SwingFit fit = SwingFit.of(eight(10.5, 20.0, 11.5, -1.2, -5.5, -8.0, -12.5, -6.8));
    double meansRatherThanLeastSquares = 0.1;
    assertEquals(1.0, fit.coefficients().a(), 1e-12);
    assertEquals(12.0, fit.coefficients().b(), meansRatherThanLeastSquares);
    assertEquals(8.0, fit.coefficients().c(), meansRatherThanLeastSquares);
    assertEquals(5.0, fit.coefficients().d(), 1e-12);
    assertEquals(1.5, fit.coefficients().e(), 1e-12);
    assertEquals(SwingVerdict.GOOD, fit.verdict());
    assertTrue(codes(fit).contains("swing.large"));
  }

  @Test
  void aMisreadSightIsPointedOut() {
    SwingFit fit = SwingFit.of(eight(2, 0, -3, -14, -2, 1, 3, 4));
    assertEquals(SwingVerdict.REPEAT, fit.verdict());
    assertTrue(codes(fit).contains("swing.outlier"));
    Note outlier =
        fit.notes().stream().filter(n -> n.code().equals("swing.outlier")).findFirst().get();
    assertEquals("135.0", outlier.data().get("headingDegrees"));
  }

  @Test
  void fiveSightsCannotBeJudged() {
    SwingFit fit =
        SwingFit.of(
            List.of(sight(0, 1), sight(72, 2), sight(144, 0), sight(216, -1), sight(288, 1)));
    assertEquals(SwingVerdict.NOT_JUDGED, fit.verdict());
    assertEquals(0.0, fit.residualDegrees().get(2), 1e-12);
    assertEquals(List.of("swing.not-judged", "swing.gap"), codes(fit));
  }

  @Test
  void findingsNameConstantErrorsAndLargeDeviations() {
    SwingFit fit = SwingFit.of(eight(13, 9, 3, 0, -3, 0, 3, 9));
    assertTrue(codes(fit).contains("swing.constant"));
    assertTrue(codes(fit).contains("swing.large"));
  }

  @Test
  void standardErrorsAreThoseOfEqualSteps() {
    SwingFit fit = SwingFit.of(eight(2, 0, -3, -4, -2, 1, 3, 4));
    double scatter = fit.scatterDegrees();
    assertEquals(scatter / Math.sqrt(8.0), fit.standardErrorDegrees().get(0), 1e-12);
    assertEquals(scatter / 2.0, fit.standardErrorDegrees().get(1), 1e-12);
  }

  @Test
  void headingsThatDoNotFixTheCoefficientsAreRefused() {
    assertEquals(
        "a swing needs at least 5 sights on headings all round, but had 4",
        String.valueOf(
            assertThrows(
                    IllegalArgumentException.class,
                    () -> SwingFit.of(eight(1, 1, 1, 1, 1, 1, 1, 1).subList(0, 4)))
                .getMessage()));
    List<HeadingDeviation> north =
        List.of(sight(0, 1), sight(5, 1), sight(10, 2), sight(15, 2), sight(20, 3), sight(25, 3));
    assertEquals(
        "a swing needs at least five different headings spread over the whole circle, but the 6"
            + " given do not fix the coefficients; their widest gap is 335 degrees",
        String.valueOf(
            assertThrows(IllegalArgumentException.class, () -> SwingFit.of(north)).getMessage()));
    List<HeadingDeviation> cardinals =
        List.of(sight(0, 1), sight(90, 1), sight(180, 2), sight(270, 2), sight(0, 3), sight(90, 3));
    assertThrows(IllegalArgumentException.class, () -> SwingFit.of(cardinals));
  }

  @Test
  void theTableOfAFitGivesItsDeviations() {
    SwingFit fit = SwingFit.of(eight(2, 0, -3, -4, -2, 1, 3, 4));
    assertEquals(fit.coefficients().degreesEast(33.0), fit.table().deviationDegreesEast(33.0));
  }
}
