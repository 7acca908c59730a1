package org.ferryglide.nav.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.Variation;
import org.junit.jupiter.api.Test;

class ChartToolTest {
  /** The four parts thrown at random and added, against their root of squares. */
  @Test
  void theErrorIsThatOfItsFourParts() {
    Random random = new Random(20261124);
    int times = 200_000;
    for (ChartTool tool : ChartTool.all()) {
      double leg = 60.0;
      double held = Math.min(leg, tool.edge().lengthMillimetres());
      double miss = tool.edge().alignmentMillimetres();
      double squares = 0.0;
      for (int i = 0; i < times; i++) {
        double alongLeg = turned(random, miss, held);
        double reference = turned(random, miss, tool.referenceMillimetres());
        double reading = (random.nextDouble() - 0.5) * tool.graduationDegrees();
        double carried = random.nextGaussian() * tool.carryingDegrees();
        double sum = alongLeg + reference + reading + carried;
        squares += sum * sum;
      }
      double simulated = Math.sqrt(squares / times);
      double onePercent = 0.01 * simulated; // six standard errors of so many throws
      assertEquals(simulated, tool.typicalErrorDegrees(leg), onePercent, tool.name());
    }
  }

  private static double turned(Random random, double missMillimetres, double heldMillimetres) {
    double oneEnd = missMillimetres * random.nextGaussian();
    double otherEnd = missMillimetres * random.nextGaussian();
    return Math.toDegrees(Math.atan2(oneEnd - otherEnd, heldMillimetres));
  }

  /** Orders that every navigator expects; common practice, no source. */
  @Test
  void longEdgesBeatShortOnesAndLongLegsBeatShortOnes() {
    for (ChartTool tool : ChartTool.all()) {
      assertTrue(tool.typicalErrorDegrees(20.0) > tool.typicalErrorDegrees(100.0), tool.name());
    }
    double leg = 250.0;
    double plotter = ChartTool.TURNING_ROSE_PLOTTER.typicalErrorDegrees(leg);
    assertTrue(plotter < ChartTool.PARALLEL_RULES.typicalErrorDegrees(leg));
    assertTrue(
        ChartTool.PARALLEL_RULES.typicalErrorDegrees(leg)
            < ChartTool.BASEPLATE_COMPASS.typicalErrorDegrees(leg));
    assertTrue(plotter < ChartTool.DECK_PLOTTER.typicalErrorDegrees(leg));
  }

  @Test
  void eachToolSaysWhatItIsLinedUpOnAndReads() {
    assertEquals(
        ChartTool.LinedUpOn.GRID_LINES_OR_MERIDIANS, ChartTool.BASEPLATE_COMPASS.linedUpOn());
    assertEquals(
        ChartTool.NorthRead.GRID_ON_A_MAP_TRUE_ON_A_CHART, ChartTool.BASEPLATE_COMPASS.north());
    assertEquals(ChartTool.LinedUpOn.PRINTED_ROSE, ChartTool.PARALLEL_RULES.linedUpOn());
    assertEquals(
        ChartTool.NorthRead.TRUE_OR_MAGNETIC_OF_PRINTED_YEAR, ChartTool.PARALLEL_RULES.north());
    assertEquals(ChartTool.NorthRead.TRUE, ChartTool.TURNING_ROSE_PLOTTER.north());
    assertEquals(ChartTool.LinedUpOn.MERIDIANS_AND_PARALLELS, ChartTool.DECK_PLOTTER.linedUpOn());
    assertEquals(4, ChartTool.all().size());
  }

  @Test
  void onTheInnerRingOnlyTheYearsChangeIsLeft() {
    Variation printed = Variation.parse("4°15'W");
    Variation now = Variation.parse("3°15'W");
    MagneticBearing read = MagneticBearing.ofDegrees(90.0);
    MagneticBearing today = ChartTool.applyYearsChange(read, printed, now);
    assertEquals(89.0, today.degrees(), 1e-12);
    assertEquals(
        read.degrees(), ChartTool.applyYearsChange(read, printed, printed).degrees(), 1e-12);
  }

  @Test
  void aToolIsChangedByCopy() {
    ChartTool tool = ChartTool.BASEPLATE_COMPASS;
    assertEquals(1.0, tool.withGraduation(1.0).graduationDegrees());
    assertEquals(60.0, tool.withReference(60.0).referenceMillimetres());
    assertEquals(0.3, tool.withCarrying(0.3).carryingDegrees());
    StraightEdge edge = new StraightEdge(120.0, 0.3);
    assertEquals(edge, tool.withEdge(edge).edge());
    assertNotEquals(tool, tool.withEdge(edge));
    assertEquals(tool, tool.withEdge(tool.edge()));
    assertEquals(tool.hashCode(), tool.withEdge(tool.edge()).hashCode());
    assertEquals("baseplate compass", tool.toString());
  }

  @Test
  void whatDoesNotFitIsRefused() {
    ChartTool tool = ChartTool.DECK_PLOTTER;
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> tool.withGraduation(0.0));
    assertEquals(
        "graduation must be a finite number of degrees above 0, but was 0.0", refusal.getMessage());
    refusal = assertThrows(IllegalArgumentException.class, () -> tool.withCarrying(Double.NaN));
    assertEquals("loss in carrying must be in [0, 90] degrees, but was NaN", refusal.getMessage());
    assertThrows(IllegalArgumentException.class, () -> tool.withGraduation(91.0));
    assertThrows(IllegalArgumentException.class, () -> tool.withReference(0.0));
    assertThrows(IllegalArgumentException.class, () -> tool.typicalErrorDegrees(-1.0));
  }
}
