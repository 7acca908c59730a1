package org.ferryglide.tide.sheet;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.ferryglide.nav.note.Note;

/**
 * Whether the offsets from UTC of a sheet's rows can be those of one clock.
 *
 * <p>A clock is changed twice a year at most. An offset that leaves those of the rows around it and
 * returns within {@link TideJudgements#OFFSET_RETURNS} is a slip of the pen, and is refused; one
 * that changes within that time of the sheet's start or end is doubted.
 *
 * <pre>{@code
 * StrayOffsets.refuse(rows, times);
 * StrayOffsets.doubt(rows, times);
 * }</pre>
 */
public final class StrayOffsets {
  private static final Duration SOONEST_RETURN =
      Duration.ofDays((long) TideJudgements.OFFSET_RETURNS.threshold());

  private StrayOffsets() {}

  /**
   * Records a problem for each row whose offset leaves that of the rows around it for a few days.
   *
   * @param rows rows with a column of times, in order of time
   * @param times their times, as many
   */
  public static void refuse(List<Sheet.Row> rows, List<OffsetDateTime> times) {
    for (int from = 0, until; from < times.size(); from = until) {
      until = endOfOffset(times, from);
      if (from == 0 || until == times.size()) {
        continue;
      }
      OffsetDateTime before = times.get(from - 1);
      OffsetDateTime after = times.get(until);
      if (Duration.between(before, after).compareTo(SOONEST_RETURN) < 0) {
        for (int i = from; i < until; i++) {
          rows.get(i)
              .problem(
                  "time",
                  "its offset from UTC must be that of the rows around it, "
                      + before.getOffset()
                      + (before.getOffset().equals(after.getOffset())
                          ? ""
                          : " and " + after.getOffset())
                      + ", since no clock is changed and changed again within 20 days, but was "
                      + times.get(i).getOffset());
        }
      }
    }
  }

  /** Index after the last row of a run that keeps one offset. */
  private static int endOfOffset(List<OffsetDateTime> times, int from) {
    ZoneOffset offset = times.get(from).getOffset();
    int until = from;
    while (until < times.size() && times.get(until).getOffset().equals(offset)) {
      until++;
    }
    return until;
  }

  /**
   * Records a doubt where the offset changes near the sheet's start or end.
   *
   * @param rows rows with a column of times, in order of time, at least one
   * @param times their times, as many
   */
  public static void doubt(List<Sheet.Row> rows, List<OffsetDateTime> times) {
    int last = times.size() - 1;
    int afterFirst = endOfOffset(times, 0);
    if (afterFirst > last) {
      return;
    }
    int inLast = last;
    while (times.get(inLast - 1).getOffset().equals(times.get(last).getOffset())) {
      inLast--;
    }
    Duration atStart = Duration.between(times.get(0), times.get(afterFirst));
    Duration atEnd = Duration.between(times.get(inLast - 1), times.get(last));
    if (atStart.compareTo(SOONEST_RETURN) < 0) {
      doubtChange(rows, times, afterFirst);
    }
    if (atEnd.compareTo(SOONEST_RETURN) < 0
        && !(inLast == afterFirst && atStart.compareTo(SOONEST_RETURN) < 0)) {
      doubtChange(rows, times, inLast);
    }
  }

  private static void doubtChange(List<Sheet.Row> rows, List<OffsetDateTime> times, int changed) {
    rows.get(changed)
        .doubt(
            "time",
            TideJudgements.OFFSET_NEAR_END,
            Note.information(
                    "doubt.offset",
                    "the offset from UTC changes here from "
                        + times.get(changed - 1).getOffset()
                        + " to "
                        + times.get(changed).getOffset()
                        + ", which is right only if the clocks are changed on that day.")
                .with("before", times.get(changed - 1).getOffset().toString())
                .with("after", times.get(changed).getOffset().toString()));
  }
}
