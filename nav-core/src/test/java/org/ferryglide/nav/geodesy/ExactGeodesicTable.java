package org.ferryglide.nav.geodesy;

import java.io.IOException;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;

/**
 * Makes the committed table of exact short geodesics, and measures the kernel against
 * GeographicLib-Java over as many more as are asked for.
 *
 * <p>{@code main table FILE} writes {@code exact-short-geodesics.csv}; {@code main measure N SEED}
 * draws N legs of each kind and prints the greatest differences from GeographicLib, nanometres.
 */
final class ExactGeodesicTable {
  private static final int CASES_OF_A_KIND = 200;
  private static final String AXIS = "6378137";
  private static final MathContext PRINTED = new MathContext(28);

  /** The kinds of line that the table holds: figure of the earth, lengths, and how it is drawn. */
  enum Kind {
    HARBOUR("298.257223563", 10.0, 1e3, 88.9),
    KAYAK("298.257223563", 1e3, 20e3, 88.9),
    PASSAGE("298.257223563", 20e3, 100e3, 88.0),
    LONG("298.257223563", 100e3, 490e3, 84.4),
    HIGH_LATITUDE("298.257223563", 1e3, 490e3, 84.4),
    ALONG_OR_ACROSS("298.257223563", 10.0, 490e3, 84.4),
    EQUATOR("298.257223563", 10.0, 490e3, 4.0),
    DATE_LINE("298.257223563", 10e3, 490e3, 84.4),
    FLAT("150", 10.0, 490e3, 84.4),
    LONG_BODY("-150", 10.0, 490e3, 84.4),
    SPHERE("1e300", 10.0, 490e3, 84.4);

    final String inverseFlattening;
    private final double least;
    private final double most;
    private final double greatestLatitude;

    Kind(String inverseFlattening, double least, double most, double greatestLatitude) {
      this.inverseFlattening = inverseFlattening;
      this.least = least;
      this.most = most;
      this.greatestLatitude = greatestLatitude;
    }

    /** Latitude and longitude of both ends. */
    double[] leg(SplittableRandom random) {
      double share = random.nextDouble();
      if (this == HIGH_LATITUDE) {
        share = 0.85 + 0.15 * share;
      }
      double lat = greatestLatitude * share * (random.nextBoolean() ? 1.0 : -1.0);
      double lon = 360.0 * random.nextDouble() - 180.0;
      double course = 360.0 * random.nextDouble();
      double metres = least * Math.pow(most / least, random.nextDouble());
      if (this == ALONG_OR_ACROSS) { // exactly, or within 1e-7 degrees
        double off = random.nextBoolean() ? 0.0 : 2e-7 * random.nextDouble() - 1e-7;
        course = 90.0 * random.nextInt(4) + off;
      } else if (this == DATE_LINE) {
        lon = 179.95;
        course = 180.0 * random.nextDouble();
        metres = Math.max(metres, 1e4);
      }
      GeodesicData end =
          new Geodesic(6378137.0, 1.0 / Double.parseDouble(inverseFlattening))
              .Direct(lat, lon, course, metres);
      return new double[] {lat, lon, end.lat2, end.lon2};
    }

    ExactGeodesic exact() {
      return new ExactGeodesic(AXIS, inverseFlattening);
    }
  }

  private ExactGeodesicTable() {}

  public static void main(String[] arguments) throws IOException {
    if (arguments[0].equals("table")) {
      write(Path.of(arguments[1]));
    } else {
      measure(Integer.parseInt(arguments[1]), Long.parseLong(arguments[2]));
    }
  }

  private static void write(Path file) throws IOException {
    SplittableRandom random = new SplittableRandom(20261126);
    try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8))) {
      out.println("# Source: ExactGeodesicTable table (80-digit arithmetic, defining integrals)");
      out.println("# Columns: kind, start and end lat lon deg -> courses deg at both, length m");
      for (Kind kind : Kind.values()) {
        ExactGeodesic exact = kind.exact();
        for (int i = 0; i < CASES_OF_A_KIND; i++) {
          double[] leg = kind.leg(random);
          StringBuilder line = new StringBuilder(kind.name());
          for (double number : leg) {
            line.append(',').append(number);
          }
          for (BigDecimal answer : exact.inverse(leg[0], leg[1], leg[2], leg[3])) {
            line.append(',').append(answer.round(PRINTED).toPlainString());
          }
          out.println(line);
        }
      }
    }
  }

  private static void measure(int cases, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] out = new double[3];
    for (Kind kind : Kind.values()) {
      double inverseFlattening = Double.parseDouble(kind.inverseFlattening);
      Ellipsoid figure = Ellipsoid.ofInverseFlattening(6378137.0, inverseFlattening);
      Geodesic peer = new Geodesic(6378137.0, 1.0 / inverseFlattening);
      double length = 0.0;
      double across = 0.0;
      double end = 0.0;
      int leftOut = 0;
      for (int i = 0; i < cases; i++) {
        double[] leg = kind.leg(random);
        GeodesicData line = peer.Inverse(leg[0], leg[1], leg[2], leg[3]);
        if (!ShortGeodesics.inverse(figure, leg[0], leg[1], leg[2], leg[3], out, 0)) {
          leftOut++;
          continue;
        }
        length = Math.max(length, Math.abs(out[2] - line.s12));
        double off =
            Math.max(
                Math.abs(Math.IEEEremainder(out[0] - line.azi1, 360.0)),
                Math.abs(Math.IEEEremainder(out[1] - line.azi2, 360.0)));
        across = Math.max(across, Math.toRadians(off) * line.s12);
        if (ShortGeodesics.direct(figure, leg[0], leg[1], line.azi1, line.s12, out, 0)) {
          end = Math.max(end, metresBetween(out[0], out[1], leg[2], leg[3]));
        }
      }
      System.out.printf(
          "%s length %.2f course x length %.2f end %.2f nm, left to the other %d of %d%n",
          kind, 1e9 * length, 1e9 * across, 1e9 * end, leftOut, cases);
    }
  }

  /** For points less than a metre apart. */
  static double metresBetween(double lat1, double lon1, double lat2, double lon2) {
    double north = Math.toRadians(lat2 - lat1);
    double east =
        Math.toRadians(Math.IEEEremainder(lon2 - lon1, 360.0)) * Math.cos(Math.toRadians(lat1));
    return 6378137.0 * Math.hypot(north, east);
  }
}
