package org.ferryglide.tide.height;

import java.io.Serializable;
import org.ferryglide.nav.measure.Distance;

/** A port's own curves at springs and at neaps, blended in every interval by its rise or fall. */
final class NormalisedShape implements SegmentShape, Serializable {
  private static final long serialVersionUID = 1L;

  private final NormalisedCurve springs;
  private final NormalisedCurve neaps;

  /** Share of the spring curve in each interval, in [0, 1]. */
  private final double[] springFraction;

  private final boolean[] rising;

  NormalisedShape(
      TideTable table, NormalisedCurve springs, NormalisedCurve neaps, MeanRanges ranges) {
    this.springs = springs;
    this.neaps = neaps;
    this.springFraction = new double[table.segments()];
    this.rising = new boolean[table.segments()];
    for (int segment = 0; segment < springFraction.length; segment++) {
      double range = Math.abs(table.height(segment + 1) - table.height(segment));
      springFraction[segment] =
          Math.max(0.0, Math.min(1.0, ranges.springFraction(Distance.ofMetres(range))));
      rising[segment] = table.isHigh(segment + 1);
    }
  }

  @Override
  public double passed(int segment, double fraction) {
    double share = springFraction[segment];
    double height =
        share * springs.part(rising[segment]).value(fraction)
            + (1.0 - share) * neaps.part(rising[segment]).value(fraction);
    return rising[segment] ? height : 1.0 - height;
  }

  @Override
  public double slope(int segment, double fraction) {
    double share = springFraction[segment];
    double slope =
        share * springs.part(rising[segment]).slope(fraction)
            + (1.0 - share) * neaps.part(rising[segment]).slope(fraction);
    return rising[segment] ? slope : -slope;
  }

  @Override
  public double greatestSlopeChange(int segment) {
    double share = springFraction[segment];
    return share * springs.part(rising[segment]).greatestSlopeChange()
        + (1.0 - share) * neaps.part(rising[segment]).greatestSlopeChange();
  }

  @Override
  public double nextBreak(int segment, double fraction) {
    return Math.min(
        springs.part(rising[segment]).nextPoint(fraction),
        neaps.part(rising[segment]).nextPoint(fraction));
  }

  @Override
  public boolean mayTurn() {
    return true;
  }
}
