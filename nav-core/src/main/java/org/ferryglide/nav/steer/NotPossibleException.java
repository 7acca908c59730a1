package org.ferryglide.nav.steer;

/**
 * Thrown by {@link Outcome#orElseThrow} alone, when the caller was sure of an answer and there is
 * none.
 *
 * <pre>{@code
 * try {
 *   outcome.orElseThrow();
 * } catch (NotPossibleException e) {
 *   Reason reason = e.notPossible().reason();
 * }
 * }</pre>
 */
public final class NotPossibleException extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  private final NotPossible notPossible;

  /**
   * Wraps what is not possible.
   *
   * @param notPossible why there is no answer
   */
  public NotPossibleException(NotPossible notPossible) {
    super(notPossible.toString());
    this.notPossible = notPossible;
  }

  /**
   * Why there is no answer.
   *
   * @return the reason with its figures
   */
  public NotPossible notPossible() {
    return notPossible;
  }
}
