package org.ferryglide.nav.steer;

import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/** A leg as coordinates: how far along it, and how far off it to the right. Not thread-safe. */
final class LegFrame {
  final double length;
  final double startLatitude;
  final double startLongitude;

  /** Less than a note is worth, so that rounding of the plane does not matter. */
  private static final double CLEARLY_METRES = 50.0;

  /** So far from the end the plane there serves, metres. */
  private static final double FLAT_METRES = 100_000.0;

  final double endLatitude;

  /** Longitude of the end, unwrapped so that it lies within 180° of the start's. */
  final double endLongitude;

  private final Leg leg;
  private final boolean rhumb;
  private final double courseDegrees;
  private final double sine;
  private final double cosine;
  private final double[] point = new double[2];
  private final double endCosine;
  private final double endCourseSine;
  private final double endCourseCosine;

  /** The point asked for last. */
  private double latitude;

  /** Longitude of the point asked for last, unwrapped. */
  private double longitude;

  /** The course at the point asked for last, degrees, its sine and cosine. */
  private double pointCourse;

  private double pointSine;
  private double pointCosine;

  LegFrame(Leg leg) {
    this.leg = leg;
    length = leg.length().metres();
    startLatitude = leg.start().latitudeDegrees();
    startLongitude = leg.start().longitudeDegrees();
    endLatitude = leg.end().latitudeDegrees();
    if (!leg.ellipsoid().equals(Ellipsoid.WGS84)) {
      throw new IllegalArgumentException(
          "a leg to steer must lie on WGS84, where positions are, but lies on " + leg.ellipsoid());
    }
    checkPoles(startLatitude);
    checkPoles(endLatitude);
    double difference = leg.end().longitudeDegrees() - startLongitude;
    if (Math.abs(difference) > 180.0) {
      difference = Math.IEEEremainder(difference, 360.0);
    }
    endLongitude = startLongitude + difference;
    rhumb = leg instanceof RhumbLeg;
    courseDegrees = leg.initialCourse().degrees();
    double radians = Math.toRadians(courseDegrees);
    sine = Math.sin(radians);
    cosine = Math.cos(radians);
    double last = Math.toRadians(leg.finalCourse().degrees());
    endCosine = Math.cos(Math.toRadians(endLatitude));
    endCourseSine = Math.sin(last);
    endCourseCosine = Math.cos(last);
  }

  private static void checkPoles(double latitude) {
    if (!(Math.abs(latitude) <= Earth.GREATEST_LATITUDE)) {
      throw new IllegalArgumentException(
          "a leg to steer must lie within 89 degrees of the equator, but an end is at latitude "
              + latitude);
    }
  }

  Leg leg() {
    return leg;
  }

  /** Whether one course serves the whole leg. */
  boolean isRhumb() {
    return rhumb;
  }

  double courseDegrees() {
    return courseDegrees;
  }

  double courseSine() {
    return sine;
  }

  double courseCosine() {
    return cosine;
  }

  /** Sets latitude, longitude and course of the point so far along. */
  void pointAt(double along) {
    if (rhumb) {
      RhumbLines.direct(startLatitude, startLongitude, courseDegrees, along, point, 0);
      latitude = point[0];
      longitude = near(point[1], startLongitude);
      pointCourse = courseDegrees;
      pointSine = sine;
      pointCosine = cosine;
    } else {
      Distance from = Distance.ofMetres(along);
      Position position = leg.pointAt(from);
      latitude = position.latitudeDegrees();
      longitude = near(position.longitudeDegrees(), startLongitude);
      pointCourse = leg.courseAt(from).degrees();
      double radians = Math.toRadians(pointCourse);
      pointSine = Math.sin(radians);
      pointCosine = Math.cos(radians);
    }
  }

  private static double near(double longitude, double other) {
    return other + Math.IEEEremainder(longitude - other, 360.0);
  }

  /**
   * Distance off the line, metres, right positive. Second-order in the distance over the earth's
   * radius: at 5 NM off, within a metre of the nearest distance.
   */
  double crossTrackMetres(double latitude, double longitude) {
    if (!rhumb) {
      return project(latitude, longitude, false);
    }
    double east = Earth.mercatorEasting(Math.IEEEremainder(longitude - startLongitude, 360.0));
    double north = Earth.mercatorNorthing(latitude) - Earth.mercatorNorthing(startLatitude);
    double onChart = east * cosine - north * sine;
    double here = onChart * Earth.mercatorScale(latitude);
    double footLatitude = latitude + here * sine / Earth.LONGEST_DEGREE;
    return onChart * Earth.mercatorScale(0.5 * (latitude + footLatitude));
  }

  /** Distance along the line to the point abeam, metres. */
  double along(double latitude, double longitude) {
    return project(latitude, longitude, true);
  }

  /**
   * False for a place that is surely not {@value #CLEARLY_METRES} metres or more beyond the end, by
   * the plane there; that is off by far less than the tenth of the distance allowed for.
   */
  boolean mayBeBeyondEnd(double latitude, double longitude) {
    double north = (latitude - endLatitude) * Earth.LONGEST_DEGREE;
    double east =
        Math.IEEEremainder(longitude - endLongitude, 360.0) * Earth.LONGEST_DEGREE * endCosine;
    double distance = Earth.size(east, north);
    double beyond = east * endCourseSine + north * endCourseCosine;
    return !(distance < FLAT_METRES && beyond < CLEARLY_METRES - 0.1 * distance);
  }

  private double project(double latitude, double longitude, boolean wantAlong) {
    double along = 0.0;
    for (int i = 0; i < 12; i++) {
      pointAt(along);
      double middle = Earth.sine(0.5 * (latitude + this.latitude));
      double north = (latitude - this.latitude) * Earth.metresPerLatitudeDegree(middle);
      double east =
          Math.IEEEremainder(longitude - this.longitude, 360.0)
              * Earth.metresPerLongitudeDegree(middle);
      double ahead = east * pointSine + north * pointCosine;
      along += ahead;
      if (Math.abs(ahead) < 1e-3) {
        return wantAlong ? along : east * pointCosine - north * pointSine;
      }
    }
    pointAt(along);
    double middle = Earth.sine(0.5 * (latitude + this.latitude));
    double north = (latitude - this.latitude) * Earth.metresPerLatitudeDegree(middle);
    double east =
        Math.IEEEremainder(longitude - this.longitude, 360.0)
            * Earth.metresPerLongitudeDegree(middle);
    return wantAlong ? along : east * pointCosine - north * pointSine;
  }

  /** Latitude of the point asked for last, degrees. */
  double latitude() {
    return latitude;
  }

  /** Longitude of the point asked for last, unwrapped, degrees. */
  double longitude() {
    return longitude;
  }

  /** The course at the point asked for last, degrees. */
  double pointCourse() {
    return pointCourse;
  }

  /** The sine of the course there. */
  double pointSine() {
    return pointSine;
  }

  /** The cosine of the course there. */
  double pointCosine() {
    return pointCosine;
  }
}
