package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The shortest way round land, from corner to corner of it: through channels too, however narrow,
 * between which the moves of a front find no room. Streams and closed areas do not count here; as
 * one of the ways to be refined it is timed like the others.
 *
 * <p>Source: Hart, Nilsson and Raphael, A formal basis for the heuristic determination of minimum
 * cost paths, IEEE Transactions on Systems Science and Cybernetics 4 (1968), 100-107.
 */
final class ShortestWay {
  /** No more lines between corners are looked along than this. */
  private static final int MOST_LINES = 200_000;

  private final Obstacles land;
  private final SearchPlane plane;
  private final double[] along;
  private final double[] right;

  private ShortestWay(Obstacles land, LandCorners corners, SearchPlane plane) {
    this.land = land;
    this.plane = plane;
    int n = corners.count();
    along = new double[n + 2];
    right = new double[n + 2];
    for (int c = 0; c < n; c++) {
      along[c] = corners.along(c);
      right[c] = corners.right(c);
    }
    along[n + 1] = plane.length; // n is the start, at 0 and 0
  }

  /** The way; none if there is none, or none was found in many looks. */
  static List<Way> of(Obstacles land, LandCorners corners, SearchPlane plane) {
    return new ShortestWay(land, corners, plane).found();
  }

  private List<Way> found() {
    int places = along.length;
    int goal = places - 1;
    double[] passed = new double[places];
    Arrays.fill(passed, Double.POSITIVE_INFINITY);
    int[] before = new int[places];
    boolean[] done = new boolean[places];
    passed[goal - 1] = 0.0;
    before[goal - 1] = -1;
    int lines = 0;
    while (lines < MOST_LINES) {
      int next = -1;
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < places; i++) {
        double all = passed[i] + apart(i, goal);
        if (!done[i] && all < least) {
          least = all;
          next = i;
        }
      }
      if (next < 0) {
        return List.of();
      }
      if (next == goal) {
        return List.of(way(before));
      }
      done[next] = true;
      for (int i = 0; i < places; i++) {
        double there = passed[next] + apart(next, i);
        if (!done[i] && there < passed[i]) {
          lines++;
          if (!isBlocked(next, i)) {
            passed[i] = there;
            before[i] = next;
          }
        }
      }
    }
    return List.of();
  }

  private double apart(int one, int other) {
    return Math.hypot(along[other] - along[one], right[other] - right[one]);
  }

  private boolean isBlocked(int one, int other) {
    return land.blocks(
        plane.latitude(along[one], right[one]),
        plane.longitude(along[one], right[one]),
        plane.latitude(along[other], right[other]),
        plane.longitude(along[other], right[other]));
  }

  private Way way(int[] before) {
    List<Integer> places = new ArrayList<>();
    for (int place = along.length - 1; place >= 0; place = before[place]) {
      places.add(0, place);
    }
    int n = places.size();
    double[] a = new double[n];
    double[] r = new double[n];
    boolean[] pinned = new boolean[n];
    for (int i = 0; i < n; i++) {
      a[i] = along[places.get(i)];
      r[i] = right[places.get(i)];
      pinned[i] = i > 0 && i + 1 < n;
    }
    return new Way(a, r, new double[n], pinned);
  }
}
