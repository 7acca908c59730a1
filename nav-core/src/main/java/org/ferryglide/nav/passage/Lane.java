package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * A traffic lane or fairway, as the line of its middle and its width. It is crossed with the
 * heading, not the track, as nearly as may be at right angles, which is what the collision
 * regulations ask for in a lane of a separation scheme (rule 10).
 *
 * <pre>{@code
 * Lane fairway = Lane.along("Orrin fairway", List.of(seaward, harbour), Distance.ofMetres(400));
 * }</pre>
 */
public final class Lane implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final List<Position> middle;
  private final Distance width;

  private Lane(String name, List<Position> middle, Distance width) {
    this.name = name;
    this.middle = middle;
    this.width = width;
  }

  /**
   * A lane along a line.
   *
   * @param name what it is called
   * @param middle the line of its middle, at least two points in order, within 60 NM of each other
   * @param width from edge to edge, above zero
   * @return the lane
   * @throws IllegalArgumentException if there are fewer than two points or the width is not above
   *     zero
   */
  public static Lane along(String name, List<Position> middle, Distance width) {
    Names.checked(name, "name of a lane");
    Arguments.positive(width.metres(), "width of a lane", "metres");
    if (middle.size() < 2) {
      throw new IllegalArgumentException(
          "line of " + name + " must have at least 2 points, but had " + middle.size());
    }
    List<Position> points = Collections.unmodifiableList(new ArrayList<>(middle));
    Outline.line(points, name);
    return new Lane(name, points, width);
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
   * The line of its middle.
   *
   * @return at least two points in order; unmodifiable
   */
  public List<Position> middle() {
    return middle;
  }

  /**
   * How wide it is.
   *
   * @return from edge to edge
   */
  public Distance width() {
    return width;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Lane that
        && name.equals(that.name)
        && middle.equals(that.middle)
        && width.equals(that.width);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, middle, width);
  }

  @Override
  public String toString() {
    return name + ", " + width + " wide";
  }
}
