package org.ferryglide.nav.fix;

import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.position.Position;

/**
 * The line on which two marks stand one behind the other: the best position line there is, because
 * no compass takes part.
 *
 * <pre>{@code
 * TransitLine.of("beacon on church", beacon, church);
 * }</pre>
 *
 * @param name what the paddler calls it
 * @param front the nearer mark
 * @param rear the mark behind it
 * @param standardDeviationDegrees how far the marks may stand open and still seem in line, one
 *     standard deviation, degrees, above 0
 */
public record TransitLine(
    String name, Position front, Position rear, double standardDeviationDegrees)
    implements PositionLine {

  private static final long serialVersionUID = 1L;

  /**
   * What an eye without glasses takes for in line, degrees: common practice, no source.
   *
   * <p>An eye resolves about one minute of arc; a swell and marks that are not thin make it
   * several.
   */
  public static final double USUAL_STANDARD_DEVIATION_DEGREES = 0.1;

  /**
   * Takes all parts; {@link #of} reads better.
   *
   * @param name what the paddler calls it
   * @param front the nearer mark
   * @param rear the mark behind it
   * @param standardDeviationDegrees one standard deviation, degrees
   * @throws IllegalArgumentException if both marks are the same place or the standard deviation is
   *     not a finite number above 0
   */
  public TransitLine {
    Objects.requireNonNull(name, "name");
    Arguments.positive(standardDeviationDegrees, "standard deviation", "degrees");
    if (front.equals(rear)) {
      throw new IllegalArgumentException(
          "marks of a transit must be two places, but both were " + front);
    }
  }

  /**
   * Two marks seen in line, to the usual accuracy.
   *
   * @param name what the paddler calls it
   * @param front the nearer mark
   * @param rear the mark behind it
   * @return the position line
   * @throws IllegalArgumentException if both marks are the same place
   */
  public static TransitLine of(String name, Position front, Position rear) {
    return new TransitLine(name, front, rear, USUAL_STANDARD_DEVIATION_DEGREES);
  }

  /**
   * The same transit, seen more or less sharply.
   *
   * @param degrees one standard deviation of what seems in line, degrees, above 0
   * @return the position line
   * @throws IllegalArgumentException if {@code degrees} is not a finite number above 0
   */
  public TransitLine withStandardDeviationDegrees(double degrees) {
    return new TransitLine(name, front, rear, degrees);
  }

  @Override
  public <R> R match(Kinds<R> kinds) {
    return kinds.transit(this);
  }
}
