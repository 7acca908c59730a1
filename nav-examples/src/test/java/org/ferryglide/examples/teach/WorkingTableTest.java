package org.ferryglide.examples.teach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferryglide.nav.note.Step;
import org.ferryglide.nav.teach.Problem;
import org.junit.jupiter.api.Test;

class WorkingTableTest {
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
}
