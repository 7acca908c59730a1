package org.ferryglide.examples;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
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
    page.line("Checks of the passage, the worst first");
    outcome.match(
        plan -> {
          page.row(
              "under way",
              page.clock(Page.up(plan.departure()))
                  + ", arriving "
                  + page.clock(Page.up(plan.arrival()))
                  + " with the party's rests and stops");
          page.row("reserve", reserve(plan));
          plan.verdicts()
              .forEach(verdict -> page.row(Findings.word(verdict), words(page, verdict)));
          return true;
        },
        why -> {
          page.row("not made", why.message());
          return false;
        });
  }

  /** What nobody gave anything for, where all that is printed begins. */
  static void printNotChecked(Page page, List<Note> open) {
    if (!open.isEmpty()) {
      page.line("not checked: " + String.join(", ", open.stream().map(Note::text).toList()));
    }
  }

  private static String words(Page page, Verdict verdict) {
    return page.findings().say(verdict)
        + verdict.when().map(time -> ", at " + page.clock(time)).orElse("");
  }

  private static String reserve(TimedPlan plan) {
    List<String> legs = new ArrayList<>();
    for (PlannedLeg leg : plan.legs()) {
      legs.add(
          "leg "
              + leg.leg().number()
              + " "
              + leg.reserve().map(PlanPrinter::downInKnots).orElse("not known"));
    }
    return String.join(", ", legs) + ", at the least and with the stream at its strongest";
  }

  /** What is to spare is never printed larger than it is. */
  private static String downInKnots(Speed spare) {
    return Speed.ofKnots(Math.floor(spare.knots() * 10.0) / 10.0).inKnots(1);
  }

  /** The windows of the day of the planned start in which no check stops. */
  static String windows(PassageFolder folder) {
    Page page = new Page(folder.start().getOffset(), folder.start().toLocalDate());
    Passage passage = folder.passage();
    LocalDate day = folder.start().toLocalDate();
    ZoneId zone = folder.start().getOffset();
    WhenToGo when =
        WhenToGo.search(
            passage,
            day.atStartOfDay(zone).toInstant(),
            day.plusDays(1).atStartOfDay(zone).toInstant(),
            STEP);
    page.line(passage.name() + ", departures of " + day);
    printNotChecked(page, when.notChecked());
    for (Window window : when.windows().items()) {
      TimeSpan span = window.span();
      page.row("window", page.clock(Page.up(span.from())) + " to " + page.clock(span.until()));
      when.warnings(window)
          .forEach(
              (check, count) -> page.row("", "WARNING for " + count + " of them: " + check.text()));
    }
    if (when.windows().items().isEmpty()) {
      page.row("windows", "none in which no check stops");
    }
    when.byTime().ifPresent(best -> page.row("least time", words(page, best)));
    when.byMargin().ifPresent(best -> page.row("best margin", words(page, best)));
    when.leastBad().ifPresent(least -> page.row("least bad", words(page, least)));
    when.whyNot()
        .forEach((why, count) -> page.row("against", count + " departures: " + why.text()));
    page.line("This is a sum, not a permission to go: official tables and forecasts come first.");
    return page.toString();
  }

  private static String words(Page page, Departure departure) {
    return page.clock(departure.time())
        + departure
            .outcome()
            .solved()
            .map(route -> ", arriving " + page.clock(Page.up(route.arrival())))
            .orElse("")
        + WhenToGo.worst(departure).map(worst -> "; " + page.findings().worst(worst)).orElse("");
  }

  /** The deck card, all its sides. */
  static String card(WorkedPassage worked) {
    return worked
        .card()
        .map(DeckCard::toString)
        .orElseGet(
            () -> "no card: " + worked.plan().why().map(NotPossible::message).orElse("") + "\n");
  }
}
