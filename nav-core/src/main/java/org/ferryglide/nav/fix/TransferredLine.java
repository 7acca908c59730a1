package org.ferryglide.nav.fix;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.DeadReckoning;
import org.ferryglide.nav.reckon.ErrorBudget;
import org.ferryglide.nav.reckon.ErrorModel;
import org.jspecify.annotations.Nullable;

/**
 * An earlier position line, carried forward along the run made good since: what a running fix is
 * made of.
 *
 * <p>The run is over the ground, stream and leeway included; a stream left out is an error of the
 * fix, mile for mile. How uncertain the run is widens the line. Lines of one fix are taken to have
 * been carried to the same moment, so that they share the error of the run they share: that of the
 * log where they come from one ({@link #carried}), the smaller of both uncertainties otherwise. Ten
 * bearings carried along one run make a fix no better than the run.
 *
 * <pre>{@code
 * TransferredLine earlier =
 *     TransferredLine.between(firstBearing, reckonedThen, reckonedNow, errorOfTheRun);
 * Outcome<Fix, NoFix> fix = FixSolver.standard().solve(List.of(earlier, secondBearing));
 * }</pre>
 */
public final class TransferredLine implements PositionLine {

  private static final long serialVersionUID = 1L;

  private final PositionLine original;
  private final TrueBearing course;
  private final Distance run;
  private final Covariance uncertainty;
  private final @Nullable ErrorBudget budget;

  private TransferredLine(
      PositionLine original,
      TrueBearing course,
      Distance run,
      Covariance uncertainty,
      @Nullable ErrorBudget budget) {
    this.original = Objects.requireNonNull(original, "original");
    this.course = Objects.requireNonNull(course, "course");
    this.run = run;
    this.uncertainty = Objects.requireNonNull(uncertainty, "uncertainty");
    this.budget = budget;
    Arguments.notNegative(run.metres(), "run", "metres");
  }

  /**
   * A line carried along a course and distance made good.
   *
   * @param original the line as it was observed
   * @param course course made good over the ground since
   * @param run distance made good over the ground since, at least 0
   * @param uncertainty how far off the run may be
   * @return the line as it holds now
   * @throws IllegalArgumentException if {@code run} is negative
   */
  public static TransferredLine of(
      PositionLine original, TrueBearing course, Distance run, Covariance uncertainty) {
    return new TransferredLine(original, course, run, uncertainty, null);
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
    return between(original, then, now, uncertainty, null);
  }

  private static TransferredLine between(
      PositionLine original,
      Position then,
      Position now,
      Covariance uncertainty,
      @Nullable ErrorBudget budget) {
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
        uncertainty,
        budget);
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
    ErrorBudget budget = ErrorBudget.of(reckoning.runsAfter(observed), errors);
    return Optional.of(between(original, then.get(), now.get(), budget.covariance(), budget));
  }

  /**
   * The line as it was observed.
   *
   * @return the original
   */
  public PositionLine original() {
    return original;
  }

  /**
   * Where the craft went since.
   *
   * @return the course made good over the ground
   */
  public TrueBearing course() {
    return course;
  }

  /**
   * How far it went since.
   *
   * @return the distance made good over the ground
   */
  public Distance run() {
    return run;
  }

  /**
   * How far off the run may be.
   *
   * @return the covariance of its end
   */
  public Covariance uncertainty() {
    return uncertainty;
  }

  /** Whether another line was carried along the very same run. */
  boolean sameRun(TransferredLine other) {
    return course.equals(other.course)
        && run.equals(other.run)
        && uncertainty.equals(other.uncertainty);
  }

  /** Writes the covariance of the ends of two runs to the same moment, as four figures. */
  void sharedError(TransferredLine other, double[] out) {
    if (budget != null && other.budget != null && budget.sharedWith(other.budget, out, 0)) {
      return;
    }
    if (budget != null && other.budget != null && other.budget.sharedWith(budget, out, 0)) {
      double cross = out[ErrorBudget.EAST_NORTH];
      out[ErrorBudget.EAST_NORTH] = out[ErrorBudget.NORTH_EAST];
      out[ErrorBudget.NORTH_EAST] = cross;
      return;
    }
    Covariance smaller =
        uncertainty.rootMeanSquare().metres() <= other.uncertainty.rootMeanSquare().metres()
            ? uncertainty
            : other.uncertainty;
    out[ErrorBudget.EAST_EAST] = smaller.eastVariance();
    out[ErrorBudget.EAST_NORTH] = smaller.eastNorthCovariance();
    out[ErrorBudget.NORTH_EAST] = smaller.eastNorthCovariance();
    out[ErrorBudget.NORTH_NORTH] = smaller.northVariance();
  }

  @Override
  public String name() {
    return original.name() + " transferred";
  }

  @Override
  public <R> R match(Kinds<R> kinds) {
    return kinds.transferred(this);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TransferredLine that && original.equals(that.original) && sameRun(that);
  }

  @Override
  public int hashCode() {
    return Objects.hash(original, course, run, uncertainty);
  }

  @Override
  public String toString() {
    return original + " carried " + run + " on " + course;
  }
}
