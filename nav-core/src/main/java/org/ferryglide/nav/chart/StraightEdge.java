package org.ferryglide.nav.chart;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;

/**
 * An edge laid between two marks on paper, and how far the line drawn along it may be off in
 * direction.
 *
 * <pre>{@code
 * StraightEdge shortEdge = new StraightEdge(100.0, 0.5); // millimetres
 * StraightEdge longEdge = new StraightEdge(400.0, 0.5);
 * shortEdge.bearingErrorDegrees(250.0); // 0.41
 * longEdge.bearingErrorDegrees(250.0); // 0.16
 * longEdge.bearingErrorDegrees(20.0); // 2.0: a short leg is no better for a long edge
 * }</pre>
 *
 * <p>Each end of the line misses its mark by an amount whose standard deviation is the alignment
 * error. The direction is held over the drawn leg or over the edge, whichever is shorter: an edge
 * that does not reach from mark to mark has to be moved along its own line, and what it can hold is
 * its own length. The error of direction is √2 alignment errors over that length.
 *
 * @param lengthMillimetres how long the edge is, millimetres, above 0
 * @param alignmentMillimetres how far each end of a line misses its mark, standard deviation,
 *     millimetres, at least 0
 */
public record StraightEdge(double lengthMillimetres, double alignmentMillimetres)
    implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double BOTH_ENDS = Math.sqrt(2.0);

  /**
   * Describes an edge.
   *
   * @param lengthMillimetres how long it is, millimetres, above 0
   * @param alignmentMillimetres how far each end of a line misses its mark, standard deviation,
   *     millimetres, at least 0
   * @throws IllegalArgumentException if a number is NaN, infinite or out of range
   */
  public StraightEdge {
    lengthMillimetres = Arguments.positive(lengthMillimetres, "length of an edge", "millimetres");
    alignmentMillimetres =
        Arguments.notNegative(alignmentMillimetres, "alignment error", "millimetres");
  }

  /**
   * How far the direction of a line drawn along this edge may be off.
   *
   * @param legMillimetres length of the drawn leg, millimetres, above 0
   * @return standard deviation of the direction, degrees, at most 90
   * @throws IllegalArgumentException if the length is NaN, infinite or not above 0
   */
  public double bearingErrorDegrees(double legMillimetres) {
    return bearingErrorDegrees(
        lengthMillimetres,
        alignmentMillimetres,
        Arguments.positive(legMillimetres, "length of a drawn leg", "millimetres"));
  }

  /**
   * The same on plain doubles.
   *
   * @param edgeMillimetres length of the edge, millimetres
   * @param alignmentMillimetres how far each end of a line misses its mark, standard deviation,
   *     millimetres
   * @param legMillimetres length of the drawn leg, millimetres; NaN gives NaN
   * @return standard deviation of the direction, degrees
   */
  public static double bearingErrorDegrees(
      double edgeMillimetres, double alignmentMillimetres, double legMillimetres) {
    double held = Math.min(edgeMillimetres, legMillimetres);
    return Math.toDegrees(Math.atan(BOTH_ENDS * alignmentMillimetres / held));
  }
}
