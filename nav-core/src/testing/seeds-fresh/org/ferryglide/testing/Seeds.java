package org.ferryglide.testing;

/** The seed of every property test: none, so that each run of the soak draws anew. */
public final class Seeds {
  /** Empty means that jqwik draws a seed and prints it when a property fails. */
  public static final String SEED = "";

  private Seeds() {}
}
