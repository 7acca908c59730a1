package org.ferryglide.nav.passage;

import java.time.Duration;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.water.AdjustedStream;
import org.ferryglide.nav.water.StreamField;

/** A stream as one draw of the errors has it: late by the table's own course, turned, stronger. */
final class DrawnStream implements StreamField {
  private static final long serialVersionUID = 1L;

  private final StreamField late;
  private final transient DrawnErrors errors;

  private DrawnStream(StreamField late, DrawnErrors errors) {
    this.late = late;
    this.errors = errors;
  }

  static StreamField of(StreamField tabled, DrawnErrors errors) {
    Duration late = Seconds.toDuration(errors.streamLate);
    return new DrawnStream(AdjustedStream.of(tabled, 1.0, late), errors);
  }

  @Override
  public boolean sample(
      double latitudeDegrees,
      double longitudeDegrees,
      double epochSeconds,
      double[] eastNorth,
      int offset) {
    if (!late.sample(latitudeDegrees, longitudeDegrees, epochSeconds, eastNorth, offset)) {
      return false;
    }
    errors.stream(epochSeconds, eastNorth, offset);
    return true;
  }

  @Override
  public double nextBreakAfter(double epochSeconds) {
    return Math.min(late.nextBreakAfter(epochSeconds), errors.nextIntervalAfter(epochSeconds));
  }

  @Override
  public boolean isUniform() {
    return late.isUniform();
  }
}
