package org.ferryglide.examples.teach;

import org.ferryglide.examples.page.Ink;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.chart.ChartTool;
import org.ferryglide.nav.teach.LayingOff;

/**
 * A tool as it lies on the paper while a course is laid off; the numbers are those of the steps.
 *
 * <pre>{@code
 * LayingOff plan = LayingOff.with(ChartTool.PARALLEL_RULES, LayingOff.Paper.CHART);
 * Svg picture = ToolPicture.of("rules", plan);
 * }</pre>
 */
public final class ToolPicture {
  private static final double HIGH = 240.0;
  private static final double[] FROM = {64.0, 176.0};
  private static final double[] TO = {272.0, 56.0};
  private static final double COURSE = 60.0;
  private static final double INNER_NORTH = -15.0;
  private static final double[] MIDDLE = {168.0, 116.0};

  private ToolPicture() {}

  /**
   * The picture.
   *
   * @param name unlike that of every other picture of its page
   * @param plan tool and paper
   * @return the picture of a leg of about 060° with the tool on it
   */
  public static Svg of(String name, LayingOff plan) {
    boolean chart = plan.paper() == LayingOff.Paper.CHART;
    Svg svg =
        Svg.of(
            name,
            Ink.WIDTH,
            HIGH,
            "Laying off with " + plan.tool().name() + (chart ? " on a chart" : " on a land map"),
            String.join(" ", plan.steps()));
    svg.rectangle(0, 0, Ink.WIDTH, HIGH, "fill", "#fff");
    paper(svg, chart);
    if (plan.tool().linedUpOn() == ChartTool.LinedUpOn.PRINTED_ROSE) {
      rules(svg);
    } else if (plan.tool().linedUpOn() == ChartTool.LinedUpOn.GRID_LINES_OR_MERIDIANS) {
      baseplate(svg);
    } else if (plan.tool().equals(ChartTool.TURNING_ROSE_PLOTTER)) {
      plotter(svg);
    } else {
      deckPlotter(svg);
    }
    return svg;
  }

  private static void paper(Svg svg, boolean chart) {
    for (double x = 30.0; x < Ink.WIDTH; x += chart ? 100.0 : 50.0) {
      svg.line(x, 8, x, HIGH - 8, "stroke", Ink.GREY, "stroke-width", "0.8");
    }
    for (double y = chart ? 46.0 : 26.0; y < HIGH; y += chart ? 140.0 : 50.0) {
      svg.line(8, y, Ink.WIDTH - 8, y, "stroke", Ink.GREY, "stroke-width", "0.8");
    }
    Ink.arrow(svg, 330, 40, 330, 10, 1, 1.0, Ink.BLACK, 1.1);
    String up = chart ? "meridian" : "grid line";
    Ink.words(svg, 325, 18, up, 8.0, "text-anchor", "end");
  }

  private static void leg(Svg svg) {
    svg.line(FROM[0], FROM[1], TO[0], TO[1], "stroke", Ink.BLACK, "stroke-width", "2");
    for (double[] end : new double[][] {FROM, TO}) {
      svg.circle(end[0], end[1], 3.4, "fill", "#fff", "stroke", Ink.BLACK, "stroke-width", "1.6");
    }
    Ink.words(svg, FROM[0], FROM[1] + 16, "start", Ink.SMALL, "text-anchor", "middle");
    Ink.words(svg, TO[0] + 8, TO[1] + 3, "mark", Ink.SMALL);
  }

  /** A strip beside the leg, its upper edge along it; drawn in its own axes, along and across. */
  private static void alongLeg(Svg svg, double x, double y) {
    svg.group(
        "transform",
        "translate("
            + Svg.number(x)
            + " "
            + Svg.number(y)
            + ") rotate("
            + Svg.number(COURSE - 90.0)
            + ")");
  }

  private static void sheet(Svg svg, double x, double y, double wide, double high) {
    svg.rectangle(
        x,
        y,
        wide,
        high,
        "fill",
        "#fff",
        "fill-opacity",
        "0.82",
        "stroke",
        Ink.BLACK,
        "stroke-width",
        "1.2");
  }

  private static void baseplate(Svg svg) {
    alongLeg(svg, MIDDLE[0], MIDDLE[1]);
    sheet(svg, -82, 0, 158, 76);
    Ink.arrow(svg, 38, 38, 70, 38, 1, 1.0, Ink.BLACK, 1.6);
    svg.end();
    double[] capsule = beside(38.0);
    svg.circle(capsule[0], capsule[1], 34, "fill", "#fff");
    RosePicture.ring(svg, capsule[0], capsule[1], 34, 0.0);
    chords(svg, capsule, 15.0, 12.0, 8.0);
    RosePicture.needle(svg, capsule[0], capsule[1], 15, 0.0);
    leg(svg);
    number(svg, 112, 134, 1);
    number(svg, capsule[0] - 16, capsule[1] + 46, 2);
    read(svg, capsule, 34.0, 3);
  }

  private static void plotter(Svg svg) {
    alongLeg(svg, MIDDLE[0], MIDDLE[1]);
    sheet(svg, -108, 0, 226, 56);
    svg.line(-102, 28, -32, 28, "stroke", Ink.BLACK, "stroke-width", "0.8");
    Ink.arrow(svg, 32, 28, 110, 28, 1, 1.0, Ink.BLACK, 1.4);
    svg.end();
    double[] rose = beside(28.0);
    svg.circle(rose[0], rose[1], 32, "fill", "#fff", "fill-opacity", "0.82");
    RosePicture.ring(svg, rose[0], rose[1], 32, 0.0);
    chords(svg, rose, 20.0, 14.0, 7.0);
    leg(svg);
    number(svg, 112, 134, 1);
    number(svg, rose[0] - 22, rose[1] + 42, 2);
    read(svg, rose, 32.0, 3);
  }

  private static void rules(Svg svg) {
    double[] rose = {276.0, 158.0};
    RosePicture.ring(svg, rose[0], rose[1], 54, 0.0);
    RosePicture.ring(svg, rose[0], rose[1], 36, INNER_NORTH, false);
    double[] walked = {rose[0] - MIDDLE[0], rose[1] - MIDDLE[1]};
    alongLeg(svg, MIDDLE[0], MIDDLE[1]);
    sheet(svg, -100, 0, 190, 20);
    svg.end();
    svg.group("stroke", Ink.BLACK, "stroke-width", "1.2", "stroke-dasharray", "5 3");
    alongLeg(svg, MIDDLE[0] + walked[0], MIDDLE[1] + walked[1]);
    svg.rectangle(-96, 0, 152, 20, "fill", "none");
    svg.end().end();
    for (double share : new double[] {-46.0, 40.0}) {
      double[] one = onLeg(share, 10.0);
      double[] other = {one[0] + walked[0] - 24, one[1] + walked[1] + 10};
      svg.line(one[0], one[1], other[0], other[1], "stroke", Ink.BLACK, "stroke-width", "1.2");
      svg.circle(one[0], one[1], 2, "fill", Ink.BLACK);
      svg.circle(other[0], other[1], 2, "fill", Ink.BLACK);
    }
    leg(svg);
    number(svg, 96, 142, 1);
    number(svg, 192, 176, 2);
    read(svg, rose, 54.0, 3);
    svg.circle(
        rose[0] + 36.0 * Math.sin(Math.toRadians(COURSE)),
        rose[1] - 36.0 * Math.cos(Math.toRadians(COURSE)),
        5,
        "fill",
        "none",
        "stroke",
        Ink.BLACK,
        "stroke-width",
        "2");
    svg.circle(rose[0], rose[1], 2, "fill", Ink.BLACK);
    Ink.words(svg, 352, 236, "outer ring true, inner ring magnetic", 8.0, "text-anchor", "end");
  }

  private static void deckPlotter(Svg svg) {
    double side = 116.0;
    sheet(svg, MIDDLE[0] - side / 2, MIDDLE[1] - side / 2, side, side);
    for (double off = -40.0; off <= 40.0; off += 20.0) {
      svg.line(
          MIDDLE[0] + off,
          MIDDLE[1] - side / 2,
          MIDDLE[0] + off,
          MIDDLE[1] + side / 2,
          "stroke",
          Ink.BLACK,
          "stroke-width",
          "0.5");
    }
    RosePicture.ring(svg, MIDDLE[0], MIDDLE[1], 52, 0.0);
    leg(svg);
    svg.circle(MIDDLE[0], MIDDLE[1], 2.4, "fill", "#fff", "stroke", Ink.BLACK);
    number(svg, MIDDLE[0] - 10, MIDDLE[1] - 8, 1);
    number(svg, MIDDLE[0] - 40, MIDDLE[1] + side / 2 + 10, 2);
    read(svg, MIDDLE, 52.0, 3);
  }

  /** The lines north of a turning rose, across a circle, so far to either side of its middle. */
  private static void chords(Svg svg, double[] middle, double radius, double most, double step) {
    for (double off = -most; off <= most; off += step) {
      double half = Math.sqrt(radius * radius - off * off);
      double x = middle[0] + off;
      svg.line(
          x, middle[1] - half, x, middle[1] + half, "stroke", Ink.BLACK, "stroke-width", "0.7");
    }
  }

  /** A point at the middle of the leg, so far to the right of it. */
  private static double[] beside(double across) {
    return onLeg(0.0, across);
  }

  private static double[] onLeg(double along, double across) {
    double angle = Math.toRadians(COURSE);
    return new double[] {
      MIDDLE[0] + along * Math.sin(angle) + across * Math.cos(angle),
      MIDDLE[1] - along * Math.cos(angle) + across * Math.sin(angle)
    };
  }

  /** Where the ring is read: towards the mark. */
  private static void read(Svg svg, double[] middle, double radius, int step) {
    double angle = Math.toRadians(COURSE);
    double x = middle[0] + radius * Math.sin(angle);
    double y = middle[1] - radius * Math.cos(angle);
    svg.circle(x, y, 5, "fill", "none", "stroke", Ink.BLACK, "stroke-width", "2");
    number(svg, x + 18, y - 2, step);
  }

  private static void number(Svg svg, double x, double y, int step) {
    svg.circle(x, y, 7, "fill", Ink.BLACK);
    svg.text(
        x,
        y + 3.4,
        Integer.toString(step),
        "font-size",
        "10",
        "fill",
        "#fff",
        "font-weight",
        "700",
        "text-anchor",
        "middle");
  }
}
