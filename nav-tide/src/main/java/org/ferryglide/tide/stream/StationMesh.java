package org.ferryglide.tide.stream;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.note.Note;

/** The three corners of a triangle of stations count for the water in it. */
final class StationMesh implements StationRule {
  private static final long serialVersionUID = 1L;

  private static final double WIDEST_DEGREES = 10.0;

  /** Triangles flatter than this share of their longest side are passed over. */
  private static final double LEAST_HEIGHT = 1e-6;

  /** A share below zero by no more than this is a rounding on an edge. */
  private static final double EDGE = 1e-12;

  private final StationPlaces places;
  private final double originLongitude;

  /** Three stations for each triangle. */
  private final int[] corners;

  /**
   * For each triangle: x and y of its last corner, then how fast the shares of the first and of the
   * second corner grow with x and y from there.
   */
  private final double[] shares;

  StationMesh(StationPlaces places, double longestSideMetres) {
    this.places = places;
    this.originLongitude = places.longitude(0);
    int count = places.count();
    double[] x = new double[count];
    double[] y = new double[count];
    for (int i = 0; i < count; i++) {
      x[i] = Angles.shortWay(places.longitude(i) - originLongitude);
      y[i] = places.latitude(i);
    }
    refuseTooWide(x);
    refuseTooWide(y);
    double middle = Arrays.stream(y).average().orElse(0.0);
    double[] east = new double[count];
    for (int i = 0; i < count; i++) {
      east[i] = x[i] * Math.cos(Math.toRadians(middle));
    }
    List<int[]> all = new ArrayList<>(Delaunay.triangles(east, y));
    all.removeIf(triangle -> isSliver(triangle, east, y));
    if (all.isEmpty()) {
      throw new IllegalArgumentException(
          "triangles need at least 3 stations that are not all in line, but were given " + count);
    }
    List<int[]> kept = new ArrayList<>();
    for (int[] triangle : all) {
      if (side(triangle[0], triangle[1]) <= longestSideMetres
          && side(triangle[1], triangle[2]) <= longestSideMetres
          && side(triangle[2], triangle[0]) <= longestSideMetres) {
        kept.add(triangle);
      }
    }
    if (kept.isEmpty()) {
      throw new IllegalArgumentException(
          "no triangle between the stations has all its sides within " + longestSideMetres + " m");
    }
    this.corners = new int[3 * kept.size()];
    this.shares = new double[6 * kept.size()];
    for (int t = 0; t < kept.size(); t++) {
      int[] triangle = kept.get(t);
      System.arraycopy(triangle, 0, corners, 3 * t, 3);
      int a = triangle[0];
      int b = triangle[1];
      int c = triangle[2];
      double area = (x[a] - x[c]) * (y[b] - y[c]) - (y[a] - y[c]) * (x[b] - x[c]);
      double[] row = {
        x[c],
        y[c],
        (y[b] - y[c]) / area,
        (x[c] - x[b]) / area,
        (y[c] - y[a]) / area,
        (x[a] - x[c]) / area
      };
      System.arraycopy(row, 0, shares, 6 * t, 6);
    }
  }

  /** Whether the corners are all but in line, so that shares would be lost in rounding. */
  private static boolean isSliver(int[] triangle, double[] x, double[] y) {
    double longest = 0.0;
    for (int c = 0; c < 3; c++) {
      int a = triangle[c];
      int b = triangle[(c + 1) % 3];
      longest = Math.max(longest, Math.hypot(x[b] - x[a], y[b] - y[a]));
    }
    int a = triangle[0];
    int b = triangle[1];
    int c = triangle[2];
    double area = (x[b] - x[a]) * (y[c] - y[a]) - (y[b] - y[a]) * (x[c] - x[a]);
    return area <= LEAST_HEIGHT * longest * longest;
  }

  private static void refuseTooWide(double[] degrees) {
    double least = degrees[0];
    double greatest = degrees[0];
    for (double value : degrees) {
      least = Math.min(least, value);
      greatest = Math.max(greatest, value);
    }
    if (greatest - least > WIDEST_DEGREES) {
      throw new IllegalArgumentException(
          "stations of triangles must lie within "
              + WIDEST_DEGREES
              + " degrees, but span "
              + (greatest - least));
    }
  }

  private double side(int i, int j) {
    return Math.sqrt(
        places.squaredDistance(
            i,
            places.latitude(j),
            places.longitude(j),
            StationPlaces.eastScale(places.latitude(j))));
  }

  @Override
  public boolean sample(double latitude, double longitude, double t, double[] out, int offset) {
    double x = east(longitude);
    int triangle = triangle(x, latitude);
    if (triangle < 0) {
      return false;
    }
    double sum = 0.0;
    double east = 0.0;
    double north = 0.0;
    double before = out[offset];
    double beforeNext = out[offset + 1];
    int segment = places.segmentOf(t);
    for (int corner = 0; corner < 3; corner++) {
      double share = share(triangle, corner, x, latitude);
      int station = corners[3 * triangle + corner];
      if (share > 0.0 && !places.isCutOff(station, latitude, longitude)) {
        if (!places.sample(station, segment, t, out, offset)) {
          out[offset] = before;
          out[offset + 1] = beforeNext;
          return false;
        }
        sum += share;
        east += share * out[offset];
        north += share * out[offset + 1];
      }
    }
    if (!(sum > 0.0)) {
      return false;
    }
    out[offset] = east / sum;
    out[offset + 1] = north / sum;
    return true;
  }

  private double east(double longitude) {
    double difference = longitude - originLongitude;
    return Math.abs(difference) <= 180.0 ? difference : Angles.shortWay(difference);
  }

  private int triangle(double x, double y) {
    for (int t = 0; t < shares.length / 6; t++) {
      double first = first(t, x, y);
      double second = second(t, x, y);
      if (first >= -EDGE && second >= -EDGE && first + second <= 1.0 + EDGE) {
        return t;
      }
    }
    return -1;
  }

  private double first(int triangle, double x, double y) {
    int at = 6 * triangle;
    return shares[at + 2] * (x - shares[at]) + shares[at + 3] * (y - shares[at + 1]);
  }

  private double second(int triangle, double x, double y) {
    int at = 6 * triangle;
    return shares[at + 4] * (x - shares[at]) + shares[at + 5] * (y - shares[at + 1]);
  }

  private double share(int triangle, int corner, double x, double y) {
    double first = first(triangle, x, y);
    double second = second(triangle, x, y);
    double share = corner == 0 ? first : corner == 1 ? second : 1.0 - first - second;
    return share > EDGE ? share : 0.0;
  }

  @Override
  public double[] weights(double latitude, double longitude, double t) {
    double x = east(longitude);
    int triangle = triangle(x, latitude);
    double[] weights = new double[places.count()];
    if (triangle < 0 || !sample(latitude, longitude, t, new double[2], 0)) {
      return new double[0];
    }
    double sum = 0.0;
    for (int corner = 0; corner < 3; corner++) {
      int station = corners[3 * triangle + corner];
      if (!places.isCutOff(station, latitude, longitude)) {
        weights[station] = share(triangle, corner, x, latitude);
        sum += weights[station];
      }
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
    return weights;
  }

  @Override
  public List<Note> notes(double latitude, double longitude, double t, double[] weights) {
    return List.of(
        Note.information(
            "stream.between-stations",
            "Interpolated between the stations at the corners of a triangle."));
  }
}
