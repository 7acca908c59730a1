package org.ferryglide.testing;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Published tables beside the tests whose first row names the columns; each names its source. */
public final class Published {
  private Published() {}

  /** A row, its fields by heading. */
  public static final class Row {
    private final Map<String, String> fields;

    private Row(Map<String, String> fields) {
      this.fields = fields;
    }

    public String text(String heading) {
      return Optional.ofNullable(fields.get(heading)).orElseThrow();
    }

    public boolean has(String heading) {
      return !text(heading).isEmpty();
    }

    public double number(String heading) {
      return Rows.number(text(heading));
    }

    /** The time in the column utc, seconds since 1970. */
    public double epochSeconds() {
      return OffsetDateTime.parse(text("utc")).toEpochSecond();
    }
  }

  /**
   * The rows of a table in the test's own package, which has these columns; a row with fewer fields
   * or more is refused.
   */
  public static List<Row> rows(Class<?> test, String file, String... headings) {
    List<String[]> lines = Rows.of(test, file);
    if (!List.of(lines.get(0)).equals(List.of(headings))) {
      throw new IllegalStateException(file + " has the columns " + List.of(lines.get(0)));
    }
    List<Row> rows = new ArrayList<>();
    for (String[] line : lines.subList(1, lines.size())) {
      if (line.length != headings.length) {
        throw new IllegalStateException(
            file
                + " has "
                + headings.length
                + " columns, but the row \""
                + String.join(",", line)
                + "\" has "
                + line.length);
      }
      Map<String, String> fields = new LinkedHashMap<>();
      for (int i = 0; i < headings.length; i++) {
        fields.put(headings[i], line[i].trim());
      }
      rows.add(new Row(fields));
    }
    return rows;
  }
}
