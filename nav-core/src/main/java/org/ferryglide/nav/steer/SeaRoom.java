package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.Obstacles;
import org.ferryglide.nav.quickest.Waters;
import org.ferryglide.nav.water.WindAgainstStream;
import org.jspecify.annotations.Nullable;

/**
 * Where a quickest path may go: clear of land and dangers, out of areas while they are closed, and
 * only where stream and sea are within the party's limits.
 *
 * <p>The quickest path seeks the hardest stream, which is where the sea is worst; it should not be
 * asked for without these.
 *
 * <pre>{@code
 * SeaRoom room =
 *     SeaRoom.open()
 *         .withObstacles(List.of(island, race))
 *         .withClosure(firingRange, TimeSpan.of(nine, noon))
 *         .withGreatestStream(Speed.ofKnots(3))
 *         .withoutWindAgainstStream(new WindAgainstStream(Speed.ofKnots(10), Speed.ofKnots(1.5), 45));
 * Strategy strategy = Strategy.quickestIn(room);
 * }</pre>
 */
final class SeaRoom implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final SeaRoom OPEN = new SeaRoom(List.of(), List.of(), List.of(), null, List.of());

  private final List<List<Position>> obstacles;
  private final List<List<Position>> closedAreas;
  private final List<TimeSpan> closedTimes;
  private final @Nullable Speed greatestStream;
  private final List<WindAgainstStream> rough;

  private SeaRoom(
      List<List<Position>> obstacles,
      List<List<Position>> closedAreas,
      List<TimeSpan> closedTimes,
      @Nullable Speed greatestStream,
      List<WindAgainstStream> rough) {
    this.obstacles = obstacles;
    this.closedAreas = closedAreas;
    this.closedTimes = closedTimes;
    this.greatestStream = greatestStream;
    this.rough = rough;
  }

  /**
   * Open water without limits.
   *
   * @return room everywhere; the {@code with} methods take some away
   */
  public static SeaRoom open() {
    return OPEN;
  }

  /**
   * The same room without land, races or other dangers; those given before are kept. A path passes
   * their corners at 2 m, so draw them with the berth they need.
   *
   * @param polygons at least three corners each, the first not repeated at the end
   * @return the smaller room
   * @throws IllegalArgumentException if a polygon has fewer than three corners or the same one
   *     twice running
   */
  public SeaRoom withObstacles(List<List<Position>> polygons) {
    List<List<Position>> all = new ArrayList<>(obstacles);
    for (List<Position> polygon : polygons) {
      all.add(List.copyOf(polygon));
    }
    Obstacles.of(all); // refuses bad ones
    return new SeaRoom(List.copyOf(all), closedAreas, closedTimes, greatestStream, rough);
  }

  /**
   * The same room without an area for a time, such as a firing range.
   *
   * @param area at least three corners, the first not repeated at the end
   * @param when from when until when it may not be entered
   * @return the smaller room
   * @throws IllegalArgumentException if the polygon has fewer than three corners or the same one
   *     twice running
   */
  public SeaRoom withClosure(List<Position> area, TimeSpan when) {
    List<List<Position>> areas = new ArrayList<>(closedAreas);
    areas.add(List.copyOf(area));
    Obstacles.of(areas); // refuses bad ones
    List<TimeSpan> times = new ArrayList<>(closedTimes);
    times.add(Objects.requireNonNull(when, "when"));
    return new SeaRoom(obstacles, List.copyOf(areas), List.copyOf(times), greatestStream, rough);
  }

  /**
   * The same room without waters where the stream runs harder than the party will meet.
   *
   * @param rate the greatest rate the path may meet; of several the least counts
   * @return the smaller room
   */
  public SeaRoom withGreatestStream(Speed rate) {
    Speed least = greatestStream;
    if (least == null || rate.compareTo(least) < 0) {
      least = Objects.requireNonNull(rate, "rate");
    }
    return new SeaRoom(obstacles, closedAreas, closedTimes, least, rough);
  }

  /**
   * The same room without waters where the wind is against the stream.
   *
   * @param rough from when on that matters to the party
   * @return the smaller room
   */
  public SeaRoom withoutWindAgainstStream(WindAgainstStream rough) {
    List<WindAgainstStream> all = new ArrayList<>(this.rough);
    all.add(Objects.requireNonNull(rough, "rough"));
    return new SeaRoom(obstacles, closedAreas, closedTimes, greatestStream, List.copyOf(all));
  }

  /**
   * The greatest stream a path may meet.
   *
   * @return the rate; empty if any will do
   */
  public Optional<Speed> greatestStream() {
    return Optional.ofNullable(greatestStream);
  }

  boolean isOpen() {
    return equals(OPEN);
  }

  boolean hasLimits() {
    return greatestStream != null || !rough.isEmpty();
  }

  Waters waters() {
    List<Waters.Closure> closures = new ArrayList<>();
    for (int i = 0; i < closedAreas.size(); i++) {
      TimeSpan when = closedTimes.get(i);
      closures.add(
          new Waters.Closure(
              Obstacles.of(List.of(closedAreas.get(i))),
              EpochSeconds.of(when.from()),
              EpochSeconds.of(when.until())));
    }
    return new Waters(Obstacles.of(obstacles), closures);
  }

  /**
   * Whether the stream that a motion has sampled at a place and time, times a factor, and the wind
   * there are within the limits; false if the wind is not known though a limit asks for it.
   */
  boolean allows(
      Motion sampled,
      double latitude,
      double longitude,
      double time,
      double factor,
      double[] wind) {
    if (rough.isEmpty()) {
      return allows(factor * sampled.streamEast(), factor * sampled.streamNorth(), 0.0, 0.0);
    }
    return sampled.sampleWind(latitude, longitude, time, wind)
        && allows(factor * sampled.streamEast(), factor * sampled.streamNorth(), wind[0], wind[1]);
  }

  /** Whether a stream and a wind over the ground are within the limits, metres a second. */
  boolean allows(double streamEast, double streamNorth, double windEast, double windNorth) {
    if (greatestStream != null
        && Math.hypot(streamEast, streamNorth) > greatestStream.metresPerSecond()) {
      return false;
    }
    for (int i = 0; i < rough.size(); i++) {
      if (rough.get(i).isMetBy(windEast, windNorth, streamEast, streamNorth)) {
        return false;
      }
    }
    return true;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SeaRoom that
        && obstacles.equals(that.obstacles)
        && closedAreas.equals(that.closedAreas)
        && closedTimes.equals(that.closedTimes)
        && Objects.equals(greatestStream, that.greatestStream)
        && rough.equals(that.rough);
  }

  @Override
  public int hashCode() {
    return Objects.hash(obstacles, closedAreas, closedTimes, greatestStream, rough);
  }

  @Override
  public String toString() {
    return "sea room of "
        + obstacles.size()
        + " obstacles, "
        + closedAreas.size()
        + " closures"
        + (greatestStream == null ? "" : ", stream up to " + greatestStream)
        + (rough.isEmpty() ? "" : ", no wind against stream");
  }
}
