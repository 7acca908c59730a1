package org.ferryglide.examples.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.bearing.Bearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageLeg;
import org.ferryglide.nav.passage.PlannedHour;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.ErrorEllipse;
import org.ferryglide.nav.reckon.ErrorSource;
import org.ferryglide.nav.reckon.Spread;
import org.jspecify.annotations.Nullable;

/** The way of the party: legs, hours and streams, how sure it is, where it would drift. */
final class SheetWay {
  /** A number farther than this from the middle of its leg is led to it by a thin line. */
  private static final double WITHOUT_LEADER = 14.0;

  private static final double SURE = 0.95;

  /** Half the width of the 95 % ellipse in standard deviations: √(-2 ln 0.05). */
  static final double SIGMAS = Math.sqrt(-2.0 * Math.log(1.0 - SURE));

  /** With more legs than these there is room for the magnetic course alone. */
  private static final int MOST_WITH_BOTH = 6;

  /** With more than these for no course and no names but the first and the last. */
  private static final int MOST_WITH_COURSES = 16;

  private static final int STEPS = 24;
  private static final double UNITS_PER_KNOT = 10.0;

  private final SheetPen pen;
  private final Passage passage;
  private final @Nullable TimedPlan plan;
  private final Printed printed;

  SheetWay(SheetPen pen, WorkedPassage worked) {
    this.pen = pen;
    this.passage = worked.passage();
    this.plan = worked.plan().solved().orElse(null);
    this.printed = worked.printed();
  }

  /** Whether there is room for the numbers of the legs alone, each beside its leg. */
  static boolean isCrowded(Passage passage) {
    return passage.legs().size() > MOST_WITH_COURSES;
  }

  /** What is not sure, under the legs. */
  void spread() {
    TimedPlan solved = plan;
    if (solved != null) {
      solved.legs().forEach(leg -> swept(solved, leg));
      drift(solved);
      List<PlannedLeg> legs = solved.legs();
      legs.subList(isCrowded(passage) ? legs.size() - 1 : 0, legs.size()).forEach(this::ellipse);
    }
  }

  /** The legs, and where the party is on them hour by hour. */
  void legs() {
    passage.legs().forEach(this::leg);
    if (plan != null) {
      plan.legs().forEach(this::hours);
    }
  }

  /** The courses, beside the legs where there is room. */
  void courses() {
    passage.legs().forEach(this::course);
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
      double[] ahead = pen.xy(at(leg, start + Math.min(1.0, share + 0.02) * span));
      double[] behind = pen.xy(at(leg, start + Math.max(0.0, share - 0.02) * span));
      double dx = ahead[0] - behind[0];
      double dy = ahead[1] - behind[1];
      double length = Math.max(1e-9, Math.hypot(dx, dy));
      TrueBearing along = TrueBearing.ofDegrees(Math.toDegrees(Math.atan2(dx, -dy)));
      double half =
          pen.frame()
              .units(
                  SIGMAS
                      * between(begin, leg.spread(), share).standardDeviationAcross(along).metres(),
                  here.latitudeDegrees());
      double[] at = pen.xy(here);
      band[2 * i] = at[0] - dy / length * half;
      band[2 * i + 1] = at[1] + dx / length * half;
      int back = 4 * (STEPS + 1) - 2 - 2 * i;
      band[back] = at[0] + dy / length * half;
      band[back + 1] = at[1] - dx / length * half;
    }
    pen.svg()
        .polygon(
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

  private void drift(TimedPlan of) {
    List<Double> ends = new ArrayList<>();
    for (List<Position> path : of.drifts().values()) {
      double[] points = pen.line(path);
      pen.svg()
          .polyline(
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
        pen.svg().rectangle(points[i] - 1.3, points[i + 1] - 1.3, 2.6, 2.6, "fill", Ink.BLACK);
      }
      ends.add(points[points.length - 2]);
      ends.add(points[points.length - 1]);
    }
    pen.svg()
        .polyline(
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
    pen.svg()
        .ellipse(
            pen.frame().x(end),
            pen.frame().y(end),
            pen.frame().units(ellipse.semiMajorAxis().metres(), end.latitudeDegrees()),
            pen.frame().units(ellipse.semiMinorAxis().metres(), end.latitudeDegrees()),
            ellipse.direction().degrees(),
            "fill",
            "none",
            "stroke",
            Ink.WATER,
            "stroke-dasharray",
            "4 2");
  }

  private void leg(PassageLeg leg) {
    double[] from = pen.xy(leg.from().position());
    double[] to = pen.xy(leg.to().position());
    Ink.arrow(pen.svg(), from[0], from[1], to[0], to[1], 2, 0.62, Ink.BLACK, 1.6);
    pen.places().takeLine(from[0], from[1], to[0], to[1]);
  }

  /** The course as laid off, beside the leg: magnetic without a letter, true with T. */
  private void course(PassageLeg leg) {
    double[] from = pen.xy(leg.from().position());
    double[] to = pen.xy(leg.to().position());
    TrueBearing course = leg.leg().initialCourse();
    String magnetic =
        planned(leg).flatMap(one -> one.magnetic(course)).map(Bearing::threeDigits).orElse("");
    boolean full = passage.legs().size() > MOST_WITH_BOTH && !magnetic.isEmpty();
    String both = full ? magnetic : (magnetic + " " + course.threeDigits() + "T").trim();
    String words = isCrowded(passage) ? "" : both;
    double wide = Ink.width(words, Ink.SMALL) + 13;
    double x = 0.5 * (from[0] + to[0]);
    double y = 0.5 * (from[1] + to[1]);
    double[] at = pen.places().beside(x, y, wide, 12);
    double nearX = Math.max(at[0], Math.min(at[0] + wide, x));
    double nearY = Math.max(at[1], Math.min(at[1] + 12, y));
    if (Math.hypot(nearX - x, nearY - y) > WITHOUT_LEADER) {
      pen.svg().line(x, y, at[0] + 6, at[1] + 6, "stroke", Ink.BLACK, "stroke-width", "0.6");
    }
    pen.svg().circle(at[0] + 6, at[1] + 6, 5.6, "fill", Ink.BLACK);
    pen.svg()
        .text(
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
    if (!words.isEmpty()) {
      Ink.words(pen.svg(), at[0] + 13, at[1] + 9.4, words, Ink.SMALL);
    }
  }

  private Optional<PlannedLeg> planned(PassageLeg leg) {
    return plan == null
        ? Optional.empty()
        : plan.legs().stream().filter(one -> one.leg().equals(leg)).findFirst();
  }

  private void hours(PlannedLeg leg) {
    for (PlannedHour hour : leg.hours()) {
      double[] at = pen.xy(hour.position());
      boolean full = hour.span().from().getEpochSecond() % 3600 == 0;
      if (full || !isCrowded(passage)) {
        hour.stream().ifPresent(stream -> stream(at, stream));
      }
      if (full) {
        double course = Math.toRadians(leg.course().degrees());
        double ox = Math.cos(course) * 4.5;
        double oy = Math.sin(course) * 4.5;
        pen.svg()
            .line(
                at[0] - ox,
                at[1] - oy,
                at[0] + ox,
                at[1] + oy,
                "stroke",
                Ink.BLACK,
                "stroke-width",
                "2");
        pen.name(at[0], at[1], printed.late(hour.span().from()), Ink.BLACK, "700");
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
    Ink.arrow(pen.svg(), at[0], at[1], x, y, 3, 1.0, Ink.WATER, 1.3);
    pen.places().takeLine(at[0], at[1], x, y);
    String words = Printed.up(printed.units().speed(stream.rate().metresPerSecond()));
    double wide = Ink.width(words, 8);
    double[] room = pen.places().beside(x, y, wide, 9);
    Ink.words(pen.svg(), room[0], room[1] + 8, words, 8, "fill", Ink.WATER);
  }
}
