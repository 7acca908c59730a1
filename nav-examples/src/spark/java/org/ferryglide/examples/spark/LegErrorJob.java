package org.ferryglide.examples.spark;

import java.io.IOException;
import java.util.Iterator;
import java.util.List;
import org.apache.spark.api.java.function.MapPartitionsFunction;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.functions;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructField;
import org.apache.spark.sql.types.StructType;
import org.ferryglide.examples.study.DrawnLegs;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.LegComparisons;

/**
 * The errors of legs as a job of Apache Spark: each leg is drawn and worked by its number alone,
 * with the same kernels as everywhere, so that every row equals that of a single machine.
 */
public final class LegErrorJob {
  private static final StructType ROWS =
      DataTypes.createStructType(
          List.of(
              DataTypes.createStructField("number", DataTypes.LongType, false),
              column("lat1"),
              column("lon1"),
              column("lat2"),
              column("lon2"),
              column("excess_m"),
              column("separation_m"),
              column("bearing_difference_deg")));

  /** How many figures a row has after its number. */
  static final int FIGURES = 7;

  private LegErrorJob() {}

  private static StructField column(String name) {
    return DataTypes.createStructField(name, DataTypes.DoubleType, false);
  }

  /**
   * One row for each leg: its number, its ends, and how rhumb line and geodesic differ on WGS84.
   *
   * @param spark the session
   * @param seed what legs are drawn from
   * @param legs how many
   * @param partitions in how many parts they are worked
   * @return the rows
   */
  static Dataset<Row> rows(SparkSession spark, long seed, long legs, int partitions) {
    DrawnLegs drawn = new DrawnLegs(seed);
    return spark
        .range(0, legs, 1, partitions)
        .mapPartitions(
            (MapPartitionsFunction<Long, Row>) numbers -> work(drawn, numbers), Encoders.row(ROWS));
  }

  private static Iterator<Row> work(DrawnLegs drawn, Iterator<Long> numbers) {
    double[] row = new double[FIGURES];
    return new Iterator<>() {
      @Override
      public boolean hasNext() {
        return numbers.hasNext();
      }

      @Override
      public Row next() {
        long number = numbers.next();
        row(drawn, number, row);
        return RowFactory.create(number, row[0], row[1], row[2], row[3], row[4], row[5], row[6]);
      }
    };
  }

  /** The figures of one leg after its number, as {@link #rows} has them. */
  static double[] row(DrawnLegs drawn, long number, double[] row) {
    double[] out = new double[LegComparisons.WIDTH_WITH_SEPARATION];
    drawn.draw(number, row, 0);
    LegComparisons.compareWithSeparation(Ellipsoid.WGS84, row[0], row[1], row[2], row[3], out, 0);
    row[4] = out[LegComparisons.EXCESS];
    row[5] = out[LegComparisons.SEPARATION];
    row[6] = out[LegComparisons.INITIAL_COURSE_DIFFERENCE];
    return row;
  }

  /** Prints how long something took. */
  static void tell(String what, int threads, long begin) {
    System.out.println(
        what
            + ", "
            + threads
            + " threads, "
            + Math.round((System.nanoTime() - begin) / 1e8) / 10.0
            + " s");
  }

  /**
   * Prints mean and greatest differences by latitude.
   *
   * @param args number of legs (ten million by default), threads (2), seed (1), {@code check} to
   *     hold every row against a single machine
   * @throws IOException if the session cannot be closed
   */
  public static void main(String[] args) throws IOException {
    long legs = args.length > 0 ? Long.parseLong(args[0]) : 10_000_000L;
    int threads = args.length > 1 ? Integer.parseInt(args[1]) : 2;
    long seed = args.length > 2 ? Long.parseLong(args[2]) : 1L;
    try (SparkSession spark = Sessions.local("errors of legs", threads)) {
      long begin = System.nanoTime();
      Dataset<Row> rows = rows(spark, seed, legs, 4 * threads);
      rows.groupBy(functions.expr("10 * floor(abs(lat1) / 10)").as("latitude_from_deg"))
          .agg(
              functions.count("number").as("legs"),
              functions.avg("excess_m"),
              functions.max("excess_m"),
              functions
                  .expr("max(case when isnan(separation_m) then null else separation_m end)")
                  .as("max(separation_m)"))
          .orderBy("latitude_from_deg")
          .show(20, false);
      tell(legs + " legs", threads, begin);
      if (args.length > 3) {
        DrawnLegs drawn = new DrawnLegs(seed);
        double[] row = new double[FIGURES];
        long differing = RowDigests.differing(rows, legs, number -> row(drawn, number, row));
        System.out.println(differing + " thousands of rows differ from those of one machine");
      }
    }
  }
}
