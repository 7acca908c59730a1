package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.position.Position;

/**
 * Where a craft is at a time, and where its bow points.
 *
 * <pre>{@code
 * for (TrackPoint point : steered.groundTrack().points()) {
 *   System.out.println(point.time() + " " + point.position());
 * }
 * }</pre>
 *
 * @param time when
 * @param position where
 * @param heading the heading from then on, until the next point of the track or for ten minutes
 */
public record TrackPoint(Instant time, Position position, TrueBearing heading)
    implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts.
   *
   * @param time when
   * @param position where
   * @param heading the heading from then on
   */
  public TrackPoint {
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(position, "position");
    Objects.requireNonNull(heading, "heading");
  }
}
