package org.ferryglide.nav.magnetic;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.List;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/**
 * A magnetic model prepared for one place: the sums are done once, and any number of dates cost
 * next to nothing.
 *
 * <p>At one place the components of the field change in straight lines, as the coefficients do.
 *
 * <pre>{@code
 * MagneticPlace harbour = MagneticModel.wmm2025().place(Position.ofDegrees(50.1, -5.5));
 * Variation today = harbour.variationAt(LocalDate.of(2026, 6, 1));
 * }</pre>
 */
public final class MagneticPlace implements Serializable {
  private static final long serialVersionUID = 1L;

  private final MagneticModel model;
  private final Position position;

  /** For each stretch of the model: north, east, down at its start and their yearly changes. */
  private final double[] stretches;

  MagneticPlace(MagneticModel model, Position position, double[] stretches) {
    this.model = model;
    this.position = position;
    this.stretches = stretches;
  }

  /**
   * The place.
   *
   * @return the position it was prepared for
   */
  public Position position() {
    return position;
  }

  /**
   * The variation here at the start of a date.
   *
   * @param date the date; its midnight in UTC is meant
   * @return the variation; {@link #notesAt} says when the date lies outside the model's span
   * @throws java.time.DateTimeException if the date lies outside the span and the model refuses
   *     such dates
   */
  public Variation variationAt(LocalDate date) {
    double year = DecimalYear.of(date);
    model.refuseOutside(year, date.toString());
    return Variation.ofDegreesEast(declinationDegrees(year));
  }

  /**
   * What a reader of {@link #variationAt} should know.
   *
   * @param date the date
   * @return a note when the date lies outside the model's span, else nothing; unmodifiable
   */
  public List<Note> notesAt(LocalDate date) {
    return List.of(model.spanNotes(DecimalYear.of(date), date.toString()));
  }

  /**
   * The declination here, allocating nothing and asking nothing about the model's span.
   *
   * @param decimalYear the date as {@link DecimalYear} counts it; NaN gives NaN
   * @return degrees, east positive, in [-180, 180]
   */
  public double declinationDegrees(double decimalYear) {
    int stretch = model.stretchAt(decimalYear);
    double years = decimalYear - model.stretchStart(stretch);
    int i = 6 * stretch;
    double north = stretches[i] + years * stretches[i + 3];
    double east = stretches[i + 1] + years * stretches[i + 4];
    return Math.toDegrees(Math.atan2(east, north));
  }

  /** The model and the place. */
  @Override
  public String toString() {
    return model.name() + " for " + position;
  }
}
