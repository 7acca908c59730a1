package org.ferryglide.nav.steer;

import java.util.Optional;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.water.StreamField;

/**
 * A stream by the hour, the same everywhere: held in steps about the hours, or in straight lines.
 */
public final class HourlyStream implements StreamField {
  private static final long serialVersionUID = 1L;

  final double start;
  final double[] east;
  final double[] north;
  final boolean steps;

  private HourlyStream(double start, double[] east, double[] north, boolean steps) {
    this.start = start;
    this.east = east;
    this.north = north;
    this.steps = steps;
  }

  /** Value i holds from half an hour before hour i to half an hour after it. */
  public static HourlyStream steps(double start, double[] eastKnots, double[] northKnots) {
    return new HourlyStream(start, metres(eastKnots), metres(northKnots), true);
  }

  /** Value i is that at hour i; between hours the parts change in straight lines. */
  public static HourlyStream lines(double start, double[] eastKnots, double[] northKnots) {
    return new HourlyStream(start, metres(eastKnots), metres(northKnots), false);
  }

  private static double[] metres(double[] knots) {
    double[] metres = new double[knots.length];
    for (int i = 0; i < knots.length; i++) {
      metres[i] = knots[i] * Speed.METRES_PER_SECOND_PER_KNOT;
    }
    return metres;
  }

  @Override
  public boolean sample(double latitude, double longitude, double time, double[] out, int offset) {
    double hours = (time - start) / 3600.0;
    if (steps) {
      int i = (int) Math.floor(hours + 0.5);
      if (i < 0 || i >= east.length) {
        return false;
      }
      out[offset] = east[i];
      out[offset + 1] = north[i];
      return true;
    }
    int i = (int) Math.floor(hours);
    if (i < 0 || i >= east.length - 1) {
      return false;
    }
    double part = hours - i;
    out[offset] = east[i] + part * (east[i + 1] - east[i]);
    out[offset + 1] = north[i] + part * (north[i + 1] - north[i]);
    return true;
  }

  @Override
  public double nextBreakAfter(double time) {
    double half = steps ? 0.5 : 0.0;
    double hour = Math.floor((time - start) / 3600.0 + half) + 1.0 - half;
    double next = start + hour * 3600.0;
    return next > time ? next : next + 3600.0;
  }

  @Override
  public Optional<Speed> maxRate() {
    double most = 0.0;
    for (int i = 0; i < east.length; i++) {
      most = Math.max(most, Math.hypot(east[i], north[i]));
    }
    return Optional.of(Speed.ofMetresPerSecond(most));
  }

  @Override
  public boolean isUniform() {
    return true;
  }
}
