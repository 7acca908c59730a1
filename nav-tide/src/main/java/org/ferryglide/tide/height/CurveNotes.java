package org.ferryglide.tide.height;

import java.util.List;
import org.ferryglide.nav.note.Note;

/** What each way of joining two waters should tell its reader. */
enum CurveNotes {
  TWELFTHS("rule of twelfths") {
    @Override
    void addTo(List<Note> notes, TideTable table, int piece) {
      double change = Math.abs(table.height(piece + 1) - table.height(piece));
      notes.add(
          Note.information(
                  "tide.twelfths",
                  "Height by the rule of twelfths, a rule of thumb: up to 2.6 % of the rise or fall"
                      + " from the cosine curve, and the real tide may differ from both by more.")
              .with("fromCosineMetres", TideShapes.TWELFTHS_FROM_COSINE * change));
      double hours = (table.seconds(piece + 1) - table.seconds(piece)) / 3600.0;
      if (hours < SHORTEST_SEMIDIURNAL_HOURS || hours > LONGEST_SEMIDIURNAL_HOURS) {
        notes.add(
            Note.warning(
                    "tide.not-semidiurnal",
                    "The rule of twelfths is for tides that turn about every six hours and a"
                        + " quarter; here it is not to be trusted.")
                .with("intervalHours", hours));
      }
    }
  },
  COSINE("cosine") {
    @Override
    void addTo(List<Note> notes, TideTable table, int piece) {
      notes.add(
          Note.information(
              "tide.cosine",
              "Height by a cosine between high and low water; the real tide differs where it stands"
                  + " or turns twice."));
    }
  };

  /** Three quarters and five quarters of 6 h 12.6 min, half the mean semi-diurnal period. */
  private static final double SHORTEST_SEMIDIURNAL_HOURS = 4.66;

  private static final double LONGEST_SEMIDIURNAL_HOURS = 7.76;

  private final String title;

  CurveNotes(String title) {
    this.title = title;
  }

  String title() {
    return title;
  }

  /** Adds what concerns one interval of a table. */
  abstract void addTo(List<Note> notes, TideTable table, int piece);
}
