package org.ferryglide.nav.geodesy;

import java.io.Serializable;
import java.time.Duration;
import java.util.Objects;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;

/**
 * Something that moves over the ground on one track at one speed; a mark is one that does not.
 *
 * <pre>{@code
 * MovingVessel ferry =
 *     new MovingVessel(ferryPosition, TrueBearing.ofDegrees(200), Speed.ofKnots(14));
 * Position inTenMinutes = ferry.positionAfter(Duration.ofMinutes(10));
 * }</pre>
 *
 * @param position where it is now
 * @param track the path over the ground, a rhumb line
 * @param speed speed over the ground
 */
public record MovingVessel(Position position, TrueBearing track, Speed speed)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes position, track and speed.
   *
   * @param position where it is now
   * @param track the path over the ground, a rhumb line
   * @param speed speed over the ground
   * @throws NullPointerException if one is missing
   */
  public MovingVessel {
    Objects.requireNonNull(position, "position");
    Objects.requireNonNull(track, "track");
    Objects.requireNonNull(speed, "speed");
  }

  /**
   * Something that stays where it is.
   *
   * @param position where it is
   * @return a vessel without speed
   */
  public static MovingVessel mark(Position position) {
    return new MovingVessel(position, TrueBearing.ofDegrees(0), Speed.ZERO);
  }

  /**
   * Where it will be, on WGS84.
   *
   * @param time from now; negative for the past
   * @return the position
   * @throws IllegalArgumentException if it would run past a pole
   */
  public Position positionAfter(Duration time) {
    return positionAfter(Ellipsoid.WGS84, time);
  }

  /**
   * Where it will be, on another ellipsoid than WGS84.
   *
   * @param ellipsoid the ellipsoid
   * @param time from now; negative for the past
   * @return the position
   * @throws IllegalArgumentException if it would run past a pole
   */
  public Position positionAfter(Ellipsoid ellipsoid, Duration time) {
    return RhumbLine.from(ellipsoid, position, track)
        .pointAt(Distance.ofMetres(Seconds.of(time) * speed.metresPerSecond()));
  }
}
