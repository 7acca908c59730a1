package org.ferryglide.tide.height;

import java.io.Serializable;

/** A port's own curves at springs and at neaps, blended in every interval by its rise or fall. */
final class NormalisedShape implements PieceShape, Serializable {
  private static final long serialVersionUID = 1L;

  private final NormalisedCurve springs;
  private final NormalisedCurve neaps;

  /** Share of the spring curve in each interval, in [0, 1]. */
  private final double[] springShare;

  private final boolean[] rising;

  NormalisedShape(
      TideTable table, NormalisedCurve springs, NormalisedCurve neaps, MeanRanges ranges) {
    this.springs = springs;
    this.neaps = neaps;
    this.springShare = new double[table.pieces()];
    this.rising = new boolean[table.pieces()];
    for (int piece = 0; piece < springShare.length; piece++) {
      double range = Math.abs(table.height(piece + 1) - table.height(piece));
      springShare[piece] = Math.max(0.0, Math.min(1.0, ranges.springFraction(range)));
      rising[piece] = table.isHigh(piece + 1);
    }
  }

  @Override
  public double passed(int piece, double fraction) {
    double share = springShare[piece];
    double height =
        share * springs.part(rising[piece]).value(fraction)
            + (1.0 - share) * neaps.part(rising[piece]).value(fraction);
    return rising[piece] ? height : 1.0 - height;
  }

  @Override
  public double slope(int piece, double fraction) {
    double share = springShare[piece];
    double slope =
        share * springs.part(rising[piece]).slope(fraction)
            + (1.0 - share) * neaps.part(rising[piece]).slope(fraction);
    return rising[piece] ? slope : -slope;
  }

  @Override
  public double greatestSlopeChange(int piece) {
    double share = springShare[piece];
    return share * springs.part(rising[piece]).greatestSlopeChange()
        + (1.0 - share) * neaps.part(rising[piece]).greatestSlopeChange();
  }

  @Override
  public double nextBreak(int piece, double fraction) {
    return Math.min(
        springs.part(rising[piece]).nextPoint(fraction),
        neaps.part(rising[piece]).nextPoint(fraction));
  }

  @Override
  public boolean mayTurn() {
    return true;
  }
}
