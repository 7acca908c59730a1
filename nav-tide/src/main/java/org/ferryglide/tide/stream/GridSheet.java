package org.ferryglide.tide.stream;

import java.io.IOException;
import java.io.Reader;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.tide.sheet.Sheet;

/** Reads a gridded stream, one cell a row. */
final class GridSheet {
  private static final double FASTEST_METRES_PER_SECOND = 15.0;
  private static final double FASTEST_KNOTS = 25.0;

  /** A step of a grid is at most this many times the wider of those beside it. */
  private static final double WIDEST_STEP = 1.6;

  /** A sheet of fewer cells than this may have rows for as few of them as it likes. */
  private static final double FEW_CELLS = 1e6;

  /** Otherwise it has at most so many cells to a row: an eighth water, the rest land. */
  private static final double MOST_CELLS_TO_A_ROW = 8.0;

  private record Key(double time, double latitude, double longitude) {}

  private GridSheet() {}

  static GriddedStream read(String source, Reader reader) throws IOException {
    Sheet sheet =
        Sheet.read(
            source,
            reader,
            List.of("time", "latitude", "longitude"),
            List.of("east_ms", "north_ms", "set_deg", "rate_kn"));
    Map<Key, double[]> cells = new HashMap<>();
    Map<Key, Sheet.Row> rows = new HashMap<>();
    for (Sheet.Row row : sheet.rows()) {
      Instant time = row.read("time", CurrentSheet::instant, Instant.EPOCH);
      OptionalDouble latitude = row.number("latitude", -90.0, 90.0);
      OptionalDouble longitude = row.number("longitude", -180.0, 180.0);
      double[] flow = flow(row);
      if (latitude.isPresent() && longitude.isPresent()) {
        double east = longitude.getAsDouble() == 180.0 ? -180.0 : longitude.getAsDouble();
        Key key = new Key(EpochSeconds.of(time), latitude.getAsDouble(), east);
        Sheet.Row before = rows.putIfAbsent(key, row);
        if (before != null) {
          row.problem("time", "the same cell stands in line " + before.line());
        }
        cells.put(key, flow);
      }
    }
    sheet.refuseIfFaulty();
    double[] times = axis(cells, 0);
    double[] latitudes = axis(cells, 1);
    double[] printed = axis(cells, 2);
    for (double[] axis : List.of(times, latitudes, printed)) {
      if (axis.length < 2) {
        sheet.problem("must have at least 2 times, 2 latitudes and 2 longitudes");
      }
    }
    sheet.refuseIfFaulty();
    double[] longitudes = fromTheWidestGap(printed);
    refuseHole(sheet, times, "time", t -> EpochSeconds.toInstant(t).toString());
    refuseHole(sheet, latitudes, "latitude", Double::toString);
    refuseHole(sheet, longitudes, "longitude", Double::toString);
    sheet.refuseIfFaulty();
    refuseMostlyEmpty(sheet, (double) times.length * latitudes.length * longitudes.length);
    double[] east = new double[times.length * latitudes.length * longitudes.length];
    double[] north = new double[east.length];
    Arrays.fill(east, Double.NaN);
    Arrays.fill(north, Double.NaN);
    Sheet.Row[] rowOf = new Sheet.Row[east.length];
    cells.forEach(
        (key, flow) -> {
          int t = Arrays.binarySearch(times, key.time());
          int i = Arrays.binarySearch(latitudes, key.latitude());
          int j = Arrays.binarySearch(longitudes, key.longitude());
          j = j >= 0 ? j : Arrays.binarySearch(longitudes, key.longitude() + 360.0);
          int at = (t * latitudes.length + i) * longitudes.length + j;
          east[at] = flow[0];
          north[at] = flow[1];
          rowOf[at] = rows.get(key);
        });
    int places = latitudes.length * longitudes.length;
    double[] eastHere = new double[times.length];
    double[] northHere = new double[times.length];
    for (int place = 0; place < places; place++) {
      for (int t = 0; t < times.length; t++) {
        eastHere[t] = east[t * places + place];
        northHere[t] = north[t * places + place];
      }
      int first = place;
      GridDoubts.judge(times, eastHere, northHere, t -> rowOf[t * places + first]);
    }
    return GriddedStream.of(source, latitudes, longitudes, times, east, north)
        .withNotes(sheet.doubts());
  }

  /** Rows off the grid make an axis of their own each, and a grid that no memory holds. */
  private static void refuseMostlyEmpty(Sheet sheet, double cells) {
    int rows = sheet.rows().size();
    if (cells > Math.max(FEW_CELLS, MOST_CELLS_TO_A_ROW * rows)) {
      sheet
          .rows()
          .get(rows - 1)
          .problem(
              "time",
              "up to this line "
                  + rows
                  + " rows make a grid of "
                  + (long) cells
                  + " cells, nearly all of them missing; times, latitudes or longitudes seem not to"
                  + " lie on a grid");
      sheet.refuseIfFaulty();
    }
  }

  private static double[] axis(Map<Key, double[]> cells, int which) {
    TreeSet<Double> values = new TreeSet<>();
    for (Key key : cells.keySet()) {
      values.add(which == 0 ? key.time() : which == 1 ? key.latitude() : key.longitude());
    }
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /**
   * Longitudes from west to east of the widest gap between them, which is what the grid leaves out;
   * those beyond the antimeridian as more than 180.
   */
  private static double[] fromTheWidestGap(double[] longitudes) {
    int first = 0;
    double widest = longitudes[0] + 360.0 - longitudes[longitudes.length - 1];
    for (int j = 1; j < longitudes.length; j++) {
      if (longitudes[j] - longitudes[j - 1] > widest) {
        widest = longitudes[j] - longitudes[j - 1];
        first = j;
      }
    }
    double west = longitudes[first];
    return Arrays.stream(longitudes).map(l -> l < west ? l + 360.0 : l).sorted().toArray();
  }

  /** A step wider than both beside it would be bridged over what may be land or lost hours. */
  private static void refuseHole(
      Sheet sheet, double[] axis, String heading, DoubleFunction<String> text) {
    for (int i = 2; i + 1 < axis.length; i++) {
      double beside = Math.max(axis[i - 1] - axis[i - 2], axis[i + 1] - axis[i]);
      if (axis[i] - axis[i - 1] > WIDEST_STEP * beside) {
        sheet.problem(
            heading
                + ": cells seem to be missing between "
                + text.apply(axis[i - 1])
                + " and "
                + text.apply(axis[i])
                + "; cells without data must stand in rows with empty figures");
      }
    }
  }

  /** East and north of a row; NaN if it is missing or at fault. */
  private static double[] flow(Sheet.Row row) {
    boolean parts = row.has("east_ms") || row.has("north_ms");
    boolean setAndRate = row.has("set_deg") || row.has("rate_kn");
    if (parts && setAndRate) {
      row.problem("east_ms", "must not be given beside set_deg and rate_kn");
    } else if (parts) {
      OptionalDouble east =
          row.number("east_ms", -FASTEST_METRES_PER_SECOND, FASTEST_METRES_PER_SECOND);
      OptionalDouble north =
          row.number("north_ms", -FASTEST_METRES_PER_SECOND, FASTEST_METRES_PER_SECOND);
      if (east.isPresent() && north.isPresent()) {
        return new double[] {east.getAsDouble(), north.getAsDouble()};
      }
    } else if (setAndRate) {
      OptionalDouble set = row.number("set_deg", 0.0, 360.0);
      OptionalDouble rate = row.number("rate_kn", 0.0, FASTEST_KNOTS);
      if (set.isPresent() && rate.isPresent()) {
        Velocity flow =
            Velocity.ofSetAndRate(
                TrueBearing.ofDegrees(set.getAsDouble()), Speed.ofKnots(rate.getAsDouble()));
        return new double[] {flow.eastMetresPerSecond(), flow.northMetresPerSecond()};
      }
    }
    return new double[] {Double.NaN, Double.NaN};
  }
}
