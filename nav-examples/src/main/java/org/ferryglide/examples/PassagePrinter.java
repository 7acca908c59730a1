package org.ferryglide.examples;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageLeg;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.tide.folder.PassageFolder;
import org.ferryglide.tide.height.TableCurve;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;

/** Prints a laid-off passage as plain text: what condemns it first, then leg by leg. */
final class PassagePrinter {
  private static final String NEVER_CHECKED =
      "never checked: waves, depths along the way, traffic, notices, cold, the party";

  private static final List<String> CAUTIONS =
      List.of(
          "Official charts, tide tables, stream tables and forecasts come first, and the advice of"
              + " the",
          "coastguard; local rules and trained judgement decide. This is a sum, not a permission to"
              + " go.",
          "Tables predict; weather moves heights, times and rates. A stream between two stations is"
              + " a",
          "guess. Check dangers along the path that is really swept, not only along the line.",
          "Look at the sea before launching, and leave your plan and an overdue time ashore.");

  private final LaidOffPassage passage;
  private final PassageFolder folder;
  private final AskedFor asked;
  private final Page page;

  private PassagePrinter(LaidOffPassage passage) {
    this.passage = passage;
    this.folder = passage.folder();
    this.asked = new AskedFor(passage);
    this.page = new Page(folder.start().getOffset(), folder.start().toLocalDate());
  }

  static String print(LaidOffPassage passage) {
    return new PassagePrinter(passage).print();
  }

  private String print() {
    Instant start = folder.start().toInstant();
    List<Note> landingNotes = landingNotes();
    Doubts doubts = Doubts.of(passage, landingNotes);
    List<String> broken = asked.brokenAsPlanned();
    page.line(folder.name());
    page.line(
        page.dateAndClock(start).replace(" ", ", leaving at ")
            + ", paddling at "
            + folder.speed().inKnots(1)
            + "; clock times are UTC"
            + (folder.start().getOffset().equals(ZoneOffset.UTC)
                ? ""
                : folder.start().getOffset()));
    PlanPrinter.printNotChecked(page, folder.passage().notChecked());
    page.line(NEVER_CHECKED);
    printTop(doubts, broken);
    page.line("printed rose " + folder.rose().printed());
    page.line("asked for: " + asked.words());
    page.line("each leg starts when the one before it arrives" + asSteered());
    LegPrinter legs = new LegPrinter(page, passage, asked.shareWords());
    passage.legs().forEach(legs::print);
    printWhole(start);
    if (passage.isNotPossible() || !broken.isEmpty()) {
      page.line();
      page.line("Otherwise");
      page.row("departure", asked.nextDeparture());
      page.row("speed", asked.speedThatWouldDo());
    }
    printLanding();
    PlanPrinter.printChecks(page, passage.plan());
    page.line();
    page.line("Notes");
    doubts.atTheEnd().forEach(note -> page.line("  " + note));
    page.line();
    page.line("Cautions");
    CAUTIONS.forEach(caution -> page.line("  " + caution));
    return page.toString();
  }

  /** How the legs are steered whose arrivals count, and with which rests and stops. */
  private String asSteered() {
    Passage whole = folder.passage();
    boolean usual = true;
    boolean stops = false;
    for (PassageLeg leg : whole.legs()) {
      usual &= leg.options().strategy().equals(Strategy.constantHeading());
      stops |= leg.number() < whole.legs().size() && leg.to().stop().isPresent();
    }
    Duration rest = whole.party().craft().restEachHour();
    return (usual ? " with a constant heading" : " steered as legs.csv tells")
        + (rest.isZero() ? "" : ", with " + rest.toMinutes() + " min of rest in each hour")
        + (stops ? ", or after the stop there" : "");
  }

  /** What condemns the passage or a figure of it, worst first. */
  private void printTop(Doubts doubts, List<String> broken) {
    List<String> lines = new ArrayList<>();
    for (LaidOffLeg leg : passage.legs()) {
      if (leg.isWithoutData()) {
        lines.add("NO DATA for leg " + leg.number() + ": not worked out, which is not an answer");
      } else if (leg.isNotPossible()) {
        lines.add("NOT POSSIBLE as planned: leg " + leg.number());
      }
    }
    broken.forEach(name -> lines.add("NOT WITHIN what is asked for: " + name));
    lines.addAll(doubts.atTheTop());
    if (!lines.isEmpty()) {
      page.line();
      page.line("Look at this first");
      lines.forEach(line -> page.line("  " + line));
      page.line();
    }
  }

  private void printWhole(Instant start) {
    page.line();
    Optional<Instant> arrival = passage.arrival().map(Page::up);
    if (arrival.isEmpty()) {
      page.line("The whole passage: " + passage.length().inNauticalMiles(1) + ", no arrival");
      return;
    }
    Duration time = Duration.between(Page.up(start), arrival.get());
    Speed madeGood =
        Speed.ofMetresPerSecond(passage.length().metres() / Math.max(1, time.toSeconds()));
    page.line(
        "The whole passage: "
            + passage.length().inNauticalMiles(1)
            + ", "
            + Page.hoursAndMinutes(time)
            + ", from "
            + page.clock(Page.up(start))
            + " to "
            + page.clock(arrival.get())
            + ", "
            + madeGood.inKnots(1)
            + " made good");
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
          "Landing: not worked out, the passage is not "
              + (passage.isWithoutData() ? "covered by the tables" : "possible as planned"));
      return;
    }
    Instant time = arrival.get();
    TableCurve cosine = TableCurve.cosine(table);
    TableCurve twelfths = TableCurve.twelfths(table);
    String place = folder.wayPoints().get(folder.wayPoints().size() - 1).name();
    page.line("Landing at " + place + " about " + page.clock(Page.up(time)));
    if (cosine.heightMetresAt(time).isEmpty()) {
      page.row(
          "height",
          "no data: the tide table of "
              + table.port()
              + " is from "
              + page.dateAndClock(table.start())
              + " to "
              + page.dateAndClock(table.end()));
      return;
    }
    page.row(
        "height",
        Page.metresDown(cosine.heightMetresAt(time).getAsDouble())
            + " above "
            + table.datum()
            + " by the cosine, "
            + Page.metresDown(twelfths.heightMetresAt(time).getAsDouble())
            + " by the rule of twelfths, tide of "
            + table.port());
    table.lastUpTo(time).ifPresent(before -> page.row("", "after " + water(before)));
    table.firstAfter(time).ifPresent(after -> page.row("", "before " + water(after)));
    TideEvent highWater = table.highWaterNearest(time);
    page.row("high water", page.clock(highWater.time()) + ", " + highWater.heightMetres() + " m");
    page.row(
        "range",
        Math.rint(table.rangeMetres(highWater) * 10.0) / 10.0 + " m about that high water");
    landingNotes().stream()
        .filter(note -> note.severity() != Severity.INFORMATION)
        .forEach(page::row);
  }

  private String water(TideEvent event) {
    return (event.isHigh() ? "high" : "low")
        + " water "
        + page.clock(event.time())
        + ", "
        + event.heightMetres()
        + " m";
  }
}
