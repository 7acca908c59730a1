package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;

/** What closes a danger. */
sealed interface Closing extends Serializable {

  String words();

  /** Whether it closes what lies at a place then: 1 if so, 0 if not, NaN if that is not known. */
  double closes(Waters waters, double time);

  /**
   * Whether it closes what lies at a place at some time in a span: 1 if so, 0 if not, NaN if that
   * is not known. What water and wind decide is asked at both ends, between which they change
   * little.
   */
  default double closes(Waters waters, double from, double until) {
    double last = closes(waters, until);
    if (last == 1.0 || from == until) {
      return last;
    }
    double first = closes(waters, from);
    return first == 1.0 ? 1.0 : first + last; // NaN stays
  }

  /** The port whose level decides; empty for what no level decides. */
  default Optional<String> port() {
    return Optional.empty();
  }

  /**
   * The water and wind that count at a danger.
   *
   * @param passage whose they are
   * @param latitude of the danger's middle, degrees
   * @param longitude of the danger's middle, degrees
   * @param rateFactor by what the rate of the stream is multiplied
   */
  record Waters(Passage passage, double latitude, double longitude, double rateFactor) {}

  private static double answer(boolean closed) {
    return closed ? 1.0 : 0.0;
  }

  record During(List<TimeSpan> spans) implements Closing {
    private static final long serialVersionUID = 1L;

    @Override
    public String words() {
      return "at stated times";
    }

    @Override
    public double closes(Waters waters, double time) {
      return closes(waters, time, time);
    }

    /** However short, a stated time counts. */
    @Override
    public double closes(Waters waters, double from, double until) {
      for (TimeSpan span : spans) {
        if (until >= EpochSeconds.of(span.from()) && from <= EpochSeconds.of(span.until())) {
          return 1.0;
        }
      }
      return 0.0;
    }
  }

  record AboveStream(Speed rate) implements Closing {
    private static final long serialVersionUID = 1L;

    @Override
    public String words() {
      return "in streams above " + rate.inKnots(1);
    }

    @Override
    public double closes(Waters at, double time) {
      double[] flow = new double[2];
      if (!at.passage.stream().sample(at.latitude, at.longitude, time, flow, 0)) {
        return Double.NaN;
      }
      return answer(Math.hypot(flow[0], flow[1]) * at.rateFactor > rate.metresPerSecond());
    }
  }

  record AboveWind(Speed speed) implements Closing {
    private static final long serialVersionUID = 1L;

    @Override
    public String words() {
      return "in winds above " + speed.inKnots(0);
    }

    @Override
    public double closes(Waters at, double time) {
      double[] flow = new double[2];
      boolean known =
          at.passage
              .wind()
              .map(wind -> wind.sample(at.latitude, at.longitude, time, flow, 0))
              .orElse(false);
      return known ? answer(Math.hypot(flow[0], flow[1]) > speed.metresPerSecond()) : Double.NaN;
    }
  }

  record Level(String portName, double metres, boolean above) implements Closing {
    private static final long serialVersionUID = 1L;

    @Override
    public String words() {
      return "with the water " + (above ? "above " : "below ") + metres + " m at " + portName;
    }

    @Override
    public double closes(Waters waters, double time) {
      double over = waters.passage.level(portName).heightMetres(time) - metres;
      return Double.isFinite(over) ? answer(over > 0.0 == above) : Double.NaN;
    }

    @Override
    public Optional<String> port() {
      return Optional.of(portName);
    }
  }
}
