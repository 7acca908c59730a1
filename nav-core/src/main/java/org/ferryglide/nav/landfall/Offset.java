package org.ferryglide.nav.landfall;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;

/**
 * How far to one side of the target one aims: a distance that cannot be had without its side, so
 * that it is never counted to the wrong one.
 *
 * <pre>{@code
 * Offset aimed = aim.offset(); // 620 m to the left
 * Offset byEye = Offset.of(Side.RIGHT, Distance.ofMetres(400));
 * }</pre>
 *
 * @param side on which side of the target
 * @param distance how far, at least 0
 */
public record Offset(Side side, Distance distance) implements Serializable {

  private static final long serialVersionUID = 1L;

  /** Aimed straight at the target. */
  public static final Offset NONE = new Offset(Side.LEFT, Distance.ofMetres(0.0));

  /**
   * Takes both parts.
   *
   * @param side on which side of the target
   * @param distance how far
   * @throws IllegalArgumentException if {@code distance} is negative; the other side is named, not
   *     signed
   */
  public Offset {
    Objects.requireNonNull(side, "side");
    Arguments.notNegative(distance.metres(), "offset", "metres");
  }

  /**
   * An offset to one side.
   *
   * @param side on which side of the target
   * @param distance how far, at least 0
   * @return the offset
   * @throws IllegalArgumentException if {@code distance} is negative
   */
  public static Offset of(Side side, Distance distance) {
    return new Offset(side, distance);
  }

  /** Metres to the right of the target, to its left negative. */
  double metresRight() {
    return side == Side.RIGHT ? distance.metres() : -distance.metres();
  }

  /** Distance and side, for people. */
  @Override
  public String toString() {
    return Math.round(distance.metres()) + " m to the " + (side == Side.LEFT ? "left" : "right");
  }
}
