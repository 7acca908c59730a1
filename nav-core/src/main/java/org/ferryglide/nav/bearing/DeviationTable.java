package org.ferryglide.nav.bearing;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.note.Note;

/**
 * The deviation of one compass in one boat on every heading, from a table or from the coefficients
 * of a swing.
 *
 * <p>A deck compass beside a phone, a stove or a hatch with a knife in it does not point to
 * magnetic north, and how far it is off depends on the heading. Between the headings of a table the
 * deviation follows a smooth curve that closes on itself through north.
 *
 * <p>From compass to magnetic the deviation is read off and added. From magnetic to compass the
 * compass heading is sought whose own deviation leads to the magnetic one. That answer is the only
 * one as long as the deviation falls by less than a degree for each degree of heading; a table that
 * falls faster anywhere is refused, because two compass headings would then mean the same course.
 *
 * <pre>{@code
 * DeviationTable table =
 *     DeviationTable.through(
 *         List.of(
 *             HeadingDeviation.parse("000", "2°E"),
 *             HeadingDeviation.parse("090", "3°W"),
 *             HeadingDeviation.parse("180", "2°W"),
 *             HeadingDeviation.parse("270", "3°E")));
 * CompassBearing steer = table.toCompass(MagneticBearing.ofDegrees(49));
 * }</pre>
 */
public final class DeviationTable implements Serializable {
  private static final long serialVersionUID = 1L;

  /** With fewer headings, or wider gaps, a smooth curve between them would be a guess. */
  private static final int FEWEST_HEADINGS = 4;

  /**
   * The four cardinal headings, and what is between them when they are magnetic ones whose
   * deviations differ by up to 20° from one to the next.
   */
  private static final double WIDEST_GAP_DEGREES = 110.0;

  /** A fall of one degree per degree is where headings become ambiguous; this keeps clear of it. */
  private static final double STEEPEST_FALL = 0.999;

  private static final double SOLVED_DEGREES = 1e-12;
  private static final int MOST_STEPS = 100;

  private final DeviationCurve curve;
  private final Note[] notes;

  private DeviationTable(DeviationCurve curve, List<Note> notes) {
    this.curve = curve;
    this.notes = notes.toArray(new Note[0]);
    double fall = -curve.leastSlope();
    if (!(fall < STEEPEST_FALL)) {
      throw new IllegalArgumentException(
          "deviation must fall by less than "
              + STEEPEST_FALL
              + " degrees per degree of heading, or one magnetic heading would have several"
              + " compass headings, but near "
              + CompassBearing.ofDegrees(curve.steepestHeadingDegrees()).threeDigits()
              + " by compass it falls by "
              + Math.rint(fall * 100.0) / 100.0);
    }
  }

  /**
   * The smooth curve through the lines of a table.
   *
   * @param entries the lines, in any order: at least four, no heading twice, no gap of more than
   *     110° between neighbouring headings
   * @return the table
   * @throws IllegalArgumentException if there are too few lines, a heading occurs twice, a gap is
   *     too wide, or the deviation falls so fast that headings become ambiguous
   */
  public static DeviationTable through(List<HeadingDeviation> entries) {
    if (entries.size() < FEWEST_HEADINGS) {
      throw new IllegalArgumentException(
          "a deviation table needs at least 4 headings, but had " + entries.size());
    }
    List<HeadingDeviation> sorted = new ArrayList<>(entries);
    sorted.sort(Comparator.comparingDouble(entry -> entry.heading().degrees()));
    double[] headings = new double[sorted.size()];
    double[] deviations = new double[sorted.size()];
    for (int i = 0; i < headings.length; i++) {
      headings[i] = sorted.get(i).heading().degrees();
      deviations[i] = sorted.get(i).deviation().degreesEast();
    }
    for (int i = 0; i < headings.length; i++) {
      double next = i + 1 < headings.length ? headings[i + 1] : headings[0] + 360.0;
      double gap = next - headings[i];
      if (gap <= 0.0) {
        throw new IllegalArgumentException(
            "heading " + sorted.get(i).heading() + " must not occur twice in a deviation table");
      }
      if (gap > WIDEST_GAP_DEGREES) {
        throw new IllegalArgumentException(
            "headings of a deviation table must leave no gap over 110 degrees, but after "
                + sorted.get(i).heading()
                + " it was "
                + gap);
      }
    }
    return new DeviationTable(new PeriodicSpline(headings, deviations), List.of());
  }

  /**
   * The curve of the five classic coefficients.
   *
   * @param coefficients the coefficients, as a swing yields them
   * @return the table
   * @throws IllegalArgumentException if the deviation falls so fast that headings become ambiguous
   */
  public static DeviationTable of(DeviationCoefficients coefficients) {
    return of(coefficients, List.of());
  }

  /** The curve of coefficients, with what their swing had to say. */
  static DeviationTable of(DeviationCoefficients coefficients, List<Note> notes) {
    return new DeviationTable(new CoefficientCurve(coefficients), notes);
  }

  /**
   * What a reader of the table should know: what condemns or doubts the swing behind it.
   *
   * @return the notes, worst first, possibly empty, unmodifiable
   */
  public List<Note> notes() {
    return List.of(notes);
  }

  /**
   * Deviation on a heading by this compass. A bearing taken across the compass has the deviation of
   * the boat's heading, whatever the direction of the mark: {@code
   * table.deviationOn(heading).toMagnetic(bearing)}.
   *
   * @param heading heading by this compass
   * @return its deviation
   */
  public Deviation deviationOn(CompassBearing heading) {
    return Deviation.ofDegreesEast(deviationDegreesEast(heading.degrees()));
  }

  /**
   * Deviation on a magnetic heading.
   *
   * @param heading magnetic heading
   * @return the deviation on the compass heading that leads to it
   */
  public Deviation deviationOn(MagneticBearing heading) {
    return Deviation.ofDegreesEast(
        Angles.turn(compassHeadingDegrees(heading.degrees()), heading.degrees()));
  }

  /**
   * The magnetic heading behind a compass heading.
   *
   * @param heading heading by this compass
   * @return compass heading plus easterly deviation
   */
  public MagneticBearing toMagnetic(CompassBearing heading) {
    return deviationOn(heading).toMagnetic(heading);
  }

  /**
   * The compass heading to hold for a magnetic heading.
   *
   * @param heading magnetic heading
   * @return the one compass heading whose deviation leads to it, to 1e-9 degrees
   */
  public CompassBearing toCompass(MagneticBearing heading) {
    return CompassBearing.ofDegrees(compassHeadingDegrees(heading.degrees()));
  }

  /**
   * Deviation on a heading by this compass, allocating nothing.
   *
   * @param compassHeadingDegrees degrees, any finite angle; NaN gives NaN
   * @return degrees, east positive
   */
  public double deviationDegreesEast(double compassHeadingDegrees) {
    return curve.degreesEast(compassHeadingDegrees);
  }

  /**
   * The compass heading for a magnetic heading, allocating nothing.
   *
   * <p>Newton's steps inside a bracket that is halved whenever a step would leave it; the deviation
   * at the answer leads back to the magnetic heading within 1e-12 degrees.
   *
   * @param magneticHeadingDegrees degrees, any finite angle; NaN gives NaN
   * @return degrees, in [0, 360)
   */
  public double compassHeadingDegrees(double magneticHeadingDegrees) {
    double magnetic = Angles.reduced(magneticHeadingDegrees);
    double low = magnetic - curve.mostDegrees();
    double high = magnetic + curve.mostDegrees();
    double heading = magnetic - curve.degreesEast(magnetic);
    for (int i = 0; i < MOST_STEPS; i++) {
      double excess = heading + curve.degreesEast(heading) - magnetic;
      if (!(Math.abs(excess) > SOLVED_DEGREES)) { // NaN ends here too
        break;
      }
      if (excess > 0.0) {
        high = heading;
      } else {
        low = heading;
      }
      heading -= excess / (1.0 + curve.slope(heading));
      if (!(heading > low && heading < high)) {
        heading = low + (high - low) / 2.0;
      }
    }
    return Angles.reduced(heading);
  }

  /**
   * How fast the deviation falls at its steepest: at 0.5 a degree's error in the magnetic heading
   * becomes two degrees by compass.
   *
   * @return degrees of deviation per degree of heading, at least 0, below 0.999
   */
  public double steepestFall() {
    return Math.max(0.0, -curve.leastSlope());
  }

  /**
   * The table as a card to carry: every 45°, in whole degrees.
   *
   * @param title one line: say which compass, which load, which date
   * @return lines separated by {@code \n}: title, both tables side by side, the notes of the table,
   *     what to beware of
   */
  public String card(String title) {
    return DeviationCard.of(this).withTitle(title).text();
  }

  /**
   * The table as a card to carry.
   *
   * @param title one line: say which compass, which load, which date
   * @param stepDegrees between its headings, degrees, in [1, 90]
   * @param rounding how finely angles are written
   * @return lines separated by {@code \n}, as {@link #card(String)} has them
   * @throws IllegalArgumentException if {@code stepDegrees} is out of range
   */
  public String card(String title, int stepDegrees, HandRounding rounding) {
    return DeviationCard.of(this)
        .withTitle(title)
        .withStep(stepDegrees)
        .withRounding(rounding)
        .text();
  }

  /** Same curve and same notes. */
  @Override
  public boolean equals(Object other) {
    return other instanceof DeviationTable that
        && curve.equals(that.curve)
        && Arrays.equals(notes, that.notes);
  }

  @Override
  public int hashCode() {
    return 31 * curve.hashCode() + Arrays.hashCode(notes);
  }

  /** How the table was made, with its deviation on the eight chief headings. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("DeviationTable[");
    for (int heading = 0; heading < 360; heading += 45) {
      text.append(heading == 0 ? "" : ", ")
          .append(CompassBearing.ofDegrees(heading).threeDigits())
          .append(' ')
          .append(HandRounding.TENTH_OF_DEGREE.eastWest(deviationDegreesEast(heading)));
    }
    return text.append(']').toString();
  }
}
