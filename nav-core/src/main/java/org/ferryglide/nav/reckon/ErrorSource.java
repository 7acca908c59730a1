package org.ferryglide.nav.reckon;

import org.ferryglide.nav.basics.Arguments;

/**
 * Where the error of a reckoned position comes from, and the unit its standard deviation is stated
 * in.
 *
 * <pre>{@code
 * ErrorModel mine = ErrorModel.usual().with(ErrorSource.SPEED, Spread.of(0.05, 0.03));
 * }</pre>
 */
public enum ErrorSource {
  /** Reading and holding the compass; degrees. */
  COMPASS("compass reading", Unit.DEGREES),
  /** The variation applied; degrees. */
  VARIATION("variation", Unit.DEGREES),
  /** The deviation applied, or left out; degrees. */
  DEVIATION("deviation", Unit.DEGREES),
  /** Leeway allowed for; degrees. */
  LEEWAY("leeway", Unit.DEGREES),
  /** Speed through the water; a fraction of it, 0.1 for ten per cent. */
  SPEED("speed", Unit.FRACTION),
  /** The set of the stream; degrees. */
  STREAM_SET("set of the stream", Unit.DEGREES),
  /** The rate of the stream; a fraction of it. */
  STREAM_RATE("rate of the stream", Unit.FRACTION),
  /** A current that no table shows; metres a second, in each of two directions. */
  OTHER_CURRENT("current not in the tables", Unit.METRES_A_SECOND),
  /** The direction of a course as drawn or measured on the chart; degrees. */
  PLOTTED_DIRECTION("plotted direction", Unit.DEGREES),
  /** A position as pricked or measured on the chart; metres, in each of two directions. */
  PLOTTED_POSITION("plotted position", Unit.METRES),
  /** The position the reckoning started from; stated by its covariance, never by a model. */
  START("starting position", Unit.METRES);

  /** What a standard deviation is counted in, and beyond what it is a slip of the unit. */
  private enum Unit {
    DEGREES("degrees", "°", 180.0),
    FRACTION("as a fraction, 0.1 for ten per cent", "%", 1.0),
    METRES_A_SECOND("metres a second", "m/s", 10.0),
    METRES("metres", "m", 100_000.0);

    private final String words;
    private final String sign;
    private final double most;

    Unit(String words, String sign, double most) {
      this.words = words;
      this.sign = sign;
      this.most = most;
    }
  }

  private final String text;
  private final Unit unit;

  ErrorSource(String text, Unit unit) {
    this.text = text;
    this.unit = unit;
  }

  /** Refuses what can only have been meant in another unit. */
  void requireLikely(Spread spread) {
    Arguments.within(spread.constant(), 0.0, unit.most, "constant error of " + text, unit.words);
    Arguments.within(
        spread.independent(), 0.0, unit.most, "independent error of " + text, unit.words);
  }

  /**
   * The source in words.
   *
   * @return a few words without a full stop
   */
  public String text() {
    return text;
  }

  /**
   * The unit that people write its standard deviation in.
   *
   * @return {@code °}, {@code %} (of which 10 is the fraction 0.1), {@code m/s} or {@code m}
   */
  public String unitSign() {
    return unit.sign;
  }
}
