package org.ferryglide.examples.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.LegComparisons;

/** Curves of a study. */
final class StudyPictures {
  private static final double[] KILOMETRES = {0.5, 1, 2, 5, 10, 20, 50, 100, 200};

  private StudyPictures() {}

  static List<Svg> all(StudyFigures figures) {
    LogPlot kinds = plot("errors-by-length", "Mean error of a leg by its length");
    for (ErrorKind kind : ErrorKind.values()) {
      kinds.with(kind.label(), places(length -> figures.at(kind, length)));
    }
    List<Svg> pictures = new ArrayList<>();
    pictures.add(kinds.drawn());
    pictures.add(
        byLatitude(
            figures, ErrorKind.GEODESIC, "geodesic-by-latitude", "Rhumb line and geodesic apart"));
    pictures.add(byCourse());
    pictures.add(
        byLatitude(figures, ErrorKind.PLANE, "plane-by-latitude", "Plane in place of earth"));
    return pictures;
  }

  private static Svg byLatitude(StudyFigures figures, ErrorKind kind, String name, String title) {
    LogPlot picture = plot(name, title + ", mean by length and latitude");
    for (int latitude = 0; latitude < StudyFigures.LATITUDES; latitude++) {
      int band = latitude;
      int from = StudyFigures.LATITUDE_STEP * latitude;
      picture.with(
          from + " to " + (from + StudyFigures.LATITUDE_STEP) + "°",
          places(length -> figures.at(kind, length, band)));
    }
    return picture.drawn();
  }

  private static Svg byCourse() {
    LogPlot picture =
        plot(
            "geodesic-by-course", "Rhumb line and geodesic apart, by course at 60°", "differences");
    for (int course = 15; course <= 90; course += 15) {
      List<double[]> places = new ArrayList<>();
      for (double kilometres : KILOMETRES) {
        double[] lines = StudyTables.difference(Ellipsoid.WGS84, 60.0, course, 1e3 * kilometres);
        places.add(new double[] {kilometres, lines[LegComparisons.SEPARATION]});
      }
      picture.with(course + "°", places);
    }
    return picture.drawn();
  }

  private static LogPlot plot(String name, String title) {
    return plot(name, title, "errors");
  }

  private static LogPlot plot(String name, String title, String table) {
    return new LogPlot(
        name,
        title + ", metres",
        title + "; the figures stand in " + table + ".csv.",
        "length of the leg, km",
        KILOMETRES,
        kilometres -> StudyReport.kilometres(1000.0 * kilometres),
        -3,
        5);
  }

  private static List<double[]> places(IntFunction<Tally> tallies) {
    List<double[]> places = new ArrayList<>();
    for (int length = 0; length < StudyFigures.LENGTHS.length; length++) {
      Tally tally = tallies.apply(length);
      if (tally.count() > 0 && tally.mean() > 0.0) {
        double from = length == 0 ? DrawnLegs.SHORTEST_METRES : StudyFigures.LENGTHS[length - 1];
        places.add(
            new double[] {Math.sqrt(from * StudyFigures.LENGTHS[length]) / 1000.0, tally.mean()});
      }
    }
    return places;
  }
}
