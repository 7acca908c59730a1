package org.ferryglide.nav.water;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * The height of the water at one place as a function of time, above a named datum.
 *
 * <p>Implementations are immutable and safe to share between threads.
 *
 * <pre>{@code
 * Optional<Distance> height = level.heightAt(Instant.parse("2026-06-01T09:30:00Z"));
 * }</pre>
 */
public interface WaterLevel extends TimedField {

  /**
   * The height at a time, without allocation.
   *
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @return metres above {@link #datum}; NaN if there are no data for that time
   */
  double heightMetres(double epochSeconds);

  /**
   * The height at a time.
   *
   * @param instant when
   * @return height above {@link #datum}; empty if there are no data for that time
   */
  default Optional<Distance> heightAt(Instant instant) {
    double height = heightMetres(EpochSeconds.of(instant));
    return Double.isFinite(height) ? Optional.of(Distance.ofMetres(height)) : Optional.empty();
  }

  /**
   * The level that heights are measured from.
   *
   * @return the datum's name, for example {@code chart datum}
   */
  String datum();

  /**
   * A bound on how fast the height changes, from which a search knows where it cannot pass a level.
   * It need not be reached; the closer it is, the faster the search.
   *
   * @param fromSeconds start of a span without a break point inside, seconds since 1970
   * @param toSeconds end of that span, seconds since 1970
   * @return upper bound of the magnitude of the slope over the span, metres a second; positive
   *     infinity, the default, if none is known
   */
  default double greatestSlopeMetresPerSecond(double fromSeconds, double toSeconds) {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * The heights at even steps of time. Levels that can do this faster than one by one override it.
   *
   * @param startSeconds time of the first, seconds since 1970-01-01T00:00:00Z
   * @param stepSeconds time from one to the next, seconds
   * @param count how many
   * @param metres receives the heights above {@link #datum}; NaN where there are no data
   * @param offset index of the first
   * @throws IndexOutOfBoundsException if {@code metres} has no room for them
   */
  default void heightsEvenly(
      double startSeconds, double stepSeconds, int count, double[] metres, int offset) {
    Objects.checkFromIndexSize(offset, count, metres.length);
    for (int i = 0; i < count; i++) {
      metres[offset + i] = heightMetres(startSeconds + i * stepSeconds);
    }
  }

  /**
   * How the height at a time comes about: sources and notes.
   *
   * @param instant when
   * @return the explanation; by default one without sources or notes
   */
  default Explanation explain(Instant instant) {
    return Explanation.NONE;
  }

  /** The same as {@link #explain(Instant)}: a level is of one place. */
  @Override
  default Explanation explain(Position position, Instant instant) {
    return explain(instant);
  }

  /**
   * The times at which the height stops rising or falling. Between two of them, and the break
   * points, it goes one way, so that a search for a height need not look anywhere else.
   *
   * @param fromSeconds start of a span, seconds since 1970
   * @param untilSeconds end of that span, seconds since 1970
   * @return the times in the span, in order, seconds since 1970; empty, the default, if they are
   *     not known for certain
   */
  default Optional<double[]> turnsBetween(double fromSeconds, double untilSeconds) {
    return Optional.empty();
  }

  /**
   * The times at which the rising water passes a height, to a thousandth of a second.
   *
   * @param height the height, above {@link #datum}
   * @param from start of the search
   * @param until end of the search
   * @return the times in order, and what part of the time the level has data for; a height that the
   *     water only touches is not passed; what is shorter than a minute may be missed, as in {@link
   *     #windowsAtLeast}
   * @throws IllegalArgumentException if {@code until} is before {@code from}
   */
  default Found<Instant> timesRisingTo(Distance height, Instant from, Instant until) {
    return new LevelSearch(this, height, true, from, until).entries();
  }

  /**
   * The times at which the falling water passes a height, to a thousandth of a second.
   *
   * @param height the height, above {@link #datum}
   * @param from start of the search
   * @param until end of the search
   * @return the times in order, and what part of the time the level has data for; a height that the
   *     water only touches is not passed; what is shorter than a minute may be missed, as in {@link
   *     #windowsAtLeast}
   * @throws IllegalArgumentException if {@code until} is before {@code from}
   */
  default Found<Instant> timesFallingTo(Distance height, Instant from, Instant until) {
    return new LevelSearch(this, height, false, from, until).entries();
  }

  /**
   * The times while the water is at a height or above it: water enough over a sill, a bar, mud.
   *
   * <pre>{@code
   * level.windowsAtLeast(Distance.ofMetres(2.4), from, until).first(3); // the next three
   * }</pre>
   *
   * @param height the height, above {@link #datum}
   * @param from start of the search
   * @param until end of the search
   * @return the windows, with ends to a thousandth of a second, and what part of the time the level
   *     has data for; what is shorter than a minute may be missed, unless {@link #turnsBetween} or
   *     {@link #greatestSlopeMetresPerSecond} is known
   * @throws IllegalArgumentException if {@code until} is before {@code from}
   */
  default Found<Window> windowsAtLeast(Distance height, Instant from, Instant until) {
    return new LevelSearch(this, height, true, from, until).windows();
  }

  /**
   * The times while the water is at a height or below it: a landing ledge or a beach uncovered.
   *
   * @param height the height, above {@link #datum}
   * @param from start of the search
   * @param until end of the search
   * @return the windows, found as those of {@link #windowsAtLeast} are
   * @throws IllegalArgumentException if {@code until} is before {@code from}
   */
  default Found<Window> windowsAtMost(Distance height, Instant from, Instant until) {
    return new LevelSearch(this, height, false, from, until).windows();
  }

  /**
   * The times while there is water enough over a charted depth.
   *
   * @param depth the depth, from the same datum
   * @param depthNeeded depth that the craft needs, not negative
   * @param margin margin for swell, air pressure, wind and error, not negative
   * @param from start of the search
   * @param until end of the search
   * @return the windows, and what part of the time the level has data for
   * @throws IllegalArgumentException if the level has another datum, a number is negative, or
   *     {@code until} is before {@code from}
   */
  default Found<Window> windowsOver(
      ChartedDepth depth, Distance depthNeeded, Distance margin, Instant from, Instant until) {
    depth.requireSameDatum(this);
    return windowsAtLeast(depth.tideNeeded(depthNeeded, margin), from, until);
  }
}
