package org.ferryglide.nav.bearing;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.ferryglide.nav.note.Note;

/**
 * A compass swing worked out: the five coefficients that fit the sights best, how far each sight
 * lies from them, and whether the swing is worth using.
 *
 * <pre>{@code
 * SwingFit fit = SwingFit.of(sights); // eight headings round the compass
 * fit.verdict(); // GOOD
 * DeviationTable table = fit.table();
 * }</pre>
 *
 * <p>Least squares with equal weights by singular value decomposition. Sights with a wrong mark or
 * a misread compass spoil it: look at {@link #notes} and {@link #residualDegrees}.
 */
public final class SwingFit implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final int COEFFICIENTS = 5;

  /** Equally spaced headings give 1.4; above this some coefficients are hardly seen. */
  private static final double WORST_CONDITION = 30.0;

  private static final int ENOUGH_HEADINGS = 8;

  /** Headings nearer than this are one heading: they show scatter, but not the curve. */
  private static final double SAME_HEADING_DEGREES = 10.0;

  private static final double GOOD_DEGREES = 2.5;
  private static final double FAIR_DEGREES = 5.0;

  /** A few sights may agree by luck, but no deck compass is read more finely than this. */
  private static final double READING_DEGREES = 0.5;

  /** 97.5 % points of Student's t for 1, 2, 3 … sights beyond the fifth. */
  private static final double[] STUDENT = {
    12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.160
  };

  /** Beyond those the normal 1.960 and this over the number of sights beyond the fifth. */
  private static final double STUDENT_TAIL = 2.6;

  private static final double WIDE_GAP_DEGREES = 60.0;
  private static final double UNLIKELY_DEGREES = 45.0;
  private static final double REVERSED_DEGREES = 135.0;
  private static final double LARGE_DEVIATION_DEGREES = 5.0;
  private static final double LARGE_CONSTANT_DEGREES = 2.0;

  private final HeadingDeviation[] sights;
  private final DeviationCoefficients coefficients;
  private final double[] standardErrors;

  /** Of the coefficients for sights of unit scatter, row by row. */
  private final double[] covariance;

  private final double[] residuals;
  private final double scatter;
  private final double leastKnownHeading;
  private final SwingVerdict verdict;
  private final Note[] notes;

  private SwingFit(
      HeadingDeviation[] sights,
      DeviationCoefficients coefficients,
      double[] residuals,
      RealMatrix covariance) {
    this.sights = sights;
    this.coefficients = coefficients;
    this.residuals = residuals;
    double squares = 0.0;
    for (double residual : residuals) {
      squares += residual * residual;
    }
    int leftOver = sights.length - COEFFICIENTS;
    scatter = leftOver == 0 ? 0.0 : Math.sqrt(squares / leftOver);
    standardErrors = new double[COEFFICIENTS];
    this.covariance = new double[COEFFICIENTS * COEFFICIENTS];
    for (int i = 0; i < COEFFICIENTS; i++) {
      standardErrors[i] = scatter * Math.sqrt(covariance.getEntry(i, i));
      for (int k = 0; k < COEFFICIENTS; k++) {
        this.covariance[COEFFICIENTS * i + k] = covariance.getEntry(i, k);
      }
    }
    double widest = 0.0;
    double widestAt = 0.0;
    for (double heading = 0.0; heading < 360.0; heading++) {
      double spread = spread(heading);
      if (spread > widest) {
        widest = spread;
        widestAt = heading;
      }
    }
    leastKnownHeading = widestAt;
    verdict = judge(leftOver);
    notes = findings(leftOver).toArray(new Note[0]);
  }

  /**
   * Fits the coefficients to the sights of a swing.
   *
   * @param sights at least five, spread over the circle; eight or more are better
   * @return the fit
   * @throws IllegalArgumentException if there are fewer than five sights, their headings lie so
   *     close together that they do not fix the coefficients, or most bearings look reversed
   */
  public static SwingFit of(List<HeadingDeviation> sights) {
    if (sights.size() < COEFFICIENTS) {
      throw new IllegalArgumentException(
          "a swing needs at least 5 sights on headings all round, but had " + sights.size());
    }
    HeadingDeviation[] copy = sights.toArray(new HeadingDeviation[0]);
    refuseReversed(copy);
    RealMatrix headings = new Array2DRowRealMatrix(copy.length, COEFFICIENTS);
    double[] observed = new double[copy.length];
    for (int i = 0; i < copy.length; i++) {
      headings.setRow(i, terms(copy[i].heading().degrees()));
      observed[i] = copy[i].deviation().degreesEast();
    }
    SingularValueDecomposition decomposition = new SingularValueDecomposition(headings);
    double condition = decomposition.getConditionNumber();
    if (!(condition <= WORST_CONDITION)) {
      throw new IllegalArgumentException(
          "a swing needs at least five different headings spread over the whole circle, but the "
              + copy.length
              + " given do not fix the coefficients; their widest gap is "
              + Math.round(widestGap(copy))
              + " degrees");
    }
    double[] best = decomposition.getSolver().solve(new ArrayRealVector(observed)).toArray();
    DeviationCoefficients coefficients =
        new DeviationCoefficients(best[0], best[1], best[2], best[3], best[4]);
    double[] residuals = new double[copy.length];
    for (int i = 0; i < residuals.length; i++) {
      residuals[i] = observed[i] - coefficients.degreesEast(copy[i].heading().degrees());
    }
    return new SwingFit(copy, coefficients, residuals, decomposition.getCovariance(0.0));
  }

  /** Deviations near half a circle jump between east and west, so no curve can be laid. */
  private static void refuseReversed(HeadingDeviation[] sights) {
    double[] sizes = new double[sights.length];
    for (int i = 0; i < sizes.length; i++) {
      sizes[i] = Math.abs(sights[i].deviation().degreesEast());
    }
    Arrays.sort(sizes);
    double middle = sizes[sizes.length / 2];
    if (middle > REVERSED_DEGREES) {
      throw new IllegalArgumentException(
          "the bearings of the swing look reversed: most of its sights are off by more than "
              + REVERSED_DEGREES
              + " degrees, the middle one by "
              + middle);
    }
  }

  /** What the five coefficients are multiplied by on a heading. */
  private static double[] terms(double headingDegrees) {
    double heading = Math.toRadians(headingDegrees);
    return new double[] {
      1.0, Math.sin(heading), Math.cos(heading), Math.sin(2.0 * heading), Math.cos(2.0 * heading)
    };
  }

  /** Standard error of the fitted deviation on a heading, for sights of unit scatter. */
  private double spread(double headingDegrees) {
    double[] terms = terms(headingDegrees);
    double variance = 0.0;
    for (int i = 0; i < COEFFICIENTS; i++) {
      for (int k = 0; k < COEFFICIENTS; k++) {
        variance += terms[i] * terms[k] * covariance[COEFFICIENTS * i + k];
      }
    }
    return Math.sqrt(Math.max(0.0, variance));
  }

  /** Headings that are not the same, each at least {@link #SAME_HEADING_DEGREES} on. */
  private static int differentHeadings(HeadingDeviation[] sights) {
    double[] headings = sortedHeadings(sights);
    int different = 1;
    double last = headings[0];
    for (double heading : headings) {
      boolean closesTheCircle = headings[0] + 360.0 - heading < SAME_HEADING_DEGREES;
      if (heading - last >= SAME_HEADING_DEGREES && !closesTheCircle) {
        different++;
        last = heading;
      }
    }
    return different;
  }

  private static double student(int leftOver) {
    return leftOver <= STUDENT.length ? STUDENT[leftOver - 1] : 1.960 + STUDENT_TAIL / leftOver;
  }

  private static double[] sortedHeadings(HeadingDeviation[] sights) {
    double[] headings = new double[sights.length];
    for (int i = 0; i < headings.length; i++) {
      headings[i] = sights[i].heading().degrees();
    }
    Arrays.sort(headings);
    return headings;
  }

  private static double widestGap(HeadingDeviation[] sights) {
    double[] headings = sortedHeadings(sights);
    double widest = headings[0] + 360.0 - headings[headings.length - 1];
    for (int i = 1; i < headings.length; i++) {
      widest = Math.max(widest, headings[i] - headings[i - 1]);
    }
    return widest;
  }

  private SwingVerdict judge(int leftOver) {
    if (leftOver == 0) {
      return SwingVerdict.NOT_JUDGED;
    }
    double worst = Math.max(likelyErrorDegrees(), Math.abs(residuals[worst()]));
    if (worst <= GOOD_DEGREES && differentHeadings(sights) >= ENOUGH_HEADINGS) {
      return SwingVerdict.GOOD;
    }
    return worst <= FAIR_DEGREES ? SwingVerdict.FAIR : SwingVerdict.REPEAT;
  }

  private int worst() {
    int worst = 0;
    for (int i = 1; i < residuals.length; i++) {
      if (Math.abs(residuals[i]) > Math.abs(residuals[worst])) {
        worst = i;
      }
    }
    return worst;
  }

  private List<Note> findings(int leftOver) {
    List<Note> found = new ArrayList<>();
    double largest = 0.0;
    for (HeadingDeviation sight : sights) {
      largest = Math.max(largest, Math.abs(sight.deviation().degreesEast()));
    }
    if (largest > UNLIKELY_DEGREES) {
      found.add(
          Note.warning(
                  "swing.unlikely",
                  "A sight is off by "
                      + Math.round(largest)
                      + "°: a reversed bearing, the wrong mark, or heading and bearing swapped?")
              .with("deviationDegrees", largest));
    }
    if (verdict == SwingVerdict.REPEAT || verdict == SwingVerdict.FAIR) {
      found.add(verdictNote());
    }
    if (leftOver == 0) {
      found.add(
          Note.caution(
              "swing.not-judged",
              "Five sights fix five coefficients exactly; a misread sight cannot show. Take"
                  + " more."));
    }
    double gap = widestGap(sights);
    if (gap > WIDE_GAP_DEGREES) {
      found.add(
          Note.caution(
                  "swing.gap",
                  "No sight on "
                      + Math.round(gap)
                      + "° of the circle; the deviation there is extrapolated.")
              .with("gapDegrees", gap));
    }
    int worst = worst();
    if (leftOver > 0 && Math.abs(residuals[worst]) > GOOD_DEGREES) {
      found.add(
          Note.caution(
                  "swing.outlier",
                  "The sight on "
                      + sights[worst].heading().threeDigits()
                      + " by compass lies "
                      + HandRounding.TENTH_OF_DEGREE.eastWest(residuals[worst])
                      + " from the fit: was the mark or the reading wrong?")
              .with("headingDegrees", sights[worst].heading().degrees())
              .with("residualDegreesEast", residuals[worst]));
    }
    if (Math.abs(coefficients.a()) > LARGE_CONSTANT_DEGREES) {
      found.add(
          Note.caution(
                  "swing.constant",
                  "The compass is off by "
                      + HandRounding.TENTH_OF_DEGREE.eastWest(coefficients.a())
                      + " on every heading: is it mounted fore and aft, and is the variation"
                      + " right?")
              .with("constantDegreesEast", coefficients.a()));
    }
    double most = new CoefficientCurve(coefficients).mostDegrees();
    if (most > LARGE_DEVIATION_DEGREES) {
      found.add(
          Note.caution(
                  "swing.large",
                  "Deviation may reach "
                      + Math.round(most)
                      + "°: move what causes it rather than allow for it.")
              .with("mostDegrees", most));
    }
    return found;
  }

  private Note verdictNote() {
    double likely = likelyErrorDegrees();
    String near = CompassBearing.ofDegrees(leastKnownHeading).threeDigits();
    String text =
        "The deviation may be off by "
            + Math.ceil(likely * 10.0) / 10.0
            + "° near "
            + near
            + " by compass";
    Note note =
        verdict == SwingVerdict.REPEAT
            ? Note.warning("swing.repeat", text + ": swing again, on headings all round.")
            : Note.caution("swing.fair", text + ".");
    return note.with("likelyErrorDegrees", likely).with("headingDegrees", leastKnownHeading);
  }

  /**
   * How far the fitted deviation may be off on the heading where it is known least, so that it is
   * within this in 19 cases of 20: Student's factor for the number of sights, times the scatter (at
   * least the half degree to which a deck compass is read), times a factor that grows without bound
   * as the sights leave more of the circle out.
   *
   * @return degrees; infinite when five sights leave no scatter to be seen
   * @see <a href="https://www.itl.nist.gov/div898/handbook/pmd/section5/pmd512.htm">NIST/SEMATECH
   *     e-Handbook of Statistical Methods, 4.5.1.2, for the interval</a>
   */
  public double likelyErrorDegrees() {
    int leftOver = sights.length - COEFFICIENTS;
    return leftOver == 0
        ? Double.POSITIVE_INFINITY
        : student(leftOver) * Math.max(scatter, READING_DEGREES) * spread(leastKnownHeading);
  }

  /**
   * The coefficients that fit best.
   *
   * @return A to E
   */
  public DeviationCoefficients coefficients() {
    return coefficients;
  }

  /**
   * The deviation of the fitted coefficients on every heading, with the notes of this swing.
   *
   * @return the table; its notes are {@link #notes}
   * @throws IllegalArgumentException if the deviation falls so fast that headings become ambiguous
   */
  public DeviationTable table() {
    return DeviationTable.of(coefficients, notes());
  }

  /**
   * One-sigma errors of the coefficients, from the scatter of the sights.
   *
   * @return of A, B, C, D and E, degrees; all 0 when five sights leave no scatter to be seen
   */
  public List<Double> standardErrorDegrees() {
    return boxed(standardErrors);
  }

  /**
   * What each sight observed less what the coefficients give there.
   *
   * @return degrees, east positive, in the order of the sights
   */
  public List<Double> residualDegrees() {
    return boxed(residuals);
  }

  private static List<Double> boxed(double[] values) {
    Double[] boxed = new Double[values.length];
    for (int i = 0; i < boxed.length; i++) {
      boxed[i] = values[i];
    }
    return List.of(boxed);
  }

  /**
   * The sights that were fitted.
   *
   * @return the sights in the order given, unmodifiable
   */
  public List<HeadingDeviation> sights() {
    return List.of(sights);
  }

  /**
   * Standard deviation of a single sight.
   *
   * @return root of the summed squares of the residuals over the sights in excess of five, degrees;
   *     0 when there are only five
   */
  public double scatterDegrees() {
    return scatter;
  }

  /**
   * Whether the swing is worth using.
   *
   * @return the verdict
   */
  public SwingVerdict verdict() {
    return verdict;
  }

  /**
   * What to look at: a verdict below good, a deviation beyond belief, gaps, a sight that stands
   * out, a compass off on every heading, a large deviation.
   *
   * @return the notes, possibly empty, unmodifiable
   */
  public List<Note> notes() {
    return List.of(notes);
  }

  /** Same sights in the same order. */
  @Override
  public boolean equals(Object other) {
    return other instanceof SwingFit that && Arrays.equals(sights, that.sights);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(sights);
  }

  /** Verdict, scatter and coefficients. */
  @Override
  public String toString() {
    return verdict + ", scatter " + Math.rint(scatter * 100.0) / 100.0 + "°, " + coefficients;
  }
}
