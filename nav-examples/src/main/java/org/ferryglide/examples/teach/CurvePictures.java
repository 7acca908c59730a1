package org.ferryglide.examples.teach;

import static org.ferryglide.examples.teach.WorkingPicture.text;

import org.ferryglide.examples.page.Ink;
import org.ferryglide.examples.page.Places;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.teach.Problem;

/** Curves and scales of tides and streams, with the figure that is read off them. */
final class CurvePictures {
  private static final double LEFT = 34.0;
  private static final double RIGHT = 346.0;
  private static final double TOP = 22.0;
  private static final double BOTTOM = 156.0;
  private static final double HIGH = 184.0;
  private static final int STEPS = 60;

  private CurvePictures() {}

  /**
   * Heights between two waters. Drawn through the figure that was worked: the cosine bent so that
   * it passes it, or the pieces of the twelfths.
   */
  static Svg between(String name, Problem problem) {
    double before = problem.exact("Height before");
    double after = problem.exact("Height after");
    double least = Math.floor(Math.min(0.0, Math.min(before, after)));
    double most = Math.ceil(Math.max(before, after) + 0.2);
    Svg svg = sheet(name, problem);
    Places places = new Places(LEFT, 2, RIGHT, BOTTOM);
    for (double metres = least; metres <= most; metres += 1.0) {
      level(svg, y(metres, least, most), metres);
    }
    svg.text(4, 12, "m above the datum", "font-size", "9");
    double[] curve = new double[2 * (STEPS + 1)];
    for (int i = 0; i <= STEPS; i++) {
      double share = (double) i / STEPS;
      curve[2 * i] = LEFT + share * (RIGHT - LEFT);
      curve[2 * i + 1] = y(before + (after - before) * gone(problem, share), least, most);
    }
    svg.polyline(curve, "fill", "none", "stroke", Ink.WATER, "stroke-width", "2");
    for (int i = 0; i < STEPS; i++) {
      places.takeLine(curve[2 * i], curve[2 * i + 1], curve[2 * i + 2], curve[2 * i + 3]);
    }
    for (int sixth = 0; sixth <= 6; sixth++) {
      double x = LEFT + sixth * (RIGHT - LEFT) / 6;
      svg.line(x, BOTTOM, x, BOTTOM + 4, "stroke", Ink.BLACK);
    }
    double x = LEFT + problem.exact("Share of the interval") * (RIGHT - LEFT);
    double y = y(problem.exact("Height"), least, most);
    svg.polyline(
        new double[] {x, BOTTOM, x, y, LEFT, y},
        "fill",
        "none",
        "stroke",
        Ink.BLACK,
        "stroke-width",
        "1",
        "stroke-dasharray",
        "4 3");
    svg.circle(x, y, 3, "fill", Ink.BLACK);
    places.takeLine(x, BOTTOM, x, y);
    places.takeLine(LEFT, y, x, y);
    label(svg, places, x, y, text(problem, "Time") + " " + text(problem, "Height"));
    clock(svg, LEFT, text(problem, "Water before"), "start");
    clock(svg, RIGHT, text(problem, "Water after"), "end");
    label(svg, places, LEFT, y(before, least, most), text(problem, "Height before"));
    label(svg, places, RIGHT, y(after, least, most), text(problem, "Height after"));
    return svg;
  }

  /** Share of the range gone: the problem's own rule where it is told, else bent through it. */
  private static double gone(Problem problem, double share) {
    if (problem.figures().contains("Twelfths gone")) {
      double[] ends = {0.0, 1.0, 3.0, 6.0, 9.0, 11.0, 12.0};
      int part = (int) Math.min(5.0, Math.floor(share * 6.0));
      return (ends[part] + (share * 6.0 - part) * (ends[part + 1] - ends[part])) / 12.0;
    }
    // a power of the time that takes the cosine through the figure worked
    double at = problem.exact("Share of the interval");
    double wanted = Math.acos(1.0 - 2.0 * problem.exact("Share of the range")) / Math.PI;
    boolean inside = at > 0.0 && at < 1.0 && wanted > 0.0 && wanted < 1.0;
    double power = inside ? Math.log(wanted) / Math.log(at) : 1.0;
    return (1.0 - Math.cos(Math.PI * Math.pow(share, power))) / 2.0;
  }

  /** Rate against range: the straight line through neaps and springs. */
  static Svg rate(String name, Problem problem) {
    double neapRange = problem.exact("Neap range");
    double springRange = problem.exact("Spring range");
    double range = problem.exact("Range");
    double from = Math.min(neapRange, range) - 0.15 * (springRange - neapRange);
    double to = Math.max(springRange, range) + 0.15 * (springRange - neapRange);
    double neaps = problem.exact("Neap rate");
    double springs = problem.exact("Spring rate");
    double most = Math.ceil(Math.max(springs, problem.exact("Rate")) * 2.0 + 0.5) / 2.0;
    Svg svg = sheet(name, problem);
    Places places = new Places(LEFT, 2, RIGHT, BOTTOM);
    svg.text(4, 12, "kn", "font-size", "9");
    for (double knots = 0.0; knots <= most + 1e-9; knots += most > 3.0 ? 1.0 : 0.5) {
      level(svg, y(knots, 0.0, most), knots);
    }
    double slope = (springs - neaps) / (springRange - neapRange);
    double atLeft = y(Math.max(0.0, neaps + slope * (from - neapRange)), 0.0, most);
    double atRight = y(neaps + slope * (to - neapRange), 0.0, most);
    svg.line(LEFT, atLeft, RIGHT, atRight, "stroke", Ink.WATER, "stroke-width", "2");
    places.takeLine(LEFT, atLeft, RIGHT, atRight);
    double[][] read = {{neapRange, neaps}, {springRange, springs}, {range, problem.exact("Rate")}};
    String[] names = {
      "neaps " + text(problem, "Neap rate"),
      "springs " + text(problem, "Spring rate"),
      "today " + text(problem, "Rate")
    };
    for (int i = 0; i < read.length; i++) {
      double x = LEFT + (read[i][0] - from) / (to - from) * (RIGHT - LEFT);
      double y = y(read[i][1], 0.0, most);
      svg.line(x, BOTTOM, x, y, "stroke", Ink.BLACK, "stroke-dasharray", i == 2 ? "4 3" : "1 3");
      places.takeLine(x, BOTTOM, x, y);
      svg.circle(x, y, 3, "fill", i == 2 ? Ink.BLACK : "#fff", "stroke", Ink.BLACK);
      places.take(x - 5, y - 5, 10, 10);
      label(svg, places, x, y, names[i]);
      svg.text(
          x,
          BOTTOM + 14 + (i == 2 ? 10 : 0),
          Svg.number(Math.rint(read[i][0] * 10.0) / 10.0) + " m",
          "font-size",
          "8",
          "text-anchor",
          "middle");
    }
    svg.text(4, HIGH - 6, "range", "font-size", "8");
    return svg;
  }

  /** Sea bed, chart datum and the water of the hour, in a column. */
  static Svg depth(String name, Problem problem) {
    boolean dries = problem.figures().contains("Dries");
    double tide = problem.exact("Height");
    double bed = dries ? problem.exact("Dries") : -problem.exact("Charted depth");
    double least = Math.min(0.0, Math.min(bed, tide)) - 0.5;
    double most = Math.max(tide, Math.max(bed, 0.0)) + 0.8;
    Svg svg = sheet(name, problem);
    svg.hatch("bed", 6, 45, Ink.BLACK);
    double floor = y(bed, least, most);
    svg.polygon(
        new double[] {120, BOTTOM, 150, floor, 250, floor, 280, BOTTOM},
        "fill",
        svg.fill("bed"),
        "stroke",
        Ink.BLACK);
    double level = y(tide, least, most);
    svg.line(60, level, 340, level, "stroke", Ink.WATER, "stroke-width", "2");
    Ink.words(svg, 62, level - 4, "sea, height " + text(problem, "Height"), Ink.SMALL);
    double datum = y(0.0, least, most);
    svg.line(60, datum, 340, datum, "stroke", Ink.BLACK, "stroke-dasharray", "8 4");
    Ink.words(svg, 62, datum - 4, "chart datum", Ink.SMALL);
    svg.line(200, level, 200, floor, "stroke", Ink.BLACK, "stroke-width", "1.4");
    String words = "depth " + text(problem, "Depth");
    Ink.words(svg, 206, 0.5 * (level + floor) + 3, words, Ink.TEXT, "font-weight", "700");
    String charted =
        dries ? "dries " + text(problem, "Dries") : "charted " + text(problem, "Charted depth");
    Ink.words(svg, 200, BOTTOM + 14, charted, Ink.SMALL, "text-anchor", "middle");
    return svg;
  }

  private static Svg sheet(String name, Problem problem) {
    Svg svg = Svg.of(name, Ink.WIDTH, HIGH, problem.title(), WorkingPicture.words(problem));
    return svg.rectangle(0, 0, Ink.WIDTH, HIGH, "fill", "#fff");
  }

  private static void level(Svg svg, double y, double figure) {
    svg.line(LEFT, y, RIGHT, y, "stroke", Ink.PALE);
    svg.text(LEFT - 4, y + 3, Svg.number(figure), "font-size", "8", "text-anchor", "end");
  }

  private static void clock(Svg svg, double x, String words, String anchor) {
    svg.text(x, BOTTOM + 15, words, "font-size", "9", "text-anchor", anchor);
  }

  private static void label(Svg svg, Places places, double x, double y, String words) {
    double[] room = places.beside(x, y, Ink.width(words, Ink.SMALL), 11);
    Ink.words(svg, room[0], room[1] + 9, words, Ink.SMALL);
  }

  private static double y(double value, double least, double most) {
    return BOTTOM - (value - least) / (most - least) * (BOTTOM - TOP);
  }
}
