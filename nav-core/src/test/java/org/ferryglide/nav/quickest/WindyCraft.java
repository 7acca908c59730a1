package org.ferryglide.nav.quickest;

/**
 * A craft of speed 1 among {@link Eddies} in a wind that is the same everywhere: it loses 6 % of
 * its speed for each craft speed of wind on the bow, gains as much before it, and makes 0.03
 * radians of leeway for each on the beam. Invented round figures, smooth in the angle.
 */
record WindyCraft(Eddies eddies, double windEast, double windNorth) implements CraftMotion {
  private static final double LOSS = 0.06;
  private static final double LEEWAY = 0.03;
  private static final int LOOKS = 60;

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
    double from = wx * c + wy * s;
    double right = wx * s - wy * c;
    if (Math.abs(across) > mostAcross(across < 0.0 ? -right : right, Math.hypot(wx, wy))) {
      return Double.NaN;
    }
    double quick = byNewton(along, across, from, right);
    return Double.isNaN(quick) ? byLooks(along, across, from, right) : quick;
  }

  /**
   * What a craft makes across its course is never more. Let it be a at a track square to the
   * course. At tracks off that it is at most a cos(off) + b sin(off), b being how the speed changes
   * with the track at most.
   */
  private static double mostAcross(double fromAstern, double wind) {
    double a = speed(fromAstern) + LOSS * LEEWAY * wind * wind;
    return Math.hypot(a, LOSS * wind / (1.0 - LEEWAY * wind));
  }

  /** The same by looks all round and halving between them, for courses that are hardly held. */
  private static double byLooks(double along, double across, double from, double right) {
    double best = Double.NaN;
    double off = -Math.PI;
    double left = left(off, across, from, right);
    for (int i = 1; i <= LOOKS; i++) {
      double next = Math.PI * (2.0 * i / LOOKS - 1.0);
      double nextLeft = left(next, across, from, right);
      if (left < 0.0 != nextLeft < 0.0) {
        double low = off;
        double high = next;
        while (high - low > 1e-9) {
          double middle = 0.5 * (low + high);
          if (left(middle, across, from, right) < 0.0 == left < 0.0) {
            low = middle;
          } else {
            high = middle;
          }
        }
        double speed = speed(from * Math.cos(low) - right * Math.sin(low));
        double lee = leeway(from * Math.sin(low) + right * Math.cos(low));
        double made = along + speed * Math.cos(low - lee);
        best = made <= best ? best : made;
      }
      off = next;
      left = nextLeft;
    }
    return best;
  }

  /** What still sets to the left of the course when the bow points so far to the left of it. */
  private static double left(double off, double across, double from, double right) {
    double sine = Math.sin(off);
    double cosine = Math.cos(off);
    double lee = leeway(from * sine + right * cosine);
    return across + speed(from * cosine - right * sine) * Math.sin(off - lee);
  }

  /**
   * The same by Newton's method on what still sets across; NaN if it does not settle.
   *
   * @param from the wind over the water along the course
   * @param right the same to the right of it
   */
  private static double byNewton(double along, double across, double from, double right) {
    double off = Math.asin(Math.max(-0.9, Math.min(0.9, -across / speed(from)))) + leeway(right);
    for (int i = 0; i < 6; i++) {
      double sine = Math.sin(off);
      double cosine = Math.cos(off);
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
