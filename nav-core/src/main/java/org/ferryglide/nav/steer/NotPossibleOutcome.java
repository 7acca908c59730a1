package org.ferryglide.nav.steer;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** The case in which there is no answer. */
record NotPossibleOutcome<S extends Serializable>(NotPossible why) implements Outcome<S> {

  private static final long serialVersionUID = 1L;

  NotPossibleOutcome {
    Objects.requireNonNull(why, "why");
  }

  @Override
  public <R> R match(
      Function<? super S, ? extends R> onSolved,
      Function<? super NotPossible, ? extends R> onNotPossible) {
    return onNotPossible.apply(why);
  }

  @Override
  public boolean isSolved() {
    return false;
  }

  @Override
  public Optional<S> solved() {
    return Optional.empty();
  }

  @Override
  public Optional<NotPossible> notPossible() {
    return Optional.of(why);
  }

  @Override
  public S orElseThrow() {
    throw new NotPossibleException(why);
  }

  @Override
  public <R extends Serializable> Outcome<R> map(Function<? super S, ? extends R> change) {
    return new NotPossibleOutcome<>(why);
  }

  @Override
  public String toString() {
    return why.toString();
  }
}
