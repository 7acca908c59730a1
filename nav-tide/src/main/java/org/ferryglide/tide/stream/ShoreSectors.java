package org.ferryglide.tide.stream;

import java.util.Arrays;
import java.util.Comparator;
import org.ferryglide.nav.basics.Angles;

/**
 * The segments of a shore as they are seen from one place: a list for each of many sectors round
 * it, nearest first. A sight to the place need only be tried against the list of its own sector, as
 * far as it reaches. Most need not even that: one shorter than the least distance of any segment in
 * the sector is free, and one longer than the greatest distance of a run of segments that leads
 * from one edge of the sector to the other is not. So the cost hardly grows with the coast.
 *
 * <p>Sectors are equal steps of a pseudo-angle that grows with the angle and needs no arctangent:
 * the share of the eastward part in the sum of both, by quadrants.
 */
final class ShoreSectors {
  private static final int FEWEST = 256;
  private static final int MOST = 4096;

  /** A whole turn of the pseudo-angle. */
  private static final double TURN = 4.0;

  /** What the ends of a segment are widened by, a millionth of the least sector and more. */
  private static final double WIDENING = 1e-9;

  /** A sight so near to the edge of a sector, as a share of it, is left to the list. */
  private static final double EDGE = 1e-6;

  /** How far a longitude reckoned another way may be off by rounding, degrees. */
  private static final double ROUNDING_DEGREES = 1e-9;

  private final Shoreline shores;
  private final double x;
  private final double y;
  private final double sectorsInQuadrant;

  /**
   * For each sector how long a sight may be that is surely free, and how long one must be that is
   * surely not, degrees on the plane of the shore.
   */
  private final double[] limits;

  /** Where the list of each sector begins in {@link #segments}, and where the last one ends. */
  private final int[] begins;

  private final int[] segments;

  /**
   * The least distance of each listed segment from the place, degrees on the plane of the shore.
   */
  private final double[] nearest;

  ShoreSectors(Shoreline shores, double latitude, double longitude) {
    this.shores = shores;
    x = shores.eastOf(longitude);
    y = latitude;
    int count = shores.segmentCount();
    int sectors = FEWEST;
    while (sectors < count && sectors < MOST) {
      sectors *= 2;
    }
    sectorsInQuadrant = sectors / TURN;
    int[][] spans = new int[count][];
    double[] distances = new double[count];
    double[] firsts = new double[count];
    double[] turns = new double[count];
    begins = new int[sectors + 1];
    for (int segment = 0; segment < count; segment++) {
      distances[segment] = shores.distance(segment, x, y);
      firsts[segment] = pseudoAngle(shores.startX(segment) - x, shores.startY(segment) - y);
      turns[segment] = turn(segment, firsts[segment]);
      spans[segment] = span(firsts[segment], turns[segment], sectors);
      for (int k = 0; k < spans[segment][1]; k++) {
        begins[(spans[segment][0] + k) % sectors + 1]++;
      }
    }
    for (int sector = 0; sector < sectors; sector++) {
      begins[sector + 1] += begins[sector];
    }
    segments = new int[begins[sectors]];
    nearest = new double[begins[sectors]];
    Integer[] order = new Integer[count];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, Comparator.comparingDouble(segment -> distances[segment]));
    limits = new double[2 * sectors];
    Arrays.fill(limits, Double.POSITIVE_INFINITY);
    int[] next = begins.clone();
    for (int segment : order) {
      for (int k = 0; k < spans[segment][1]; k++) {
        int at = next[(spans[segment][0] + k) % sectors]++;
        segments[at] = segment;
        nearest[at] = distances[segment];
      }
    }
    for (int sector = 0; sector < sectors; sector++) {
      if (begins[sector] < begins[sector + 1]) {
        limits[2 * sector] = nearest[begins[sector]] - ROUNDING_DEGREES;
      }
    }
    closeSectors(firsts, turns, sectors);
  }

  /**
   * Follows each line and sees which sectors it leads across, from one edge to the other, and how
   * far from the place it is there at most.
   */
  private void closeSectors(double[] firsts, double[] turns, int sectors) {
    boolean isFollowing = false;
    double turned = 0.0; // how far round the place the line has come, in sectors
    long edge = 0; // the last edge it crossed, unless it crossed none
    boolean hasEdge = false;
    double farthest = 0.0; // of the line since then
    for (int segment = 0; segment < shores.segmentCount(); segment++) {
      double turn = turns[segment];
      if (Double.isNaN(turn)) {
        isFollowing = false;
        continue;
      }
      boolean continues =
          isFollowing
              && shores.startX(segment) == shores.endX(segment - 1)
              && shores.startY(segment) == shores.endY(segment - 1);
      if (!continues) {
        turned = firsts[segment] * sectorsInQuadrant;
        hasEdge = false;
      }
      isFollowing = true;
      double far =
          Math.max(
              Math.hypot(shores.startX(segment) - x, shores.startY(segment) - y),
              Math.hypot(shores.endX(segment) - x, shores.endY(segment) - y));
      farthest = Math.max(farthest, far);
      double until = turned + turn * sectorsInQuadrant;
      long step = turn < 0.0 ? -1 : 1;
      long next = (long) (turn < 0.0 ? Math.ceil(turned) - 1 : Math.floor(turned) + 1);
      while (turn < 0.0 ? next >= until : next <= until) {
        if (hasEdge && edge != next) {
          int sector = (int) Math.floorMod(Math.min(edge, next), (long) sectors);
          limits[2 * sector + 1] = Math.min(limits[2 * sector + 1], farthest + ROUNDING_DEGREES);
        }
        edge = next;
        hasEdge = true;
        farthest = far;
        next += step;
      }
      turned = until;
    }
  }

  /**
   * From the start of a segment, seen at a pseudo-angle, to its end; NaN for a segment through the
   * place or with an end there.
   */
  private double turn(int segment, double first) {
    double last = pseudoAngle(shores.endX(segment) - x, shores.endY(segment) - y);
    double turn = Math.IEEEremainder(last - first, TURN);
    return Math.abs(turn) < 0.5 * TURN - 1e-6 ? turn : Double.NaN;
  }

  /** First sector and number of sectors that a segment touches. */
  private int[] span(double first, double turn, int sectors) {
    if (Double.isNaN(turn)) {
      return new int[] {0, sectors};
    }
    double low = Math.min(first, first + turn) - WIDENING;
    double high = Math.max(first, first + turn) + WIDENING;
    long from = (long) Math.floor(low * sectorsInQuadrant);
    long until = (long) Math.floor(high * sectorsInQuadrant) + 1;
    return new int[] {
      (int) Math.floorMod(from, (long) sectors), (int) Math.min(sectors, until - from)
    };
  }

  /** In [0, 4), counter-clockwise from east; NaN for no direction. */
  private static double pseudoAngle(double dx, double dy) {
    double share = dx / (Math.abs(dx) + Math.abs(dy));
    return dy >= 0.0 ? 1.0 - share : 3.0 + share;
  }

  /** As {@link Shoreline#separates} from a place to this one, whose longitude is given again. */
  boolean separates(double latitude1, double longitude1, double longitude) {
    double x1 = shores.eastOf(longitude1);
    double x2 = x1 + Angles.shortWay(longitude - longitude1);
    if (Math.abs(x2 - x) > ROUNDING_DEGREES) { // seen across the meridian where longitudes wrap
      return shores.separates(latitude1, longitude1, y, longitude);
    }
    double dx = x1 - x2;
    double dy = latitude1 - y;
    double pseudo = pseudoAngle(dx, dy);
    if (!(pseudo >= 0.0)) {
      return false;
    }
    double part = pseudo * sectorsInQuadrant;
    int sector = (int) part & (begins.length - 2);
    double length = Math.sqrt(dx * dx + dy * dy);
    if (length < limits[2 * sector]) {
      return false;
    }
    double within = part - (int) part;
    if (length > limits[2 * sector + 1] && within > EDGE && within < 1.0 - EDGE) {
      return true;
    }
    length += ROUNDING_DEGREES;
    int end = begins[sector + 1];
    for (int i = begins[sector]; i < end && nearest[i] <= length; i++) {
      if (shores.crosses(4 * segments[i], x1, latitude1, x2, y)) {
        return true;
      }
    }
    return false;
  }
}
