package org.ferryglide.examples.teach;

import static org.ferryglide.examples.teach.WorkingPicture.text;

import org.ferryglide.examples.page.Ink;
import org.ferryglide.examples.page.Places;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.Quantity;

/**
 * The norths as lines from one point, and the course that is counted from each; the angles between
 * the norths are drawn wider than they are, since a chart's own would be too narrow to see.
 */
final class NorthPictures {
  private static final double MIDDLE_X = 180.0;
  private static final double MIDDLE_Y = 150.0;
  private static final double LONG = 118.0;

  /** Least angle between two norths on the sheet, degrees. */
  private static final double APART = 16.0;

  private NorthPictures() {}

  static Svg norths(String name, Problem problem) {
    double course = direction(problem);
    double below = Math.cos(Math.toRadians(course)) < 0.0 ? 66.0 : 0.0;
    double high = 196.0 + below;
    Svg svg = Svg.of(name, Ink.WIDTH, high, problem.title(), WorkingPicture.words(problem));
    svg.rectangle(0, 0, Ink.WIDTH, high, "fill", "#fff");
    Places places = new Places(3, 3, Ink.WIDTH - 3, high - 16);
    double variation = east(problem, "Variation");
    double compass = variation + east(problem, "Deviation");
    double grid = east(problem, "Convergence");
    double wider = wider(variation, compass, grid);
    double[] end = end(course, 128.0);
    places.takeLine(MIDDLE_X, MIDDLE_Y, end[0], end[1]);
    north(svg, places, 0.0, "true north", "none");
    if (problem.figures().contains("Variation")) {
      north(svg, places, wider * variation, "magnetic north, " + text(problem, "Variation"), "8 3");
    }
    if (problem.figures().contains("Deviation")) {
      north(svg, places, wider * compass, "compass north, " + text(problem, "Deviation"), "2 3");
    }
    if (problem.figures().contains("Convergence")) {
      north(svg, places, wider * grid, "grid north, " + text(problem, "Convergence"), "2 3");
    }
    Ink.arrow(svg, MIDDLE_X, MIDDLE_Y, end[0], end[1], 1, 1.0, Ink.BLACK, 2.2);
    svg.circle(MIDDLE_X, MIDDLE_Y, 3, "fill", Ink.BLACK);
    String words = bearings(problem);
    double[] room = places.beside(end[0], end[1], Ink.width(words, Ink.TEXT), 12);
    Ink.words(svg, room[0], room[1] + 10, words, Ink.SMALL, "font-weight", "700");
    if (wider > 1.0) {
      Ink.words(svg, 6, high - 6, "Norths are drawn further apart than they are.", 8.0);
    }
    return svg;
  }

  /** By how much the angles between the norths are widened, so that each is seen. */
  private static double wider(double... norths) {
    double nearest = Double.POSITIVE_INFINITY;
    double furthest = 1e-9;
    for (int i = 0; i < norths.length; i++) {
      furthest = Math.max(furthest, Math.abs(norths[i]));
      for (int j = -1; j < i; j++) {
        double apart = Math.abs(norths[i] - (j < 0 ? 0.0 : norths[j]));
        nearest = apart > 1e-9 ? Math.min(nearest, apart) : nearest;
      }
    }
    return Math.max(1.0, Math.min(APART / nearest, 50.0 / furthest));
  }

  private static void north(Svg svg, Places places, double degrees, String words, String dashes) {
    double[] end = end(degrees, LONG);
    svg.line(
        MIDDLE_X,
        MIDDLE_Y,
        end[0],
        end[1],
        "stroke",
        Ink.BLACK,
        "stroke-width",
        "1.3",
        "stroke-dasharray",
        dashes);
    places.takeLine(MIDDLE_X, MIDDLE_Y, end[0], end[1]);
    double[] room = places.beside(end[0], end[1], Ink.width(words, Ink.SMALL), 11);
    Ink.words(svg, room[0], room[1] + 9, words, Ink.SMALL);
  }

  private static double[] end(double degrees, double length) {
    double angle = Math.toRadians(degrees);
    return new double[] {MIDDLE_X + length * Math.sin(angle), MIDDLE_Y - length * Math.cos(angle)};
  }

  private static double east(Problem problem, String figure) {
    return problem.figures().contains(figure) ? problem.exact(figure) : 0.0;
  }

  private static double direction(Problem problem) {
    for (String figure : problem.figures()) {
      if (problem.quantity(figure) == Quantity.TRUE_BEARING) {
        return problem.exact(figure);
      }
    }
    return problem.exact(problem.asked());
  }

  private static String bearings(Problem problem) {
    StringBuilder words = new StringBuilder();
    for (String figure : problem.figures()) {
      if (problem.quantity(figure).isBearing()) {
        words.append(words.length() == 0 ? "" : " = ");
        words.append(text(problem, figure));
      }
    }
    return words.toString();
  }
}
