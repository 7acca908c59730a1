package org.ferryglide.tide.height;

import java.io.Serializable;

/**
 * The rule of twelfths by the clock: 1, 2, 3, 3, 2 and 1 twelfths in the six hours after the last
 * water. After six hours the tide stands; where the next water comes sooner, the last line goes
 * straight to it.
 */
final class HourlyTwelfthsShape implements SegmentShape, Serializable {
  private static final long serialVersionUID = 1L;

  /** What is left of the last hour joins the one before if it is shorter than this, hours. */
  private static final double SHORTEST_HOUR = 0.25;

  private final double[] hours;

  HourlyTwelfthsShape(TideTable table) {
    hours = new double[table.segments()];
    for (int segment = 0; segment < hours.length; segment++) {
      hours[segment] = (table.seconds(segment + 1) - table.seconds(segment)) / 3600.0;
    }
  }

  @Override
  public double passed(int segment, double fraction) {
    double hour = fraction * hours[segment];
    double last = lastWholeHour(segment);
    if (hour <= last) {
      return TideShapes.twelfths(hour / 6.0);
    }
    double passed = TideShapes.twelfths(last / 6.0);
    return passed + (1.0 - passed) * (hour - last) / (hours[segment] - last);
  }

  @Override
  public double slope(int segment, double fraction) {
    double hour = fraction * hours[segment];
    double last = lastWholeHour(segment);
    if (hour < last) {
      return TideShapes.twelfthsSlope(hour / 6.0) * hours[segment] / 6.0;
    }
    return (1.0 - TideShapes.twelfths(last / 6.0)) * hours[segment] / (hours[segment] - last);
  }

  @Override
  public double greatestSlopeChange(int segment) {
    return 0.0;
  }

  @Override
  public double nextBreak(int segment, double fraction) {
    double hour = Math.floor(fraction * hours[segment]) + 1.0;
    return hour > lastWholeHour(segment) ? 1.0 : hour / hours[segment];
  }

  /** The last hour of the rule that ends before the next water, at most 6. */
  private double lastWholeHour(int segment) {
    return hours[segment] > 6.0 ? 6.0 : Math.max(0.0, Math.floor(hours[segment] - SHORTEST_HOUR));
  }
}
