package org.ferryglide.nav.note;

import java.io.Serializable;

/**
 * One thing wrong with an input file, and where.
 *
 * <pre>{@code
 * // tides.csv, line 7, column 3: height must be a number of metres, but was "4,2"
 * String message = new InputProblem("tides.csv", 7, 3, "height must be …").toString();
 * }</pre>
 *
 * @param source the file or other source, as the caller named it
 * @param line line number, the first is 1; 0 when the problem concerns the whole source
 * @param column field number in the line, the first is 1; for text without fields the character
 *     number; 0 when the problem concerns the whole line
 * @param message what was given and what is allowed; the middle of a message over 1000 characters
 *     is left out
 */
public record InputProblem(String source, int line, int column, String message)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final int LONGEST_MESSAGE = 1000;

  /**
   * Takes all parts.
   *
   * @param source the file or other source
   * @param line line number, or 0
   * @param column field number, or 0
   * @param message what was given and what is allowed
   */
  public InputProblem {
    if (message.length() > LONGEST_MESSAGE) {
      int half = LONGEST_MESSAGE / 2;
      message = message.substring(0, half) + " … " + message.substring(message.length() - half);
    }
  }

  /** Source, line, column and message on one line. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(source);
    if (line > 0) {
      text.append(", line ").append(line);
    }
    if (column > 0) {
      text.append(", column ").append(column);
    }
    return text.append(": ").append(message).toString();
  }
}
