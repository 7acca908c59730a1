package org.ferryglide.examples.page;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.passage.Landing;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.water.WaterLevel;

/** The tide of a port through the day, with the hours of the passage and what landings need. */
final class TidePicture {
  private static final double TOP = 16.0;
  private static final double BOTTOM = 126.0;
  private static final double HEIGHT = 142.0;
  private static final int MOST_LINES = 8;
  private static final double LINE = 12.0;

  /** Between figures beside lines that lie closer. */
  private static final double APART = 7.5;

  private static final Duration STEP = Duration.ofMinutes(5);

  private TidePicture() {}

  /** A picture for each port that a landing of the passage asks for, or for the first known. */
  static List<Svg> all(WorkedPassage worked, Labels labels) {
    Passage passage = worked.passage();
    Set<String> ports = new LinkedHashSet<>();
    List<WayPoint> places = new ArrayList<>(passage.wayPoints());
    places.addAll(passage.refuges());
    for (WayPoint place : places) {
      place.landing().flatMap(Landing::port).ifPresent(ports::add);
    }
    if (ports.isEmpty()) {
      passage.levels().keySet().stream().findFirst().ifPresent(ports::add);
    }
    List<Svg> pictures = new ArrayList<>();
    for (String port : ports) {
      WaterLevel level = passage.levels().get(port);
      if (level != null) {
        pictures.add(new OnePort(worked, labels, port, level, pictures.size() + 1).draw(places));
      }
    }
    return pictures;
  }

  private record OnePort(
      WorkedPassage worked, Labels labels, String port, WaterLevel level, int number) {

    Svg draw(List<WayPoint> places) {
      DayFrame day = new DayFrame(worked);
      int count = (int) Duration.between(day.from(), day.until()).dividedBy(STEP) + 1;
      double[] metres = new double[count];
      level.heightsEvenly(
          (double) day.from().getEpochSecond(), (double) STEP.getSeconds(), count, metres, 0);
      List<Instant> times = new ArrayList<>();
      List<Double> heights = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        times.add(day.from().plus(STEP.multipliedBy(i)));
        heights.add(worked.printed().units().height(metres[i]));
      }
      List<Turn> turns = turns(times, heights);
      double most = 0.5;
      double least = 0.0;
      for (double height : heights) {
        most = height > most ? height : most;
        least = height < least ? height : least;
      }
      most = Math.ceil(most + 0.3);
      least = Math.floor(least);
      List<String> works = works(places);
      Svg svg =
          Svg.of(
              "tide-" + number,
              Ink.WIDTH,
              HEIGHT + works.size() * LINE,
              labels.say("tide.title", "port", port, "date", worked.printed().date()),
              words(turns, heights));
      svg.rectangle(0, 0, Ink.WIDTH, svg.height(), "fill", "#fff");
      day.hours(svg, TOP, BOTTOM);
      double step = Math.max(1.0, DayFrame.step(most - least, MOST_LINES));
      for (double height = Math.ceil(least / step) * step; height <= most; height += step) {
        double y = y(height, least, most);
        day.level(svg, y, Long.toString((long) height));
      }
      svg.text(
          4,
          10,
          labels.say(
              worked.plan().isSolved() ? "tide.axis" : "tide.axis-alone",
              "unit",
              worked.printed().heightUnit(),
              "datum",
              level.datum()),
          "font-size",
          "9");
      day.passage(svg, worked, TOP, BOTTOM);
      curve(svg, day, times, heights, least, most);
      limits(svg, day, places, least, most);
      Places room = new Places(day.left(), TOP - 2, day.right(), BOTTOM);
      for (Turn turn : turns) {
        double x = day.x(turn.time());
        double y = y(turn.height(), least, most);
        svg.circle(x, y, 2.4, "fill", Ink.WATER);
        String words = clock(turn) + " " + figure(turn);
        Ink.beside(svg, room, x, y, words, Ink.SMALL, "font-weight", "700");
      }
      for (int i = 0; i < works.size(); i++) {
        svg.text(8, HEIGHT + i * LINE + 4, works.get(i), "font-size", Svg.number(Ink.SMALL));
      }
      return svg;
    }

    /** Between which levels each landing works, in words below the picture. */
    private List<String> works(List<WayPoint> places) {
      List<String> all = new ArrayList<>();
      for (WayPoint place : places) {
        landing(place)
            .ifPresent(
                it ->
                    all.add(
                        labels.say(
                            "tide.landing",
                            "place",
                            Wrapped.name(place.name()),
                            "lowest",
                            lowest(it),
                            "highest",
                            highest(it))));
      }
      return all.isEmpty()
          ? all
          : Wrapped.lines(
              labels.say("tide.landings", "places", String.join("; ", all)),
              Ink.WIDTH - 16,
              Ink.SMALL);
    }

    private Optional<Landing> landing(WayPoint place) {
      return place.landing().filter(it -> port.equals(it.port().orElse("")));
    }

    /** Up: the least water with which it works. */
    private String lowest(Landing landing) {
      return Printed.up(worked.printed().units().height(landing.lowest().orElseThrow().metres()));
    }

    /** Down: the most. */
    private String highest(Landing landing) {
      return Printed.down(
          worked.printed().units().height(landing.highest().orElseThrow().metres()));
    }

    /** Lines at what landings need, each with its figure beside the picture. */
    private void limits(Svg svg, DayFrame day, List<WayPoint> places, double least, double most) {
      Set<Double> levels = new TreeSet<>(Comparator.reverseOrder());
      for (WayPoint place : places) {
        landing(place)
            .ifPresent(
                it -> {
                  levels.add(Double.parseDouble(lowest(it)));
                  levels.add(Double.parseDouble(highest(it)));
                });
      }
      double below = TOP - APART;
      for (double level : levels) {
        if (level >= least && level <= most) {
          double y = y(level, least, most);
          svg.line(day.left(), y, day.right(), y, "stroke", Ink.BLACK, "stroke-dasharray", "6 3");
          below = Math.max(y, below + APART);
          svg.text(day.right() + 1, below + 2.5, Double.toString(level), "font-size", "7");
        }
      }
    }

    private static void curve(
        Svg svg,
        DayFrame day,
        List<Instant> times,
        List<Double> heights,
        double least,
        double most) {
      List<Double> points = new ArrayList<>();
      for (int i = 0; i <= times.size(); i++) {
        if (i == times.size() || heights.get(i).isNaN()) {
          Ink.curve(svg, points);
          points.clear();
        } else {
          points.add(day.x(times.get(i)));
          points.add(y(heights.get(i), least, most));
        }
      }
    }

    private String clock(Turn turn) {
      return worked.printed().early(turn.time());
    }

    /** Down: less water than there is, for whoever needs depth; a landing's own check has both. */
    private String figure(Turn turn) {
      return Printed.down(turn.height()) + " " + worked.printed().heightUnit();
    }

    private String words(List<Turn> turns, List<Double> heights) {
      StringBuilder words = new StringBuilder();
      for (Turn turn : turns) {
        words
            .append(
                labels.say(
                    turn.high() ? "tide.high" : "tide.low",
                    "time",
                    clock(turn),
                    "height",
                    figure(turn)))
            .append(' ');
      }
      if (heights.stream().anyMatch(height -> height.isNaN())) {
        words.append(labels.say("tide.gaps"));
      }
      return words.isEmpty() ? labels.say("tide.none") : words.toString().trim();
    }

    private List<Turn> turns(List<Instant> times, List<Double> heights) {
      List<Turn> turns = new ArrayList<>();
      for (int i = 1; i + 1 < heights.size(); i++) {
        double before = heights.get(i - 1);
        double here = heights.get(i);
        double after = heights.get(i + 1);
        if (here > before && here >= after) {
          turns.add(turn(times.get(i), true));
        } else if (here < before && here <= after) {
          turns.add(turn(times.get(i), false));
        }
      }
      return turns;
    }

    /** The turn within a step of a time, to the second: a table's own minute comes out again. */
    private Turn turn(Instant about, boolean high) {
      double from = about.minus(STEP).getEpochSecond();
      double until = about.plus(STEP).getEpochSecond();
      while (until - from > 0.1) {
        double one = from + (until - from) / 3.0;
        double other = until - (until - from) / 3.0;
        boolean isLater = high == (height(one) < height(other));
        from = isLater ? one : from;
        until = isLater ? until : other;
      }
      double second = Math.rint(0.5 * (from + until));
      return new Turn(Instant.ofEpochSecond((long) second), height(second), high);
    }

    private double height(double second) {
      Instant time = Instant.ofEpochMilli(Math.round(1000.0 * second));
      return worked
          .printed()
          .units()
          .height(level.heightAt(time).map(Distance::metres).orElse(Double.NaN));
    }
  }

  /** A high or low water, as the curve has it. */
  private record Turn(Instant time, double height, boolean high) {}

  private static double y(double height, double least, double most) {
    return BOTTOM - (height - least) / (most - least) * (BOTTOM - TOP);
  }
}
