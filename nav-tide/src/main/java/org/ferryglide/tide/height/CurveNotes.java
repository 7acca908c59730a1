package org.ferryglide.tide.height;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.note.Note;

/** What the reader of each way of joining two waters should know. */
enum CurveNotes {
  TWELFTHS(
      "rule of twelfths",
      "tide.twelfths",
      "Height by the rule of twelfths, a rule of thumb; the real tide may differ by more than the"
          + " curves do from each other."),
  HOURLY_TWELFTHS(
      "rule of twelfths by the clock",
      "tide.twelfths-by-the-hour",
      "Height by the rule of twelfths in hours of the clock, a rule of thumb; the real tide may"
          + " differ by more than the curves do from each other."),
  COSINE(
      "cosine",
      "tide.cosine",
      "Height by a cosine between two waters; the real tide differs where it stands or turns"
          + " twice."),
  SMOOTH(
      "smooth curve",
      "tide.smooth",
      "Height by a smooth curve through the waters; the real tide differs where it stands or turns"
          + " twice."),
  NORMALISED(
      "port's own curve", "tide.own-curve", "Height by the port's own curve between two waters.");

  /** Three quarters and five quarters of 6 h 12.6 min, half the mean semi-diurnal period. */
  private static final double SHORTEST_SEMIDIURNAL_HOURS = 4.66;

  private static final double LONGEST_SEMIDIURNAL_HOURS = 7.76;

  /** Below this share of the rise or fall beside it, one of the two belongs to a mixed tide. */
  private static final double LEAST_SEMIDIURNAL_SHARE = 0.5;

  private final String title;
  private final String code;
  private final String text;

  CurveNotes(String title, String code, String text) {
    this.title = title;
    this.code = code;
    this.text = text;
  }

  String title() {
    return title;
  }

  /** Notes on one interval of a table joined by a shape. */
  List<Note> of(TideTable table, int segment, SegmentShape shape) {
    List<Note> notes = new ArrayList<>(table.notes());
    double change = change(table, segment);
    notes.add(
        Note.information(code, text)
            .with("fromCosineMetres", change * shape.fromCosine(segment))
            .with("fromTwelfthsMetres", change * shape.fromTwelfths(segment)));
    if ((this == TWELFTHS || this == HOURLY_TWELFTHS) && !isSemidiurnal(table, segment)) {
      notes.add(
          Note.warning(
                  "tide.not-semidiurnal",
                  "The rule of twelfths is for tides that turn about every six hours and a quarter"
                      + " and rise and fall alike; here it is not to be trusted.")
              .with("intervalHours", hours(table, segment)));
    }
    return notes;
  }

  private static double hours(TideTable table, int segment) {
    return (table.seconds(segment + 1) - table.seconds(segment)) / 3600.0;
  }

  private static double change(TideTable table, int segment) {
    return Math.abs(table.height(segment + 1) - table.height(segment));
  }

  private static boolean isSemidiurnal(TideTable table, int segment) {
    double hours = hours(table, segment);
    return hours >= SHORTEST_SEMIDIURNAL_HOURS
        && hours <= LONGEST_SEMIDIURNAL_HOURS
        && isLikeItsNeighbour(table, segment, segment - 1)
        && isLikeItsNeighbour(table, segment, segment + 1);
  }

  private static boolean isLikeItsNeighbour(TideTable table, int segment, int neighbour) {
    if (neighbour < 0 || neighbour >= table.segments()) {
      return true;
    }
    double own = change(table, segment);
    double other = change(table, neighbour);
    return Math.min(own, other) >= LEAST_SEMIDIURNAL_SHARE * Math.max(own, other);
  }
}
