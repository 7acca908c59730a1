package org.ferryglide.examples.teach;

import static org.ferryglide.examples.teach.Plot.along;
import static org.ferryglide.examples.teach.Plot.sum;
import static org.ferryglide.examples.teach.WorkingPicture.text;

import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.teach.Problem;

/** Plots of finding out where one is, and of keeping clear. */
final class FixPictures {
  private static final double[] START = {0.0, 0.0};

  private FixPictures() {}

  /** Two bearings of one mark, the first carried on by run and drift. */
  static Svg runningFix(String name, Problem problem) {
    double[] run = along(problem.exact("Water track"), problem.exact("Run"));
    double[] moved = sum(run, along(problem.exact("Set"), problem.exact("Drift")));
    double first = problem.exact("First bearing");
    double off = problem.exact("Distance off");
    double[] mark = sum(moved, along(problem.exact("Second bearing"), off));
    double[] onFirst = along(first, Math.hypot(mark[0], mark[1]));
    Plot plot =
        new Plot()
            .line(START, onFirst, text(problem, "First bearing"))
            .line(moved, mark, text(problem, "Second bearing"))
            .line(
                sum(moved, along(first + 180.0, 0.2 * off)),
                sum(moved, along(first, 0.5 * off)),
                "carried on")
            .vector(START, run, 1, text(problem, "Run"));
    if (problem.exact("Drift") > 0.0) {
      plot.vector(run, moved, 3, text(problem, "Drift"));
    }
    return plot.spot(mark, "mark")
        .spot(moved, "fix, " + text(problem, "Distance off") + " off")
        .note(START, "first bearing taken")
        .drawn(name, problem.title(), WorkingPicture.words(problem), "NM");
  }

  /** Two marks and the bearings of them, reversed from the marks to where they cut. */
  static Svg twoBearings(String name, Problem problem) {
    double[] second =
        along(problem.exact("First to second mark"), problem.exact("Distance between marks"));
    double[] here =
        along(problem.exact("First bearing, true") + 180.0, problem.exact("Distance off"));
    return new Plot()
        .line(START, here, text(problem, "First bearing, true"))
        .line(second, here, text(problem, "Second bearing, true"))
        .spot(START, "first mark")
        .spot(second, "second mark")
        .spot(here, "fix, " + text(problem, "Distance off") + " off the first mark")
        .drawn(name, problem.title(), WorkingPicture.words(problem), "NM");
  }

  /** The run up the sheet, the mark on the right. */
  static Svg bowBearings(String name, Problem problem) {
    double run = problem.exact("Run");
    double[] second = {0.0, run};
    double[] mark =
        sum(second, along(problem.exact("Second angle"), problem.exact("Distance off")));
    double[] abeam = {0.0, mark[1]};
    return new Plot()
        .line(START, mark, "")
        .line(second, mark, text(problem, "Distance off") + " off")
        .vector(START, second, 2, "run " + text(problem, "Run"))
        .line(second, sum(second, new double[] {0.0, Math.max(0.35 * run, abeam[1] - run)}), "")
        .spot(mark, "mark")
        .spot(second, text(problem, "Second angle") + " on the bow")
        .spot(START, text(problem, "First angle") + " on the bow")
        .drawn(name, problem.title(), WorkingPicture.words(problem), "NM", "bow");
  }

  /** The course to the mark and the one aimed, up stream of it. */
  static Svg aimedOff(String name, Problem problem) {
    double[] mark = along(problem.exact("Course"), 1.0);
    double[] aimed = along(problem.exact("Course aimed"), 1.0);
    double set = problem.exact("Set");
    double[] from = sum(along(problem.exact("Course"), 0.5), along(set + 180.0, 0.34));
    return new Plot()
        .line(START, mark, text(problem, "Course"))
        .vector(START, aimed, 2, "aimed " + text(problem, "Course aimed"))
        .vector(from, sum(from, along(set, 0.18)), 3, "stream")
        .vector(aimed, mark, 1, "turn down stream")
        .spot(START, "start")
        .spot(mark, "mark")
        .drawn(name, problem.title(), WorkingPicture.words(problem), "");
  }

  /** From the mark, the line that touches the ring round the danger. */
  static Svg clearing(String name, Problem problem) {
    double distance = problem.exact("Distance");
    double clearance = problem.exact("Clearance");
    double[] danger = along(problem.exact("Mark to danger"), distance);
    double away = problem.exact("Clearing bearing") + 180.0;
    double touching = Math.sqrt(distance * distance - clearance * clearance);
    return new Plot()
        .ring(danger, clearance, "keep " + text(problem, "Clearance") + " off")
        .line(
            along(away, touching + 1.4 * clearance),
            START,
            text(problem, "Clearing bearing") + " to the mark")
        .spot(START, "mark")
        .spot(danger, "danger")
        .drawn(name, problem.title(), WorkingPicture.words(problem), "NM");
  }

  /** The mark left, seen astern along the track while the bow points elsewhere. */
  static Svg backBearing(String name, Problem problem) {
    double[] here = along(problem.exact("Track"), 1.0);
    return new Plot()
        .vector(START, here, 2, "track " + text(problem, "Track"))
        .line(here, sum(here, along(problem.exact("Heading"), 0.35)), "bow")
        .spot(START, "mark left")
        .spot(here, "it bears " + text(problem, "Back bearing"))
        .drawn(name, problem.title(), WorkingPicture.words(problem), "");
  }
}
