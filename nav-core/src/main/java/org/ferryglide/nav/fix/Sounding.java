package org.ferryglide.nav.fix;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.ChartedDepth;
import org.ferryglide.nav.water.WaterLevel;

/**
 * A depth measured on the way, reduced to the datum of the chart.
 *
 * <pre>{@code
 * // 7.4 m by the lead, tide 2.1 m above datum: 5.3 m
 * Distance measured = Distance.ofMetres(7.4);
 * Sounding.reduced(reckonedThen, measured, Distance.ofMetres(2.1), "chart datum");
 * Sounding.reduced(reckonedThen, measured, tide, at); // the same, by a tide that knows its datum
 * }</pre>
 *
 * @param reckoned where it was taken by the reckoning
 * @param depth what the chart would print there, from the level that the tide was measured from
 */
public record Sounding(Position reckoned, ChartedDepth depth) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes both parts; {@link #reduced(Position, Distance, WaterLevel, Instant)} takes the depth as
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
   * @param measured the depth from the surface, at least 0
   * @param height height of the water above the datum at the time
   * @param datum the level that the tide is measured from
   * @return the sounding
   * @throws IllegalArgumentException if the depth is negative or the datum empty
   */
  public static Sounding reduced(
      Position reckoned, Distance measured, Distance height, String datum) {
    Arguments.notNegative(measured.metres(), "measured depth", "metres");
    return new Sounding(reckoned, new ChartedDepth(measured.minus(height), datum));
  }

  /**
   * Reduces a measured depth by the tide of the time.
   *
   * @param reckoned where it was taken by the reckoning
   * @param measured the depth from the surface, at least 0
   * @param tide the height of the water, above the datum that the sounding is reduced to
   * @param taken when it was taken
   * @return the sounding
   * @throws IllegalArgumentException if the depth is negative, or the tide has no data for that
   *     time
   */
  public static Sounding reduced(
      Position reckoned, Distance measured, WaterLevel tide, Instant taken) {
    Optional<Distance> height = tide.heightAt(taken);
    if (!height.isPresent()) {
      throw new IllegalArgumentException(
          "tide must have data when the sounding was taken, but "
              + tide.source()
              + " has none at "
              + taken);
    }
    return reduced(reckoned, measured, height.get(), tide.datum());
  }
}
