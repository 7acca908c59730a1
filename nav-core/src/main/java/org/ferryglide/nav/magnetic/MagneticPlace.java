package org.ferryglide.nav.magnetic;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ferryglide.nav.basics.DecimalYear;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/**
 * A magnetic model prepared for one place: the sums are done once, and any number of dates cost
 * next to nothing.
 *
 * <p>At one place the components of the field change linearly with time, as the coefficients do.
 *
 * <pre>{@code
 * MagneticPlace harbour = MagneticModel.wmm2025().place(Position.ofDegrees(50.1, -5.5));
 * Variation today = harbour.variationAt(LocalDate.of(2026, 6, 1));
 * }</pre>
 */
public final class MagneticPlace implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final int NORTH = 0;
  private static final int EAST = 1;

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
   * @return the bare variation; {@link #notesAt} has what goes with it, {@link
   *     MagneticModel#at(Position, LocalDate)} gives both
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
   * @return a date outside the model's span, a weak horizontal field; unmodifiable
   */
  public List<Note> notesAt(LocalDate date) {
    double year = DecimalYear.of(date);
    List<Note> all = new ArrayList<>(List.of(model.spanNotes(year, date.toString())));
    all.addAll(CompassZone.notes(Math.hypot(component(year, NORTH), component(year, EAST))));
    return Collections.unmodifiableList(all);
  }

  private double component(double decimalYear, int which) {
    int stretch = model.stretchAt(decimalYear);
    double years = decimalYear - model.stretchStart(stretch);
    int i = 6 * stretch + which;
    return stretches[i] + years * stretches[i + 3];
  }

  /**
   * The declination here, allocating nothing and asking nothing about the model's span.
   *
   * @param decimalYear the date as {@link MagneticModel#decimalYear(LocalDate)} counts it; NaN
   *     gives NaN
   * @return degrees, east positive, in [-180, 180]
   */
  public double declinationDegrees(double decimalYear) {
    return Math.toDegrees(Math.atan2(component(decimalYear, EAST), component(decimalYear, NORTH)));
  }

  /** The model and the place. */
  @Override
  public String toString() {
    return model.name() + " for " + position;
  }
}
