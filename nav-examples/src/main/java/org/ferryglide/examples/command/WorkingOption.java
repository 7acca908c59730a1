package org.ferryglide.examples.command;

import java.util.function.Consumer;
import picocli.CommandLine.Option;

/** The option of verbs whose answer is also taught by hand. */
final class WorkingOption {
  @Option(
      names = "--working",
      description = "Also the working as by hand, with estimate, rounding and check.")
  private boolean wanted;

  boolean isWanted() {
    return wanted;
  }

  /** Adds the workings only where they are asked for. */
  void adding(Answer answer, Consumer<Answer> workings) {
    if (wanted) {
      workings.accept(answer);
    }
  }
}
