package org.ferryglide.nav.magnetic;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.DecimalYear;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Working;
import org.ferryglide.nav.position.Position;

/**
 * The variation printed on a chart's compass rose: its angle, its year, and how it changes each
 * year.
 *
 * <pre>{@code
 * CompassRose rose = CompassRose.parse("4°15'W 2019 (8'E)");
 * rose.variationInYear(2026).degreesAndMinutes(); // 3°19'W: seven years of 8' to the east
 * rose.variationAt(LocalDate.of(2026, 6, 1)).degreesAndMinutes(); // 3°16'W
 * }</pre>
 *
 * <p>A change with the letter of the variation makes it grow, one with the other letter makes it
 * shrink, pass zero and change its name. The printed figure is taken to be that of 1 January of its
 * year.
 *
 * @param variation the variation in the year of the rose
 * @param year the year printed beside it, from 1500 to 2999
 * @param annualChange its change in a year
 */
public record CompassRose(Variation variation, int year, AnnualChange annualChange)
    implements VariationSource {

  private static final long serialVersionUID = 1L;

  /** One sigma of a world model's variation in middle latitudes. */
  private static final double MODEL_DEGREES = 0.4;

  static final int FIRST_YEAR = 1500;
  static final int LAST_YEAR = 2999;

  /**
   * Takes what is printed.
   *
   * @param variation the variation in the year of the rose
   * @param year the year printed beside it, from 1500 to 2999
   * @param annualChange its change in a year
   * @throws IllegalArgumentException if {@code year} is out of range
   */
  public CompassRose {
    Objects.requireNonNull(variation, "variation");
    Objects.requireNonNull(annualChange, "annualChange");
    Arguments.within(year, FIRST_YEAR, LAST_YEAR, "year of the rose", "years");
  }

  /**
   * Reads a rose as charts print it.
   *
   * <p>In order: the variation with E or W ({@code 4°15'W}; also after it, as {@code W 4°15'} or
   * {@code Var 4°15'W}), the year (which may also stand first), and the annual change in round
   * brackets or after a comma: {@code (8'E)}, {@code (7'W)}, {@code (6' decreasing)}, {@code (5'E
   * increasing)}, {@code (annual change nil)}, {@code Annual change 8'E}, {@code decreasing about
   * 8' annually}, or on a second line as in {@code ANNUAL DECREASE 7'}. Minutes behind degrees stay
   * below 60, and a change given in degrees below 1°; what changes faster, near a magnetic pole, is
   * given in minutes and noted by {@link #notesAt}.
   *
   * @param text what is printed
   * @return the rose
   * @throws org.ferryglide.nav.note.TextFormatException if the text is anything else, or a word
   *     contradicts its letter
   */
  public static CompassRose parse(String text) {
    return RoseText.parse(text);
  }

  /**
   * The variation carried forward by whole years, as it is done on paper.
   *
   * @param year the year of the passage
   * @return the printed variation plus the annual change for each year between
   * @throws IllegalArgumentException if the result leaves [-180°, 180°]
   */
  public Variation variationInYear(int year) {
    return carriedBy((double) year - this.year);
  }

  /**
   * The variation carried forward to a date.
   *
   * @param date the date; its midnight in UTC is meant
   * @return the printed variation plus the annual change for the time since 1 January of the rose's
   *     year, fractions of a year included
   * @throws IllegalArgumentException if the result leaves [-180°, 180°]
   */
  public Variation variationAt(LocalDate date) {
    return carriedBy(ageYearsAt(date));
  }

  private Variation carriedBy(double years) {
    return Variation.ofDegreesEast(variation.degreesEast() + years * annualChange.degreesEast());
  }

  /**
   * A direction read on the inner, magnetic ring of the rose. That ring is already turned by the
   * printed variation, so only what has changed since the rose's year is applied; applying the
   * variation again is the classic mistake. The outer ring reads {@link
   * org.ferryglide.nav.bearing.TrueBearing}s.
   *
   * @param ringDegrees what the inner ring reads, degrees, any finite value
   * @param date the date of the passage; its midnight in UTC is meant
   * @return the magnetic bearing on that date
   * @throws IllegalArgumentException if {@code ringDegrees} is NaN or infinite
   */
  public MagneticBearing innerRing(double ringDegrees, LocalDate date) {
    return MagneticBearing.ofDegrees(ringDegrees)
        .turnedBy(-ageYearsAt(date) * annualChange.degreesEast());
  }

  /**
   * How old the rose is.
   *
   * @param date the date of the passage
   * @return years since 1 January of the rose's year, negative before it
   */
  public double ageYearsAt(LocalDate date) {
    return DecimalYear.of(date) - year;
  }

  /**
   * The variation carried to a date with its standard error and notes. The rose is used as it
   * stands, wherever the place; {@link ChartRoses} weighs several.
   *
   * @param place where it is used: the latitude decides how fast the rose ages
   * @param date the date; its midnight in UTC is meant
   * @return the reading; its standard error is that of a model (0.4° in middle latitudes, since the
   *     chart maker knew no better) combined with half of {@link #expectedErrorDegrees}
   * @throws IllegalArgumentException if the carried variation leaves [-180°, 180°]
   */
  @Override
  public VariationReading at(Position place, LocalDate date) {
    return new VariationReading(
        variationAt(date),
        standardErrorDegrees(date, place),
        "rose " + printed(),
        notesAt(date, place));
  }

  /** The rose against a model at each of the places. */
  @Override
  public List<RoseComparison> comparedWith(
      MagneticModel model, List<Position> places, LocalDate date) {
    List<RoseComparison> comparisons = new ArrayList<>();
    for (Position place : places) {
      RoseComparison.of(this, model, place, date).ifPresent(comparisons::add);
    }
    return List.copyOf(comparisons);
  }

  double standardErrorDegrees(LocalDate date, Position place) {
    return Math.min(180.0, Math.hypot(MODEL_DEGREES, expectedErrorDegrees(date, place) / 2.0));
  }

  /**
   * How far the carried variation may be off below 60° of latitude: 0.2° after 5 years, 0.6° after
   * 10, 1.6° after 20, 3.0° after 30. Measured: twice the root mean square of roses made from
   * IGRF-14 for many coasts, carried to 2026 and set beside WMM2025. North-west Europe did better:
   * 0.1, 0.2, 1.0, 2.0°.
   *
   * @param date the date of the passage
   * @return degrees, at least 0; linear between those figures and beyond the last
   */
  public double expectedErrorDegrees(LocalDate date) {
    return RoseAge.expectedErrorDegrees(ageYearsAt(date), 0.0);
  }

  /**
   * How far the carried variation may be off at a place: from 60° of latitude on twice as much as
   * {@link #expectedErrorDegrees(LocalDate)} says, 0.2, 1.1, 3.4 and 4.3° after 5, 10, 20 and 30
   * years.
   *
   * @param date the date of the passage
   * @param place the place
   * @return degrees, at least 0
   */
  public double expectedErrorDegrees(LocalDate date, Position place) {
    return RoseAge.expectedErrorDegrees(ageYearsAt(date), place.latitudeDegrees());
  }

  /**
   * What a reader of the carried variation should know below 60° of latitude: an implausible annual
   * change; a rose five years old or more, with the error to expect; a rose later than the date.
   *
   * @param date the date of the passage
   * @return the notes, possibly empty, unmodifiable
   */
  public List<Note> notesAt(LocalDate date) {
    return Collections.unmodifiableList(RoseAge.notes(this, ageYearsAt(date), 0.0));
  }

  /**
   * As {@link #notesAt(LocalDate)}, with the error to expect at a place.
   *
   * @param date the date of the passage
   * @param place the place
   * @return the notes, possibly empty, unmodifiable
   */
  public List<Note> notesAt(LocalDate date, Position place) {
    return Collections.unmodifiableList(
        RoseAge.notes(this, ageYearsAt(date), place.latitudeDegrees()));
  }

  /**
   * The steps of {@link #variationInYear}, as a learner would write them.
   *
   * @param year the year of the passage
   * @return printed variation, annual change, years, change, carried variation
   * @throws IllegalArgumentException if the result leaves [-180°, 180°]
   */
  public Working workingInYear(int year) {
    return RoseWorking.of(this, year);
  }

  /**
   * The rose as a chart prints it, to whole minutes.
   *
   * @return for example {@code 4°15'W 2019 (8'E)}
   */
  public String printed() {
    return variation.degreesAndMinutes() + " " + year + " (" + annualChange.printed() + ")";
  }

  /** Variation, year and change without loss: {@code 4.25°W 2019 (8'E)}. */
  @Override
  public String toString() {
    return variation + " " + year + " (" + annualChange + ")";
  }
}
