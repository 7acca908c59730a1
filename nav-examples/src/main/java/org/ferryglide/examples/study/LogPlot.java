package org.ferryglide.examples.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.ferryglide.examples.svg.Svg;

/**
 * Curves on two logarithmic axes, told apart by dashes and words rather than colours. What lies
 * outside the axes is drawn at their ends.
 */
final class LogPlot {
  private static final double WIDTH = 420.0;
  private static final double HEIGHT = 300.0;
  private static final double LEFT = 48.0;
  private static final double RIGHT = 300.0;
  private static final double TOP = 24.0;
  private static final double BOTTOM = 262.0;
  private static final String[] DASHES = {"", "6 2", "2 2", "8 2 2 2", "1 3", "10 4", "4 4 1 4"};

  private final double[] marks;
  private final int lowest;
  private final int highest;
  private final List<Curve> curves = new ArrayList<>();
  private final Svg svg;

  /** A curve: its words, and pairs of figures. */
  private record Curve(String words, List<double[]> places) {
    double last() {
      return places.isEmpty() ? 0.0 : places.get(places.size() - 1)[1];
    }
  }

  /**
   * Empty axes.
   *
   * @param name what its file is called
   * @param title what stands over it, with the unit upward
   * @param description what it shows, for those who cannot see it
   * @param axis what grows along it
   * @param marks figures marked along it, ascending, above 0; the first and last are its ends
   * @param written how they are written
   * @param lowest power of ten at the foot
   * @param highest power of ten at the top
   */
  LogPlot(
      String name,
      String title,
      String description,
      String axis,
      double[] marks,
      DoubleFunction<String> written,
      int lowest,
      int highest) {
    this.marks = marks.clone();
    this.lowest = lowest;
    this.highest = highest;
    svg = Svg.of(name, WIDTH, HEIGHT, title, description + " Both axes are logarithmic.");
    svg.group("font-family", "sans-serif", "font-size", "9", "fill", "#000");
    svg.text(LEFT, 14, title, "font-size", "11");
    for (int power = lowest; power <= highest; power++) {
      double y = y(Math.pow(10.0, power));
      svg.line(LEFT, y, RIGHT, y, "stroke", "#999", "stroke-width", "0.4");
      svg.text(LEFT - 4, y + 3, powerOfTen(power), "text-anchor", "end");
    }
    for (double mark : marks) {
      double x = x(mark);
      svg.line(x, TOP, x, BOTTOM, "stroke", "#ccc", "stroke-width", "0.4");
      svg.text(x, BOTTOM + 11, written.apply(mark), "text-anchor", "middle");
    }
    svg.text(0.5 * (LEFT + RIGHT), BOTTOM + 25, axis, "text-anchor", "middle");
    svg.end();
  }

  static String powerOfTen(int power) {
    return power >= 0 ? "1" + "0".repeat(power) : "0." + "0".repeat(-power - 1) + "1";
  }

  /** One more curve through pairs of figures, along and up. */
  LogPlot with(String words, List<double[]> places) {
    curves.add(new Curve(words, places));
    return this;
  }

  /** Draws the curves, their words in the order of their ends. */
  Svg drawn() {
    curves.sort((a, b) -> Double.compare(b.last(), a.last()));
    double wordsY = TOP;
    svg.group("font-family", "sans-serif", "font-size", "9", "fill", "#000");
    for (int i = 0; i < curves.size(); i++) {
      Curve curve = curves.get(i);
      double[] points = new double[2 * curve.places().size()];
      for (int j = 0; j < curve.places().size(); j++) {
        points[2 * j] = x(curve.places().get(j)[0]);
        points[2 * j + 1] = y(curve.places().get(j)[1]);
      }
      String dash = DASHES[i % DASHES.length];
      String[] pen = {
        "fill",
        "none",
        "stroke",
        "#000",
        "stroke-width",
        i < DASHES.length ? "1.2" : "2.2",
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
    return svg.end();
  }

  private double x(double along) {
    double share = Math.log(along / marks[0]) / Math.log(marks[marks.length - 1] / marks[0]);
    return LEFT + (RIGHT - LEFT) * Math.max(0.0, Math.min(1.0, share));
  }

  private double y(double up) {
    double share = (Math.log10(up) - lowest) / (highest - lowest);
    return BOTTOM - (BOTTOM - TOP) * Math.max(0.0, Math.min(1.0, share));
  }
}
