package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeasonalChangeTest {
  private static final SeasonalChange CHANGE =
      SeasonalChange.ofMonths(0.1, 0.0, 0, -0.1, -0.1, -0.1, 0, 0, 0, 0.1, 0.1, 0.2);

  @ParameterizedTest
  @CsvSource({
    "2026-01-01T00:00:00Z, 0.1",
    "2026-01-16T12:00:00Z, 0.05",
    "2026-02-01T00:00:00Z, 0",
    "2026-04-01T00:00:00Z, -0.1",
    "2026-05-13T01:02:03Z, -0.1",
    // from December round to January
    "2026-12-16T12:00:00Z, 0.15",
    "2026-12-31T23:59:59Z, 0.1",
    // February of a leap year has 29 days
    "2028-03-16T12:00:00Z, -0.05"
  })
  void theFirstsOfTheMonthsAreJoinedByStraightLines(Instant instant, double metres) {
    assertEquals(metres, CHANGE.metresAt(instant), 1e-6); // a second of a month
  }

  @Test
  void noChangeIsNoneAllTheYear() {
    assertEquals(0.0, SeasonalChange.NONE.metresAt(Instant.parse("2026-07-09T00:00:00Z")));
  }

  @Test
  void twelveMonthsAreNeeded() {
    assertEquals(
        "seasonal changes must be 12, one a month, but were 2",
        assertThrows(IllegalArgumentException.class, () -> SeasonalChange.ofMonths(0.1, 0.2))
            .getMessage());
    assertEquals(
        "seasonal change must be in [-5, 5] metres, but was 6.0",
        assertThrows(
                IllegalArgumentException.class,
                () -> SeasonalChange.ofMonths(0, 0, 0, 0, 0, 6, 0, 0, 0, 0, 0, 0))
            .getMessage());
  }
}
