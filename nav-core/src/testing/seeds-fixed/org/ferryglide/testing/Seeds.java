package org.ferryglide.testing;

/** The seed of every property test: fixed, so that the gate is repeatable. */
public final class Seeds {
  /** Same values on every machine; {@code -Dseeds=fresh} compiles the other edition. */
  public static final String SEED = "20261126";

  private Seeds() {}
}
