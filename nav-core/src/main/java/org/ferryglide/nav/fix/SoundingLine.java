package org.ferryglide.nav.fix;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.plane.Gaussian;
import org.ferryglide.nav.plane.LocalPlane;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.ErrorEllipse;
import org.ferryglide.nav.reckon.EstimatedPosition;
import org.ferryglide.nav.water.DepthField;

/**
 * A line of soundings slid over the chart until its depths fit: a rough position in fog.
 *
 * <p>The track between the soundings is taken as reckoned; only the whole line is shifted. The
 * shift that fits best is found by least squares from 25 starts within two standard deviations of
 * the reckoning, which takes part with its own weight. Where several places fit as well, a note
 * says so.
 *
 * <pre>{@code
 * Distance sigma = Distance.ofMetres(0.5);
 * Optional<SoundingLine> fit = SoundingLine.match(soundings, chart, sigma, reckonedNow);
 * fit.get().position(); // where the last sounding was taken
 * }</pre>
 *
 * @param position where the last sounding was taken, with its uncertainty
 * @param agreement the chance that honest errors fit as badly or worse, in [0, 1]
 * @param notes {@code sounding.several-places} if another place fits nearly as well; unmodifiable
 */
public record SoundingLine(EstimatedPosition position, double agreement, List<Note> notes)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final int STARTS_EACH_WAY = 2;

  /** Squares that are no more than this worse are nearly as good: odds of one to seven. */
  private static final double NEARLY_AS_GOOD = 4.0;

  /** Fits further apart than this many standard deviations are different places. */
  private static final double APART = 3.0;

  /**
   * Takes all parts; {@link #match} finds them.
   *
   * @param position where the last sounding was taken
   * @param agreement the chance that honest errors fit as badly or worse
   * @param notes what the reader should know; copied
   */
  public SoundingLine {
    Objects.requireNonNull(position, "position");
    notes = List.copyOf(notes);
  }

  /**
   * Fits a line of soundings to a chart.
   *
   * @param soundings the soundings in order of time, at least one, reduced to the chart's datum
   * @param chart the charted depths
   * @param depthSigma how uncertain a depth is, chart and lead together, one standard deviation,
   *     above 0
   * @param reckoned the reckoned position of the last sounding with its uncertainty, which must be
   *     above zero in every direction
   * @return the fit; empty if the chart has no data wherever it was looked for
   * @throws IllegalArgumentException if there are no soundings, one is reduced to another datum
   *     than the chart's, or a value is out of range
   */
  public static Optional<SoundingLine> match(
      List<Sounding> soundings, DepthField chart, Distance depthSigma, EstimatedPosition reckoned) {
    double sigma = Arguments.positive(depthSigma.metres(), "uncertainty of a depth", "metres");
    if (soundings.isEmpty()) {
      throw new IllegalArgumentException("a line of soundings needs at least one");
    }
    soundings.forEach(sounding -> requireSameDatum(sounding, chart));
    ErrorEllipse one = reckoned.covariance().ellipse(ErrorEllipse.ONE_STANDARD_DEVIATION);
    Arguments.positive(one.semiMinorAxis().metres(), "uncertainty of the reckoning", "metres");
    SoundingFit fit = new SoundingFit(soundings, chart, sigma, reckoned.covariance());
    double radians = Math.toRadians(one.direction().degrees());
    List<double[]> found = new ArrayList<>(); // east, north, squares
    for (int i = -STARTS_EACH_WAY; i <= STARTS_EACH_WAY; i++) {
      for (int j = -STARTS_EACH_WAY; j <= STARTS_EACH_WAY; j++) {
        double along = i * one.semiMajorAxis().metres();
        double across = j * one.semiMinorAxis().metres();
        if (fit.solveFrom(
            along * Math.sin(radians) + across * Math.cos(radians),
            along * Math.cos(radians) - across * Math.sin(radians))) {
          found.add(new double[] {fit.east(), fit.north(), fit.squares()});
        }
      }
    }
    if (found.isEmpty()) {
      return Optional.empty();
    }
    found.sort((a, b) -> Double.compare(a[2], b[2]));
    double[] best = found.get(0);
    fit.solveFrom(best[0], best[1]);
    Covariance covariance = fit.covariance();
    Position last = soundings.get(soundings.size() - 1).reckoned();
    return Optional.of(
        new SoundingLine(
            new EstimatedPosition(LocalPlane.fromPlane(last, best[0], best[1]), covariance),
            Gaussian.chiSquareExceeds(best[2], soundings.size()),
            otherPlace(found, covariance)
                ? List.of(
                    Note.caution(
                        "sounding.several-places",
                        "The line of soundings fits nearly as well in another place."))
                : List.of()));
  }

  private static void requireSameDatum(Sounding sounding, DepthField chart) {
    if (!sounding.depth().datum().equals(chart.datum())) {
      throw new IllegalArgumentException(
          "soundings must be reduced to the datum of the chart, \""
              + chart.datum()
              + "\", but one was reduced to \""
              + sounding.depth().datum()
              + "\"");
    }
  }

  private static boolean otherPlace(List<double[]> found, Covariance covariance) {
    double[] best = found.get(0);
    for (double[] other : found) {
      double apart = covariance.squaredStatisticalDistance(other[0] - best[0], other[1] - best[1]);
      if (other[2] < best[2] + NEARLY_AS_GOOD && apart > APART * APART) {
        return true;
      }
    }
    return false;
  }
}
