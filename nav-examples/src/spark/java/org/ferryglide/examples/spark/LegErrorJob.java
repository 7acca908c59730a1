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
import org.apache.spark.sql.api.java.UDF4;
import org.apache.spark.sql.functions;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructField;
import org.apache.spark.sql.types.StructType;
import org.ferryglide.examples.study.DrawnLegs;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.LegComparisons;
import org.ferryglide.nav.geodesy.RhumbLines;

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

  private LegErrorJob() {}

  private static StructField column(String name) {
    return DataTypes.createStructField(name, DataTypes.DoubleType, false);
  }

  /**
   * A session on this machine alone: no page to look at, nothing open to the outside.
   *
   * @param threads how many threads work
   * @return the session
   */
  static SparkSession local(int threads) {
    return SparkSession.builder()
        .master("local[" + threads + "]")
        .appName("errors of legs")
        .config("spark.ui.enabled", "false")
        .config("spark.driver.host", "127.0.0.1")
        .config("spark.driver.bindAddress", "127.0.0.1")
        .config("spark.sql.shuffle.partitions", "8")
        .getOrCreate();
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
    double[] leg = new double[DrawnLegs.WIDTH];
    double[] out = new double[LegComparisons.WIDTH_WITH_SEPARATION];
    return new Iterator<>() {
      @Override
      public boolean hasNext() {
        return numbers.hasNext();
      }

      @Override
      public Row next() {
        long number = numbers.next();
        drawn.draw(number, leg, 0);
        LegComparisons.compareWithSeparation(
            Ellipsoid.WGS84, leg[0], leg[1], leg[2], leg[3], out, 0);
        return RowFactory.create(
            number,
            leg[0],
            leg[1],
            leg[2],
            leg[3],
            out[LegComparisons.EXCESS],
            out[LegComparisons.SEPARATION],
            out[LegComparisons.INITIAL_COURSE_DIFFERENCE]);
      }
    };
  }

  /**
   * Makes {@code rhumb_course_deg} and {@code rhumb_distance_m} known to SQL, each of lat1, lon1,
   * lat2, lon2 in degrees. A null among them gives null.
   *
   * @param spark the session
   */
  static void register(SparkSession spark) {
    spark.udf().register("rhumb_course_deg", rhumb(RhumbLines.COURSE), DataTypes.DoubleType);
    spark.udf().register("rhumb_distance_m", rhumb(RhumbLines.LENGTH), DataTypes.DoubleType);
  }

  private static UDF4<Double, Double, Double, Double, Double> rhumb(int figure) {
    return (lat1, lon1, lat2, lon2) -> {
      if (lat1 == null || lon1 == null || lat2 == null || lon2 == null) {
        return null;
      }
      double[] out = new double[RhumbLines.WIDTH];
      RhumbLines.inverse(lat1, lon1, lat2, lon2, out, 0);
      return out[figure];
    };
  }

  /**
   * Prints mean and greatest differences by latitude.
   *
   * @param args number of legs (ten million by default), threads (2), seed (1)
   * @throws IOException if the session cannot be closed
   */
  public static void main(String[] args) throws IOException {
    long legs = args.length > 0 ? Long.parseLong(args[0]) : 10_000_000L;
    int threads = args.length > 1 ? Integer.parseInt(args[1]) : 2;
    long seed = args.length > 2 ? Long.parseLong(args[2]) : 1L;
    long begin = System.nanoTime();
    try (SparkSession spark = local(threads)) {
      rows(spark, seed, legs, 4 * threads)
          .groupBy(functions.expr("10 * floor(abs(lat1) / 10)").as("latitude_from_deg"))
          .agg(
              functions.count("number").as("legs"),
              functions.avg("excess_m"),
              functions.max("excess_m"),
              functions
                  .expr("max(case when isnan(separation_m) then null else separation_m end)")
                  .as("max(separation_m)"))
          .orderBy("latitude_from_deg")
          .show(20, false);
    }
    System.out.println(
        legs
            + " legs, "
            + threads
            + " threads, "
            + (System.nanoTime() - begin) / 1_000_000_000L
            + " s");
  }
}
