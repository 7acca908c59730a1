package org.ferryglide.examples.spark;

import java.io.IOException;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.functions;
import org.ferryglide.examples.study.CoastSeason;

/**
 * A season of departures for a coast of stations as a job of Apache Spark: only the season's three
 * numbers travel; each part lays the coast out for itself and works its departures with the same
 * kernels as a single machine.
 */
public final class SeasonJob {
  private static final int USUAL_DAYS = 183;

  /** Days of three legs worked before the clock runs, until loops are compiled. */
  private static final int WARMING_DAYS = 20;

  private SeasonJob() {}

  private static void show(SparkSession spark, SeasonRows season) {
    Jobs.rows(spark, season)
        .groupBy(functions.col("station").cast("int").as("station"))
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
  }

  /**
   * Prints, for each station, how often the next can be reached and the quickest departure.
   *
   * @param args number of stations (40 by default); threads (2), or several such numbers with
   *     commas between, one after another; seed (1); days (183); {@code check} to hold every row
   *     against a single machine
   * @throws IOException if the session cannot be closed
   */
  public static void main(String[] args) throws IOException {
    int stations = args.length > 0 ? Integer.parseInt(args[0]) : 40;
    String several = args.length > 1 ? args[1] : "2";
    long seed = args.length > 2 ? Long.parseLong(args[2]) : 1L;
    int days = args.length > 3 ? Integer.parseInt(args[3]) : USUAL_DAYS;
    SeasonRows season = new SeasonRows(new CoastSeason(seed, stations, days));
    for (String threads : several.split(",")) {
      Jobs.Watch opening = new Jobs.Watch();
      try (SparkSession spark = Jobs.local("a season", Integer.parseInt(threads))) {
        show(spark, new SeasonRows(new CoastSeason(seed, 4, WARMING_DAYS)));
        Jobs.Watch job = new Jobs.Watch();
        show(spark, season);
        System.out.println(job.told(season.count() + " departures", threads, opening));
      }
    }
    if (args.length > 4) {
      try (SparkSession spark = Jobs.local("check of a season", 2)) {
        System.out.println(
            Jobs.differing(spark, season, season) + " hundreds of rows differ from one machine's");
      }
    }
  }
}
