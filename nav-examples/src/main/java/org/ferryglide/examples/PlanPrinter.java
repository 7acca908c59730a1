package org.ferryglide.examples;

import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.examples.page.Labels;
import org.ferryglide.examples.page.WorkedPassage;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.passage.DeckCard;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.WhenToGo;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.timing.Departure;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.Window;
import org.ferryglide.tide.folder.PassageFolder;

/** Prints what the passage of a folder tells: its checks, the windows of its day, its deck card. */
final class PlanPrinter {
  private static final Duration STEP = Duration.ofMinutes(10);

  private PlanPrinter() {}

  /** The checks of the plan for the planned start, the worst first. */
  static void printChecks(Page page, Outcome<TimedPlan, NotPossible> outcome) {
    page.line();
    page.line(page.say("text.checks"));
    outcome.match(
        plan -> {
          page.row(
              "under-way",
              page.say(
                  "text.under-way",
                  "time",
                  page.clock(Page.up(plan.departure())),
                  "arrival",
                  page.clock(Page.up(plan.arrival()))));
          page.row("text.reserve", reserve(page, plan));
          plan.verdicts()
              .forEach(
                  verdict -> page.labelled(page.findings().word(verdict), words(page, verdict)));
          return true;
        },
        why -> {
          page.row("text.not-made", page.findings().say(why));
          return false;
        });
  }

  private static String words(Page page, Verdict verdict) {
    return page.findings().say(verdict) + page.findings().at(verdict.when());
  }

  private static String reserve(Page page, TimedPlan plan) {
    List<String> legs = new ArrayList<>();
    for (PlannedLeg leg : plan.legs()) {
      legs.add(
          page.say(
              "text.reserve-of-leg",
              "leg",
              Integer.toString(leg.leg().number()),
              "reserve",
              leg.reserve()
                  .map(spare -> downInKnots(page, spare))
                  .orElseGet(() -> page.say("text.not-known"))));
    }
    return page.say("text.reserve-of-legs", "legs", String.join(", ", legs));
  }

  /** What is to spare is never printed larger than it is. */
  private static String downInKnots(Page page, Speed spare) {
    return page.knots(Speed.ofKnots(Math.floor(spare.knots() * 10.0 + 1e-9) / 10.0));
  }

  /** The windows of the day of the planned start in which no check stops. */
  static String windows(PassageFolder folder, Labels labels) {
    Page page = new Page(folder.start().getOffset(), folder.start().toLocalDate(), labels);
    Passage passage = folder.passage();
    LocalDate day = folder.start().toLocalDate();
    ZoneId zone = folder.start().getOffset();
    WhenToGo when =
        WhenToGo.search(
            passage,
            day.atStartOfDay(zone).toInstant(),
            day.plusDays(1).atStartOfDay(zone).toInstant(),
            STEP);
    page.line(page.say("text.departures", "passage", passage.name(), "date", day.toString()));
    page.line(page.findings().notChecked(when.notChecked(), List.of()));
    for (Window window : when.windows().items()) {
      TimeSpan span = window.span();
      page.row(
          "text.window",
          page.say(
              "text.span",
              "from",
              page.clock(Page.up(span.from())),
              "until",
              page.clock(span.until())));
      when.warnings(window)
          .forEach((check, count) -> page.row("", counted(page, "text.warns", count, check)));
    }
    if (when.windows().items().isEmpty()) {
      page.row("text.windows", page.say("text.no-window"));
    }
    when.leastTime().ifPresent(best -> page.row("text.least-time", words(page, best)));
    when.mostMargin().ifPresent(best -> page.row("text.best-margin", words(page, best)));
    when.leastBad().ifPresent(least -> page.row("text.least-bad", words(page, least)));
    when.whyNot()
        .forEach(
            (why, count) -> page.row("text.against", counted(page, "text.speaks", count, why)));
    page.line(page.say("text.a-sum"));
    return page.toString();
  }

  private static String counted(Page page, String key, int count, Note check) {
    return page.say(key, "count", Integer.toString(count), "check", page.findings().say(check));
  }

  private static String words(Page page, Departure departure) {
    String leaving =
        departure
            .outcome()
            .solved()
            .map(
                route ->
                    page.say(
                        "text.leaving",
                        "time",
                        page.clock(departure.time()),
                        "arrival",
                        page.clock(Page.up(route.arrival()))))
            .orElseGet(() -> page.clock(departure.time()));
    return leaving
        + WhenToGo.worst(departure).map(worst -> "; " + page.findings().worst(worst)).orElse("");
  }

  /** The deck card, all its sides. */
  static String card(WorkedPassage worked) {
    return worked.card().map(DeckCard::toString).orElseGet(() -> noCard(worked));
  }

  private static String noCard(WorkedPassage worked) {
    OffsetDateTime start = worked.departure().atZone(worked.passage().zone()).toOffsetDateTime();
    Page page = new Page(start.getOffset(), start.toLocalDate(), worked.labels());
    String why = worked.plan().why().map(page.findings()::say).orElse("");
    return worked.labels().say("text.no-card", "why", why) + "\n";
  }
}
