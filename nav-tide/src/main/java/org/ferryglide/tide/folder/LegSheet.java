package org.ferryglide.tide.folder;

import java.io.IOException;
import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.passage.LegOptions;
import org.ferryglide.nav.passage.PassageLeg;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.tide.sheet.Sheet;
import org.ferryglide.tide.stream.HourlyStream;
import org.jspecify.annotations.Nullable;

/**
 * A row of {@code legs.csv}: how a leg is paddled where it differs from the rest.
 *
 * @param options all but the stream
 * @param station the station whose stream alone holds along the leg
 * @param steady the stream that holds along the leg
 */
record LegSheet(LegOptions options, @Nullable String station, @Nullable Velocity steady)
    implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double FASTEST_KNOTS = 12.0;
  private static final String STATION = "station ";

  private static final String ROUND = "quickest round ";
  private static final String HEADINGS_AT = "new headings at ";
  private static final String AND = " and ";

  static Map<Integer, LegSheet> read(
      FolderText file, Known known, Map<String, List<Position>> obstacles) throws IOException {
    Sheet sheet =
        Sheet.read(
            file.source(),
            file.reader(),
            List.of("leg"),
            List.of("strategy", "speed_kn", "rests", "stream", "line"));
    Map<Integer, LegSheet> legs = new LinkedHashMap<>();
    int last = Math.max(1, known.places().isEmpty() ? 1000 : known.places().size() - 1);
    for (Sheet.Row row : sheet.rows()) {
      double number = row.number("leg", 1, last).orElse(0.0);
      if (number != Math.rint(number)) {
        row.problem("leg", "must be a whole number, but was " + row.text("leg"));
      } else if (legs.put((int) number, of(row, known, obstacles)) != null && number > 0.0) {
        row.problem("leg", row.text("leg") + " stands twice");
      }
    }
    sheet.refuseIfFaulty();
    return legs;
  }

  private static LegSheet of(Sheet.Row row, Known known, Map<String, List<Position>> obstacles) {
    LegOptions options = LegOptions.usual();
    options =
        Words.of(row, "strategy", text -> strategy(text, obstacles))
            .map(options::withStrategy)
            .orElse(options);
    Optional<Speed> speed = Words.knots(row, "speed_kn", FASTEST_KNOTS);
    if (speed.isPresent() && speed.get().knots() == 0.0) {
      row.problem("speed_kn", "must be above 0, but was " + row.text("speed_kn"));
    } else if (speed.isPresent()) {
      options = options.withSpeed(speed.get());
    }
    options = chosen(row, "rests", "none") ? options.withoutRests() : options;
    options = chosen(row, "line", "geodesic") ? options.alongGeodesic() : options;
    String stream = row.text("stream");
    if (stream.startsWith(STATION)) {
      String station = stream.substring(STATION.length()).trim();
      known.requireStation(row, "stream", station);
      return new LegSheet(options, station, null);
    }
    return new LegSheet(
        options, null, Words.of(row, "stream", LegSheet::steadyStream).orElse(null));
  }

  private static Strategy strategy(String text, Map<String, List<Position>> obstacles) {
    if (text.startsWith(HEADINGS_AT)) {
      List<Instant> times = new ArrayList<>();
      for (String time : text.substring(HEADINGS_AT.length()).split(AND, -1)) {
        times.add(PassageSheet.dateAndTime(time.trim()).toInstant());
      }
      return Strategy.newHeadingsAt(times);
    }
    if (!text.startsWith(ROUND)) {
      return Words.strategy(text);
    }
    List<List<Position>> round = new ArrayList<>();
    for (String name : text.substring(ROUND.length()).split(AND, -1)) {
      List<Position> outline = obstacles.get(name.trim());
      if (outline == null) {
        throw new IllegalArgumentException(
            "must go round the names of obstacles.csv, "
                + new TreeSet<>(obstacles.keySet())
                + ", but was "
                + name.trim()
                + NearName.question(name.trim(), obstacles.keySet()));
      }
      round.add(outline);
    }
    return Strategy.quickestAround(round);
  }

  /** The file that reads as the legs of a passage; those like the rest are left out. */
  static String text(List<PassageLeg> legs, List<HourlyStream> streams) {
    StringBuilder rows = new StringBuilder("leg,strategy,speed_kn,rests,stream,line\n");
    for (PassageLeg leg : legs) {
      LegOptions options = leg.options();
      if (!options.equals(LegOptions.usual())) {
        rows.append(leg.number())
            .append(',')
            .append(Sheet.field("strategy", strategyText(options.strategy())))
            .append(',')
            .append(options.speed().map(Numbers::knots).orElse(""))
            .append(options.isWithoutRests() ? ",none," : ",,")
            .append(options.stream().map(own -> streamText(own, streams)).orElse(""))
            .append(options.isGeodesic() ? ",geodesic" : ",")
            .append('\n');
      }
    }
    return rows.toString();
  }

  private static String strategyText(Strategy strategy) {
    for (String text : List.of("constant heading", "track held", "bow on target", "quickest")) {
      if (Words.strategy(text).equals(strategy)) {
        return text;
      }
    }
    if (strategy.interval().isPresent()) {
      return "new heading every " + ErrorSheet.minutes(strategy.interval().get());
    }
    if (!strategy.times().isEmpty()) {
      return HEADINGS_AT
          + strategy.times().stream().map(Instant::toString).collect(Collectors.joining(AND));
    }
    throw new IllegalArgumentException(
        strategy.isQuickest()
            ? "a folder is told of obstacles in its files, legs.csv and obstacles.csv, but the"
                + " strategy was "
                + strategy.words()
            : "new headings of a leg in a folder must be at one time or more, but were at none");
  }

  private static String streamText(StreamField own, List<HourlyStream> streams) {
    for (HourlyStream stream : streams) {
      if (stream.equals(own)) {
        return Sheet.field("station", STATION + stream.table().station());
      }
    }
    double[] flow = new double[2];
    if (!own.sample(0.0, 0.0, 0.0, flow, 0)) {
      throw new IllegalArgumentException(
          "the stream of a leg in a folder must be steady or a station's, but was " + own);
    }
    return flow[0] == 0.0 && flow[1] == 0.0
        ? "slack"
        : Sheet.field("stream", Velocity.ofEastAndNorth(flow[0], flow[1]).toString());
  }

  /** Whether a field holds the one word that it may hold. */
  private static boolean chosen(Sheet.Row row, String heading, String word) {
    if (row.has(heading) && !row.text(heading).equals(word)) {
      row.problem(heading, "must be " + word + " or empty, but was \"" + row.text(heading) + "\"");
    }
    return row.text(heading).equals(word);
  }

  private static Velocity steadyStream(String text) {
    if (text.equals("slack")) {
      return Velocity.STILL;
    }
    try {
      return Velocity.parse(text);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(
          "must be slack, a set and rate as in 015° 0.4 kn, or a station as in station Hesk Sound,"
              + " but was \""
              + text
              + "\"",
          e);
    }
  }

  /** The options with the leg's own stream. */
  LegOptions with(List<HourlyStream> streams) {
    if (steady != null) {
      return options.withStream(StreamField.steady(steady));
    }
    for (HourlyStream stream : streams) {
      if (stream.table().station().equals(station)) {
        return options.withStream(stream);
      }
    }
    return options;
  }
}
