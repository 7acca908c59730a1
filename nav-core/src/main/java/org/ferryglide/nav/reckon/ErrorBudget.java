package org.ferryglide.nav.reckon;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;

/**
 * Which error contributes how much at the end of a passage, in metres, so that the paddler knows
 * what to improve.
 *
 * <p>To first order: with 20 degrees of error of the set alone, the standard deviation across a
 * course square to the stream comes out up to 13 % too large, and the shortening of the mean drift
 * is missing; with the usual model the variance is within 6 % of that of {@link ErrorSimulation},
 * which has the rest.
 *
 * <pre>{@code
 * ErrorBudget budget =
 *     ErrorBudget.of(reckoning.runs(), ErrorModel.usual()).startingFrom(launch.covariance());
 * budget.covariance().ellipse(0.95);
 * budget.contributions().get(0); // the largest: rate of the stream, 480 m
 * budget.asText(course); // the whole table
 * }</pre>
 */
public final class ErrorBudget implements Serializable {

  private static final long serialVersionUID = 1L;

  /** Where {@link #sharedWith} writes easting with easting, after the offset. */
  public static final int EAST_EAST = 0;

  /** Where {@link #sharedWith} writes easting of the whole with northing of the part. */
  public static final int EAST_NORTH = 1;

  /** Where {@link #sharedWith} writes northing of the whole with easting of the part. */
  public static final int NORTH_EAST = 2;

  /** Where {@link #sharedWith} writes northing with northing, after the offset. */
  public static final int NORTH_NORTH = 3;

  private static final int FOUR = 4;

  private final List<SteadyRun> runs;
  private final ErrorModel model;
  private final List<Contribution> contributions;

  private ErrorBudget(List<SteadyRun> runs, ErrorModel model, List<Contribution> contributions) {
    this.runs = List.copyOf(runs);
    this.model = model;
    List<Contribution> sorted = new ArrayList<>(contributions);
    sorted.sort(
        Comparator.comparingDouble(
                (Contribution contribution) -> contribution.covariance().rootMeanSquare().metres())
            .reversed());
    this.contributions = List.copyOf(sorted);
  }

  /**
   * Counts the errors of a passage.
   *
   * @param runs the passage, cut where water track, speed or stream change
   * @param model how large the errors are
   * @return the budget, with the starting position taken as exact
   */
  public static ErrorBudget of(List<SteadyRun> runs, ErrorModel model) {
    ErrorGrowth growth = new ErrorGrowth(runs, model.intervalSeconds());
    List<Contribution> parts = new ArrayList<>();
    for (ErrorSource source : ErrorSource.values()) {
      Spread spread = model.spread(source);
      if (!spread.equals(Spread.NONE)) {
        parts.add(
            new Contribution(
                source,
                growth.constantPart(source, spread.constant()),
                growth.independentPart(source, spread.independent())));
      }
    }
    return new ErrorBudget(runs, model, parts);
  }

  /**
   * The same budget with an uncertain start.
   *
   * <p>The start's errors are taken as independent of those on the way. Where the start is itself
   * the end of a reckoning by the same compass and tables, that is too little: use {@link
   * #andThen}, which counts both parts as one passage.
   *
   * @param start how well the start was known, independently of what went wrong afterwards
   * @return a budget with that contribution instead of an exact start
   */
  public ErrorBudget startingFrom(Covariance start) {
    List<Contribution> parts = new ArrayList<>();
    for (Contribution part : contributions) {
      if (part.source() != ErrorSource.START) {
        parts.add(part);
      }
    }
    if (!start.equals(Covariance.ZERO)) {
      parts.add(new Contribution(ErrorSource.START, start, Covariance.ZERO));
    }
    return new ErrorBudget(runs, model, parts);
  }

  /**
   * The budget of a passage that goes on with the same instruments and tables: constant errors stay
   * what they are.
   *
   * @param more what follows, cut where water track, speed or stream change
   * @return the budget of the whole passage, from the same start
   */
  public ErrorBudget andThen(List<SteadyRun> more) {
    List<SteadyRun> all = new ArrayList<>(runs);
    all.addAll(more);
    ErrorBudget whole = of(all, model);
    for (Contribution part : contributions) {
      if (part.source() == ErrorSource.START) {
        return whole.startingFrom(part.covariance());
      }
    }
    return whole;
  }

  /**
   * Writes what the errors of this passage and of its last part have in common: the covariance of
   * where each leads.
   *
   * @param part the budget of the last part, by the same model
   * @param out receives four figures, square metres: easting with easting, easting of this with
   *     northing of the part, northing of this with easting of the part, northing with northing
   * @param offset index in {@code out} of the first
   * @return false, and nothing written, if the other is no last part of this passage
   */
  public boolean sharedWith(ErrorBudget part, double[] out, int offset) {
    if (!model.equals(part.model) || !SteadyRun.endsAlike(runs, part.runs)) {
      return false;
    }
    Arrays.fill(out, offset, offset + FOUR, 0.0);
    ErrorGrowth whole = new ErrorGrowth(runs, model.intervalSeconds());
    ErrorGrowth later = new ErrorGrowth(part.runs, model.intervalSeconds());
    for (ErrorSource source : ErrorSource.values()) {
      Spread spread = model.spread(source);
      if (!spread.equals(Spread.NONE)) {
        whole.addShared(later, source, spread.constant(), spread.independent(), out, offset);
      }
    }
    return true;
  }

  /**
   * What each error contributes.
   *
   * @return contributions, the largest first; those of zero are left out; unmodifiable
   */
  public List<Contribution> contributions() {
    return contributions;
  }

  /**
   * All contributions together.
   *
   * @return the covariance of the position at the end
   */
  public Covariance covariance() {
    Covariance sum = Covariance.ZERO;
    for (Contribution part : contributions) {
      sum = sum.plus(part.covariance());
    }
    return sum;
  }

  /**
   * The budget as a table for people.
   *
   * @param course the direction that along and across refer to
   * @return a line for each error, the largest first, and the total; metres are one standard
   *     deviation, rounded up
   */
  public String asText(TrueBearing course) {
    StringBuilder text = new StringBuilder();
    for (Contribution part : contributions) {
      line(text, part.source().text(), part.covariance(), course);
    }
    line(text, "all together", covariance(), course);
    return text.toString();
  }

  private static void line(
      StringBuilder text, String name, Covariance covariance, TrueBearing course) {
    text.append(name)
        .append(": ")
        .append(up(covariance.standardDeviationAlong(course)))
        .append(" m along, ")
        .append(up(covariance.standardDeviationAcross(course)))
        .append(" m across\n");
  }

  /** Whole metres upward, but not for what rounding left over. */
  private static long up(Distance distance) {
    return (long) Math.ceil(distance.metres() - 1e-6);
  }

  @Override
  public String toString() {
    return "error budget " + contributions;
  }

  /**
   * What one error contributes at the end of a passage.
   *
   * <pre>{@code
   * ErrorBudget.Contribution largest = budget.contributions().get(0);
   * largest.source().text(); // rate of the stream
   * largest.covariance().rootMeanSquare().metres();
   * }</pre>
   *
   * @param source which error
   * @param constantPart covariance from the part that stays the same all the way
   * @param independentPart covariance from the part drawn anew in every interval
   */
  public record Contribution(
      ErrorSource source, Covariance constantPart, Covariance independentPart)
      implements Serializable {

    private static final long serialVersionUID = 1L;

    /**
     * Takes all parts; {@link ErrorBudget#contributions} has them.
     *
     * @param source which error
     * @param constantPart covariance from the part that stays the same all the way
     * @param independentPart covariance from the part drawn anew in every interval
     */
    public Contribution {
      Objects.requireNonNull(source, "source");
      Objects.requireNonNull(constantPart, "constantPart");
      Objects.requireNonNull(independentPart, "independentPart");
    }

    /**
     * Both parts together.
     *
     * @return the covariance this error leads to
     */
    public Covariance covariance() {
      return constantPart.plus(independentPart);
    }
  }
}
