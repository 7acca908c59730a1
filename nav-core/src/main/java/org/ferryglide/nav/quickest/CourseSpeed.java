package org.ferryglide.nav.quickest;

/**
 * The greatest speed over the ground along a course, in a given stream and wind.
 *
 * <p>In calm air that is the current triangle. In wind the motion through the water is tabulated by
 * wind speed and angle off the wind, and the heading whose motion across the course cancels what
 * sets across it is found in the table; the table is good to 1e-4 of the speed where the craft's
 * own tables are smooth, and serves to choose a path, not to time it. Keeps a workspace.
 */
final class CourseSpeed {
  /** Headings in the table, half a degree apart. */
  private static final int HEADINGS = 720;

  /** Headings all round for {@link #motions}. */
  static final int POLAR_HEADINGS = 144;

  private static final double HEADING_STEP = 2.0 * Math.PI / HEADINGS;

  /**
   * Wind speeds are tabulated a quarter of a knot apart, metres a second: a craft's own tables bend
   * on knots or, in the middle of a force, on halves.
   */
  private static final double WIND_STEP = 0.25 * 1852.0 / 3600.0;

  /** Stronger winds are read as this one, 80 kn. */
  private static final int STRONGEST = 320;

  private static final int CORRECTIONS = 12;

  private final CraftMotion motion;
  private final double speed;
  private final boolean windless;

  /** For each wind speed the motion along and across the wind by heading; null until asked for. */
  private final double[][] tables = new double[STRONGEST + 2][];

  private final double[] tableFlow = new double[CraftMotion.FLOW];
  private final double[] eastNorth = new double[2];

  CourseSpeed(CraftMotion motion) {
    this.motion = motion;
    this.speed = motion.calmSpeed();
    this.windless = motion.isWindless();
  }

  /**
   * The speed made good along a course.
   *
   * @param east stream to the east, metres a second
   * @param north stream to the north, metres a second
   * @param windEast wind over the water, to the east, metres a second
   * @param windNorth wind over the water, to the north, metres a second
   * @param sine of the course
   * @param cosine of the course
   * @return metres a second; NaN or not above 0 if the course cannot be made
   */
  double madeGood(
      double east, double north, double windEast, double windNorth, double sine, double cosine) {
    double along = east * sine + north * cosine;
    double across = east * cosine - north * sine;
    if (windless) {
      return along + Math.sqrt(speed * speed - across * across);
    }
    double wind = Math.sqrt(windEast * windEast + windNorth * windNorth);
    if (wind < 1e-6) {
      return along + Math.sqrt(speed * speed - across * across);
    }
    // the course seen from where the wind goes: the tables have the wind go to 0
    double c = (windEast * sine + windNorth * cosine) / wind;
    double s = (windNorth * sine - windEast * cosine) / wind;
    double bin = Math.min(wind / WIND_STEP, STRONGEST - 1e-9);
    int low = (int) bin;
    return along + through(table(low), table(low + 1), bin - low, s, c, across);
  }

  /**
   * The motions over the ground on headings all round, the first again at the end.
   *
   * @param flow as {@link CraftMotion#flow} gave it
   * @param out receives parts to the east and north in turn, metres a second
   */
  void motions(double[] flow, double[] out) {
    double wind = Math.sqrt(flow[2] * flow[2] + flow[3] * flow[3]);
    double windEast = wind < 1e-6 ? 0.0 : flow[2] / wind;
    double windNorth = wind < 1e-6 ? 1.0 : flow[3] / wind;
    double bin = Math.min(wind / WIND_STEP, STRONGEST - 1e-9);
    int weaker = (int) bin;
    double share = bin - weaker;
    double[] low = table(weaker);
    double[] high = table(weaker + 1);
    int step = 2 * HEADINGS / POLAR_HEADINGS;
    for (int i = 0, at = 0; i <= POLAR_HEADINGS; i++, at += step) {
      double down = low[at] + share * (high[at] - low[at]);
      double aside = low[at + 1] + share * (high[at + 1] - low[at + 1]);
      out[2 * i] = flow[0] + down * windEast + aside * windNorth;
      out[2 * i + 1] = flow[1] + down * windNorth - aside * windEast;
    }
  }

  /** The greatest motion along a course whose motion across it cancels a set across. */
  private double through(
      double[] low, double[] high, double share, double s, double c, double across) {
    double course = Math.atan2(s, c);
    double ratio = Math.max(-1.0, Math.min(1.0, across / speed));
    double heading = course - Math.asin(ratio);
    double error = sideways(low, high, share, heading, s, c) + across;
    double step = -0.02;
    // turning right sets to the right where the bow is ahead, and to the left where it is astern
    boolean ahead = true;
    for (int i = 0; i < CORRECTIONS; i++) {
      if (Math.abs(error) < 1e-7 * speed) {
        if (!ahead) {
          break; // the heading that lets the stream carry the craft stern first
        }
        return forward(low, high, share, heading, s, c);
      }
      double next = sideways(low, high, share, heading + step, s, c) + across;
      if (next == error) {
        break;
      }
      ahead = next > error == step > 0.0;
      heading += step;
      step = -next * step / (next - error);
      step = Math.max(-0.3, Math.min(0.3, step));
      error = next;
    }
    return tried(low, high, share, s, c, across);
  }

  /** Looks at every heading of the table. */
  private double tried(
      double[] low, double[] high, double share, double s, double c, double across) {
    double best = Double.NaN;
    double before = sideways(low, high, share, 0.0, s, c) + across;
    double beforeForward = forward(low, high, share, 0.0, s, c);
    for (int i = 4; i <= HEADINGS; i += 4) {
      double heading = i * HEADING_STEP;
      double now = sideways(low, high, share, heading, s, c) + across;
      double nowForward = forward(low, high, share, heading, s, c);
      if (before <= 0.0 != now <= 0.0) {
        double part = before / (before - now);
        double here = beforeForward + part * (nowForward - beforeForward);
        if (!(best >= here)) {
          best = here;
        }
      }
      before = now;
      beforeForward = nowForward;
    }
    return best;
  }

  private static double sideways(
      double[] low, double[] high, double share, double heading, double s, double c) {
    return read(low, high, share, heading, 1) * c - read(low, high, share, heading, 0) * s;
  }

  private static double forward(
      double[] low, double[] high, double share, double heading, double s, double c) {
    return read(low, high, share, heading, 0) * c + read(low, high, share, heading, 1) * s;
  }

  private static double read(double[] low, double[] high, double share, double heading, int which) {
    double place = heading / HEADING_STEP;
    place -= HEADINGS * Math.floor(place / HEADINGS);
    int at = Math.min((int) place, HEADINGS - 1);
    double part = place - at;
    int i = 2 * at + which;
    double below = low[i] + part * (low[i + 2] - low[i]);
    double above = high[i] + part * (high[i + 2] - high[i]);
    return below + share * (above - below);
  }

  /** Rows of motion down the wind and to its right, heading 0 being down the wind. */
  private double[] table(int windSpeed) {
    double[] table = tables[windSpeed];
    if (table == null) {
      table = new double[2 * (HEADINGS + 1)];
      tableFlow[2] = 0.0;
      tableFlow[3] = windSpeed * WIND_STEP; // goes north
      for (int i = 0; i <= HEADINGS; i++) {
        motion.throughWater(i % HEADINGS * HEADING_STEP, tableFlow, eastNorth);
        table[2 * i] = eastNorth[1];
        table[2 * i + 1] = eastNorth[0];
      }
      tables[windSpeed] = table;
    }
    return table;
  }
}
