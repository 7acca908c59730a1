package org.ferryglide.examples.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** A season beside itself worked in another order, by another worker. */
class CoastSeasonTest {
  @Test
  void departuresAreWorkedByTheirNumberAlone() {
    CoastSeason season = new CoastSeason(5, 4, 8);
    assertEquals(3 * 8 * 48, season.departures());
    int count = (int) season.departures();
    double[] forth = new double[count * CoastSeason.WIDTH];
    double[] back = new double[count * CoastSeason.WIDTH];
    CoastSeason.Worker one = season.worker();
    CoastSeason.Worker other = season.worker();
    int possible = 0;
    for (int i = 0; i < count; i++) {
      one.work(i, forth, i * CoastSeason.WIDTH);
      other.work(count - 1L - i, back, (count - 1 - i) * CoastSeason.WIDTH);
      possible += Double.isNaN(forth[i * CoastSeason.WIDTH + CoastSeason.HOURS]) ? 0 : 1;
    }
    assertArrayEquals(forth, back);
    assertTrue(possible > count / 2 && possible < count, "possible " + possible);
  }

  @Test
  void whatIsNoSeasonIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new CoastSeason(1, 1, 10));
    assertThrows(IllegalArgumentException.class, () -> new CoastSeason(1, 10, 0));
  }
}
