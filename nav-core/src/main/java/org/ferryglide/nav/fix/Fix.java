package org.ferryglide.nav.fix;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.note.Note;
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
 * fix.covariance().ellipse(0.95);
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
  private final @Nullable CockedHat cockedHat;
  private final List<Note> notes;

  Fix(
      EstimatedPosition estimatedPosition,
      List<Residual> residuals,
      double cutDegrees,
      double agreement,
      @Nullable CockedHat cockedHat,
      List<Note> notes) {
    this.estimatedPosition = estimatedPosition;
    this.residuals = List.copyOf(residuals);
    this.cutDegrees = cutDegrees;
    this.agreement = agreement;
    this.cockedHat = cockedHat;
    this.notes = List.copyOf(notes);
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
   * the lines happened to agree does not change it.
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
    return Optional.ofNullable(cockedHat);
  }

  /**
   * What the reader should know: {@code fix.poor-cut}, {@code fix.disagreement}, {@code
   * fix.half-circle}, {@code fix.two-places}.
   *
   * @return notes; unmodifiable
   */
  public List<Note> notes() {
    return notes;
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
   * Residual worst = fix.residuals().get(0);
   * worst.metres(); // how far the line passes from the fix
   * worst.standardDeviations(); // 3.2: suspicious
   * }</pre>
   *
   * @param line the observation
   * @param standardDeviations observed less what would be observed at the fix, in standard
   *     deviations of the observation
   * @param metres how far the line passes from the fix, metres, at least 0
   */
  public record Residual(PositionLine line, double standardDeviations, double metres)
      implements Serializable {

    private static final long serialVersionUID = 1L;
  }
}
