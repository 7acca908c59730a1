package org.ferryglide.nav.fix;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;
import java.util.OptionalDouble;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.ChartedDepth;
import org.ferryglide.nav.water.WaterLevel;

/**
 * A depth measured on the way, reduced to the datum of the chart.
 *
 * <pre>{@code
 * // 7.4 m by the lead, tide 2.1 m above datum: 5.3 m
 * Sounding.reduced(reckonedThen, 7.4, 2.1, "chart datum");
 * Sounding.reduced(reckonedThen, 7.4, tide, at); // the same, by a tide that knows its datum
 * }</pre>
 *
 * @param reckoned where it was taken by the reckoning
 * @param depth what the chart would print there, from the level that the tide was measured from
 */
public record Sounding(Position reckoned, ChartedDepth depth) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes both parts; {@link #reduced(Position, double, WaterLevel, Instant)} takes the depth as
   * measured.
   *
   * @param reckoned where it was taken
   * @param depth the depth below the datum
   */
  public Sounding {
    Objects.requireNonNull(reckoned, "reckoned");
    Objects.requireNonNull(depth, "depth");
  }

  /**
   * Reduces a measured depth.
   *
   * @param reckoned where it was taken by the reckoning
   * @param measuredMetres the depth from the surface, metres, at least 0
   * @param tideMetres height of the water above the datum at the time, metres
   * @param datum the level that the tide is measured from
   * @return the sounding
   * @throws IllegalArgumentException if a number is NaN or infinite, the depth negative, or the
   *     datum empty
   */
  public static Sounding reduced(
      Position reckoned, double measuredMetres, double tideMetres, String datum) {
    return new Sounding(
        reckoned,
        new ChartedDepth(
            Arguments.notNegative(measuredMetres, "measured depth", "metres")
                - Arguments.finite(tideMetres, "height of tide", "metres"),
            datum));
  }

  /**
   * Reduces a measured depth by the tide of the time.
   *
   * @param reckoned where it was taken by the reckoning
   * @param measuredMetres the depth from the surface, metres, at least 0
   * @param tide the height of the water, above the datum that the sounding is reduced to
   * @param taken when it was taken
   * @return the sounding
   * @throws IllegalArgumentException if the depth is NaN, infinite or negative, or the tide has no
   *     data for that time
   */
  public static Sounding reduced(
      Position reckoned, double measuredMetres, WaterLevel tide, Instant taken) {
    OptionalDouble height = tide.heightMetresAt(taken);
    if (!height.isPresent()) {
      throw new IllegalArgumentException(
          "tide must have data when the sounding was taken, but "
              + tide.source()
              + " has none at "
              + taken);
    }
    return reduced(reckoned, measuredMetres, height.getAsDouble(), tide.datum());
  }
}
