package org.ferryglide.examples.teach;

import org.ferryglide.examples.page.Ink;
import org.ferryglide.examples.svg.Svg;

/** Rings of degrees as roses, plotters and compasses have them. */
final class RosePicture {
  private RosePicture() {}

  /**
   * A ring: a circle with a mark every ten degrees, longer every thirty, figures every ninety.
   *
   * @param northDegrees where its north points on the sheet, degrees clockwise from up
   */
  static void ring(Svg svg, double x, double y, double radius, double northDegrees) {
    ring(svg, x, y, radius, northDegrees, true);
  }

  /** The same, its figures left out but for north where {@code figures} is false. */
  static void ring(
      Svg svg, double x, double y, double radius, double northDegrees, boolean figures) {
    svg.circle(x, y, radius, "fill", "none", "stroke", Ink.BLACK, "stroke-width", "1.1");
    for (int degrees = 0; degrees < 360; degrees += 10) {
      double length = degrees % 30 == 0 ? 6.0 : 3.5;
      double angle = Math.toRadians(degrees + northDegrees);
      double sine = Math.sin(angle);
      double cosine = Math.cos(angle);
      svg.line(
          x + radius * sine,
          y - radius * cosine,
          x + (radius - length) * sine,
          y - (radius - length) * cosine,
          "stroke",
          Ink.BLACK,
          "stroke-width",
          "0.9");
      if (degrees % 90 == 0 && (figures || degrees == 0)) {
        double in = radius - 11.0;
        svg.text(
            x + in * sine,
            y - in * cosine + 2.4,
            degrees == 0 ? "N" : Integer.toString(degrees),
            "font-size",
            "7",
            "text-anchor",
            "middle");
      }
    }
  }

  /** An arrow from the middle to where a ring's north is. */
  static void needle(Svg svg, double x, double y, double radius, double northDegrees) {
    double angle = Math.toRadians(northDegrees);
    Ink.arrow(
        svg,
        x - radius * Math.sin(angle),
        y + radius * Math.cos(angle),
        x + radius * Math.sin(angle),
        y - radius * Math.cos(angle),
        1,
        1.0,
        Ink.BLACK,
        1.2);
  }
}
