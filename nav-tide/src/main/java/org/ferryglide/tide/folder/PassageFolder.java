package org.ferryglide.tide.folder;

import java.io.IOException;
import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
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
import java.util.stream.Stream;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.passage.Party;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.HourlyStream;
import org.ferryglide.tide.stream.StreamStation;
import org.ferryglide.tide.stream.StreamTable;

/**
 * A passage as its paddler has it on paper: way points, tide tables, stream tables, a printed rose,
 * a speed, a start and limits, read from a folder of plain text files.
 *
 * <p>The package page lists the files. What is wrong is refused, all of it at once; what only looks
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

  private final FolderLimits limits;

  private final PassageParts parts;

  @SuppressWarnings("serial") // a LinkedHashMap within
  private final Map<String, String> texts;

  @SuppressWarnings("serial") // List.copyOf
  private final List<Note> notes;

  PassageFolder(
      PassageSheet passage,
      List<WayPoint> wayPoints,
      Map<String, TideTable> tides,
      List<HourlyStream> streams,
      FolderLimits limits,
      PassageParts parts,
      Map<String, String> texts) {
    this.parts = parts;
    this.texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
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
    tables.forEach(table -> all.addAll(table.notes()));
    all.sort((one, other) -> other.severity().compareTo(one.severity()));
    this.notes = List.copyOf(all);
  }

  /**
   * A named place on the passage.
   *
   * <pre>{@code
   * PassageFolder.WayPoint point =
   *     new PassageFolder.WayPoint("Hesk Point", Position.parse("46°11.8'N 026°17.6'W"));
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
   * Reads a folder whose files are texts in memory, as an app keeps them.
   *
   * @param texts the files by their names in the folder, as in {@link #texts}; other names, and
   *     those that lead into another folder than {@code tides/}, are left out
   * @return what they hold
   * @throws InputFormatException as {@link #read} does
   */
  public static PassageFolder of(Map<String, String> texts) {
    return FolderReader.read(new LinkedHashMap<>(texts));
  }

  /**
   * Makes a folder of what every folder holds; {@link #withFile} adds the rest.
   *
   * <pre>{@code
   * PassageFolder folder =
   *     PassageFolder.of("Over and back", start, Speed.ofKnots(3.5), rose, wayPoints, tides, streams)
   *         .withFile("party.csv", "item,value\nrest each hour,5 min\n");
   * folder.write(Paths.get("my-passage"));
   * }</pre>
   *
   * @param name what the passage is called
   * @param start when the first way point is left
   * @param paddling paddling speed through still water
   * @param rose the printed rose
   * @param wayPoints the way points in order, at least two
   * @param tides the tide tables, at least one; the last is that of the landing
   * @param streams the stream tables, at least one, about ports with a tide table
   * @return the folder, its files written by the library
   * @throws InputFormatException if the parts do not fit together, as {@link #read} does
   */
  public static PassageFolder of(
      String name,
      OffsetDateTime start,
      Speed paddling,
      CompassRose rose,
      List<WayPoint> wayPoints,
      List<TideTable> tides,
      List<StreamTable> streams) {
    return of(FolderWriter.texts(name, start, paddling, rose, wayPoints, tides, streams));
  }

  /**
   * The same folder with one file more, or another text for it.
   *
   * @param name the file's name in the folder, as in {@link #texts}
   * @param text what it holds
   * @return the changed folder, read anew
   * @throws InputFormatException as {@link #read} does
   */
  public PassageFolder withFile(String name, String text) {
    Map<String, String> changed = new LinkedHashMap<>(texts);
    changed.put(Objects.requireNonNull(name, "name"), Objects.requireNonNull(text, "text"));
    PassageFolder folder = of(changed);
    if (!folder.texts.containsKey(name)) {
      throw new IllegalArgumentException(name + " is no file that a folder holds");
    }
    return folder;
  }

  /**
   * The same folder with another party.
   *
   * <pre>{@code
   * PassageFolder slower = folder.withParty(Party.of(craft).withLaunching(Duration.ofMinutes(10)));
   * }</pre>
   *
   * @param party who paddles; {@code passage.csv} and {@code party.csv} are written anew, clock,
   *     visibility and swell as they were
   * @return the changed folder, read anew: its passage has this very party
   * @throws IllegalArgumentException if the files cannot express the party, for example one whose
   *     times are not whole minutes, or one with a wind table of its own
   */
  public PassageFolder withParty(Party party) {
    Map<String, String> changed = new LinkedHashMap<>(texts);
    changed.put("passage.csv", passage.withSpeed(party.craft().speed()).text());
    changed.put("party.csv", parts.party().text(party));
    PassageFolder folder = of(changed);
    return told(folder, party, folder.passage().party());
  }

  /**
   * The same folder with everything that a passage built in code tells: its name, way points with
   * their landings, stops and marks, how legs are paddled, the party and the day, limits, errors of
   * reckoning, dangers, lanes, shores, refuges and the wind of a {@link ForecastWind}. Its
   * variation must be the folder's {@link #rose} and its deviation that of the folder. Tables of
   * tide and stream, the start, the reach of stations and the latest arrival stay those of the
   * folder, as do files that tell the same already. The stop limit of the stream becomes the
   * strongest stream of {@link #limits}. Stated times take the place of tidal hours of a danger.
   *
   * <pre>{@code
   * Passage closer = folder.passage().toBuilder().dangers(List.of(rock, race)).build();
   * folder.withPassage(closer).write(Paths.get("my-passage")); // read from there, the same plan
   * }</pre>
   *
   * @param passage the passage; its conditions of the program's own stay with the program
   * @return the changed folder, read anew: its passage has these very parts
   * @throws IllegalArgumentException if the files cannot tell a part, for example times that are
   *     not whole minutes, a wind that is no forecast by hour and place, another variation or
   *     deviation than the folder's, a leg in a stream that is neither steady nor a station's, or
   *     obstacles
   * @throws InputFormatException as {@link #read} does
   */
  public PassageFolder withPassage(Passage passage) {
    return PassageTexts.read(of(PassageTexts.of(this, passage, this.passage)), passage);
  }

  /**
   * The same folder with other limits.
   *
   * @param limits what the party asks of the passage; {@code limits.csv} is written anew
   * @return the changed folder, read anew: its {@link #limits} are these
   * @throws IllegalArgumentException if the file cannot express the limits, for example a longest
   *     leg that is not whole minutes
   */
  public PassageFolder withLimits(FolderLimits limits) {
    PassageFolder folder = withFile("limits.csv", limits.text());
    return told(folder, limits, folder.limits);
  }

  /**
   * The same folder with other errors of reckoning.
   *
   * @param errors how wrong reckoning may be; {@code errors.csv} is written anew
   * @return the changed folder, read anew: its passage has these very errors
   * @throws IllegalArgumentException if the file cannot express them, for example an interval that
   *     is not whole minutes
   */
  public PassageFolder withErrors(ErrorModel errors) {
    PassageFolder folder = withFile("errors.csv", ErrorSheet.text(errors));
    return told(folder, errors, folder.passage().errors());
  }

  /** A folder, unless what was to be written comes back as something else. */
  private static PassageFolder told(PassageFolder folder, Object wanted, Object read) {
    if (!wanted.equals(read)) {
      throw new IllegalArgumentException(
          "a folder cannot tell \"" + wanted + "\", which would read as \"" + read + "\"");
    }
    return folder;
  }

  /**
   * The passage that the folder describes, ready to be planned for its planned departure:
   *
   * <pre>{@code
   * PassageFolder folder = PassageFolder.read(path);
   * Outcome<TimedPlan, NotPossible> plan =
   *     TimedPlan.of(folder.passage(), folder.start().toInstant());
   * }</pre>
   *
   * <p>Streams are those of the nearest station within the reach of {@link #limits} that no coast
   * cuts off, heights of tide half a cosine between two waters of their table. The strongest stream
   * of {@link #limits} is the stop limit of the stream, with a warning from four fifths of it,
   * unless {@code margins.csv} gives its own; a latest arrival is a condition of the passage.
   *
   * @return the passage, carrying the {@link #notes}
   */
  public Passage passage() {
    return PassageMaker.passage(this, parts);
  }

  /**
   * Writes the folder again, every file as it was read, comments included: what is read from there
   * equals this folder.
   *
   * @param target a folder that is empty or does not exist yet
   * @throws IOException if the files cannot be written
   * @throws DirectoryNotEmptyException if there is something in the folder, which is left as it is
   */
  public void write(Path target) throws IOException {
    if (Files.exists(target)) {
      try (Stream<Path> there = Files.list(target)) {
        if (there.findFirst().isPresent()) {
          throw new DirectoryNotEmptyException(target.toString());
        }
      }
    }
    for (Map.Entry<String, String> file : texts.entrySet()) {
      Path path = target.resolve(file.getKey());
      Files.createDirectories(Objects.requireNonNull(path.getParent(), "parent"));
      Files.write(path, file.getValue().getBytes(StandardCharsets.UTF_8));
    }
  }

  /**
   * The files as they were read.
   *
   * @return their texts by their names in the folder, for example {@code tides/orrin-quay.csv};
   *     unmodifiable
   */
  public Map<String, String> texts() {
    return texts;
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
   * The same passage begun at another time.
   *
   * @param start when the first way point is left; clock times are printed in its offset
   * @return a changed copy; {@code passage.csv} among its texts is written anew, without remarks
   * @throws IllegalArgumentException if the year is not in [1900, 2100]
   */
  public PassageFolder withStart(OffsetDateTime start) {
    PassageSheet changed = passage.withStart(start);
    Map<String, String> otherTexts = new LinkedHashMap<>(texts);
    otherTexts.put("passage.csv", changed.text());
    return new PassageFolder(changed, wayPoints, tides, streams, limits, parts, otherTexts);
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
  public FolderLimits limits() {
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

  @Override
  public boolean equals(Object other) {
    return other instanceof PassageFolder that && texts.equals(that.texts);
  }

  @Override
  public int hashCode() {
    return texts.hashCode();
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
