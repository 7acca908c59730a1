package org.ferryglide.nav.water;

import java.time.Instant;
import java.util.Optional;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;

/** A stream or wind that is the same everywhere and always. */
record SteadyField(Velocity flow) implements StreamField, WindField {

  private static final long serialVersionUID = 1L;

  @Override
  public boolean sample(
      double latitudeDegrees,
      double longitudeDegrees,
      double epochSeconds,
      double[] eastNorth,
      int offset) {
    if (Double.isNaN(latitudeDegrees + longitudeDegrees + epochSeconds)) {
      return false;
    }
    eastNorth[offset] = flow.eastMetresPerSecond();
    eastNorth[offset + 1] = flow.northMetresPerSecond();
    return true;
  }

  @Override
  public Optional<Velocity> at(Position position, Instant instant) {
    return Optional.of(flow);
  }

  @Override
  public String source() {
    return "the same everywhere and always";
  }

  @Override
  public Optional<Speed> maxRate() {
    return Optional.of(flow.rate());
  }

  @Override
  public Optional<Speed> maxSpeed() {
    return Optional.of(flow.rate());
  }

  @Override
  public boolean isUniform() {
    return true;
  }
}
