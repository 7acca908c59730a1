package org.ferryglide.examples.page;

import java.util.List;
import org.ferryglide.examples.svg.Markup;

/** A table of figures: a name for it, a head, rows whose first cell names them. */
final class Table {
  private Table() {}

  static void write(Markup body, String caption, List<String> head, List<List<String>> rows) {
    body.open("div", "class", "wide", "role", "region", "aria-label", caption, "tabindex", "0");
    body.open("table").element("caption", caption).open("thead").open("tr");
    head.forEach(words -> body.element("th", words, "scope", "col"));
    body.close().close().open("tbody").line();
    for (List<String> row : rows) {
      body.open("tr").element("th", row.get(0), "scope", "row");
      row.subList(1, row.size()).forEach(words -> body.element("td", words));
      body.close().line();
    }
    body.close().close().close().line();
  }
}
