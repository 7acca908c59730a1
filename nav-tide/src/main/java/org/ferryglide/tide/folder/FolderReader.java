package org.ferryglide.tide.folder;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ferryglide.nav.bearing.DeviationTable;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.passage.Danger;
import org.ferryglide.nav.passage.Lane;
import org.ferryglide.nav.passage.PassageLimits;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.HourlyStream;
import org.ferryglide.tide.stream.StreamTable;

/** Reads a folder file by file, then looks whether the files fit together. */
final class FolderReader {
  /** More ports than any passage has; a folder of something else is not read through. */
  private static final int MOST_TIDE_FILES = 200;

  private static final List<StreamTable> NO_TABLES = List.of();

  private final FolderFiles files;
  private final FolderProblems problems = new FolderProblems();
  private final Map<String, TideTable> tides = new LinkedHashMap<>();

  /** What every file that could be read holds, by its name in the folder. */
  private final Map<String, String> texts = new LinkedHashMap<>();

  /** Every port that a file of tides is about, also those whose file is refused. */
  private final Set<String> ports = new TreeSet<>();

  /** Whether a refused file of tides may be about any port. */
  private boolean portUnknown;

  private FolderReader(FolderFiles files) {
    this.files = files;
  }

  static PassageFolder read(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      throw new NoSuchFileException(
          PlainCharacters.visible(folder.toString()), null, "there is no such scenario folder");
    }
    if (!Files.isDirectory(folder)) {
      throw new NotDirectoryException(PlainCharacters.visible(folder.toString()));
    }
    return new FolderReader(FolderFiles.in(folder)).readAll();
  }

  static PassageFolder read(Map<String, String> texts) {
    try {
      return new FolderReader(FolderFiles.of(texts)).readAll();
    } catch (IOException e) {
      throw new UncheckedIOException("from memory", e); // there is no disk to fail
    }
  }

  private PassageFolder readAll() throws IOException {
    Optional<FolderText> passageFile = text("passage.csv");
    Optional<PassageSheet> passage = parse(passageFile, PassageSheet::read);
    Optional<FolderText> wayPointFile = text("waypoints.csv");
    Optional<WayPointSheet> wayPoints = parse(wayPointFile, WayPointSheet::read);
    Optional<FolderText> streamFile = text("streams.csv");
    List<StreamTable> tables =
        parse(streamFile, file -> StreamTable.readAll(file.source(), file.reader()))
            .orElse(NO_TABLES);
    FolderLimits limits = ifThere("limits.csv", FolderLimits::read, FolderLimits.USUAL);
    readTides();
    streamFile.ifPresent(
        file -> file.under("port").forEach(port -> requireTide(file, "port", port)));
    passageFile.ifPresent(
        file ->
            file.beside("landing port", "value")
                .filter(port -> !port.text().isEmpty())
                .ifPresent(port -> requireTide(file, "landing port", port)));
    Known known =
        new Known(
            wayPoints.map(FolderReader::names).orElse(List.of()),
            ports,
            portUnknown,
            tides,
            tables.stream().map(StreamTable::station).collect(Collectors.toSet()),
            passage.map(PassageSheet::speed));
    if (files.has("shore.csv")) {
      text("shore.csv"); // for those ashore: kept with the folder, read by what prints it
    }
    PassageParts parts = parts(known, limits);
    List<HourlyStream> streams = new ArrayList<>();
    for (StreamTable table : tables) {
      bind(table, streamFile.get()).ifPresent(streams::add);
    }
    problems.refuseIfAny();
    return new PassageFolder(
        passage.get(), wayPoints.get().wayPoints(), tides, streams, limits, parts, texts);
  }

  private static List<String> names(WayPointSheet sheet) {
    List<String> names = new ArrayList<>();
    sheet.wayPoints().forEach(place -> names.add(place.name()));
    return names;
  }

  /** The files that a folder may leave out. */
  private PassageParts parts(Known known, FolderLimits limits) throws IOException {
    Map<String, List<Position>> obstacles =
        ifThere("obstacles.csv", DangerSheet::obstacles, Map.of());
    return new PassageParts(
        ifThere("places.csv", file -> PlaceSheets.places(file, known), Map.of()),
        ifThere("legs.csv", file -> LegSheet.read(file, known, obstacles), Map.of()),
        ifThere("party.csv", file -> PartySheet.read(file, known), PartySheet.NONE),
        ifThere(
                "margins.csv",
                file -> Optional.of(MarginSheet.read(file, PassageMaker.fromToday(limits))),
                Optional.<PassageLimits>empty())
            .orElse(null),
        ifThere(
                "dangers.csv",
                file -> Optional.of(DangerSheet.dangers(file, known)),
                Optional.<List<Danger>>empty())
            .orElse(null),
        ifThere(
                "lanes.csv",
                file -> Optional.of(DangerSheet.lanes(file)),
                Optional.<List<Lane>>empty())
            .orElse(null),
        ifThere("coast.csv", DangerSheet::coast, List.of()),
        ifThere("refuges.csv", file -> PlaceSheets.refuges(file, known), List.of()),
        ifThere(
                "wind.csv",
                file -> Optional.of(ForecastWind.read(file.source(), file.reader())),
                Optional.<ForecastWind>empty())
            .orElse(null),
        ifThere(
                "deviation.csv",
                file -> Optional.of(DeviationSheet.read(file)),
                Optional.<DeviationTable>empty())
            .orElse(null),
        ifThere("errors.csv", ErrorSheet::read, ErrorModel.usual()));
  }

  /** What a file holds that need not be there; the fallback too where it is refused. */
  private <T> T ifThere(String name, Parser<T> parser, T fallback) throws IOException {
    return files.has(name) ? parse(text(name), parser).orElse(fallback) : fallback;
  }

  private Optional<FolderText> text(String name) throws IOException {
    Optional<FolderText> text = files.text(name, problems);
    text.ifPresent(one -> texts.put(name, one.text()));
    return text;
  }

  /** Makes a value of a file. */
  private interface Parser<T> {
    T parse(FolderText file) throws IOException;
  }

  private <T> Optional<T> parse(Optional<FolderText> file, Parser<T> parser) throws IOException {
    if (!file.isPresent()) {
      return Optional.empty();
    }
    try {
      return Optional.of(parser.parse(file.get()));
    } catch (InputFormatException e) {
      problems.inFile(e);
    } catch (IllegalArgumentException e) {
      problems.inFile(file.get().source(), String.valueOf(e.getMessage()));
    }
    return Optional.empty();
  }

  private void readTides() throws IOException {
    Optional<List<String>> found = files.tides(MOST_TIDE_FILES + 1);
    String folder = files.source(FolderFiles.TIDES);
    if (!found.isPresent()) {
      problems.unreadable(folder, 0, 0, "the folder of tide tables is missing");
      portUnknown = true;
      return;
    }
    List<String> names = found.get();
    if (names.isEmpty() || names.size() > MOST_TIDE_FILES) {
      portUnknown = true;
      problems.unreadable(
          folder,
          0,
          0,
          names.isEmpty()
              ? "there is no tide table in it: no file whose name ends in .csv"
              : "must hold at most " + MOST_TIDE_FILES + " tide tables");
      return;
    }
    for (String name : names) {
      readTide(FolderFiles.TIDES + "/" + name);
    }
  }

  private void readTide(String name) throws IOException {
    Optional<FolderText> text = text(name);
    String statedPort =
        text.map(one -> one.under("port"))
            .filter(found -> !found.isEmpty())
            .map(found -> found.get(0).text())
            .orElse("");
    Optional<TideTable> table = parse(text, one -> TideTable.read(one.source(), one.reader()));
    String port = table.map(TideTable::port).orElse(statedPort);
    portUnknown = portUnknown || port.isEmpty();
    if (!port.isEmpty() && !ports.add(port)) {
      FolderText.Place place = text.get().find("port", port, "port");
      problems.betweenFiles(
          files.source(name),
          place.line(),
          place.column(),
          "port: there is another tide table of " + port);
    }
    table.ifPresent(one -> tides.putIfAbsent(one.port(), one));
  }

  private Optional<HourlyStream> bind(StreamTable table, FolderText file) {
    String port = table.standardPort().name();
    FolderText.Place place = file.find("station", table.station(), "port");
    TideTable tide = tides.get(port);
    if (tide == null) {
      return Optional.empty(); // told already, as a port without tides or as a file refused
    }
    try {
      return Optional.of(table.boundTo(tide));
    } catch (IllegalArgumentException e) {
      problems.betweenFiles(
          file.source(),
          place.line(),
          place.column(),
          "station " + table.station() + " about " + port + ": " + e.getMessage());
      return Optional.empty();
    }
  }

  /** A port that is named must have tides, unless a refused file may be about it. */
  private void requireTide(FolderText file, String heading, FolderText.Field port) {
    if (!portUnknown && !ports.contains(port.text())) {
      problems.betweenFiles(
          file.source(),
          port.place().line(),
          port.place().column(),
          heading
              + ": must be one of the ports with a tide table, "
              + ports
              + ", but was "
              + port.text()
              + NearName.question(port.text(), ports));
    }
  }
}
