package org.ferryglide.nav.teach;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.bearing.GridBearing;
import org.ferryglide.nav.bearing.GridConvergence;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.chart.ChartTool;
import org.ferryglide.nav.magnetic.CompassRose;

/**
 * Laying off a course with a given tool, step by step: what is lined up on what, which north is
 * read, what remains to apply, and what can go wrong. Common practice, no source.
 *
 * <pre>{@code
 * LayingOff plan = LayingOff.with(ChartTool.PARALLEL_RULES, LayingOff.Paper.CHART);
 * plan.steps().forEach(System.out::println);
 * System.out.println(plan.remains());
 * System.out.println(plan.problem(TrueBearing.ofDegrees(56), variation).working());
 * }</pre>
 */
public final class LayingOff implements Serializable {
  private static final long serialVersionUID = 1L;

  /** What the course is laid off on. */
  public enum Paper {
    /** A chart, with meridians and printed roses: true north. */
    CHART,
    /** A land map, with the lines of a grid: grid north. */
    LAND_MAP
  }

  private static final String TRUE = "True course";
  private static final String MAGNETIC = "Magnetic course";
  private static final String VARIATION = "Variation";
  private static final String RING = "Inner ring";
  private static final String CHANGE = "Change since";

  private final ChartTool tool;
  private final Paper paper;

  private LayingOff(ChartTool tool, Paper paper) {
    this.tool = tool;
    this.paper = paper;
  }

  /**
   * Laying off with a tool.
   *
   * @param tool the tool
   * @param paper what it is laid on
   * @return the steps
   * @throws IllegalArgumentException if the tool needs a printed rose and the paper has none
   */
  public static LayingOff with(ChartTool tool, Paper paper) {
    if (paper == Paper.LAND_MAP && tool.linedUpOn() == ChartTool.LinedUpOn.PRINTED_ROSE) {
      throw new IllegalArgumentException(
          tool.name() + " are read on a printed rose, and a land map has none");
    }
    return new LayingOff(tool, paper);
  }

  /**
   * The tool.
   *
   * @return the tool
   */
  public ChartTool tool() {
    return tool;
  }

  /**
   * What it is laid on.
   *
   * @return the paper
   */
  public Paper paper() {
    return paper;
  }

  /**
   * What to do, in order: lay the tool on the leg, find north with it, read.
   *
   * @return three sentences
   */
  public List<String> steps() {
    String upright = paper == Paper.CHART ? "a meridian" : "an upright line of the grid";
    String up = paper == Paper.CHART ? "chart" : "map";
    return switch (tool.linedUpOn()) {
      case PRINTED_ROSE ->
          List.of(
              "Lay one edge along the leg, from where you start to where you go.",
              "Walk the rules to the nearest rose, one pressed down while the other moves, until an"
                  + " edge lies across its middle.",
              "Read where that edge leaves the rose on the side towards where you go: true on the"
                  + " outer ring, magnetic of the rose's year on the inner one.");
      case MERIDIANS_AND_PARALLELS ->
          tool.name().equals(ChartTool.TURNING_ROSE_PLOTTER.name())
              ? List.of(
                  "Lay the long edge along the leg, its arrow towards where you go.",
                  "Hold the plate and turn the rose until its lines lie along "
                      + upright
                      + ", its north up the "
                      + up
                      + ".",
                  "Read the rose at the plate's line, on the side of the arrow.")
              : List.of(
                  "Lay the middle of the sheet's rose on the leg.",
                  "Turn the sheet until its lines lie along "
                      + upright
                      + ", its north up the "
                      + up
                      + ", by eye and over its whole height.",
                  "Read where the leg, or a string along it, leaves the rose towards where you"
                      + " go.");
      case GRID_LINES_OR_MERIDIANS ->
          List.of(
              "Lay the long edge along the leg, the arrow of travel towards where you go.",
              "Turn the capsule until its lines lie along "
                  + upright
                  + ", its north up the "
                  + up
                  + "; the needle does not matter.",
              "Read the ring at the line of travel.");
    };
  }

  /**
   * The north that is read.
   *
   * @return a few words
   */
  public String northRead() {
    if (paper == Paper.LAND_MAP) {
      return "grid north"; // whatever the tool, what it is lined up on is the grid
    }
    return tool.linedUpOn() == ChartTool.LinedUpOn.PRINTED_ROSE
        ? "true north on the outer ring, magnetic north of the rose's year on the inner one"
        : "true north";
  }

  /**
   * What remains to apply before the deck compass shows it.
   *
   * @return a sentence
   */
  public String remains() {
    String deviation = ", then the deviation of your compass if it has any.";
    if (paper == Paper.LAND_MAP) {
      return "Convergence to come to true, variation of today to come to magnetic" + deviation;
    }
    return tool.linedUpOn() == ChartTool.LinedUpOn.PRINTED_ROSE
        ? "From the outer ring the variation of today; from the inner ring only its change since"
            + " the rose's year"
            + deviation
        : "The variation of today to come to magnetic" + deviation;
  }

  /**
   * What can go wrong, the gravest first.
   *
   * @return sentences
   */
  public List<String> canGoWrong() {
    List<String> wrong = new ArrayList<>();
    String across = paper == Paper.CHART ? "a parallel" : "a line that runs across";
    switch (tool.linedUpOn()) {
      case PRINTED_ROSE -> {
        wrong.add("Read on the far side of the rose: reversed by 180°.");
        wrong.add("Read on the inner ring and variation applied as well: applied twice.");
        wrong.add("Read on the inner ring as if it were of this year: off by the change since.");
        wrong.add("Rules that slip while they are walked: walk them back to the leg and look.");
      }
      case MERIDIANS_AND_PARALLELS -> {
        wrong.add("Read on the side you come from: reversed by 180°.");
        wrong.add("North of the rose down the paper: reversed by 180°.");
        wrong.add("Lines laid along " + across + ": off by 90°.");
      }
      case GRID_LINES_OR_MERIDIANS -> {
        wrong.add("Arrow of travel towards where you come from: reversed by 180°.");
        wrong.add("Lines of the capsule with their north down the paper: reversed by 180°.");
        wrong.add("Lines of the capsule along " + across + ": off by 90°.");
        wrong.add("Capsule turned until the needle lies in it: that is a bearing of the table.");
      }
    }
    if (paper == Paper.LAND_MAP) {
      wrong.add("Convergence left out, or variation taken for the whole difference.");
    }
    wrong.add("A ring read backwards from its ten: 257 for 263.");
    wrong.add(
        "Which way round? Say aloud roughly where you are going, north or south, east or west,"
            + " before reading.");
    return wrong;
  }

  /**
   * What remains of a course that was read as true, down to the magnetic course.
   *
   * @param read what the tool showed
   * @param variation variation at the place and date
   * @return the problem; its answer is the magnetic course
   * @throws IllegalArgumentException if the paper is a land map, on which grid north is read
   */
  public Problem problem(TrueBearing read, Variation variation) {
    on(Paper.CHART, "true north");
    boolean rose = tool.linedUpOn() == ChartTool.LinedUpOn.PRINTED_ROSE;
    Problem problem =
        Problem.titled("Laying off with " + tool.name() + " on a chart")
            .given(TRUE, Quantity.TRUE_BEARING, read.degrees(), rose ? "outer ring" : "as read")
            .given(VARIATION, Quantity.EAST_WEST, variation.degreesEast(), "there and then");
    return magnetic(problem, variation);
  }

  /**
   * What remains of a course that was read from the grid of a land map.
   *
   * @param read what the tool showed
   * @param convergence angle between the norths of the grid and of the meridian
   * @param variation variation at the place and date
   * @return the problem; its answer is the magnetic course
   * @throws IllegalArgumentException if the paper is a chart
   */
  public Problem problem(GridBearing read, GridConvergence convergence, Variation variation) {
    on(Paper.LAND_MAP, "grid north");
    double east = convergence.degreesEast();
    Problem problem =
        Problem.titled("Laying off with " + tool.name() + " on a land map")
            .given("Grid bearing", Quantity.GRID_BEARING, read.degrees(), "as read")
            .given("Convergence", Quantity.EAST_WEST, east, "of the grid there")
            .given(VARIATION, Quantity.EAST_WEST, variation.degreesEast(), "there and then")
            .then(
                TRUE,
                Quantity.TRUE_BEARING,
                Slips.add("convergence", east, "grid"),
                f -> f.of("Grid bearing") + f.of("Convergence"));
    return magnetic(
        Slips.adding(problem, TRUE, "Grid bearing", "Convergence", "convergence"), variation);
  }

  /**
   * What remains of a course that was read on the inner ring of a printed rose: the change of the
   * variation since the rose's year.
   *
   * @param read what the inner ring showed
   * @param rose the rose
   * @param year the year it is used in
   * @return the problem; its answer is the magnetic course of that year
   * @throws IllegalArgumentException if the tool is not read on a printed rose or {@code year} is
   *     beyond the years of {@link CompassRose#variationInYear}
   */
  public Problem problem(MagneticBearing read, CompassRose rose, int year) {
    if (tool.linedUpOn() != ChartTool.LinedUpOn.PRINTED_ROSE) {
      throw new IllegalArgumentException(tool.name() + " is not read on a printed rose");
    }
    double printed = rose.variation().degreesEast();
    double now = rose.variationInYear(year).degreesEast();
    int years = year - rose.year();
    double change = years == 0 ? 0.0 : (now - printed) / years;
    return Problem.titled("Inner ring of a rose of " + rose.year() + " in " + year)
        .given(RING, Quantity.MAGNETIC_BEARING, read.degrees(), "as read with " + tool.name())
        .given("Years since", Quantity.COUNT, years, "this year less the rose's")
        .then(
            CHANGE,
            Quantity.EAST_WEST,
            "years times " + rose.annualChange() + " a year",
            f -> f.of("Years since") * change)
        .then(
            MAGNETIC,
            Quantity.MAGNETIC_BEARING,
            "change east: take it off; west: add it",
            f -> f.of(RING) - f.of(CHANGE))
        .slip(MAGNETIC, "year of the rose forgotten", Slip.COMMON, f -> f.of(RING))
        .slip(MAGNETIC, "change taken the wrong way", Slip.COMMON, f -> f.of(RING) + f.of(CHANGE))
        .slip(
            MAGNETIC,
            "variation applied to the inner ring as well",
            Slip.COMMON,
            f -> f.of(RING) - now)
        .estimated("a few years move the inner ring by a degree at most")
        .checked("which way round: the course must point at the mark, not back from it");
  }

  private void on(Paper wanted, String north) {
    if (paper != wanted) {
      throw new IllegalArgumentException(
          tool.name() + " on this paper reads " + northRead() + ", not " + north);
    }
  }

  private static Problem magnetic(Problem problem, Variation variation) {
    String words = Slips.takeOff("variation", variation.degreesEast(), "true");
    return Slips.takingOff(
            problem.then(
                MAGNETIC, Quantity.MAGNETIC_BEARING, words, f -> f.of(TRUE) - f.of(VARIATION)),
            MAGNETIC,
            TRUE,
            VARIATION,
            "variation")
        .estimated("say roughly where I am going before reading: north or south, east or west")
        .checked("which way round: the course must point at the mark, not back from it");
  }

  /** Tool, paper and the north that is read. */
  @Override
  public String toString() {
    return tool.name()
        + " on a "
        + (paper == Paper.CHART ? "chart" : "land map")
        + ": "
        + northRead();
  }
}
