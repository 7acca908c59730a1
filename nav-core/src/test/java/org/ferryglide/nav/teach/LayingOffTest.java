package org.ferryglide.nav.teach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ferryglide.nav.bearing.GridBearing;
import org.ferryglide.nav.bearing.GridConvergence;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.chart.ChartTool;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.teach.LayingOff.Paper;
import org.junit.jupiter.api.Test;

class LayingOffTest {
  private static final double ROUNDING = 1e-9;
  private static final Variation VARIATION = Variation.ofDegreesWest(9);
  private static final LayingOff RULES = LayingOff.with(ChartTool.PARALLEL_RULES, Paper.CHART);
  private static final LayingOff ON_MAP =
      LayingOff.with(ChartTool.BASEPLATE_COMPASS, Paper.LAND_MAP);

  @Test
  void everyToolHasThreeStepsEndingWithReadingAndWhatCanGoWrong() {
    for (ChartTool tool : ChartTool.all()) {
      List<String> steps = LayingOff.with(tool, Paper.CHART).steps();
      assertEquals(3, steps.size());
      assertTrue(steps.get(2).startsWith("Read"), tool::name);
      List<String> wrong = LayingOff.with(tool, Paper.CHART).canGoWrong();
      assertTrue(wrong.get(0).contains("180°"), tool::name);
    }
  }

  @Test
  void onALandMapEveryToolReadsGridNorth() {
    for (ChartTool tool : ChartTool.all()) {
      if (tool.linedUpOn() == ChartTool.LinedUpOn.PRINTED_ROSE) {
        assertThrows(IllegalArgumentException.class, () -> LayingOff.with(tool, Paper.LAND_MAP));
      } else {
        LayingOff plan = LayingOff.with(tool, Paper.LAND_MAP);
        assertEquals("grid north", plan.northRead());
        assertTrue(plan.steps().get(1).contains("upright line of the grid"), tool::name);
        assertTrue(plan.remains().startsWith("Convergence"), tool::name);
      }
    }
  }

  @Test
  void whatRemainsIsWhatTheConversionsOfTheBearingsDo() {
    TrueBearing read = TrueBearing.ofDegrees(56);
    assertEquals(
        read.toMagnetic(VARIATION).degrees(), RULES.problem(read, VARIATION).answer(), ROUNDING);
    GridConvergence convergence = GridConvergence.ofDegreesEast(1.5, "G");
    GridBearing grid = new GridBearing(56, "G");
    assertEquals(
        grid.toTrue(convergence).toMagnetic(VARIATION).degrees(),
        ON_MAP.problem(grid, convergence, VARIATION).answer(),
        ROUNDING);
    assertThrows(IllegalArgumentException.class, () -> ON_MAP.problem(read, VARIATION));
    assertThrows(IllegalArgumentException.class, () -> RULES.problem(grid, convergence, VARIATION));
  }

  @Test
  void ofTheInnerRingOnlyTheYearsChangeRemains() {
    CompassRose rose = CompassRose.parse("9°00'W 2006 (9'E)");
    MagneticBearing read = MagneticBearing.ofDegrees(65);
    Problem problem = RULES.problem(read, rose, 2026);
    assertEquals(
        ChartTool.applyYearsChange(read, rose.variation(), rose.variationInYear(2026)).degrees(),
        problem.answer(),
        ROUNDING);
    assertEquals(62.0, problem.answer(), ROUNDING); // 20 years at 9' east are 3° less
    assertEquals(
        "variation applied to the inner ring as well",
        problem.mark(71.0).explanations().get(0).slips().get(0).text());
    assertThrows(
        IllegalArgumentException.class,
        () -> LayingOff.with(ChartTool.DECK_PLOTTER, Paper.CHART).problem(read, rose, 2026));
  }
}
