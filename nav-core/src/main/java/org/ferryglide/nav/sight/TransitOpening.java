package org.ferryglide.nav.sight;

import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;

/**
 * How far off a transit one may be before its marks are seen to open.
 *
 * <pre>{@code
 * TransitOpening.offLine(
 *     Distance.ofNauticalMiles(1), Distance.ofNauticalMiles(1.5), 0.25); // 24 m
 * }</pre>
 */
public final class TransitOpening {
  private TransitOpening() {}

  private static final double GREATEST_DEGREES = 90.0;

  /**
   * The distance from the line at which two marks stand open by an angle.
   *
   * @param front distance of the nearer mark, above 0
   * @param rear distance of the farther mark, greater than {@code front}
   * @param openDegrees the angle between the marks that the eye notices, degrees, in (0, 90)
   * @return the distance square to the line; empty if the marks never open so far, being too close
   *     together
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Optional<Distance> offLine(Distance front, Distance rear, double openDegrees) {
    double near = Arguments.positive(front.metres(), "distance of the front mark", "metres");
    double gap = Arguments.positive(rear.metres() - near, "distance between the marks", "metres");
    if (!(openDegrees > 0.0 && openDegrees < GREATEST_DEGREES)) { // written so that NaN fails
      throw new IllegalArgumentException(
          "opening must be in (0, 90) degrees, but was " + openDegrees);
    }
    // tan(opening) = y gap / (near far + y²): the smaller root, in the form that does not cancel.
    double tangent = Math.tan(Math.toRadians(openDegrees));
    double product = near * rear.metres();
    double discriminant = gap * gap - 4.0 * tangent * tangent * product;
    if (discriminant < 0.0) {
      return Optional.empty();
    }
    return Optional.of(
        Distance.ofMetres(2.0 * tangent * product / (gap + Math.sqrt(discriminant))));
  }
}
