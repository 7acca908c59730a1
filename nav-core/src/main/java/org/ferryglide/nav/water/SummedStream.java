package org.ferryglide.nav.water;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/**
 * Streams on top of each other, such as a tidal stream and a steady surface drift before the wind.
 *
 * <p>Where one of them has no data, there are none.
 */
final class SummedStream implements StreamField, Serializable {
  private static final long serialVersionUID = 1L;

  private final StreamField[] fields;

  private SummedStream(StreamField[] fields) {
    this.fields = fields;
  }

  /**
   * Adds streams.
   *
   * @param fields the streams, at least one
   * @return their sum
   * @throws IllegalArgumentException if there is none
   */
  static SummedStream of(List<? extends StreamField> fields) {
    if (fields.isEmpty()) {
      throw new IllegalArgumentException("a sum of streams must have at least one");
    }
    return new SummedStream(fields.toArray(new StreamField[0]));
  }

  @Override
  public boolean sample(
      double latitudeDegrees,
      double longitudeDegrees,
      double epochSeconds,
      double[] eastNorth,
      int offset) {
    double eastBefore = eastNorth[offset];
    double northBefore = eastNorth[offset + 1];
    double east = 0.0;
    double north = 0.0;
    for (StreamField field : fields) {
      if (!field.sample(latitudeDegrees, longitudeDegrees, epochSeconds, eastNorth, offset)) {
        eastNorth[offset] = eastBefore;
        eastNorth[offset + 1] = northBefore;
        return false;
      }
      east += eastNorth[offset];
      north += eastNorth[offset + 1];
    }
    eastNorth[offset] = east;
    eastNorth[offset + 1] = north;
    return true;
  }

  /** Where all have data. */
  @Override
  public double startSeconds() {
    double latest = Double.NEGATIVE_INFINITY;
    for (StreamField field : fields) {
      latest = Math.max(latest, field.startSeconds());
    }
    return latest;
  }

  /** Where all have data. */
  @Override
  public double endSeconds() {
    double earliest = Double.POSITIVE_INFINITY;
    for (StreamField field : fields) {
      earliest = Math.min(earliest, field.endSeconds());
    }
    return earliest;
  }

  /** All that say so, each once. */
  @Override
  public String source() {
    Set<String> sources = new LinkedHashSet<>();
    for (StreamField field : fields) {
      sources.add(field.source());
    }
    return String.join(" + ", sources);
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
    fields[0].sampleEvenly(
        latitudeDegrees, longitudeDegrees, startSeconds, stepSeconds, count, eastNorth, offset);
    double[] other = new double[2 * count];
    for (int k = 1; k < fields.length; k++) {
      fields[k].sampleEvenly(
          latitudeDegrees, longitudeDegrees, startSeconds, stepSeconds, count, other, 0);
      for (int i = 0; i < other.length; i++) {
        eastNorth[offset + i] += other[i];
      }
    }
  }

  @Override
  public double nextBreakAfter(double epochSeconds) {
    double next = Double.POSITIVE_INFINITY;
    for (StreamField field : fields) {
      next = Math.min(next, field.nextBreakAfter(epochSeconds));
    }
    return next;
  }

  @Override
  public Optional<Speed> maxRate() {
    double sum = 0.0;
    for (StreamField field : fields) {
      Optional<Speed> one = field.maxRate();
      if (!one.isPresent()) {
        return Optional.empty();
      }
      sum += one.get().metresPerSecond();
    }
    return Optional.of(Speed.ofMetresPerSecond(sum));
  }

  @Override
  public boolean isUniform() {
    for (StreamField field : fields) {
      if (!field.isUniform()) {
        return false;
      }
    }
    return true;
  }

  /**
   * How the sum comes about: the sources of every stream, each with its share of its own stream, so
   * that the weights add up to the number of streams that name their sources.
   */
  @Override
  public Explanation explain(Position position, Instant instant) {
    List<Explanation.Source> sources = new ArrayList<>();
    List<Note> notes = new ArrayList<>();
    for (StreamField field : fields) {
      Explanation one = field.explain(position, instant);
      sources.addAll(one.sources());
      notes.addAll(one.notes());
    }
    notes.add(
        Note.information("stream.sum", "The sum of " + fields.length + " streams.")
            .with("streams", Integer.toString(fields.length)));
    return new Explanation(sources, notes);
  }

  /** The streams that are added. */
  @Override
  public String toString() {
    return "sum of " + List.of(fields);
  }
}
