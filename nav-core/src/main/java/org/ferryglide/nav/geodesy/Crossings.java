package org.ferryglide.nav.geodesy;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * Where two legs or lines meet: none, one or several points, in their order along the first.
 *
 * <pre>{@code
 * Crossings crossings = leg.crossings(tideRace);
 * for (Crossings.Crossing crossing : crossings.points()) {
 *   crossing.alongFirst().inNauticalMiles(1);
 * }
 * }</pre>
 */
public final class Crossings implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * One point where two lines meet.
   *
   * <pre>{@code
   * Crossings.Crossing first = leg.crossings(other).points().get(0);
   * first.angleDegrees(); // 90.0 when the other line crosses from port to starboard at right angles
   * }</pre>
   *
   * @param position where they meet
   * @param alongFirst distance along the first line, from its start or origin
   * @param alongSecond distance along the second line
   * @param angleDegrees the turn from the first line's course to the second's, degrees in (-180,
   *     180], clockwise positive
   */
  public record Crossing(
      Position position, Distance alongFirst, Distance alongSecond, double angleDegrees)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * Takes all parts; {@link Leg#crossings} finds them.
     *
     * @param position where they meet
     * @param alongFirst distance along the first line
     * @param alongSecond distance along the second line
     * @param angleDegrees the turn from the first course to the second, degrees in (-180, 180]
     * @throws IllegalArgumentException if the angle is NaN or out of range
     */
    public Crossing {
      Objects.requireNonNull(position, "position");
      Objects.requireNonNull(alongFirst, "alongFirst");
      Objects.requireNonNull(alongSecond, "alongSecond");
      if (!(angleDegrees > -180.0 && angleDegrees <= 180.0)) { // written so that NaN fails
        throw new IllegalArgumentException(
            "angle of a crossing must be in (-180, 180] degrees, but was " + angleDegrees);
      }
      angleDegrees += 0.0; // so that equal angles are equal objects
    }
  }

  private final List<Crossing> points;
  private final boolean together;

  Crossings(List<Crossing> points, boolean together) {
    this.points = Collections.unmodifiableList(new ArrayList<>(points));
    this.together = together;
  }

  /**
   * The points, in their order along the first line.
   *
   * @return an unmodifiable list; empty if the lines do not meet
   */
  public List<Crossing> points() {
    return points;
  }

  /**
   * Whether the lines run together for a stretch, within a micrometre, as a leg and its reverse do.
   * Points of such a stretch are not listed.
   *
   * @return whether they run together
   */
  public boolean runTogether() {
    return together;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Crossings that
        && points.equals(that.points)
        && together == that.together;
  }

  @Override
  public int hashCode() {
    return 31 * points.hashCode() + Boolean.hashCode(together);
  }

  /** The points, and whether the lines run together. */
  @Override
  public String toString() {
    return points + (together ? ", running together" : "");
  }
}
