package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.List;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

class PathsAroundObstaclesTest {
  private static double lat(double y) {
    return y * 1000.0 / (6378137.0 * (1 - Ellipsoid.WGS84.eccentricitySquared()));
  }

  private static double lon(double x) {
    return x * 1000.0 / 6378137.0;
  }

  private static Position at(double x, double y) {
    return Position.ofDegrees(Math.toDegrees(lat(y)), Math.toDegrees(lon(x)));
  }

  private static double seconds(StreamField field, double gx, double gy) {
    Obstacles island = Obstacles.of(List.of(List.of(at(2, -1), at(3, -1), at(3, 1.5), at(2, 1.5))));
    long t0 = System.nanoTime();
    double[][] rows =
        new PathsAroundObstacles(
                field, 1.5, island, new double[] {0, 0}, new double[] {lat(gy), lon(gx)}, 0, 86400)
            .quickest();
    System.out.println("took " + (System.nanoTime() - t0) / 1e6 + " ms");
    assertNotNull(rows);
    return rows[rows.length - 1][0];
  }

  @Test
  void still() {
    double around = Math.hypot(2, 1) + 1 + Math.hypot(2, 1);
    assertEquals(around * 1000 / 1.5, seconds(StreamField.slack(), 5, 0), 6);
  }

  @Test
  void streamNorth() {
    System.out.println(seconds(StreamField.steady(Velocity.ofEastAndNorth(0, 0.8)), 5, 0));
    System.out.println(seconds(StreamField.steady(Velocity.ofEastAndNorth(0, -0.8)), 5, 0));
  }
}
