package org.ferryglide.nav.note;

import java.util.Objects;

/**
 * Thrown by {@link Outcome#orElseThrow} alone, when the caller was sure of an answer and there is
 * none.
 *
 * <pre>{@code
 * try {
 *   outcome.orElseThrow();
 * } catch (NoAnswerException e) {
 *   System.err.println(e.why().message());
 * }
 * }</pre>
 */
public final class NoAnswerException extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  private final Why why;

  /**
   * Wraps why there is no answer.
   *
   * @param why the reason
   */
  public NoAnswerException(Why why) {
    super(Objects.requireNonNull(why, "why").toString());
    this.why = why;
  }

  /**
   * Why there is no answer.
   *
   * @return the reason with its figures
   */
  public Why why() {
    return why;
  }
}
