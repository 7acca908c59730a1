package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.function.Executable;

/** What a call says when it refuses its arguments. */
final class Refusal {
  private Refusal() {}

  static String message(Executable call) {
    return String.valueOf(assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
