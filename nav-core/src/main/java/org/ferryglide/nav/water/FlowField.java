package org.ferryglide.nav.water;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;

/**
 * Something that flows, as a function of place and time: what {@link StreamField} and {@link
 * WindField} have in common. Neither can be passed where the other is wanted.
 *
 * <pre>{@code
 * double[] eastNorth = new double[2];
 * if (field.sample(50.1, -5.5, departureSeconds, eastNorth, 0)) {
 *   double eastMetresPerSecond = eastNorth[StreamField.EAST];
 * }
 * }</pre>
 */
interface FlowField extends TimedField {

  /** Where {@link #sample} writes the east component, after the offset. */
  int EAST = 0;

  /** Where {@link #sample} writes the north component, after the offset. */
  int NORTH = 1;

  /**
   * The flow at a place and time, without allocation.
   *
   * @param latitudeDegrees latitude, degrees, in [-90, 90]
   * @param longitudeDegrees longitude, degrees, in [-180, 180]
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @param eastNorth receives the east and north components, metres a second, positive to where the
   *     water or the air goes; untouched if there are no data
   * @param offset index of the east component; the north one follows it
   * @return false if this field has no data there and then, or an argument is NaN
   */
  boolean sample(
      double latitudeDegrees,
      double longitudeDegrees,
      double epochSeconds,
      double[] eastNorth,
      int offset);

  /**
   * The flow at a place and time.
   *
   * @param position where
   * @param instant when
   * @return where the water or the air goes; empty if this field has no data there and then, which
   *     is not the same as none
   */
  default Optional<Velocity> at(Position position, Instant instant) {
    double[] eastNorth = new double[2];
    return sample(
            position.latitudeDegrees(),
            position.longitudeDegrees(),
            EpochSeconds.of(instant),
            eastNorth,
            0)
        ? Optional.of(Velocity.ofEastAndNorth(eastNorth[EAST], eastNorth[NORTH]))
        : Optional.empty();
  }

  /**
   * The flow at a place at even steps of time. Fields that can do this faster than one by one
   * override it; times are {@code startSeconds + i * stepSeconds}.
   *
   * @param latitudeDegrees latitude, degrees, in [-90, 90]
   * @param longitudeDegrees longitude, degrees, in [-180, 180]
   * @param startSeconds time of the first, seconds since 1970-01-01T00:00:00Z
   * @param stepSeconds time from one to the next, seconds
   * @param count how many
   * @param eastNorth receives the east and north components of each in turn, metres a second, NaN
   *     where there are no data
   * @param offset index of the first east component
   * @throws IndexOutOfBoundsException if {@code eastNorth} has no room for them
   */
  default void sampleEvenly(
      double latitudeDegrees,
      double longitudeDegrees,
      double startSeconds,
      double stepSeconds,
      int count,
      double[] eastNorth,
      int offset) {
    Objects.checkFromIndexSize(offset, 2 * count, eastNorth.length);
    for (int i = 0; i < count; i++) {
      int at = offset + 2 * i;
      double t = startSeconds + i * stepSeconds;
      if (!sample(latitudeDegrees, longitudeDegrees, t, eastNorth, at)) {
        eastNorth[at + EAST] = Double.NaN;
        eastNorth[at + NORTH] = Double.NaN;
      }
    }
  }

  /**
   * Whether the flow is the same at every place where there are data.
   *
   * @return false by default, which is always safe
   */
  default boolean isUniform() {
    return false;
  }
}
