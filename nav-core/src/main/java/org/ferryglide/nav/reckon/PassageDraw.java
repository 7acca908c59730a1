package org.ferryglide.nav.reckon;

import java.util.List;
import java.util.Random;

/** One passage at a time with errors drawn at random, relative to the passage without error. */
final class PassageDraw {

  private static final ErrorSource[] DRAWN = {
    ErrorSource.COMPASS,
    ErrorSource.VARIATION,
    ErrorSource.DEVIATION,
    ErrorSource.LEEWAY,
    ErrorSource.SPEED,
    ErrorSource.STREAM_SET,
    ErrorSource.STREAM_RATE,
    ErrorSource.PLOTTED_DIRECTION
  };
  private static final int HEADING_ERRORS = 4;
  private static final int SPEED = 4;
  private static final int SET = 5;
  private static final int RATE = 6;
  private static final int PLOT = 7;

  private final List<SteadyRun> runs;
  private final ErrorModel model;
  private final double intervalSeconds;
  private final Random random;
  private final double[] constant = new double[DRAWN.length];
  private final double[] now = new double[DRAWN.length];

  private double constantCurrentEast;
  private double constantCurrentNorth;
  private double currentEast;
  private double currentNorth;
  private double east;
  private double north;

  PassageDraw(List<SteadyRun> runs, ErrorModel model, Random random) {
    this.runs = List.copyOf(runs);
    this.model = model;
    this.random = random;
    intervalSeconds = model.intervalSeconds();
  }

  double east() {
    return east;
  }

  double north() {
    return north;
  }

  void paddle() {
    Spread other = model.spread(ErrorSource.OTHER_CURRENT);
    Spread plotted = model.spread(ErrorSource.PLOTTED_POSITION);
    for (int i = 0; i < DRAWN.length; i++) {
      constant[i] = model.spread(DRAWN[i]).constant() * random.nextGaussian();
    }
    constantCurrentEast = other.constant() * random.nextGaussian();
    constantCurrentNorth = other.constant() * random.nextGaussian();
    double pencil = Math.hypot(plotted.constant(), plotted.independent());
    east = pencil * random.nextGaussian();
    north = pencil * random.nextGaussian();
    double inInterval = 0.0;
    drawAnew(other);
    for (SteadyRun run : runs) {
      double left = run.seconds();
      while (left > 0.0) {
        double dt = Math.min(left, intervalSeconds - inInterval);
        advance(run, dt);
        left -= dt;
        inInterval += dt;
        if (inInterval >= intervalSeconds * (1.0 - 1e-12)) {
          inInterval = 0.0;
          drawAnew(other);
        }
      }
    }
  }

  private void drawAnew(Spread other) {
    for (int i = 0; i < DRAWN.length; i++) {
      now[i] = constant[i] + model.spread(DRAWN[i]).independent() * random.nextGaussian();
    }
    currentEast = constantCurrentEast + other.independent() * random.nextGaussian();
    currentNorth = constantCurrentNorth + other.independent() * random.nextGaussian();
  }

  private void advance(SteadyRun run, double dt) {
    double heading = now[PLOT];
    for (int i = 0; i < HEADING_ERRORS; i++) {
      heading += now[i];
    }
    double ve = run.throughWater().eastMetresPerSecond();
    double vn = run.throughWater().northMetresPerSecond();
    double ue = run.stream().eastMetresPerSecond();
    double un = run.stream().northMetresPerSecond();
    double cos = Math.cos(Math.toRadians(heading));
    double sin = Math.sin(Math.toRadians(heading));
    double faster = 1.0 + now[SPEED];
    double cosSet = Math.cos(Math.toRadians(now[SET] + now[PLOT]));
    double sinSet = Math.sin(Math.toRadians(now[SET] + now[PLOT]));
    double stronger = 1.0 + now[RATE];
    east +=
        dt
            * (faster * (ve * cos + vn * sin)
                - ve
                + stronger * (ue * cosSet + un * sinSet)
                - ue
                + currentEast);
    north +=
        dt
            * (faster * (vn * cos - ve * sin)
                - vn
                + stronger * (un * cosSet - ue * sinSet)
                - un
                + currentNorth);
  }
}
