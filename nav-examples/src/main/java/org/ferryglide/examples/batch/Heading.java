package org.ferryglide.examples.batch;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;

/** The first row of a file: which of its columns an operation reads. */
final class Heading {
  private final List<String> reads;
  private final int width;
  private final int[] slotOfColumn;
  private final int[] columnOfSlot;

  private Heading(List<String> reads, int width, int[] slotOfColumn, int[] columnOfSlot) {
    this.reads = reads;
    this.width = width;
    this.slotOfColumn = slotOfColumn;
    this.columnOfSlot = columnOfSlot;
  }

  /**
   * Finds the columns by their names, in whatever order they stand.
   *
   * @param source what to call the file
   * @param bytes where the row stands
   * @param from where it starts, behind a byte-order mark
   * @param to where it ends, without its line ending
   * @param reads the columns that are needed
   * @param adds the columns that will be added, which must not stand there already
   * @throws InputFormatException naming every column that is missing, stands twice or is added
   */
  static Heading find(
      String source, byte[] bytes, int from, int to, List<String> reads, List<String> adds) {
    List<String> names = names(source, bytes, from, to);
    List<InputProblem> problems = new ArrayList<>();
    int[] slotOfColumn = new int[names.size()];
    int[] columnOfSlot = new int[reads.size()];
    Arrays.fill(slotOfColumn, -1);
    for (int slot = 0; slot < reads.size(); slot++) {
      String name = reads.get(slot);
      int column = names.indexOf(name);
      if (column < 0) {
        problems.add(
            new InputProblem(source, 1, 0, "column " + name + " is missing" + meant(name, names)));
      } else if (names.lastIndexOf(name) != column) {
        problems.add(
            new InputProblem(
                source, 1, names.lastIndexOf(name) + 1, "column " + name + " stands twice"));
      } else {
        slotOfColumn[column] = slot;
        columnOfSlot[slot] = column;
      }
    }
    for (String name : adds) {
      if (names.contains(name)) {
        problems.add(
            new InputProblem(
                source,
                1,
                names.indexOf(name) + 1,
                "column "
                    + name
                    + " stands here already, and would be added; a prefix sets them apart"));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputFormatException(problems);
    }
    return new Heading(List.copyOf(reads), names.size(), slotOfColumn, columnOfSlot);
  }

  private static List<String> names(String source, byte[] bytes, int from, int to) {
    List<String> names = new ArrayList<>();
    int place = from;
    while (true) {
      int start = place;
      if (place < to && bytes[place] == '"') {
        int close = RowEnds.closingQuote(bytes, place + 1, to);
        if (close == RowEnds.OPEN_QUOTE) {
          throw new InputFormatException(
              new InputProblem(source, 1, names.size() + 1, "a quotation mark is not closed"));
        }
        place = close + 1;
      }
      while (place < to && bytes[place] != ',') {
        place++;
      }
      String name = new String(bytes, start, place - start, StandardCharsets.UTF_8).trim();
      if (name.length() > 1 && name.startsWith("\"") && name.endsWith("\"")) {
        name = name.substring(1, name.length() - 1).replace("\"\"", "\"").trim();
      }
      names.add(name);
      if (place >= to) {
        return names;
      }
      place++;
    }
  }

  private static String meant(String name, List<String> names) {
    for (String other : names) {
      if (other.equalsIgnoreCase(name)) {
        return "; \"" + other + "\" is written otherwise";
      }
    }
    if (names.size() == 1 && (names.get(0).contains(";") || names.get(0).contains("\t"))) {
      return "; columns must be separated by commas";
    }
    String found = String.join(", ", names);
    return "; the first row must name the columns, and it holds "
        + (found.length() > 200 ? found.substring(0, 200) + "…" : found);
  }

  /** How many columns the operation reads. */
  int reads() {
    return reads.size();
  }

  /** How many columns the file has. */
  int width() {
    return width;
  }

  /** Which of the columns read stands here; -1 if none does. */
  int slot(int column) {
    return column < slotOfColumn.length ? slotOfColumn[column] : -1;
  }

  int column(int slot) {
    return columnOfSlot[slot];
  }

  String name(int slot) {
    return reads.get(slot);
  }
}
