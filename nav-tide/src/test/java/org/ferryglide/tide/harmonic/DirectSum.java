package org.ferryglide.tide.harmonic;

import java.util.List;

/** The sum of cosines as the textbooks write it: slow, obvious, and what fast ways are held to. */
final class DirectSum {
  private DirectSum() {}

  /** Corrections of the middle of the year, V of 1 January, then a steady advance. */
  static double midYear(HarmonicConstants constants, double seconds) {
    return ofYear(constants, CalendarYears.yearOf(seconds), seconds);
  }

  /** The same with the corrections and V of a given year, within it or beyond. */
  static double ofYear(HarmonicConstants constants, int year, double seconds) {
    double start = CalendarYears.startSeconds(year);
    double middle = 0.5 * (start + CalendarYears.startSeconds(year + 1));
    List<Constituent> constituents = constants.constituents();
    double[] corrections = new double[2 * constituents.size()];
    constants.scheme().corrections(middle, constituents, corrections);
    double hours = (seconds - start) / 3600.0;
    double sum = constants.mean();
    for (int i = 0; i < constituents.size(); i++) {
      HarmonicConstant constant = constants.list().get(i);
      Constituent constituent = constituents.get(i);
      double degrees =
          constituent.argumentDegrees(constants.scheme().meanLongitudes(), start)
              + corrections[2 * i + 1]
              - constant.greenwichLagDegrees()
              + (constituent.speedDegreesPerHour() * hours) % 360.0;
      sum += corrections[2 * i] * constant.amplitude() * Math.cos(Math.toRadians(degrees));
    }
    return sum;
  }

  /** Corrections and V of the instant itself. */
  static double atInstant(HarmonicConstants constants, double seconds) {
    List<Constituent> constituents = constants.constituents();
    double[] corrections = new double[2 * constituents.size()];
    constants.scheme().corrections(seconds, constituents, corrections);
    double sum = constants.mean();
    for (int i = 0; i < constituents.size(); i++) {
      HarmonicConstant constant = constants.list().get(i);
      double degrees =
          constituents.get(i).argumentDegrees(constants.scheme().meanLongitudes(), seconds)
              + corrections[2 * i + 1]
              - constant.greenwichLagDegrees();
      sum += corrections[2 * i] * constant.amplitude() * Math.cos(Math.toRadians(degrees));
    }
    return sum;
  }
}
