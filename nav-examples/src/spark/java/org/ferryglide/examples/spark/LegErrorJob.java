package org.ferryglide.examples.spark;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.apache.spark.api.java.function.MapPartitionsFunction;
import org.apache.spark.sql.SparkSession;

/**
 * The errors of legs as a job of Apache Spark: each leg is drawn and worked by its number alone,
 * with the same kernels as everywhere, so that every row equals that of a single machine.
 */
public final class LegErrorJob {
  private static final int DEGREES_A_BAND = 10;
  private static final int BANDS = 9;

  /** Of a band: how many legs, the sum of excesses, the greatest, the greatest separation. */
  private static final int SUMS = 4;

  /** Legs worked before the clock runs, until classes are loaded and loops compiled. */
  private static final long WARMING_LEGS = 500_000L;

  private LegErrorJob() {}

  /**
   * Sums by latitude of the start. Each block of legs gives one array, and these are added in the
   * order of blocks, so that the figures do not depend on threads or parts.
   *
   * @param spark the session
   * @param legs the legs
   * @return for each ten degrees: legs, sum of excesses, greatest excess, greatest separation,
   *     metres
   */
  static double[] bands(SparkSession spark, LegRows legs) {
    MapPartitionsFunction<Long, double[]> summing =
        blocks ->
            Jobs.work(
                legs, blocks, (block, rows, figures, out) -> out.add(sums(block, rows, figures)));
    List<double[]> sums =
        new ArrayList<>(
            Jobs.blocks(spark, legs)
                .mapPartitions(summing, spark.implicits().newDoubleArrayEncoder())
                .collectAsList());
    sums.sort(Comparator.comparingDouble(block -> block[BANDS * SUMS]));
    double[] all = new double[BANDS * SUMS];
    for (double[] block : sums) {
      for (int i = 0; i < all.length; i += SUMS) {
        all[i] += block[i];
        all[i + 1] += block[i + 1];
        all[i + 2] = Math.max(all[i + 2], block[i + 2]);
        all[i + 3] = Math.max(all[i + 3], block[i + 3]);
      }
    }
    return all;
  }

  private static double[] sums(long block, int rows, double[] figures) {
    double[] sums = new double[BANDS * SUMS + 1];
    sums[BANDS * SUMS] = (double) block;
    for (int row = 0; row < rows * LegRows.WIDTH; row += LegRows.WIDTH) {
      int band = SUMS * (int) (Math.abs(figures[row + LegRows.LATITUDE]) / DEGREES_A_BAND);
      double separation = figures[row + LegRows.SEPARATION];
      sums[band]++;
      sums[band + 1] += figures[row + LegRows.EXCESS];
      sums[band + 2] = Math.max(sums[band + 2], figures[row + LegRows.EXCESS]);
      if (separation > sums[band + 3]) { // NaN, where it is not worked, is not
        sums[band + 3] = separation;
      }
    }
    return sums;
  }

  private static void print(double[] bands) {
    System.out.println("latitude_from_deg,legs,mean_excess_m,greatest_excess_m,separation_m");
    for (int band = 0; band < BANDS; band++) {
      int at = SUMS * band;
      if (bands[at] > 0.0) {
        System.out.printf(
            Locale.ROOT,
            "%d,%.0f,%.6f,%.3f,%.3f%n",
            DEGREES_A_BAND * band,
            bands[at],
            bands[at + 1] / bands[at],
            bands[at + 2],
            bands[at + 3]);
      }
    }
  }

  /**
   * Prints mean and greatest differences by latitude, and how long they took: opening the session,
   * a small job until everything is loaded and compiled, and then the job itself.
   *
   * @param args number of legs (ten million by default); threads (2), or several such numbers with
   *     commas between, one after another; seed (1); {@code check} to hold every row against a
   *     single machine
   * @throws IOException if the session cannot be closed
   */
  public static void main(String[] args) throws IOException {
    long count = args.length > 0 ? Long.parseLong(args[0]) : 10_000_000L;
    String several = args.length > 1 ? args[1] : "2";
    LegRows legs = new LegRows(args.length > 2 ? Long.parseLong(args[2]) : 1L, count);
    double[] bands = new double[BANDS * SUMS];
    for (String threads : several.split(",")) {
      Jobs.Watch opening = new Jobs.Watch();
      try (SparkSession spark = Jobs.local("errors of legs", Integer.parseInt(threads))) {
        bands(spark, new LegRows(legs.seed(), Math.min(count, WARMING_LEGS)));
        Jobs.Watch job = new Jobs.Watch();
        bands = bands(spark, legs);
        System.out.println(job.told(count + " legs", threads, opening));
      }
    }
    print(bands);
    if (args.length > 3) {
      try (SparkSession spark = Jobs.local("check of legs", 2)) {
        System.out.println(
            Jobs.differing(spark, legs, legs) + " thousands of rows differ from one machine's");
      }
    }
  }
}
