package org.ferryglide.nav.fix;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.note.Arguments;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.plane.Gaussian;
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
 * <pre>{@code
 * Outcome<Fix, NoFix> outcome = FixSolver.standard().solve(List.of(tower, headland, island));
 * Outcome<Fix, NoFix> near = FixSolver.standard().withNear(reckoned).solve(List.of(twoMilesOff, oneMileOff));
 * }</pre>
 */
public final class FixSolver implements Serializable {

  private static final long serialVersionUID = 1L;

  /** Crossing at less than this, lines give a poor fix: common practice, no source. */
  public static final double POOR_CUT_DEGREES = 30.0;

  /** Lines that disagree so much are met in one honest fix of a hundred. */
  private static final double DISAGREEMENT = 0.01;

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
   * A solver that starts from a rough position, and takes the nearer where lines meet twice. The
   * rough position has no weight in the result.
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
   * @param reckoned the reckoned position and its uncertainty, which must not be nothing in any
   *     direction
   * @return a solver with everything else the same
   * @throws IllegalArgumentException if the uncertainty is nothing in some direction
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
      return unsolved(
          NoFix.Reason.TOO_FEW_LINES, "one position line alone does not fix a position");
    }
    LeastSquares squares = new LeastSquares(all, prior);
    List<double[]> starts = starts(all);
    if (starts.isEmpty()) {
      return all.stream().anyMatch(DistanceCircle.class::isInstance)
          ? unsolved(
              NoFix.Reason.NO_ROUGH_POSITION,
              "these lines meet in two places; give a rough position to tell which")
          : parallel();
    }
    for (double[] start : starts) {
      if (squares.solveFrom(start[0], start[1]) && squares.reversedBearing() < 0) {
        if (near != null && prior == null && TwoPlaces.possible(all)) {
          TwoPlaces.settleNearer(all, squares, near);
        }
        return Outcome.ofSolved(fix(all, squares));
      }
    }
    int reversed = squares.reversedBearingWhereLinesMeet();
    if (reversed >= 0) {
      return unsolved(
          NoFix.Reason.MEET_ASTERN,
          "the bearings meet only where that of "
              + all.get(reversed).name()
              + " points away from its mark; was it read at the wrong end?");
    }
    return squares.endedParallel()
        ? parallel()
        : unsolved(NoFix.Reason.NOT_FOUND, "no place was found that the lines agree on");
  }

  private static Outcome<Fix, NoFix> unsolved(NoFix.Reason reason, String message) {
    return Outcome.ofUnsolved(new NoFix(reason, message));
  }

  private static Outcome<Fix, NoFix> parallel() {
    return unsolved(NoFix.Reason.PARALLEL, "the position lines are parallel and never cross");
  }

  /** Places to start from, the likeliest first. */
  private List<double[]> starts(List<PositionLine> lines) {
    List<double[]> starts = new ArrayList<>();
    if (near != null) {
      starts.add(new double[] {near.latitudeDegrees(), near.longitudeDegrees()});
    }
    if (prior != null) {
      starts.add(
          new double[] {prior.position().latitudeDegrees(), prior.position().longitudeDegrees()});
    }
    double[] meeting = RoughMeeting.inThePlane(lines.toArray(new PositionLine[0]));
    if (meeting != null) {
      starts.add(meeting);
    }
    double[] backedOff = RoughMeeting.backedOff(lines);
    if (backedOff != null) {
      starts.add(backedOff);
    }
    return starts;
  }

  private Fix fix(List<PositionLine> lines, LeastSquares squares) {
    int n = lines.size();
    double[][] rows = new double[n][];
    double[] degrees = new double[n];
    List<Fix.Residual> residuals = new ArrayList<>(n);
    for (int i = 0; i < n; i++) {
      rows[i] = squares.equation(i);
      PositionLine line = lines.get(i);
      degrees[i] =
          line instanceof BearingLine bearing ? bearing.standardDeviationDegrees() : Double.NaN;
      double slope = Math.hypot(rows[i][1], rows[i][2]);
      residuals.add(new Fix.Residual(line, rows[i][0], Math.abs(rows[i][0]) / slope));
    }
    Position position = Position.ofDegrees(squares.lat, squares.lon);
    double cut = bestCut(rows);
    int free = n - (prior == null ? 2 : 0);
    double agreement = free > 0 ? Gaussian.chiSquareExceeds(squares.sumOfSquares(), free) : 1.0;
    return new Fix(
        new EstimatedPosition(position, squares.covariance()),
        residuals,
        cut,
        agreement,
        n >= 3 ? CockedHat.of(position, rows, degrees) : null,
        notes(lines, cut, agreement));
  }

  private static double bestCut(double[][] rows) {
    double best = 0.0;
    for (int i = 0; i < rows.length; i++) {
      for (int j = i + 1; j < rows.length; j++) {
        double cross = rows[i][1] * rows[j][2] - rows[i][2] * rows[j][1];
        double dot = rows[i][1] * rows[j][1] + rows[i][2] * rows[j][2];
        best = Math.max(best, Math.toDegrees(Math.atan2(Math.abs(cross), Math.abs(dot))));
      }
    }
    return best;
  }

  private List<Note> notes(List<PositionLine> lines, double cut, double agreement) {
    List<Note> notes = new ArrayList<>();
    if (lines.size() > 1 && cut < poorCutDegrees) {
      notes.add(
          Note.caution(
                  "fix.poor-cut",
                  "The position lines cross at a small angle, so that a small error of a bearing is"
                      + " a large one of the position.")
              .with("cutDegrees", cut));
    }
    if (agreement < DISAGREEMENT) {
      notes.add(
          Note.warning(
                  "fix.disagreement",
                  "The position lines disagree by more than their stated uncertainty explains; look"
                      + " for a mark misidentified, a bearing misread or a wrong variation.")
              .with("agreement", agreement));
    }
    if (lines.size() >= 3 && marksInHalfCircle(lines)) {
      notes.add(
          Note.information(
              "fix.half-circle",
              "All marks lie within half the horizon; an error shared by all bearings would put the"
                  + " true position outside the cocked hat."));
    }
    if (prior == null && TwoPlaces.possible(lines)) {
      notes.add(
          Note.information(
              "fix.two-places",
              "A circle is cut in two places; the one found is that nearer to the rough"
                  + " position."));
    }
    return notes;
  }

  /** Whether all lines are bearings and their marks leave half the horizon empty. */
  private static boolean marksInHalfCircle(List<PositionLine> lines) {
    double[] azimuths = new double[lines.size()];
    for (int i = 0; i < azimuths.length; i++) {
      if (!(lines.get(i) instanceof BearingLine bearing)) {
        return false;
      }
      azimuths[i] = bearing.bearing().degrees();
    }
    Arrays.sort(azimuths);
    double widest = azimuths[0] + 360.0 - azimuths[azimuths.length - 1];
    for (int i = 1; i < azimuths.length; i++) {
      widest = Math.max(widest, azimuths[i] - azimuths[i - 1]);
    }
    return widest > 180.0;
  }
}
