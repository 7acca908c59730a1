package org.ferryglide.nav.reckon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.plane.LocalPlane;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DeadReckoningTest {
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
  void stillWaterIsARhumbLineForEachEntry() {
    List<LogEntry> log =
        List.of(
            LogEntry.of(NINE, course(72), Speed.ofKnots(3.2)),
            LogEntry.of(NINE.plusSeconds(5400), course(350), Speed.ofKnots(3)).withLeeway(-5),
            LogEntry.drifting(NINE.plusSeconds(9000)));
    DeadReckoning reckoning =
        DeadReckoning.of(START, log, NINE.plusSeconds(10800), StreamField.slack());
    Position corner = RhumbLeg.from(START, course(72), Distance.ofNauticalMiles(4.8)).end();
    Position logged = RhumbLeg.from(corner, course(350), Distance.ofNauticalMiles(3)).end();
    Position driven = RhumbLeg.from(corner, course(345), Distance.ofNauticalMiles(3)).end();
    assertEquals(0, metres(corner, reckoning.track().get(1).deadReckoning()), ONE_MILLIMETRE);
    assertEquals(0, metres(logged, reckoning.deadReckoning()), ONE_MILLIMETRE);
    assertEquals(0, metres(driven, reckoning.estimated().orElseThrow()), ONE_MILLIMETRE);
    assertEquals(4, reckoning.track().size());
    assertEquals(3, reckoning.runs().size());
    assertEquals(List.of(), reckoning.notes());
  }

  /**
   * Sources: E. G. Draper, Lectures in Navigation (1918), Project Gutenberg 27642: four hours at 8
   * kn against 2 kn make 24 miles; US War Department, TM 1-900 (1942): heading 315 at 150 with a
   * wind of 30 toward 225 makes 304 at 153. The third is geometry.
   */
  @ParameterizedTest
  @CsvSource({
    "240,191.25,8,11.25,2,191.25,24",
    "1,315,150,225,30,304,2.55",
    "45,000,4,180,1,000,2.25"
  })
  void currentTrianglesAgree(
      int minutes,
      double heading,
      double speed,
      double set,
      double rate,
      double track,
      double miles) {
    Velocity stream = Velocity.ofSetAndRate(course(set), Speed.ofKnots(rate));
    DeadReckoning reckoning =
        DeadReckoning.of(
            START,
            List.of(LogEntry.of(NINE, course(heading), Speed.ofKnots(speed))),
            NINE.plus(Duration.ofMinutes(minutes)),
            StreamField.steady(stream));
    RhumbLeg made = RhumbLeg.between(START, reckoning.estimated().orElseThrow());
    double halfADegree = 0.5;
    double plottedTenth = 0.1;
    assertEquals(0, course(track).turnDegreesTo(made.course()), halfADegree);
    assertEquals(miles, made.length().nauticalMiles(), plottedTenth);
  }

  @Test
  void aSteadyStreamIsOneStraightRun() {
    Velocity stream = Velocity.ofSetAndRate(course(160), Speed.ofKnots(1.1));
    DeadReckoning reckoning =
        DeadReckoning.of(
            START,
            List.of(LogEntry.of(NINE, course(72), Speed.ofKnots(3.2))),
            NINE.plusSeconds(7200),
            StreamField.steady(stream));
    assertEquals(1, reckoning.runs().size());
    Velocity over = reckoning.runs().get(0).overGround();
    Position expected =
        RhumbLeg.from(START, over.set(), Distance.ofMetres(over.rate().metresPerSecond() * 7200))
            .end();
    assertEquals(0, metres(expected, reckoning.estimated().orElseThrow()), ONE_MILLIMETRE);
  }

  /** A stream that grows with the way north: east = a v² t² / 2, the midpoint rule being exact. */
  @Test
  void aStreamThatChangesWithPlaceIsFollowed() {
    double perSecond = 1e-4;
    double v = 1.8;
    double metresPerDegree =
        Math.toRadians(Ellipsoid.WGS84.meridianRadiusMetres(START.latitudeDegrees()));
    StreamField shear =
        (lat, lon, seconds, out, offset) -> {
          out[offset] = perSecond * (lat - START.latitudeDegrees()) * metresPerDegree;
          out[offset + 1] = 0;
          return true;
        };
    DeadReckoning reckoning =
        DeadReckoning.of(
            START,
            List.of(LogEntry.of(NINE, course(0), Speed.ofMetresPerSecond(v))),
            NINE.plusSeconds(3600),
            shear);
    double[] end = LocalPlane.toPlane(START, reckoning.estimated().orElseThrow());
    double north = v * 3600;
    double curvatureOfTheEarth = 5.0;
    assertEquals(perSecond * v * 3600 * 3600 / 2, end[0], curvatureOfTheEarth);
    assertEquals(north, end[1], curvatureOfTheEarth);
  }

  /** A rate that grows evenly with time is exact; its mean counts. */
  @Test
  void aStreamThatChangesEvenlyWithTimeIsExact() {
    double start = NINE.getEpochSecond();
    StreamField rising =
        (lat, lon, seconds, out, offset) -> {
          out[offset] = 0;
          out[offset + 1] = (seconds - start) / 3600;
          return true;
        };
    DeadReckoning reckoning =
        DeadReckoning.of(START, List.of(LogEntry.drifting(NINE)), NINE.plusSeconds(3600), rising);
    Position expected = RhumbLeg.from(START, course(0), Distance.ofMetres(1800)).end();
    assertEquals(0, metres(expected, reckoning.estimated().orElseThrow()), ONE_MILLIMETRE);
  }

  @Test
  void aStreamThatIsNotKnownIsNotSlack() {
    double ten = NINE.getEpochSecond() + 3600;
    StreamField untilTen =
        new StreamField() {
          @Override
          public boolean sample(double lat, double lon, double seconds, double[] out, int offset) {
            out[offset] = 0.3;
            out[offset + 1] = 0;
            return seconds < ten;
          }

          @Override
          public double nextBreakAfter(double seconds) {
            return seconds < ten ? ten : Double.POSITIVE_INFINITY;
          }
        };
    DeadReckoning reckoning =
        DeadReckoning.of(
            START,
            List.of(LogEntry.of(NINE, course(90), Speed.ofKnots(3))),
            NINE.plusSeconds(7200),
            untilTen);
    assertEquals(Optional.empty(), reckoning.estimated());
    assertEquals(6, metres(START, reckoning.deadReckoning()) / 1852, 0.001);
    assertTrue(reckoning.at(NINE.plusSeconds(1800)).estimated().isPresent());
    assertEquals("reckoning.no-stream", reckoning.notes().get(0).code());
    assertEquals("2026-06-01T10:01:00Z", reckoning.notes().get(0).data().get("from"));
    assertEquals(
        Optional.empty(),
        reckoning.estimatedPosition(EstimatedPosition.exactly(START), ErrorModel.usual()));
  }

  @Test
  void theTrackCanBePlottedAtEvenTimes() {
    DeadReckoning reckoning =
        DeadReckoning.of(
            START,
            List.of(LogEntry.of(NINE, course(90), Speed.ofKnots(3))),
            NINE.plusSeconds(3000),
            StreamField.slack());
    List<ReckonedPoint> points = reckoning.trackEvery(Duration.ofMinutes(15));
    assertEquals(5, points.size());
    assertEquals(NINE.plusSeconds(900), points.get(1).time());
    assertEquals(0.75 * 1852, metres(START, points.get(1).deadReckoning()), 0.01);
    assertEquals(NINE.plusSeconds(3000), points.get(4).time());
    ReckonedPoint between = reckoning.at(NINE.plusSeconds(90).plusMillis(500));
    assertEquals(90.5 * 3 * 1852 / 3600, metres(START, between.estimated().orElseThrow()), 0.001);
  }

  /** The estimated position carries the budget of the runs, and the start's own uncertainty. */
  @Test
  void theEstimatedPositionIsAsUncertainAsItsBudget() {
    DeadReckoning reckoning =
        DeadReckoning.of(
            START,
            List.of(LogEntry.of(NINE, course(72), Speed.ofKnots(3.2))),
            NINE.plusSeconds(5400),
            StreamField.steady(Velocity.ofSetAndRate(course(160), Speed.ofKnots(1.1))));
    EstimatedPosition from = EstimatedPosition.of(START, Distance.ofMetres(30));
    EstimatedPosition estimated =
        reckoning.estimatedPosition(from, ErrorModel.usual()).orElseThrow();
    assertEquals(reckoning.estimated().orElseThrow(), estimated.position());
    Covariance budget =
        ErrorBudget.of(reckoning.runs(), ErrorModel.usual()).covariance().plus(from.covariance());
    assertEquals(budget.eastVariance(), estimated.covariance().eastVariance(), 1e-6);
    assertEquals(budget.northVariance(), estimated.covariance().northVariance(), 1e-6);
    assertEquals(
        from.covariance(),
        reckoning.estimatedPosition(from, ErrorModel.none()).orElseThrow().covariance());
  }

  @Test
  void compassHeadingsAreTurnedByDeviationAndVariation() {
    LogEntry entry =
        LogEntry.ofCompass(
            NINE,
            CompassBearing.ofDegrees(75),
            Deviation.ofDegreesEast(2),
            Variation.ofDegreesWest(5),
            Speed.ofKnots(3));
    assertEquals(72, entry.heading().degrees(), 1e-12);
    assertEquals(66, entry.withLeeway(-6).waterTrack().degrees(), 1e-12);
  }

  @Test
  void badLogsAreRefused() {
    assertEquals(
        "a log needs at least one entry",
        assertThrows(
                IllegalArgumentException.class,
                () -> DeadReckoning.of(START, List.of(), NINE, StreamField.slack()))
            .getMessage());
    List<LogEntry> log = List.of(LogEntry.drifting(NINE));
    assertEquals(
        "log must be in order of time, but 2026-06-01T09:00:00Z was followed by"
            + " 2026-06-01T08:59:59Z",
        assertThrows(
                IllegalArgumentException.class,
                () -> DeadReckoning.of(START, log, NINE.minusSeconds(1), StreamField.slack()))
            .getMessage());
    DeadReckoning nothing = DeadReckoning.of(START, log, NINE, StreamField.slack());
    assertEquals(START, nothing.estimated().orElseThrow());
    assertEquals(START, nothing.at(NINE).deadReckoning());
    assertThrows(IllegalArgumentException.class, () -> nothing.at(NINE.plusSeconds(1)));
    assertThrows(IllegalArgumentException.class, () -> nothing.trackEvery(Duration.ZERO));
  }
}
