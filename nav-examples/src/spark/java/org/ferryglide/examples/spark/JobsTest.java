package org.ferryglide.examples.spark;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import net.sf.geographiclib.Geodesic;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.ferryglide.examples.study.CoastSeason;
import org.ferryglide.examples.study.DrawnLegs;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.magnetic.MagneticModel;
import org.ferryglide.nav.magnetic.MagneticSnapshot;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

/** Small runs of the jobs beside the same rows worked one after another. */
class JobsTest {
  @Test
  void everyLegEqualsThatOfASingleMachine() throws IOException {
    everyRowEquals(new LegRows(7, 20_500)); // the last block is half empty
  }

  @Test
  void everyDepartureOfASeasonEqualsThatOfASingleMachine() throws IOException {
    everyRowEquals(new SeasonRows(new CoastSeason(3, 6, 5)));
  }

  private static void everyRowEquals(NumberedRows expected) throws IOException {
    int width = expected.columns().size();
    double[] figures = new double[width * expected.atATime()];
    NumberedRows.Worker worker = expected.worker();
    try (SparkSession spark = Jobs.local("rows", 2)) {
      List<Row> rows = Jobs.rows(spark, expected).orderBy("number").collectAsList();
      assertEquals(expected.count(), rows.size());
      for (int i = 0; i < rows.size(); i++) {
        int inBlock = i % expected.atATime();
        if (inBlock == 0) {
          worker.work(i, expected.rowsOf(i / expected.atATime()), figures);
        }
        Row row = rows.get(i);
        assertEquals(i, row.getLong(0));
        for (int k = 0; k < width; k++) {
          assertEquals(figures[width * inBlock + k], row.getDouble(1 + k));
        }
      }
    }
  }

  /** What a block of legs has is what a leg has that is drawn and compared alone. */
  @Test
  void legsOfABlockAreLegsDrawnAlone() {
    LegRows legs = new LegRows(7, 3000);
    double[] figures = new double[LegRows.WIDTH * legs.atATime()];
    legs.worker().work(2000, 1000, figures);
    double[] leg = new double[DrawnLegs.WIDTH];
    for (int i = 0; i < 1000; i++) {
      new DrawnLegs(7).draw(2000 + i, leg, 0);
      int row = LegRows.WIDTH * i;
      assertArrayEquals(leg, Arrays.copyOfRange(figures, row, row + leg.length));
      // a general library of geodesics, good to 15 nanometres; ours is, as measured, to 15 of it
      double geodesic = Geodesic.WGS84.Inverse(leg[0], leg[1], leg[2], leg[3]).s12;
      double rhumb =
          RhumbLeg.between(Position.ofDegrees(leg[0], leg[1]), Position.ofDegrees(leg[2], leg[3]))
              .length()
              .metres();
      assertEquals(rhumb - geodesic, figures[row + LegRows.EXCESS], 30e-9);
    }
  }

  /** Sums are added in the order of blocks, so neither threads nor parts can be seen in them. */
  @Test
  void sumsDoNotDependOnThreads() throws IOException {
    LegRows legs = new LegRows(7, 33_333);
    double[] byOne;
    double[] byTwo;
    try (SparkSession spark = Jobs.local("by one", 1)) {
      byOne = LegErrorJob.bands(spark, legs);
    }
    try (SparkSession spark = Jobs.local("by two", 2)) {
      byTwo = LegErrorJob.bands(spark, legs);
    }
    assertArrayEquals(byOne, byTwo);
    double counted = 0.0;
    for (int i = 0; i < byOne.length; i += 4) {
      counted += byOne[i];
    }
    assertEquals(33_333.0, counted);
  }

  /**
   * The check of long runs finds one row that differs in its last bit, one too few, one too many.
   */
  @Test
  void aRowThatDiffersInOneBitIsFound() throws IOException {
    LegRows legs = new LegRows(7, 5_500);
    try (SparkSession spark = Jobs.local("digests", 2)) {
      assertEquals(0, Jobs.differing(spark, legs, legs));
      assertEquals(1, Jobs.differing(spark, legs, new Spoilt(legs, 2_345)));
      assertEquals(1, Jobs.differing(spark, legs, new LegRows(7, 5_499)));
      assertEquals(1, Jobs.differing(spark, legs, new LegRows(7, 5_501)));
    }
  }

  /** Legs, one of which is off by one bit. */
  private record Spoilt(LegRows legs, long spoilt) implements NumberedRows {
    private static final long serialVersionUID = 1L;

    @Override
    public List<String> columns() {
      return legs.columns();
    }

    @Override
    public long count() {
      return legs.count();
    }

    @Override
    public int atATime() {
      return legs.atATime();
    }

    @Override
    public Worker worker() {
      Worker worker = legs.worker();
      return (first, rows, out) -> {
        worker.work(first, rows, out);
        if (spoilt >= first && spoilt < first + rows) {
          int excess = (int) (spoilt - first) * LegRows.WIDTH + LegRows.EXCESS;
          out[excess] = Math.nextUp(out[excess]);
        }
      };
    }
  }

  @Test
  void theFieldOfADateIsMadeOnceForRowsOfThatDate() {
    DatedVariation variation = new DatedVariation();
    MagneticSnapshot field = variation.at(2026.5);
    assertSame(field, variation.at(2026.5));
    double[] elements = new double[MagneticSnapshot.ELEMENTS];
    for (double year : new double[] {2026.5, 2027.0, 2026.5, 2025.0}) {
      MagneticModel.wmm2025().atDecimalYear(year).elements(55.0, -6.0, 0.0, elements, 0);
      assertEquals(elements[MagneticSnapshot.DECLINATION], variation.of(year, 55.0, -6.0, 0.0));
    }
  }

  @Test
  void kernelsAreFunctionsOfSql() throws IOException {
    try (SparkSession spark = Jobs.local("functions", 2)) {
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
