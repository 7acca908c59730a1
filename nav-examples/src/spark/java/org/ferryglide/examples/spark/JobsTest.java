package org.ferryglide.examples.spark;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import net.sf.geographiclib.Geodesic;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.ferryglide.examples.study.CoastSeason;
import org.ferryglide.examples.study.DrawnLegs;
import org.junit.jupiter.api.Test;

/** Small runs of the jobs beside the same rows worked one after another. */
class JobsTest {
  @Test
  void everyLegEqualsThatOfASingleMachine() throws IOException {
    try (SparkSession spark = Sessions.local("legs", 2)) {
      List<Row> rows = LegErrorJob.rows(spark, 7, 20_000, 8).orderBy("number").collectAsList();
      assertEquals(20_000, rows.size());
      double[] expected = new double[LegErrorJob.FIGURES];
      for (int i = 0; i < rows.size(); i++) {
        LegErrorJob.row(new DrawnLegs(7), i, expected);
        assertEquals(i, rows.get(i).getLong(0));
        assertArrayEquals(expected, figures(rows.get(i)));
      }
    }
  }

  @Test
  void everyDepartureOfASeasonEqualsThatOfASingleMachine() throws IOException {
    CoastSeason season = new CoastSeason(3, 6, 5);
    CoastSeason.Worker worker = season.worker();
    double[] expected = new double[CoastSeason.WIDTH];
    try (SparkSession spark = Sessions.local("season", 2)) {
      List<Row> rows = SeasonJob.rows(spark, season, 7).orderBy("number").collectAsList();
      assertEquals(5 * 5 * 48, rows.size());
      for (int i = 0; i < rows.size(); i++) {
        worker.work(i, expected, 0);
        assertEquals(i, rows.get(i).getLong(0));
        assertArrayEquals(expected, figures(rows.get(i)));
      }
    }
  }

  private static double[] figures(Row row) {
    double[] figures = new double[row.size() - 1];
    for (int i = 0; i < figures.length; i++) {
      figures[i] = row.getDouble(i + 1);
    }
    return figures;
  }

  /**
   * The check of long runs finds one row that differs in its last bit, one too few, one too many.
   */
  @Test
  void aRowThatDiffersInOneBitIsFound() throws IOException {
    DrawnLegs drawn = new DrawnLegs(7);
    try (SparkSession spark = Sessions.local("digests", 2)) {
      Dataset<Row> rows = LegErrorJob.rows(spark, 7, 5_500, 3);
      assertEquals(0, differing(rows, drawn, 5_500, -1));
      assertEquals(1, differing(rows, drawn, 5_500, 2_345));
      assertEquals(1, differing(rows, drawn, 5_499, -1));
      assertEquals(1, differing(rows, drawn, 5_501, -1));
    }
  }

  private static long differing(Dataset<Row> rows, DrawnLegs drawn, long legs, long spoilt) {
    double[] row = new double[LegErrorJob.FIGURES];
    return RowDigests.differing(
        rows,
        legs,
        number -> {
          LegErrorJob.row(drawn, number, row);
          if (number == spoilt) {
            row[4] = Math.nextUp(row[4]);
          }
          return row;
        });
  }

  @Test
  void kernelsAreFunctionsOfSql() throws IOException {
    try (SparkSession spark = Sessions.local("functions", 2)) {
      NavigationFunctions.register(spark);
      // the quarter meridian, printed to a millimetre in GeographicLib's test suite
      assertEquals(10001965.729, number(spark, "rhumb_distance_m(0d, 0d, 90d, 0d)"), 5e-4);
      assertEquals(10001965.729, number(spark, "geodesic_distance_m(0d, 0d, 90d, 0d)"), 5e-4);
      assertEquals(0.0, number(spark, "rhumb_course_deg(0d, 0d, 90d, 0d)"));
      assertEquals(0.0, number(spark, "geodesic_initial_deg(0d, 0d, 90d, 0d)"));
      assertEquals(0.0, number(spark, "leg_excess_m(0d, 0d, 90d, 0d)"), 30e-9);
      assertEquals(0.0, number(spark, "leg_separation_m(50d, 0d, 51d, 0d)"), 30e-9);
      // the manual of GeographicLib, RhumbSolve: 40°38'23"N 73°46'44"W to
      // 1°21'33"N 103°59'22"E, course 103°34'58.2", rhumb line and geodesic to the metre
      String far =
          "(40.63972222222222d, -73.77888888888889d, 1.3591666666666666d, 103.98944444444444d)";
      assertEquals(
          103.0 + 34.0 / 60.0 + 58.2 / 3600.0,
          number(spark, "rhumb_course_deg" + far),
          0.05 / 3600.0);
      assertEquals(18523563.0, number(spark, "rhumb_distance_m" + far), 0.5);
      assertEquals(15347628.0, number(spark, "geodesic_distance_m" + far), 0.5);
      assertEquals(18523563.0 - 15347628.0, number(spark, "leg_excess_m" + far), 1.0);
      // a general library of geodesics, and k L² / 8 of the parallel, of which 0.1 % is left out
      assertEquals(
          Geodesic.WGS84.Inverse(50.0, 0.0, 50.0, 1.0).azi1,
          number(spark, "geodesic_initial_deg(50d, 0d, 50d, 1d)"),
          1e-9);
      double length = number(spark, "rhumb_distance_m(50d, 0d, 50d, 1d)");
      double bend = Math.tan(Math.toRadians(50.0)) / 6390702.0; // radius across the meridian there
      assertEquals(
          bend * length * length / 8.0,
          number(spark, "leg_separation_m(50d, 0d, 50d, 1d)"),
          1e-3 * bend * length * length / 8.0);
      // test values of WMM2025 (NOAA and BGS 2024), 2025.0, 48 km, 80 N 96 W: D -29.91
      assertEquals(-29.91, number(spark, "variation_deg(2025d, 80d, -96d, 48000d)"), 5e-3);
      assertEquals(
          true, spark.sql("select rhumb_distance_m(null, 0d, 90d, 0d)").first().isNullAt(0));
    }
  }

  private static double number(SparkSession spark, String expression) {
    return spark.sql("select " + expression).first().getDouble(0);
  }
}
