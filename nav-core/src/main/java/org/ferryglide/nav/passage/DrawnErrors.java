package org.ferryglide.nav.passage;

import java.time.Duration;
import java.util.Arrays;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorSource;
import org.ferryglide.nav.reckon.Spread;

/**
 * One draw of everything that may be wrong with a plan: what stays all day, and what is drawn anew
 * in every interval. One object holds one draw after another, for one thread.
 */
final class DrawnErrors {
  /** No speed, rate or wind is drawn below this share of what was planned. */
  private static final double LEAST_FACTOR = 0.05;

  private static final ErrorSource[] HEADING = {
    ErrorSource.COMPASS, ErrorSource.VARIATION, ErrorSource.DEVIATION, ErrorSource.LEEWAY
  };

  double departureLate;
  double streamLate;
  double plottedEast;
  double plottedNorth;
  private double start;
  private final double interval;

  /** One over the interval, which is quicker to take times with. */
  private final double perSecond;

  /** One for each interval, the last for all time after it. */
  private final double[] speed;

  private final double[] currentEast;
  private final double[] currentNorth;

  /** Sine and cosine of a turn, times a factor, for each interval. */
  private final double[] water;

  private final double[] stream;
  private final double[] wind;

  /** Room for one quantity in each interval, and for the line drawn askew. */
  private final double[] room;

  private final double[] plot;

  /**
   * Room for draws, one after another; nothing is drawn yet.
   *
   * @param seconds how long errors are drawn anew
   */
  DrawnErrors(PlanErrors errors, double seconds) {
    interval = seconds(errors.reckoning().interval());
    perSecond = 1.0 / interval;
    int count = 1 + (int) Math.ceil(seconds / interval);
    speed = new double[count];
    currentEast = new double[count];
    currentNorth = new double[count];
    water = new double[2 * count];
    stream = new double[2 * count];
    wind = new double[2 * count];
    room = new double[count];
    plot = new double[count];
  }

  /**
   * Draws anew.
   *
   * @param departure as planned, seconds since 1970
   * @param isWindy whether a wind is known, which is drawn last
   */
  void draw(PlanErrors errors, double departure, boolean isWindy, Normals normals) {
    ErrorModel model = errors.reckoning();
    departureLate = seconds(errors.departure()) * normals.next();
    streamLate = seconds(errors.turnOfStream()) * normals.next();
    Spread plotted = model.spread(ErrorSource.PLOTTED_POSITION);
    double pencil = Math.hypot(plotted.constant(), plotted.independent());
    plottedEast = pencil * normals.next();
    plottedNorth = pencil * normals.next();
    start = departure + departureLate;
    drawInto(plot, model.spread(ErrorSource.PLOTTED_DIRECTION), normals);
    System.arraycopy(plot, 0, room, 0, room.length); // a line askew turns the whole motion
    for (ErrorSource source : HEADING) {
      add(room, model.spread(source), normals);
    }
    drawInto(speed, model.spread(ErrorSource.SPEED), normals);
    factors(speed);
    turns(room, speed, water);
    add(plot, model.spread(ErrorSource.STREAM_SET), normals);
    drawInto(room, model.spread(ErrorSource.STREAM_RATE), normals);
    factors(room);
    turns(plot, room, stream);
    drawInto(currentEast, model.spread(ErrorSource.OTHER_CURRENT), normals);
    drawInto(currentNorth, model.spread(ErrorSource.OTHER_CURRENT), normals);
    if (isWindy) {
      drawInto(room, errors.windSpeed(), normals);
      factors(room);
      drawInto(plot, errors.windDirection(), normals);
      turns(plot, room, wind);
    }
  }

  /** No draw: a speed and a stream that are other than planned all day. */
  private DrawnErrors(double speedFactor, double rateFactor, double streamLate) {
    departureLate = 0.0;
    this.streamLate = streamLate;
    plottedEast = 0.0;
    plottedNorth = 0.0;
    start = 0.0;
    interval = Double.POSITIVE_INFINITY;
    perSecond = 0.0;
    speed = new double[] {speedFactor};
    currentEast = new double[1];
    currentNorth = new double[1];
    water = new double[] {0.0, speedFactor};
    stream = new double[] {0.0, rateFactor};
    wind = new double[] {0.0, 1.0};
    room = new double[1];
    plot = new double[1];
  }

  /** A party at another speed and a stream of another rate, later by the table's own course. */
  static DrawnErrors steady(double speedFactor, double rateFactor, double streamLate) {
    return new DrawnErrors(speedFactor, rateFactor, streamLate);
  }

  private static void factors(double[] shares) {
    for (int i = 0; i < shares.length; i++) {
      shares[i] = Math.max(LEAST_FACTOR, 1.0 + shares[i]);
    }
  }

  private static void turns(double[] degrees, double[] factors, double[] turns) {
    for (int i = 0; i < degrees.length; i++) {
      double radians = Math.toRadians(degrees[i]);
      turns[2 * i] = factors[i] * Math.sin(radians);
      turns[2 * i + 1] = factors[i] * Math.cos(radians);
    }
  }

  private static void drawInto(double[] all, Spread spread, Normals normals) {
    Arrays.fill(all, 0.0);
    add(all, spread, normals);
  }

  private static void add(double[] all, Spread spread, Normals normals) {
    if (spread.equals(Spread.NONE)) {
      return;
    }
    double constant = spread.constant() * normals.next();
    double independent = spread.independent();
    for (int i = 0; i < all.length; i++) {
      all[i] += independent > 0.0 ? constant + independent * normals.next() : constant;
    }
  }

  private static double seconds(Duration duration) {
    return Seconds.of(duration);
  }

  private int at(double time) {
    return Math.max(0, Math.min(speed.length - 1, (int) ((time - start) * perSecond)));
  }

  /** When the next errors are drawn; infinite after the last. */
  double nextIntervalAfter(double time) {
    double next = start + (Math.max(0.0, Math.floor((time - start) * perSecond)) + 1.0) * interval;
    next = next > time ? next : next + interval;
    return next > start + (speed.length - 1) * interval ? Double.POSITIVE_INFINITY : next;
  }

  /** Factor of the speed through the water. */
  double speedFactor(double time) {
    return speed[at(time)];
  }

  /** Mean factor of the speed through the water over a time. */
  double meanSpeedFactor(double from, double until) {
    double sum = 0.0;
    double time = from;
    while (time < until) {
      double next = Math.min(until, nextIntervalAfter(time));
      sum += speed[at(time)] * (next - time);
      time = next;
    }
    return until > from ? sum / (until - from) : speed[at(from)];
  }

  /** Turns a motion through the water by the error of the heading and stretches it. */
  void water(double time, double[] eastNorth) {
    turn(water, at(time), eastNorth, 0);
  }

  /** Makes a tabled stream the drawn one; its time is shifted elsewhere. */
  void stream(double time, double[] eastNorth, int offset) {
    int i = at(time);
    turn(stream, i, eastNorth, offset);
    eastNorth[offset] += currentEast[i];
    eastNorth[offset + 1] += currentNorth[i];
  }

  /** Makes a forecast wind the drawn one. */
  void wind(double time, double[] eastNorth, int offset) {
    turn(wind, at(time), eastNorth, offset);
  }

  private static void turn(double[] turns, int i, double[] eastNorth, int offset) {
    double sine = turns[2 * i];
    double cosine = turns[2 * i + 1];
    double east = eastNorth[offset];
    double north = eastNorth[offset + 1];
    eastNorth[offset] = east * cosine + north * sine;
    eastNorth[offset + 1] = north * cosine - east * sine;
  }
}
