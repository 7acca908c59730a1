package org.ferryglide.nav.quickest;

import java.util.Random;
import org.ferryglide.nav.water.StreamField;

/**
 * Smooth eddies in the plane patch, kilometres and units of the craft's speed: each turns about its
 * middle with the speed of a Gaussian's slope, strongest at its radius. They may turn with a tide.
 */
final class Eddies {
  /** Beyond so many radii, squared, an eddy is slack: less than 1e-9 of its greatest speed. */
  private static final double FAR = 49.0;

  final int count;
  private final double[] x;
  private final double[] y;
  private final double[] radius;
  private final double[] spin;

  /** Cosine and sine of the phase of the tide. */
  private final double[] cosine;

  private final double[] sine;

  /** Radians of the tide for a unit of time; 0 for eddies that stand still in time. */
  final double tide;

  private Eddies(int count, double tide) {
    this.count = count;
    this.tide = tide;
    x = new double[count];
    y = new double[count];
    radius = new double[count];
    spin = new double[count];
    cosine = new double[count];
    sine = new double[count];
  }

  /** One eddy that stands still. */
  static Eddies one(double x, double y, double radius, double spin) {
    Eddies eddies = new Eddies(1, 0.0);
    eddies.x[0] = x;
    eddies.y[0] = y;
    eddies.radius[0] = radius;
    eddies.spin[0] = spin;
    return eddies;
  }

  /**
   * Eddies strewn about the way from (0, 0) to (10, 0).
   *
   * @param fewest how many at least
   * @param most how many at most
   * @param weakest least greatest speed of an eddy, in craft speeds
   * @param strongest greatest speed of an eddy, in craft speeds
   * @param tide radians of the tide for a unit of time
   */
  static Eddies random(
      Random random, int fewest, int most, double weakest, double strongest, double tide) {
    Eddies eddies = new Eddies(fewest + random.nextInt(most - fewest + 1), tide);
    double size = eddies.count > 4 ? 0.7 : 1.0;
    for (int i = 0; i < eddies.count; i++) {
      eddies.x[i] = 0.5 + 9.0 * random.nextDouble();
      eddies.y[i] = -2.5 + 5.0 * random.nextDouble();
      eddies.radius[i] = size * (0.6 + 1.2 * random.nextDouble());
      double speed = weakest + (strongest - weakest) * random.nextDouble();
      eddies.spin[i] = random.nextBoolean() ? speed : -speed;
      double phase = 2.0 * Math.PI * random.nextDouble();
      eddies.cosine[i] = Math.cos(phase);
      eddies.sine[i] = Math.sin(phase);
    }
    return eddies;
  }

  /** East and north parts of the stream in craft speeds. */
  void at(double px, double py, double t, double[] out) {
    double east = 0.0;
    double north = 0.0;
    double tideCosine = tide == 0.0 ? 1.0 : Math.cos(tide * t);
    double tideSine = tide == 0.0 ? 0.0 : Math.sin(tide * t);
    for (int i = 0; i < count; i++) {
      double dx = (px - x[i]) / radius[i];
      double dy = (py - y[i]) / radius[i];
      double square = dx * dx + dy * dy;
      if (square > FAR) {
        continue;
      }
      double s = spin[i] * Math.exp(0.5 - 0.5 * square);
      if (tide != 0.0) {
        s *= cosine[i] * tideCosine - sine[i] * tideSine; // the cosine of the sum
      }
      east -= s * dy;
      north += s * dx;
    }
    out[0] = east;
    out[1] = north;
  }

  /**
   * East and north parts at a place as the factors of the cosine and of the sine of the tide, in
   * turn: what {@link #at} tells there at any time, for one look.
   */
  void parts(double px, double py, double[] out) {
    double quarter = tide == 0.0 ? 0.0 : 0.5 * Math.PI / tide;
    at(px, py, 0.0, out);
    double east = out[0];
    double north = out[1];
    at(px, py, quarter, out);
    out[2] = tide == 0.0 ? 0.0 : out[0];
    out[3] = tide == 0.0 ? 0.0 : out[1];
    out[0] = east;
    out[1] = north;
  }

  /** The same as a stream over the plane patch, for a craft of a metre a second. */
  StreamField field() {
    return (latitude, longitude, seconds, out, offset) -> {
      double[] flow = new double[2];
      at(PlanePatch.x(longitude), PlanePatch.y(latitude), seconds / PlanePatch.UNIT_METRES, flow);
      out[offset] = flow[0];
      out[offset + 1] = flow[1];
      return true;
    };
  }
}
