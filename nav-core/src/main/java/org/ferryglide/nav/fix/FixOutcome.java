package org.ferryglide.nav.fix;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What solving position lines comes to: a fix, or why there is none.
 *
 * <p>There are exactly these two cases, and neither is an exception. {@link #match} meets both at
 * once.
 *
 * <pre>{@code
 * String line = outcome.match(fix -> fix.position().toString(), noFix -> noFix.message());
 * }</pre>
 */
public final class FixOutcome implements Serializable {

  private static final long serialVersionUID = 1L;

  private final @Nullable Fix fix;
  private final @Nullable NoFix noFix;

  private FixOutcome(@Nullable Fix fix, @Nullable NoFix noFix) {
    this.fix = fix;
    this.noFix = noFix;
  }

  static FixOutcome of(Fix fix) {
    return new FixOutcome(Objects.requireNonNull(fix, "fix"), null);
  }

  static FixOutcome none(NoFix.Reason reason, String message) {
    return new FixOutcome(null, new NoFix(reason, message));
  }

  /**
   * Meets both cases.
   *
   * @param <R> what both cases are turned into
   * @param onFix what to make of a fix
   * @param onNoFix what to make of the lack of one
   * @return the result of whichever function applies
   */
  public <R> R match(
      Function<? super Fix, ? extends R> onFix, Function<? super NoFix, ? extends R> onNoFix) {
    return fix != null
        ? onFix.apply(fix)
        : onNoFix.apply(Objects.requireNonNull(noFix, "one of both is there"));
  }

  /**
   * Whether there is a fix.
   *
   * @return true if solved
   */
  public boolean isSolved() {
    return fix != null;
  }

  /**
   * The fix, if there is one.
   *
   * @return the fix; empty if there is none
   */
  public Optional<Fix> solved() {
    return Optional.ofNullable(fix);
  }

  /**
   * Why there is no fix.
   *
   * @return the reason; empty if there is a fix
   */
  public Optional<NoFix> noFix() {
    return Optional.ofNullable(noFix);
  }

  /**
   * The fix, for callers who know there is one.
   *
   * @return the fix
   * @throws IllegalStateException if there is none, with the reason as message
   */
  public Fix orElseThrow() {
    if (fix == null) {
      throw new IllegalStateException("no fix: " + match(Fix::toString, NoFix::message));
    }
    return fix;
  }

  @Override
  public String toString() {
    return match(Fix::toString, why -> "no fix: " + why.message());
  }
}
