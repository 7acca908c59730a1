package org.ferryglide.examples.batch;

import java.util.List;
import org.ferryglide.nav.geodesy.ClosestPoint;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.Geodesics;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.LegComparison;
import org.ferryglide.nav.geodesy.LegComparisons;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.position.Position;

/** Operations on legs: rhumb lines, geodesics, how they differ, and cross-track distance. */
final class LegOperations {
  private static final List<String> ENDS = List.of("lat1", "lon1", "lat2", "lon2");

  /** More than once round the earth in every direction; winding rhumb lines are longer still. */
  private static final double LONGEST_METRES = 1e8;

  private LegOperations() {}

  static Operation rhumbInverse(Ellipsoid ellipsoid) {
    return Operation.ofRows(
        "rhumb-inverse",
        ENDS,
        List.of(Added.direction("course_deg"), Added.number("distance_m", 4)),
        () -> {
          double[] out = new double[RhumbLines.WIDTH];
          return (row, figures) -> {
            RhumbLines.inverse(
                ellipsoid,
                row.latitude(0),
                row.longitude(1),
                row.latitude(2),
                row.longitude(3),
                out,
                0);
            figures.add(out[RhumbLines.COURSE]);
            figures.add(out[RhumbLines.LENGTH]);
          };
        });
  }

  static Operation rhumbDirect(Ellipsoid ellipsoid) {
    return Operation.ofRows(
        "rhumb-direct",
        List.of("lat1", "lon1", "course_deg", "distance_m"),
        List.of(Added.latitude("lat2"), Added.longitude("lon2")),
        () -> {
          double[] out = new double[RhumbLines.WIDTH];
          return (row, figures) -> {
            RhumbLines.direct(
                ellipsoid,
                row.latitude(0),
                row.longitude(1),
                row.direction(2),
                row.number(3, 0.0, LONGEST_METRES, "metres"),
                out,
                0);
            if (Double.isNaN(out[RhumbLines.LONGITUDE])) {
              throw row.refused(3, "must not carry a rhumb line past a pole");
            }
            figures.add(out[RhumbLines.LATITUDE]);
            figures.add(out[RhumbLines.LONGITUDE]);
          };
        });
  }

  static Operation geodesicInverse(Ellipsoid ellipsoid) {
    return Operation.ofRows(
        "geodesic-inverse",
        ENDS,
        List.of(
            Added.direction("initial_deg"),
            Added.direction("final_deg"),
            Added.number("distance_m", 4)),
        () -> {
          double[] out = new double[Geodesics.WIDTH];
          return (row, figures) -> {
            Geodesics.inverse(
                ellipsoid,
                row.latitude(0),
                row.longitude(1),
                row.latitude(2),
                row.longitude(3),
                out,
                0);
            figures.add(out[Geodesics.INITIAL_COURSE]);
            figures.add(out[Geodesics.FINAL_COURSE]);
            figures.add(out[Geodesics.LENGTH]);
          };
        });
  }

  static Operation geodesicDirect(Ellipsoid ellipsoid) {
    return Operation.ofRows(
        "geodesic-direct",
        List.of("lat1", "lon1", "initial_deg", "distance_m"),
        List.of(Added.latitude("lat2"), Added.longitude("lon2"), Added.direction("final_deg")),
        () -> {
          double[] out = new double[Geodesics.WIDTH];
          return (row, figures) -> {
            Geodesics.direct(
                ellipsoid,
                row.latitude(0),
                row.longitude(1),
                row.direction(2),
                row.number(3, 0.0, LONGEST_METRES, "metres"),
                out,
                0);
            figures.add(out[Geodesics.LATITUDE]);
            figures.add(out[Geodesics.LONGITUDE]);
            figures.add(out[Geodesics.COURSE]);
          };
        });
  }

  static Operation legErrors(Ellipsoid ellipsoid) {
    return Operation.ofRows(
        "leg-errors",
        ENDS,
        List.of(
            Added.number("excess_m", 6),
            Added.number("separation_m", 6),
            Added.number("bearing_difference_deg", 9)),
        () -> {
          double[] out = new double[LegComparisons.WIDTH_WITH_SEPARATION];
          return (row, figures) -> {
            LegComparisons.compareWithSeparation(
                ellipsoid,
                row.latitude(0),
                row.longitude(1),
                row.latitude(2),
                row.longitude(3),
                out,
                0);
            figures.add(out[LegComparisons.EXCESS]);
            double separation = out[LegComparisons.SEPARATION];
            figures.add(Double.isNaN(separation) ? searched(ellipsoid, row) : separation);
            figures.add(out[LegComparisons.INITIAL_COURSE_DIFFERENCE]);
          };
        });
  }

  /** The greatest separation where the quick form has none: of long legs and near the poles. */
  private static double searched(Ellipsoid ellipsoid, Row row) {
    Position start = Position.ofDegrees(row.latitude(0), row.longitude(1));
    Position end = Position.ofDegrees(row.latitude(2), row.longitude(3));
    return LegComparison.between(ellipsoid, start, end).greatestSeparation().metres();
  }

  static Operation crossTrack(Ellipsoid ellipsoid, boolean geodesic) {
    return Operation.ofRows(
        "cross-track",
        List.of("latA", "lonA", "latB", "lonB", "latP", "lonP"),
        List.of(
            Added.number("cross_track_m", 4),
            Added.number("along_track_m", 4),
            Added.latitude("closest_lat"),
            Added.longitude("closest_lon")),
        () ->
            (row, figures) -> {
              Position start = Position.ofDegrees(row.latitude(0), row.longitude(1));
              Position end = Position.ofDegrees(row.latitude(2), row.longitude(3));
              Leg leg =
                  geodesic
                      ? GeodesicLeg.between(ellipsoid, start, end)
                      : RhumbLeg.between(ellipsoid, start, end);
              ClosestPoint closest =
                  leg.line().closestTo(Position.ofDegrees(row.latitude(4), row.longitude(5)));
              figures.add(closest.crossTrack().metres());
              figures.add(closest.alongTrack().metres());
              figures.add(closest.position().latitudeDegrees());
              figures.add(closest.position().longitudeDegrees());
            });
  }
}
