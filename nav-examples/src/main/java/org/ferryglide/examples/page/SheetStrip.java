package org.ferryglide.examples.page;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.magnetic.VariationReading;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.TimedPlan;

/** Below the sheet: a bar that shows a distance, and a rose with the variation. */
final class SheetStrip {
  /** A longer bar would run into the words beside the rose. */
  private static final double MOST_BAR = 115.0;

  private static final double LEFT = 8.0;

  private final SheetPen pen;
  private final WorkedPassage worked;
  private final Labels labels;
  private final Printed printed;

  SheetStrip(SheetPen pen, WorkedPassage worked) {
    this.pen = pen;
    this.worked = worked;
    this.labels = worked.labels();
    this.printed = worked.printed();
  }

  void draw() {
    double y = pen.bottom();
    Ink.barScale(
        pen.svg(),
        LEFT + 6,
        y + 30,
        pen.frame().units(1.0, pen.frame().middleLatitude()),
        MOST_BAR,
        printed,
        labels.say("plot.bar", "latitude", latitude(pen.frame().middleLatitude())));
    rose(300, y + 40);
  }

  private static String latitude(double degrees) {
    long minutes = Math.round(Math.abs(degrees) * 60.0);
    return minutes / 60 + "°" + Printed.two((int) (minutes % 60)) + "'" + (degrees < 0 ? "S" : "N");
  }

  private void rose(double x, double y) {
    pen.svg().circle(x, y, 24, "fill", "none", "stroke", Ink.BLACK);
    for (int degrees = 0; degrees < 360; degrees += 10) {
      double sine = Math.sin(Math.toRadians(degrees));
      double cosine = Math.cos(Math.toRadians(degrees));
      double inner = degrees % 90 == 0 ? 17 : degrees % 30 == 0 ? 19 : 21.5;
      pen.svg()
          .line(
              x + inner * sine,
              y - inner * cosine,
              x + 24 * sine,
              y - 24 * cosine,
              "stroke",
              Ink.BLACK,
              "stroke-width",
              "0.8");
    }
    pen.svg().line(x, y + 15, x, y - 15, "stroke", Ink.BLACK, "stroke-width", "1.2");
    pen.svg().text(x, y - 26, "N", "font-size", "9", "font-weight", "700", "text-anchor", "middle");
    Optional<VariationReading> reading = variation();
    Instant when = worked.departure();
    String words =
        reading
            .map(VariationReading::variation)
            .map(
                one ->
                    labels.say(
                        "plot.variation",
                        "variation",
                        one.degreesAndMinutes(),
                        "year",
                        Integer.toString(when.atZone(printed.zone()).getYear())))
            .orElse(labels.say("plot.no-variation"));
    reading.map(VariationReading::variation).ifPresent(one -> needle(x, y, one));
    pen.svg().text(x - 30, y - 4, words, "font-size", "9", "text-anchor", "end");
    pen.svg().text(x - 30, y + 8, labels.say("plot.rose"), "font-size", "9", "text-anchor", "end");
  }

  /** At the start; none where the source has no answer for the date. */
  private Optional<VariationReading> variation() {
    TimedPlan plan = worked.plan().solved().orElse(null);
    if (plan != null) {
      return plan.legs().get(0).variation();
    }
    Passage passage = worked.passage();
    try {
      return passage
          .variation()
          .map(one -> one.at(passage.wayPoints().get(0).position(), printed.day()));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private void needle(double x, double y, Variation variation) {
    double angle = Math.toRadians(variation.degreesEast());
    double dx = Math.sin(angle) * 16;
    double dy = -Math.cos(angle) * 16;
    Ink.arrow(pen.svg(), x - dx, y - dy, x + dx, y + dy, 1, 1.0, Ink.DANGER, 1.6);
  }
}
