package org.ferryglide.nav.bearing;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;

/**
 * The five classic coefficients of a compass's deviation: on the compass heading θ it is
 *
 * <pre>  A + B sin θ + C cos θ + D sin 2θ + E cos 2θ</pre>
 *
 * <p>A is the same on every heading (a compass not mounted fore and aft, or a known bearing that is
 * off), B and C come from permanent magnetism near the compass (a loudspeaker, a stove), D and E
 * from soft iron that the Earth magnetises. East is positive.
 *
 * <pre>{@code
 * DeviationCoefficients phoneInHatch = new DeviationCoefficients(0.5, -2.0, 3.0, 0.0, 0.0);
 * phoneInHatch.degreesEast(0.0); // 3.5
 * }</pre>
 *
 * @param a constant part, degrees, east positive
 * @param b factor of sin θ, degrees
 * @param c factor of cos θ, degrees
 * @param d factor of sin 2θ, degrees
 * @param e factor of cos 2θ, degrees
 * @see <a href="https://msi.nga.mil/Publications/APN">Bowditch, The American Practical Navigator
 *     (NGA Pub. 9), chapter on magnetic compass adjustment, for the form</a>
 */
public record DeviationCoefficients(double a, double b, double c, double d, double e)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final double MOST_DEGREES = 180.0;

  /**
   * Takes the five coefficients.
   *
   * @param a constant part, degrees, in [-180, 180]
   * @param b factor of sin θ, degrees, in [-180, 180]
   * @param c factor of cos θ, degrees, in [-180, 180]
   * @param d factor of sin 2θ, degrees, in [-180, 180]
   * @param e factor of cos 2θ, degrees, in [-180, 180]
   * @throws IllegalArgumentException if one is NaN or out of range
   */
  public DeviationCoefficients {
    a = coefficient(a, "A");
    b = coefficient(b, "B");
    c = coefficient(c, "C");
    d = coefficient(d, "D");
    e = coefficient(e, "E");
  }

  private static double coefficient(double value, String letter) {
    return Arguments.within(
        value, -MOST_DEGREES, MOST_DEGREES, "deviation coefficient " + letter, "degrees");
  }

  /**
   * Deviation on a compass heading.
   *
   * @param headingDegrees compass heading, degrees, any finite angle; NaN gives NaN
   * @return degrees, east positive
   */
  public double degreesEast(double headingDegrees) {
    double heading = Math.toRadians(headingDegrees);
    double sin = Math.sin(heading);
    double cos = Math.cos(heading);
    return a + b * sin + c * cos + d * (2.0 * sin * cos) + e * (cos * cos - sin * sin);
  }
}
