package org.ferryglide.tide.folder;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.tide.sheet.Sheet;

/** A sheet of items and their values, each item at most once. */
final class ItemSheet {
  private final Sheet sheet;
  private final Map<String, Sheet.Row> rows = new LinkedHashMap<>();

  private ItemSheet(Sheet sheet) {
    this.sheet = sheet;
  }

  /** Reads the sheet; an item that is missing is not told where a damaged row may hold it. */
  static ItemSheet read(FolderText file, List<String> required, List<String> optional)
      throws IOException {
    ItemSheet items =
        new ItemSheet(
            Sheet.read(file.source(), file.reader(), List.of("item", "value"), List.of()));
    boolean damaged = items.isFaulty();
    Set<String> known = new TreeSet<>(required);
    known.addAll(optional);
    Set<String> perhapsMisspelt = new TreeSet<>();
    for (Sheet.Row row : items.sheet.rows()) {
      String item = row.text("item");
      if (!known.contains(item)) {
        Set<String> missing = new TreeSet<>(known);
        missing.removeAll(items.rows.keySet());
        NearName.of(item, missing).ifPresent(perhapsMisspelt::add);
        row.problem(
            "item",
            "must be one of "
                + known
                + ", but was \""
                + item
                + "\""
                + NearName.question(item, missing));
      } else if (items.rows.put(item, row) != null) {
        row.problem("item", item + " stands twice");
      }
    }
    for (String name : required) {
      if (!damaged && !items.rows.containsKey(name) && !perhapsMisspelt.contains(name)) {
        items.sheet.problem("item " + name + " is missing");
      }
    }
    return items;
  }

  private boolean isFaulty() {
    try {
      sheet.refuseIfFaulty();
      return false;
    } catch (InputFormatException e) {
      return true;
    }
  }

  boolean has(String name) {
    return rows.containsKey(name);
  }

  /** An item's value; the fallback if it is missing or refused, which is recorded. */
  <T> T read(String name, Function<String, T> parser, T fallback) {
    Sheet.Row row = rows.get(name);
    return row == null ? fallback : row.read("value", name, parser, fallback);
  }

  void refuseIfFaulty() {
    sheet.refuseIfFaulty();
  }
}
