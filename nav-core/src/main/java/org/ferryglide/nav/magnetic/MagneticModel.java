package org.ferryglide.nav.magnetic;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.DecimalYear;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;

/**
 * A model of the Earth's magnetic field over some years: coefficients that change linearly between
 * dates.
 *
 * <p>Three World Magnetic Models are built in, and {@link #inForceOn} picks the one made for a
 * date. Ask a model for a date and get a {@link MagneticSnapshot}; ask that about places.
 *
 * <pre>{@code
 * MagneticModel model = MagneticModel.inForceOn(LocalDate.of(2026, 6, 1)); // WMM2025
 * VariationReading reading = model.at(place, LocalDate.of(2026, 6, 1));
 * MagneticSnapshot june = model.at(LocalDate.of(2026, 6, 1)); // for many places on one date
 * }</pre>
 *
 * <p>Immutable and safe to share between threads.
 *
 * @see <a href="https://www.ncei.noaa.gov/products/world-magnetic-model">the World Magnetic Model,
 *     NOAA NCEI and British Geological Survey</a>
 */
public final class MagneticModel implements VariationSource {
  private static final long serialVersionUID = 1L;

  private static final Instant START_OF_2020 = Instant.parse("2020-01-01T00:00:00Z");
  private static final Instant START_OF_2025 = Instant.parse("2025-01-01T00:00:00Z");

  private final String name;
  private final int degree;
  private final double validTo;

  /** Where each straight stretch begins, years; the first is where the span begins. */
  private final double[] starts;

  /** Packed coefficients at each start. */
  private final double[][] values;

  /** Packed yearly changes over each stretch. */
  private final double[][] changes;

  private final double[] recursion;
  private final @Nullable MagneticErrorModel errors;
  private final boolean refusesOutsideSpan;

  MagneticModel(
      String name,
      int degree,
      double[] starts,
      double validTo,
      double[][] values,
      double[][] changes,
      @Nullable MagneticErrorModel errors) {
    this(
        name,
        degree,
        starts,
        validTo,
        values,
        changes,
        SphericalHarmonics.recursion(degree),
        errors,
        false);
  }

  private MagneticModel(
      String name,
      int degree,
      double[] starts,
      double validTo,
      double[][] values,
      double[][] changes,
      double[] recursion,
      @Nullable MagneticErrorModel errors,
      boolean refusesOutsideSpan) {
    this.name = name;
    this.degree = degree;
    this.starts = starts;
    this.validTo = validTo;
    this.values = values;
    this.changes = changes;
    this.recursion = recursion;
    this.errors = errors;
    this.refusesOutsideSpan = refusesOutsideSpan;
  }

  /**
   * The World Magnetic Model 2025, for 2025.0 to 2030.0.
   *
   * @return the model, degree 12
   */
  public static MagneticModel wmm2025() {
    return BuiltInModels.Wmm2025.MODEL;
  }

  /**
   * The World Magnetic Model 2020, for 2020.0 to 2025.0.
   *
   * @return the model, degree 12
   */
  public static MagneticModel wmm2020() {
    return BuiltInModels.Wmm2020.MODEL;
  }

  /**
   * The World Magnetic Model 2015 in its second version of February 2019, for 2015.0 to 2020.0.
   *
   * @return the model, degree 12
   */
  public static MagneticModel wmm2015v2() {
    return BuiltInModels.Wmm2015v2.MODEL;
  }

  /**
   * The built-in model made for a date; before the first span the first, after the last the last,
   * which will say so.
   *
   * @param date the date
   * @return WMM2015v2, WMM2020 or WMM2025
   */
  public static MagneticModel inForceOn(LocalDate date) {
    int year = date.getYear();
    return year >= 2025 ? wmm2025() : year >= 2020 ? wmm2020() : wmm2015v2();
  }

  /**
   * The built-in model made for an instant, as {@link #inForceOn(LocalDate)} picks it in UTC.
   *
   * @param instant the instant
   * @return WMM2015v2, WMM2020 or WMM2025
   */
  public static MagneticModel inForceOn(Instant instant) {
    return instant.isBefore(START_OF_2020)
        ? wmm2015v2()
        : instant.isBefore(START_OF_2025) ? wmm2020() : wmm2025();
  }

  /**
   * The variation at a place and date with its standard error and notes.
   *
   * @param place the place, at sea level
   * @param date the date; its midnight in UTC is meant
   * @return the reading; outside the span with a note, unless this model refuses
   * @throws DateTimeException if the date lies outside the span and this model refuses such dates
   */
  @Override
  public VariationReading at(Position place, LocalDate date) {
    return at(date).reading(place);
  }

  /**
   * Reads a {@code .COF} file as the World Magnetic Model publishes it.
   *
   * @param path the file
   * @return the model, without an error model until {@link #withErrorModel} gives it one
   * @throws IOException if the file cannot be read
   * @throws org.ferryglide.nav.note.InputFormatException if the file breaks the form described at
   *     {@link #readCof(String, Reader)}
   */
  public static MagneticModel readCof(Path path) throws IOException {
    return MagneticModelFile.readCof(path);
  }

  /**
   * Reads text in the form of a {@code .COF} file of the World Magnetic Model: a line with epoch
   * and name (what follows, the date of the file, is neither epoch nor limit and is passed over);
   * then for each degree n and order m a line {@code n m g h change-of-g change-of-h}, complete up
   * to the highest degree; then a line of nines.
   *
   * <p>The form does not say how long the model holds; five years from its epoch are taken, as for
   * every World Magnetic Model so far.
   *
   * @param source what to call the text in messages
   * @param reader the text; left open
   * @return the model, without an error model until {@link #withErrorModel} gives it one
   * @throws IOException if reading fails
   * @throws org.ferryglide.nav.note.InputFormatException if the text breaks that form
   */
  public static MagneticModel readCof(String source, Reader reader) throws IOException {
    return MagneticModelFile.readCof(source, reader);
  }

  /**
   * Reads a {@code .shc} file as the International Geomagnetic Reference Field publishes it.
   *
   * @param path the file; its name without the ending becomes the model's name
   * @return the model, without an error model until {@link #withErrorModel} gives it one
   * @throws IOException if the file cannot be read
   * @throws org.ferryglide.nav.note.InputFormatException if the file breaks the form described at
   *     {@link #readShc(String, Reader)}
   */
  public static MagneticModel readShc(Path path) throws IOException {
    return MagneticModelFile.readShc(path);
  }

  /**
   * Reads text in the form of a {@code .shc} file: comment lines that begin with #; a line with the
   * lowest degree (1), the highest degree, the number of dates, the order of the spline (2:
   * straight lines between the dates; 1: a single date) and the number of steps (1); a line with
   * the dates as decimal years; then for each degree n and order m, negative for h, a line {@code n
   * m} with one value for each date, complete up to the highest degree.
   *
   * <p>The span is that of the dates. A single date gives a field that does not change, for that
   * moment alone.
   *
   * @param source what to call the text in messages; without folders and ending it becomes the
   *     model's name
   * @param reader the text; left open
   * @return the model, without an error model until {@link #withErrorModel} gives it one
   * @throws IOException if reading fails
   * @throws org.ferryglide.nav.note.InputFormatException if the text breaks that form
   */
  public static MagneticModel readShc(String source, Reader reader) throws IOException {
    return MagneticModelFile.readShc(source, reader);
  }

  /**
   * The same model, but one that refuses a date outside its span instead of answering with a note.
   *
   * @return a model that throws a {@link DateTimeException} for such a date
   */
  public MagneticModel refusingOutsideSpan() {
    return new MagneticModel(
        name, degree, starts, validTo, values, changes, recursion, errors, true);
  }

  /**
   * The same model with published one-sigma errors, for a model read from a file.
   *
   * @param errors the errors
   * @return a model whose {@link #errorModel} is {@code errors}
   */
  public MagneticModel withErrorModel(MagneticErrorModel errors) {
    Objects.requireNonNull(errors, "errors");
    return new MagneticModel(
        name, degree, starts, validTo, values, changes, recursion, errors, refusesOutsideSpan);
  }

  /**
   * The start of a date as magnetic models count: the year and the fraction of it that has passed,
   * in UTC.
   *
   * <pre>{@code
   * MagneticModel.decimalYear(LocalDate.of(2025, 7, 2)); // 2025.4986…
   * }</pre>
   *
   * @param date the date; its midnight in UTC is meant
   * @return years, 2025.0 at the start of 1 January 2025; leap years are 366 days long
   */
  public static double decimalYear(LocalDate date) {
    return DecimalYear.of(date);
  }

  /**
   * An instant as magnetic models count: the year and the fraction of it that has passed, in UTC.
   *
   * @param instant the instant
   * @return years, fractions of a day included; leap years are 366 days long
   * @throws DateTimeException if the instant lies beyond the years ±999 999 999
   */
  public static double decimalYear(Instant instant) {
    return DecimalYear.of(instant);
  }

  /**
   * This model moved to the start of a date.
   *
   * @param date the date; its midnight in UTC is meant
   * @return the snapshot; outside the span with a note, unless this model refuses
   * @throws DateTimeException if the date lies outside the span and this model refuses such dates
   */
  public MagneticSnapshot at(LocalDate date) {
    return at(DecimalYear.of(date), date.toString());
  }

  /**
   * This model moved to an instant.
   *
   * @param instant the instant
   * @return the snapshot; outside the span with a note, unless this model refuses
   * @throws DateTimeException if the instant lies outside the span and this model refuses such
   *     dates, or beyond the years ±999 999 999
   */
  public MagneticSnapshot at(Instant instant) {
    return at(DecimalYear.of(instant), instant.toString());
  }

  /**
   * This model moved to a decimal year.
   *
   * @param decimalYear years, as {@link #decimalYear(Instant)} counts them, finite
   * @return the snapshot; outside the span with a note, unless this model refuses
   * @throws DateTimeException if the year lies outside the span and this model refuses such dates
   * @throws IllegalArgumentException if {@code decimalYear} is NaN or infinite
   */
  public MagneticSnapshot atDecimalYear(double decimalYear) {
    Arguments.finite(decimalYear, "date", "years");
    return at(decimalYear, Double.toString(decimalYear));
  }

  private MagneticSnapshot at(double decimalYear, String asGiven) {
    refuseOutside(decimalYear, asGiven);
    int stretch = stretchAt(decimalYear);
    double[] value = values[stretch];
    double[] change = changes[stretch];
    double years = decimalYear - starts[stretch];
    double[] field = new double[value.length];
    for (int i = 0; i < field.length; i++) {
      field[i] = value[i] + years * change[i];
    }
    return new MagneticSnapshot(this, decimalYear, field, change, spanNotes(decimalYear, asGiven));
  }

  /**
   * This model prepared for one place, for many dates.
   *
   * @param position the place, at sea level
   * @return the prepared place
   */
  public MagneticPlace place(Position position) {
    double[] stretches = new double[6 * starts.length];
    double[] place = new double[7];
    SphericalHarmonics.place(
        position.latitudeDegrees(), position.longitudeDegrees(), 0.0, place, 0);
    for (int i = 0; i < starts.length; i++) {
      SphericalHarmonics.evaluate(recursion, values[i], degree, place, 0, stretches, 6 * i);
      SphericalHarmonics.evaluate(recursion, changes[i], degree, place, 0, stretches, 6 * i + 3);
    }
    return new MagneticPlace(this, position, stretches);
  }

  /**
   * The elements at a place and date and how much each changes in a year, allocating nothing and
   * asking nothing about the model's span: for a new date each time.
   *
   * @param decimalYear the date as {@link #decimalYear(Instant)} counts it; NaN gives NaN
   * @param latitudeDegrees geographic latitude, degrees, north positive; NaN gives NaN
   * @param longitudeDegrees longitude, degrees, east positive; NaN gives NaN
   * @param heightMetres height above the WGS84 ellipsoid, metres; NaN gives NaN
   * @param out receives what {@link MagneticSnapshot#elementsWithChange} writes
   * @param offset where in {@code out} the first goes
   */
  public void elementsWithChange(
      double decimalYear,
      double latitudeDegrees,
      double longitudeDegrees,
      double heightMetres,
      double[] out,
      int offset) {
    int stretch = stretchAt(decimalYear);
    int change = offset + MagneticSnapshot.ELEMENTS;
    SphericalHarmonics.place(latitudeDegrees, longitudeDegrees, heightMetres, out, change);
    SphericalHarmonics.evaluate(recursion, values[stretch], degree, out, change, out, offset);
    SphericalHarmonics.evaluate(recursion, changes[stretch], degree, out, change, out, change);
    double years = decimalYear - starts[stretch];
    for (int i = 0; i < 3; i++) {
      out[offset + i] += years * out[change + i];
    }
    Elements.fromComponents(out, offset);
    Elements.changes(out, offset, change);
  }

  /** The stretch that holds a date; beyond either end the nearest. */
  int stretchAt(double decimalYear) {
    int stretch = starts.length - 1;
    while (stretch > 0 && starts[stretch] > decimalYear) {
      stretch--;
    }
    return stretch;
  }

  double stretchStart(int stretch) {
    return starts[stretch];
  }

  void refuseOutside(double decimalYear, String asGiven) {
    if (refusesOutsideSpan && !covers(decimalYear)) {
      throw new DateTimeException(SpanText.outside(this, decimalYear, asGiven));
    }
  }

  Note[] spanNotes(double decimalYear, String asGiven) {
    return covers(decimalYear)
        ? new Note[0]
        : new Note[] {SpanText.note(this, decimalYear, asGiven)};
  }

  /** How long before or after the span a date lies, years; 0 inside. */
  double yearsOutside(double decimalYear) {
    return Math.max(0.0, Math.max(starts[0] - decimalYear, decimalYear - validTo));
  }

  /**
   * Whether a date lies within the years this model was made for.
   *
   * @param decimalYear years, as {@link #decimalYear(Instant)} counts them
   * @return true from the first to the last moment, both included; false for NaN
   */
  public boolean covers(double decimalYear) {
    return decimalYear >= starts[0] && decimalYear <= validTo;
  }

  /**
   * The name under which the model was published.
   *
   * @return for example {@code WMM2025}
   */
  public String name() {
    return name;
  }

  /**
   * The highest degree of the sums.
   *
   * @return 12 for the built-in models
   */
  public int degree() {
    return degree;
  }

  /**
   * When the model's span begins.
   *
   * @return decimal year
   */
  public double validFromYear() {
    return starts[0];
  }

  /**
   * When the model's span ends.
   *
   * @return decimal year
   */
  public double validToYear() {
    return validTo;
  }

  /**
   * The one-sigma errors published with the model.
   *
   * @return the errors, empty for a model read from a file until {@link #withErrorModel} adds them
   */
  public Optional<MagneticErrorModel> errorModel() {
    return Optional.ofNullable(errors);
  }

  /** Shared with snapshots; never written to after construction. */
  double[] recursion() {
    return recursion;
  }

  /** The name and the span. */
  @Override
  public String toString() {
    return name + " (" + starts[0] + " to " + validTo + ")";
  }
}
