package org.ferryglide.examples.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.ferryglide.examples.svg.Svg;

/** Curves of a study, both axes logarithmic, told apart by dashes and words rather than colours. */
final class StudyPictures {
  private static final double WIDTH = 420.0;
  private static final double HEIGHT = 300.0;
  private static final double LEFT = 48.0;
  private static final double RIGHT = 300.0;
  private static final double TOP = 24.0;
  private static final double BOTTOM = 262.0;
  private static final String[] DASHES = {"", "6 2", "2 2", "8 2 2 2", "1 3", "10 4", "4 4 1 4"};

  private StudyPictures() {}

  static List<Svg> all(StudyFigures figures) {
    List<Svg> pictures = new ArrayList<>();
    Svg kinds = frame("errors-by-length", "Mean error of a leg by its length", -3, 5);
    List<Curve> curves = new ArrayList<>();
    for (ErrorKind kind : ErrorKind.values()) {
      curves.add(curve(kind.column(), length -> figures.at(kind, length)));
    }
    draw(kinds, curves, -3, 5);
    pictures.add(kinds);
    pictures.add(
        byLatitude(figures, ErrorKind.GEODESIC, "geodesic-by-latitude", "Rhumb line and geodesic"));
    pictures.add(
        byLatitude(figures, ErrorKind.PLANE, "plane-by-latitude", "Plane in place of earth"));
    return pictures;
  }

  private static Svg byLatitude(StudyFigures figures, ErrorKind kind, String name, String title) {
    Svg picture = frame(name, title + ", mean by length and latitude", -3, 5);
    List<Curve> curves = new ArrayList<>();
    for (int latitude = 0; latitude < StudyFigures.LATITUDES; latitude++) {
      int band = latitude;
      int from = StudyFigures.LATITUDE_STEP * latitude;
      curves.add(
          curve(
              from + " to " + (from + StudyFigures.LATITUDE_STEP) + "°",
              length -> figures.at(kind, length, band)));
    }
    draw(picture, curves, -3, 5);
    return picture;
  }

  /** A curve: its words, and places in kilometres and metres. */
  private record Curve(String words, List<double[]> places) {}

  private static Curve curve(String words, IntFunction<Tally> tallies) {
    List<double[]> places = new ArrayList<>();
    for (int length = 0; length < StudyFigures.LENGTHS.length; length++) {
      Tally tally = tallies.apply(length);
      if (tally.count() > 0 && tally.mean() > 0.0) {
        double from = length == 0 ? DrawnLegs.SHORTEST_METRES : StudyFigures.LENGTHS[length - 1];
        places.add(
            new double[] {Math.sqrt(from * StudyFigures.LENGTHS[length]) / 1000.0, tally.mean()});
      }
    }
    return new Curve(words, places);
  }

  private static Svg frame(String name, String title, int lowest, int highest) {
    Svg svg =
        Svg.of(
            name,
            WIDTH,
            HEIGHT,
            title,
            title + "; the figures stand in errors.csv. Both axes are logarithmic.");
    svg.group("font-family", "sans-serif", "font-size", "9", "fill", "#000");
    svg.text(LEFT, 14, title + ", metres", "font-size", "11");
    for (int power = lowest; power <= highest; power++) {
      double y = y(Math.pow(10.0, power), lowest, highest);
      svg.line(LEFT, y, RIGHT, y, "stroke", "#999", "stroke-width", "0.4");
      svg.text(LEFT - 4, y + 3, powerOfTen(power), "text-anchor", "end");
    }
    for (double kilometres : new double[] {0.5, 1, 2, 5, 10, 20, 50, 100, 200}) {
      double x = x(kilometres);
      svg.line(x, TOP, x, BOTTOM, "stroke", "#ccc", "stroke-width", "0.4");
      svg.text(
          x, BOTTOM + 11, StudyReport.kilometres(1000.0 * kilometres), "text-anchor", "middle");
    }
    svg.text(0.5 * (LEFT + RIGHT), BOTTOM + 25, "length of the leg, km", "text-anchor", "middle");
    return svg.end();
  }

  private static String powerOfTen(int power) {
    return power >= 0 ? "1" + "0".repeat(power) : "0." + "0".repeat(-power - 1) + "1";
  }

  private static void draw(Svg svg, List<Curve> curves, int lowest, int highest) {
    curves.sort(
        (a, b) -> Double.compare(last(b), last(a))); // words stand in the order of the curves' ends
    double wordsY = TOP;
    svg.group("font-family", "sans-serif", "font-size", "9", "fill", "#000");
    for (int i = 0; i < curves.size(); i++) {
      Curve curve = curves.get(i);
      double[] points = new double[2 * curve.places().size()];
      for (int j = 0; j < curve.places().size(); j++) {
        points[2 * j] = x(curve.places().get(j)[0]);
        points[2 * j + 1] = y(curve.places().get(j)[1], lowest, highest);
      }
      String dash = DASHES[i % DASHES.length];
      String width = i < DASHES.length ? "1.2" : "2.2";
      String[] pen = {
        "fill",
        "none",
        "stroke",
        "#000",
        "stroke-width",
        width,
        "stroke-dasharray",
        dash.isEmpty() ? "none" : dash
      };
      svg.polyline(points, pen);
      double endY = points.length == 0 ? wordsY : points[points.length - 1];
      double y = Math.max(wordsY, endY);
      wordsY = y + 12.0;
      svg.line(RIGHT + 6, y, RIGHT + 30, y, pen);
      svg.text(RIGHT + 34, y + 3, curve.words());
    }
    svg.end();
  }

  private static double last(Curve curve) {
    return curve.places().isEmpty() ? 0.0 : curve.places().get(curve.places().size() - 1)[1];
  }

  private static double x(double kilometres) {
    return LEFT + (RIGHT - LEFT) * Math.log(kilometres / 0.5) / Math.log(400.0);
  }

  private static double y(double metres, int lowest, int highest) {
    double share = (Math.log10(metres) - lowest) / (highest - lowest);
    return BOTTOM - (BOTTOM - TOP) * Math.max(0.0, Math.min(1.0, share));
  }
}
