package org.ferryglide.nav.sight;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.geodesy.Geodesics;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * The bearing of a mark that keeps one clear of a danger: as long as the mark bears not less (or
 * not more) than this, the danger is passed on the safe side.
 *
 * <pre>{@code
 * ClearingBearing clear =
 *     ClearingBearing.of(beacon, ledge, Distance.ofMetres(150), ClearingBearing.Danger.TO_PORT).get();
 * clear.asText("beacon"); // beacon not more than 075°T
 * clear.isClear(TrueBearing.ofDegrees(71)); // true
 * }</pre>
 *
 * @param bearing the limiting true bearing of the mark, rounded to a whole degree to the safe side
 * @param danger on which side of the limiting line the danger lies, looking at the mark
 */
public record ClearingBearing(TrueBearing bearing, Danger danger) implements Serializable {

  private static final long serialVersionUID = 1L;

  /** Rounding does not turn a bearing that is whole to within this into the next one. */
  private static final double WHOLE_DEGREES = 1e-9;

  /**
   * Takes both parts; {@link #of} computes them.
   *
   * @param bearing the limiting true bearing of the mark
   * @param danger on which side the danger lies
   */
  public ClearingBearing {
    Objects.requireNonNull(bearing, "bearing");
    Objects.requireNonNull(danger, "danger");
  }

  /**
   * On which side the danger is passed, looking toward the mark.
   *
   * <pre>{@code
   * ClearingBearing.Danger side = ClearingBearing.Danger.TO_STARBOARD;
   * }</pre>
   */
  public enum Danger {
    /** The danger is left to port of the line to the mark: the mark must bear not more. */
    TO_PORT,
    /** The danger is left to starboard of the line to the mark: the mark must bear not less. */
    TO_STARBOARD
  }

  /**
   * The limiting bearing past a danger.
   *
   * @param mark the mark to look at, ahead or astern
   * @param centre the middle of the danger
   * @param clearance how far to keep from it: its own extent and a margin, above 0
   * @param side on which side of the line to the mark the danger lies
   * @return the bearing, rounded to a whole degree to the safe side; empty if the mark is within
   *     the clearance, so that no bearing of it can warn
   * @throws IllegalArgumentException if {@code clearance} is not above 0
   */
  public static Optional<ClearingBearing> of(
      Position mark, Position centre, Distance clearance, Danger side) {
    double radius = Arguments.positive(clearance.metres(), "clearance", "metres");
    double[] line = new double[3];
    Geodesics.inverse(
        mark.latitudeDegrees(),
        mark.longitudeDegrees(),
        centre.latitudeDegrees(),
        centre.longitudeDegrees(),
        line,
        0);
    if (line[2] <= radius) {
      return Optional.empty();
    }
    double half = Math.toDegrees(Math.asin(radius / line[2]));
    // Looking from the mark, the danger to port of the one who looks at it lies to starboard.
    double fromMark = line[0] + (side == Danger.TO_PORT ? -half : half);
    double tangent = Math.sqrt(line[2] * line[2] - radius * radius);
    double[] touch = new double[3];
    Geodesics.direct(mark.latitudeDegrees(), mark.longitudeDegrees(), fromMark, tangent, touch, 0);
    double back = TrueBearing.ofDegrees(touch[2] + 180.0).degrees();
    double safe =
        side == Danger.TO_PORT ? Math.floor(back + WHOLE_DEGREES) : Math.ceil(back - WHOLE_DEGREES);
    return Optional.of(new ClearingBearing(TrueBearing.ofDegrees(safe), side));
  }

  /**
   * Whether an observed bearing keeps clear.
   *
   * @param observed the true bearing of the mark as observed
   * @return true on the safe side of the limit and on it
   */
  public boolean isClear(TrueBearing observed) {
    double turn = bearing.turnDegreesTo(observed);
    return danger == Danger.TO_PORT ? turn <= 0.0 : turn >= 0.0 && turn < 180.0;
  }

  /**
   * The rule as one says it.
   *
   * @param markName what the mark is called
   * @return for example {@code beacon not less than 075°T}
   */
  public String asText(String markName) {
    return markName + rule() + bearing.threeDigits() + "T";
  }

  /**
   * The rule for a compass without deviation.
   *
   * @param markName what the mark is called
   * @param variation the variation at the place and date
   * @return for example {@code beacon not less than 079°M}, rounded to the safe side again
   */
  public String asMagneticText(String markName, Variation variation) {
    double magnetic = variation.toMagnetic(bearing).degrees();
    double safe =
        danger == Danger.TO_PORT
            ? Math.floor(magnetic + WHOLE_DEGREES)
            : Math.ceil(magnetic - WHOLE_DEGREES);
    return markName + rule() + TrueBearing.ofDegrees(safe).threeDigits() + "M";
  }

  private String rule() {
    return danger == Danger.TO_PORT ? " not more than " : " not less than ";
  }
}
