package org.ferryglide.examples.study;

import org.ferryglide.nav.geodesy.Ellipsoid;

/** Every figure of a study, by length and latitude. */
final class StudyFigures {
  /** Upper ends of the classes of length, metres. */
  static final double[] LENGTHS = {1e3, 2e3, 5e3, 10e3, 20e3, 50e3, 100e3, 200e3};

  /** Width of a class of latitude, degrees; both hemispheres count together. */
  static final int LATITUDE_STEP = 15;

  static final int LATITUDES = 5;

  /** Every so many legs the line on a map is worked too. */
  private static final int MAP_EVERY = 10;

  private final long legs;
  private final Tally[][][] tallies =
      new Tally[ErrorKind.values().length][LENGTHS.length][LATITUDES + 1];
  private final Tally sphereShare = new Tally();
  private final Tally excessOff = new Tally();
  private final Tally separationOff = new Tally();

  private StudyFigures(long legs) {
    this.legs = legs;
    for (Tally[][] byKind : tallies) {
      for (Tally[] byLength : byKind) {
        for (int i = 0; i < byLength.length; i++) {
          byLength[i] = new Tally();
        }
      }
    }
  }

  static StudyFigures of(DrawnLegs drawn, int legs) {
    StudyFigures figures = new StudyFigures(legs);
    LegErrors errors = new LegErrors();
    double[] leg = new double[DrawnLegs.WIDTH];
    double[] out = new double[ErrorKind.values().length];
    for (int i = 0; i < legs; i++) {
      drawn.draw(i, leg, 0);
      errors.work(leg, i % MAP_EVERY == 0, out);
      figures.add(leg, errors, out);
    }
    return figures;
  }

  private void add(double[] leg, LegErrors errors, double[] out) {
    double middle = 0.5 * (leg[DrawnLegs.LATITUDE_1] + leg[DrawnLegs.LATITUDE_2]);
    int latitude = Math.min(LATITUDES - 1, (int) (Math.abs(middle) / LATITUDE_STEP));
    int length = 0;
    while (length < LENGTHS.length - 1 && errors.metres() > LENGTHS[length]) {
      length++;
    }
    for (int kind = 0; kind < out.length; kind++) {
      tallies[kind][length][latitude].add(out[kind]);
      tallies[kind][length][LATITUDES].add(out[kind]);
    }
    sphereShare.add(errors.sphereShare());
    compareWithSeries(middle, errors, out[ErrorKind.GEODESIC.index()]);
  }

  /**
   * Beside the first terms of both differences, for legs to 20 km from 30 to 60 degrees that do not
   * run near a meridian: a rhumb line is bent by k = sin(course) tan(latitude) / N, so that it
   * stands k L² / 8 off its chord and is k² L³ / 24 longer.
   */
  private void compareWithSeries(double middle, LegErrors errors, double separation) {
    double sine = Math.sin(Math.toRadians(errors.course()));
    double length = errors.metres();
    if (length > 20e3
        || length < 2e3
        || Math.abs(middle) < 30.0
        || Math.abs(middle) > 60.0
        || Math.abs(sine) < 0.5) {
      return;
    }
    double bend =
        Math.abs(sine * Math.tan(Math.toRadians(middle)))
            / Ellipsoid.WGS84.primeVerticalRadiusMetres(middle);
    separationOff.add(Math.abs(separation / (bend * length * length / 8.0) - 1.0));
    excessOff.add(Math.abs(errors.excess() - bend * bend * length * length * length / 24.0));
  }

  long legs() {
    return legs;
  }

  /** Legs of a class of length, over all latitudes. */
  Tally at(ErrorKind kind, int length) {
    return tallies[kind.index()][length][LATITUDES];
  }

  /** Legs of a class of length and one of latitude. */
  Tally at(ErrorKind kind, int length, int latitude) {
    return tallies[kind.index()][length][latitude];
  }

  /** By what share the lengths are off on a sphere. */
  Tally sphereShare() {
    return sphereShare;
  }

  /** How far the separation is from k L² / 8, as a share of it. */
  Tally separationOff() {
    return separationOff;
  }

  /** How far the excess is from k² L³ / 24, metres. */
  Tally excessOff() {
    return excessOff;
  }
}
