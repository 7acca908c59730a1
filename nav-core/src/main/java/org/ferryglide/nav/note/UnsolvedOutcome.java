package org.ferryglide.nav.note;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The case in which there is no answer; it keeps why not. */
record UnsolvedOutcome<S extends Serializable, W extends Why>(W reason) implements Outcome<S, W> {

  private static final long serialVersionUID = 1L;

  UnsolvedOutcome {
    Objects.requireNonNull(reason, "why");
  }

  @Override
  public <R extends @Nullable Object> R match(
      Function<? super S, ? extends R> onSolved, Function<? super W, ? extends R> onUnsolved) {
    return onUnsolved.apply(reason);
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
  public Optional<W> why() {
    return Optional.of(reason);
  }

  @Override
  public S orElse(Function<? super W, ? extends S> instead) {
    return instead.apply(reason);
  }

  @Override
  public S orElseThrow() {
    throw new NoAnswerException(reason);
  }

  @Override
  public <R extends Serializable> Outcome<R, W> map(Function<? super S, ? extends R> change) {
    return new UnsolvedOutcome<>(reason);
  }

  @Override
  public String toString() {
    return reason.toString();
  }
}
