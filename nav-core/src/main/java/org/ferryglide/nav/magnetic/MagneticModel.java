package org.ferryglide.nav.magnetic;

import java.io.Serializable;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.note.Arguments;
import org.ferryglide.nav.note.Note;
import org.jspecify.annotations.Nullable;

/**
 * A model of the Earth's magnetic field over some years: coefficients that change in straight lines
 * between dates.
 *
 * <p>Three World Magnetic Models are built in, and {@link #inForceOn} picks the one made for a
 * date. Ask a model for a date and get a {@link MagneticSnapshot}; ask that about places.
 *
 * <pre>{@code
 * MagneticModel model = MagneticModel.inForceOn(LocalDate.of(2026, 6, 1)); // WMM2025
 * MagneticSnapshot june = model.at(LocalDate.of(2026, 6, 1));
 * }</pre>
 *
 * <p>Immutable and safe to share between threads.
 *
 * @see <a href="https://www.ncei.noaa.gov/products/world-magnetic-model">the World Magnetic Model,
 *     NOAA NCEI and British Geological Survey</a>
 */
public final class MagneticModel implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Past the span by no more than this, the answer is only slightly worse than inside. */
  private static final double SLIGHTLY_PAST_YEARS = 1.0;

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
  private final OutsideSpan outsideSpan;

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
        OutsideSpan.ANSWER_WITH_NOTE);
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
      OutsideSpan outsideSpan) {
    this.name = name;
    this.degree = degree;
    this.starts = starts;
    this.validTo = validTo;
    this.values = values;
    this.changes = changes;
    this.recursion = recursion;
    this.errors = errors;
    this.outsideSpan = outsideSpan;
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
   * The same model with another way of meeting dates outside its span.
   *
   * @param outsideSpan what to do; a model starts with {@link OutsideSpan#ANSWER_WITH_NOTE}
   * @return a model that does so
   */
  public MagneticModel withOutsideSpan(OutsideSpan outsideSpan) {
    Objects.requireNonNull(outsideSpan, "outsideSpan");
    return new MagneticModel(
        name, degree, starts, validTo, values, changes, recursion, errors, outsideSpan);
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
        name, degree, starts, validTo, values, changes, recursion, errors, outsideSpan);
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
   *     dates
   */
  public MagneticSnapshot at(Instant instant) {
    return at(DecimalYear.of(instant), instant.toString());
  }

  /**
   * This model moved to a decimal year.
   *
   * @param decimalYear years, as {@link DecimalYear} counts them, finite
   * @return the snapshot; outside the span with a note, unless this model refuses
   * @throws DateTimeException if the year lies outside the span and this model refuses such dates
   * @throws IllegalArgumentException if {@code decimalYear} is NaN or infinite
   */
  public MagneticSnapshot atDecimalYear(double decimalYear) {
    Arguments.finite(decimalYear, "date", "years");
    return at(decimalYear, Double.toString(decimalYear));
  }

  private MagneticSnapshot at(double decimalYear, String asGiven) {
    boolean inside = covers(decimalYear);
    if (!inside && outsideSpan == OutsideSpan.REFUSE) {
      throw new DateTimeException(outside(decimalYear, asGiven));
    }
    Note[] notes =
        inside ? new Note[0] : new Note[] {outsideNote(decimalYear, outside(decimalYear, asGiven))};
    int stretch = stretchAt(decimalYear);
    double[] value = values[stretch];
    double[] change = changes[stretch];
    double years = decimalYear - starts[stretch];
    double[] field = new double[value.length];
    for (int i = 0; i < field.length; i++) {
      field[i] = value[i] + years * change[i];
    }
    return new MagneticSnapshot(this, decimalYear, field, change, notes);
  }

  private int stretchAt(double decimalYear) {
    int stretch = starts.length - 1;
    while (stretch > 0 && starts[stretch] > decimalYear) {
      stretch--;
    }
    return stretch;
  }

  private Note outsideNote(double decimalYear, String text) {
    double years = yearsOutside(decimalYear);
    String whole =
        text + ". The variation drifts from the truth as the years pass: use a newer model.";
    Note note =
        years <= SLIGHTLY_PAST_YEARS
            ? Note.caution("magnetic.outside-span", whole)
            : Note.warning("magnetic.outside-span", whole);
    return note.with("model", name)
        .with("validFromYear", starts[0])
        .with("validToYear", validTo)
        .with("yearsOutside", years);
  }

  private String outside(double decimalYear, String asGiven) {
    boolean early = decimalYear < starts[0];
    return name
        + " is made for "
        + starts[0]
        + " to "
        + validTo
        + ", but the date was "
        + asGiven
        + ", "
        + tenths(yearsOutside(decimalYear))
        + " years "
        + (early ? "before it begins" : "after it ends");
  }

  private double yearsOutside(double decimalYear) {
    return Math.max(starts[0] - decimalYear, decimalYear - validTo);
  }

  /** Rounded up, so that a day is not reported as no time at all. */
  private static double tenths(double years) {
    return Math.ceil(years * 10.0) / 10.0;
  }

  /**
   * Whether a date lies within the years this model was made for.
   *
   * @param decimalYear years, as {@link DecimalYear} counts them
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
