package org.ferryglide.nav.fix;

import java.io.Serializable;

/**
 * Something observed that puts the observer on a line: a bearing, a transit, a distance off, a
 * depth contour, or any of them carried forward along a run.
 *
 * <p>A line knows what it observed and how uncertain that is. {@link FixSolver} makes a position of
 * several.
 *
 * <pre>{@code
 * PositionLine tower = BearingLine.of("tower", towerPosition, TrueBearing.ofDegrees(61), 3.0);
 * PositionLine leading = TransitLine.of("leading marks", front, rear);
 * PositionLine off = DistanceCircle.of("light", light, Distance.ofCables(8), Distance.ofCables(1));
 * }</pre>
 */
public sealed interface PositionLine extends Serializable
    permits BearingLine, DistanceCircle, TransitLine, StraightLine, TransferredLine {

  /**
   * What the paddler calls it.
   *
   * @return the name of the mark or line
   */
  String name();
}
