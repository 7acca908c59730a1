package org.ferryglide.nav.note;

import java.io.Serializable;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What a solver returns: solved, or not and why.
 *
 * <p>There are exactly these two cases, and neither is an exception. {@link #match} handles both at
 * once; {@link #map} and {@link #orElse} do so one after the other, which reads better where text
 * is wanted; {@link #orElseThrow} is for callers who know there is an answer.
 *
 * <pre>{@code
 * System.out.println(
 *     outcome.map(steered -> "steer " + steered.courseToSteer().threeDigits()).orElse(Why::message));
 * }</pre>
 *
 * @param <S> what a solved outcome holds
 * @param <W> what tells why there is no answer
 */
@SuppressWarnings("exports") // annotations are for the compiler alone; nobody needs them to run
public sealed interface Outcome<S extends Serializable, W extends Why> extends Serializable
    permits SolvedOutcome, UnsolvedOutcome {

  /**
   * An outcome that is solved.
   *
   * @param <S> what it holds
   * @param <W> what would tell why not
   * @param solution the solution
   * @return the outcome
   */
  static <S extends Serializable, W extends Why> Outcome<S, W> ofSolved(S solution) {
    return new SolvedOutcome<>(solution);
  }

  /**
   * An outcome without an answer.
   *
   * @param <S> what it would have held
   * @param <W> what tells why not
   * @param why why there is no answer
   * @return the outcome
   */
  static <S extends Serializable, W extends Why> Outcome<S, W> ofUnsolved(W why) {
    return new UnsolvedOutcome<>(why);
  }

  /**
   * Handles both cases. As the argument of {@code println} two lambdas do not compile, since its
   * overloads are then ambiguous: use {@link #map} and {@link #orElse} there.
   *
   * @param <R> what both cases are turned into; may be null
   * @param onSolved what to make of a solution
   * @param onUnsolved what to make of the lack of one
   * @return the result of whichever function applies
   */
  <R extends @Nullable Object> R match(
      Function<? super S, ? extends R> onSolved, Function<? super W, ? extends R> onUnsolved);

  /**
   * Whether there is a solution.
   *
   * @return true if solved
   */
  boolean isSolved();

  /**
   * The solution, if there is one.
   *
   * @return the solution; empty if there is none
   */
  Optional<S> solved();

  /**
   * Why there is no solution.
   *
   * @return the reason with its figures; empty if solved
   */
  Optional<W> why();

  /**
   * The solution, or something in its place.
   *
   * @param instead what to make of the lack of one
   * @return the solution, or what {@code instead} makes of the reason
   */
  S orElse(Function<? super W, ? extends S> instead);

  /**
   * The solution, for callers who know there is one.
   *
   * @return the solution
   * @throws NoAnswerException if there is none
   */
  S orElseThrow();

  /**
   * The same outcome with its solution turned into something else.
   *
   * @param <R> what the new outcome holds
   * @param change what to make of a solution
   * @return solved with the changed solution, or unsolved for the same reason
   */
  <R extends Serializable> Outcome<R, W> map(Function<? super S, ? extends R> change);
}
