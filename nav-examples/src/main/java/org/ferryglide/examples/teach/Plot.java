package org.ferryglide.examples.teach;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.examples.page.Ink;
import org.ferryglide.examples.page.Places;
import org.ferryglide.examples.svg.Svg;

/**
 * What was laid off, north up, in miles or in miles of one hour: vectors with the heads of the
 * trade, lines, rings and marks, fitted to the sheet and named beside themselves.
 */
final class Plot {
  private static final double EDGE = 22.0;
  private static final double MOST_HIGH = 210.0;
  private static final double LEAST_HIGH = 60.0;

  private record Point(double east, double north) {
    static Point of(double[] point) {
      return new Point(point[0], point[1]);
    }
  }

  /** A vector where it has heads, else a line that helps. */
  private record Stroke(Point from, Point to, int heads, String words) {
    boolean helps() {
      return heads == 0;
    }

    /** Where along it the heads stand, so that those of two that lie together do not. */
    double at() {
      return heads == 3 ? 0.8 : heads == 2 ? 0.62 : 0.5;
    }
  }

  private record Ring(Point middle, double radius, String words) {}

  private record Spot(Point at, String words) {}

  private final List<Stroke> strokes = new ArrayList<>();
  private final List<Ring> rings = new ArrayList<>();
  private final List<Spot> spots = new ArrayList<>();
  private final List<Spot> notes = new ArrayList<>();
  private double scale;
  private double offX;
  private double offY;

  /** East and north of a length in a direction. */
  static double[] along(double degrees, double length) {
    double angle = Math.toRadians(degrees);
    return new double[] {length * Math.sin(angle), length * Math.cos(angle)};
  }

  static double[] sum(double[] one, double[] other) {
    return new double[] {one[0] + other[0], one[1] + other[1]};
  }

  /** A vector with one head for the water, two for the ground, three for the stream. */
  Plot vector(double[] from, double[] to, int heads, String words) {
    strokes.add(new Stroke(Point.of(from), Point.of(to), heads, words));
    return this;
  }

  /** A thin dashed line that helps: a bearing, a course, what was moved. */
  Plot line(double[] from, double[] to, String words) {
    strokes.add(new Stroke(Point.of(from), Point.of(to), 0, words));
    return this;
  }

  /** A ring round something, as a danger. */
  Plot ring(double[] middle, double radius, String words) {
    rings.add(new Ring(Point.of(middle), radius, words));
    return this;
  }

  /** A place with its name. */
  Plot spot(double[] at, String words) {
    spots.add(new Spot(Point.of(at), words));
    return this;
  }

  /** Words beside a place that is no mark. */
  Plot note(double[] at, String words) {
    notes.add(new Spot(Point.of(at), words));
    return this;
  }

  /** The picture, north up, with a bar of one unit's length named by {@code bar}. */
  Svg drawn(String name, String title, String description, String bar) {
    return drawn(name, title, description, bar, "N");
  }

  /** The picture; without a bar where {@code bar} is empty, {@code up} beside the arrow up. */
  Svg drawn(String name, String title, String description, String bar, String up) {
    double[] box = box();
    double wide = Math.max(1e-6, box[1] - box[0]);
    double tall = Math.max(1e-6, box[3] - box[2]);
    scale = Math.min((Ink.WIDTH - 2 * EDGE) / wide, MOST_HIGH / tall);
    double high = Math.max(LEAST_HIGH, tall * scale);
    offX = (Ink.WIDTH - wide * scale) / 2 - box[0] * scale;
    offY = EDGE + (high + tall * scale) / 2 + box[2] * scale;
    Svg svg = Svg.of(name, Ink.WIDTH, high + 2 * EDGE + 34, title, description);
    svg.rectangle(0, 0, Ink.WIDTH, svg.height(), "fill", "#fff");
    Places places = new Places(3, 3, Ink.WIDTH - 3, high + 2 * EDGE);
    for (Ring ring : rings) {
      svg.circle(
          x(ring.middle()),
          y(ring.middle()),
          ring.radius() * scale,
          "fill",
          "none",
          "stroke",
          Ink.BLACK,
          "stroke-width",
          "1.2",
          "stroke-dasharray",
          "1.5 3",
          "stroke-linecap",
          "round");
    }
    strokes.forEach(stroke -> draw(svg, places, stroke));
    for (Spot spot : spots) {
      svg.circle(
          x(spot.at()),
          y(spot.at()),
          3.2,
          "fill",
          "#fff",
          "stroke",
          Ink.BLACK,
          "stroke-width",
          "1.4");
      places.take(x(spot.at()) - 4, y(spot.at()) - 4, 8, 8);
    }
    for (Spot spot : spots) {
      label(svg, places, spot.at(), spot.words(), Ink.BLACK);
    }
    for (Stroke stroke : strokes) {
      Point middle =
          new Point(
              0.5 * (stroke.from().east() + stroke.to().east()),
              0.5 * (stroke.from().north() + stroke.to().north()));
      label(svg, places, middle, stroke.words(), stroke.heads() == 3 ? Ink.WATER : Ink.BLACK);
    }
    for (Ring ring : rings) {
      label(
          svg,
          places,
          new Point(ring.middle().east(), ring.middle().north() - ring.radius()),
          ring.words(),
          Ink.BLACK);
    }
    notes.forEach(note -> label(svg, places, note.at(), note.words(), Ink.BLACK));
    foot(svg, bar, up);
    return svg;
  }

  private void foot(Svg svg, String bar, String up) {
    double y = svg.height() - 14;
    double arrow = Ink.WIDTH - 16;
    Ink.arrow(svg, arrow, y + 6, arrow, y - 14, 1, 1.0, Ink.BLACK, 1.2);
    svg.text(arrow - 5, y - 2, up, "font-size", "9", "text-anchor", "end");
    if (bar.isEmpty()) {
      return;
    }
    double length = scale;
    double share = 1.0;
    while (length > 120.0) {
      length /= 2.0;
      share /= 2.0;
    }
    svg.line(EDGE, y, EDGE + length, y, "stroke", Ink.BLACK, "stroke-width", "1.4");
    for (double end : new double[] {EDGE, EDGE + length}) {
      svg.line(end, y - 3, end, y + 3, "stroke", Ink.BLACK, "stroke-width", "1.4");
    }
    String words = Svg.number(share) + " " + bar;
    svg.text(EDGE + length + 6, y + 3, words, "font-size", Svg.number(Ink.SMALL));
  }

  private void draw(Svg svg, Places places, Stroke stroke) {
    double x1 = x(stroke.from());
    double y1 = y(stroke.from());
    double x2 = x(stroke.to());
    double y2 = y(stroke.to());
    if (stroke.helps()) {
      svg.line(
          x1, y1, x2, y2, "stroke", Ink.BLACK, "stroke-width", "0.9", "stroke-dasharray", "5 3");
    } else {
      String colour = stroke.heads() == 3 ? Ink.WATER : Ink.BLACK;
      double width = stroke.heads() == 2 ? 2.0 : 1.4;
      Ink.arrow(svg, x1, y1, x2, y2, stroke.heads(), stroke.at(), colour, width);
    }
    places.takeLine(x1, y1, x2, y2);
  }

  private void label(Svg svg, Places places, Point at, String words, String colour) {
    if (words.isEmpty()) {
      return;
    }
    double[] room = places.beside(x(at), y(at), Ink.width(words, Ink.SMALL), 11);
    Ink.words(svg, room[0], room[1] + 9, words, Ink.SMALL, "fill", colour);
  }

  private double x(Point point) {
    return offX + point.east() * scale;
  }

  private double y(Point point) {
    return offY - point.north() * scale;
  }

  private double[] box() {
    double[] box = {
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY
    };
    for (Stroke stroke : strokes) {
      widen(box, stroke.from(), 0.0);
      widen(box, stroke.to(), 0.0);
    }
    rings.forEach(ring -> widen(box, ring.middle(), ring.radius()));
    spots.forEach(spot -> widen(box, spot.at(), 0.0));
    return box;
  }

  private static void widen(double[] box, Point point, double by) {
    box[0] = Math.min(box[0], point.east() - by);
    box[1] = Math.max(box[1], point.east() + by);
    box[2] = Math.min(box[2], point.north() - by);
    box[3] = Math.max(box[3], point.north() + by);
  }
}
