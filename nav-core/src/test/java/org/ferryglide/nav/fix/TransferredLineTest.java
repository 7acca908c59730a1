package org.ferryglide.nav.fix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.DeadReckoning;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.LogEntry;
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
}
