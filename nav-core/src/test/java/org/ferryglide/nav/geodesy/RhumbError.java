package org.ferryglide.nav.geodesy;

import java.math.BigDecimal;

/**
 * How far the kernel's answer is from the exact one, over the ground, after the half unit in the
 * last place that no double can avoid is taken off each printed number.
 */
record RhumbError(double lengthNanometres, double courseNanometres, double endNanometres) {
  private static final double METRES_IN_RADIAN = 6378137.0;
  private static final double METRES_IN_DEGREE = Math.toRadians(METRES_IN_RADIAN);

  static RhumbError ofInverse(
      ExactRhumb checker, double lat1, double lon1, double lat2, double lon2, BigDecimal[] exact) {
    double[] out = new double[2];
    RhumbLines.inverse(checker.figure, lat1, lon1, lat2, lon2, out, 0);
    double length = beyondRounding(out[1], exact[1]);
    double turn = beyondRounding(out[0], exact[0]);
    if (turn > 180.0) {
      turn = 360.0 - turn;
    }
    return new RhumbError(length * 1e9, Math.toRadians(turn) * out[1] * 1e9, 0.0);
  }

  static RhumbError ofDirect(
      ExactRhumb checker,
      double lat,
      double lon,
      double course,
      double metres,
      BigDecimal[] exact) {
    double[] out = new double[2];
    RhumbLines.direct(checker.figure, lat, lon, course, metres, out, 0);
    double exactLat = exact[0].doubleValue();
    double north = beyondRounding(out[0], exact[0]) * METRES_IN_DEGREE;
    double turns = Math.rint((out[1] - exact[1].doubleValue()) / 360.0);
    BigDecimal reduced = exact[1].add(BigDecimal.valueOf(360.0 * turns));
    double east =
        beyondRounding(out[1], reduced) * METRES_IN_DEGREE * Math.cos(Math.toRadians(exactLat));
    return new RhumbError(0.0, 0.0, Math.hypot(north, east) * 1e9);
  }

  private static double beyondRounding(double value, BigDecimal exact) {
    double error = new BigDecimal(value).subtract(exact).abs().doubleValue();
    return Math.max(0.0, error - 0.5 * Math.ulp(value));
  }
}
