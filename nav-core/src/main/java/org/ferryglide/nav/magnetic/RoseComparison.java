package org.ferryglide.nav.magnetic;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/**
 * A chart's variation set beside a model's for the same place and date, which shows up a misread
 * letter, a rose too old or a local anomaly. A misread year shows only when its years of change are
 * more than what age and model error explain: 1999 read for 2019, at 8' a year, is 2.7°, and a rose
 * of 1999 is allowed more than that.
 *
 * <pre>{@code
 * RoseComparison comparison =
 *     RoseComparison.of(rose, MagneticModel.wmm2025(), place, LocalDate.of(2026, 6, 1))
 *         .orElseThrow();
 * comparison.agrees(); // true
 * System.out.println(comparison); // rose 3°16'W (8'E), model 2°40'W (12'E), …
 * }</pre>
 */
public final class RoseComparison implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Variation rose;
  private final Variation model;
  private final AnnualChange roseChange;
  private final AnnualChange modelChange;
  private final double allowed;
  private final Note[] notes;

  private RoseComparison(
      CompassRose printed, MagneticSnapshot snapshot, Position place, LocalDate date) {
    rose = printed.variationAt(date);
    model = snapshot.variation(place);
    roseChange = printed.annualChange();
    modelChange = snapshot.annualChange(place);
    double twoSigma = 2.0 * snapshot.reading(place).standardErrorDegrees();
    allowed = twoSigma + printed.expectedErrorDegrees(date, place);
    List<Note> all = new ArrayList<>(printed.notesAt(date, place));
    all.addAll(snapshot.notesAt(place));
    if (!agrees()) {
      all.add(
          Note.warning(
                  "rose.disagrees",
                  "Rose and model differ by "
                      + Math.round(Math.abs(differenceDegreesEast()) * 10.0) / 10.0
                      + "°, more than age and model error explain. Check the letters and the year,"
                      + " and whether the chart warns of a local anomaly.")
              .with("differenceDegreesEast", differenceDegreesEast())
              .with(
                  "differenceDegrees", Math.round(Math.abs(differenceDegreesEast()) * 10.0) / 10.0)
              .with("allowedDegrees", allowed));
    }
    notes = all.toArray(new Note[0]);
  }

  /**
   * Compares a rose with a model.
   *
   * @param rose what the chart prints
   * @param model the model
   * @param place the place
   * @param date the date; its midnight in UTC is meant
   * @return the comparison; empty where the horizontal field is too weak for any compass ({@link
   *     CompassZone#BLACKOUT}), since the variation there means nothing
   * @throws java.time.DateTimeException if the date lies outside the model's span and the model
   *     refuses such dates
   */
  public static Optional<RoseComparison> of(
      CompassRose rose, MagneticModel model, Position place, LocalDate date) {
    MagneticSnapshot snapshot = model.at(date);
    return snapshot.field(place).zone() == CompassZone.BLACKOUT
        ? Optional.empty()
        : Optional.of(new RoseComparison(rose, snapshot, place, date));
  }

  /**
   * The rose's variation, carried to the date.
   *
   * @return the variation
   */
  public Variation roseVariation() {
    return rose;
  }

  /**
   * The model's variation.
   *
   * @return the variation
   */
  public Variation modelVariation() {
    return model;
  }

  /**
   * The annual change the rose prints.
   *
   * @return minutes of arc a year
   */
  public AnnualChange roseChange() {
    return roseChange;
  }

  /**
   * The annual change of the model on the date.
   *
   * @return minutes of arc a year
   */
  public AnnualChange modelChange() {
    return modelChange;
  }

  /**
   * How far the rose is from the model.
   *
   * @return rose less model the short way round, degrees, east positive, in [-180, 180]
   */
  public double differenceDegreesEast() {
    return Math.IEEEremainder(rose.degreesEast() - model.degreesEast(), 360.0);
  }

  /**
   * How far apart they may be and still agree: twice the model's one-sigma error and what the
   * rose's age may have added.
   *
   * @return degrees
   */
  public double allowedDegrees() {
    return allowed;
  }

  /**
   * Whether rose and model agree.
   *
   * @return true if it is no larger than {@link #allowedDegrees}
   */
  public boolean agrees() {
    return Math.abs(differenceDegreesEast()) <= allowed;
  }

  /**
   * Age of the rose, lapse of the model, weak field, disagreement.
   *
   * @return the notes, possibly empty, unmodifiable
   */
  public List<Note> notes() {
    return List.of(notes);
  }

  /** Both variations with their changes, and the difference. */
  @Override
  public String toString() {
    return "rose "
        + rose.degreesAndMinutes()
        + " ("
        + roseChange.printed()
        + "), model "
        + model.degreesAndMinutes()
        + " ("
        + modelChange.printed()
        + "), rose less model "
        + Variation.ofDegreesEast(differenceDegreesEast()).degreesAndMinutes();
  }
}
