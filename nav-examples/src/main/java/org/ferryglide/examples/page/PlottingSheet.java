package org.ferryglide.examples.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageLeg;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.timing.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * The passage on a plotting sheet: its legs, where the party is hour by hour, how sure that is,
 * where it drifts, and whatever dangers it was given. It is no chart.
 */
final class PlottingSheet {
  private static final double TOP = 30.0;
  private static final double LEFT = 8.0;
  private static final double LEAST_HEIGHT = 240.0;
  private static final double MOST_HEIGHT = 400.0;
  private static final double STRIP = 72.0;
  private static final double LINE = 12.0;

  /** Lines about cautions: more would make the sheet higher than its paper. */
  private static final int MOST_LINES = 14;

  /** A wider ellipse, as a share of its leg, would leave the legs no room. */
  private static final double MOST_SPREAD = 0.25;

  /** Beyond it a corner might lie across the pole. */
  private static final double FARTHEST_NORTH = 89.0;

  private final WorkedPassage worked;
  private final Passage passage;
  private final Labels labels;
  private final Printed printed;
  private final @Nullable TimedPlan plan;
  private final SheetFrame frame;
  private final List<String> key = new ArrayList<>();
  private final SheetPen pen;

  private PlottingSheet(WorkedPassage worked, Labels labels) {
    this.worked = worked;
    this.passage = worked.passage();
    this.labels = labels;
    this.printed = worked.printed();
    this.plan = worked.plan().solved().orElse(null);
    this.frame =
        SheetFrame.around(all(), LEFT, TOP, Ink.WIDTH - 2 * LEFT, LEAST_HEIGHT, MOST_HEIGHT);
    Map<Position, String> cautions = cautions();
    int number = 0;
    for (String words : cautions.values()) {
      number++;
      List<String> told = Wrapped.lines("! " + number + "  " + words, Ink.WIDTH - 16, Ink.SMALL);
      if (key.size() + told.size() > MOST_LINES) {
        String from = Integer.toString(number);
        String until = Integer.toString(cautions.size());
        key.add(labels.say("sheet.more", "from", from, "until", until));
        break;
      }
      key.addAll(told);
    }
    if (SheetWay.isCrowded(passage)) {
      key.addAll(Wrapped.lines(labels.say("sheet.crowded"), Ink.WIDTH - 16, Ink.SMALL));
    }
    key.addAll(
        Wrapped.lines(
            labels.say("sheet.key", "unit", printed.speedUnit()), Ink.WIDTH - 16, Ink.SMALL));
    double height = TOP + frame.height + STRIP + key.size() * LINE + 8;
    Svg svg =
        Svg.of(
            "plotting-sheet",
            Ink.WIDTH,
            height,
            labels.say("plot.title", "passage", passage.name()),
            description(cautions));
    double bottom = frame.top + frame.height;
    this.pen =
        new SheetPen(
            svg,
            frame,
            new Places(frame.left + 2, frame.top + 2, frame.left + frame.width - 2, bottom - 2));
    draw(cautions);
  }

  static Svg of(WorkedPassage worked, Labels labels) {
    return new PlottingSheet(worked, labels).pen.svg();
  }

  /** Everything that is to lie within the frame. */
  private List<Position> all() {
    List<Position> all = new ArrayList<>();
    passage.wayPoints().forEach(place -> all.add(place.position()));
    passage.refuges().forEach(place -> all.add(place.position()));
    passage.dangers().ifPresent(list -> list.forEach(one -> all.addAll(one.outline())));
    if (plan != null) {
      plan.drifts().values().forEach(all::addAll);
      plan.legs().forEach(leg -> all.addAll(spread(leg)));
    }
    return all;
  }

  /** The corners of where the party may well be at the end of a leg, within reason. */
  private static List<Position> spread(PlannedLeg leg) {
    double most = MOST_SPREAD * leg.leg().leg().length().metres();
    double east = Math.min(most, SheetWay.SIGMAS * Math.sqrt(leg.spread().eastVariance()));
    double north = Math.min(most, SheetWay.SIGMAS * Math.sqrt(leg.spread().northVariance()));
    Position end = leg.leg().to().position();
    if (Math.abs(end.latitudeDegrees()) > FARTHEST_NORTH) {
      return List.of();
    }
    return List.of(
        RhumbLeg.from(end, TrueBearing.ofDegrees(90), Distance.ofMetres(east)).end(),
        RhumbLeg.from(end, TrueBearing.ofDegrees(270), Distance.ofMetres(east)).end(),
        RhumbLeg.from(end, TrueBearing.ofDegrees(0), Distance.ofMetres(north)).end(),
        RhumbLeg.from(end, TrueBearing.ofDegrees(180), Distance.ofMetres(north)).end());
  }

  /** What is to be looked at, by the place it concerns. */
  private Map<Position, String> cautions() {
    Map<Position, String> cautions = new LinkedHashMap<>();
    if (plan != null) {
      for (Verdict verdict : plan.verdicts()) {
        if (verdict.answer() != Verdict.Answer.WITHIN && verdict.where().isPresent()) {
          String when = verdict.when().map(time -> ", " + printed.early(time)).orElse("");
          String words = printed.answer(verdict) + " " + printed.say(verdict) + when;
          cautions.merge(verdict.where().get(), words, (a, b) -> a + "; " + b);
        }
      }
    }
    for (Note note : passage.notes()) {
      for (PassageLeg leg : passage.legs()) {
        if (Integer.toString(leg.number()).equals(note.data().get("leg"))) {
          cautions.merge(leg.leg().midpoint(), printed.say(note), (a, b) -> a + "; " + b);
        }
      }
    }
    return cautions;
  }

  private String description(Map<Position, String> cautions) {
    StringBuilder words = new StringBuilder(labels.say("plot.not-a-chart")).append(' ');
    for (PassageLeg leg : passage.legs()) {
      words.append(
          labels.say(
              "plot.leg",
              "number",
              Integer.toString(leg.number()),
              "from",
              leg.from().name(),
              "to",
              leg.to().name(),
              "course",
              leg.leg().initialCourse().threeDigits(),
              "distance",
              printed.distanceNear(leg.leg().length())));
      words.append(' ');
    }
    cautions.values().forEach(one -> words.append(one).append(". "));
    return words.toString().trim();
  }

  private void draw(Map<Position, String> cautions) {
    Svg svg = pen.svg();
    svg.rectangle(0, 0, Ink.WIDTH, svg.height(), "fill", "#fff");
    svg.text(LEFT, 11, labels.say("plot.not"), "font-weight", "700", "font-size", "10");
    svg.text(LEFT, 23, labels.say("plot.blank"), "font-size", "10");
    svg.hatch("danger", 5, 45, Ink.DANGER);
    svg.hatch("lane", 7, -45, Ink.GREY);
    svg.rectangle(
        frame.left, frame.top, frame.width, frame.height, "fill", "none", "stroke", Ink.BLACK);
    String clip = svg.clip("frame", frame.left, frame.top, frame.width, frame.height);
    svg.group("clip-path", clip);
    SheetGiven given = new SheetGiven(pen, passage);
    SheetWay way = new SheetWay(pen, worked);
    given.ground();
    way.spread();
    given.takeMarks();
    way.legs();
    given.marks();
    way.courses();
    int number = 0;
    for (Position place : cautions.keySet()) {
      caution(place, ++number);
    }
    svg.end();
    new SheetStrip(pen, worked).draw();
    double y = pen.bottom() + STRIP;
    for (String line : key) {
      y += LINE;
      svg.text(LEFT, y, line, "font-size", Svg.number(Ink.SMALL));
    }
  }

  private void caution(Position place, int number) {
    double[] point = pen.xy(place);
    double[] at = pen.places().beside(point[0], point[1], 14, 13);
    double x = at[0] + 7;
    pen.svg().line(point[0], point[1], x, at[1] + 8, "stroke", Ink.BLACK, "stroke-width", "0.7");
    pen.svg()
        .polygon(
            new double[] {x, at[1], x + 7.5, at[1] + 13, x - 7.5, at[1] + 13},
            "fill",
            "#fff",
            "stroke",
            Ink.BLACK,
            "stroke-width",
            "1.5");
    pen.svg()
        .text(
            x,
            at[1] + 11.3,
            Integer.toString(number),
            "font-size",
            "8.5",
            "font-weight",
            "700",
            "text-anchor",
            "middle");
  }
}
