package org.ferryglide.nav.passage;

import java.time.Duration;
import java.time.Instant;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.WaterLevel;

/** The sides of a deck card that are read ashore or in a rest. */
final class FurtherSides {
  static final int COLUMNS = 40;
  static final int LINES = 30;

  /** A track held strays by the rounding of its arithmetic, which is no tenth of a mile. */
  private static final double ON_THE_LINE_METRES = 1e-3;

  private static final Duration HALF_AN_HOUR = Duration.ofMinutes(30);

  private final DeckCard card;
  private final TimedPlan plan;
  private final CardText text;
  private final List<String> lines = new ArrayList<>();

  FurtherSides(DeckCard card) {
    this.card = card;
    this.plan = card.plan();
    this.text = card.text();
  }

  List<String> sides() {
    times();
    legs();
    tidalHours();
    section(text.say("radio"), new CardSections(card).radio());
    section(text.say("drift"), new CardSections(card).drift());
    landings();
    card.sections().forEach(this::further);
    checks();
    add(text.say("caution"));
    List<String> head = head();
    int room = LINES - head.size();
    List<String> sides = new ArrayList<>();
    int from = 0;
    while (from < lines.size()) {
      int until = Math.min(lines.size(), from + room);
      if (until < lines.size()) {
        until = startOfLine(from, until);
        while (until > from + 2 && isBreak(until)) {
          until--;
        }
      }
      List<String> side = new ArrayList<>(head);
      side.addAll(lines.subList(from, until));
      sides.add(String.join("\n", side) + "\n");
      from = until < lines.size() && lines.get(until).isEmpty() ? until + 1 : until;
    }
    return Collections.unmodifiableList(sides);
  }

  /** Before the lines set in below one, so that no line goes on overleaf; unless half is wasted. */
  private int startOfLine(int from, int until) {
    int start = until;
    while (start > from + (until - from) / 2 && lines.get(start).startsWith("  ")) {
      start--;
    }
    return lines.get(start).startsWith("  ") ? until : start;
  }

  /** Whether a side that ended there would end with an empty line or a title without its lines. */
  private boolean isBreak(int until) {
    return lines.get(until - 1).isEmpty() || lines.get(until - 2).isEmpty();
  }

  private void add(String line) {
    lines.addAll(CardText.wrap(line, COLUMNS));
  }

  /** What stands at the top of every side: what was not checked, and what it is good for. */
  private List<String> head() {
    List<String> open = new ArrayList<>();
    plan.notChecked().forEach(one -> open.add(text.say(one)));
    for (Verdict verdict : plan.verdicts()) {
      if (verdict.answer() == Verdict.Answer.NOT_CHECKED) {
        open.add(text.say(verdict.note()));
      }
    }
    String named =
        open.isEmpty()
            ? text.say("all-checked")
            : text.say("not-checked", "what", String.join(", ", open));
    List<String> head = new ArrayList<>();
    List<String> wrapped = CardText.wrap(named, COLUMNS);
    head.addAll(wrapped.size() <= 5 ? wrapped : shortened(wrapped));
    head.add(CardText.fit(plan.passage().name(), COLUMNS));
    head.add(text.say("good-for", "date", text.date()));
    head.add(
        text.say(
            "headings",
            "north",
            AfloatSides.north(text, plan.legs().get(0), text.say("headings-true"))));
    head.add(
        text.say(
            "party",
            "speed",
            text.speed(plan.passage().party().craft().speed()),
            "rest",
            Long.toString(plan.passage().party().craft().restEachHour().toMinutes())));
    head.add(
        CardText.fit(
            card.highWater()
                .map(
                    water ->
                        text.say(
                            "high-water",
                            "time",
                            text.early(water.time()),
                            "height",
                            text.height(water.heightMetres(), false),
                            "unit",
                            text.heightUnit(),
                            "port",
                            water.port()))
                .orElse(text.say("high-water-open")),
            COLUMNS));
    return head;
  }

  /** A list that would fill the side; the checks have all of it. */
  private static List<String> shortened(List<String> wrapped) {
    List<String> four = new ArrayList<>(wrapped.subList(0, 4));
    four.add("  …");
    return four;
  }

  private void times() {
    add(text.say("first-afloat", "time", text.early(plan.launch()), "clock", text.offset()));
    add(text.say("under-way", "time", text.late(plan.departure())));
    add(text.say("last-ashore", "time", text.late(plan.landed())));
    add(text.say("launch-interval", "interval", card.launchInterval().orElse(CardText.BLANK)));
    card.highWater()
        .map(DeckCard.HighWater::springFraction)
        .filter(OptionalDouble::isPresent)
        .ifPresent(
            share ->
                add(
                    text.say(
                        "range", "share", Long.toString(Math.round(100.0 * share.getAsDouble())))));
    if (!text.isOnTheDay(plan.landed()) || !text.isOnTheDay(plan.launch())) {
      add(text.say("next-day"));
    }
    ZoneRules clock = plan.passage().zone().getRules();
    if (!clock.getOffset(plan.departure()).equals(clock.getOffset(plan.landed()))) {
      add(text.say("clock-stays", "clock", text.offset()));
    }
  }

  private void legs() {
    add("");
    add(text.say("legs"));
    for (PlannedLeg leg : plan.legs()) {
      add(
          text.say(
              "leg-title",
              "number",
              Integer.toString(leg.leg().number()),
              "from",
              leg.leg().from().name(),
              "to",
              leg.leg().to().name()));
      leg.leg().from().stop().ifPresent(stop -> addIn(text.say(stop.about())));
      addIn(
          text.say(
              "likely",
              "time",
              text.late(leg.arrival()),
              "earliest",
              text.early(leg.earliest()),
              "latest",
              text.late(leg.latest())));
      leg.hours().forEach(hour -> addIn(hour(leg, hour)));
      Distance off = leg.greatestCrossTrack();
      addIn(
          off.magnitude().metres() < ON_THE_LINE_METRES
              ? text.say("on-the-line")
              : text.say(
                  off.metres() < 0.0 ? "off-left" : "off-right",
                  "distance",
                  text.distance(off.magnitude())));
      boolean constantHeading = leg.steered().headings().size() <= 1;
      addIn(text.say(constantHeading ? "constant-heading" : "new-headings"));
    }
  }

  private void addIn(String line) {
    add("  " + line);
  }

  /** The stream of an hour, and its heading where it is not that of the leg. */
  private String hour(PlannedLeg leg, PlannedHour hour) {
    return text.say(
        leg.steered().headings().size() <= 1 ? "hour" : "hour-heading",
        "from",
        text.late(hour.span().from()),
        "until",
        text.late(hour.span().until()),
        "heading",
        AfloatSides.heading(leg, hour.heading(), card.marks()),
        "stream",
        AfloatSides.stream(text, leg, hour.stream()));
  }

  /** The hours about high water as spans of clock time, those of the passage. */
  private void tidalHours() {
    if (!card.highWater().isPresent()) {
      return;
    }
    add("");
    add(text.say("tidal-hours", "port", card.highWater().get().port()));
    Instant water = CardText.earlier(card.highWater().get().time());
    for (int hour = -6; hour <= 6; hour++) {
      Instant middle = water.plus(Duration.ofHours(hour));
      Instant from = middle.minus(HALF_AN_HOUR);
      Instant until = middle.plus(HALF_AN_HOUR);
      if (until.isAfter(plan.departure()) && from.isBefore(plan.landed())) {
        String sign = hour == 0 ? "  " : hour > 0 ? "+" + hour : Integer.toString(hour);
        add(
            text.say(
                "tidal-hour", "hour", sign, "from", text.clock(from), "until", text.clock(until)));
      }
    }
  }

  private void landings() {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < plan.passage().wayPoints().size(); i++) {
      WayPoint place = plan.passage().wayPoints().get(i);
      int first = plan.passage().legs().size() - plan.legs().size();
      Instant when = i <= first ? plan.departure() : plan.legs().get(i - 1 - first).arrival();
      place.landing().ifPresent(landing -> found.add(landing(place, landing, when)));
    }
    for (WayPoint refuge : plan.passage().refuges()) {
      refuge.landing().ifPresent(landing -> found.add(landing(refuge, landing, levels(landing))));
    }
    if (!found.isEmpty()) {
      add("");
      add(text.say("landings"));
      found.forEach(this::add);
    }
  }

  private String landing(WayPoint place, Landing landing, Instant when) {
    String works = levels(landing);
    if (landing.port().isPresent()) {
      WaterLevel level = plan.passage().levels().get(landing.port().get());
      Optional<Distance> height = level == null ? Optional.empty() : level.heightAt(when);
      works =
          text.say(
              "works-then",
              "works",
              works,
              "height",
              height.map(it -> rounded(landing, it.metres())).orElse(CardText.BLANK_FIGURE),
              "unit",
              text.heightUnit());
    }
    return landing(place, landing, works);
  }

  /** A landing with the swell it lies open to. */
  private String landing(WayPoint place, Landing landing, String works) {
    boolean open = landing.openFrom().isPresent() && landing.openUntil().isPresent();
    String all =
        open
            ? text.say(
                "works-open",
                "works",
                works,
                "from",
                landing.openFrom().get().threeDigits(),
                "until",
                landing.openUntil().get().threeDigits())
            : works;
    return text.say("landing", "place", place.name(), "works", all);
  }

  /** Toward the nearer of the levels between which the landing works. */
  private String rounded(Landing landing, double metres) {
    boolean nearTheLowest = metres - landing.lowestMetres() <= landing.highestMetres() - metres;
    return text.height(metres, !nearTheLowest);
  }

  private String levels(Landing landing) {
    return landing
        .port()
        .map(
            port ->
                text.say(
                    "works",
                    "lowest",
                    text.height(landing.lowestMetres(), true),
                    "highest",
                    text.height(landing.highestMetres(), false),
                    "unit",
                    text.heightUnit(),
                    "port",
                    port))
        .orElse(text.say("any-level"));
  }

  private void further(DeckCard.Section section) {
    section(section.title(card), section.lines(card));
  }

  private void section(String title, List<String> words) {
    if (!words.isEmpty()) {
      add("");
      add(title);
      words.forEach(this::add);
    }
  }

  private void checks() {
    add("");
    add(text.say("checks"));
    plan.verdicts().forEach(verdict -> add(words(verdict)));
  }

  /** A finding, what does not hold with its word in front, its time by the party's clock. */
  private String words(Verdict verdict) {
    String answer =
        switch (verdict.answer()) {
          case WARNED -> "warned";
          case STOPPED -> "stopped";
          case NOT_CHECKED -> "open";
          default -> "within";
        };
    return text.say(answer, "finding", text.say(verdict.note()))
        + verdict.when().map(time -> text.say("time", "time", text.early(time))).orElse("")
        + verdict
            .where()
            .map(place -> text.say("near", "place", place.text(AngleForm.DEGREES_MINUTES, 1)))
            .orElse("");
  }
}
