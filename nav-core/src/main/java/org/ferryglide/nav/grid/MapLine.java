package org.ferryglide.nav.grid;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Top;
import org.ferryglide.nav.bearing.GridBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/**
 * The straight pencil line between two points of a land map, and how it differs from the rhumb line
 * that a compass keeps and from the geodesic that the eye follows.
 *
 * <pre>{@code
 * MapLine line = MapLine.between(landing, island, MapGrid.utm(UtmZone.containing(landing)));
 * line.gridBearing(); // what the protractor reads
 * line.arcToChordDegreesAtStart(); // thousandths of a degree on a kayak's leg
 * line.greatestSeparationOfRhumb().distance(); // how far the rhumb line strays from the pencil
 * }</pre>
 *
 * <p>A geodesic is bent a little on the map, concave towards the central meridian; the angle
 * between its beginning and the straight line is the arc-to-chord correction. A rhumb line is bent
 * more, because convergence changes along it. Both are found from the lines themselves and the
 * exact projection, not from the usual approximations.
 */
public final class MapLine implements Serializable {
  private static final long serialVersionUID = 1L;

  /** The farthest place is found to this part of the line: 1 mm of 100 km. */
  private static final double PART_OF_THE_LINE = 1e-8;

  private final GridPoint start;
  private final GridPoint end;
  private final GeodesicLeg geodesic;
  private final RhumbLeg rhumb;

  private MapLine(GridPoint start, GridPoint end) {
    this.start = start;
    this.end = end;
    geodesic = GeodesicLeg.between(start.position(), end.position());
    rhumb = RhumbLeg.between(start.position(), end.position());
  }

  /**
   * Draws the line.
   *
   * @param start where it begins
   * @param end where it ends, elsewhere
   * @param grid the grid of the map
   * @return the line
   * @throws IllegalArgumentException if start and end are the same, or a point is too far away for
   *     the grid
   */
  public static MapLine between(Position start, Position end, MapGrid grid) {
    if (start.equals(end)) {
      throw new IllegalArgumentException(
          "start and end of a line must differ, but both were " + start);
    }
    return new MapLine(grid.at(start), grid.at(end));
  }

  /**
   * Where the line begins.
   *
   * @return the start
   */
  public GridPoint start() {
    return start;
  }

  /**
   * Where the line ends.
   *
   * @return the end
   */
  public GridPoint end() {
    return end;
  }

  /**
   * The rhumb line between the same points.
   *
   * @return the leg
   */
  public RhumbLeg rhumb() {
    return rhumb;
  }

  /**
   * The shortest line between the same points.
   *
   * @return the leg
   */
  public GeodesicLeg geodesic() {
    return geodesic;
  }

  /**
   * What a protractor reads on the map, the same all along the line.
   *
   * @return the bearing from grid north
   */
  public GridBearing gridBearing() {
    return GridBearing.ofDegrees(chordDegrees(), start.grid().name());
  }

  private double chordDegrees() {
    return Math.toDegrees(Math.atan2(eastMetres(), northMetres()));
  }

  private double eastMetres() {
    return end.easting().metres() - start.easting().metres();
  }

  private double northMetres() {
    return end.northing().metres() - start.northing().metres();
  }

  /**
   * The length of the pencil line times the map's printed scale; on the ground it is this over
   * {@link #meanScale}.
   *
   * @return the length in metres of the grid
   */
  public Distance lengthOnMap() {
    return Distance.ofMetres(Math.hypot(eastMetres(), northMetres()));
  }

  /**
   * How much the map stretches along the line, by Simpson's rule from start, middle and end.
   *
   * @return metres on the map for a metre on the ground
   */
  public double meanScale() {
    double middle =
        start
            .grid()
            .atMetres(
                start.easting().metres() + 0.5 * eastMetres(),
                start.northing().metres() + 0.5 * northMetres())
            .scale();
    // of the ground's length for each metre of map, since the line is straight on the map
    double inverse = (1.0 / start.scale() + 4.0 / middle + 1.0 / end.scale()) / 6.0;
    return 1.0 / inverse;
  }

  /**
   * The true course of the pencil line at its start.
   *
   * @return grid bearing plus convergence at the start
   */
  public TrueBearing trueCourseAtStart() {
    return start.convergence().toTrue(gridBearing());
  }

  /**
   * The true course of the pencil line at its end.
   *
   * @return grid bearing plus convergence at the end
   */
  public TrueBearing trueCourseAtEnd() {
    return end.convergence().toTrue(gridBearing());
  }

  /**
   * The arc-to-chord correction at the start.
   *
   * @return the turn from the pencil line to the geodesic, degrees, clockwise positive
   */
  public double arcToChordDegreesAtStart() {
    return Angles.turn(trueCourseAtStart().degrees(), geodesic.initialCourse().degrees());
  }

  /**
   * The arc-to-chord correction at the end.
   *
   * @return the turn from the pencil line to the geodesic, degrees, clockwise positive
   */
  public double arcToChordDegreesAtEnd() {
    return Angles.turn(trueCourseAtEnd().degrees(), geodesic.finalCourse().degrees());
  }

  /**
   * How the rhumb line leaves the pencil line.
   *
   * @return the turn from the pencil line to the rhumb line at the start, degrees, clockwise
   *     positive
   */
  public double rhumbDegreesAtStart() {
    return Angles.turn(trueCourseAtStart().degrees(), rhumb.course().degrees());
  }

  /**
   * How the rhumb line comes back to the pencil line.
   *
   * @return the turn from the pencil line to the rhumb line at the end, degrees, clockwise positive
   */
  public double rhumbDegreesAtEnd() {
    return Angles.turn(trueCourseAtEnd().degrees(), rhumb.course().degrees());
  }

  /**
   * Where the rhumb line strays farthest from the pencil line.
   *
   * @return distance and place
   */
  public Separation greatestSeparationOfRhumb() {
    return greatestSeparation(rhumb);
  }

  /**
   * Where the geodesic strays farthest from the pencil line.
   *
   * @return distance and place
   */
  public Separation greatestSeparationOfGeodesic() {
    return greatestSeparation(geodesic);
  }

  private Separation greatestSeparation(Leg leg) {
    int segments = 32; // lines bend once, or twice across the central meridian or the equator
    double whole = leg.length().metres();
    int best = 1;
    for (int i = 2; i < segments; i++) {
      if (Math.abs(sideMetres(leg, whole * i / segments))
          > Math.abs(sideMetres(leg, whole * best / segments))) {
        best = i;
      }
    }
    double along =
        Top.of(
            metres -> Math.abs(sideMetres(leg, metres)),
            whole * (best - 1) / segments,
            whole * (best + 1) / segments,
            PART_OF_THE_LINE * whole);
    return new Separation(
        Distance.ofMetres(sideMetres(leg, along)), leg.pointAt(Distance.ofMetres(along)));
  }

  /** Distance on the ground to the right of the pencil line, near enough a straight offset. */
  private double sideMetres(Leg leg, double alongMetres) {
    GridPoint point = start.grid().at(leg.pointAt(Distance.ofMetres(alongMetres)));
    double east = point.easting().metres() - start.easting().metres();
    double north = point.northing().metres() - start.northing().metres();
    double right = (east * northMetres() - north * eastMetres()) / lengthOnMap().metres();
    return right / point.scale();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof MapLine that && start.equals(that.start) && end.equals(that.end);
  }

  @Override
  public int hashCode() {
    return 31 * start.hashCode() + end.hashCode();
  }

  /** Both ends. */
  @Override
  public String toString() {
    return "from " + start + " to " + end;
  }

  /**
   * How far a line strays from the pencil line, and where.
   *
   * <pre>{@code
   * MapLine.Separation most = line.greatestSeparationOfRhumb();
   * most.distance().metres(); // 0.7: to the right of the pencil line
   * }</pre>
   *
   * @param distance distance on the ground, positive to the right of the pencil line as seen from
   *     its start
   * @param where the point of the line that is farthest
   */
  public record Separation(Distance distance, Position where) implements Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * Takes both parts.
     *
     * @param distance distance on the ground, positive to the right
     * @param where the point that is farthest
     */
    public Separation {
      Objects.requireNonNull(distance, "distance");
      Objects.requireNonNull(where, "where");
    }
  }
}
