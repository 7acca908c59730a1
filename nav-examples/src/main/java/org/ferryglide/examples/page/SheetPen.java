package org.ferryglide.examples.page;

import java.util.List;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.position.Position;

/** What all parts of a plotting sheet draw with: the picture, its frame, the room that is left. */
record SheetPen(Svg svg, SheetFrame frame, Places places) {
  double bottom() {
    return frame.top + frame.height;
  }

  double[] line(List<Position> positions) {
    double[] points = new double[2 * positions.size()];
    for (int i = 0; i < positions.size(); i++) {
      points[2 * i] = frame.x(positions.get(i));
      points[2 * i + 1] = frame.y(positions.get(i));
    }
    return points;
  }

  double[] xy(Position place) {
    return new double[] {frame.x(place), frame.y(place)};
  }

  void name(double x, double y, String full, String colour, String weight) {
    String words = Wrapped.name(full);
    Ink.beside(svg, places, x, y, words, Ink.SMALL, "fill", colour, "font-weight", weight);
  }
}
