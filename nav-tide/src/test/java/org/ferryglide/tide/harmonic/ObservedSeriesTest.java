package org.ferryglide.tide.harmonic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.StringReader;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.note.InputFormatException;
import org.junit.jupiter.api.Test;

class ObservedSeriesTest {
  private static StringReader lines(String... lines) {
    return new StringReader(String.join("\n", lines));
  }

  @Test
  void gapsAreLeftOut() throws IOException {
    ObservedSeries record =
        ObservedSeries.read(
            "gauge.csv",
            lines(
                "time,height_m",
                "2026-06-01T00:00Z,",
                "2026-06-01T01:00Z,1.5",
                "2026-06-01T02:00Z,",
                "2026-06-01T05:30+02:00,-0.5"));
    assertEquals(2, record.size());
    assertEquals(-0.5, record.value(1));
    assertEquals(Instant.parse("2026-06-01T02:15:00Z"), record.centre());
  }

  @Test
  void aClockAheadIsSetBack() throws IOException {
    ObservedSeries record =
        ObservedSeries.read(
            "gauge.csv",
            lines("time,height_m", "2026-06-01T10:00,1", "2026-06-01T11:00,2"),
            ZoneOffset.ofHours(10));
    assertEquals(EpochSeconds.of(Instant.parse("2026-06-01T00:00:00Z")), record.epochSeconds(0));
  }

  @Test
  void everyProblemIsListed() {
    assertEquals(
        "gauge.csv, line 3, column 1: time: must be later than the time before, but was"
            + " 2026-06-01T01:00Z\n"
            + "gauge.csv, line 4, column 1: time: Text 'noon' could not be parsed at index 0\n"
            + "gauge.csv, line 5, column 2: height_m: must be a number in [-100.0, 100.0], but was"
            + " \"wet\"",
        String.valueOf(
            assertThrows(
                    InputFormatException.class,
                    () ->
                        ObservedSeries.read(
                            "gauge.csv",
                            lines(
                                "time,height_m",
                                "2026-06-01T01:00Z,1",
                                "2026-06-01T01:00Z,1",
                                "noon,1",
                                "2026-06-01T03:00Z,wet")))
                .getMessage()));
  }

  @Test
  void disorderAndInfinityAreRefusedByNumber() {
    assertEquals(
        "times must be finite and in order, but time 2 was 1.0",
        refusal(() -> ObservedSeries.of(new double[] {1, 1}, new double[2])));
    assertEquals(
        "times must be finite and in order, but time 1 was NaN",
        refusal(() -> ObservedSeries.of(new double[] {Double.NaN, 1}, new double[2])));
    assertEquals(
        "values must be finite, or NaN for a gap, but value 2 was Infinity",
        refusal(
            () ->
                ObservedSeries.of(
                    new double[] {1, 2}, new double[] {1, Double.POSITIVE_INFINITY})));
    assertEquals(
        "there must be a value for each time, but there were 2 times and 1 values",
        refusal(() -> ObservedSeries.of(new double[] {1, 2}, new double[1])));
    assertEquals(
        "step of a record must be above 0, but was PT0S",
        refusal(() -> ObservedSeries.evenly(Instant.EPOCH, Duration.ZERO, new double[3])));
    assertEquals(
        "a record must have at least 2 values, but had 1",
        refusal(() -> ObservedSeries.of(new double[] {1, 2}, new double[] {Double.NaN, 1})));
  }

  private static String refusal(org.junit.jupiter.api.function.Executable executable) {
    return String.valueOf(assertThrows(IllegalArgumentException.class, executable).getMessage());
  }
}
