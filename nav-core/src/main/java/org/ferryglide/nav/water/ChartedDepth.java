package org.ferryglide.nav.water;

import java.io.Serializable;
import java.time.Instant;
import java.util.OptionalDouble;
import org.ferryglide.nav.basics.Arguments;

/**
 * A depth as the chart prints it: a sounding below the chart's datum, or a drying height above it.
 *
 * <pre>{@code
 * ChartedDepth bar = ChartedDepth.ofDryingHeight(1.6, "chart datum");
 * bar.tideNeededMetres(0.3, 0.5); // 2.4: afloat in 0.3 m, with 0.5 m for the swell
 * double metres = bar.depthMetres(3.5); // 1.9 of water at a tide of 3.5 m
 * }</pre>
 *
 * <p>Tables predict the tide alone. High air pressure and an offshore wind can leave the water
 * decimetres lower, and swell takes its height out of the depth: the margin is for those.
 *
 * @param metresBelowDatum depth below the datum, metres; negative where the ground dries
 * @param datum the level that the chart's depths are measured from, as the tide's datum names it
 */
public record ChartedDepth(double metresBelowDatum, String datum) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes both parts; {@link #ofSounding} and {@link #ofDryingHeight} read better.
   *
   * @param metresBelowDatum depth below the datum, metres, negative where the ground dries
   * @param datum the chart's datum
   * @throws IllegalArgumentException if the depth is NaN or infinite, or {@code datum} is empty
   */
  public ChartedDepth {
    metresBelowDatum = Arguments.finite(metresBelowDatum, "charted depth", "metres");
    if (datum.isEmpty()) {
      throw new IllegalArgumentException("datum of a charted depth must not be empty");
    }
  }

  /**
   * A sounding: ground that the datum's water would cover.
   *
   * @param metres depth below the datum, metres, not negative
   * @param datum the chart's datum
   * @return the charted depth
   * @throws IllegalArgumentException if {@code metres} is NaN, infinite or negative
   */
  public static ChartedDepth ofSounding(double metres, String datum) {
    return new ChartedDepth(Arguments.notNegative(metres, "sounding", "metres"), datum);
  }

  /**
   * A drying height: ground that stands above the datum, an underlined figure on the chart.
   *
   * @param metres height above the datum, metres, not negative
   * @param datum the chart's datum
   * @return the charted depth
   * @throws IllegalArgumentException if {@code metres} is NaN, infinite or negative
   */
  public static ChartedDepth ofDryingHeight(double metres, String datum) {
    return new ChartedDepth(-Arguments.notNegative(metres, "drying height", "metres"), datum);
  }

  /**
   * The depth of water over the ground.
   *
   * @param tideMetres height of the tide above the datum, metres
   * @return depth, metres; negative where the ground stands dry, by how much; NaN for NaN
   */
  public double depthMetres(double tideMetres) {
    return metresBelowDatum + tideMetres;
  }

  /**
   * The depth of water over the ground at a time.
   *
   * @param level the tide, above the same datum
   * @param instant when
   * @return depth, metres, negative where the ground stands dry; empty if there are no data
   * @throws IllegalArgumentException if the tide has another datum
   */
  public OptionalDouble depthMetresAt(WaterLevel level, Instant instant) {
    requireSameDatum(level);
    OptionalDouble tide = level.heightMetresAt(instant);
    return tide.isPresent()
        ? OptionalDouble.of(depthMetres(tide.getAsDouble()))
        : OptionalDouble.empty();
  }

  /**
   * The height of tide at which there is water enough.
   *
   * @param depthNeededMetres depth that the craft needs, metres, not negative
   * @param marginMetres margin for swell, air pressure, wind and error, metres, not negative
   * @return height of the tide above the datum, metres
   * @throws IllegalArgumentException if an argument is NaN, infinite or negative
   */
  public double tideNeededMetres(double depthNeededMetres, double marginMetres) {
    return Arguments.notNegative(depthNeededMetres, "depth needed", "metres")
        + Arguments.notNegative(marginMetres, "margin", "metres")
        - metresBelowDatum;
  }

  /**
   * Refuses a tide that is measured from another level than this depth.
   *
   * @param level the tide
   * @throws IllegalArgumentException if the tide has another datum
   */
  public void requireSameDatum(WaterLevel level) {
    if (!level.datum().equals(datum)) {
      throw new IllegalArgumentException(
          "tide must be measured from the depth's datum, \""
              + datum
              + "\", but is measured from \""
              + level.datum()
              + "\"");
    }
  }
}
