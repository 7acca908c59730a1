package org.ferryglide.nav.bearing;

import java.io.Serializable;

/** Deviation as a smooth function of the compass heading, the same after a full turn. */
interface DeviationCurve extends Serializable {
  /**
   * Deviation on a compass heading.
   *
   * @param headingDegrees any finite angle, degrees; NaN gives NaN
   * @return degrees, east positive
   */
  double degreesEast(double headingDegrees);

  /** Change of the deviation per degree of heading; NaN gives NaN. */
  double slope(double headingDegrees);

  /** A value that the slope is never below, as close as it can be had cheaply. */
  double leastSlope();

  /** The compass heading near which the slope is least, degrees. */
  double steepestHeadingDegrees();

  /** A value that the deviation never exceeds on either side, degrees. */
  double mostDegrees();
}
