package org.ferryglide.examples.command;

import java.time.DateTimeException;
import java.util.function.Supplier;

/**
 * What was typed or read is refused. Whatever else goes wrong, an {@link IllegalArgumentException}
 * from the midst of a computation among them, is a fault of the program.
 */
final class InputRefused extends RuntimeException {
  private static final long serialVersionUID = 1L;

  InputRefused(String message) {
    super(message);
  }

  private InputRefused(RuntimeException why) {
    super(why.getMessage() == null ? why.toString() : why.getMessage(), why);
  }

  /** A value made of nothing but what was given: what the library refuses of it is refused here. */
  static <T> T given(Supplier<T> value) {
    try {
      return value.get();
    } catch (IllegalArgumentException | DateTimeException e) {
      throw new InputRefused(e);
    }
  }
}
