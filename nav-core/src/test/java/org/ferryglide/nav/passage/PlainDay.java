package org.ferryglide.nav.passage;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * An invented day for simulations that share no code with the library: two or three legs in an
 * uneven stream and a wind that veers, with dangers, a lane and a shore beside them. Everything is
 * a formula on doubles: degrees, metres, seconds since 1970.
 */
final class PlainDay {
  static final double KNOT = 1852.0 / 3600.0;
  static final double TIDE = 12.42 * 3600.0;
  static final double LAUNCHING = 900.0;
  static final double LANDING = 600.0;
  private static final double A = 6378137.0; // WGS84, NIMA TR8350.2 (2000), table 3.1
  private static final double E2 = 0.00669437999014;

  /** Kinds of danger: always closed, and closed by stream, times, level and wind. */
  static final int ALWAYS = 0;

  static final int BY_STREAM = 1;
  static final int BY_TIMES = 2;
  static final int BY_LEVEL = 3;
  static final int BY_WIND = 4;
  static final int DANGERS = 5;

  final double latitude;
  final double longitude;
  private final double metresNorth;
  private final double metresEast;
  private final double metresEastSlope;

  /** From which tide and wind are counted. */
  private final double zero;

  final double departure;
  final double knots;
  final double restMinutes;
  final double drift;

  /** Of the way points, degrees. */
  final double[] lat;

  final double[] lon;
  final boolean[] held;

  /** The way point at which the party is ashore, and for how many seconds. */
  final int stop;

  /** Before the departure; zero for a part that begins afloat. */
  final double launching;

  /** Whether the first landing and the last ask for a level; else they lie open to the wind. */
  final boolean startsAtLevel;

  /** Whether the party has nothing to do with a landing at the start. */
  final boolean startsAfloat;

  final double ashore;

  private final double rate;
  private final double sine; // of the set
  private final double cosine;
  private final double rotary;
  private final double phase;
  private final double gradient;
  private final double windSpeed;
  private final double windTo;
  private final double windPhase;

  final double[] dangerLat;
  final double[] dangerLon;

  /** Above which stream, wind and level a danger is closed, and when. */
  double closingRate;

  double closingWind;
  double closingLevel;
  double closedFrom;
  double closedUntil;

  /** Two ends each, degrees. */
  final double[] laneLat;

  final double[] laneLon;
  final double laneWidth;
  final double[] shoreLat;
  final double[] shoreLon;

  PlainDay(SplittableRandom random) {
    dangerLat = new double[DANGERS];
    dangerLon = new double[DANGERS];
    laneLat = new double[2];
    laneLon = new double[2];
    shoreLat = new double[2];
    shoreLon = new double[2];
    latitude = -50.0 + 100.0 * random.nextDouble();
    longitude = random.nextInt(4) == 0 ? 179.97 : -180.0 + 360.0 * random.nextDouble();
    double w = 1.0 - E2 * Math.pow(Math.sin(Math.toRadians(latitude)), 2);
    metresNorth = A * (1.0 - E2) / Math.pow(w, 1.5) * Math.PI / 180.0;
    metresEast = eastAt(latitude);
    metresEastSlope = (eastAt(latitude + 0.1) - eastAt(latitude - 0.1)) / 0.2;
    // half past nine by the sun
    double day = 20_615.0 * 86400.0 + 86400.0 * random.nextInt(365);
    zero = Math.rint(day + 240.0 * (180.0 - longitude) - 2.5 * 3600.0);
    departure = zero;
    knots = 3.0 + 1.2 * random.nextDouble();
    restMinutes = random.nextBoolean() ? 0.0 : 10.0;
    drift = random.nextInt(3) == 0 ? 0.0 : 0.03 * random.nextDouble();
    int legs = 2 + random.nextInt(2);
    lat = new double[legs + 1];
    lon = new double[legs + 1];
    held = new boolean[legs];
    lat[0] = latitude;
    lon[0] = longitude;
    double direction = 2.0 * Math.PI * random.nextDouble();
    for (int i = 0; i < legs; i++) {
      double length = 1800.0 + 2800.0 * random.nextDouble();
      direction += random.nextDouble() - 0.5;
      lat[i + 1] = north(lat[i], length * Math.cos(direction));
      lon[i + 1] = lon[i] + length * Math.sin(direction) / east(0.5 * (lat[i] + lat[i + 1]));
      held[i] = random.nextBoolean();
    }
    stop = random.nextBoolean() ? 1 : -1;
    launching = LAUNCHING;
    startsAtLevel = true;
    startsAfloat = false;
    ashore = 60.0 * (15 + random.nextInt(20));
    rate = (0.4 + 1.0 * random.nextDouble()) * KNOT;
    double set = 2.0 * Math.PI * random.nextDouble();
    sine = Math.sin(set);
    cosine = Math.cos(set);
    rotary = 0.4 * random.nextDouble();
    phase = 2.0 * Math.PI * random.nextDouble();
    gradient = 3.0 * (random.nextDouble() - 0.5); // parts in a degree: some tenths along a passage
    windSpeed = (5.0 + 9.0 * random.nextDouble()) * KNOT;
    windTo = 2.0 * Math.PI * random.nextDouble();
    windPhase = 2.0 * Math.PI * random.nextDouble();
    for (int i = 0; i < DANGERS; i++) {
      int leg = i % legs;
      double part = 0.2 + 0.6 * random.nextDouble();
      double aside = (random.nextBoolean() ? 1.0 : -1.0) * (350.0 + 250.0 * random.nextDouble());
      beside(leg, part, aside, dangerLat, dangerLon, i);
    }
    double crossing = 0.8 * (random.nextDouble() - 0.5);
    lane(legs - 1, crossing);
    laneWidth = 300.0 + 200.0 * random.nextDouble();
    double off = random.nextBoolean() ? 1.0 : -1.0;
    beside(0, 0.3, off * (150.0 + 200.0 * random.nextDouble()), shoreLat, shoreLon, 0);
    beside(0, 0.7, off * (150.0 + 200.0 * random.nextDouble()), shoreLat, shoreLon, 1);
  }

  /**
   * A part of a day as a day of its own.
   *
   * @param places way points, one beside the other, on or back
   * @param departure when the first is left
   * @param slower the share of the speed that is paddled
   */
  private PlainDay(PlainDay all, int[] places, double departure, double slower) {
    boolean back = places[1] < places[0];
    latitude = all.latitude;
    longitude = all.longitude;
    metresNorth = all.metresNorth;
    metresEast = all.metresEast;
    metresEastSlope = all.metresEastSlope;
    zero = all.zero;
    this.departure = departure;
    knots = all.knots * slower;
    restMinutes = all.restMinutes;
    drift = all.drift;
    lat = new double[places.length];
    lon = new double[places.length];
    held = new boolean[places.length - 1];
    for (int i = 0; i < places.length; i++) {
      lat[i] = all.lat[places[i]];
      lon[i] = all.lon[places[i]];
      if (i > 0) {
        held[i - 1] = all.held[Math.min(places[i], places[i - 1])];
      }
    }
    stop = back || all.stop <= places[0] ? -1 : all.stop - places[0];
    boolean ashoreFirst = places[0] == 0 || places[0] == all.stop;
    launching = ashoreFirst ? LAUNCHING : 0.0;
    startsAtLevel = places[0] == 0;
    startsAfloat = !ashoreFirst;
    ashore = all.ashore;
    rate = all.rate;
    sine = all.sine;
    cosine = all.cosine;
    rotary = all.rotary;
    phase = all.phase;
    gradient = all.gradient;
    windSpeed = all.windSpeed;
    windTo = all.windTo;
    windPhase = all.windPhase;
    dangerLat = all.dangerLat;
    dangerLon = all.dangerLon;
    closingRate = all.closingRate;
    closingWind = all.closingWind;
    closingLevel = all.closingLevel;
    closedFrom = all.closedFrom;
    closedUntil = all.closedUntil;
    laneLat = all.laneLat;
    laneLon = all.laneLon;
    laneWidth = all.laneWidth;
    shoreLat = all.shoreLat;
    shoreLon = all.shoreLon;
  }

  /** What is left from a way point on. */
  PlainDay onward(int wayPoint, double time, double slower) {
    int[] places = new int[lat.length - wayPoint];
    Arrays.setAll(places, i -> wayPoint + i);
    return new PlainDay(this, places, time, slower);
  }

  /** The way home from a way point, without stops. */
  PlainDay home(int wayPoint, double time, double slower) {
    int[] places = new int[wayPoint + 1];
    Arrays.setAll(places, i -> wayPoint - i);
    return new PlainDay(this, places, time, slower);
  }

  private static double eastAt(double lat) {
    double w = 1.0 - E2 * Math.pow(Math.sin(Math.toRadians(lat)), 2);
    return A / Math.sqrt(w) * Math.cos(Math.toRadians(lat)) * Math.PI / 180.0;
  }

  /** Metres in a degree of longitude, linear in the latitude: to 2 parts in a million in 0.1°. */
  double east(double lat) {
    return metresEast + metresEastSlope * (lat - latitude);
  }

  double north() {
    return metresNorth;
  }

  private double north(double lat, double metres) {
    return lat + metres / metresNorth;
  }

  private void beside(int leg, double part, double aside, double[] lats, double[] lons, int at) {
    double dn = (lat[leg + 1] - lat[leg]) * metresNorth;
    double de = (lon[leg + 1] - lon[leg]) * east(lat[leg]);
    double length = Math.hypot(dn, de);
    lats[at] = lat[leg] + (part * dn - aside * de / length) / metresNorth;
    lons[at] = lon[leg] + (part * de + aside * dn / length) / east(lats[at]);
  }

  private void lane(int leg, double turn) {
    double dn = (lat[leg + 1] - lat[leg]) * metresNorth;
    double de = (lon[leg + 1] - lon[leg]) * east(lat[leg]);
    double to = Math.atan2(de, dn) + 0.5 * Math.PI + turn;
    double middleLat = 0.5 * (lat[leg] + lat[leg + 1]);
    double middleLon = 0.5 * (lon[leg] + lon[leg + 1]);
    for (int end = 0; end < 2; end++) {
      double metres = end == 0 ? -3000.0 : 3000.0;
      laneLat[end] = middleLat + metres * Math.cos(to) / metresNorth;
      laneLon[end] = middleLon + metres * Math.sin(to) / east(middleLat);
    }
  }

  int legs() {
    return held.length;
  }

  /** Speed through still water, the rests spread over the hour. */
  double paddled() {
    return knots * KNOT * (1.0 - restMinutes / 60.0);
  }

  /** The tabled stream, metres a second east and north. */
  void stream(double la, double time, double[] out) {
    double turn = 2.0 * Math.PI * (time - zero) / TIDE + phase;
    double along = rate * Math.cos(turn) * (1.0 + gradient * (la - latitude));
    double across = rate * rotary * Math.sin(turn);
    out[0] = along * sine + across * cosine;
    out[1] = along * cosine - across * sine;
  }

  /** The wind forecast, where it goes. */
  void wind(double time, double[] out) {
    double turn = 2.0 * Math.PI * (time - zero) / 40_000.0 + windPhase;
    double speed = windSpeed * (1.0 + 0.3 * Math.sin(turn));
    double to = windTo + 0.5 * Math.cos(turn);
    out[0] = speed * Math.sin(to);
    out[1] = speed * Math.cos(to);
  }

  double level(double time) {
    return 3.0 + 1.8 * Math.cos(2.0 * Math.PI * (time - zero) / TIDE + 1.3 * phase);
  }

  /** Metres between two places near by. */
  double apart(double latA, double lonA, double latB, double lonB) {
    double north = (latB - latA) * metresNorth;
    double east = (lonB - lonA) * east(0.5 * (latA + latB));
    return Math.sqrt(north * north + east * east);
  }

  /** Metres from a place to a line between two. */
  double toLine(double la, double lo, double[] lats, double[] lons) {
    double scale = east(la);
    double ax = (lons[0] - lo) * scale;
    double ay = (lats[0] - la) * metresNorth;
    double dx = (lons[1] - lons[0]) * scale;
    double dy = (lats[1] - lats[0]) * metresNorth;
    double part = -(ax * dx + ay * dy) / (dx * dx + dy * dy);
    part = Math.max(0.0, Math.min(1.0, part));
    return Math.hypot(ax + part * dx, ay + part * dy);
  }

  /** Whether a straight way crosses the shore; where on the way, in [0, 1], or NaN. */
  double crossesShore(double latA, double lonA, double latB, double lonB) {
    double rx = lonB - lonA;
    double ry = latB - latA;
    double sx = shoreLon[1] - shoreLon[0];
    double sy = shoreLat[1] - shoreLat[0];
    double cross = rx * sy - ry * sx;
    double qx = shoreLon[0] - lonA;
    double qy = shoreLat[0] - latA;
    double t = (qx * sy - qy * sx) / cross;
    double u = (qx * ry - qy * rx) / cross;
    return t >= 0.0 && t <= 1.0 && u >= 0.0 && u <= 1.0 ? t : Double.NaN;
  }

  /** Seconds from a time until the sun sets next, by the almanac's low precision formulas. */
  double untilSunset(double la, double lo, double time) {
    double at = time;
    double step = 600.0;
    while (altitude(la, lo, at) > SUNSET_DEGREES) {
      at += step;
    }
    double low = at - step;
    for (int i = 0; i < 20; i++) {
      double middle = 0.5 * (low + at);
      if (altitude(la, lo, middle) > SUNSET_DEGREES) {
        low = middle;
      } else {
        at = middle;
      }
    }
    return at - time;
  }

  /** The upper limb on the horizon with the usual refraction: Astronomical Almanac, section A. */
  private static final double SUNSET_DEGREES = -50.0 / 60.0;

  /**
   * Altitude of the sun's centre without refraction, degrees. Low precision formulas for the sun's
   * coordinates, The Astronomical Almanac 2010, page C5: within 0.01 degree from 1950 to 2050; mean
   * sidereal time by Meeus, Astronomical Algorithms (1998), equation 12.4.
   */
  static double altitude(double la, double lo, double time) {
    double n = time / 86400.0 - 10_957.5; // days since 2000 January 1, noon
    double mean = 280.460 + 0.9856474 * n;
    double anomaly = Math.toRadians(357.528 + 0.9856003 * n);
    double ecliptic =
        Math.toRadians(mean + 1.915 * Math.sin(anomaly) + 0.020 * Math.sin(2.0 * anomaly));
    double obliquity = Math.toRadians(23.439 - 0.0000004 * n);
    double ascension = Math.atan2(Math.cos(obliquity) * Math.sin(ecliptic), Math.cos(ecliptic));
    double declination = Math.asin(Math.sin(obliquity) * Math.sin(ecliptic));
    double sidereal = 280.46062 + 360.985647366 * n;
    double hour = Math.toRadians(sidereal + lo) - ascension;
    double phi = Math.toRadians(la);
    return Math.toDegrees(
        Math.asin(
            Math.sin(phi) * Math.sin(declination)
                + Math.cos(phi) * Math.cos(declination) * Math.cos(hour)));
  }
}
