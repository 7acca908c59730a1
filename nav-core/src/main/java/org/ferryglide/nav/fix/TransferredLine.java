package org.ferryglide.nav.fix;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Arguments;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.DeadReckoning;
import org.ferryglide.nav.reckon.ErrorBudget;
import org.ferryglide.nav.reckon.ErrorModel;

/**
 * A position line of earlier, carried forward along the run made good since: what a running fix is
 * made of.
 *
 * <p>The run is over the ground, stream and leeway included; a stream left out is an error of the
 * fix, mile for mile. How uncertain the run is widens the line.
 *
 * <pre>{@code
 * TransferredLine earlier =
 *     TransferredLine.between(firstBearing, reckonedThen, reckonedNow, errorOfTheRun);
 * Outcome<Fix, NoFix> fix = FixSolver.standard().solve(List.of(earlier, secondBearing));
 * }</pre>
 *
 * @param original the line as it was observed
 * @param course course made good over the ground since
 * @param run distance made good over the ground since, at least 0
 * @param uncertainty how far off the run may be
 */
public record TransferredLine(
    PositionLine original, TrueBearing course, Distance run, Covariance uncertainty)
    implements PositionLine {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts.
   *
   * @param original the line as it was observed
   * @param course course made good over the ground since
   * @param run distance made good over the ground since
   * @param uncertainty how far off the run may be
   * @throws IllegalArgumentException if {@code run} is negative
   */
  public TransferredLine {
    Objects.requireNonNull(original, "original");
    Objects.requireNonNull(course, "course");
    Objects.requireNonNull(uncertainty, "uncertainty");
    Arguments.notNegative(run.metres(), "run", "metres");
  }

  /**
   * A line carried from one reckoned position to another; only the rhumb line between them matters,
   * not where both are.
   *
   * @param original the line as it was observed
   * @param then the reckoned position when it was observed
   * @param now the reckoned position now
   * @param uncertainty how far off the run may be
   * @return the line as it holds now
   */
  public static TransferredLine between(
      PositionLine original, Position then, Position now, Covariance uncertainty) {
    double[] courseAndMetres = new double[2];
    RhumbLines.inverse(
        then.latitudeDegrees(),
        then.longitudeDegrees(),
        now.latitudeDegrees(),
        now.longitudeDegrees(),
        courseAndMetres,
        0);
    return new TransferredLine(
        original,
        TrueBearing.ofDegrees(courseAndMetres[0]),
        Distance.ofMetres(courseAndMetres[1]),
        uncertainty);
  }

  /**
   * A line carried to the end of a log: the first half of a running fix.
   *
   * @param original the line as it was observed
   * @param observed when, from the first entry of the log to its end
   * @param reckoning the log since then
   * @param errors the errors of log, compass and stream since then
   * @return the line as it holds at the end; empty if the stream was not known on the way
   * @throws IllegalArgumentException if {@code observed} is outside the log
   */
  public static Optional<TransferredLine> carried(
      PositionLine original, Instant observed, DeadReckoning reckoning, ErrorModel errors) {
    Optional<Position> now = reckoning.estimated();
    Optional<Position> then = reckoning.at(observed).estimated();
    if (!now.isPresent() || !then.isPresent()) {
      return Optional.empty();
    }
    Covariance run = ErrorBudget.of(reckoning.runsAfter(observed), errors).covariance();
    return Optional.of(between(original, then.get(), now.get(), run));
  }

  @Override
  public String name() {
    return original.name() + " transferred";
  }
}
