package org.ferryglide.tide.harmonic;

import java.io.Serializable;
import java.time.Instant;
import org.ferryglide.nav.basics.EpochSeconds;

/**
 * At what time the slow nodal corrections are taken.
 *
 * <p>{@link #MID_YEAR} is the convention of official US predictions: factor and nodal angle of the
 * middle of a calendar year (UTC) hold all that year. The height then steps at New Year: on the
 * days around the New Years of 2020 to 2030 the curves of the old and the new year are at most 18
 * mm apart at Honolulu, 71 mm at Boston and 228 mm at Anchorage. {@link #AT_INSTANT} takes the
 * corrections at every instant and has no step. Over those years the two conventions differ by at
 * most 12, 42 and 151 mm at the three. Neither is more right about the sea, but constants should be
 * used with the convention they were found with.
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
   * Corrections of one instant, used at all times: right for a short record or prediction around
   * it.
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
