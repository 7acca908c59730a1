package org.ferryglide.tide.height;

import java.io.Serializable;
import java.util.List;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;

/**
 * The mean spring range and the mean neap range of a port, between which a day's range is placed.
 *
 * <pre>{@code
 * MeanRanges ranges = new MeanRanges(Distance.ofMetres(4.8), Distance.ofMetres(2.1));
 * ranges.springFraction(Distance.ofMetres(3.45)); // 0.5: half way from neaps to springs
 * }</pre>
 *
 * <p>Where the diurnal tide is large there are no springs and neaps of this kind.
 *
 * @param spring mean spring range, above the neap range
 * @param neap mean neap range, not negative
 */
public record MeanRanges(Distance spring, Distance neap) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes both ranges.
   *
   * @param spring mean spring range, above the neap range
   * @param neap mean neap range, not negative
   * @throws IllegalArgumentException if a range is negative, or the spring range is not above the
   *     neap range
   */
  public MeanRanges {
    Arguments.notNegative(spring.metres(), "spring range", "metres");
    Arguments.notNegative(neap.metres(), "neap range", "metres");
    if (spring.compareTo(neap) <= 0) {
      throw new IllegalArgumentException(
          "spring range must be above the neap range of "
              + neap.metres()
              + " metres, but was "
              + spring.metres());
    }
  }

  /**
   * The ranges between the mean levels that tables and charts print.
   *
   * @param highSprings mean high water springs, above the datum
   * @param highNeaps mean high water neaps, above the datum
   * @param lowNeaps mean low water neaps, above the datum
   * @param lowSprings mean low water springs, above the datum
   * @return spring range from low to high water springs, neap range from low to high water neaps
   * @throws IllegalArgumentException if the ranges are not as the constructor takes them
   */
  public static MeanRanges ofLevels(
      Distance highSprings, Distance highNeaps, Distance lowNeaps, Distance lowSprings) {
    return new MeanRanges(highSprings.minus(lowSprings), highNeaps.minus(lowNeaps));
  }

  /**
   * The place of a range between neaps and springs.
   *
   * @param range range of a tide
   * @return 0 at mean neaps, 1 at mean springs, linear between and beyond both
   */
  public double springFraction(Distance range) {
    return (range.metres() - neap.metres()) / (spring.metres() - neap.metres());
  }

  /**
   * What to know about a value scaled by a range.
   *
   * @param range range of a tide
   * @return one note if the range lies outside neaps to springs, else none
   */
  public List<Note> notesFor(Distance range) {
    double fraction = springFraction(range);
    if (fraction > 1.0) {
      return List.of(
          beyond("tide.beyond-springs", "The range is larger than at mean springs.", range));
    }
    if (fraction < 0.0) {
      return List.of(beyond("tide.below-neaps", "The range is smaller than at mean neaps.", range));
    }
    return List.of();
  }

  private Note beyond(String code, String text, Distance range) {
    return Note.information(code, text)
        .with("rangeMetres", range.metres())
        .with("springRangeMetres", spring.metres())
        .with("neapRangeMetres", neap.metres());
  }
}
