package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.position.Position;

/**
 * A stream curve with its name and place.
 *
 * <pre>{@code
 * StreamStation station = StreamStation.of("Skarra Sound", position, curve);
 * }</pre>
 */
public final class StreamStation implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final Position position;

  @SuppressWarnings("serial") // the curves of this package are serializable
  private final StreamCurve curve;

  private StreamStation(String name, Position position, StreamCurve curve) {
    this.name = name;
    this.position = position;
    this.curve = curve;
  }

  /**
   * Puts a curve in its place.
   *
   * @param name what explanations shall call the station, not empty
   * @param position where the curve holds
   * @param curve the stream there
   * @return the station
   * @throws IllegalArgumentException if the name is empty
   */
  public static StreamStation of(String name, Position position, StreamCurve curve) {
    if (name.isEmpty()) {
      throw new IllegalArgumentException("name of a stream station must not be empty");
    }
    return new StreamStation(name, position, curve);
  }

  /**
   * What explanations call the station.
   *
   * @return the name, not empty
   */
  public String name() {
    return name;
  }

  /**
   * Where the curve holds.
   *
   * @return the position
   */
  public Position position() {
    return position;
  }

  /**
   * The stream at the station.
   *
   * @return the curve
   */
  public StreamCurve curve() {
    return curve;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StreamStation that
        && name.equals(that.name)
        && position.equals(that.position)
        && curve.equals(that.curve);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, position, curve);
  }

  /** Name and position. */
  @Override
  public String toString() {
    return name + " at " + position;
  }
}
