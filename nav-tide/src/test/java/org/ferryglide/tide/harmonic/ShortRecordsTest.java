package org.ferryglide.tide.harmonic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
import org.junit.jupiter.api.Test;

/** Records that are too short, or whose readings are too far apart, for what they are asked. */
class ShortRecordsTest {
  private static final Instant START = Instant.parse("2026-01-01T00:00:00Z");
  private static final String BOSTON = "8443970";
  private static final HarmonicAnalysis USUAL = HarmonicAnalysis.with(NodalScheme.schureman());

  private static ObservedSeries boston(Duration step, int count) {
    HarmonicPredictor predictor =
        HarmonicPredictor.of(UsStations.constants(BOSTON), NodalConvention.AT_INSTANT);
    double[] values = new double[count];
    for (int i = 0; i < count; i++) {
      values[i] = predictor.value(EpochSeconds.of(START) + i * step.toSeconds());
    }
    return ObservedSeries.evenly(START, step, values);
  }

  private static Note note(HarmonicFit fit, String code) {
    return fit.notes().stream().filter(note -> note.code().equals(code)).findFirst().orElseThrow();
  }

  /** M3 alone was found, 1.16 m for millimetres: it held M2, which half a day cannot show. */
  @Test
  void halfADayIsRefused() {
    ObservedSeries record = boston(Duration.ofMinutes(6), 120);
    assertThrows(IllegalArgumentException.class, () -> USUAL.of(record));
  }

  @Test
  void whatHidesInWhatIsFoundIsToldAsAWarning() {
    HarmonicFit fit = USUAL.of(boston(Duration.ofHours(1), 15 * 24));
    Note note = note(fit, "analysis.left-out");
    assertEquals(Severity.WARNING, note.severity());
    assertTrue(
        note.data().getOrDefault("runTogether", "").contains("N2 with M2"), note.data().toString());
    assertTrue(fit.found("M2").isPresent());
    assertFalse(fit.found("N2").isPresent());
  }

  @Test
  void aCalendarYearIsAYear() {
    HarmonicFit fit = USUAL.of(boston(Duration.ofHours(1), 8760));
    for (String name : List.of("SA", "S1", "T2", "R2")) {
      assertTrue(fit.found(name).isPresent(), name);
    }
    assertEquals(37, fit.fitted().size());
    assertEquals(List.of(), fit.notes());
  }

  /** MSF came out as 1.374 m for nothing: M2 every twelve hours looks like it. */
  @Test
  void readingsTwelveHoursApartAreDoubted() {
    HarmonicFit fit = USUAL.of(boston(Duration.ofHours(12), 730));
    Note note = note(fit, "analysis.aliased");
    assertEquals(Severity.WARNING, note.severity());
    assertTrue(
        note.data().getOrDefault("looksLike", "").contains("MSF like M2"), note.data().toString());
    assertEquals(12.0, note.figures().get("stepHours"));
    assertFalse(fit.found("MSF").isPresent());
  }

  /** 57 of 4800 standard errors were below a quarter of what white noise gives. */
  @Test
  void standardErrorsDoNotCollapseInShortRecords() {
    Random random = new Random(20261126);
    int count = 15 * 24;
    double white = Math.sqrt(2.0 / count); // of an amplitude in noise of unit variance
    for (int trial = 0; trial < 200; trial++) {
      double[] values = random.doubles(count).map(u -> random.nextGaussian()).toArray();
      HarmonicFit fit = USUAL.of(ObservedSeries.evenly(START, Duration.ofHours(1), values));
      for (FittedConstant found : fit.fitted()) {
        // the nodal correction divides an amplitude by up to 1.3
        assertTrue(
            found.rawAmplitude() / found.amplitude() * found.amplitudeStandardError()
                > 0.25 * white,
            () -> found.toString());
      }
    }
  }
}
