package org.ferryglide.nav.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class StraightEdgeTest {
  /** A slow obvious way: two ends that miss their marks at random, many times. */
  @Test
  void theErrorIsThatOfTwoEndsWhichMissTheirMarks() {
    Random random = new Random(20261124);
    int times = 200_000;
    for (double leg : new double[] {20.0, 60.0, 100.0, 250.0}) {
      double held = Math.min(leg, 100.0);
      double squares = 0.0;
      for (int i = 0; i < times; i++) {
        double oneEnd = 0.5 * random.nextGaussian();
        double otherEnd = 0.5 * random.nextGaussian();
        double turn = Math.atan2(oneEnd - otherEnd, held);
        squares += turn * turn;
      }
      double simulated = Math.toDegrees(Math.sqrt(squares / times));
      double onePercent = 0.01 * simulated; // six standard errors of so many throws
      assertEquals(simulated, new StraightEdge(100.0, 0.5).bearingErrorDegrees(leg), onePercent);
    }
  }

  @Test
  void aShortEdgeIsWorseOnALongLegOnly() {
    StraightEdge shortEdge = new StraightEdge(100.0, 0.5);
    StraightEdge longEdge = new StraightEdge(400.0, 0.5);
    assertTrue(shortEdge.bearingErrorDegrees(250.0) > 2.4 * longEdge.bearingErrorDegrees(250.0));
    assertEquals(shortEdge.bearingErrorDegrees(60.0), longEdge.bearingErrorDegrees(60.0));
    assertEquals(0.405, shortEdge.bearingErrorDegrees(250.0), 0.0005);
    assertEquals(2.025, longEdge.bearingErrorDegrees(20.0), 0.0005);
    assertEquals(0.0, new StraightEdge(100.0, 0.0).bearingErrorDegrees(5.0));
  }

  @Test
  void kernelLetsNotANumberThrough() {
    assertTrue(Double.isNaN(StraightEdge.bearingErrorDegrees(100.0, 0.5, Double.NaN)));
  }

  @Test
  void whatDoesNotFitIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> new StraightEdge(0.0, 0.5));
    assertEquals(
        "length of an edge must be a finite number of millimetres above 0, but was 0.0",
        refusal.getMessage());
    refusal = assertThrows(IllegalArgumentException.class, () -> new StraightEdge(100.0, -0.5));
    assertEquals(
        "alignment error must be a finite number of millimetres, at least 0, but was -0.5",
        refusal.getMessage());
    refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> new StraightEdge(100.0, 0.5).bearingErrorDegrees(0.0));
    assertEquals(
        "length of a drawn leg must be a finite number of millimetres above 0, but was 0.0",
        refusal.getMessage());
  }
}
