package org.ferryglide.nav.magnetic;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.Variation;

/**
 * The magnetic field at one place and time, as a vector along geographic north, east and down.
 *
 * <pre>{@code
 * MagneticField field = snapshot.field(Position.ofDegrees(50.1, -5.5));
 * field.variation(); // the angle a compass needs
 * field.dipDegrees(); // how steeply the needle would point down
 * field.zone(); // whether a compass is to be trusted at all
 * }</pre>
 *
 * @param northNanotesla component towards geographic north, nanotesla, finite
 * @param eastNanotesla component towards geographic east, nanotesla, finite
 * @param downNanotesla component downwards, nanotesla, finite
 */
public record MagneticField(double northNanotesla, double eastNanotesla, double downNanotesla)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes the three components.
   *
   * @param northNanotesla towards geographic north, nanotesla, finite
   * @param eastNanotesla towards geographic east, nanotesla, finite
   * @param downNanotesla downwards, nanotesla, finite
   * @throws IllegalArgumentException if a component is NaN or infinite
   */
  public MagneticField {
    northNanotesla = Arguments.finite(northNanotesla, "north component", "nanotesla");
    eastNanotesla = Arguments.finite(eastNanotesla, "east component", "nanotesla");
    downNanotesla = Arguments.finite(downNanotesla, "down component", "nanotesla");
  }

  /**
   * How strongly the field turns a level needle.
   *
   * @return horizontal intensity, nanotesla, at least 0
   */
  public double horizontalNanotesla() {
    return Math.sqrt(northNanotesla * northNanotesla + eastNanotesla * eastNanotesla);
  }

  /**
   * The whole strength of the field.
   *
   * @return total intensity, nanotesla, at least 0
   */
  public double totalNanotesla() {
    double horizontal = horizontalNanotesla();
    return Math.sqrt(horizontal * horizontal + downNanotesla * downNanotesla);
  }

  /**
   * The angle of the field below the horizon.
   *
   * @return degrees, down positive, in [-90, 90]; 0 where there is no field at all
   */
  public double dipDegrees() {
    return Math.toDegrees(Math.atan2(downNanotesla, horizontalNanotesla()));
  }

  /**
   * The angle from geographic north to the horizontal field, as models call it.
   *
   * @return degrees, east positive, in [-180, 180]; 0 where there is no horizontal field
   */
  public double declinationDegrees() {
    return Math.toDegrees(Math.atan2(eastNanotesla, northNanotesla));
  }

  /**
   * The angle from true to magnetic north, as mariners call it.
   *
   * @return the declination as a {@link Variation}
   */
  public Variation variation() {
    return Variation.ofDegreesEast(declinationDegrees());
  }

  /**
   * Whether the horizontal field is strong enough for a compass.
   *
   * @return the zone of the horizontal intensity
   */
  public CompassZone zone() {
    return CompassZone.ofHorizontal(horizontalNanotesla());
  }
}
