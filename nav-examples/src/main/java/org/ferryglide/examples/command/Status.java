package org.ferryglide.examples.command;

/**
 * How a verb ended; a script takes 0 for yes.
 *
 * <pre>{@code
 * Status.DATA_MISSING.code(); // 4
 * }</pre>
 */
public enum Status {
  /** Done, and nothing that was asked for stands against it. */
  DONE(0, "done"),
  /** A fault of the program, which its author wants to hear of. */
  OUR_FAULT(1, "a fault of ours"),
  /** The input is refused: arguments, files, a row of a batch. */
  REFUSED(2, "input refused"),
  /** No heading, no time or no fix answers the question. */
  NOT_POSSIBLE(3, "not possible"),
  /** The tables or models do not cover the question: there is no answer, not even a no. */
  DATA_MISSING(4, "data missing"),
  /** Done, but a stop limit is passed, or a check that was asked for could not be made. */
  LIMIT_PASSED(5, "done, but a stop limit is passed or a check could not be made");

  private final int code;
  private final String words;

  Status(int code, String words) {
    this.code = code;
    this.words = words;
  }

  /**
   * The exit status.
   *
   * @return a number in [0, 5]
   */
  public int code() {
    return code;
  }

  /**
   * What it says, for the help.
   *
   * @return a few words
   */
  public String words() {
    return words;
  }
}
