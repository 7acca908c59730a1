package org.ferryglide.nav.landfall;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.reckon.ErrorEllipse;
import org.ferryglide.nav.reckon.EstimatedPosition;

/**
 * A search from the likeliest place outward: legs of one, one, two, two, three, three … track
 * spacings, each turned a right angle to starboard from the last.
 *
 * <p>The first leg lies along the longest axis of the error ellipse. Tracks are twice the
 * visibility apart, less an overlap of a tenth for tracks not held exactly (common practice, no
 * source). Legs are over the ground: in a stream each is steered like any other leg.
 *
 * <pre>{@code
 * ExpandingSquare square = ExpandingSquare.about(reckoned, Distance.ofMetres(500), 0.9);
 * square.legs().get(0).course();
 * square.length(); // all legs together
 * square.chance(); // what it finds
 * }</pre>
 *
 * @see "IAMSAR Manual, volume III (IMO and ICAO), expanding square search (SS)"
 */
public final class ExpandingSquare implements Serializable {

  private static final long serialVersionUID = 1L;

  /** Tracks are this share of twice the visibility apart. */
  private static final double SPACING = 0.9;

  private static final int MOST_LEGS = 80;

  private final List<RhumbLeg> legs;
  private final Distance spacing;
  private final double chance;

  private ExpandingSquare(List<RhumbLeg> legs, Distance spacing, double chance) {
    this.legs = List.copyOf(legs);
    this.spacing = spacing;
    this.chance = chance;
  }

  /**
   * A search sized to an ellipse and a visibility.
   *
   * @param likeliest where the target is likeliest to be, relative to the craft's reckoned place,
   *     with its uncertainty; the search starts there
   * @param visibility how far off the target is seen, above 0
   * @param wantedChance the chance of finding it that is enough, in (0, 1)
   * @return the search, ended as soon as it finds the target with that chance, and after 80 legs at
   *     the latest ({@link #chance} then says what it comes to)
   * @throws IllegalArgumentException if a value is out of range
   */
  public static ExpandingSquare about(
      EstimatedPosition likeliest, Distance visibility, double wantedChance) {
    double sight = Arguments.positive(visibility.metres(), "visibility", "metres");
    if (!(wantedChance > 0.0 && wantedChance < 1.0)) { // written so that NaN fails
      throw new IllegalArgumentException(
          "wanted chance must be in (0, 1), but was " + wantedChance);
    }
    ErrorEllipse one = likeliest.covariance().ellipse(ErrorEllipse.ONE_STANDARD_DEVIATION);
    SweptArea area =
        new SweptArea(one.semiMajorAxis().metres(), one.semiMinorAxis().metres(), sight);
    double step = 2.0 * sight * SPACING;
    TrueBearing course = one.direction();
    List<RhumbLeg> legs = new ArrayList<>();
    double along = 0.0;
    double across = 0.0;
    for (int i = 0; i < MOST_LEGS && area.share() < wantedChance; i++) {
      double length = step * (i / 2 + 1);
      double nextAlong = along + (i % 4 == 0 ? length : i % 4 == 2 ? -length : 0.0);
      double nextAcross = across + (i % 4 == 1 ? length : i % 4 == 3 ? -length : 0.0);
      area.sweep(along, across, nextAlong, nextAcross);
      RhumbLeg leg =
          RhumbLeg.from(
              legs.isEmpty() ? likeliest.position() : legs.get(i - 1).end(),
              course.turnedBy(90.0 * i),
              Distance.ofMetres(length));
      legs.add(leg);
      along = nextAlong;
      across = nextAcross;
    }
    return new ExpandingSquare(legs, Distance.ofMetres(step), area.share());
  }

  /**
   * The legs in order.
   *
   * @return rhumb legs, each starting where the last ended; empty if the target is in sight of the
   *     start with the wanted chance; unmodifiable
   */
  public List<RhumbLeg> legs() {
    return legs;
  }

  /**
   * The distance between neighbouring tracks.
   *
   * @return the track spacing
   */
  public Distance trackSpacing() {
    return spacing;
  }

  /**
   * How long the search is.
   *
   * @return all legs together
   */
  public Distance length() {
    Distance sum = Distance.ZERO;
    for (RhumbLeg leg : legs) {
      sum = sum.plus(leg.length());
    }
    return sum;
  }

  /**
   * The chance that the search comes within sight of the target.
   *
   * @return a chance in [0, 1], to about a hundredth
   */
  public double chance() {
    return chance;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ExpandingSquare that
        && legs.equals(that.legs)
        && spacing.equals(that.spacing)
        && Double.compare(chance, that.chance) == 0;
  }

  @Override
  public int hashCode() {
    return Objects.hash(legs, spacing, chance);
  }

  /** Legs, length and chance, for people. */
  @Override
  public String toString() {
    return legs.size()
        + " legs, "
        + length().inNauticalMiles(1)
        + ", finds the target with chance "
        + Math.round(chance * 100.0)
        + " %";
  }
}
