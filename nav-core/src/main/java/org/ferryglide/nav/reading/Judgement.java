package org.ferryglide.nav.reading;

import java.io.Serializable;
import java.util.Map;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;

/**
 * A rule by which input is doubted: what looks wrong, from which figure on, and who says so.
 *
 * <p>What cannot be true is refused; what only looks wrong is let through with the note of a
 * judgement. A package keeps its judgements as constants in one place, so that all its readers
 * doubt by the same rules.
 *
 * <pre>{@code
 * Judgement swift =
 *     new Judgement("stream.swift", Severity.CAUTION, 8.0, "knots", "common practice, no source");
 * if (rateKnots > swift.threshold()) {
 *   notes.add(swift.note("The rate of 9.4 kn at Ennor Sound looks too swift.", rateKnots));
 * }
 * }</pre>
 *
 * @param code stable name for programs, the code of the notes: {@code stream.swift}
 * @param severity how much it matters, the severity of the notes
 * @param threshold the figure from which on the input is doubted, finite
 * @param unit unit of {@code threshold}, in the plural
 * @param source the publication behind the threshold, or {@code common practice, no source}
 */
public record Judgement(
    String code, Severity severity, double threshold, String unit, String source)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts.
   *
   * @param code stable name for programs
   * @param severity how much it matters
   * @param threshold the figure from which on the input is doubted
   * @param unit unit of {@code threshold}, in the plural
   * @param source the publication behind the threshold, or {@code common practice, no source}
   * @throws IllegalArgumentException if a text is empty, or {@code threshold} NaN or infinite
   */
  public Judgement {
    Objects.requireNonNull(severity, "severity");
    if (code.isEmpty() || unit.isEmpty() || source.isEmpty()) {
      throw new IllegalArgumentException(
          "code, unit and source of a judgement must not be empty, but were \""
              + code
              + "\", \""
              + unit
              + "\" and \""
              + source
              + "\"");
    }
    threshold = Arguments.finite(threshold, "threshold", unit);
  }

  /**
   * The doubt, with the figure that raised it and the threshold beside it.
   *
   * @param text what looks wrong and where, in plain English
   * @param figure the figure that was found, in {@code unit}
   * @return a note of this code and severity; its figures are {@code found} and {@code threshold},
   *     its words {@code unit} and {@code source}
   * @throws IllegalArgumentException if {@code text} is empty
   */
  public Note note(String text, double figure) {
    return note(text).with("found", figure);
  }

  /**
   * The doubt, with the threshold beside it.
   *
   * @param text what looks wrong and where, in plain English
   * @return a note of this code and severity
   * @throws IllegalArgumentException if {@code text} is empty
   */
  public Note note(String text) {
    return new Note(code, severity, text, Map.of(), Map.of())
        .with("threshold", threshold)
        .with("unit", unit)
        .with("source", source);
  }
}
