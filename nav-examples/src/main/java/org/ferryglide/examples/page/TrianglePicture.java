package org.ferryglide.examples.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;

/**
 * The construction of one leg: the streams of its hours head to tail, from their end the way
 * through the water to the way point, and the way over the ground that closes them.
 */
final class TrianglePicture {
  private static final double LEFT = 16.0;
  private static final double TOP = 14.0;
  private static final double HEIGHT = 170.0;

  /** A leg without length is not blown up to the size of the picture. */
  private static final double LEAST_METRES = 100.0;

  private TrianglePicture() {}

  /** The picture; empty where the stream is not known on the whole leg. */
  static Optional<Svg> of(WorkedPassage worked, TimedPlan plan, PlannedLeg leg) {
    LegVectors vectors = LegVectors.of(plan, leg);
    return vectors.isKnown()
        ? Optional.of(draw(plan, leg, vectors, worked.labels(), worked.printed()))
        : Optional.empty();
  }

  private static Svg draw(
      TimedPlan plan, PlannedLeg leg, LegVectors vectors, Labels labels, Printed printed) {
    List<double[]> streams = vectors.streamChain();
    List<double[]> water = vectors.waterChain();
    List<double[]> all = new ArrayList<>(streams);
    all.addAll(water);
    double[] box = box(all);
    double scale =
        Math.min(
            (Ink.WIDTH - 2 * LEFT) / Math.max(LEAST_METRES, box[1] - box[0]),
            HEIGHT / Math.max(LEAST_METRES, box[3] - box[2]));
    double high = Math.max(40.0, (box[3] - box[2]) * scale);
    String number = Integer.toString(leg.leg().number());
    Svg svg =
        Svg.of(
            "leg-" + number,
            Ink.WIDTH,
            TOP + high + 58,
            labels.say("triangle.title", "number", number),
            words(leg, vectors, labels, printed));
    svg.rectangle(0, 0, Ink.WIDTH, svg.height(), "fill", "#fff");
    double offX = LEFT + (Ink.WIDTH - 2 * LEFT - (box[1] - box[0]) * scale) / 2 - box[0] * scale;
    double offY = TOP + (high + (box[3] - box[2]) * scale) / 2 + box[2] * scale;
    Places places = new Places(2, 2, Ink.WIDTH - 2, TOP + high + 16);
    places.take(Ink.WIDTH - 26, TOP + high + 6, 24, 12); // the N of the arrow
    double[][] s = placed(streams, scale, offX, offY);
    double[][] w = placed(water, scale, offX, offY);
    double[] start = s[0];
    double[] end = w[w.length - 1];
    Ink.arrow(svg, start[0], start[1], end[0], end[1], 2, 0.55, Ink.BLACK, 2.0);
    places.takeLine(start[0], start[1], end[0], end[1]);
    boolean constantHeading = leg.steered().headings().size() <= 1;
    int parts = constantHeading ? 1 : w.length - 1;
    for (int i = 0; i < parts; i++) {
      double[] to = constantHeading ? end : w[i + 1];
      double[] from = constantHeading ? w[0] : w[i];
      Ink.arrow(svg, from[0], from[1], to[0], to[1], 1, 0.55, Ink.BLACK, 1.2);
      places.takeLine(from[0], from[1], to[0], to[1]);
    }
    for (int i = 0; i + 1 < s.length; i++) {
      Ink.arrow(svg, s[i][0], s[i][1], s[i + 1][0], s[i + 1][1], 3, 0.8, Ink.WATER, 1.6);
      places.takeLine(s[i][0], s[i][1], s[i + 1][0], s[i + 1][1]);
      if (i > 0) {
        svg.circle(s[i][0], s[i][1], 1.8, "fill", Ink.WATER);
      }
    }
    for (double[] point : new double[][] {start, end}) {
      svg.circle(
          point[0], point[1], 3.2, "fill", "#fff", "stroke", Ink.BLACK, "stroke-width", "1.4");
    }
    label(svg, places, mid(start, end), over(leg, labels, printed), Ink.BLACK);
    for (int i = 0; i < parts; i++) {
      double[] from = constantHeading ? w[0] : w[i];
      double[] to = constantHeading ? end : w[i + 1];
      label(svg, places, mid(from, to), through(plan, leg, i, labels, printed), Ink.BLACK);
    }
    for (int i = 0; i + 1 < s.length; i++) {
      LegVectors.Hour hour = vectors.hours().get(i);
      if (Math.hypot(s[i + 1][0] - s[i][0], s[i + 1][1] - s[i][1]) > 3) {
        label(svg, places, mid(s[i], s[i + 1]), stream(hour, leg, printed), Ink.WATER);
      }
    }
    label(svg, places, start, leg.leg().from().name(), Ink.BLACK);
    label(svg, places, end, leg.leg().to().name(), Ink.BLACK);
    double y = TOP + high + 32;
    Ink.barScale(svg, LEFT, y, scale, 110, printed, "");
    Ink.arrow(svg, Ink.WIDTH - 20, y + 12, Ink.WIDTH - 20, y - 12, 1, 1.0, Ink.BLACK, 1.2);
    svg.text(Ink.WIDTH - 20, y - 15, "N", "font-size", "9", "text-anchor", "middle");
    svg.text(LEFT, y + 18, labels.say("triangle.key"), "font-size", Svg.number(Ink.SMALL));
    return svg;
  }

  private static double[] box(List<double[]> points) {
    double[] box = {0, 0, 0, 0};
    for (double[] point : points) {
      box[0] = Math.min(box[0], point[0]);
      box[1] = Math.max(box[1], point[0]);
      box[2] = Math.min(box[2], point[1]);
      box[3] = Math.max(box[3], point[1]);
    }
    return box;
  }

  private static double[][] placed(List<double[]> points, double scale, double offX, double offY) {
    return points.stream()
        .map(point -> new double[] {offX + point[0] * scale, offY - point[1] * scale})
        .toArray(double[][]::new);
  }

  private static double[] mid(double[] from, double[] to) {
    return new double[] {0.5 * (from[0] + to[0]), 0.5 * (from[1] + to[1])};
  }

  private static void label(Svg svg, Places places, double[] at, String words, String colour) {
    Ink.beside(svg, places, at[0], at[1], words, Ink.SMALL, "fill", colour);
  }

  static String over(PlannedLeg leg, Labels labels, Printed printed) {
    return labels.say(
        "triangle.over",
        "course",
        Printed.direction(leg, leg.course()),
        "distance",
        printed.distanceNear(leg.leg().leg().length()));
  }

  static String through(TimedPlan plan, PlannedLeg leg, int hour, Labels labels, Printed printed) {
    return labels.say(
        "triangle.through",
        "heading",
        Printed.direction(
            leg,
            leg.steered().headings().size() <= 1 ? leg.heading() : leg.hours().get(hour).heading()),
        "speed",
        printed.speedUp(
            leg.leg().options().speed().orElse(plan.passage().party().craft().speed())));
  }

  static String stream(LegVectors.Hour hour, PlannedLeg leg, Printed printed) {
    double east = hour.streamEast();
    double north = hour.streamNorth();
    Distance drift = Distance.ofMetres(Math.hypot(east, north));
    TrueBearing set = TrueBearing.ofDegrees(Math.toDegrees(Math.atan2(east, north)));
    return Printed.direction(leg, set) + " " + printed.distanceUp(drift);
  }

  private static String words(PlannedLeg leg, LegVectors vectors, Labels labels, Printed printed) {
    StringBuilder words =
        new StringBuilder(
            labels.say(
                "triangle.words",
                "from",
                leg.leg().from().name(),
                "to",
                leg.leg().to().name(),
                "course",
                Printed.direction(leg, leg.course()),
                "heading",
                Printed.direction(leg, leg.heading())));
    for (LegVectors.Hour hour : vectors.hours()) {
      words.append(' ').append(stream(hour, leg, printed)).append('.');
    }
    return words.toString();
  }
}
