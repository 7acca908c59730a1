package org.ferryglide.nav.magnetic;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.note.Note;

/**
 * How far a printed rose may be trusted after some years.
 *
 * <p>The growth was measured: roses made from IGRF-14, to 5' and 1' a year, with the annual change
 * that a chart maker could know, carried in a straight line to 2026 and set beside WMM2025. Twice
 * the root mean square stands in the tables: the larger of what coasts of north-west Europe (0.12,
 * 0.17, 0.98 and 1.98° after 5, 10, 20 and 30 years), of North America and elsewhere below 60° of
 * latitude gave, and of coasts at 60 to 71° north, where the worst was 6.8° after 20 years.
 */
final class RoseAge {
  private static final double[] YEARS = {0.0, 5.0, 10.0, 20.0, 30.0};
  private static final double[] BELOW_60_DEGREES = {0.0, 0.21, 0.61, 1.57, 2.96};
  private static final double[] FROM_60_DEGREES = {0.0, 0.24, 1.13, 3.38, 4.3};
  private static final double HIGH_LATITUDE_DEGREES = 60.0;

  /** No chart prints more except close to a magnetic pole. */
  static final double SWIFT_MINUTES = 60.0;

  private static final double WORTH_SAYING_YEARS = 5.0;
  private static final double OLD_YEARS = 10.0;
  private static final double VERY_OLD_YEARS = 20.0;

  private RoseAge() {}

  /** Error not to be surprised at, degrees; beyond the table its last slope goes on. */
  static double expectedErrorDegrees(double ageYears, double latitudeDegrees) {
    double[] twoSigma =
        Math.abs(latitudeDegrees) < HIGH_LATITUDE_DEGREES ? BELOW_60_DEGREES : FROM_60_DEGREES;
    double age = Math.abs(ageYears);
    int i = 1;
    while (i < YEARS.length - 1 && YEARS[i] < age) {
      i++;
    }
    double slope = (twoSigma[i] - twoSigma[i - 1]) / (YEARS[i] - YEARS[i - 1]);
    return twoSigma[i - 1] + slope * (age - YEARS[i - 1]);
  }

  static List<Note> notes(CompassRose rose, double age, double latitudeDegrees) {
    List<Note> notes = new ArrayList<>();
    if (Math.abs(rose.annualChange().minutesEast()) > SWIFT_MINUTES) {
      notes.add(
          Note.warning(
                  "rose.swift",
                  "The rose changes by "
                      + rose.annualChange().printed()
                      + " a year; charts print more than a degree only close to a magnetic pole."
                      + " Was it read in degrees for minutes?")
              .with("minutesEast", rose.annualChange().minutesEast())
              .with("annualChange", rose.annualChange().printed()));
    }
    if (age < 0.0) {
      notes.add(
          Note.caution(
                  "rose.later",
                  "The rose is of " + rose.year() + ", later than the date; it was carried back.")
              .with("ageYears", age)
              .with("roseYear", rose.year()));
    } else if (age >= WORTH_SAYING_YEARS) {
      double error = expectedErrorDegrees(age, latitudeDegrees);
      String text =
          "The rose is "
              + (long) age
              + " years old; carried forward, it may be off by "
              + Math.ceil(error * 10.0) / 10.0
              + "°.";
      Note note =
          age >= VERY_OLD_YEARS
              ? Note.warning("rose.old", text + " Use a newer chart or a model.")
              : age >= OLD_YEARS
                  ? Note.caution("rose.old", text)
                  : Note.information("rose.old", text);
      notes.add(
          note.with("ageYears", age)
              .with("ageWholeYears", Math.floor(age))
              .with("expectedErrorDegrees", error));
    }
    return notes;
  }
}
