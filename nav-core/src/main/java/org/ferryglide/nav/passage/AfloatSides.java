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
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.StreamField;

/** The sides of a deck card that are read afloat: one for each leg, and a summary. */
final class AfloatSides {
  static final int COLUMNS = 24;
  static final int LINES = 10;
  private static final int LEGS_OF_A_SUMMARY = LINES - 5;

  /** A rate that prints as 0.0 knots is slack. */
  private static final double SLACK_KNOTS = 0.05;

  private final DeckCard card;
  private final TimedPlan plan;
  private final CardText text;

  AfloatSides(DeckCard card) {
    this.card = card;
    this.plan = card.plan();
    this.text = new CardText(plan);
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
        leg.leg().number()
            + "/"
            + plan.passage().legs().size()
            + " "
            + text.clock(leave)
            + CardLabels.TO
            + leg.leg().to().name());
    lines.add(
        heading(leg)
            + "  "
            + (eta.getEpochSecond() - leave.getEpochSecond()) / 60
            + CardLabels.MINUTES
            + (text.isOnTheDay(eta) ? "  " : " ")
            + CardLabels.ETA
            + text.clock(eta));
    lines.add(north(leg) + ", " + text.date());
    lines.add(stream(leg));
    lines.add(
        CardLabels.ASTERN + direction(leg, leg.backBearing()) + " " + leg.leg().from().name());
    lines.add(toSee(leg));
    lines.add(ifMissed(leg));
    lines.add(CardLabels.VOID);
    lines.add(party());
    return joined(lines);
  }

  /** When a leg begins as printed: the ETA before it, unless there was a stop. */
  private Instant leave(int index) {
    return CardText.later(plan.legs().get(index).departure());
  }

  /** Leg by leg: heading, ETA, not later than. */
  List<String> summary() {
    List<String> sides = new ArrayList<>();
    int count = plan.legs().size();
    for (int from = 0; from < count; from += LEGS_OF_A_SUMMARY) {
      int until = Math.min(count, from + LEGS_OF_A_SUMMARY);
      List<String> lines = new ArrayList<>();
      lines.add(notChecked());
      lines.add(CardLabels.VOID);
      lines.add(north(plan.legs().get(from)) + ", " + text.date());
      lines.add(party());
      String range =
          plan.legs().get(from).leg().number()
              + "-"
              + plan.legs().get(until - 1).leg().number()
              + "/"
              + plan.passage().legs().size();
      lines.add(padded(range, 9) + padded(CardLabels.ETA, 6) + CardLabels.NOT_LATER);
      for (int i = from; i < until; i++) {
        PlannedLeg leg = plan.legs().get(i);
        String not =
            card.notLaterThan(leg.leg().number())
                .map(time -> time.equals(DeckCard.NEVER) ? CardLabels.NEVER : text.clock(time))
                .orElse(CardLabels.BLANK_TIME);
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
    List<String> open = plan.notChecked();
    long more =
        plan.verdicts().stream()
            .filter(verdict -> verdict.answer() == Verdict.Answer.NOT_CHECKED)
            .count();
    if (open.isEmpty()) {
      return more == 0
          ? CardLabels.ALL_CHECKED
          : CardLabels.NOT_CHECKED + more + CardLabels.SEE_FURTHER;
    }
    // the shortest of several leaves room for their number, dangers always go first
    String first = open.get(0);
    for (String one : open) {
      boolean shorter = CardLabels.shortName(one).length() < CardLabels.shortName(first).length();
      first = shorter && !first.equals("dangers") ? one : first;
    }
    long others = open.size() - 1 + more;
    return CardLabels.NOT_CHECKED
        + CardLabels.shortName(first)
        + (others == 0 ? "" : " +" + others);
  }

  private String heading(PlannedLeg leg) {
    return heading(leg, leg.heading(), card.marks());
  }

  /** A heading by the compass that the party has; a blank where it is not known. */
  static String heading(PlannedLeg leg, TrueBearing heading, int marks) {
    Optional<Double> degrees = leg.compass(heading).map(Bearing::degrees);
    if (!degrees.isPresent()) {
      degrees = leg.magnetic(heading).map(Bearing::degrees);
    }
    return degrees.map(one -> CardText.atMark(one, marks)).orElse(CardLabels.BLANK_DIRECTION);
  }

  /** By which north the heading is. */
  private static String north(PlannedLeg leg) {
    if (leg.compass(leg.heading()).isPresent()) {
      return CardLabels.COMPASS;
    }
    return leg.magnetic(leg.heading()).isPresent()
        ? CardLabels.MAGNETIC
        : CardLabels.TRUE + leg.heading().threeDigits();
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
        return stream(leg, Optional.empty());
      }
      Velocity here = Velocity.ofEastAndNorth(flow[0], flow[1]);
      strongest = here.rate().compareTo(strongest.rate()) > 0 ? here : strongest;
      time += Candidate.STEP_SECONDS;
    }
    return stream(leg, Optional.of(strongest));
  }

  static String stream(PlannedLeg leg, Optional<Velocity> stream) {
    if (!stream.isPresent()) {
      return CardLabels.STREAM_TO + CardLabels.BLANK_DIRECTION + " " + CardLabels.BLANK_RATE;
    }
    double knots = stream.get().rate().knots();
    return knots < SLACK_KNOTS
        ? CardLabels.STREAM_SLACK
        : CardLabels.STREAM_TO
            + direction(leg, stream.get().set())
            + " "
            + CardText.up(knots)
            + " kn";
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
      by = by.minusSeconds(Math.min(early, leg.duration().toMillis() / 1000));
    }
    return CardLabels.BY
        + (promised ? text.clock(CardText.later(by)) : CardLabels.BLANK_TIME)
        + " "
        + (what.isEmpty() ? CardLabels.BLANK : what);
  }

  /** Where the mark lies if it is missed, and which way to turn. */
  static String ifMissed(PlannedLeg leg) {
    Optional<Side> side = leg.sighting().flatMap(Sighting::sideIfMissed);
    Optional<TrueBearing> turn = leg.sighting().flatMap(Sighting::turnIfMissed);
    if (!side.isPresent() || !turn.isPresent()) {
      return CardLabels.EITHER_SIDE;
    }
    boolean left = side.get() == Side.LEFT;
    TrueBearing turned = turn.get();
    double degrees = leg.magnetic(turned).map(Bearing::degrees).orElse(turned.degrees());
    return CardLabels.MISSED
        + (left ? CardLabels.LEFT : CardLabels.RIGHT)
        + CardLabels.TURN
        + CompassPoint.nearest(degrees, 8).abbreviation();
  }

  /** What the side is good for: speed, rests in an hour, high water. */
  private String party() {
    org.ferryglide.nav.steer.Craft craft = plan.passage().party().craft();
    return CardText.up(craft.speed().knots())
        + " kn "
        + craft.restEachHour().toMinutes()
        + "min "
        + CardLabels.HIGH_WATER
        + card.highWater()
            .map(water -> text.clock(CardText.earlier(water.time())))
            .orElse(CardLabels.BLANK_TIME)
        + card.highWater().map(water -> " " + CardText.down(water.heightMetres()) + "m").orElse("");
  }

  private static String joined(List<String> lines) {
    StringBuilder side = new StringBuilder();
    for (String line : lines) {
      side.append(CardText.fit(line, COLUMNS)).append('\n');
    }
    return side.toString();
  }
}
