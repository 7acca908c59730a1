package org.ferryglide.nav.teach;

/** Slips that several problems share. */
final class Slips {
  private Slips() {}

  /**
   * A bearing that follows by taking an angle east off: the angle left out, doubled, wrong way.
   *
   * @param problem the problem
   * @param result figure that follows, {@code from - angle}
   * @param from the bearing it follows from
   * @param angle the angle, degrees east
   * @param word what the angle is called
   */
  static Problem takingOff(Problem problem, String result, String from, String angle, String word) {
    return problem
        .slip(result, word + " with the wrong sign", Slip.COMMON, f -> f.of(from) + f.of(angle))
        .slip(result, word + " left out", Slip.COMMON, f -> f.of(from))
        .slip(result, word + " applied twice", Slip.RARE, f -> f.of(from) - 2.0 * f.of(angle));
  }

  /** The same where the angle is added. */
  static Problem adding(Problem problem, String result, String from, String angle, String word) {
    return problem
        .slip(result, word + " with the wrong sign", Slip.COMMON, f -> f.of(from) - f.of(angle))
        .slip(result, word + " left out", Slip.COMMON, f -> f.of(from))
        .slip(result, word + " applied twice", Slip.RARE, f -> f.of(from) + 2.0 * f.of(angle));
  }

  /** The rule in words for an angle taken off: west is added. */
  static String takeOff(String word, double degreesEast, String from) {
    return degreesEast < 0
        ? word + " is west: add it to " + from
        : word + " is east: take it from " + from;
  }

  /** The rule in words for an angle added: west is taken off. */
  static String add(String word, double degreesEast, String to) {
    return degreesEast < 0
        ? word + " is west: take it from " + to
        : word + " is east: add it to " + to;
  }
}
