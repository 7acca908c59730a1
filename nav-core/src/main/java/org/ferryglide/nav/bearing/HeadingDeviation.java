package org.ferryglide.nav.bearing;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.basics.Angles;

/**
 * A compass's deviation on one heading: one sight of a swing, or one line of a deviation table.
 *
 * <pre>{@code
 * // heading along a transit that the chart puts at 312°T, where the variation is 4°W
 * HeadingDeviation.headingAlong(
 *     CompassBearing.ofDegrees(319), TrueBearing.ofDegrees(312), Variation.ofDegreesWest(4));
 * // deviation 3°W: the transit is 316°M
 * HeadingDeviation line = HeadingDeviation.parse("045", "1°30'W");
 * }</pre>
 *
 * @param heading heading by this compass
 * @param deviation its deviation on that heading
 */
public record HeadingDeviation(CompassBearing heading, Deviation deviation)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes a heading and the deviation on it.
   *
   * @param heading heading by this compass
   * @param deviation its deviation on that heading
   */
  public HeadingDeviation {
    Objects.requireNonNull(heading, "heading");
    Objects.requireNonNull(deviation, "deviation");
  }

  /**
   * A line of a card that lists magnetic headings.
   *
   * @param heading magnetic heading
   * @param deviation the compass's deviation on it
   * @return the same line by compass heading
   */
  public static HeadingDeviation onMagneticHeading(MagneticBearing heading, Deviation deviation) {
    return new HeadingDeviation(deviation.toCompass(heading), deviation);
  }

  /**
   * Reads the two parts of a line.
   *
   * @param heading compass heading, as {@link CompassBearing#parse} reads it
   * @param deviation deviation, as {@link Deviation#parse} reads it
   * @return the line
   * @throws org.ferryglide.nav.note.TextFormatException if a part cannot be read
   */
  public static HeadingDeviation parse(String heading, String deviation) {
    return new HeadingDeviation(CompassBearing.parse(heading), Deviation.parse(deviation));
  }

  /**
   * The boat points along a line of known magnetic bearing.
   *
   * @param shown what the compass shows
   * @param known magnetic bearing of the line
   * @return the observation
   */
  public static HeadingDeviation headingAlong(CompassBearing shown, MagneticBearing known) {
    return whileHeading(shown).markShown(shown, known);
  }

  /**
   * The boat points along a transit whose true bearing is taken from the chart.
   *
   * @param shown what the compass shows
   * @param transit true bearing of the transit
   * @param variation variation at the place and date
   * @return the observation
   */
  public static HeadingDeviation headingAlong(
      CompassBearing shown, TrueBearing transit, Variation variation) {
    return headingAlong(shown, variation.toMagnetic(transit));
  }

  /**
   * The boat lies on a heading while a mark is sighted across the compass: say next what the
   * compass showed. The heading is given by itself because both are bearings by the same compass,
   * and swapping them would give a wrong deviation.
   *
   * <pre>{@code
   * HeadingDeviation.whileHeading(CompassBearing.ofDegrees(90))
   *     .markShown(CompassBearing.ofDegrees(359), MagneticBearing.ofDegrees(1)); // 2°E
   * }</pre>
   *
   * @param heading heading by this compass
   * @return what takes the sight
   */
  public static AcrossTheBoat whileHeading(CompassBearing heading) {
    return new AcrossTheBoat(heading);
  }

  /**
   * A heading on which marks are sighted across the compass.
   *
   * <pre>{@code
   * HeadingDeviation.AcrossTheBoat east =
   *     HeadingDeviation.whileHeading(CompassBearing.ofDegrees(90));
   * }</pre>
   *
   * @param heading heading by this compass
   */
  public record AcrossTheBoat(CompassBearing heading) implements Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * Takes the heading.
     *
     * @param heading heading by this compass
     */
    public AcrossTheBoat {
      Objects.requireNonNull(heading, "heading");
    }

    /**
     * A mark of known magnetic bearing.
     *
     * @param shown bearing of the mark by this compass
     * @param known magnetic bearing of the mark
     * @return the deviation on the heading
     */
    public HeadingDeviation markShown(CompassBearing shown, MagneticBearing known) {
      return new HeadingDeviation(
          heading, Deviation.ofDegreesEast(Angles.turn(shown.degrees(), known.degrees())));
    }

    /**
     * A transit, or a mark of known true bearing.
     *
     * @param shown bearing of the mark by this compass
     * @param known true bearing of the mark
     * @param variation variation at the place and date
     * @return the deviation on the heading
     */
    public HeadingDeviation markShown(
        CompassBearing shown, TrueBearing known, Variation variation) {
      return markShown(shown, variation.toMagnetic(known));
    }
  }
}
