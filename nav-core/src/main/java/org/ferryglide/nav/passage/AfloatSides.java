package org.ferryglide.nav.passage;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.Bearing;
import org.ferryglide.nav.bearing.CompassPoint;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.landfall.Side;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.StreamField;

/** The sides of a deck card that are read afloat: one for each leg, and a summary. */
final class AfloatSides {
  static final int COLUMNS = 24;
  static final int LINES = 10;
  private static final int LEGS_OF_A_SUMMARY = LINES - 5;

  /** A rate that prints as 0.0 knots is slack. */
  private static final double SLACK_KNOTS = 0.05;

  /** A stream of tables moves little in a minute. */
  private static final double LOOK_SECONDS = 60.0;

  private final DeckCard card;
  private final TimedPlan plan;
  private final CardText text;

  AfloatSides(DeckCard card) {
    this.card = card;
    this.plan = card.plan();
    this.text = card.text();
  }

  List<String> legs() {
    List<String> sides = new ArrayList<>();
    for (int i = 0; i < plan.legs().size(); i++) {
      sides.add(leg(i));
    }
    return sides;
  }

  private String leg(int index) {
    PlannedLeg leg = plan.legs().get(index);
    Instant leave = leave(index);
    Instant eta = CardText.later(leg.arrival());
    List<String> lines = new ArrayList<>();
    lines.add(notChecked());
    lines.add(
        text.say(
            "leg",
            "number",
            Integer.toString(leg.leg().number()),
            "count",
            Integer.toString(plan.passage().legs().size()),
            "leave",
            text.clock(leave),
            "place",
            leg.leg().to().name()));
    lines.add(
        text.say(
            "heading",
            "heading",
            heading(leg),
            "minutes",
            Long.toString((eta.getEpochSecond() - leave.getEpochSecond()) / 60),
            "gap",
            text.isOnTheDay(eta) ? "  " : " ",
            "eta",
            text.clock(eta)));
    lines.add(north(leg));
    lines.add(stream(leg));
    lines.add(
        text.say(
            "astern",
            "bearing",
            direction(leg, leg.backBearing()),
            "place",
            leg.leg().from().name()));
    lines.add(toSee(leg));
    lines.add(ifMissed(text, leg));
    lines.add(text.say("void"));
    lines.add(party());
    return joined(lines);
  }

  /** When a leg begins as printed: the ETA before it, unless there was a stop. */
  private Instant leave(int index) {
    return CardText.later(plan.legs().get(index).departure());
  }

  /** Leg by leg: heading, ETA, by when it is to be begun. */
  List<String> summary() {
    List<String> sides = new ArrayList<>();
    int count = plan.legs().size();
    for (int from = 0; from < count; from += LEGS_OF_A_SUMMARY) {
      int until = Math.min(count, from + LEGS_OF_A_SUMMARY);
      List<String> lines = new ArrayList<>();
      lines.add(notChecked());
      lines.add(text.say("void"));
      lines.add(north(plan.legs().get(from)));
      lines.add(party());
      String range =
          text.say(
              "summary-legs",
              "first",
              Integer.toString(plan.legs().get(from).leg().number()),
              "last",
              Integer.toString(plan.legs().get(until - 1).leg().number()),
              "count",
              Integer.toString(plan.passage().legs().size()));
      lines.add(padded(range, 9) + padded(text.say("eta"), 6) + text.say("not-later"));
      for (int i = from; i < until; i++) {
        PlannedLeg leg = plan.legs().get(i);
        String not =
            card.notLaterThan(leg.leg().number())
                .map(time -> time.equals(DeckCard.NEVER) ? text.say("never") : text.clock(time))
                .orElse(CardText.BLANK_TIME);
        lines.add(
            padded(leg.leg().number() + " ", 4)
                + padded(heading(leg), 5)
                + padded(text.clock(CardText.later(leg.arrival())), 8)
                + not);
      }
      sides.add(joined(lines));
    }
    return sides;
  }

  private static String padded(String text, int width) {
    StringBuilder padded = new StringBuilder(text);
    while (padded.length() < width) {
      padded.append(' ');
    }
    return padded.toString();
  }

  /** What was not checked, in one line. */
  private String notChecked() {
    List<Note> open = plan.notChecked();
    long more =
        plan.verdicts().stream()
            .filter(verdict -> verdict.answer() == Verdict.Answer.NOT_CHECKED)
            .count();
    if (open.isEmpty()) {
      return more == 0
          ? text.say("all-checked")
          : text.say("not-checked", "what", text.say("see-back", "count", Long.toString(more)));
    }
    // the shortest of several leaves room for their number, dangers always go first
    Note first = open.get(0);
    for (Note one : open) {
      boolean shorter = text.shortly(one).length() < text.shortly(first).length();
      first = shorter && !first.equals(Findings.OPEN_DANGERS) ? one : first;
    }
    long others = open.size() - 1 + more;
    return text.say(
        "not-checked", "what", text.shortly(first) + (others == 0 ? "" : " +" + others));
  }

  private String heading(PlannedLeg leg) {
    return heading(leg, leg.heading(), card.marks());
  }

  /** A heading by the compass that the party has; a blank where it is not known. */
  static String heading(PlannedLeg leg, TrueBearing heading, int marks) {
    return byCompass(leg, heading)
        .map(one -> CardText.atMark(one, marks))
        .orElse(CardText.BLANK_DIRECTION);
  }

  /** A heading by the compass of the passage, else magnetic, degrees; empty if neither is known. */
  static Optional<Double> byCompass(PlannedLeg leg, TrueBearing heading) {
    Optional<Double> degrees = leg.compass(heading).map(Bearing::degrees);
    return degrees.isPresent() ? degrees : leg.magnetic(heading).map(Bearing::degrees);
  }

  /** By which north the heading is, and the date. */
  private String north(PlannedLeg leg) {
    String trueHeading = text.say("true", "heading", leg.heading().threeDigits());
    return text.say("north", "north", north(text, leg, trueHeading), "date", text.date());
  }

  /** The north that the headings of a card count from. */
  static String north(CardText text, PlannedLeg leg, String ifTrue) {
    return leg.compass(leg.heading()).isPresent()
        ? text.say("compass")
        : leg.magnetic(leg.heading()).isPresent() ? text.say("magnetic") : ifTrue;
  }

  /** A direction other than the heading: magnetic, or marked as true. */
  static String direction(PlannedLeg leg, TrueBearing direction) {
    return leg.magnetic(direction).map(Bearing::threeDigits).orElse(direction.threeDigits() + "T");
  }

  /** The strongest stream of the leg, looked at every minute; a blank if any is not known. */
  private String stream(PlannedLeg leg) {
    StreamField field = leg.leg().options().stream().orElse(plan.passage().stream());
    double until = leg.steered().arrivalSeconds();
    double time = EpochSeconds.of(leg.departure());
    double[] place = new double[3];
    double[] flow = new double[2];
    Velocity strongest = Velocity.STILL;
    boolean ends = false;
    while (!ends) {
      ends = time >= until;
      time = Math.min(time, until);
      leg.steered().groundTrack().at(time, place, 0);
      if (!field.sample(place[0], Candidate.longitude(place[1]), time, flow, 0)) {
        return stream(text, leg, Optional.empty());
      }
      Velocity here = Velocity.ofEastAndNorth(flow[0], flow[1]);
      strongest = here.rate().compareTo(strongest.rate()) > 0 ? here : strongest;
      time += LOOK_SECONDS;
    }
    return stream(text, leg, Optional.of(strongest));
  }

  static String stream(CardText text, PlannedLeg leg, Optional<Velocity> stream) {
    if (!stream.isPresent()) {
      return text.say("stream-unknown", "unit", text.speedUnit());
    }
    return stream.get().rate().knots() < SLACK_KNOTS
        ? text.say("stream-slack")
        : text.say(
            "stream",
            "set",
            direction(leg, stream.get().set()),
            "rate",
            text.speed(stream.get().rate()));
  }

  /** What is to be seen, and by when. */
  private String toSee(PlannedLeg leg) {
    String what = leg.leg().to().toSee();
    Optional<Sighting> sighting = leg.sighting();
    boolean promised = sighting.map(one -> one.chance() > 0.0).orElse(true);
    Instant by = leg.arrival();
    double speed = leg.speedMadeGood().metresPerSecond();
    if (sighting.isPresent() && speed > 0.0) {
      long early = (long) Math.floor(sighting.get().reach().metres() / speed);
      by = by.minusSeconds(Math.min(early, leg.duration().getSeconds()));
    }
    return text.say(
        "to-see",
        "time",
        promised ? text.late(by) : CardText.BLANK_TIME,
        "what",
        what.isEmpty() ? CardText.BLANK : what);
  }

  /** Where the mark lies if it is missed, and which way to turn. */
  static String ifMissed(CardText text, PlannedLeg leg) {
    Optional<Side> side = leg.sighting().flatMap(Sighting::sideIfMissed);
    Optional<TrueBearing> turn = leg.sighting().flatMap(Sighting::turnIfMissed);
    if (!side.isPresent() || !turn.isPresent()) {
      return text.say("either-side");
    }
    boolean left = side.get() == Side.LEFT;
    TrueBearing turned = turn.get();
    double degrees = leg.magnetic(turned).map(Bearing::degrees).orElse(turned.degrees());
    return text.say(
        left ? "missed-left" : "missed-right",
        "point",
        text.point(CompassPoint.nearest(degrees, 8).abbreviation()));
  }

  /** What the side is good for: speed, rests in an hour, high water. */
  private String party() {
    org.ferryglide.nav.steer.Craft craft = plan.passage().party().craft();
    String speed = text.speed(craft.speed());
    String rest = Long.toString(craft.restEachHour().toMinutes());
    String time =
        card.highWater().map(water -> text.early(water.time())).orElse(CardText.BLANK_TIME);
    String without = text.say("party-short", "speed", speed, "rest", rest, "time", time);
    // a figure is never cut: where there is no room for the height it stands on the further sides
    return card.highWater()
        .map(
            water ->
                text.say(
                    "party-short-height",
                    "speed",
                    speed,
                    "rest",
                    rest,
                    "time",
                    time,
                    "height",
                    text.height(water.heightMetres(), false),
                    "unit",
                    text.heightUnit()))
        .filter(line -> line.length() <= COLUMNS)
        .orElse(without);
  }

  private static String joined(List<String> lines) {
    StringBuilder side = new StringBuilder();
    for (String line : lines) {
      side.append(CardText.fit(line, COLUMNS)).append('\n');
    }
    return side.toString();
  }
}
