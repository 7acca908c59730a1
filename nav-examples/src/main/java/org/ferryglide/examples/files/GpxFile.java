package org.ferryglide.examples.files;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.GPX.Reader.Mode;
import io.jenetics.jpx.GPX.Version;
import io.jenetics.jpx.Route;
import io.jenetics.jpx.Track;
import io.jenetics.jpx.TrackSegment;
import io.jenetics.jpx.WayPoint;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.transform.stream.StreamSource;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.folder.PassageFolder;

/**
 * Routes, way points and tracks as GPX 1.1, both ways.
 *
 * <pre>{@code
 * GpxContent content = GpxFile.read(Path.of("route.gpx"));
 * Files.writeString(copy, GpxFile.text("Copy", content));
 * }</pre>
 *
 * <p>Positions are written to 8 decimals of a degree, a millimetre. A file is looked through by
 * {@link GpxGate} before the library reads it.
 *
 * @see <a href="https://www.topografix.com/GPX/1/1/">GPX 1.1 schema documentation</a>
 */
public final class GpxFile {
  private static final String CAUTION =
      "Courses and places only: headings to steer, times, streams and tides are not in this file."
          + " Official charts, tables, forecasts and the coastguard's advice come first.";

  /** Points of a path over the ground, seconds apart. */
  private static final double TRACK_STEP_SECONDS = 300.0;

  private GpxFile() {}

  /**
   * Reads a file.
   *
   * @param file a GPX 1.1 file
   * @return what it holds
   * @throws InputFormatException if it is not sound GPX 1.1, with line and column of each problem
   * @throws IOException if it cannot be read
   */
  public static GpxContent read(Path file) throws IOException {
    return read(file.toString(), Bytes.of(file, GpxGate.MOST_BYTES));
  }

  /**
   * Reads the bytes of a file.
   *
   * @param source the file as messages name it
   * @param bytes what it holds
   * @return what it says
   * @throws InputFormatException if it is not sound GPX 1.1
   */
  public static GpxContent read(String source, byte[] bytes) {
    int points = GpxGate.pass(source, bytes);
    GPX gpx;
    try {
      // from a source, since from a stream the library takes every encoding for UTF-8
      gpx =
          GPX.Reader.of(Version.V11, Mode.STRICT)
              .read(new StreamSource(new ByteArrayInputStream(bytes)));
    } catch (IOException e) {
      throw new InputFormatException(
          new InputProblem(source, 0, 0, "is not GPX 1.1: " + e.getMessage()));
    }
    GpxContent content =
        new GpxContent(
            gpx.wayPoints().map(GpxFile::point).toList(),
            gpx.routes().map(it -> line(it.getName().orElse(""), it.getPoints())).toList(),
            gpx.tracks().flatMap(GpxFile::segments).toList());
    int read = content.wayPoints().size() + count(content.routes()) + count(content.tracks());
    if (read != points) {
      throw new InputFormatException(
          new InputProblem(source, 0, 0, "holds " + points + " points, of which " + read + " fit"));
    }
    return content;
  }

  private static Stream<GpxContent.Line> segments(Track track) {
    return track
        .segments()
        .map(TrackSegment::getPoints)
        .map(points -> line(track.getName().orElse(""), points));
  }

  private static GpxContent.Line line(String name, List<WayPoint> points) {
    return new GpxContent.Line(name, points.stream().map(GpxFile::point).toList());
  }

  private static GpxContent.Point point(WayPoint point) {
    return new GpxContent.Point(
        point.getName().orElse(""),
        Position.ofDegrees(point.getLatitude().doubleValue(), point.getLongitude().doubleValue()),
        point.getTime().orElse(null));
  }

  private static int count(List<GpxContent.Line> lines) {
    return lines.stream().mapToInt(line -> line.points().size()).sum();
  }

  /**
   * A route through the way points of a passage.
   *
   * @param name what the route is called
   * @param wayPoints in order
   * @return the text of a GPX 1.1 file
   */
  public static String route(String name, List<PassageFolder.WayPoint> wayPoints) {
    return text(name, new GpxContent(List.of(), List.of(through(name, wayPoints)), List.of()));
  }

  private static GpxContent.Line through(String name, List<PassageFolder.WayPoint> wayPoints) {
    List<GpxContent.Point> points = new ArrayList<>();
    wayPoints.forEach(it -> points.add(new GpxContent.Point(it.name(), it.position(), null)));
    return new GpxContent.Line(name, points);
  }

  /**
   * A route through the way points of a passage, and the path over the ground of its plan as a
   * track for each leg, a point every five minutes. The track has no times: nobody was there yet.
   *
   * @param name what both are called
   * @param wayPoints in order
   * @param plan the plan
   * @return the text of a GPX 1.1 file
   */
  public static String planned(
      String name, List<PassageFolder.WayPoint> wayPoints, TimedPlan plan) {
    List<GpxContent.Line> tracks = new ArrayList<>();
    for (PlannedLeg leg : plan.legs()) {
      List<GpxContent.Point> path = new ArrayList<>();
      leg.steered()
          .groundTrack()
          .pointsEvery(TRACK_STEP_SECONDS)
          .forEach(it -> path.add(new GpxContent.Point("", it.position(), null)));
      tracks.add(new GpxContent.Line("as planned, leg " + leg.leg().number(), path));
    }
    return text(name, new GpxContent(List.of(), List.of(through(name, wayPoints)), tracks));
  }

  /**
   * Writes what {@link #read} reads.
   *
   * @param name what the file is called within
   * @param content what it holds
   * @return the text of a GPX 1.1 file, UTF-8
   * @throws IllegalArgumentException if a name holds a control character, which XML cannot hold
   */
  public static String text(String name, GpxContent content) {
    GPX.Builder gpx =
        GPX.builder(Version.V11, "Ferryglide")
            .metadata(data -> data.name(sound(name)).desc(CAUTION));
    content.wayPoints().forEach(point -> gpx.addWayPoint(point(point)));
    for (GpxContent.Line line : content.routes()) {
      Route.Builder route = Route.builder().name(sound(line.name()));
      line.points().forEach(point -> route.addPoint(point(point)));
      gpx.addRoute(route.build());
    }
    for (GpxContent.Line line : content.tracks()) {
      TrackSegment.Builder segment = TrackSegment.builder();
      line.points().forEach(point -> segment.addPoint(point(point)));
      gpx.addTrack(Track.builder().name(sound(line.name())).addSegment(segment.build()).build());
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      GPX.Writer.of(new GPX.Writer.Indent("  "), 8).write(gpx.build(), bytes);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory", e);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }

  private static WayPoint point(GpxContent.Point point) {
    WayPoint.Builder builder =
        WayPoint.builder()
            .lat(rounded(point.position().latitudeDegrees()))
            .lon(rounded(point.position().longitudeDegrees()));
    if (!point.name().isEmpty()) {
      builder.name(sound(point.name()));
    }
    point.time().ifPresent(builder::time);
    return builder.build();
  }

  /** To 8 decimals, since the library writes a tiny negative angle as -0. */
  private static double rounded(double degrees) {
    return Math.rint(degrees * 1e8) / 1e8 + 0.0;
  }

  private static String sound(String name) {
    for (int at = 0; at < name.length(); at++) {
      char c = name.charAt(at);
      if (c < ' ' || c == '\uFFFE' || c == '\uFFFF') {
        throw new IllegalArgumentException(
            "a name in XML must not hold control characters, but character "
                + (at + 1)
                + " of \""
                + name.replaceAll("\\p{Cntrl}", "?")
                + "\" is one");
      }
    }
    return name;
  }
}
