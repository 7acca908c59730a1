package org.ferryglide.tide.harmonic;

import java.io.Serializable;
import java.time.Instant;
import org.ferryglide.nav.water.EpochSeconds;

/**
 * At what time the slow nodal corrections are taken.
 *
 * <p>{@link #MID_YEAR} is the convention of official US predictions: factor and nodal angle of the
 * middle of a calendar year (UTC) hold all that year. The height then makes a step at New Year:
 * between 2020 and 2030 at most 18 mm at Honolulu, 70 mm at Boston, 227 mm at Anchorage. {@link
 * #AT_INSTANT} takes the corrections at every instant and has no step. The two differ by up to half
 * the step towards a year's ends; neither is more right about the sea, but constants should be used
 * with the convention they were found with.
 *
 * <pre>{@code
 * HarmonicPredictor official = HarmonicPredictor.of(constants, NodalConvention.MID_YEAR);
 * HarmonicPredictor smooth = HarmonicPredictor.of(constants, NodalConvention.AT_INSTANT);
 * }</pre>
 */
public final class NodalConvention implements Serializable {

  private static final long serialVersionUID = 1L;

  /** Corrections of the middle of each calendar year, UTC, as official US predictions have them. */
  public static final NodalConvention MID_YEAR = new NodalConvention("mid-year", Double.NaN);

  /** Corrections of every instant. */
  public static final NodalConvention AT_INSTANT =
      new NodalConvention("at the instant", Double.NaN);

  private final String name;

  /** When the corrections are taken; NaN unless they are held for good. */
  private final double heldEpochSeconds;

  private NodalConvention(String name, double heldEpochSeconds) {
    this.name = name;
    this.heldEpochSeconds = heldEpochSeconds;
  }

  /**
   * Corrections of one instant, held for good: right for a short record or prediction around it.
   *
   * @param instant when the corrections are taken
   * @return the convention
   */
  public static NodalConvention heldAt(Instant instant) {
    return new NodalConvention("held at " + instant, EpochSeconds.of(instant));
  }

  /** Seconds since 1970 when the corrections are taken; NaN unless they are held for good. */
  double heldEpochSeconds() {
    return heldEpochSeconds;
  }

  boolean isHeld() {
    return !Double.isNaN(heldEpochSeconds);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof NodalConvention that && name.equals(that.name);
  }

  @Override
  public int hashCode() {
    return name.hashCode();
  }

  /** What the convention is called. */
  @Override
  public String toString() {
    return name;
  }
}
