package org.ferryglide.examples.teach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.TreeSet;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.note.Step;
import org.ferryglide.nav.teach.Problem;
import org.junit.jupiter.api.Test;

class WorkingPicturesTest {
  @Test
  void theTableHoldsEveryStepWithItsInputsAndWords() {
    for (Problem problem : DrawnProblems.of(5)) {
      String table = WorkingTable.of(problem.working()).toString();
      for (Step step : problem.working().steps()) {
        assertTrue(table.contains(">" + step.name() + "<"), step::name);
        step.inputs().forEach(input -> assertTrue(table.contains(input.name() + " "), input::name));
      }
      assertEquals(problem.working().steps().size() + 2, table.split("<tr>", -1).length);
    }
  }

  @Test
  void trianglesVectorsFixesAndCurvesAreDrawnWithinTheirPicture() {
    TreeSet<String> drawn = new TreeSet<>();
    for (long seed = 1; seed <= 6; seed++) {
      for (Problem problem : DrawnProblems.of(seed)) {
        Optional<Svg> picture = ProblemPicture.of(problem, "p");
        if (picture.isPresent()) {
          drawn.add(problem.title());
          String svg = picture.get().file();
          assertTrue(!svg.contains("NaN") && !svg.contains("Infinity"), problem::toString);
          for (String x : svg.split(" x[12]=\"", -1)) {
            if (x.matches("(?s)[-0-9.]+\".*")) {
              double at = Double.parseDouble(x.substring(0, x.indexOf('"')));
              assertTrue(at >= 0.0 && at <= picture.get().width(), () -> problem + " " + at);
            }
          }
        }
      }
    }
    assertEquals(6, drawn.size(), drawn::toString);
  }
}
