package org.ferryglide.nav.passage;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.Window;

/**
 * What stands on the further sides of a card beside its legs: where the party is, where it drifts
 * to, the way home.
 */
final class CardSections {
  /** A twentieth of a cable. */
  private static final double STAYS_METRES = 0.05 * Distance.METRES_PER_CABLE;

  private final TimedPlan plan;
  private final CardText text;
  private final int marks;
  private final List<String> lines = new ArrayList<>();

  CardSections(DeckCard card) {
    this.plan = card.plan();
    this.text = card.text();
    this.marks = card.marks();
  }

  /** The departure, every full hour under way and the arrival. */
  private List<Instant> hours() {
    List<Instant> hours = new ArrayList<>();
    Instant last = Instant.MIN;
    for (PlannedLeg leg : plan.legs()) {
      for (PlannedHour hour : leg.hours()) {
        if (hour.span().from().isAfter(last)) {
          last = hour.span().from();
          hours.add(last);
        }
      }
    }
    hours.add(plan.arrival());
    return hours;
  }

  /** Where the party is, as it is spoken, with latitude and longitude beside it. */
  List<String> radio() {
    for (Instant time : hours()) {
      lines.add(
          text.say(
              "at",
              "time",
              text.late(time),
              "place",
              plan.route().at(time).text(AngleForm.DEGREES_MINUTES, 1)));
      lines.add("  " + text.say(plan.radioPosition(time)));
    }
    return lines;
  }

  /** Where the party drifts to, from every hour and from the strongest stream of each leg. */
  List<String> drift() {
    for (Map.Entry<Instant, List<Position>> one : plan.drifts().entrySet()) {
      List<Position> places = one.getValue();
      String[] away = new String[3];
      for (int i = 1; i <= 3; i++) {
        away[i - 1] =
            i < places.size() ? away(places.get(0), places.get(i)) : CardText.BLANK_FIGURE;
      }
      lines.add(
          text.say(
              "drift-from",
              "time",
              text.late(one.getKey()),
              "first",
              away[0],
              "second",
              away[1],
              "third",
              away[2]));
    }
    return lines;
  }

  private String away(Position from, Position to) {
    GeodesicLeg leg = GeodesicLeg.between(from, to);
    return leg.length().metres() < STAYS_METRES
        ? text.say("stays")
        : text.say(
            "drifts",
            "direction",
            leg.initialCourse().threeDigits() + "T",
            "distance",
            text.distance(leg.length()));
  }

  /** The landings in reach at a time, ahead, back and beside the way. */
  List<String> landings(Instant time) {
    Position here = plan.route().at(time);
    for (LandingInReach landing : LandingInReach.from(plan, time)) {
      String name = landing.place().name();
      if (!landing.isUsable() || !landing.heading().isPresent()) {
        String what = landing.ruledOutBy().map(verdict -> text.about(verdict.note())).orElse("");
        lines.add(text.say("reach-no", "place", name, "what", what));
        continue;
      }
      if (landing.isAt(here)) {
        lines.add(text.say("reach-here", "place", name));
        continue;
      }
      lines.add(
          text.say(
              "reach",
              "place",
              name,
              "heading",
              steer(time, landing.heading().get()),
              "time",
              landing.arrival().map(text::late).orElse(CardText.BLANK_TIME),
              "slower",
              landing.slowerArrival().map(text::late).orElse(CardText.BLANK_TIME)));
    }
    return lines;
  }

  /** A heading by the compass, at the leg that is paddled at a time. */
  private String steer(Instant time, TrueBearing heading) {
    PlannedLeg now = plan.legs().get(0);
    for (PlannedLeg leg : plan.legs()) {
      now = leg.departure().isAfter(time) ? now : leg;
    }
    return steer(now, heading);
  }

  private String steer(PlannedLeg leg, TrueBearing heading) {
    String steer = AfloatSides.heading(leg, heading, marks);
    return steer.equals(CardText.BLANK_DIRECTION) ? heading.threeDigits() + "T" : steer;
  }

  /**
   * For every way point: until when on, the spans home with headings of their own, what bars it.
   */
  List<String> wayHome(WayHome wayHome) {
    List<TurnTimes> turns = wayHome.turns();
    for (int i = 0; i < turns.size(); i++) {
      TurnTimes turn = turns.get(i);
      String place = turn.wayPoint().name();
      lines.add(
          turn.notLaterThan()
              .map(time -> text.say("on-until", "place", place, "time", text.early(time)))
              .orElseGet(() -> text.say("not-on", "place", place, "what", notOn(turn))));
      if (i > 0) {
        for (Window window : turn.home()) {
          home(i, CardText.later(window.from()));
          home(i, CardText.earlier(window.until()));
        }
        turn.homeBarred().forEach(this::barred);
      }
    }
    return lines;
  }

  private String notOn(TurnTimes turn) {
    return turn.goingOnBarred().values().stream().findFirst().map(text::about).orElse("");
  }

  private void home(int wayPoint, Instant leaving) {
    Passage home = PartPassages.home(plan.passage(), wayPoint);
    Optional<TimedPlan> solved = TimedPlan.of(home, leaving).solved();
    if (!solved.isPresent()) {
      return;
    }
    List<String> headings = new ArrayList<>();
    solved.get().legs().forEach(leg -> headings.add(steer(leg, leg.heading())));
    lines.add(
        "  "
            + text.say(
                "home",
                "time",
                text.clock(leaving),
                "headings",
                String.join(" ", headings),
                "arrival",
                text.late(solved.get().arrival())));
  }

  private void barred(TimeSpan span, Note why) {
    lines.add(
        "  "
            + text.say(
                "no-way-home",
                "from",
                text.early(span.from()),
                "until",
                text.late(span.until()),
                "what",
                text.about(why)));
  }

  /** The launch interval in words, cut to whole minutes inward. */
  static String words(CardText text, TimedPlan plan, LaunchInterval interval) {
    String what = text.about(interval.failsLater());
    return interval
        .span()
        .map(
            span ->
                text.say(
                    "interval",
                    "from",
                    text.late(span.from().minus(plan.passage().party().launching())),
                    "until",
                    text.early(span.until().minus(plan.passage().party().launching())),
                    "what",
                    what))
        .orElseGet(() -> text.say("no-interval", "what", what));
  }
}
