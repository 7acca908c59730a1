package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;

/**
 * One leg of a passage: from one way point to the next, and how it is paddled.
 *
 * <pre>{@code
 * for (PassageLeg leg : passage.legs()) {
 *   System.out.println(leg.from().name() + " to " + leg.to().name() + " " + leg.leg().length());
 * }
 * }</pre>
 */
public final class PassageLeg implements Serializable {
  private static final long serialVersionUID = 1L;

  private final int number;
  private final WayPoint from;
  private final WayPoint to;
  private final LegOptions options;
  private final Leg leg;

  PassageLeg(int number, WayPoint from, WayPoint to, LegOptions options) {
    this.number = number;
    this.from = from;
    this.to = to;
    this.options = options;
    this.leg =
        options.isGeodesic()
            ? GeodesicLeg.between(from.position(), to.position())
            : RhumbLeg.between(from.position(), to.position());
  }

  private PassageLeg(PassageLeg other, LegOptions options) {
    number = other.number;
    from = other.from;
    to = other.to;
    leg = other.leg;
    this.options = options;
  }

  /** The same leg along the same line, paddled otherwise. */
  PassageLeg withOptions(LegOptions otherwise) {
    return otherwise.isGeodesic() == options.isGeodesic()
        ? new PassageLeg(this, otherwise)
        : new PassageLeg(number, from, to, otherwise);
  }

  /**
   * Which leg it is.
   *
   * @return 1 for the first
   */
  public int number() {
    return number;
  }

  /**
   * Where it begins.
   *
   * @return the way point
   */
  public WayPoint from() {
    return from;
  }

  /**
   * Where it ends.
   *
   * @return the way point
   */
  public WayPoint to() {
    return to;
  }

  /**
   * How it is paddled.
   *
   * @return the options
   */
  public LegOptions options() {
    return options;
  }

  /**
   * The line itself, as laid off.
   *
   * @return a rhumb line unless the options ask for a geodesic
   */
  public Leg leg() {
    return leg;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PassageLeg that
        && number == that.number
        && from.equals(that.from)
        && to.equals(that.to)
        && options.equals(that.options);
  }

  @Override
  public int hashCode() {
    return Objects.hash(number, from, to, options);
  }

  @Override
  public String toString() {
    return "leg " + number + ", " + from.name() + " to " + to.name();
  }
}
