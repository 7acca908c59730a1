package org.ferryglide.nav.basics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class TopTest {
  @Test
  void aTopIsFoundAsCloselyAsAsked() {
    assertEquals(0.7, Top.of(x -> -(x - 0.7) * (x - 0.7), -1.0, 3.0, 1e-6), 0.5e-6);
    assertEquals(0.7, Top.of(x -> -Math.abs(x - 0.7), 0.0, 1.0, 1e-12), 0.5e-12);
  }

  @Test
  void aTopAtAnEndIsFoundToo() {
    assertEquals(2.0, Top.of(x -> x, 1.0, 2.0, 1e-6), 0.5e-6);
    assertEquals(1.0, Top.of(x -> -x, 1.0, 2.0, 1e-6), 0.5e-6);
  }

  @Test
  void aSpanThatDoublesCannotDivideEnds() {
    double top = Top.of(x -> x, 1e9, Math.nextUp(1e9), 0.0);
    assertTrue(top >= 1e9 && top <= Math.nextUp(1e9));
    assertEquals(5.0, Top.of(x -> x, 5.0, 5.0, 0.0));
  }
}
