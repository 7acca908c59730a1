package org.ferryglide.nav.geodesy;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;

/**
 * Whether and where two short legs cross, decided on a Mercator chart.
 *
 * <p>The chart keeps angles: a rhumb line is straight on it, and the courses of a geodesic stay
 * within a narrow cone, so that by the mean value theorem each chord lies in it. Hence
 *
 * <ul>
 *   <li>a leg keeps within half its chord times the tangent of the cone of that chord, and two legs
 *       whose strips are apart along either chord or across it do not meet;
 *   <li>two legs whose cones have no direction in common, either way round, meet once at most.
 * </ul>
 *
 * <p>What the strips leave over is found by Newton's method with the bends of both lines; it starts
 * from the crossing of the chords, some metres off. Where the cones overlap and the strips too, the
 * question is left to {@link CrossingSearch}.
 */
final class ShortCrossing {
  /** Longest arc, about 500 km; it spans less than 60° of longitude to the greatest latitude. */
  private static final double LONGEST_ARC = 0.078;

  private static final double GREATEST_LATITUDE = 85.0;

  /** Farther apart the chart must not be taken across the date line without thought. */
  private static final double GREATEST_DIFFERENCE_DEGREES = 60.0;

  /** A last step's cube times the square of the bend, of a line or the earth: what it leaves. */
  private static final double NO_GAIN_METRES = 2e-9;

  /** Sine of the least angle between cones that are held to be apart. */
  private static final double LEAST_SINE = 1e-7;

  /** Widest half of a cone, as a tangent, for the arguments above. */
  private static final double WIDEST_CONE = 0.5;

  private static final int MOST_STEPS = 12;

  private final Track a;
  private final Track b;
  private final Ellipsoid ellipsoid;

  /** The bend of the earth, radians a metre, at least. */
  private final double earth;

  private final double[] pointA = new double[3];
  private final double[] pointB = new double[3];
  private final double[] sight = new double[3];
  private double alongA;
  private double alongB;
  private double courseB;

  private ShortCrossing(Track a, Track b) {
    this.a = a;
    this.b = b;
    ellipsoid = a.ellipsoid;
    earth = 1.0 / NearestPoint.leastRadius(ellipsoid);
  }

  /** The crossings, or null where they cannot be decided here. */
  static @Nullable Crossings of(Leg first, Leg second) {
    if (!(isShort(first) && isShort(second))) {
      return null;
    }
    Position origin = first.start();
    double away =
        Degrees.longitudeDifference(origin.longitudeDegrees(), second.start().longitudeDegrees());
    if (!(Math.abs(away) <= GREATEST_DIFFERENCE_DEGREES)) {
      return null;
    }
    Track a = new Track(first, 0.0, 0.0);
    Ellipsoid ellipsoid = first.ellipsoid();
    double north = northing(ellipsoid, origin, second.start());
    Track b = new Track(second, Degrees.toRadians(away), north);
    if (!(a.sag <= WIDEST_CONE * a.chord && b.sag <= WIDEST_CONE * b.chord)) {
      return null;
    }
    double polar =
        Math.max(
            Math.max(latitude(first.start()), latitude(first.end())),
            Math.max(latitude(second.start()), latitude(second.end())));
    double margin =
        2.0
            * CrossingSearch.TOLERANCE_METRES
            / (ellipsoid.semiMajorAxisMetres() * Degrees.cosine(polar));
    if (a.isApartFrom(b, margin) || b.isApartFrom(a, margin)) {
      return new Crossings(List.of(), false);
    }
    return a.hasDirectionOf(b) ? null : new ShortCrossing(a, b).crossing();
  }

  private static boolean isShort(Leg leg) {
    double metres = leg.length().metres();
    return metres > 0.0
        && metres <= LONGEST_ARC * leg.ellipsoid().semiMajorAxisMetres()
        && latitude(leg.start()) <= GREATEST_LATITUDE
        && latitude(leg.end()) <= GREATEST_LATITUDE;
  }

  private static double latitude(Position position) {
    return Math.abs(position.latitudeDegrees());
  }

  /** From one point to another on the chart, radians at the equator. */
  private static double northing(Ellipsoid ellipsoid, Position from, Position to) {
    double lat1 = from.latitudeDegrees();
    double lat2 = to.latitudeDegrees();
    double sinHalf = Math.sin(0.5 * Degrees.toRadians(lat2 - lat1));
    double phi1 = Degrees.toRadians(lat1);
    double sin1 = Math.sin(phi1);
    double cos1 = Math.cos(phi1);
    double sinDelta = 2.0 * sinHalf * Math.sqrt(1.0 - sinHalf * sinHalf);
    return RhumbMath.isometricStep(ellipsoid, sin1, cos1, sinDelta, 2.0 * sinHalf * sinHalf);
  }

  /** A leg on the chart: its chord, the edges of its cone and how far it strays from the chord. */
  private static final class Track {
    private final Line line;
    private final Ellipsoid ellipsoid;
    private final double length;
    private final double sineOfCourse;
    private final double startX;
    private final double startY;
    private final double dx;
    private final double dy;
    private final double chord;
    private double sin1;
    private double cos1;
    private double sin2;
    private double cos2;
    private double sag;

    /** From the first course to the last, radians. */
    private double turn;

    /** Metres in a unit of the chart, as shares of those at the equator of a sphere. */
    private final double startScale;

    private final double endScale;

    Track(Leg leg, double startX, double startY) {
      line = leg.line();
      ellipsoid = leg.ellipsoid();
      length = leg.length().metres();
      this.startX = startX;
      this.startY = startY;
      Position start = leg.start();
      Position end = leg.end();
      dx =
          Degrees.toRadians(
              Degrees.longitudeDifference(start.longitudeDegrees(), end.longitudeDegrees()));
      dy = northing(ellipsoid, start, end);
      startScale = Degrees.cosine(start.latitudeDegrees());
      endScale = Degrees.cosine(end.latitudeDegrees());
      chord = Math.sqrt(dx * dx + dy * dy);
      if (line instanceof RhumbLine rhumb) {
        sineOfCourse = rhumb.sineOfCourse();
        sin1 = sineOfCourse;
        cos1 = Degrees.cosine(leg.initialCourse().degrees());
        sin2 = sin1;
        cos2 = cos1;
      } else {
        sineOfCourse = 0.0;
        double first = leg.initialCourse().degrees();
        double last = leg.finalCourse().degrees();
        double acrossEquator = 0.0; // the course turns one way only in each hemisphere
        if (start.latitudeDegrees() * end.latitudeDegrees() < 0.0) {
          double polar = Math.max(latitude(start), latitude(end));
          acrossEquator =
              Degrees.fromRadians(
                  length * Degrees.toRadians(polar) * 1.01 / NearestPoint.leastRadius(ellipsoid));
          acrossEquator /= Degrees.cosine(polar);
        }
        double degrees = Math.IEEEremainder(last - first, 360.0);
        turn = Degrees.toRadians(degrees);
        double wider = Math.copySign(acrossEquator, turn);
        sin1 = Degrees.sine(first - wider);
        cos1 = Degrees.cosine(first - wider);
        sin2 = Degrees.sine(first + degrees + wider);
        cos2 = Degrees.cosine(first + degrees + wider);
        sag = 0.5 * chord * Math.max(tangent(sin1, cos1), tangent(sin2, cos2));
      }
    }

    /** Tangent of the angle between the chord and a direction; infinite from 90° on. */
    private double tangent(double sine, double cosine) {
      double dot = dx * sine + dy * cosine;
      return dot > 0.0 ? Math.abs(dx * cosine - dy * sine) / dot : Double.POSITIVE_INFINITY;
    }

    /** Whether the strips of both are apart, seen across this chord or along it. */
    boolean isApartFrom(Track other, double margin) {
      double east = dx / chord;
      double north = dy / chord;
      double x = other.startX - startX;
      double y = other.startY - startY;
      double across1 = x * north - y * east;
      double across2 = across1 + other.dx * north - other.dy * east;
      double room = sag + other.sag + margin;
      if (Math.min(across1, across2) > room || Math.max(across1, across2) < -room) {
        return true;
      }
      double ahead1 = x * east + y * north;
      double ahead2 = ahead1 + other.dx * east + other.dy * north;
      double beyond = other.sag + margin;
      return Math.min(ahead1, ahead2) > chord + beyond || Math.max(ahead1, ahead2) < -beyond;
    }

    /** Whether a direction is common to both cones, either way round. */
    boolean hasDirectionOf(Track other) {
      double first = other.sin1 * cos1 - other.cos1 * sin1;
      return !(isBeside(other.sin1, other.cos1, first) && isBeside(other.sin2, other.cos2, first));
    }

    private boolean isBeside(double sine, double cosine, double side) {
      double sign = Math.copySign(1.0, side);
      return sign * (sine * cos1 - cosine * sin1) > LEAST_SINE
          && sign * (sine * cos2 - cosine * sin2) > LEAST_SINE;
    }

    /** Takes a course into the cone, where a geodesic is carried beyond its ends. */
    void widenTo(double courseDegrees) {
      if (sineOfCourse != 0.0 || line instanceof RhumbLine) {
        return;
      }
      double sine = Degrees.sine(courseDegrees);
      double cosine = Degrees.cosine(courseDegrees);
      double along1 = Math.abs(sine * cos1 - cosine * sin1);
      double along2 = Math.abs(sine * cos2 - cosine * sin2);
      double width = Math.abs(sin2 * cos1 - cos2 * sin1);
      if (along2 > width && along2 >= along1) {
        sin1 = sine;
        cos1 = cosine;
      } else if (along1 > width) {
        sin2 = sine;
        cos2 = cosine;
      }
    }

    /** How far the leg strays to port of its chord, as a share of it: near enough a parabola. */
    double toPort(double part) {
      return 0.5 * turn * part * (1.0 - part);
    }

    /** How far along the leg a part of its chord is: the chart's scale grows near enough evenly. */
    double along(double part) {
      return length
          * part
          * (startScale + 0.5 * part * (endScale - startScale))
          / (0.5 * (startScale + endScale));
    }

    /** Curvature to starboard, and how fast a geodesic's course turns, of a parallel here. */
    private double parallel(double[] point) {
      double phi = Degrees.toRadians(point[0]);
      return LegComparisons.parallelCurvature(ellipsoid, Math.sin(phi), Math.cos(phi));
    }

    double bend(double[] point) {
      return sineOfCourse == 0.0 ? 0.0 : -sineOfCourse * parallel(point);
    }

    double courseAfter(double[] point, double step) {
      return line instanceof RhumbLine
          ? point[2]
          : point[2] + Degrees.fromRadians(step * parallel(point) * Degrees.sine(point[2]));
    }
  }

  /** The one crossing there may be; null if Newton's method does not settle it. */
  private @Nullable Crossings crossing() {
    if (!meet()) {
      return null;
    }
    double sine = Degrees.sine(courseB - pointA[2]);
    double slack = CrossingSearch.slackMetres(sine);
    List<Crossings.Crossing> points = new ArrayList<>(1);
    if (alongA >= -slack
        && alongA <= a.length + slack
        && alongB >= -slack
        && alongB <= b.length + slack) {
      double onA = atEnd(alongA, a.length, slack);
      double onB = atEnd(alongB, b.length, slack);
      SmallStep.take(ellipsoid, a.line instanceof RhumbLine, onA - alongA, pointA);
      points.add(
          new Crossings.Crossing(
              new Position(pointA[0], pointA[1]),
              Distance.ofMetres(onA),
              Distance.ofMetres(onB),
              Angles.turn(pointA[2], courseB)));
    } else {
      a.widenTo(pointA[2]);
      b.widenTo(courseB);
      if (a.hasDirectionOf(b)) {
        return null; // then they might meet elsewhere as well
      }
    }
    return new Crossings(points, false);
  }

  /** A place within the rounding of an end is the end. */
  private static double atEnd(double along, double length, double slack) {
    return along <= slack ? 0.0 : along >= length - slack ? length : along;
  }

  /** The crossing of the chords, and once more with what the legs stray from them there. */
  private void start() {
    double sine = a.dx * b.dy - a.dy * b.dx;
    double x = b.startX - a.startX;
    double y = b.startY - a.startY;
    double partA = within((b.dy * x - b.dx * y) / sine);
    double partB = within((a.dy * x - a.dx * y) / sine);
    double offA = a.toPort(partA);
    double offB = b.toPort(partB);
    x += offA * a.dy - offB * b.dy;
    y -= offA * a.dx - offB * b.dx;
    alongA = a.along(within((b.dy * x - b.dx * y) / sine));
    alongB = b.along(within((a.dy * x - a.dx * y) / sine));
  }

  private static double within(double part) {
    return Math.max(-0.5, Math.min(1.5, part));
  }

  /** Newton's method from the crossing of the chords. */
  private boolean meet() {
    start();
    for (int i = 0; i < MOST_STEPS; i++) {
      a.line.pointAt(alongA, pointA, 0);
      b.line.pointAt(alongB, pointB, 0);
      Geodesics.inverse(ellipsoid, pointA[0], pointA[1], pointB[0], pointB[1], sight, 0);
      double apart = sight[Geodesics.LENGTH];
      double toB = sight[Geodesics.INITIAL_COURSE];
      double carriedB = pointB[2] - (sight[Geodesics.FINAL_COURSE] - toB);
      double between = Degrees.sine(carriedB - pointA[2]);
      double cosine = Degrees.cosine(carriedB - pointA[2]);
      double stepA = apart * Degrees.sine(carriedB - toB) / between;
      double stepB = apart * Degrees.sine(pointA[2] - toB) / between;
      double bendOfA = a.bend(pointA);
      double bendOfB = b.bend(pointB);
      double bendA = 0.5 * bendOfA * stepA * stepA;
      double bendB = 0.5 * bendOfB * stepB * stepB;
      double longest = Math.max(apart, Math.max(Math.abs(stepA), Math.abs(stepB)));
      double bend = Math.max(Math.abs(bendOfA), Math.abs(bendOfB));
      double left = longest * longest * longest * (bend * bend + earth * earth);
      stepA += (bendA * cosine - bendB) / between;
      stepB += (bendA - bendB * cosine) / between;
      alongA += stepA;
      alongB += stepB;
      if (left <= NO_GAIN_METRES
          && Math.abs(stepA) <= SmallStep.LONGEST_METRES
          && Math.abs(between) > CrossingSearch.LEAST_SINE) {
        courseB = b.courseAfter(pointB, stepB);
        SmallStep.take(ellipsoid, a.line instanceof RhumbLine, stepA, pointA);
        return true;
      }
      if (!(Math.abs(alongA - 0.5 * a.length) <= 2.0 * a.length
          && Math.abs(alongB - 0.5 * b.length) <= 2.0 * b.length)) { // or NaN
        return false;
      }
    }
    return false;
  }
}
