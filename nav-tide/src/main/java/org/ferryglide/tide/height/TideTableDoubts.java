package org.ferryglide.tide.height;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.Collectors;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.tide.height.TideEvent.Kind;
import org.ferryglide.tide.height.TideTableReader.Water;
import org.ferryglide.tide.sheet.Plausibility;
import org.ferryglide.tide.sheet.Sheet;
import org.ferryglide.tide.sheet.StrayOffsets;
import org.ferryglide.tide.sheet.TideJudgements;

/** Judges the waters of a sheet beside each other. */
final class TideTableDoubts {
  /** With fewer, every row is reported by itself. */
  private static final int FEWEST_EXCHANGED = 3;

  private TideTableDoubts() {}

  /** Refuses rows whose offset from UTC leaves that of the rows around them for a few days. */
  static void refuseStrayOffsets(List<Water> waters) {
    StrayOffsets.refuse(rows(waters), times(waters));
  }

  private static List<Sheet.Row> rows(List<Water> waters) {
    return waters.stream().map(water -> water.row).collect(Collectors.toList());
  }

  private static List<OffsetDateTime> times(List<Water> waters) {
    return waters.stream().map(water -> water.time).collect(Collectors.toList());
  }

  /**
   * Refuses, where other rows could not be read, what two waters on lines one beneath the other say
   * against each other. Kinds that are not stated are left alone, since the heights that would tell
   * may be those that could not be read.
   */
  static void refuseNeighbours(List<Water> waters, Duration longest) {
    if (refuseExchangedKinds(waters)) {
      return; // one cause of a fault in every row
    }
    for (int i = 1; i < waters.size(); i++) {
      Water before = waters.get(i - 1);
      Water after = waters.get(i);
      if (after.row.line() == before.row.line() + 1
          && before.kind.isPresent()
          && after.kind.isPresent()) {
        WaterFault.between(event(before), event(after), longest, after.time.getOffset())
            .ifPresent(fault -> after.row.problem(fault.heading(), fault.text()));
      }
    }
  }

  private static TideEvent event(Water water) {
    return new TideEvent(
        water.time.toInstant(),
        Distance.ofMetres(water.height),
        water.kind.orElseThrow(IllegalStateException::new));
  }

  /**
   * Refuses, once, a sheet that calls most of its high waters low and its low waters high.
   *
   * @return whether it did
   */
  static boolean refuseExchangedKinds(List<Water> waters) {
    int pairs = 0;
    int exchanged = 0;
    for (int i = 1; i < waters.size(); i++) {
      Water before = waters.get(i - 1);
      Water after = waters.get(i);
      if (before.kind.isPresent()
          && after.kind.isPresent()
          && before.kind.get() != after.kind.get()
          && before.height != after.height) {
        pairs++;
        exchanged += (after.kind.get() == Kind.HIGH) == (after.height < before.height) ? 1 : 0;
      }
    }
    boolean most = exchanged >= FEWEST_EXCHANGED && 2 * exchanged > pairs;
    if (most) {
      waters
          .get(0)
          .row
          .problem(
              "kind",
              "high and low water seem to be exchanged throughout: of "
                  + pairs
                  + " waters that follow one of the other kind, "
                  + exchanged
                  + " go the wrong way");
    }
    return most;
  }

  /** Doubts what looks wrong; the waters are in order. */
  static void judge(List<Water> waters) {
    int count = waters.size();
    double[] seconds = new double[count];
    double[] heights = new double[count];
    for (int i = 0; i < count; i++) {
      seconds[i] = waters.get(i).time.toEpochSecond();
      heights[i] = waters.get(i).height;
    }
    StrayOffsets.doubt(rows(waters), times(waters));
    for (int i = 0; i < count; i++) {
      doubtHeight(waters.get(i), heights, i);
      if (Plausibility.timeIsFar(seconds, i)) {
        waters
            .get(i)
            .row
            .doubt(
                "time",
                TideJudgements.TIME_FAR,
                timeFar(
                    WaterFault.text(
                        waters.get(i).time.toInstant(), waters.get(i).time.getOffset())));
      }
    }
  }

  private static void doubtHeight(Water water, double[] heights, int i) {
    boolean compared = i > 0 && !Plausibility.heightIsFar(heights, i - 1);
    double change = compared ? Math.abs(heights[i] - heights[i - 1]) : 0.0;
    if (Plausibility.heightIsFar(heights, i)) {
      water.row.doubt(
          "height_m",
          TideJudgements.HEIGHT_FAR,
          Note.information(
                  "doubt.height",
                  heights[i] + " m is far from the other waters of its kind beside it.")
              .with("height", Double.toString(heights[i])));
    } else if (Math.max(change, heights[i]) > TideJudgements.RANGE_BEYOND_KNOWN.threshold()) {
      double told = Math.rint(change * 100.0) / 100.0;
      water.row.doubt(
          "height_m",
          TideJudgements.RANGE_BEYOND_KNOWN,
          Note.information(
                  "doubt.range",
                  heights[i]
                      + " m stands higher, or "
                      + told
                      + " m from the water before it, than any tide known.")
              .with("height", Double.toString(heights[i]))
              .with("change", Double.toString(told)));
    }
  }

  private static Note timeFar(String time) {
    return Note.information(
            "doubt.time",
            time
                + " is more than three quarters of an hour from where the waters of the days beside"
                + " it lead to expect it.")
        .with("water", time);
  }
}
