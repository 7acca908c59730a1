package org.ferryglide.nav.bearing;

import java.io.Serializable;
import java.util.Objects;

/**
 * One sight of a compass swing: the heading by compass, and the deviation it showed there.
 *
 * <pre>{@code
 * // heading along a transit that the chart puts at 312°T, where the variation is 4°W
 * SwingObservation.headingAlong(
 *     CompassBearing.ofDegrees(319), TrueBearing.ofDegrees(312), Variation.ofDegreesWest(4));
 * // deviation 3°W: the transit is 316°M
 * }</pre>
 *
 * @param heading heading by this compass
 * @param deviation the deviation observed on it
 */
public record SwingObservation(CompassBearing heading, Deviation deviation)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes a heading and the deviation observed on it.
   *
   * @param heading heading by this compass
   * @param deviation the deviation observed
   */
  public SwingObservation {
    Objects.requireNonNull(heading, "heading");
    Objects.requireNonNull(deviation, "deviation");
  }

  /**
   * The boat points along a line of known magnetic bearing.
   *
   * @param shown what the compass shows
   * @param known magnetic bearing of the line
   * @return the observation
   */
  public static SwingObservation headingAlong(CompassBearing shown, MagneticBearing known) {
    return bearingOf(shown, shown, known);
  }

  /**
   * The boat points along a transit whose true bearing is taken from the chart.
   *
   * @param shown what the compass shows
   * @param transit true bearing of the transit
   * @param variation variation at the place and date
   * @return the observation
   */
  public static SwingObservation headingAlong(
      CompassBearing shown, TrueBearing transit, Variation variation) {
    return headingAlong(shown, variation.toMagnetic(transit));
  }

  /**
   * A mark of known magnetic bearing is sighted across the compass while the boat lies on a
   * heading.
   *
   * @param heading heading by this compass
   * @param shown bearing of the mark by this compass
   * @param known magnetic bearing of the mark
   * @return the observation
   */
  public static SwingObservation bearingOf(
      CompassBearing heading, CompassBearing shown, MagneticBearing known) {
    return new SwingObservation(
        heading, Deviation.ofDegreesEast(Angles.turn(shown.degrees(), known.degrees())));
  }

  /**
   * A transit, or a mark of known true bearing, is sighted across the compass while the boat lies
   * on a heading.
   *
   * @param heading heading by this compass
   * @param shown bearing of the mark by this compass
   * @param transit true bearing of the mark
   * @param variation variation at the place and date
   * @return the observation
   */
  public static SwingObservation bearingOf(
      CompassBearing heading, CompassBearing shown, TrueBearing transit, Variation variation) {
    return bearingOf(heading, shown, variation.toMagnetic(transit));
  }
}
