package org.ferryglide.examples.page;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.passage.Danger;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageBuilder;
import org.ferryglide.nav.passage.PassageLeg;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.TrackPoint;

/**
 * How far the party gets by when, and from where its end can still be made: the lines of equal time
 * about a quickest leg, and its ways. It is no chart.
 */
final class QuickestPicture {
  private static final double TOP = 30.0;
  private static final double LEFT = 8.0;
  private static final double LEAST_HEIGHT = 200.0;
  private static final double MOST_HEIGHT = 420.0;
  private static final double LINE = 12.0;

  /** Corners nearer each other than this are not drawn. */
  private static final double NEAR = 1.0;

  private static final double PATH_SECONDS = 30.0;

  private final QuickestLeg leg;
  private final WayPoint goal;
  private final Labels labels;
  private final Printed printed;
  private final Instant latest;
  private final List<QuickestLeg.Line> forward;
  private final List<QuickestLeg.Line> back;
  private final SheetPen pen;
  private final List<String> key;

  private QuickestPicture(
      QuickestLeg leg, WayPoint goal, Instant latest, Printed printed, Labels labels) {
    this.leg = leg;
    this.goal = goal;
    this.labels = labels;
    this.printed = printed;
    this.latest = latest;
    WayPoint end = leg.leg().leg().to();
    // with lines of the same times, who goes elsewhere sees where to turn for it
    forward = leg.forward(goal.equals(end) ? leg.ways().get(0).path().arrival() : latest);
    back = leg.back(goal.position(), latest);
    key =
        Wrapped.lines(
            labels.say(
                "quickest.key", "end", Wrapped.name(goal.name()), "latest", printed.early(latest)),
            Ink.WIDTH - 16,
            Ink.SMALL);
    SheetFrame frame =
        SheetFrame.around(places(), LEFT, TOP, Ink.WIDTH - 2 * LEFT, LEAST_HEIGHT, MOST_HEIGHT);
    Svg svg =
        Svg.of(
            "quickest",
            Ink.WIDTH,
            TOP + frame.height + key.size() * LINE + 8,
            labels.say("quickest.picture", "from", leg.leg().leg().from().name(), "to", end.name()),
            description());
    pen =
        new SheetPen(
            svg,
            frame,
            new Places(
                frame.left + 2,
                frame.top + 2,
                frame.left + frame.width - 2,
                frame.top + frame.height - 2));
    draw();
  }

  static Svg of(QuickestLeg leg, WayPoint goal, Instant latest, Printed printed, Labels labels) {
    return new QuickestPicture(leg, goal, latest, printed, labels).pen.svg();
  }

  private List<Position> places() {
    List<Position> places = new ArrayList<>();
    places.add(leg.leg().leg().from().position());
    places.add(leg.leg().leg().to().position());
    places.add(goal.position());
    leg.ways().forEach(way -> places.addAll(track(way)));
    forward.forEach(line -> line.outlines().forEach(places::addAll));
    back.forEach(line -> line.outlines().forEach(places::addAll));
    return places;
  }

  private static List<Position> track(QuickestLeg.Way way) {
    List<Position> track = new ArrayList<>();
    for (TrackPoint point : way.path().groundTrack().pointsEvery(PATH_SECONDS)) {
      track.add(point.position());
    }
    return track;
  }

  private String description() {
    StringBuilder words = new StringBuilder(labels.say("plot.not-a-chart")).append(' ');
    words.append(labels.say("quickest.reached", "times", times(forward))).append(' ');
    words.append(
        labels.say(
            "quickest.left",
            "end",
            goal.name(),
            "latest",
            printed.early(latest),
            "times",
            times(back)));
    return words.toString();
  }

  private String times(List<QuickestLeg.Line> lines) {
    List<String> times = new ArrayList<>();
    lines.forEach(line -> times.add(printed.early(line.time()))); // whole minutes
    return times.isEmpty() ? labels.say("blank") : String.join(", ", times);
  }

  private void draw() {
    Svg svg = pen.svg();
    SheetFrame frame = pen.frame();
    svg.rectangle(0, 0, Ink.WIDTH, svg.height(), "fill", "#fff");
    svg.text(LEFT, 11, labels.say("plot.not"), "font-weight", "700", "font-size", "10");
    svg.text(LEFT, 23, labels.say("quickest.head"), "font-size", "10");
    svg.hatch("danger", 5, 45, Ink.DANGER);
    svg.rectangle(
        frame.left, frame.top, frame.width, frame.height, "fill", "none", "stroke", Ink.BLACK);
    svg.group("clip-path", svg.clip("frame", frame.left, frame.top, frame.width, frame.height));
    SheetGiven given = new SheetGiven(pen, shown());
    given.ground();
    given.takeMarks();
    lines(back, Ink.BLACK, "5 3", false);
    lines(forward, Ink.WATER, "", true);
    for (int i = leg.ways().size() - 1; i >= 0; i--) {
      svg.polyline(
          thinned(track(leg.ways().get(i))),
          "fill",
          "none",
          "stroke",
          Ink.BLACK,
          "stroke-width",
          i == 0 ? "2.6" : "1.2");
    }
    QuickestLeg.Way best = leg.ways().get(0);
    best.greatestStreamAt()
        .ifPresent(
            time -> {
              double[] at = pen.xy(best.path().groundTrack().at(time));
              svg.circle(
                  at[0], at[1], 6, "fill", "none", "stroke", Ink.DANGER, "stroke-width", "2");
            });
    given.marks();
    svg.end();
    double y = pen.bottom();
    for (String line : key) {
      y += LINE;
      svg.text(LEFT, y, line, "font-size", Svg.number(Ink.SMALL));
    }
  }

  /** The leg with what lies within the frame: names of what lies outside would stand within. */
  private Passage shown() {
    Passage passage = leg.plan().passage();
    PassageLeg own = leg.leg().leg();
    List<Danger> within =
        passage.dangers().orElse(List.of()).stream().filter(this::isShown).toList();
    PassageBuilder shown =
        Passage.builder(passage.name(), passage.zone(), passage.party()).stream(passage.stream())
            .from(own.from())
            .to(own.to())
            .to(goal) // a mark: no leg is drawn
            .dangers(within);
    passage.levels().forEach(shown::level); // dangers ask for them
    passage.shores().ifPresent(shown::shores);
    return shown.build();
  }

  /** Whether any of the water to be kept off lies within the frame. */
  private boolean isShown(Danger danger) {
    SheetFrame frame = pen.frame();
    Position first = danger.outline().get(0);
    double keep = frame.units(danger.keepOff().metres(), first.latitudeDegrees());
    double[] box = {
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY,
      Double.POSITIVE_INFINITY,
      Double.NEGATIVE_INFINITY
    };
    for (Position corner : danger.outline()) {
      double[] at = pen.xy(corner);
      box[0] = Math.min(box[0], at[0] - keep);
      box[1] = Math.max(box[1], at[0] + keep);
      box[2] = Math.min(box[2], at[1] - keep);
      box[3] = Math.max(box[3], at[1] + keep);
    }
    return box[1] >= frame.left
        && box[0] <= frame.left + frame.width
        && box[3] >= frame.top
        && box[2] <= pen.bottom();
  }

  private void lines(
      List<QuickestLeg.Line> lines, String colour, String dashes, boolean isNamedAtTheRight) {
    for (QuickestLeg.Line line : lines) {
      double[] at = null;
      for (List<Position> outline : line.outlines()) {
        double[] points = thinned(outline);
        if (points.length < 6) {
          continue;
        }
        List<String> style =
            new ArrayList<>(List.of("fill", "none", "stroke", colour, "stroke-width", "0.9"));
        if (!dashes.isEmpty()) {
          style.addAll(List.of("stroke-dasharray", dashes));
        }
        pen.svg().polygon(points, style.toArray(new String[0]));
        for (int i = 0; i < points.length; i += 2) {
          if (at == null || points[i] > at[0] == isNamedAtTheRight) {
            at = new double[] {points[i], points[i + 1]};
          }
        }
      }
      if (at != null) {
        pen.name(at[0], at[1], printed.early(line.time()), colour, "400");
      }
    }
  }

  private double[] thinned(List<Position> positions) {
    double[] all = pen.line(positions);
    double[] kept = new double[all.length];
    int count = 0;
    for (int i = 0; i < all.length; i += 2) {
      boolean isLast = i + 2 == all.length;
      if (count == 0
          || isLast
          || Math.hypot(all[i] - kept[count - 2], all[i + 1] - kept[count - 1]) > NEAR) {
        kept[count++] = all[i];
        kept[count++] = all[i + 1];
      }
    }
    return Arrays.copyOf(kept, count);
  }
}
