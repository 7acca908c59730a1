package org.ferryglide.examples.page;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.examples.svg.HtmlFile;
import org.ferryglide.examples.svg.Markup;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.nav.passage.PassageLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;

/**
 * A page about the quickest ways along a leg: what they cost and meet, the headings in steps, and
 * the lines of equal time out from its start and back from its end.
 *
 * <pre>{@code
 * String html = QuickestPage.of(leg, leg.planned(), Units.NAUTICAL, Labels.english()).html();
 * }</pre>
 */
public final class QuickestPage {
  private final QuickestLeg leg;
  private final WayPoint goal;
  private final Instant latest;
  private final Units units;
  private final Labels labels;
  private final Printed printed;

  private QuickestPage(QuickestLeg leg, WayPoint goal, Instant latest, Units units, Labels labels) {
    this.leg = leg;
    this.goal = goal;
    this.units = units;
    this.latest = latest.truncatedTo(ChronoUnit.MINUTES); // as printed, and no later than asked
    this.labels = labels;
    Instant from = leg.leg().departure();
    ZoneOffset offset = leg.plan().passage().zone().getRules().getOffset(from);
    this.printed = new Printed(offset, from.atZone(offset).toLocalDate(), labels, units);
  }

  /**
   * The page of a leg.
   *
   * @param leg the leg
   * @param latest by when its end is to be made, for the reach back from there; the begun minute
   *     counts
   * @param units what it is printed in
   * @param labels its words
   * @return the page
   */
  public static QuickestPage of(QuickestLeg leg, Instant latest, Units units, Labels labels) {
    return new QuickestPage(leg, leg.leg().leg().to(), latest, units, labels);
  }

  /**
   * The same page with the reach back from another place than the leg's end: from the start for
   * turning back, from a refuge for an escape.
   *
   * @param place what is to be made by the latest time
   * @return the changed page
   */
  public QuickestPage backTo(WayPoint place) {
    return new QuickestPage(leg, place, latest, units, labels);
  }

  /**
   * The page as one file.
   *
   * @return HTML, to be written as UTF-8
   * @throws IllegalArgumentException if the place to be made lies in what the ways are kept out of
   */
  public String html() {
    PassageLeg about = leg.leg().leg();
    String title =
        labels.say("quickest.title", "from", about.from().name(), "to", about.to().name());
    Markup body = new Markup();
    body.open("header").line();
    body.element("p", labels.say("quickest.never"), "class", "open").line();
    checks(body);
    body.element("h1", title).line();
    body.element(
            "p",
            labels.say(
                    "quickest.date", "passage", leg.plan().passage().name(), "date", printed.date())
                + ", "
                + printed.offset(leg.leg().departure()))
        .line();
    body.close().line();
    body.open("main").line();
    times(body);
    body.open("section").element("h2", labels.say("quickest.reach")).line();
    body.open("figure")
        .add(QuickestPicture.of(leg, goal, latest, printed, labels).inline())
        .close()
        .line();
    body.close().line();
    for (int i = 0; i < leg.ways().size(); i++) {
      steps(body, i + 1, leg.ways().get(i));
    }
    body.close().line();
    body.open("footer").element("p", labels.say("caution")).close().line();
    return HtmlFile.of(title, labels.say("language"), QuickestPage.class, "page.css", body);
  }

  /** What was not checked, and each finding of the passage by the first way that is not within. */
  private void checks(Markup body) {
    TimedPlan plan = leg.plan();
    String open = labels.notChecked(plan.notChecked(), plan.verdicts(), printed::say);
    body.element("p", open, "class", "open").line();
    body.element("p", labels.say("quickest.checks", "way", name(1)));
    body.open("ul", "class", "first").line();
    if (Caution.findings(body, plan.verdicts(), printed)) {
      body.element("li", labels.say("page.nothing-first")).line();
    }
    body.close().line();
  }

  private void times(Markup body) {
    body.open("section").element("h2", labels.say("quickest.times")).open("dl").line();
    row(body, labels.say("quickest.leaving"), printed.early(leg.leg().departure()));
    row(
        body,
        labels.say("quickest.planned"),
        labels.say("quickest.there", "time", printed.late(leg.planned())));
    for (int i = 0; i < leg.ways().size(); i++) {
      QuickestLeg.Way way = leg.ways().get(i);
      row(body, name(i + 1), labels.say("quickest.there", "time", printed.late(arrival(way))));
      way.doubtSeconds()
          .ifPresent(
              seconds ->
                  body.element("dd", labels.say("quickest.doubt", "seconds", wholeUp(seconds)))
                      .line());
      way.greatestStreamAt().ifPresent(time -> body.element("dd", stream(way, time)).line());
    }
    body.close().close().line();
  }

  private static void row(Markup body, String name, String words) {
    body.element("dt", name).element("dd", words).line();
  }

  private String name(int number) {
    return labels.say("quickest.way", "number", Integer.toString(number));
  }

  private static Instant arrival(QuickestLeg.Way way) {
    return way.path().arrival();
  }

  private static String wholeUp(double seconds) {
    return Long.toString((long) Math.ceil(seconds));
  }

  private String stream(QuickestLeg.Way way, Instant time) {
    return labels.say(
        "quickest.stream",
        "speed",
        printed.speedUp(Speed.ofMetresPerSecond(way.greatestStreamMetresPerSecond())),
        "time",
        printed.early(time),
        "place",
        Printed.place(way.path().groundTrack().at(time)));
  }

  private void steps(Markup body, int number, QuickestLeg.Way way) {
    String caption = labels.say("quickest.steps", "way", name(number));
    body.open("section").element("h2", caption).line();
    Optional<SteeredRoute> steps = way.steps().solved();
    if (steps.isEmpty()) {
      way.steps().why().ifPresent(why -> body.element("p", printed.say(why.note())).line());
    } else {
      List<List<String>> rows = new ArrayList<>();
      for (SteeredLeg step : steps.get().legs()) {
        TrueBearing heading = step.courseToSteer();
        rows.add(
            List.of(
                printed.early(step.departure()),
                Printed.direction(leg.leg(), heading),
                Printed.place(step.leg().end())));
      }
      Table.write(
          body,
          caption,
          List.of(
              labels.say("quickest.from"),
              labels.say("quickest.heading"),
              labels.say("quickest.until")),
          rows);
      double lost = Duration.between(arrival(way), steps.get().arrival()).toMillis() / 1e3;
      body.element("p", labels.say("quickest.lost", "seconds", wholeUp(Math.max(0.0, lost))))
          .line();
    }
    body.close().line();
  }
}
