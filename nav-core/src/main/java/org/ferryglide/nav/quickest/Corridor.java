package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Narrows a way down among land and closed areas: across it, at stations along it, lie places to
 * choose from, and the earliest arrival at each is found station by station. The corners of the
 * land that lie in the corridor are stations of their own, since a quickest path touches land at
 * corners. The corridor is halved again and again. Not thread-safe.
 */
final class Corridor {
  /** Places on either side of the way at each station. */
  private static final int ASIDE = 3;

  /** The corridor ends when it is this narrow, metres. */
  static final double NARROWEST_METRES = 1.0;

  private static final double NARROWER = 0.45;

  /** As a share of the first width: a wide corridor finds the side, a narrow one the corners. */
  private static final double CORNERS_FROM = 0.3;

  /** More corners than this in a corridor are too many to be worth stations. */
  private static final int MOST_CORNERS = 400;

  private final TrackTimes times;

  private final LandCorners corners;

  /** Corners are stations in corridors narrower than this, metres. */
  private double withCorners;

  /** Those of them that a narrowing can reach, by number. */
  private int[] reachable = new int[0];

  Corridor(TrackTimes times, LandCorners corners) {
    this.times = times;
    this.corners = corners;
  }

  /** The best way within so many metres of one, in about so many tracks. */
  Way narrowed(Way way, double metres, int tracks) {
    Way best = way;
    double width = metres;
    withCorners = CORNERS_FROM * metres;
    // a way moves by the width of each pass at most, and looks as far aside from there
    reachable = corners.within(way, metres * (1.0 + 1.0 / (1.0 - NARROWER)));
    boolean before = times.setLenient(true);
    while (width > NARROWEST_METRES) {
      best = pass(best, width, tracks);
      width *= NARROWER;
    }
    times.setLenient(before);
    return best;
  }

  /** Whether a corner lies within so many metres of a way. */
  boolean hasCornersWithin(Way way, double metres) {
    return corners.within(way, metres).length > 0;
  }

  /** The same with the present way if no other can be made. */
  private Way pass(Way way, double width, int tracks) {
    Way spread = way.unpinned();
    Way chosen = chosen(stations(spread.evenly(tracks, times), width));
    if (chosen == null) {
      chosen = chosen(stations(spread, width));
    }
    return chosen != null && !(chosen.arrival(times) > way.arrival(times)) ? chosen : way;
  }

  /** A station: places to choose from, and when it is left at the earliest. */
  @SuppressWarnings("ArrayRecordComponent") // handed on inside the engine, never compared
  private record Station(
      double track, double[] along, double[] right, boolean corner, double notBefore) {}

  private List<Station> stations(Way way, double width) {
    List<Station> stations = new ArrayList<>();
    double[] a = way.along();
    double[] r = way.right();
    int last = way.tracks();
    for (int i = 0; i <= last; i++) {
      boolean end = i == 0 || i == last;
      stations.add(
          end
              ? new Station(i, new double[] {a[i]}, new double[] {r[i]}, false, way.notBefore()[i])
              : across(way, i, a[i], r[i], width, false, i, way.notBefore()[i]));
    }
    if (width < withCorners) {
      addCorners(stations, way, width);
    }
    stations.sort(Comparator.comparingDouble(Station::track));
    return stations;
  }

  private void addCorners(List<Station> stations, Way way, double width) {
    int added = 0;
    for (int k = 0; k < reachable.length && added < MOST_CORNERS; k++) {
      int c = reachable[k];
      double nearest = width * width;
      double track = Double.NaN;
      for (int i = 0; i < way.tracks(); i++) {
        double share = corners.shareAt(way, i, c);
        double square = corners.squareFrom(way, i, c, share);
        if (square < nearest) {
          nearest = square;
          track = i + share;
        }
      }
      if (!Double.isNaN(track)) {
        stations.add(
            across(way, (int) track, corners.along(c), corners.right(c), width, true, track, 0.0));
        added++;
      }
    }
  }

  /** Places across the way about one of it, that one in the middle. */
  private static Station across(
      Way way,
      int i,
      double along,
      double right,
      double width,
      boolean corner,
      double track,
      double notBefore) {
    int before = corner ? i : i - 1;
    double da = way.along()[i + 1] - way.along()[before];
    double dr = way.right()[i + 1] - way.right()[before];
    double length = Math.max(1e-9, Math.hypot(da, dr));
    double[] a = new double[2 * ASIDE + 1];
    double[] r = new double[2 * ASIDE + 1];
    for (int k = -ASIDE; k <= ASIDE; k++) {
      double off = width * k / ASIDE;
      a[k + ASIDE] = along - off * dr / length;
      r[k + ASIDE] = right + off * da / length;
    }
    return new Station(track, a, r, corner, notBefore);
  }

  /** The earliest way through the stations; null if there is none. */
  private @Nullable Way chosen(List<Station> stations) {
    int n = stations.size();
    double[][] reached = new double[n][];
    int[][] from = new int[n][];
    reached[0] = new double[1];
    from[0] = new int[1];
    for (int s = 1; s < n; s++) {
      Station before = stations.get(s - 1);
      Station here = stations.get(s);
      int places = here.along().length;
      reached[s] = new double[places];
      from[s] = new int[places];
      Arrays.fill(reached[s], Double.POSITIVE_INFINITY);
      boolean any = false;
      for (int k = 0; k < places; k++) {
        for (int j = 0; j < before.along().length; j++) {
          double left = Math.max(reached[s - 1][j], before.notBefore());
          if (left < reached[s][k]) {
            double time =
                times.arrival(
                    before.along()[j], before.right()[j], here.along()[k], here.right()[k], left);
            if (time < reached[s][k]) {
              reached[s][k] = time;
              from[s][k] = j;
              any = true;
            }
          }
        }
      }
      if (!any) {
        return null;
      }
    }
    double[] along = new double[n];
    double[] right = new double[n];
    double[] notBefore = new double[n];
    boolean[] pinned = new boolean[n];
    int place = 0;
    for (int s = n - 1; s >= 0; s--) {
      Station here = stations.get(s);
      along[s] = here.along()[place];
      right[s] = here.right()[place];
      notBefore[s] = here.notBefore();
      pinned[s] = here.corner() && place == ASIDE;
      place = from[s][place];
    }
    return new Way(along, right, notBefore, pinned);
  }
}
