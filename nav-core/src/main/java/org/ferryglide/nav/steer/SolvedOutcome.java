package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** The case in which there is an answer. */
record SolvedOutcome<S extends Serializable>(S solution) implements Outcome<S> {

  private static final long serialVersionUID = 1L;

  SolvedOutcome {
    Objects.requireNonNull(solution, "solution");
  }

  @Override
  public <R> R match(
      Function<? super S, ? extends R> onSolved,
      Function<? super NotPossible, ? extends R> onNotPossible) {
    return onSolved.apply(solution);
  }

  @Override
  public boolean isSolved() {
    return true;
  }

  @Override
  public Optional<S> solved() {
    return Optional.of(solution);
  }

  @Override
  public Optional<NotPossible> notPossible() {
    return Optional.empty();
  }

  @Override
  public S orElseThrow() {
    return solution;
  }

  @Override
  public <R extends Serializable> Outcome<R> map(Function<? super S, ? extends R> change) {
    return new SolvedOutcome<>(change.apply(solution));
  }

  @Override
  public String toString() {
    return "solved: " + solution;
  }
}
