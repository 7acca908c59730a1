package org.ferryglide.tide.height;

import java.io.IOException;
import java.io.Reader;
import java.io.Serializable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.tide.sheet.Sheet;

/**
 * The shape of a port's own tide, from its published curve or from a record: for the rise and for
 * the fall, how far the water stands above low water as a fraction of the range, against the time
 * as a fraction of the interval.
 *
 * <pre>{@code
 * // quarter by quarter; this tide rises fast, then stands before it falls
 * NormalisedCurve curve =
 *     NormalisedCurve.ofEvenSteps(
 *         new double[] {0, 0.22, 0.62, 0.93, 1}, new double[] {1, 0.96, 0.70, 0.24, 0});
 * TideCurve tide = TableCurve.normalised(table, curve);
 * }</pre>
 *
 * <p>Between the points runs a cubic that never leaves the span between two neighbouring points
 * (Fritsch and Butland 1984, DOI 10.1137/0905021), level at both waters. The points themselves may
 * go down and up again, for a double high water.
 */
public final class NormalisedCurve implements Serializable {
  private static final long serialVersionUID = 1L;

  private final MonotoneCubic rise;
  private final MonotoneCubic fall;

  private NormalisedCurve(MonotoneCubic rise, MonotoneCubic fall) {
    this.rise = rise;
    this.fall = fall;
  }

  /**
   * Makes a curve from points.
   *
   * @param riseTimes fractions of the rise's interval, from 0 to 1, increasing
   * @param riseHeights fractions of the range above low water, from 0 to 1, each in [0, 1]
   * @param fallTimes fractions of the fall's interval, from 0 to 1, increasing
   * @param fallHeights fractions of the range above low water, from 1 to 0, each in [0, 1]
   * @return the curve
   * @throws IllegalArgumentException if the arrays are not as described; the message names the
   *     point
   */
  public static NormalisedCurve of(
      double[] riseTimes, double[] riseHeights, double[] fallTimes, double[] fallHeights) {
    check("rise", riseTimes, riseHeights, 0.0, 1.0);
    check("fall", fallTimes, fallHeights, 1.0, 0.0);
    return new NormalisedCurve(
        new MonotoneCubic(riseTimes, riseHeights), new MonotoneCubic(fallTimes, fallHeights));
  }

  /**
   * Makes a curve from heights at even steps of time.
   *
   * @param riseHeights fractions of the range above low water, from 0 to 1, each in [0, 1]
   * @param fallHeights fractions of the range above low water, from 1 to 0, each in [0, 1]
   * @return the curve
   * @throws IllegalArgumentException if the arrays are not as described; the message names the
   *     point
   */
  public static NormalisedCurve ofEvenSteps(double[] riseHeights, double[] fallHeights) {
    return of(even(riseHeights.length), riseHeights, even(fallHeights.length), fallHeights);
  }

  /**
   * Reads a curve from a sheet with the columns {@code part} ({@code rise} or {@code fall}), {@code
   * time_fraction} and {@code height_fraction}, the points of each part in order of time.
   *
   * @param source what to call the sheet in messages, usually the file's name
   * @param reader the sheet; left open
   * @return the curve
   * @throws IOException if the sheet cannot be read
   * @throws InputFormatException listing everything wrong with the sheet by line and column
   */
  public static NormalisedCurve read(String source, Reader reader) throws IOException {
    Sheet sheet =
        Sheet.read(source, reader, List.of("part", "time_fraction", "height_fraction"), List.of());
    Part rise = new Part();
    Part fall = new Part();
    for (Sheet.Row row : sheet.rows()) {
      String part = row.text("part");
      if (!part.equals("rise") && !part.equals("fall")) {
        row.problem("part", "must be rise or fall, but was \"" + part + "\"");
      }
      OptionalDouble time = row.number("time_fraction", 0.0, 1.0);
      OptionalDouble height = row.number("height_fraction", 0.0, 1.0);
      (part.equals("fall") ? fall : rise).add(row, time, height);
    }
    sheet.refuseIfFaulty();
    try {
      return of(rise.times(), rise.heights(), fall.times(), fall.heights());
    } catch (IllegalArgumentException e) {
      sheet.problem(String.valueOf(e.getMessage()));
      sheet.refuseIfFaulty();
      throw e;
    }
  }

  /**
   * Reads a file in UTF-8.
   *
   * @param file the file; messages call it by its path
   * @return the curve
   * @throws IOException if the file is not there or cannot be read
   * @throws InputFormatException listing everything wrong with the file by line and column
   */
  public static NormalisedCurve read(Path file) throws IOException {
    try (Reader reader = Sheet.open(file)) {
      return read(file.toString(), reader);
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof NormalisedCurve that
        && rise.equals(that.rise)
        && fall.equals(that.fall);
  }

  @Override
  public int hashCode() {
    return Objects.hash(rise, fall);
  }

  /** What it is, without its points, which are too many for a log. */
  @Override
  public String toString() {
    return "normalised curve of rise and fall";
  }

  /** The points of the rise or the fall as they are read. */
  private static final class Part {
    private final List<double[]> points = new ArrayList<>();

    void add(Sheet.Row row, OptionalDouble time, OptionalDouble height) {
      if (!time.isPresent() || !height.isPresent()) {
        return;
      }
      double before = points.isEmpty() ? -1.0 : points.get(points.size() - 1)[0];
      if (!(time.getAsDouble() > before)) {
        row.problem(
            "time_fraction",
            "must be later than the point before, " + before + ", but was " + time.getAsDouble());
      }
      points.add(new double[] {time.getAsDouble(), height.getAsDouble()});
    }

    double[] times() {
      return points.stream().mapToDouble(point -> point[0]).toArray();
    }

    double[] heights() {
      return points.stream().mapToDouble(point -> point[1]).toArray();
    }
  }

  private static double[] even(int points) {
    double[] times = new double[points];
    for (int i = 0; i < points; i++) {
      times[i] = (double) i / Math.max(1, points - 1);
    }
    return times;
  }

  private static void check(
      String name, double[] times, double[] heights, double first, double last) {
    int points = times.length;
    if (points < 2 || heights.length != points) {
      throw new IllegalArgumentException(
          "a "
              + name
              + " must have at least 2 points, a time and a height each, but had "
              + points
              + " times and "
              + heights.length
              + " heights");
    }
    for (int i = 0; i < points; i++) {
      boolean inOrder = i == 0 ? times[0] == 0.0 : times[i] > times[i - 1];
      if (!inOrder || (i == points - 1 && times[i] != 1.0)) {
        throw new IllegalArgumentException(
            "times of a "
                + name
                + " must increase from 0 to 1, but time "
                + (i + 1)
                + " was "
                + times[i]);
      }
      boolean isEnd = i == 0 || i == points - 1;
      double end = i == 0 ? first : last;
      if (!(heights[i] >= 0.0 && heights[i] <= 1.0) || (isEnd && heights[i] != end)) {
        throw new IllegalArgumentException(
            "heights of a "
                + name
                + " must be in [0, 1] and run from "
                + (int) first
                + " to "
                + (int) last
                + ", but height "
                + (i + 1)
                + " was "
                + heights[i]);
      }
    }
  }

  MonotoneCubic part(boolean rising) {
    return rising ? rise : fall;
  }

  /**
   * How far the rising water stands above low water.
   *
   * @param fractionOfInterval time since low water as a fraction of the rise, in [0, 1]
   * @return fraction of the range, in [0, 1]; NaN for NaN
   */
  public double risingFraction(double fractionOfInterval) {
    return rise.value(fractionOfInterval);
  }

  /**
   * How far the falling water stands above low water.
   *
   * @param fractionOfInterval time since high water as a fraction of the fall, in [0, 1]
   * @return fraction of the range, in [0, 1]; NaN for NaN
   */
  public double fallingFraction(double fractionOfInterval) {
    return fall.value(fractionOfInterval);
  }
}
