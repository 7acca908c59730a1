package org.ferryglide.tide.sheet;

/**
 * Whether figures of a table look wrong beside each other; the thresholds are those of {@link
 * TideJudgements}. What the functions say of honest tables was measured on the predicted tides of
 * the year 2026 at 39 stations of the United States, diurnal and mixed ones among them, as printed
 * to minutes and centimetres: of 53 000 waters no height is doubted, and three times.
 *
 * <pre>{@code
 * double[] metres = {0.7, 4.2, 0.9, 4.4, 0.8, 14.3, 0.7, 4.5, 0.8, 4.6};
 * Plausibility.heightIsFar(metres, 5); // true: among 4.2, 4.4, 4.5 and 4.6
 * }</pre>
 *
 * <p>Arrays are never written to; NaN stands for a figure that is not known and is never doubted.
 */
public final class Plausibility {
  /** Waters on either side that a height is compared with; half of them are of its kind. */
  private static final int NEAR = 8;

  /** Fewer waters of a kind than this say little about the next. */
  private static final int FEWEST = 3;

  /** A height is not doubted for less, metres. */
  private static final double LEAST_METRES = 0.3;

  /** Waters in a lunar day of a semi-diurnal tide. */
  private static final int A_DAY = 4;

  /** Intervals of a tide that turns four times a day, hours; common practice, no source. */
  private static final double SHORTEST_HOURS = 4.5;

  private static final double LONGEST_HOURS = 8.0;

  private static final double LEAST_KNOTS = 1.5;

  /** Sets of weaker streams turn as they like, knots. */
  private static final double WEAK_KNOTS = 0.3;

  /** Hours before and after agree if their sets are within this, degrees. */
  private static final double AGREE_DEGREES = 60.0;

  /** Hours whose rate is at least this share of the largest count as flood or ebb. */
  private static final double STRONG_SHARE = 0.3;

  private Plausibility() {}

  /**
   * Whether a high or low water is far higher or lower than those of its kind near it.
   *
   * @param heights heights of waters in order of time, high and low in turn, metres
   * @param index which water
   * @return true if it is beyond {@link TideJudgements#HEIGHT_FAR}; false where fewer than three
   *     waters of its kind are near
   */
  public static boolean heightIsFar(double[] heights, int index) {
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    int count = 0;
    double change = 0.0;
    int first = Math.max(0, index - NEAR);
    int last = Math.min(heights.length - 1, index + NEAR);
    for (int i = first; i <= last; i++) {
      if (i != index && (i - index) % 2 == 0) {
        lowest = Math.min(lowest, heights[i]);
        highest = Math.max(highest, heights[i]);
        count++;
      }
      if (i < last && i != index && i + 1 != index) {
        change = Math.max(change, Math.abs(heights[i + 1] - heights[i]));
      }
    }
    double beyond = Math.max(heights[index] - highest, lowest - heights[index]);
    return count >= FEWEST
        && beyond > LEAST_METRES
        && beyond > TideJudgements.HEIGHT_FAR.threshold() * change;
  }

  /**
   * Whether a water of a semi-diurnal tide comes much earlier or later than the waters of the days
   * before and after lead to expect.
   *
   * @param seconds times of waters in order, high and low in turn, seconds
   * @param index which water
   * @return true if it is beyond {@link TideJudgements#TIME_FAR}; false where the tide near it is
   *     not semi-diurnal, or the table has too few waters beside it
   */
  public static boolean timeIsFar(double[] seconds, int index) {
    int day = index < A_DAY ? A_DAY : index + A_DAY >= seconds.length ? -A_DAY : 0;
    if (day == 0) {
      return isFarFrom(
          0.5 * (seconds[index - A_DAY] + seconds[index + A_DAY]),
          seconds,
          index,
          index - A_DAY,
          index + A_DAY);
    }
    int furthest = index + 3 * day;
    if (furthest < 0 || furthest >= seconds.length) {
      return false;
    }
    int near = index + day;
    int far = index + 2 * day;
    return isFarFrom(
            2.0 * seconds[near] - seconds[far],
            seconds,
            index,
            Math.min(index, far),
            Math.max(index, far))
        && !timeIsFar(seconds, near)
        && !timeIsFar(seconds, far); // or one of those is to blame
  }

  private static boolean isFarFrom(
      double expected, double[] seconds, int index, int first, int last) {
    for (int i = first; i < last; i++) {
      double hours = (seconds[i + 1] - seconds[i]) / 3600.0;
      if (i != index && i + 1 != index && !(hours >= SHORTEST_HOURS && hours <= LONGEST_HOURS)) {
        return false;
      }
    }
    return Math.abs(seconds[index] - expected) > 3600.0 * TideJudgements.TIME_FAR.threshold();
  }

  /**
   * Whether the rise and the fall beside a water are so unlike that their mean says little, as at a
   * double high water or in a mixed tide.
   *
   * @param riseMetres rise, metres, not negative
   * @param fallMetres fall, metres, not negative
   * @return true if the smaller is less than the share of {@link TideJudgements#RANGE_UNEQUAL} of
   *     the larger
   */
  public static boolean rangeIsUnequal(double riseMetres, double fallMetres) {
    return Math.min(riseMetres, fallMetres)
        < TideJudgements.RANGE_UNEQUAL.threshold() * Math.max(riseMetres, fallMetres);
  }

  /**
   * The range of a tide for scaling a stream: the mean of its rise and its fall, or where they are
   * unequal the larger, so that a stream is never scaled down by a dip between two high waters.
   *
   * @param riseMetres rise, metres, not negative
   * @param fallMetres fall, metres, not negative
   * @return the range, metres
   */
  public static double rangeMetres(double riseMetres, double fallMetres) {
    return rangeIsUnequal(riseMetres, fallMetres)
        ? Math.max(riseMetres, fallMetres)
        : 0.5 * (riseMetres + fallMetres);
  }

  /**
   * Whether a rate of a stream table is far above those of the hours beside it.
   *
   * @param knots rates in order of time, knots
   * @param index which hour; the first and the last are compared with one neighbour
   * @return true if it is beyond {@link TideJudgements#RATE_FAR}
   */
  public static boolean rateIsFar(double[] knots, int index) {
    double before = index > 0 ? knots[index - 1] : 0.0;
    double after = index + 1 < knots.length ? knots[index + 1] : 0.0;
    double larger = Math.max(before, after);
    return knots.length > 1
        && knots[index] > larger + LEAST_KNOTS
        && knots[index] > TideJudgements.RATE_FAR.threshold() * larger;
  }

  /**
   * Whether a maximum of a current is far above those of its kind near it, floods beside floods or
   * ebbs beside ebbs. Several are looked at, since in a mixed tide a strong and a weak one come in
   * turn.
   *
   * @param knots maxima of one kind in order of time, knots
   * @param index which maximum
   * @return true if it is beyond {@link TideJudgements#RATE_FAR} from the largest of the four
   *     before and the four after; false if fewer than three are there
   */
  public static boolean maximumIsFar(double[] knots, int index) {
    int each = NEAR / 2;
    int first = Math.max(0, index - each);
    int last = Math.min(knots.length - 1, index + each);
    double largest = 0.0;
    for (int i = first; i <= last; i++) {
      largest = i == index ? largest : Math.max(largest, knots[i]);
    }
    return last - first >= FEWEST
        && knots[index] > largest + LEAST_KNOTS
        && knots[index] > TideJudgements.RATE_FAR.threshold() * largest;
  }

  /**
   * Whether a stream turns round for one hour and back again.
   *
   * @param setDegrees sets in order of time, degrees
   * @param knots rates of the same hours, knots
   * @param index which hour
   * @return true if it is beyond {@link TideJudgements#SET_TURNED_FOR_AN_HOUR} from both hours
   *     beside it; false at the ends, and where one of the three runs below 0.3 kn
   */
  public static boolean setIsTurnedForAnHour(double[] setDegrees, double[] knots, int index) {
    if (index < 1 || index + 1 >= knots.length) {
      return false;
    }
    double least = TideJudgements.SET_TURNED_FOR_AN_HOUR.threshold();
    return Math.min(knots[index], Math.min(knots[index - 1], knots[index + 1])) >= WEAK_KNOTS
        && apart(setDegrees[index - 1], setDegrees[index + 1]) <= AGREE_DEGREES
        && apart(setDegrees[index], setDegrees[index - 1]) >= least
        && apart(setDegrees[index], setDegrees[index + 1]) >= least;
  }

  /**
   * Whether the ebb of a stream table sets as its flood does.
   *
   * @param setDegrees sets of a tide's hours, degrees
   * @param knots rates of the same hours, knots
   * @return true if the sets of all hours that run at three tenths of the largest rate or more lie
   *     within {@link TideJudgements#NEVER_TURNS}, over more than half of the hours
   */
  public static boolean neverTurns(double[] setDegrees, double[] knots) {
    double largest = 0.0;
    for (double rate : knots) {
      largest = Math.max(largest, rate);
    }
    int strong = 0;
    for (int i = 0; i < knots.length; i++) {
      if (largest > 0.0 && knots[i] >= STRONG_SHARE * largest) {
        strong++;
        for (int j = 0; j < i; j++) {
          if (knots[j] >= STRONG_SHARE * largest
              && apart(setDegrees[i], setDegrees[j]) > TideJudgements.NEVER_TURNS.threshold()) {
            return false;
          }
        }
      }
    }
    return 2 * strong > knots.length;
  }

  /**
   * Which share of a stream table's rows have the neap rate above the spring rate.
   *
   * @param springKnots rates at springs, knots
   * @param neapKnots rates at neaps of the same rows, knots
   * @return share of the rows whose two rates differ, in [0, 1]; 0 if none differ
   */
  public static double shareOfNeapAboveSpring(double[] springKnots, double[] neapKnots) {
    int above = 0;
    int differing = 0;
    for (int i = 0; i < springKnots.length; i++) {
      above += neapKnots[i] > springKnots[i] ? 1 : 0;
      differing += neapKnots[i] != springKnots[i] ? 1 : 0;
    }
    return differing == 0 ? 0.0 : (double) above / differing;
  }

  /**
   * Whether the neap range of a port is so small beside its spring range that it looks like a cell
   * left at zero: rates would be scaled down further than at nearly any port.
   *
   * @param neapMetres mean neap range, metres
   * @param springMetres mean spring range, metres, above the neap range
   * @return true if it is below the share of {@link TideJudgements#NEAP_RANGE_SMALL}
   */
  public static boolean neapRangeIsSmall(double neapMetres, double springMetres) {
    return neapMetres < TideJudgements.NEAP_RANGE_SMALL.threshold() * springMetres;
  }

  private static double apart(double oneDegrees, double otherDegrees) {
    return Math.abs(Math.IEEEremainder(oneDegrees - otherDegrees, 360.0));
  }
}
