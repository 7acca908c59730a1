package org.ferryglide.testing;

/** The seed of every property test: none, so that each run of the thorough soak draws anew. */
public final class Seeds {
  /** Empty means that jqwik draws a seed and prints it when a property fails. */
  public static final String SEED = "";

  /**
   * By how much a slow property tries more often in the thorough soak than in the gate: {@code
   * tries = 40 * Seeds.MORE_IN_THE_SOAK}.
   */
  public static final int MORE_IN_THE_SOAK = 25;

  private Seeds() {}
}
