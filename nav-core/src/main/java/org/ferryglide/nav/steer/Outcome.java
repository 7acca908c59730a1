package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a solver returns: solved, or not possible and why.
 *
 * <p>There are exactly these two cases, and neither is an exception. {@link #match} meets both at
 * once; {@link #solved} and {@link #notPossible} ask for one; {@link #orElseThrow} is for callers
 * who know there is an answer.
 *
 * <pre>{@code
 * String line =
 *     outcome.match(
 *         steered -> "steer " + steered.courseToSteer().threeDigits(),
 *         notPossible -> notPossible.message());
 * }</pre>
 *
 * @param <S> what a solved outcome holds
 */
public sealed interface Outcome<S extends Serializable> extends Serializable
    permits SolvedOutcome, NotPossibleOutcome {

  /**
   * An outcome that is solved.
   *
   * @param <S> what it holds
   * @param solution the solution
   * @return the outcome
   */
  static <S extends Serializable> Outcome<S> ofSolved(S solution) {
    return new SolvedOutcome<>(solution);
  }

  /**
   * An outcome that is not possible.
   *
   * @param <S> what it would have held
   * @param notPossible why not
   * @return the outcome
   */
  static <S extends Serializable> Outcome<S> ofNotPossible(NotPossible notPossible) {
    return new NotPossibleOutcome<>(notPossible);
  }

  /**
   * Meets both cases. Text is best given a variable first, as above: handed straight to {@code
   * println}, it leaves the compiler to choose between its overloads, which it refuses.
   *
   * @param <R> what both cases are turned into
   * @param onSolved what to make of a solution
   * @param onNotPossible what to make of the lack of one
   * @return the result of whichever function applies
   */
  <R> R match(
      Function<? super S, ? extends R> onSolved,
      Function<? super NotPossible, ? extends R> onNotPossible);

  /**
   * Whether there is a solution.
   *
   * @return true if solved
   */
  boolean isSolved();

  /**
   * The solution, if there is one.
   *
   * @return the solution; empty if it is not possible
   */
  Optional<S> solved();

  /**
   * Why there is no solution.
   *
   * @return the reason with its figures; empty if solved
   */
  Optional<NotPossible> notPossible();

  /**
   * The solution, for callers who know there is one.
   *
   * @return the solution
   * @throws NotPossibleException if there is none
   */
  S orElseThrow();

  /**
   * The same outcome with its solution turned into something else.
   *
   * @param <R> what the new outcome holds
   * @param change what to make of a solution
   * @return solved with the changed solution, or not possible for the same reason
   */
  <R extends Serializable> Outcome<R> map(Function<? super S, ? extends R> change);
}
