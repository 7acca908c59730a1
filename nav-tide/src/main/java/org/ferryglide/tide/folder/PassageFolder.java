package org.ferryglide.tide.folder;

import java.io.IOException;
import java.io.Serializable;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.HourlyStream;
import org.ferryglide.tide.stream.StreamStation;
import org.ferryglide.tide.stream.StreamTable;

/**
 * A passage as its paddler has it on paper: way points, tide tables, stream tables, a printed rose,
 * a speed, a start and limits, read from a folder of plain text files.
 *
 * <p>The package page tells the files. What is wrong is refused, all of it at once; what only looks
 * wrong is in {@link #notes}: a leg no paddler paddles, a station no leg comes near.
 *
 * <pre>{@code
 * PassageFolder folder = PassageFolder.read(Paths.get("scenarios", "ollen-skerries"));
 * CourseToSteer solver =
 *     CourseToSteer.with(
 *         Craft.ofSpeed(folder.speed()),
 *         StationField.nearest(folder.stations(), folder.limits().reach()));
 * }</pre>
 */
public final class PassageFolder implements Serializable {
  private static final long serialVersionUID = 1L;

  private final PassageSheet passage;

  @SuppressWarnings("serial") // List.copyOf gives serializable lists
  private final List<WayPoint> wayPoints;

  @SuppressWarnings("serial") // a LinkedHashMap within
  private final Map<String, TideTable> tides;

  @SuppressWarnings("serial") // List.copyOf
  private final List<HourlyStream> streams;

  private final PassageLimits limits;

  @SuppressWarnings("serial") // List.copyOf
  private final List<Note> notes;

  PassageFolder(
      PassageSheet passage,
      List<WayPoint> wayPoints,
      Map<String, TideTable> tides,
      List<HourlyStream> streams,
      PassageLimits limits) {
    this.passage = passage;
    this.wayPoints = List.copyOf(wayPoints);
    this.tides = Collections.unmodifiableMap(new LinkedHashMap<>(tides));
    this.streams = List.copyOf(streams);
    this.limits = limits;
    List<Note> all = new ArrayList<>();
    List<StreamTable> tables = new ArrayList<>();
    List<Position> places = new ArrayList<>();
    for (HourlyStream stream : streams) {
      tables.add(stream.table());
      places.add(stream.table().position());
    }
    all.addAll(new LegJudgement(this.wayPoints, places).notes());
    Set<String> doubted = new HashSet<>();
    all.forEach(note -> doubted.add(note.data().getOrDefault("leg", "")));
    all.addAll(new StationJudgement(this.wayPoints, tables, limits.reach(), doubted).notes());
    this.tides.values().forEach(table -> all.addAll(table.notes()));
    all.sort((one, other) -> other.severity().compareTo(one.severity()));
    this.notes = List.copyOf(all);
  }

  /**
   * A named place on the passage.
   *
   * <pre>{@code
   * WayPoint point = new WayPoint("Hesk Point", Position.parse("46°11.8'N 026°17.6'W"));
   * }</pre>
   *
   * @param name what the paddler calls it
   * @param position where it is
   */
  public record WayPoint(String name, Position position) implements Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * Takes both parts.
     *
     * @param name what the paddler calls it
     * @param position where it is
     * @throws IllegalArgumentException if the name is empty
     */
    public WayPoint {
      Objects.requireNonNull(position, "position");
      if (name.trim().isEmpty()) {
        throw new IllegalArgumentException("name of a way point must not be empty");
      }
    }
  }

  /**
   * Reads a folder.
   *
   * @param folder the passage's folder
   * @return what it holds
   * @throws IOException if there is no such folder or it cannot be listed
   * @throws InputFormatException if a file is missing, cannot be read or is malformed, listing
   *     every problem of every file, causes first
   */
  public static PassageFolder read(Path folder) throws IOException {
    return FolderReader.read(folder);
  }

  /**
   * What the passage is called.
   *
   * @return the name, never empty
   */
  public String name() {
    return passage.name();
  }

  /**
   * When the first way point is left.
   *
   * @return the time; its offset is the one to print every clock time in
   */
  public OffsetDateTime start() {
    return passage.start();
  }

  /**
   * Paddling speed through still water.
   *
   * @return the speed, above 0 and at most 12 knots
   */
  public Speed speed() {
    return passage.speed();
  }

  /**
   * The compass rose printed on the chart.
   *
   * @return the rose
   */
  public CompassRose rose() {
    return passage.rose();
  }

  /**
   * The way points in the order in which they are passed.
   *
   * @return at least two, each another place than the one before; unmodifiable
   */
  public List<WayPoint> wayPoints() {
    return wayPoints;
  }

  /**
   * The tide tables by port.
   *
   * @return at least one; in order of their files; unmodifiable
   */
  public Map<String, TideTable> tides() {
    return tides;
  }

  /**
   * The tide at the last way point.
   *
   * @return the landing port's table
   */
  public TideTable landingTide() {
    return Objects.requireNonNull(tides.get(passage.landingPort()), "landing tide");
  }

  /**
   * The stream tables, each laid along the tides of its port.
   *
   * @return at least one; in file order; unmodifiable
   */
  public List<HourlyStream> streams() {
    return streams;
  }

  /**
   * The stream tables as stations, for the fields between them.
   *
   * @return a station for each of {@link #streams}; unmodifiable
   */
  public List<StreamStation> stations() {
    List<StreamStation> stations = new ArrayList<>();
    streams.forEach(stream -> stations.add(stream.asStation()));
    return List.copyOf(stations);
  }

  /**
   * What the party asks of the passage.
   *
   * @return the limits, the usual ones where the folder states none
   */
  public PassageLimits limits() {
    return limits;
  }

  /**
   * What looks wrong in the folder, worst first. The number of a leg or the name of a station is in
   * a note's data as {@code leg} and {@code station}.
   *
   * @return the notes, possibly empty; unmodifiable
   */
  public List<Note> notes() {
    return notes;
  }

  /** Name, start and numbers of way points and tables. */
  @Override
  public String toString() {
    return name()
        + ", "
        + start()
        + ", "
        + wayPoints.size()
        + " way points, "
        + tides.size()
        + " tide tables, "
        + streams.size()
        + " stream tables";
  }
}
