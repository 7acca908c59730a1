package org.ferryglide.nav.fix;

import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * The circle at an observed distance off a mark, found by vertical angle, by a light dipping below
 * the horizon, by sound or by eye.
 *
 * <pre>{@code
 * DistanceCircle.of("light", light, Distance.ofNauticalMiles(1.2), Distance.ofCables(1));
 * }</pre>
 *
 * @param name what the mark is called
 * @param mark where the mark is
 * @param distance how far off it is, above 0
 * @param standardDeviation how uncertain the distance is, one standard deviation, above 0
 */
public record DistanceCircle(
    String name, Position mark, Distance distance, Distance standardDeviation)
    implements PositionLine {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts; {@link #of} reads better.
   *
   * @param name what the mark is called
   * @param mark where the mark is
   * @param distance how far off it is
   * @param standardDeviation one standard deviation
   * @throws IllegalArgumentException if a distance is not above 0
   */
  public DistanceCircle {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(mark, "mark");
    Arguments.positive(distance.metres(), "distance off", "metres");
    Arguments.positive(standardDeviation.metres(), "standard deviation", "metres");
  }

  /**
   * A distance off a mark.
   *
   * @param name what the mark is called
   * @param mark where the mark is
   * @param distance how far off it is, above 0
   * @param standardDeviation one standard deviation, above 0
   * @return the position line
   * @throws IllegalArgumentException if a distance is not above 0
   */
  public static DistanceCircle of(
      String name, Position mark, Distance distance, Distance standardDeviation) {
    return new DistanceCircle(name, mark, distance, standardDeviation);
  }

  @Override
  public <R> R match(Kinds<R> kinds) {
    return kinds.distance(this);
  }
}
