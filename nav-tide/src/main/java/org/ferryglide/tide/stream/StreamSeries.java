package org.ferryglide.tide.stream;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.water.EpochSeconds;
import org.ferryglide.nav.water.StreamField;

/** A stream at one place looked at every so often, and closer where something happens. */
final class StreamSeries {
  /** How closely times are found, seconds. */
  private static final double RESOLUTION_SECONDS = 0.25;

  private static final double GOLDEN = 0.6180339887498949;

  /** Something that holds or does not hold of a stream. */
  interface Test {
    boolean holds(double epochSeconds, double east, double north);
  }

  private final StreamField field;
  private final double latitude;
  private final double longitude;
  private final double start;
  private final double end;
  private final double step;
  private final double[] east;
  private final double[] north;
  private final double[] here = new double[2];

  StreamSeries(
      StreamField field, double latitude, double longitude, double start, double end, double step) {
    this.field = field;
    this.latitude = latitude;
    this.longitude = longitude;
    this.start = start;
    this.end = end;
    this.step = step;
    int count = (int) Math.ceil((end - start) / step) + 1;
    this.east = new double[count];
    this.north = new double[count];
    int even = 0;
    if (field instanceof HarmonicStream harmonic) {
      even = count - 1; // the last value is at the end, which may not be a whole step away
      harmonic.fill(start, step, east, north, even);
    }
    for (int i = even; i < count; i++) {
      if (field.sample(latitude, longitude, time(i), here, 0)) {
        east[i] = here[0];
        north[i] = here[1];
      } else {
        east[i] = Double.NaN;
        north[i] = Double.NaN;
      }
    }
  }

  int count() {
    return east.length;
  }

  double time(int i) {
    return Math.min(start + i * step, end);
  }

  double step() {
    return step;
  }

  boolean hasData(int i) {
    return !Double.isNaN(east[i]);
  }

  double east(int i) {
    return east[i];
  }

  double north(int i) {
    return north[i];
  }

  double rateSquared(int i) {
    return east[i] * east[i] + north[i] * north[i];
  }

  /** Square of the rate at any time; infinite where there are no data. */
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
    return !hasData(i) ? -1 : test.holds(time(i), east[i], north[i]) ? 1 : 0;
  }

  private int stateAt(Test test, double t) {
    return !field.sample(latitude, longitude, t, here, 0)
        ? -1
        : test.holds(t, here[0], here[1]) ? 1 : 0;
  }

  /** The last time before sample {@code i} at which things are still as at sample {@code i - 1}. */
  double changeBefore(Test test, int i) {
    int before = state(test, i - 1);
    double low = time(i - 1);
    double high = time(i);
    while (high - low > RESOLUTION_SECONDS) {
      double middle = low + (high - low) / 2.0;
      if (stateAt(test, middle) == before) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low + (high - low) / 2.0;
  }

  List<StreamWindow> windows(Test test) {
    List<StreamWindow> windows = new ArrayList<>();
    double from = start;
    boolean openBefore = true;
    int before = state(test, 0);
    for (int i = 1; i <= count(); i++) {
      int now = i < count() ? state(test, i) : -2;
      if (now == before) {
        continue;
      }
      double change = i < count() ? changeBefore(test, i) : end;
      if (before == 1) {
        windows.add(
            new StreamWindow(
                EpochSeconds.toInstant(from), EpochSeconds.toInstant(change), openBefore, now < 0));
      }
      from = change;
      openBefore = before < 0;
      before = now;
    }
    return List.copyOf(windows);
  }
}
