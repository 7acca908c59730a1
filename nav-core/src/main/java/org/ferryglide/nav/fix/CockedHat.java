package org.ferryglide.nav.fix;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.plane.LocalPlane;
import org.ferryglide.nav.position.Position;

/**
 * The figure that three or more position lines make where they do not quite meet.
 *
 * <p>The true position is <em>not</em> usually inside: if each line is as likely to pass on one
 * side of it as on the other, a triangle holds it in one case of four. An error that all bearings
 * share, such as a wrong variation, moves all lines together; {@link #sharedErrorDegrees} is the
 * one that would make them meet best. Each corner is where two lines really cross, on the
 * ellipsoid, however far away.
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
  private final boolean closed;
  private final Distance longestSide;
  private final double chanceInside;
  private final double sharedErrorDegrees;

  private CockedHat(
      List<Position> corners,
      boolean closed,
      Distance longestSide,
      double chanceInside,
      double sharedErrorDegrees) {
    this.corners = List.copyOf(corners);
    this.closed = closed;
    this.longestSide = longestSide;
    this.chanceInside = chanceInside;
    this.sharedErrorDegrees = sharedErrorDegrees;
  }

  /** Looks at the lines around a solution of theirs. */
  static CockedHat of(Position fix, List<PositionLine> lines) {
    int n = lines.size();
    List<Position> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        LeastSquares pair = new LeastSquares(List.of(lines.get(i), lines.get(j)), null);
        if (meets(pair, fix)) {
          corners.add(Position.ofDegrees(pair.lat(), pair.lon()));
        }
      }
    }
    LeastSquares all = new LeastSquares(lines, null);
    OptionalDouble shared =
        all.solveFrom(fix.latitudeDegrees(), fix.longitudeDegrees())
            ? SharedError.of(all.equations(), all.equationsByThemselves())
            : OptionalDouble.empty();
    return new CockedHat(
        corners,
        corners.size() == n * (n - 1) / 2,
        Distance.ofMetres(longest(corners)),
        1.0 - n / Math.pow(2.0, n - 1),
        shared.orElse(Double.NaN));
  }

  /** Whether two lines cross, and where: from the fix on, or from where their tangents do. */
  private static boolean meets(LeastSquares pair, Position fix) {
    if (pair.solveFrom(fix.latitudeDegrees(), fix.longitudeDegrees())
        && pair.reversedBearing() < 0) {
      return true;
    }
    for (double[] start : RoughMeeting.of(pair.equations())) {
      if (pair.solveFrom(start[0], start[1]) && pair.reversedBearing() < 0) {
        return true;
      }
    }
    return false;
  }

  private static double longest(List<Position> corners) {
    double longest = 0.0;
    for (int i = 0; i < corners.size(); i++) {
      for (int j = 0; j < i; j++) {
        double[] apart = LocalPlane.toPlane(corners.get(i), corners.get(j));
        longest = Math.max(longest, Math.hypot(apart[0], apart[1]));
      }
    }
    return longest;
  }

  /**
   * Where each pair of lines crosses.
   *
   * @return the corners; fewer than the pairs of lines where some do not cross; unmodifiable
   */
  public List<Position> corners() {
    return corners;
  }

  /**
   * Whether every pair of lines crosses: otherwise the figure has no size.
   *
   * @return false if a pair is parallel, or of bearings that meet only behind the observer
   */
  public boolean isClosed() {
    return closed;
  }

  /**
   * The size of the hat.
   *
   * @return the distance between the two corners furthest apart; of those there are, where the hat
   *     is not closed
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

  @Override
  public boolean equals(Object other) {
    return other instanceof CockedHat that
        && corners.equals(that.corners)
        && closed == that.closed
        && chanceInside == that.chanceInside
        && Double.compare(sharedErrorDegrees, that.sharedErrorDegrees) == 0;
  }

  @Override
  public int hashCode() {
    return Objects.hash(corners, closed, chanceInside, sharedErrorDegrees);
  }

  /** Size and chance, for people. */
  @Override
  public String toString() {
    return closed
        ? "cocked hat of "
            + Math.round(longestSide.metres())
            + " m, holding the true position with chance "
            + Math.round(chanceInside * 100.0)
            + " %"
        : "open cocked hat: not all of its lines cross";
  }
}
