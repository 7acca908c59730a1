package org.ferryglide.examples.page;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.examples.svg.Markup;
import org.ferryglide.nav.bearing.Bearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.passage.PlannedHour;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.TurnTimes;
import org.ferryglide.nav.passage.WayHome;
import org.ferryglide.nav.water.Window;

/** What the page tells of the legs: all of them at a glance, then one after the other. */
final class LegParts {
  /** How much is told of each leg. */
  enum Detail {
    ALL,
    WITHOUT_VECTORS,
    WITHOUT_HOURS
  }

  /** A track held strays by the rounding of its arithmetic, which is no tenth of a mile. */
  private static final double ON_THE_LINE_METRES = 1e-3;

  private static final double SLACK_KNOTS = 0.05;

  private final WorkedPassage worked;
  private final Labels labels;
  private final Printed printed;

  LegParts(WorkedPassage worked, Labels labels) {
    this.worked = worked;
    this.labels = labels;
    this.printed = worked.printed();
  }

  void notPossible(Markup body) {
    body.open("section").element("h2", labels.say("page.not-possible"));
    body.element(
        "p", worked.plan().why().map(why -> printed.say(why.note())).orElse(""), "class", "stop");
    worked
        .day()
        .windows()
        .first()
        .ifPresent(
            window ->
                body.element(
                    "p",
                    labels.say(
                        "page.next", "window", DeparturePicture.window(printed, labels, window))));
    body.close().line();
  }

  void summary(Markup body, TimedPlan plan) {
    body.open("section").element("h2", labels.say("page.glance")).line();
    List<List<String>> rows = new ArrayList<>();
    for (PlannedLeg leg : plan.legs()) {
      rows.add(
          List.of(
              Integer.toString(leg.leg().number()),
              leg.leg().to().name(),
              steer(leg, leg.heading()),
              Long.toString(Printed.minutes(leg.departure(), leg.arrival())),
              printed.late(leg.arrival()),
              notLater(leg)));
    }
    Table.write(
        body,
        labels.say("glance.caption", "north", north(plan.legs().get(0))),
        List.of(
            labels.say("glance.leg"),
            labels.say("glance.to"),
            labels.say("glance.steer"),
            labels.say("glance.minutes"),
            labels.say("glance.eta"),
            labels.say("glance.not-later")),
        rows);
    body.open("dl").line();
    row(body, labels.say("first-afloat"), printed.early(plan.launch()));
    row(body, labels.say("under-way"), printed.late(plan.departure()));
    row(body, labels.say("last-ashore"), printed.late(plan.landed()));
    row(body, labels.say("glance.length"), printed.distanceUp(plan.length()));
    row(
        body,
        labels.say("glance.party"),
        labels.say(
            "glance.speed",
            "speed",
            printed.speedUp(worked.passage().party().craft().speed()),
            "slower",
            printed.speedUp(worked.passage().party().slowerSpeed()),
            "rest",
            Long.toString(worked.passage().party().craft().restEachHour().toMinutes())));
    row(
        body,
        labels.say("glance.high-water"),
        worked
            .highWater()
            .map(
                water ->
                    labels.say(
                        "glance.water",
                        "time",
                        printed.early(water.time()),
                        "height",
                        printed.heightDown(water.heightMetres()),
                        "port",
                        water.port(),
                        "share",
                        water.share().isPresent()
                            ? Long.toString(Math.round(100 * water.share().getAsDouble()))
                            : "__"))
            .orElse(labels.say("blank")));
    row(body, labels.say("glance.interval"), interval(plan));
    body.close().close().line();
  }

  private String interval(TimedPlan plan) {
    return worked
        .launchInterval()
        .map(
            one ->
                one.span()
                    .map(
                        span ->
                            labels.say(
                                "glance.span",
                                "from",
                                printed.late(span.from().minus(plan.passage().party().launching())),
                                "until",
                                printed.early(
                                    span.until().minus(plan.passage().party().launching())),
                                "before",
                                printed.say(one.failsEarlier()),
                                "after",
                                printed.say(one.failsLater())))
                    .orElse(labels.say("glance.no-span", "why", printed.say(one.failsLater()))))
        .orElse(labels.say("blank"));
  }

  /** Until when the leg may be begun: as the card has it, never a zero. */
  private String notLater(PlannedLeg leg) {
    Optional<WayHome> home = worked.wayHome();
    if (home.isEmpty() || home.get().turns().size() < leg.leg().number()) {
      return "__:__";
    }
    TurnTimes turn = home.get().turns().get(leg.leg().number() - 1);
    return turn.notLaterThan().map(printed::early).orElse(labels.say("glance.not-on"));
  }

  static void row(Markup body, String name, String words) {
    body.element("dt", name).element("dd", words).line();
  }

  private String north(PlannedLeg leg) {
    return labels.say(
        leg.compass(leg.heading()).isPresent()
            ? "north.compass"
            : leg.magnetic(leg.heading()).isPresent() ? "north.magnetic" : "north.true");
  }

  /** A heading by the compass on deck, else by magnetic north, else true with T. */
  static String steer(PlannedLeg leg, TrueBearing heading) {
    Optional<String> compass = leg.compass(heading).map(Bearing::threeDigits);
    return compass.orElse(Printed.direction(leg, heading));
  }

  void legs(Markup body, TimedPlan plan, Detail detail) {
    body.open("section").element("h2", labels.say("page.legs")).line();
    if (detail != Detail.ALL) {
      String left = detail == Detail.WITHOUT_HOURS ? "legs.without-hours" : "legs.without-vectors";
      body.element("p", labels.say(left)).line();
    }
    for (PlannedLeg leg : plan.legs()) {
      body.open("section", "class", "leg");
      body.element(
              "h3",
              labels.say(
                  "leg.title",
                  "number",
                  Integer.toString(leg.leg().number()),
                  "from",
                  leg.leg().from().name(),
                  "to",
                  leg.leg().to().name()))
          .line();
      leg(body, leg);
      if (detail == Detail.ALL) {
        TrianglePicture.of(worked, plan, leg)
            .ifPresentOrElse(
                picture -> PassagePage.figure(body, picture),
                () -> body.element("p", labels.say("leg.no-stream")).line());
      }
      if (detail != Detail.WITHOUT_HOURS && !leg.hours().isEmpty()) {
        hours(body, leg);
      }
      body.close().line();
    }
    body.close().line();
  }

  private void leg(Markup body, PlannedLeg leg) {
    body.open("dl").line();
    row(body, labels.say("leg.steer"), norths(leg, leg.heading(), true));
    row(body, labels.say("leg.course"), norths(leg, leg.course(), false));
    row(body, labels.say("leg.astern"), norths(leg, leg.backBearing(), false));
    row(
        body,
        labels.say("leg.distance"),
        labels.say(
            "leg.made",
            "distance",
            printed.distanceNear(leg.leg().leg().length()),
            "minutes",
            Long.toString(Printed.minutes(leg.departure(), leg.arrival())),
            "speed",
            printed.speedDown(leg.speedMadeGood())));
    row(
        body,
        labels.say("leg.reserve"),
        leg.reserve().map(printed::speedDown).orElse(labels.say("blank")));
    row(
        body,
        labels.say("leg.eta"),
        labels.say(
            "leg.times",
            "likely",
            printed.late(leg.arrival()),
            "earliest",
            printed.early(leg.earliest()),
            "latest",
            printed.late(leg.latest())));
    leg.leg()
        .from()
        .stop()
        .ifPresent(stop -> row(body, labels.say("leg.before"), printed.say(stop.about())));
    Distance off = leg.greatestCrossTrack();
    row(
        body,
        labels.say("leg.off-line"),
        off.magnitude().metres() < ON_THE_LINE_METRES
            ? labels.say("leg.on-line")
            : labels.say(
                off.metres() < 0 ? "leg.left" : "leg.right",
                "distance",
                printed.distanceUp(off.magnitude())));
    String seen = leg.leg().to().toSee();
    row(body, labels.say("leg.to-see"), seen.isEmpty() ? labels.say("blank") : seen);
    row(
        body,
        labels.say("leg.sighting"),
        leg.sighting()
            .map(
                one ->
                    labels.say(
                        "leg.chance",
                        "share",
                        Long.toString((long) Math.floor(100 * one.chance())),
                        "distance",
                        printed.distanceDown(one.reach())))
            .orElse(labels.say("leg.no-chance")));
    levels(leg).ifPresent(words -> row(body, labels.say("leg.level"), words));
    row(
        body,
        labels.say("leg.how"),
        labels.say(
            leg.steered().headings().size() <= 1 ? "leg.constant-heading" : "leg.new-headings"));
    body.close().line();
  }

  /** The heights of tide on arrival, rounded down. */
  private Optional<String> levels(PlannedLeg leg) {
    StringBuilder levels = new StringBuilder();
    worked
        .passage()
        .levels()
        .forEach(
            (port, level) -> {
              Optional<Distance> height = level.heightAt(leg.arrival());
              levels.append(levels.isEmpty() ? "" : "; ").append(port).append(' ');
              levels.append(
                  height
                      .map(it -> printed.heightDown(it.metres()))
                      .orElse("__ " + printed.heightUnit()));
            });
    return levels.isEmpty() ? Optional.empty() : Optional.of(levels.toString());
  }

  private String norths(PlannedLeg leg, TrueBearing direction, boolean isHeading) {
    StringBuilder words = new StringBuilder();
    if (isHeading) {
      leg.compass(direction)
          .ifPresent(one -> words.append(labels.say("by.compass", "degrees", one.threeDigits())));
    }
    leg.magnetic(direction)
        .ifPresent(
            one ->
                words
                    .append(words.isEmpty() ? "" : ", ")
                    .append(labels.say("by.magnetic", "degrees", one.threeDigits())));
    words.append(words.isEmpty() ? "" : ", ");
    return words.append(labels.say("by.true", "degrees", direction.threeDigits())).toString();
  }

  private void hours(Markup body, PlannedLeg leg) {
    List<List<String>> rows = new ArrayList<>();
    for (PlannedHour hour : leg.hours()) {
      Instant from = hour.span().from();
      rows.add(
          List.of(
              printed.span(printed.late(from), printed.late(hour.span().until())),
              Printed.place(hour.position()),
              steer(leg, hour.heading()),
              stream(leg, hour.stream()),
              printed.speedDown(hour.speedMadeGood())));
    }
    Table.write(
        body,
        labels.say("hours.caption", "number", Integer.toString(leg.leg().number())),
        List.of(
            labels.say("hours.time"),
            labels.say("hours.place"),
            labels.say("hours.steer"),
            labels.say("hours.stream"),
            labels.say("hours.made")),
        rows);
  }

  /** A stream of a leg; a blank where it is not known, slack where it prints as no knots. */
  String stream(PlannedLeg leg, Optional<Velocity> stream) {
    if (stream.isEmpty()) {
      return labels.say("hours.unknown", "unit", printed.speedUnit());
    }
    double knots = stream.get().rate().knots();
    return knots < SLACK_KNOTS
        ? labels.say("hours.slack")
        : labels.say(
            "hours.to",
            "set",
            Printed.direction(leg, stream.get().set()),
            "speed",
            printed.speedUp(stream.get().rate()));
  }

  static String spans(Printed printed, List<Window> windows) {
    StringBuilder words = new StringBuilder();
    for (Window window : windows) {
      words
          .append(words.isEmpty() ? "" : ", ")
          .append(printed.span(printed.late(window.from()), printed.early(window.until())));
    }
    return words.toString();
  }
}
