package org.ferryglide.tide.stream;

import java.util.ArrayList;
import java.util.List;

/**
 * The time for which one row of an hourly table holds: half an hour either side, cut or stretched
 * to meet the rows of the next tide halfway between the two high (or low) waters.
 */
record HourSpan(int tide, int row, double start, double end) {

  /** How long a row holds either side of its hour, seconds. */
  private static final double HALF_AN_HOUR = 1800.0;

  /** All spans in order of time; they never overlap. */
  static List<HourSpan> all(double[] tideTimes, int[] hours, double longestBridgeSeconds) {
    List<HourSpan> spans = new ArrayList<>();
    int last = hours.length - 1;
    for (int i = 0; i < tideTimes.length; i++) {
      double from = meeting(tideTimes, i - 1);
      double to = meeting(tideTimes, i);
      for (int r = 0; r <= last; r++) {
        double hour = tideTimes[i] + 3600.0 * hours[r];
        double start = hour - HALF_AN_HOUR;
        double end = hour + HALF_AN_HOUR;
        if (r == 0 && i > 0) {
          double open = start - (tideTimes[i - 1] + 3600.0 * hours[last] + HALF_AN_HOUR);
          start = open <= longestBridgeSeconds ? Math.min(start, from) : start;
        }
        if (r == last && i < tideTimes.length - 1) {
          double open = tideTimes[i + 1] + 3600.0 * hours[0] - HALF_AN_HOUR - end;
          end = open <= longestBridgeSeconds ? Math.max(end, to) : end;
        }
        start = Math.max(start, from);
        end = Math.min(end, to);
        if (start < end) {
          spans.add(new HourSpan(i, r, start, end));
        }
      }
    }
    return spans;
  }

  /** Halfway between a tide and the next; infinite before the first and after the last. */
  private static double meeting(double[] tideTimes, int i) {
    if (i < 0) {
      return Double.NEGATIVE_INFINITY;
    }
    return i + 1 < tideTimes.length
        ? tideTimes[i] + (tideTimes[i + 1] - tideTimes[i]) / 2.0
        : Double.POSITIVE_INFINITY;
  }
}
