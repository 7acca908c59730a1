package org.ferryglide.nav.passage;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.Window;

/** What stands on the further sides of a card beside its legs: where, whither, how home. */
final class CardSections {
  private static final double METRES_PER_CABLE = 185.2;

  /** Nearer than this a landing has no heading. */
  private static final double HERE_METRES = 50.0;

  private final TimedPlan plan;
  private final CardText text;
  private final int marks;
  private final List<String> lines = new ArrayList<>();

  CardSections(TimedPlan plan, int marks) {
    this.plan = plan;
    this.text = new CardText(plan);
    this.marks = marks;
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
          text.clock(CardText.later(time))
              + " "
              + plan.route().at(time).text(AngleForm.DEGREES_MINUTES, 1));
      lines.add("  " + plan.radioPosition(time));
    }
    return lines;
  }

  /** Whither the party drifts, from every hour and from the strongest stream of each leg. */
  List<String> drift() {
    for (Map.Entry<Instant, List<Position>> one : plan.drifts().entrySet()) {
      List<Position> places = one.getValue();
      StringBuilder line = new StringBuilder(text.clock(CardText.later(one.getKey())));
      for (int i = 1; i < 4; i++) {
        line.append(i == 1 ? " " : CardLabels.COMMA);
        line.append(i < places.size() ? away(places.get(0), places.get(i)) : CardLabels.BLANK_RATE);
      }
      lines.add(line.toString());
    }
    return lines;
  }

  private static String away(Position from, Position to) {
    GeodesicLeg leg = GeodesicLeg.between(from, to);
    double cables = leg.length().metres() / METRES_PER_CABLE;
    return cables < 0.05
        ? CardLabels.NO_DRIFT
        : leg.initialCourse().threeDigits() + "T " + CardText.up(cables / 10.0) + " NM";
  }

  /** The landings in reach at a time, ahead, back and beside the way. */
  List<String> landings(Instant time) {
    for (LandingInReach landing : LandingInReach.from(plan, time)) {
      String name = landing.place().name();
      Position here = plan.route().at(time);
      if (!landing.isUsable() || !landing.heading().isPresent()) {
        lines.add(
            name + CardLabels.NOT_USABLE + landing.against().map(v -> what(v.reason())).orElse(""));
        continue;
      }
      if (GeodesicLeg.between(here, landing.place().position()).length().metres() < HERE_METRES) {
        lines.add(name + CardLabels.IS_HERE);
        continue;
      }
      String there = landing.arrival().map(t -> text.clock(CardText.later(t))).orElse("");
      String slower = landing.slowerArrival().map(t -> text.clock(CardText.later(t))).orElse("");
      lines.add(
          name
              + CardLabels.STEER
              + steer(time, landing.heading().get())
              + CardLabels.THERE
              + there
              + CardLabels.SLOWER
              + slower);
    }
    return lines;
  }

  /** What a finding is about, without its figures. */
  private static String what(String finding) {
    int colon = finding.indexOf(": ");
    return colon < 0 ? finding : finding.substring(0, colon);
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
    return steer.equals(CardLabels.BLANK_DIRECTION) ? heading.threeDigits() + "T" : steer;
  }

  /**
   * For every way point: until when on, the spans home with headings of their own, what bars it.
   */
  List<String> wayHome(WayHome wayHome) {
    List<TurnTimes> turns = wayHome.turns();
    for (int i = 0; i < turns.size(); i++) {
      TurnTimes turn = turns.get(i);
      lines.add(
          turn.wayPoint().name()
              + CardLabels.COMMA
              + turn.notLaterThan()
                  .map(time -> CardLabels.ON_UNTIL + text.clock(CardText.earlier(time)))
                  .orElse(
                      CardLabels.NOT_ON
                          + turn.notOn().values().stream()
                              .findFirst()
                              .map(CardSections::what)
                              .orElse("")));
      if (i > 0) {
        for (Window window : turn.home()) {
          home(i, CardText.later(window.from()));
          home(i, CardText.earlier(window.until()));
        }
        turn.barred().forEach(this::barred);
      }
    }
    return lines;
  }

  private void home(int wayPoint, Instant leaving) {
    Passage home = PartPassages.home(plan.passage(), wayPoint);
    Optional<TimedPlan> solved = TimedPlan.of(home, leaving).solved();
    if (!solved.isPresent()) {
      return;
    }
    StringBuilder line = new StringBuilder(CardLabels.HOME_AT + text.clock(leaving));
    line.append(CardLabels.STEER);
    for (PlannedLeg leg : solved.get().legs()) {
      line.append(steer(leg, leg.heading())).append(' ');
    }
    line.append(CardLabels.THERE.substring(2))
        .append(text.clock(CardText.later(solved.get().arrival())));
    lines.add(line.toString());
  }

  private void barred(TimeSpan span, String why) {
    lines.add(
        "  "
            + CardLabels.NO_WAY_HOME
            + text.clock(CardText.earlier(span.from()))
            + "-"
            + text.clock(CardText.later(span.until()))
            + ": "
            + what(why));
  }

  /** The launch interval in words, cut to whole minutes inward. */
  static String words(TimedPlan plan, LaunchInterval interval) {
    CardText text = new CardText(plan);
    return interval
        .span()
        .map(
            span ->
                text.clock(CardText.later(span.from().minus(plan.passage().party().launching())))
                    + CardLabels.TO
                    + text.clock(
                        CardText.earlier(span.until().minus(plan.passage().party().launching())))
                    + CardLabels.ENDS_WITH
                    + what(interval.endsAfter()))
        .orElseGet(() -> CardLabels.NO_INTERVAL + what(interval.endsAfter()));
  }
}
