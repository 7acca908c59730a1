package org.ferryglide.nav.timing;

/** The two limits of a condition. */
final class Limits {
  private Limits() {}

  static void refuseBad(String name, String unit, double warn, double stop) {
    if (!(Math.abs(warn) <= Double.MAX_VALUE && Math.abs(stop) <= Double.MAX_VALUE)
        || warn == stop) {
      throw new IllegalArgumentException(
          "the limits of "
              + name
              + " must be two different finite numbers of "
              + unit
              + ", but the one that warns was "
              + warn
              + " and the one that stops "
              + stop);
    }
  }

  /** A figure as one says it: to three places at most, whole numbers without a decimal point. */
  static String rounded(double figure) {
    double told = Math.round(figure * 1000.0) / 1000.0;
    return told == Math.rint(told) && Math.abs(told) < 1e15
        ? Long.toString((long) told)
        : Double.toString(told);
  }
}
