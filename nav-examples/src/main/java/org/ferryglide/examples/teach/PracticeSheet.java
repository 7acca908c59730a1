package org.ferryglide.examples.teach;

import org.ferryglide.examples.svg.Svg;

/** The sheet to lay off on: meridians and parallels at every minute, marks, a rose. */
final class PracticeSheet {
  private static final double SIDE = 720.0;
  private static final double MARGIN = 44.0;

  /** Minutes of latitude from the middle to the upper and lower edge. */
  private static final double REACH = 5.0;

  private final PracticeArea area;
  private final double unitsPerMinute = (SIDE - 2.0 * MARGIN) / (2.0 * REACH);
  private final double across;

  PracticeSheet(PracticeArea area) {
    this.area = area;
    this.across = Math.cos(Math.toRadians(area.centre().latitudeDegrees()));
  }

  Svg drawn() {
    Svg picture =
        Svg.of(
            "practice-sheet",
            SIDE,
            SIDE,
            "Practice sheet",
            "Meridians and parallels of an invented area with the marks "
                + String.join(", ", area.marks().stream().map(PracticeMark::name).toList()));
    graticule(picture);
    rose(picture);
    for (PracticeMark mark : area.marks()) {
      double x = x(mark.position().longitudeDegrees());
      double y = y(mark.position().latitudeDegrees());
      picture.circle(x, y, 3.0, "fill", "#000");
      picture.line(x - 7, y, x + 7, y, "stroke", "#000");
      picture.line(x, y - 7, x, y + 7, "stroke", "#000");
      label(picture, x + 9, y - 6, mark.name(), "14", "start");
    }
    return picture;
  }

  /** Small enough an area that a minute of longitude is the same all over the sheet. */
  private double x(double longitudeDegrees) {
    double minutes = (longitudeDegrees - area.centre().longitudeDegrees()) * 60.0;
    return SIDE / 2.0 + minutes * across * unitsPerMinute;
  }

  private double y(double latitudeDegrees) {
    double minutes = (latitudeDegrees - area.centre().latitudeDegrees()) * 60.0;
    return SIDE / 2.0 - minutes * unitsPerMinute;
  }

  private void graticule(Svg picture) {
    double end = SIDE - MARGIN;
    for (int minute = -5; minute <= 5; minute++) {
      double y = SIDE / 2.0 - minute * unitsPerMinute;
      picture.line(MARGIN, y, end, y, "stroke", "#888", "stroke-width", "0.7");
      double latitude = area.centre().latitudeDegrees() + minute / 60.0;
      label(picture, MARGIN - 5, y + 4, minutes(latitude, "N", "S"), "10", "end");
    }
    int meridians = (int) Math.floor(REACH / across);
    for (int minute = -meridians; minute <= meridians; minute++) {
      double x = SIDE / 2.0 + minute * across * unitsPerMinute;
      picture.line(x, MARGIN, x, end, "stroke", "#888", "stroke-width", "0.7");
      if (minute % 2 == 0) {
        double longitude = area.centre().longitudeDegrees() + minute / 60.0;
        picture.text(
            x, SIDE - 24, minutes(longitude, "E", "W"), "font-size", "11", "text-anchor", "middle");
      }
    }
  }

  private static String minutes(double degrees, String positive, String negative) {
    long all = Math.round(Math.abs(degrees) * 60.0);
    return all / 60
        + "°"
        + (all % 60 < 10 ? "0" : "")
        + all % 60
        + "'"
        + (degrees < 0 ? negative : positive);
  }

  private void rose(Svg picture) {
    double x = SIDE / 2.0;
    double y = SIDE / 2.0;
    double radius = 72.0;
    picture.circle(x, y, radius, "fill", "none", "stroke", "#000");
    for (int degree = 0; degree < 360; degree += 5) {
      double sine = Math.sin(Math.toRadians(degree));
      double cosine = Math.cos(Math.toRadians(degree));
      double inner = radius - (degree % 30 == 0 ? 10 : degree % 10 == 0 ? 7 : 4);
      picture.line(
          x + radius * sine,
          y - radius * cosine,
          x + inner * sine,
          y - inner * cosine,
          "stroke",
          "#000",
          "stroke-width",
          "0.8");
      if (degree % 30 == 0) {
        label(
            picture,
            x + (radius + 12) * sine,
            y - (radius + 12) * cosine + 4,
            (degree < 10 ? "00" : degree < 100 ? "0" : "") + degree,
            "11",
            "middle");
      }
    }
    label(picture, x, y - 8, "true", "11", "middle");
    label(picture, x, y + 14, area.rose().printed(), "11", "middle");
  }

  /** Words that stay legible where a line crosses them. */
  private static void label(
      Svg picture, double x, double y, String words, String size, String anchor) {
    picture.text(
        x,
        y,
        words,
        "font-size",
        size,
        "font-family",
        "sans-serif",
        "text-anchor",
        anchor,
        "stroke",
        "#fff",
        "stroke-width",
        "4",
        "stroke-linejoin",
        "round",
        "style",
        "paint-order:stroke");
  }
}
