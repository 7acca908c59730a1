package org.ferryglide.nav.passage;

import org.ferryglide.nav.water.WindField;

/** A wind as one draw of the errors has it. */
final class DrawnWind implements WindField {
  private static final long serialVersionUID = 1L;

  private final WindField forecast;
  private final transient DrawnErrors errors;

  DrawnWind(WindField forecast, DrawnErrors errors) {
    this.forecast = forecast;
    this.errors = errors;
  }

  @Override
  public boolean sample(
      double latitudeDegrees,
      double longitudeDegrees,
      double epochSeconds,
      double[] eastNorth,
      int offset) {
    if (!forecast.sample(latitudeDegrees, longitudeDegrees, epochSeconds, eastNorth, offset)) {
      return false;
    }
    errors.wind(epochSeconds, eastNorth, offset);
    return true;
  }

  @Override
  public double nextBreakAfter(double epochSeconds) {
    return Math.min(forecast.nextBreakAfter(epochSeconds), errors.nextIntervalAfter(epochSeconds));
  }

  @Override
  public boolean isUniform() {
    return forecast.isUniform();
  }
}
