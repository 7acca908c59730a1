package org.ferryglide.examples.study;

import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.LegComparisons;
import org.ferryglide.nav.geodesy.RhumbLines;

/** The figures of a study as comma-separated files, every digit kept. */
final class StudyTables {
  private StudyTables() {}

  /** Mean and greatest of each error by length and latitude. */
  static String errors(StudyFigures figures) {
    StringBuilder text =
        new StringBuilder(
            "error,longer_than_m,up_to_m,latitude_from_deg,latitude_to_deg,legs,mean_m,greatest_m\n");
    for (ErrorKind kind : ErrorKind.values()) {
      for (int length = 0; length < StudyFigures.LENGTHS.length; length++) {
        for (int latitude = 0; latitude < StudyFigures.LATITUDES; latitude++) {
          Tally tally = figures.at(kind, length, latitude);
          if (tally.count() > 0) {
            text.append(kind.column()).append(',');
            text.append(length == 0 ? DrawnLegs.SHORTEST_METRES : StudyFigures.LENGTHS[length - 1]);
            text.append(',').append(StudyFigures.LENGTHS[length]).append(',');
            text.append(StudyFigures.LATITUDE_STEP * latitude).append(',');
            text.append(StudyFigures.LATITUDE_STEP * (latitude + 1)).append(',');
            text.append(tally.count()).append(',').append(tally.mean()).append(',');
            text.append(tally.greatest()).append('\n');
          }
        }
      }
    }
    return text.toString();
  }

  /**
   * Rhumb line and geodesic at even steps of latitude, course and length, on WGS84 and on a sphere:
   * how much longer the one is, how far apart they run, and how their first courses differ.
   */
  static String differences() {
    StringBuilder text =
        new StringBuilder(
            "figure,latitude_deg,course_deg,length_m,excess_m,separation_m,bearing_difference_deg\n");
    for (int latitude = 0; latitude <= 70; latitude += 10) {
      for (int course = 0; course <= 90; course += 15) {
        for (double length : new double[] {1e3, 2e3, 5e3, 10e3, 20e3, 50e3, 100e3, 200e3}) {
          difference(text, "WGS84", Ellipsoid.WGS84, latitude, course, length);
          difference(text, "sphere", LegErrors.SPHERE, latitude, course, length);
        }
      }
    }
    return text.toString();
  }

  private static void difference(
      StringBuilder text, String name, Ellipsoid figure, int lat, int course, double length) {
    double[] out = difference(figure, lat, course, length);
    text.append(name).append(',').append(lat).append(',').append(course).append(',');
    text.append(length).append(',').append(out[LegComparisons.EXCESS]).append(',');
    text.append(out[LegComparisons.SEPARATION]).append(',');
    text.append(out[LegComparisons.INITIAL_COURSE_DIFFERENCE]).append('\n');
  }

  /** Both lines to the end of one rhumb line, as {@link LegComparisons} compares them. */
  static double[] difference(Ellipsoid figure, double lat, double course, double metres) {
    double[] end = new double[RhumbLines.WIDTH];
    double[] out = new double[LegComparisons.WIDTH_WITH_SEPARATION];
    RhumbLines.direct(figure, lat, 0.0, course, metres, end, 0);
    LegComparisons.compareWithSeparation(figure, lat, 0.0, end[0], end[1], out, 0);
    return out;
  }
}
