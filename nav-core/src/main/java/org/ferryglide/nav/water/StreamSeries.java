package org.ferryglide.nav.water;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.Edge;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;

/** A stream at one place looked at every so often, and closer where something happens. */
final class StreamSeries {
  /** How closely times are found, seconds. */
  private static final double RESOLUTION_SECONDS = 0.25;

  /** (√5 - 1) / 2: each cut of a golden section search leaves this share. */
  private static final double GOLDEN = 0.6180339887498949;

  private static final int NO_DATA = -1;
  private static final int FAILS = 0;
  private static final int HOLDS = 1;

  /** Something that holds or does not hold of a stream. */
  interface Test {
    boolean holds(double epochSeconds, double east, double north);
  }

  private final StreamField field;
  private final TimeSpan asked;
  private final double latitude;
  private final double longitude;
  private final double start;
  private final double end;
  private final double step;

  /** East and north of each look in turn; NaN where there are no data. */
  private final double[] flow;

  /** Where this fails there are no data either. */
  private Test known = (t, east, north) -> true;

  private final double[] here = new double[2];

  StreamSeries(StreamField field, Position position, TimeSpan asked, double step) {
    this.field = field;
    this.asked = asked;
    this.latitude = position.latitudeDegrees();
    this.longitude = position.longitudeDegrees();
    this.start = EpochSeconds.of(asked.from());
    this.end = EpochSeconds.of(asked.until());
    this.step = step;
    int count = (int) Math.ceil((end - start) / step) + 1;
    this.flow = new double[2 * count];
    field.sampleEvenly(latitude, longitude, start, step, count - 1, flow, 0);
    // the last look is at the end, which may not be a whole step away
    field.sampleEvenly(latitude, longitude, end, step, 1, flow, 2 * (count - 1));
  }

  /** Takes times at which a test fails as times without data: there is no wind to be had. */
  void see(Test onlyWhere) {
    for (int i = 0; i < count(); i++) {
      if (hasData(i) && !onlyWhere.holds(time(i), east(i), north(i))) {
        flow[2 * i] = Double.NaN;
      }
    }
    known = onlyWhere;
  }

  TimeSpan asked() {
    return asked;
  }

  int count() {
    return flow.length / 2;
  }

  double time(int i) {
    return Math.min(start + i * step, end);
  }

  boolean hasData(int i) {
    return !Double.isNaN(flow[2 * i]);
  }

  double east(int i) {
    return flow[2 * i];
  }

  double north(int i) {
    return flow[2 * i + 1];
  }

  double rateSquared(int i) {
    return east(i) * east(i) + north(i) * north(i);
  }

  /** Square of the rate at any time; NaN where there are no data. */
  private double rateSquaredAt(double t) {
    return field.sample(latitude, longitude, t, here, 0)
        ? here[0] * here[0] + here[1] * here[1]
        : Double.NaN;
  }

  StreamMoment moment(double t) {
    if (!field.sample(latitude, longitude, t, here, 0)) {
      throw new IllegalStateException("no data at a time within the data: " + t);
    }
    return new StreamMoment(EpochSeconds.toInstant(t), Velocity.ofEastAndNorth(here[0], here[1]));
  }

  /**
   * The time near a sample where the rate is greatest ({@code sign} 1) or least ({@code sign} -1).
   */
  double extremeNear(int i, double sign) {
    double low = time(Math.max(0, i - 1));
    double high = time(Math.min(count() - 1, i + 1));
    double best = time(i);
    double bestValue = sign * rateSquared(i);
    double left = high - GOLDEN * (high - low);
    double right = low + GOLDEN * (high - low);
    double atLeft = sign * rateSquaredAt(left);
    double atRight = sign * rateSquaredAt(right);
    while (high - low > RESOLUTION_SECONDS) {
      if (atLeft > bestValue) {
        best = left;
        bestValue = atLeft;
      }
      if (atRight > bestValue) {
        best = right;
        bestValue = atRight;
      }
      if (atLeft >= atRight) {
        high = right;
        right = left;
        atRight = atLeft;
        left = high - GOLDEN * (high - low);
        atLeft = sign * rateSquaredAt(left);
      } else {
        low = left;
        left = right;
        atLeft = atRight;
        right = low + GOLDEN * (high - low);
        atRight = sign * rateSquaredAt(right);
      }
    }
    return best;
  }

  private int state(Test test, int i) {
    return !hasData(i) ? NO_DATA : test.holds(time(i), east(i), north(i)) ? HOLDS : FAILS;
  }

  private int stateAt(Test test, double t) {
    return !field.sample(latitude, longitude, t, here, 0) || !known.holds(t, here[0], here[1])
        ? NO_DATA
        : test.holds(t, here[0], here[1]) ? HOLDS : FAILS;
  }

  /** The last time before sample {@code i} at which things are still as at sample {@code i - 1}. */
  double changeBefore(Test test, int i) {
    int before = state(test, i - 1);
    return Edge.of(t -> stateAt(test, t) == before, time(i - 1), time(i), 0.5 * RESOLUTION_SECONDS);
  }

  /** The windows in which a test holds. */
  List<Window> windows(Test test) {
    List<Window> windows = new ArrayList<>();
    double from = start;
    boolean openBefore = true;
    int before = state(test, 0);
    for (int i = 1; i <= count(); i++) {
      int now = i < count() ? state(test, i) : NO_DATA;
      if (now == before && i < count()) {
        continue;
      }
      double change = i < count() ? changeBefore(test, i) : end;
      if (before == HOLDS) {
        windows.add(new Window(span(from, change), openBefore, now == NO_DATA));
      }
      from = change;
      openBefore = before == NO_DATA;
      before = now;
    }
    return windows;
  }

  /** The parts of the search for which there are data. */
  List<TimeSpan> seen() {
    if (isWhole()) { // nearly always, and then a look at each sample is enough
      return List.of(span(start, end));
    }
    List<TimeSpan> seen = new ArrayList<>();
    for (Window window : windows((t, east, north) -> true)) {
      seen.add(window.span());
    }
    return seen;
  }

  private boolean isWhole() {
    for (int i = 0; i < flow.length; i += 2) {
      if (Double.isNaN(flow[i])) {
        return false;
      }
    }
    return true;
  }

  /** A span of the search; its own ends are given back exactly as they were asked for. */
  private TimeSpan span(double from, double until) {
    return TimeSpan.of(
        from == start ? asked.from() : EpochSeconds.toInstant(from),
        until == end ? asked.until() : EpochSeconds.toInstant(until));
  }
}
