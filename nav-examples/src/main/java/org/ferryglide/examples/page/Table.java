package org.ferryglide.examples.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ferryglide.examples.svg.Markup;

/** A table of figures: a name for it, a head, rows whose first cell names them. */
final class Table {
  private static final int LONGEST_FIGURE = 9;
  private static final int LONGEST_WORD = 16;

  private Table() {}

  static void write(Markup body, String caption, List<String> head, List<List<String>> rows) {
    body.open("div", "class", "wide", "role", "region", "aria-label", caption, "tabindex", "0");
    body.open("table").element("caption", caption).open("thead").open("tr");
    head.forEach(words -> body.element("th", words, "scope", "col"));
    body.close().close().open("tbody").line();
    for (List<String> row : rows) {
      body.open("tr");
      cell(body, "th", row.get(0), "scope", "row");
      row.subList(1, row.size()).forEach(words -> cell(body, "td", words));
      body.close().line();
    }
    body.close().close().close().line();
  }

  /**
   * A figure or a time stays on one line, that of the day before (23:45-1) with its hyphen; what
   * holds a word too long for a column may be broken anywhere.
   */
  private static void cell(Markup body, String name, String words, String... attributes) {
    List<String> all = new ArrayList<>(List.of(attributes));
    if (words.length() <= LONGEST_FIGURE && words.indexOf('-') > 0) {
      all.addAll(List.of("class", "whole"));
    } else if (Arrays.stream(words.split(" ")).anyMatch(it -> it.length() > LONGEST_WORD)) {
      all.addAll(List.of("class", "long"));
    }
    body.element(name, words, all.toArray(new String[0]));
  }
}
