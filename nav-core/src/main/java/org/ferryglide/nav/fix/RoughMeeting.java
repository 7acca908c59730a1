package org.ferryglide.nav.fix;

import java.util.List;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;

/** Where position lines meet more or less: a start for the exact solution. */
final class RoughMeeting {
  private RoughMeeting() {}

  /** A normal matrix with less determinant than this is of parallel lines. */
  private static final double PARALLEL = 3e-7;

  /**
   * Where the bearings and straight lines among these meet in the plane about the first of their
   * marks: latitude and longitude, degrees; null if fewer than two cross.
   */
  static double @Nullable [] inThePlane(PositionLine[] lines) {
    double[] origin = null;
    double[] sight = new double[3];
    double aee = 0.0;
    double ann = 0.0;
    double aen = 0.0;
    double ce = 0.0;
    double cn = 0.0;
    double[] pointAndDegrees = new double[3];
    for (PositionLine line : lines) {
      if (!pointAndDirection(line, pointAndDegrees, sight)) {
        continue;
      }
      if (origin == null) {
        origin = new double[] {pointAndDegrees[0], pointAndDegrees[1]};
      }
      SightLine.quick(origin[0], origin[1], pointAndDegrees[0], pointAndDegrees[1], sight);
      double bearing = Math.toRadians(sight[0]);
      double across = Math.cos(Math.toRadians(pointAndDegrees[2]));
      double along = -Math.sin(Math.toRadians(pointAndDegrees[2]));
      double constant = sight[2] * (across * Math.sin(bearing) + along * Math.cos(bearing));
      aee += across * across;
      ann += along * along;
      aen += across * along;
      ce += across * constant;
      cn += along * constant;
    }
    double determinant = aee * ann - aen * aen;
    if (origin == null || !(determinant > PARALLEL)) {
      return null;
    }
    double east = (ann * ce - aen * cn) / determinant;
    double north = (aee * cn - aen * ce) / determinant;
    double[] start = new double[2];
    RhumbLines.direct(
        origin[0],
        origin[1],
        Math.toDegrees(Math.atan2(east, north)),
        Math.hypot(east, north),
        start,
        0);
    return start;
  }

  /** Writes a point of a nearly straight line and its direction; false if the line is a circle. */
  private static boolean pointAndDirection(PositionLine line, double[] out, double[] scratch) {
    Position point;
    if (line instanceof BearingLine bearing) {
      point = bearing.mark();
      out[2] = bearing.bearing().degrees();
    } else if (line instanceof TransitLine transit) {
      point = transit.front();
      SightLine.quick(
          point.latitudeDegrees(),
          point.longitudeDegrees(),
          transit.rear().latitudeDegrees(),
          transit.rear().longitudeDegrees(),
          scratch);
      out[2] = scratch[0];
    } else if (line instanceof StraightLine straight) {
      point = straight.point();
      out[2] = straight.direction().degrees();
    } else if (line instanceof TransferredLine moved
        && pointAndDirection(moved.original(), out, scratch)) {
      RhumbLines.direct(out[0], out[1], moved.course().degrees(), moved.run().metres(), scratch, 0);
      out[0] = scratch[0];
      out[1] = scratch[1];
      return true;
    } else {
      return false;
    }
    out[0] = point.latitudeDegrees();
    out[1] = point.longitudeDegrees();
    return true;
  }

  /** Off the mark of the first bearing by the first distance; null without both. */
  static double @Nullable [] backedOff(List<PositionLine> lines) {
    BearingLine bearing = null;
    DistanceCircle circle = null;
    for (PositionLine line : lines) {
      if (line instanceof BearingLine found && bearing == null) {
        bearing = found;
      } else if (line instanceof DistanceCircle found && circle == null) {
        circle = found;
      }
    }
    if (bearing == null || circle == null) {
      return null;
    }
    double[] start = new double[2];
    RhumbLines.direct(
        bearing.mark().latitudeDegrees(),
        bearing.mark().longitudeDegrees(),
        bearing.bearing().degrees() + 180.0,
        circle.distance().metres(),
        start,
        0);
    return start;
  }
}
