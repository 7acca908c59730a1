package org.ferryglide.tide.harmonic;

/**
 * Which of Schureman's node factors a constituent has: how it grows and shrinks, and runs early and
 * late, as the moon's orbit tilts over 18.6 years.
 *
 * <p>The formulas are those of Schureman (1958), quoted at {@link SchuremanNodes}. A compound needs
 * none: it takes those of its parts.
 */
enum NodeFamily {
  /** Not touched by the moon's node: S2, P1, SA and all other tides of the sun. */
  NONE,
  /** The lunar monthly MM. */
  MM,
  /** The lunar fortnightly MF. */
  MF,
  /** O1, Q1, 2Q1, ρ1, σ1. */
  O1,
  /** M1, with the angle Q that follows the moon's perigee. */
  M1,
  /** J1, θ1, χ1. */
  J1,
  /** OO1. */
  OO1,
  /** K1, of the moon and the sun together. */
  K1,
  /** M2, N2, 2N2, μ2, ν2, λ2. */
  M2,
  /** L2, with the angle R that follows the moon's perigee. */
  L2,
  /** K2, of the moon and the sun together. */
  K2,
  /** M3. */
  M3,
  /** Schureman's list has no factor for it: his scheme refuses the constituent. */
  NOT_LISTED
}
