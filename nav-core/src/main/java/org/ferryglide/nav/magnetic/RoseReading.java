package org.ferryglide.nav.magnetic;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/**
 * The variation that the roses of a chart give for a place and date, and where it came from.
 *
 * <pre>{@code
 * RoseReading reading = roses.between(place, LocalDate.of(2026, 6, 1));
 * reading.variation();
 * reading.weight(0); // weight of the nearest rose in the answer
 * }</pre>
 */
public final class RoseReading implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Variation variation;
  private final AnnualChange annualChange;
  private final PlacedRose[] roses;
  private final double[] weights;
  private final double standardErrorDegrees;
  private final Note[] notes;

  RoseReading(
      Variation variation,
      double standardErrorDegrees,
      AnnualChange annualChange,
      PlacedRose[] roses,
      double[] weights,
      Note[] notes) {
    this.variation = variation;
    this.standardErrorDegrees = standardErrorDegrees;
    this.annualChange = annualChange;
    this.roses = roses;
    this.weights = weights;
    this.notes = notes;
  }

  /**
   * The variation.
   *
   * @return the angle from true to magnetic north
   */
  public Variation variation() {
    return variation;
  }

  /**
   * One-sigma error of the variation, that of the most heavily weighted rose.
   *
   * @return degrees, at least 0
   */
  public double standardErrorDegrees() {
    return standardErrorDegrees;
  }

  /**
   * The annual change, weighted like the variation.
   *
   * @return minutes of arc a year
   */
  public AnnualChange annualChange() {
    return annualChange;
  }

  /**
   * The roses that were used.
   *
   * @return where each rose with a part in the answer stands, and what it prints, the nearest
   *     first; unmodifiable
   */
  public Map<Position, CompassRose> roses() {
    return PlacedRose.map(roses);
  }

  /**
   * The weight of one rose in the answer.
   *
   * @param index place of the rose in {@link #roses}
   * @return its weight; the weights sum to 1, and where the plane through three or more roses runs
   *     on beyond them some are negative
   * @throws IndexOutOfBoundsException if there is no such rose
   */
  public double weight(int index) {
    return weights[index];
  }

  /**
   * Weighting and age of the roses.
   *
   * @return the notes, possibly empty, unmodifiable
   */
  public List<Note> notes() {
    return List.of(notes);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RoseReading that
        && variation.equals(that.variation)
        && annualChange.equals(that.annualChange)
        && Arrays.equals(roses, that.roses)
        && Arrays.equals(weights, that.weights)
        && Double.compare(standardErrorDegrees, that.standardErrorDegrees) == 0
        && Arrays.equals(notes, that.notes);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        variation,
        annualChange,
        Arrays.hashCode(roses),
        Arrays.hashCode(weights),
        standardErrorDegrees,
        Arrays.hashCode(notes));
  }

  /** Variation and annual change as charts print them: {@code 3°28'W (9'E)}. */
  @Override
  public String toString() {
    return variation.degreesAndMinutes() + " (" + annualChange.printed() + ")";
  }
}
