package org.ferryglide.tide.stream;

import java.io.IOException;
import java.io.Reader;
import java.io.Serializable;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.Explanation;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.tide.sheet.Sheet;

/**
 * A stream on a grid of latitudes, longitudes and times, as models and forecasts give it: bilinear
 * in place, linear in time, for the east and north components separately.
 *
 * <p>Cells that are NaN are missing, usually land. Where a missing cell would have a share in the
 * answer there are no data; nor outside the grid.
 *
 * <pre>{@code
 * GriddedStream stream =
 *     GriddedStream.of("model", latitudes, longitudes, epochSeconds, east, north);
 * GriddedStream fromSheet = GriddedStream.read("grid.csv", reader);
 * }</pre>
 */
public final class GriddedStream implements StreamField, Serializable {
  private static final long serialVersionUID = 1L;

  /** An array of two figures a cell holds no more. */
  private static final int MOST_CELLS = Integer.MAX_VALUE / 2;

  private final String source;
  private final Axis latitudes;
  private final Axis longitudes;
  private final Axis times;

  /** East and north of each cell in turn; longitude runs fastest, then latitude, then time. */
  private final double[] flow;

  private final double maxRate;
  private final Note[] notes;

  private GriddedStream(
      String source, Axis latitudes, Axis longitudes, Axis times, double[] flow, List<Note> notes) {
    this.notes = notes.toArray(new Note[0]);
    this.source = source;
    this.latitudes = latitudes;
    this.longitudes = longitudes;
    this.times = times;
    this.flow = flow;
    double max = 0.0;
    for (int i = 0; i < flow.length; i += 2) {
      double rate = Math.hypot(flow[i], flow[i + 1]);
      max = rate > max ? rate : max; // NaN cells are passed over
    }
    this.maxRate = max;
  }

  /**
   * Makes a field from arrays, which are copied.
   *
   * @param source what explanations shall call it, not empty
   * @param latitudesDegrees increasing, at least two, in [-90, 90]
   * @param longitudesDegrees increasing, at least two, in [-180, 540], spanning less than 360;
   *     beyond 180 to cross the antimeridian
   * @param epochSeconds times, seconds since 1970-01-01T00:00:00Z, increasing, at least two
   * @param eastMetresPerSecond east components, metres a second, NaN where missing; cell (time t,
   *     latitude i, longitude j) at index {@code (t * latitudesDegrees.length + i) *
   *     longitudesDegrees.length + j}
   * @param northMetresPerSecond north components, in the same order
   * @return the field
   * @throws IllegalArgumentException if an axis is too short, not increasing or out of range, an
   *     array has another length than the axes ask for, a component is infinite, or only one
   *     component of a cell is NaN
   */
  public static GriddedStream of(
      String source,
      double[] latitudesDegrees,
      double[] longitudesDegrees,
      double[] epochSeconds,
      double[] eastMetresPerSecond,
      double[] northMetresPerSecond) {
    if (source.isEmpty()) {
      throw new IllegalArgumentException("name of a gridded stream must not be empty");
    }
    refuseAxis(latitudesDegrees, -90.0, 90.0, "latitudes");
    refuseAxis(longitudesDegrees, -180.0, 540.0, "longitudes");
    refuseAxis(epochSeconds, -1e11, 1e11, "times");
    if (!(longitudesDegrees[longitudesDegrees.length - 1] - longitudesDegrees[0] < 360.0)) {
      throw new IllegalArgumentException(
          "longitudes of a grid must span less than 360 degrees, but span "
              + (longitudesDegrees[longitudesDegrees.length - 1] - longitudesDegrees[0]));
    }
    double product =
        (double) latitudesDegrees.length * longitudesDegrees.length * epochSeconds.length;
    int cells = (int) Math.min(product, MOST_CELLS);
    if (cells != product
        || eastMetresPerSecond.length != cells
        || northMetresPerSecond.length != cells) {
      throw new IllegalArgumentException(
          "a grid of "
              + epochSeconds.length
              + " times, "
              + latitudesDegrees.length
              + " latitudes and "
              + longitudesDegrees.length
              + " longitudes must have "
              + (long) product
              + " east and north parts, but had "
              + eastMetresPerSecond.length
              + " and "
              + northMetresPerSecond.length);
    }
    double[] flow = new double[2 * cells];
    for (int i = 0; i < cells; i++) {
      if (Double.isInfinite(eastMetresPerSecond[i])
          || Double.isInfinite(northMetresPerSecond[i])
          || Double.isNaN(eastMetresPerSecond[i]) != Double.isNaN(northMetresPerSecond[i])) {
        throw new IllegalArgumentException(
            "both parts of a cell must be finite or both NaN, but cell "
                + i
                + " was "
                + eastMetresPerSecond[i]
                + ", "
                + northMetresPerSecond[i]);
      }
      flow[2 * i] = eastMetresPerSecond[i];
      flow[2 * i + 1] = northMetresPerSecond[i];
    }
    return new GriddedStream(
        source,
        new Axis(latitudesDegrees.clone()),
        new Axis(longitudesDegrees.clone()),
        new Axis(epochSeconds.clone()),
        flow,
        List.of());
  }

  /** The same field with what looked wrong where it was read. */
  GriddedStream withNotes(List<Note> doubts) {
    return new GriddedStream(source, latitudes, longitudes, times, flow, doubts);
  }

  /**
   * What looked wrong in the sheet of the field: a rate faster than nearly all streams known; where
   * its times are an hour apart or less, a rate of a cell far above those before and after, and a
   * set turned round once. Every explanation carries these notes.
   *
   * @return unmodifiable list; empty for a field made from arrays
   */
  public List<Note> notes() {
    return List.of(notes);
  }

  private static void refuseAxis(double[] axis, double least, double greatest, String name) {
    if (axis.length < 2) {
      throw new IllegalArgumentException(
          "a grid must have at least 2 " + name + ", but had " + axis.length);
    }
    for (int i = 0; i < axis.length; i++) {
      if (!(axis[i] >= least && axis[i] <= greatest) || (i > 0 && axis[i] <= axis[i - 1])) {
        throw new IllegalArgumentException(
            name
                + " of a grid must increase within ["
                + least
                + ", "
                + greatest
                + "], but number "
                + (i + 1)
                + " was "
                + axis[i]);
      }
    }
  }

  /**
   * Reads a sheet of cells, one a row in any order: headings {@code time} (with its offset from
   * UTC, such as {@code 2026-06-01T09:00Z}), {@code latitude}, {@code longitude} (decimal degrees),
   * and either {@code east_ms} and {@code north_ms} (metres a second) or {@code set_deg} (true) and
   * {@code rate_kn}. A cell without a row, or with both figures empty, is missing. Where a step of
   * time, latitude or longitude is more than 1.6 times both steps beside it, rows seem to be
   * missing and the sheet is refused; one row with empty figures there says that they are meant to
   * be. A grid of more than a million cells with rows for less than an eighth of them is refused
   * too.
   *
   * @param source what to call the sheet in messages and explanations
   * @param reader the text; left open
   * @return the field
   * @throws IOException if the text cannot be read
   * @throws org.ferryglide.nav.note.InputFormatException listing every problem by line and column
   */
  public static GriddedStream read(String source, Reader reader) throws IOException {
    return GridSheet.read(source, reader);
  }

  /**
   * Reads a file in UTF-8, as {@link #read(String, Reader)} does.
   *
   * @param file the file; messages call it by its path
   * @return the field
   * @throws IOException if the file is not there or cannot be read
   * @throws org.ferryglide.nav.note.InputFormatException listing every problem by line and column
   */
  public static GriddedStream read(Path file) throws IOException {
    try (Reader reader = Sheet.open(file)) {
      return read(file.toString(), reader);
    }
  }

  @Override
  public boolean sample(
      double latitudeDegrees,
      double longitudeDegrees,
      double epochSeconds,
      double[] eastNorth,
      int offset) {
    int i = latitudes.segment(latitudeDegrees);
    double longitude = turned(longitudeDegrees);
    int j = longitudes.segment(longitude);
    int t = times.segment(epochSeconds);
    if (i < 0 || j < 0 || t < 0) {
      return false;
    }
    double up = share(latitudes, i, latitudeDegrees);
    double right = share(longitudes, j, longitude);
    double later = share(times, t, epochSeconds);
    double east = 0.0;
    double north = 0.0;
    for (int corner = 0; corner < 8; corner++) {
      double weight =
          ((corner & 1) == 0 ? 1.0 - right : right)
              * ((corner & 2) == 0 ? 1.0 - up : up)
              * ((corner & 4) == 0 ? 1.0 - later : later);
      if (weight != 0.0) {
        int cell = 2 * ((t + (corner >> 2)) * (latitudes.segments() + 1) + i + ((corner >> 1) & 1));
        int at = cell * (longitudes.segments() + 1) + 2 * (j + (corner & 1));
        east += weight * flow[at];
        north += weight * flow[at + 1];
      }
    }
    if (Double.isNaN(east)) { // a missing cell has a share
      return false;
    }
    eastNorth[offset] = east;
    eastNorth[offset + 1] = north;
    return true;
  }

  /** The same longitude where the grid has it. */
  private double turned(double longitudeDegrees) {
    double first = longitudes.value(0);
    double longitude = longitudeDegrees;
    if (longitude < first) {
      longitude += 360.0;
    } else if (longitude > longitudes.value(longitudes.segments()) && longitude - 360.0 >= first) {
      longitude -= 360.0;
    }
    return longitude;
  }

  private static double share(Axis axis, int segment, double value) {
    double from = axis.value(segment);
    return (value - from) / (axis.value(segment + 1) - from);
  }

  @Override
  public double startSeconds() {
    return times.value(0);
  }

  @Override
  public double endSeconds() {
    return times.value(times.segments());
  }

  @Override
  public String source() {
    return source;
  }

  @Override
  public double nextBreakAfter(double epochSeconds) {
    return times.nextAfter(epochSeconds);
  }

  @Override
  public Optional<Speed> maxRate() {
    return Optional.of(Speed.ofMetresPerSecond(maxRate));
  }

  @Override
  public Explanation explain(Position position, Instant instant) {
    if (!at(position, instant).isPresent()) {
      return StreamFlags.noData(
          "The grid " + source + " does not reach this place and time, or has no cell here.");
    }
    List<Note> all = new ArrayList<>(List.of(notes));
    all.add(
        Note.information(
                "stream.gridded", "Interpolated between the cells of a grid and between its times.")
            .with("source", source));
    return new Explanation(List.of(new Explanation.Source(source, 1.0)), all);
  }

  /** Source and size. */
  @Override
  public String toString() {
    return source
        + ", "
        + (times.segments() + 1)
        + " times, "
        + (latitudes.segments() + 1)
        + " latitudes, "
        + (longitudes.segments() + 1)
        + " longitudes";
  }
}
