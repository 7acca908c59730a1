package org.ferryglide.examples.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Whether a stream of this process ends at a terminal, where people look. */
final class Terminal {
  private static final int FIRST_WITH_A_CONSOLE_ALWAYS = 22;

  private Terminal() {}

  static boolean isOutput() {
    return isTerminal(1);
  }

  static boolean isErrors() {
    return isTerminal(2);
  }

  /** From the process's own table of files where there is one; else both streams or none. */
  @SuppressWarnings("SystemConsoleNull") // asked only where it is null without a terminal
  private static boolean isTerminal(int descriptor) {
    try {
      String target = Files.readSymbolicLink(Path.of("/proc/self/fd/" + descriptor)).toString();
      return target.startsWith("/dev/pts/")
          || target.startsWith("/dev/tty")
          || target.equals("/dev/console");
    } catch (IOException | InvalidPathException | UnsupportedOperationException e) {
      return Runtime.version().feature() < FIRST_WITH_A_CONSOLE_ALWAYS && System.console() != null;
    }
  }
}
