package org.ferryglide.tide.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.LocalStream;
import org.ferryglide.nav.water.StreamMoment;
import org.ferryglide.nav.water.StreamTurn;
import org.ferryglide.tide.harmonic.Constituent;
import org.ferryglide.tide.harmonic.Constituents;
import org.ferryglide.tide.harmonic.HarmonicConstant;
import org.ferryglide.tide.harmonic.HarmonicConstants;
import org.ferryglide.tide.harmonic.NodalConvention;
import org.ferryglide.tide.harmonic.NodalScheme;
import org.ferryglide.tide.sheet.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HarmonicStreamTest {
  /** Official velocities are printed to 0.1 cm/s, of constants printed to 0.001 kn and 0.1°. */
  private static final double A_PRINTED_TENTH_OF_CM_S = 0.001;

  private static final TrueBearing AXIS = TrueBearing.ofDegrees(294.7);
  private static final Position PLACE = Position.ofDegrees(37, -76);

  /** The published figures lie beside the tests of constants. */
  private static final String CONSTANTS_ROOM = "/org/ferryglide/tide/harmonic/";

  private static Sheet sheet(String file, List<String> headings) throws IOException {
    try (Reader reader =
        new InputStreamReader(
            Objects.requireNonNull(
                HarmonicStreamTest.class.getResourceAsStream(CONSTANTS_ROOM + file)),
            StandardCharsets.UTF_8)) {
      return Sheet.read(file, reader, headings, List.of());
    }
  }

  private static HarmonicConstants official(double meanMetresPerSecond) throws IOException {
    List<HarmonicConstant> list = new ArrayList<>();
    Sheet sheet =
        sheet(
            "us-current-constants-cb0102.csv",
            List.of("constituent", "amplitude_kn", "phase_lag_greenwich_deg"));
    for (Sheet.Row row : sheet.rows()) {
      String name = row.text("constituent");
      String ours = name.equals("LAM2") ? "LDA2" : name;
      Constituent constituent =
          NodalScheme.schureman().constituents().stream()
              .filter(c -> c.name().equals(ours))
              .findFirst()
              .orElseThrow(() -> new IllegalStateException(name));
      list.add(
          new HarmonicConstant(
              constituent,
              row.number("amplitude_kn", 0, 9).getAsDouble() * Speed.METRES_PER_SECOND_PER_KNOT,
              row.number("phase_lag_greenwich_deg", 0, 360).getAsDouble()));
    }
    return HarmonicConstants.of(NodalScheme.schureman(), meanMetresPerSecond, list);
  }

  private static HarmonicStream stream() throws IOException {
    return HarmonicStream.alongAxis("cb0102", AXIS, official(0.0231), NodalConvention.MID_YEAR);
  }

  @Test
  void officialVelocitiesOfADayAreReproduced() throws IOException {
    HarmonicStream stream = stream();
    List<Sheet.Row> rows =
        sheet("us-current-cb0102-2024-01-01.csv", List.of("utc", "velocity_cm_s")).rows();
    assertEquals(241, rows.size());
    double widest = 0.0;
    for (Sheet.Row row : rows) {
      double t = EpochSeconds.of(CurrentSheet.instant(row.text("utc")));
      double official = row.number("velocity_cm_s", -200, 200).getAsDouble() / 100;
      widest = Math.max(widest, Math.abs(official - stream.alongMetresPerSecond(t)));
    }
    assertTrue(widest <= A_PRINTED_TENTH_OF_CM_S, "widest difference " + widest + " m/s");
  }

  @Test
  void theMeanFlowMovesSlackByMinutes() throws IOException {
    Instant from = Instant.parse("2024-01-01T00:00:00Z");
    HarmonicStream without =
        HarmonicStream.alongAxis("cb0102", AXIS, official(0.0), NodalConvention.MID_YEAR);
    StreamTurn turn =
        LocalStream.of(stream(), PLACE).turns(from, from.plusSeconds(86400)).items().get(0);
    StreamTurn other =
        LocalStream.of(without, PLACE).turns(from, from.plusSeconds(86400)).items().get(0);
    long seconds = Math.abs(Duration.between(turn.time(), other.time()).toSeconds());
    assertTrue(seconds > 240 && seconds < 900, "moved by " + seconds + " s");
  }

  @Test
  void positiveVelocitiesGoAlongTheAxis() throws IOException {
    HarmonicStream stream = stream();
    Instant flood = Instant.parse("2024-01-01T04:30:00Z");
    double along = stream.alongMetresPerSecond(EpochSeconds.of(flood));
    assertTrue(along > 0.1);
    assertEquals(294.7, stream.at(flood).get().set().degrees(), 1e-9);
    assertEquals(along, stream.at(flood).get().rate().metresPerSecond(), 1e-12);
    assertEquals("stream.harmonic", stream.explain(flood).notes().get(0).code());
    assertEquals("cb0102", stream.atPosition(PLACE).name());
  }

  @Test
  void theGreatestRateIsNeverExceeded() throws IOException {
    HarmonicStream stream = stream();
    StreamMoment strongest =
        LocalStream.of(stream, PLACE)
            .strongest(Instant.parse("2024-01-01T00:00:00Z"), Instant.parse("2024-03-01T00:00:00Z"))
            .first()
            .get();
    double bound = stream.maxRate().get().metresPerSecond();
    double met = strongest.stream().rate().metresPerSecond();
    assertTrue(met <= bound && met > 0.4 * bound, met + " of " + bound);
  }

  @Test
  void theFastSeriesAgreesWithSingleValues() throws IOException {
    HarmonicStream stream = stream();
    double start = EpochSeconds.of(Instant.parse("2023-12-31T12:34:56Z"));
    double[] many = new double[6001];
    stream.sampleEvenly(50, -5, start, 60, 3000, many, 1);
    double[] out = new double[2];
    for (int i = 0; i < 3000; i += 7) {
      assertTrue(stream.sample(start + 60.0 * i, out, 0));
      assertEquals(out[0], many[1 + 2 * i], 1e-9);
      assertEquals(out[1], many[2 + 2 * i], 1e-9);
    }
  }

  /** Backwards, or over and over at one time, they are single values indeed. */
  @ParameterizedTest
  @ValueSource(doubles = {0.0, -60.0})
  void stepsThatDoNotGoForwardAreTakenOneByOne(double step) throws IOException {
    HarmonicStream stream = stream();
    double start = EpochSeconds.of(Instant.parse("2024-01-01T00:05:00Z"));
    double[] many = new double[21];
    stream.sampleEvenly(start, step, 10, many, 1);
    double[] out = new double[2];
    for (int i = 0; i < 10; i++) {
      assertTrue(stream.sample(start + step * i, out, 0));
      assertEquals(out[0], many[1 + 2 * i]);
      assertEquals(out[1], many[2 + 2 * i]);
    }
  }

  @Test
  void atAPlaceThatIsNoPlaceThereAreNoData() throws IOException {
    double[] many = new double[4];
    stream().sampleEvenly(Double.NaN, -5, 0.0, 60, 2, many, 0);
    for (double part : many) {
      assertTrue(Double.isNaN(part), "part of a stream at no place was " + part);
    }
  }

  @Test
  void itsSpanIsThatOfThePredictorsYears() throws IOException {
    HarmonicStream stream = stream();
    double[] flow = new double[2];
    assertTrue(stream.sample(stream.startSeconds(), flow, 0));
    assertTrue(stream.sample(stream.endSeconds(), flow, 0));
    assertFalse(stream.sample(Math.nextDown(stream.startSeconds()), flow, 0));
    assertFalse(stream.sample(Math.nextUp(stream.endSeconds()), flow, 0));
  }

  @Test
  void outsideThePredictorsYearsThereAreNoData() throws IOException {
    HarmonicStream stream = stream();
    assertFalse(stream.at(Instant.parse("2300-01-01T00:00:00Z")).isPresent());
    assertEquals(
        "stream.no-data",
        stream.explain(Instant.parse("2300-01-01T00:00:00Z")).notes().get(0).code());
    assertFalse(stream.sample(Double.NaN, new double[2], 0));
    assertEquals(
        EpochSeconds.of(Instant.parse("2025-01-01T00:00:00Z")),
        stream.nextBreakAfter(EpochSeconds.of(Instant.parse("2024-05-05T00:00:00Z"))));
  }

  /** S2 has no nodal correction and an argument of 30° an hour of Universal Time. */
  private static final TidalEllipse ELLIPSE =
      new TidalEllipse(Constituents.S2, 0.8, 0.2, TrueBearing.ofDegrees(60), 90);

  private static HarmonicStream ellipse(TidalEllipse ellipse) {
    return HarmonicStream.ofEllipses(
        "E",
        List.of(ellipse),
        Velocity.ofEastAndNorth(0.1, -0.05),
        NodalScheme.schureman(),
        NodalConvention.MID_YEAR);
  }

  @Test
  void anEllipseHasItsAxesWhereItSaysAndTurnsItsWay() {
    HarmonicStream stream = ellipse(ELLIPSE);
    Velocity mean = Velocity.ofEastAndNorth(0.1, -0.05);
    // the argument is 90°, the lag, at 03:00 UT; a quarter of the period is three hours
    Velocity first = stream.at(Instant.parse("2026-06-01T03:00:00Z")).get().minus(mean);
    assertEquals(0.8, first.rate().metresPerSecond(), 1e-9);
    assertEquals(60, first.set().degrees(), 1e-6);
    Velocity later = stream.at(Instant.parse("2026-06-01T06:00:00Z")).get().minus(mean);
    assertEquals(0.2, later.rate().metresPerSecond(), 1e-9);
    assertEquals(330, later.set().degrees(), 1e-6);
    Velocity clockwise =
        ellipse(new TidalEllipse(Constituents.S2, 0.8, -0.2, TrueBearing.ofDegrees(60), 90))
            .at(Instant.parse("2026-06-01T06:00:00Z"))
            .get()
            .minus(mean);
    assertEquals(150, clockwise.set().degrees(), 1e-6);
  }

  @Test
  void aRotaryStreamHasNoSlackButALeastRate() {
    HarmonicStream stream =
        HarmonicStream.ofEllipses(
            "E",
            List.of(ELLIPSE),
            Velocity.STILL,
            NodalScheme.schureman(),
            NodalConvention.MID_YEAR);
    LocalStream here = LocalStream.of(stream, PLACE);
    Instant from = Instant.parse("2026-06-01T00:00:00Z");
    Instant to = Instant.parse("2026-06-02T00:00:00Z");
    assertTrue(here.slackWindows(Speed.ofMetresPerSecond(0.19), from, to).isNever());
    List<StreamMoment> least = here.slackWaters(from, to).items();
    assertEquals(3, least.size(), "06:00, 12:00 and 18:00, not the ends of the day");
    assertEquals(0.2, least.get(0).stream().rate().metresPerSecond(), 1e-9);
    assertTrue(
        Math.abs(
                Duration.between(Instant.parse("2026-06-01T06:00:00Z"), least.get(0).time())
                    .toSeconds())
            <= 1);
    StreamTurn turn = here.turns(from, to).items().get(0);
    assertEquals(0.2, turn.leastRate().metresPerSecond(), 1e-6);
    assertEquals(60, turn.setBefore().degrees(), 0.5);
    assertEquals(240, turn.setAfter().degrees(), 0.5);
  }

  @Test
  void badEllipsesAreRefused() {
    assertEquals(
        "semi-minor axis must be in [-0.5, 0.5] metres a second, but was 0.6",
        assertThrows(
                IllegalArgumentException.class,
                () -> new TidalEllipse(Constituents.M2, 0.5, 0.6, TrueBearing.ofDegrees(0), 0))
            .getMessage());
    assertEquals(
        270.0,
        new TidalEllipse(Constituents.M2, 0.5, 0.1, TrueBearing.ofDegrees(0), -90).lagDegrees());
  }

  @Test
  void theStepAtNewYearIsCautionedWithinADayOfIt() {
    HarmonicStream steps =
        HarmonicStream.alongAxis(
            "Tarn Gut",
            TrueBearing.ofDegrees(90),
            HarmonicConstants.of(
                NodalScheme.schureman(),
                0.0,
                List.of(
                    new HarmonicConstant(Constituents.O1, 1.5, 20.0),
                    new HarmonicConstant(Constituents.K1, 1.5, 80.0))),
            NodalConvention.MID_YEAR);
    for (String time : new String[] {"2026-12-31T12:00:00Z", "2027-01-01T12:00:00Z"}) {
      assertTrue(
          steps.explain(Instant.parse(time)).notes().stream()
              .anyMatch(note -> note.code().equals("stream.new-year-step")),
          time);
    }
    assertEquals(1, steps.explain(Instant.parse("2026-07-01T12:00:00Z")).notes().size());
  }
}
