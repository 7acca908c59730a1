package org.ferryglide.nav.fix;

/**
 * How far the squares may grow from the fix to the edge of the region that holds 95 of 100.
 *
 * <p>For two given lines the level is that of two normal errors, whatever the cut, and the region
 * is exact. But a fix is only given where the region is bounded, and lines nearly parallel are so
 * only by the chance that turned them apart: such fixes miss more often (lines of 5 degrees that
 * truly cross at 5 are held in 71 to 75 of 100), and the level is raised there toward the one at
 * which the region would be endless. The limits were chosen by simulation, two and three bearings
 * of 3 and 5 degrees at cuts from 5 to 60 (region_coverage.csv has what came of it).
 *
 * <p>That is why the region holds more than 95 of 100 between the poor cuts and the good ones. The
 * level can only follow the cut that is seen, of which its own standard deviation is all that
 * matters: lines truly 5 degrees apart and lines of 5 degrees truly 45 apart both show cuts of 3 to
 * 5.2 standard deviations, and what the first need is more than the second would. Of the second a
 * third of the fixes that miss at the plain level show such cuts, so that their 95 become 96.5. A
 * search over a thousand forms of the rise, none below the plain level, found none with less at 30
 * to 45 degrees that holds 94.5 at 5. Lines of 5 degrees at 30 have 96.4 at the plain level
 * already, since the twelfth of the draws that is refused as endless holds the misses. Only a level
 * below the plain one for cuts seen of 5 to 7 standard deviations would bring these to 95, with a
 * region there that holds fewer than it says of the fixes it is given for; the surplus is the
 * lesser fault.
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
