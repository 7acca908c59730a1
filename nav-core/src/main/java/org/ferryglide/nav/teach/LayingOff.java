package org.ferryglide.nav.teach;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.chart.ChartTool;

/**
 * Laying off a course with a given tool, step by step: what is lined up on what, which north is
 * read, what remains to apply, and what can go wrong. Common practice, no source.
 *
 * <pre>{@code
 * LayingOff plan = LayingOff.with(ChartTool.PARALLEL_RULES, LayingOff.Paper.CHART);
 * plan.steps().forEach(System.out::println);
 * System.out.println(plan.remains());
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
   * What to do, in order.
   *
   * @return sentences
   */
  public List<String> steps() {
    List<String> steps = new ArrayList<>();
    switch (tool.linedUpOn()) {
      case PRINTED_ROSE -> {
        steps.add("Lay one edge along the leg, from where you start to where you go.");
        steps.add(
            "Walk the rules to the nearest rose, one pressed down while the other moves, until an"
                + " edge lies across its middle.");
        steps.add(
            "Read the outer ring for true, on the side of the rose towards where you go; the inner"
                + " ring is magnetic of the rose's year.");
      }
      case MERIDIANS_AND_PARALLELS -> {
        steps.add("Lay the edge along the leg, its arrow towards where you go.");
        steps.add(
            tool.equals(ChartTool.TURNING_ROSE_PLOTTER)
                ? "Turn the rose until its lines lie along a meridian, its north up the chart."
                : "Slide it along the leg until a meridian passes through the middle of its rose.");
        steps.add("Read the bearing at the arrow.");
      }
      case GRID_LINES_OR_MERIDIANS -> {
        steps.add("Lay the long edge along the leg, the arrow of travel towards where you go.");
        steps.add(
            "Turn the capsule until its lines lie along the "
                + (paper == Paper.CHART ? "meridians" : "upright lines of the grid")
                + ", its north up the "
                + (paper == Paper.CHART ? "chart" : "map")
                + "; the needle does not matter.");
        steps.add("Read the ring at the line of travel.");
      }
    }
    return steps;
  }

  /**
   * The north that is read.
   *
   * @return a few words
   */
  public String northRead() {
    return switch (tool.north()) {
      case TRUE -> "true north";
      case GRID_ON_A_MAP_TRUE_ON_A_CHART -> paper == Paper.CHART ? "true north" : "grid north";
      case TRUE_OR_MAGNETIC_OF_PRINTED_YEAR ->
          "true north on the outer ring, magnetic north of the rose's year on the inner one";
    };
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
    switch (tool.linedUpOn()) {
      case PRINTED_ROSE -> {
        wrong.add("Read on the far side of the rose: reversed by 180°.");
        wrong.add("Read on the inner ring and variation applied as well: applied twice.");
        wrong.add("Rules that slip while they are walked: lay them on the leg again and look.");
      }
      case MERIDIANS_AND_PARALLELS -> {
        wrong.add("Arrow towards where you come from: reversed by 180°.");
        wrong.add("Rose lined up on a parallel in place of a meridian: off by 90°.");
        wrong.add("Rose's north down the chart: reversed by 180°.");
      }
      case GRID_LINES_OR_MERIDIANS -> {
        wrong.add("Arrow of travel towards where you come from: reversed by 180°.");
        wrong.add("Lines of the capsule with their north down the paper: reversed by 180°.");
        wrong.add("Lines of the capsule on the lines that run across: off by 90°.");
        if (paper == Paper.LAND_MAP) {
          wrong.add("Convergence left out, or variation taken for the whole difference.");
        }
      }
    }
    wrong.add(
        "Which way round? Say aloud roughly where you are going, north or south, east or west,"
            + " before reading.");
    return wrong;
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
