package org.ferryglide.examples.teach;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.examples.svg.Markup;
import org.ferryglide.nav.note.Figure;
import org.ferryglide.nav.note.Step;
import org.ferryglide.nav.note.Working;

/**
 * A working as a table of HTML: what, as written by hand, the exact value, how it follows and from
 * which figures.
 *
 * <pre>{@code
 * Markup table = WorkingTable.of(problem.working());
 * }</pre>
 */
public final class WorkingTable {
  private WorkingTable() {}

  /**
   * The table.
   *
   * @param working any working
   * @return one table with a row for each step
   */
  public static Markup of(Working working) {
    Markup table = new Markup().open("table", "class", "working");
    table.element("caption", working.title()).open("thead").open("tr");
    for (String name : List.of("Figure", "By hand", "Exact", "How")) {
      table.element("th", name, "scope", "col");
    }
    table.close().close().open("tbody");
    for (Step step : working.steps()) {
      table.open("tr").element("th", step.name(), "scope", "row");
      table.element("td", step.result().text(), "class", "figure");
      table.element("td", isRemark(step) ? "" : exact(step.result()), "class", "figure");
      table.element("td", how(step)).close();
    }
    return table.close().close();
  }

  /** Words about the answer: its exact value stands in the line of the answer already. */
  private static boolean isRemark(Step step) {
    return List.of("In the head", "Rounding", "Check").contains(step.name());
  }

  private static String exact(Figure figure) {
    double rounded = Math.rint(figure.exact() * 1000.0) / 1000.0 + 0.0;
    boolean whole = rounded == Math.rint(rounded);
    return whole ? Long.toString((long) rounded) : Double.toString(rounded);
  }

  private static String how(Step step) {
    List<String> inputs = new ArrayList<>();
    step.inputs().forEach(input -> inputs.add(input.name() + " " + input.text()));
    return inputs.isEmpty() ? step.rule() : step.rule() + " (" + String.join(", ", inputs) + ")";
  }
}
