package org.ferryglide.nav.reckon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.junit.jupiter.api.Test;

class ErrorSimulationTest {
  private static final int SAMPLES = 20_000;

  /** Three standard deviations of a sample variance. */
  private static final double SAMPLING = 3 * Math.sqrt(2.0 / SAMPLES);

  private static final List<SteadyRun> PASSAGE =
      List.of(
          new SteadyRun(
              Duration.ofMinutes(100),
              TrueBearing.ofDegrees(72),
              Speed.ofKnots(3.2),
              Velocity.ofSetAndRate(TrueBearing.ofDegrees(160), Speed.ofKnots(1.1))),
          new SteadyRun(
              Duration.ofMinutes(50),
              TrueBearing.ofDegrees(30),
              Speed.ofKnots(3),
              Velocity.ofSetAndRate(TrueBearing.ofDegrees(190), Speed.ofKnots(1.6))));

  @Test
  void smallErrorsAgreeWithTheLinearCovariance() {
    ErrorModel small =
        ErrorModel.usual()
            .with(ErrorSource.STREAM_SET, Spread.of(3, 2))
            .with(ErrorSource.OTHER_CURRENT, Spread.of(0.05, 0.03))
            .withPlotting(50_000, 200, 0.5);
    assertAgree(small, SAMPLING + 0.01);
  }

  /** Linearisation is stated to stay below 6 % in variance with 20 degrees of error of the set. */
  @Test
  void largeErrorsAgreeWithinTheLinearisation() {
    assertAgree(
        ErrorModel.usual().with(ErrorSource.STREAM_SET, Spread.constant(20)), SAMPLING + 0.06);
  }

  private static void assertAgree(ErrorModel model, double share) {
    Covariance linear = ErrorBudget.of(PASSAGE, model).covariance();
    ErrorSimulation simulation = ErrorSimulation.of(PASSAGE, model, SAMPLES, 42);
    ErrorEllipse expected = linear.ellipse(0.95);
    ErrorEllipse found = simulation.covariance().ellipse(0.95);
    assertEquals(
        1, square(found.semiMajorAxis().metres() / expected.semiMajorAxis().metres()), share);
    assertEquals(
        1, square(found.semiMinorAxis().metres() / expected.semiMinorAxis().metres()), share);
    double binomial = 3 * Math.sqrt(0.95 * 0.05 / SAMPLES);
    assertEquals(0.95, simulation.shareInside(expected), binomial + 0.005);
    assertTrue(
        simulation.bias().metres() < 0.25 * linear.rootMeanSquare().metres(),
        simulation.toString());
  }

  private static double square(double x) {
    return x * x;
  }

  @Test
  void theSameSeedGivesTheSameAnswer() {
    ErrorSimulation a = ErrorSimulation.of(PASSAGE, ErrorModel.usual(), 100, 7);
    ErrorSimulation b = ErrorSimulation.of(PASSAGE, ErrorModel.usual(), 100, 7);
    ErrorSimulation c = ErrorSimulation.of(PASSAGE, ErrorModel.usual(), 100, 8);
    assertEquals(a.eastMetres(99), b.eastMetres(99));
    assertEquals(a.northMetres(0), b.northMetres(0));
    assertTrue(a.eastMetres(0) != c.eastMetres(0));
    assertEquals(100, a.samples());
  }

  @Test
  void withoutErrorsEveryPassageEndsAtTheMark() {
    ErrorSimulation exact = ErrorSimulation.of(PASSAGE, ErrorModel.none(), 10, 1);
    assertEquals(0, exact.covariance().rootMeanSquare().metres(), 1e-9);
    assertEquals(0, exact.bias().metres(), 1e-9);
  }

  @Test
  void oneSampleHasNoSpread() {
    assertThrows(
        IllegalArgumentException.class,
        () -> ErrorSimulation.of(PASSAGE, ErrorModel.usual(), 1, 1));
  }

  /** A speed error alone carries along one line: half its ends lie within the even ellipse. */
  @Test
  void anEllipseWithoutWidthHoldsItsShare() {
    ErrorModel speed = ErrorModel.none().with(ErrorSource.SPEED, Spread.constant(0.1));
    SteadyRun run =
        new SteadyRun(
            Duration.ofHours(2),
            TrueBearing.ofDegrees(37),
            Speed.ofKnots(3),
            Velocity.ofSetAndRate(TrueBearing.ofDegrees(0), Speed.ofKnots(0)));
    ErrorSimulation simulation = ErrorSimulation.of(List.of(run), speed, 20_000, 3L);
    ErrorEllipse ellipse = ErrorBudget.of(List.of(run), speed).covariance().ellipse(0.95);
    // The ellipse is cut for two dimensions: on a line its 2.4477 sigmas hold 98.56 %.
    assertEquals(0.9856, simulation.shareInside(ellipse), 0.003);
  }
}
