package org.ferryglide.testing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A published table that was damaged must not be read as if it were whole. */
class PublishedTest {
  private static List<Published.Row> rows(String file, String... headings) {
    return Published.rows(PublishedTest.class, file, headings);
  }

  private static String refusal(String file, String... headings) {
    return String.valueOf(
        assertThrows(IllegalStateException.class, () -> rows(file, headings)).getMessage());
  }

  @Test
  void fieldsAreReadByTheirHeadings() {
    List<Published.Row> rows = rows("whole-rows.csv", "place", "utc", "height_m");
    assertEquals(2, rows.size());
    assertFalse(rows.get(0).has("height_m"));
    assertEquals(0.0, rows.get(0).epochSeconds());
    assertEquals("B", rows.get(1).text("place"));
    assertEquals(60.0, rows.get(1).epochSeconds());
    assertEquals(1.5, rows.get(1).number("height_m"));
  }

  @Test
  void aRowWithAFieldTooFewOrTooManyIsRefused() {
    assertEquals(
        "short-row.csv has 3 columns, but the row \"B,2026-06-01T15:45Z\" has 2",
        refusal("short-row.csv", "place", "utc", "height_m"));
    assertEquals(
        "long-row.csv has 2 columns, but the row \"B,1,5\" has 3",
        refusal("long-row.csv", "place", "height_m"));
  }

  @Test
  void otherColumnsAreRefused() {
    assertEquals(
        "long-row.csv has the columns [place, height_m]", refusal("long-row.csv", "place", "m"));
  }
}
