package org.ferryglide.tide.stream;

import java.util.List;
import org.ferryglide.tide.sheet.Sheet;

/** Fields that stand in the first of several rows and are empty or the same in the others. */
final class RepeatedFields {
  private RepeatedFields() {}

  static void refuseContradiction(Sheet.Row first, Sheet.Row row, List<String> headings) {
    for (String heading : headings) {
      if (row.has(heading) && !row.text(heading).equals(first.text(heading))) {
        row.problem(
            heading,
            "must be empty or \""
                + first.text(heading)
                + "\" as in line "
                + first.line()
                + " for the same station, but was \""
                + row.text(heading)
                + "\"");
      }
    }
  }
}
