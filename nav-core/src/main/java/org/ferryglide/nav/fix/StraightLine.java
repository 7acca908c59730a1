package org.ferryglide.nav.fix;

import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * A known line that the observer is on: a depth contour just crossed by the sounding lead, an edge
 * of a tide race, a straight shore at hand.
 *
 * <pre>{@code
 * StraightLine fiveMetres = StraightLine.through("5 m contour", a, b, Distance.ofMetres(40));
 * }</pre>
 *
 * @param name what the paddler calls it
 * @param point a point of the line, near the observer
 * @param direction the direction of the line there; its reciprocal is the same line
 * @param standardDeviation how far off the line the observer may be, one standard deviation, above
 *     0
 */
public record StraightLine(
    String name, Position point, TrueBearing direction, Distance standardDeviation)
    implements PositionLine {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts; {@link #through} reads better.
   *
   * @param name what the paddler calls it
   * @param point a point of the line
   * @param direction the direction of the line there
   * @param standardDeviation one standard deviation
   * @throws IllegalArgumentException if the standard deviation is not above 0
   */
  public StraightLine {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(point, "point");
    Objects.requireNonNull(direction, "direction");
    Arguments.positive(standardDeviation.metres(), "standard deviation", "metres");
  }

  /**
   * The line through two points of a chart.
   *
   * @param name what the paddler calls it
   * @param from one point
   * @param to another point
   * @param standardDeviation how far off the line the observer may be, above 0
   * @return the position line
   * @throws IllegalArgumentException if both points are the same place or the standard deviation is
   *     not above 0
   */
  public static StraightLine through(
      String name, Position from, Position to, Distance standardDeviation) {
    if (from.equals(to)) {
      throw new IllegalArgumentException("a line needs two points, but both were " + from);
    }
    return new StraightLine(
        name, from, GeodesicLeg.between(from, to).initialCourse(), standardDeviation);
  }

  @Override
  public <R> R match(Kinds<R> kinds) {
    return kinds.straight(this);
  }
}
