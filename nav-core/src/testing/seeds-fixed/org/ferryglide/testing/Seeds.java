package org.ferryglide.testing;

/** The seed of every property test: fixed, so that the gate is repeatable. */
public final class Seeds {
  /**
   * Same values on every machine; {@code -Dseeds=fresh} and {@code -Dseeds=thorough} compile the
   * other editions.
   */
  public static final String SEED = "20261126";

  /**
   * By how much a slow property tries more often in the thorough soak than in the gate: {@code
   * tries = 40 * Seeds.MORE_IN_THE_SOAK}.
   */
  public static final int MORE_IN_THE_SOAK = 1;

  private Seeds() {}
}
