package org.ferryglide.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class StreamOnAGridTest {
  private static final Path SHEET = Path.of("grids", "ollen-sound.csv");

  @Test
  void theExampleTellsTheStreamAtANodeAsTheSheetHasIt() throws IOException {
    Instant nine = Instant.parse("2026-06-14T09:00:00Z");
    List<String> lines =
        StreamOnAGrid.everyHalfHour(SHEET, Position.ofDegrees(46.2, -26.29), nine, nine);
    // 0.07 m/s east and 0.41 m/s north
    assertEquals(List.of("2026-06-14T09:00:00Z  010° 0.8 kn"), lines);
  }

  @Test
  void besideLandThereAreNoData() throws IOException {
    Instant nine = Instant.parse("2026-06-14T09:00:00Z");
    assertEquals(
        List.of("2026-06-14T09:00:00Z  no data"),
        StreamOnAGrid.everyHalfHour(SHEET, Position.ofDegrees(46.215, -26.265), nine, nine));
  }
}
