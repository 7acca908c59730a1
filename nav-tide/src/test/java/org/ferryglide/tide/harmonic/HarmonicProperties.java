package org.ferryglide.tide.harmonic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.water.WaterLevel;
import org.ferryglide.nav.water.Window;
import org.ferryglide.testing.Seeds;
import org.ferryglide.tide.height.TideEvent;

class HarmonicProperties {
  /**
   * Rounding of sums of a dozen cosines of metres; corrections held for good are a steady turn from
   * one time, and a hundred thousand turns from there round to 1e-9.
   */
  private static final double ROUNDING_METRES = 1e-8;

  /** Amplitudes of M1 and L2 far larger than in the sea, which change fastest of all. */
  private static final double BLOCK_AT_INSTANT_METRES = 1e-6;

  private static final double BLOCK_METRES = 2e-9;

  /**
   * Above the nodal factor of any constituent here. Source: US National Ocean Service, yearly node
   * factors 1980 to 2026 (us-yearly-nodes-1980-2026.csv), where M1 in 2024 has the greatest, 2.283.
   */
  private static final double LARGEST_NODAL_FACTOR = 2.4;

  @Property(seed = Seeds.SEED, tries = 200)
  void twiceTheAmplitudesGiveTwiceTheTide(
      @ForAll("constants") HarmonicConstants constants,
      @ForAll("times") double time,
      @ForAll("conventions") NodalConvention convention) {
    double once = HarmonicPredictor.of(constants, convention).value(time);
    double twice = HarmonicPredictor.of(constants.scaledBy(2.0), convention).value(time);
    assertEquals(2.0 * once, twice, ROUNDING_METRES);
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void theTideOfASumIsTheSumOfTheTides(
      @ForAll("constants") HarmonicConstants one,
      @ForAll("constants") HarmonicConstants other,
      @ForAll("times") double time,
      @ForAll("conventions") NodalConvention convention) {
    double apart =
        HarmonicPredictor.of(one, convention).value(time)
            + HarmonicPredictor.of(other, convention).value(time);
    assertEquals(
        apart, HarmonicPredictor.of(one.plus(other), convention).value(time), ROUNDING_METRES);
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void lagsMadeLargerBySpeedTimesHoursDelayTheTideByTheHours(
      @ForAll("constants") HarmonicConstants constants,
      @ForAll("times") double time,
      @ForAll("hours") double hours) {
    List<HarmonicConstant> delayed = new ArrayList<>();
    for (HarmonicConstant c : constants.list()) {
      double lag = c.greenwichLagDegrees() + c.constituent().speedDegreesPerHour() * hours;
      delayed.add(new HarmonicConstant(c.constituent(), c.amplitude(), lag));
    }
    NodalConvention held = NodalConvention.heldAt(Instant.parse("2024-07-01T00:00:00Z"));
    HarmonicConstants later = HarmonicConstants.of(constants.scheme(), constants.mean(), delayed);
    assertEquals(
        HarmonicPredictor.of(constants, held).value(time),
        HarmonicPredictor.of(later, held).value(time + 3600.0 * hours),
        ROUNDING_METRES);
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void valuesByTheBlockAreTheSingleValues(
      @ForAll("constants") HarmonicConstants constants,
      @ForAll("times") double time,
      @ForAll("conventions") NodalConvention convention) {
    HarmonicPredictor predictor = HarmonicPredictor.of(constants, convention);
    double tolerance =
        convention.equals(NodalConvention.AT_INSTANT) ? BLOCK_AT_INSTANT_METRES : BLOCK_METRES;
    double[] out = new double[2000];
    predictor.fill(time, 60.0, out.length, out, 0);
    for (int i = 0; i < out.length; i += 37) {
      assertEquals(predictor.value(time + 60.0 * i), out[i], tolerance);
    }
  }

  /** A level that does not know its turns is searched by a bound of its slope, with few looks. */
  @Property(seed = Seeds.SEED, tries = 20)
  void anyLevelFindsTheWindowsOfTheTideBehindIt(
      @ForAll("constants") HarmonicConstants constants, @ForAll("times") double time) {
    HarmonicTide tide = HarmonicTide.of("x", "mean", constants, NodalConvention.AT_INSTANT);
    double steepest =
        constants.list().stream()
            .mapToDouble(
                one ->
                    LARGEST_NODAL_FACTOR
                        * one.amplitude()
                        * Math.toRadians(one.constituent().speedDegreesPerHour())
                        / 3600.0)
            .sum();
    AtomicInteger asked = new AtomicInteger();
    WaterLevel level =
        new WaterLevel() {
          private static final long serialVersionUID = 1L;

          @Override
          public double heightMetres(double epochSeconds) {
            asked.incrementAndGet();
            return tide.heightMetres(epochSeconds);
          }

          @Override
          public String datum() {
            return tide.datum();
          }

          @Override
          public double greatestSlopeMetresPerSecond(double fromSeconds, double toSeconds) {
            return steepest;
          }
        };
    Instant from = Instant.ofEpochSecond((long) time);
    Instant until = from.plus(Duration.ofDays(10));
    double wanted = constants.mean() + 0.3;
    List<Window> expected = tide.windowsAtLeast(Distance.ofMetres(wanted), from, until).items();
    List<Window> found = level.windowsAtLeast(Distance.ofMetres(wanted), from, until).items();
    assertEquals(expected.size(), found.size());
    for (int i = 0; i < found.size(); i++) {
      Duration apart = Duration.between(expected.get(i).from(), found.get(i).from()).abs();
      assertTrue(apart.toMillis() <= 1000, apart::toString);
    }
    int minutes = 10 * 24 * 60;
    assertTrue(asked.get() < minutes, asked::toString); // two looks a minute without a bound
  }

  @Property(seed = Seeds.SEED, tries = 40)
  void heightsAtEvenStepsAreTheSingleHeights(
      @ForAll("constants") HarmonicConstants constants, @ForAll("times") double time) {
    HarmonicTide tide = HarmonicTide.of("x", "mean", constants, NodalConvention.AT_INSTANT);
    for (double step : new double[] {60.0, 0.0, -600.0}) {
      double[] out = new double[102];
      tide.heightsEvenly(time, step, 100, out, 1);
      assertEquals(0.0, out[0]);
      assertEquals(0.0, out[101]);
      for (int i = 0; i < 100; i += 11) {
        assertEquals(tide.heightMetres(time + step * i), out[1 + i], BLOCK_AT_INSTANT_METRES);
      }
    }
  }

  @Property(seed = Seeds.SEED, tries = 40)
  void theExtremesBoundTheCurve(
      @ForAll("constants") HarmonicConstants constants, @ForAll("times") double time) {
    HarmonicTide tide = HarmonicTide.of("x", "mean", constants, NodalConvention.AT_INSTANT);
    Instant from = Instant.ofEpochSecond((long) time);
    List<TideEvent> waters = tide.extremes(from, from.plus(Duration.ofDays(3))).items();
    for (int i = 1; i < waters.size(); i++) {
      TideEvent one = waters.get(i - 1);
      TideEvent other = waters.get(i);
      double high = Math.max(one.height().metres(), other.height().metres());
      double low = Math.min(one.height().metres(), other.height().metres());
      for (double t = one.time().getEpochSecond() + 1.0;
          t < other.time().getEpochSecond();
          t += 300) {
        double height = tide.heightMetres(t);
        assertTrue(height >= low - 1e-7 && height <= high + 1e-7);
      }
    }
  }

  @Property(seed = Seeds.SEED, tries = 15)
  void analysisOfAPredictedRecordReturnsTheConstants(
      @ForAll("constants") HarmonicConstants constants, @ForAll("times") double time) {
    double[] heights = new double[24 * 400];
    HarmonicPredictor.of(constants, NodalConvention.AT_INSTANT)
        .fill(Math.floor(time), 3600.0, heights.length, heights, 0);
    HarmonicFit fit =
        HarmonicAnalysis.with(NodalScheme.schureman())
            .withConstituents(constants.constituents())
            .of(
                ObservedSeries.evenly(
                    Instant.ofEpochSecond((long) Math.floor(time)), Duration.ofHours(1), heights));
    for (int i = 0; i < constants.list().size(); i++) {
      HarmonicConstant constant = constants.list().get(i);
      FittedConstant found = fit.fitted().get(i);
      double turn = Math.toRadians(found.lagDegrees() - constant.greenwichLagDegrees());
      assertEquals(constant.amplitude(), found.amplitude() * Math.cos(turn), 1e-6);
      assertEquals(0.0, found.amplitude() * Math.sin(turn), 1e-6);
    }
    assertEquals(constants.mean(), fit.mean(), 1e-6);
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void aSheetWrittenAndReadGivesTheSameConstants(@ForAll("constants") HarmonicConstants constants)
      throws IOException {
    StringBuilder sheet = new StringBuilder();
    constants.write(sheet);
    assertEquals(
        constants,
        HarmonicConstants.read(
            "skarra.csv", new StringReader(sheet.toString()), constants.scheme()));
  }

  @Property(seed = Seeds.SEED, tries = 500)
  void aCorruptedSheetIsReadOrRefusedWithItsPlace(
      @ForAll("constants") HarmonicConstants constants,
      @ForAll("places") int place,
      @ForAll("letters") char letter)
      throws IOException {
    StringBuilder sheet = new StringBuilder();
    constants.write(sheet);
    sheet.setCharAt(place % sheet.length(), letter);
    try {
      HarmonicConstants read =
          HarmonicConstants.read(
              "skarra.csv", new StringReader(sheet.toString()), constants.scheme());
      assertTrue(Double.isFinite(read.mean()));
    } catch (InputFormatException e) {
      assertTrue(String.valueOf(e.getMessage()).startsWith("skarra.csv"));
    }
  }

  @Provide
  Arbitrary<Integer> places() {
    return Arbitraries.integers().between(0, 10_000);
  }

  @Provide
  Arbitrary<Character> letters() {
    return Arbitraries.of(',', '\n', '"', '#', '-', 'e', 'N', '9', '.', ' ', '\r', 'ß', '\0');
  }

  @Provide
  Arbitrary<Double> times() {
    return Arbitraries.oneOf(
        Arbitraries.doubles().between(-2.0e9, 4.0e9).ofScale(3),
        Arbitraries.of(1735689599.999, 1735689600.0, 0.0));
  }

  @Provide
  Arbitrary<Double> hours() {
    return Arbitraries.doubles().between(-1000.0, 1000.0).ofScale(6);
  }

  @Provide
  Arbitrary<NodalConvention> conventions() {
    return Arbitraries.of(
        NodalConvention.MID_YEAR,
        NodalConvention.AT_INSTANT,
        NodalConvention.heldAt(Instant.parse("2024-07-01T00:00:00Z")));
  }

  @Provide
  Arbitrary<HarmonicConstants> constants() {
    List<Constituent> apart =
        List.of(
            Constituents.M2,
            Constituents.S2,
            Constituents.N2,
            Constituents.K1,
            Constituents.O1,
            Constituents.M1,
            Constituents.L2,
            Constituents.K2,
            Constituents.M4,
            Constituents.TWO_MK3,
            Constituents.MM,
            Constituents.M8);
    Arbitrary<List<Double>> amplitudes =
        Arbitraries.doubles().between(0.001, 2.0).ofScale(4).list().ofSize(apart.size());
    Arbitrary<List<Double>> lags =
        Arbitraries.doubles().between(0.0, 359.9999).ofScale(6).list().ofSize(apart.size());
    Arbitrary<Double> means = Arbitraries.doubles().between(-5.0, 5.0).ofScale(3);
    return Combinators.combine(amplitudes, lags, means)
        .as(
            (sizes, turns, mean) -> {
              List<HarmonicConstant> list = new ArrayList<>();
              for (int i = 0; i < apart.size(); i++) {
                list.add(new HarmonicConstant(apart.get(i), sizes.get(i), turns.get(i)));
              }
              return HarmonicConstants.of(NodalScheme.schureman(), mean, list);
            });
  }
}
