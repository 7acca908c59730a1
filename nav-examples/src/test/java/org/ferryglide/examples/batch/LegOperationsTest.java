package org.ferryglide.examples.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import org.ferryglide.examples.batch.Batches.Ran;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.junit.jupiter.api.Test;

/**
 * Legs by the batch, beside GeographicLib, its command-line tools, and closed forms on a sphere.
 */
class LegOperationsTest {
  /** The tables are printed to a micrometre. */
  private static final double HALF_A_MICROMETRE = 0.5e-6;

  /** What the library promises of itself and GeographicLib of itself, added. */
  private static final double THIRTY_NANOMETRES = 30e-9;

  /** Metres in a degree of the meridian, for angles of places. */
  private static final double DEGREE_METRES = 111_700.0;

  private static String legs(int count) {
    SplittableRandom random = new SplittableRandom(4);
    StringBuilder text = new StringBuilder("lat1,lon1,lat2,lon2\n");
    for (int i = 0; i < count; i++) {
      double lat = random.nextDouble(-79, 79);
      double lon = random.nextDouble(-179, 179);
      text.append(lat).append(',').append(lon).append(',');
      text.append(lat + random.nextDouble(-0.5, 0.5)).append(',');
      text.append(lon + random.nextDouble(-0.5, 0.5)).append('\n');
    }
    return text.toString();
  }

  @Test
  void rhumbLinesAgreeWithRhumbSolve() {
    List<String[]> rows = Batches.published("nav-core", "nav/geodesy/rhumbsolve.csv");
    Ran ran =
        Batches.run(
            "rhumb-inverse", Batches.full(), Batches.csv("lat1,lon1,lat2,lon2", rows, 0, 1, 2, 3));
    for (int i = 0; i < rows.size(); i++) {
      double length = Double.parseDouble(rows.get(i)[5]);
      assertEquals(length, ran.number(i + 1, 5), HALF_A_MICROMETRE + THIRTY_NANOMETRES);
      double turn = ran.number(i + 1, 4) - Double.parseDouble(rows.get(i)[4]);
      double across = Math.toRadians(Math.IEEEremainder(turn, 360.0)) * length;
      assertEquals(0.0, across, THIRTY_NANOMETRES + length * Math.toRadians(0.5e-11));
    }
  }

  @Test
  void geodesicsAgreeWithGeographicLib() {
    Ran ran = Batches.run("geodesic-inverse", Batches.full(), legs(500));
    for (int i = 1; i <= 500; i++) {
      GeodesicData peer =
          Geodesic.WGS84.Inverse(
              ran.number(i, 0), ran.number(i, 1), ran.number(i, 2), ran.number(i, 3));
      assertEquals(peer.s12, ran.number(i, 6), THIRTY_NANOMETRES);
      double turn = Math.IEEEremainder(ran.number(i, 4) - peer.azi1, 360.0);
      assertEquals(0.0, Math.toRadians(turn) * peer.s12, THIRTY_NANOMETRES);
      turn = Math.IEEEremainder(ran.number(i, 5) - peer.azi2, 360.0);
      assertEquals(0.0, Math.toRadians(turn) * peer.s12, THIRTY_NANOMETRES);
    }
  }

  @Test
  void geodesicDirectAgreesWithGeographicLib() {
    Ran inverse = Batches.run("geodesic-inverse", Batches.full(), legs(300));
    StringBuilder text = new StringBuilder("lat1,lon1,initial_deg,distance_m\n");
    for (int i = 1; i <= 300; i++) {
      String[] row = inverse.row(i);
      text.append(row[0] + "," + row[1] + "," + row[4] + "," + row[6] + "\n");
    }
    Ran ran = Batches.run("geodesic-direct", Batches.full(), text.toString());
    for (int i = 1; i <= 300; i++) {
      GeodesicData peer =
          Geodesic.WGS84.Direct(
              ran.number(i, 0), ran.number(i, 1), ran.number(i, 2), ran.number(i, 3));
      assertEquals(peer.lat2, ran.number(i, 4), THIRTY_NANOMETRES / DEGREE_METRES);
      double cosine = Math.cos(Math.toRadians(peer.lat2));
      double east = Math.IEEEremainder(ran.number(i, 5) - peer.lon2, 360.0) * cosine;
      assertEquals(0.0, east, THIRTY_NANOMETRES / DEGREE_METRES);
      double turn = Math.toRadians(Math.IEEEremainder(ran.number(i, 6) - peer.azi2, 360.0));
      assertEquals(0.0, turn * ran.number(i, 3), THIRTY_NANOMETRES);
    }
  }

  /** There in full digits and back in full digits ends within the promise of both. */
  @Test
  void rhumbLinesGoThereAndBack() {
    Ran inverse = Batches.run("rhumb-inverse", Batches.full(), legs(300));
    String heading = "lat1,lon1,end_lat,end_lon,course_deg,distance_m";
    String text = heading + inverse.out().substring(inverse.out().indexOf('\n'));
    Ran direct = Batches.run("rhumb-direct", Batches.full(), text);
    for (int i = 1; i <= 300; i++) {
      assertEquals(direct.number(i, 2), direct.number(i, 6), THIRTY_NANOMETRES / DEGREE_METRES);
      double cosine = Math.cos(Math.toRadians(direct.number(i, 2)));
      double east = (direct.number(i, 7) - direct.number(i, 3)) * cosine;
      assertEquals(0.0, east, THIRTY_NANOMETRES / DEGREE_METRES);
    }
  }

  /**
   * The definition of a rhumb line, integrated: dλ = tan(course) M / (N cos φ) dφ and ds = M dφ /
   * cos(course), both by Gauss's rule of five points; and the excess over GeographicLib's geodesic.
   */
  @Test
  void rhumbLinesAndExcessAgreeWithQuadrature() {
    int rows = 2000;
    Ran rhumb = Batches.run("rhumb-inverse", Batches.full(), legs(rows));
    Ran errors = Batches.run("leg-errors", Batches.full(), legs(rows));
    for (int i = 1; i <= rows; i++) {
      double[] meridian = quadrature(rhumb.number(i, 0), rhumb.number(i, 2));
      double east = Math.toRadians(rhumb.number(i, 3) - rhumb.number(i, 1));
      double metres = Math.hypot(meridian[0], meridian[0] / meridian[1] * east);
      double course = Math.toDegrees(Math.atan2(east, meridian[1]));
      assertEquals(metres, rhumb.number(i, 5), THIRTY_NANOMETRES);
      double turn = Math.IEEEremainder(rhumb.number(i, 4) - course, 360.0);
      assertEquals(0.0, Math.toRadians(turn) * metres, THIRTY_NANOMETRES);
      GeodesicData peer =
          Geodesic.WGS84.Inverse(
              rhumb.number(i, 0), rhumb.number(i, 1), rhumb.number(i, 2), rhumb.number(i, 3));
      assertEquals(metres - peer.s12, errors.number(i, 4), THIRTY_NANOMETRES);
    }
  }

  /** Metres of the meridian and difference of isometric latitude between two latitudes. */
  private static double[] quadrature(double from, double to) {
    double[] nodes = {0.0, 0.5384693101056831, 0.9061798459386640}; // Abramowitz and Stegun 25.4.30
    double[] weights = {0.5688888888888889, 0.4786286704993665, 0.2369268850561891};
    double e2 = 0.0066943799901413165; // f (2 - f), f = 1/298.257223563
    double half = 0.5 * Math.toRadians(to - from);
    double[] sums = new double[2];
    for (int k = -2; k <= 2; k++) {
      double sign = Math.signum(k);
      double phi = Math.toRadians(0.5 * (from + to)) + sign * half * nodes[Math.abs(k)];
      double w2 = 1.0 - e2 * Math.sin(phi) * Math.sin(phi);
      double north = 6378137.0 * (1.0 - e2) / (w2 * Math.sqrt(w2));
      double east = 6378137.0 * Math.cos(phi) / Math.sqrt(w2);
      sums[0] += half * weights[Math.abs(k)] * north;
      sums[1] += half * weights[Math.abs(k)] * north / east;
    }
    return sums;
  }

  @Test
  void aRhumbLinePastThePoleIsRefused() {
    Ran ran =
        Batches.run(
            "rhumb-direct",
            BatchOptions.standard(),
            "lat1,lon1,course_deg,distance_m\n89,0,10,500000\n");
    assertEquals("89,0,10,500000,,", ran.out().split("\n")[1]);
    assertTrue(ran.refusals().get(0).contains("past a pole"));
  }

  /**
   * On a sphere along a parallel: the rhumb line is R cos(lat) times the difference of longitude,
   * the great circle by the haversine, and they part most in the middle, where the great circle's
   * latitude has tan = tan(lat)/cos(dlon/2) (Napier's rules).
   */
  @Test
  void legErrorsOnASphereAreThoseOfSphericalTrigonometry() {
    double radius = 6371000.0;
    for (double latitude : new double[] {10.0, 45.0, 58.5, 70.0, -33.0}) {
      double lat = Math.toRadians(latitude);
      double dlon = Math.toRadians(1.5);
      double rhumb = radius * Math.abs(Math.cos(lat)) * dlon;
      double circle = 2.0 * radius * Math.asin(Math.cos(lat) * Math.sin(0.5 * dlon));
      double vertex = Math.atan(Math.tan(lat) / Math.cos(0.5 * dlon));
      double separation = radius * Math.abs(vertex - lat);
      double turn = Math.toDegrees(Math.atan(Math.sin(lat) * Math.tan(0.5 * dlon)));
      Ran ran =
          Batches.run(
              "leg-errors",
              Batches.full().withEllipsoid(Ellipsoid.sphere(radius)),
              "lat1,lon1,lat2,lon2\n" + latitude + ",20," + latitude + ",21.5\n");
      assertEquals(rhumb - circle, ran.number(1, 4), THIRTY_NANOMETRES);
      assertEquals(separation, ran.number(1, 5), 1e-10 * separation + THIRTY_NANOMETRES);
      assertEquals(turn, ran.number(1, 6), 1e-12);
    }
  }

  /** As above, along legs too long or too near a pole for the quick form. */
  @Test
  void separationOfLongLegsIsSearched() {
    double radius = 6371000.0;
    for (double[] leg : new double[][] {{45.0, 60.0}, {85.0, 10.0}, {-20.0, 100.0}}) {
      double lat = Math.toRadians(leg[0]);
      double vertex = Math.atan(Math.tan(lat) / Math.cos(Math.toRadians(0.5 * leg[1])));
      Ran ran =
          Batches.run(
              "leg-errors",
              Batches.full().withEllipsoid(Ellipsoid.sphere(radius)),
              "lat1,lon1,lat2,lon2\n" + leg[0] + ",0," + leg[0] + "," + leg[1] + "\n");
      double separation = radius * Math.abs(vertex - lat);
      assertEquals(separation, ran.number(1, 5), 1e-10 * separation + 1e-6); // a search's end
      assertEquals(0, ran.summary().refused());
    }
  }

  @Test
  void crossTrackTakesAnotherEllipsoid() {
    double radius = 6371000.0;
    for (boolean geodesic : new boolean[] {false, true}) {
      Ran ran =
          Batches.run(
              "cross-track",
              Batches.full().withGeodesicLine(geodesic).withEllipsoid(Ellipsoid.sphere(radius)),
              "latA,lonA,latB,lonB,latP,lonP\n0,0,0,1,-0.1,0.5\n");
      assertEquals(radius * Math.toRadians(0.1), ran.number(1, 6), THIRTY_NANOMETRES);
      assertEquals(radius * Math.toRadians(0.5), ran.number(1, 7), 1e-6);
    }
  }

  /**
   * Cross-track distance from a great circle on an equator needs no formula: it is the latitude.
   */
  @Test
  void crossTrackOfTheEquatorIsTheMeridian() {
    String text =
        "latA,lonA,latB,lonB,latP,lonP\n0,0,0,1,-0.1,0.5\n0,0,0,1,0.1,2\n0,0,0,-1,0.1,-3\n";
    for (boolean geodesic : new boolean[] {false, true}) {
      Ran ran = Batches.run("cross-track", Batches.full().withGeodesicLine(geodesic), text);
      double meridian = Geodesic.WGS84.Inverse(0, 0, 0.1, 0).s12;
      double degree = Math.toRadians(6378137.0);
      assertEquals(
          meridian, ran.number(1, 6), THIRTY_NANOMETRES); // south of an eastward line: right
      assertEquals(0.5 * degree, ran.number(1, 7), 1e-6);
      assertEquals(-meridian, ran.number(2, 6), THIRTY_NANOMETRES);
      assertEquals(2.0 * degree, ran.number(2, 7), 1e-6); // beyond the end
      assertEquals(meridian, ran.number(3, 6), THIRTY_NANOMETRES);
      assertEquals(-3.0, ran.number(3, 9), 1e-11);
    }
  }

  /** The closest point of a line sees the position at right angles, by GeographicLib's courses. */
  @Test
  void theClosestPointIsAtRightAngles() {
    Ran ran =
        Batches.run(
            "cross-track",
            Batches.full().withGeodesicLine(true),
            "latA,lonA,latB,lonB,latP,lonP\n"
                + "57.1,-6.2,57.3,-6.6,57.15,-6.45\n"
                + "-35,140,-35.2,140,-35.1,140.1\n");
    for (int i = 1; i <= 2; i++) {
      GeodesicData along =
          Geodesic.WGS84.Inverse(
              ran.number(i, 0), ran.number(i, 1), ran.number(i, 8), ran.number(i, 9));
      GeodesicData across =
          Geodesic.WGS84.Inverse(
              ran.number(i, 8), ran.number(i, 9), ran.number(i, 4), ran.number(i, 5));
      double turn = Math.IEEEremainder(across.azi1 - along.azi2, 360.0);
      // the foot is found within a micrometre, seen from here at this angle
      assertEquals(90.0, Math.abs(turn), Math.toDegrees(1e-6 / across.s12 + 1e-9));
      assertEquals(Math.signum(turn) * across.s12, ran.number(i, 6), THIRTY_NANOMETRES);
      assertEquals(along.s12, ran.number(i, 7), 1e-6);
    }
  }

  @Test
  void roundedFiguresStayWithinTheirRanges() {
    Ran ran =
        Batches.run(
            "rhumb-inverse",
            BatchOptions.standard(),
            "lat1,lon1,lat2,lon2\n0,0,1,-0.000000000001\n0,0,1,-0.00001\n");
    assertEquals("0.000000", ran.row(1)[4]);
    assertEquals("359.999423", ran.row(2)[4]); // 1e-5 of a degree seen over one, by a/M = 1.0067
    Ran line =
        Batches.run(
            "rhumb-direct",
            BatchOptions.standard(),
            "lat1,lon1,course_deg,distance_m\n0,179.9999999999,90,0.0000001\n");
    assertEquals("-180.000000000", line.row(1)[5]);
  }
}
