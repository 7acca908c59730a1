package org.ferryglide.nav.steer;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.Reach;

/**
 * Lines of equal time: how far a craft gets by when, or from where and until when it can still make
 * a landing. The second is turning back, escape and latest departure in one picture.
 *
 * <pre>{@code
 * Isochrones out = Isochrones.from(solver, slip, departure, Duration.ofHours(3));
 * List<List<Position>> hour = out.lineAt(departure.plus(Duration.ofHours(1)));
 * Isochrones home = Isochrones.backFrom(solver, slip, sunset, Duration.ofHours(6));
 * Optional<Instant> turnBy = home.timeAt(island); // the latest departure from there
 * }</pre>
 *
 * <p>They are times of ways that can be made: the front on a grid of 201 nodes a side from which
 * the quickest path starts, each of whose ways is drawn in straight tracks from node to node and
 * timed as the path itself is. So they are late, never early: who leaves by the reach back is in
 * time. Measured:
 *
 * <ul>
 *   <li>In uniform streams of up to 0.9 craft speeds on a plane late by 0.04 % at most, at 2000
 *       places against the closed form. On the ellipsoid the straight tracks are none of shortest
 *       distance: in still water late by 0.01 % at most up to 6 hours within 75 degrees of the
 *       equator and up to 12 hours within 65, by 0.3 % up to 24 hours within 60, and by 1 % up to
 *       24 hours within 85, at a craft speed of 1.5 m/s against geodesics.
 *   <li>In a stream of up to 0.9 craft speeds that differs from side to side late by 0.8 %, among
 *       one to six eddies of 0.4 to 0.5 craft speeds by 2.2 % (half of them by less than 0.2 %) and
 *       of 0.8 to 0.9 by 4.5 % (half by less than 0.5 %), at some 180 random places each against
 *       the quickest path.
 *   <li>Where streams outrun the craft some places count as beyond reach that are not: in a uniform
 *       stream of twice the craft's speed up to 7 % of the water reached, of four times up to 38 %,
 *       of seven times up to 82 %, by the direction of the stream.
 *   <li>Among 4 to 11 islands in still water, against the shortest ways round them, none of 14 400
 *       places within the lines was early; of 850 outside and off the land by more than one and a
 *       half squares 10 were late by more than 1 %, by 14 % at most, all of them in one scene of
 *       forty.
 *   <li>The reach back knows no waits: where an area is closed for a time it is late by as long as
 *       the craft might have waited for it to open.
 * </ul>
 *
 * <p>A line crosses each side of a square at a place that is reached by then, is straight between
 * but where it would cross land, and keeps out of lagoons to which no way leads, into their corners
 * (8 of random shape, looked at every 4 m). Rests, wind and, if the solver's strategy is the
 * quickest path, its {@link SeaRoom} are in the times; what is narrower than a square, 1.6 % of the
 * way that still water carries or more in a stream, may be missed: a passage, or a pool that no way
 * leads to.
 */
final class Isochrones {
  private final Reach reach;

  /** The departure, or the arrival of a reach back. */
  private final Instant origin;

  private final boolean backward;
  private final double longest;

  private Isochrones(Reach reach, Instant origin, boolean backward, double longest) {
    this.reach = reach;
    this.origin = origin;
    this.backward = backward;
    this.longest = longest;
  }

  /**
   * How far the craft gets by when.
   *
   * @param solver the craft, the stream and the wind
   * @param start where it starts
   * @param departure when it starts
   * @param longest how long it is followed, above 0
   * @return the lines
   * @throws IllegalArgumentException if the craft has no speed, {@code longest} is not above 0 or
   *     so long that the area searched goes beyond a pole or half round the earth, the place lies
   *     inside an obstacle or beyond 89 degrees of latitude, or a time is not in the years 1 to
   *     4999
   */
  public static Isochrones from(
      CourseToSteer solver, Position start, Instant departure, Duration longest) {
    double within = checked(solver, longest);
    double seconds = EpochSeconds.of(departure);
    LegSolver.refuseFarYears(seconds, "departure");
    LegSolver.refuseFarYears(seconds + within, "time");
    QuickestPath path = path(solver, start, "start");
    return new Isochrones(
        Reach.from(
            path.searched(),
            path.waters(),
            start.latitudeDegrees(),
            start.longitudeDegrees(),
            seconds,
            within),
        departure,
        false,
        within);
  }

  /**
   * From where and until when a place can still be made.
   *
   * @param solver the craft, the stream and the wind
   * @param goal the place to be made
   * @param arrival when it must be made at the latest
   * @param longest how far back it is looked, above 0
   * @return the lines
   * @throws IllegalArgumentException if the craft has no speed, {@code longest} is not above 0 or
   *     so long that the area searched goes beyond a pole or half round the earth, the place lies
   *     inside an obstacle or beyond 89 degrees of latitude, or a time is not in the years 1 to
   *     4999
   */
  public static Isochrones backFrom(
      CourseToSteer solver, Position goal, Instant arrival, Duration longest) {
    double within = checked(solver, longest);
    double seconds = EpochSeconds.of(arrival);
    LegSolver.refuseFarYears(seconds, "arrival");
    LegSolver.refuseFarYears(seconds - within, "leaving");
    QuickestPath path = path(solver, goal, "goal");
    return new Isochrones(
        Reach.backFrom(
            path.searched(),
            path.waters(),
            goal.latitudeDegrees(),
            goal.longitudeDegrees(),
            seconds,
            within),
        arrival,
        true,
        within);
  }

  private static double checked(CourseToSteer solver, Duration longest) {
    double within = Seconds.of(longest);
    if (!(within > 0.0)) {
      throw new IllegalArgumentException("longest must be above PT0S, but was " + longest);
    }
    if (solver.craft().meanSpeed().metresPerSecond() == 0.0) {
      throw new IllegalArgumentException(
          "a craft must have some speed for isochrones, but had " + solver.craft());
    }
    return within;
  }

  /** The path whose searches these are; as for a leg, its place may not lie everywhere. */
  private static QuickestPath path(CourseToSteer solver, Position place, String name) {
    if (!(Math.abs(place.latitudeDegrees()) <= Earth.GREATEST_LATITUDE)) {
      throw new IllegalArgumentException(
          name + " must lie within 89 degrees of the equator, but was " + place);
    }
    QuickestPath path =
        new QuickestPath(
            new Motion(solver.craft(), solver.stream(), solver.wind()), solver.strategy().room());
    path.waters().land().refuseInside(place, name);
    return path;
  }

  /**
   * The earliest arrival at a place, or the latest departure from it.
   *
   * @param position the place
   * @return the time; empty if the place is beyond reach
   */
  public Optional<Instant> timeAt(Position position) {
    double seconds = reach.seconds(position.latitudeDegrees(), position.longitudeDegrees());
    if (!(seconds <= longest)) { // infinite, too
      return Optional.empty();
    }
    Duration away = Seconds.toDuration(seconds);
    return Optional.of(backward ? origin.minus(away) : origin.plus(away));
  }

  /**
   * The line of a time.
   *
   * @param time between the departure and the longest after it, or that long before the arrival
   * @return closed polygons, the first corner not repeated: the water that is reached by then, or
   *     from which the place can be made by leaving then, lies between them; unmodifiable, empty if
   *     the time is outside that stretch
   */
  public List<List<Position>> lineAt(Instant time) {
    // of the same durations as the longest, so that the last line is within it to the last digit
    double seconds =
        Seconds.of(backward ? Duration.between(time, origin) : Duration.between(origin, time));
    if (!(seconds > 0.0 && seconds <= longest)) {
      return List.of();
    }
    List<List<Position>> lines = new ArrayList<>();
    for (double[] corners : reach.lines(seconds)) {
      List<Position> line = new ArrayList<>(corners.length / 2);
      for (int i = 0; i < corners.length; i += 2) {
        line.add(Earth.position(corners[i], corners[i + 1]));
      }
      lines.add(Collections.unmodifiableList(line));
    }
    return Collections.unmodifiableList(lines);
  }

  @Override
  public String toString() {
    return "isochrones " + (backward ? "back from " : "from ") + origin;
  }
}
