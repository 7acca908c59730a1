package org.ferryglide.nav.passage;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.WaterLevel;

/** The sides of a deck card that are read ashore or in a rest. */
final class FurtherSides {
  static final int COLUMNS = 40;
  static final int LINES = 30;

  private static final Duration HALF_AN_HOUR = Duration.ofMinutes(30);

  private final DeckCard card;
  private final TimedPlan plan;
  private final CardText text;
  private final List<String> lines = new ArrayList<>();

  FurtherSides(DeckCard card) {
    this.card = card;
    this.plan = card.plan();
    this.text = new CardText(plan);
  }

  List<String> sides() {
    times();
    legs();
    tidalHours();
    section(CardLabels.RADIO, new CardSections(plan, card.marks()).radio());
    section(CardLabels.DRIFT, new CardSections(plan, card.marks()).drift());
    landings();
    card.sections().forEach(this::further);
    checks();
    add(CardLabels.CAUTION);
    List<String> head = head();
    int room = LINES - head.size();
    List<String> sides = new ArrayList<>();
    int from = 0;
    while (from < lines.size()) {
      int until = Math.min(lines.size(), from + room);
      if (until < lines.size()) {
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

  /** Whether a side that ended there would end with an empty line or a title without its lines. */
  private boolean isBreak(int until) {
    return lines.get(until - 1).isEmpty() || lines.get(until - 2).isEmpty();
  }

  private void add(String line) {
    lines.addAll(CardText.wrap(line, COLUMNS));
  }

  /** What stands at the top of every side: what was not checked, and what it is good for. */
  private List<String> head() {
    List<String> open = new ArrayList<>(plan.notChecked());
    for (Verdict verdict : plan.verdicts()) {
      if (verdict.answer() == Verdict.Answer.NOT_CHECKED) {
        open.add(verdict.reason());
      }
    }
    String named =
        open.isEmpty() ? CardLabels.ALL_CHECKED : CardLabels.NOT_CHECKED + String.join(", ", open);
    List<String> head = new ArrayList<>();
    List<String> wrapped = CardText.wrap(named, COLUMNS);
    head.addAll(wrapped.size() <= 5 ? wrapped : shortened(wrapped));
    head.add(CardText.fit(plan.passage().name(), COLUMNS));
    head.add(text.date() + ", " + CardLabels.VOID);
    head.add(
        CardLabels.PARTY
            + CardText.up(plan.passage().party().craft().speed().knots())
            + " kn"
            + CardLabels.RESTS
            + plan.passage().party().craft().restEachHour().toMinutes()
            + CardLabels.IN_AN_HOUR);
    head.add(
        CardText.fit(
            CardLabels.HIGH_WATER
                + " "
                + card.highWater()
                    .map(
                        water ->
                            text.clock(CardText.earlier(water.time()))
                                + ", "
                                + CardText.down(water.heightMetres())
                                + " m, "
                                + water.port())
                    .orElse(CardLabels.BLANK),
            COLUMNS));
    return head;
  }

  /** A list that would fill the side; the checks tell all of it. */
  private static List<String> shortened(List<String> wrapped) {
    List<String> four = new ArrayList<>(wrapped.subList(0, 4));
    four.add("  …");
    return four;
  }

  private void times() {
    add(
        CardLabels.FIRST_AFLOAT
            + text.clock(CardText.earlier(plan.launch()))
            + CardLabels.CLOCK
            + text.offset());
    add(CardLabels.UNDER_WAY + text.clock(CardText.later(plan.departure())));
    add(CardLabels.LAST_ASHORE + text.clock(CardText.later(plan.landed())));
    add(CardLabels.LAUNCH_INTERVAL + card.launchInterval().orElse(CardLabels.BLANK));
    card.highWater()
        .map(DeckCard.HighWater::springShare)
        .filter(OptionalDouble::isPresent)
        .ifPresent(
            share ->
                add(
                    CardLabels.RANGE
                        + Math.round(100.0 * share.getAsDouble())
                        + CardLabels.FROM_NEAPS));
    if (!text.isOnTheDay(plan.landed()) || !text.isOnTheDay(plan.launch())) {
      add(CardLabels.NEXT_DAY);
    }
  }

  private void legs() {
    add("");
    add(CardLabels.LEGS);
    for (PlannedLeg leg : plan.legs()) {
      add(
          leg.leg().number()
              + " "
              + leg.leg().from().name()
              + CardLabels.TO
              + leg.leg().to().name());
      leg.leg().from().stop().ifPresent(stop -> add("  " + stop.words()));
      add(
          "  "
              + CardLabels.ETA
              + text.clock(CardText.later(leg.arrival()))
              + CardLabels.LIKELY
              + text.clock(CardText.earlier(leg.earliest()))
              + CardLabels.TO
              + text.clock(CardText.later(leg.latest())));
      for (PlannedHour hour : leg.hours()) {
        add(
            "  "
                + text.clock(CardText.later(hour.span().from()))
                + "-"
                + text.clock(CardText.later(hour.span().until()))
                + " "
                + heading(leg, hour)
                + AfloatSides.stream(leg, hour.stream()));
      }
      Distance off = leg.greatestCrossTrack();
      add(
          "  "
              + CardLabels.OFF_THE_LINE
              + CardText.up(off.magnitude().nauticalMiles())
              + " NM"
              + (off.metres() < 0.0 ? CardLabels.TO_THE_LEFT : CardLabels.TO_THE_RIGHT));
      boolean oneHeading = leg.steered().headings().size() <= 1;
      add("  " + (oneHeading ? CardLabels.HOLD_A_TRANSIT : CardLabels.NEW_HEADINGS));
    }
  }

  /** The heading of an hour where it is not that of the leg. */
  private String heading(PlannedLeg leg, PlannedHour hour) {
    return leg.steered().headings().size() <= 1
        ? ""
        : AfloatSides.heading(leg, hour.heading(), card.marks()) + " ";
  }

  /** The hours about high water as spans of clock time, those of the passage. */
  private void tidalHours() {
    if (!card.highWater().isPresent()) {
      return;
    }
    add("");
    add(CardLabels.TIDAL_HOURS + ", " + card.highWater().get().port());
    Instant water = CardText.earlier(card.highWater().get().time());
    for (int hour = -6; hour <= 6; hour++) {
      Instant middle = water.plus(Duration.ofHours(hour));
      Instant from = middle.minus(HALF_AN_HOUR);
      Instant until = middle.plus(HALF_AN_HOUR);
      if (until.isAfter(plan.departure()) && from.isBefore(plan.landed())) {
        String sign = hour == 0 ? "  " : hour > 0 ? "+" + hour : Integer.toString(hour);
        add(CardLabels.HIGH_WATER + sign + " " + text.clock(from) + "-" + text.clock(until));
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
      refuge
          .landing()
          .ifPresent(landing -> found.add(refuge.name() + ": " + levels(landing) + open(landing)));
    }
    if (!found.isEmpty()) {
      add("");
      add(CardLabels.LANDINGS);
      found.forEach(this::add);
    }
  }

  private String landing(WayPoint place, Landing landing, Instant when) {
    String height = "";
    if (landing.port().isPresent()) {
      WaterLevel level = plan.passage().levels().get(landing.port().get());
      OptionalDouble metres = level == null ? OptionalDouble.empty() : level.heightMetresAt(when);
      height =
          CardLabels.HEIGHT_THEN
              + (metres.isPresent()
                  ? rounded(landing, metres.getAsDouble())
                  : CardLabels.BLANK_HEIGHT);
    }
    return place.name() + ": " + levels(landing) + height + open(landing);
  }

  /** Toward the nearer of the levels between which the landing works. */
  private static String rounded(Landing landing, double metres) {
    boolean nearTheLowest = metres - landing.lowestMetres() <= landing.highestMetres() - metres;
    return (nearTheLowest ? CardText.down(metres) : CardText.up(metres)) + " m";
  }

  private static String levels(Landing landing) {
    return landing
        .port()
        .map(
            port ->
                CardLabels.WORKS
                    + CardText.up(landing.lowestMetres())
                    + CardLabels.TO
                    + CardText.down(landing.highestMetres())
                    + " m "
                    + port)
        .orElse(CardLabels.ANY_LEVEL);
  }

  private static String open(Landing landing) {
    return landing.openFrom().isPresent() && landing.openUntil().isPresent()
        ? ", "
            + CardLabels.OPEN
            + landing.openFrom().get().threeDigits()
            + CardLabels.TO
            + landing.openUntil().get().threeDigits()
            + CardLabels.TRUE_NORTH
        : "";
  }

  private void further(DeckCard.Section section) {
    section(section.title(), section.lines());
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
    add(CardLabels.CHECKS);
    plan.verdicts().forEach(verdict -> add(words(verdict)));
  }

  /** A finding, what does not hold with its word in front, its time by the party's clock. */
  private String words(Verdict verdict) {
    return CardLabels.answer(verdict.answer())
        + verdict.reason()
        + verdict.when().map(time -> CardLabels.AT + text.clock(CardText.earlier(time))).orElse("")
        + verdict
            .where()
            .map(place -> CardLabels.NEAR + place.text(AngleForm.DEGREES_MINUTES, 1))
            .orElse("");
  }
}
