package org.ferryglide.nav.fix;

/**
 * How far the squares may grow from the fix to the edge of the region that holds 95 of 100.
 *
 * <p>For two given lines the level is that of two normal errors, whatever the cut, and the region
 * is exact. But a fix is only given where the region is bounded, and lines nearly parallel are so
 * only by the chance that turned them apart: such fixes miss more often, and the level is raised
 * there toward the one at which the region would be endless. The limits were chosen by simulation,
 * two and three bearings of 3 and 5 degrees at cuts from 5 to 60 (region_coverage.csv has what came
 * of it).
 */
final class FixLevel {
  private FixLevel() {}

  /** The sum of two squared standard normal errors that 95 of 100 stay below. */
  static final double SQUARES = -2.0 * Math.log(0.05);

  /**
   * Below this the region would be endless, or as good as: two lines then cross at less than three
   * standard deviations of their cut.
   */
  private static final double ENDLESS = 0.30;

  /** From here on the level is the plain one: a cut of five standard deviations. */
  private static final double PLAIN = 0.46;

  /** Share of the way to the level at which the region is endless, and the highest level used. */
  private static final double SHARE = 0.93;

  private static final double HIGHEST = 14.0;

  /**
   * The level.
   *
   * @param lopsidedness how much less what is observed changes toward the end of the ellipse than
   *     for straight lines, 1 for those
   */
  static double squares(double lopsidedness) {
    if (lopsidedness >= PLAIN) {
      return SQUARES;
    }
    // Two bearings whose cut is d of its standard deviations disagree at the end of their ellipse,
    // of k standard deviations, by (d / (d + k))² of what straight lines would.
    double root = Math.sqrt(lopsidedness);
    double cut = Math.sqrt(SQUARES) * root / (1.0 - root);
    return Math.max(SQUARES, Math.min(HIGHEST, SHARE * SHARE * cut * cut));
  }

  static boolean isUnbounded(double lopsidedness) {
    return lopsidedness < ENDLESS;
  }
}
