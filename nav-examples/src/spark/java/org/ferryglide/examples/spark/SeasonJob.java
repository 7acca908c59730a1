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
import org.ferryglide.examples.study.CoastSeason;

/**
 * A season of departures for a coast of stations as a job of Apache Spark: only the season's three
 * numbers travel; each part lays the coast out for itself and works its departures with the same
 * kernels as a single machine.
 */
public final class SeasonJob {
  private static final StructType ROWS =
      DataTypes.createStructType(
          List.of(
              DataTypes.createStructField("number", DataTypes.LongType, false),
              column("station"),
              column("departure_s"),
              column("hours"),
              column("cross_stream_share"),
              column("reserve_kn")));

  private SeasonJob() {}

  private static StructField column(String name) {
    return DataTypes.createStructField(name, DataTypes.DoubleType, false);
  }

  /**
   * One row for each departure; NaN where the next station cannot be reached.
   *
   * @param spark the session
   * @param season the season
   * @param partitions in how many parts it is worked
   * @return the rows
   */
  static Dataset<Row> rows(SparkSession spark, CoastSeason season, int partitions) {
    return spark
        .range(0, season.departures(), 1, partitions)
        .mapPartitions(
            (MapPartitionsFunction<Long, Row>) numbers -> work(season, numbers),
            Encoders.row(ROWS));
  }

  private static Iterator<Row> work(CoastSeason season, Iterator<Long> numbers) {
    CoastSeason.Worker worker = season.worker();
    double[] out = new double[CoastSeason.WIDTH];
    return new Iterator<>() {
      @Override
      public boolean hasNext() {
        return numbers.hasNext();
      }

      @Override
      public Row next() {
        long number = numbers.next();
        worker.work(number, out, 0);
        return RowFactory.create(number, out[0], out[1], out[2], out[3], out[4]);
      }
    };
  }

  /**
   * Prints, for each station, how often the next can be reached and the quickest departure.
   *
   * @param args number of stations (40 by default), threads (2), seed (1), {@code check} to hold
   *     every row against a single machine
   * @throws IOException if the session cannot be closed
   */
  public static void main(String[] args) throws IOException {
    int stations = args.length > 0 ? Integer.parseInt(args[0]) : 40;
    int threads = args.length > 1 ? Integer.parseInt(args[1]) : 2;
    long seed = args.length > 2 ? Long.parseLong(args[2]) : 1L;
    CoastSeason season = new CoastSeason(seed, stations, 183);
    try (SparkSession spark = Sessions.local("a season of departures", threads)) {
      long begin = System.nanoTime();
      Dataset<Row> rows = rows(spark, season, 8 * threads);
      rows.groupBy(functions.col("station").cast("int").as("station"))
          .agg(
              functions.count("number").as("departures"),
              functions.expr("count_if(not isnan(hours))").as("possible"),
              functions.expr("round(min(hours), 3)").as("least_hours"),
              functions
                  .expr("timestamp_seconds(min_by(departure_s, hours))")
                  .cast("string")
                  .as("leaving_utc"))
          .orderBy("station")
          .show(1000, false);
      LegErrorJob.tell(season.departures() + " departures", threads, begin);
      if (args.length > 3) {
        CoastSeason.Worker worker = season.worker();
        double[] out = new double[CoastSeason.WIDTH];
        long differing =
            RowDigests.differing(
                rows,
                season.departures(),
                number -> {
                  worker.work(number, out, 0);
                  return out;
                });
        System.out.println(differing + " thousands of rows differ from those of one machine");
      }
    }
  }
}
