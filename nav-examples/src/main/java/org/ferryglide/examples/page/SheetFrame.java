package org.ferryglide.examples.page;

import java.util.List;
import org.ferryglide.nav.position.Position;

/**
 * Where places stand on a plotting sheet: a Mercator's, so that every bearing is true to its angle,
 * with longitudes counted on across 180° from the first place.
 */
final class SheetFrame {
  private static final double EQUATOR_METRES = 6378137.0; // WGS84, NIMA TR8350.2
  private static final double ECCENTRICITY = 0.0818191908426215; // WGS84
  private static final double ROOM = 0.12;
  private static final double LEAST_METRES = 600.0;
  private static final double MINUTES = 60.0;
  private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 30, 60, 120, 300, 600};

  final double left;
  final double top;
  final double width;
  final double height;

  private final double firstLongitude;
  private final double middleX;
  private final double middleY;
  private final double unitsPerMetre;
  private final double metresPerRadian;
  private final double middleLatitude;

  private SheetFrame(
      double left,
      double top,
      double width,
      double height,
      double firstLongitude,
      double[] box,
      double middleLatitude,
      double metresPerRadian,
      double unitsPerMetre) {
    this.left = left;
    this.top = top;
    this.width = width;
    this.height = height;
    this.firstLongitude = firstLongitude;
    this.middleX = 0.5 * (box[0] + box[1]);
    this.middleY = 0.5 * (box[2] + box[3]);
    this.middleLatitude = middleLatitude;
    this.metresPerRadian = metresPerRadian;
    this.unitsPerMetre = unitsPerMetre;
  }

  /** A frame of a width that holds all places, as high as they need within bounds. */
  static SheetFrame around(
      List<Position> places,
      double left,
      double top,
      double width,
      double leastHeight,
      double mostHeight) {
    double first = places.get(0).longitudeDegrees();
    double south = 90.0;
    double north = -90.0;
    for (Position place : places) {
      south = Math.min(south, place.latitudeDegrees());
      north = Math.max(north, place.latitudeDegrees());
    }
    double middle = 0.5 * (south + north);
    double sine = Math.sin(Math.toRadians(middle));
    double perRadian =
        EQUATOR_METRES
            * Math.cos(Math.toRadians(middle))
            / Math.sqrt(1.0 - ECCENTRICITY * ECCENTRICITY * sine * sine);
    double[] box = {
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY
    };
    for (Position place : places) {
      double east = perRadian * Math.toRadians(on(place.longitudeDegrees(), first));
      double up = perRadian * isometric(place.latitudeDegrees());
      box[0] = Math.min(box[0], east);
      box[1] = Math.max(box[1], east);
      box[2] = Math.min(box[2], up);
      box[3] = Math.max(box[3], up);
    }
    double wide = Math.max(LEAST_METRES, (box[1] - box[0]) * (1.0 + 2.0 * ROOM));
    double high = Math.max(LEAST_METRES, (box[3] - box[2]) * (1.0 + 2.0 * ROOM));
    double height = Math.min(mostHeight, Math.max(leastHeight, width * high / wide));
    double scale = Math.min(width / wide, height / high);
    return new SheetFrame(left, top, width, height, first, box, middle, perRadian, scale);
  }

  private static double on(double longitude, double first) {
    return Math.IEEEremainder(longitude - first, 360.0);
  }

  /** Snyder (1987), USGS Professional Paper 1395, equation 7-7, radians. */
  private static double isometric(double latitude) {
    double sine = Math.sin(Math.toRadians(latitude));
    return atanh(sine) - ECCENTRICITY * atanh(ECCENTRICITY * sine);
  }

  private static double atanh(double x) {
    return 0.5 * Math.log((1.0 + x) / (1.0 - x));
  }

  double x(Position place) {
    return x(place.longitudeDegrees());
  }

  private double x(double longitude) {
    double east = metresPerRadian * Math.toRadians(on(longitude, firstLongitude));
    return left + 0.5 * width + (east - middleX) * unitsPerMetre;
  }

  double y(Position place) {
    return y(place.latitudeDegrees());
  }

  private double y(double latitude) {
    return top + 0.5 * height - (metresPerRadian * isometric(latitude) - middleY) * unitsPerMetre;
  }

  /** How many units a distance takes at a latitude. */
  double units(double metres, double latitude) {
    double stretch = Math.cos(Math.toRadians(middleLatitude)) / Math.cos(Math.toRadians(latitude));
    return metres * unitsPerMetre * stretch;
  }

  double middleLatitude() {
    return middleLatitude;
  }

  boolean holds(Position place) {
    double x = x(place);
    double y = y(place);
    return x >= left && x <= left + width && y >= top && y <= top + height;
  }

  private double longitudeAt(double x) {
    double east = (x - left - 0.5 * width) / unitsPerMetre + middleX;
    return firstLongitude + Math.toDegrees(east / metresPerRadian);
  }

  private double latitudeAt(double y) {
    double low = -89.0;
    double high = 89.0;
    for (int i = 0; i < 50; i++) { // halves 178 degrees to less than a rounding
      double middle = 0.5 * (low + high);
      if (y(middle) > y) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  /** A line of the graticule: where it stands and what it is called. */
  record Line(double at, String words) {}

  /** The meridians, by their distance from the left. */
  List<Line> meridians() {
    double from = longitudeAt(left);
    double until = longitudeAt(left + width);
    double step = step(until - from, 4);
    return lines(from, until, step).stream()
        .map(at -> new Line(x(at), words(Math.IEEEremainder(at, 360.0), step, 'E', 'W', 3)))
        .toList();
  }

  /** The parallels, by their distance from the top. */
  List<Line> parallels() {
    double from = latitudeAt(top + height);
    double until = latitudeAt(top);
    double step = step(until - from, 5);
    return lines(from, until, step).stream()
        .map(at -> new Line(y(at), words(at, step, 'N', 'S', 2)))
        .toList();
  }

  private static double step(double span, int most) {
    for (double step : STEPS) {
      if (span * MINUTES / step <= most) {
        return step / MINUTES;
      }
    }
    return STEPS[STEPS.length - 1] / MINUTES;
  }

  private static List<Double> lines(double from, double until, double step) {
    List<Double> all = new java.util.ArrayList<>();
    for (double line = Math.ceil(from / step); line * step <= until; line++) {
      all.add(line * step);
    }
    return all;
  }

  private static String words(double degrees, double step, char up, char down, int figures) {
    long tenths = Math.round(Math.abs(degrees) * MINUTES * 10.0);
    StringBuilder whole = new StringBuilder(Long.toString(tenths / 600));
    while (whole.length() < figures) {
      whole.insert(0, '0');
    }
    whole.append('°').append(Printed.two((int) (tenths % 600 / 10)));
    if (step < 0.99 / MINUTES) {
      whole.append('.').append(tenths % 10);
    }
    whole.append('\'');
    boolean hasNoSide = tenths == 0 || tenths == 180 * 600;
    return hasNoSide ? whole.toString() : whole.append(degrees > 0 ? up : down).toString();
  }
}
