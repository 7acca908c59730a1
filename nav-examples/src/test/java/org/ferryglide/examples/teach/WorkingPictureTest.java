package org.ferryglide.examples.teach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.chart.ChartTool;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.reckon.SteadyRun;
import org.ferryglide.nav.teach.AnswerProblems;
import org.ferryglide.nav.teach.LayingOff;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.SteeringProblems;
import org.junit.jupiter.api.Test;

class WorkingPictureTest {
  /** Kinds with nothing to draw: sums, and looking up in tables. */
  private static final Set<String> MERE_ARITHMETIC =
      Set.of(
          "Daylight left on landing",
          "Distance off a light that rises or dips",
          "Distance off by a vertical angle",
          "Height of a water at a secondary port",
          "How far off by a small angle",
          "Length of a leg on the chart",
          "Stream between two hours of the table",
          "Time of a water at a secondary port");

  @Test
  void everyKindIsDrawnOrIsMereArithmetic() {
    Set<String> bare = new TreeSet<>();
    for (int seed = 1; seed <= 5; seed++) {
      List<Problem> problems = new ArrayList<>(DrawnProblems.of(seed));
      Exercises.of(seed, 24).list().forEach(exercise -> problems.add(exercise.problem()));
      for (Problem problem : problems) {
        Optional<Svg> picture = WorkingPicture.of("p", problem);
        assertEquals(MERE_ARITHMETIC.contains(problem.title()), picture.isEmpty(), problem::title);
        picture.ifPresentOrElse(
            svg -> assertTrue(svg.description().length() > 40, svg::description),
            () -> bare.add(problem.title()));
      }
    }
    assertEquals(MERE_ARITHMETIC, bare);
  }

  /** A right angle between stream and way through the water: sides 3, 4 and 5. */
  @Test
  void theTriangleIsTheOneThatWasSolved() {
    Problem problem =
        SteeringProblems.courseToSteer(
            TrueBearing.ofDegrees(90),
            Speed.ofKnots(5),
            Velocity.ofSetAndRate(TrueBearing.ofDegrees(180), Speed.ofKnots(3)),
            Variation.ofDegreesEast(0));
    Svg picture = WorkingPicture.of("t", problem).orElseThrow();
    assertTrue(picture.file().contains("4 kn over the ground"), picture::file);
    assertTrue(picture.file().contains("053°T 5.0 kn"), picture::file);
    assertEquals("Heading across a stream", picture.title());
  }

  @Test
  void severalRunsAreDrawnOneAfterAnother() {
    Velocity stream = Velocity.ofSetAndRate(TrueBearing.ofDegrees(110), Speed.ofKnots(1.2));
    List<SteadyRun> runs =
        List.of(
            new SteadyRun(
                Duration.ofMinutes(50), TrueBearing.ofDegrees(40), Speed.ofKnots(3.4), stream),
            new SteadyRun(
                Duration.ofMinutes(40), TrueBearing.ofDegrees(85), Speed.ofKnots(3.0), stream));
    Svg picture = WorkingPicture.of("r", AnswerProblems.of(runs)).orElseThrow();
    assertTrue(picture.file().contains("085°T 2 NM"), picture::file); // 40 minutes at 3 knots
    assertTrue(picture.file().contains("estimated position"), picture::file);
  }

  @Test
  void everyToolIsDrawnOnThePapersItServes() {
    for (ChartTool tool : ChartTool.all()) {
      for (LayingOff.Paper paper : LayingOff.Paper.values()) {
        boolean needsRose = tool.linedUpOn() == ChartTool.LinedUpOn.PRINTED_ROSE;
        if (paper == LayingOff.Paper.CHART || !needsRose) {
          LayingOff plan = LayingOff.with(tool, paper);
          Svg picture = ToolPicture.of("t", plan);
          assertTrue(picture.description().contains(plan.steps().get(0)));
          for (int step = 1; step <= plan.steps().size(); step++) {
            assertTrue(picture.file().contains(">" + step + "</text>"), tool.name() + step);
          }
        }
      }
    }
  }
}
