package org.ferryglide.tide.teach;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.Quantity;
import org.ferryglide.nav.teach.Rule;
import org.ferryglide.tide.height.NormalisedCurve;

/**
 * Problems of the height of the tide: between two waters by twelfths, by the cosine and by a
 * printed curve, and the depth over a bank.
 *
 * <p>Clock times are minutes since midnight, local, and may pass midnight. Twelfths are the rule of
 * thumb 1, 2, 3, 3, 2, 1 in six equal parts of the interval; like the slips they are common
 * practice, no source.
 *
 * <pre>{@code
 * TideProblems.Water low = new TideProblems.Water(370.0, Distance.ofMetres(1.2)); // 06:10
 * TideProblems.Water high = new TideProblems.Water(742.0, Distance.ofMetres(5.4)); // 12:22
 * Problem problem = TideProblems.byTwelfths(low, high, 540.0);
 * problem.answer(); // metres at 09:00
 * }</pre>
 */
public final class TideProblems {
  private static final String BEFORE = "Water before";
  private static final String AFTER = "Water after";
  private static final String LEVEL_BEFORE = "Height before";
  private static final String LEVEL_AFTER = "Height after";
  private static final String AT = "Time";
  private static final String RANGE = "Rise";
  private static final String SHARE = "Share of the interval";
  private static final String HEIGHT = "Height";
  private static final String DRIES = "Dries";
  private static final String CHARTED = "Charted depth";
  private static final String MEAN_LEVEL = "Mean level";
  private static final String DEPTH = "Depth";

  private TideProblems() {}

  /**
   * A high or low water of the table.
   *
   * @param clockMinutes time of day, minutes since midnight, finite
   * @param height height above the datum
   */
  public record Water(double clockMinutes, Distance height) implements Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * Checks the parts.
     *
     * @param clockMinutes time of day, minutes since midnight
     * @param height height above the datum
     * @throws IllegalArgumentException if the time is NaN or infinite
     */
    public Water {
      Arguments.finite(clockMinutes, "time", "minutes");
      Objects.requireNonNull(height, "height");
    }
  }

  /**
   * The height between two waters by the rule of twelfths.
   *
   * @param before the water before
   * @param after the next water
   * @param clockMinutes the time asked for, between the two
   * @return the problem; its answer is the height
   * @throws IllegalArgumentException if the waters are not in order or the time not between them
   */
  public static Problem byTwelfths(Water before, Water after, double clockMinutes) {
    return between(
            "Height of the tide by twelfths",
            before,
            after,
            clockMinutes,
            "Twelfths gone",
            Quantity.COUNT,
            "1, 2, 3, 3, 2, 1 in the six parts of the interval",
            f -> twelfths(f.of(SHARE)),
            12.0)
        .slip(
            "Twelfths gone", "counted from the wrong water", 4.0, f -> 12.0 - twelfths(f.of(SHARE)))
        .slip("Twelfths gone", "two in each part: a straight line", 2.0, f -> 12.0 * f.of(SHARE))
        .estimated("half the range in the middle two hours")
        .checked("between the two waters, and nearer to the nearer one");
  }

  /**
   * The height between two waters by the cosine.
   *
   * @param before the water before
   * @param after the next water
   * @param clockMinutes the time asked for, between the two
   * @return the problem; its answer is the height
   * @throws IllegalArgumentException if the waters are not in order or the time not between them
   */
  public static Problem byCosine(Water before, Water after, double clockMinutes) {
    return between(
            "Height of the tide by the cosine",
            before,
            after,
            clockMinutes,
            "Share of the range",
            Quantity.SHARE,
            "half of one less the cosine of 180° times the share of the interval",
            f -> (1.0 - Math.cos(Math.PI * f.of(SHARE))) / 2.0,
            1.0)
        .slip(
            "Share of the range",
            "counted from the wrong water",
            4.0,
            f -> (1.0 + Math.cos(Math.PI * f.of(SHARE))) / 2.0)
        .slip("Share of the range", "a straight line", 2.0, f -> f.of(SHARE))
        .estimated("half the range in the middle third of the time")
        .checked("between the two waters, and nearer to the nearer one");
  }

  /**
   * The height between two waters by a port's printed curve.
   *
   * @param curve the port's curve
   * @param before the water before
   * @param after the next water
   * @param clockMinutes the time asked for, between the two
   * @return the problem; its answer is the height
   * @throws IllegalArgumentException if the waters are not in order or the time not between them
   */
  public static Problem byCurve(
      NormalisedCurve curve, Water before, Water after, double clockMinutes) {
    boolean rising = after.height().metres() > before.height().metres();
    return between(
            "Height of the tide by the port's curve",
            before,
            after,
            clockMinutes,
            "Share of the range",
            Quantity.SHARE,
            "read off the curve, " + (rising ? "rising" : "falling"),
            f -> gone(curve, f.of(SHARE), rising),
            1.0)
        .slip(
            "Share of the range",
            "read off the other side of the curve",
            4.0,
            f -> gone(curve, f.of(SHARE), !rising))
        .slip(
            "Share of the range",
            "counted from the wrong water",
            4.0,
            f -> 1.0 - gone(curve, f.of(SHARE), rising))
        .estimated("half the range in the middle third of the time")
        .checked("between the two waters, and nearer to the nearer one");
  }

  /** Share of the range gone since the water before; the curve counts from low water. */
  private static double gone(NormalisedCurve curve, double share, boolean rising) {
    double inside = Math.min(1.0, Math.max(0.0, share));
    return rising ? curve.risingFraction(inside) : 1.0 - curve.fallingFraction(inside);
  }

  private static double twelfths(double share) {
    double sixths = Math.min(6.0, Math.max(0.0, share * 6.0));
    double[] atEnds = {0.0, 1.0, 3.0, 6.0, 9.0, 11.0, 12.0};
    int part = (int) Math.min(5.0, Math.floor(sixths));
    return atEnds[part] + (sixths - part) * (atEnds[part + 1] - atEnds[part]);
  }

  private static Problem between(
      String title,
      Water before,
      Water after,
      double clockMinutes,
      String name,
      Quantity quantity,
      String words,
      Rule rule,
      double whole) {
    if (!(after.clockMinutes() > before.clockMinutes())
        || !(clockMinutes >= before.clockMinutes() && clockMinutes <= after.clockMinutes())) {
      throw new IllegalArgumentException(
          "time must be between two waters in order, was "
              + clockMinutes
              + " minutes between "
              + before.clockMinutes()
              + " and "
              + after.clockMinutes());
    }
    return Problem.titled(title)
        .given(BEFORE, Quantity.CLOCK, before.clockMinutes(), "tide table, local time")
        .given(LEVEL_BEFORE, Quantity.METRES, before.height().metres(), "tide table")
        .given(AFTER, Quantity.CLOCK, after.clockMinutes(), "tide table, local time")
        .given(LEVEL_AFTER, Quantity.METRES, after.height().metres(), "tide table")
        .given(AT, Quantity.CLOCK, clockMinutes, "asked for")
        .then(
            RANGE,
            Quantity.METRES,
            "height after less height before; below zero if it falls",
            f -> f.of(LEVEL_AFTER) - f.of(LEVEL_BEFORE))
        .slip(RANGE, "a height taken for the range", 4.0, f -> f.of(LEVEL_AFTER))
        .then(
            SHARE,
            Quantity.SHARE,
            "time since the water before over the time between the waters",
            f -> (f.of(AT) - f.of(BEFORE)) / (f.of(AFTER) - f.of(BEFORE)))
        .then(name, quantity, words, rule)
        .then(
            HEIGHT,
            Quantity.METRES,
            "height before and its share of the rise",
            f -> f.of(LEVEL_BEFORE) + f.of(RANGE) * f.of(name) / whole)
        .slip(
            HEIGHT,
            "height before left out: rise taken for height",
            4.0,
            f -> f.of(RANGE) * f.of(name) / whole)
        .slip(
            HEIGHT,
            "share taken from the height after",
            2.0,
            f -> f.of(LEVEL_AFTER) - f.of(RANGE) * f.of(name) / whole);
  }

  /**
   * The depth of water over a bank that dries, or over a sounding.
   *
   * @param height height of the tide above the datum
   * @param charted charted depth below the datum; a height that dries is below zero
   * @param meanLevel mean level above the datum, which a careless reader takes for the datum
   * @return the problem; its answer is the depth of water, below zero where the bank stands dry
   */
  public static Problem depthOver(Distance height, Distance charted, Distance meanLevel) {
    boolean dries = charted.metres() < 0.0;
    return Problem.titled(dries ? "Depth over a bank that dries" : "Depth over a sounding")
        .given(HEIGHT, Quantity.METRES, height.metres(), "of the tide, above chart datum")
        .given(
            dries ? DRIES : CHARTED,
            Quantity.METRES,
            charted.magnitude().metres(),
            "on the chart, from the same datum")
        .given(MEAN_LEVEL, Quantity.METRES, meanLevel.metres(), "above chart datum")
        .then(
            DEPTH,
            Quantity.METRES,
            dries
                ? "height of the tide less what the bank dries"
                : "height of the tide and charted depth",
            f -> dries ? f.of(HEIGHT) - f.of(DRIES) : f.of(HEIGHT) + f.of(CHARTED))
        .slip(
            DEPTH,
            dries ? "drying height added" : "charted depth taken off",
            4.0,
            f -> dries ? f.of(HEIGHT) + f.of(DRIES) : f.of(HEIGHT) - f.of(CHARTED))
        .slip(
            DEPTH,
            "height from the wrong datum: tide taken above mean level",
            2.0,
            f -> f.of(DEPTH) - f.of(MEAN_LEVEL))
        .slip(
            DEPTH,
            "height from the wrong datum: chart taken below mean level",
            2.0,
            f -> f.of(DEPTH) + f.of(MEAN_LEVEL))
        .slip(DEPTH, "height of the tide taken for the depth", 4.0, f -> f.of(HEIGHT))
        .slip(
            DEPTH,
            "subtracted the other way about",
            2.0,
            f -> f.of(dries ? DRIES : CHARTED) - f.of(HEIGHT))
        .estimated(dries ? "less water than the tide's height" : "more water than the chart shows")
        .checked("would I stand in it?");
  }
}
