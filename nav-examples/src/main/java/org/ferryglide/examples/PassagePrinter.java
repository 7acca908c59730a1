package org.ferryglide.examples;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.examples.page.Labels;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.tide.folder.PassageFolder;
import org.ferryglide.tide.height.TableCurve;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;

/** Prints a laid-off passage as plain text: what condemns it first, then leg by leg. */
final class PassagePrinter {
  private final LaidOffPassage passage;
  private final PassageFolder folder;
  private final Passage whole;
  private final AskedFor asked;
  private final Page page;

  private PassagePrinter(LaidOffPassage passage, Labels labels) {
    this.passage = passage;
    this.folder = passage.folder();
    this.whole = folder.passage();
    this.page = new Page(folder.start().getOffset(), folder.start().toLocalDate(), labels);
    this.asked = new AskedFor(passage, page);
  }

  static String print(LaidOffPassage passage, Labels labels) {
    return new PassagePrinter(passage, labels).print();
  }

  private String print() {
    Instant start = folder.start().toInstant();
    List<Note> landingNotes = landingNotes();
    Doubts doubts = Doubts.of(passage, landingNotes, page);
    List<String> broken = asked.brokenAsPlanned();
    page.line(folder.name());
    page.line(
        page.say(
            "text.head",
            "date",
            folder.start().toLocalDate().toString(),
            "time",
            page.clock(start),
            "speed",
            page.knots(folder.speed()),
            "clock",
            folder.start().getOffset().equals(ZoneOffset.UTC)
                ? "UTC"
                : "UTC" + folder.start().getOffset()));
    page.line(
        page.findings()
            .notChecked(
                whole.notChecked(),
                passage.plan().solved().map(TimedPlan::verdicts).orElse(List.of())));
    page.line(page.say("text.never-checked"));
    printTop(doubts, broken);
    page.line(page.say("text.rose", "rose", folder.rose().printed()));
    page.line(page.say("text.asked-for", "limits", asked.words()));
    page.line(asSteered());
    LegPrinter legs = new LegPrinter(page, passage, asked.shareWords());
    passage.legs().forEach(legs::print);
    printWhole(start);
    if (passage.isNotPossible() || !broken.isEmpty()) {
      page.line();
      page.line(page.say("text.otherwise"));
      page.row("text.departure", asked.nextDeparture());
      page.row("text.speed", asked.speedThatWouldDo());
    }
    printLanding();
    PlanPrinter.printChecks(page, passage.plan());
    page.line();
    page.line(page.say("text.notes"));
    doubts.atTheEnd().forEach(note -> page.line("  " + note));
    page.line();
    page.line(page.say("text.cautions"));
    page.paragraph(page.say("text.cautions-words"));
    return page.toString();
  }

  /** How the legs are steered whose arrivals count, and with which rests and stops. */
  private String asSteered() {
    boolean usual = true;
    boolean stops = false;
    for (PassageLeg leg : whole.legs()) {
      usual &= leg.options().strategy().equals(Strategy.constantHeading());
      stops |= leg.number() < whole.legs().size() && leg.to().stop().isPresent();
    }
    Duration rest = whole.party().craft().restEachHour();
    return page.say(
        "text.each-leg",
        "how",
        page.say(usual ? "text.with-constant-heading" : "text.as-legs-tell"),
        "rest",
        rest.isZero() ? "" : page.say("text.rest", "minutes", Long.toString(rest.toMinutes())),
        "stop",
        stops ? page.say("text.after-stop") : "");
  }

  /** What condemns the passage or a figure of it, worst first. */
  private void printTop(Doubts doubts, List<String> broken) {
    List<String> lines = new ArrayList<>();
    for (LaidOffLeg leg : passage.legs()) {
      String number = Integer.toString(leg.number());
      if (leg.isWithoutData()) {
        lines.add(page.say("text.leg-without-data", "leg", number));
      } else if (leg.isNotPossible()) {
        lines.add(page.say("text.leg-not-possible", "leg", number));
      }
    }
    broken.forEach(name -> lines.add(page.say("text.not-within", "limit", name)));
    lines.addAll(doubts.atTheTop());
    if (!lines.isEmpty()) {
      page.line();
      page.line(page.say("page.first"));
      lines.forEach(line -> page.line("  " + line));
      page.line();
    }
  }

  private void printWhole(Instant start) {
    page.line();
    Optional<Instant> arrival = passage.arrival().map(Page::up);
    String length = page.nauticalMiles(passage.length());
    if (arrival.isEmpty()) {
      page.line(page.say("text.no-arrival", "length", length));
      return;
    }
    Duration time = Duration.between(Page.up(start), arrival.get());
    Speed madeGood =
        Speed.ofMetresPerSecond(passage.length().metres() / Math.max(1, time.toSeconds()));
    page.line(
        page.say(
            "text.whole",
            "length",
            length,
            "time",
            page.hoursAndMinutes(time),
            "from",
            page.clock(Page.up(start)),
            "until",
            page.clock(arrival.get()),
            "speed",
            page.knots(madeGood)));
  }

  private List<Note> landingNotes() {
    return passage
        .arrival()
        .map(time -> TableCurve.cosine(folder.landingTide()).notesAt(time))
        .orElse(List.of());
  }

  private void printLanding() {
    page.line();
    Optional<Instant> arrival = passage.arrival();
    TideTable table = folder.landingTide();
    if (arrival.isEmpty()) {
      page.line(
          page.say(
              passage.isWithoutData() ? "text.landing-without-data" : "text.landing-not-possible"));
      return;
    }
    Instant time = arrival.get();
    TableCurve cosine = TableCurve.cosine(table);
    TableCurve twelfths = TableCurve.twelfths(table);
    String place = folder.wayPoints().get(folder.wayPoints().size() - 1).name();
    page.line(page.say("text.landing", "place", place, "time", page.clock(Page.up(time))));
    if (cosine.heightAt(time).isEmpty()) {
      page.row(
          "text.height",
          page.say(
              "text.no-height",
              "port",
              table.port(),
              "from",
              page.dateAndClock(table.start()),
              "until",
              page.dateAndClock(table.end())));
      return;
    }
    page.row(
        "text.height",
        page.say(
            "text.heights",
            "cosine",
            page.metresDown(cosine.heightAt(time).get().metres()),
            "datum",
            table.datum(),
            "twelfths",
            page.metresDown(twelfths.heightAt(time).get().metres()),
            "port",
            table.port()));
    table.lastUpTo(time).ifPresent(before -> page.row("", water("text.after", before)));
    table.firstAfter(time).ifPresent(after -> page.row("", water("text.before", after)));
    TideEvent highWater = table.highWaterNearest(time);
    page.row(
        "glance.high-water",
        page.say(
            "text.water",
            "time",
            page.clock(highWater.time()),
            "height",
            page.metres(highWater.height().metres())));
    page.row(
        "text.range",
        page.say(
            "text.range-about",
            "height",
            page.metres(Math.rint(table.range(highWater).metres() * 10.0) / 10.0)));
    landingNotes().stream()
        .filter(note -> note.severity() != Severity.INFORMATION)
        .forEach(page::row);
  }

  private String water(String key, TideEvent event) {
    return page.say(
        key + (event.isHigh() ? "-high-water" : "-low-water"),
        "time",
        page.clock(event.time()),
        "height",
        page.metres(event.height().metres()));
  }
}
