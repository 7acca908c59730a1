package org.ferryglide.nav.fix;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * The figure that three or more position lines make where they do not quite meet.
 *
 * <p>The true position is <em>not</em> usually inside: if each line is as likely to pass on one
 * side of it as on the other, a triangle holds it in one case of four. An error that all bearings
 * share, a wrong variation for one, moves all lines together; {@link #sharedErrorDegrees} is the
 * one that would make them meet best.
 *
 * <pre>{@code
 * CockedHat hat = fix.cockedHat().get();
 * hat.longestSide().metres(); // 240.0
 * hat.chanceInside(); // 0.25
 * hat.sharedErrorDegrees(); // OptionalDouble[4.1]: was the variation applied?
 * }</pre>
 *
 * @see "Daniels (1951), The Theory of Position Finding, J. Royal Statistical Society B 13"
 * @see "Stuart (2019), Probabilities in a Gaussian cocked hat, J. Navigation 72; Bárány, Steiger
 *     and Toledo (2021), The cocked hat, J. Navigation 74"
 */
public final class CockedHat implements Serializable {

  private static final long serialVersionUID = 1L;

  private final List<Position> corners;
  private final Distance longestSide;
  private final double chanceInside;
  private final double sharedErrorDegrees;

  private CockedHat(
      List<Position> corners,
      Distance longestSide,
      double chanceInside,
      double sharedErrorDegrees) {
    this.corners = List.copyOf(corners);
    this.longestSide = longestSide;
    this.chanceInside = chanceInside;
    this.sharedErrorDegrees = sharedErrorDegrees;
  }

  /** Pairs that cross at less than this (about 3 degrees) have no corner worth reporting. */
  private static final double NO_CORNER = 0.05;

  /**
   * Looks at the lines around a solution.
   *
   * @param fix the solution
   * @param rows for each line the residual and its derivatives by metres east and north, in
   *     standard deviations
   * @param degrees for each line one standard deviation in degrees; NaN if it is not a bearing
   */
  static CockedHat of(Position fix, double[][] rows, double[] degrees) {
    List<Position> corners = new ArrayList<>();
    List<double[]> plane = new ArrayList<>();
    for (int i = 0; i < rows.length; i++) {
      for (int j = i + 1; j < rows.length; j++) {
        double[] a = rows[i];
        double[] b = rows[j];
        double determinant = a[1] * b[2] - a[2] * b[1];
        if (Math.abs(determinant) > NO_CORNER * Math.hypot(a[1], a[2]) * Math.hypot(b[1], b[2])) {
          double east = (a[0] * b[2] - a[2] * b[0]) / determinant;
          double north = (a[1] * b[0] - a[0] * b[1]) / determinant;
          plane.add(new double[] {east, north});
          corners.add(corner(fix, east, north));
        }
      }
    }
    double longest = 0.0;
    for (double[] a : plane) {
      for (double[] b : plane) {
        longest = Math.max(longest, Math.hypot(a[0] - b[0], a[1] - b[1]));
      }
    }
    int n = rows.length;
    return new CockedHat(
        corners,
        Distance.ofMetres(longest),
        1.0 - n / Math.pow(2.0, n - 1),
        sharedError(rows, degrees));
  }

  /** Rhumb lines are near enough: the lines themselves are taken as straight here. */
  private static Position corner(Position fix, double east, double north) {
    double[] latLon = new double[2];
    RhumbLines.direct(
        fix.latitudeDegrees(),
        fix.longitudeDegrees(),
        Math.toDegrees(Math.atan2(east, north)),
        Math.hypot(east, north),
        latLon,
        0);
    return Position.ofDegrees(latLon[0], latLon[1]);
  }

  /** Least squares for east, north and one error shared by all bearings; NaN if not determined. */
  private static double sharedError(double[][] rows, double[] degrees) {
    double[][] m = new double[3][4];
    for (int i = 0; i < rows.length; i++) {
      double[] a = {rows[i][1], rows[i][2], 1.0 / degrees[i], rows[i][0]};
      for (int r = 0; r < 3; r++) {
        for (int c = 0; c < 4; c++) {
          m[r][c] += a[r] * a[c];
        }
      }
    }
    double plane = m[0][0] * m[1][1] - m[0][1] * m[1][0];
    double toEast = (m[0][2] * m[1][1] - m[0][1] * m[1][2]) / plane;
    double toNorth = (m[0][0] * m[1][2] - m[0][2] * m[1][0]) / plane;
    double weight = m[2][2] - m[2][0] * toEast - m[2][1] * toNorth;
    double side = m[2][3] - m[0][3] * toEast - m[1][3] * toNorth;
    return weight > 1e-6 * m[2][2] ? side / weight : Double.NaN;
  }

  /**
   * Where each two of the lines cross, those that hardly cross left out.
   *
   * @return the corners; unmodifiable
   */
  public List<Position> corners() {
    return corners;
  }

  /**
   * The size of the hat.
   *
   * @return the distance between the two corners furthest apart
   */
  public Distance longestSide() {
    return longestSide;
  }

  /**
   * The chance that the true position lies inside the figure, for independent errors that fall to
   * either side alike, before one has looked at the particular hat.
   *
   * @return 1 - n/2ⁿ⁻¹ for n lines: 0.25 for three
   */
  public double chanceInside() {
    return chanceInside;
  }

  /**
   * The error shared by all bearings with which the lines would meet best.
   *
   * @return degrees to take off every bearing; empty if a line is not a bearing or the marks lie so
   *     that such an error cannot be told from a shift of position
   */
  public OptionalDouble sharedErrorDegrees() {
    return Double.isNaN(sharedErrorDegrees)
        ? OptionalDouble.empty()
        : OptionalDouble.of(sharedErrorDegrees);
  }

  /** Size and chance, for people. */
  @Override
  public String toString() {
    return "cocked hat of "
        + Math.round(longestSide.metres())
        + " m, holding the true position with chance "
        + Math.round(chanceInside * 100.0)
        + " %";
  }
}
