package org.ferryglide.nav.quickest;

/**
 * A craft of speed 1.5 whose allowances for wind bend in the middles of forces 3, 4 and 5, as the
 * common practice of a day's load has them; asked for its motion only.
 */
record BentCraft() implements CraftMotion {
  private static final double KNOT = 1852.0 / 3600.0;

  /**
   * Knots of wind, and knots gained with the wind ahead and astern, and leeway abeam in degrees.
   */
  private static final double[][] ROWS = {
    {0.0, 0.0, 0.0, 0.0},
    {8.5, -0.5, 0.2, 3.5},
    {13.5, -1.0, 0.4, 7.5},
    {19.0, -1.75, 0.6, 12.5},
    {24.5, -2.5, 0.8, 17.5}
  };

  private static double read(double knots, int column) {
    int i = 1;
    while (i + 1 < ROWS.length && ROWS[i][0] < knots) {
      i++;
    }
    double share = (knots - ROWS[i - 1][0]) / (ROWS[i][0] - ROWS[i - 1][0]);
    return ROWS[i - 1][column] + share * (ROWS[i][column] - ROWS[i - 1][column]);
  }

  @Override
  public void throughWater(double heading, double[] flow, double[] eastNorth) {
    double knots = Math.hypot(flow[2], flow[3]) / KNOT;
    double from = Math.atan2(-flow[2], -flow[3]);
    double off = Math.IEEEremainder(from - heading, 2.0 * Math.PI); // to starboard
    double abeam = 1.0 - Math.abs(Math.abs(off) - 0.5 * Math.PI) / (0.5 * Math.PI);
    boolean ahead = Math.abs(off) < 0.5 * Math.PI;
    double gained = (1.0 - abeam) * read(knots, ahead ? 1 : 2);
    double leeway = abeam * Math.toRadians(read(knots, 3));
    double track = heading - Math.copySign(leeway, off);
    double speed = Math.max(0.0, calmSpeed() + KNOT * gained);
    eastNorth[0] = speed * Math.sin(track);
    eastNorth[1] = speed * Math.cos(track);
  }

  @Override
  public boolean flow(double latitude, double longitude, double time, double[] flow) {
    return false;
  }

  @Override
  public double calmSpeed() {
    return 1.5;
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
