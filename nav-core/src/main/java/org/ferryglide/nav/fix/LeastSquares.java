package org.ferryglide.nav.fix;

import java.util.Arrays;
import java.util.List;
import org.ferryglide.nav.geodesy.Geodesics;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.EstimatedPosition;
import org.jspecify.annotations.Nullable;

/**
 * The place that position lines agree on best: Gauss-Newton on the ellipsoid.
 *
 * <p>The first steps use the quick form of the sight line, the last the geodesic.
 */
final class LeastSquares {

  /** Steps with the quick form end here, metres. */
  private static final double ROUGH_METRES = 0.002;

  /** The last step, with geodesics, is shorter than this, metres; it leaves a twentieth or less. */
  private static final double FINE_METRES = 0.004;

  /** Share of the trace added to the diagonal where lines are parallel (Levenberg). */
  private static final double DAMPING = 1e-3;

  private static final int MOST_STEPS = 60;

  /**
   * Shorter steps are not looked at when lines were carried along runs, metres: the errors of runs
   * are weighed anew at every step, so that sums of squares before and after do not compare.
   */
  private static final double LOOKED_AT_WITH_RUNS = 200.0;

  private static final int MOST_HALVINGS = 12;

  /**
   * A normal matrix whose lines are nearer to parallel than this (0.03 degrees) has no solution.
   */
  private static final double PARALLEL = 3e-7;

  private final LineEquation[] equations;
  private final @Nullable RunErrors runs;
  private final @Nullable EstimatedPosition prior;

  /** The equations of the lines as observed. */
  private final double[][] rows;

  /** The same with errors that are independent and of size one. */
  private final double[][] independent;

  private final double[] scratch = new double[6];

  // The normal equations at the latest place.
  private double nee;
  private double nnn;
  private double nen;
  private double be;
  private double bn;
  private double sumOfSquares;

  /** The sum of the squared weights of the lines, which tells how evenly they share the trace. */
  private double sumOfSquaredWeights;

  private double lat;
  private double lon;

  LeastSquares(List<PositionLine> lines, @Nullable EstimatedPosition prior) {
    int n = lines.size();
    this.equations = new LineEquation[n];
    for (int i = 0; i < n; i++) {
      equations[i] = LineEquation.of(lines.get(i));
    }
    this.runs = RunErrors.of(lines);
    this.rows = new double[n][3];
    this.independent = runs == null ? rows : new double[n][3];
    this.prior = prior;
  }

  private boolean parallel;

  /**
   * Solves from a start; true if it settled on a place, which is then in {@link #lat}, {@link
   * #lon}.
   */
  boolean solveFrom(double startLat, double startLon) {
    lat = startLat;
    lon = startLon;
    boolean exact = false;
    form(exact);
    for (int step = 0; step < MOST_STEPS; step++) {
      weigh();
      boolean crossing = linesCross();
      if (exact && !crossing) {
        parallel = true;
        return false;
      }
      // Where the lines run side by side on the way (a circle beside a transit), go on with care.
      double damping = crossing ? 0.0 : DAMPING * (nee + nnn);
      double determinant = (nee + damping) * (nnn + damping) - nen * nen;
      double east = ((nnn + damping) * be - nen * bn) / determinant;
      double north = ((nee + damping) * bn - nen * be) / determinant;
      double metres = Math.hypot(east, north);
      if (exact && metres < FINE_METRES) {
        settle(east, north);
        return !Double.isNaN(lat);
      }
      if (!(metres < 2e6)) {
        parallel |= !crossing && !Double.isNaN(metres);
        return false;
      }
      boolean look = !exact && metres > (runs == null ? ROUGH_METRES : LOOKED_AT_WITH_RUNS);
      move(east, north, look);
      exact |= metres < ROUGH_METRES;
      if (!look) { // which has formed them already
        form(exact);
      }
    }
    parallel |= !linesCross();
    return false;
  }

  /** Takes the last short step, over which the equations are straight. */
  private void settle(double east, double north) {
    shift(lat, lon, east, north);
    for (double[] row : rows) {
      row[0] -= row[1] * east + row[2] * north;
    }
    if (runs != null) {
      for (double[] row : independent) {
        row[0] -= row[1] * east + row[2] * north;
      }
    }
    sumOfSquares -= be * east + bn * north;
    sumOfSquares = Math.max(0.0, sumOfSquares);
  }

  /**
   * Whether the lines cross at all: the determinant is the sum over all pairs of lines of the
   * squared sine of their cut, times both weights.
   */
  private boolean linesCross() {
    double trace = nee + nnn;
    double pairs = 0.5 * (trace * trace - sumOfSquaredWeights);
    return nee * nnn - nen * nen > PARALLEL * pairs && pairs > 0.0;
  }

  /** Moves, halving a step that makes things worse when asked to look. */
  private void move(double east, double north, boolean look) {
    double fromLat = lat;
    double fromLon = lon;
    double before = sumOfSquares;
    double share = 1.0;
    for (int i = 0; i < MOST_HALVINGS; i++) {
      shift(fromLat, fromLon, east * share, north * share);
      if (!look) {
        return;
      }
      form(false);
      if (sumOfSquares <= before * (1.0 + 1e-9) + 1e-12) {
        return;
      }
      share *= 0.5;
    }
  }

  private void shift(double fromLat, double fromLon, double east, double north) {
    double metres = Math.hypot(east, north);
    if (metres == 0.0) {
      lat = fromLat;
      lon = fromLon;
      return;
    }
    RhumbLines.direct(
        fromLat, fromLon, Math.toDegrees(Math.atan2(east, north)), metres, scratch, 0);
    lat = scratch[0];
    lon = scratch[1];
  }

  /** Weighs the lines' errors, of which those of runs depend on the place. */
  private void weigh() {
    if (runs != null) {
      runs.weigh(rows);
      formOfRows();
    }
  }

  /** Forms the normal equations at the latest place. */
  private void form(boolean exact) {
    for (int i = 0; i < equations.length; i++) {
      equations[i].write(lat, lon, exact, rows[i], scratch);
    }
    formOfRows();
  }

  private void formOfRows() {
    nee = 0.0;
    nnn = 0.0;
    nen = 0.0;
    be = 0.0;
    bn = 0.0;
    sumOfSquares = 0.0;
    sumOfSquaredWeights = 0.0;
    if (runs != null) {
      runs.whiten(rows, independent);
    }
    for (double[] row : independent) {
      nee += row[1] * row[1];
      nnn += row[2] * row[2];
      nen += row[1] * row[2];
      be += row[1] * row[0];
      bn += row[2] * row[0];
      sumOfSquares += row[0] * row[0];
      double weight = row[1] * row[1] + row[2] * row[2];
      sumOfSquaredWeights += weight * weight;
    }
    if (prior != null) {
      addPrior(prior);
    }
  }

  private void addPrior(EstimatedPosition known) {
    double[] en = toPrior(known, lat, lon);
    double[] w = weights(known.covariance());
    nee += w[0];
    nnn += w[1];
    nen += w[2];
    be += w[0] * en[0] + w[2] * en[1];
    bn += w[2] * en[0] + w[1] * en[1];
    sumOfSquaredWeights += w[0] * w[0] + w[1] * w[1] + 2.0 * w[2] * w[2];
    sumOfSquares += squares(w, en);
  }

  private static double squares(double[] w, double[] en) {
    return w[0] * en[0] * en[0] + 2.0 * w[2] * en[0] * en[1] + w[1] * en[1] * en[1];
  }

  private double[] toPrior(EstimatedPosition known, double atLat, double atLon) {
    Position place = known.position();
    Geodesics.inverse(atLat, atLon, place.latitudeDegrees(), place.longitudeDegrees(), scratch, 0);
    double radians = Math.toRadians(scratch[0]);
    return new double[] {scratch[2] * Math.sin(radians), scratch[2] * Math.cos(radians)};
  }

  /** The inverse of a covariance. */
  private static double[] weights(Covariance c) {
    double determinant =
        c.eastVariance() * c.northVariance() - c.eastNorthCovariance() * c.eastNorthCovariance();
    return new double[] {
      c.northVariance() / determinant,
      c.eastVariance() / determinant,
      -c.eastNorthCovariance() / determinant
    };
  }

  /** The sum of squared residuals, in standard deviations, at the solution. */
  double sumOfSquares() {
    return sumOfSquares;
  }

  /** Whether the solution has a covariance: not so far off that all lines are alike. */
  boolean hasCovariance() {
    double determinant = nee * nnn - nen * nen;
    return determinant > 0.0 && (nee + nnn) / determinant < Double.POSITIVE_INFINITY;
  }

  /** The covariance of the solution, from the standard deviations as stated. */
  Covariance covariance() {
    double determinant = nee * nnn - nen * nen;
    return new Covariance(nnn / determinant, nee / determinant, -nen / determinant);
  }

  /** Whether a solution failed because the lines do not cross. */
  boolean endedParallel() {
    return parallel;
  }

  /** Takes a place that was found before for the solution. */
  void settleAt(double foundLat, double foundLon) {
    lat = foundLat;
    lon = foundLon;
    form(true);
    weigh();
  }

  /**
   * The sum of squared residuals at any place, in standard deviations, by the quick form, what the
   * runs' errors do to the lines taken as at the solution, which stays as it is.
   */
  double sumOfSquaresAt(double atLat, double atLon) {
    return squaresAt(atLat, atLon, false);
  }

  /**
   * By how much all that is observed would change from the solution to another place: the squares,
   * in standard deviations. What the lines happen to disagree by has no part in it.
   */
  double squaresOfChangeTo(double atLat, double atLon) {
    return squaresAt(atLat, atLon, true);
  }

  private double squaresAt(double atLat, double atLon, boolean change) {
    int n = equations.length;
    double[][] probe = new double[n][3];
    for (int i = 0; i < n; i++) {
      equations[i].write(atLat, atLon, false, probe[i], scratch);
      probe[i][0] -= change ? rows[i][0] : 0.0;
    }
    double[][] white = probe;
    if (runs != null) {
      white = new double[n][3];
      runs.whiten(probe, white);
    }
    double sum = 0.0;
    for (double[] row : white) {
      sum += row[0] * row[0];
    }
    if (prior == null) {
      return sum;
    }
    double[] offPrior = toPrior(prior, atLat, atLon);
    if (change) {
      double[] before = toPrior(prior, lat, lon);
      offPrior[0] -= before[0];
      offPrior[1] -= before[1];
    }
    return sum + squares(weights(prior.covariance()), offPrior);
  }

  /**
   * The equations of the lines at the solution, each by itself: residual and derivatives by metres
   * east and north, in standard deviations of the line, its run included; and what the run has made
   * of a standard deviation of the observation.
   */
  double[][] equationsByThemselves() {
    double[][] copy = new double[rows.length][];
    for (int i = 0; i < copy.length; i++) {
      copy[i] = Arrays.copyOf(rows[i], rows[i].length + 1);
      copy[i][rows[i].length] = 1.0;
    }
    if (runs != null) {
      runs.widen(copy);
    }
    return copy;
  }

  LineEquation[] equations() {
    return equations;
  }

  /** The first bearing that points away from its mark at the latest place, or -1. */
  int reversedBearing() {
    return RoughMeeting.reversedBearing(equations, lat, lon);
  }

  /** Latitude of the latest place, degrees. */
  double lat() {
    return lat;
  }

  /** Longitude of the latest place, degrees. */
  double lon() {
    return lon;
  }
}
