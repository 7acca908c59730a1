package org.ferryglide.nav.fix;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.plane.LocalPlane;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.DeadReckoning;
import org.ferryglide.nav.reckon.ErrorBudget;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.LogEntry;
import org.ferryglide.nav.reckon.SteadyRun;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

class TransferredLineTest {
  private static final double ONE_MILLIMETRE = 0.001;
  private static final Position START = Position.ofDegrees(56.3, -6.2);
  private static final Instant NINE = Instant.parse("2026-06-01T09:00:00Z");

  private static double metres(Position a, Position b) {
    return GeodesicLeg.between(a, b).length().metres();
  }

  private static TrueBearing course(double degrees) {
    return TrueBearing.ofDegrees(degrees);
  }

  @Test
  void aRunningFixOverAStreamReturnsTheTruePlace() {
    Velocity stream = Velocity.ofSetAndRate(course(160), Speed.ofKnots(1.1));
    Instant second = NINE.plusSeconds(2400);
    DeadReckoning reckoning =
        DeadReckoning.of(
            START,
            List.of(LogEntry.of(NINE, course(72), Speed.ofKnots(3.2))),
            second,
            StreamField.steady(stream));
    Position truth = reckoning.estimated().orElseThrow();
    Position mark = GeodesicLeg.from(START, course(120), Distance.ofNauticalMiles(2)).end();
    Instant first = NINE.plusSeconds(300);
    Position then = reckoning.at(first).estimated().orElseThrow();
    BearingLine before =
        BearingLine.of("mark", mark, GeodesicLeg.between(then, mark).initialCourse(), 3);
    BearingLine after =
        BearingLine.of("mark", mark, GeodesicLeg.between(truth, mark).initialCourse(), 3);
    TransferredLine moved =
        TransferredLine.carried(before, first, reckoning, ErrorModel.usual()).orElseThrow();
    Fix fix = FixSolver.standard().solve(List.of(moved, after)).orElseThrow();
    assertEquals(0, metres(truth, fix.position()), ONE_MILLIMETRE);
    TransferredLine exactRun =
        TransferredLine.carried(before, first, reckoning, ErrorModel.none()).orElseThrow();
    Fix sharper = FixSolver.standard().solve(List.of(exactRun, after)).orElseThrow();
    assertTrue(
        sharper.covariance().rootMeanSquare().metres()
            < fix.covariance().rootMeanSquare().metres());
    assertEquals("mark transferred", moved.name());
  }

  private static List<PositionLine> carriedAlongOneRun(Covariance run, Random random) {
    List<PositionLine> lines = new ArrayList<>();
    Position then = RhumbLeg.from(START, course(250), Distance.ofNauticalMiles(6)).end();
    // What the run was off by is the same for every line carried along it.
    double east = Math.sqrt(run.eastVariance()) * random.nextGaussian();
    double north = Math.sqrt(run.northVariance()) * random.nextGaussian();
    Position was =
        LocalPlane.fromPlane(then, -east, -north); // so that the run reckoned leads beside START
    for (int i = 0; i < 5; i++) {
      Position mark =
          GeodesicLeg.from(then, course(20 + 70 * i), Distance.ofNauticalMiles(3)).end();
      lines.add(
          TransferredLine.between(
              BearingLine.of(
                  "m",
                  mark,
                  GeodesicLeg.between(was, mark).initialCourse().turnedBy(random.nextGaussian()),
                  1),
              then,
              START,
              run));
    }
    return lines;
  }

  @Test
  void linesCarriedAlongOneRunAreNoBetterThanTheRun() {
    Covariance run = Covariance.ofCircle(Distance.ofMetres(300));
    Fix fix = FixSolver.standard().solve(carriedAlongOneRun(run, new Random(2))).orElseThrow();
    assertTrue(fix.covariance().rootMeanSquare().metres() > 300 * Math.sqrt(2));
    assertTrue(fix.covariance().rootMeanSquare().metres() < 300 * Math.sqrt(2) * 1.1);
  }

  /** Simulated: the true place is where the lines were, the run's own error added. */
  @Test
  void theEllipseOfARunningFixHoldsNinetyFiveOfAHundred() {
    Covariance run = Covariance.ofCircle(Distance.ofMetres(300));
    Random random = new Random(3);
    int draws = 2000;
    int held = 0;
    int honest = 0;
    for (int i = 0; i < draws; i++) {
      Fix fix = FixSolver.standard().solve(carriedAlongOneRun(run, random)).orElseThrow();
      double[] off = LocalPlane.toPlane(START, fix.position());
      held += fix.covariance().squaredStatisticalDistance(off[0], off[1]) <= 5.991 ? 1 : 0;
      honest += fix.agreement() > 0.05 ? 1 : 0;
    }
    double threeSigma = 3 * Math.sqrt(0.95 * 0.05 / draws);
    assertEquals(0.95, held / (double) draws, threeSigma);
    assertEquals(0.95, honest / (double) draws, threeSigma);
  }

  /** Two lines of one log share what is left of it after the later one. */
  @Test
  void linesOfOneLogShareTheRunTheyShare() {
    List<SteadyRun> runs =
        List.of(
            new SteadyRun(
                Duration.ofHours(1),
                course(72),
                Speed.ofKnots(3.2),
                Velocity.ofSetAndRate(course(160), Speed.ofKnots(1.1))),
            new SteadyRun(
                Duration.ofHours(1),
                course(20),
                Speed.ofKnots(3.2),
                Velocity.ofSetAndRate(course(190), Speed.ofKnots(0.7))));
    ErrorBudget whole = ErrorBudget.of(runs, ErrorModel.usual());
    ErrorBudget part = ErrorBudget.of(runs.subList(1, 2), ErrorModel.usual());
    double[] shared = new double[4];
    assertTrue(whole.sharedWith(part, shared, 0));
    assertFalse(part.sharedWith(whole, new double[4], 0));
    double[] later = {-1, -1, -1, -1, -1, -1};
    assertTrue(whole.sharedWith(part, later, 1));
    assertArrayEquals(new double[] {-1, shared[0], shared[1], shared[2], shared[3], -1}, later);
    ErrorBudget head = ErrorBudget.of(runs.subList(0, 1), ErrorModel.usual());
    // cov(whole, part) + cov(part, whole) = cov(whole) + cov(part) - cov(head)
    assertEquals(
        whole.covariance().eastVariance()
            + part.covariance().eastVariance()
            - head.covariance().eastVariance(),
        2 * shared[0],
        1e-6 * whole.covariance().eastVariance());
    assertEquals(
        whole.covariance().northVariance()
            + part.covariance().northVariance()
            - head.covariance().northVariance(),
        2 * shared[3],
        1e-6 * whole.covariance().northVariance());
  }
}
