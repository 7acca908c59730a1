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

  /** What a flag says in words. */
  private record Meaning(int flag, Note note) {}

  /** In the order in which notes are given. */
  private static final List<Meaning> MEANINGS =
      List.of(
          new Meaning(
              INTERPOLATED,
              Note.information("stream.interpolated", "Interpolated between the table's hours.")),
          new Meaning(
              BETWEEN_SLACKS,
              Note.information(
                  "stream.between-slacks", "Reckoned from the nearest slack and maximum.")),
          new Meaning(
              HELD,
              Note.information(
                  "stream.held",
                  "The table's row is held for half an hour either side of its hour.")),
          new Meaning(
              BLENDED,
              Note.information(
                  "stream.blended",
                  "Between the last row of one tide and the first row of the next, which this tide"
                      + " leaves open.")),
          new Meaning(
              CROSS_FADED,
              Note.information(
                  "stream.cross-faded",
                  "The last rows of one tide and the first rows of the next overlap here; both"
                      + " count in part.")),
          new Meaning(
              BEYOND_SPRINGS,
              Note.caution(
                  "stream.beyond-springs",
                  "Extrapolated: the tide's range is greater than the table's spring range. The"
                      + " real stream may well be stronger.")),
          new Meaning(
              BELOW_NEAPS,
              Note.caution(
                  "stream.below-neaps",
                  "Extrapolated: the tide's range is smaller than the table's neap range.")),
          new Meaning(
              FLOORED,
              Note.caution(
                  "stream.floored",
                  "Continuing the table to this range would give a rate below zero; zero is"
                      + " used.")),
          new Meaning(
              ONE_SIDED_RANGE,
              Note.caution(
                  "stream.one-sided-range",
                  "The tide table begins or ends here; the range is that of a single rise or"
                      + " fall.")),
          new Meaning(
              UNEQUAL_RANGE,
              Note.caution(
                  "stream.unequal-range",
                  "Rise and fall beside this water are very unlike, as at a double water or in a"
                      + " mixed tide; the larger is taken as the range, which may be far from the"
                      + " one the rates are printed for.")),
          new Meaning(
              CROWDED,
              Note.caution(
                  "stream.crowded-waters",
                  "Three waters follow each other more closely than the table's rows allow; the"
                      + " rows farthest from their own water were left out.")),
          new Meaning(
              NEAP_ASSUMED,
              Note.caution(
                  "stream.neap-rate-assumed",
                  "No neap rate is printed; the rate is taken in proportion to the range.")),
          new Meaning(
              ROUGH_RULE,
              Note.caution(
                  "stream.rough-rule",
                  "A rule of thumb between turns of the stream, not a measured curve.")));

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

  /** The notes of all flags that are set. */
  static List<Note> notes(int flags) {
    List<Note> notes = new ArrayList<>();
    for (Meaning meaning : MEANINGS) {
      if ((flags & meaning.flag) != 0) {
        notes.add(meaning.note);
      }
    }
    return notes;
  }
}
