package org.ferryglide.nav.note;

import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * Something a reader of an answer should know, as plain English for people and as a code with named
 * data for programs.
 *
 * <pre>{@code
 * Note note =
 *     Note.caution("tide.beyond-springs", "The range lies beyond the table's spring range.")
 *         .with("rangeMetres", 6.4);
 * }</pre>
 *
 * <p>Figures are kept as numbers too, so that a program need not read them back from text: {@code
 * note.figures().get("rangeMetres")}.
 *
 * @param code stable name for programs, subject and finding in lower case: {@code rose.old}
 * @param severity how much it matters
 * @param text one or more sentences of plain English
 * @param data the facts behind the text by name, with the unit in the name, in the order given;
 *     words and figures alike, as text
 * @param figures those of {@code data} that are numbers, as numbers
 */
public record Note(
    String code,
    Severity severity,
    String text,
    Map<String, String> data,
    Map<String, Double> figures)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes all parts; {@link #information}, {@link #caution} and {@link #warning} read better.
   *
   * @param code stable name for programs
   * @param severity how much it matters
   * @param text plain English
   * @param data words and figures by name, as text; copied
   * @param figures the figures by name, as numbers; copied
   * @throws IllegalArgumentException if {@code code} or {@code text} is empty
   */
  public Note {
    Objects.requireNonNull(severity, "severity");
    if (code.isEmpty()) {
      throw new IllegalArgumentException("code of a note must not be empty");
    }
    if (text.isEmpty()) {
      throw new IllegalArgumentException("text of a note must not be empty");
    }
    data = Collections.unmodifiableMap(new LinkedHashMap<>(data));
    figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
  }

  /**
   * A note on how the answer was made.
   *
   * @param code stable name for programs
   * @param text plain English
   * @return a note of severity {@link Severity#INFORMATION} without data
   * @throws IllegalArgumentException if a part is empty
   */
  public static Note information(String code, String text) {
    return new Note(code, Severity.INFORMATION, text, Map.of(), Map.of());
  }

  /**
   * A note that the answer is less certain than it looks.
   *
   * @param code stable name for programs
   * @param text plain English
   * @return a note of severity {@link Severity#CAUTION} without data
   * @throws IllegalArgumentException if a part is empty
   */
  public static Note caution(String code, String text) {
    return new Note(code, Severity.CAUTION, text, Map.of(), Map.of());
  }

  /**
   * A note that the answer needs a check by other means.
   *
   * @param code stable name for programs
   * @param text plain English
   * @return a note of severity {@link Severity#WARNING} without data
   * @throws IllegalArgumentException if a part is empty
   */
  public static Note warning(String code, String text) {
    return new Note(code, Severity.WARNING, text, Map.of(), Map.of());
  }

  /**
   * The same note with one more word or text behind it.
   *
   * @param name what it is
   * @param value the text
   * @return a note with {@code name} added, or replaced if it was there
   */
  public Note with(String name, String value) {
    Map<String, String> more = new LinkedHashMap<>(data);
    more.put(name, value);
    Map<String, Double> numbers = new LinkedHashMap<>(figures);
    numbers.remove(name);
    return new Note(code, severity, text, more, numbers);
  }

  /**
   * The same note with one more figure behind it.
   *
   * @param name what the figure is, unit in the name
   * @param value the figure
   * @return a note with {@code name} added to {@link #data} and {@link #figures}, or replaced if it
   *     was there
   */
  public Note with(String name, double value) {
    Map<String, String> more = new LinkedHashMap<>(data);
    more.put(name, Double.toString(value));
    Map<String, Double> numbers = new LinkedHashMap<>(figures);
    numbers.put(name, value);
    return new Note(code, severity, text, more, numbers);
  }

  /**
   * The same note with another note as a part of it, so that a translation finds the words of both:
   * the part's text is held under {@code name}, its code under {@code name} followed by {@code
   * Code}, and its data beside them.
   *
   * <pre>{@code
   * Note why = Note.information("why.no-stream", "no stream is known there and then");
   * Note.caution("finding.not-checked", "stream: not checked").with("why", why);
   * }</pre>
   *
   * @param name what the part is
   * @param part the words
   * @return a note with the part added, or replaced if it was there
   */
  public Note with(String name, Note part) {
    Map<String, String> more = new LinkedHashMap<>(data);
    more.putAll(part.data);
    more.put(name, part.text);
    more.put(name + "Code", part.code);
    Map<String, Double> numbers = new LinkedHashMap<>(figures);
    numbers.keySet().removeAll(part.data.keySet());
    numbers.putAll(part.figures);
    return new Note(code, severity, text, more, numbers);
  }

  /** Severity and text, as a card would print them. */
  @Override
  public String toString() {
    return severity + ": " + text;
  }
}
