package org.ferryglide.nav.reckon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.plane.LocalPlane;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

/** Set and rate experienced, and the keeper that learns them. */
class StreamExperiencedTest {
  /**
   * Source: boatsafe.com, Coastal course, chapter XIII: 0900 41-35.5N 70-40.5W, 345 by compass,
   * deviation 3W, variation 14W, 5.5 kn; fix 0950 41-38.0N 70-45.0W; printed set 214, drift 1.9 kn
   * (plotted; 2.01 exactly).
   */
  @Test
  void thePrintedExampleIsReproduced() {
    Instant nine = Instant.parse("2026-06-01T09:00:00Z");
    Position start = Position.ofDegrees(41 + 35.5 / 60, -(70 + 40.5 / 60));
    LogEntry entry =
        LogEntry.ofCompass(
            nine,
            CompassBearing.ofDegrees(345),
            Deviation.ofDegreesWest(3),
            Variation.ofDegreesWest(14),
            Speed.ofKnots(5.5));
    DeadReckoning reckoning =
        DeadReckoning.of(start, List.of(entry), nine.plusSeconds(3000), StreamField.slack());
    EstimatedPosition fix =
        EstimatedPosition.of(Position.ofDegrees(41 + 38.0 / 60, -70.75), Distance.ofMetres(185.2));
    StreamExperienced stream =
        StreamExperienced.between(reckoning.deadReckoning(), fix, Duration.ofMinutes(50));
    double plottedDegree = 1.0;
    double plottedTenth = 0.12;
    assertEquals(214, stream.velocity().set().degrees(), plottedDegree);
    assertEquals(1.9, stream.velocity().rate().knots(), plottedTenth);
    assertEquals(0.12, stream.rateStandardDeviation().knots(), 0.001);
    assertEquals(
        Math.toDegrees(Math.asin(185.2 / stream.drift().metres())),
        stream.setStandardDeviationDegrees(),
        1e-9);
  }

  @Test
  void twoFixesAndAHeadingGiveTheStreamBack() {
    Velocity water = Velocity.ofSetAndRate(TrueBearing.ofDegrees(72), Speed.ofKnots(3.2));
    Velocity stream = Velocity.ofSetAndRate(TrueBearing.ofDegrees(160), Speed.ofKnots(1.1));
    Position from = Position.ofDegrees(56.3, -6.2);
    Position by = RhumbLeg.from(from, water.set(), Distance.ofNauticalMiles(4.8)).end();
    Position to = RhumbLeg.from(by, stream.set(), Distance.ofNauticalMiles(1.65)).end();
    StreamExperienced found =
        StreamExperienced.betweenFixes(
            EstimatedPosition.of(from, Distance.ofMetres(30)),
            EstimatedPosition.of(to, Distance.ofMetres(40)),
            water,
            Duration.ofMinutes(90));
    assertEquals(160, found.velocity().set().degrees(), 1e-6);
    assertEquals(1.1, found.velocity().rate().knots(), 1e-9);
    assertEquals(2500, found.uncertainty().eastVariance(), 1e-9);
    assertThrows(
        IllegalArgumentException.class,
        () -> StreamExperienced.between(from, EstimatedPosition.exactly(to), Duration.ZERO));
  }

  /** A stream smaller than the fix's error has no set worth the name. */
  @Test
  void aDriftWithinTheErrorHasNoSet() {
    Position here = Position.ofDegrees(56.3, -6.2);
    StreamExperienced none =
        StreamExperienced.between(
            here, EstimatedPosition.of(here, Distance.ofMetres(50)), Duration.ofHours(1));
    assertEquals(180.0, none.setStandardDeviationDegrees());
    assertEquals(0.0, none.drift().metres());
  }

  /** Simulated passages: the keeper learns the stream, and is as wrong as it says it is. */
  @Test
  void theKeeperLearnsTheStreamAndKnowsHowWell() {
    Random random = new Random(11);
    Velocity water = Velocity.ofSetAndRate(TrueBearing.ofDegrees(72), Speed.ofKnots(3.2));
    int passages = 200;
    double statistic = 0;
    for (int k = 0; k < passages; k++) {
      Velocity stream =
          Velocity.ofEastAndNorth(0.5 * random.nextGaussian(), 0.5 * random.nextGaussian());
      Position truth = Position.ofDegrees(56.3, -6.2);
      PositionKeeper keeper =
          PositionKeeper.start(
              EstimatedPosition.of(truth, Distance.ofMetres(1)),
              Velocity.STILL,
              Speed.ofMetresPerSecond(0.5));
      for (int leg = 0; leg < 4; leg++) {
        Velocity wobble =
            Velocity.ofEastAndNorth(0.1 * random.nextGaussian(), 0.1 * random.nextGaussian());
        Velocity over = water.plus(stream).plus(wobble);
        truth =
            RhumbLeg.from(
                    truth, over.set(), Distance.ofMetres(over.rate().metresPerSecond() * 1800))
                .end();
        keeper = keeper.afterRun(Duration.ofMinutes(30), water, Speed.ofMetresPerSecond(0.1));
        Position seen =
            LocalPlane.fromPlane(truth, 80 * random.nextGaussian(), 80 * random.nextGaussian());
        keeper = keeper.afterFix(EstimatedPosition.of(seen, Distance.ofMetres(80)));
      }
      double sigma = keeper.streamStandardDeviation(TrueBearing.ofDegrees(90)).metresPerSecond();
      assertTrue(sigma < 0.07, "stream known to " + sigma);
      double error = keeper.stream().eastMetresPerSecond() - stream.eastMetresPerSecond();
      statistic += error * error / (sigma * sigma);
      assertTrue(GeodesicLeg.between(truth, keeper.position().position()).length().metres() < 350);
    }
    double fourSigmaOfTheMean = 4 * Math.sqrt(2.0 / passages);
    assertEquals(1.0, statistic / passages, fourSigmaOfTheMean);
  }

  /**
   * One step against the textbook's formula worked by hand: everything lies along north-east, so
   * that the covariance of east and north takes part, and its sign.
   */
  @Test
  void aFixOnOneLineCorrectsAlongThatLineAlone() {
    TrueBearing northEast = TrueBearing.ofDegrees(45);
    Position start = Position.ofDegrees(56.3, -6.2);
    EstimatedPosition known =
        new EstimatedPosition(
            start, Covariance.ofAxes(northEast, Distance.ofMetres(300), Distance.ofMetres(10)));
    PositionKeeper keeper =
        PositionKeeper.start(known, Velocity.STILL, Speed.ofMetresPerSecond(0.2));
    Position seen = LocalPlane.fromPlane(start, 200, 200);
    PositionKeeper after =
        keeper.afterFix(
            new EstimatedPosition(
                seen, Covariance.ofAxes(northEast, Distance.ofMetres(400), Distance.ofMetres(10))));
    double weight = 300.0 * 300 / (300.0 * 300 + 400.0 * 400);
    double[] at = LocalPlane.toPlane(start, after.position().position());
    assertEquals(200 * weight, at[0], 1e-6);
    assertEquals(200 * weight, at[1], 1e-6);
    Covariance left = after.position().covariance();
    assertEquals(240.0, left.standardDeviationAlong(northEast).metres(), 1e-9); // 300 · 400 / 500
    assertEquals(10 / Math.sqrt(2), left.standardDeviationAcross(northEast).metres(), 1e-9);
    assertEquals(0.2, after.streamStandardDeviation(northEast).metresPerSecond(), 1e-12);
    EstimatedPosition same =
        known.combinedWith(
            new EstimatedPosition(
                seen, Covariance.ofAxes(northEast, Distance.ofMetres(400), Distance.ofMetres(10))));
    assertEquals(left, same.covariance()); // one Kalman update in the house
  }

  @Test
  void aChangedStreamIsTrustedLess() {
    PositionKeeper keeper =
        PositionKeeper.start(
            EstimatedPosition.of(Position.ofDegrees(56.3, -6.2), Distance.ofMetres(10)),
            Velocity.STILL,
            Speed.ofMetresPerSecond(0.3));
    TrueBearing north = TrueBearing.ofDegrees(0);
    assertEquals(
        0.5,
        keeper
            .afterStreamMayHaveChanged(Speed.ofMetresPerSecond(0.4))
            .streamStandardDeviation(north)
            .metresPerSecond(),
        1e-12);
    assertEquals(0.3, keeper.streamStandardDeviation(north).metresPerSecond(), 1e-12);
  }
}
