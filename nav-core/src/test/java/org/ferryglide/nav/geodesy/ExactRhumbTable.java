package org.ferryglide.nav.geodesy;

import java.io.IOException;
import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Makes the committed tables of exact rhumb lines, and measures the kernel against as many more
 * cases as are asked for.
 *
 * <p>{@code main table FOLDER} writes {@code exact-rhumb-inverse.csv} and {@code
 * exact-rhumb-direct.csv}; {@code main measure 298.257223563 N SEED} tries N cases of each kind on
 * the ellipsoid of that inverse flattening, and prints the greatest error of each, nanometres.
 */
final class ExactRhumbTable {
  private static final int CASES_OF_A_KIND = 24;
  private static final MathContext PRINTED = new MathContext(34);

  /** The kinds of leg that the tables hold. */
  enum Kind {
    HARBOUR,
    PASSAGE,
    WORLD,
    NEARLY_EAST_WEST,
    PARALLEL,
    MERIDIAN,
    DATE_LINE,
    EQUATOR,
    NEAR_POLE,
    POLE,
    HALF_ROUND;

    /** A leg of this kind: latitude and longitude of both ends, degrees. */
    double[] leg(SplittableRandom random) {
      double lat = 85.0 * (2.0 * random.nextDouble() - 1.0);
      double lon = 180.0 * (2.0 * random.nextDouble() - 1.0);
      double lat2 = 85.0 * (2.0 * random.nextDouble() - 1.0);
      double lon2 = 180.0 * (2.0 * random.nextDouble() - 1.0);
      double side = random.nextBoolean() ? 1.0 : -1.0;
      return switch (this) {
        case HARBOUR -> around(lat, lon, random, 10.0, 20e3);
        case PASSAGE -> around(lat, lon, random, 20e3, 500e3);
        case WORLD -> new double[] {lat, lon, lat2, lon2};
        case NEARLY_EAST_WEST ->
            new double[] {lat, lon, lat + side * power(random, 1e-12, 1e-3), lon2};
        case PARALLEL -> new double[] {lat, lon, lat, lon2};
        case MERIDIAN -> new double[] {lat, lon, lat2, lon};
        case DATE_LINE -> {
          double east = side * (180.0 - power(random, 1e-6, 5.0));
          yield new double[] {lat, east, lat2, side * (power(random, 1e-6, 5.0) - 180.0)};
        }
        case EQUATOR -> {
          double south = -side * power(random, 1e-9, 5.0);
          yield new double[] {side * power(random, 1e-9, 5.0), lon, south, lon2};
        }
        case NEAR_POLE -> new double[] {lat, lon, side * (90.0 - power(random, 1e-9, 1.0)), lon2};
        case POLE -> new double[] {lat, lon, side * 90.0, lon2};
        case HALF_ROUND -> { // in 1024ths of a degree, so that 180 degrees on is exact
          double exact = Math.rint(lon * 1024.0) / 1024.0;
          yield new double[] {lat, exact, lat2, exact < 0.0 ? exact + 180.0 : exact - 180.0};
        }
      };
    }

    private static double[] around(
        double lat, double lon, SplittableRandom random, double least, double most) {
      double metres = power(random, least, most);
      double[] end = new double[2];
      RhumbLines.direct(lat, lon, 360.0 * random.nextDouble(), metres, end, 0);
      return new double[] {lat, lon, end[0], end[1]};
    }

    /** A number between two others, its logarithm evenly spread. */
    private static double power(SplittableRandom random, double least, double most) {
      return least * Math.pow(most / least, random.nextDouble());
    }
  }

  private ExactRhumbTable() {}

  public static void main(String[] arguments) throws IOException {
    if (arguments[0].equals("table")) {
      write(Path.of(arguments[1]));
    } else {
      measure(
          new ExactRhumb("6378137", arguments[1]),
          Integer.parseInt(arguments[2]),
          Long.parseLong(arguments[3]));
    }
  }

  private static void write(Path folder) throws IOException {
    ExactRhumb exact = ExactRhumb.wgs84();
    SplittableRandom random = new SplittableRandom(20261124);
    try (PrintWriter inverse = open(folder.resolve("exact-rhumb-inverse.csv"));
        PrintWriter direct = open(folder.resolve("exact-rhumb-direct.csv"))) {
      String made = "# Source: ExactRhumbTable (80-digit arithmetic, defining integrals), WGS84";
      inverse.println(made);
      inverse.println("# Columns: kind, start and end lat lon deg -> course deg, length m");
      direct.println(made);
      direct.println("# Columns: kind, start lat lon deg, course deg, length m -> lat lon deg");
      for (Kind kind : Kind.values()) {
        for (int i = 0; i < CASES_OF_A_KIND; i++) {
          double[] leg = kind.leg(random);
          BigDecimal[] answer = exact.inverse(leg[0], leg[1], leg[2], leg[3]);
          inverse.println(row(kind, leg[0], leg[1], leg[2], leg[3], answer));
          if (kind != Kind.POLE) { // a length rounded up would end past the pole
            double course = answer[0].doubleValue();
            double metres = answer[1].doubleValue();
            BigDecimal[] end = exact.direct(leg[0], leg[1], course, metres);
            direct.println(row(kind, leg[0], leg[1], course, metres, end));
          }
        }
      }
    }
  }

  private static PrintWriter open(Path file) throws IOException {
    return new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8));
  }

  private static String row(Kind kind, double a, double b, double c, double d, BigDecimal[] out) {
    return kind
        + ","
        + a
        + ","
        + b
        + ","
        + c
        + ","
        + d
        + ","
        + out[0].round(PRINTED).toPlainString()
        + ","
        + out[1].round(PRINTED).toPlainString();
  }

  private static void measure(ExactRhumb exact, int cases, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (Kind kind : Kind.values()) {
      if (System.getProperty("kinds") != null && !System.getProperty("kinds").contains(kind.name()))
        continue;
      Map<String, Double> greatest = new LinkedHashMap<>();
      for (int i = 0; i < cases; i++) {
        double[] leg = kind.leg(random);
        BigDecimal[] answer = exact.inverse(leg[0], leg[1], leg[2], leg[3]);
        RhumbError error = RhumbError.ofInverse(exact, leg[0], leg[1], leg[2], leg[3], answer);
        greatest.merge("length", error.lengthNanometres(), Math::max);
        greatest.merge("course x length", error.courseNanometres(), Math::max);
        if (kind != Kind.POLE) {
          double course = answer[0].doubleValue();
          double metres = answer[1].doubleValue();
          BigDecimal[] end = exact.direct(leg[0], leg[1], course, metres);
          RhumbError there = RhumbError.ofDirect(exact, leg[0], leg[1], course, metres, end);
          greatest.merge("end", there.endNanometres(), Math::max);
        }
      }
      System.out.println(kind + " " + greatest);
    }
  }
}
