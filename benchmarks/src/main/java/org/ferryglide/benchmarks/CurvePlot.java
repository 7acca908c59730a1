package org.ferryglide.benchmarks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Curves on logarithmic axes as a small SVG drawing; what is 0 is drawn at 1. */
final class CurvePlot {
  private static final int WIDTH = 640;
  private static final int HEIGHT = 420;
  private static final int LEFT = 80;
  private static final int RIGHT = 150;
  private static final int TOP = 20;
  private static final int BOTTOM = 50;

  /** Colours that differ in lightness too, after Okabe and Ito's palette. */
  private static final String[] COLOURS = {"#0072b2", "#d55e00", "#009e73", "#000000", "#cc79a7"};

  private final String axis;
  private final String unit;
  private final String series;
  private final Map<String, List<double[]>> curves = new LinkedHashMap<>();
  private final double[] lowest = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
  private final double[] highest = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};

  CurvePlot(String axis, String unit, String series) {
    this.axis = axis;
    this.unit = unit;
    this.series = series;
  }

  void add(String curve, double x, double y) {
    double[] point = {Math.log10(Math.max(1.0, x)), Math.log10(Math.max(1.0, y))};
    curves.computeIfAbsent(curve, name -> new ArrayList<>()).add(point);
    for (int i = 0; i < 2; i++) {
      lowest[i] = Math.min(lowest[i], Math.floor(point[i]));
      highest[i] = Math.max(highest[i], Math.ceil(point[i]));
    }
  }

  String svg() {
    StringBuilder svg = new StringBuilder();
    svg.append(
        String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\""
                + " font-family=\"sans-serif\" font-size=\"12\">%n<rect width=\"100%%\""
                + " height=\"100%%\" fill=\"white\"/>%n",
            WIDTH,
            HEIGHT));
    for (int power = (int) lowest[0]; power <= highest[0]; power++) {
      line(svg, x(power), TOP, x(power), HEIGHT - BOTTOM, "#ccc", 1);
      text(svg, x(power), HEIGHT - BOTTOM + 16, "middle", "1e" + power);
    }
    for (int power = (int) lowest[1]; power <= highest[1]; power++) {
      line(svg, LEFT, y(power), WIDTH - RIGHT, y(power), "#ccc", 1);
      text(svg, LEFT - 6, y(power) + 4, "end", "1e" + power);
    }
    text(svg, 0.5 * (LEFT + WIDTH - RIGHT), HEIGHT - 12, "middle", axis);
    text(svg, 16, TOP + 4, "start", unit);
    int colour = 0;
    for (Map.Entry<String, List<double[]>> curve : curves.entrySet()) {
      String stroke = COLOURS[colour++ % COLOURS.length];
      List<double[]> points = curve.getValue();
      for (int i = 1; i < points.size(); i++) {
        double[] a = points.get(i - 1);
        double[] b = points.get(i);
        line(svg, x(a[0]), y(a[1]), x(b[0]), y(b[1]), stroke, 2);
      }
      double[] last = points.get(points.size() - 1);
      text(svg, x(last[0]) + 6, y(last[1]) + 4, "start", curve.getKey() + " " + series);
    }
    return svg.append("</svg>\n").toString();
  }

  private double x(double power) {
    double span = Math.max(1.0, highest[0] - lowest[0]);
    return LEFT + (power - lowest[0]) / span * (WIDTH - LEFT - RIGHT);
  }

  private double y(double power) {
    double span = Math.max(1.0, highest[1] - lowest[1]);
    return HEIGHT - BOTTOM - (power - lowest[1]) / span * (HEIGHT - TOP - BOTTOM);
  }

  private static void line(
      StringBuilder svg, double x1, double y1, double x2, double y2, String stroke, int width) {
    svg.append(
        String.format(
            Locale.ROOT,
            "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\""
                + " stroke-width=\"%d\"/>%n",
            x1,
            y1,
            x2,
            y2,
            stroke,
            width));
  }

  private static void text(StringBuilder svg, double x, double y, String anchor, String words) {
    svg.append(
        String.format(
            Locale.ROOT,
            "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>%n",
            x,
            y,
            anchor,
            words));
  }
}
