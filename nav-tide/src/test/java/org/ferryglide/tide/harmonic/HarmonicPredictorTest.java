package org.ferryglide.tide.harmonic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.testing.Published;
import org.junit.jupiter.api.Test;

class HarmonicPredictorTest {
  /** What official predictions are met to, from constants printed to 1 mm and 0.1°. */
  private static final double OFFICIAL_RMS_METRES = 0.0006;

  private static final double OFFICIAL_WORST_METRES = 0.0015;
  private static final double OFFICIAL_WORST_CM_S = 0.1;

  private static final double KNOT_CM_S = 185200.0 / 3600.0;

  /** The accuracy promised for samples by the block, against the sum of cosines. */
  private static final double BLOCK_METRES = 1e-9;

  /** Roundings of 37 cosines whose arguments are thousands of radians after 1900. */
  private static final double SINGLE_METRES = 1e-10;

  /** What nodes interpolated through time may add at a station, and to one constituent of 1 m. */
  private static final double MOVING_NODES_METRES = 1e-7;

  private static final double MOVING_NODES_SHARE = 1e-6;

  /** The independent figures are printed to a millimetre, and looked for at other times. */
  private static final double PRINTED_METRES = 0.0015;

  private static final double A_PRINTED_MILLIMETRE = 0.001;

  /** Two neighbouring doubles of 2026 lie 0.2 microseconds apart, in which 10 nm may run. */
  private static final double STEP_METRES = 1e-8;

  /** Of a chord over a minute: a third derivative of 1e-11 m/s³ times 30² / 6, and rounding. */
  private static final double CHORD_METRES_PER_SECOND = 1e-8;

  private static final double HONOLULU_MEAN_MLLW = 0.251;
  private static final String ANCHORAGE = "9455920";
  private static final String HONOLULU = "1612340";

  @Test
  void officialHeightsOfThirtyOneStationsAreMet() {
    double squares = 0.0;
    double worst = 0.0;
    int count = 0;
    for (Published.Row row :
        Published.rows(
            HarmonicPredictorTest.class,
            "us-hourly-2021-01-01.csv",
            "station",
            "utc",
            "height_m")) {
      String station = row.text("station");
      HarmonicPredictor predictor =
          HarmonicPredictor.of(
              UsStations.constants(station)
                  .withMean(UsStations.mean(station, "above_station_datum_m")),
              NodalConvention.MID_YEAR);
      double error = predictor.value(row.epochSeconds()) - row.number("height_m");
      squares += error * error;
      worst = Math.max(worst, Math.abs(error));
      count++;
    }
    assertEquals(31 * 24, count);
    assertWithin(OFFICIAL_RMS_METRES, Math.sqrt(squares / count), "rms");
    assertWithin(OFFICIAL_WORST_METRES, worst, "worst");
  }

  @Test
  void officialSixMinuteHeightsAreMet() {
    HarmonicPredictor predictor =
        HarmonicPredictor.of(
            UsStations.constants(HONOLULU).withMean(HONOLULU_MEAN_MLLW), NodalConvention.MID_YEAR);
    double squares = 0.0;
    double worst = 0.0;
    int count = 0;
    for (Published.Row row :
        Published.rows(
            HarmonicPredictorTest.class, "us-six-minutes-honolulu-2023.csv", "utc", "height_m")) {
      double error = predictor.value(row.epochSeconds()) - row.number("height_m");
      squares += error * error;
      worst = Math.max(worst, Math.abs(error));
      count++;
    }
    assertWithin(OFFICIAL_RMS_METRES, Math.sqrt(squares / count), "rms");
    assertWithin(OFFICIAL_WORST_METRES, worst, "worst");
  }

  @Test
  void officialCurrentIsMetByTheSameSum() {
    List<HarmonicConstant> list = new ArrayList<>();
    for (Published.Row row :
        Published.rows(
            HarmonicPredictorTest.class,
            "us-current-constants-cb0102.csv",
            "constituent",
            "amplitude_kn",
            "phase_lag_greenwich_deg")) {
      list.add(
          new HarmonicConstant(
              NodalScheme.schureman().constituent(row.text("constituent")).orElseThrow(),
              KNOT_CM_S * row.number("amplitude_kn"),
              row.number("phase_lag_greenwich_deg")));
    }
    HarmonicPredictor predictor =
        HarmonicPredictor.of(
            HarmonicConstants.of(NodalScheme.schureman(), 2.31, list), NodalConvention.MID_YEAR);
    double worst = 0.0;
    for (Published.Row row :
        Published.rows(
            HarmonicPredictorTest.class,
            "us-current-cb0102-2024-01-01.csv",
            "utc",
            "velocity_cm_s")) {
      double error = predictor.value(row.epochSeconds()) - row.number("velocity_cm_s");
      worst = Math.max(worst, Math.abs(error));
    }
    assertWithin(OFFICIAL_WORST_CM_S, worst, "worst, cm/s");
  }

  @Test
  void aYearOfMinutesByTheBlockIsTheSumOfCosines() {
    HarmonicConstants constants = UsStations.constants(ANCHORAGE).withMean(5.02);
    HarmonicPredictor predictor = HarmonicPredictor.of(constants, NodalConvention.MID_YEAR);
    double start = CalendarYears.startSeconds(2024);
    double[] minutes = new double[366 * 1440];
    predictor.fill(start, 60.0, minutes.length, minutes, 0);
    double worstBlock = 0.0;
    double worstSingle = 0.0;
    for (int i = 0; i < minutes.length; i += 7) {
      double direct = DirectSum.midYear(constants, start + 60.0 * i);
      worstBlock = Math.max(worstBlock, Math.abs(minutes[i] - direct));
      worstSingle = Math.max(worstSingle, Math.abs(predictor.value(start + 60.0 * i) - direct));
    }
    assertWithin(BLOCK_METRES, worstBlock, "worst by the block");
    assertWithin(SINGLE_METRES, worstSingle, "worst one by one");
  }

  @Test
  void aYearOfMinutesAtTheInstantsNodesIsTheSumOfCosines() {
    HarmonicConstants constants = UsStations.constants(ANCHORAGE).withMean(5.02);
    HarmonicPredictor predictor = HarmonicPredictor.of(constants, NodalConvention.AT_INSTANT);
    double start = CalendarYears.startSeconds(2024);
    double[] minutes = new double[366 * 1440];
    predictor.fill(start, 60.0, minutes.length, minutes, 0);
    double worstBlock = 0.0;
    double worstSingle = 0.0;
    for (int i = 0; i < minutes.length; i += 97) {
      double direct = DirectSum.atInstant(constants, start + 60.0 * i);
      worstBlock = Math.max(worstBlock, Math.abs(minutes[i] - direct));
      worstSingle = Math.max(worstSingle, Math.abs(predictor.value(start + 60.0 * i) - direct));
    }
    assertWithin(MOVING_NODES_METRES, worstBlock, "worst by the block");
    assertWithin(MOVING_NODES_METRES, worstSingle, "worst one by one");
  }

  /** Each constituent by itself, also those whose nodal corrections change most. */
  @Test
  void eachConstituentFollowsTheNodesOfTheInstantForYears() {
    for (Constituent constituent : Constituents.STANDARD_37) {
      HarmonicConstants one =
          HarmonicConstants.of(
              NodalScheme.schureman(), 0.0, List.of(new HarmonicConstant(constituent, 1.0, 30.0)));
      HarmonicPredictor predictor = HarmonicPredictor.of(one, NodalConvention.AT_INSTANT);
      double worst = 0.0;
      for (int i = 0; i < 700; i++) {
        double time = CalendarYears.startSeconds(2010) + 1e6 * i;
        worst = Math.max(worst, Math.abs(predictor.value(time) - DirectSum.atInstant(one, time)));
      }
      assertWithin(MOVING_NODES_SHARE, worst, constituent.toString());
    }
  }

  @Test
  void blocksCrossNewYearWhereTheSumSteps() {
    HarmonicConstants constants = UsStations.constants(ANCHORAGE);
    HarmonicPredictor predictor = HarmonicPredictor.of(constants, NodalConvention.MID_YEAR);
    double start = CalendarYears.startSeconds(2024) - 86400.0 + 17.0;
    double[] out = new double[3000];
    predictor.fill(start, 60.0, out.length, out, 0);
    for (int i = 0; i < out.length; i++) {
      assertEquals(DirectSum.midYear(constants, start + 60.0 * i), out[i], BLOCK_METRES);
    }
  }

  @Test
  void everyStepAndLengthIsFilled() {
    HarmonicConstants constants = UsStations.constants(HONOLULU);
    HarmonicPredictor predictor = HarmonicPredictor.of(constants, NodalConvention.MID_YEAR);
    double start = CalendarYears.startSeconds(2020) + 12345.0;
    for (double step : new double[] {0.5, 10.0, 360.0, 3600.0, 90000.0}) {
      double[] out = new double[1503];
      java.util.Arrays.fill(out, 77.0);
      predictor.fill(start, step, 1500, out, 2);
      assertEquals(77.0, out[1]);
      assertEquals(77.0, out[1502]);
      for (int i = 2; i < 1502; i++) {
        double direct = DirectSum.midYear(constants, start + step * (i - 2));
        assertEquals(direct, out[i], BLOCK_METRES, "step " + step + " value " + i);
      }
    }
  }

  /** Largest distance of two years' curves on the day around New Year, recalculated elsewhere. */
  @Test
  void theCurvesOfTwoYearsAreAsFarApartAsAnIndependentCalculationSays() {
    assertEquals(0.227, apartAtNewYear(ANCHORAGE), PRINTED_METRES);
    assertEquals(0.133, apartAtNewYear("8410140"), PRINTED_METRES); // Eastport
    assertEquals(0.114, apartAtNewYear("9447130"), PRINTED_METRES); // Seattle
    assertEquals(0.070, apartAtNewYear("8443970"), PRINTED_METRES); // Boston
    assertEquals(0.018, apartAtNewYear(HONOLULU), PRINTED_METRES);
  }

  private static double apartAtNewYear(String station) {
    HarmonicConstants constants = UsStations.constants(station);
    double largest = 0.0;
    for (int year = 2020; year <= 2030; year++) {
      double newYear = CalendarYears.startSeconds(year);
      for (double time = newYear - 43200.0; time <= newYear + 43200.0; time += 1200.0) {
        double before = DirectSum.ofYear(constants, year - 1, time);
        largest = Math.max(largest, Math.abs(before - DirectSum.ofYear(constants, year, time)));
      }
    }
    return largest;
  }

  @Test
  void theHeightStepsAtNewYearOnly() {
    HarmonicConstants constants = UsStations.constants(ANCHORAGE);
    HarmonicPredictor predictor = HarmonicPredictor.of(constants, NodalConvention.MID_YEAR);
    double newYear = CalendarYears.startSeconds(2026);
    assertEquals(newYear, predictor.nextBreakAfter(CalendarYears.startSeconds(2025)));
    assertEquals(
        DirectSum.ofYear(constants, 2026, newYear) - DirectSum.ofYear(constants, 2025, newYear),
        predictor.value(newYear) - predictor.value(Math.nextDown(newYear)),
        STEP_METRES);
  }

  /** The mistake to avoid: 4.6 mm rms against official heights, at a year's edge 26 mm. */
  @Test
  void theOtherConventionIsNotTheOfficialOne() {
    HarmonicPredictor predictor =
        HarmonicPredictor.of(
            UsStations.constants("9447130").withMean(UsStations.mean("9447130", "above_mllw_m")),
            NodalConvention.AT_INSTANT);
    double worst = 0.0;
    for (Published.Row row :
        Published.rows(
            HarmonicPredictorTest.class,
            "us-high-low-seattle-2015.csv",
            "utc",
            "kind",
            "height_m")) {
      double error = predictor.value(row.epochSeconds()) - row.number("height_m");
      worst = Math.max(worst, Math.abs(error));
    }
    assertEquals(0.026, worst, A_PRINTED_MILLIMETRE);
  }

  @Test
  void correctionsHeldForGoodMakeNoStep() {
    Instant held = Instant.parse("2024-07-01T00:00:00Z");
    HarmonicPredictor predictor =
        HarmonicPredictor.of(UsStations.constants(ANCHORAGE), NodalConvention.heldAt(held));
    HarmonicPredictor atInstant =
        HarmonicPredictor.of(UsStations.constants(ANCHORAGE), NodalConvention.AT_INSTANT);
    assertEquals(atInstant.at(held), predictor.at(held), MOVING_NODES_METRES);
    double newYear = CalendarYears.startSeconds(2025);
    assertEquals(predictor.value(Math.nextDown(newYear)), predictor.value(newYear), BLOCK_METRES);
    assertEquals(Double.POSITIVE_INFINITY, predictor.nextBreakAfter(newYear - 1.0));
  }

  @Test
  void theRateIsTheSlopeOfTheValues() {
    for (NodalConvention convention :
        List.of(NodalConvention.MID_YEAR, NodalConvention.AT_INSTANT)) {
      HarmonicPredictor predictor =
          HarmonicPredictor.of(UsStations.constants(ANCHORAGE), convention);
      for (double t = 1.75e9; t < 1.7501e9; t += 7777.0) {
        double slope = (predictor.value(t + 30.0) - predictor.value(t - 30.0)) / 60.0;
        assertEquals(slope, predictor.rate(t), CHORD_METRES_PER_SECOND);
        assertTrue(
            Math.abs(predictor.rate(t + 30.0) - predictor.rate(t - 30.0))
                <= 60.0 * predictor.greatestRateChange(t - 30.0, t + 30.0));
        assertTrue(Math.abs(predictor.value(t)) <= predictor.greatestSwing(t - 30.0, t + 30.0));
      }
    }
  }

  @Test
  void outsideItsYearsItHasNoData() {
    HarmonicPredictor predictor =
        HarmonicPredictor.of(UsStations.constants(HONOLULU), NodalConvention.MID_YEAR);
    assertTrue(Double.isNaN(predictor.value(CalendarYears.startSeconds(1799))));
    assertTrue(Double.isNaN(predictor.value(CalendarYears.startSeconds(2200))));
    assertTrue(Double.isNaN(predictor.value(Double.NaN)));
    assertTrue(Double.isNaN(predictor.rate(Double.POSITIVE_INFINITY)));
    double[] out = new double[3];
    predictor.fill(Double.NaN, 60.0, 3, out, 0);
    assertTrue(Double.isNaN(out[2]));
    assertEquals(
        "instant must be in the years 1800 to 2199, but was 2200-01-01T00:00:00Z",
        assertThrows(
                IllegalArgumentException.class,
                () -> predictor.at(Instant.parse("2200-01-01T00:00:00Z")))
            .getMessage());
  }

  @Test
  void aStepOfNothingIsRefused() {
    HarmonicPredictor predictor =
        HarmonicPredictor.of(UsStations.constants(HONOLULU), NodalConvention.MID_YEAR);
    assertEquals(
        "step must be a finite number of seconds above 0, but was 0.0",
        assertThrows(
                IllegalArgumentException.class, () -> predictor.fill(0.0, 0.0, 1, new double[1], 0))
            .getMessage());
  }

  @Test
  void aPredictorThatWasShippedPredictsTheSame() throws Exception {
    HarmonicPredictor predictor =
        HarmonicPredictor.of(UsStations.constants(HONOLULU), NodalConvention.AT_INSTANT);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(predictor);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      HarmonicPredictor shipped = (HarmonicPredictor) in.readObject();
      assertEquals(predictor.constants(), shipped.constants());
      double seconds = EpochSeconds.of(Instant.parse("2026-06-01T09:30:00Z"));
      assertEquals(predictor.value(seconds), shipped.value(seconds));
    }
  }

  private static void assertWithin(double bound, double value, String what) {
    assertTrue(value <= bound, what + " was " + value);
  }
}
