package org.ferryglide.tide.stream;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.water.Explanation;

/** What the kernels know about an answer, as bits, and the notes that say it in words. */
final class StreamFlags {
  static final int INTERPOLATED = 1;
  static final int BLENDED = 1 << 1;
  static final int CROSS_FADED = 1 << 2;
  static final int BEYOND_SPRINGS = 1 << 3;
  static final int BELOW_NEAPS = 1 << 4;
  static final int FLOORED = 1 << 5;
  static final int ONE_SIDED_RANGE = 1 << 6;
  static final int HELD = 1 << 7;
  static final int NEAP_ASSUMED = 1 << 8;
  static final int ROUGH_RULE = 1 << 9;
  static final int BETWEEN_SLACKS = 1 << 10;
  static final int UNEQUAL_RANGE = 1 << 11;
  static final int CROWDED = 1 << 12;

  private StreamFlags() {}

  /** Whether a range lies on the printed line or on its continuation. */
  static int ofSpringFraction(double springFraction) {
    return springFraction > 1.0 ? BEYOND_SPRINGS : springFraction < 0.0 ? BELOW_NEAPS : 0;
  }

  /** The explanation of an empty answer. */
  static Explanation noData(String why) {
    return new Explanation(List.of(), List.of(Note.information("stream.no-data", why)));
  }

  /** The doubt about a stream used away from its station. */
  static Note farFromStation(String station, double metres) {
    return Note.caution(
            "stream.far-from-station",
            "The nearest station, "
                + station
                + ", is "
                + Distance.ofMetres(metres).inNauticalMiles(1)
                + " away. Check that its position is right and that its stream holds here.")
        .with("station", station)
        .with("distanceMetres", Math.rint(metres));
  }

  static List<Note> notes(int flags) {
    List<Note> notes = new ArrayList<>();
    if (has(flags, INTERPOLATED)) {
      notes.add(Note.information("stream.interpolated", "Interpolated between the table's hours."));
    }
    if (has(flags, BETWEEN_SLACKS)) {
      notes.add(
          Note.information(
              "stream.between-slacks", "Reckoned from the nearest slack and maximum."));
    }
    if (has(flags, HELD)) {
      notes.add(
          Note.information(
              "stream.held", "The table's row is held for half an hour either side of its hour."));
    }
    if (has(flags, BLENDED)) {
      notes.add(
          Note.information(
              "stream.blended",
              "Between the last row of one tide and the first row of the next, which this tide"
                  + " leaves open."));
    }
    if (has(flags, CROSS_FADED)) {
      notes.add(
          Note.information(
              "stream.cross-faded",
              "The last rows of one tide and the first rows of the next overlap here; both count"
                  + " in part."));
    }
    if (has(flags, BEYOND_SPRINGS)) {
      notes.add(
          Note.caution(
              "stream.beyond-springs",
              "Extrapolated: the tide's range is greater than the table's spring range. The real"
                  + " stream may well be stronger."));
    }
    if (has(flags, BELOW_NEAPS)) {
      notes.add(
          Note.caution(
              "stream.below-neaps",
              "Extrapolated: the tide's range is smaller than the table's neap range."));
    }
    if (has(flags, FLOORED)) {
      notes.add(
          Note.caution(
              "stream.floored",
              "Continuing the table to this range would give a rate below zero; zero is used."));
    }
    if (has(flags, ONE_SIDED_RANGE)) {
      notes.add(
          Note.caution(
              "stream.one-sided-range",
              "The tide table begins or ends here; the range is that of a single rise or fall."));
    }
    if (has(flags, UNEQUAL_RANGE)) {
      notes.add(
          Note.caution(
              "stream.unequal-range",
              "Rise and fall beside this water are very unlike, as at a double water or in a mixed"
                  + " tide; the larger is taken as the range, which may be far from the one the"
                  + " rates are printed for."));
    }
    if (has(flags, CROWDED)) {
      notes.add(
          Note.caution(
              "stream.crowded-waters",
              "Three waters follow each other more closely than the table's rows allow; the rows"
                  + " farthest from their own water were left out."));
    }
    if (has(flags, NEAP_ASSUMED)) {
      notes.add(
          Note.caution(
              "stream.neap-rate-assumed",
              "No neap rate is printed; the rate is taken in proportion to the range."));
    }
    if (has(flags, ROUGH_RULE)) {
      notes.add(
          Note.caution(
              "stream.rough-rule",
              "A rule of thumb between turns of the stream, not a measured curve."));
    }
    return notes;
  }

  private static boolean has(int flags, int bit) {
    return (flags & bit) != 0;
  }
}
