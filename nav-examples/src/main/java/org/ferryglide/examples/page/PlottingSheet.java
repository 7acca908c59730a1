package org.ferryglide.examples.page;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.bearing.Bearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.magnetic.VariationReading;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.passage.Danger;
import org.ferryglide.nav.passage.Lane;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageLeg;
import org.ferryglide.nav.passage.PlannedHour;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.ErrorEllipse;
import org.ferryglide.nav.reckon.ErrorSource;
import org.ferryglide.nav.reckon.Spread;
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
  private static final double SURE = 0.95;

  /** Half the width of the 95 % ellipse in standard deviations: √(-2 ln 0.05). */
  private static final double SIGMAS = Math.sqrt(-2.0 * Math.log(1.0 - SURE));

  /** With more legs than these there is room for the magnetic course alone. */
  private static final int MOST_WITH_BOTH = 6;

  private static final int STEPS = 24;
  private static final double UNITS_PER_KNOT = 10.0;

  private final WorkedPassage worked;
  private final Passage passage;
  private final Labels labels;
  private final Printed printed;
  private final @Nullable TimedPlan plan;
  private final SheetFrame frame;
  private final List<String> key = new ArrayList<>();
  private final Svg svg;
  private final Places places;

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
      key.addAll(Wrapped.lines("! " + number + "  " + words, Ink.WIDTH - 16, Ink.SMALL));
    }
    key.addAll(
        Wrapped.lines(
            labels.say("sheet.key", "unit", printed.speedUnit()), Ink.WIDTH - 16, Ink.SMALL));
    double height = TOP + frame.height + STRIP + key.size() * LINE + 8;
    this.svg =
        Svg.of(
            "plotting-sheet",
            Ink.WIDTH,
            height,
            labels.say("plot.title", "passage", passage.name()),
            description(cautions));
    this.places =
        new Places(frame.left + 2, frame.top + 2, frame.left + frame.width - 2, bottom() - 2);
    draw(cautions);
  }

  static Svg of(WorkedPassage worked, Labels labels) {
    return new PlottingSheet(worked, labels).svg;
  }

  private double bottom() {
    return frame.top + frame.height;
  }

  /** Everything that is to lie within the frame. */
  private List<Position> all() {
    List<Position> all = new ArrayList<>();
    passage.wayPoints().forEach(place -> all.add(place.position()));
    passage.refuges().forEach(place -> all.add(place.position()));
    passage.dangers().ifPresent(list -> list.forEach(one -> all.addAll(one.outline())));
    if (plan != null) {
      plan.drifts().values().forEach(all::addAll);
    }
    return all;
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
      Double leg = note.figures().get("leg");
      if (leg != null && leg >= 1 && leg <= passage.legs().size()) {
        PassageLeg on = passage.legs().get((int) (leg - 1));
        cautions.merge(on.leg().midpoint(), printed.say(note), (a, b) -> a + "; " + b);
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
    svg.rectangle(0, 0, Ink.WIDTH, svg.height(), "fill", "#fff");
    svg.text(LEFT, 11, labels.say("plot.not"), "font-weight", "700", "font-size", "10");
    svg.text(LEFT, 23, labels.say("plot.blank"), "font-size", "10");
    svg.hatch("danger", 5, 45, Ink.DANGER);
    svg.hatch("lane", 7, -45, Ink.GREY);
    svg.rectangle(
        frame.left, frame.top, frame.width, frame.height, "fill", "none", "stroke", Ink.BLACK);
    String clip = svg.clip("frame", frame.left, frame.top, frame.width, frame.height);
    svg.group("clip-path", clip);
    graticule();
    passage.shores().ifPresent(lines -> lines.forEach(this::shore));
    passage.lanes().ifPresent(list -> list.forEach(this::lane));
    passage.dangers().ifPresent(list -> list.forEach(this::danger));
    TimedPlan solved = plan;
    if (solved != null) {
      solved.legs().forEach(leg -> swept(solved, leg));
      drift(solved);
      solved.legs().forEach(this::ellipse);
    }
    takeMarks();
    passage.legs().forEach(this::leg);
    if (solved != null) {
      solved.legs().forEach(this::hours);
    }
    marks();
    passage.legs().forEach(this::course);
    int number = 0;
    for (Position place : cautions.keySet()) {
      caution(place, ++number);
    }
    svg.end();
    strip();
    double y = bottom() + STRIP;
    for (String line : key) {
      y += LINE;
      svg.text(LEFT, y, line, "font-size", Svg.number(Ink.SMALL));
    }
  }

  private void graticule() {
    for (SheetFrame.Line line : frame.meridians()) {
      svg.line(line.at(), frame.top, line.at(), bottom(), "stroke", Ink.PALE);
      double half = Ink.width(line.words(), 8) / 2;
      Ink.words(svg, line.at(), bottom() - 3, line.words(), 8, "text-anchor", "middle");
      places.take(line.at() - half, bottom() - 12, 2 * half, 12);
    }
    for (SheetFrame.Line line : frame.parallels()) {
      svg.line(frame.left, line.at(), frame.left + frame.width, line.at(), "stroke", Ink.PALE);
      Ink.words(svg, frame.left + 3, line.at() - 2, line.words(), 8);
      places.take(frame.left, line.at() - 10, Ink.width(line.words(), 8) + 4, 10);
    }
  }

  private double[] line(List<Position> positions) {
    double[] points = new double[2 * positions.size()];
    for (int i = 0; i < positions.size(); i++) {
      points[2 * i] = frame.x(positions.get(i));
      points[2 * i + 1] = frame.y(positions.get(i));
    }
    return points;
  }

  private void shore(List<Position> shore) {
    svg.polyline(line(shore), "fill", "none", "stroke", Ink.BLACK, "stroke-width", "2.2");
  }

  private void lane(Lane lane) {
    double[] points = line(lane.middle());
    double wide = frame.units(lane.width().metres(), lane.middle().get(0).latitudeDegrees());
    for (int i = 0; i + 3 < points.length; i += 2) {
      double length = Math.hypot(points[i + 2] - points[i], points[i + 3] - points[i + 1]);
      double ox = -(points[i + 3] - points[i + 1]) / length * wide / 2;
      double oy = (points[i + 2] - points[i]) / length * wide / 2;
      svg.polygon(
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
          svg.fill("lane"),
          "stroke",
          Ink.GREY,
          "stroke-dasharray",
          "8 3");
    }
    name(points[0], points[1], lane.name(), Ink.BLACK, "400");
  }

  private void danger(Danger danger) {
    double[] points = line(danger.outline());
    double keep = frame.units(danger.keepOff().metres(), danger.outline().get(0).latitudeDegrees());
    String dash = danger.whenClosed().isPresent() ? "5 3" : "none";
    if (points.length == 2) {
      svg.circle(
          points[0],
          points[1],
          Math.max(3, keep),
          "fill",
          svg.fill("danger"),
          "stroke",
          Ink.DANGER,
          "stroke-dasharray",
          dash);
      svg.line(points[0] - 4, points[1], points[0] + 4, points[1], "stroke", Ink.BLACK);
      svg.line(points[0], points[1] - 4, points[0], points[1] + 4, "stroke", Ink.BLACK);
    } else {
      svg.polygon(
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
      svg.polygon(
          points,
          "fill",
          svg.fill("danger"),
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
    places.take(x - 4, y - 4, 8, 8);
    name(x, y, danger.name(), Ink.DANGER, "700");
  }

  /** The track with the width that holds it 95 times in a hundred; ashore it begins anew. */
  private void swept(TimedPlan of, PlannedLeg leg) {
    int index = of.legs().indexOf(leg);
    boolean anew = index == 0 || leg.leg().from().stop().isPresent();
    Covariance begin = anew ? launched(of) : of.legs().get(index - 1).spread();
    double[] band = new double[4 * (STEPS + 1)];
    double start = leg.steered().groundTrack().startSeconds();
    double span = leg.steered().groundTrack().endSeconds() - start;
    for (int i = 0; i <= STEPS; i++) {
      double share = (double) i / STEPS;
      Position here = at(leg, start + share * span);
      double[] ahead = xy(at(leg, start + Math.min(1.0, share + 0.02) * span));
      double[] behind = xy(at(leg, start + Math.max(0.0, share - 0.02) * span));
      double dx = ahead[0] - behind[0];
      double dy = ahead[1] - behind[1];
      double length = Math.max(1e-9, Math.hypot(dx, dy));
      TrueBearing along = TrueBearing.ofDegrees(Math.toDegrees(Math.atan2(dx, -dy)));
      double half =
          frame.units(
              SIGMAS * between(begin, leg.spread(), share).standardDeviationAcross(along).metres(),
              here.latitudeDegrees());
      double[] at = xy(here);
      band[2 * i] = at[0] - dy / length * half;
      band[2 * i + 1] = at[1] + dx / length * half;
      int back = 4 * (STEPS + 1) - 2 - 2 * i;
      band[back] = at[0] + dy / length * half;
      band[back + 1] = at[1] - dx / length * half;
    }
    svg.polygon(
        band,
        "fill",
        Ink.WATER,
        "fill-opacity",
        "0.12",
        "stroke",
        Ink.WATER,
        "stroke-width",
        "0.5");
  }

  /** Where the party starts, by its chart work or its fix. */
  private static Covariance launched(TimedPlan of) {
    Spread plotted = of.passage().errors().spread(ErrorSource.PLOTTED_POSITION);
    double variance =
        plotted.constant() * plotted.constant() + plotted.independent() * plotted.independent();
    return new Covariance(variance, variance, 0.0);
  }

  /** Variances grow at least as fast as in between. */
  private static Covariance between(Covariance from, Covariance to, double share) {
    return new Covariance(
        from.eastVariance() + share * (to.eastVariance() - from.eastVariance()),
        from.northVariance() + share * (to.northVariance() - from.northVariance()),
        from.eastNorthCovariance()
            + share * (to.eastNorthCovariance() - from.eastNorthCovariance()));
  }

  private static Position at(PlannedLeg leg, double seconds) {
    double[] out = new double[3];
    leg.steered().groundTrack().at(seconds, out, 0);
    return Position.ofDegrees(out[0], Math.IEEEremainder(out[1], 360.0));
  }

  private double[] xy(Position place) {
    return new double[] {frame.x(place), frame.y(place)};
  }

  private void drift(TimedPlan of) {
    List<Double> ends = new ArrayList<>();
    for (List<Position> path : of.drifts().values()) {
      double[] points = line(path);
      svg.polyline(
          points,
          "fill",
          "none",
          "stroke",
          Ink.BLACK,
          "stroke-width",
          "1.2",
          "stroke-dasharray",
          "1 2.5",
          "stroke-linecap",
          "round");
      for (int i = 2; i < points.length; i += 2) {
        svg.rectangle(points[i] - 1.3, points[i + 1] - 1.3, 2.6, 2.6, "fill", Ink.BLACK);
      }
      ends.add(points[points.length - 2]);
      ends.add(points[points.length - 1]);
    }
    svg.polyline(
        ends.stream().mapToDouble(Double::doubleValue).toArray(),
        "fill",
        "none",
        "stroke",
        Ink.GREY,
        "stroke-dasharray",
        "2 3");
  }

  private void ellipse(PlannedLeg leg) {
    ErrorEllipse ellipse = leg.spread().ellipse(SURE);
    Position end = leg.leg().to().position();
    svg.ellipse(
        frame.x(end),
        frame.y(end),
        frame.units(ellipse.semiMajorAxis().metres(), end.latitudeDegrees()),
        frame.units(ellipse.semiMinorAxis().metres(), end.latitudeDegrees()),
        ellipse.direction().degrees(),
        "fill",
        "none",
        "stroke",
        Ink.WATER,
        "stroke-dasharray",
        "4 2");
  }

  private void leg(PassageLeg leg) {
    double[] from = xy(leg.from().position());
    double[] to = xy(leg.to().position());
    Ink.arrow(svg, from[0], from[1], to[0], to[1], 2, 0.62, Ink.BLACK, 1.6);
    places.takeLine(from[0], from[1], to[0], to[1]);
  }

  /** The course as laid off, beside the leg: magnetic without a letter, true with T. */
  private void course(PassageLeg leg) {
    double[] from = xy(leg.from().position());
    double[] to = xy(leg.to().position());
    TrueBearing course = leg.leg().initialCourse();
    String magnetic =
        planned(leg).flatMap(one -> one.magnetic(course)).map(Bearing::threeDigits).orElse("");
    boolean crowded = passage.legs().size() > MOST_WITH_BOTH && !magnetic.isEmpty();
    String words = crowded ? magnetic : (magnetic + " " + course.threeDigits() + "T").trim();
    double wide = Ink.width(words, Ink.SMALL) + 13;
    double x = 0.5 * (from[0] + to[0]);
    double y = 0.5 * (from[1] + to[1]);
    double[] at = places.beside(x, y, wide, 12);
    svg.circle(at[0] + 6, at[1] + 6, 5.6, "fill", Ink.BLACK);
    svg.text(
        at[0] + 6,
        at[1] + 9.2,
        Integer.toString(leg.number()),
        "fill",
        "#fff",
        "font-weight",
        "700",
        "font-size",
        leg.number() > 9 ? "7.5" : "9",
        "text-anchor",
        "middle");
    Ink.words(svg, at[0] + 13, at[1] + 9.4, words, Ink.SMALL);
  }

  private Optional<PlannedLeg> planned(PassageLeg leg) {
    return plan == null
        ? Optional.empty()
        : plan.legs().stream().filter(one -> one.leg().equals(leg)).findFirst();
  }

  private void hours(PlannedLeg leg) {
    for (PlannedHour hour : leg.hours()) {
      double[] at = xy(hour.position());
      hour.stream().ifPresent(stream -> stream(at, stream));
      if (hour.span().from().getEpochSecond() % 3600 == 0) {
        double course = Math.toRadians(leg.course().degrees());
        double ox = Math.cos(course) * 4.5;
        double oy = Math.sin(course) * 4.5;
        svg.line(
            at[0] - ox,
            at[1] - oy,
            at[0] + ox,
            at[1] + oy,
            "stroke",
            Ink.BLACK,
            "stroke-width",
            "2");
        name(at[0], at[1], printed.late(hour.span().from()), Ink.BLACK, "700");
      }
    }
  }

  private void stream(double[] at, Velocity stream) {
    double knots = stream.rate().knots();
    double set = Math.toRadians(stream.set().degrees());
    double length = 8 + UNITS_PER_KNOT * knots;
    if (knots < 0.05) {
      return;
    }
    double x = at[0] + Math.sin(set) * length;
    double y = at[1] - Math.cos(set) * length;
    Ink.arrow(svg, at[0], at[1], x, y, 3, 1.0, Ink.WATER, 1.3);
    places.takeLine(at[0], at[1], x, y);
    String words = Printed.up(printed.units().speed(stream.rate().metresPerSecond()));
    double wide = Ink.width(words, 8);
    double[] room = places.beside(x, y, wide, 9);
    Ink.words(svg, room[0], room[1] + 8, words, 8, "fill", Ink.WATER);
  }

  private void takeMarks() {
    for (WayPoint place : passage.wayPoints()) {
      places.take(frame.x(place.position()) - 4, frame.y(place.position()) - 4, 8, 8);
    }
    for (WayPoint place : passage.refuges()) {
      places.take(frame.x(place.position()) - 5, frame.y(place.position()) - 5, 10, 10);
    }
  }

  private void marks() {
    List<String> named = new ArrayList<>();
    for (WayPoint place : passage.wayPoints()) {
      double[] at = xy(place.position());
      svg.circle(at[0], at[1], 3.4, "fill", "#fff", "stroke", Ink.BLACK, "stroke-width", "1.4");
      svg.circle(at[0], at[1], 1, "fill", Ink.BLACK);
      if (place.landing().isPresent()) {
        landing(at);
      }
      if (!named.contains(place.name())) {
        name(at[0], at[1], place.name(), Ink.BLACK, "700");
        named.add(place.name());
      }
    }
    for (WayPoint place : passage.refuges()) {
      double[] at = xy(place.position());
      landing(at);
      name(at[0], at[1], place.name(), Ink.BLACK, "400");
    }
  }

  /** A landing: a line with a bow drawn up on it. */
  private void landing(double[] at) {
    svg.polyline(
        new double[] {at[0] - 6, at[1] + 6, at[0] + 6, at[1] + 6},
        "fill",
        "none",
        "stroke",
        Ink.BLACK,
        "stroke-width",
        "2");
    svg.polygon(
        new double[] {at[0] - 4, at[1] + 5, at[0], at[1] + 1, at[0] + 4, at[1] + 5},
        "fill",
        Ink.BLACK);
  }

  private void name(double x, double y, String words, String colour, String weight) {
    double[] at = places.beside(x, y, Ink.width(words, Ink.SMALL), 11);
    Ink.words(svg, at[0], at[1] + 9, words, Ink.SMALL, "fill", colour, "font-weight", weight);
  }

  private void caution(Position place, int number) {
    double[] point = xy(place);
    double[] at = places.beside(point[0], point[1], 14, 13);
    double x = at[0] + 7;
    svg.line(point[0], point[1], x, at[1] + 8, "stroke", Ink.BLACK, "stroke-width", "0.7");
    svg.polygon(
        new double[] {x, at[1], x + 7.5, at[1] + 13, x - 7.5, at[1] + 13},
        "fill",
        "#fff",
        "stroke",
        Ink.BLACK,
        "stroke-width",
        "1.5");
    svg.text(
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

  private void strip() {
    double y = bottom();
    Ink.barScale(
        svg,
        LEFT + 6,
        y + 30,
        frame.units(1.0, frame.middleLatitude()),
        150,
        printed,
        labels.say("plot.bar", "latitude", latitude(frame.middleLatitude())));
    rose(300, y + 40);
  }

  private static String latitude(double degrees) {
    long minutes = Math.round(Math.abs(degrees) * 60.0);
    return minutes / 60 + "°" + Printed.two((int) (minutes % 60)) + "'" + (degrees < 0 ? "S" : "N");
  }

  private void rose(double x, double y) {
    svg.circle(x, y, 24, "fill", "none", "stroke", Ink.BLACK);
    for (int degrees = 0; degrees < 360; degrees += 10) {
      double sine = Math.sin(Math.toRadians(degrees));
      double cosine = Math.cos(Math.toRadians(degrees));
      double inner = degrees % 90 == 0 ? 17 : degrees % 30 == 0 ? 19 : 21.5;
      svg.line(
          x + inner * sine,
          y - inner * cosine,
          x + 24 * sine,
          y - 24 * cosine,
          "stroke",
          Ink.BLACK,
          "stroke-width",
          "0.8");
    }
    svg.line(x, y + 15, x, y - 15, "stroke", Ink.BLACK, "stroke-width", "1.2");
    svg.text(x, y - 26, "N", "font-size", "9", "font-weight", "700", "text-anchor", "middle");
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
                        Integer.toString(when.atZone(passage.zone()).getYear())))
            .orElse(labels.say("plot.no-variation"));
    reading.map(VariationReading::variation).ifPresent(one -> needle(x, y, one));
    svg.text(x - 30, y - 4, words, "font-size", "9", "text-anchor", "end");
    svg.text(x - 30, y + 8, labels.say("plot.rose"), "font-size", "9", "text-anchor", "end");
  }

  /** At the start; none where the source has no answer for the date. */
  private Optional<VariationReading> variation() {
    if (plan != null) {
      return plan.legs().get(0).variation();
    }
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
    Ink.arrow(svg, x - dx, y - dy, x + dx, y + dy, 1, 1.0, Ink.DANGER, 1.6);
  }
}
