package org.ferryglide.tide.height;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.ferryglide.tide.height.TideEvent.Kind;
import org.ferryglide.tide.height.TideTableReader.Water;
import org.ferryglide.tide.sheet.Plausibility;
import org.ferryglide.tide.sheet.TideJudgements;

/** Judges the waters of a sheet beside each other. */
final class TideTableDoubts {
  private static final Duration SOONEST_RETURN =
      Duration.ofDays((long) TideJudgements.OFFSET_RETURNS.threshold());

  /** With fewer, every row is told of by itself. */
  private static final int FEWEST_EXCHANGED = 3;

  private TideTableDoubts() {}

  /** Refuses rows whose offset from UTC leaves that of the rows around them for a few days. */
  static void refuseStrayOffsets(List<Water> waters) {
    for (int from = 0, until; from < waters.size(); from = until) {
      until = endOfOffset(waters, from);
      if (from == 0 || until == waters.size()) {
        continue;
      }
      OffsetDateTime before = waters.get(from - 1).time;
      OffsetDateTime after = waters.get(until).time;
      if (Duration.between(before, after).compareTo(SOONEST_RETURN) < 0) {
        for (int i = from; i < until; i++) {
          waters
              .get(i)
              .row
              .problem(
                  "time",
                  "its offset from UTC must be that of the rows around it, "
                      + before.getOffset()
                      + (before.getOffset().equals(after.getOffset())
                          ? ""
                          : " and " + after.getOffset())
                      + ", since no clock is changed and changed again within 20 days, but was "
                      + waters.get(i).time.getOffset());
        }
      }
    }
  }

  /** Index after the last row of a run that keeps one offset. */
  private static int endOfOffset(List<Water> waters, int from) {
    ZoneOffset offset = waters.get(from).time.getOffset();
    int until = from;
    while (until < waters.size() && waters.get(until).time.getOffset().equals(offset)) {
      until++;
    }
    return until;
  }

  /** Refuses, once, a sheet that calls most of its high waters low and its low waters high. */
  static void refuseExchangedKinds(List<Water> waters) {
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
    if (exchanged >= FEWEST_EXCHANGED && 2 * exchanged > pairs) {
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
    doubtOffsets(waters);
    for (int i = 0; i < count; i++) {
      doubtHeight(waters.get(i), heights, i);
      if (Plausibility.timeIsFar(seconds, i)) {
        waters
            .get(i)
            .row
            .doubt(
                "time",
                TideJudgements.TIME_FAR,
                WaterFault.text(waters.get(i).time.toInstant(), waters.get(i).time.getOffset())
                    + " is more than three quarters of an hour from where the waters of the days"
                    + " beside it lead to expect it.");
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
          heights[i] + " m is far from the other waters of its kind beside it.");
    } else if (Math.max(change, heights[i]) > TideJudgements.RANGE_BEYOND_KNOWN.threshold()) {
      water.row.doubt(
          "height_m",
          TideJudgements.RANGE_BEYOND_KNOWN,
          heights[i]
              + " m stands higher, or "
              + Math.rint(change * 100.0) / 100.0
              + " m from the water before it, than any tide known.");
    }
  }

  private static void doubtOffsets(List<Water> waters) {
    int last = waters.size() - 1;
    int afterFirst = endOfOffset(waters, 0);
    if (afterFirst > last) {
      return;
    }
    int inLast = last;
    while (waters.get(inLast - 1).time.getOffset().equals(waters.get(last).time.getOffset())) {
      inLast--;
    }
    Duration atStart = Duration.between(waters.get(0).time, waters.get(afterFirst).time);
    Duration atEnd = Duration.between(waters.get(inLast - 1).time, waters.get(last).time);
    if (atStart.compareTo(SOONEST_RETURN) < 0) {
      doubtOffset(waters, afterFirst);
    }
    if (atEnd.compareTo(SOONEST_RETURN) < 0
        && !(inLast == afterFirst && atStart.compareTo(SOONEST_RETURN) < 0)) {
      doubtOffset(waters, inLast);
    }
  }

  private static void doubtOffset(List<Water> waters, int changed) {
    waters
        .get(changed)
        .row
        .doubt(
            "time",
            TideJudgements.OFFSET_NEAR_END,
            "the offset from UTC changes here from "
                + waters.get(changed - 1).time.getOffset()
                + " to "
                + waters.get(changed).time.getOffset()
                + ", which is right only if the clocks are changed on that day.");
  }
}
