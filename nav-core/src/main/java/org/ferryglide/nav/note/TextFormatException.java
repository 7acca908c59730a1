package org.ferryglide.nav.note;

/**
 * Refusal of a piece of text, pointing at the character where reading stopped.
 *
 * <pre>{@code
 * try {
 *   Position.parse(typed);
 * } catch (TextFormatException e) {
 *   field.markAt(e.index());
 * }
 * }</pre>
 */
public class TextFormatException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** The text that was refused. */
  private final String input;

  /** Index of the first character that does not fit. */
  private final int index;

  /**
   * Makes a refusal; the message gains the text and a pointer to the character.
   *
   * @param reason what is wrong and what is allowed
   * @param input the whole text that was given
   * @param index index in {@code input} of the first character that does not fit, in [0, length]
   */
  public TextFormatException(String reason, String input, int index) {
    super(reason + where(input, index));
    this.input = input;
    this.index = index;
  }

  private static String where(String input, int index) {
    if (index >= input.length()) {
      return ": at the end of \"" + input + "\"";
    }
    return ": at character "
        + (index + 1)
        + " ('"
        + input.charAt(index)
        + "') of \""
        + input
        + "\"";
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
