package org.ferryglide.benchmarks;

import java.util.Optional;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.water.StreamField;

/** A tidal stream by the hour for three weeks, the same everywhere, in steps or straight lines. */
final class HourlyTable implements StreamField {
  private static final long serialVersionUID = 1L;

  private static final int HOURS = 21 * 24;

  private final double start;
  private final boolean steps;
  private final double[] east = new double[HOURS];
  private final double[] north = new double[HOURS];

  HourlyTable(double start, boolean steps, double springKnots) {
    this.start = start;
    this.steps = steps;
    for (int i = 0; i < HOURS; i++) {
      double springs = 0.75 + 0.25 * Math.cos(2.0 * Math.PI * i / (14.77 * 24));
      double rate = springKnots * Speed.METRES_PER_SECOND_PER_KNOT * springs;
      east[i] = rate * 0.8 * Math.cos(2.0 * Math.PI * i / 12.42);
      north[i] = rate * 0.6 * Math.sin(2.0 * Math.PI * i / 12.42 + 0.4);
    }
  }

  @Override
  public boolean sample(double latitude, double longitude, double time, double[] out, int offset) {
    double hours = (time - start) * (1.0 / 3600.0);
    int i = (int) Math.floor(steps ? hours + 0.5 : hours);
    if (i < 0 || i >= HOURS - 1) {
      return false;
    }
    double part = steps ? 0.0 : hours - i;
    out[offset] = east[i] + part * (east[i + 1] - east[i]);
    out[offset + 1] = north[i] + part * (north[i + 1] - north[i]);
    return true;
  }

  @Override
  public double nextBreakAfter(double time) {
    double half = steps ? 0.5 : 0.0;
    double hour = Math.floor((time - start) * (1.0 / 3600.0) + half) + 1.0 - half;
    double next = start + hour * 3600.0;
    return next > time ? next : next + 3600.0;
  }

  @Override
  public Optional<Speed> maxRate() {
    return Optional.empty();
  }

  @Override
  public boolean isUniform() {
    return true;
  }
}
