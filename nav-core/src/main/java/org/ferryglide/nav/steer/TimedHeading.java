package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.time.Instant;
import org.ferryglide.nav.bearing.TrueBearing;

/**
 * A heading to take up at a time.
 *
 * <pre>{@code
 * TimedHeading first = steered.headings().get(0);
 * first.heading().threeDigits(); // 070°
 * }</pre>
 *
 * @param from when to take it up
 * @param heading where to point the bow, true
 */
public record TimedHeading(Instant from, TrueBearing heading) implements Serializable {
  private static final long serialVersionUID = 1L;
}
