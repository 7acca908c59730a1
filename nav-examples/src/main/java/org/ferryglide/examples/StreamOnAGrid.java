package org.ferryglide.examples;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.stream.GriddedStream;

/** Reads a stream on a grid from a sheet and tells what it does at one place. */
public final class StreamOnAGrid {
  private StreamOnAGrid() {}

  /**
   * The stream at a place every half hour.
   *
   * @param sheet a sheet of cells, see {@link GriddedStream#read}
   * @param place where
   * @param from the first time
   * @param to the last time
   * @return a line for each time
   * @throws IOException if the sheet cannot be read
   */
  static List<String> everyHalfHour(Path sheet, Position place, Instant from, Instant to)
      throws IOException {
    GriddedStream stream;
    try (Reader reader = Files.newBufferedReader(sheet)) {
      stream = GriddedStream.read(String.valueOf(sheet.getFileName()), reader);
    }
    List<String> lines = new ArrayList<>();
    for (Instant time = from; !time.isAfter(to); time = time.plus(Duration.ofMinutes(30))) {
      lines.add(time + "  " + stream.at(place, time).map(Velocity::setAndRate).orElse("no data"));
    }
    return lines;
  }

  /**
   * Prints the stream at two places of the grid that comes with the examples, one beside land.
   *
   * @param args the sheet; the examples' own if there is none
   * @throws IOException if the sheet cannot be read
   */
  public static void main(String[] args) throws IOException {
    Path sheet = Path.of(args.length > 0 ? args[0] : "nav-examples/grids/ollen-sound.csv");
    Instant from = Instant.parse("2026-06-14T09:00:00Z");
    Instant to = Instant.parse("2026-06-14T12:00:00Z");
    for (Position place :
        List.of(Position.ofDegrees(46.195, -26.3), Position.ofDegrees(46.215, -26.265))) {
      System.out.println(place);
      everyHalfHour(sheet, place, from, to).forEach(System.out::println);
    }
  }
}
