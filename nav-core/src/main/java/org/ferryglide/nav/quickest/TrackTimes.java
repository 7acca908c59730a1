package org.ferryglide.nav.quickest;

/**
 * When the end of a straight track is reached: every way that the search compares is timed here, so
 * that stream, wind, rests, land, closed areas and gaps in the data count alike everywhere.
 *
 * <p>The seconds for a metre are integrated along the track by Kutta's method of third order, which
 * is Simpson's rule where the flow stands still in time, and a step that meets a break of the
 * stream or wind in time is cut there. Times are seconds since the departure. Not thread-safe.
 */
final class TrackTimes {
  /** A track on which less than this share of the craft's speed is made good is no way. */
  private static final double LEAST_SHARE = 1e-3;

  /** The end of a step that meets a break is looked at from so far before it, seconds. */
  private static final double BEFORE_BREAK_SECONDS = 1e-3;

  /** Below this share of the craft's speed a lenient time is no longer the true one. */
  private static final double SLOW_SHARE = 0.05;

  private static final int CUTS = 30;

  /** A craft that waits is looked at this often, seconds. */
  static final double HELD_LOOK_SECONDS = 60.0;

  private final CraftMotion motion;
  private final CourseSpeed speeds;
  private final Waters waters;
  private final SearchPlane plane;
  private final double departure;
  private final boolean open;
  private final boolean closing;
  private final double least;
  private final double calm;
  private final double[] flow = new double[CraftMotion.FLOW];

  /** The stretch without a break that was looked at last. */
  private double smoothFrom = Double.POSITIVE_INFINITY;

  private double smoothUntil = Double.NEGATIVE_INFINITY;

  /** Whether what cannot be made counts as very slow, the more so the further from possible. */
  private boolean lenient;

  /** By how much steps are shorter than asked for. */
  private int closer = 1;

  /** Longest step of the integration, metres. */
  private double longestStep = Double.POSITIVE_INFINITY;

  private double latitude0;
  private double longitude0;
  private double latitudeStep;
  private double longitudeStep;
  private double sine;
  private double cosine;

  TrackTimes(
      CraftMotion motion,
      CourseSpeed speeds,
      Waters waters,
      SearchPlane plane,
      double departureSeconds) {
    this.motion = motion;
    this.speeds = speeds;
    this.waters = waters;
    this.plane = plane;
    this.departure = departureSeconds;
    this.open = waters.isOpen();
    this.closing = !waters.closures().isEmpty();
    this.calm = motion.calmSpeed();
    this.least = LEAST_SHARE * motion.calmSpeed();
  }

  /** Sets how long a step of the integration may be, metres. */
  void stepAtMost(double metres) {
    longestStep = metres / closer;
  }

  /** Sets how many times shorter than asked for all steps are, from the next one set. */
  void lookCloser(int times) {
    closer = times;
  }

  /**
   * Sets whether a track that cannot be made for want of speed is timed as a very slow one, so that
   * a way may be moved out of such waters. Land, closed areas and gaps in the data stay barred.
   *
   * @return how it was set before
   */
  boolean setLenient(boolean lenient) {
    boolean before = this.lenient;
    this.lenient = lenient;
    return before;
  }

  /**
   * The arrival at the end of a straight track between two places of the plane.
   *
   * @param started when it is begun
   * @return when it ends; NaN if it cannot be made
   */
  double arrival(double along0, double right0, double along1, double right1, double started) {
    latitude0 = plane.latitude(along0, right0);
    longitude0 = plane.longitude(along0, right0);
    double latitude1 = plane.latitude(along1, right1);
    double longitude1 = plane.longitude(along1, right1);
    if (!open && waters.land().blocks(latitude0, longitude0, latitude1, longitude1)) {
      return Double.NaN;
    }
    double middle = 0.5 * (latitude0 + latitude1);
    double north = (latitude1 - latitude0) * SearchPlane.metresPerLatitudeDegree(middle);
    double east = (longitude1 - longitude0) * SearchPlane.metresPerLongitudeDegree(middle);
    double length = Math.sqrt(north * north + east * east);
    if (length == 0.0) {
      return started;
    }
    sine = east / length;
    cosine = north / length;
    latitudeStep = (latitude1 - latitude0) / length;
    longitudeStep = (longitude1 - longitude0) / length;
    int steps = (int) Math.ceil(length / longestStep - 1e-9);
    double step = length / Math.max(1, steps);
    double time = started;
    for (int i = 0; i < Math.max(1, steps); i++) {
      time = stepped(i * step, step, time);
    }
    return time;
  }

  /** Whether a step of the track, in which nothing breaks, touches an area that is closed then. */
  private boolean isClosed(double from, double metres, double started, double ended) {
    return waters.isClosed(
        latitude0 + from * latitudeStep,
        longitude0 + from * longitudeStep,
        latitude0 + (from + metres) * latitudeStep,
        longitude0 + (from + metres) * longitudeStep,
        departure + started,
        departure + ended);
  }

  /**
   * Whether a craft may stay at a place of the plane: no area is closed about it meanwhile, and
   * stream and wind are known and do not carry it off.
   */
  boolean isHeld(double along, double right, double from, double until) {
    double latitude = plane.latitude(along, right);
    double longitude = plane.longitude(along, right);
    if (waters.isClosed(
        latitude, longitude, latitude, longitude, departure + from, departure + until)) {
      return false;
    }
    int looks = (int) Math.ceil((until - from) / HELD_LOOK_SECONDS);
    for (int i = 0; i <= looks; i++) {
      double time = departure + from + (until - from) * i / looks;
      if (!motion.flow(latitude, longitude, time, flow) || !stems()) {
        return false;
      }
    }
    return true;
  }

  /** Whether some heading makes good what the stream carries the craft, in the wind as it is. */
  private boolean stems() {
    double rate = Math.hypot(flow[0], flow[1]);
    return rate == 0.0
        || speeds.madeGood(flow[0], flow[1], flow[2], flow[3], -flow[0] / rate, -flow[1] / rate)
            > 0.0; // false for NaN
  }

  /** One step, cut where stream or wind break. */
  private double stepped(double from, double metres, double started) {
    double time = started;
    double at = from;
    double rest = metres;
    for (int i = 0; i < CUTS && !Double.isNaN(time); i++) {
      double until = smoothUntil(time);
      double end = integrated(at, rest, time, until);
      if (!(end > until)) {
        return closing && isClosed(at, rest, time, end) ? Double.NaN : end;
      }
      // the place at which the break is met, between 0 and the rest
      double low = 0.0;
      double high = rest;
      double lowTime = time;
      double highTime = end;
      for (int k = 0; k < 8 && high - low > 1e-6 * rest; k++) {
        double middle = low + (high - low) * (until - lowTime) / (highTime - lowTime);
        middle = Math.max(low + 1e-3 * (high - low), Math.min(high - 1e-3 * (high - low), middle));
        double middleTime = integrated(at, middle, time, until);
        if (middleTime <= until) {
          low = middle;
          lowTime = middleTime;
        } else {
          high = middle;
          highTime = middleTime;
        }
        if (Math.abs(middleTime - until) < 1e-6) {
          break;
        }
      }
      double met = low + (high - low) * (until - lowTime) / (highTime - lowTime);
      if (closing && isClosed(at, met, time, until)) {
        return Double.NaN;
      }
      at += met;
      rest -= met;
      time = until;
    }
    return time;
  }

  private double integrated(double from, double metres, double time, double until) {
    double latest = until - BEFORE_BREAK_SECONDS;
    double k1 = slowness(from, Math.min(time, latest));
    double k2 = slowness(from + 0.5 * metres, Math.min(time + 0.5 * metres * k1, latest));
    double k3 = slowness(from + metres, Math.min(time + metres * (2.0 * k2 - k1), latest));
    return time + metres / 6.0 * (k1 + 4.0 * k2 + k3);
  }

  /** Seconds for a metre at a place of the track and a time; NaN where there is no way. */
  private double slowness(double metres, double time) {
    if (!motion.flow(
        latitude0 + metres * latitudeStep,
        longitude0 + metres * longitudeStep,
        departure + time,
        flow)) {
      return Double.NaN;
    }
    double made = speeds.madeGood(flow[0], flow[1], flow[2], flow[3], sine, cosine);
    if (lenient && !(made > SLOW_SHARE * calm)) {
      return slowness(made);
    }
    return made > least ? 1.0 / made : Double.NaN;
  }

  /** The tangent of 1 / speed continued below a slow speed, which is negative where lacking. */
  private double slowness(double made) {
    double slow = SLOW_SHARE * calm;
    double speed = made;
    if (Double.isNaN(speed)) {
      double across = flow[0] * cosine - flow[1] * sine;
      double along = flow[0] * sine + flow[1] * cosine;
      speed = along - Math.sqrt(Math.max(0.0, across * across - calm * calm));
      speed = Math.min(speed, 0.0);
    }
    return (1.0 + (slow - speed) / slow) / slow;
  }

  private double smoothUntil(double time) {
    if (!(time >= smoothFrom && time < smoothUntil)) {
      smoothFrom = time;
      smoothUntil = motion.nextBreakAfter(departure + time) - departure;
      if (smoothUntil - time < 2.0 * BEFORE_BREAK_SECONDS) { // standing just before a break
        smoothFrom = smoothUntil;
        smoothUntil = motion.nextBreakAfter(departure + smoothUntil) - departure;
      }
    }
    return smoothUntil;
  }
}
