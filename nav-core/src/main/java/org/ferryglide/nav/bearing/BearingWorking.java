package org.ferryglide.nav.bearing;

import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.note.Figure;
import org.ferryglide.nav.note.Working;

/**
 * The steps between the norths, written out: true, variation, magnetic, deviation, compass, and
 * back.
 *
 * <p>Each method gives the {@link Working} of one conversion. The exact values are those of {@link
 * Variation}, {@link Deviation} and {@link GridConvergence}; the written ones are rounded first and
 * then added, as on paper, so that the lines add up.
 *
 * <pre>{@code
 * Working working =
 *     BearingWorking.inWholeDegrees()
 *         .trueToCompass(
 *             TrueBearing.ofDegrees(45), Variation.ofDegreesWest(4), Deviation.ofDegreesEast(3));
 * // True to compass
 * //   True bearing      045°T
 * //   Variation         4°W
 * //   Magnetic bearing  049°M  variation is west: add it to true
 * //   Deviation         3°E
 * //   Compass bearing   046°C  deviation is east: take it from magnetic
 * }</pre>
 */
public final class BearingWorking implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final String DEGREES = "degrees";
  private static final String DEGREES_EAST = "degrees east";

  // Where an angle between two norths comes from
  private static final String GIVEN = "";
  private static final String LOOKED_UP = "table, for that heading";

  private final HandRounding rounding;

  private BearingWorking(HandRounding rounding) {
    this.rounding = rounding;
  }

  /**
   * Working in whole degrees.
   *
   * @return the writer
   */
  public static BearingWorking inWholeDegrees() {
    return new BearingWorking(HandRounding.WHOLE_DEGREE);
  }

  /**
   * The same writer with another rounding.
   *
   * @param rounding how finely angles are written down
   * @return the writer
   */
  public BearingWorking withRounding(HandRounding rounding) {
    return new BearingWorking(Objects.requireNonNull(rounding, "rounding"));
  }

  /**
   * From true to magnetic.
   *
   * @param bearing the true bearing
   * @param variation the variation at the place and date
   * @return three lines
   */
  public Working trueToMagnetic(TrueBearing bearing, Variation variation) {
    return toMagnetic(begun("True to magnetic", North.TRUE, bearing), variation);
  }

  /**
   * From magnetic to true.
   *
   * @param bearing the magnetic bearing
   * @param variation the variation at the place and date
   * @return three lines
   */
  public Working magneticToTrue(MagneticBearing bearing, Variation variation) {
    return toTrue(begun("Magnetic to true", North.MAGNETIC, bearing), variation);
  }

  /**
   * From magnetic to compass.
   *
   * @param bearing the magnetic bearing
   * @param deviation the deviation on the heading in question
   * @return three lines
   */
  public Working magneticToCompass(MagneticBearing bearing, Deviation deviation) {
    return toCompass(begun("Magnetic to compass", North.MAGNETIC, bearing), deviation, GIVEN);
  }

  /**
   * From compass to magnetic.
   *
   * @param bearing the compass bearing
   * @param deviation the deviation on the heading in question
   * @return three lines
   */
  public Working compassToMagnetic(CompassBearing bearing, Deviation deviation) {
    return toMagnetic(begun("Compass to magnetic", North.COMPASS, bearing), deviation, GIVEN);
  }

  /**
   * From true to compass.
   *
   * @param bearing the true bearing
   * @param variation the variation at the place and date
   * @param deviation the deviation on the heading in question
   * @return five lines
   */
  public Working trueToCompass(TrueBearing bearing, Variation variation, Deviation deviation) {
    Working begun = begun("True to compass", North.TRUE, bearing);
    return toCompass(toMagnetic(begun, variation), deviation, GIVEN);
  }

  /**
   * From compass to true.
   *
   * @param bearing the compass bearing
   * @param deviation the deviation on the heading in question
   * @param variation the variation at the place and date
   * @return five lines
   */
  public Working compassToTrue(CompassBearing bearing, Deviation deviation, Variation variation) {
    Working begun = begun("Compass to true", North.COMPASS, bearing);
    return toTrue(toMagnetic(begun, deviation, GIVEN), variation);
  }

  /**
   * From true to compass, with the deviation looked up for the magnetic heading on the way.
   *
   * @param heading the true heading
   * @param variation the variation at the place and date
   * @param table the deviation of the compass
   * @return five lines
   */
  public Working trueToCompass(TrueBearing heading, Variation variation, DeviationTable table) {
    Working begun = begun("True to compass", North.TRUE, heading);
    Deviation deviation = table.deviationOn(variation.toMagnetic(heading));
    return toCompass(toMagnetic(begun, variation), deviation, LOOKED_UP);
  }

  /**
   * From compass to true, with the deviation looked up for the compass heading.
   *
   * @param heading the heading by compass
   * @param table the deviation of the compass
   * @param variation the variation at the place and date
   * @return five lines
   */
  public Working compassToTrue(CompassBearing heading, DeviationTable table, Variation variation) {
    Working begun = begun("Compass to true", North.COMPASS, heading);
    return toTrue(toMagnetic(begun, table.deviationOn(heading), LOOKED_UP), variation);
  }

  /**
   * From true to the north of a map grid.
   *
   * @param bearing the true bearing
   * @param convergence the convergence of the grid at the place
   * @return three lines
   */
  public Working trueToGrid(TrueBearing bearing, GridConvergence convergence) {
    String title = "True to grid " + convergence.grid();
    return toGrid(begun(title, North.TRUE, bearing), convergence);
  }

  /**
   * From the north of a map grid to true.
   *
   * @param bearing the grid bearing
   * @param convergence the convergence of the same grid at the place
   * @return three lines
   * @throws IllegalArgumentException if the two are of different grids
   */
  public Working gridToTrue(GridBearing bearing, GridConvergence convergence) {
    String title = "Grid " + convergence.grid() + " to true";
    return toTrue(begun(title, bearing, convergence), convergence);
  }

  /**
   * From the north of a map grid to magnetic: from the map to the compass.
   *
   * @param bearing the grid bearing
   * @param convergence the convergence of the same grid at the place
   * @param variation the variation at the place and date
   * @return five lines
   * @throws IllegalArgumentException if bearing and convergence are of different grids
   */
  public Working gridToMagnetic(
      GridBearing bearing, GridConvergence convergence, Variation variation) {
    String title = "Grid " + convergence.grid() + " to magnetic";
    return toMagnetic(toTrue(begun(title, bearing, convergence), convergence), variation);
  }

  /**
   * From magnetic to the north of a map grid: from the compass to the map.
   *
   * @param bearing the magnetic bearing
   * @param variation the variation at the place and date
   * @param convergence the convergence of the grid at the place
   * @return five lines
   */
  public Working magneticToGrid(
      MagneticBearing bearing, Variation variation, GridConvergence convergence) {
    String title = "Magnetic to grid " + convergence.grid();
    return toGrid(toTrue(begun(title, North.MAGNETIC, bearing), variation), convergence);
  }

  /**
   * From compass to the north of a map grid.
   *
   * @param bearing the compass bearing
   * @param deviation the deviation on the heading in question
   * @param variation the variation at the place and date
   * @param convergence the convergence of the grid at the place
   * @return seven lines
   */
  public Working compassToGrid(
      CompassBearing bearing,
      Deviation deviation,
      Variation variation,
      GridConvergence convergence) {
    Working begun = begun("Compass to grid " + convergence.grid(), North.COMPASS, bearing);
    return toGrid(toTrue(toMagnetic(begun, deviation, GIVEN), variation), convergence);
  }

  /**
   * From the north of a map grid to compass.
   *
   * @param bearing the grid bearing
   * @param convergence the convergence of the same grid at the place
   * @param variation the variation at the place and date
   * @param deviation the deviation on the heading in question
   * @return seven lines
   * @throws IllegalArgumentException if bearing and convergence are of different grids
   */
  public Working gridToCompass(
      GridBearing bearing, GridConvergence convergence, Variation variation, Deviation deviation) {
    Working begun = begun("Grid " + convergence.grid() + " to compass", bearing, convergence);
    return toCompass(toMagnetic(toTrue(begun, convergence), variation), deviation, GIVEN);
  }

  /** A direction from which bearings are measured. */
  private enum North {
    TRUE("true", "True bearing", 'T'),
    MAGNETIC("magnetic", "Magnetic bearing", 'M'),
    COMPASS("compass", "Compass bearing", 'C'),
    GRID("grid", "Grid bearing", 'G');

    final String inSentence;
    final String bearing;
    final char letter;

    North(String inSentence, String bearing, char letter) {
      this.inSentence = inSentence;
      this.bearing = bearing;
      this.letter = letter;
    }
  }

  /** The line that a conversion starts from. */
  private Working begun(String title, North north, Bearing bearing) {
    double degrees = bearing.degrees();
    return Working.titled(title).given(GIVEN, figure(north, degrees, rounding.round(degrees)));
  }

  private Working begun(String title, GridBearing bearing, GridConvergence convergence) {
    BearingText.sameGrid(bearing.grid(), convergence.grid());
    return begun(title, North.GRID, bearing);
  }

  private Working toMagnetic(Working fromTrue, Variation variation) {
    return takingOff(
        fromTrue, "Variation", variation.degreesEast(), GIVEN, North.TRUE, North.MAGNETIC);
  }

  private Working toTrue(Working fromMagnetic, Variation variation) {
    return adding(
        fromMagnetic, "Variation", variation.degreesEast(), GIVEN, North.MAGNETIC, North.TRUE);
  }

  private Working toCompass(Working fromMagnetic, Deviation deviation, String origin) {
    return takingOff(
        fromMagnetic, "Deviation", deviation.degreesEast(), origin, North.MAGNETIC, North.COMPASS);
  }

  private Working toMagnetic(Working fromCompass, Deviation deviation, String origin) {
    return adding(
        fromCompass, "Deviation", deviation.degreesEast(), origin, North.COMPASS, North.MAGNETIC);
  }

  private Working toGrid(Working fromTrue, GridConvergence convergence) {
    return takingOff(
        fromTrue, "Convergence", convergence.degreesEast(), GIVEN, North.TRUE, North.GRID);
  }

  private Working toTrue(Working fromGrid, GridConvergence convergence) {
    return adding(
        fromGrid, "Convergence", convergence.degreesEast(), GIVEN, North.GRID, North.TRUE);
  }

  private Working takingOff(
      Working before, String name, double degreesEast, String origin, North from, North to) {
    return turned(before, angle(name, degreesEast), origin, from, to, -1.0);
  }

  private Working adding(
      Working before, String name, double degreesEast, String origin, North from, North to) {
    return turned(before, angle(name, degreesEast), origin, from, to, 1.0);
  }

  /** The last figure turned by the angle between two norths, or back by it. */
  private Working turned(
      Working before, Figure angle, String origin, North from, North to, double sign) {
    Figure start = before.result();
    Figure result =
        figure(to, start.exact() + sign * angle.exact(), start.byHand() + sign * angle.byHand());
    return before.given(origin, angle).then(rule(angle, from, sign), result, start, angle);
  }

  /** Which way the angle goes, in the words by which it is remembered. */
  private static String rule(Figure angle, North from, double sign) {
    String name = angle.name().toLowerCase(Locale.ROOT);
    if (angle.byHand() == 0.0) {
      return "no " + name + ": the same as " + from.inSentence;
    }
    boolean east = angle.byHand() > 0.0;
    return name
        + (east ? " is east: " : " is west: ")
        + (east == sign > 0.0 ? "add it to " : "take it from ")
        + from.inSentence;
  }

  private Figure angle(String name, double degreesEast) {
    double byHand = rounding.round(degreesEast);
    return new Figure(name, degreesEast, byHand, DEGREES_EAST, rounding.eastWest(byHand));
  }

  private Figure figure(North north, double exact, double byHand) {
    double written = Angles.reduced(byHand);
    return new Figure(
        north.bearing,
        Angles.reduced(exact),
        written,
        DEGREES,
        rounding.bearing(written, north.letter));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof BearingWorking that && rounding.equals(that.rounding);
  }

  @Override
  public int hashCode() {
    return rounding.hashCode();
  }

  /** How finely angles are written down. */
  @Override
  public String toString() {
    return "working by hand, " + rounding;
  }
}
