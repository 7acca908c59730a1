package org.ferryglide.tide.stream;

import java.util.Optional;
import org.ferryglide.nav.measure.Speed;

/** A stream that runs between slack and maximum, whoever tells when these are. */
abstract class SlackCurve implements StreamCurve {
  private static final long serialVersionUID = 1L;

  /** From slack to maximum and back. */
  final SlackToMaximum breaks;

  SlackCurve(SlackToMaximum breaks) {
    this.breaks = breaks;
  }

  @Override
  public final boolean sample(double epochSeconds, double[] eastNorth, int offset) {
    return breaks.sample(epochSeconds, eastNorth, offset);
  }

  @Override
  public final double startSeconds() {
    return breaks.start();
  }

  @Override
  public final double endSeconds() {
    return breaks.end();
  }

  @Override
  public final double nextBreakAfter(double epochSeconds) {
    return breaks.nextBreakAfter(epochSeconds);
  }

  @Override
  public final Optional<Speed> maxRate() {
    return Optional.of(Speed.ofMetresPerSecond(breaks.maxRate()));
  }
}
