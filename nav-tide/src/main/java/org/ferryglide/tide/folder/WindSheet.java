package org.ferryglide.tide.folder;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.sheet.Sheet;

/** Reads a forecast of the wind. */
final class WindSheet {
  private static final double FASTEST_KNOTS = 150.0;
  private static final Position NOWHERE = Position.ofDegrees(0, 0);

  /** A place as it fills up, row by row. */
  private static final class Filling {
    private final Position position;
    private final String positionText;
    private final List<Double> seconds = new ArrayList<>();
    private final List<Double> from = new ArrayList<>();
    private final List<Double> knots = new ArrayList<>();

    private Filling(Position position, String positionText) {
      this.position = position;
      this.positionText = positionText;
    }

    private ForecastWind.Place place() {
      return new ForecastWind.Place(
          position,
          seconds.stream().mapToDouble(Double::doubleValue).toArray(),
          from.stream().mapToDouble(Double::doubleValue).toArray(),
          knots.stream().mapToDouble(Double::doubleValue).toArray());
    }
  }

  private WindSheet() {}

  static ForecastWind read(String source, Reader reader) throws IOException {
    Sheet sheet =
        Sheet.read(
            source,
            reader,
            List.of("place", "position", "time", "from_deg", "speed_kn"),
            List.of());
    Map<String, Filling> places = new LinkedHashMap<>();
    for (Sheet.Row row : sheet.rows()) {
      String name = row.text("place");
      if (name.isEmpty()) {
        row.problem("place", "must not be empty");
        continue;
      }
      if (!places.containsKey(name)) {
        Position position = row.read("position", Position::parse, NOWHERE);
        places.put(name, new Filling(position, row.text("position")));
      }
      add(places.get(name), row);
    }
    if (sheet.rows().isEmpty()) {
      sheet.problem("must have at least one row beneath the heading line");
    }
    sheet.refuseIfFaulty();
    List<ForecastWind.Place> filled = new ArrayList<>();
    places.values().forEach(place -> filled.add(place.place()));
    return new ForecastWind(source, filled);
  }

  private static void add(Filling place, Sheet.Row row) {
    if (row.has("position") && !row.text("position").equals(place.positionText)) {
      row.problem(
          "position",
          "must be empty or as in the first row of the place, "
              + place.positionText
              + ", but was "
              + row.text("position"));
    }
    Optional<Double> time =
        row.read(
            "time",
            text -> Optional.of(EpochSeconds.of(PassageSheet.dateAndTime(text).toInstant())),
            Optional.empty());
    OptionalDouble speed = row.number("speed_kn", 0.0, FASTEST_KNOTS);
    boolean calm = speed.orElse(1.0) == 0.0 && !row.has("from_deg");
    OptionalDouble from = calm ? OptionalDouble.of(0.0) : row.number("from_deg", 0.0, 360.0);
    if (!time.isPresent() || !speed.isPresent() || !from.isPresent()) {
      return;
    }
    int last = place.seconds.size() - 1;
    if (last >= 0 && !(time.get() > place.seconds.get(last))) {
      row.problem("time", "must be later than in the row before, but was " + row.text("time"));
      return;
    }
    place.seconds.add(time.get());
    place.from.add(from.getAsDouble());
    place.knots.add(speed.getAsDouble());
  }
}
