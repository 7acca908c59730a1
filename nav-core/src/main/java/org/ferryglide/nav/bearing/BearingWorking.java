package org.ferryglide.nav.bearing;

import java.io.Serializable;
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
    return takingOff(
        Working.titled("True to magnetic"),
        given(bearing),
        angle("Variation", "variation", variation.degreesEast()),
        "Magnetic bearing",
        "true",
        'M');
  }

  /**
   * From magnetic to true.
   *
   * @param bearing the magnetic bearing
   * @param variation the variation at the place and date
   * @return three lines
   */
  public Working magneticToTrue(MagneticBearing bearing, Variation variation) {
    return adding(
        Working.titled("Magnetic to true"),
        given(bearing),
        angle("Variation", "variation", variation.degreesEast()),
        "True bearing",
        "magnetic",
        'T');
  }

  /**
   * From magnetic to compass.
   *
   * @param bearing the magnetic bearing
   * @param deviation the deviation on the heading in question
   * @return three lines
   */
  public Working magneticToCompass(MagneticBearing bearing, Deviation deviation) {
    return takingOff(
        Working.titled("Magnetic to compass"),
        given(bearing),
        angle("Deviation", "deviation", deviation.degreesEast()),
        "Compass bearing",
        "magnetic",
        'C');
  }

  /**
   * From compass to magnetic.
   *
   * @param bearing the compass bearing
   * @param deviation the deviation on the heading in question
   * @return three lines
   */
  public Working compassToMagnetic(CompassBearing bearing, Deviation deviation) {
    return adding(
        Working.titled("Compass to magnetic"),
        given(bearing),
        angle("Deviation", "deviation", deviation.degreesEast()),
        "Magnetic bearing",
        "compass",
        'M');
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
    Working working = Working.titled("True to compass").plus(trueToMagnetic(bearing, variation));
    return takingOff(
        working,
        working.result(),
        angle("Deviation", "deviation", deviation.degreesEast()),
        "Compass bearing",
        "magnetic",
        'C');
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
    Working working = Working.titled("Compass to true").plus(compassToMagnetic(bearing, deviation));
    return adding(
        working,
        working.result(),
        angle("Variation", "variation", variation.degreesEast()),
        "True bearing",
        "magnetic",
        'T');
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
    Working working = Working.titled("True to compass").plus(trueToMagnetic(heading, variation));
    Deviation deviation = table.deviationOn(variation.toMagnetic(heading));
    return takingOff(
        working,
        working.result(),
        angle("Deviation", "deviation", deviation.degreesEast(), "table, for that heading"),
        "Compass bearing",
        "magnetic",
        'C');
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
    Working working = Working.titled("Compass to true");
    working =
        adding(
            working,
            given(heading),
            angle(
                "Deviation",
                "deviation",
                table.deviationOn(heading).degreesEast(),
                "table, for that heading"),
            "Magnetic bearing",
            "compass",
            'M');
    return adding(
        working,
        working.result(),
        angle("Variation", "variation", variation.degreesEast()),
        "True bearing",
        "magnetic",
        'T');
  }

  /**
   * From true to the north of a map grid.
   *
   * @param bearing the true bearing
   * @param convergence the convergence of the grid at the place
   * @return three lines
   */
  public Working trueToGrid(TrueBearing bearing, GridConvergence convergence) {
    return takingOff(
        Working.titled("True to grid " + convergence.grid()),
        given(bearing),
        angle("Convergence", "convergence", convergence.degreesEast()),
        "Grid bearing",
        "true",
        'G');
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
    BearingText.sameGrid(bearing.grid(), convergence.grid());
    return adding(
        Working.titled("Grid " + convergence.grid() + " to true"),
        given(bearing),
        angle("Convergence", "convergence", convergence.degreesEast()),
        "True bearing",
        "grid",
        'T');
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
    Working working =
        Working.titled("Grid " + convergence.grid() + " to magnetic")
            .plus(gridToTrue(bearing, convergence));
    return takingOff(
        working,
        working.result(),
        angle("Variation", "variation", variation.degreesEast()),
        "Magnetic bearing",
        "true",
        'M');
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
    Working working =
        Working.titled("Magnetic to grid " + convergence.grid())
            .plus(magneticToTrue(bearing, variation));
    return takingOff(
        working,
        working.result(),
        angle("Convergence", "convergence", convergence.degreesEast()),
        "Grid bearing",
        "true",
        'G');
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
    Working working =
        Working.titled("Compass to grid " + convergence.grid())
            .plus(compassToTrue(bearing, deviation, variation));
    return takingOff(
        working,
        working.result(),
        angle("Convergence", "convergence", convergence.degreesEast()),
        "Grid bearing",
        "true",
        'G');
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
    Working working =
        Working.titled("Grid " + convergence.grid() + " to compass")
            .plus(gridToMagnetic(bearing, convergence, variation));
    return takingOff(
        working,
        working.result(),
        angle("Deviation", "deviation", deviation.degreesEast()),
        "Compass bearing",
        "magnetic",
        'C');
  }

  private Figure given(Bearing bearing) {
    if (bearing instanceof TrueBearing) {
      return bearing("True bearing", bearing.degrees(), rounding.round(bearing.degrees()), 'T');
    } else if (bearing instanceof MagneticBearing) {
      return bearing("Magnetic bearing", bearing.degrees(), rounding.round(bearing.degrees()), 'M');
    } else if (bearing instanceof CompassBearing) {
      return bearing("Compass bearing", bearing.degrees(), rounding.round(bearing.degrees()), 'C');
    }
    return bearing("Grid bearing", bearing.degrees(), rounding.round(bearing.degrees()), 'G');
  }

  private Figure bearing(String name, double exact, double byHand, char letter) {
    double written = Angles.reduced(byHand);
    return new Figure(
        name, Angles.reduced(exact), written, DEGREES, rounding.bearing(written, letter));
  }

  /**
   * The angle between two norths, its name also in the lower case of a sentence, and its origin.
   */
  private record NorthAngle(Figure figure, String inSentence, String origin) {}

  private NorthAngle angle(String name, String inSentence, double degreesEast) {
    return angle(name, inSentence, degreesEast, "");
  }

  private NorthAngle angle(String name, String inSentence, double degreesEast, String origin) {
    double byHand = rounding.round(degreesEast);
    return new NorthAngle(
        new Figure(name, degreesEast, byHand, DEGREES_EAST, rounding.eastWest(byHand)),
        inSentence,
        origin);
  }

  private Working takingOff(
      Working before, Figure from, NorthAngle between, String name, String fromNorth, char letter) {
    Figure angle = between.figure;
    String rule =
        angle.byHand() > 0.0
            ? between.inSentence + " is east: take it from " + fromNorth
            : angle.byHand() < 0.0
                ? between.inSentence + " is west: add it to " + fromNorth
                : "no " + between.inSentence + ": the same as " + fromNorth;
    Figure result =
        bearing(name, from.exact() - angle.exact(), from.byHand() - angle.byHand(), letter);
    return opened(before, from).given(between.origin, angle).then(rule, result, from, angle);
  }

  private Working adding(
      Working before, Figure from, NorthAngle between, String name, String fromNorth, char letter) {
    Figure angle = between.figure;
    String rule =
        angle.byHand() > 0.0
            ? between.inSentence + " is east: add it to " + fromNorth
            : angle.byHand() < 0.0
                ? between.inSentence + " is west: take it from " + fromNorth
                : "no " + between.inSentence + ": the same as " + fromNorth;
    Figure result =
        bearing(name, from.exact() + angle.exact(), from.byHand() + angle.byHand(), letter);
    return opened(before, from).given(between.origin, angle).then(rule, result, from, angle);
  }

  /** The first conversion writes down what it starts from; the next goes on from its result. */
  private static Working opened(Working before, Figure from) {
    return before.steps().isEmpty() ? before.given("", from) : before;
  }
}
