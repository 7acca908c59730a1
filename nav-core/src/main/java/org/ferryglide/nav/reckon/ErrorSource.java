package org.ferryglide.nav.reckon;

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
  COMPASS("compass reading"),
  /** The variation applied; degrees. */
  VARIATION("variation"),
  /** The deviation applied, or left out; degrees. */
  DEVIATION("deviation"),
  /** Leeway allowed for; degrees. */
  LEEWAY("leeway"),
  /** Speed through the water; a fraction of it, 0.1 for ten per cent. */
  SPEED("speed"),
  /** The set of the stream; degrees. */
  STREAM_SET("set of the stream"),
  /** The rate of the stream; a fraction of it. */
  STREAM_RATE("rate of the stream"),
  /** A current that no table shows; metres a second, in each of two directions. */
  OTHER_CURRENT("current not in the tables"),
  /** The direction of a course as drawn or measured on the chart; degrees. */
  PLOTTED_DIRECTION("plotted direction"),
  /** A position as pricked or measured on the chart; metres, in each of two directions. */
  PLOTTED_POSITION("plotted position"),
  /** The position the reckoning started from; stated by its covariance, never by a model. */
  START("starting position");

  private final String text;

  ErrorSource(String text) {
    this.text = text;
  }

  /**
   * The source in words.
   *
   * @return a few words without a full stop
   */
  public String text() {
    return text;
  }
}
