package org.ferryglide.nav.grid;

/**
 * How fine a grid reference is: the side of the square it names.
 *
 * <pre>{@code
 * GridPrecision.HUNDRED_METRES.figures(); // 6: three of easting, three of northing
 * GridPrecision.HUNDRED_METRES.sideMetres(); // 100
 * }</pre>
 */
public enum GridPrecision {
  /** Letters alone. */
  HUNDRED_KILOMETRES(100_000, 0),
  /** Two figures. */
  TEN_KILOMETRES(10_000, 1),
  /** Four figures. */
  KILOMETRE(1_000, 2),
  /** Six figures: what is read off a land map by eye. */
  HUNDRED_METRES(100, 3),
  /** Eight figures. */
  TEN_METRES(10, 4),
  /** Ten figures. */
  METRE(1, 5);

  private static final GridPrecision[] BY_DIGITS = values();

  private final int sideMetres;
  private final int digits;

  GridPrecision(int sideMetres, int digits) {
    this.sideMetres = sideMetres;
    this.digits = digits;
  }

  /**
   * The side of the square.
   *
   * @return metres
   */
  public int sideMetres() {
    return sideMetres;
  }

  /**
   * How many figures follow the letters, easting and northing together.
   *
   * @return 0 to 10
   */
  public int figures() {
    return 2 * digits;
  }

  /** Figures of easting alone. */
  int digits() {
    return digits;
  }

  static GridPrecision ofDigits(int digits) {
    return BY_DIGITS[digits];
  }
}
