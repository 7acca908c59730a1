package org.ferryglide.tide.height;

import java.io.Serializable;
import java.util.List;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.note.Note;

/**
 * The mean spring range and the mean neap range of a port, between which a day's range is placed.
 *
 * <pre>{@code
 * MeanRanges ranges = new MeanRanges(4.8, 2.1);
 * ranges.springFraction(3.45); // 0.5: half way from neaps to springs
 * }</pre>
 *
 * <p>Where the diurnal tide is large there are no springs and neaps of this kind.
 *
 * @param springMetres mean spring range, metres, above the neap range
 * @param neapMetres mean neap range, metres, not negative
 */
public record MeanRanges(double springMetres, double neapMetres) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes both ranges.
   *
   * @param springMetres mean spring range, metres, above the neap range
   * @param neapMetres mean neap range, metres, not negative
   * @throws IllegalArgumentException if a range is NaN, infinite or negative, or the spring range
   *     is not above the neap range
   */
  public MeanRanges {
    springMetres = Arguments.notNegative(springMetres, "spring range", "metres");
    neapMetres = Arguments.notNegative(neapMetres, "neap range", "metres");
    if (!(springMetres > neapMetres)) {
      throw new IllegalArgumentException(
          "spring range must be above the neap range of "
              + neapMetres
              + " metres, but was "
              + springMetres);
    }
  }

  /**
   * The ranges between the mean levels that tables and charts print.
   *
   * @param highSprings mean high water springs, metres above the datum
   * @param highNeaps mean high water neaps, metres above the datum
   * @param lowNeaps mean low water neaps, metres above the datum
   * @param lowSprings mean low water springs, metres above the datum
   * @return spring range from low to high water springs, neap range from low to high water neaps
   * @throws IllegalArgumentException if a level is NaN or infinite, or the ranges are not as the
   *     constructor takes them
   */
  public static MeanRanges ofLevels(
      double highSprings, double highNeaps, double lowNeaps, double lowSprings) {
    return new MeanRanges(highSprings - lowSprings, highNeaps - lowNeaps);
  }

  /**
   * The place of a range between neaps and springs.
   *
   * @param rangeMetres range of a tide, metres
   * @return 0 at mean neaps, 1 at mean springs, a straight line between and beyond both; NaN for
   *     NaN
   */
  public double springFraction(double rangeMetres) {
    return (rangeMetres - neapMetres) / (springMetres - neapMetres);
  }

  /**
   * What to know about a value scaled by a range.
   *
   * @param rangeMetres range of a tide, metres
   * @return one note if the range lies outside neaps to springs, else none
   */
  public List<Note> notesFor(double rangeMetres) {
    double fraction = springFraction(rangeMetres);
    if (fraction > 1.0) {
      return List.of(
          beyond("tide.beyond-springs", "The range is larger than at mean springs.", rangeMetres));
    }
    if (fraction < 0.0) {
      return List.of(
          beyond("tide.below-neaps", "The range is smaller than at mean neaps.", rangeMetres));
    }
    return List.of();
  }

  private Note beyond(String code, String text, double rangeMetres) {
    return Note.information(code, text)
        .with("rangeMetres", rangeMetres)
        .with("springRangeMetres", springMetres)
        .with("neapRangeMetres", neapMetres);
  }
}
