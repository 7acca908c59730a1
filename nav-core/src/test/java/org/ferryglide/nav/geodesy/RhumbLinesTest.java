package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RhumbLinesTest {
  /** Bennett (1996), Practical rhumb line calculations on the spheroid, example 1. */
  @Test
  void bennettsFirstExample() {
    double[] out = new double[2];
    RhumbLines.inverse(10 + 18.4 / 60, 37 + 41.7 / 60, 53 + 29.5 / 60, 113 + 17.1 / 60, out, 0);
    assertEquals(54.99008056174, out[0], 5e-11);
    assertEquals(8348285.201690, out[1], 5e-6);
    RhumbLines.direct(10 + 18.4 / 60, 37 + 41.7 / 60, out[0], out[1], out, 0);
    assertEquals(53 + 29.5 / 60, out[0], 1e-12);
    assertEquals(113 + 17.1 / 60, out[1], 1e-12);
  }
}
