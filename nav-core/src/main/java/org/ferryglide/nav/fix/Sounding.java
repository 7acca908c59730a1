package org.ferryglide.nav.fix;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.position.Position;

/**
 * A depth measured on the way, reduced to the datum of the chart.
 *
 * <pre>{@code
 * Sounding.reduced(reckonedThen, 7.4, 2.1); // 7.4 m by the lead, tide 2.1 m above datum: 5.3 m
 * }</pre>
 *
 * @param reckoned where it was taken by the reckoning
 * @param chartedMetres the depth below chart datum, metres, drying heights negative
 */
public record Sounding(Position reckoned, double chartedMetres) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes both parts; {@link #reduced} takes the depth as measured.
   *
   * @param reckoned where it was taken
   * @param chartedMetres the depth below chart datum
   * @throws IllegalArgumentException if the depth is NaN or infinite
   */
  public Sounding {
    Objects.requireNonNull(reckoned, "reckoned");
    chartedMetres = Arguments.finite(chartedMetres, "depth", "metres");
  }

  /**
   * Reduces a measured depth.
   *
   * @param reckoned where it was taken by the reckoning
   * @param measuredMetres the depth from the surface, metres, at least 0
   * @param tideMetres height of the water above chart datum at the time, metres
   * @return the sounding
   * @throws IllegalArgumentException if a number is NaN or infinite, or the depth negative
   */
  public static Sounding reduced(Position reckoned, double measuredMetres, double tideMetres) {
    return new Sounding(
        reckoned,
        Arguments.notNegative(measuredMetres, "measured depth", "metres")
            - Arguments.finite(tideMetres, "height of tide", "metres"));
  }
}
