package org.ferryglide.nav.reckon;

import java.io.Serializable;
import java.util.List;
import java.util.Random;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;

/**
 * A passage paddled many times over with errors drawn at random: the check on every covariance, and
 * the better figure where errors are large.
 *
 * <p>Nothing is linearised. The same seed gives the same answer on every machine.
 *
 * <pre>{@code
 * ErrorSimulation simulation =
 *     ErrorSimulation.of(reckoning.runs(), ErrorModel.usual(), 10_000, 42L);
 * simulation.covariance();
 * simulation.shareInside(budget.covariance().ellipse(0.95)); // 0.95, or nearly
 * }</pre>
 */
public final class ErrorSimulation implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final int FEWEST_SAMPLES = 2;

  /**
   * Across an ellipse whose width is rounding, ends lie off its line by this share of its length.
   */
  private static final double ROUNDING = 1e-7;

  private final double[] east;
  private final double[] north;

  private ErrorSimulation(double[] east, double[] north) {
    this.east = east;
    this.north = north;
  }

  /**
   * Paddles a passage many times over.
   *
   * @param runs the passage, cut where water track, speed or stream change
   * @param model how large the errors are
   * @param samples how many times, at least 2
   * @param seed any number; the same gives the same answer
   * @return where the passages ended, relative to where they should have
   * @throws IllegalArgumentException if {@code samples} is below 2
   */
  public static ErrorSimulation of(List<SteadyRun> runs, ErrorModel model, int samples, long seed) {
    Arguments.within(samples, FEWEST_SAMPLES, Integer.MAX_VALUE, "samples", "passages");
    PassageDraw draw = new PassageDraw(runs, model, new Random(seed));
    double[] east = new double[samples];
    double[] north = new double[samples];
    for (int i = 0; i < samples; i++) {
      draw.paddle();
      east[i] = draw.east();
      north[i] = draw.north();
    }
    return new ErrorSimulation(east, north);
  }

  /**
   * How many passages were drawn.
   *
   * @return the number of samples
   */
  public int samples() {
    return east.length;
  }

  /**
   * Where one passage ended.
   *
   * @param sample which one, from 0
   * @return metres east of where it should have ended
   */
  public double eastMetres(int sample) {
    return east[sample];
  }

  /**
   * Where one passage ended.
   *
   * @param sample which one, from 0
   * @return metres north of where it should have ended
   */
  public double northMetres(int sample) {
    return north[sample];
  }

  /**
   * How far the middle of all ends lies from where they should have been: large errors of direction
   * always shorten the way made good, which no covariance shows.
   *
   * @return the distance
   */
  public Distance bias() {
    return Distance.ofMetres(Math.hypot(mean(east), mean(north)));
  }

  /**
   * How far the ends are spread about their middle.
   *
   * @return the sample covariance
   */
  public Covariance covariance() {
    double me = mean(east);
    double mn = mean(north);
    double ee = 0.0;
    double nn = 0.0;
    double en = 0.0;
    for (int i = 0; i < east.length; i++) {
      ee += (east[i] - me) * (east[i] - me);
      nn += (north[i] - mn) * (north[i] - mn);
      en += (east[i] - me) * (north[i] - mn);
    }
    double free = east.length - 1.0;
    return new Covariance(ee / free, nn / free, en / free);
  }

  /**
   * How many of the passages ended inside an ellipse about the place they should have ended at.
   *
   * @param ellipse the ellipse
   * @return a share in [0, 1], to be compared with {@link ErrorEllipse#chance}
   */
  public double shareInside(ErrorEllipse ellipse) {
    double sine = Math.sin(Math.toRadians(ellipse.direction().degrees()));
    double cosine = Math.cos(Math.toRadians(ellipse.direction().degrees()));
    double a = ellipse.semiMajorAxis().metres();
    double b = ellipse.semiMinorAxis().metres();
    int inside = 0;
    for (int i = 0; i < east.length; i++) {
      double along = ratio(east[i] * sine + north[i] * cosine, a, a);
      double across = ratio(east[i] * cosine - north[i] * sine, b, a);
      inside += along * along + across * across <= 1.0 ? 1 : 0;
    }
    return inside / (double) east.length;
  }

  /** A length over an axis; nothing for what rounding leaves across an ellipse without width. */
  private static double ratio(double metres, double axis, double longAxis) {
    return Math.abs(metres) <= ROUNDING * longAxis ? 0.0 : metres / axis;
  }

  private static double mean(double[] values) {
    double sum = 0.0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  @Override
  public String toString() {
    return samples() + " passages, bias " + bias() + ", " + covariance();
  }
}
