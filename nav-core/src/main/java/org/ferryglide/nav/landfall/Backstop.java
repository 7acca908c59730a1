package org.ferryglide.nav.landfall;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.position.Position;

/**
 * A line that would be noticed on reaching it: a coast, a depth contour, a string of buoys, the
 * edge of a race. Lying along the course it is a handrail, lying across it a backstop.
 *
 * <pre>{@code
 * Backstop mainland = new Backstop("mainland", List.of(north, bay, south));
 * }</pre>
 *
 * @param name what the paddler calls it
 * @param line its points in order, at least two
 */
record Backstop(String name, List<Position> line) implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final int FEWEST_POINTS = 2;

  /**
   * Takes both parts.
   *
   * @param name what the paddler calls it
   * @param line its points in order; copied
   * @throws IllegalArgumentException if there are fewer than two points
   */
  public Backstop {
    Objects.requireNonNull(name, "name");
    line = List.copyOf(line);
    if (line.size() < FEWEST_POINTS) {
      throw new IllegalArgumentException(
          "a line needs at least 2 points, but " + name + " had " + line.size());
    }
  }
}
