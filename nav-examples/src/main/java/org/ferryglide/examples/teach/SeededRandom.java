package org.ferryglide.examples.teach;

/**
 * Numbers from a seed, the same on every machine and in every version of Java: the library's own
 * generators promise that for no bounded number.
 *
 * <p>Source: G. L. Steele, D. Lea, C. H. Flood, Fast splittable pseudorandom number generators,
 * OOPSLA 2014, doi:10.1145/2714064.2660195; mixing constants of variant 13 of D. Stafford, as
 * there.
 */
final class SeededRandom {
  private static final long GOLDEN_GAMMA = 0x9E3779B97F4A7C15L;
  private static final double PARTS = 0x1.0p53;

  private long state;

  SeededRandom(long seed) {
    this.state = seed;
  }

  private long next() {
    state += GOLDEN_GAMMA;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  double nextDouble(double from, double to) {
    return from + (next() >>> 11) / PARTS * (to - from);
  }

  /** A whole number, {@code to} left out; so few are asked for that the bias does not count. */
  int nextInt(int from, int to) {
    return from + (int) Long.remainderUnsigned(next(), (long) to - from);
  }

  int nextInt(int to) {
    return nextInt(0, to);
  }

  boolean nextBoolean() {
    return next() < 0L;
  }
}
