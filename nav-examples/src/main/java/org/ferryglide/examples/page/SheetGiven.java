package org.ferryglide.examples.page;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.passage.Danger;
import org.ferryglide.nav.passage.Lane;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.position.Position;

/** What the folder names: graticule, shores, lanes, dangers, way points and landings. */
final class SheetGiven {
  private final SheetPen pen;
  private final Passage passage;

  SheetGiven(SheetPen pen, Passage passage) {
    this.pen = pen;
    this.passage = passage;
  }

  /** What lies under the legs. */
  void ground() {
    graticule();
    passage.shores().ifPresent(lines -> lines.forEach(this::shore));
    passage.lanes().ifPresent(list -> list.forEach(this::lane));
    passage.dangers().ifPresent(list -> list.forEach(this::danger));
  }

  /** Lines first, so that none strikes out the words of another. */
  private void graticule() {
    double left = pen.frame().left;
    double right = left + pen.frame().width;
    List<SheetFrame.Line> meridians = pen.frame().meridians();
    List<SheetFrame.Line> parallels = pen.frame().parallels();
    for (SheetFrame.Line line : meridians) {
      pen.svg().line(line.at(), pen.frame().top, line.at(), pen.bottom(), "stroke", Ink.PALE);
    }
    for (SheetFrame.Line line : parallels) {
      pen.svg().line(left, line.at(), right, line.at(), "stroke", Ink.PALE);
    }
    for (SheetFrame.Line line : meridians) {
      double half = Ink.width(line.words(), 8) / 2;
      if (line.at() - half < left || line.at() + half > right) {
        continue; // it would be cut
      }
      Ink.words(pen.svg(), line.at(), pen.bottom() - 3, line.words(), 8, "text-anchor", "middle");
      pen.places().take(line.at() - half, pen.bottom() - 12, 2 * half, 12);
    }
    for (SheetFrame.Line line : parallels) {
      boolean isFree = line.at() < pen.bottom() - 14 && line.at() > pen.frame().top + 9;
      if (!isFree) {
        continue; // it would stand on a meridian's words, or be cut
      }
      Ink.words(pen.svg(), left + 3, line.at() - 2, line.words(), 8);
      pen.places().take(left, line.at() - 10, Ink.width(line.words(), 8) + 4, 10);
    }
  }

  private void shore(List<Position> shore) {
    pen.svg().polyline(pen.line(shore), "fill", "none", "stroke", Ink.BLACK, "stroke-width", "2.2");
  }

  private void lane(Lane lane) {
    double[] points = pen.line(lane.middle());
    double wide = pen.frame().units(lane.width().metres(), lane.middle().get(0).latitudeDegrees());
    for (int i = 0; i + 3 < points.length; i += 2) {
      double length = Math.hypot(points[i + 2] - points[i], points[i + 3] - points[i + 1]);
      double ox = -(points[i + 3] - points[i + 1]) / length * wide / 2;
      double oy = (points[i + 2] - points[i]) / length * wide / 2;
      pen.svg()
          .polygon(
              new double[] {
                points[i] + ox,
                points[i + 1] + oy,
                points[i + 2] + ox,
                points[i + 3] + oy,
                points[i + 2] - ox,
                points[i + 3] - oy,
                points[i] - ox,
                points[i + 1] - oy
              },
              "fill",
              pen.svg().fill("lane"),
              "stroke",
              Ink.GREY,
              "stroke-dasharray",
              "8 3");
    }
    pen.name(points[0], points[1], lane.name(), Ink.BLACK, "400");
  }

  private void danger(Danger danger) {
    double[] points = pen.line(danger.outline());
    double keep =
        pen.frame().units(danger.keepOff().metres(), danger.outline().get(0).latitudeDegrees());
    String dash = danger.whenClosed().isPresent() ? "5 3" : "none";
    if (points.length == 2) {
      pen.svg()
          .circle(
              points[0],
              points[1],
              Math.max(3, keep),
              "fill",
              pen.svg().fill("danger"),
              "stroke",
              Ink.DANGER,
              "stroke-dasharray",
              dash);
      pen.svg().line(points[0] - 4, points[1], points[0] + 4, points[1], "stroke", Ink.BLACK);
      pen.svg().line(points[0], points[1] - 4, points[0], points[1] + 4, "stroke", Ink.BLACK);
    } else {
      pen.svg()
          .polygon(
              points,
              "fill",
              "none",
              "stroke",
              Ink.DANGER,
              "stroke-opacity",
              "0.2",
              "stroke-width",
              Svg.number(2 * keep),
              "stroke-linejoin",
              "round");
      pen.svg()
          .polygon(
              points,
              "fill",
              pen.svg().fill("danger"),
              "stroke",
              Ink.DANGER,
              "stroke-width",
              "1.4",
              "stroke-dasharray",
              dash);
    }
    double x = 0;
    double y = 0;
    for (int i = 0; i < points.length; i += 2) {
      x += 2 * points[i] / points.length;
      y += 2 * points[i + 1] / points.length;
    }
    pen.places().take(x - 4, y - 4, 8, 8);
    pen.name(x, y, danger.name(), Ink.DANGER, "700");
  }

  void takeMarks() {
    for (WayPoint place : passage.wayPoints()) {
      pen.places()
          .take(pen.frame().x(place.position()) - 4, pen.frame().y(place.position()) - 4, 8, 8);
    }
    for (WayPoint place : passage.refuges()) {
      pen.places()
          .take(pen.frame().x(place.position()) - 5, pen.frame().y(place.position()) - 5, 10, 10);
    }
  }

  void marks() {
    List<String> named = new ArrayList<>();
    if (SheetWay.isCrowded(passage)) {
      List<WayPoint> all = passage.wayPoints();
      all.subList(1, all.size() - 1).forEach(place -> named.add(place.name()));
      named.remove(all.get(0).name());
      named.remove(all.get(all.size() - 1).name());
    }
    for (WayPoint place : passage.wayPoints()) {
      double[] at = pen.xy(place.position());
      pen.svg()
          .circle(at[0], at[1], 3.4, "fill", "#fff", "stroke", Ink.BLACK, "stroke-width", "1.4");
      pen.svg().circle(at[0], at[1], 1, "fill", Ink.BLACK);
      if (place.landing().isPresent()) {
        landing(at);
      }
      if (!named.contains(place.name())) {
        pen.name(at[0], at[1], place.name(), Ink.BLACK, "700");
        named.add(place.name());
      }
    }
    for (WayPoint place : passage.refuges()) {
      double[] at = pen.xy(place.position());
      landing(at);
      pen.name(at[0], at[1], place.name(), Ink.BLACK, "400");
    }
  }

  /** A landing: a line with a bow drawn up on it. */
  private void landing(double[] at) {
    pen.svg()
        .polyline(
            new double[] {at[0] - 6, at[1] + 6, at[0] + 6, at[1] + 6},
            "fill",
            "none",
            "stroke",
            Ink.BLACK,
            "stroke-width",
            "2");
    pen.svg()
        .polygon(
            new double[] {at[0] - 4, at[1] + 5, at[0], at[1] + 1, at[0] + 4, at[1] + 5},
            "fill",
            Ink.BLACK);
  }
}
