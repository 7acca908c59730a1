package org.ferryglide.nav.magnetic;

import java.util.List;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.note.Note;

/**
 * Whether the horizontal field is strong enough to steer by, as the makers of the World Magnetic
 * Model divide the earth.
 *
 * <pre>{@code
 * CompassZone.ofHorizontal(4_500.0); // CAUTION
 * }</pre>
 *
 * @see <a href="https://doi.org/10.25923/ytk1-yx35">the WMM technical report, which draws both
 *     zones on its polar charts</a>
 */
public enum CompassZone {
  /** Horizontal intensity 6000 nanotesla or more: nothing to remark. */
  USABLE,
  /**
   * Horizontal intensity from 2000 to below 6000 nanotesla: a compass may be sluggish and wrong.
   */
  CAUTION,
  /** Horizontal intensity below 2000 nanotesla: no compass is to be used. */
  BLACKOUT;

  private static final double BLACKOUT_BELOW_NANOTESLA = 2000.0;
  private static final double CAUTION_BELOW_NANOTESLA = 6000.0;

  /**
   * The zone of a horizontal intensity.
   *
   * @param horizontalNanotesla horizontal intensity, nanotesla, at least 0
   * @return the zone
   * @throws IllegalArgumentException if {@code horizontalNanotesla} is NaN, infinite or negative
   */
  public static CompassZone ofHorizontal(double horizontalNanotesla) {
    double h = Arguments.notNegative(horizontalNanotesla, "horizontal intensity", "nanotesla");
    return h < BLACKOUT_BELOW_NANOTESLA ? BLACKOUT : h < CAUTION_BELOW_NANOTESLA ? CAUTION : USABLE;
  }

  /** What is to be said of a horizontal intensity: nothing where a compass is usable. */
  static List<Note> notes(double horizontalNanotesla) {
    return switch (ofHorizontal(horizontalNanotesla)) {
      case USABLE -> List.of();
      case CAUTION ->
          List.of(
              Note.caution(
                      "magnetic.caution-zone",
                      "The horizontal field is weak here: a compass may be sluggish and wrong.")
                  .with("horizontalNanotesla", horizontalNanotesla));
      case BLACKOUT ->
          List.of(
              Note.warning(
                      "magnetic.blackout-zone",
                      "The horizontal field is too weak here for any compass.")
                  .with("horizontalNanotesla", horizontalNanotesla));
    };
  }
}
