package org.ferryglide.examples.page;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.examples.svg.Markup;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
import org.ferryglide.nav.passage.LandingInReach;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.TurnTimes;
import org.ferryglide.nav.passage.Variant;
import org.ferryglide.nav.passage.WhenToGo;
import org.ferryglide.nav.timing.Departure;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.Window;

/** What the page tells of the day: what to look at first, when to go and turn, what if, checks. */
final class DayParts {
  private static final int MOST_REASONS = 8;

  private final WorkedPassage worked;
  private final Labels labels;
  private final Printed printed;

  DayParts(WorkedPassage worked, Labels labels) {
    this.worked = worked;
    this.labels = labels;
    this.printed = worked.printed();
  }

  void first(Markup body, TimedPlan plan) {
    List<Note> notes =
        plan.notes().stream().filter(note -> note.severity() != Severity.INFORMATION).toList();
    body.open("section").element("h2", labels.say("page.first")).open("ul", "class", "first");
    boolean isAllWithin = Caution.findings(body, plan.verdicts(), printed);
    said(notes)
        .forEach(
            (words, note) -> {
              body.open("li").element("strong", severity(note)).text(" " + words);
              body.close().line();
            });
    if (isAllWithin && notes.isEmpty()) {
      body.element("li", labels.say("page.nothing-first")).line();
    }
    body.close().close().line();
  }

  /** By their words, each once, whatever they are about. */
  private Map<String, Note> said(List<Note> notes) {
    Map<String, Note> said = new LinkedHashMap<>();
    notes.forEach(note -> said.putIfAbsent(printed.say(note), note));
    return said;
  }

  private String severity(Note note) {
    return labels.say(
        switch (note.severity()) {
          case WARNING -> "severity.warning";
          case CAUTION -> "severity.caution";
          default -> "severity.information";
        });
  }

  void departures(Markup body) {
    WhenToGo when = worked.day();
    body.open("ul").line();
    for (Window window : when.windows()) {
      String span = DeparturePicture.window(printed, labels, window);
      String warned =
          String.join(", ", when.warnings(window).keySet().stream().map(printed::say).toList());
      body.element(
              "li",
              warned.isEmpty()
                  ? span
                  : labels.say("departures.warned", "window", span, "checks", warned))
          .line();
    }
    if (when.windows().items().isEmpty()) {
      body.element("li", labels.say("departures.none")).line();
    }
    when.leastTime().ifPresent(one -> best(body, "departures.least-time", one));
    when.mostMargin().ifPresent(one -> best(body, "departures.most-margin", one));
    when.leastBad().ifPresent(one -> best(body, "departures.least-bad", one));
    body.close().line();
    Map<Note, Integer> why = when.whyNot();
    if (!why.isEmpty()) {
      List<List<String>> rows = new ArrayList<>();
      why.entrySet().stream()
          .limit(MOST_REASONS)
          .forEach(
              one ->
                  rows.add(List.of(printed.say(one.getKey()), Integer.toString(one.getValue()))));
      Table.write(
          body,
          labels.say("why.caption", "count", Integer.toString(when.choices().size())),
          List.of(labels.say("why.check"), labels.say("why.departures")),
          rows);
    }
  }

  private void best(Markup body, String key, Departure departure) {
    body.element(
            "li",
            labels.say(
                key,
                "time",
                printed.late(departure.time()),
                "arrival",
                departure
                    .outcome()
                    .solved()
                    .map(route -> printed.late(route.arrival()))
                    .orElse("__:__"),
                "worst",
                worst(WhenToGo.worst(departure))))
        .line();
  }

  /** What is worst; where even that is within, nothing of it is worth a line. */
  private String worst(Optional<Verdict> worst) {
    return worst
        .map(
            one ->
                one.answer() == Verdict.Answer.WITHIN
                    ? labels.say("what-if.all-hold")
                    : printed.answer(one) + ": " + printed.say(one))
        .orElse(labels.say("what-if.not-checked"));
  }

  void turning(Markup body) {
    body.open("section").element("h2", labels.say("page.turning")).line();
    if (worked.wayHome().isEmpty()) {
      body.element("p", labels.say("turning.not-worked")).close().line();
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (TurnTimes turn : worked.wayHome().get().turns()) {
      StringBuilder barred = new StringBuilder();
      turn.homeBarred()
          .forEach(
              (span, why) ->
                  barred
                      .append(barred.isEmpty() ? "" : "; ")
                      .append(printed.span(printed.early(span.from()), printed.late(span.until())))
                      .append(' ')
                      .append(printed.about(why)));
      boolean start = rows.isEmpty();
      String home = LegParts.spans(printed, turn.home().items());
      String on =
          turn.notLaterThan()
              .map(printed::early)
              .orElseGet(
                  () ->
                      labels.say("glance.not-on")
                          + turn.goingOnBarred().values().stream()
                              .findFirst()
                              .map(why -> ": " + printed.about(why))
                              .orElse(""));
      rows.add(
          List.of(
              turn.wayPoint().name(),
              on,
              start
                  ? labels.say("turning.is-home")
                  : home.isEmpty() ? labels.say("turning.none") : home,
              barred.toString()));
    }
    Table.write(
        body,
        labels.say(
            "turning.caption", "minutes", Long.toString(WorkedPassage.LOOK_HOME.toMinutes())),
        List.of(
            labels.say("turning.place"),
            labels.say("turning.on"),
            labels.say("turning.home"),
            labels.say("turning.barred")),
        rows);
    body.close().line();
  }

  void landings(Markup body, TimedPlan plan) {
    body.open("section").element("h2", labels.say("page.landings")).line();
    List<List<String>> rows = new ArrayList<>();
    worked
        .landings()
        .forEach((time, all) -> all.forEach(one -> rows.add(landing(plan, time, one))));
    if (rows.isEmpty()) {
      body.element("p", labels.say("landings.none"));
    } else {
      Table.write(
          body,
          labels.say("landings.caption"),
          List.of(
              labels.say("landings.from"),
              labels.say("landings.place"),
              labels.say("landings.steer"),
              labels.say("landings.there"),
              labels.say("landings.slower")),
          rows);
    }
    body.close().line();
  }

  private List<String> landing(TimedPlan plan, Instant time, LandingInReach one) {
    PlannedLeg leg = plan.legs().get(0);
    for (PlannedLeg next : plan.legs()) {
      leg = next.departure().isAfter(time) ? leg : next;
    }
    PlannedLeg now = leg;
    if (!one.isUsable()) {
      return List.of(
          printed.late(time),
          one.place().name(),
          labels.say("landings.no"),
          one.ruledOutBy().map(verdict -> printed.about(verdict.note())).orElse(""),
          "");
    }
    if (one.isAt(plan.route().at(time))) {
      return List.of(printed.late(time), one.place().name(), labels.say("landings.here"), "", "");
    }
    return List.of(
        printed.late(time),
        one.place().name(),
        one.heading().map(heading -> LegParts.steer(now, heading)).orElse("___°"),
        one.arrival().map(printed::late).orElse("__:__"),
        one.slowerArrival().map(printed::late).orElse("__:__"));
  }

  void whatIf(Markup body) {
    body.open("section").element("h2", labels.say("page.what-if")).line();
    List<List<String>> rows = new ArrayList<>();
    for (Variant variant : worked.variants()) {
      rows.add(
          variant
              .outcome()
              .match(
                  plan ->
                      List.of(
                          printed.say(variant.about()),
                          printed.late(plan.arrival()),
                          worst(plan.worst())),
                  why ->
                      List.of(
                          printed.say(variant.about()),
                          labels.say("what-if.no"),
                          printed.say(why.note()))));
    }
    Table.write(
        body,
        labels.say("what-if.caption"),
        List.of(labels.say("what-if.name"), labels.say("glance.eta"), labels.say("what-if.worst")),
        rows);
    body.close().line();
  }

  void positions(Markup body, TimedPlan plan) {
    body.open("section").element("h2", labels.say("page.positions")).open("dl").line();
    for (Instant time : WorkedPassage.hours(plan)) {
      LegParts.row(
          body,
          printed.late(time),
          printed.say(plan.radioPosition(time)) + "; " + Printed.place(plan.route().at(time)));
    }
    body.close().close().line();
  }

  void checks(Markup body, TimedPlan plan) {
    body.open("section").element("h2", labels.say("page.checks")).line();
    List<List<String>> rows = new ArrayList<>();
    for (Verdict verdict : plan.verdicts()) {
      rows.add(
          List.of(
              printed.answer(verdict),
              printed.say(verdict),
              verdict.figure().isPresent() && verdict.margin().isPresent()
                  ? Printed.down(verdict.margin().getAsDouble())
                  : labels.say("checks.no-margin"),
              verdict.when().map(printed::early).orElse("")));
    }
    Table.write(
        body,
        labels.say("checks.caption"),
        List.of(
            labels.say("checks.answer"),
            labels.say("checks.finding"),
            labels.say("checks.margin"),
            labels.say("checks.when")),
        rows);
    body.close().line();
  }

  void notes(Markup body) {
    List<Note> notes = worked.plan().match(TimedPlan::notes, why -> worked.passage().notes());
    if (notes.isEmpty()) {
      return;
    }
    body.open("section").element("h2", labels.say("page.notes")).open("ul").line();
    said(notes)
        .forEach(
            (words, note) -> {
              body.open("li").element("strong", severity(note)).text(" " + words);
              body.close().line();
            });
    body.close().close().line();
  }
}
