package org.ferryglide.nav.magnetic;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.note.Note;

/**
 * The variation at a place and date together with its doubts: how far it may be off, and what a
 * reader must know before trusting it.
 *
 * <pre>{@code
 * VariationReading reading = VariationSource.builtInModels().at(place, LocalDate.of(2026, 6, 1));
 * reading.variation().degreesAndMinutes(); // 2°41'W
 * reading.standardErrorDegrees(); // 0.38
 * reading.notes().forEach(System.out::println); // a lapsed model, a weak field, an old rose
 * }</pre>
 *
 * @param variation the angle from true to magnetic north
 * @param standardErrorDegrees one-sigma error, degrees, in [0, 180]; charted local anomalies
 *     excepted
 * @param source where it comes from: the model's name, or the rose as printed
 * @param notes what a reader should know, possibly empty
 */
public record VariationReading(
    Variation variation, double standardErrorDegrees, String source, List<Note> notes)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts.
   *
   * @param variation the angle from true to magnetic north
   * @param standardErrorDegrees one-sigma error, degrees, in [0, 180]
   * @param source where it comes from
   * @param notes what a reader should know; copied
   * @throws IllegalArgumentException if {@code standardErrorDegrees} is NaN or out of range
   */
  public VariationReading {
    Objects.requireNonNull(variation, "variation");
    Objects.requireNonNull(source, "source");
    standardErrorDegrees =
        Arguments.within(standardErrorDegrees, 0.0, 180.0, "standard error", "degrees");
    notes = List.copyOf(notes);
  }

  /**
   * The variation in the whole degrees that a paddler can use. Rounding once, at the end, is better
   * than rounding the variation and then the bearing; this is for those who take the whole degree
   * to every bearing of the day.
   *
   * @return to the nearest whole degree, halves away from zero
   */
  public Variation wholeDegree() {
    return HelmVariation.of(variation).rounded();
  }

  /**
   * What steering with {@link #wholeDegree} costs, in words.
   *
   * @return a note of code {@code helm.rounded}
   */
  public Note wholeDegreeNote() {
    return HelmVariation.of(variation).note();
  }

  /** Variation, error and source, and how many notes there are. */
  @Override
  public String toString() {
    return variation.degreesAndMinutes()
        + " ±"
        + Math.ceil(standardErrorDegrees * 10.0) / 10.0
        + "° ("
        + source
        + ")"
        + (notes.isEmpty() ? "" : ", " + notes.size() + (notes.size() == 1 ? " note" : " notes"));
  }
}
