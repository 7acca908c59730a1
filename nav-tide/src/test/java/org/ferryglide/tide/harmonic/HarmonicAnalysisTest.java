package org.ferryglide.tide.harmonic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.testing.Published;
import org.junit.jupiter.api.Test;

class HarmonicAnalysisTest {
  private static final double HALF_A_PRINTED_TENTH_MILLIMETRE = 0.00005;

  /** Half a printed hundredth, and his frequencies of eight digits. */
  private static final double A_PRINTED_HUNDREDTH_DEGREE = 0.011;

  private static final double TUKTOYAKTUK_LATITUDE = 69.45;

  /** Foreman took the station's clock for Universal Time, and so does this record. */
  private static ObservedSeries tuktoyaktuk() {
    List<Published.Row> rows =
        Published.rows(
            HarmonicAnalysisTest.class, "tuktoyaktuk-1975-hourly.csv", "clock", "height_m");
    double[] times = new double[rows.size()];
    double[] heights = new double[rows.size()];
    for (int i = 0; i < times.length; i++) {
      times[i] =
          EpochSeconds.of(LocalDateTime.parse(rows.get(i).text("clock")).toInstant(ZoneOffset.UTC));
      heights[i] = rows.get(i).has("height_m") ? rows.get(i).number("height_m") : Double.NaN;
    }
    return ObservedSeries.of(times, heights);
  }

  private static List<Published.Row> foreman() {
    return Published.rows(
        HarmonicAnalysisTest.class,
        "tuktoyaktuk-1975-foreman.csv",
        "constituent",
        "amplitude_m",
        "lag_deg",
        "raw_amplitude_m",
        "raw_lag_deg");
  }

  private static HarmonicAnalysis foremanAnalysis() {
    NodalScheme scheme = NodalScheme.foreman(TUKTOYAKTUK_LATITUDE);
    List<Constituent> constituents = new ArrayList<>();
    for (Published.Row row : foreman()) {
      scheme.constituent(row.text("constituent")).ifPresent(constituents::add);
    }
    return HarmonicAnalysis.with(scheme)
        .withConstituents(constituents)
        .withNodesOfTheCentre()
        .withInference(Constituents.P1, Constituents.K1, 0.33093, 7.07)
        .withInference(Constituents.K2, Constituents.S2, 0.27215, 22.40)
        .withInferenceAfterFit();
  }

  @Test
  void foremansExampleComesOutToHisPrintedDigits() {
    ObservedSeries record = tuktoyaktuk();
    assertEquals(1510, record.size());
    assertEquals(Instant.parse("1975-08-08T03:00:00Z"), record.centre());
    HarmonicFit fit = foremanAnalysis().of(record);
    int checked = 0;
    for (Published.Row row : foreman()) {
      String name = row.text("constituent");
      if (name.equals("Z0")) {
        assertEquals(row.number("amplitude_m"), fit.mean(), HALF_A_PRINTED_TENTH_MILLIMETRE);
        continue;
      }
      FittedConstant found = fit.found(name).orElseThrow();
      assertEquals(
          row.number("amplitude_m"), found.amplitude(), HALF_A_PRINTED_TENTH_MILLIMETRE, name);
      assertEquals(
          row.number("raw_amplitude_m"),
          found.rawAmplitude(),
          HALF_A_PRINTED_TENTH_MILLIMETRE,
          name);
      assertAngle(row.number("lag_deg"), found.lagDegrees(), A_PRINTED_HUNDREDTH_DEGREE, name);
      assertAngle(
          row.number("raw_lag_deg"), found.rawLagDegrees(), A_PRINTED_HUNDREDTH_DEGREE, name);
      checked++;
    }
    assertEquals(38, checked);
    assertTrue(fit.trendPerYear().isEmpty());
  }

  @Test
  void theTableOf2002ComesOutWithItsOwnCentre() {
    // it takes the whole table of 1584 hours, empty ends included, so that its centre is 3 h before
    // that of the heights; only the inferred constituents and those they follow from notice
    HarmonicFit fit = foremanAnalysis().of(tuktoyaktuk());
    for (Published.Row row :
        Published.rows(
            HarmonicAnalysisTest.class,
            "tuktoyaktuk-1975-2002.csv",
            "constituent",
            "amplitude_m",
            "lag_deg")) {
      String name = row.text("constituent");
      if (name.equals("Z0")) {
        continue;
      }
      FittedConstant found = fit.found(name).orElseThrow();
      assertEquals(
          row.number("amplitude_m"),
          found.amplitude(),
          0.0002 + HALF_A_PRINTED_TENTH_MILLIMETRE,
          name);
      assertAngle(
          row.number("lag_deg"),
          found.lagDegrees(),
          List.of("K1", "P1", "S2", "K2").contains(name) ? 0.13 : 0.015,
          name);
    }
  }

  @Test
  void inferenceWithinTheFitDiffersLittleFromInferenceAfterIt() {
    HarmonicFit after = foremanAnalysis().of(tuktoyaktuk());
    NodalScheme scheme = NodalScheme.foreman(TUKTOYAKTUK_LATITUDE);
    List<Constituent> constituents = new ArrayList<>(after.constants().constituents());
    HarmonicFit within =
        HarmonicAnalysis.with(scheme)
            .withConstituents(constituents)
            .withNodesOfTheCentre()
            .withInference(Constituents.P1, Constituents.K1, 0.33093, 7.07)
            .withInference(Constituents.K2, Constituents.S2, 0.27215, 22.40)
            .of(tuktoyaktuk());
    FittedConstant k1 = within.found("K1").orElseThrow();
    FittedConstant p1 = within.found("P1").orElseThrow();
    assertEquals(after.found("K1").orElseThrow().amplitude(), k1.amplitude(), 0.0025);
    assertEquals(0.33093 * k1.amplitude(), p1.amplitude(), 1e-12);
    assertAngle(k1.lagDegrees() + 7.07, p1.lagDegrees(), 1e-9, "P1");
    assertTrue(p1.inferred());
    assertTrue(within.residualRms() <= after.residualRms() + 1e-3);
  }

  private static ObservedSeries honolulu() {
    List<Published.Row> rows =
        Published.rows(HarmonicAnalysisTest.class, "honolulu-2010-hourly.csv", "utc", "height_mm");
    double[] heights = new double[rows.size()];
    for (int i = 0; i < heights.length; i++) {
      heights[i] = rows.get(i).number("height_mm");
    }
    return ObservedSeries.evenly(
        Instant.parse("2010-01-01T00:00:00Z"), Duration.ofHours(1), heights);
  }

  private static List<Published.Row> honoluluAnalysis() {
    return Published.rows(
        HarmonicAnalysisTest.class,
        "honolulu-2010-analysis.csv",
        "constituent",
        "amplitude_mm",
        "amplitude_95_mm",
        "lag_deg",
        "lag_95_deg");
  }

  @Test
  void anIndependentAnalysisOfAYearIsMatchedToAHundredthOfAMillimetre() {
    NodalScheme scheme = NodalScheme.foreman(21.0);
    List<Constituent> constituents = new ArrayList<>();
    for (Published.Row row : honoluluAnalysis()) {
      constituents.add(scheme.constituent(row.text("constituent")).orElseThrow());
    }
    HarmonicFit fit =
        HarmonicAnalysis.with(scheme).withConstituents(constituents).withTrend().of(honolulu());
    for (Published.Row row : honoluluAnalysis()) {
      FittedConstant found = fit.found(row.text("constituent")).orElseThrow();
      double amplitude = row.number("amplitude_mm");
      double turn = Math.toRadians(found.lagDegrees() - row.number("lag_deg"));
      double apart =
          Math.hypot(
              found.amplitude() * Math.cos(turn) - amplitude, found.amplitude() * Math.sin(turn));
      assertTrue(apart < 0.01, found.constituent() + " is " + apart + " mm apart");
    }
  }

  @Test
  void theEightLargestOfHonoluluAgreeBetweenTheTwoSchemes() {
    HarmonicFit fit =
        HarmonicAnalysis.with(NodalScheme.schureman())
            .withConstituents(Constituents.STANDARD_37)
            .withTrend()
            .of(honolulu());
    for (Published.Row row : honoluluAnalysis().subList(0, 9)) {
      if (row.text("constituent").equals("SSA")) {
        continue;
      }
      FittedConstant found = fit.found(row.text("constituent")).orElseThrow();
      double amplitude = row.number("amplitude_mm");
      assertEquals(1.0, found.amplitude() / amplitude, 0.005, row.text("constituent"));
      assertAngle(row.number("lag_deg"), found.lagDegrees(), 1.0, row.text("constituent"));
    }
    assertEquals(31.9, fit.residualRms(), 0.5);
  }

  @Test
  void standardErrorsAreOfTheSizeOfThoseOfAnIndependentAnalysis() {
    NodalScheme scheme = NodalScheme.foreman(21.0);
    List<Constituent> constituents = new ArrayList<>();
    for (Published.Row row : honoluluAnalysis()) {
      constituents.add(scheme.constituent(row.text("constituent")).orElseThrow());
    }
    HarmonicFit fit =
        HarmonicAnalysis.with(scheme).withConstituents(constituents).withTrend().of(honolulu());
    for (String name : List.of("M2", "S2", "K1", "O1", "SSA", "MM", "M4", "M6", "SK3")) {
      double published =
          honoluluAnalysis().stream()
              .filter(row -> row.text("constituent").equals(name))
              .mapToDouble(row -> row.number("amplitude_95_mm"))
              .findFirst()
              .orElseThrow();
      double ratio = 1.96 * fit.found(name).orElseThrow().amplitudeStandardError() / published;
      assertTrue(ratio > 0.5 && ratio < 2.0, name + " has " + ratio + " of the published error");
    }
  }

  private static void assertAngle(double expected, double actual, double tolerance, String what) {
    assertEquals(0.0, Math.IEEEremainder(actual - expected, 360.0), tolerance, what);
  }

  @Test
  void aPredictedRecordGivesItsConstantsBack() {
    HarmonicConstants boston = UsStations.constants("8443970").withMean(1.586);
    HarmonicPredictor predictor = HarmonicPredictor.of(boston, NodalConvention.AT_INSTANT);
    double[] heights = new double[9000];
    predictor.fill(1.6e9, 3600.0, heights.length, heights, 0);
    HarmonicFit fit =
        HarmonicAnalysis.with(NodalScheme.schureman())
            .withConstituents(boston.constituents())
            .of(
                ObservedSeries.evenly(
                    Instant.ofEpochSecond(1600000000L), Duration.ofHours(1), heights));
    assertEquals(1.586, fit.mean(), 1e-7);
    for (HarmonicConstant constant : boston.list()) {
      FittedConstant found = fit.found(constant.constituent().name()).orElseThrow();
      double turn = Math.toRadians(found.lagDegrees() - constant.greenwichLagDegrees());
      assertEquals(constant.amplitude(), found.amplitude() * Math.cos(turn), 1e-6);
      assertEquals(0.0, found.amplitude() * Math.sin(turn), 1e-6);
    }
    assertTrue(fit.residualRms() < 1e-7);
    assertEquals(1.0, fit.explainedShare(), 1e-12);
  }

  @Test
  void gapsUnevenTimesAndNoiseCostMillimetresOnly() {
    HarmonicConstants boston = UsStations.constants("8443970").withMean(1.586);
    HarmonicPredictor predictor = HarmonicPredictor.of(boston, NodalConvention.AT_INSTANT);
    Random random = new Random(20260601L);
    double[] times = new double[8766];
    double[] heights = new double[times.length];
    double time = 1.7e9;
    for (int i = 0; i < times.length; i++) {
      time += 3000.0 + 1200.0 * random.nextDouble();
      times[i] = time;
      boolean gap = i > 4000 && i < 4500;
      heights[i] = gap ? Double.NaN : predictor.value(time) + 0.05 * random.nextGaussian();
    }
    HarmonicFit fit =
        HarmonicAnalysis.with(NodalScheme.schureman())
            .withCandidates(Constituents.STANDARD_37, 0.95)
            .of(ObservedSeries.of(times, heights));
    int within = 0;
    for (FittedConstant found : fit.fitted()) {
      HarmonicConstant constant = boston.constant(found.constituent().name()).orElseThrow();
      double turn = Math.toRadians(found.lagDegrees() - constant.greenwichLagDegrees());
      double apart =
          Math.hypot(
              found.amplitude() * Math.cos(turn) - constant.amplitude(),
              found.amplitude() * Math.sin(turn));
      assertTrue(apart < 0.004, found.constituent() + " is " + apart + " m apart");
      within += apart < 2.0 * found.amplitudeStandardError() ? 1 : 0;
    }
    // two errors at right angles are together within two sigma with a chance of 0.86
    assertTrue(within > 0.7 * fit.fitted().size(), within + " of " + fit.fitted().size());
    assertEquals(0.05, fit.residualRms(), 0.002);
    assertEquals(0.0, fit.residualCorrelation(), 0.05);
  }

  @Test
  void aTrendIsFoundAndKeptOutOfThePrediction() {
    HarmonicConstants boston = UsStations.constants("8443970").withMean(1.586).without("SA", "SSA");
    HarmonicPredictor predictor = HarmonicPredictor.of(boston, NodalConvention.AT_INSTANT);
    double[] heights = new double[9000];
    predictor.fill(1.6e9, 3600.0, heights.length, heights, 0);
    double risePerYear = 0.12;
    for (int i = 0; i < heights.length; i++) {
      heights[i] += risePerYear * (i - 4499.5) / (365.25 * 24.0);
    }
    ObservedSeries record =
        ObservedSeries.evenly(Instant.ofEpochSecond(1600000000L), Duration.ofHours(1), heights);
    HarmonicAnalysis analysis =
        HarmonicAnalysis.with(NodalScheme.schureman()).withConstituents(boston.constituents());
    HarmonicFit fit = analysis.withTrend().of(record);
    assertEquals(risePerYear, fit.trendPerYear().orElseThrow(), 1e-6);
    HarmonicPredictor later = HarmonicPredictor.of(fit.constants(), NodalConvention.AT_INSTANT);
    for (double time = 2.0e9; time < 2.01e9; time += 1.0e5) {
      assertEquals(predictor.value(time), later.value(time), 1e-5);
    }
    assertTrue(analysis.of(record).trendPerYear().isEmpty());
  }

  @Test
  void aMonthTellsFewerConstituentsApartThanAYear() {
    HarmonicAnalysis analysis = HarmonicAnalysis.with(NodalScheme.schureman());
    HarmonicPredictor predictor =
        HarmonicPredictor.of(UsStations.constants("8443970"), NodalConvention.AT_INSTANT);
    double[] heights = new double[30 * 24];
    predictor.fill(1.6e9, 3600.0, heights.length, heights, 0);
    HarmonicFit fit =
        analysis.of(
            ObservedSeries.evenly(
                Instant.ofEpochSecond(1600000000L), Duration.ofHours(1), heights));
    List<Constituent> found = fit.constants().constituents();
    assertTrue(found.containsAll(List.of(Constituents.M2, Constituents.S2, Constituents.N2)));
    assertTrue(found.containsAll(List.of(Constituents.K1, Constituents.O1, Constituents.M4)));
    assertFalse(found.contains(Constituents.K2));
    assertFalse(found.contains(Constituents.P1));
    assertTrue(fit.leftOut().contains(Constituents.K2));
    assertEquals("analysis.left-out", fit.notes().get(0).code());
  }

  @Test
  void constituentsThatRunTogetherAreRefused() {
    double[] heights = new double[200];
    for (int i = 0; i < heights.length; i++) {
      heights[i] = Math.sin(0.5 * i);
    }
    ObservedSeries record =
        ObservedSeries.evenly(Instant.ofEpochSecond(1600000000L), Duration.ofHours(1), heights);
    HarmonicAnalysis analysis =
        HarmonicAnalysis.with(NodalScheme.foreman(50.0))
            .withNodesOfTheCentre()
            .withConstituents(List.of(Constituents.M2, Constituents.MO3, Constituents.TWO_MK3));
    assertEquals(
        "a record must tell all its constituents apart, but cannot tell some of these apart; choose"
            + " fewer, or by the Rayleigh criterion",
        assertThrows(IllegalArgumentException.class, () -> analysis.of(record)).getMessage());
  }

  @Test
  void closeConstituentsComeWithACaution() {
    double[] heights = new double[2400];
    for (int i = 0; i < heights.length; i++) {
      heights[i] = Math.sin(0.506 * i);
    }
    HarmonicFit fit =
        HarmonicAnalysis.with(NodalScheme.schureman())
            .withConstituents(List.of(Constituents.M2, Constituents.S2, Constituents.K2))
            .of(
                ObservedSeries.evenly(
                    Instant.ofEpochSecond(1600000000L), Duration.ofHours(1), heights));
    assertEquals("analysis.close", fit.notes().get(0).code());
    assertEquals("S2 K2", fit.notes().get(0).data().get("constituents"));
  }

  @Test
  void inferenceFromAConstituentThatIsNotFittedIsRefused() {
    HarmonicAnalysis analysis =
        HarmonicAnalysis.with(NodalScheme.schureman())
            .withConstituents(List.of(Constituents.M2))
            .withInference(Constituents.P1, Constituents.K1, 0.33093, 7.07);
    ObservedSeries record = honolulu();
    assertEquals(
        "a constituent to infer from must be analysed for, but K1 was not",
        assertThrows(IllegalArgumentException.class, () -> analysis.of(record)).getMessage());
  }

  @Test
  void tooFewValuesAreRefused() {
    ObservedSeries record = ObservedSeries.of(new double[] {0.0, 3600.0, 7200.0}, new double[3]);
    HarmonicAnalysis analysis =
        HarmonicAnalysis.with(NodalScheme.schureman()).withConstituents(List.of(Constituents.M2));
    assertEquals(
        "a record must have more values than there are figures to find, 3, but had 3",
        assertThrows(IllegalArgumentException.class, () -> analysis.of(record)).getMessage());
  }
}
