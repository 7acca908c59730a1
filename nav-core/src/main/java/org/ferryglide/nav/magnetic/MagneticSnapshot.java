package org.ferryglide.nav.magnetic;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/**
 * A magnetic model moved to one date: immutable, safe to share between threads, quick to ask about
 * any number of places.
 *
 * <pre>{@code
 * MagneticSnapshot june = MagneticModel.wmm2025().at(LocalDate.of(2026, 6, 1));
 * VariationReading reading = june.reading(Position.ofDegrees(50.1, -5.5));
 * reading.notes().forEach(System.out::println); // a lapsed model, a weak field
 * }</pre>
 *
 * <p>Values agree with every official test value of the three World Magnetic Models to the printed
 * digits; heights of a few hundred metres change the variation by less than 0.001°, so the methods
 * without a height mean the surface of the WGS84 ellipsoid.
 */
public final class MagneticSnapshot implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double MINUTES_IN_DEGREE = 60.0;

  /** Where {@link #elements} writes the north component, nanotesla, after the offset. */
  public static final int NORTH = 0;

  /** Where {@link #elements} writes the east component, nanotesla, after the offset. */
  public static final int EAST = 1;

  /** Where {@link #elements} writes the downward component, nanotesla, after the offset. */
  public static final int DOWN = 2;

  /** Where {@link #elements} writes the horizontal intensity, nanotesla, after the offset. */
  public static final int HORIZONTAL = 3;

  /** Where {@link #elements} writes the total intensity, nanotesla, after the offset. */
  public static final int TOTAL = 4;

  /** Where {@link #elements} writes the dip, degrees, down positive, after the offset. */
  public static final int DIP = 5;

  /** Where {@link #elements} writes the declination, degrees, east positive, after the offset. */
  public static final int DECLINATION = 6;

  /** How many numbers {@link #elements} writes. */
  public static final int ELEMENTS = 7;

  /** How many numbers {@link #elementsWithChange} writes. */
  public static final int ELEMENTS_WITH_CHANGE = 14;

  /** The World Magnetic Model gives grid variation from here to the poles. */
  private static final double GRID_VARIATION_FROM_DEGREES = 55.0;

  /**
   * What the variation drifts from the truth in each year outside the span: WMM2015v2 five years
   * past its end, beside WMM2025, was 0.44° off at the worst of twelve coasts.
   */
  private static final double DRIFT_DEGREES_A_YEAR = 0.1;

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
   * @return years and fraction, as {@link MagneticModel#decimalYear(LocalDate)} counts them
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
   * The variation at a place, at sea level, with its standard error and notes.
   *
   * @param place the place
   * @return the reading; its notes are {@link #notesAt}
   */
  public VariationReading reading(Position place) {
    MagneticField here = field(place);
    double sigma =
        model
            .errorModel()
            .orElse(MagneticErrorModel.USUAL)
            .declinationDegrees(here.horizontalNanotesla());
    double drift = DRIFT_DEGREES_A_YEAR * model.yearsOutside(decimalYear);
    return new VariationReading(
        here.variation(), Math.min(180.0, Math.hypot(sigma, drift)), model.name(), notesAt(place));
  }

  /**
   * The bare variation at a place, at sea level, for a caller who looks at {@link #notesAt} once
   * and asks about many places; {@link #reading} has both.
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
    return field(place, Distance.ZERO);
  }

  /**
   * The field at a place and height.
   *
   * @param place the place
   * @param height height above the WGS84 ellipsoid, in [-10, 850] km
   * @return the field
   * @throws IllegalArgumentException if {@code height} is out of range
   */
  public MagneticField field(Position place, Distance height) {
    Arguments.within(height.metres(), -10_000.0, 850_000.0, "height", "metres");
    double[] row = new double[ELEMENTS];
    SphericalHarmonics.place(
        place.latitudeDegrees(), place.longitudeDegrees(), height.metres(), row, 0);
    SphericalHarmonics.evaluate(model.recursion(), field, model.degree(), row, 0, row, 0);
    return new MagneticField(row[NORTH], row[EAST], row[DOWN]);
  }

  /**
   * The yearly change of the variation at a place, to set beside the one a rose prints.
   *
   * @param place the place
   * @return minutes of arc a year
   * @throws IllegalArgumentException beside a magnetic pole, where the change has no meaning
   */
  public AnnualChange annualChange(Position place) {
    double[] row = new double[ELEMENTS_WITH_CHANGE];
    elementsWithChange(place.latitudeDegrees(), place.longitudeDegrees(), 0.0, row, 0);
    return AnnualChange.ofMinutesEast(row[ELEMENTS + DECLINATION] * MINUTES_IN_DEGREE);
  }

  /**
   * One-sigma error of the variation at a place. The errors of the other elements are the same
   * everywhere: {@link MagneticModel#errorModel} has them.
   *
   * @param place the place
   * @return degrees, at most 180; empty if the model came without errors
   */
  public OptionalDouble standardErrorDegrees(Position place) {
    Optional<MagneticErrorModel> errors = model.errorModel();
    return errors.isPresent()
        ? OptionalDouble.of(errors.get().declinationDegrees(field(place).horizontalNanotesla()))
        : OptionalDouble.empty();
  }

  /**
   * The angle from the north of a polar grid, whose lines run along the meridian of Greenwich, to
   * magnetic north: what replaces the variation where meridians crowd together.
   *
   * @param place the place
   * @return degrees, east positive, in [-180, 180); empty between 55° south and 55° north, where it
   *     is not in use
   */
  public OptionalDouble gridVariationDegrees(Position place) {
    double latitude = place.latitudeDegrees();
    if (Math.abs(latitude) < GRID_VARIATION_FROM_DEGREES) {
      return OptionalDouble.empty();
    }
    double declination = field(place).declinationDegrees();
    double longitude = place.longitudeDegrees();
    double angle =
        Math.IEEEremainder(
            latitude > 0.0 ? declination - longitude : declination + longitude, 360.0);
    return OptionalDouble.of(angle == 180.0 ? -180.0 : angle);
  }

  /**
   * What a reader of the variation at a place should know: a date outside the span, a weak
   * horizontal field.
   *
   * @param place the place
   * @return the notes, possibly empty, unmodifiable
   */
  public List<Note> notesAt(Position place) {
    List<Note> all = new ArrayList<>(notes());
    double horizontal = field(place).horizontalNanotesla();
    all.addAll(CompassZone.notes(horizontal));
    return Collections.unmodifiableList(all);
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

  /**
   * Declinations at many places, one for each row of caller-owned arrays.
   *
   * @param latitudesDegrees geographic latitudes, degrees; NaN in a row gives NaN for that row
   * @param longitudesDegrees longitudes, degrees, as many
   * @param from first row
   * @param until row after the last
   * @param out receives degrees, east positive: that of row i at i - from after the offset
   * @param offset index in {@code out} of the first
   * @throws IndexOutOfBoundsException if an array is too short
   */
  public void declinations(
      double[] latitudesDegrees,
      double[] longitudesDegrees,
      int from,
      int until,
      double[] out,
      int offset) {
    double[] row = new double[ELEMENTS]; // one for the whole call
    for (int i = from; i < until; i++) {
      SphericalHarmonics.place(latitudesDegrees[i], longitudesDegrees[i], 0.0, row, 0);
      SphericalHarmonics.evaluate(model.recursion(), field, model.degree(), row, 0, row, 0);
      out[offset + i - from] = Math.toDegrees(Math.atan2(row[EAST], row[NORTH]));
    }
  }

  /**
   * The seven elements at many places, allocating nothing.
   *
   * @param latitudesDegrees geographic latitudes, degrees; NaN in a row gives NaN for that row
   * @param longitudesDegrees longitudes, degrees
   * @param heightMetres height of all of them above the WGS84 ellipsoid, metres
   * @param from first row
   * @param until row after the last
   * @param out receives what {@link #elements} writes, that of row i from {@link #ELEMENTS} (i -
   *     from) after the offset
   * @param offset index in {@code out} of the first north component
   * @throws IndexOutOfBoundsException if an array is too short
   */
  public void elements(
      double[] latitudesDegrees,
      double[] longitudesDegrees,
      double heightMetres,
      int from,
      int until,
      double[] out,
      int offset) {
    for (int i = from; i < until; i++) {
      int at = offset + ELEMENTS * (i - from);
      elements(latitudesDegrees[i], longitudesDegrees[i], heightMetres, out, at);
    }
  }

  /** The model and the date: {@code WMM2025 at 2026.4137}. */
  @Override
  public String toString() {
    return model.name() + " at " + Math.rint(decimalYear * 1e4) / 1e4;
  }
}
