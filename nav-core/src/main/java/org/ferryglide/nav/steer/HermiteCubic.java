package org.ferryglide.nav.steer;

/** A cubic through two values with their rates. */
final class HermiteCubic {
  private HermiteCubic() {}

  /** The value a part, in [0, 1], of the way from one to the other, which takes a span of time. */
  static double value(
      double part, double span, double from, double to, double fromRate, double toRate) {
    double rest = 1.0 - part;
    return from
        + (to - from) * part * part * (3.0 - 2.0 * part)
        + span * part * rest * (fromRate * rest - toRate * part);
  }

  /** How fast the value changes there. */
  static double rate(
      double part, double span, double from, double to, double fromRate, double toRate) {
    double rest = 1.0 - part;
    return (to - from) / span * 6.0 * part * rest
        + fromRate * rest * (1.0 - 3.0 * part)
        + toRate * part * (1.0 - 3.0 * rest);
  }
}
