package org.ferryglide.tide.harmonic;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.water.Found;
import org.ferryglide.tide.height.TideCurve;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;

/**
 * The height of the tide at a place predicted from its harmonic constants.
 *
 * <p>Weather is not in it: wind and air pressure raise and lower the sea by decimetres, surges by
 * metres. Official tables come first.
 *
 * <pre>{@code
 * HarmonicConstants constants =
 *     HarmonicConstants.read("skarra.csv", reader, NodalScheme.schureman());
 * HarmonicTide tide =
 *     HarmonicTide.of("Skarra", "chart datum", constants, NodalConvention.MID_YEAR);
 * Optional<Distance> height = tide.heightAt(Instant.parse("2026-06-01T09:30:00Z"));
 * TideTable june = tide.table(from, until);
 * }</pre>
 *
 * <p>With an agency's own constants and its own convention it reproduces the agency's heights about
 * to the millimetre to which they are printed: against a day of official US predictions at 31
 * stations 0.39 mm rms and at most 1.05 mm, high and low water to the minute.
 */
public final class HarmonicTide implements TideCurve, Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Looked at beyond a search, so that waters beside New Year are found the same from any start.
   */
  private static final Duration BESIDE_NEW_YEAR = Duration.ofDays(1);

  private final String place;
  private final String datum;
  private final HarmonicPredictor predictor;

  private HarmonicTide(String place, String datum, HarmonicPredictor predictor) {
    this.place = place;
    this.datum = datum;
    this.predictor = predictor;
  }

  /**
   * Makes the tide of a place.
   *
   * @param place name of the place
   * @param datum name of the level that the constants' mean is measured from
   * @param constants the constants, amplitudes and mean in metres
   * @param convention when their nodal corrections are taken
   * @return the tide
   * @throws IllegalArgumentException if a name is empty
   */
  public static HarmonicTide of(
      String place, String datum, HarmonicConstants constants, NodalConvention convention) {
    if (place.trim().isEmpty() || datum.trim().isEmpty()) {
      throw new IllegalArgumentException("place and datum of a tide must not be empty");
    }
    return new HarmonicTide(place, datum, HarmonicPredictor.of(constants, convention));
  }

  /**
   * Where the tide is predicted.
   *
   * @return name of the place
   */
  public String place() {
    return place;
  }

  @Override
  public String source() {
    return place;
  }

  @Override
  public String datum() {
    return datum;
  }

  /**
   * What predicts the heights, for many of them at once.
   *
   * @return the predictor, in metres above {@link #datum}
   */
  public HarmonicPredictor predictor() {
    return predictor;
  }

  @Override
  public double startSeconds() {
    return predictor.startSeconds();
  }

  @Override
  public double endSeconds() {
    return Math.nextDown(predictor.endSeconds());
  }

  @Override
  public double heightMetres(double epochSeconds) {
    return predictor.value(epochSeconds);
  }

  @Override
  public double slopeMetresPerSecond(double epochSeconds) {
    return predictor.rate(epochSeconds);
  }

  @Override
  public double greatestSlopeChange(double fromSeconds, double toSeconds) {
    return predictor.greatestRateChange(fromSeconds, toSeconds);
  }

  @Override
  public void heightsEvenly(
      double startSeconds, double stepSeconds, int count, double[] metres, int offset) {
    if (stepSeconds > 0.0 && stepSeconds <= Double.MAX_VALUE) {
      predictor.fill(startSeconds, stepSeconds, count, metres, offset);
    } else {
      TideCurve.super.heightsEvenly(startSeconds, stepSeconds, count, metres, offset);
    }
  }

  @Override
  public double nextBreakAfter(double epochSeconds) {
    return predictor.nextBreakAfter(epochSeconds);
  }

  /**
   * {@inheritDoc}
   *
   * <p>In the mid-year convention the height steps at New Year. A water that comes in both years,
   * before midnight in the old and after it in the new, is given once, by the old year; and a pair
   * that the step turns upside down is left out.
   */
  @Override
  public Found<TideEvent> extremes(Instant from, Instant until) {
    Found<TideEvent> found = TideCurve.super.extremes(from, until);
    double nextStep = predictor.nextBreakAfter(EpochSeconds.of(from.minus(BESIDE_NEW_YEAR)));
    if (nextStep > EpochSeconds.of(until.plus(BESIDE_NEW_YEAR))) {
      return found;
    }
    List<TideEvent> kept = new ArrayList<>();
    for (TideEvent water :
        NewYearWaters.without(
            TideCurve.super
                .extremes(from.minus(BESIDE_NEW_YEAR), until.plus(BESIDE_NEW_YEAR))
                .items(),
            predictor)) {
      if (water.time().isAfter(from) && water.time().isBefore(until)) {
        kept.add(water);
      }
    }
    return new Found<>(kept, found.asked(), found.seen(), found.notes(), found.stopped());
  }

  /**
   * The high and low waters between two instants as a table.
   *
   * @param from start
   * @param until end
   * @return the waters strictly between, with the notes of their prediction
   * @throws IllegalArgumentException if there are fewer than two
   */
  public TideTable table(Instant from, Instant until) {
    Found<TideEvent> waters = extremes(from, until);
    return TideTable.of(place, datum, waters.items()).withNotes(waters.notes());
  }

  /** Place, datum, number of constituents and convention. */
  @Override
  public String toString() {
    return place
        + " above "
        + datum
        + ", "
        + predictor.constants().constituents().size()
        + " constituents, nodal corrections "
        + predictor.convention();
  }

  /**
   * That the tide alone is predicted, and near New Year in the mid-year convention the step there.
   *
   * @param instant when
   * @return the notes; none for a time without data
   */
  @Override
  public List<Note> notesAt(Instant instant) {
    double seconds = EpochSeconds.of(instant);
    return Double.isNaN(heightMetres(seconds)) ? List.of() : HarmonicNotes.of(predictor, seconds);
  }
}
