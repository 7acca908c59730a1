package org.ferryglide.examples.page;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.passage.PassageLeg;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;

/** The stream through the day at the middle of each leg; legs with the same stream share a row. */
final class StreamPicture {
  private static final double TOP = 16.0;
  private static final double ROW = 74.0;
  private static final double GAP = 28.0;
  private static final double ARROWS = 20.0;
  private static final int MOST_LINES = 4;
  private static final Duration STEP = Duration.ofMinutes(10);

  private StreamPicture() {}

  /** One place and what its stream does, every ten minutes of the day. */
  private record Row(List<Integer> legs, List<Optional<Velocity>> flow) {
    boolean isAlike(List<Optional<Velocity>> other) {
      for (int i = 0; i < flow.size(); i++) {
        if (flow.get(i).isPresent() != other.get(i).isPresent()) {
          return false;
        }
        if (flow.get(i).isPresent()
            && flow.get(i).get().minus(other.get(i).get()).rate().knots() > 0.05) {
          return false;
        }
      }
      return true;
    }

    double most(Units units) {
      return flow.stream()
          .mapToDouble(v -> v.map(one -> units.speed(one.rate().metresPerSecond())).orElse(0.0))
          .max()
          .orElse(0);
    }
  }

  static Svg of(WorkedPassage worked, Labels labels) {
    DayFrame day = new DayFrame(worked);
    List<Row> rows = rows(worked, day);
    Units units = worked.printed().units();
    double most =
        Math.max(0.5, rows.stream().mapToDouble(row -> row.most(units)).max().orElse(0.5));
    Svg svg =
        Svg.of(
            "stream",
            Ink.WIDTH,
            TOP + rows.size() * (ROW + GAP) + 2,
            labels.say("stream.title", "date", worked.printed().date()),
            words(worked, labels, day, rows));
    svg.rectangle(0, 0, Ink.WIDTH, svg.height(), "fill", "#fff");
    double top = TOP;
    for (Row row : rows) {
      draw(svg, worked, labels, day, row, top, most);
      top += ROW + GAP;
    }
    return svg;
  }

  private static List<Row> rows(WorkedPassage worked, DayFrame day) {
    List<Row> rows = new ArrayList<>();
    for (PassageLeg leg : worked.passage().legs()) {
      StreamField field = leg.options().stream().orElse(worked.passage().stream());
      Position middle = leg.leg().midpoint();
      List<Optional<Velocity>> flow = new ArrayList<>();
      for (Instant t = day.from(); !t.isAfter(day.until()); t = t.plus(STEP)) {
        flow.add(field.at(middle, t));
      }
      Optional<Row> known = rows.stream().filter(row -> row.isAlike(flow)).findFirst();
      if (known.isPresent()) {
        known.get().legs().add(leg.number());
      } else {
        rows.add(new Row(new ArrayList<>(List.of(leg.number())), flow));
      }
    }
    return rows;
  }

  private static String legs(Row row) {
    StringBuilder words = new StringBuilder();
    for (int leg : row.legs()) {
      words.append(words.isEmpty() ? "" : ", ").append(leg);
    }
    return words.toString();
  }

  private static void draw(
      Svg svg,
      WorkedPassage worked,
      Labels labels,
      DayFrame day,
      Row row,
      double top,
      double most) {
    double base = top + ROW;
    day.hours(svg, top, base);
    day.passage(svg, worked, top + ARROWS, base);
    svg.text(
        4,
        top - 4,
        labels.say("stream.row", "unit", worked.printed().speedUnit(), "legs", legs(row)),
        "font-size",
        "9",
        "font-weight",
        "700");
    double step = DayFrame.step(most, MOST_LINES);
    for (double rate = 0; rate <= most; rate += step) {
      double y = y(rate, top, most);
      day.level(svg, y, Ink.trimmed(rate));
    }
    List<Double> points = new ArrayList<>();
    for (int i = 0; i <= row.flow().size(); i++) {
      boolean known = i < row.flow().size() && row.flow().get(i).isPresent();
      if (known) {
        Velocity flow = row.flow().get(i).get();
        Instant time = day.from().plus(STEP.multipliedBy(i));
        points.add(day.x(time));
        points.add(y(worked.printed().units().speed(flow.rate().metresPerSecond()), top, most));
        if (i % 6 == 0) {
          direction(svg, day.x(time), top + 9, flow);
        }
      } else {
        Ink.curve(svg, points);
        points.clear();
      }
    }
  }

  /** Where it sets, north up; a dot where it is slack. */
  private static void direction(Svg svg, double x, double y, Velocity flow) {
    if (flow.rate().knots() < 0.1) {
      svg.circle(x, y, 1.4, "fill", Ink.WATER);
      return;
    }
    double set = Math.toRadians(flow.set().degrees());
    double dx = Math.sin(set) * 5.5;
    double dy = -Math.cos(set) * 5.5;
    Ink.arrow(svg, x - dx, y - dy, x + dx, y + dy, 1, 1.0, Ink.WATER, 1.2);
  }

  private static double y(double rate, double top, double most) {
    return top + ROW - rate / most * (ROW - ARROWS - 4);
  }

  private static String words(WorkedPassage worked, Labels labels, DayFrame day, List<Row> rows) {
    StringBuilder words = new StringBuilder();
    for (Row row : rows) {
      int most = -1;
      boolean gaps = false;
      for (int i = 0; i < row.flow().size(); i++) {
        gaps |= row.flow().get(i).isEmpty();
        if (row.flow().get(i).isPresent()
            && (most < 0
                || row.flow()
                        .get(i)
                        .get()
                        .rate()
                        .compareTo(row.flow().get(most).orElse(Velocity.STILL).rate())
                    > 0)) {
          most = i;
        }
      }
      words
          .append(labels.say("stream.row", "unit", worked.printed().speedUnit(), "legs", legs(row)))
          .append(": ");
      if (most >= 0) {
        Velocity flow = row.flow().get(most).orElse(Velocity.STILL);
        words.append(
            labels.say(
                "stream.most",
                "speed",
                worked.printed().speedUp(flow.rate()),
                "set",
                flow.set().threeDigits(),
                "time",
                worked.printed().early(day.from().plus(STEP.multipliedBy(most)))));
      }
      words.append(gaps ? " " + labels.say("stream.gaps") : "").append(' ');
    }
    return words.toString().trim();
  }
}
