package org.ferryglide.nav.timing;

import java.io.Serializable;
import java.time.Instant;
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
}
