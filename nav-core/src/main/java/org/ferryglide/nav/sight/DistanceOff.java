package org.ferryglide.nav.sight;

import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;

/**
 * How far off a mark is, by the angle between its top and the water.
 *
 * <pre>{@code
 * // charted 37 m above high water springs (5.2 m); the water stands at 2.2 m: 40 m
 * Distance height = DistanceOff.heightAboveWater(
 *     Distance.ofMetres(37), Distance.ofMetres(5.2), Distance.ofMetres(2.2));
 * DistanceOff.byVerticalAngle(height, 0.8); // 1.55 NM for 0° 48'
 * }</pre>
 *
 * <p>Heights are above the water now ({@link #heightAboveWater}). With the charted height instead,
 * the mark seems nearer than it is while the water stands below the level of charted heights, and
 * further off, which is the dangerous side, when it stands above.
 */
public final class DistanceOff {
  private DistanceOff() {}

  private static final double RIGHT_ANGLE = 90.0;

  /**
   * How high a charted height stands above the water now.
   *
   * @param chartedHeight height as charted, above the level the chart states for heights
   * @param heightDatum that level above chart datum: mean high water springs or highest tide at the
   *     place
   * @param waterLevel height of the water above chart datum now, from the tide tables
   * @return the charted height, plus what the water has fallen below the level of heights
   */
  public static Distance heightAboveWater(
      Distance chartedHeight, Distance heightDatum, Distance waterLevel) {
    return chartedHeight.plus(heightDatum).minus(waterLevel);
  }

  /**
   * The distance of a mark whose waterline is in sight. From a kayak, with the eye at 0.9 m, a
   * waterline is hidden beyond 2 NM: then {@link #beyondHorizon} is the method to use.
   *
   * @param height height of the top above the water now, above 0
   * @param angleDegrees angle between the top and the waterline beneath it, degrees, in (0, 90)
   * @return the height over the tangent of the angle
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Distance byVerticalAngle(Distance height, double angleDegrees) {
    double metres = Arguments.positive(height.metres(), "height of the mark", "metres");
    return Distance.ofMetres(metres / Math.tan(angleRadians(angleDegrees)));
  }

  /**
   * The distance of a mark whose waterline lies beyond the horizon.
   *
   * @param height height of the top above the water now, above the eye
   * @param eyeHeight height of the eye above the water, at least 0
   * @param angleDegrees angle between the top and the sea horizon, degrees, in [0, 90)
   * @param refraction the bending of the ray; {@link Refraction#BOWDITCH_BEYOND_HORIZON} gives the
   *     figures of that book's table, which enters with the angle less the dip
   * @return the distance along the water
   * @throws IllegalArgumentException if a value is out of range
   * @see "Bowditch, American Practical Navigator, table for distance by vertical angle measured
   *     between sea horizon and top of object"
   */
  public static Distance beyondHorizon(
      Distance height, Distance eyeHeight, double angleDegrees, Refraction refraction) {
    double eye = Arguments.notNegative(eyeHeight.metres(), "height of the eye", "metres");
    double above =
        Arguments.positive(height.metres() - eye, "height of the mark above the eye", "metres");
    double angle = Arguments.within(angleDegrees, 0.0, RIGHT_ANGLE, "vertical angle", "degrees");
    double tangent = Math.tan(Math.toRadians(angle - refraction.dipMinutes(eyeHeight) / 60.0));
    double radius = refraction.effectiveRadiusMetres();
    double root = Math.sqrt(tangent * tangent + 2.0 * above / radius);
    // The plain difference loses figures for large angles; its conjugate does not.
    return Distance.ofMetres(
        tangent > 0.0 ? 2.0 * above / (root + tangent) : radius * (root - tangent));
  }

  /**
   * How uncertain such a distance is.
   *
   * @param distance the distance found
   * @param height height of the top above the water, above 0
   * @param angleSigmaMinutes standard deviation of the angle, minutes of arc, at least 0
   * @param heightSigma standard deviation of the height, at least 0
   * @return one standard deviation of a distance by {@link #byVerticalAngle}
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Distance uncertainty(
      Distance distance, Distance height, double angleSigmaMinutes, Distance heightSigma) {
    double d = Arguments.positive(distance.metres(), "distance", "metres");
    double h = Arguments.positive(height.metres(), "height of the mark", "metres");
    double angle =
        Math.toRadians(
            Arguments.notNegative(angleSigmaMinutes, "error of the angle", "minutes of arc")
                / 60.0);
    double tall = Arguments.notNegative(heightSigma.metres(), "error of the height", "metres");
    return Distance.ofMetres(Math.hypot((d * d + h * h) / h * angle, d / h * tall));
  }

  private static double angleRadians(double degrees) {
    if (!(degrees > 0.0 && degrees < RIGHT_ANGLE)) { // written so that NaN fails
      throw new IllegalArgumentException(
          "vertical angle must be in (0, 90) degrees, but was " + degrees);
    }
    return Math.toRadians(degrees);
  }

  /**
   * How far off a transit one is when its marks stand open by an angle: the distance from the line.
   *
   * <pre>{@code
   * DistanceOff.ofOpenTransit(
   *     Distance.ofNauticalMiles(1), Distance.ofNauticalMiles(1.5), 0.25); // 24 m
   * }</pre>
   *
   * @param front distance of the nearer mark, above 0
   * @param rear distance of the farther mark, greater than {@code front}
   * @param openDegrees the angle between the marks that the eye notices, degrees, in (0, 90)
   * @return the distance square to the line; empty if the marks never open so far, being too close
   *     together
   * @throws IllegalArgumentException if a value is out of range
   */
  public static Optional<Distance> ofOpenTransit(
      Distance front, Distance rear, double openDegrees) {
    double near = Arguments.positive(front.metres(), "distance of the front mark", "metres");
    double gap = Arguments.positive(rear.metres() - near, "distance between the marks", "metres");
    if (!(openDegrees > 0.0 && openDegrees < 90.0)) { // written so that NaN fails
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
