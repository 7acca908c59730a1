package org.ferryglide.nav.quickest;

/**
 * A craft of speed 1 among {@link Eddies} in a wind that is the same everywhere: it loses 6 % of
 * its speed for each craft speed of wind on the bow, gains as much before it, and makes 0.03
 * radians of leeway for each on the beam. Invented round figures, smooth in the angle.
 */
record WindyCraft(Eddies eddies, double windEast, double windNorth) implements CraftMotion {
  private static final double LOSS = 0.06;
  private static final double LEEWAY = 0.03;

  @Override
  public boolean flow(double latitude, double longitude, double time, double[] flow) {
    eddies.at(PlanePatch.x(longitude), PlanePatch.y(latitude), time / PlanePatch.UNIT_METRES, flow);
    flow[2] = windEast - flow[0];
    flow[3] = windNorth - flow[1];
    return true;
  }

  @Override
  public void throughWater(double heading, double[] flow, double[] eastNorth) {
    double sine = Math.sin(heading);
    double cosine = Math.cos(heading);
    double track = heading + leeway(flow[2] * cosine - flow[3] * sine);
    double speed = speed(flow[2] * sine + flow[3] * cosine);
    eastNorth[0] = speed * Math.sin(track);
    eastNorth[1] = speed * Math.cos(track);
  }

  private static double speed(double fromAstern) {
    return 1.0 + LOSS * fromAstern;
  }

  private static double leeway(double toStarboard) {
    return LEEWAY * toStarboard;
  }

  /**
   * The speed made good on a course in a stream, by turning the bow until the course holds; shares
   * only what the craft is with the other way to find it. NaN if it cannot be held.
   *
   * @param c cosine of the course, anticlockwise from x
   * @param s its sine
   */
  double madeGood(double east, double north, double c, double s) {
    double wx = windEast - east;
    double wy = windNorth - north;
    double along = east * c + north * s;
    double across = north * c - east * s; // to the left
    double quick = byNewton(along, across, wx * c + wy * s, wx * s - wy * c);
    if (!Double.isNaN(quick)) {
      return quick;
    }
    double off = 0.0; // of the bow, to the left of the course
    double before = Double.NaN;
    double gapBefore = Double.NaN;
    for (int i = 0; i < 60; i++) {
      double hc = c * Math.cos(off) - s * Math.sin(off);
      double hs = s * Math.cos(off) + c * Math.sin(off);
      double speed = speed(wx * hc + wy * hs);
      double lee = leeway(wx * hs - wy * hc); // to starboard
      double gap = Math.asin(-across / speed) + lee - off;
      if (Double.isNaN(gap)) {
        return Double.NaN;
      }
      if (Math.abs(gap) < 1e-7) {
        return along + speed * Math.cos(off + gap - lee);
      }
      double slope = (gap - gapBefore) / (off - before);
      before = off;
      gapBefore = gap;
      off -= slope < -0.3 && slope > -3.0 ? gap / slope : -gap; // by the secant, where it is good
    }
    return Double.NaN;
  }

  /**
   * The same by Newton's method on what still sets across; NaN if it does not settle.
   *
   * @param from the wind over the water along the course
   * @param right the same to the right of it
   */
  private static double byNewton(double along, double across, double from, double right) {
    double off = 0.0;
    double sine = 0.0;
    double cosine = 1.0;
    for (int i = 0; i < 5; i++) {
      double astern = from * cosine - right * sine;
      double starboard = from * sine + right * cosine;
      double speed = speed(astern);
      double lee = leeway(starboard);
      double track = off - lee;
      double left = Math.sin(track);
      double ahead = Math.cos(track);
      double gap = across + speed * left;
      double slope = speed * ahead * (1.0 - LEEWAY * astern) - LOSS * starboard * left;
      if (Math.abs(gap) < 1e-7) {
        return along + speed * ahead;
      }
      off -= gap / slope;
      if (!(Math.abs(off) < 1.4)) {
        return Double.NaN;
      }
      sine = Math.sin(off);
      cosine = Math.cos(off);
    }
    return Double.NaN;
  }

  @Override
  public double calmSpeed() {
    return 1.0;
  }

  @Override
  public boolean isWindless() {
    return false;
  }

  @Override
  public boolean isUniform() {
    return false;
  }

  @Override
  public double nextBreakAfter(double epochSeconds) {
    return Double.POSITIVE_INFINITY;
  }
}
