package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.sheet.Plausibility;

/** The high (or low) waters that a stream table's hours are counted from, each with its range. */
final class ReferenceTides implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] times;

  /** Metres; NaN where neither a rise nor a fall is known. */
  private final double[] ranges;

  /** What {@link StreamFlags} say of each range. */
  private final int[] flags;

  private ReferenceTides(double[] times, double[] ranges, int[] flags) {
    this.times = times;
    this.ranges = ranges;
    this.flags = flags;
  }

  static ReferenceTides of(TideTable table, TideEvent.Kind about, TideRange choice) {
    List<TideEvent> events = table.events();
    List<Integer> chosen = new ArrayList<>();
    for (int i = 0; i < events.size(); i++) {
      if (events.get(i).kind() == about) {
        chosen.add(i);
      }
    }
    double[] times = new double[chosen.size()];
    double[] ranges = new double[chosen.size()];
    int[] flags = new int[chosen.size()];
    for (int n = 0; n < times.length; n++) {
      times[n] = EpochSeconds.of(events.get(chosen.get(n)).time());
      if (Double.isNaN(choice.metres())) {
        double before = changeTo(events, chosen.get(n), -1);
        double after = changeTo(events, chosen.get(n), 1);
        if (Double.isNaN(before) || Double.isNaN(after)) {
          flags[n] = StreamFlags.ONE_SIDED_RANGE;
          ranges[n] = Double.isNaN(before) ? after : before;
        } else {
          flags[n] = Plausibility.rangeIsUnequal(before, after) ? StreamFlags.UNEQUAL_RANGE : 0;
          ranges[n] = Plausibility.rangeMetres(before, after);
        }
      } else {
        ranges[n] = choice.metres();
      }
    }
    if (!choice.zone().isEmpty()) {
      averageByDay(events, chosen, ranges, flags, ZoneId.of(choice.zone()));
    }
    return new ReferenceTides(times, ranges, flags);
  }

  /**
   * Rise or fall between a water and the one before or after it, metres; NaN at the table's end.
   */
  private static double changeTo(List<TideEvent> events, int from, int step) {
    int to = from + step;
    return to < 0 || to >= events.size()
        ? Double.NaN
        : Math.abs(events.get(to).height().metres() - events.get(from).height().metres());
  }

  private static void averageByDay(
      List<TideEvent> events, List<Integer> chosen, double[] ranges, int[] flags, ZoneId zone) {
    Map<LocalDate, double[]> sumAndCount = new HashMap<>();
    Map<LocalDate, Integer> flagsOfDay = new HashMap<>();
    for (int n = 0; n < ranges.length; n++) {
      if (!Double.isNaN(ranges[n])) {
        double[] day =
            sumAndCount.computeIfAbsent(day(events, chosen, n, zone), d -> new double[2]);
        day[0] += ranges[n];
        day[1]++;
        flagsOfDay.merge(day(events, chosen, n, zone), flags[n], (a, b) -> a | b);
      }
    }
    for (int n = 0; n < ranges.length; n++) {
      double[] day = sumAndCount.get(day(events, chosen, n, zone));
      ranges[n] = day == null ? Double.NaN : day[0] / day[1];
      flags[n] = flagsOfDay.getOrDefault(day(events, chosen, n, zone), 0);
    }
  }

  private static LocalDate day(List<TideEvent> events, List<Integer> chosen, int n, ZoneId zone) {
    return events.get(chosen.get(n)).time().atZone(zone).toLocalDate();
  }

  int count() {
    return times.length;
  }

  double time(int n) {
    return times[n];
  }

  double rangeMetres(int n) {
    return ranges[n];
  }

  /** What {@link StreamFlags} say of a tide's range. */
  int flags(int n) {
    return flags[n];
  }

  /** The tide nearest in time, the later one halfway between two; -1 if there is none. */
  int nearest(double t) {
    int best = -1;
    for (int low = 0, high = times.length - 1; low <= high; ) {
      int middle = (low + high) >>> 1;
      if (times[middle] <= t) {
        best = middle;
        low = middle + 1;
      } else {
        high = middle - 1;
      }
    }
    if (best < 0) {
      return times.length == 0 ? -1 : 0;
    }
    return best + 1 < times.length && times[best + 1] - t <= t - times[best] ? best + 1 : best;
  }
}
