package org.ferryglide.nav.magnetic;

import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.ferryglide.nav.position.Position;

/**
 * A compass rose and where on the chart it is printed.
 *
 * <pre>{@code
 * PlacedRose west =
 *     new PlacedRose(
 *         Position.ofDegrees(57.0, -7.5), CompassRose.parse("4°15'W 2019 (8'E)"));
 * }</pre>
 *
 * @param position centre of the rose
 * @param rose what it prints
 */
record PlacedRose(Position position, CompassRose rose) implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * Takes a place and a rose.
   *
   * @param position centre of the rose
   * @param rose what it prints
   */
  public PlacedRose {
    Objects.requireNonNull(position, "position");
    Objects.requireNonNull(rose, "rose");
  }

  static Map<Position, CompassRose> map(PlacedRose[] roses) {
    Map<Position, CompassRose> map = new LinkedHashMap<>();
    for (PlacedRose placed : roses) {
      map.put(placed.position(), placed.rose());
    }
    return Collections.unmodifiableMap(map);
  }
}
