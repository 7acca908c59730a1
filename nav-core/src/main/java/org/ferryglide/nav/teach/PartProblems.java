package org.ferryglide.nav.teach;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.plane.SteadyTriangle;
import org.ferryglide.nav.reckon.SteadyRun;

/** Problems of a way in parts, each with its own length of time and stream. */
final class PartProblems {
  private static final String COURSE = "Course";
  private static final String SPEED = "Paddling speed";
  private static final String WATER_TRACK = "Water track";
  private static final String VARIATION = "Variation";
  private static final String MADE_GOOD = "Distance made good";
  private static final double MINUTES_IN_HOUR = 60.0;
  private static final double SECONDS_IN_HOUR = 3600.0;

  private PartProblems() {}

  /**
   * Runs of a few minutes joined to whole hours, as they are laid off on paper, where neither way
   * through the water nor speed changes.
   */
  static List<SteadyRun> hourly(List<SteadyRun> runs) {
    List<SteadyRun> hours = new ArrayList<>();
    List<SteadyRun> open = new ArrayList<>();
    double seconds = 0.0;
    for (SteadyRun run : runs) {
      boolean another = !open.isEmpty() && !isOneWay(open.get(0), run);
      if (another || seconds >= SECONDS_IN_HOUR - 1.0) {
        hours.add(joined(open));
        open.clear();
        seconds = 0.0;
      }
      open.add(run);
      seconds += secondsOf(run);
    }
    if (!open.isEmpty()) {
      hours.add(joined(open));
    }
    return hours;
  }

  private static boolean isOneWay(SteadyRun one, SteadyRun other) {
    double slower = Math.abs(one.speed().knots() - other.speed().knots());
    return Math.abs(one.waterTrack().turnDegreesTo(other.waterTrack())) < 0.5 && slower < 0.02;
  }

  private static SteadyRun joined(List<SteadyRun> runs) {
    double east = 0.0;
    double north = 0.0;
    double paddled = 0.0;
    double seconds = 0.0;
    for (SteadyRun run : runs) {
      double length = secondsOf(run);
      east += run.stream().eastMetresPerSecond() * length;
      north += run.stream().northMetresPerSecond() * length;
      paddled += run.speed().metresPerSecond() * length;
      seconds += length;
    }
    return new SteadyRun(
        Duration.ofMillis(Math.round(seconds * 1e3)),
        runs.get(0).waterTrack(),
        Speed.ofMetresPerSecond(paddled / seconds),
        Velocity.ofEastAndNorth(east / seconds, north / seconds));
  }

  private static double secondsOf(SteadyRun run) {
    return Seconds.of(run.duration());
  }

  /** One heading through all parts. */
  static Problem heading(double course, List<SteadyRun> parts, double leeway, double variation) {
    int count = parts.size();
    double paddled = 0.0;
    double minutes = 0.0;
    for (SteadyRun part : parts) {
      double length = secondsOf(part) / MINUTES_IN_HOUR;
      paddled += part.speed().knots() * length;
      minutes += length;
    }
    Problem problem =
        Problem.titled("One heading for the leg, " + count + (count == 1 ? " part" : " parts"))
            .given(COURSE, Quantity.TRUE_BEARING, course, "laid off on the chart")
            .given(SPEED, Quantity.KNOTS, paddled / minutes, "through the water");
    problem = streams(problem, parts);
    if (Math.abs(leeway) > 0.05) {
      problem = problem.given("Leeway", Quantity.ANGLE, leeway, "to starboard; to port below zero");
    }
    boolean windy = problem.figures().contains("Leeway");
    problem =
        problem
            .given(VARIATION, Quantity.EAST_WEST, variation, "there and then")
            .then(
                WATER_TRACK,
                Quantity.TRUE_BEARING,
                "all streams from the start; from their end swing the paddling of the whole time",
                f -> swung(f, count)[0])
            .slip(
                WATER_TRACK,
                "aimed off down stream",
                Slip.COMMON,
                f -> 2.0 * f.of(COURSE) - swung(f, count)[0])
            .then(
                MADE_GOOD,
                Quantity.NAUTICAL_MILES,
                "from the start to where the swing cuts the track",
                f -> swung(f, count)[1]);
    String before = WATER_TRACK;
    if (windy) {
      before = "True heading";
      problem =
          problem
              .then(
                  before,
                  Quantity.TRUE_BEARING,
                  "leeway applied towards the wind",
                  f -> f.of(WATER_TRACK) - f.of("Leeway"))
              .slip(
                  before,
                  "leeway to the wrong side",
                  Slip.COMMON,
                  f -> f.of(WATER_TRACK) + f.of("Leeway"));
    }
    String from = before;
    problem =
        problem.then(
            "Heading",
            Quantity.MAGNETIC_BEARING,
            Slips.takeOff("variation", variation, "true"),
            f -> f.of(from) - f.of(VARIATION));
    return Slips.takingOff(problem, "Heading", from, VARIATION, "variation")
        .estimated("streams that turn cancel: only what is left over needs an allowance")
        .checked("is the bow up stream of the course, and up wind of the way through the water?");
  }

  /** Where all parts lead. */
  static Problem estimated(List<SteadyRun> parts) {
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("an estimated position needs at least one run");
    }
    int count = parts.size();
    Problem problem =
        Problem.titled("Estimated position after " + count + (count == 1 ? " run" : " runs"));
    for (int part = 1; part <= count; part++) {
      SteadyRun run = parts.get(part - 1);
      problem =
          problem
              .given(
                  WATER_TRACK + " " + part,
                  Quantity.TRUE_BEARING,
                  run.waterTrack().degrees(),
                  "heading with its leeway")
              .given(SPEED + " " + part, Quantity.KNOTS, run.speed().knots(), "by the log");
    }
    problem = streams(problem, parts);
    return problem
        .then(
            MADE_GOOD,
            Quantity.NAUTICAL_MILES,
            "all runs one after another, then all drifts; from the start to their end",
            f -> Math.hypot(sum(f, count, 1.0)[0], sum(f, count, 1.0)[1]))
        .then(
            "Track",
            Quantity.TRUE_BEARING,
            "from the start to the same place",
            f -> direction(sum(f, count, 1.0)))
        .slip("Track", "stream left out", Slip.COMMON, f -> direction(sum(f, count, 0.0)))
        .slip("Track", "stream taken backwards", Slip.COMMON, f -> direction(sum(f, count, -1.0)))
        .estimated("where the water went, then where it carried me")
        .checked("does it lie down stream of the dead reckoning?");
  }

  private static Problem streams(Problem before, List<SteadyRun> parts) {
    Problem problem = before;
    for (int part = 1; part <= parts.size(); part++) {
      SteadyRun run = parts.get(part - 1);
      String which = "part " + part;
      problem =
          problem
              .given("Time " + part, Quantity.MINUTES, secondsOf(run) / MINUTES_IN_HOUR, which)
              .given("Set " + part, Quantity.TRUE_BEARING, run.stream().set().degrees(), which)
              .given("Rate " + part, Quantity.KNOTS, run.stream().rate().knots(), which);
    }
    return problem;
  }

  /** Water track and distance made good, degrees and miles; NaN where the swing misses. */
  private static double[] swung(Figures f, int count) {
    double[] drift = drift(f, count);
    double hours = 0.0;
    for (int part = 1; part <= count; part++) {
      hours += f.of("Time " + part) / MINUTES_IN_HOUR;
    }
    double[] out = new double[2];
    SteadyTriangle.solve(f.of(COURSE), f.of(SPEED) * hours, drift[0], drift[1], out, 0);
    return out;
  }

  private static double[] drift(Figures f, int count) {
    double[] sum = new double[2];
    for (int part = 1; part <= count; part++) {
      add(sum, f.of("Set " + part), f.of("Rate " + part) * f.of("Time " + part));
    }
    return sum;
  }

  private static double[] sum(Figures f, int count, double streams) {
    double[] sum = drift(f, count);
    sum[0] *= streams;
    sum[1] *= streams;
    for (int part = 1; part <= count; part++) {
      add(sum, f.of(WATER_TRACK + " " + part), f.of(SPEED + " " + part) * f.of("Time " + part));
    }
    return sum;
  }

  private static void add(double[] sum, double degrees, double knotsMinutes) {
    double angle = Math.toRadians(degrees);
    sum[0] += knotsMinutes / MINUTES_IN_HOUR * Math.sin(angle);
    sum[1] += knotsMinutes / MINUTES_IN_HOUR * Math.cos(angle);
  }

  private static double direction(double[] eastNorth) {
    return Angles.reduced(Math.toDegrees(Math.atan2(eastNorth[0], eastNorth[1])));
  }
}
