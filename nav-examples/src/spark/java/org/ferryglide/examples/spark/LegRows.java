package org.ferryglide.examples.spark;

import java.util.List;
import org.ferryglide.examples.study.DrawnLegs;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.LegComparisons;

/**
 * Legs drawn from a seed, and how rhumb line and geodesic differ on WGS84.
 *
 * @param seed what they are drawn from
 * @param count how many
 */
record LegRows(long seed, long count) implements NumberedRows {
  private static final long serialVersionUID = 1L;

  /** Where the latitude of the start stands, degrees. */
  static final int LATITUDE = 0;

  /** Where rhumb length less geodesic length stands, metres. */
  static final int EXCESS = 4;

  /** Where the greatest distance between the lines stands, metres; NaN where it is not worked. */
  static final int SEPARATION = 5;

  /** How many figures a leg has. */
  static final int WIDTH = 7;

  @Override
  public List<String> columns() {
    return List.of(
        "lat1", "lon1", "lat2", "lon2", "excess_m", "separation_m", "bearing_difference_deg");
  }

  @Override
  public int atATime() {
    return 1000;
  }

  @Override
  public Worker worker() {
    DrawnLegs drawn = new DrawnLegs(seed);
    double[][] ends = new double[DrawnLegs.WIDTH][atATime()];
    double[] leg = new double[DrawnLegs.WIDTH];
    double[] lines = new double[LegComparisons.WIDTH_WITH_SEPARATION * atATime()];
    return (first, rows, out) -> {
      for (int i = 0; i < rows; i++) {
        drawn.draw(first + i, leg, 0);
        for (int k = 0; k < leg.length; k++) {
          ends[k][i] = leg[k];
        }
      }
      LegComparisons.compareWithSeparation(
          Ellipsoid.WGS84, ends[0], ends[1], ends[2], ends[3], 0, rows, lines, 0);
      for (int i = 0; i < rows; i++) {
        int line = LegComparisons.WIDTH_WITH_SEPARATION * i;
        int row = WIDTH * i;
        for (int k = 0; k < leg.length; k++) {
          out[row + LATITUDE + k] = ends[k][i];
        }
        out[row + EXCESS] = lines[line + LegComparisons.EXCESS];
        out[row + SEPARATION] = lines[line + LegComparisons.SEPARATION];
        out[row + SEPARATION + 1] = lines[line + LegComparisons.INITIAL_COURSE_DIFFERENCE];
      }
    };
  }
}
