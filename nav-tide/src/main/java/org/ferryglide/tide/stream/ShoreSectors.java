package org.ferryglide.tide.stream;

import java.util.Arrays;
import java.util.Comparator;
import org.ferryglide.nav.basics.Angles;

/**
 * The pieces of a shore as they are seen from one place: a list for each of many sectors round it,
 * nearest first. A sight to the place need only be tried against the list of its own sector, as far
 * as it reaches, so that its cost hardly grows with the coast.
 *
 * <p>Sectors are equal steps of a pseudo-angle that grows with the angle and needs no arctangent:
 * the share of the eastward part in the sum of both, by quadrants.
 */
final class ShoreSectors {
  private static final int FEWEST = 256;
  private static final int MOST = 4096;

  /** A whole turn of the pseudo-angle. */
  private static final double TURN = 4.0;

  /** What the ends of a piece are widened by, a millionth of the least sector and more. */
  private static final double WIDENING = 1e-9;

  /** How far a longitude reckoned another way may be off by rounding, degrees. */
  private static final double ROUNDING_DEGREES = 1e-9;

  private final Shoreline shores;
  private final double x;
  private final double y;
  private final double sectorsInQuadrant;

  /** Where the list of each sector begins in {@link #pieces}, and where the last one ends. */
  private final int[] begins;

  private final int[] pieces;

  /** The least distance of each listed piece from the place, degrees on the plane of the shore. */
  private final double[] nearest;

  ShoreSectors(Shoreline shores, double latitude, double longitude) {
    this.shores = shores;
    x = shores.eastOf(longitude);
    y = latitude;
    int count = shores.pieceCount();
    int sectors = FEWEST;
    while (sectors < count && sectors < MOST) {
      sectors *= 2;
    }
    sectorsInQuadrant = sectors / TURN;
    int[][] spans = new int[count][];
    double[] distances = new double[count];
    begins = new int[sectors + 1];
    for (int piece = 0; piece < count; piece++) {
      distances[piece] = shores.distance(piece, x, y);
      spans[piece] = span(piece, sectors);
      for (int k = 0; k < spans[piece][1]; k++) {
        begins[(spans[piece][0] + k) % sectors + 1]++;
      }
    }
    for (int sector = 0; sector < sectors; sector++) {
      begins[sector + 1] += begins[sector];
    }
    pieces = new int[begins[sectors]];
    nearest = new double[begins[sectors]];
    Integer[] order = new Integer[count];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, Comparator.comparingDouble(piece -> distances[piece]));
    int[] next = begins.clone();
    for (int piece : order) {
      for (int k = 0; k < spans[piece][1]; k++) {
        int at = next[(spans[piece][0] + k) % sectors]++;
        pieces[at] = piece;
        nearest[at] = distances[piece];
      }
    }
  }

  /** First sector and number of sectors that a piece touches. */
  private int[] span(int piece, int sectors) {
    double first = pseudoAngle(shores.startX(piece) - x, shores.startY(piece) - y);
    double last = pseudoAngle(shores.endX(piece) - x, shores.endY(piece) - y);
    double turn = Math.IEEEremainder(last - first, TURN);
    if (!(Math.abs(turn) < 0.5 * TURN - 1e-6)) { // through the place, or NaN where an end is it
      return new int[] {0, sectors};
    }
    double low = (turn >= 0.0 ? first : last) - WIDENING;
    double high = (turn >= 0.0 ? first + turn : last - turn) + WIDENING;
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
    int sector = (int) (pseudo * sectorsInQuadrant) & (begins.length - 2);
    double length = Math.sqrt(dx * dx + dy * dy) + ROUNDING_DEGREES;
    int end = begins[sector + 1];
    for (int i = begins[sector]; i < end && nearest[i] <= length; i++) {
      if (shores.crosses(4 * pieces[i], x1, latitude1, x2, y)) {
        return true;
      }
    }
    return false;
  }
}
