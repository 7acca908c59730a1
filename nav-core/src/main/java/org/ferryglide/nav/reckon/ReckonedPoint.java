package org.ferryglide.nav.reckon;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;

/**
 * A point of a reckoned track, by log and compass alone and with leeway and stream.
 *
 * <pre>{@code
 * for (ReckonedPoint point : reckoning.track()) {
 *   System.out.println(point.time() + " " + point.deadReckoning());
 * }
 * }</pre>
 */
public final class ReckonedPoint implements Serializable {

  private static final long serialVersionUID = 1L;

  private final Instant time;
  private final Position deadReckoning;
  private final @Nullable Position estimated;

  ReckonedPoint(Instant time, Position deadReckoning, @Nullable Position estimated) {
    this.time = time;
    this.deadReckoning = deadReckoning;
    this.estimated = estimated;
  }

  /**
   * When.
   *
   * @return the time
   */
  public Instant time() {
    return time;
  }

  /**
   * Where the headings and speeds of the log alone lead.
   *
   * @return the dead-reckoned position
   */
  public Position deadReckoning() {
    return deadReckoning;
  }

  /**
   * Where they lead with leeway and stream.
   *
   * @return the estimated position; empty once the stream was not known somewhere on the way, which
   *     is not the same as slack water
   */
  public Optional<Position> estimated() {
    return Optional.ofNullable(estimated);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ReckonedPoint that
        && time.equals(that.time)
        && deadReckoning.equals(that.deadReckoning)
        && Objects.equals(estimated, that.estimated);
  }

  @Override
  public int hashCode() {
    return Objects.hash(time, deadReckoning, estimated);
  }

  @Override
  public String toString() {
    return time
        + " dead reckoning "
        + deadReckoning
        + (estimated == null ? ", stream not known" : ", estimated " + estimated);
  }
}
