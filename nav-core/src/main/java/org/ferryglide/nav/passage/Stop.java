package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;

/**
 * How long the party stays ashore at a way point. Ashore it does not drift.
 *
 * <pre>{@code
 * Stop lunch = Stop.ashore(Duration.ofMinutes(40));
 * Stop gate = Stop.untilStreamAtMost(Speed.ofKnots(1)); // wait for slack in the narrows ahead
 * Stop bar = Stop.untilLevelAtLeast("Orrin Quay", Distance.ofMetres(2.5)); // wait for water
 * Optional<Distance> enough = bar.leastLevel(); // 2.5 m at bar.port(); lunch and gate have none
 * }</pre>
 *
 * <p>For a display or a file of its own a program asks for what ends the stay: {@link #length},
 * {@link #time}, a level at {@link #port}, or {@link #slackRate}; of any other stay they are empty.
 *
 * <p>A wait ends so that its condition holds once the party has launched and is under way again:
 * for slack it launches while the stream still runs. A landing that itself needs water says so by
 * its {@link Landing}. Waits for a level or a stream end on a whole second.
 *
 * <p>The first and the last way point take no stop: the party leaves at its departure, and at the
 * end it has arrived. A wait that has no end within the longest duration of the passage, or whose
 * level or stream is not known, makes the passage not possible and says so.
 */
public sealed interface Stop extends Serializable permits Stops {

  /**
   * A stay of fixed length, after which the party launches.
   *
   * @param length how long, at least zero
   * @return the stop
   * @throws IllegalArgumentException if the length is negative
   */
  static Stop ashore(Duration length) {
    if (length.isNegative()) {
      throw new IllegalArgumentException(
          "a stop must last at least PT0S, but was to last " + length);
    }
    return new Stops.Ashore(length);
  }

  /**
   * A stay until the party is under way again at a time; it launches at once if it comes later.
   *
   * @param time when the party is under way again
   * @return the stop
   */
  static Stop until(Instant time) {
    return new Stops.UntilTime(Objects.requireNonNull(time, "time"));
  }

  /**
   * A stay until there is enough water as the party is under way again.
   *
   * @param port the level to look at, by its name in the passage
   * @param level the least height above the level's datum
   * @return the stop
   * @throws IllegalArgumentException if the name is empty
   */
  static Stop untilLevelAtLeast(String port, Distance level) {
    return new Stops.UntilLevel(Names.checked(port, "name of a port"), level.metres(), true);
  }

  /**
   * A stay until there is little enough water as the party is under way again.
   *
   * @param port the level to look at, by its name in the passage
   * @param level the greatest height above the level's datum
   * @return the stop
   * @throws IllegalArgumentException if the name is empty
   */
  static Stop untilLevelAtMost(String port, Distance level) {
    return new Stops.UntilLevel(Names.checked(port, "name of a port"), level.metres(), false);
  }

  /**
   * A stay until the stream at the way point is slack as the party is under way again.
   *
   * @param rate the greatest rate that counts as slack, above zero
   * @return the stop
   * @throws IllegalArgumentException if the rate is zero
   */
  static Stop untilStreamAtMost(Speed rate) {
    Arguments.positive(rate.metresPerSecond(), "slack rate", "metres a second");
    return new Stops.UntilStream(rate);
  }

  /**
   * How long a stay of fixed length lasts.
   *
   * @return at least zero; empty for a stay until something
   */
  default Optional<Duration> length() {
    return Optional.empty();
  }

  /**
   * When the party is under way again after a stay until a time.
   *
   * @return the time; empty for any other stay
   */
  default Optional<Instant> time() {
    return Optional.empty();
  }

  /**
   * The port whose level ends the stay.
   *
   * @return its name; empty for a stay that no level ends
   */
  default Optional<String> port() {
    return Optional.empty();
  }

  /**
   * The height above the datum of {@link #port} that a stay until there is enough water waits for.
   *
   * @return the height; empty for any other stay
   */
  default Optional<Distance> leastLevel() {
    return Optional.empty();
  }

  /**
   * The height above the datum of {@link #port} that a stay until there is little enough water
   * waits for.
   *
   * @return the height; empty for any other stay
   */
  default Optional<Distance> greatestLevel() {
    return Optional.empty();
  }

  /**
   * The greatest rate that counts as slack for a stay until the stream is so.
   *
   * @return above zero; empty for any other stay
   */
  default Optional<Speed> slackRate() {
    return Optional.empty();
  }

  /**
   * The stop in a few words, as a card prints it.
   *
   * @return for example {@code 40 min ashore}
   */
  default String words() {
    return about().text();
  }

  /**
   * The stop in a few words, under a code that a translation knows.
   *
   * @return words whose text is {@link #words}
   */
  Note about();
}
