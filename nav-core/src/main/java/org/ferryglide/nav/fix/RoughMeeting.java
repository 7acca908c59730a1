package org.ferryglide.nav.fix;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.plane.LocalPlane;
import org.jspecify.annotations.Nullable;

/** Where position lines meet more or less, in a plane: starts for the exact solution. */
final class RoughMeeting {
  private RoughMeeting() {}

  /** A normal matrix with less determinant than this is of parallel lines. */
  private static final double PARALLEL = 3e-7;

  /** A line as the plane has it: a point and a direction, or a centre and a radius. */
  private record Shape(boolean round, double east, double north, double degreesOrMetres) {}

  /** The lines in the plane about the first of their marks. */
  private record Sketch(double originLat, double originLon, List<Shape> shapes) {}

  /**
   * Places to start from, latitude and longitude in degrees: where the straight lines meet best if
   * there is no circle, every meeting of two lines otherwise.
   */
  static List<double[]> of(LineEquation[] equations) {
    Sketch sketch = sketch(equations);
    List<double[]> eastNorth = new ArrayList<>();
    boolean round = sketch.shapes.stream().anyMatch(Shape::round);
    if (round) {
      for (int i = 0; i < sketch.shapes.size(); i++) {
        for (int j = 0; j < i; j++) {
          meet(sketch.shapes.get(i), sketch.shapes.get(j), eastNorth);
        }
      }
    }
    double[] straight = meetingOfStraightLines(sketch.shapes);
    if (straight != null) {
      eastNorth.add(straight);
    }
    List<double[]> starts = new ArrayList<>();
    for (double[] place : eastNorth) {
      double[] latLon = new double[2];
      LocalPlane.fromPlane(sketch.originLat, sketch.originLon, place[0], place[1], latLon, 0);
      if (!Double.isNaN(latLon[0] + latLon[1])) {
        starts.add(latLon);
      }
    }
    return starts;
  }

  private static Sketch sketch(LineEquation[] equations) {
    List<Shape> shapes = new ArrayList<>();
    double[] point = new double[3];
    double[] scratch = new double[6];
    double[] origin = null;
    for (LineEquation equation : equations) {
      boolean round = equation.circle(point, scratch);
      if (!round && !equation.straight(point, scratch)) {
        continue;
      }
      if (origin == null) {
        origin = new double[] {point[0], point[1]};
      }
      LocalPlane.toPlane(origin[0], origin[1], point[0], point[1], scratch, 0);
      shapes.add(new Shape(round, scratch[0], scratch[1], point[2]));
    }
    return origin == null ? new Sketch(0.0, 0.0, shapes) : new Sketch(origin[0], origin[1], shapes);
  }

  /** Least squares of the distances from all straight lines; null if fewer than two cross. */
  private static double @Nullable [] meetingOfStraightLines(List<Shape> shapes) {
    double aee = 0.0;
    double ann = 0.0;
    double aen = 0.0;
    double ce = 0.0;
    double cn = 0.0;
    for (Shape shape : shapes) {
      if (shape.round) {
        continue;
      }
      double across = Math.cos(Math.toRadians(shape.degreesOrMetres));
      double along = -Math.sin(Math.toRadians(shape.degreesOrMetres));
      double constant = across * shape.east + along * shape.north;
      aee += across * across;
      ann += along * along;
      aen += across * along;
      ce += across * constant;
      cn += along * constant;
    }
    double determinant = aee * ann - aen * aen;
    return determinant > PARALLEL
        ? new double[] {(ann * ce - aen * cn) / determinant, (aee * cn - aen * ce) / determinant}
        : null;
  }

  /** Adds where two shapes meet, one of them round; where they just fail to, the nearest place. */
  private static void meet(Shape a, Shape b, List<double[]> places) {
    if (a.round && b.round) {
      double east = b.east - a.east;
      double north = b.north - a.north;
      double apart = Math.hypot(east, north);
      double along =
          (apart * apart
                  + (a.degreesOrMetres - b.degreesOrMetres)
                      * (a.degreesOrMetres + b.degreesOrMetres))
              / (2.0 * apart);
      if (apart > 0.0) {
        addBoth(a, along, east / apart, north / apart, places);
      }
    } else if (a.round) {
      double radians = Math.toRadians(b.degreesOrMetres);
      double across =
          (b.east - a.east) * Math.cos(radians) - (b.north - a.north) * Math.sin(radians);
      addBoth(a, across, Math.cos(radians), -Math.sin(radians), places);
    } else if (b.round) {
      meet(b, a, places);
    }
  }

  /** The points of a circle that lie so far along a direction from its centre. */
  private static void addBoth(
      Shape circle, double along, double east, double north, List<double[]> places) {
    double radius = circle.degreesOrMetres;
    double beside = Math.sqrt(Math.max(0.0, (radius - along) * (radius + along)));
    double near = Math.max(-radius, Math.min(radius, along));
    places.add(
        new double[] {
          circle.east + near * east - beside * north, circle.north + near * north + beside * east
        });
    if (beside > 0.0) {
      places.add(
          new double[] {
            circle.east + near * east + beside * north, circle.north + near * north - beside * east
          });
    }
  }

  /** The first bearing that points away from its mark where the straight lines meet, or -1. */
  static int reversedWhereLinesMeet(LineEquation[] equations) {
    for (double[] meeting : of(equations)) {
      int reversed = reversedBearing(equations, meeting[0], meeting[1]);
      if (reversed >= 0) {
        return reversed;
      }
    }
    return -1;
  }

  /** The first bearing that points away from its mark at a place, or -1. */
  static int reversedBearing(LineEquation[] equations, double lat, double lon) {
    double[] scratch = new double[6];
    for (int i = 0; i < equations.length; i++) {
      if (equations[i].pointsAway(lat, lon, scratch)) {
        return i;
      }
    }
    return -1;
  }
}
