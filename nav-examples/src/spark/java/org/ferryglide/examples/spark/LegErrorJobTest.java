package org.ferryglide.examples.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.ferryglide.examples.study.DrawnLegs;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.LegComparisons;
import org.junit.jupiter.api.Test;

/** A small run of the job beside the same legs worked one after another. */
class LegErrorJobTest {
  @Test
  void everyRowEqualsThatOfASingleMachine() throws IOException {
    try (SparkSession spark = LegErrorJob.local(2)) {
      List<Row> rows = LegErrorJob.rows(spark, 7, 20_000, 8).orderBy("number").collectAsList();
      assertEquals(20_000, rows.size());
      DrawnLegs drawn = new DrawnLegs(7);
      double[] leg = new double[DrawnLegs.WIDTH];
      double[] out = new double[LegComparisons.WIDTH_WITH_SEPARATION];
      for (int i = 0; i < rows.size(); i++) {
        drawn.draw(i, leg, 0);
        LegComparisons.compareWithSeparation(
            Ellipsoid.WGS84, leg[0], leg[1], leg[2], leg[3], out, 0);
        assertEquals(i, rows.get(i).getLong(0));
        assertEquals(leg[3], rows.get(i).getDouble(4));
        assertEquals(out[LegComparisons.EXCESS], rows.get(i).getDouble(5));
        assertEquals(out[LegComparisons.SEPARATION], rows.get(i).getDouble(6));
        assertEquals(out[LegComparisons.INITIAL_COURSE_DIFFERENCE], rows.get(i).getDouble(7));
      }
      LegErrorJob.register(spark);
      Row sql =
          spark
              .sql(
                  "select rhumb_course_deg(0d, 0d, 90d, 0d), rhumb_distance_m(0d, 0d, 90d, 0d),"
                      + " rhumb_distance_m(null, 0d, 90d, 0d)")
              .first();
      assertEquals(0.0, sql.getDouble(0));
      // the quarter meridian, printed to a millimetre in GeographicLib's test suite
      assertEquals(10001965.729, sql.getDouble(1), 5e-4);
      assertTrue(sql.isNullAt(2));
    }
  }
}
