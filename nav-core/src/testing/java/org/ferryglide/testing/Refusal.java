package org.ferryglide.testing;

import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.function.Executable;

/** What a call says when it refuses its arguments. */
public final class Refusal {
  private Refusal() {}

  public static String message(Executable call) {
    return String.valueOf(assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
