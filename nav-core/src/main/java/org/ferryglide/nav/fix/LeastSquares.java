package org.ferryglide.nav.fix;

import java.util.List;
import org.ferryglide.nav.geodesy.Geodesics;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;

/**
 * The place that position lines agree on best: Gauss-Newton on the ellipsoid.
 *
 * <p>The first steps use the quick form of the sight line, the last the geodesic, until a step is
 * shorter than a tenth of a millimetre.
 */
final class LeastSquares {

  /** Steps with the quick form end here, metres. */
  private static final double ROUGH_METRES = 0.05;

  /** Steps with geodesics end here, metres. */
  private static final double FINE_METRES = 1e-4;

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
  private final double[] row = new double[3];
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
        return true;
      }
      if (!(metres < 2e6)) {
        return false;
      }
      move(east, north, !exact || metres > ROUGH_METRES);
      if (!exact && metres < ROUGH_METRES) {
        exact = true;
        form(true);
      } else if (exact) {
        form(true);
      }
    }
    return false;
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
    for (PositionLine line : lines) {
      LineEquation.write(line, lat, lon, exact, row, scratch);
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

  /** Writes the equation of one line at the solution. */
  void equation(int index, double[] out) {
    LineEquation.write(lines[index], lat, lon, true, out, scratch);
  }

  /**
   * A start for lines that are nearly straight over a few miles: where the bearings and straight
   * lines among them meet in the plane about the first mark. Null if fewer than two do.
   */
  double @Nullable [] meetingInThePlane() {
    double[] origin = null;
    double[] at = new double[2];
    double aee = 0.0;
    double ann = 0.0;
    double aen = 0.0;
    double ce = 0.0;
    double cn = 0.0;
    double[] pointAndDegrees = new double[3];
    for (PositionLine line : lines) {
      if (!pointAndDirection(line, pointAndDegrees)) {
        continue;
      }
      if (origin == null) {
        origin = new double[] {pointAndDegrees[0], pointAndDegrees[1]};
      }
      LocalPlane.toPlane(origin[0], origin[1], pointAndDegrees[0], pointAndDegrees[1], at, 0);
      double across = Math.cos(Math.toRadians(pointAndDegrees[2]));
      double along = -Math.sin(Math.toRadians(pointAndDegrees[2]));
      double constant = across * at[0] + along * at[1];
      aee += across * across;
      ann += along * along;
      aen += across * along;
      ce += across * constant;
      cn += along * constant;
    }
    double determinant = aee * ann - aen * aen;
    if (origin == null || !(determinant > PARALLEL * Math.max(1e-12, aee * ann))) {
      return null;
    }
    double[] start = new double[2];
    LocalPlane.fromPlane(
        origin[0],
        origin[1],
        (ann * ce - aen * cn) / determinant,
        (aee * cn - aen * ce) / determinant,
        start,
        0);
    return start;
  }

  /** Writes a point of a nearly straight line and its direction; false if the line is a circle. */
  private boolean pointAndDirection(PositionLine line, double[] out) {
    Position point;
    if (line instanceof BearingLine bearing) {
      point = bearing.mark();
      out[2] = bearing.bearing().degrees();
    } else if (line instanceof TransitLine transit) {
      point = transit.front();
      SightLine.exact(
          point.latitudeDegrees(),
          point.longitudeDegrees(),
          transit.rear().latitudeDegrees(),
          transit.rear().longitudeDegrees(),
          scratch);
      out[2] = scratch[0];
    } else if (line instanceof StraightLine straight) {
      point = straight.point();
      out[2] = straight.direction().degrees();
    } else if (line instanceof TransferredLine moved && pointAndDirection(moved.original(), out)) {
      RhumbLines.direct(out[0], out[1], moved.course().degrees(), moved.run().metres(), scratch, 0);
      out[0] = scratch[0];
      out[1] = scratch[1];
      return true;
    } else {
      return false;
    }
    out[0] = point.latitudeDegrees();
    out[1] = point.longitudeDegrees();
    return true;
  }

  /**
   * A start for a bearing and a distance: off the mark of the one by the other. Null without both.
   */
  static double @Nullable [] backedOff(List<PositionLine> lines) {
    BearingLine bearing = null;
    DistanceCircle circle = null;
    for (PositionLine line : lines) {
      if (line instanceof BearingLine found && bearing == null) {
        bearing = found;
      } else if (line instanceof DistanceCircle found && circle == null) {
        circle = found;
      }
    }
    if (bearing == null || circle == null) {
      return null;
    }
    double[] start = new double[3];
    Geodesics.direct(
        bearing.mark().latitudeDegrees(),
        bearing.mark().longitudeDegrees(),
        bearing.bearing().degrees() + 180.0,
        circle.distance().metres(),
        start,
        0);
    return start;
  }

  /** The first bearing that points away from its mark where the lines meet in the plane, or -1. */
  int reversedBearingWhereLinesMeet() {
    double[] meeting = meetingInThePlane();
    if (meeting == null) {
      return -1;
    }
    lat = meeting[0];
    lon = meeting[1];
    return reversedBearing();
  }

  /** The first bearing that points away from its mark at the latest place, or -1. */
  int reversedBearing() {
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
        LineEquation.write(line, atLat, atLon, true, row, scratch);
        if (Math.abs(row[0] * bearing.standardDeviationDegrees()) > 90.0) {
          return i;
        }
      }
    }
    return -1;
  }
}
