package org.ferryglide.nav.fix;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.position.Position;

/**
 * Something on the chart that can be seen: a tower, a light, a headland, an island's end.
 *
 * <pre>{@code
 * Mark beacon = new Mark("beacon", Position.ofDegrees(50.105, -5.535));
 * }</pre>
 *
 * @param name what the paddler calls it
 * @param position where it is
 */
record Mark(String name, Position position) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes both parts.
   *
   * @param name what the paddler calls it
   * @param position where it is
   */
  public Mark {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(position, "position");
  }
}
