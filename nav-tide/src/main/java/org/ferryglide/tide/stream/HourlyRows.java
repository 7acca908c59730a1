package org.ferryglide.tide.stream;

import java.util.Arrays;
import java.util.List;
import org.ferryglide.nav.measure.Distance;

/** Lays the rows of an hourly table along the tides of its standard port. */
final class HourlyRows {
  /** A hole between rows longer than this is not bridged, seconds. */
  static final double LONGEST_BRIDGE_SECONDS = 3.0 * 3600.0;

  private final int[] hours;

  /** Tides whose range is known. */
  private final double[] tideTimes;

  /** East and north of every row of every tide. */
  private final double[] flow;

  private final int[] rowFlags;

  /** For each tide the first and the last row that counts when rows are joined. */
  private final int[] firstRow;

  private final int[] lastRow;

  private HourlyRows(int[] hours, double[] tideTimes) {
    this.hours = hours;
    this.firstRow = new int[tideTimes.length];
    this.lastRow = new int[tideTimes.length];
    Arrays.fill(lastRow, hours.length - 1);
    this.tideTimes = tideTimes;
    this.flow = new double[2 * hours.length * tideTimes.length];
    this.rowFlags = new int[hours.length * tideTimes.length];
  }

  static PiecewiseStream of(StreamTable table, ReferenceTides tides, BetweenHours between) {
    HourlyRows rows = scaled(table, tides);
    if (rows.tideTimes.length == 0) {
      return PiecewiseStream.empty();
    }
    return between == BetweenHours.HOURLY_STEPS ? rows.steps() : rows.joined(between);
  }

  /** When each row of each tide with a known range holds by the half-hour rule. */
  static List<HourSpan> spans(StreamTable table, ReferenceTides tides) {
    HourlyRows rows = scaled(table, tides);
    return HourSpan.all(rows.tideTimes, rows.hours, LONGEST_BRIDGE_SECONDS);
  }

  private static HourlyRows scaled(StreamTable table, ReferenceTides tides) {
    int[] known = new int[tides.count()];
    int count = 0;
    for (int n = 0; n < known.length; n++) {
      if (!Double.isNaN(tides.rangeMetres(n))) {
        known[count++] = n;
      }
    }
    List<StreamHour> printed = table.hours();
    double[] times = new double[count];
    for (int i = 0; i < count; i++) {
      times[i] = tides.time(known[i]);
    }
    HourlyRows rows = new HourlyRows(printed.stream().mapToInt(StreamHour::hour).toArray(), times);
    StandardPort port = table.standardPort();
    for (int i = 0; i < count; i++) {
      double springFraction =
          port.meanRanges().springFraction(Distance.ofMetres(tides.rangeMetres(known[i])));
      int tideFlags = StreamFlags.ofSpringFraction(springFraction) | tides.flags(known[i]);
      for (int r = 0; r < printed.size(); r++) {
        rows.scale(i * printed.size() + r, printed.get(r), springFraction, tideFlags);
      }
    }
    return rows;
  }

  private void scale(int at, StreamHour row, double springFraction, int tideFlags) {
    double neap = row.neapRate().metresPerSecond();
    double spring = row.springRate().metresPerSecond();
    double rate = StreamRates.atSpringFraction(neap, spring, springFraction);
    double set = Math.toRadians(row.set().degrees());
    flow[2 * at] = rate * Math.sin(set);
    flow[2 * at + 1] = rate * Math.cos(set);
    rowFlags[at] = tideFlags;
    if (StreamRates.unfloored(neap, spring, springFraction) < 0.0) {
      rowFlags[at] |= StreamFlags.FLOORED;
    }
  }

  private PiecewiseStream steps() {
    List<HourSpan> spans = HourSpan.all(tideTimes, hours, LONGEST_BRIDGE_SECONDS);
    BreakPointList breaks = new BreakPointList();
    for (int k = 0; k < spans.size(); k++) {
      HourSpan span = spans.get(k);
      if (k > 0 && spans.get(k - 1).end() < span.start()) {
        breaks.add(spans.get(k - 1).end(), 0.0, 0.0, PiecewiseStream.GAP);
      }
      int at = span.tide() * hours.length + span.row();
      double held = Math.max(span.end() - time(at), time(at) - span.start());
      int bridging = held > 1800.0 + 1e-3 ? StreamFlags.BLENDED : 0;
      breaks.add(
          span.start(), flow[2 * at], flow[2 * at + 1], rowFlags[at] | StreamFlags.HELD | bridging);
    }
    return breaks.steps(spans.get(spans.size() - 1).end());
  }

  private PiecewiseStream joined(BetweenHours between) {
    BreakPointList breaks = new BreakPointList();
    int rows = hours.length;
    double[] mixed = new double[2];
    double[] other = new double[2];
    partCrowdedTides();
    for (int i = 0; i < tideTimes.length; i++) {
      for (int r = firstRow[i]; r <= lastRow[i]; r++) {
        int at = i * rows + r;
        double t = time(at);
        mixed[0] = flow[2 * at];
        mixed[1] = flow[2 * at + 1];
        if (i > 0 && t < last(i - 1)) {
          lineAt(i - 1, t, other);
          mix(other, mixed, (t - first(i)) / (last(i - 1) - first(i)), mixed);
        }
        if (i + 1 < tideTimes.length && t > first(i + 1)) {
          lineAt(i + 1, t, other);
          mix(mixed, other, (t - first(i + 1)) / (last(i) - first(i + 1)), mixed);
        }
        breaks.add(t, mixed[0], mixed[1], rowFlags[at]);
      }
    }
    breaks.sortByTime();
    int[] segments = new int[breaks.size() - 1];
    int begun = 0; // tides whose rows have begun
    for (int k = 0; k < segments.length; k++) {
      double middle = breaks.time(k) + (breaks.time(k + 1) - breaks.time(k)) / 2.0;
      while (begun < tideTimes.length && first(begun) <= middle) {
        begun++;
      }
      boolean bridged = breaks.time(k + 1) - breaks.time(k) <= LONGEST_BRIDGE_SECONDS;
      segments[k] =
          breaks.flags(k)
              | breaks.flags(k + 1)
              | (bridged ? kind(middle, begun) : PiecewiseStream.GAP);
    }
    return between == BetweenHours.SMOOTH
        ? PiecewiseStream.cubics(breaks.times(), breaks.eastNorth(), segments)
        : PiecewiseStream.lines(breaks.times(), breaks.eastNorth(), segments);
  }

  /** What the rows say at a time between two break points. */
  private int kind(double t, int begun) {
    boolean inLast = t <= last(begun - 1);
    boolean inTheOneBefore = begun > 1 && t <= last(begun - 2);
    if (inLast && inTheOneBefore) {
      return StreamFlags.CROSS_FADED;
    }
    return inLast || inTheOneBefore ? StreamFlags.INTERPOLATED : StreamFlags.BLENDED;
  }

  /**
   * Leaves out rows so that at most two tides count at a time: of tides with another between them
   * whose rows overlap, the row farthest from its own water goes first. One row of each is always
   * left, since rows of one hour never overlap.
   */
  private void partCrowdedTides() {
    for (int i = 0; i + 2 < tideTimes.length; i++) {
      for (int j = i + 2; j < tideTimes.length && first(j) < last(i); j++) {
        while (first(j) < last(i)) {
          if (last(i) - tideTimes[i] >= tideTimes[j] - first(j)) {
            lastRow[i]--;
          } else {
            firstRow[j]++;
          }
        }
        for (int at = i * hours.length; at < (j + 1) * hours.length; at++) {
          rowFlags[at] |= StreamFlags.CROWDED;
        }
      }
    }
  }

  private double time(int at) {
    return tideTimes[at / hours.length] + 3600.0 * hours[at % hours.length];
  }

  private double first(int tide) {
    return time(tide * hours.length + firstRow[tide]);
  }

  private double last(int tide) {
    return time(tide * hours.length + lastRow[tide]);
  }

  /** One tide's rows joined by straight lines, at a time within them. */
  private void lineAt(int tide, double t, double[] out) {
    int r = firstRow[tide];
    while (r + 2 <= lastRow[tide] && time(tide * hours.length + r + 1) <= t) {
      r++;
    }
    int at = tide * hours.length + r;
    int next = r < lastRow[tide] ? at + 1 : at;
    double w = next == at ? 0.0 : (t - time(at)) / (time(next) - time(at));
    for (int axis = 0; axis < 2; axis++) {
      out[axis] = flow[2 * at + axis] * (1.0 - w) + flow[2 * next + axis] * w;
    }
  }

  private static void mix(double[] a, double[] b, double weightOfB, double[] out) {
    out[0] = a[0] * (1.0 - weightOfB) + b[0] * weightOfB;
    out[1] = a[1] * (1.0 - weightOfB) + b[1] * weightOfB;
  }
}
