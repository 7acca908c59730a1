package org.ferryglide.nav.fix;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.geodesy.Geodesics;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.EstimatedPosition;
import org.jspecify.annotations.Nullable;

/**
 * Makes a fix of position lines: weighted least squares on the ellipsoid.
 *
 * <p>Each line counts by how certain it is. Any kinds mix: bearings, transits, distances, known
 * lines, and lines transferred from earlier. Exact bearings return the true place within a
 * hundredth of a millimetre (2000 random fixes with marks to 20 NM), noisy ones agree as closely
 * with an independent least-squares answer (80 fixes, SciPy). Within a degree of a pole, where
 * meridians are no longer nearly parallel, it may find no place.
 *
 * <p>A circle is cut in two places. Two lines that meet twice have a fix only with a rough position
 * to tell which ({@link #withNear}), or both on request ({@link #places}); with more lines the
 * place at which they agree best is taken, wherever the search began.
 *
 * <pre>{@code
 * Outcome<Fix, NoFix> outcome = FixSolver.standard().solve(List.of(tower, headland, island));
 * FixSolver near = FixSolver.standard().withNear(reckoned);
 * Outcome<Fix, NoFix> fix = near.solve(List.of(twoMilesOff, oneMileOff));
 * List<Fix> both = FixSolver.standard().places(List.of(twoMilesOff, oneMileOff));
 * }</pre>
 */
public final class FixSolver implements Serializable {

  private static final long serialVersionUID = 1L;

  /** Crossing at less than this, lines give a poor fix: common practice, no source. */
  public static final double POOR_CUT_DEGREES = 30.0;

  /** Solutions nearer to each other than this are one, metres. */
  private static final double SAME_PLACE_METRES = 1.0;

  /** Squares that differ by less than this are the same. */
  private static final double SAME_SQUARES = 1e-4;

  private static final FixSolver STANDARD = new FixSolver(null, null, POOR_CUT_DEGREES);

  private final @Nullable Position near;
  private final @Nullable EstimatedPosition prior;
  private final double poorCutDegrees;

  private FixSolver(
      @Nullable Position near, @Nullable EstimatedPosition prior, double poorCutDegrees) {
    this.near = near;
    this.prior = prior;
    this.poorCutDegrees = poorCutDegrees;
  }

  /**
   * A solver that knows nothing beforehand.
   *
   * @return the solver
   */
  public static FixSolver standard() {
    return STANDARD;
  }

  /**
   * A solver that takes the nearer place where the lines agree as well in two. The rough position
   * has no other weight in the result.
   *
   * @param roughPosition where the observer is, more or less
   * @return a solver with everything else the same
   */
  public FixSolver withNear(Position roughPosition) {
    return new FixSolver(
        Objects.requireNonNull(roughPosition, "roughPosition"), prior, poorCutDegrees);
  }

  /**
   * A solver that weighs the lines together with what the reckoning says; one line is then enough.
   *
   * @param reckoned the reckoned position and its uncertainty, which must be above zero in every
   *     direction
   * @return a solver with everything else the same
   * @throws IllegalArgumentException if the uncertainty is zero in some direction
   */
  public FixSolver withPrior(EstimatedPosition reckoned) {
    if (!(reckoned.covariance().ellipse(0.5).semiMinorAxis().metres() > 0.0)) {
      throw new IllegalArgumentException(
          "reckoned position must be uncertain in every direction, but had "
              + reckoned.covariance());
    }
    return new FixSolver(near, reckoned, poorCutDegrees);
  }

  /**
   * A solver that flags poor cuts at another angle.
   *
   * @param degrees lines crossing at less than this are flagged, degrees, in [0, 90]
   * @return a solver with everything else the same
   * @throws IllegalArgumentException if {@code degrees} is NaN or outside [0, 90]
   */
  public FixSolver withPoorCutDegrees(double degrees) {
    return new FixSolver(near, prior, Arguments.within(degrees, 0.0, 90.0, "poor cut", "degrees"));
  }

  /**
   * Where the lines agree best.
   *
   * @param lines one position line or more
   * @return the fix, or why there is none
   * @throws IllegalArgumentException if {@code lines} is empty
   */
  public Outcome<Fix, NoFix> solve(List<? extends PositionLine> lines) {
    List<PositionLine> all = List.copyOf(lines);
    if (all.isEmpty()) {
      throw new IllegalArgumentException("a fix needs at least one position line");
    }
    if (prior == null && all.size() < 2) {
      return Outcome.ofUnsolved(
          new NoFix(NoFix.Reason.TOO_FEW_LINES, "one position line alone does not fix a position"));
    }
    LeastSquares squares = new LeastSquares(all, prior);
    List<double[]> found = solutions(squares);
    if (found.isEmpty()) {
      return Outcome.ofUnsolved(NoFix.diagnose(all, squares));
    }
    List<double[]> best = agreeingAsWellAsTheFirst(found);
    if (best.size() > 1 && near == null) {
      return Outcome.ofUnsolved(
          new NoFix(
              NoFix.Reason.NO_ROUGH_POSITION,
              "these lines meet in two places, "
                  + place(best.get(0))
                  + " and "
                  + place(best.get(1))
                  + "; give a rough position to tell which"));
    }
    double[] chosen = near == null ? best.get(0) : nearest(best, near);
    if (!isSettledAt(chosen, squares) || FixRegion.isUnbounded(squares)) {
      return Outcome.ofUnsolved(NoFix.unbounded());
    }
    return Outcome.ofSolved(fix(all, squares, found, chosen));
  }

  /**
   * Every place at which the lines agree, for two lines that meet twice.
   *
   * @param lines one position line or more
   * @return a fix for each place, the one on which the lines agree best first; empty where {@link
   *     #solve} tells why there is none; unmodifiable
   */
  public List<Fix> places(List<? extends PositionLine> lines) {
    List<PositionLine> all = List.copyOf(lines);
    List<Fix> fixes = new ArrayList<>();
    if (all.size() >= 2 || (prior != null && !all.isEmpty())) {
      LeastSquares squares = new LeastSquares(all, prior);
      List<double[]> found = solutions(squares);
      for (double[] place : found) {
        if (isSettledAt(place, squares) && !FixRegion.isUnbounded(squares)) {
          fixes.add(fix(all, squares, found, place));
        }
      }
    }
    return List.copyOf(fixes);
  }

  private Fix fix(
      List<PositionLine> lines, LeastSquares squares, List<double[]> found, double[] chosen) {
    double otherWorseBy = Double.POSITIVE_INFINITY;
    List<Position> others = new ArrayList<>();
    for (double[] other : found) {
      if (other != chosen) {
        others.add(place(other));
        otherWorseBy = Math.min(otherWorseBy, other[2] - chosen[2]);
      }
    }
    return Fix.at(squares, lines, prior, new FixJudge(poorCutDegrees, otherWorseBy), others);
  }

  /** Every place the search ends at, with its sum of squares; the least first. */
  private List<double[]> solutions(LeastSquares squares) {
    List<double[]> starts = RoughMeeting.of(squares.equations());
    boolean several = starts.size() > 1;
    if (near != null) {
      starts.add(new double[] {near.latitudeDegrees(), near.longitudeDegrees()});
    }
    if (prior != null) {
      Position reckoned = prior.position();
      starts.add(new double[] {reckoned.latitudeDegrees(), reckoned.longitudeDegrees()});
    }
    List<double[]> found = new ArrayList<>();
    for (double[] start : starts) {
      if (squares.solveFrom(start[0], start[1])
          && squares.reversedBearing() < 0
          && isNew(found, squares)) {
        found.add(new double[] {squares.lat(), squares.lon(), squares.sumOfSquares()});
        if (!several) {
          break; // straight lines agree best in one place only
        }
      }
    }
    found.sort((a, b) -> Double.compare(a[2], b[2]));
    return found;
  }

  /** Brings the solution back to a place found before, unless the search ended there. */
  private static boolean isSettledAt(double[] place, LeastSquares squares) {
    return (squares.lat() == place[0] && squares.lon() == place[1])
        || squares.solveFrom(place[0], place[1]);
  }

  private static List<double[]> agreeingAsWellAsTheFirst(List<double[]> found) {
    int count = 1;
    while (count < found.size() && found.get(count)[2] <= found.get(0)[2] + SAME_SQUARES) {
      count++;
    }
    return found.subList(0, count);
  }

  private static boolean isNew(List<double[]> found, LeastSquares squares) {
    return found.stream()
        .allMatch(f -> metres(f[0], f[1], squares.lat(), squares.lon()) > SAME_PLACE_METRES);
  }

  private static double[] nearest(List<double[]> places, Position near) {
    double[] best = places.get(0);
    for (double[] place : places) {
      if (metresFrom(place, near) < metresFrom(best, near)) {
        best = place;
      }
    }
    return best;
  }

  private static double metresFrom(double[] place, Position near) {
    return metres(place[0], place[1], near.latitudeDegrees(), near.longitudeDegrees());
  }

  private static double metres(double lat, double lon, double otherLat, double otherLon) {
    double[] line = new double[3];
    Geodesics.inverse(lat, lon, otherLat, otherLon, line, 0);
    return line[2];
  }

  private static Position place(double[] latLon) {
    return Position.ofDegrees(latLon[0], latLon[1]);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FixSolver that
        && Objects.equals(near, that.near)
        && Objects.equals(prior, that.prior)
        && poorCutDegrees == that.poorCutDegrees;
  }

  @Override
  public int hashCode() {
    return Objects.hash(near, prior, poorCutDegrees);
  }

  /** What it knows beforehand, for people. */
  @Override
  public String toString() {
    return "fix solver"
        + (near == null ? "" : ", near " + near)
        + (prior == null ? "" : ", reckoned " + prior)
        + ", poor cut below "
        + poorCutDegrees
        + "°";
  }
}
