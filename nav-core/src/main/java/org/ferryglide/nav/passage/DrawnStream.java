package org.ferryglide.nav.passage;

import org.ferryglide.nav.water.StreamField;

/** A stream as one draw of the errors has it: late by the table's own course, turned, stronger. */
final class DrawnStream implements StreamField {
  private static final long serialVersionUID = 1L;

  private final StreamField tabled;
  private final transient DrawnErrors errors;

  DrawnStream(StreamField tabled, DrawnErrors errors) {
    this.tabled = tabled;
    this.errors = errors;
  }

  @Override
  public boolean sample(
      double latitudeDegrees,
      double longitudeDegrees,
      double epochSeconds,
      double[] eastNorth,
      int offset) {
    double time = epochSeconds - errors.streamLate;
    if (!tabled.sample(latitudeDegrees, longitudeDegrees, time, eastNorth, offset)) {
      return false;
    }
    errors.stream(epochSeconds, eastNorth, offset);
    return true;
  }

  @Override
  public double nextBreakAfter(double epochSeconds) {
    double late = errors.streamLate;
    double next = tabled.nextBreakAfter(epochSeconds - late) + late;
    if (!(next > epochSeconds)) { // the two shifts may round to the same instant again
      next = tabled.nextBreakAfter(next - late) + late;
    }
    return Math.min(next, errors.nextIntervalAfter(epochSeconds));
  }

  @Override
  public boolean isUniform() {
    return tabled.isUniform();
  }
}
