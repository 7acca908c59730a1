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

  /**
   * Does what belongs to this kind of line; a new kind adds a method to {@link Kinds}, so that the
   * compiler names every place that has to know it.
   *
   * @param <R> what comes of it
   * @param kinds one function for each kind
   * @return the result of the one for this kind
   */
  <R> R match(Kinds<R> kinds);

  /**
   * One function for each kind of position line.
   *
   * <pre>{@code
   * String what = line.match(names); // where names gives a word for each kind
   * }</pre>
   *
   * @param <R> what comes of each
   */
  interface Kinds<R> {

    /**
     * For a bearing of a mark.
     *
     * @param line the line
     * @return the result
     */
    R bearing(BearingLine line);

    /**
     * For a distance off a mark.
     *
     * @param line the line
     * @return the result
     */
    R distance(DistanceCircle line);

    /**
     * For two marks in line.
     *
     * @param line the line
     * @return the result
     */
    R transit(TransitLine line);

    /**
     * For a known line.
     *
     * @param line the line
     * @return the result
     */
    R straight(StraightLine line);

    /**
     * For a line carried forward along a run.
     *
     * @param line the line
     * @return the result
     */
    R transferred(TransferredLine line);
  }
}
