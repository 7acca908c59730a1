package org.ferryglide.examples.page;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.examples.svg.Svg;

/**
 * The look of all pictures. Everything is told by its form first: strokes, heads, hatches and
 * words; the two colours beside black are dark enough to be read in sunlight (at least 6 to 1 on
 * white) and differ for every kind of colour blindness, and nothing rests on them.
 *
 * <pre>{@code
 * Ink.arrow(picture, 10, 60, 90, 20, 3, 0.8, Ink.WATER, 1.6); // a stream
 * Ink.words(picture, 50, 30, "040° 2.1 kn", Ink.SMALL);
 * }</pre>
 */
public final class Ink {
  /** Of what is told by its form alone. */
  public static final String BLACK = "#101418";

  /** Of streams and tides. */
  public static final String WATER = "#00477f";

  static final String DANGER = "#8f2f00";

  /** Of lines that help to read others. */
  public static final String GREY = "#8a9199";

  /** Of areas that are behind everything else. */
  public static final String PALE = "#dfe3e7";

  /** Units of every picture from side to side: as many as the narrowest phone has points. */
  public static final double WIDTH = 360.0;

  /** Size of the words beside lines, in units. */
  public static final double SMALL = 9.0;

  /** Size of words that stand alone, in units. */
  public static final double TEXT = 10.0;

  /** What a letter takes of its size across, on average and rather more than less. */
  private static final double LETTER = 0.56;

  private static final double HEAD_LENGTH = 6.0;
  private static final double HEAD_HALF_WIDTH = 2.6;
  private static final double HEAD_STEP = 4.2;

  private Ink() {}

  /**
   * How wide words are, rather more than less.
   *
   * @param words the words
   * @param size of their letters
   * @return units
   */
  public static double width(String words, double size) {
    return words.codePointCount(0, words.length()) * LETTER * size;
  }

  /**
   * Words with white round them, so that lines below do not cut them.
   *
   * @param svg the picture
   * @param x where they begin, or as {@code text-anchor} says
   * @param y of the line they stand on
   * @param words what is to be read
   * @param size of their letters
   * @param attributes names and values in turn
   */
  public static void words(
      Svg svg, double x, double y, String words, double size, String... attributes) {
    List<String> under = new ArrayList<>(List.of(attributes));
    under.addAll(List.of("font-size", Svg.number(size)));
    List<String> round = new ArrayList<>(under);
    // drawn twice: an order of painting is not in every reader's SVG
    round.addAll(List.of("stroke", "#fff", "stroke-width", "2.5", "stroke-linejoin", "round"));
    svg.text(x, y, words, round.toArray(new String[0]));
    svg.text(x, y, words, under.toArray(new String[0]));
  }

  /** Words where there is room for them near a point. */
  static void beside(
      Svg svg, Places places, double x, double y, String words, double size, String... attributes) {
    double[] at = places.beside(x, y, width(words, size), size + 2);
    words(svg, at[0], at[1] + size, words, size, attributes);
  }

  /** A curve of water through points, x and y by turns; one point makes none. */
  static void curve(Svg svg, List<Double> points) {
    if (points.size() >= 4) {
      svg.polyline(
          points.stream().mapToDouble(Double::doubleValue).toArray(),
          "fill",
          "none",
          "stroke",
          WATER,
          "stroke-width",
          "2");
    }
  }

  /**
   * A vector with its heads: one for the way through the water, two over the ground, three for the
   * stream, as chart work has them.
   *
   * @param svg the picture
   * @param x1 from, to the right
   * @param y1 from, down
   * @param x2 to, to the right
   * @param y2 to, down
   * @param heads how many, at least none
   * @param at where the foremost head stands, as a share of the way
   * @param colour of line and heads
   * @param stroke width of the line
   */
  public static void arrow(
      Svg svg,
      double x1,
      double y1,
      double x2,
      double y2,
      int heads,
      double at,
      String colour,
      double stroke) {
    double length = Math.hypot(x2 - x1, y2 - y1);
    if (length < 0.5) {
      return;
    }
    svg.line(x1, y1, x2, y2, "stroke", colour, "stroke-width", Svg.number(stroke));
    double ux = (x2 - x1) / length;
    double uy = (y2 - y1) / length;
    double shrink = Math.min(1.0, length / (HEAD_LENGTH + heads * HEAD_STEP));
    for (int head = 0; head < heads; head++) {
      double tip = length * at - head * HEAD_STEP * shrink;
      double tipX = x1 + ux * tip;
      double tipY = y1 + uy * tip;
      double baseX = tipX - ux * HEAD_LENGTH * shrink;
      double baseY = tipY - uy * HEAD_LENGTH * shrink;
      double half = HEAD_HALF_WIDTH * shrink;
      svg.polyline(
          new double[] {
            baseX - uy * half, baseY + ux * half, tipX, tipY, baseX + uy * half, baseY - ux * half
          },
          "fill",
          "none",
          "stroke",
          colour,
          "stroke-width",
          Svg.number(Math.max(1.2, stroke)));
    }
  }

  /** A bar that shows a distance; printers rescale, so there is no ratio. */
  static void barScale(
      Svg svg,
      double x,
      double y,
      double unitsPerMetre,
      double mostUnits,
      Printed printed,
      String words) {
    double unitsPerMile = unitsPerMetre / printed.units().distance(1.0);
    double[] lengths = {50, 20, 10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05};
    double miles = lengths[lengths.length - 1];
    for (double length : lengths) {
      if (length * unitsPerMile <= mostUnits) {
        miles = length;
        break;
      }
    }
    double wide = miles * unitsPerMile;
    for (int quarter = 0; quarter < 4; quarter++) {
      svg.rectangle(
          x + quarter * wide / 4,
          y,
          wide / 4,
          4,
          "fill",
          quarter % 2 == 0 ? BLACK : "#fff",
          "stroke",
          BLACK,
          "stroke-width",
          "0.8");
    }
    svg.text(x, y - 3, "0", "font-size", "9", "text-anchor", "middle");
    svg.text(
        x + wide,
        y - 3,
        trimmed(miles) + " " + printed.distanceUnit(),
        "font-size",
        "9",
        "text-anchor",
        "middle");
    svg.text(x, y + 14, words, "font-size", "9");
  }

  /** Whole numbers without a decimal point. */
  static String trimmed(double figure) {
    return figure == Math.rint(figure)
        ? Long.toString((long) figure)
        : Double.toString(Math.rint(figure * 100.0) / 100.0);
  }
}
