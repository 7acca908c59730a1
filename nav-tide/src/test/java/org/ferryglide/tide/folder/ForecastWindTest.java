package org.ferryglide.tide.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ForecastWindTest {
  private static final String HEADING = "place,position,time,from_deg,speed_kn\n";
  private static final Position WEST = Position.parse("46°10.0'N 026°20.0'W");
  private static final Position EAST = Position.parse("46°10.0'N 026°00.0'W");

  /** Rounding of means of two speeds of some metres a second. */
  private static final double ROUNDING = 1e-12;

  private static ForecastWind read(String rows) throws IOException {
    return ForecastWind.read("wind.csv", new StringReader(HEADING + rows));
  }

  @Test
  void aFileIsReadAsItsText(@TempDir Path folder) throws IOException {
    String rows = "hill,50°06.0'N 005°30.0'W,2026-06-14T08:00Z,240,12\n";
    Path file = folder.resolve("wind.csv");
    Files.writeString(file, HEADING + rows);
    assertEquals(read(rows), ForecastWind.read(file));
  }

  private static ForecastWind oneplace() throws IOException {
    return read(
        "West,46°10.0'N 026°20.0'W,2026-06-14T06:00Z,270,10\n"
            + "West,,2026-06-14T09:00Z,360,10\n"
            + "West,,2026-06-14T18:00Z,,0\n");
  }

  /** Half from the west and half from the north: 10 kn / √2 from the north-west. */
  @Test
  void betweenTwoTimesTheWindGoesOverByItsParts() throws IOException {
    Velocity wind = oneplace().at(EAST, Instant.parse("2026-06-14T07:30:00Z")).get();
    assertEquals(10.0 / Math.sqrt(2.0), wind.rate().knots(), ROUNDING);
    assertEquals(135.0, wind.set().degrees(), 1e-9, "where the air goes");
  }

  @Test
  void outsideItsTimesAndInALongGapNoWindIsKnown() throws IOException {
    ForecastWind wind = oneplace();
    assertTrue(wind.at(WEST, Instant.parse("2026-06-14T06:00:00Z")).isPresent());
    assertFalse(wind.at(WEST, Instant.parse("2026-06-14T05:59:59Z")).isPresent());
    assertFalse(wind.at(WEST, Instant.parse("2026-06-14T12:00:00Z")).isPresent());
    assertEquals(Velocity.STILL, wind.at(WEST, Instant.parse("2026-06-14T18:00:00Z")).get());
    assertFalse(wind.at(WEST, Instant.parse("2026-06-14T18:00:01Z")).isPresent());
  }

  @Test
  void itTellsItsSpanItsBreaksAndItsPlace() throws IOException {
    ForecastWind wind = oneplace();
    double six = EpochSeconds.of(Instant.parse("2026-06-14T06:00:00Z"));
    assertEquals(six, wind.startSeconds());
    assertEquals(six + 12 * 3600.0, wind.endSeconds());
    assertEquals(six + 3 * 3600.0, wind.nextBreakAfter(six));
    assertEquals(Double.POSITIVE_INFINITY, wind.nextBreakAfter(wind.endSeconds()));
    assertEquals(WEST, wind.position().get());
    assertTrue(wind.isUniform());
    assertEquals("wind.csv, wind at 1 place", wind.toString());
    assertEquals(oneplace(), wind);
  }

  /** At a quarter of the way the weights are as 9 to 1: (9 · 10 + 20) / 10 = 11 kn. */
  @Test
  void betweenPlacesTheInverseSquareOfTheDistanceWeighs() throws IOException {
    ForecastWind wind =
        read(
            "West,46°10.0'N 026°20.0'W,2026-06-14T06:00Z,270,10\n"
                + "East,46°10.0'N 026°00.0'W,2026-06-14T06:00Z,270,20\n");
    Instant six = Instant.parse("2026-06-14T06:00:00Z");
    Position quarter = Position.parse("46°10.0'N 026°15.0'W");
    assertEquals(11.0, wind.at(quarter, six).get().rate().knots(), 1e-9);
    assertEquals(10.0, wind.at(WEST, six).get().rate().knots(), ROUNDING);
    assertEquals(20.0, wind.at(EAST, six).get().rate().knots(), ROUNDING);
    assertFalse(wind.isUniform());
    assertFalse(wind.position().isPresent());
  }

  @Test
  void whereTheNearestPlaceTellsNothingAFarOneDoesNotStepIn() throws IOException {
    ForecastWind wind =
        read(
            "West,46°10.0'N 026°20.0'W,2026-06-14T06:00Z,270,10\n"
                + "East,46°10.0'N 026°00.0'W,2026-06-14T09:00Z,270,20\n");
    assertFalse(wind.at(EAST, Instant.parse("2026-06-14T06:00:00Z")).isPresent());
    assertTrue(wind.at(WEST, Instant.parse("2026-06-14T06:00:00Z")).isPresent());
  }

  @Test
  void placesOnEitherSideOfTheAntimeridianAreNeighbours() throws IOException {
    ForecastWind wind =
        read(
            "West,10°00.0'S 179°50.0'E,2026-06-14T06:00Z,90,10\n"
                + "East,10°00.0'S 179°30.0'W,2026-06-14T06:00Z,90,20\n");
    Position between = Position.parse("10°00.0'S 180°00.0'W");
    // 10' and 30' off: weights as 9 to 1
    assertEquals(
        11.0, wind.at(between, Instant.parse("2026-06-14T06:00:00Z")).get().rate().knots(), 1e-9);
  }
}
