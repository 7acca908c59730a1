package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.position.Position;

/**
 * A place to keep away from, as the party took it from its own chart and pilot book: a rock, a
 * race, a firing range. The library knows only the dangers it is given.
 *
 * <pre>{@code
 * Danger rock = Danger.point("Fang Rock", position, Distance.ofMetres(150));
 * Danger race =
 *     Danger.area("Hesk Race", outline, Distance.ofMetres(200))
 *         .closedAboveStream(Speed.ofKnots(1.5))
 *         .closedDuring(springEbbHours);
 * }</pre>
 *
 * <p>Without a {@code closed} statement a danger is always closed; with several it is closed
 * whenever one of them holds, and counts as not checked where one of them cannot be looked up.
 */
public final class Danger implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final List<Position> outline;
  private final Distance keepOff;
  private final List<Closing> closings;

  private Danger(String name, List<Position> outline, Distance keepOff, List<Closing> closings) {
    this.name = name;
    this.outline = outline;
    this.keepOff = keepOff;
    this.closings = closings;
  }

  /**
   * A danger at one place.
   *
   * @param name what it is called
   * @param position where it is
   * @param keepOff the distance to keep
   * @return the danger, always closed
   * @throws IllegalArgumentException if the name is empty or the distance negative
   */
  public static Danger point(String name, Position position, Distance keepOff) {
    return make(name, List.of(position), keepOff);
  }

  /**
   * A danger with an outline, its inside included.
   *
   * @param name what it is called
   * @param outline corners in order, at least three; the last joins the first; within 60 NM of each
   *     other
   * @param keepOff the distance to keep from the outline
   * @return the danger, always closed
   * @throws IllegalArgumentException if there are fewer than three corners, they lie too far apart,
   *     or the distance is negative
   */
  public static Danger area(String name, List<Position> outline, Distance keepOff) {
    if (outline.size() < 3) {
      throw new IllegalArgumentException(
          "outline of " + name + " must have at least 3 corners, but had " + outline.size());
    }
    return make(name, outline, keepOff);
  }

  private static Danger make(String name, List<Position> outline, Distance keepOff) {
    Names.checked(name, "name of a danger");
    Arguments.notNegative(keepOff.metres(), "distance to keep", "metres");
    List<Position> corners = Collections.unmodifiableList(new ArrayList<>(outline));
    Outline.of(corners, name); // refuses corners too far apart
    return new Danger(name, corners, keepOff, List.of());
  }

  private Danger closed(Closing closing) {
    List<Closing> more = new ArrayList<>(closings);
    more.add(closing);
    return new Danger(name, outline, keepOff, Collections.unmodifiableList(more));
  }

  /**
   * The same danger closed at stated times, for example from two hours before high water to one
   * after.
   *
   * @param spans when it is closed, at least one, since an empty list would mean never
   * @return the changed danger
   * @throws IllegalArgumentException if there is no span
   */
  public Danger closedDuring(List<TimeSpan> spans) {
    if (spans.isEmpty()) {
      throw new IllegalArgumentException(
          "times at which " + name + " is closed must be at least one, but were none");
    }
    return closed(new Closing.During(List.copyOf(spans)));
  }

  /**
   * The same danger closed above a rate of the stream at its place.
   *
   * @param rate the greatest rate at which it is open
   * @return the changed danger
   */
  public Danger closedAboveStream(Speed rate) {
    return closed(new Closing.AboveStream(Objects.requireNonNull(rate, "rate")));
  }

  /**
   * The same danger closed above a speed of the wind at its place.
   *
   * @param speed the greatest wind in which it is open
   * @return the changed danger
   */
  public Danger closedAboveWind(Speed speed) {
    return closed(new Closing.AboveWind(Objects.requireNonNull(speed, "speed")));
  }

  /**
   * The same danger closed while the water is low, for example over a ledge.
   *
   * @param port the level to look at, by its name in the passage
   * @param level the least height at which it is open, above the datum
   * @return the changed danger
   * @throws IllegalArgumentException if the name is empty
   */
  public Danger closedBelowLevel(String port, Distance level) {
    return closed(new Closing.Level(Names.checked(port, "name of a port"), level.metres(), false));
  }

  /**
   * The same danger closed while the water is high, for example below a bridge or over a covering
   * ledge.
   *
   * @param port the level to look at, by its name in the passage
   * @param level the greatest height at which it is open, above the datum
   * @return the changed danger
   * @throws IllegalArgumentException if the name is empty
   */
  public Danger closedAboveLevel(String port, Distance level) {
    return closed(new Closing.Level(Names.checked(port, "name of a port"), level.metres(), true));
  }

  /**
   * What it is called.
   *
   * @return the name, not empty
   */
  public String name() {
    return name;
  }

  /**
   * Where it is.
   *
   * @return one position, or the corners of an outline in order; unmodifiable
   */
  public List<Position> outline() {
    return outline;
  }

  /**
   * The distance to keep.
   *
   * @return from the position or the outline
   */
  public Distance keepOff() {
    return keepOff;
  }

  /**
   * When it is closed, in words.
   *
   * @return for example {@code closed in streams above 1.5 kn}; empty if it is always closed
   */
  public Optional<String> whenClosed() {
    if (closings.isEmpty()) {
      return Optional.empty();
    }
    StringBuilder words = new StringBuilder("closed ");
    for (int i = 0; i < closings.size(); i++) {
      words.append(i == 0 ? "" : " or ").append(closings.get(i).words());
    }
    return Optional.of(words.toString());
  }

  /**
   * The stated times at which it is closed.
   *
   * @return the spans as they were given; empty if no stated times close it; unmodifiable
   */
  public List<TimeSpan> closedTimes() {
    List<TimeSpan> spans = new ArrayList<>();
    for (Closing closing : closings) {
      if (closing instanceof Closing.During during) {
        spans.addAll(during.spans());
      }
    }
    return Collections.unmodifiableList(spans);
  }

  /**
   * The stream above which it is closed.
   *
   * @return the first rate given; empty if no stream closes it
   */
  public Optional<Speed> closedAboveStream() {
    return first(Closing.AboveStream.class).map(Closing.AboveStream::rate);
  }

  /**
   * The wind above which it is closed.
   *
   * @return the first speed given; empty if no wind closes it
   */
  public Optional<Speed> closedAboveWind() {
    return first(Closing.AboveWind.class).map(Closing.AboveWind::speed);
  }

  /**
   * The level below which it is closed.
   *
   * @return the first height above the port's datum; empty if no low level closes it
   */
  public Optional<Distance> closedBelowLevel() {
    return level(false);
  }

  /**
   * The level above which it is closed.
   *
   * @return the first height above the port's datum; empty if no high level closes it
   */
  public Optional<Distance> closedAboveLevel() {
    return level(true);
  }

  /**
   * The port whose level closes it.
   *
   * @return the first port given; empty if no level closes it
   */
  public Optional<String> closingPort() {
    return first(Closing.Level.class).map(Closing.Level::portName);
  }

  private Optional<Distance> level(boolean above) {
    for (Closing closing : closings) {
      if (closing instanceof Closing.Level level && level.above() == above) {
        return Optional.of(Distance.ofMetres(level.metres()));
      }
    }
    return Optional.empty();
  }

  private <T extends Closing> Optional<T> first(Class<T> kind) {
    return closings.stream().filter(kind::isInstance).map(kind::cast).findFirst();
  }

  List<Closing> closings() {
    return closings;
  }

  /** Closed by the same, in whatever order it was given. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Danger that
        && name.equals(that.name)
        && outline.equals(that.outline)
        && keepOff.equals(that.keepOff)
        && new HashSet<>(closings).equals(new HashSet<>(that.closings));
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, outline, keepOff, new HashSet<>(closings));
  }

  @Override
  public String toString() {
    return name + ", keep " + keepOff + " off" + whenClosed().map(w -> ", " + w).orElse("");
  }
}
