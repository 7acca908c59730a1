package org.ferryglide.tide.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

/** Sectors round a place against the shore tried whole. */
class ShoreSectorsTest {

  private static Shoreline coast(int points, double longitude, SplittableRandom random) {
    List<List<Position>> lines = new ArrayList<>();
    List<Position> line = new ArrayList<>();
    for (int i = 0; i < points; i++) {
      double east = longitude + 0.02 * Math.sin(i * 0.7) + 1e-3 * random.nextDouble();
      line.add(Position.ofDegrees(50.0 + 0.4 * i / points, wrapped(east)));
      if (line.size() > 1 && random.nextInt(97) == 0) { // a gap to look through
        lines.add(line);
        line = new ArrayList<>();
      }
    }
    if (line.size() > 1) {
      lines.add(line);
    }
    return Shoreline.of(lines);
  }

  private static double wrapped(double longitude) {
    return longitude >= 180.0 ? longitude - 360.0 : longitude;
  }

  @Test
  void everySightIsAnsweredAsByTheWholeShore() {
    SplittableRandom random = new SplittableRandom(9);
    int cut = 0;
    for (double longitude : new double[] {-5.15, 179.98}) {
      for (int points : new int[] {10, 400, 5000}) {
        Shoreline shores = coast(points, longitude, random);
        for (int station = 0; station < 6; station++) {
          double lat = 50.0 + 0.4 * random.nextDouble();
          double lon = wrapped(longitude + 0.2 * (random.nextDouble() - 0.5));
          if (station == 0) { // on a corner of the shore
            lat = shores.startY(points / 3);
            lon = wrapped(longitude + shores.startX(points / 3) - shores.eastOf(longitude));
          }
          ShoreSectors sectors = new ShoreSectors(shores, lat, lon);
          for (int i = 0; i < 2000; i++) {
            double lat1 = 50.0 + 0.4 * random.nextDouble();
            double lon1 = wrapped(longitude + 0.3 * (random.nextDouble() - 0.5));
            if (i % 10 == 0) { // due north, south, east or west
              lat1 = i % 20 == 0 ? lat : lat1;
              lon1 = i % 20 == 0 ? lon1 : lon;
            }
            boolean expected = shores.separates(lat1, lon1, lat, lon);
            assertEquals(expected, sectors.separates(lat1, lon1, lon));
            cut += expected ? 1 : 0;
          }
        }
      }
    }
    assertTrue(cut > 10_000 && cut < 62_000, "" + cut);
  }

  @Test
  void farAwayAndNowhereAreAnsweredToo() {
    Shoreline shores = coast(400, -5.15, new SplittableRandom(1));
    ShoreSectors sectors = new ShoreSectors(shores, 50.2, -5.3);
    for (double lon1 : new double[] {0, 174.9, 175.1, -179, -5.3}) {
      assertEquals(shores.separates(50.2, lon1, 50.2, -5.3), sectors.separates(50.2, lon1, -5.3));
    }
    assertEquals(false, sectors.separates(Double.NaN, -5.0, -5.3));
    assertEquals(false, sectors.separates(50.2, Double.NaN, -5.3));
  }
}
