package org.ferryglide.nav.water;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/**
 * A stream made stronger or weaker, earlier or later, because real streams are.
 *
 * <pre>{@code
 * StreamField worse = AdjustedStream.of(stream, 1.25, Duration.ofMinutes(20)); // 25 % stronger, 20 min late
 * }</pre>
 */
public final class AdjustedStream implements StreamField {
  private static final long serialVersionUID = 1L;

  private final StreamField field;

  private final double factor;
  private final double lateSeconds;

  private AdjustedStream(StreamField field, double factor, double lateSeconds) {
    this.field = field;
    this.factor = factor;
    this.lateSeconds = lateSeconds;
  }

  /**
   * Adjusts a stream.
   *
   * @param field the stream as predicted
   * @param factor how many times as strong, finite; a negative factor turns it round
   * @param late how much later everything happens; negative for earlier
   * @return the adjusted stream
   * @throws IllegalArgumentException if {@code factor} is not finite
   */
  public static AdjustedStream of(StreamField field, double factor, Duration late) {
    return new AdjustedStream(
        field, Arguments.finite(factor, "factor", "times the predicted rate"), Seconds.of(late));
  }

  @Override
  public boolean sample(
      double latitudeDegrees,
      double longitudeDegrees,
      double epochSeconds,
      double[] eastNorth,
      int offset) {
    if (!field.sample(
        latitudeDegrees, longitudeDegrees, epochSeconds - lateSeconds, eastNorth, offset)) {
      return false;
    }
    eastNorth[offset] *= factor;
    eastNorth[offset + 1] *= factor;
    return true;
  }

  @Override
  public double nextBreakAfter(double epochSeconds) {
    double next = field.nextBreakAfter(epochSeconds - lateSeconds) + lateSeconds;
    // rounding of the two shifts must not give the same instant again
    return next > epochSeconds ? next : field.nextBreakAfter(next - lateSeconds) + lateSeconds;
  }

  @Override
  public double startSeconds() {
    return field.startSeconds() + lateSeconds;
  }

  @Override
  public double endSeconds() {
    return field.endSeconds() + lateSeconds;
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
  public void sampleEvenly(
      double latitudeDegrees,
      double longitudeDegrees,
      double startSeconds,
      double stepSeconds,
      int count,
      double[] eastNorth,
      int offset) {
    field.sampleEvenly(
        latitudeDegrees,
        longitudeDegrees,
        startSeconds - lateSeconds,
        stepSeconds,
        count,
        eastNorth,
        offset);
    for (int i = offset; i < offset + 2 * count; i++) {
      eastNorth[i] *= factor;
    }
  }

  @Override
  public Optional<Speed> maxRate() {
    return field.maxRate().map(rate -> rate.times(Math.abs(factor)));
  }

  @Override
  public boolean isUniform() {
    return field.isUniform();
  }

  @Override
  public Explanation explain(Position position, Instant instant) {
    Explanation predicted = field.explain(position, instant.minus(Seconds.toDuration(lateSeconds)));
    List<Note> notes = new ArrayList<>(predicted.notes());
    notes.add(
        Note.information(
                "stream.adjusted",
                "The predicted stream is taken "
                    + factor
                    + " times as strong and "
                    + Math.abs(lateSeconds / 60.0)
                    + " minutes "
                    + (lateSeconds < 0.0 ? "earlier." : "later."))
            .with("factor", factor)
            .with("lateMinutes", lateSeconds / 60.0));
    return new Explanation(predicted.sources(), notes);
  }

  /** The stream and what is done to it. */
  @Override
  public String toString() {
    return field + ", x" + factor + ", " + lateSeconds + " s later";
  }
}
