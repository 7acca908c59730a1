package org.ferryglide.nav.fix;

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
  private static final int MOST_HALVINGS = 12;

  /**
   * A normal matrix whose lines are nearer to parallel than this (0.03 degrees) has no solution.
   */
  private static final double PARALLEL = 3e-7;

  private final PositionLine[] lines;
  private final @Nullable EstimatedPosition prior;
  private final double[][] rows;
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

  double lat;
  double lon;

  LeastSquares(List<PositionLine> lines, @Nullable EstimatedPosition prior) {
    this.lines = lines.toArray(new PositionLine[0]);
    this.rows = new double[this.lines.length][3];
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
        return true;
      }
      if (!(metres < 2e6)) {
        return false;
      }
      move(east, north, !exact && metres > ROUGH_METRES);
      if (!exact && metres < ROUGH_METRES) {
        exact = true;
        form(true);
      } else if (exact) {
        form(true);
      }
    }
    return false;
  }

  /** Takes the last short step, over which the equations are straight. */
  private void settle(double east, double north) {
    shift(lat, lon, east, north);
    for (double[] row : rows) {
      row[0] -= row[1] * east + row[2] * north;
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

  /** Forms the normal equations at the latest place. */
  private void form(boolean exact) {
    nee = 0.0;
    nnn = 0.0;
    nen = 0.0;
    be = 0.0;
    bn = 0.0;
    sumOfSquares = 0.0;
    sumOfSquaredWeights = 0.0;
    for (int i = 0; i < lines.length; i++) {
      double[] row = rows[i];
      LineEquation.write(lines[i], lat, lon, exact, row, scratch);
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
    Position place = known.position();
    Geodesics.inverse(lat, lon, place.latitudeDegrees(), place.longitudeDegrees(), scratch, 0);
    double east = scratch[2] * Math.sin(Math.toRadians(scratch[0]));
    double north = scratch[2] * Math.cos(Math.toRadians(scratch[0]));
    Covariance c = known.covariance();
    double determinant =
        c.eastVariance() * c.northVariance() - c.eastNorthCovariance() * c.eastNorthCovariance();
    double we = c.northVariance() / determinant;
    double wn = c.eastVariance() / determinant;
    double wc = -c.eastNorthCovariance() / determinant;
    nee += we;
    nnn += wn;
    nen += wc;
    be += we * east + wc * north;
    bn += wc * east + wn * north;
    sumOfSquaredWeights += we * we + wn * wn + 2.0 * wc * wc;
    sumOfSquares += we * east * east + 2.0 * wc * east * north + wn * north * north;
  }

  /** The sum of squared residuals, in standard deviations, at the solution. */
  double sumOfSquares() {
    return sumOfSquares;
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

  /**
   * The equation of one line at the solution: residual and derivatives by metres east and north, in
   * standard deviations. Overwritten by the next solution.
   */
  double[] equation(int index) {
    return rows[index];
  }

  /** The first bearing that points away from its mark where the lines meet in the plane, or -1. */
  int reversedBearingWhereLinesMeet() {
    double[] meeting = RoughMeeting.inThePlane(lines);
    if (meeting == null) {
      return -1;
    }
    lat = meeting[0];
    lon = meeting[1];
    return reversedBearing();
  }

  /** The first bearing that points away from its mark at the latest place, or -1. */
  int reversedBearing() {
    double[] row = new double[3];
    for (int i = 0; i < lines.length; i++) {
      PositionLine line = lines[i];
      double atLat = lat;
      double atLon = lon;
      if (line instanceof TransferredLine moved) {
        RhumbLines.direct(
            lat, lon, moved.course().degrees() + 180.0, moved.run().metres(), scratch, 0);
        line = moved.original();
        atLat = scratch[0];
        atLon = scratch[1];
      }
      if (line instanceof BearingLine bearing) {
        LineEquation.write(line, atLat, atLon, false, row, scratch);
        if (Math.abs(row[0] * bearing.standardDeviationDegrees()) > 90.0) {
          return i;
        }
      }
    }
    return -1;
  }
}
