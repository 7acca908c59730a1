package org.ferryglide.nav.note;

/**
 * Refusal of a piece of text, pointing at the character where reading stopped.
 *
 * <pre>{@code
 * try {
 *   Position.parse(typed);
 * } catch (TextFormatException e) {
 *   String marked = typed.substring(0, e.index()) + "»" + typed.substring(e.index());
 * }
 * }</pre>
 */
public class TextFormatException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** A longer text is shown in part; no position or rose comes near it. */
  private static final int LONGEST_SHOWN = 200;

  /** The text that was refused. */
  private final String input;

  /** Index of the first character that does not fit. */
  private final int index;

  /** What is wrong and what is allowed. */
  private final String reason;

  /**
   * Makes a refusal; the message gains the text and a pointer to the character.
   *
   * @param reason what is wrong and what is allowed
   * @param input the whole text that was given
   * @param index index in {@code input} of the first character that does not fit, in [0, length]
   */
  public TextFormatException(String reason, String input, int index) {
    super(reason + where(input, index));
    this.reason = reason;
    this.input = input;
    this.index = index;
  }

  private static String where(String input, int index) {
    if (index >= input.length()) {
      return ": at the end of \"" + shown(input, index) + "\"";
    }
    return ": at character "
        + (index + 1)
        + " ('"
        + input.charAt(index)
        + "') of \""
        + shown(input, index)
        + "\"";
  }

  /** The text, or of a long one the neighbourhood of the character. */
  private static String shown(String input, int index) {
    if (input.length() <= LONGEST_SHOWN) {
      return input;
    }
    int from = Math.max(0, Math.min(index, input.length()) - LONGEST_SHOWN / 2);
    int to = Math.min(input.length(), from + LONGEST_SHOWN);
    return (from > 0 ? "…" : "") + input.substring(from, to) + (to < input.length() ? "…" : "");
  }

  /**
   * What is wrong, without the text and the place.
   *
   * @return what is wrong and what is allowed
   */
  public String reason() {
    return reason;
  }

  /**
   * The text that was refused.
   *
   * @return the whole text
   */
  public String input() {
    return input;
  }

  /**
   * Where reading stopped.
   *
   * @return index of the first character that does not fit, 0 for the first; the length of the text
   *     if something is missing at its end
   */
  public int index() {
    return index;
  }
}
