package org.ferryglide.nav.steer;

import org.ferryglide.nav.basics.Edge;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.plane.SteadyTriangle;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;

/**
 * What moves the craft: the stream and the wind at a place and time, and the paddler on a heading.
 * One object serves one solution and is not shared between threads.
 */
final class Motion {
  /** Break points are this close together at most where a field says nothing of them, seconds. */
  private static final double LONGEST_STEP = 600.0;

  /** Where the stream varies from place to place it is looked at so often, seconds: 75 m apart. */
  private static final double LOOK_EVERY = 50.0;

  /** How far apart headings are tried when the way to hold a course in wind is not plain. */
  private static final double TRIAL_DEGREES = 3.0;

  /** A heading that holds the course is found to the rounding of doubles. */
  private static final double HELD_DEGREES = 1e-15;

  /** A heading found by halving holds the course to better than this, or not at all. */
  private static final double SETTLED_METRES_PER_SECOND = 1e-6;

  private final StreamField stream;
  private final WindField wind;
  private final WindResponse response;
  private double paddlingSpeed;
  private final double paddlingShare;
  private final double[] sample = new double[2];

  /** Whether the wind matters to this craft at all. */
  final boolean windy;

  /** Whether place does not matter. */
  final boolean uniform;

  /** The stream at the last sample, metres a second. */
  private double streamEast;

  private double streamNorth;

  /** The wind over the water at the last sample, metres a second. */
  private double windEast;

  private double windNorth;

  /** Motion through the water for the last heading given, metres a second. */
  private double waterEast;

  private double waterNorth;

  /** The part of it that is paddled, drift down the wind left out, metres a second. */
  private double paddledEast;

  private double paddledNorth;

  /** Its size, rests taken off, metres a second. */
  private double waterSpeed;

  /** What {@link #holdCourse} found. */
  private double headingDegrees;

  private double speedMadeGood;
  private double crossStream;
  private double alongStream;
  private double shortBy;

  Motion(Craft craft, StreamField stream, WindField wind) {
    this.stream = stream;
    this.wind = wind;
    this.response = craft.windResponse();
    this.paddlingSpeed = craft.speed().metresPerSecond();
    this.paddlingShare = craft.paddlingShare();
    this.windy = !response.isNone();
    this.uniform = stream.isUniform() && (!windy || wind.isUniform());
    this.waterSpeed = paddlingSpeed * paddlingShare;
  }

  /** A motion that has already taken a steady stream and wind. */
  static Motion inSteady(Craft craft, Velocity stream, Velocity wind) {
    Motion motion = new Motion(craft, StreamField.steady(stream), WindField.steady(wind));
    motion.sample(0.0, 0.0, 0.0);
    return motion;
  }

  /** Paddles at another speed from now on, metres a second; the wind's effect stays as it is. */
  void paddleAt(double metresPerSecond) {
    paddlingSpeed = metresPerSecond;
    waterSpeed = paddlingSpeed * paddlingShare;
  }

  /** The speed through the water in calm air, rests taken off, metres a second. */
  double calmWaterSpeed() {
    return paddlingSpeed * paddlingShare;
  }

  /** Drift down the wind as a share of its speed. */
  double driftFraction() {
    return response.driftFraction();
  }

  double nextBreakAfter(double time) {
    double next = stream.nextBreakAfter(time);
    return windy ? Math.min(next, wind.nextBreakAfter(time)) : next;
  }

  /** A smooth stretch between known break points of a uniform field needs no further cutting. */
  double longestStep(double toBreak, boolean breakKnown) {
    return uniform && breakKnown ? toBreak : LONGEST_STEP;
  }

  /** How often a long step is looked along, seconds. */
  double lookEvery() {
    return uniform ? Double.POSITIVE_INFINITY : LOOK_EVERY;
  }

  /** Takes stream and wind at a place and time; false if either is not known. */
  boolean sample(double latitude, double longitude, double time) {
    double east = Earth.longitude(longitude);
    if (!stream.sample(latitude, east, time, sample, 0)) {
      return false;
    }
    streamEast = sample[0];
    streamNorth = sample[1];
    if (windy) {
      if (!wind.sample(latitude, east, time, sample, 0)) {
        return false;
      }
      windEast = sample[0] - streamEast;
      windNorth = sample[1] - streamNorth;
    }
    return true;
  }

  /** Takes a wind over the water, metres a second, for that of the last sample. */
  void feelWind(double east, double north) {
    windEast = east;
    windNorth = north;
  }

  /** The wind over the ground, whether it matters to the craft or not; false if not known. */
  boolean sampleWind(double latitude, double longitude, double time, double[] eastNorth) {
    return wind.sample(latitude, Earth.longitude(longitude), time, eastNorth, 0);
  }

  /** The motion through the water on a heading, in the wind of the last sample. */
  void head(double sine, double cosine) {
    if (!windy) {
      waterEast = waterSpeed * sine;
      waterNorth = waterSpeed * cosine;
      paddledEast = waterEast;
      paddledNorth = waterNorth;
      return;
    }
    double speed = Earth.size(windEast, windNorth);
    // where the wind comes from, seen from the bow: ahead, and to starboard
    double ahead = -(windEast * sine + windNorth * cosine);
    double starboard = -(windEast * cosine - windNorth * sine);
    double offBow = speed == 0.0 ? 0.0 : Math.toDegrees(Math.atan2(starboard, ahead));
    double paddled = paddlingSpeed;
    if (paddled > 0.0) { // a craft that only drifts gains nothing from a tail wind
      paddled = Math.max(0.0, paddled + response.speedChangeMetresPerSecond(offBow, speed));
    }
    waterSpeed = paddled * paddlingShare;
    double leeway = Math.toRadians(response.leewayDegrees(offBow, speed));
    double turnedSine = sine * Math.cos(leeway) + cosine * Math.sin(leeway);
    double turnedCosine = cosine * Math.cos(leeway) - sine * Math.sin(leeway);
    double drift = response.driftFraction();
    paddledEast = waterSpeed * turnedSine;
    paddledNorth = waterSpeed * turnedCosine;
    waterEast = paddledEast + drift * windEast;
    waterNorth = paddledNorth + drift * windNorth;
  }

  /**
   * Finds the heading that holds a course in the stream and wind of the last sample.
   *
   * @param courseDegrees the course
   * @param sine of the course
   * @param cosine of the course
   * @return {@link SteadyTriangle#SOLVED} with {@link #headingDegrees}, {@link #speedMadeGood},
   *     {@link #crossStream} and {@link #alongStream}, or why not with {@link #shortBy}, NaN where
   *     no speed is known to help
   */
  int holdCourse(double courseDegrees, double sine, double cosine) {
    double along = streamEast * sine + streamNorth * cosine;
    double across = streamEast * cosine - streamNorth * sine;
    if (!windy) {
      return triangle(courseDegrees, along, across);
    }
    double drift = response.driftFraction();
    along += drift * (windEast * sine + windNorth * cosine);
    across += drift * (windEast * cosine - windNorth * sine);
    if (paddlingSpeed == 0.0) { // no heading matters
      head(sine, cosine);
      return triangle(courseDegrees, along, across);
    }
    // leeway and speed change slowly with the heading, so that a few turns settle it
    double heading = courseDegrees;
    for (int i = 0; i < 40; i++) {
      double radians = Math.toRadians(heading);
      head(Math.sin(radians), Math.cos(radians));
      int finding = triangle(courseDegrees, along, across);
      if (finding != SteadyTriangle.SOLVED) {
        break;
      }
      double next = headingDegrees - leewayOn(heading);
      if (Math.abs(next - heading) < 1e-9) {
        headingDegrees = next;
        return finding;
      }
      heading = next;
    }
    return holdCourseByTrial(courseDegrees, along, across);
  }

  private double leewayOn(double heading) {
    double radians = Math.toRadians(heading);
    double sine = Math.sin(radians);
    double cosine = Math.cos(radians);
    double speed = Earth.size(windEast, windNorth);
    double ahead = -(windEast * sine + windNorth * cosine);
    double starboard = -(windEast * cosine - windNorth * sine);
    return response.leewayDegrees(Math.toDegrees(Math.atan2(starboard, ahead)), speed);
  }

  private int triangle(double courseDegrees, double along, double across) {
    crossStream = across;
    alongStream = along;
    int finding = SteadyTriangle.finding(along, across, waterSpeed);
    if (finding == SteadyTriangle.SOLVED) {
      headingDegrees = courseDegrees - SteadyTriangle.ferryAngleDegrees(across, waterSpeed);
      speedMadeGood = SteadyTriangle.speedMadeGood(along, across, waterSpeed);
    } else {
      shortBy = SteadyTriangle.leastWaterSpeed(along, across) - waterSpeed;
    }
    return finding;
  }

  /** Tries headings all round, and settles each one that passes through the course. */
  private int holdCourseByTrial(double courseDegrees, double along, double across) {
    double best = Double.NEGATIVE_INFINITY;
    double bestHeading = courseDegrees;
    double least = Double.POSITIVE_INFINITY;
    double before = sideways(courseDegrees, -180.0, across);
    for (double off = -180.0 + TRIAL_DEGREES; off <= 180.0; off += TRIAL_DEGREES) {
      double now = sideways(courseDegrees, off, across);
      least = Math.min(least, Math.abs(now));
      if ((before < 0.0) != (now < 0.0)) {
        boolean port = before < 0.0;
        double held =
            Edge.of(
                trial -> sideways(courseDegrees, trial, across) < 0.0 == port,
                off - TRIAL_DEGREES,
                off,
                HELD_DEGREES);
        double settled = sideways(courseDegrees, held, across);
        double madeGood = along + forward(courseDegrees);
        // leeway that jumps as the wind crosses the bow leaves no heading between
        if (madeGood > best && Math.abs(settled) < SETTLED_METRES_PER_SECOND) {
          best = madeGood;
          bestHeading = courseDegrees + held;
        }
      }
      before = now;
    }
    crossStream = across;
    alongStream = along;
    if (best > SETTLED_METRES_PER_SECOND) { // slower is the rounding of none
      double radians = Math.toRadians(bestHeading);
      head(Math.sin(radians), Math.cos(radians));
      headingDegrees = bestHeading;
      speedMadeGood = best;
      return SteadyTriangle.SOLVED;
    }
    if (best == Double.NEGATIVE_INFINITY) {
      shortBy = least;
      return SteadyTriangle.CROSS_STREAM;
    }
    // a craft that only drives backward lacks what the calm triangle says, if that lacks anything
    double lacking = SteadyTriangle.leastWaterSpeed(along, across) - calmWaterSpeed();
    shortBy = lacking > 0.0 ? lacking : Double.NaN;
    return along < 0.0 ? SteadyTriangle.ADVERSE_STREAM : SteadyTriangle.NO_PROGRESS;
  }

  /** Motion over the ground across the course on a heading so far off it, drift in the stream. */
  private double sideways(double courseDegrees, double off, double across) {
    double radians = Math.toRadians(courseDegrees + off);
    head(Math.sin(radians), Math.cos(radians));
    double course = Math.toRadians(courseDegrees);
    return across + paddledEast * Math.cos(course) - paddledNorth * Math.sin(course);
  }

  private double forward(double courseDegrees) {
    double course = Math.toRadians(courseDegrees);
    return paddledEast * Math.sin(course) + paddledNorth * Math.cos(course);
  }

  /** The stream at the last sample to the east, metres a second. */
  double streamEast() {
    return streamEast;
  }

  /** The stream at the last sample to the north, metres a second. */
  double streamNorth() {
    return streamNorth;
  }

  /** The wind over the water at the last sample to the east, metres a second. */
  double windEast() {
    return windEast;
  }

  /** The wind over the water at the last sample to the north, metres a second. */
  double windNorth() {
    return windNorth;
  }

  /** Motion through the water for the last heading to the east, metres a second. */
  double waterEast() {
    return waterEast;
  }

  /** Motion through the water for the last heading to the north, metres a second. */
  double waterNorth() {
    return waterNorth;
  }

  /** The part of {@link #waterEast} that is paddled, metres a second. */
  double paddledEast() {
    return paddledEast;
  }

  /** The part of {@link #waterNorth} that is paddled, metres a second. */
  double paddledNorth() {
    return paddledNorth;
  }

  /** The speed that is paddled, rests taken off, metres a second. */
  double waterSpeed() {
    return waterSpeed;
  }

  /** The heading that {@link #holdCourse} found, degrees. */
  double headingDegrees() {
    return headingDegrees;
  }

  /** The speed along the course on that heading, metres a second. */
  double speedMadeGood() {
    return speedMadeGood;
  }

  /** What sets across the course held, to the right: the stream and the drift, metres a second. */
  double crossStream() {
    return crossStream;
  }

  /** What sets along the course held: the stream and the drift, metres a second. */
  double alongStream() {
    return alongStream;
  }

  /** By how much the craft is too slow to hold the course, metres a second; NaN if not known. */
  double shortBy() {
    return shortBy;
  }
}
