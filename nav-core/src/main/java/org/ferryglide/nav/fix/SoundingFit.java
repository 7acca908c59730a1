package org.ferryglide.nav.fix;

import java.util.List;
import org.ferryglide.nav.plane.LocalPlane;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.water.DepthField;

/** Least squares for the shift of a line of soundings, with the reckoning as a prior. */
final class SoundingFit {

  private static final int MOST_STEPS = 40;
  private static final int MOST_HALVINGS = 10;

  /** Slopes of the bottom are taken over this distance, metres. */
  private static final double SLOPE_METRES = 5.0;

  private static final double FINE_METRES = 0.01;

  private final List<Sounding> soundings;
  private final DepthField chart;
  private final double sigma;
  private final double priorEast;
  private final double priorNorth;
  private final double priorCross;
  private final double[] latLon = new double[2];

  private double east;
  private double north;
  private double squares;
  private double nee;
  private double nnn;
  private double nen;
  private double be;
  private double bn;

  SoundingFit(List<Sounding> soundings, DepthField chart, double sigma, Covariance prior) {
    this.soundings = List.copyOf(soundings);
    this.chart = chart;
    this.sigma = sigma;
    double determinant =
        prior.eastVariance() * prior.northVariance()
            - prior.eastNorthCovariance() * prior.eastNorthCovariance();
    priorEast = prior.northVariance() / determinant;
    priorNorth = prior.eastVariance() / determinant;
    priorCross = -prior.eastNorthCovariance() / determinant;
  }

  double east() {
    return east;
  }

  double north() {
    return north;
  }

  double squares() {
    return squares;
  }

  Covariance covariance() {
    double determinant = nee * nnn - nen * nen;
    return new Covariance(nnn / determinant, nee / determinant, -nen / determinant);
  }

  /** Settles from a start; false if it comes to a place without data. */
  boolean solveFrom(double startEast, double startNorth) {
    east = startEast;
    north = startNorth;
    if (!form()) {
      return false;
    }
    for (int step = 0; step < MOST_STEPS; step++) {
      double determinant = nee * nnn - nen * nen;
      double de = (nnn * be - nen * bn) / determinant;
      double dn = (nee * bn - nen * be) / determinant;
      if (Math.hypot(de, dn) < FINE_METRES) {
        return true;
      }
      if (!better(de, dn)) {
        return form();
      }
    }
    return true;
  }

  /** Takes the step, halved until it is no worse; false if none is. */
  private boolean better(double de, double dn) {
    double fromEast = east;
    double fromNorth = north;
    double before = squares;
    double share = 1.0;
    for (int i = 0; i < MOST_HALVINGS; i++) {
      east = fromEast + share * de;
      north = fromNorth + share * dn;
      if (form() && squares <= before) {
        return true;
      }
      share *= 0.5;
    }
    east = fromEast;
    north = fromNorth;
    return false;
  }

  /** Forms the normal equations; false where the chart has no data. */
  private boolean form() {
    double pe = priorEast * east + priorCross * north;
    double pn = priorCross * east + priorNorth * north;
    nee = priorEast;
    nnn = priorNorth;
    nen = priorCross;
    be = -pe;
    bn = -pn;
    squares = pe * east + pn * north;
    for (Sounding sounding : soundings) {
      double depth = depth(sounding.reckoned(), east, north);
      double slopeEast =
          (depth(sounding.reckoned(), east + SLOPE_METRES, north) - depth) / SLOPE_METRES;
      double slopeNorth =
          (depth(sounding.reckoned(), east, north + SLOPE_METRES) - depth) / SLOPE_METRES;
      double residual = (sounding.depth().belowDatum().metres() - depth) / sigma;
      double je = slopeEast / sigma;
      double jn = slopeNorth / sigma;
      if (Double.isNaN(residual + je + jn)) {
        return false;
      }
      nee += je * je;
      nnn += jn * jn;
      nen += je * jn;
      be += je * residual;
      bn += jn * residual;
      squares += residual * residual;
    }
    return true;
  }

  private double depth(Position reckoned, double shiftEast, double shiftNorth) {
    LocalPlane.fromPlane(
        reckoned.latitudeDegrees(), reckoned.longitudeDegrees(), shiftEast, shiftNorth, latLon, 0);
    return chart.metresAt(latLon[0], latLon[1]);
  }
}
