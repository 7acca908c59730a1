package org.ferryglide.nav.passage;

import java.util.Optional;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.WindField;

/** A wind some times as strong as forecast; where none is known, none is known. */
final class StrongerWind implements WindField {
  private static final long serialVersionUID = 1L;

  private final WindField field;
  private final double factor;

  StrongerWind(WindField field, double factor) {
    this.field = field;
    this.factor = factor;
  }

  @Override
  public boolean sample(
      double latitudeDegrees,
      double longitudeDegrees,
      double epochSeconds,
      double[] eastNorth,
      int offset) {
    if (!field.sample(latitudeDegrees, longitudeDegrees, epochSeconds, eastNorth, offset)) {
      return false;
    }
    eastNorth[offset] *= factor;
    eastNorth[offset + 1] *= factor;
    return true;
  }

  @Override
  public double nextBreakAfter(double epochSeconds) {
    return field.nextBreakAfter(epochSeconds);
  }

  @Override
  public double startSeconds() {
    return field.startSeconds();
  }

  @Override
  public double endSeconds() {
    return field.endSeconds();
  }

  @Override
  public String source() {
    return field.source();
  }

  @Override
  public Optional<Position> position() {
    return field.position();
  }

  @Override
  public Optional<Speed> maxSpeed() {
    return field.maxSpeed().map(speed -> speed.times(factor));
  }

  @Override
  public boolean isUniform() {
    return field.isUniform();
  }

  @Override
  public String toString() {
    return field + ", x" + factor;
  }
}
