package org.ferryglide.nav.fix;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.ferryglide.testing.Refusal.message;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.plane.LocalPlane;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.EstimatedPosition;
import org.ferryglide.nav.water.ChartedDepth;
import org.ferryglide.nav.water.DepthField;
import org.ferryglide.nav.water.WaterLevel;
import org.junit.jupiter.api.Test;

class SoundingLineTest {
  private static final Position ORIGIN = Position.ofDegrees(56.3, -6.2);

  /** An invented bottom: a bank and a slope. */
  private static double bottom(double lat, double lon) {
    double north = (lat - 56.3) * 111_300;
    double east = (lon + 6.2) * 61_900;
    return 12
        + 0.006 * north
        - 9 * Math.exp(-((east - 600) * (east - 600) + north * north) / (2 * 400.0 * 400))
        + 0.002 * east;
  }

  /** A straight track of soundings, its reckoning off by an error. */
  private static List<Sounding> track(double errorEast, double errorNorth, double noise) {
    Random random = new Random(3);
    List<Sounding> soundings = new ArrayList<>();
    for (int i = 0; i <= 10; i++) {
      Position truth = RhumbLeg.from(ORIGIN, TrueBearing.ofDegrees(80), ofMetres(120 * i)).end();
      soundings.add(
          new Sounding(
              LocalPlane.fromPlane(truth, errorEast, errorNorth),
              charted(
                  bottom(truth.latitudeDegrees(), truth.longitudeDegrees())
                      + noise * random.nextGaussian())));
    }
    return soundings;
  }

  private static ChartedDepth charted(double metres) {
    return new ChartedDepth(ofMetres(metres), "chart datum");
  }

  private static EstimatedPosition reckoned(List<Sounding> soundings, double sigma) {
    return EstimatedPosition.of(soundings.get(soundings.size() - 1).reckoned(), ofMetres(sigma));
  }

  @Test
  void soundingsFindTheTruePlace() {
    List<Sounding> soundings = track(150, -120, 0.1);
    SoundingLine fit =
        SoundingLine.match(
                soundings, SoundingLineTest::bottom, ofMetres(0.1), reckoned(soundings, 200))
            .orElseThrow();
    Position truth = RhumbLeg.from(ORIGIN, TrueBearing.ofDegrees(80), ofMetres(1200)).end();
    double[] off = LocalPlane.toPlane(truth, fit.position().position());
    double sigma = fit.position().covariance().rootMeanSquare().metres();
    assertTrue(sigma < 40, "known to " + sigma);
    assertTrue(Math.hypot(off[0], off[1]) < 3 * sigma);
    assertTrue(fit.agreement() > 0.01);
  }

  @Test
  void aFlatBottomTeachesNothing() {
    List<Sounding> soundings = track(0, 0, 0);
    List<Sounding> flat =
        soundings.stream().map(s -> new Sounding(s.reckoned(), charted(10))).toList();
    SoundingLine fit =
        SoundingLine.match(flat, (lat, lon) -> 10.0, ofMetres(0.3), reckoned(flat, 200))
            .orElseThrow();
    assertEquals(
        200,
        fit.position().covariance().standardDeviationAlong(TrueBearing.ofDegrees(0)).metres(),
        1e-6);
  }

  @Test
  void aRippledBottomFitsInSeveralPlaces() {
    DepthField ripples = (lat, lon) -> 10 + 3 * Math.cos((lat - 56.3) * 111_300 / 50);
    List<Sounding> soundings = List.of(new Sounding(ORIGIN, charted(11.5)));
    SoundingLine fit =
        SoundingLine.match(soundings, ripples, ofMetres(0.1), reckoned(soundings, 300))
            .orElseThrow();
    assertEquals("sounding.several-places", fit.notes().get(0).code());
  }

  @Test
  void noChartIsNoAnswer() {
    List<Sounding> soundings = track(0, 0, 0);
    assertEquals(
        Optional.empty(),
        SoundingLine.match(
            soundings, (lat, lon) -> Double.NaN, ofMetres(0.3), reckoned(soundings, 200)));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            SoundingLine.match(
                List.of(), (lat, lon) -> 1, ofMetres(0.3), reckoned(soundings, 200)));
  }

  @Test
  void theTideIsTakenOff() {
    assertEquals(
        5.3, below(Sounding.reduced(ORIGIN, ofMetres(7.4), ofMetres(2.1), "chart datum")), 1e-12);
    assertEquals(
        -0.6, below(Sounding.reduced(ORIGIN, ofMetres(1.5), ofMetres(2.1), "chart datum")), 1e-12);
  }

  private static double below(Sounding sounding) {
    return sounding.depth().belowDatum().metres();
  }

  /** A tide in the first hour of 1970 only, above a datum of its own. */
  private static final class Tide implements WaterLevel {
    private static final long serialVersionUID = 1L;

    @Override
    public double heightMetres(double epochSeconds) {
      return epochSeconds <= 3600.0 ? 2.1 : Double.NaN;
    }

    @Override
    public String datum() {
      return "mean low water";
    }
  }

  @Test
  void aTideReducesToItsOwnDatum() {
    Sounding sounding = Sounding.reduced(ORIGIN, ofMetres(7.4), new Tide(), Instant.EPOCH);
    assertEquals(5.3, below(sounding), 1e-12);
    assertEquals("mean low water", sounding.depth().datum());
    assertEquals(
        "tide must have data when the sounding was taken, but a source without a name has none at"
            + " 1970-01-01T02:00:00Z",
        message(
            () ->
                Sounding.reduced(
                    ORIGIN, ofMetres(7.4), new Tide(), Instant.EPOCH.plusSeconds(7200))));
  }

  @Test
  void soundingsOfAnotherDatumThanTheChartsAreRefused() {
    List<Sounding> soundings =
        List.of(Sounding.reduced(ORIGIN, ofMetres(7.4), new Tide(), Instant.EPOCH));
    EstimatedPosition reckoned = reckoned(soundings, 300);
    assertEquals(
        "soundings must be reduced to the datum of the chart, \"chart datum\", but one was reduced"
            + " to \"mean low water\"",
        message(
            () ->
                SoundingLine.match(soundings, SoundingLineTest::bottom, ofMetres(0.1), reckoned)));
  }
}
