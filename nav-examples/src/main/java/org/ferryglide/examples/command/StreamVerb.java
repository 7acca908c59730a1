package org.ferryglide.examples.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.LocalStream;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.Window;
import org.ferryglide.tide.folder.PassageFolder;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.HourlyStream;
import org.ferryglide.tide.stream.StationField;
import org.ferryglide.tide.stream.StreamTable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The stream at a place, hour by hour, and when it is slack. */
@Command(
    name = "stream",
    description = {
      "The stream at a place, at a time or hour by hour, and when it is slack.",
      "In a folder the lines of its coast.csv cut stations off; a sheet alone knows no coast."
    },
    footer = {
      "",
      "Examples:",
      "  ferryglide stream nav-examples/scenarios/ollen-skerries \"46-12.0N 26-15.0W\" --from"
          + " 2026-06-14T06:00+01:00 --hours 12 --slack 0.5",
      "  ferryglide stream nav-examples/scenarios/ollen-skerries \"46-12.0N 26-15.0W\" --at"
          + " 2026-06-14T12:25+01:00",
      "  ferryglide stream nav-examples/scenarios/ollen-skerries/streams.csv \"46-12.0N 26-15.0W\""
          + " --tides nav-examples/scenarios/ollen-skerries/tides/orrin-quay.csv --at"
          + " 2026-06-14T12:25+01:00 --working"
    })
final class StreamVerb extends Verb {
  @Parameters(
      index = "0",
      paramLabel = "FOLDER|TABLE",
      description = "A passage's folder, or a sheet of hourly stream tables with --tides.")
  private Path source = Path.of("");

  @Parameters(index = "1", paramLabel = "PLACE", description = "Position.")
  private Position place = Position.ofDegrees(0.0, 0.0);

  @Option(
      names = "--tides",
      paramLabel = "FILE",
      description = "Tide table of the port that the stream tables count from.")
  private @Nullable Path tides;

  @Option(
      names = "--at",
      paramLabel = "TIME",
      description = "At this time alone, as 2026-06-14T12:25+01:00.")
  private @Nullable OffsetDateTime at;

  @Option(
      names = "--from",
      paramLabel = "TIME",
      description = "From this time on, as 2026-06-14T06:00+01:00.")
  private @Nullable OffsetDateTime from;

  @Option(
      names = "--hours",
      defaultValue = "6",
      paramLabel = "N",
      description = "How many hours, 0 to 744 (6 if left out).")
  private int hours;

  @Option(
      names = "--every",
      defaultValue = "60",
      paramLabel = "MINUTES",
      description = "Minutes from line to line, 1 to 1440 (60 if left out).")
  private int every = 60;

  @Option(
      names = "--slack",
      paramLabel = "SPEED",
      description = "Also the times with less stream than this; knots where no unit is given.")
  private @Nullable Speed slack;

  @Option(
      names = "--reach",
      defaultValue = "6",
      paramLabel = "DISTANCE",
      description = "How far a table holds; nautical miles where no unit is given (6 if left out).")
  private Distance reach = StationField.USUAL_REACH;

  @Mixin private WorkingOption working = new WorkingOption();

  @Override
  protected Answer answer() throws IOException {
    refuseOptions();
    boolean isFolder = Files.isDirectory(source);
    List<HourlyStream> tables = isFolder ? List.of() : tables();
    StreamField field =
        isFolder
            ? PassageFolder.read(source).passage().stream()
            : InputRefused.given(
                () ->
                    StationField.nearest(
                        tables.stream().map(HourlyStream::asStation).toList(), reach));
    OffsetDateTime begin = Objects.requireNonNull(at == null ? from : at);
    ZoneOffset offset = begin.getOffset();
    Answer answer =
        new Answer().row("clock", "UTC" + (begin.getOffset().getTotalSeconds() == 0 ? "" : offset));
    List<Object> values = new ArrayList<>();
    int last = at == null ? hours * 60 : 0;
    for (int minute = 0; minute <= last; minute += every) {
      Instant time = begin.plusMinutes(minute).toInstant();
      Optional<Velocity> stream = field.at(place, time);
      answer.row(
          Times.minute(time, offset).substring(11),
          stream.map(Velocity::setAndRate).orElse("no data"));
      Map<String, Object> value = new LinkedHashMap<>();
      value.put("time", time.toString());
      stream.ifPresent(
          it -> {
            value.put("setTrueDegrees", it.set().degrees());
            value.put("rateKnots", it.rate().knots());
          });
      values.add(value);
      if (stream.isEmpty()) {
        answer.status(Status.DATA_MISSING);
      }
    }
    answer.value("stream", values);
    if (slack != null) {
      slack(answer, field, begin, slack);
    }
    if (working.isWanted()) {
      worked(answer, tables, begin);
    }
    return answer.notes(field.explain(place, begin.toInstant()).notes());
  }

  /** By the table of the nearest station, at the first time asked for. */
  private void worked(Answer answer, List<HourlyStream> tables, OffsetDateTime begin) {
    Optional<Problem> worked =
        tables.stream()
            .min(Comparator.comparingDouble(it -> metresTo(it.table().position())))
            .flatMap(it -> ByHand.stream(it, begin.toInstant(), begin.getOffset()));
    worked.ifPresent(it -> answer.working(it.working()));
    if (!worked.isPresent()) {
      answer.row("working", "none by hand: needs --tides and a sheet whose hours reach so far");
    }
  }

  private double metresTo(Position other) {
    return GeodesicLeg.between(place, other).length().metres();
  }

  private void refuseOptions() {
    if ((at == null) == (from == null)) {
      throw new InputRefused("one of --at and --from is needed");
    }
    if (hours < 0 || hours > 744) {
      throw new InputRefused("--hours must be in [0, 744], but was " + hours);
    }
    if (every < 1 || every > 1440) {
      throw new InputRefused("--every must be in [1, 1440] minutes, but was " + every);
    }
    if (slack != null && (at != null || hours == 0)) {
      throw new InputRefused("--slack is looked for from --from over --hours of at least 1");
    }
  }

  private List<HourlyStream> tables() throws IOException {
    if (tides == null) {
      throw new InputRefused("--tides is needed with a sheet of stream tables");
    }
    TideTable table = TideTable.read(tides);
    List<HourlyStream> bound = new ArrayList<>();
    for (StreamTable read : StreamTable.readAll(source)) {
      bound.add(InputRefused.given(() -> read.boundTo(table)));
    }
    return bound;
  }

  private void slack(Answer answer, StreamField field, OffsetDateTime begin, Speed limit) {
    Found<Window> found =
        LocalStream.of(field, place)
            .slackWindows(limit, begin.toInstant(), begin.plusHours(hours).toInstant());
    List<Object> values = new ArrayList<>();
    for (Window window : found) {
      answer.row("slack", Times.inside(window.span(), begin.getOffset()));
      Map<String, Object> value = new LinkedHashMap<>();
      value.put("from", window.from().toString());
      value.put("until", window.until().toString());
      values.add(value);
    }
    answer.value("slack", values);
    if (found.isEmpty()) {
      answer.row("slack", found.isWhole() ? "never" : "not known");
      answer.status(found.isWhole() ? Status.NOT_POSSIBLE : Status.DATA_MISSING);
    }
  }
}
