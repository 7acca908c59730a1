package org.ferryglide.examples.teach;

import static org.ferryglide.examples.teach.Plot.along;
import static org.ferryglide.examples.teach.Plot.sum;
import static org.ferryglide.examples.teach.WorkingPicture.text;

import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.teach.Problem;

/**
 * Vectors of steering and reckoning: heads one for the water, two for the ground, three streams.
 */
final class VectorPictures {
  private static final double[] START = {0.0, 0.0};

  private VectorPictures() {}

  /** One hour: the stream from the start, the paddling swung from its end to the course. */
  static Svg triangle(String name, Problem problem) {
    double speed = problem.exact("Paddling speed");
    double[] stream = along(problem.exact("Set"), problem.exact("Rate"));
    double[] end = sum(stream, along(problem.exact("Water track"), speed));
    double over = Math.hypot(end[0], end[1]);
    return new Plot()
        .line(START, along(problem.exact("Course"), over * 1.18), "")
        .vector(START, end, 2, text(problem, "Course") + " " + tenths(over) + " kn over the ground")
        .vector(START, stream, 3, text(problem, "Set") + " " + text(problem, "Rate"))
        .vector(
            stream, end, 1, text(problem, "Water track") + " " + text(problem, "Paddling speed"))
        .spot(START, "start")
        .drawn(name, problem.title(), WorkingPicture.words(problem), "NM, one hour");
  }

  /** All hours of stream one after another, then the paddling of all of them. */
  static Svg hourly(String name, Problem problem) {
    Plot plot = new Plot();
    double[] at = START;
    double paddled = 0.0;
    for (int part = 1; problem.figures().contains("Rate " + part); part++) {
      double[] next =
          sum(
              at,
              along(
                  problem.exact("Set " + part),
                  problem.exact("Rate " + part) * hours(problem, part)));
      plot.vector(at, next, 3, part + ": " + text(problem, "Rate " + part));
      paddled += problem.exact("Paddling speed") * hours(problem, part);
      at = next;
    }
    double[] end = sum(at, along(problem.exact("Water track"), paddled));
    return plot.line(START, along(problem.exact("Course"), Math.hypot(end[0], end[1]) * 1.1), "")
        .vector(START, end, 2, text(problem, "Course") + " " + text(problem, "Distance made good"))
        .vector(at, end, 1, text(problem, "Water track") + ", " + tenths(paddled) + " NM paddled")
        .spot(START, "start")
        .drawn(name, problem.title(), WorkingPicture.words(problem), "NM");
  }

  /** A part is an hour unless it says how long it is. */
  private static double hours(Problem problem, int part) {
    String time = "Time " + part;
    return problem.figures().contains(time) ? problem.exact(time) / 60.0 : 1.0;
  }

  /** All runs through the water one after another, then all drifts. */
  static Svg runs(String name, Problem problem) {
    Plot plot = new Plot();
    double[] at = START;
    for (int part = 1; problem.figures().contains("Water track " + part); part++) {
      String track = "Water track " + part;
      double run = problem.exact("Paddling speed " + part) * hours(problem, part);
      double[] next = sum(at, along(problem.exact(track), run));
      plot.vector(at, next, 1, text(problem, track) + " " + tenths(run) + " NM");
      at = next;
    }
    plot.note(at, "dead reckoning");
    for (int part = 1; problem.figures().contains("Rate " + part); part++) {
      double drift = problem.exact("Rate " + part) * hours(problem, part);
      double[] next = sum(at, along(problem.exact("Set " + part), drift));
      plot.vector(at, next, 3, "");
      at = next;
    }
    return plot.vector(
            START, at, 2, text(problem, "Track") + " " + text(problem, "Distance made good"))
        .spot(START, "start")
        .spot(at, "estimated position")
        .drawn(name, problem.title(), WorkingPicture.words(problem), "NM");
  }

  /** Where the water went, then where it carried the party. */
  static Svg estimated(String name, Problem problem) {
    double[] reckoned = along(problem.exact("Water track"), problem.exact("Run"));
    double[] end = sum(reckoned, along(problem.exact("Set"), problem.exact("Drift")));
    return new Plot()
        .vector(START, reckoned, 1, text(problem, "Water track") + " " + text(problem, "Run"))
        .vector(reckoned, end, 3, text(problem, "Set") + " " + text(problem, "Drift"))
        .vector(START, end, 2, text(problem, "Track") + " " + text(problem, "Distance made good"))
        .spot(START, "start")
        .spot(end, "estimated position")
        .note(reckoned, "dead reckoning")
        .drawn(name, problem.title(), WorkingPicture.words(problem), "NM");
  }

  /** The wind onto the craft, the bow up wind of the way through the water. */
  static Svg leeway(String name, Problem problem) {
    double[] track = along(problem.exact("Water track"), 1.0);
    double[] bow = along(problem.exact("True heading"), 0.8);
    double[] wind = along(problem.exact("Wind from"), 0.8);
    return new Plot()
        .vector(START, track, 1, "water track " + text(problem, "Water track"))
        .line(START, bow, "bow " + text(problem, "True heading"))
        .vector(wind, along(problem.exact("Wind from"), 0.2), 1, "wind")
        .spot(START, "")
        .drawn(name, problem.title(), WorkingPicture.words(problem), "");
  }

  private static String tenths(double value) {
    return Svg.number(Math.rint(value * 10.0) / 10.0);
  }
}
