package org.ferryglide.nav.water;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;

/**
 * A turn of the stream: from running one way to running more or less the other way.
 *
 * <pre>{@code
 * StreamTurn turn = streamHere.turns(from, until).first().get();
 * turn.setAfter().threeDigits(); // 245°
 * }</pre>
 *
 * <p>A stream that turns round through all directions has no slack; the least rate says how much
 * stream is left at the turn.
 *
 * @param time when the rate is least, or when the direction changes if it does so at a stroke
 * @param leastRate the rate then; zero for true slack
 * @param setBefore where the stream went when it was strongest before the turn
 * @param setAfter where it goes when it is strongest after the turn
 */
public record StreamTurn(Instant time, Speed leastRate, TrueBearing setBefore, TrueBearing setAfter)
    implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts.
   *
   * @param time when the rate is least
   * @param leastRate the rate then
   * @param setBefore where the stream went before
   * @param setAfter where it goes after
   */
  public StreamTurn {
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(leastRate, "leastRate");
    Objects.requireNonNull(setBefore, "setBefore");
    Objects.requireNonNull(setAfter, "setAfter");
  }
}
