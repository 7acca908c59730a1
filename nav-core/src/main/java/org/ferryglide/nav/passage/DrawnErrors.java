package org.ferryglide.nav.passage;

import java.time.Duration;
import java.util.Random;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorSource;
import org.ferryglide.nav.reckon.Spread;

/**
 * One draw of everything that may be wrong with a plan: what stays all day, and what is drawn anew
 * in every interval.
 */
final class DrawnErrors {
  /** No speed, rate or wind is drawn below this share of what was planned. */
  private static final double LEAST_FACTOR = 0.05;

  private static final ErrorSource[] HEADING = {
    ErrorSource.COMPASS, ErrorSource.VARIATION, ErrorSource.DEVIATION, ErrorSource.LEEWAY
  };

  final double departureLate;
  final double streamLate;
  final double plottedEast;
  final double plottedNorth;
  private final double start;
  private final double interval;

  /** One for each interval, the last for all time after it; angles in degrees. */
  private final double[] heading;

  private final double[] speed;
  private final double[] set;
  private final double[] rate;
  private final double[] currentEast;
  private final double[] currentNorth;
  private final double[] wind;
  private final double[] windTurn;

  /**
   * Draws.
   *
   * @param departure as planned, seconds since 1970
   * @param seconds how long errors are drawn anew
   */
  DrawnErrors(PlanErrors errors, double departure, double seconds, Random random) {
    ErrorModel model = errors.reckoning();
    departureLate = seconds(errors.departure()) * random.nextGaussian();
    streamLate = seconds(errors.turnOfStream()) * random.nextGaussian();
    Spread plotted = model.spread(ErrorSource.PLOTTED_POSITION);
    double pencil = Math.hypot(plotted.constant(), plotted.independent());
    plottedEast = pencil * random.nextGaussian();
    plottedNorth = pencil * random.nextGaussian();
    start = departure + departureLate;
    interval = seconds(model.interval());
    int count = 1 + (int) Math.ceil(seconds / interval);
    heading = new double[count];
    for (ErrorSource source : HEADING) {
      add(heading, model.spread(source), random);
    }
    speed = drawn(count, model.spread(ErrorSource.SPEED), random);
    set = drawn(count, model.spread(ErrorSource.STREAM_SET), random);
    rate = drawn(count, model.spread(ErrorSource.STREAM_RATE), random);
    double[] plot = drawn(count, model.spread(ErrorSource.PLOTTED_DIRECTION), random);
    for (int i = 0; i < count; i++) {
      heading[i] += plot[i]; // a line drawn askew turns the whole motion over the ground
      set[i] += plot[i];
    }
    currentEast = drawn(count, model.spread(ErrorSource.OTHER_CURRENT), random);
    currentNorth = drawn(count, model.spread(ErrorSource.OTHER_CURRENT), random);
    wind = drawn(count, errors.windSpeed(), random);
    windTurn = drawn(count, errors.windDirection(), random);
  }

  private static double[] drawn(int count, Spread spread, Random random) {
    double[] all = new double[count];
    add(all, spread, random);
    return all;
  }

  private static void add(double[] all, Spread spread, Random random) {
    double constant = spread.constant() * random.nextGaussian();
    for (int i = 0; i < all.length; i++) {
      all[i] += constant + spread.independent() * random.nextGaussian();
    }
  }

  private static double seconds(Duration duration) {
    return duration.getSeconds() + duration.getNano() * 1e-9;
  }

  private int at(double time) {
    return (int)
        Math.min(heading.length - 1.0, Math.max(0.0, Math.floor((time - start) / interval)));
  }

  /** When the next errors are drawn; infinite after the last. */
  double nextIntervalAfter(double time) {
    double next = start + (Math.max(0.0, Math.floor((time - start) / interval)) + 1.0) * interval;
    next = next > time ? next : next + interval;
    return next > start + (heading.length - 1) * interval ? Double.POSITIVE_INFINITY : next;
  }

  /** Factor of the speed through the water. */
  double speedFactor(double time) {
    return Math.max(LEAST_FACTOR, 1.0 + speed[at(time)]);
  }

  /** Its mean over a time. */
  double meanSpeedFactor(double from, double until) {
    double sum = 0.0;
    double time = from;
    while (time < until) {
      double next = Math.min(until, nextIntervalAfter(time));
      sum += speedFactor(time) * (next - time);
      time = next;
    }
    return until > from ? sum / (until - from) : speedFactor(from);
  }

  /** Turns a motion through the water by the error of the heading and stretches it. */
  void water(double time, double[] eastNorth) {
    turn(eastNorth, 0, heading[at(time)], speedFactor(time));
  }

  /** Makes a tabled stream the drawn one; its time is shifted elsewhere. */
  void stream(double time, double[] eastNorth, int offset) {
    int i = at(time);
    turn(eastNorth, offset, set[i], Math.max(LEAST_FACTOR, 1.0 + rate[i]));
    eastNorth[offset] += currentEast[i];
    eastNorth[offset + 1] += currentNorth[i];
  }

  /** Makes a forecast wind the drawn one. */
  void wind(double time, double[] eastNorth, int offset) {
    int i = at(time);
    turn(eastNorth, offset, windTurn[i], Math.max(LEAST_FACTOR, 1.0 + wind[i]));
  }

  private static void turn(double[] eastNorth, int offset, double degrees, double factor) {
    double sine = factor * Math.sin(Math.toRadians(degrees));
    double cosine = factor * Math.cos(Math.toRadians(degrees));
    double east = eastNorth[offset];
    double north = eastNorth[offset + 1];
    eastNorth[offset] = east * cosine + north * sine;
    eastNorth[offset + 1] = north * cosine - east * sine;
  }
}
