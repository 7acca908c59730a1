package org.ferryglide.nav.fix;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.Edge;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.plane.LocalPlane;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.ErrorEllipse;
import org.ferryglide.nav.reckon.EstimatedPosition;
import org.jspecify.annotations.Nullable;

/**
 * The region that holds the true position in 95 of 100 cases: all places at which the lines do not
 * disagree by much more than at the fix.
 *
 * <p>For a good cut it is the 95 % ellipse, or nearly. Where lines cross at a small angle it
 * reaches much further away from the marks than toward them, which no ellipse about the fix shows.
 * Measured with 100 000 draws a cell, two and three bearings of marks 1 to 4 NM off, good to 1, 3
 * or 5 degrees, at cuts from 5 to 90: it holds the true position in 95 to 98 of 100 fixes, never in
 * fewer than 94.5. It is within half a case of 95 at cuts of 30 and more with bearings good to 1
 * degree, 45 with 3 and 60 with 5; at 30 degrees it holds 96 with 3 and 97.5 with 5, at 45 degrees
 * 96.5 with 5. The surplus has its reason: a cut that is seen may be a smaller one that an error
 * has widened, and what such lines need is given to all that look like them. Where the lines may be
 * parallel for all that is known there is no fix ({@link NoFix.Reason#UNBOUNDED}); close to that
 * limit the region is bounded but may reach out of sight: look at {@link #reach}.
 *
 * <pre>{@code
 * FixRegion region = fix.region();
 * region.contains(ledge); // true: the ledge cannot be ruled out
 * region.reach(); // 1.4 NM: how far from the fix the true position may be
 * region.outline(); // places around it, to draw
 * }</pre>
 */
public final class FixRegion implements Serializable {

  private static final long serialVersionUID = 1L;

  /** Corners of the outline. */
  private static final int CORNERS = 72;

  /**
   * How well a corner of the outline is found, as a share of the way to it: what twenty halvings of
   * the last fifth leave, 1 cm in 50 km.
   */
  private static final double FOUND = 2e-7;

  /** An ellipse longer than this says nothing about a craft in sight of its marks, metres. */
  private static final double OUT_OF_SIGHT = 200_000.0;

  /** The outline is looked for to this many times the ellipse. */
  private static final double FURTHEST = 40.0;

  private final List<PositionLine> lines;
  private final @Nullable EstimatedPosition prior;
  private final EstimatedPosition fix;
  private final List<Position> otherPlaces;
  private final double limit;

  private FixRegion(
      List<PositionLine> lines,
      @Nullable EstimatedPosition prior,
      EstimatedPosition fix,
      List<Position> otherPlaces,
      double limit) {
    this.lines = lines;
    this.prior = prior;
    this.fix = fix;
    this.otherPlaces = otherPlaces;
    this.limit = limit;
  }

  /**
   * The region about a solution.
   *
   * @param otherPlaces where else the lines agree: what is nearer to one of them is not of this
   *     region
   */
  static FixRegion about(
      List<PositionLine> lines,
      @Nullable EstimatedPosition prior,
      EstimatedPosition fix,
      List<Position> otherPlaces) {
    LeastSquares squares = squares(lines, prior, fix);
    double lat = squares.lat();
    double lon = squares.lon();
    double limit =
        squares.sumOfSquaresAt(lat, lon)
            + FixLevel.squares(lopsidedness(squares, lat, lon, fix.covariance()));
    return new FixRegion(lines, prior, fix, otherPlaces, limit);
  }

  private static LeastSquares squares(
      List<PositionLine> lines, @Nullable EstimatedPosition prior, EstimatedPosition fix) {
    LeastSquares squares = new LeastSquares(lines, prior);
    squares.settleAt(fix.position().latitudeDegrees(), fix.position().longitudeDegrees());
    return squares;
  }

  /** The corners of the outline, metres east and north of the fix. */
  private double[][] corners() {
    LeastSquares squares = squares(lines, prior, fix);
    double[][] corners = new double[CORNERS][2];
    double[] axes = axes(fix.covariance());
    for (int i = 0; i < CORNERS; i++) {
      double angle = 2.0 * Math.PI * i / CORNERS;
      double east = axes[0] * Math.cos(angle) + axes[2] * Math.sin(angle);
      double north = axes[1] * Math.cos(angle) + axes[3] * Math.sin(angle);
      double share = edge(squares, fix.position(), east, north, limit);
      corners[i][0] = share * east;
      corners[i][1] = share * north;
    }
    return corners;
  }

  /** The two half axes of the ellipse, as metres east and north of each. */
  private static double[] axes(Covariance covariance) {
    ErrorEllipse ellipse = covariance.ellipse(0.95);
    double radians = Math.toRadians(ellipse.direction().degrees());
    double a = ellipse.semiMajorAxis().metres();
    double b = ellipse.semiMinorAxis().metres();
    return new double[] {
      a * Math.sin(radians), a * Math.cos(radians), b * Math.cos(radians), -b * Math.sin(radians)
    };
  }

  /** How many times a vector leads to the edge of the region. */
  private static double edge(
      LeastSquares squares, Position fix, double east, double north, double limit) {
    double lat = fix.latitudeDegrees();
    double lon = fix.longitudeDegrees();
    double inside = 0.0;
    double outside = 0.5;
    while (outside < FURTHEST && at(squares, lat, lon, outside * east, outside * north) <= limit) {
      inside = outside;
      outside *= 1.25;
    }
    return Edge.of(
        times -> at(squares, lat, lon, times * east, times * north) > limit,
        outside,
        inside,
        FOUND * outside);
  }

  private static double at(
      LeastSquares squares, double lat, double lon, double east, double north) {
    double[] latLon = new double[2];
    LocalPlane.fromPlane(lat, lon, east, north, latLon, 0);
    return squares.sumOfSquaresAt(latLon[0], latLon[1]);
  }

  /**
   * How much less what is observed changes toward the worse end of the long axis of the ellipse
   * than for straight lines: 1 for those, less where the lines draw together beyond it.
   */
  private static double lopsidedness(
      LeastSquares squares, double lat, double lon, Covariance covariance) {
    double[] axes = axes(covariance);
    if (!(Math.hypot(axes[0], axes[1]) < OUT_OF_SIGHT)) {
      return 0.0;
    }
    double least = 1.0;
    double[] end = new double[2];
    for (int sign = -1; sign <= 1; sign += 2) {
      LocalPlane.fromPlane(lat, lon, sign * axes[0], sign * axes[1], end, 0);
      least = Math.min(least, squares.squaresOfChangeTo(end[0], end[1]) / FixLevel.SQUARES);
    }
    return Math.max(0.0, least);
  }

  /** Whether the lines at a solution may meet anywhere along them, for all that is known. */
  static boolean isUnbounded(LeastSquares squares) {
    return !squares.hasCovariance()
        || FixLevel.isUnbounded(
            lopsidedness(squares, squares.lat(), squares.lon(), squares.covariance()));
  }

  /**
   * Whether a place is in the region.
   *
   * @param place the place
   * @return true if it cannot be ruled out
   */
  public boolean contains(Position place) {
    double metres = metres(fix.position(), place);
    return metres <= FURTHEST * fix.covariance().ellipse(0.95).semiMajorAxis().metres()
        && otherPlaces.stream().allMatch(other -> metres(other, place) >= metres)
        && squares(lines, prior, fix)
                .sumOfSquaresAt(place.latitudeDegrees(), place.longitudeDegrees())
            <= limit;
  }

  private static double metres(Position from, Position to) {
    double[] eastNorth = LocalPlane.toPlane(from, to);
    return Math.hypot(eastNorth[0], eastNorth[1]);
  }

  /**
   * Places around the region, to draw.
   *
   * @return 72 corners in order, not closed, closer to each other at the ends of a long region;
   *     unmodifiable
   */
  public List<Position> outline() {
    List<Position> outline = new ArrayList<>();
    for (double[] corner : corners()) {
      outline.add(LocalPlane.fromPlane(fix.position(), corner[0], corner[1]));
    }
    return List.copyOf(outline);
  }

  /**
   * The size of the region.
   *
   * @return its area, square metres, within the corners of the outline
   */
  public double areaSquareMetres() {
    double[][] corners = corners();
    double area = 0.0;
    for (int i = 0; i < CORNERS; i++) {
      double[] a = corners[i];
      double[] b = corners[(i + 1) % CORNERS];
      area += 0.5 * (a[1] * b[0] - a[0] * b[1]);
    }
    return Math.abs(area);
  }

  /**
   * How far from the fix the region reaches.
   *
   * @return the distance of the furthest corner of the outline
   */
  public Distance reach() {
    double reach = 0.0;
    for (double[] corner : corners()) {
      reach = Math.max(reach, Math.hypot(corner[0], corner[1]));
    }
    return Distance.ofMetres(reach);
  }

  /** Reach and area, for people. */
  @Override
  public String toString() {
    return "region that holds the true position in 95 of 100 cases, to "
        + Math.round(reach().metres())
        + " m from the fix, "
        + Math.round(areaSquareMetres() / 1e4) / 100.0
        + " km²";
  }
}
