package org.ferryglide.tide.harmonic;

import java.io.IOException;
import java.io.Reader;
import java.io.Serializable;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.tide.sheet.Sheet;

/**
 * A record of observed values in order of time: hourly or uneven, with gaps or without.
 *
 * <pre>{@code
 * ObservedSeries record =
 *     ObservedSeries.evenly(Instant.parse("2026-01-01T00:00:00Z"), Duration.ofHours(1), heights);
 * }</pre>
 *
 * <p>Gaps are left out; a value is never invented for them.
 */
public final class ObservedSeries implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final String TIME = "time";
  private static final String HEIGHT = "height_m";
  private static final double GREATEST_HEIGHT = 100.0;

  private final double[] seconds;
  private final double[] values;

  private ObservedSeries(double[] seconds, double[] values) {
    if (seconds.length < 2) {
      throw new IllegalArgumentException(
          "a record must have at least 2 values, but had " + seconds.length);
    }
    this.seconds = seconds;
    this.values = values;
  }

  /**
   * Makes a record from times and values.
   *
   * @param epochSeconds times, seconds since 1970-01-01T00:00:00Z, each later than the one before
   * @param values values in the unit of the series, NaN for a gap
   * @return the record without its gaps
   * @throws IllegalArgumentException if the arrays differ in length, a time is not finite and later
   *     than the one before, a value is infinite, or fewer than two values are left
   */
  public static ObservedSeries of(double[] epochSeconds, double[] values) {
    if (epochSeconds.length != values.length) {
      throw new IllegalArgumentException(
          "there must be a value for each time, but there were "
              + epochSeconds.length
              + " times and "
              + values.length
              + " values");
    }
    double[] times = new double[values.length];
    double[] kept = new double[values.length];
    int count = 0;
    double last = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < values.length; i++) {
      if (!(epochSeconds[i] > last && epochSeconds[i] < Double.POSITIVE_INFINITY)) {
        throw new IllegalArgumentException(
            "times must be finite and in order, but time " + (i + 1) + " was " + epochSeconds[i]);
      }
      last = epochSeconds[i];
      if (Double.isInfinite(values[i])) {
        throw new IllegalArgumentException(
            "values must be finite, or NaN for a gap, but value " + (i + 1) + " was " + values[i]);
      }
      if (!Double.isNaN(values[i])) {
        times[count] = epochSeconds[i];
        kept[count++] = values[i];
      }
    }
    return new ObservedSeries(Arrays.copyOf(times, count), Arrays.copyOf(kept, count));
  }

  /**
   * Makes a record from values at even steps.
   *
   * @param start time of the first value
   * @param step time between values, above 0
   * @param values values in the unit of the series, NaN for a gap
   * @return the record without its gaps
   * @throws IllegalArgumentException if the step is not above 0, a value is infinite, or fewer than
   *     two values are left
   */
  public static ObservedSeries evenly(Instant start, Duration step, double[] values) {
    if (step.isZero() || step.isNegative()) {
      throw new IllegalArgumentException("step of a record must be above 0, but was " + step);
    }
    double first = EpochSeconds.of(start);
    double stepSeconds = Seconds.of(step);
    double[] times = new double[values.length];
    for (int i = 0; i < times.length; i++) {
      times[i] = first + i * stepSeconds;
    }
    return of(times, values);
  }

  /**
   * Reads a record of heights whose times state their offset.
   *
   * @param source what to call the sheet in messages, usually the file's name
   * @param reader a sheet with the columns {@code time}, as in {@code 2026-06-01T09:30:00Z} or
   *     {@code 2026-06-01T11:30+02:00}, and {@code height_m}, metres, empty for a gap
   * @return the record
   * @throws IOException if the sheet cannot be read
   * @throws InputFormatException listing everything wrong with the sheet by line and column
   */
  public static ObservedSeries read(String source, Reader reader) throws IOException {
    return read(source, reader, Optional.empty());
  }

  /**
   * Reads a record of heights whose times are those of a clock that never changes to summer time.
   *
   * @param source what to call the sheet in messages, usually the file's name
   * @param reader a sheet with the columns {@code time}, as in {@code 2026-06-01T09:30}, and {@code
   *     height_m}, metres, empty for a gap
   * @param clock how far the clock is ahead of UTC
   * @return the record
   * @throws IOException if the sheet cannot be read
   * @throws InputFormatException listing everything wrong with the sheet by line and column
   */
  public static ObservedSeries read(String source, Reader reader, ZoneOffset clock)
      throws IOException {
    return read(source, reader, Optional.of(clock));
  }

  /**
   * Reads a file in UTF-8 with a record of heights whose times state their offset.
   *
   * @param file the file; messages call it by its path
   * @return the record
   * @throws IOException if the file is not there or cannot be read
   * @throws InputFormatException listing everything wrong with the file by line and column
   */
  public static ObservedSeries read(Path file) throws IOException {
    try (Reader reader = Sheet.open(file)) {
      return read(file.toString(), reader);
    }
  }

  /**
   * Reads a file in UTF-8 with a record of heights whose times are those of a clock that never
   * changes to summer time.
   *
   * @param file the file; messages call it by its path
   * @param clock how far the clock is ahead of UTC
   * @return the record
   * @throws IOException if the file is not there or cannot be read
   * @throws InputFormatException listing everything wrong with the file by line and column
   */
  public static ObservedSeries read(Path file, ZoneOffset clock) throws IOException {
    try (Reader reader = Sheet.open(file)) {
      return read(file.toString(), reader, clock);
    }
  }

  private static ObservedSeries read(String source, Reader reader, Optional<ZoneOffset> clock)
      throws IOException {
    Sheet sheet = Sheet.read(source, reader, List.of(TIME, HEIGHT), List.of());
    double[] times = new double[sheet.rows().size()];
    double[] heights = new double[times.length];
    int count = 0;
    double last = Double.NEGATIVE_INFINITY;
    for (Sheet.Row row : sheet.rows()) {
      double time = row.read(TIME, text -> EpochSeconds.of(instant(text, clock)), Double.NaN);
      if (time <= last) {
        row.problem(TIME, "must be later than the time before, but was " + row.text(TIME));
      }
      last = Double.isNaN(time) ? last : Math.max(last, time);
      OptionalDouble height =
          row.has(HEIGHT)
              ? row.number(HEIGHT, -GREATEST_HEIGHT, GREATEST_HEIGHT)
              : OptionalDouble.empty();
      if (height.isPresent()) {
        times[count] = time;
        heights[count++] = height.getAsDouble();
      }
    }
    if (count < 2) {
      sheet.problem("a record must have at least 2 heights, but had " + count);
    }
    sheet.refuseIfFaulty();
    return new ObservedSeries(Arrays.copyOf(times, count), Arrays.copyOf(heights, count));
  }

  private static Instant instant(String text, Optional<ZoneOffset> clock) {
    return clock.isPresent()
        ? LocalDateTime.parse(text).toInstant(clock.get())
        : OffsetDateTime.parse(text).toInstant();
  }

  /**
   * How many values there are, gaps not counted.
   *
   * @return at least 2
   */
  public int size() {
    return values.length;
  }

  /**
   * The time of one value.
   *
   * @param index which value, from 0
   * @return seconds since 1970-01-01T00:00:00Z
   * @throws IndexOutOfBoundsException if there is no such value
   */
  public double epochSeconds(int index) {
    return seconds[index];
  }

  /**
   * One value.
   *
   * @param index which value, from 0
   * @return in the unit of the series
   * @throws IndexOutOfBoundsException if there is no such value
   */
  public double value(int index) {
    return values[index];
  }

  /**
   * The middle between the first value and the last.
   *
   * @return the central time
   */
  public Instant centre() {
    return EpochSeconds.toInstant(centreSeconds());
  }

  double centreSeconds() {
    return 0.5 * (seconds[0] + seconds[seconds.length - 1]);
  }

  /** Time from the first value to the last, seconds. */
  double spanSeconds() {
    return seconds[seconds.length - 1] - seconds[0];
  }

  /** The time between values that is in the middle of all of them, seconds. */
  double medianStepSeconds() {
    double[] steps = new double[seconds.length - 1];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = seconds[i + 1] - seconds[i];
    }
    Arrays.sort(steps);
    return steps[steps.length / 2];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ObservedSeries that
        && Arrays.equals(seconds, that.seconds)
        && Arrays.equals(values, that.values);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Arrays.hashCode(seconds), Arrays.hashCode(values));
  }

  /** How many values. */
  @Override
  public String toString() {
    return values.length + " values observed";
  }
}
