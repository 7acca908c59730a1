package org.ferryglide.examples.teach;

import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.Quantity;

/**
 * One exercise of a worksheet.
 *
 * @param number its number on the sheet, from 1
 * @param grade 1 for one step, 2 for a few, 3 for a whole leg
 * @param story what happens and what is asked
 * @param problem the figures, the working and the marking
 */
public record Exercise(int number, int grade, String story, Problem problem) {
  /**
   * The right answer in writing with what is allowed either way.
   *
   * @return for example {@code 049°M, 2 either way}
   */
  public String answer() {
    Quantity quantity = problem.quantity(problem.asked());
    return quantity.text(problem.answer())
        + ", "
        + quantity.tolerance()
        + " "
        + quantity.unitOfDifference()
        + " either way";
  }
}
