package org.ferryglide.examples.batch;

/**
 * A column that an operation adds, and how it is rounded unless full precision is wanted.
 *
 * @param name the heading
 * @param kind what the figures are
 * @param decimals digits after the point
 */
record Added(String name, Kind kind, int decimals) {

  /** What rounding must respect. */
  enum Kind {
    /** A direction in [0, 360): what rounds to 360 is written as 0. */
    DIRECTION,
    /** A longitude in [-180, 180): what rounds to 180 is written as -180. */
    LONGITUDE,
    /** Any other number. */
    NUMBER,
    /** Text that needs no quotation marks. */
    WORD
  }

  /** Nine decimals of a degree are a tenth of a millimetre on the ground. */
  static Added latitude(String name) {
    return new Added(name, Kind.NUMBER, 9);
  }

  static Added longitude(String name) {
    return new Added(name, Kind.LONGITUDE, 9);
  }

  static Added direction(String name) {
    return new Added(name, Kind.DIRECTION, 6);
  }

  static Added number(String name, int decimals) {
    return new Added(name, Kind.NUMBER, decimals);
  }

  static Added word(String name) {
    return new Added(name, Kind.WORD, 0);
  }
}
