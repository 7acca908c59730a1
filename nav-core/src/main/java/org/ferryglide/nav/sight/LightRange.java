package org.ferryglide.nav.sight;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;

/**
 * How far a light carries tonight: over the horizon, and through the air.
 *
 * <p>The range printed on charts is nominal, for a meteorological visibility of 10 NM. In other
 * visibility the light's luminous range follows Allard's law, E = I T<sup>d</sup>/d², with T = 0.05
 * to the power of one over the visibility: twenty miles become 5.7 NM in 2 NM visibility, 1.8 NM in
 * half a mile.
 *
 * <pre>{@code
 * LightRange light =
 *     LightRange.of(nominal, visibility, lightHeight, Distance.ofMetres(0.9), Refraction.ONE_SEVENTH);
 * light.range(); // the shorter of both
 * light.luminous();
 * light.geographic();
 * }</pre>
 *
 * @param luminous how far the light carries through the air
 * @param geographic how far it is seen over the curve of the sea
 * @see "IALA Recommendation R0202 (E-200-2), Marine signal lights: calculation, definition and
 *     notation of luminous range"
 */
public record LightRange(Distance luminous, Distance geographic) implements Serializable {

  private static final long serialVersionUID = 1L;

  /** The visibility for which charts print nominal ranges. */
  public static final Distance NOMINAL_VISIBILITY = Distance.ofNauticalMiles(10.0);

  /** Minus the logarithm of the contrast that defines the visibility, 0.05. */
  private static final double ATTENUATION = -Math.log(0.05);

  private static final int MOST_STEPS = 60;

  /**
   * Takes both ranges; {@link #of} computes them.
   *
   * @param luminous how far the light carries through the air
   * @param geographic how far it is seen over the curve of the sea
   * @throws IllegalArgumentException if a range is negative
   */
  public LightRange {
    Arguments.notNegative(luminous.metres(), "luminous range", "metres");
    Arguments.notNegative(geographic.metres(), "geographic range", "metres");
  }

  /**
   * The ranges of a light.
   *
   * @param nominalRange the range printed on the chart, above 0
   * @param visibility the meteorological visibility, above 0
   * @param lightHeight height of the light above the water now, at least 0
   * @param eyeHeight height of the eye above the water, at least 0
   * @param refraction the bending of the ray
   * @return both ranges
   * @throws IllegalArgumentException if a value is out of range
   */
  public static LightRange of(
      Distance nominalRange,
      Distance visibility,
      Distance lightHeight,
      Distance eyeHeight,
      Refraction refraction) {
    return new LightRange(
        luminousRange(nominalRange, visibility),
        refraction.geographicRange(lightHeight, eyeHeight));
  }

  /**
   * How far a light carries in a given visibility, by Allard's law.
   *
   * @param nominalRange the range printed on the chart, above 0
   * @param visibility the meteorological visibility, above 0
   * @return the luminous range
   * @throws IllegalArgumentException if a distance is not above 0
   */
  public static Distance luminousRange(Distance nominalRange, Distance visibility) {
    Arguments.positive(nominalRange.metres(), "nominal range", "metres");
    Arguments.positive(visibility.metres(), "visibility", "metres");
    return Distance.ofNauticalMiles(
        luminousNauticalMiles(nominalRange.nauticalMiles(), visibility.nauticalMiles()));
  }

  /**
   * Allard's law on plain doubles: solves 2 ln d + 3.0 d/V = 2 ln R + 3.0 R/10.
   *
   * @param nominal nominal range R, nautical miles, above 0; NaN gives NaN
   * @param visibility meteorological visibility V, nautical miles, above 0; NaN gives NaN
   * @return luminous range d, nautical miles
   */
  static double luminousNauticalMiles(double nominal, double visibility) {
    double constant =
        2.0 * Math.log(nominal) + ATTENUATION * nominal / NOMINAL_VISIBILITY.nauticalMiles();
    // In x = ln d the function is increasing and convex: Newton from above does not overshoot. Each
    // term alone bounds x, the second for d of a mile or more; the lesser bound is never far off.
    double x =
        Math.min(0.5 * constant, Math.log(Math.max(1.0, constant * visibility / ATTENUATION)));
    for (int i = 0; i < MOST_STEPS; i++) {
      double attenuation = ATTENUATION * Math.exp(x) / visibility;
      double step = (2.0 * x + attenuation - constant) / (2.0 + attenuation);
      x -= step;
      if (Math.abs(step) < 1e-15) {
        break;
      }
    }
    return Math.exp(x);
  }

  /**
   * How far off the light is seen.
   *
   * @return the shorter of both ranges
   */
  public Distance range() {
    return luminous.compareTo(geographic) < 0 ? luminous : geographic;
  }
}
