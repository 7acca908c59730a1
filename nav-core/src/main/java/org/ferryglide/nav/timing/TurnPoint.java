package org.ferryglide.nav.timing;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * Where and when to turn back, and when that brings the party home.
 *
 * <pre>{@code
 * TurnPoint last = TurnBack.pointOfNoReturn(solver, steered, sunset).orElseThrow();
 * last.time(); // turn by then, or be committed
 * }</pre>
 *
 * @param time when to turn
 * @param position where the craft is then
 * @param fromStart distance from there straight to the start
 * @param home when the start is reached again
 */
public record TurnPoint(Instant time, Position position, Distance fromStart, Instant home)
    implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts; {@link TurnBack} finds them.
   *
   * @param time when to turn
   * @param position where the craft is then
   * @param fromStart distance straight to the start, not negative
   * @param home when the start is reached again, not before {@code time}
   * @throws IllegalArgumentException if the distance is negative, or home comes before the turn
   */
  public TurnPoint {
    Objects.requireNonNull(position, "position");
    Arguments.notNegative(fromStart.metres(), "distance from the start", "metres");
    if (home.isBefore(time)) {
      throw new IllegalArgumentException(
          "the start must be reached after the turn at " + time + ", but was at " + home);
    }
  }
}
