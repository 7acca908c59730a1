package org.ferryglide.examples.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.note.Figure;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Step;
import org.ferryglide.nav.note.Working;

/**
 * What a verb answers: lines for people, named values for programs, and how it ended.
 *
 * <pre>{@code
 * return new Answer()
 *     .row("distance", leg.length().inNauticalMiles(2))
 *     .value("distanceNauticalMiles", leg.length().nauticalMiles());
 * }</pre>
 *
 * <p>Values are text, numbers, booleans, lists and maps of the same; their names carry the unit.
 */
public final class Answer {
  private static final int LABEL_WIDTH = 12;

  private final StringBuilder text = new StringBuilder();
  private final Map<String, Object> values = new LinkedHashMap<>();
  private final List<Object> notes = new ArrayList<>();
  private final List<Object> workings = new ArrayList<>();
  private Status status = Status.DONE;

  /** Makes an empty answer that is done. */
  public Answer() {}

  /**
   * Adds a line for people.
   *
   * @param line the line, without its end
   * @return this answer
   */
  public Answer line(String line) {
    text.append(line).append('\n');
    return this;
  }

  /**
   * Adds lines for people.
   *
   * @param lines the lines, each ended
   * @return this answer
   */
  public Answer text(String lines) {
    text.append(lines);
    return this;
  }

  /**
   * Adds a labelled line for people.
   *
   * @param label what the value is; empty where it continues the line above
   * @param value the value with its unit
   * @return this answer
   */
  public Answer row(String label, String value) {
    return row(label, LABEL_WIDTH, value);
  }

  /** With a column of labels of another width. */
  Answer row(String label, int width, String value) {
    text.append(label);
    for (int at = label.length(); at < width; at++) {
      text.append(' ');
    }
    return line(" ".concat(value));
  }

  /**
   * Adds a value for programs.
   *
   * @param name its name with its unit
   * @param value text, number, boolean, or list or map of the same
   * @return this answer
   */
  public Answer value(String name, Object value) {
    values.put(name, value);
    return this;
  }

  /**
   * Adds notes, for people and programs; what reads the same is told once, whatever it is about.
   *
   * @param more the notes, worst first
   * @return this answer
   */
  public Answer notes(List<Note> more) {
    Map<String, Note> said = new LinkedHashMap<>();
    more.forEach(note -> said.putIfAbsent(note.toString(), note));
    for (Note note : said.values()) {
      line(note.toString());
      Map<String, Object> value = new LinkedHashMap<>();
      value.put("code", note.code());
      value.put("severity", note.severity().toString());
      value.put("text", note.text());
      notes.add(value);
    }
    return this;
  }

  /**
   * Adds a working, for people and programs.
   *
   * @param working the working
   * @return this answer
   */
  public Answer working(Working working) {
    line("").text(working.toString()).line("");
    return workingValue(working);
  }

  /**
   * Adds a working for programs that people see already.
   *
   * @param working the working
   * @return this answer
   */
  public Answer workingValue(Working working) {
    workings.add(value(working));
    return this;
  }

  /** The steps of a working as values. */
  static Map<String, Object> value(Working working) {
    List<Object> steps = new ArrayList<>();
    for (Step step : working.steps()) {
      Map<String, Object> value = new LinkedHashMap<>();
      value.put("figure", step.name());
      value.put("written", step.result().text());
      value.put("byHand", step.result().byHand());
      value.put("exact", step.result().exact());
      value.put("unit", step.result().unit());
      value.put("rule", step.rule());
      value.put("from", step.inputs().stream().map(Figure::name).toList());
      steps.add(value);
    }
    Map<String, Object> value = new LinkedHashMap<>();
    value.put("title", working.title());
    value.put("steps", steps);
    return value;
  }

  /**
   * Says how it ended; of several the one that counts more stays: data missing before not possible
   * before a limit passed.
   *
   * @param ended how it ended
   * @return this answer
   */
  public Answer status(Status ended) {
    if (weight(ended) > weight(status)) {
      status = ended;
    }
    return this;
  }

  private static int weight(Status status) {
    return switch (status) {
      case DONE -> 0;
      case LIMIT_PASSED -> 1;
      case NOT_POSSIBLE -> 2;
      case DATA_MISSING -> 3;
      case REFUSED -> 4;
      case OUR_FAULT -> 5;
    };
  }

  /**
   * How it ended.
   *
   * @return the status
   */
  public Status status() {
    return status;
  }

  /**
   * The lines for people.
   *
   * @return the text, each line ended
   */
  public String text() {
    return text.toString();
  }

  /**
   * The values for programs, the notes among them.
   *
   * @return the values in the order in which they were added
   */
  public Map<String, Object> values() {
    Map<String, Object> all = new LinkedHashMap<>(values);
    if (!workings.isEmpty()) {
      all.put("working", List.copyOf(workings));
    }
    all.putIfAbsent("notes", List.copyOf(notes));
    return all;
  }
}
