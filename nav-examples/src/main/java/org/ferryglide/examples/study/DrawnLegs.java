package org.ferryglide.examples.study;

import java.io.Serializable;
import java.util.SplittableRandom;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.RhumbLines;

/**
 * Legs drawn from a seed, each by its number alone, so that any part of them can be drawn anywhere,
 * in any order, and is the same.
 *
 * <p>Starts lie between 75° south and north with longitudes all round, courses all round; lengths
 * are spread evenly over the logarithm from 0.5 to 200 km.
 *
 * <pre>{@code
 * double[] leg = new double[DrawnLegs.WIDTH];
 * new DrawnLegs(1).draw(4_711, leg, 0);
 * }</pre>
 *
 * @param seed the seed
 */
public record DrawnLegs(long seed) implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Where {@link #draw} writes the latitude of the start, degrees. */
  public static final int LATITUDE_1 = 0;

  /** Where it writes the longitude of the start, degrees. */
  public static final int LONGITUDE_1 = 1;

  /** Where it writes the latitude of the end, degrees. */
  public static final int LATITUDE_2 = 2;

  /** Where it writes the longitude of the end, degrees. */
  public static final int LONGITUDE_2 = 3;

  /** How many numbers a leg takes. */
  public static final int WIDTH = 4;

  /** Shortest leg, metres. */
  static final double SHORTEST_METRES = 500.0;

  /** Longest leg, metres. */
  static final double LONGEST_METRES = 200_000.0;

  /** Farthest start from the equator, degrees. */
  static final double GREATEST_LATITUDE = 75.0;

  /** The odd number nearest to 2^64 over the golden ratio, which parts neighbouring seeds well. */
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;

  /**
   * Draws one leg.
   *
   * @param number which, any number
   * @param out receives latitude and longitude of start and end, degrees
   * @param offset where in {@code out} to write
   */
  public void draw(long number, double[] out, int offset) {
    SplittableRandom random = new SplittableRandom(seed * GOLDEN + number);
    double latitude = random.nextDouble(-GREATEST_LATITUDE, GREATEST_LATITUDE);
    double longitude = random.nextDouble(-180.0, 180.0);
    double course = random.nextDouble(360.0);
    double metres =
        SHORTEST_METRES * Math.pow(LONGEST_METRES / SHORTEST_METRES, random.nextDouble());
    out[offset + LATITUDE_1] = latitude;
    out[offset + LONGITUDE_1] = longitude;
    RhumbLines.direct(
        Ellipsoid.WGS84, latitude, longitude, course, metres, out, offset + LATITUDE_2);
  }
}
