package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class TableCurveTest {
  private static final TideTable TABLE =
      TideTable.of(
          "Skarra",
          "chart datum",
          List.of(
              TideEvent.low(Instant.parse("2026-06-01T03:20:00Z"), 0.7),
              TideEvent.high(Instant.parse("2026-06-01T09:30:00Z"), 4.2),
              TideEvent.low(Instant.parse("2026-06-01T15:45:00Z"), 0.9),
              TideEvent.high(Instant.parse("2026-06-01T21:50:00Z"), 4.1)));

  @Test
  void theTwelfthsOfASixHourRiseAreOneTwoThreeThreeTwoOne() {
    TideTable table =
        TideTable.of(
            "Skarra",
            "chart datum",
            List.of(
                TideEvent.low(Instant.parse("2026-06-01T06:00:00Z"), 1.0),
                TideEvent.high(Instant.parse("2026-06-01T12:00:00Z"), 4.6)));
    TideCurve curve = TableCurve.twelfths(table);
    double[] expected = {1.0, 1.3, 1.9, 2.8, 3.7, 4.3, 4.6};
    for (int hour = 0; hour <= 6; hour++) {
      assertEquals(
          expected[hour],
          curve.heightMetresAt(table.start().plusSeconds(3600L * hour)).getAsDouble(),
          1e-12);
    }
  }

  @Test
  void theSearchFindsTheWatersOfTheTableItself() {
    for (TideCurve curve : List.of(TableCurve.cosine(TABLE), TableCurve.twelfths(TABLE))) {
      assertEquals(TABLE.events().subList(1, 3), curve.extremes(TABLE.start(), TABLE.end()));
    }
  }

  @Test
  void aSheetIsReadAsItStands() throws IOException {
    TideTable table =
        TideTable.read(
            "skarra.csv",
            new StringReader(
                """
                time,height_m,port,datum,zone
                2026-06-01T03:20,0.7,Skarra,chart datum,Z
                2026-06-01T10:30+01:00,4.2,,,
                2026-06-01 15:45,0.9,,,
                2026-06-01T21:50Z,4.1,,,
                """));
    assertEquals(TABLE, table);
    assertEquals(3.4, table.rangeMetres(table.events().get(1)), 1e-12);
    assertTrue(table.isRangeOneSided(table.events().get(3)));
  }
}
