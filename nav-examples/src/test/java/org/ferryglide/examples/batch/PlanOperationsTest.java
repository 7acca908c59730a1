package org.ferryglide.examples.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import net.sf.geographiclib.Geodesic;
import org.ferryglide.examples.batch.Batches.Ran;
import org.ferryglide.tide.harmonic.HarmonicConstants;
import org.ferryglide.tide.harmonic.HarmonicTide;
import org.ferryglide.tide.harmonic.NodalConvention;
import org.ferryglide.tide.harmonic.NodalScheme;
import org.junit.jupiter.api.Test;

/** Headings, heights and fixes by the batch, beside vectors, official predictions and SciPy. */
class PlanOperationsTest {
  private static final String STEER = "track_deg,distance_nm,speed_kn,set_deg,rate_kn,leeway_deg\n";

  private static Ran steer(String rows) {
    return Batches.run("course-to-steer", Batches.full(), STEER + rows);
  }

  @Test
  void publishedTrianglesComeOut() {
    List<String[]> rows = Batches.published("nav-core", "nav/steer/published-triangles.csv");
    StringBuilder text = new StringBuilder();
    for (String[] row : rows) {
      text.append(row[1] + ",10," + row[2] + "," + row[3] + "," + row[4] + ",0\n");
    }
    Ran ran = steer(text.toString());
    int compared = 0;
    for (int i = 0; i < rows.size(); i++) {
      String[] row = rows.get(i);
      if (!row[5].equals("-")) {
        compared++;
        double turn = Math.IEEEremainder(ran.number(i + 1, 6) - Double.parseDouble(row[5]), 360);
        assertEquals(0.0, turn, Double.parseDouble(row[7]), row[0]);
      }
      if (!row[6].equals("-")) {
        double tolerance = Double.parseDouble(row[8]);
        assertEquals(Double.parseDouble(row[6]), ran.number(i + 1, 7), tolerance, row[0]);
      }
      assertEquals(10.0 / ran.number(i + 1, 7), ran.number(i + 1, 8), 1e-12);
    }
    assertTrue(compared > 5);
  }

  /** Water track and stream, added as vectors, must run along the track. */
  @Test
  void headingLeewayAndStreamAddUpToTheTrack() {
    SplittableRandom random = new SplittableRandom(8);
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 500; i++) {
      text.append(random.nextDouble(360)).append(',').append(random.nextDouble(0.5, 20));
      text.append(',').append(random.nextDouble(2, 5)).append(',').append(random.nextDouble(360));
      text.append(',').append(random.nextDouble(0, 6)).append(',');
      text.append(random.nextDouble(-15, 15)).append('\n');
    }
    Ran ran = steer(text.toString());
    Map<String, Integer> outcomes = new HashMap<>();
    for (int i = 1; i <= 500; i++) {
      String outcome = ran.row(i)[9];
      outcomes.merge(outcome, 1, Integer::sum);
      double track = Math.toRadians(ran.number(i, 0));
      double speed = ran.number(i, 2);
      double set = Math.toRadians(ran.number(i, 3));
      double rate = ran.number(i, 4);
      double across = Math.abs(rate * Math.sin(set - track));
      if (ran.row(i)[6].isEmpty()) {
        assertEquals(across > speed ? "CROSS_STREAM" : "ADVERSE_STREAM", outcome);
        continue;
      }
      double water = Math.toRadians(ran.number(i, 6) + ran.number(i, 5));
      double east = speed * Math.sin(water) + rate * Math.sin(set);
      double north = speed * Math.cos(water) + rate * Math.cos(set);
      assertEquals(ran.number(i, 7) * Math.sin(track), east, 1e-12 * (speed + rate));
      assertEquals(ran.number(i, 7) * Math.cos(track), north, 1e-12 * (speed + rate));
      boolean outruns = rate > speed;
      assertEquals(outruns, outcome.contains("FASTER_OF_TWO"));
      assertEquals(across > 0.8 * speed, outcome.contains("NO_RESERVE"));
      if (outruns) { // of the two headings the one that makes more way
        double along = rate * Math.cos(set - track);
        assertEquals(
            along + Math.sqrt(speed * speed - across * across),
            ran.number(i, 7),
            1e-12 * (speed + rate));
      }
    }
    assertTrue(outcomes.keySet().containsAll(List.of("OK", "CROSS_STREAM", "ADVERSE_STREAM")));
    assertTrue(
        outcomes.keySet().containsAll(List.of("NO_RESERVE", "FASTER_OF_TWO")), outcomes::toString);
  }

  @Test
  void whatIsNotPossibleHasAReasonAndIsNoRefusal() {
    Ran ran = steer("90,1,3,180,4,0\n90,1,3,270,4,0\n90,1,0,270,0,0\n90,1,-1,0,0,0\n");
    assertEquals("90,1,3,180,4,0,,,,CROSS_STREAM", ran.out().split("\n")[1]);
    assertEquals("90,1,3,270,4,0,,,,ADVERSE_STREAM", ran.out().split("\n")[2]);
    assertEquals("90,1,0,270,0,0,,,,NO_PROGRESS", ran.out().split("\n")[3]);
    assertEquals("90,1,-1,0,0,0,,,,", ran.out().split("\n")[4]);
    assertEquals(1, ran.summary().refused());
  }

  /** The tide of a US station from its official constants, above the station's own datum. */
  private static HarmonicTide tide(String station, String mean) throws IOException {
    StringBuilder sheet = new StringBuilder("constituent,amplitude_m,phase_lag_greenwich_deg\n");
    sheet.append("Z0,").append(mean).append(",\n");
    for (String[] row : Batches.published("nav-tide", "tide/harmonic/us-constants.csv")) {
      if (row[0].equals(station)) {
        sheet.append(row[1] + "," + row[2] + "," + row[3] + "\n");
      }
    }
    return HarmonicTide.of(
        station,
        "station datum",
        HarmonicConstants.read(
            "constants", new StringReader(sheet.toString()), NodalScheme.schureman()),
        NodalConvention.MID_YEAR);
  }

  @Test
  void heightsAgreeWithTheOfficialPredictions() throws IOException {
    List<String[]> hours = Batches.published("nav-tide", "tide/harmonic/us-hourly-2021-01-01.csv");
    int compared = 0;
    for (String[] station : Batches.published("nav-tide", "tide/harmonic/us-stations.csv")) {
      List<String[]> rows = hours.stream().filter(row -> row[0].equals(station[0])).toList();
      if (rows.isEmpty() || station[0].equals("station") || compared > 200) {
        continue;
      }
      Ran ran =
          Batches.run(
              "tide-height",
              Batches.full().withTide(tide(station[0], station[3])),
              Batches.csv("time", rows, 1));
      for (int i = 0; i < rows.size(); i++) {
        // printed to 1 mm from constants printed to 1 mm; 1.05 mm at the worst of all stations
        assertEquals(Double.parseDouble(rows.get(i)[2]), ran.number(i + 1, 1), 1.1e-3);
        compared++;
      }
    }
    assertTrue(compared > 200);
  }

  @Test
  void timesNeedTheirOffset() throws IOException {
    Ran zones =
        Batches.run(
            "tide-height",
            Batches.full().withTide(tide("1612340", "0.251")),
            "time\n"
                + "2021-01-01T00:00Z\n"
                + "2020-12-31T19:00:00-05:00\n"
                + "2021-01-01 00:00\n"
                + "2500-01-01T00:00Z\n");
    assertEquals(zones.row(1)[1], zones.row(2)[1]);
    assertEquals(2, zones.summary().refused());
    assertTrue(zones.refusals().get(0).contains("a time with its offset"));
  }

  /** The table's places come from SciPy's least squares over azimuths of GeographicLib. */
  @Test
  void fixesAgreeWithScipy() {
    List<String[]> bearings = Batches.published("nav-core", "nav/fix/noisy_bearings.csv");
    List<String[]> places = Batches.published("nav-core", "nav/fix/noisy_fixes.csv");
    Ran ran =
        Batches.run(
            "fix",
            Batches.full(),
            Batches.csv("id,mark_lat,mark_lon,bearing_deg,sigma_deg", bearings, 0, 1, 2, 3, 4));
    assertEquals("id,lat,lon,semi_major_m,semi_minor_m,axis_deg,outcome", ran.out().split("\n")[0]);
    assertEquals(bearings.size(), ran.summary().rows());
    int solved = 0;
    for (int i = 0; i < places.size(); i++) {
      String[] row = ran.row(i + 1);
      assertEquals(places.get(i)[0], row[0]);
      if (row[1].isEmpty()) {
        continue; // no bounded region holds the place; the outcome says so
      }
      solved++;
      double metres =
          Geodesic.WGS84.Inverse(
                  Double.parseDouble(places.get(i)[1]),
                  Double.parseDouble(places.get(i)[2]),
                  ran.number(i + 1, 1),
                  ran.number(i + 1, 2))
              .s12;
      assertTrue(metres < 1e-3, () -> metres + " m");
      assertTrue(ran.number(i + 1, 3) >= ran.number(i + 1, 4));
    }
    assertTrue(solved > 0.9 * places.size(), "solved " + solved + " of " + places.size());
  }

  /** Two bearings that cross at right angles: each axis is distance times the bearing's error. */
  @Test
  void theEllipseOfAPlainCross() {
    double metres = 5000.0;
    var north = Geodesic.WGS84.Direct(50, -6, 0, metres);
    var east = Geodesic.WGS84.Direct(50, -6, 90, 2.0 * metres);
    double back = Geodesic.WGS84.Inverse(50, -6, east.lat2, east.lon2).azi1;
    String text =
        "id,mark_lat,mark_lon,bearing_deg,sigma_deg\n"
            + "a,"
            + north.lat2
            + ","
            + north.lon2
            + ",0,1\n"
            + "a,"
            + east.lat2
            + ","
            + east.lon2
            + ","
            + back
            + ",1\n";
    double chance = 0.5;
    Ran ran = Batches.run("fix", Batches.full().withChance(chance), text);
    double factor = Math.sqrt(-2.0 * Math.log(1.0 - chance)); // two normal errors, any textbook
    double one = factor * metres * Math.toRadians(1.0);
    assertEquals(one, ran.number(1, 4), 1e-3 * one); // the plane is good to a thousandth here
    assertEquals(2.0 * one, ran.number(1, 3), 2e-3 * one);
    assertEquals(0.0, Math.IEEEremainder(ran.number(1, 5), 180.0), 0.1);
    assertEquals("OK", ran.row(1)[6]);
  }

  @Test
  void aRefusedBearingSpoilsItsFixAlone() {
    String good = ",50.1,-6,0,2\nX,50,-5.9,90,2\n";
    String text =
        "id,mark_lat,mark_lon,bearing_deg,sigma_deg\r\n"
            + ("first" + good.replace("X", "first") + "\"a, b\"" + good.replace("X", "\"a, b\""))
                .replace("\n", "\r\n")
            + "bad,50.1,-6,north,2\r\nbad,50,-5.9,90,2\r\nlast,50.1,-6,0,2\r\n";
    Ran ran = Batches.run("fix", BatchOptions.standard(), text);
    String[] lines = ran.out().split("\r\n");
    assertTrue(lines[1].startsWith("first,50.0") && lines[1].endsWith(",OK"), lines[1]);
    assertTrue(lines[2].startsWith("\"a, b\",50.0"), lines[2]);
    assertEquals("bad,,,,,,REFUSED", lines[3]);
    assertEquals("last,,,,,,TOO_FEW_LINES", lines[4]);
    assertEquals(
        "rows.csv, line 6, column 4: bearing_deg must be a number in [-360, 360] degrees, but was"
            + " \"north\"",
        ran.refusals().get(0));
  }

  @Test
  void idsAreNeverTornApart() {
    StringBuilder text = new StringBuilder("id,mark_lat,mark_lon,bearing_deg,sigma_deg,note\n");
    int fixes = 1000;
    for (int i = 0; i < fixes; i++) {
      for (int j = 0; j < 4; j++) {
        double bearing = 45.0 * j;
        var mark = Geodesic.WGS84.Direct(50, -6 + 1e-4 * i, bearing, 4000.0 + 100.0 * j);
        text.append(i + "," + mark.lat2 + "," + mark.lon2 + "," + bearing + ",2,");
        text.append("x".repeat(150 + i % 50)).append('\n');
      }
    }
    assertTrue(text.length() > 2 * BatchRun.CHUNK_BYTES);
    Ran one = Batches.run("fix", BatchOptions.standard().withThreads(1), text.toString());
    Ran two = Batches.run("fix", BatchOptions.standard().withThreads(2), text.toString());
    assertEquals(one.out(), two.out());
    assertEquals(fixes + 2, one.out().split("\n", -1).length);
    for (int i = 0; i < fixes; i += 7) {
      assertEquals(50.0, one.number(i + 1, 1), 1e-7);
    }
  }
}
