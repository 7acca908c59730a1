package org.ferryglide.nav.passage;

/**
 * Normal deviates of one draw: the same seed and number give the same, whatever else was drawn.
 *
 * <p>Bits by SplitMix64, Steele, Lea and Flood (2014), doi 10.1145/2660193.2660195; deviates by the
 * polar method, Marsaglia and Bray (1964), doi 10.1137/1006063. {@link java.util.Random} does the
 * same behind a lock and with slower logarithms.
 */
final class Normals {
  /** The odd number nearest to 2^64 over the golden ratio. */
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;

  /** So many bits make a fraction. */
  private static final int BITS = 53;

  private long state;
  private double kept;
  private boolean isKept;

  Normals(long seed, long number) {
    state = mixed(seed + number * GOLDEN);
  }

  private static long mixed(long bits) {
    long z = (bits ^ (bits >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** In [-1, 1). */
  private double side() {
    state += GOLDEN;
    return (mixed(state) >> (64 - BITS - 1)) * 0x1.0p-53;
  }

  /** The next deviate, of mean 0 and variance 1. */
  double next() {
    if (isKept) {
      isKept = false;
      return kept;
    }
    while (true) {
      double x = side();
      double y = side();
      double square = x * x + y * y;
      if (square > 0.0 && square < 1.0) {
        double factor = Math.sqrt(-2.0 * Math.log(square) / square);
        kept = y * factor;
        isKept = true;
        return x * factor;
      }
    }
  }
}
