package org.ferryglide.examples.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.ferryglide.examples.batch.Batches.Ran;
import org.junit.jupiter.api.Test;

/** Grids and the magnetic field by the batch, beside published tables and reference tools. */
class PlaceOperationsTest {
  /** GeographicLib's UTM is good to 5 nanometres, ours to 4. */
  private static final double TEN_NANOMETRES = 10e-9;

  /** The national tables are printed to a micrometre or better. */
  private static final double A_MICROMETRE = 1e-6;

  private static final double DEGREE_METRES = 111_000.0;

  private static List<String[]> universal(boolean polar) {
    return Batches.published("nav-core", "nav/grid/universal-grids.csv").stream()
        .filter(row -> Character.isDigit(row[2].charAt(0)) != polar)
        .toList();
  }

  @Test
  void utmAgreesWithGeoConvertThereAndBack() {
    List<String[]> rows = universal(false);
    Ran there = Batches.run("utm", Batches.full(), Batches.csv("lat,lon", rows, 0, 1));
    assertEquals(0, there.summary().refused());
    StringBuilder back = new StringBuilder("easting_m,northing_m,zone\n");
    for (int i = 0; i < rows.size(); i++) {
      String[] row = rows.get(i);
      assertEquals(Double.parseDouble(row[3]), there.number(i + 1, 2), TEN_NANOMETRES);
      assertEquals(Double.parseDouble(row[4]), there.number(i + 1, 3), TEN_NANOMETRES);
      assertEquals(Double.parseDouble(row[5]), there.number(i + 1, 4), 1e-12);
      assertEquals(Double.parseDouble(row[6]), there.number(i + 1, 5), 1e-14);
      String[] ours = there.row(i + 1);
      String zone = row[2].toUpperCase(Locale.ROOT);
      assertEquals(zone.startsWith("0") ? zone.substring(1) : zone, ours[6]);
      back.append(ours[2] + "," + ours[3] + "," + ours[6] + "\n");
    }
    Ran again = Batches.run("utm", Batches.full().withReverse(true), back.toString());
    for (int i = 0; i < rows.size(); i++) {
      double lat = Double.parseDouble(rows.get(i)[0]);
      double lon = Double.parseDouble(rows.get(i)[1]);
      double cosine = Math.cos(Math.toRadians(lat));
      assertEquals(lat, again.number(i + 1, 3), TEN_NANOMETRES / DEGREE_METRES);
      double east = Math.IEEEremainder(again.number(i + 1, 4) - lon, 360.0) * cosine;
      assertEquals(0.0, east, TEN_NANOMETRES / DEGREE_METRES);
    }
  }

  @Test
  void polarPlacesHaveNoZoneButAReference() {
    List<String[]> rows = universal(true);
    Ran utm = Batches.run("utm", Batches.full(), Batches.csv("lat,lon", rows, 0, 1));
    assertEquals(rows.size(), utm.summary().refused());
    assertTrue(utm.refusals().get(0).contains("[-80, 84)"));
  }

  @Test
  void referencesAgreeWithGeoConvertThereAndBack() {
    List<String[]> rows = Batches.published("nav-core", "nav/grid/universal-grids.csv");
    Ran there = Batches.run("mgrs", Batches.full(), Batches.csv("lat,lon", rows, 0, 1));
    Ran back =
        Batches.run("mgrs", Batches.full().withReverse(true), Batches.csv("reference", rows, 12));
    for (int i = 0; i < rows.size(); i++) {
      assertEquals(rows.get(i)[12], there.row(i + 1)[2]);
      assertEquals("1.0", back.row(i + 1)[3]);
      double lat = Double.parseDouble(rows.get(i)[0]);
      double lon = Double.parseDouble(rows.get(i)[1]);
      double north = (back.number(i + 1, 1) - lat) * DEGREE_METRES;
      double east =
          Math.IEEEremainder(back.number(i + 1, 2) - lon, 360.0)
              * DEGREE_METRES
              * Math.cos(Math.toRadians(lat));
      // from the middle of a square of a metre to its corner, at a scale near 1
      assertTrue(Math.hypot(north, east) < 0.75, () -> String.join(",", rows.get(0)));
    }
  }

  @Test
  void nationalGridsAgreeWithProjThereAndBack() {
    List<String[]> all = Batches.published("nav-core", "nav/grid/national-grids.csv");
    for (String[] grid :
        new String[][] {{"British", "british-grid"}, {"Irish", "irish-grid"}, {"ITM", "itm"}}) {
      List<String[]> rows = all.stream().filter(row -> row[0].equals(grid[0])).toList();
      assertTrue(rows.size() > 10, grid[0]);
      Ran there = Batches.run(grid[1], Batches.full(), Batches.csv("lat,lon", rows, 1, 2));
      Ran back =
          Batches.run(
              grid[1],
              Batches.full().withReverse(true),
              Batches.csv("easting_m,northing_m", rows, 3, 4));
      int worked = 0;
      for (int i = 0; i < rows.size(); i++) {
        assertEquals(
            Double.parseDouble(rows.get(i)[1]),
            back.number(i + 1, 2),
            A_MICROMETRE / DEGREE_METRES);
        assertEquals(
            Double.parseDouble(rows.get(i)[2]),
            back.number(i + 1, 3),
            2.0 * A_MICROMETRE / DEGREE_METRES); // up to 60 degrees of latitude
        if (!there.row(i + 1)[2].isEmpty()) { // beyond the maps of the country it is refused
          worked++;
          assertEquals(Double.parseDouble(rows.get(i)[3]), there.number(i + 1, 2), A_MICROMETRE);
          assertEquals(Double.parseDouble(rows.get(i)[4]), there.number(i + 1, 3), A_MICROMETRE);
        }
      }
      assertTrue(worked > 10, grid[0]);
    }
    Ran far = Batches.run("british-grid", Batches.full(), "lat,lon\n40,10\n");
    assertTrue(far.refusals().get(0).contains("British National Grid"));
  }

  @Test
  void theFieldAgreesWithTheOfficialTestValues() {
    for (String model : new String[] {"wmm2015v2", "wmm2020", "wmm2025"}) {
      List<String[]> rows =
          Batches.published("nav-core", "nav/magnetic/" + model + "-test-values.csv");
      StringBuilder text = new StringBuilder("date,lat,lon,height_m\n");
      for (String[] row : rows) {
        double metres = 1000.0 * Double.parseDouble(row[3]);
        text.append(row[0] + "," + row[1] + "," + row[2] + "," + metres + "\n");
      }
      Ran ran = Batches.run("variation", Batches.full(), text.toString());
      assertEquals(List.of(), ran.refusals());
      int compared = 0;
      for (int i = 0; i < rows.size(); i++) {
        String[] row = rows.get(i);
        if ((model.equals("wmm2020") && row[0].startsWith("2025"))
            || (model.equals("wmm2015v2") && row[0].startsWith("2020"))) {
          continue; // that year belongs to the later model
        }
        compared++;
        double turn = ran.number(i + 1, 4) - Double.parseDouble(row[10]);
        assertEquals(0.0, Math.IEEEremainder(turn, 360.0), 0.005 + 1e-9);
        assertEquals(Double.parseDouble(row[9]), ran.number(i + 1, 6), 0.005 + 1e-9);
        // the tables' own slip of up to 7.2e-4 nT in the north part, or half a printed tenth
        double tolerance = row[7].indexOf('.') == row[7].length() - 2 ? 0.0501 : 0.001;
        assertEquals(Double.parseDouble(row[7]), ran.number(i + 1, 7), tolerance);
        assertEquals(Double.parseDouble(row[8]), ran.number(i + 1, 8), tolerance);
      }
      assertTrue(compared >= 6, model);
    }
  }

  /** WMM2025's error model as published: sqrt(0.26² + (5417/H)²) degrees. */
  @Test
  void uncertaintyIsThePublishedErrorModel() {
    Ran ran =
        Batches.run(
            "variation",
            Batches.full(),
            "date,lat,lon,height_m\n"
                + "2026-06-14,58,-6,0\n"
                + "2026.4493150684932,58,-6,0\n"
                + "2026-06-14,84,-100,0\n");
    double horizontal = ran.number(1, 7);
    assertEquals(Math.hypot(0.26, 5417.0 / horizontal), ran.number(1, 5), 1e-12);
    assertEquals("USABLE", ran.row(1)[9]);
    assertEquals(ran.number(1, 4), ran.number(2, 4), 1e-9); // 14 June is day 164 of 365
    assertTrue(!ran.row(3)[9].equals("USABLE"));
  }

  @Test
  void datesOutsideTheModelsAndBadDatesAreRefused() {
    Ran ran =
        Batches.run(
            "variation",
            Batches.full(),
            "date,lat,lon,height_m\n"
                + "2014-12-31,58,-6,0\n"
                + "2031,58,-6,0\n"
                + "14.06.2026,58,-6,0\n"
                + "2026-02-30,58,-6,0\n"
                + ",58,-6,0\n"
                + "2026,58,-6,1e7\n");
    assertEquals(6, ran.summary().refused());
    assertTrue(ran.refusals().get(0).contains("[2015.0, 2030.0]"));
    assertTrue(ran.refusals().get(2).contains("must be a date such as 2026-06-14"));
  }
}
