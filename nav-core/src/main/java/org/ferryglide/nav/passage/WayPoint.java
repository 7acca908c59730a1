package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;

/**
 * A named place of a passage: where a leg begins or ends, and what the party does there.
 *
 * <pre>{@code
 * WayPoint skerry =
 *     WayPoint.of("Hesk Skerry", Position.parse("46°11.8'N 026°17.6'W"))
 *         .withToSee("white beacon on the north end")
 *         .withMark(Distance.ofMetres(12))
 *         .withStop(Stop.ashore(Duration.ofMinutes(30)))
 *         .withLanding(
 *             Landing.between("Orrin Quay", Distance.ofMetres(1.2), Distance.ofMetres(4)));
 * }</pre>
 */
public final class WayPoint implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final Position position;
  private final String toSee;
  private final @Nullable Distance markHeight;
  private final @Nullable String markPort;
  private final @Nullable Stop stop;
  private final @Nullable Landing landing;
  private final @Nullable WayPoint aimedOffFor;

  private WayPoint(
      String name,
      Position position,
      String toSee,
      @Nullable Distance markHeight,
      @Nullable String markPort,
      @Nullable Stop stop,
      @Nullable Landing landing,
      @Nullable WayPoint aimedOffFor) {
    this.aimedOffFor = aimedOffFor;
    this.name = name;
    this.position = position;
    this.toSee = toSee;
    this.markHeight = markHeight;
    this.markPort = markPort;
    this.stop = stop;
    this.landing = landing;
  }

  /**
   * A place with a name, passed without a stop.
   *
   * @param name what the party calls it
   * @param position where it is
   * @return the way point
   * @throws IllegalArgumentException if the name is empty or holds a control character
   */
  public static WayPoint of(String name, Position position) {
    return new WayPoint(
        Names.checked(name, "name of a way point"),
        Objects.requireNonNull(position, "position"),
        "",
        null,
        null,
        null,
        null,
        null);
  }

  /**
   * The same way point with what is to be seen there.
   *
   * @param toSee a few words by which the place is known
   * @return the changed way point
   * @throws IllegalArgumentException if the words hold a control character
   */
  public WayPoint withToSee(String toSee) {
    return new WayPoint(
        name,
        position,
        Names.checkedOrEmpty(toSee, "what is to be seen"),
        markHeight,
        markPort,
        stop,
        landing,
        aimedOffFor);
  }

  /**
   * The same way point with a mark that can be seen from the water. How much of it stands above the
   * water is found from the level at the port of the landing; where there is none, from whichever
   * port of the passage has the highest water then, so that no more of the mark is counted on than
   * stands out by all of them; and from its height alone where the passage has no levels.
   *
   * @param heightAboveDatum height of its top above the datum of those levels, or above the water
   *     where none is known; negative for what always covers
   * @return the changed way point
   */
  public WayPoint withMark(Distance heightAboveDatum) {
    return withMark(heightAboveDatum, Optional.empty());
  }

  /**
   * The same way point with a mark that can be seen from the water, and the port whose water rises
   * round it.
   *
   * @param heightAboveDatum height of its top above the datum of the port's levels; negative for
   *     what always covers
   * @param port the level to look at, by its name in the passage
   * @return the changed way point
   * @throws IllegalArgumentException if the name of the port is empty or holds a control character
   */
  public WayPoint withMark(Distance heightAboveDatum, String port) {
    return withMark(heightAboveDatum, Optional.of(Names.checked(port, "name of a port")));
  }

  private WayPoint withMark(Distance heightAboveDatum, Optional<String> port) {
    return new WayPoint(
        name,
        position,
        toSee,
        Objects.requireNonNull(heightAboveDatum, "heightAboveDatum"),
        port.orElse(null),
        stop,
        landing,
        aimedOffFor);
  }

  /**
   * The same way point with a stop.
   *
   * @param stop how long the party stays; it does not drift meanwhile
   * @return the changed way point
   */
  public WayPoint withStop(Stop stop) {
    return new WayPoint(
        name,
        position,
        toSee,
        markHeight,
        markPort,
        Objects.requireNonNull(stop, "stop"),
        landing,
        aimedOffFor);
  }

  /**
   * The same way point as a place to land.
   *
   * @param landing when the landing works
   * @return the changed way point
   */
  public WayPoint withLanding(Landing landing) {
    return new WayPoint(
        name,
        position,
        toSee,
        markHeight,
        markPort,
        stop,
        Objects.requireNonNull(landing, "landing"),
        aimedOffFor);
  }

  /**
   * The same way point as one aimed at on purpose to one side of a mark, so that it is certain
   * which way to turn if the mark is not seen. The mark's own height and port count.
   *
   * @param mark what is looked for, as a rule the next way point
   * @return the changed way point
   * @see TimedPlan#aimingOff
   */
  public WayPoint aimedOffFor(WayPoint mark) {
    return new WayPoint(
        name,
        position,
        toSee,
        markHeight,
        markPort,
        stop,
        landing,
        Objects.requireNonNull(mark, "mark"));
  }

  /**
   * The same way point somewhere else.
   *
   * @param place where
   * @return the changed way point
   */
  public WayPoint at(Position place) {
    return new WayPoint(
        name,
        Objects.requireNonNull(place, "place"),
        toSee,
        markHeight,
        markPort,
        stop,
        landing,
        aimedOffFor);
  }

  /**
   * What the party calls it.
   *
   * @return the name, not empty
   */
  public String name() {
    return name;
  }

  /**
   * Where it is.
   *
   * @return the position
   */
  public Position position() {
    return position;
  }

  /**
   * What is to be seen there.
   *
   * @return a few words; empty if none were given
   */
  public String toSee() {
    return toSee;
  }

  /**
   * The height of the mark.
   *
   * @return height of its top above the datum; empty if there is no mark, or none is known
   */
  public Optional<Distance> markHeight() {
    return Optional.ofNullable(markHeight);
  }

  /**
   * The port whose water rises round the mark.
   *
   * @return the port that was given with it, else that of the landing; empty if there is neither
   */
  public Optional<String> markPort() {
    return markPort != null ? Optional.of(markPort) : landing().flatMap(Landing::port);
  }

  /** The mark of another way point, with the port whose water rises round it. */
  WayPoint withMarkOf(WayPoint other) {
    Distance height = other.markHeight;
    return height == null ? this : withMark(height, other.markPort());
  }

  /**
   * How long the party stays.
   *
   * @return the stop; empty if the way point is only passed
   */
  public Optional<Stop> stop() {
    return Optional.ofNullable(stop);
  }

  /**
   * When one can land.
   *
   * @return the landing; empty if nothing is known of one
   */
  public Optional<Landing> landing() {
    return Optional.ofNullable(landing);
  }

  /**
   * The mark that is looked for on the way here, where it stands elsewhere.
   *
   * @return the mark; empty if one aims straight at this way point
   */
  public Optional<WayPoint> aimedOffFor() {
    return Optional.ofNullable(aimedOffFor);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof WayPoint that
        && name.equals(that.name)
        && position.equals(that.position)
        && toSee.equals(that.toSee)
        && Objects.equals(markHeight, that.markHeight)
        && markPort().equals(that.markPort())
        && Objects.equals(stop, that.stop)
        && Objects.equals(landing, that.landing)
        && Objects.equals(aimedOffFor, that.aimedOffFor);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, position, toSee, markHeight, markPort(), stop, landing, aimedOffFor);
  }

  @Override
  public String toString() {
    return name + " " + position;
  }
}
