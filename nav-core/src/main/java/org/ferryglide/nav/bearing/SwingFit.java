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

  private static final int ENOUGH_SIGHTS = 8;
  private static final double GOOD_SCATTER_DEGREES = 1.0;
  private static final double GOOD_RESIDUAL_DEGREES = 2.5;
  private static final double FAIR_SCATTER_DEGREES = 2.0;
  private static final double FAIR_RESIDUAL_DEGREES = 5.0;
  private static final double WIDE_GAP_DEGREES = 60.0;
  private static final double LARGE_DEVIATION_DEGREES = 5.0;
  private static final double LARGE_CONSTANT_DEGREES = 2.0;

  private final SwingObservation[] sights;
  private final DeviationCoefficients coefficients;
  private final double[] standardErrors;
  private final double[] residuals;
  private final double scatter;
  private final SwingVerdict verdict;
  private final Note[] notes;

  private SwingFit(
      SwingObservation[] sights,
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
    for (int i = 0; i < COEFFICIENTS; i++) {
      standardErrors[i] = scatter * Math.sqrt(covariance.getEntry(i, i));
    }
    verdict = judge(leftOver);
    notes = findings(leftOver).toArray(new Note[0]);
  }

  /**
   * Fits the coefficients to the sights of a swing.
   *
   * @param sights at least five, spread over the circle; eight or more are worth the trouble
   * @return the fit
   * @throws IllegalArgumentException if there are fewer than five sights, or their headings lie so
   *     close together that they do not fix the coefficients
   */
  public static SwingFit of(List<SwingObservation> sights) {
    if (sights.size() < COEFFICIENTS) {
      throw new IllegalArgumentException(
          "a swing needs at least 5 sights on headings all round, but had " + sights.size());
    }
    SwingObservation[] copy = sights.toArray(new SwingObservation[0]);
    RealMatrix headings = new Array2DRowRealMatrix(copy.length, COEFFICIENTS);
    double[] observed = new double[copy.length];
    for (int i = 0; i < copy.length; i++) {
      double heading = Math.toRadians(copy[i].heading().degrees());
      headings.setRow(
          i,
          new double[] {
            1.0,
            Math.sin(heading),
            Math.cos(heading),
            Math.sin(2.0 * heading),
            Math.cos(2.0 * heading)
          });
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

  private static double widestGap(SwingObservation[] sights) {
    double[] headings = new double[sights.length];
    for (int i = 0; i < headings.length; i++) {
      headings[i] = sights[i].heading().degrees();
    }
    Arrays.sort(headings);
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
    double worst = Math.abs(residuals[worst()]);
    if (sights.length >= ENOUGH_SIGHTS
        && scatter <= GOOD_SCATTER_DEGREES
        && worst <= GOOD_RESIDUAL_DEGREES) {
      return SwingVerdict.GOOD;
    }
    return scatter <= FAIR_SCATTER_DEGREES && worst <= FAIR_RESIDUAL_DEGREES
        ? SwingVerdict.FAIR
        : SwingVerdict.REPEAT;
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
    if (leftOver == 0) {
      found.add(
          Note.caution(
              "swing.not-judged",
              "Five sights fix five coefficients exactly; a misread sight cannot show. Take more."));
    }
    double gap = widestGap(sights);
    if (gap > WIDE_GAP_DEGREES) {
      found.add(
          Note.caution(
                  "swing.gap",
                  "No sight on "
                      + Math.round(gap)
                      + "° of the circle; the deviation there is a continuation.")
              .with("gapDegrees", gap));
    }
    int worst = worst();
    if (leftOver > 0 && Math.abs(residuals[worst]) > GOOD_RESIDUAL_DEGREES) {
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
                      + " on every heading: is it mounted fore and aft, and is the variation right?")
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

  /**
   * The coefficients that fit best.
   *
   * @return A to E
   */
  public DeviationCoefficients coefficients() {
    return coefficients;
  }

  /**
   * The deviation of the fitted coefficients on every heading.
   *
   * @return the table
   * @throws IllegalArgumentException if the deviation falls so fast that headings become ambiguous
   */
  public DeviationTable table() {
    return DeviationTable.of(coefficients);
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
  public List<SwingObservation> sights() {
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
   * What to look at: gaps, a sight that stands out, a compass off on every heading, a large
   * deviation.
   *
   * @return the notes, possibly empty, unmodifiable
   */
  public List<Note> notes() {
    return List.of(notes);
  }

  /** Verdict, scatter and coefficients. */
  @Override
  public String toString() {
    return verdict + ", scatter " + Math.rint(scatter * 100.0) / 100.0 + "°, " + coefficients;
  }
}
