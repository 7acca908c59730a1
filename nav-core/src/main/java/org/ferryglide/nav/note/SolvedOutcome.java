package org.ferryglide.nav.note;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The case in which there is an answer. */
record SolvedOutcome<S extends Serializable, W extends Why>(S solution) implements Outcome<S, W> {

  private static final long serialVersionUID = 1L;

  SolvedOutcome {
    Objects.requireNonNull(solution, "solution");
  }

  @Override
  public <R extends @Nullable Object> R match(
      Function<? super S, ? extends R> onSolved, Function<? super W, ? extends R> onUnsolved) {
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
  public Optional<W> why() {
    return Optional.empty();
  }

  @Override
  public S orElse(Function<? super W, ? extends S> instead) {
    return solution;
  }

  @Override
  public S orElseThrow() {
    return solution;
  }

  @Override
  public <R extends Serializable> Outcome<R, W> map(Function<? super S, ? extends R> change) {
    return new SolvedOutcome<>(change.apply(solution));
  }

  @Override
  public String toString() {
    return "solved: " + solution;
  }
}
