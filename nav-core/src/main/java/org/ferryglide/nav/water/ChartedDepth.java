package org.ferryglide.nav.water;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;

/**
 * A depth as the chart prints it: a sounding below the chart's datum, or a drying height above it.
 *
 * <pre>{@code
 * ChartedDepth bar = ChartedDepth.ofDryingHeight(Distance.ofMetres(1.6), "chart datum");
 * Distance draught = Distance.ofMetres(0.3);
 * bar.tideNeeded(draught, Distance.ofMetres(0.5)); // 2.4 m: afloat, with 0.5 m for the swell
 * bar.depth(Distance.ofMetres(3.5)); // 1.9 m of water at a tide of 3.5 m
 * }</pre>
 *
 * <p>Tables predict the tide alone. High air pressure and an offshore wind can leave the water
 * decimetres lower, and swell takes its height out of the depth: the margin is for those.
 *
 * @param belowDatum depth below the datum; negative where the ground dries
 * @param datum the level that the chart's depths are measured from, as the tide's datum names it
 */
public record ChartedDepth(Distance belowDatum, String datum) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes both parts; {@link #ofSounding} and {@link #ofDryingHeight} read better.
   *
   * @param belowDatum depth below the datum, negative where the ground dries
   * @param datum the chart's datum
   * @throws IllegalArgumentException if {@code datum} is empty
   */
  public ChartedDepth {
    Objects.requireNonNull(belowDatum, "belowDatum");
    if (datum.isEmpty()) {
      throw new IllegalArgumentException("datum of a charted depth must not be empty");
    }
  }

  /**
   * A sounding: ground that the datum's water would cover.
   *
   * @param depth depth below the datum, not negative
   * @param datum the chart's datum
   * @return the charted depth
   * @throws IllegalArgumentException if the depth is negative or {@code datum} is empty
   */
  public static ChartedDepth ofSounding(Distance depth, String datum) {
    Arguments.notNegative(depth.metres(), "sounding", "metres");
    return new ChartedDepth(depth, datum);
  }

  /**
   * A drying height: ground that stands above the datum, an underlined figure on the chart.
   *
   * @param height height above the datum, not negative
   * @param datum the chart's datum
   * @return the charted depth
   * @throws IllegalArgumentException if the height is negative or {@code datum} is empty
   */
  public static ChartedDepth ofDryingHeight(Distance height, String datum) {
    Arguments.notNegative(height.metres(), "drying height", "metres");
    return new ChartedDepth(Distance.ZERO.minus(height), datum);
  }

  /**
   * The depth of water over the ground.
   *
   * @param tide height of the tide above the datum
   * @return depth; negative where the ground stands dry, by how much
   */
  public Distance depth(Distance tide) {
    return belowDatum.plus(tide);
  }

  /**
   * The depth of water over the ground at a time.
   *
   * @param level the tide, above the same datum
   * @param instant when
   * @return depth, negative where the ground stands dry; empty if there are no data
   * @throws IllegalArgumentException if the tide has another datum
   */
  public Optional<Distance> depthAt(WaterLevel level, Instant instant) {
    requireSameDatum(level);
    return level.heightAt(instant).map(this::depth);
  }

  /**
   * The height of tide at which there is water enough.
   *
   * @param depthNeeded depth that the craft needs, not negative
   * @param margin margin for swell, air pressure, wind and error, not negative
   * @return height of the tide above the datum
   * @throws IllegalArgumentException if an argument is negative
   */
  public Distance tideNeeded(Distance depthNeeded, Distance margin) {
    return Distance.ofMetres(
        Arguments.notNegative(depthNeeded.metres(), "depth needed", "metres")
            + Arguments.notNegative(margin.metres(), "margin", "metres")
            - belowDatum.metres());
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
