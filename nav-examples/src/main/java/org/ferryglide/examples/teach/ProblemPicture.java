package org.ferryglide.examples.teach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.Quantity;

/**
 * The drawing that goes with a problem: the current triangle, the vectors of an estimated position,
 * the plot of a fix by two bearings, the height between two waters.
 *
 * <pre>{@code
 * Optional<Svg> picture = ProblemPicture.of(exercise.problem(), "triangle-3");
 * }</pre>
 */
public final class ProblemPicture {
  private static final double WIDE = 400.0;
  private static final double HIGH = 230.0;
  private static final double MARGIN = 34.0;

  /** Width of the plan; what its lines are stands to the right of it. */
  private static final double PLAN = 190.0;

  private final Problem problem;
  private final Svg svg;

  private ProblemPicture(Problem problem, String name) {
    this.problem = problem;
    this.svg =
        Svg.of(
            name,
            WIDE,
            HIGH,
            problem.title(),
            "Drawn to scale, north up: " + problem.question() + ".");
  }

  /**
   * The drawing of a problem.
   *
   * @param problem the problem
   * @param name name of the picture, in letters, digits and hyphens
   * @return the picture; empty for problems that are sums alone
   */
  public static Optional<Svg> of(Problem problem, String name) {
    ProblemPicture picture = new ProblemPicture(problem, name);
    List<String> figures = problem.figures();
    if (figures.containsAll(List.of("Course", "Paddling speed", "Set", "Rate", "Water track"))) {
      return Optional.of(picture.triangle());
    }
    if (figures.containsAll(List.of("Run", "Drift", "Distance made good", "Track"))) {
      return Optional.of(picture.estimated());
    }
    if (figures.containsAll(List.of("First to second mark", "Off the second mark"))) {
      return Optional.of(picture.twoBearings());
    }
    double[] shares = picture.shares();
    if (shares.length > 0) {
      return Optional.of(picture.height(shares));
    }
    return Optional.empty();
  }

  private double of(String figure) {
    return problem.exact(figure);
  }

  private String text(String figure) {
    Quantity quantity = problem.quantity(figure);
    return figure + " " + quantity.text(quantity.rounded(of(figure)));
  }

  private Svg triangle() {
    Plan plan = new Plan();
    double[] end = plan.step(new double[2], of("Set"), of("Rate"));
    double[] reached = plan.step(end, of("Water track"), of("Paddling speed"));
    plan.fit(List.of(new double[2], end, reached));
    plan.arrow(new double[2], end, text("Set"), "6 3");
    plan.arrow(end, reached, text("Water track"), "");
    plan.arrow(new double[2], reached, text("Course"), "1 3");
    return svg;
  }

  private Svg estimated() {
    Plan plan = new Plan();
    double[] reckoned = plan.step(new double[2], of("Water track"), of("Run"));
    double[] reached = plan.step(reckoned, of("Set"), of("Drift"));
    plan.fit(List.of(new double[2], reckoned, reached));
    plan.arrow(new double[2], reckoned, text("Water track"), "");
    plan.arrow(reckoned, reached, text("Set"), "6 3");
    plan.arrow(new double[2], reached, text("Track"), "1 3");
    return svg;
  }

  private Svg twoBearings() {
    Plan plan = new Plan();
    double[] one = new double[2];
    double[] two = plan.step(one, of("First to second mark"), of("Distance between marks"));
    double[] fix = plan.step(one, of("First bearing, true") + 180.0, of("Distance off"));
    plan.fit(List.of(one, two, fix));
    plan.arrow(fix, one, text("First bearing, true"), "");
    plan.arrow(fix, two, text("Second bearing, true"), "6 3");
    plan.arrow(one, two, text("First to second mark"), "1 3");
    return svg;
  }

  /** Both waters and the curve between, the time asked for and the height. */
  private Svg height(double[] shares) {
    double from = of("Water before");
    double to = of("Water after");
    double low = Math.min(0.0, Math.min(of("Height before"), of("Height after")));
    double high = Math.max(of("Height before"), of("Height after"));
    double perMinute = (WIDE - 2.0 * MARGIN) / (to - from);
    double perMetre = (HIGH - 2.0 * MARGIN) / (high - low);
    double base = HIGH - MARGIN + low * perMetre;
    double x = MARGIN + (of("Time") - from) * perMinute;
    double y = base - of("Height") * perMetre;
    double[] points = new double[2 * shares.length];
    for (int i = 0; i < shares.length; i++) {
      double metres = of("Height before") + shares[i] * (of("Height after") - of("Height before"));
      points[2 * i] = MARGIN + i * (WIDE - 2.0 * MARGIN) / (shares.length - 1);
      points[2 * i + 1] = base - metres * perMetre;
    }
    svg.polyline(points, "fill", "none", "stroke", "#000");
    svg.line(MARGIN, base, WIDE - MARGIN, base, "stroke", "#555");
    svg.line(x, base, x, y, "stroke", "#000", "stroke-dasharray", "4 3");
    svg.line(MARGIN, y, x, y, "stroke", "#000", "stroke-dasharray", "4 3");
    svg.circle(x, y, 4.0, "fill", "#000");
    label(MARGIN, base + 16.0, Quantity.CLOCK.text(from), "middle");
    label(WIDE - MARGIN, base + 16.0, Quantity.CLOCK.text(to), "middle");
    label(x, base + 30.0, Quantity.CLOCK.text(of("Time")), "middle");
    label(x, y - 10.0, Quantity.METRES.text(of("Height")), "middle");
    label(MARGIN, MARGIN - 16.0, text("Height before") + ", " + text("Height after"), "start");
    return svg;
  }

  /** Shares of the rise at even times; empty where no curve with a formula is asked about. */
  private double[] shares() {
    if (problem.figures().contains("Twelfths gone")) {
      return new double[] {0, 1 / 12.0, 0.25, 0.5, 0.75, 11 / 12.0, 1};
    }
    if (!problem.title().contains("cosine")) {
      return new double[0];
    }
    double[] shares = new double[37];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = (1.0 - Math.cos(Math.PI * i / (shares.length - 1))) / 2.0;
    }
    return shares;
  }

  private void label(double x, double y, String words, String anchor) {
    svg.text(x, y, words, "font-size", "12", "text-anchor", anchor);
  }

  /** A plan of vectors, north up, in knots or miles. */
  private final class Plan {
    private double scale = 1.0;
    private double left;
    private double top;
    private int lines;

    double[] step(double[] from, double degrees, double length) {
      double radians = Math.toRadians(degrees);
      return new double[] {
        from[0] + length * Math.sin(radians), from[1] + length * Math.cos(radians)
      };
    }

    void fit(List<double[]> points) {
      List<Double> east = new ArrayList<>();
      List<Double> north = new ArrayList<>();
      points.forEach(point -> east.add(point[0]));
      points.forEach(point -> north.add(point[1]));
      double wide = span(east);
      double high = span(north);
      scale = Math.min((PLAN - MARGIN) / wide, (HIGH - MARGIN) / high);
      left = (PLAN - scale * wide) / 2.0 - scale * east.stream().min(Double::compare).get();
      top = (HIGH - scale * high) / 2.0 + scale * north.stream().max(Double::compare).get();
    }

    private double span(List<Double> values) {
      double least = values.stream().min(Double::compare).get();
      double greatest = values.stream().max(Double::compare).get();
      return Math.max(0.01, greatest - least);
    }

    void arrow(double[] from, double[] to, String words, String dashes) {
      double x1 = left + scale * from[0];
      double y1 = top - scale * from[1];
      double x2 = left + scale * to[0];
      double y2 = top - scale * to[1];
      stroke(x1, y1, x2, y2, dashes);
      double angle = Math.atan2(y2 - y1, x2 - x1);
      double[] head = new double[6];
      double[] turns = {0.0, 2.7, -2.7};
      for (int i = 0; i < 3; i++) {
        double length = i == 0 ? 0.0 : 9.0;
        head[2 * i] = x2 + length * Math.cos(angle + turns[i]);
        head[2 * i + 1] = y2 + length * Math.sin(angle + turns[i]);
      }
      svg.polygon(head, "fill", "#000");
      double y = MARGIN + 22.0 * lines++;
      stroke(PLAN + 10.0, y - 4.0, PLAN + 38.0, y - 4.0, dashes);
      label(PLAN + 44.0, y, words, "start");
    }

    private void stroke(double x1, double y1, double x2, double y2, String dashes) {
      svg.line(
          x1,
          y1,
          x2,
          y2,
          "stroke",
          "#000",
          "stroke-width",
          "1.6",
          "stroke-dasharray",
          dashes.isEmpty() ? "none" : dashes);
    }
  }
}
