package org.ferryglide.nav.reckon;

import java.io.Serializable;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Seconds;

/**
 * How large the errors of a passage are: one {@link Spread} for each {@link ErrorSource}.
 *
 * <p>The figures of {@link #usual} are common practice among sea kayakers and have no source; each
 * is meant to be replaced by one's own.
 *
 * <pre>{@code
 * ErrorModel mine =
 *     ErrorModel.usual()
 *         .with(ErrorSource.COMPASS, Spread.of(1.0, 2.0))
 *         .withPlotting(50_000, 300, 0.5);
 * }</pre>
 */
public final class ErrorModel implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final Duration ONE_HOUR = Duration.ofHours(1);

  private final EnumMap<ErrorSource, Spread> spreads;
  private final Duration interval;

  private ErrorModel(EnumMap<ErrorSource, Spread> spreads, Duration interval) {
    this.spreads = spreads;
    this.interval = interval;
  }

  /**
   * No error at all: a base to build on, and a check that without error a position is a point.
   *
   * @return the model, with an interval of one hour
   */
  public static ErrorModel none() {
    return new ErrorModel(new EnumMap<>(ErrorSource.class), ONE_HOUR);
  }

  /**
   * What a paddler with a deck compass and printed tables may expect; common practice, no source.
   *
   * <p>Constant and independent parts: compass 1° and 2°, variation 0.5° and 0, deviation 2° and 0,
   * leeway 2° and 2°, speed 7 % and 7 %, set 10° and 10°, rate 20 % and 15 %, and a current no
   * table shows 0.05 m/s and 0.05 m/s in each direction, so that slack or unknown water is not
   * taken for still; nothing for plotting, which depends on the chart (see {@link #withPlotting}).
   *
   * @return the model, with an interval of one hour
   */
  public static ErrorModel usual() {
    return none()
        .with(ErrorSource.COMPASS, Spread.of(1.0, 2.0))
        .with(ErrorSource.VARIATION, Spread.constant(0.5))
        .with(ErrorSource.DEVIATION, Spread.constant(2.0))
        .with(ErrorSource.LEEWAY, Spread.of(2.0, 2.0))
        .with(ErrorSource.SPEED, Spread.of(0.07, 0.07))
        .with(ErrorSource.STREAM_SET, Spread.of(10.0, 10.0))
        .with(ErrorSource.STREAM_RATE, Spread.of(0.20, 0.15))
        .with(ErrorSource.OTHER_CURRENT, Spread.of(0.05, 0.05));
  }

  /**
   * The same model with another figure.
   *
   * @param source which error
   * @param spread how large, in the unit of the source
   * @return a model with everything else the same
   * @throws IllegalArgumentException if {@code source} is {@link ErrorSource#START}, which is
   *     stated by a covariance, or the figure can only have been meant in another unit: above 1 for
   *     a fraction, 180 degrees, 10 metres a second or 100 km
   */
  public ErrorModel with(ErrorSource source, Spread spread) {
    if (source == ErrorSource.START) {
      throw new IllegalArgumentException(
          "the starting position's error is a covariance; see ErrorBudget.startingFrom");
    }
    source.requireLikely(Objects.requireNonNull(spread, "spread"));
    EnumMap<ErrorSource, Spread> changed = new EnumMap<>(ErrorSource.class);
    changed.putAll(spreads);
    if (spread.equals(Spread.NONE)) {
      changed.remove(source); // so that equal models are equal objects
    } else {
      changed.put(source, spread);
    }
    return new ErrorModel(changed, interval);
  }

  /**
   * The same model with the errors of work on a paper chart.
   *
   * <p>A course drawn between two pricked points of a straight edge of a given length is off by √2
   * times the pencil's error over that length; a position by the pencil's error times the scale.
   *
   * @param scaleDenominator 50000 for a chart of 1:50 000, above 0
   * @param straightEdgeMillimetres length of the straight edge along which the course is laid, or
   *     of the leg on the paper if that is shorter, above 0
   * @param pencilMillimetres how far a pricked point or a drawn line is off, one standard
   *     deviation, at least 0; 0.3 to 0.5 on a chart on deck (common practice, no source)
   * @return a model with everything else the same
   * @throws IllegalArgumentException if a value is out of range
   */
  public ErrorModel withPlotting(
      double scaleDenominator, double straightEdgeMillimetres, double pencilMillimetres) {
    Arguments.positive(scaleDenominator, "scale", "units on the ground for one on the chart");
    Arguments.positive(straightEdgeMillimetres, "straight edge", "millimetres");
    Arguments.notNegative(pencilMillimetres, "error of the pencil", "millimetres");
    double radians = Math.sqrt(2.0) * pencilMillimetres / straightEdgeMillimetres;
    return with(ErrorSource.PLOTTED_DIRECTION, Spread.constant(Math.toDegrees(radians)))
        .with(
            ErrorSource.PLOTTED_POSITION,
            Spread.constant(pencilMillimetres * scaleDenominator / 1000.0));
  }

  /**
   * The same model with another interval.
   *
   * @param newInterval after how long the independent parts are drawn anew, above 0
   * @return a model with everything else the same
   * @throws IllegalArgumentException if {@code newInterval} is not above 0
   */
  public ErrorModel withInterval(Duration newInterval) {
    if (newInterval.isNegative() || newInterval.isZero()) {
      throw new IllegalArgumentException("interval must be above 0, but was " + newInterval);
    }
    return new ErrorModel(spreads, newInterval);
  }

  /**
   * How large one error is.
   *
   * @param source which error
   * @return its spread, in the unit of the source; {@link Spread#NONE} if none was given
   */
  public Spread spread(ErrorSource source) {
    Spread spread = spreads.get(source);
    return spread == null ? Spread.NONE : spread;
  }

  /**
   * After how long the independent parts are drawn anew.
   *
   * @return the interval
   */
  public Duration interval() {
    return interval;
  }

  double intervalSeconds() {
    return Seconds.of(interval);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ErrorModel that
        && spreads.equals(that.spreads)
        && interval.equals(that.interval);
  }

  @Override
  public int hashCode() {
    return Objects.hash(spreads, interval);
  }

  @Override
  public String toString() {
    Map<ErrorSource, Spread> shown = spreads;
    return "errors " + shown + " drawn anew every " + interval;
  }
}
