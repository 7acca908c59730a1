package org.ferryglide.nav.passage;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * One day of a plain simulation: the usual errors drawn by a generator of its own, the party
 * followed in plane vectors at steps of some seconds. Shares no code with the library.
 */
final class PlainDraw {
  static final int DAYLIGHT = 0;
  static final int AFLOAT = 1;
  static final int SHARE = 2;
  static final int RESERVE = 3;
  static final int STREAM = 4;
  static final int WIND = 5;
  static final int AGAINST = 6;
  static final int LEVEL_AT_START = 7;
  static final int LEVEL_AT_END = 8;
  static final int WIND_AT_STOP = 9;
  static final int SHORE = 10;
  static final int LANE = 11;
  static final int DANGER = 12;
  static final int DRIFT = DANGER + PlainDay.DANGERS;
  static final int REACH = DRIFT + 1;
  static final int FIGURES = REACH + 1;

  private static final double STEP = 30.0;
  private static final double HOUR = 3600.0;
  private static final double TOO_LONG = 4.0 * HOUR;
  private static final double LOOK = 60.0;

  /** What a figure needs that stands in limits: distances to keep, lowest levels, onshore wind. */
  static final class Chosen {
    final double[] keepOff = new double[PlainDay.DANGERS];
    double lowestAtStart = -100.0;
    double lowestAtEnd = -100.0;
    double onshore = 100.0;
    boolean reach;
    boolean drift = true;
    double leastStream;
  }

  private final PlainDay day;
  private double departureLate;
  private double streamLate;
  private final double[] heading = new double[14];
  private final double[] speed = new double[14];
  private final double[] set = new double[14];
  private final double[] rate = new double[14];
  private final double[] eastward = new double[14];
  private final double[] northward = new double[14];
  private final double[] windFactor = new double[14];
  private final double[] windTurn = new double[14];
  private double[][] turns;
  private double[][] windTurns;
  private final double[] flow = new double[2];
  private final double[] air = new double[2];

  /** The path of the day by leg: seconds, degrees, and the motion through the water. */
  private final Path[] paths;

  private static final class Path {
    double[] time = new double[16];
    double[] lat = new double[16];
    double[] lon = new double[16];
    double[] bow = new double[16];
    int size;

    void add(double t, double la, double lo, double h) {
      if (size == time.length) {
        time = Arrays.copyOf(time, 2 * size);
        lat = Arrays.copyOf(lat, 2 * size);
        lon = Arrays.copyOf(lon, 2 * size);
        bow = Arrays.copyOf(bow, 2 * size);
      }
      time[size] = t;
      lat[size] = la;
      lon[size] = lo;
      bow[size++] = h;
    }
  }

  /** A day on which everything is as planned. */
  PlainDraw(PlainDay day) {
    this.day = day;
    Arrays.fill(speed, 1.0);
    Arrays.fill(rate, 1.0);
    Arrays.fill(windFactor, 1.0);
    paths = new Path[day.legs()];
    turns = turns(set, rate);
    windTurns = turns(windTurn, windFactor);
  }

  /** A day with the usual errors, as their page tells them. */
  PlainDraw(PlainDay day, long seed) {
    this(day);
    SplittableRandom random = new SplittableRandom(seed);
    departureLate = 600.0 * gauss(random);
    streamLate = 1200.0 * gauss(random);
    // compass 1 and 2, variation 0.5, deviation 2, leeway 2 and 2
    hourly(random, heading, 0.0, Math.sqrt(1.0 + 0.25 + 4.0 + 4.0), Math.sqrt(4.0 + 4.0));
    hourly(random, speed, 1.0, 0.07, 0.07);
    hourly(random, set, 0.0, 10.0, 10.0);
    hourly(random, rate, 1.0, 0.20, 0.15);
    hourly(random, eastward, 0.0, 0.05, 0.05);
    hourly(random, northward, 0.0, 0.05, 0.05);
    hourly(random, windFactor, 1.0, 0.25, 0.15);
    hourly(random, windTurn, 0.0, 20.0, 10.0);
    turns = turns(set, rate);
    windTurns = turns(windTurn, windFactor);
  }

  private static double gauss(SplittableRandom random) {
    return Math.sqrt(-2.0 * Math.log(1.0 - random.nextDouble()))
        * Math.cos(2.0 * Math.PI * random.nextDouble());
  }

  private static void hourly(
      SplittableRandom random, double[] hours, double mean, double constant, double independent) {
    double stays = constant * gauss(random);
    for (int i = 0; i < hours.length; i++) {
      double drawn = mean + stays + independent * gauss(random);
      hours[i] = mean > 0.0 ? Math.max(0.05, drawn) : drawn;
    }
  }

  private int hour(double time) {
    double since = time - day.departure - departureLate;
    return Math.max(0, Math.min(speed.length - 1, (int) (since / HOUR)));
  }

  private void stream(double la, double time) {
    int h = hour(time);
    day.stream(la, time - streamLate, flow);
    turn(flow, turns[h]);
    flow[0] += eastward[h];
    flow[1] += northward[h];
  }

  private void wind(double time) {
    int h = hour(time);
    day.wind(time, air);
    turn(air, windTurns[h]);
  }

  /** Clockwise by degrees, and so much longer: as sine and cosine. */
  private static double[][] turns(double[] degrees, double[] factors) {
    double[][] turns = new double[degrees.length][];
    for (int i = 0; i < turns.length; i++) {
      double to = Math.toRadians(degrees[i]);
      turns[i] = new double[] {factors[i] * Math.sin(to), factors[i] * Math.cos(to)};
    }
    return turns;
  }

  private static void turn(double[] vector, double[] turn) {
    double east = vector[0];
    vector[0] = east * turn[1] + vector[1] * turn[0];
    vector[1] = vector[1] * turn[1] - east * turn[0];
  }

  /** Stream and wind together, as they carry the craft. */
  private void carried(double la, double time) {
    stream(la, time);
    if (day.drift > 0.0) {
      wind(time);
      flow[0] += day.drift * (air[0] - flow[0]);
      flow[1] += day.drift * (air[1] - flow[1]);
    }
  }

  private static double length(double[] vector) {
    return Math.sqrt(vector[0] * vector[0] + vector[1] * vector[1]);
  }

  private double paddled(double time) {
    return day.paddled() * speed[hour(time)];
  }

  /** Paddles the whole passage; false if it is not possible. */
  boolean paddle() {
    double time = day.departure + departureLate;
    for (int leg = 0; leg < paths.length; leg++) {
      if (leg == day.stop) {
        time += PlainDay.LANDING + day.ashore + PlainDay.LAUNCHING;
      }
      Path path = new Path();
      double bow = Double.NaN;
      if (!day.held[leg]) {
        bow = constant(day.lat[leg], day.lon[leg], leg + 1, time);
      }
      paths[leg] = path;
      time = go(path, day.lat[leg], day.lon[leg], leg + 1, time, bow);
      if (Double.isNaN(time)) {
        return false;
      }
    }
    return true;
  }

  /** How far off the line the last way ended, to the right, metres. */
  private double missed;

  /** The heading that meets a way point, degrees; NaN if none does. */
  private double constant(double la, double lo, int to, double time) {
    double dn = (day.lat[to] - la) * day.north();
    double de = (day.lon[to] - lo) * day.east(0.5 * (la + day.lat[to]));
    double length = Math.hypot(dn, de);
    double course = Math.toDegrees(Math.atan2(de, dn));
    double one = course;
    double two = course + 5.0;
    if (Double.isNaN(go(null, la, lo, to, time, one))) {
      return Double.NaN;
    }
    double missedOne = missed;
    for (int i = 0; i < 20; i++) {
      if (Double.isNaN(go(null, la, lo, to, time, two))) {
        return Double.NaN;
      }
      double missedTwo = missed;
      if (Math.abs(missedTwo) < 1e-4 * length) {
        return two;
      }
      double next = two - missedTwo * (two - one) / (missedTwo - missedOne);
      one = two;
      missedOne = missedTwo;
      two = Math.max(course - 80.0, Math.min(course + 80.0, next));
    }
    return Double.NaN;
  }

  /** Goes to a way point, with the track held where there is no bow; the arrival or NaN. */
  private double go(Path path, double la0, double lo0, int to, double from, double bow) {
    double n = day.north();
    double dn = (day.lat[to] - la0) * n;
    double de = (day.lon[to] - lo0) * day.east(0.5 * (la0 + day.lat[to]));
    double length = Math.hypot(dn, de);
    double sine = de / length;
    double cosine = dn / length;
    double x = 0.0; // along and to the right of the line
    double y = 0.0;
    double time = from;
    double half = 0.0;
    double now = bow;
    while (x < length) {
      double la = la0 + (x * cosine - y * sine) / n;
      carried(la + half * cosine / n, time + 0.5 * STEP);
      double along = flow[0] * sine + flow[1] * cosine;
      double across = flow[0] * cosine - flow[1] * sine;
      double v = paddled(time + 0.5 * STEP);
      if (Double.isNaN(bow)) {
        now = Math.toDegrees(Math.atan2(sine, cosine) - Math.asin(across / v));
        along += Math.sqrt(v * v - across * across); // NaN where it is too strong
        across = 0.0;
      } else {
        double off = Math.toRadians(bow) - Math.atan2(sine, cosine);
        along += v * Math.cos(off);
        across += v * Math.sin(off);
      }
      if (!(along > 0.0) || time - from > TOO_LONG) {
        return Double.NaN;
      }
      if (path != null) {
        path.add(time, la, lo(la0, lo0, x, y, sine, cosine), now);
      }
      double part = Math.min(1.0, (length - x) / (along * STEP));
      x = part < 1.0 ? length : x + along * STEP;
      y += part * across * STEP;
      time += part * STEP;
      half = 0.5 * along * STEP;
    }
    missed = y;
    if (path != null) {
      double la = la0 + (x * cosine - y * sine) / n;
      path.add(time, la, lo(la0, lo0, x, y, sine, cosine), now);
    }
    return time;
  }

  private double lo(double la0, double lo0, double x, double y, double sine, double cosine) {
    double north = (x * cosine - y * sine) / day.north();
    return lo0 + (x * sine + y * cosine) / day.east(la0 + 0.5 * north);
  }

  /** The printed headings of a plan steered for the printed times: metres off at its steps. */
  private double[][] off(PlainDraw plan) {
    double[][] off = new double[paths.length][];
    double east = 0.0;
    double north = 0.0;
    for (int leg = 0; leg < paths.length; leg++) {
      if (leg == day.stop) {
        east = 0.0;
        north = 0.0;
      }
      Path printed = plan.paths[leg];
      off[leg] = new double[2 * printed.size];
      for (int i = 0; i < printed.size; i++) {
        off[leg][2 * i] = east;
        off[leg][2 * i + 1] = north;
        if (i + 1 < printed.size) {
          double dt = printed.time[i + 1] - printed.time[i];
          double time = 0.5 * (printed.time[i] + printed.time[i + 1]) + departureLate;
          double la = 0.5 * (printed.lat[i] + printed.lat[i + 1]) + north / day.north();
          carried(la, time);
          double bow = Math.toRadians(printed.bow[i] + heading[hour(time)]);
          double v = paddled(time);
          double scale = day.east(0.5 * (printed.lat[i] + printed.lat[i + 1]));
          east +=
              (v * Math.sin(bow) + flow[0]) * dt - (printed.lon[i + 1] - printed.lon[i]) * scale;
          north +=
              (v * Math.cos(bow) + flow[1]) * dt
                  - (printed.lat[i + 1] - printed.lat[i]) * day.north();
        }
      }
    }
    return off;
  }

  double arrival(int wayPoint) {
    Path path = paths[wayPoint - 1];
    return path.time[path.size - 1];
  }

  double departure(int leg) {
    return paths[leg].time[0];
  }

  /** When a way point after the start is left; where nothing follows, the arrival. */
  double leaving(int wayPoint) {
    return wayPoint < paths.length ? departure(wayPoint) : arrival(wayPoint);
  }

  PlainDay day() {
    return day;
  }

  /** The figures of a day on which everything is as planned. */
  double[] still(Chosen chosen) {
    return figures(null, chosen);
  }

  /** All figures of a paddled day; an infinite one where it does not count. */
  double[] figures(@Nullable PlainDraw plan, Chosen chosen) {
    double[] all = new double[FIGURES];
    times(all);
    levels(all);
    all[RESERVE] = Double.POSITIVE_INFINITY;
    all[AGAINST] = Double.NEGATIVE_INFINITY;
    all[LANE] = Double.NEGATIVE_INFINITY;
    all[DRIFT] = Double.POSITIVE_INFINITY;
    all[REACH] = Double.NEGATIVE_INFINITY;
    Arrays.fill(all, DANGER, DANGER + PlainDay.DANGERS, Double.POSITIVE_INFINITY);
    for (int leg = 0; leg < paths.length; leg++) {
      water(paths[leg], all, chosen);
    }
    double[][] off = plan == null ? new double[0][] : off(plan);
    for (int leg = 0; leg < off.length; leg++) {
      aside(leg, off[leg], plan.paths[leg]);
    }
    double asked = Double.NEGATIVE_INFINITY;
    double hours = -1.0;
    for (int leg = 0; leg < paths.length; leg++) {
      Path path = paths[leg];
      places(path, all);
      int[] from = new int[chosen.drift ? 1 + PlainDay.DANGERS : 0];
      nearest(path, from);
      for (int i : from) {
        all[DRIFT] = Math.min(all[DRIFT], drift(path, i, chosen));
      }
      for (int i = 0; i < path.size; i++) {
        double since = Math.floor((path.time[i] - paths[0].time[0]) / HOUR);
        if (chosen.drift && since > hours) {
          hours = since;
          all[DRIFT] = Math.min(all[DRIFT], drift(path, i, chosen));
        }
        boolean last = leg + 1 == paths.length && i + 1 == path.size;
        if (chosen.reach && (path.time[i] - asked >= 600.0 || last)) {
          asked = path.time[i];
          all[REACH] = Math.max(all[REACH], toLanding(path, i, chosen) / 60.0);
        }
      }
    }
    return all;
  }

  private void times(double[] all) {
    double departed = paths[0].time[0];
    double arrived = arrival(paths.length);
    double launch = departed - day.launching;
    int end = day.lat.length - 1;
    double sunset = launch + day.untilSunset(day.lat[end], day.lon[end], launch);
    sunset = 60.0 * Math.floor(sunset / 60.0); // told in whole minutes, never later than it is
    all[DAYLIGHT] = (sunset - arrived - PlainDay.LANDING) / 60.0;
    double began = departed;
    double longest = 0.0;
    for (int leg = 0; leg < paths.length; leg++) {
      began = leg == day.stop ? paths[leg].time[0] : began;
      longest = Math.max(longest, arrival(leg + 1) - began);
    }
    all[AFLOAT] = (longest + PlainDay.LAUNCHING + PlainDay.LANDING) / 60.0;
  }

  private void levels(double[] all) {
    double departed = paths[0].time[0];
    boolean isLevel = !day.startsAfloat && day.startsAtLevel;
    all[LEVEL_AT_START] =
        isLevel ? lowest(departed - day.launching, departed) : Double.POSITIVE_INFINITY;
    double arrived = arrival(paths.length);
    all[LEVEL_AT_END] = lowest(arrived, arrived + PlainDay.LANDING);
    all[WIND_AT_STOP] =
        day.startsAfloat || day.startsAtLevel
            ? Double.NEGATIVE_INFINITY
            : onshore(departed - day.launching, departed);
    if (day.stop > 0) {
      double landed = arrival(day.stop);
      double left = paths[day.stop].time[0];
      all[WIND_AT_STOP] =
          Math.max(
              onshore(landed, landed + PlainDay.LANDING), onshore(left - PlainDay.LAUNCHING, left));
    }
  }

  double lowest(double from, double until) {
    double least = Double.POSITIVE_INFINITY;
    for (double t = from; t <= until; t += LOOK) {
      least = Math.min(least, day.level(t));
    }
    return least;
  }

  /** The landing at the stop lies open to half the horizon, from the way out by west or east. */
  static final double OPEN_FROM = 30.0;

  static final double OPEN_UNTIL = 210.0;

  private double onshore(double from, double until) {
    double most = Double.NEGATIVE_INFINITY;
    for (double t = from; t <= until; t += LOOK) {
      wind(t);
      double comes = (Math.toDegrees(Math.atan2(-air[0], -air[1])) + 360.0) % 360.0;
      if (comes >= OPEN_FROM && comes <= OPEN_UNTIL) {
        most = Math.max(most, length(air) / PlainDay.KNOT);
      }
    }
    return most;
  }

  /** Stream, wind, what they ask of the party, before it is moved aside. */
  private void water(Path path, double[] all, Chosen chosen) {
    for (int i = 0; i < path.size; i++) {
      stream(path.lat[i], path.time[i]);
      wind(path.time[i]);
      double runs = length(flow);
      double blows = length(air);
      all[STREAM] = Math.max(all[STREAM], runs / PlainDay.KNOT);
      all[WIND] = Math.max(all[WIND], blows / PlainDay.KNOT);
      double between =
          Math.acos(
              Math.max(-1.0, Math.min(1.0, (flow[0] * air[0] + flow[1] * air[1]) / runs / blows)));
      if (runs >= chosen.leastStream && Math.toDegrees(between) >= 120.0) {
        all[AGAINST] = Math.max(all[AGAINST], blows / PlainDay.KNOT);
      }
      if (i + 1 < path.size) {
        double time = 0.5 * (path.time[i] + path.time[i + 1]);
        double east = (path.lon[i + 1] - path.lon[i]) * day.east(path.lat[i]);
        double north = (path.lat[i + 1] - path.lat[i]) * day.north();
        double length = Math.hypot(east, north);
        carried(path.lat[i], time);
        double along = (flow[0] * east + flow[1] * north) / length;
        double across = Math.abs(flow[0] * north - flow[1] * east) / length;
        double v = paddled(time);
        double least = along >= 0.0 ? across : Math.hypot(along, across);
        all[RESERVE] = Math.min(all[RESERVE], (v - least) / PlainDay.KNOT);
        all[SHARE] = Math.max(all[SHARE], across / v);
      }
    }
  }

  /** Moves the party as far to the side of its track as the printed headings leave it. */
  private void aside(int leg, double[] off, Path printed) {
    Path path = paths[leg];
    double dn = (day.lat[leg + 1] - day.lat[leg]) * day.north();
    double de =
        (day.lon[leg + 1] - day.lon[leg]) * day.east(0.5 * (day.lat[leg] + day.lat[leg + 1]));
    double sine = de / Math.hypot(dn, de);
    double cosine = dn / Math.hypot(dn, de);
    double length = path.time[path.size - 1] - path.time[0];
    double planned = printed.time[printed.size - 1] - printed.time[0];
    int same = 0;
    for (int i = 0; i < path.size; i++) {
      double then = printed.time[0] + (path.time[i] - path.time[0]) / length * planned;
      while (same + 2 < printed.size && printed.time[same + 1] <= then) {
        same++;
      }
      double part = (then - printed.time[same]) / (printed.time[same + 1] - printed.time[same]);
      double e = off[2 * same] + part * (off[2 * same + 2] - off[2 * same]);
      double n = off[2 * same + 1] + part * (off[2 * same + 3] - off[2 * same + 1]);
      double right = e * cosine - n * sine;
      path.lat[i] -= right * sine / day.north();
      path.lon[i] += right * cosine / day.east(path.lat[i]);
    }
  }

  /** Dangers, lane and shore. */
  private void places(Path path, double[] all) {
    int last = path.size - 1;
    for (int i = 0; i <= last; i++) {
      for (int k = 0; k < PlainDay.DANGERS; k++) {
        if (closed(k, path.time[i])) {
          double metres = day.apart(path.lat[i], path.lon[i], day.dangerLat[k], day.dangerLon[k]);
          all[DANGER + k] = Math.min(all[DANGER + k], metres);
        }
      }
      if (i > 0) {
        byTimes(path, i, day.closedFrom, all);
        byTimes(path, i, day.closedUntil, all);
      }
      if (day.toLine(path.lat[i], path.lon[i], day.laneLat, day.laneLon) <= 0.5 * day.laneWidth) {
        double along =
            Math.toDegrees(
                Math.atan2(
                    (day.laneLon[1] - day.laneLon[0]) * day.east(path.lat[i]),
                    (day.laneLat[1] - day.laneLat[0]) * day.north()));
        double between = Math.abs(path.bow[i] - along) % 180.0;
        all[LANE] = Math.max(all[LANE], 90.0 - Math.min(between, 180.0 - between));
      }
      if (i > 0) {
        double part = day.crossesShore(path.lat[i - 1], path.lon[i - 1], path.lat[i], path.lon[i]);
        if (!Double.isNaN(part)
            && day.apart(path.lat[i], path.lon[i], path.lat[0], path.lon[0]) > 50.0
            && day.apart(path.lat[i], path.lon[i], path.lat[last], path.lon[last]) > 50.0) {
          all[SHORE] = 1.0;
        }
      }
    }
  }

  /** Where the party is when stated times begin or end. */
  private void byTimes(Path path, int i, double time, double[] all) {
    double part = (time - path.time[i - 1]) / (path.time[i] - path.time[i - 1]);
    if (part >= 0.0 && part <= 1.0) {
      double la = path.lat[i - 1] + part * (path.lat[i] - path.lat[i - 1]);
      double lo = path.lon[i - 1] + part * (path.lon[i] - path.lon[i - 1]);
      int k = PlainDay.BY_TIMES;
      double metres = day.apart(la, lo, day.dangerLat[k], day.dangerLon[k]);
      all[DANGER + k] = Math.min(all[DANGER + k], metres);
    }
  }

  private boolean closed(int danger, double time) {
    return switch (danger) {
      case PlainDay.BY_STREAM -> {
        stream(day.dangerLat[danger], time);
        yield length(flow) > day.closingRate;
      }
      case PlainDay.BY_TIMES -> time >= day.closedFrom && time <= day.closedUntil;
      case PlainDay.BY_LEVEL -> day.level(time) > day.closingLevel;
      case PlainDay.BY_WIND -> {
        wind(time);
        yield length(air) > day.closingWind;
      }
      default -> true;
    };
  }

  /** The step of the strongest stream, and those nearest to the dangers. */
  private void nearest(Path path, int[] from) {
    if (from.length == 0) {
      return;
    }
    double[] best = new double[from.length];
    Arrays.fill(best, Double.POSITIVE_INFINITY);
    double[] now = new double[from.length];
    for (int i = 0; i < path.size; i++) {
      stream(path.lat[i], path.time[i]);
      now[0] = -length(flow);
      for (int k = 0; k < PlainDay.DANGERS; k++) {
        now[k + 1] = day.apart(path.lat[i], path.lon[i], day.dangerLat[k], day.dangerLon[k]);
      }
      for (int k = 0; k < now.length; k++) {
        if (now[k] < best[k]) {
          best[k] = now[k];
          from[k] = i;
        }
      }
    }
  }

  /** Minutes of drift until the party is too near a danger that is closed then. */
  private double drift(Path path, int from, Chosen chosen) {
    double la = path.lat[from];
    double lo = path.lon[from];
    for (double minutes = 0.0; minutes <= 10.0; minutes += 0.5) {
      double time = path.time[from] + 60.0 * minutes;
      for (int k = 0; k < PlainDay.DANGERS; k++) {
        if (day.apart(la, lo, day.dangerLat[k], day.dangerLon[k]) < chosen.keepOff[k]
            && closed(k, time)) {
          return minutes;
        }
      }
      carried(la, time + 15.0);
      la += flow[1] * 30.0 / day.north();
      lo += flow[0] * 30.0 / day.east(la);
    }
    return Double.POSITIVE_INFINITY;
  }

  /** Seconds to the first landing that can be used, by a straight way. */
  private double toLanding(Path path, int at, Chosen chosen) {
    double best = Double.POSITIVE_INFINITY;
    for (int place = 0; place < day.lat.length; place++) {
      boolean lands = place == 0 || place == day.stop || place + 1 == day.lat.length;
      double metres = day.apart(path.lat[at], path.lon[at], day.lat[place], day.lon[place]);
      double part = day.crossesShore(path.lat[at], path.lon[at], day.lat[place], day.lon[place]);
      if (!lands || Math.min(part, 1.0 - part) * metres > 50.0) {
        continue;
      }
      double time = path.time[at];
      double arrival = metres <= 10.0 ? time : escape(path.lat[at], path.lon[at], place, time);
      boolean usable =
          place == day.stop
              ? onshore(arrival, arrival + PlainDay.LANDING) <= chosen.onshore
              : lowest(arrival, arrival + PlainDay.LANDING)
                  >= (place == 0 ? chosen.lowestAtStart : chosen.lowestAtEnd);
      if (usable && arrival - time < best) {
        best = arrival - time;
      }
    }
    return best;
  }

  /** With the track held, which takes as long as a constant heading but for seconds. */
  private double escape(double la, double lo, int place, double time) {
    return go(null, la, lo, place, time, Double.NaN);
  }
}
