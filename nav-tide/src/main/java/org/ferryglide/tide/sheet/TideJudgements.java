package org.ferryglide.tide.sheet;

import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
import org.ferryglide.nav.reading.Judgement;

/**
 * What makes a table of tides or streams look wrong: one threshold, where it comes from, and how
 * much it matters. Every reader of this module judges by these and by the functions of {@link
 * Plausibility}; none has limits of its own.
 *
 * <p>A doubt is not a refusal. The table is read as it stands, and the doubt travels with
 * everything computed from it; the figure is to be compared with the official table.
 *
 * <pre>{@code
 * if (Plausibility.heightIsFar(heights, i)) {
 *   row.doubt("height_m", TideJudgements.HEIGHT_FAR, Note.information("doubt.height", "…"));
 * }
 * List<Note> doubts = sheet.doubts();
 * }</pre>
 */
public final class TideJudgements {
  /**
   * Rows for less than this time have another offset from UTC than those before and after: refused.
   */
  public static final Judgement OFFSET_RETURNS =
      new Judgement(
          "tide.doubt.offset-returns",
          Severity.WARNING,
          20.0,
          "days",
          "IANA time zone database: since 2005 no clock has gone back to its offset sooner, the"
              + " soonest after 20.96 days at Cairo in 2010");

  /** Rows for less than this time at a table's start or end have another offset than the rest. */
  public static final Judgement OFFSET_NEAR_END =
      new Judgement("tide.doubt.offset", Severity.CAUTION, 20.0, "days", "as OFFSET_RETURNS");

  /**
   * A height beyond those of the four waters of its kind before and the four after, by this share
   * of the greatest rise or fall near it and by more than 0.3 m.
   */
  public static final Judgement HEIGHT_FAR =
      new Judgement(
          "tide.doubt.height",
          Severity.CAUTION,
          0.25,
          "of the greatest rise or fall nearby",
          "measured: no water of 2026 at 39 stations of the United States, tides of every kind");

  /**
   * A water this far from half way between those four waters before and after it, where the tide is
   * semi-diurnal.
   */
  public static final Judgement TIME_FAR =
      new Judgement(
          "tide.doubt.time",
          Severity.CAUTION,
          0.75,
          "hours",
          "measured: 3 of 53 000 waters of 2026 at 39 stations of the United States, all of mixed"
              + " tides");

  /** A rise, a fall or a height above the datum larger than anywhere in the world. */
  public static final Judgement RANGE_BEYOND_KNOWN =
      new Judgement(
          "tide.doubt.range",
          Severity.CAUTION,
          16.5,
          "metres",
          "US National Ocean Service, oceanservice.noaa.gov/facts/highesttide.html: 16.3 m in the"
              + " Bay of Fundy");

  /** Half of the greatest range known: one constituent alone would make it. */
  public static final Judgement AMPLITUDE_BEYOND_KNOWN =
      new Judgement(
          "tide.doubt.amplitude",
          Severity.CAUTION,
          8.25,
          "metres",
          "half of the range of RANGE_BEYOND_KNOWN");

  /** A rise and a fall beside a high water, the smaller less than this share of the larger. */
  public static final Judgement RANGE_UNEQUAL =
      new Judgement(
          "tide.doubt.unequal-range",
          Severity.CAUTION,
          0.5,
          "of the larger",
          "common practice, no source");

  /** More than this share of a stream table's rows have the neap rate above the spring rate. */
  public static final Judgement RATES_SWAPPED =
      new Judgement(
          "stream.doubt.rates-swapped",
          Severity.WARNING,
          0.5,
          "of the rows with a stream",
          "common practice, no source");

  /** One row of a stream table has the neap rate above the spring rate, by this much. */
  public static final Judgement NEAP_ABOVE_SPRING =
      new Judgement(
          "stream.doubt.neap-above-spring",
          Severity.CAUTION,
          0.0,
          "knots",
          "common practice, no source");

  /** A neap range of a stream table's port less than this share of its spring range. */
  public static final Judgement NEAP_RANGE_SMALL =
      new Judgement(
          "stream.doubt.neap-range",
          Severity.CAUTION,
          0.2,
          "of the spring range",
          "common practice, no source");

  /** A rate this many times the larger of those beside it, and 1.5 kn above it. */
  public static final Judgement RATE_FAR =
      new Judgement(
          "stream.doubt.rate",
          Severity.CAUTION,
          2.5,
          "times the larger rate beside it",
          "common practice, no source");

  /** A rate faster than this. */
  public static final Judgement RATE_BEYOND_KNOWN =
      new Judgement(
          "stream.doubt.fastest",
          Severity.CAUTION,
          16.0,
          "knots",
          "common practice, no source: only a few narrows are said to run faster");

  /** A set this far from those of the hour before and the hour after, which agree. */
  public static final Judgement SET_TURNED_FOR_AN_HOUR =
      new Judgement(
          "stream.doubt.set", Severity.CAUTION, 120.0, "degrees", "common practice, no source");

  /** All sets of a table's stronger hours lie within this angle: its ebb sets as its flood does. */
  public static final Judgement NEVER_TURNS =
      new Judgement(
          "stream.doubt.never-turns",
          Severity.CAUTION,
          90.0,
          "degrees",
          "common practice, no source");

  private static final Note COMPARE =
      Note.information("doubt.compare-table", "Compare the official table.");

  private TideJudgements() {}

  /**
   * A doubt made of parts with codes of their own, so that a translation finds each of them.
   *
   * @param judgement why
   * @param place where it is, without a full stop
   * @param what one sentence: what was given and what would be expected
   * @return the judgement's note with the parts {@code place}, {@code what} and {@code check}
   */
  public static Note note(Judgement judgement, Note place, Note what) {
    return note(judgement, place, what, COMPARE);
  }

  /**
   * The same with something else to compare than the official table.
   *
   * @param judgement why
   * @param place where it is, without a full stop
   * @param what one sentence: what was given and what would be expected
   * @param check one sentence: what to compare
   * @return the judgement's note with its parts
   */
  public static Note note(Judgement judgement, Note place, Note what, Note check) {
    return judgement
        .note(place.text() + ": " + what.text() + " " + check.text())
        .with("place", place)
        .with("what", what)
        .with("check", check);
  }
}
