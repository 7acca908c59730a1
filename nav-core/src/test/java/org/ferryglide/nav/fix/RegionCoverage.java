package org.ferryglide.nav.fix;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.plane.LocalPlane;
import org.ferryglide.nav.position.Position;

/**
 * Measures how often the region of a fix holds the true position: {@code RegionCoverage DRAWS SEED}
 * prints the table committed as region_coverage.csv (class path of the tests of nav-core).
 *
 * <p>Marks stand 1 to 4 NM off, errors of bearings are normal. It shares no code with the region
 * but the solver it asks.
 */
final class RegionCoverage {
  private RegionCoverage() {}

  private static final Position TRUTH = Position.ofDegrees(56.2, -5.8);

  static final double[] CUTS = {5, 10, 15, 20, 25, 30, 45, 60, 90};
  static final double[] SIGMAS = {1, 3, 5};

  /** One cell: how many draws gave a fix, and of those how many the region and the ellipse held. */
  record Cell(int draws, int fixes, int region, int ellipse, double medianReachMetres) {

    double held() {
      return region / (double) fixes;
    }

    double missedOfAll() {
      return (fixes - region) / (double) draws;
    }
  }

  /** Bearings that cross at a cut; with three, the third halves it. */
  static Cell bearings(int count, double cut, double sigma, int draws, long seed) {
    Random random = new Random(seed);
    int fixes = 0;
    int region = 0;
    int ellipse = 0;
    List<Double> reach = new ArrayList<>();
    for (int i = 0; i < draws; i++) {
      double first = 360.0 * random.nextDouble();
      List<PositionLine> lines = new ArrayList<>();
      for (int k = 0; k < count; k++) {
        double azimuth = first + cut * k / (count - 1);
        Distance off = Distance.ofNauticalMiles(1 + 3 * random.nextDouble());
        Position mark = GeodesicLeg.from(TRUTH, TrueBearing.ofDegrees(azimuth), off).end();
        lines.add(
            BearingLine.of(
                "m", mark, TrueBearing.ofDegrees(azimuth + sigma * random.nextGaussian()), sigma));
      }
      Optional<Fix> fix = FixSolver.standard().solve(lines).solved();
      if (fix.isPresent()) {
        fixes++;
        FixRegion held = fix.get().region();
        region += held.contains(TRUTH) ? 1 : 0;
        double[] off = LocalPlane.toPlane(fix.get().position(), TRUTH);
        ellipse +=
            fix.get().covariance().squaredStatisticalDistance(off[0], off[1]) <= 5.991 ? 1 : 0;
        if (reach.size() < 200) {
          reach.add(held.reach().metres());
        }
      }
    }
    reach.sort(null);
    double median = reach.isEmpty() ? Double.NaN : reach.get(reach.size() / 2);
    return new Cell(draws, fixes, region, ellipse, median);
  }

  /** Prints the table. */
  public static void main(String[] arguments) {
    int draws = Integer.parseInt(arguments[0]);
    long seed = Long.parseLong(arguments[1]);
    System.out.println("# RegionCoverage " + draws + " " + seed);
    System.out.println(
        "# bearings, cut deg, sigma deg, fixes of 100 draws, region holds of 100 fixes, region"
            + " misses of 100 draws, ellipse holds of 100 fixes, median reach m");
    for (int count = 2; count <= 3; count++) {
      for (double sigma : SIGMAS) {
        for (double cut : CUTS) {
          Cell cell = bearings(count, cut, sigma, draws, seed);
          System.out.println(
              String.format(
                  Locale.ROOT,
                  "%d,%.0f,%.0f,%.2f,%.2f,%.2f,%.2f,%.0f",
                  count,
                  cut,
                  sigma,
                  100.0 * cell.fixes() / draws,
                  100.0 * cell.held(),
                  100.0 * cell.missedOfAll(),
                  100.0 * cell.ellipse() / cell.fixes(),
                  cell.medianReachMetres()));
        }
      }
    }
  }
}
