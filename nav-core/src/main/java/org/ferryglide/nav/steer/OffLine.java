package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.time.Instant;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * How far a ground track strays from the line of its leg, to which side, where and when.
 *
 * <pre>{@code
 * OffLine off = steered.greatestOffLine();
 * off.distance().magnitude().inNauticalMiles(1) + " to the " + off.side(); // 0.6 NM to the left
 * }</pre>
 *
 * @param distance distance from the line, positive to the right of start to end, negative to the
 *     left
 * @param time when the craft is there
 * @param position where that is
 */
public record OffLine(Distance distance, Instant time, Position position) implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * The side of the line.
   *
   * <pre>{@code
   * boolean seaward = off.side() == OffLine.Side.LEFT;
   * }</pre>
   */
  public enum Side {
    /** To the left of the line, looking from start to end. */
    LEFT,
    /** To the right of the line, looking from start to end. */
    RIGHT,
    /** On the line, to the millimetre. */
    NEITHER;

    /** The word in lower case. */
    @Override
    public String toString() {
      return switch (this) {
        case LEFT -> "left";
        case RIGHT -> "right";
        case NEITHER -> "neither side";
      };
    }
  }

  /**
   * The side of the line, looking from start to end.
   *
   * @return left, right, or neither for less than a millimetre
   */
  public Side side() {
    double metres = distance.metres();
    return Math.abs(metres) < 1e-3 ? Side.NEITHER : metres < 0.0 ? Side.LEFT : Side.RIGHT;
  }
}
