package org.ferryglide.nav.magnetic;

import java.io.Serializable;
import java.util.List;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.note.Arguments;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/**
 * A magnetic model moved to one date: immutable, safe to share between threads, quick to ask about
 * any number of places.
 *
 * <pre>{@code
 * MagneticSnapshot june = MagneticModel.wmm2025().at(LocalDate.of(2026, 6, 1));
 * Variation variation = june.variation(Position.ofDegrees(50.1, -5.5));
 * for (Note note : june.notes()) { // empty inside the model's span
 *   System.out.println(note);
 * }
 * }</pre>
 *
 * <p>Values agree with every official test value of the three World Magnetic Models to the printed
 * digits; heights of a few hundred metres change the variation by less than 0.001°, so the methods
 * without a height mean the surface of the WGS84 ellipsoid.
 */
public final class MagneticSnapshot implements Serializable {
  private static final long serialVersionUID = 1L;

  /** How many numbers {@link #elements} writes. */
  public static final int ELEMENTS = 7;

  /** How many numbers {@link #elementsWithChange} writes. */
  public static final int ELEMENTS_WITH_CHANGE = 14;

  private final MagneticModel model;
  private final double decimalYear;
  private final double[] field;
  private final double[] change;
  private final Note[] notes;

  MagneticSnapshot(
      MagneticModel model, double decimalYear, double[] field, double[] change, Note[] notes) {
    this.model = model;
    this.decimalYear = decimalYear;
    this.field = field;
    this.change = change;
    this.notes = notes;
  }

  /**
   * The model this was made from.
   *
   * @return the model
   */
  public MagneticModel model() {
    return model;
  }

  /**
   * The date this was made for.
   *
   * @return years and fraction, as {@link DecimalYear} counts them
   */
  public double decimalYear() {
    return decimalYear;
  }

  /**
   * What a reader of any answer should know: a date outside the model's span.
   *
   * @return the notes, empty inside the span, unmodifiable
   */
  public List<Note> notes() {
    return List.of(notes);
  }

  /**
   * The variation at a place, at sea level.
   *
   * @param place the place
   * @return the angle from true to magnetic north
   */
  public Variation variation(Position place) {
    return field(place).variation();
  }

  /**
   * The field at a place, at sea level.
   *
   * @param place the place
   * @return the field
   */
  public MagneticField field(Position place) {
    return field(place, 0.0);
  }

  /**
   * The field at a place and height.
   *
   * @param place the place
   * @param heightMetres height above the WGS84 ellipsoid, metres, in [-10000, 850000]
   * @return the field
   * @throws IllegalArgumentException if {@code heightMetres} is NaN or out of range
   */
  public MagneticField field(Position place, double heightMetres) {
    Arguments.within(heightMetres, -10_000.0, 850_000.0, "height", "metres");
    double[] row = new double[ELEMENTS];
    SphericalHarmonics.place(
        place.latitudeDegrees(), place.longitudeDegrees(), heightMetres, row, 0);
    SphericalHarmonics.evaluate(model.recursion(), field, model.degree(), row, 0, row, 0);
    return new MagneticField(row[0], row[1], row[2]);
  }

  /**
   * The seven elements at a place, allocating nothing.
   *
   * @param latitudeDegrees geographic latitude, degrees, north positive; NaN gives NaN
   * @param longitudeDegrees longitude, degrees, east positive; NaN gives NaN
   * @param heightMetres height above the WGS84 ellipsoid, metres; NaN gives NaN
   * @param out receives north, east, down, horizontal and total in nanotesla, then dip (down
   *     positive) and declination (east positive) in degrees
   * @param offset where in {@code out} the first goes
   */
  public void elements(
      double latitudeDegrees,
      double longitudeDegrees,
      double heightMetres,
      double[] out,
      int offset) {
    SphericalHarmonics.place(latitudeDegrees, longitudeDegrees, heightMetres, out, offset);
    SphericalHarmonics.evaluate(model.recursion(), field, model.degree(), out, offset, out, offset);
    Elements.fromComponents(out, offset);
  }

  /**
   * The seven elements at a place and how much each changes in a year, allocating nothing.
   *
   * @param latitudeDegrees geographic latitude, degrees, north positive; NaN gives NaN
   * @param longitudeDegrees longitude, degrees, east positive; NaN gives NaN
   * @param heightMetres height above the WGS84 ellipsoid, metres; NaN gives NaN
   * @param out receives what {@link #elements} writes, then the yearly change of each in the same
   *     order: nanotesla a year, degrees a year. Where the horizontal field is zero the changes of
   *     horizontal intensity, dip and declination are NaN
   * @param offset where in {@code out} the first goes
   */
  public void elementsWithChange(
      double latitudeDegrees,
      double longitudeDegrees,
      double heightMetres,
      double[] out,
      int offset) {
    int changes = offset + ELEMENTS;
    SphericalHarmonics.place(latitudeDegrees, longitudeDegrees, heightMetres, out, changes);
    SphericalHarmonics.evaluate(
        model.recursion(), field, model.degree(), out, changes, out, offset);
    SphericalHarmonics.evaluate(
        model.recursion(), change, model.degree(), out, changes, out, changes);
    Elements.fromComponents(out, offset);
    Elements.changes(out, offset, changes);
  }
}
