package org.ferryglide.tide.stream;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.sheet.Sheet;

/** Reads hourly stream tables, many stations in one sheet. */
final class StreamSheet {
  private static final List<String> OF_THE_STATION =
      List.of("latitude", "longitude", "port", "neap_range_m", "spring_range_m", "about");
  private static final List<String> OF_THE_ROW =
      List.of("hour", "set_deg", "spring_rate_kn", "neap_rate_kn");

  /** Faster is refused as a misprint; common practice, no source. */
  private static final double FASTEST_KNOTS = 25.0;

  /** A larger range is refused as a misprint; common practice, no source. */
  private static final double GREATEST_RANGE_METRES = 25.0;

  /** A station as it fills up, row by row. */
  private static final class Station {
    private final Sheet.Row first;
    private final Map<Integer, Optional<StreamHour>> hours = new LinkedHashMap<>();
    private final Map<Integer, Integer> lineOfHour = new LinkedHashMap<>();

    Station(Sheet.Row first) {
      this.first = first;
    }
  }

  private StreamSheet() {}

  static List<StreamTable> read(String source, Reader reader) throws IOException {
    List<String> required = new ArrayList<>(List.of("station"));
    required.addAll(OF_THE_STATION.subList(0, 5));
    required.addAll(OF_THE_ROW);
    Sheet sheet = Sheet.read(source, reader, required, List.of("about"));
    Map<String, Station> stations = new LinkedHashMap<>();
    for (Sheet.Row row : sheet.rows()) {
      if (!row.has("station")) {
        row.problem("station", "must not be empty");
        continue;
      }
      Station station = stations.computeIfAbsent(row.text("station"), name -> new Station(row));
      RepeatedFields.refuseContradiction(station.first, row, OF_THE_STATION);
      addHour(station, row);
    }
    Set<String> misspelt = StationNames.misspelt(rowsOf(stations));
    List<StreamTable> tables = new ArrayList<>();
    stations.forEach(
        (name, station) -> {
          Optional<String> meant = StationNames.meant(name, rowsOf(stations));
          if (meant.isPresent()) {
            station.first.problem(
                "station",
                "\""
                    + name
                    + "\" has "
                    + station.hours.size()
                    + " of the "
                    + StreamTable.COMPLETE_ROWS
                    + " rows of a table; did you mean \""
                    + meant.get()
                    + "\"?");
          } else if (!misspelt.contains(name)) {
            table(source, sheet.isWhole(), name, station).ifPresent(tables::add);
          }
        });
    if (stations.isEmpty()) {
      sheet.problem("must have at least one row beneath the heading line");
    }
    sheet.refuseIfFaulty();
    return List.copyOf(tables);
  }

  private static void addHour(Station station, Sheet.Row row) {
    OptionalDouble number = row.number("hour", -6.0, 6.0);
    OptionalDouble spring = row.number("spring_rate_kn", 0.0, FASTEST_KNOTS);
    OptionalDouble neap = row.number("neap_rate_kn", 0.0, FASTEST_KNOTS);
    boolean slack = !row.has("set_deg") && spring.orElse(1.0) == 0.0 && neap.orElse(1.0) == 0.0;
    OptionalDouble set = slack ? OptionalDouble.of(0.0) : row.number("set_deg", 0.0, 360.0);
    if (!number.isPresent()) {
      return;
    }
    int hour = (int) number.getAsDouble();
    if (hour != number.getAsDouble()) {
      row.problem("hour", "must be a whole number, but was \"" + row.text("hour") + "\"");
      return;
    }
    if (station.hours.containsKey(hour)) {
      row.problem("hour", hour + " occurs twice for station " + row.text("station"));
      return;
    }
    boolean complete = spring.isPresent() && neap.isPresent() && set.isPresent();
    station.lineOfHour.put(hour, row.line());
    station.hours.put(
        hour,
        complete
            ? Optional.of(
                new StreamHour(
                    hour,
                    TrueBearing.ofDegrees(set.getAsDouble()),
                    Speed.ofKnots(spring.getAsDouble()),
                    Speed.ofKnots(neap.getAsDouble())))
            : Optional.empty());
  }

  private static Map<String, Integer> rowsOf(Map<String, Station> stations) {
    Map<String, Integer> rows = new LinkedHashMap<>();
    stations.forEach((name, station) -> rows.put(name, station.hours.size()));
    return rows;
  }

  private static Optional<StreamTable> table(
      String source, boolean wholeSheet, String name, Station station) {
    Sheet.Row first = station.first;
    OptionalDouble latitude = first.number("latitude", -90.0, 90.0);
    OptionalDouble longitude = first.number("longitude", -180.0, 180.0);
    OptionalDouble neap = first.number("neap_range_m", 0.0, GREATEST_RANGE_METRES);
    OptionalDouble spring = first.number("spring_range_m", 0.0, GREATEST_RANGE_METRES);
    if (neap.isPresent() && spring.isPresent() && spring.getAsDouble() <= neap.getAsDouble()) {
      first.problem(
          "spring_range_m",
          "must be above the neap range of "
              + neap.getAsDouble()
              + ", but was "
              + spring.getAsDouble());
      spring = OptionalDouble.empty();
    }
    if (!first.has("port")) {
      first.problem("port", "must not be empty");
    }
    TideEvent.Kind about =
        first.has("about")
            ? first.read("about", StreamSheet::about, TideEvent.Kind.HIGH)
            : TideEvent.Kind.HIGH;
    for (int hour = -6; hour <= 6 && wholeSheet; hour++) {
      if (!station.hours.containsKey(hour)) {
        first.problem("hour", "station " + name + " has no row for hour " + hour);
      }
    }
    List<StreamHour> hours = new ArrayList<>();
    station.hours.values().forEach(hour -> hour.ifPresent(hours::add));
    if (StreamTableDoubts.areSwapped(hours)) {
      first.problem(
          "neap_rate_kn",
          "is above the spring rate in most rows of station "
              + name
              + "; the two columns seem to be exchanged");
    }
    boolean complete =
        latitude.isPresent()
            && longitude.isPresent()
            && neap.isPresent()
            && spring.isPresent()
            && first.has("port")
            && hours.size() == StreamTable.COMPLETE_ROWS;
    return complete
        ? Optional.of(
            StreamTable.of(
                name,
                Position.ofDegrees(latitude.getAsDouble(), longitude.getAsDouble()),
                new StandardPort(
                    first.text("port"),
                    about,
                    new MeanRanges(
                        Distance.ofMetres(spring.getAsDouble()),
                        Distance.ofMetres(neap.getAsDouble()))),
                hours,
                source,
                station.lineOfHour))
        : Optional.empty();
  }

  private static TideEvent.Kind about(String text) {
    return switch (text) {
      case "HW" -> TideEvent.Kind.HIGH;
      case "LW" -> TideEvent.Kind.LOW;
      default -> throw new IllegalArgumentException("must be HW or LW, but was \"" + text + "\"");
    };
  }

  static void write(List<StreamTable> tables, Appendable out) throws IOException {
    out.append("station,latitude,longitude,port,neap_range_m,spring_range_m,about,hour,set_deg,")
        .append("spring_rate_kn,neap_rate_kn\n");
    for (StreamTable table : tables) {
      if (!table.isComplete() || table.hours().size() != StreamTable.COMPLETE_ROWS) {
        throw new IllegalArgumentException(
            "a stream table must have the thirteen rows from -6 to 6 to be written, but "
                + table.station()
                + " had "
                + table.hours().size()
                + " rows");
      }
      StandardPort port = table.standardPort();
      String station =
          String.join(
              ",",
              Double.toString(table.position().latitudeDegrees()),
              Double.toString(table.position().longitudeDegrees()),
              Sheet.field("name of a port", port.name()),
              Double.toString(port.meanRanges().neap().metres()),
              Double.toString(port.meanRanges().spring().metres()),
              port.mark());
      for (StreamHour row : table.hours()) {
        out.append(Sheet.field("name of a station", table.station()))
            .append(',')
            .append(station)
            .append(',')
            .append(Integer.toString(row.hour()))
            .append(',')
            .append(Double.toString(row.set().degrees()))
            .append(',')
            .append(knots(row.springRate()))
            .append(',')
            .append(knots(row.neapRate()))
            .append('\n');
        station = ",,,,,"; // said once, in the station's first row
      }
    }
  }

  /** The shortest decimal number of knots that is read back as the same speed. */
  private static String knots(Speed rate) {
    for (double scale = 1.0; scale < 1e6; scale *= 10.0) {
      double rounded = Math.rint(rate.knots() * scale) / scale;
      if (Speed.ofKnots(rounded).equals(rate)) {
        return Double.toString(rounded);
      }
    }
    double knots = rate.knots();
    for (double near : new double[] {knots, Math.nextUp(knots), Math.nextDown(knots)}) {
      if (Speed.ofKnots(near).equals(rate)) {
        return Double.toString(near);
      }
    }
    return Double.toString(knots); // a speed that no number of knots gives; within a rounding
  }
}
