package org.ferryglide.nav.fix;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.plane.Gaussian;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.EstimatedPosition;
import org.jspecify.annotations.Nullable;

/**
 * A position found from position lines, with all that is needed to judge it.
 *
 * <pre>{@code
 * Fix fix = FixSolver.standard().solve(lines).orElseThrow();
 * fix.position();
 * fix.region().reach(); // in 95 of 100 cases the true position is within it
 * fix.cutDegrees(); // 72.0: a good cut
 * fix.agreement(); // 0.4: honest errors disagree as much in 40 % of fixes
 * fix.notes(); // poor cut, lines that cannot all be right
 * }</pre>
 */
public final class Fix implements Serializable {

  private static final long serialVersionUID = 1L;

  private final EstimatedPosition estimatedPosition;
  private final List<Residual> residuals;
  private final double cutDegrees;
  private final double agreement;
  private final List<Note> notes;
  private final List<PositionLine> lines;
  private final @Nullable EstimatedPosition prior;
  private final List<Position> otherPlaces;

  private Fix(
      EstimatedPosition estimatedPosition,
      List<Residual> residuals,
      double cutDegrees,
      double agreement,
      List<Note> notes,
      List<PositionLine> lines,
      @Nullable EstimatedPosition prior,
      List<Position> otherPlaces) {
    this.estimatedPosition = estimatedPosition;
    this.residuals = List.copyOf(residuals);
    this.cutDegrees = cutDegrees;
    this.agreement = agreement;
    this.notes = List.copyOf(notes);
    this.lines = lines;
    this.prior = prior;
    this.otherPlaces = List.copyOf(otherPlaces);
  }

  /** Reads off a fix where a solution has settled. */
  static Fix at(
      LeastSquares squares,
      List<PositionLine> lines,
      @Nullable EstimatedPosition prior,
      FixJudge judge,
      List<Position> otherPlaces) {
    int n = lines.size();
    double[][] rows = squares.equationsByThemselves();
    List<Residual> residuals = new ArrayList<>(n);
    for (int i = 0; i < n; i++) {
      double slope = Math.hypot(rows[i][1], rows[i][2]);
      residuals.add(
          new Residual(lines.get(i), rows[i][0], Distance.ofMetres(Math.abs(rows[i][0]) / slope)));
    }
    double cut = bestCut(rows);
    int free = n - (prior == null ? 2 : 0);
    double agreement = free > 0 ? Gaussian.chiSquareExceeds(squares.sumOfSquares(), free) : 1.0;
    return new Fix(
        new EstimatedPosition(
            Position.ofDegrees(squares.lat(), squares.lon()), squares.covariance()),
        residuals,
        cut,
        agreement,
        judge.notes(squares, cut, agreement, rows),
        lines,
        prior,
        otherPlaces);
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

  /**
   * Where the lines agree best.
   *
   * @return the position
   */
  public Position position() {
    return estimatedPosition.position();
  }

  /**
   * How far off the position may be, from the standard deviations that the lines stated; how well
   * the lines happened to agree does not change it. To first order: its 95 % ellipse is too small
   * where lines cross at less than 30 degrees; {@link #region} holds.
   *
   * @return the covariance
   */
  public Covariance covariance() {
    return estimatedPosition.covariance();
  }

  /**
   * Position and covariance together, to be combined with others.
   *
   * @return the estimated position
   */
  public EstimatedPosition estimatedPosition() {
    return estimatedPosition;
  }

  /**
   * What each line was off by.
   *
   * @return in the order the lines were given; unmodifiable
   */
  public List<Residual> residuals() {
    return residuals;
  }

  /**
   * How well the lines cross.
   *
   * @return the best angle at which any two of them cross, degrees, in [0, 90]
   */
  public double cutDegrees() {
    return cutDegrees;
  }

  /**
   * How often honest errors disagree as much as these lines, or more.
   *
   * @return a chance in [0, 1]; 1 for two lines alone, which always meet
   */
  public double agreement() {
    return agreement;
  }

  /**
   * The figure that three or more lines make.
   *
   * @return the cocked hat; empty for two lines
   */
  public Optional<CockedHat> cockedHat() {
    return lines.size() < 3 ? Optional.empty() : Optional.of(CockedHat.of(position(), lines));
  }

  /**
   * Where the true position is in 95 of 100 cases, errors being normal and as large as stated.
   *
   * @return the region about this fix
   */
  public FixRegion region() {
    return FixRegion.about(lines, prior, estimatedPosition, otherPlaces);
  }

  /**
   * What the reader should know: {@code fix.poor-cut}, {@code fix.shared-error}, {@code
   * fix.disagreement}, {@code fix.half-circle}, {@code fix.two-places}, {@code fix.transit-behind}.
   *
   * @return notes; unmodifiable
   */
  public List<Note> notes() {
    return notes;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Fix that
        && lines.equals(that.lines)
        && estimatedPosition.equals(that.estimatedPosition)
        && Objects.equals(prior, that.prior);
  }

  @Override
  public int hashCode() {
    return Objects.hash(lines, estimatedPosition, prior);
  }

  /** The position, its 95 % ellipse and the cut, for people. */
  @Override
  public String toString() {
    return estimatedPosition + ", best cut " + Math.round(cutDegrees) + "°";
  }

  /**
   * What one line was off by at the fix.
   *
   * <pre>{@code
   * Fix.Residual worst = fix.residuals().get(0);
   * worst.distance(); // how far the line passes from the fix
   * worst.standardDeviations(); // 3.2: suspicious
   * }</pre>
   *
   * @param line the observation
   * @param standardDeviations observed less what would be observed at the fix, in standard
   *     deviations of the observation
   * @param distance how far the line passes from the fix, at least 0
   */
  public record Residual(PositionLine line, double standardDeviations, Distance distance)
      implements Serializable {

    private static final long serialVersionUID = 1L;

    /**
     * Takes all parts; {@link Fix#residuals} has them.
     *
     * @param line the observation
     * @param standardDeviations how far off, in standard deviations
     * @param distance how far the line passes from the fix
     */
    public Residual {
      Objects.requireNonNull(line, "line");
      Objects.requireNonNull(distance, "distance");
    }
  }
}
