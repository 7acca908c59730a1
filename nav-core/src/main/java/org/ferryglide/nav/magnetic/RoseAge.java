package org.ferryglide.nav.magnetic;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.note.Note;

/**
 * How far a printed rose may be trusted after some years.
 *
 * <p>The growth was measured: roses made from IGRF-14 for fifteen coasts all over the world, once
 * with the annual change of the five years before and once with that of the five years after
 * (between them lies what a chart maker can know), carried in a straight line to 2026 and set
 * beside WMM2025. Twice the root mean square stands in the table. Where the change itself turned,
 * as in Alaska after 2016, it was twice as much again after ten years.
 */
final class RoseAge {
  private static final double[] YEARS = {0.0, 5.0, 10.0, 20.0, 30.0};
  private static final double[] TWO_SIGMA_DEGREES = {0.0, 0.1, 0.6, 1.3, 2.9};

  private static final double WORTH_SAYING_YEARS = 5.0;
  private static final double OLD_YEARS = 10.0;
  private static final double VERY_OLD_YEARS = 20.0;

  private RoseAge() {}

  /** Error not to be surprised at, degrees; beyond the table its last slope goes on. */
  static double expectedErrorDegrees(double ageYears) {
    double age = Math.abs(ageYears);
    int i = 1;
    while (i < YEARS.length - 1 && YEARS[i] < age) {
      i++;
    }
    double slope = (TWO_SIGMA_DEGREES[i] - TWO_SIGMA_DEGREES[i - 1]) / (YEARS[i] - YEARS[i - 1]);
    return TWO_SIGMA_DEGREES[i - 1] + slope * (age - YEARS[i - 1]);
  }

  static List<Note> notes(CompassRose rose, double age) {
    List<Note> notes = new ArrayList<>();
    if (age < 0.0) {
      notes.add(
          Note.caution(
                  "rose.later",
                  "The rose is of " + rose.year() + ", later than the date; it was carried back.")
              .with("ageYears", age));
    } else if (age >= WORTH_SAYING_YEARS) {
      double error = expectedErrorDegrees(age);
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
      notes.add(note.with("ageYears", age).with("expectedErrorDegrees", error));
    }
    return notes;
  }
}
